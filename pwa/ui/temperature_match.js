/** How much water from the cold and the hot tap makes the new water as warm as the tank's. */
import { html } from "../vendor/preact.js";
import { tap_mix, warmth_of } from "../advice/warmth.js";
import { caution } from "../contracts.js";
import { t, when } from "../i18n/words.js";
import { use_draft } from "./state/draft.js";
import { litres_said, temperature_said } from "./words/figures.js";
import { KnownFrom } from "./contract/known_from.js";
import { StepRow } from "./step_row.js";

/** Usual temperatures of taps (common practice); the phone remembers the keeper's own once set. */
const TAPS = { cold: 12, hot: 50 };

/** @param {{facts: import("../types/advice.js").Facts, litres: number}} props litres that the contract takes */
export function TemperatureMatch({ facts, litres }) {
  const taps = use_draft("taps", () => TAPS);
  const warm = warmth_of(facts);
  const of_tap = (/** @type {"cold" | "hot"} */ name, /** @type {number} */ max) => html`
    <${StepRow} label=${t(`warmth.${name}`)} unit="°C" min=${1} max=${max} value=${taps.value[name]}
      on_value=${(/** @type {number} */ value) => (taps.value = { ...taps.value, [name]: value })} />`;
  return html`
    <details class="more section"><summary>${t("warmth.title")}</summary>
      ${
        warm
          ? html`
        <p class="soft">
          ${
            warm.at
              ? t("warmth.read", { warmth: temperature_said(warm.celsius), when: when(warm.at, facts.now) })
              : t("warmth.usual", { warmth: temperature_said(warm.celsius) })
          }</p>
        ${of_tap("cold", 40)}${of_tap("hot", 80)}
        <${Mixed} mix=${tap_mix(litres, warm.celsius, taps.value)} />
        <p class="caution small">${caution("water_blend", "hot_water")}</p>`
          : html`<p class="soft">${t("warmth.unknown")}</p>`
      }
    </details>`;
}

/** @param {{mix: ReturnType<typeof tap_mix>}} props */
const Mixed = ({ mix }) => html`
  <p class="sentence" aria-live="polite">
    ${t("warmth.pour", {
      cold: litres_said(mix.cold_l),
      hot: litres_said(mix.hot_l),
      warmth: temperature_said(mix.reached_c),
    })}</p>
  ${!mix.met && html`<p class="wrong">${t("warmth.missed")}</p>`}
  <${KnownFrom} name="water_blend" input=${mix.input} answer=${mix.answer} />`;
