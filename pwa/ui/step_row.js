/**
 * A figure with its label and two buttons that step it down and up; held in `unit`, shown in the units of this phone.
 */
import { html } from "../vendor/preact.js";
import { short, t } from "../i18n/words.js";
import { Icon } from "./icon.js";
import { shown_in } from "./state/measures.js";

/**
 * @param {{label: string, value: number, unit?: string, step?: number, min?: number, max?: number, also?: unknown,
 * on_value: (value: number) => void}} props
 */
export function StepRow({ label, value, unit = "", step = 1, min = 0, max = 1000, also, on_value }) {
  const shown = shown_in(unit);
  const by = (/** @type {number} */ way) =>
    on_value(Math.min(max, Math.max(min, Math.round((value + way * step) * 1000) / 1000)));
  return html`
    <div class="step-row" role="group" aria-label=${label}>
      <span class="grow">${label}${also && html`<span class="also soft small">${also}</span>`}</span>
      <button class="quiet" type="button" disabled=${value <= min} aria-label=${t("figures.less", { what: label })}
        onClick=${() => by(-1)}><${Icon} name="minus" /></button>
      <output class="figures" aria-live="polite"><b class="hand">
        ${short(shown.show(value), shown.unit === unit ? 2 : 1)}</b>${
          shown.label &&
          html` <span class="unit soft">
        ${shown.label}</span>`
        }</output>
      <button class="quiet" type="button" disabled=${value >= max} aria-label=${t("figures.more", { what: label })}
        onClick=${() => by(1)}><${Icon} name="plus" /></button>
    </div>`;
}
