/** Hardness as a kit prints it, and in the German degrees that the calculations take. Pure. */
import { hardness_units } from "../calc/hardness_units.js";

/** The units of records without a unit, by parameter. @type {Record<string, string>} */
export const HARDNESS = { kh: "°dKH", gh: "°dGH" };
/** @typedef {import("../types/calculations.js").HardnessUnitsInput["unit"]} Unit */
/**
 * Scales of tables/hardness_scales.json that carbonate and general hardness share, by the unit a kit may print.
 * @type {Record<string, Unit>}
 */
const SHARED = { "mg/L CaCO₃": "ppm_caco3", "°fH": "fh", "°Clark": "clark", gpg: "gpg" };
/**
 * General hardness may be given in millimoles of calcium and magnesium, carbonate hardness in milliequivalents.
 * @type {Record<string, Record<string, Unit>>}
 */
const SCALES = {
  kh: { "°dKH": "dh", ...SHARED, "meq/L": "meq_l" },
  gh: { "°dGH": "dh", ...SHARED, "mmol/L": "mmol_l" },
};
/**
 * The units that a kit for it may print, the usual one first.
 * @param {string} parameter
 * @returns {string[] | undefined}
 */
export const hardness_printed = (parameter) =>
  Object.hasOwn(SCALES, parameter) ? Object.keys(SCALES[parameter]) : undefined;

/**
 * A reading of hardness in German degrees, which it is in if it has no unit; undefined for an unknown unit.
 * @param {{parameter: string, value: number, unit?: string}} reading
 * @returns {number | undefined}
 */
export function in_degrees({ parameter, value, unit = HARDNESS[parameter] }) {
  const scales = SCALES[parameter];
  return !Object.hasOwn(scales, unit) ? undefined : hardness_units({ value, unit: scales[unit] }).dh;
}
