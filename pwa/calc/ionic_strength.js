/** Ionic strength of fresh water from its conductivity or its dissolved solids. */
import { constants } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/**
 * The ionic strength by the rule of thumb of water chemistry; give one of the two. Rule, units and sources: the Python
 * twin.
 * @param {Input<"ionic_strength">} input
 * @returns {Outputs<"ionic_strength">}
 */
export function ionic_strength({ conductivity_us_cm, tds_mg_l = 0 }) {
  const rule = constants("ionic_strength_rules");
  if (conductivity_us_cm !== undefined) return { ionic_strength_mol_l: rule.per_us_cm * conductivity_us_cm };
  return { ionic_strength_mol_l: rule.per_mg_l * tds_mg_l };
}
