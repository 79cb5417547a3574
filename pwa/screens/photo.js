/** One photo, large: the words beside it, who took it and when. */
import { html } from "../vendor/preact.js";
import { timeline } from "../advice/journal/timeline.js";
import { t, when } from "../i18n/words.js";
import { who_said } from "../ui/authors.js";
import { event_lines } from "../ui/words/event_said.js";
import { get, now, room } from "../ui/state/live.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { Picture } from "../ui/picture.js";
import { record } from "../ui/state/record.js";
import { go } from "../ui/state/router.js";
import { tap } from "../ui/state/tap.js";

/** @param {{id: string}} props */
export function Photo({ id }) {
  const photo = get("photo", id);
  if (!photo) return html`<${Missing} up="/" />`;
  const tank = get("tank", photo.tank);
  const up = tank ? `/tank/${tank.id}/history` : "/timeline";
  const event = timeline(room.value, { group: "notes" }).find(({ records }) => records.includes(photo));
  const lines = event ? event_lines(event) : [];
  const remove = async () => {
    if (await record([{ type: "del", kind: "photo", id }], t("saved.removed", { what: t("kind.photo") })))
      go(up, { replace: true });
  };
  return html`
    <${Page} title=${t("kind.photo")} up=${up} aside=${tank && html`<span class="soft">${tank.name}</span>`}>
      <figure><${Picture} photo=${photo} said=${lines.join(" ")} large />
        <figcaption>${lines.map((line) => html`<p key=${line}>${line}</p>`)}
          <p class="soft small">${t("photo.by", { who: who_said(photo.meta.made_by), when: when(photo.at, now.value) })}
            </p></figcaption></figure>
      ${
        room.value.may("photo") &&
        html`<p class="row section"><a class="quiet" href=${`/correct/photo/${id}`}>
        ${t("photo.correct")}</a><button class="quiet" type="button" onClick=${tap(() => void remove())}>
        ${t("photo.remove")}</button></p>`
      }
    <//>`;
}
