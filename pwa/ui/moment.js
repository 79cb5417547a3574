/** When something happened: now, unless the keeper picks an earlier moment by a tile or by day and time. */
import { html } from "../vendor/preact.js";
import { cannot_be, field_text, moment_in, moments_offered } from "../advice/journal/moment.js";
import { ago, t, when } from "../i18n/words.js";
import { Icon } from "./icon.js";
import { now, room } from "./state/live.js";
import { tap } from "./state/tap.js";
import { with_text } from "./state/field_text.js";

/** Now by the clock that records are written by, in ms. */
const by_the_server = () => Date.parse(room.value.now());

/** Whether no record can hold this moment. @param {string | undefined} at */
export const no_moment = (at) => cannot_be(at, by_the_server());

/**
 * @param {{at: string | undefined, was?: string, on_at: (at: string | undefined) => void}} props `at`: undefined for
 * now; `was`: the moment that a record already holds, in its stead
 */
export function Moment({ at, was, on_at }) {
  const recorded = by_the_server();
  const first = was ? t("moment.as_written") : t("moment.now");
  const stands = at ?? was;
  return html`
    <details class="more section" open=${at !== undefined}>
      <summary>${stands ? t("moment.when", { when: when(stands, now.value) }) : t("moment.happened_now")}</summary>
      <div class="tiles" role="group" aria-label=${t("moment.title")}>
        <button type="button" aria-pressed=${at === undefined} onClick=${tap(() => on_at(undefined))}>${first}</button>
        ${moments_offered(recorded).map(
          (offered) => html`<button type="button" key=${offered}
          aria-pressed=${at === offered} onClick=${tap(() => on_at(offered))}>${ago(offered, recorded)}</button>`,
        )}
      </div>
      <div class="field section"><label for="moment">${t("moment.day_and_time")}</label>
        <input id="moment" type="datetime-local" max=${field_text(new Date(recorded).toISOString())}
          value=${stands ? field_text(stands) : ""}
          aria-invalid=${no_moment(at)} onInput=${with_text((text) => on_at(moment_in(text)))} />
        <div aria-live="polite">${
          no_moment(at) &&
          html`<p class="wrong"><${Icon} name="needs" size=${20} /><span>
          ${t("moment.cannot_be")}</span></p>`
        }</div></div>
    </details>`;
}
