/**
 * The words of a refusal beside its field: ranges in the unit shown, the labels of choices instead of their codes.
 */
import { ends_shown, range_shown } from "./form.js";
import { parts_of, with_parts } from "./refusal_parts.js";

/** @import { Item } from "../types/contract.js" */

/**
 * @param {Item | {label?: string, type?: undefined} | undefined} spec of the field, undefined if none is known
 * @param {{message: string, allowed: string}} error @param {string} system of measures
 * @param {import("../figures/number_text.js").Marks} marks @returns {{message: string, allowed: string}}
 */
export function wrong_words(spec, { message, allowed }, system, marks) {
  if (spec?.type === "choice") {
    const choices = spec.choices.map((one) => one.label).join(", ");
    return {
      message: parts_of("not_choice", message) ? with_parts("not_choice", { choices }) : message,
      allowed: choices,
    };
  }
  if (spec?.type !== "number" && spec?.type !== "integer") return { message, allowed };
  const ends = ends_shown(spec, system, marks);
  if (!ends) return { message, allowed };
  const out = parts_of("out_of_range", message);
  return {
    message: out ? with_parts("out_of_range", { ...ends, unit: ` ${ends.unit}` }) : message,
    allowed: range_shown(spec, system, marks),
  };
}
