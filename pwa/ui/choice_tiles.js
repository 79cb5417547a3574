/** A choice of one among a few, as tiles. */
import { html } from "../vendor/preact.js";
import { Icon } from "./icon.js";

/**
 * @param {{label: string, name: string, choices: {value: string, label: string}[], value: string | undefined, icons?:
 * boolean, on_value: (value: string) => void}} props `icons`: each choice has a drawing of its value's name
 */
export const ChoiceTiles = ({ label, name, choices, value, icons = false, on_value }) => html`
  <fieldset class="field"><legend class="label">${label}</legend>
    <div class="tiles two choices">${choices.map(
      (choice) => html`
      <label key=${choice.value}><input class="unseen" type="radio" name=${name} value=${choice.value}
        checked=${value === choice.value}
        onChange=${() => on_value(choice.value)} />${icons && html`<${Icon} name=${choice.value} size=${40} />`}
          ${choice.label}</label>`,
    )}</div>
  </fieldset>`;
