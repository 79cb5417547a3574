/** An amount set by thumb: two buttons step it down and up, a tap on the figure opens the keypad. */
import { html, useSignal } from "../vendor/preact.js";
import { stepped } from "../advice/journal/steps.js";
import { short, t } from "../i18n/words.js";
import { Icon } from "./icon.js";
import { Keypad } from "./keypad.js";
import { tap } from "./state/tap.js";

/**
 * @param {{label: string, unit: string, value: number, typed: string | null, step: number, least: number, most: number,
 * on_type: (text: string) => void}} props
 * `typed`: what the keeper set, as text with a point; null while `value` is only suggested
 */
export function Amount({ label, unit, value, typed, step, least, most, on_type }) {
  const keypad = useSignal(false);
  const figure = (/** @type {number} */ amount) => short(amount, amount >= 100 ? 1 : amount >= 10 ? 2 : 3);
  const said = (/** @type {number} */ amount) => `${figure(amount)} ${unit}`.trim();
  const by = (/** @type {1 | -1} */ way) => on_type(String(stepped(value || 0, step, way, least, most)));
  return html`
    <div class="stepper" role="group" aria-label=${label}>
      <button class="quiet" type="button" aria-label=${t("amount.less", { step: said(step) })} onClick=${() => by(-1)}>
        <${Icon} name="minus" size=${28} /></button>
      <button class="amount" type="button" aria-expanded=${keypad.value}
        aria-label=${t("amount.type", { amount: said(value || 0) })}
        onClick=${tap(() => (keypad.value = !keypad.value))}>
        <span>${figure(value || 0)} <small>${unit}</small></span></button>
      <button class="quiet" type="button" aria-label=${t("amount.more", { step: said(step) })} onClick=${() => by(1)}>
        <${Icon} name="plus" size=${28} /></button>
    </div>
    ${keypad.value && html`<${Keypad} label=${label} unit=${unit} value=${typed ?? ""} on_value=${on_type} />`}`;
}
