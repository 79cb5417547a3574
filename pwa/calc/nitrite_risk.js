/** How dangerous nitrite is at the water's chloride, and the chloride that protects against it. */
import { nitrite_limits } from "./nitrite_limits.js";
import { constants, table } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

// Below a billionth of a milligram, far below any test, a ratio to it means nothing and may not be finite.
const NIL_MG_L = 1e-9;

/**
 * Limits of nitrite at this chloride, where the reading lies, and the salt for ten times as much chloride. Equations,
 * units and source: the Python twin.
 * @param {Input<"nitrite_risk">} input
 * @returns {Outputs<"nitrite_risk">}
 */
export function nitrite_risk({ nitrite_mg_n_l, chloride_mg_l = 0, volume_l }) {
  const nitrite_mg_l = nitrite_mg_n_l * constants("nitrogen_species").no2_per_n;
  const { mean_mg_n_l, maximum_mg_n_l } = nitrite_limits(chloride_mg_l);
  const to_add_mg_l = Math.max(0, constants("chloride_shield").chloride_per_nitrite * nitrite_mg_l - chloride_mg_l);
  const { rows, ions } = table("salts");
  const salt_mg_l = (to_add_mg_l * rows.sodium_chloride.g_mol) / ions.cl.g_mol;
  const risk =
    nitrite_mg_n_l <= mean_mg_n_l ? "below_both" : nitrite_mg_n_l <= maximum_mg_n_l ? "between" : "above_both";
  /** @type {Outputs<"nitrite_risk">} */
  const answer = {
    risk,
    mean_limit_mg_n_l: mean_mg_n_l,
    maximum_limit_mg_n_l: maximum_mg_n_l,
    nitrite_mg_l,
    chloride_to_add_mg_l: to_add_mg_l,
    salt_mg_l,
    notes: risk === "above_both" ? ["change_first"] : [],
  };
  if (nitrite_mg_l > NIL_MG_L) answer.chloride_per_nitrite = chloride_mg_l / nitrite_mg_l;
  if (volume_l !== undefined) answer.salt_g = (salt_mg_l * volume_l) / 1000;
  return answer;
}
