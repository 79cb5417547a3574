/** A way to a day in a long list of events: that day and what was before, and back to the newest. */
import { html, useSignal } from "../vendor/preact.js";
import { date_text, day_end } from "../advice/journal/moment.js";
import { day, t } from "../i18n/words.js";
import { Icon } from "./icon.js";
import { now } from "./state/live.js";
import { tap } from "./state/tap.js";

/** @typedef {import("../advice/journal/timeline.js").Event} Event */

/**
 * @param {{chosen: string | null, newest: Event | undefined, on_day: (chosen: string | null) => void}} props
 * `chosen`: the day as "2026-05-04", null for the newest; `newest`: the first event of that day or before
 */
export function GoToDay({ chosen, newest, on_day }) {
  const end = chosen === null ? null : day_end(chosen);
  const wrong = useSignal(false);
  const take = (/** @type {InputEvent} */ event) => {
    const { value, validity } = /** @type {HTMLInputElement} */ (event.currentTarget);
    // A half typed day, or the 31st of a short month, is no day: the list stays as it is.
    wrong.value = validity.badInput || (value !== "" && day_end(value) === null);
    if (!wrong.value) on_day(value || null);
  };
  return html`
    <details class="more" open=${chosen !== null}>
      <summary>${t("history.go_to_day")}</summary>
      <div class="field"><label for="history-day">${t("history.day")}</label>
        <input id="history-day" type="date" max=${date_text(now.value)} value=${chosen ?? ""}
          aria-invalid=${wrong.value} onInput=${take} />
        <div aria-live="polite">${
          wrong.value &&
          html`<p class="wrong"><${Icon} name="needs" size=${20} /><span>${t("history.no_day")}</span></p>`
        }</div></div>
    </details>
    <div role="status">${
      end !== null &&
      html`<p>${day_said(end - 1, newest)}</p>
      <p><button class="quiet" type="button" onClick=${tap(() => on_day(null))}>${t("history.newest")}</button></p>`
    }</div>`;
}

/** @param {number} at a moment of the chosen day @param {Event | undefined} newest */
function day_said(at, newest) {
  const said = day(at, now.value);
  if (!newest) return t("history.none_until", { day: said });
  const on_it = date_text(Date.parse(newest.at)) === date_text(at);
  return t(on_it ? "history.until" : "history.none_on", { day: said });
}
