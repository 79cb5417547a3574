/** Hardness as a kit prints it, and in the German degrees that the calculations take. Pure. */
import { hardness_units } from "../calc/hardness_units.js";

/** Ours, by parameter. @type {Record<string, string>} */
export const HARDNESS = { kh: "°dKH", gh: "°dGH" };
/**
 * Scales of tables/hardness_scales.json that carbonate and general hardness share, by the unit a kit may print.
 * @type {Record<string, string>}
 */
const SHARED = { "mg/L CaCO₃": "ppm_caco3", "°fH": "fh", "°Clark": "clark", gpg: "gpg" };
/**
 * Millimoles are those of calcium and magnesium in general hardness; carbonate hardness given so counts charges.
 * @type {Record<string, Record<string, string>>}
 */
const SCALES = {
  kh: { "°dKH": "dh", ...SHARED, "meq/L": "meq_l" },
  gh: { "°dGH": "dh", ...SHARED, "mmol/L": "mmol_l" },
};
/**
 * The units a kit for it may be set down with, ours first.
 * @param {string} parameter
 * @returns {string[] | undefined}
 */
export const hardness_printed = (parameter) =>
  Object.hasOwn(SCALES, parameter) ? Object.keys(SCALES[parameter]) : undefined;

/**
 * A reading of hardness in degrees; without a unit it is in them; undefined where its unit is not known.
 * @param {{parameter: string, value: number, unit?: string}} reading
 * @returns {number | undefined}
 */
export function in_degrees({ parameter, value, unit = HARDNESS[parameter] }) {
  const scales = SCALES[parameter];
  return !Object.hasOwn(scales, unit) ? undefined : hardness_units({ value, unit: scales[unit] }).dh;
}
