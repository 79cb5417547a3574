/** Figures to type, a row each: a tap on a row opens the app's own keypad. */
import { html, useState } from "../vendor/preact.js";
import { separator, t } from "../i18n/words.js";
import { Icon } from "./icon.js";
import { Keypad } from "./keypad.js";
import { shown_in } from "./state/measures.js";
import { wrong_said } from "./words/refusal_said.js";
import { tap } from "./state/tap.js";

/** @typedef {{name: string, label: string, unit?: string, help?: string}} Figure */
/**
 * @param {{specs: Figure[], raw: Record<string, unknown>, on_raw: (more: Record<string, string>) => void, wrong?:
 * {field: string,
 * message: string, allowed: string}[]}} props
 * `specs`: number fields of a contract or of one's own ({name, label, unit, help}); `raw`: figures or texts by name;
 * `wrong`: shown beside figures that are typed
 */
export function FigureRows({ specs, raw, on_raw, wrong = [] }) {
  const [open, set_open] = useState(/** @type {string | null} */ (null));
  const [keyed, set_keyed] = useState(/** @type {{name: string, text: string, unit: string} | null} */ (null));
  return html`
    <ul class="lines figure-rows">${specs.map((spec, i) => {
      const held = String(raw[spec.name] ?? "");
      const shown = shown_in(spec.unit ?? "");
      const said =
        keyed && keyed.name === spec.name && keyed.unit === shown.unit && shown.unit !== spec.unit
          ? keyed.text
          : shown.text(held);
      const say = (/** @type {string} */ text) => {
        set_keyed({ name: spec.name, text, unit: shown.unit });
        on_raw({
          [spec.name]: text === "" || shown.unit === (spec.unit ?? "") ? text : String(shown.hold(Number(text))),
        });
      };
      const unit = shown.label;
      const bad = said === "" ? undefined : wrong.find(({ field }) => field === spec.name);
      const next = specs[i + 1];
      return html`<li key=${spec.name}>
        <button type="button" class="line whole" aria-expanded=${open === spec.name}
          onClick=${tap(() => set_open(open === spec.name ? null : spec.name))}>
          <span class="grow">${spec.label}</span>
          <span class="figures">${
            said === ""
              ? html`<span class="soft">–</span>`
              : html`<b class="hand">
            ${said.replace(".", separator())}</b>`
          } <span class="unit soft">${unit}</span></span>
        </button>
        ${bad && html`<p class="wrong"><${Icon} name="needs" size=${20} /><span>${wrong_said(spec, bad)}</span></p>`}
        ${
          open === spec.name &&
          html`
          ${spec.help && html`<p class="help">${spec.help}</p>`}
          <${Keypad} label=${spec.label} unit=${unit} value=${said} on_value=${say} />
          <p class="figure-next"><button type="button" class="quiet tall"
            onClick=${tap(() => set_open(next ? next.name : null))}>${
              next ? t("figures.next", { what: next.label }) : t("figures.done")
            }</button></p>`
        }
      </li>`;
    })}</ul>`;
}
