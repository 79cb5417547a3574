/**
 * What a reading can be: beyond it a point was left out or a key hit twice, and the keeper is told before it is saved.
 * Pure.
 */
import { check_fields, input_of } from "../contracts.js";
import { SPECIES } from "./level.js";

/**
 * Wider than any water with life in it (assumption): what lies within is recorded, however strange.
 * @type {Record<string, {unit: string, min: number, max: number}>}
 */
const CAN_BE = { ph: { unit: "", min: 0, max: 14 }, temperature: { unit: "°C", min: 0, max: 50 } };

/**
 * The field that such a figure is, with its range.
 * @param {{parameter: string, unit?: string}} reading
 * @param {string} label
 * @returns {any}
 */
export function figure_spec({ parameter, unit = "" }, label) {
  const { min, max } = input_of("nitrogen_units", "value");
  const range = CAN_BE[parameter] ?? (parameter in SPECIES ? { unit, min, max } : { unit, min: 0, max: 100_000 });
  return { name: "value", label, type: "number", required: true, ...range };
}

/**
 * Why a figure cannot be one, in the words of every refusal.
 * @param {any} spec
 * @param {number} value
 * @returns {{field: string, message: string, allowed: string} | null}
 */
export const no_figure = (spec, value) => check_fields([spec], { value }).errors[0] ?? null;
