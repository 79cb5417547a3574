/** How dangerous nitrite is at the water's chloride, and the chloride that protects against it. */
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
  const { points } = table("limits").nitrite_by_chloride;
  const sensitive = between(points, chloride_mg_l, "sensitive_mg_n_l");
  const other = between(points, chloride_mg_l, "other_mg_n_l");
  const to_add_mg_l = Math.max(0, constants("chloride_shield").chloride_per_nitrite * nitrite_mg_l - chloride_mg_l);
  const { rows, ions } = table("salts");
  const salt_mg_l = (to_add_mg_l * rows.sodium_chloride.g_mol) / ions.cl.g_mol;
  const risk = nitrite_mg_n_l <= sensitive ? "below_both" : nitrite_mg_n_l <= other ? "between" : "above_both";
  /** @type {Outputs<"nitrite_risk">} */
  const answer = {
    risk,
    sensitive_limit_mg_n_l: sensitive,
    other_limit_mg_n_l: other,
    nitrite_mg_l,
    chloride_to_add_mg_l: to_add_mg_l,
    salt_mg_l,
    notes: risk === "above_both" ? ["change_first"] : [],
  };
  if (nitrite_mg_l > NIL_MG_L) answer.chloride_per_nitrite = chloride_mg_l / nitrite_mg_l;
  if (volume_l !== undefined) answer.salt_g = (salt_mg_l * volume_l) / 1000;
  return answer;
}

/**
 * The column at this chloride, interpolated linearly between the points.
 * @param {Record<string, number>[]} points @param {number} chloride_mg_l @param {string} column
 */
function between(points, chloride_mg_l, column) {
  if (chloride_mg_l <= points[0].chloride_mg_l) return points[0][column];
  for (let index = 1; index < points.length; index++) {
    const [low, high] = [points[index - 1], points[index]];
    if (chloride_mg_l <= high.chloride_mg_l) {
      const share = (chloride_mg_l - low.chloride_mg_l) / (high.chloride_mg_l - low.chloride_mg_l);
      return low[column] + share * (high[column] - low[column]);
    }
  }
  return points[points.length - 1][column];
}
