/** The system of measures on this phone: chosen once, kept, shown everywhere; records hold litres and °C. */
import { shown_number } from "../../bench/draft.js";
import { convert, unit_in, unit_label } from "../../figures/units.js";
import { draft } from "./draft.js";

/** Countries where a tank is sold by the US gallon; elsewhere litres stand on the glass. */
const guess = () => (navigator.language.endsWith("-US") || navigator.language.endsWith("-LR") ? "us" : "metric");

/** @type {import("../../vendor/preact.js").Signal<string>} */
export const measures = draft("measures", guess);

/** What the keypad writes. */
const KEYPAD = { decimal: ".", group: "" };

/**
 * How a figure held in `unit` is shown and keyed in on this phone: `show` and `hold` convert there and back,
 * `text` gives what was keyed in, in the unit shown now, whatever unit it was keyed in.
 * @param {string} unit
 */
export function shown_in(unit) {
  const other = unit_in({ name: "", unit }, measures.value);
  return {
    unit: other,
    label: unit_label(other),
    show: (/** @type {number} */ value) => convert(value, unit, other),
    hold: (/** @type {number} */ value, keyed_in = other) => convert(value, keyed_in, unit),
    text: (/** @type {string | null} */ typed, keyed_in = unit) =>
      typed ? shown_number({ text: typed, unit: keyed_in }, other, KEYPAD).text : "",
  };
}
