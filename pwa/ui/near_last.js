/** Tiles around a tank's last temperature: water warms and cools slowly, so the next reading is seldom far off. */
import { html } from "../vendor/preact.js";
import { figure_spec, no_figure } from "../advice/readable.js";
import { number, t } from "../i18n/words.js";
import { all } from "./state/live.js";
import { shown_in } from "./state/measures.js";
import { tap } from "./state/tap.js";

/** Half degrees Celsius, whole degrees Fahrenheit: as fine as a tank's thermometer is read (assumption). */
const STEP = { "°C": 0.5, "°F": 1 };
const EACH_SIDE = 2;

/**
 * Five figures around the last one, in the unit shown; a temperature that water cannot have is left out.
 * @param {number} last temperature in °C
 * @param {ReturnType<typeof shown_in>} how it is shown on this phone
 * @returns {{text: string, celsius: number}[]} `text` as typed on the keypad
 */
export function figures_near(last, { unit, show, hold }) {
  const step = unit === "°F" ? STEP["°F"] : STEP["°C"];
  const middle = Math.round(show(last) / step);
  const spec = figure_spec({ parameter: "temperature", unit: "°C" }, "");
  return Array.from({ length: 2 * EACH_SIDE + 1 }, (_, i) => (middle + i - EACH_SIDE) * step)
    .map((shown) => ({ text: String(shown), celsius: Number(hold(shown).toPrecision(6)) }))
    .filter(({ celsius }) => no_figure(spec, celsius) === null);
}

/** The tank's newest temperature in °C. @param {string} tank */
function last_temperature(tank) {
  const read = all("reading").filter(
    ({ tank: of, parameter, unit }) => of === tank && parameter === "temperature" && unit === "°C",
  );
  return read.reduce((late, reading) => (late && late.at >= reading.at ? late : reading), read.at(0))?.value;
}

/**
 * @param {{tank: string, chosen: number | undefined, on_pick: (text: string, celsius: number) => void}} props
 * `chosen`: the temperature read so far in °C
 */
export function NearLast({ tank, chosen, on_pick }) {
  const last = last_temperature(tank);
  if (last === undefined) return null;
  const shown = shown_in("°C");
  return html`
    <div class="tiles five" role="group" aria-label=${t("test.near_last")}>
      ${figures_near(last, shown).map(
        ({ text, celsius }) => html`
        <button type="button" key=${text} aria-pressed=${chosen === celsius}
          onClick=${tap(() => on_pick(text, celsius))}>${number(Number(text), shown.unit === "°F" ? 0 : 1)}</button>`,
      )}
    </div>`;
}
