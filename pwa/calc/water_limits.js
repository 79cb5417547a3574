/** The working limits of one water: total ammonia, nitrite and nitrate to keep, and to act on at once. */
import { ammonia_limits } from "./ammonia_limits.js";
import { nitrite_limits } from "./nitrite_limits.js";
import { constants, table } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/**
 * The limits that advice and forecasts hold a tank to. Equations, units and source: the Python twin.
 * @param {Input<"water_limits">} input
 * @returns {Outputs<"water_limits">}
 */
export function water_limits({ ph, temperature_c, chloride_mg_l }) {
  const ammonia = ammonia_limits({ ph, temperature_c });
  const { eifac_tan_mg_n_l: eifac, chronic_tan_mg_n_l: chronic, fraction } = ammonia;
  const { limits, nitrite_by_chloride } = table("limits");
  const tan_mg_n_l = Math.min(eifac, chronic);
  const nitrite = nitrite_limits(chloride_mg_l ?? nitrite_by_chloride.unknown_chloride_mg_l);
  const act_nh3_mg_n_l = limits.free_ammonia_act_mg_l.value / constants("nitrogen_species").nh3_per_n;
  return {
    tan_mg_n_l,
    tan_by: eifac <= chronic ? "eifac" : "chronic",
    tan_act_mg_n_l: Math.min(ammonia.acute_tan_mg_n_l, act_nh3_mg_n_l / fraction),
    nh3_mg_n_l: fraction * tan_mg_n_l,
    nitrite_mg_n_l: nitrite.mean_mg_n_l,
    nitrite_act_mg_n_l: nitrite.maximum_mg_n_l,
    nitrate_mg_n_l: limits.nitrate_mg_n_l.value,
    notes: [...(ammonia.notes ?? []), ...(chloride_mg_l === undefined ? ["chloride_unknown"] : [])],
  };
}
