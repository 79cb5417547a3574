/** One hardness or alkalinity on every scale that kits and water reports use. */
import { table } from "./tables.js";

const ANSWERED = ["dh", "ppm_caco3", "mmol_l", "meq_l", "fh", "clark", "gpg"];

/**
 * The same amount on every scale. Units and source: the Python twin.
 * @param {{value: number, unit: string}} input
 */
export function hardness_units({ value, unit }) {
  const scales = table("hardness_scales").scales;
  const mmol_l = value * scales[unit].mmol_l;
  return Object.fromEntries(ANSWERED.map((key) => [key, key === unit ? value : mmol_l / scales[key].mmol_l]));
}
