/** What is left of a substance after partial water changes, and the change that reaches a target. */
import { Refusal } from "./refusal.js";

/** @import {Input, Outputs} from "../types/contract.js" */

// A level counts as settled when this share of the way is left (assumption).
export const SETTLED_SHARE = 0.05;

/**
 * The level after successive changes; with a target, the one further change that reaches it. Equations, units and
 * refusals: the Python twin.
 * @param {Input<"dilution">} input
 * @returns {Outputs<"dilution">}
 */
export function dilution({
  before_mg_l,
  source_mg_l = 0,
  fractions = [],
  target_mg_l,
  load_mg_l_day,
  every_days = 0,
  routine_fraction = 0,
}) {
  let after_mg_l = before_mg_l;
  const after_each_mg_l = fractions.map((fraction) => {
    after_mg_l = after_mg_l * (1 - fraction) + source_mg_l * fraction;
    return after_mg_l;
  });
  /** @type {Outputs<"dilution">} */
  const answer = { after_mg_l };
  if (after_each_mg_l.length) answer.after_each_mg_l = after_each_mg_l;
  if (target_mg_l !== undefined) answer.fraction_needed = needed(after_mg_l, source_mg_l, target_mg_l);
  if (load_mg_l_day !== undefined) {
    const rise_mg_l = load_mg_l_day * every_days;
    const before_change_mg_l = source_mg_l + rise_mg_l / routine_fraction;
    answer.settles_before_mg_l = before_change_mg_l;
    answer.settles_after_mg_l = before_change_mg_l - rise_mg_l;
    answer.settles_in_days = (Math.log(SETTLED_SHARE) / Math.log(1 - routine_fraction)) * every_days;
  }
  answer.notes = source_mg_l > before_mg_l ? ["source_raises"] : [];
  return answer;
}

/** @param {number} level_mg_l @param {number} source_mg_l @param {number} target_mg_l */
function needed(level_mg_l, source_mg_l, target_mg_l) {
  if (level_mg_l <= target_mg_l) return 0;
  if (source_mg_l > target_mg_l) throw new Refusal("source_above_target");
  return (level_mg_l - target_mg_l) / (level_mg_l - source_mg_l);
}
