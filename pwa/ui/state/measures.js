/** The system of measures on this phone: chosen once, saved, shown everywhere. Records always hold litres and °C. */
import { SAID_DIGITS, shown_number } from "../../bench/draft.js";
import { convert, unit_in, unit_label } from "../../figures/units.js";
import { draft } from "./draft.js";

/** US gallons where tanks are sold by them, litres elsewhere. */
const guess = () => (navigator.language.endsWith("-US") || navigator.language.endsWith("-LR") ? "us" : "metric");

/** @type {import("../../vendor/preact.js").Signal<string>} */
export const measures = draft("measures", guess);

/** How the keypad writes numbers. */
const KEYPAD = { decimal: ".", group: "" };

/**
 * How a figure held in `unit` is shown and typed on this phone: `show` and `hold` convert there and back; `text` gives
 * what was typed in the unit shown now, whichever unit it was typed in.
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
      typed ? shown_number({ text: typed, unit: keyed_in }, other, KEYPAD, SAID_DIGITS).text : "",
  };
}
