/**
 * What a reading can be. Beyond it a decimal point was left out or a key hit twice, and the keeper is told before it
 * is saved. Pure.
 */
import { check_fields, input_of } from "../contracts.js";
import { is_watched } from "./level.js";

/** @import { Field } from "../types/contract.js" */
/** @import { FieldError } from "../contracts.js" */

/**
 * Wider than any water with life in it (assumption): a figure within is recorded, however strange.
 * @type {Record<string, {unit: string, min: number, max: number}>}
 */
const CAN_BE = { ph: { unit: "", min: 0, max: 14 }, temperature: { unit: "°C", min: 0, max: 50 } };

/**
 * The field for such a figure, with its range.
 * @param {{parameter: string, unit?: string}} reading
 * @param {string} label
 * @returns {Field}
 */
export function figure_spec({ parameter, unit = "" }, label) {
  const { min, max } = input_of("nitrogen_units", "value");
  const range = CAN_BE[parameter] ?? (is_watched(parameter) ? { unit, min, max } : { unit, min: 0, max: 100_000 });
  return { name: "value", label, type: "number", required: true, ...range };
}

/**
 * Why a figure is refused, in the usual words; null if it is not.
 * @param {Field} spec
 * @param {number} value
 * @returns {FieldError | null}
 */
export const no_figure = (spec, value) => check_fields([spec], { value }).errors[0] ?? null;
