/** Dechlorinator for a water change: by the label, as two plain chemicals, and the ammonia freed from chloramine. */
import { Refusal } from "./refusal.js";
import { constants } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/**
 * The dose by the keeper's own label, and by chemistry for a known level of disinfectant. Equations, units and
 * refusals: the Python twin.
 * @param {Input<"dechlorinator_dose">} input
 * @returns {Outputs<"dechlorinator_dose">}
 */
export function dechlorinator_dose({
  change_l,
  tank_l,
  basis = "new_water",
  label_ml,
  label_per_l = 1,
  disinfectant,
  disinfectant_mg_l = 0,
}) {
  if (label_ml === undefined && disinfectant === undefined) throw new Refusal("nothing_to_work_from");
  if (tank_l === undefined && basis === "whole_tank") throw new Refusal("tank_needed");
  if (tank_l !== undefined && change_l > tank_l) throw new Refusal("change_above_tank");
  const treated_l = basis === "whole_tank" ? /** @type {number} */ (tank_l) : change_l;
  /** @type {Outputs<"dechlorinator_dose">} */
  const answer = { treated_l };
  const notes = [];
  if (label_ml !== undefined) answer.label_dose_ml = (label_ml * treated_l) / label_per_l;
  if (disinfectant !== undefined) {
    const ratio = constants("dechlorination");
    const chlorine_mg = disinfectant_mg_l * change_l;
    answer.thiosulfate_pentahydrate_mg = ratio.thiosulfate_field * chlorine_mg;
    answer.thiosulfate_pentahydrate_safe_mg = ratio.thiosulfate_safe * chlorine_mg;
    answer.ascorbic_acid_mg = ratio.ascorbic_acid * chlorine_mg;
    const freed_mg_n_l = disinfectant === "chloramine" ? ratio.chloramine_n * disinfectant_mg_l : 0;
    answer.freed_ammonia_mg_n_l = freed_mg_n_l;
    if (tank_l !== undefined) answer.freed_ammonia_in_tank_mg_n_l = (freed_mg_n_l * change_l) / tank_l;
    if (freed_mg_n_l > 0) notes.push("ammonia_freed");
  }
  return { ...answer, notes };
}
