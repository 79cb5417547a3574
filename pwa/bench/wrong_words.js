/** The words of a refusal as they stand beside its field: ranges in the unit shown, choices by their labels instead of their codes. */
import { endsShown, rangeShown } from "./form.js";
import { partsOf, withParts } from "./refusal_parts.js";

/**
 * @param {any} spec of the field @param {{message: string, allowed: string}} error @param {string} system of measures
 * @param {import("./number_text.js").Marks} marks @returns {{message: string, allowed: string}}
 */
export function wrongWords(spec, { message, allowed }, system, marks) {
  if (spec?.type === "choice") {
    const choices = spec.choices.map((/** @type {any} */ one) => one.label).join(", ");
    return {
      message: partsOf("not_choice", message) ? withParts("not_choice", { choices }) : message,
      allowed: choices,
    };
  }
  const ends = spec?.type === "number" || spec?.type === "integer" ? endsShown(spec, system, marks) : null;
  if (!ends) return { message, allowed };
  const out = partsOf("out_of_range", message);
  return {
    message: out ? withParts("out_of_range", { ...ends, unit: ` ${ends.unit}` }) : message,
    allowed: rangeShown(spec, system, marks),
  };
}
