/** A note: common words by tiles, the keeper's own words, photos; all stay in a draft until they are saved together. */
import { html, useEffect, useSignal } from "../vendor/preact.js";
import { photo_drafts } from "../data/photo_drafts.js";
import { t } from "../i18n/words.js";
import { Icon } from "../ui/icon.js";
import { Failed } from "../ui/life_entry.js";
import { get, room } from "../ui/state/live.js";
import { with_text } from "../ui/state/field_text.js";
import { Moment, no_moment } from "../ui/moment.js";
import { Page } from "../ui/page.js";
import { Loose } from "../ui/picture.js";
import { new_id, offer } from "../ui/state/record.js";
import { Refused, closed_form, use_record_form } from "../ui/state/record_form.js";
import { shrunk } from "../ui/shrink.js";
import { tap } from "../ui/state/tap.js";
import { QUICK, quick_named } from "../ui/words/tile_words.js";

/** The words that ask for a test at once. */
const TEST_NOW = ["at_surface", "hiding"];
const LONGEST = 5000;
const taken = photo_drafts();

const first = () => ({
  picked: /** @type {string[]} */ ([]),
  text: "",
  at: /** @type {string | undefined} */ (undefined),
});

/** @param {{id: string}} props */
export function Note({ id }) {
  const tank = get("tank", id);
  const name = `note.${id}`;
  const form = use_record_form({ name, first });
  const { photos, busy, problem, add, drop } = use_photos(name);
  const closed = closed_form(tank, "note", t("note.title"));
  if (!tank || closed) return closed;

  const { picked, text, at } = form.draft.value;
  const quick = QUICK.filter((word) => picked.includes(word));
  const words = [...quick.map(quick_named), text.trim()].filter(Boolean).join("\n");
  const save = () =>
    form.save(() => {
      const shared = { tank: id, at: at ?? room.value.now(), entry: new_id() };
      const fields = { ...shared, text: words.slice(0, LONGEST), ...(quick.length ? { quick } : {}) };
      return {
        writes: words ? [{ type: "put", kind: "note", id: new_id(), fields }] : [],
        pictures: photos.map(({ picture, width, height }) => ({
          picture,
          id: new_id(),
          fields: { ...shared, width, height },
        })),
        said: t("note.saved", { tank: tank.name }),
        to: `/tank/${id}`,
        after: () => taken.forget(name).catch(() => {}),
      };
    });
  const ready = (words || photos.length > 0) && !busy && words.length <= LONGEST && !no_moment(at);
  const act = html`<button class="main" type="button" disabled=${!ready} onClick=${tap(() => void save())}>
    ${photos.length ? t("note.save_photos", { count: photos.length }) : t("note.save")}</button>`;
  return html`
    <${Page} title=${t("note.title")} up=${`/tank/${id}`} aside=${html`<span class="soft">${tank.name}</span>`}
      act=${act}>
      <${Quick} id=${id} picked=${picked} on_pick=${(/** @type {string[]} */ next) => form.set({ picked: next })} />
      <div class="field section"><label for="note-text">${t("note.words")}</label>
        <textarea id="note-text" rows="3" maxlength=${LONGEST} value=${text}
          onInput=${with_text((words) => form.set({ text: words }))}></textarea></div>
      <section class="section"><h2>${t("note.photos")}</h2>
        <${Photos} photos=${photos} drop=${drop} />
        <div class="row">
          <label class="quiet tall file"><${Icon} name="camera" />${t("note.take")}<input class="unseen" type="file"
            accept="image/*" capture="environment" onChange=${add} /></label>
          <label class="quiet tall file">${t("note.choose")}<input class="unseen" type="file" accept="image/*" multiple
            onChange=${add} /></label>
        </div>
        ${busy && html`<p class="soft" role="status">${t("note.shrinking")}</p>`}
        <${Failed} text=${problem} />
        <${Refused} form=${form} kind="note" />
        <p class="soft small">${t("note.photo_size")}</p>
      </section>
      <${Moment} at=${at} on_at=${(/** @type {string | undefined} */ moment) => form.set({ at: moment })} />
    <//>`;
}

/** @typedef {import("../data/photo_drafts.js").Taken} Photo */

/**
 * The photos of a note that is not saved yet: they too stay on the phone with the draft.
 * @param {string} name of the draft
 */
function use_photos(name) {
  const photos = useSignal(/** @type {Photo[]} */ ([]));
  const shrinking = useSignal(0);
  const problem = useSignal("");
  const look = async () => void (photos.value = await taken.list(name));
  useEffect(() => void look().catch(() => (problem.value = t("note.photos_not_kept"))), [name]);

  const add_one = async (/** @type {File} */ file) => {
    shrinking.value += 1;
    try {
      await taken.add(name, await shrunk(file));
      await look();
    } catch (error) {
      const why = error instanceof RangeError ? "note.no_picture" : "note.photos_not_kept";
      problem.value = t(why, { file: file.name });
    } finally {
      shrinking.value -= 1;
    }
  };
  const add = async (/** @type {Event & {currentTarget: HTMLInputElement}} */ { currentTarget: input }) => {
    const files = [...(input.files ?? [])];
    input.value = "";
    problem.value = "";
    for (const file of files) await add_one(file);
  };
  const drop = async (/** @type {Photo["id"]} */ id) => {
    const undo = await taken.remove(id);
    await look();
    offer(t("note.photo_dropped"), async () => {
      await undo();
      await look();
    });
  };
  return { photos: photos.value, busy: shrinking.value > 0, problem: problem.value, add, drop };
}

/**
 * The words that keepers note most, as tiles.
 * @param {{id: string, picked: string[], on_pick: (picked: string[]) => void}} props
 */
function Quick({ id, picked, on_pick }) {
  const pick = (/** @type {string} */ word) =>
    on_pick(picked.includes(word) ? picked.filter((other) => other !== word) : [...picked, word]);
  return html`
    <div class="tiles two short" role="group" aria-label=${t("note.quick")}>
      ${QUICK.map(
        (word) => html`<button type="button" key=${word} aria-pressed=${picked.includes(word)}
        onClick=${tap(() => pick(word))}>${quick_named(word)}</button>`,
      )}
    </div>
    ${
      picked.some((word) => TEST_NOW.includes(word)) &&
      html`
      <div class="caution" role="status"><p>${t(picked.includes("at_surface") ? "note.air_now" : "note.test_now")}</p>
        <a class="quiet" href=${`/tank/${id}/test`}>${t("test.do")}</a></div>`
    }`;
}

/** @param {{photos: Photo[], drop: (id: Photo["id"]) => Promise<void>}} props */
const Photos = ({ photos, drop }) =>
  photos.length > 0 &&
  html`<ul class="pictures">${photos.map(({ id, picture }, i) => {
    const named = t("photo.numbered", { at: i + 1 });
    return html`
    <li key=${id}><${Loose} picture=${picture} said=${named} />
      <button class="quiet square" type="button" aria-label=${t("remove_named", { what: named })}
        onClick=${tap(() => void drop(id))}><${Icon} name="remove" size=${20} /></button></li>`;
  })}</ul>`;
