/** A choice moved one step up or down by two buttons, said in words between them. */
import { html } from "../vendor/preact.js";
import { t } from "../i18n/words.js";
import { Icon } from "./icon.js";

/**
 * @param {{label: string, said: string, on_step: (way: 1 | -1) => void, can?: {less: boolean, more: boolean}}} props
 */
export const Stepper = ({ label, said, on_step, can = { less: true, more: true } }) => html`
  <div class="field">
    <span class="label">${label}</span>
    <div class="stepper in-words" role="group" aria-label=${label}>
      <button class="quiet" type="button" disabled=${!can.less} aria-label=${t("task_form.less", { what: label })}
        onClick=${() => on_step(-1)}><${Icon} name="minus" size=${28} /></button>
      <output class="amount" aria-live="polite">${said}</output>
      <button class="quiet" type="button" disabled=${!can.more} aria-label=${t("task_form.more", { what: label })}
        onClick=${() => on_step(1)}><${Icon} name="plus" size=${28} /></button>
    </div>
  </div>`;
