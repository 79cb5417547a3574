/** A note: common words by tiles, one's own words, photos; all of it kept as a draft until it is saved together. */
import { html, useEffect, useSignal } from "../vendor/preact.js";
import { photo_drafts } from "../data/photo_drafts.js";
import { t } from "../i18n/words.js";
import { forget, use_draft } from "../ui/state/draft.js";
import { Icon } from "../ui/icon.js";
import { get, room } from "../ui/state/live.js";
import { LookingOnly } from "../ui/view_only.js";
import { Missing } from "../ui/missing.js";
import { Moment, no_moment } from "../ui/moment.js";
import { Page } from "../ui/page.js";
import { Loose } from "../ui/picture.js";
import { new_id, offer, record } from "../ui/state/record.js";
import { go } from "../ui/state/router.js";
import { shrunk } from "../ui/shrink.js";
import { tap } from "../ui/state/tap.js";
import { QUICK, quick_named } from "../ui/words/tile_words.js";

/** Those that ask for a test at once. */
const TEST_NOW = ["at_surface", "hiding"];
const LONGEST = 5000;
const taken = photo_drafts();

/** @param {{id: string}} props */
export function Note({ id }) {
  const tank = get("tank", id);
  const name = `note.${id}`;
  const kept = use_draft(name, () => ({
    picked: /** @type {string[]} */ ([]),
    text: "",
    at: /** @type {string | undefined} */ (undefined),
  }));
  const photos = useSignal(/** @type {import("../data/photo_drafts.js").Taken[]} */ ([]));
  const busy = useSignal(0);
  const problem = useSignal("");
  const look = async () => void (photos.value = await taken.list(name));
  useEffect(() => void look().catch(() => (problem.value = t("note.photos_not_kept"))), [name]);
  if (!tank) return html`<${Missing} up="/" />`;
  if (!room.value.may("note")) return html`<${LookingOnly} title=${t("note.title")} up=${`/tank/${id}`} />`;

  const { picked, text, at } = kept.value;
  const quick = QUICK.filter((one) => picked.includes(one));
  const words = [...quick.map(quick_named), text.trim()].filter(Boolean).join("\n");
  const pick = (/** @type {string} */ one) =>
    (kept.value = {
      ...kept.value,
      picked: picked.includes(one) ? picked.filter((/** @type {string} */ other) => other !== one) : [...picked, one],
    });

  const add = async (/** @type {any} */ event) => {
    const files = [...event.target.files];
    event.target.value = "";
    problem.value = "";
    for (const file of files) {
      busy.value += 1;
      try {
        await taken.add(name, await shrunk(file));
        await look();
      } catch (failed) {
        problem.value = t(failed instanceof RangeError ? "note.no_picture" : "note.photos_not_kept", {
          file: file.name,
        });
      } finally {
        busy.value -= 1;
      }
    }
  };
  const drop = async (/** @type {number} */ its) => {
    const undo = await taken.remove(its);
    await look();
    offer(t("note.photo_dropped"), async () => (await undo(), await look()));
  };
  const save = async () => {
    const shared = { tank: id, at: at ?? room.value.now(), entry: new_id() };
    const writes = words
      ? [
          {
            type: /** @type {const} */ ("put"),
            kind: "note",
            id: new_id(),
            fields: { ...shared, text: words.slice(0, LONGEST), ...(quick.length ? { quick } : {}) },
          },
        ]
      : [];
    const pictures = photos.value.map(({ picture, width, height }) => ({
      picture,
      id: new_id(),
      fields: { ...shared, width, height },
    }));
    try {
      if (!(await record(writes, t("note.saved", { tank: tank.name }), pictures))) return;
      forget(name);
      await taken.forget(name).catch(() => {});
      go(`/tank/${id}`, { replace: true });
    } catch (failed) {
      problem.value = /** @type {Error} */ (failed).message;
    }
  };

  const act = html`<button class="main" type="button" disabled=${
    (!words && photos.value.length === 0) || busy.value > 0 || words.length > LONGEST || no_moment(at)
  } onClick=${tap(() => void save())}>
    ${photos.value.length ? t("note.save_photos", { count: photos.value.length }) : t("note.save")}</button>`;
  return html`
    <${Page} title=${t("note.title")} up=${`/tank/${id}`} aside=${html`<span class="soft">${tank.name}</span>`}
      act=${act}>
      <div class="tiles two short" role="group" aria-label=${t("note.quick")}>
        ${QUICK.map(
          (one) => html`<button type="button" key=${one} aria-pressed=${picked.includes(one)}
          onClick=${tap(() => pick(one))}>${quick_named(one)}</button>`,
        )}
      </div>
      ${
        picked.some((/** @type {string} */ one) => TEST_NOW.includes(one)) &&
        html`
        <div class="caution" role="status"><p>${t(picked.includes("at_surface") ? "note.air_now" : "note.test_now")}</p>
          <a class="quiet" href=${`/tank/${id}/test`}>${t("test.do")}</a></div>`
      }
      <div class="field section"><label for="note-text">${t("note.words")}</label>
        <textarea id="note-text" rows="3" maxlength=${LONGEST} value=${text}
          onInput=${(/** @type {any} */ e) => (kept.value = { ...kept.value, text: e.target.value })}></textarea></div>
      <section class="section"><h2>${t("note.photos")}</h2>
        ${
          photos.value.length > 0 &&
          html`<ul class="pictures">${photos.value.map(
            ({ id: its, picture }, i) => html`
          <li key=${its}><${Loose} picture=${picture} said=${t("photo.numbered", { at: i + 1 })} />
            <button class="quiet square" type="button"
              aria-label=${t("remove_named", { what: t("photo.numbered", { at: i + 1 }) })}
              onClick=${tap(() => void drop(its))}><${Icon} name="remove" size=${20} /></button></li>`,
          )}</ul>`
        }
        <div class="row">
          <label class="quiet tall file"><${Icon} name="camera" />${t("note.take")}<input class="unseen" type="file"
            accept="image/*" capture="environment" onChange=${(/** @type {any} */ e) => void add(e)} /></label>
          <label class="quiet tall file">${t("note.choose")}<input class="unseen" type="file" accept="image/*" multiple
            onChange=${(/** @type {any} */ e) => void add(e)} /></label>
        </div>
        ${busy.value > 0 && html`<p class="soft" role="status">${t("note.shrinking")}</p>`}
        ${
          problem.value &&
          html`<p class="wrong" role="alert"><${Icon} name="needs" /><span>${problem.value}</span>
          </p>`
        }
        <p class="soft small">${t("note.photo_size")}</p>
      </section>
      <${Moment} at=${at} on_at=${(/** @type {string | undefined} */ moment) =>
        (kept.value = { ...kept.value, at: moment })} />
    <//>`;
}
