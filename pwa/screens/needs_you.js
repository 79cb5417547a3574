/** Needs you: what the server refused, each with its reason, to try again, keep as a file, or discard with an undo. */
import { html, useEffect, useSignal } from "../vendor/preact.js";
import { kind_of, records } from "../contracts.js";
import { refusals } from "../advice/sharing/needs_you.js";
import { t, when } from "../i18n/words.js";
import { who_said } from "../ui/authors.js";
import { field_words } from "../ui/words/field_words.js";
import { Icon } from "../ui/icon.js";
import { keep_file } from "../ui/keep_file.js";
import { now, room, sharing } from "../ui/state/live.js";
import { Page } from "../ui/page.js";
import { Picture } from "../ui/picture.js";
import { offer, say } from "../ui/state/record.js";
import { tap } from "../ui/state/tap.js";

export function NeedsYou() {
  const { needs_you, photos_need_you } = sharing();
  const here = room.value;
  const list = refusals(needs_you, {
    ...field_words,
    kinds: records(),
    may: (kind) => here.may(kind),
    held: here.unshared(),
  });
  const some = list.length + photos_need_you > 0;
  const keep = async () => {
    const file = await keep_file(await here.export_needs_you(), "limnary-needs-you", "jsonl");
    if (file) say(t("archive.kept", { file }));
  };
  return html`
    <${Page} title=${t("needs_you.title")} place="room" up="/room" aside=${html`<span></span>`}
      act=${
        some &&
        html`
        ${
          list.length > 0 &&
          html`<button class="quiet" type="button" onClick=${tap(() => void keep())}>
          ${t("needs_you.export")}</button>`
        }
        <button class="main" type="button" disabled=${here.about()?.ended} onClick=${tap(() => void here.try_again())}>
          ${t("needs_you.all_again")}</button>`
      }>
      <p class=${some ? "" : "sentence"}>${t(some ? "needs_you.why" : "needs_you.none")}</p>
      <ul class="lines">${list.map((one) => html`<${Refused} key=${one.op} refusal=${one} />`)}</ul>
      ${
        photos_need_you > 0 &&
        html`<section class="section"><h2>${t("needs_you.photos", { count: photos_need_you })}
        </h2><p>${t("needs_you.photos_why")}</p><${Pictures} count=${photos_need_you} /></section>`
      }
    <//>`;
}

/** The refused pictures, each with its own button to discard it. @param {{count: number}} props */
function Pictures({ count }) {
  const here = room.value;
  const refused = useSignal(/** @type {{sha256: string, reason: string}[]} */ ([]));
  useEffect(() => void here.refused_photos().then((found) => (refused.value = found)), [here, count]);
  const discard = async (/** @type {string} */ hash) =>
    offer(t("needs_you.discarded", { what: t("kind.photo") }), await here.discard_photo(hash));
  return html`
    <ul class="lines">${refused.value.map(({ sha256, reason }, i) => {
      const [record] = here.all("photo").filter((photo) => photo.sha256 === sha256);
      const what = t("photo.numbered", { at: i + 1 });
      return html`
        <li class="refused" key=${sha256}>
          <${Picture} photo=${{ ...record, sha256 }} said=${what} />
          ${
            record &&
            html`<p class="soft small">
            ${t("needs_you.by", { who: who_said(record.meta.made_by), when: when(record.at, now.value) })}</p>`
          }
          <p class="wrong"><${Icon} name="needs" size=${20} /><span>${t("why_not.other", { reason })}</span></p>
          <div class="row"><button class="quiet" type="button" onClick=${tap(() => void discard(sha256))}>
            ${t("needs_you.discard")}<span class="unseen"> ${what}</span></button></div>
        </li>`;
    })}</ul>`;
}

/** @param {{refusal: import("../advice/sharing/needs_you.js").Refusal}} props */
function Refused({ refusal }) {
  const here = room.value;
  const kind = t(`kind.${refusal.kind}`);
  const what = refusal.name
    ? t("needs_you.named", { kind, name: refusal.name })
    : refusal.tank
      ? `${kind} ${t("needs_you.in_tank", { tank: refusal.tank })}`
      : kind;
  const discard = async () => offer(t("needs_you.discarded", { what }), await here.discard([refusal.op]));
  return html`
    <li class="refused">
      <h2>${t(`needs_you.${refusal.doing}`, { what })}</h2>
      <p class="soft small">${t("needs_you.by", { who: who_said(refusal.by), when: when(refusal.at, now.value) })}</p>
      ${refusal.said.map(
        ({ label, value }) => html`<p class="said-field" key=${label}><span class="soft">${label}
        </span> ${value}</p>`,
      )}
      <p class="wrong"><${Icon} name="needs" size=${20} /><span>${why_said(refusal)}</span></p>
      ${refusal.wrong.map((wrong) => html`<p class="small" key=${wrong.label}>${t("needs_you.wrong", wrong)}</p>`)}
      ${refusal.follows > 0 && html`<p class="soft small">${t("needs_you.follows", { count: refusal.follows })}</p>`}
      <div class="row">
        ${
          !here.about()?.ended &&
          html`<button class="quiet" type="button"
          onClick=${tap(() => void here.try_again([refusal.op]))}>${t("needs_you.again")}<span class="unseen"> ${what}
          </span></button>`
        }
        <button class="quiet" type="button" onClick=${tap(() => void discard())}>${t("needs_you.discard")}<span
          class="unseen"> ${what}</span></button>
      </div>
    </li>`;
}

/** @param {import("../advice/sharing/needs_you.js").Refusal} one */
function why_said({ why, reason, kind, may_now }) {
  if (why !== "role") return t(`why_not.${why}`, { reason });
  if (may_now) return t("why_not.role_now");
  const roles = kind_of(kind)
    .written_by.map((role) => t(`role.${role}`))
    .join(", ");
  const role = room.value.about()?.role;
  return role ? t("why_not.role", { role: t(`role.${role}`), roles }) : t("why_not.role_then", { roles });
}
