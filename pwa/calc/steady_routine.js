/** Where a substance settles under feeding or dosing, water changes, evaporation and topping up, in the long run. */
import { SETTLED_SHARE } from "./dilution.js";

/** @import {Input, Outputs} from "../types/contract.js" */

// Tolerance for float rounding at the ceiling.
const ROUNDING = 1e-9;
/** Less than this is none: by it no number of days is finite (assumption). */
const LEAST_RISE_MG_L_DAY = 1e-12;

/**
 * The level just before and just after a change, once a routine has run long enough. Equations, units and source: the
 * Python twin.
 * @param {Input<"steady_routine">} input
 * @returns {Outputs<"steady_routine">}
 */
export function steady_routine(input) {
  const { add_mg_l_day, change_fraction, every_days, source_mg_l = 0, ceiling_mg_l } = input;
  const { evaporation_fraction_day = 0, top_up_mg_l = 0 } = input;
  const rise_mg_l_day = add_mg_l_day + evaporation_fraction_day * top_up_mg_l;
  const rise_mg_l = rise_mg_l_day * every_days;
  const before_change_mg_l = source_mg_l + rise_mg_l / change_fraction;
  /** @type {Outputs<"steady_routine">} */
  const answer = {
    before_change_mg_l,
    after_change_mg_l: before_change_mg_l - rise_mg_l,
    days_to_settle: (Math.log(SETTLED_SHARE) / Math.log(1 - change_fraction)) * every_days,
    rise_mg_l_day,
    notes: [],
  };
  if (ceiling_mg_l === undefined) return answer;
  const spare_mg_l = ceiling_mg_l - source_mg_l;
  if (before_change_mg_l > ceiling_mg_l * (1 + ROUNDING))
    answer.notes = [spare_mg_l > 0 ? "above_ceiling" : "source_above_ceiling"];
  if (spare_mg_l > 0 && rise_mg_l_day > LEAST_RISE_MG_L_DAY) {
    answer.every_days_needed = (spare_mg_l * change_fraction) / rise_mg_l_day;
    if (rise_mg_l <= spare_mg_l) answer.fraction_needed = rise_mg_l / spare_mg_l;
  }
  return answer;
}
