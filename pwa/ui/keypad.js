/**
 * A large keypad for figures read off a meter, in place of the phone's keyboard; comma or point as the language writes
 * it.
 */
import { html } from "../vendor/preact.js";
import { separator, t } from "../i18n/words.js";
import { Icon } from "./icon.js";

const LONGEST = 7;

/**
 * @param {{value: string, unit?: string, label: string, on_value: (value: string) => void}} props `value` is typed text
 * with a point
 */
export function Keypad({ value, unit, label, on_value }) {
  const press = (/** @type {string} */ key) => {
    if (key === "erase") return on_value(value.slice(0, -1));
    if (key === "." && value.includes(".")) return;
    if (value.length >= LONGEST) return;
    on_value(key === "." && value === "" ? "0." : value === "0" && key !== "." ? key : value + key);
  };
  const keys = ["1", "2", "3", "4", "5", "6", "7", "8", "9", ".", "0", "erase"];
  return html`
    <div class="readout" role="status" aria-label=${label}>
      ${value === "" ? html`<span class="empty">–</span>` : value.replace(".", separator())}
        ${unit && html`<span class="unit">${unit}</span>`}
    </div>
    <div class="keypad" role="group" aria-label=${label}>
      ${keys.map(
        (key) => html`
        <button type="button" key=${key} aria-label=${key === "erase" ? t("erase") : key === "." ? separator() : key}
          onClick=${() => press(key)}>
          ${key === "erase" ? html`<${Icon} name="erase" size=${28} />` : key === "." ? separator() : key}
        </button>`,
      )}
    </div>`;
}
