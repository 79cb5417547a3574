/** One of a few by its words: the phone's own list. */
import { html } from "../vendor/preact.js";

/** @param {{label: string, value: string, options: [string, string][], on_pick: (value: string) => void}} props */
export function Pick({ label, value, options, on_pick }) {
  const pick = (/** @type {Event & {currentTarget: HTMLSelectElement}} */ { currentTarget }) =>
    on_pick(currentTarget.value);
  return html`<div class="field"><label>${label}<select value=${value} onChange=${pick}>${options.map(
    ([one, said]) => html`<option key=${one} value=${one} selected=${one === value}>${said}</option>`,
  )}</select></label></div>`;
}
