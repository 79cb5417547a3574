/** One hardness or alkalinity on every scale that kits and water reports use. */
import { table } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

const ANSWERED = ["dh", "ppm_caco3", "mmol_l", "meq_l", "fh", "clark", "gpg"];

/**
 * The same amount on every scale. Units and source: the Python twin.
 * @param {Input<"hardness_units">} input
 * @returns {Outputs<"hardness_units">}
 */
export function hardness_units({ value, unit }) {
  const scales = table("hardness_scales").scales;
  const mmol_l = value * scales[unit].mmol_l;
  const found = Object.fromEntries(ANSWERED.map((key) => [key, key === unit ? value : mmol_l / scales[key].mmol_l]));
  return /** @type {Outputs<"hardness_units">} */ (/** @type {unknown} */ (found));
}
