/** A plan that takes newcomers from the water in their bag to the tank's water, by drip or by swaps. */
import { TOLERANCE } from "./tolerance.js";
import { Refusal } from "./refusal.js";
import { constants } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/**
 * Minutes to float the bag, then the tank water to add at each step. Equations, units and source: the Python twin.
 * @param {Input<"acclimation">} input
 * @returns {Outputs<"acclimation">}
 */
export function acclimation({
  bag_l,
  bag_temperature_c,
  tank_temperature_c,
  bag_ph,
  tank_ph,
  bag_gh_dgh,
  tank_gh_dgh,
  method = "drip",
  vessel_l,
  hours_in_bag = 0,
}) {
  const ph_gap = bag_ph === undefined || tank_ph === undefined ? undefined : Math.abs(bag_ph - tank_ph);
  const gh_gap = bag_gh_dgh === undefined || tank_gh_dgh === undefined ? undefined : Math.abs(bag_gh_dgh - tank_gh_dgh);
  const float_minutes = minutes_to_float(Math.abs(bag_temperature_c - tank_temperature_c));
  const [steps, step_minutes] = steps_for(minutes_to_mix(ph_gap, gh_gap));
  const left = share_left(ph_gap, gh_gap);
  const rows = plan_rows(bag_l, vessel_l, method, steps, step_minutes, left);
  const plan = rows.map(({ share, after_l, ...row }) => ({
    ...row,
    ...(bag_ph !== undefined && tank_ph !== undefined && { ph: tank_ph + share * (bag_ph - tank_ph) }),
    ...(bag_gh_dgh !== undefined &&
      tank_gh_dgh !== undefined && { gh_dgh: tank_gh_dgh + share * (bag_gh_dgh - tank_gh_dgh) }),
  }));
  return {
    float_minutes,
    mix_minutes: steps * step_minutes,
    total_minutes: float_minutes + steps * step_minutes,
    tank_water_l: rows.reduce((total, row) => total + row.add_l, 0),
    vessel_at_most_l: Math.max(...rows.map((row) => row.after_l)),
    bag_share_left: left,
    plan,
    notes: notes_on(ph_gap, gh_gap, hours_in_bag),
  };
}

/** @param {number} gap_c */
function minutes_to_float(gap_c) {
  const practice = constants("acclimation_practice");
  if (gap_c <= practice.close_c + TOLERANCE) return 0;
  return Math.max(constants("acclimation_fao").float_least_minutes, gap_c * practice.float_minutes_per_c);
}

/** @param {number | undefined} ph_gap @param {number | undefined} gh_gap */
function minutes_to_mix(ph_gap, gh_gap) {
  const fao = constants("acclimation_fao");
  const for_gh = (gh_gap ?? 0) * constants("acclimation_practice").mix_minutes_per_dgh;
  const minutes = Math.max(fao.mix_least_minutes, for_gh);
  return is_ph_far(ph_gap) ? Math.max(minutes, fao.ph_far_minutes) : minutes;
}

/** @param {number | undefined} ph_gap */
const is_ph_far = (ph_gap) => ph_gap !== undefined && ph_gap > constants("acclimation_fao").ph_far + TOLERANCE;

/**
 * The number of steps and the minutes of each: steps of 5 minutes up to 1 h, of 15 up to 4 h, else of 60.
 * @param {number} minutes
 */
function steps_for(minutes) {
  const length = minutes <= 60 + TOLERANCE ? 5 : minutes <= 240 + TOLERANCE ? 15 : 60;
  return [Math.ceil(minutes / length - TOLERANCE), length];
}

/** @param {number | undefined} ph_gap @param {number | undefined} gh_gap */
function share_left(ph_gap, gh_gap) {
  const practice = constants("acclimation_practice");
  let left = practice.bag_share_left;
  if (ph_gap !== undefined && ph_gap * left > practice.close_ph) left = practice.close_ph / ph_gap;
  if (gh_gap !== undefined && gh_gap * left > practice.close_dgh) left = practice.close_dgh / gh_gap;
  return left;
}

/**
 * @param {number} bag_l @param {number | undefined} vessel_l @param {string} method @param {number} steps
 * @param {number} step_minutes @param {number} left
 */
function plan_rows(bag_l, vessel_l, method, steps, step_minutes, left) {
  const rows = [];
  let [now_l, share] = [bag_l, 1];
  for (let step = 1; step <= steps; step++) {
    const after = 1 - (step * (1 - left)) / steps;
    let [pour_off_l, add_l] = [0, 0];
    if (method === "steps") pour_off_l = add_l = now_l * (1 - after / share);
    else {
      if (spills((now_l * share) / after, vessel_l)) {
        pour_off_l = now_l - bag_l;
        now_l = bag_l;
      }
      add_l = now_l * (share / after - 1);
      now_l += add_l;
    }
    if (spills(now_l, vessel_l)) throw new Refusal("vessel_too_small");
    const drip = method === "drip" ? flow((add_l * 1000) / step_minutes) : {};
    rows.push({ minute: step * step_minutes, pour_off_l, add_l, ...drip, share: after, after_l: now_l });
    share = after;
  }
  return rows;
}

/** @param {number} ml_minute */
function flow(ml_minute) {
  const drops = constants("drops");
  const drops_s = (ml_minute * drops.drops_per_ml) / 60;
  return { ml_minute, ...(drops_s <= drops.countable_s && { drops_s }) };
}

/** @param {number} litres @param {number | undefined} vessel_l */
const spills = (litres, vessel_l) => vessel_l !== undefined && litres > vessel_l + TOLERANCE;

/** @param {number | undefined} ph_gap @param {number | undefined} gh_gap @param {number} hours_in_bag */
function notes_on(ph_gap, gh_gap, hours_in_bag) {
  const practice = constants("acclimation_practice");
  const notes = hours_in_bag >= practice.long_in_bag_hours ? ["long_in_bag"] : [];
  if (is_ph_far(ph_gap)) notes.push("ph_far");
  if (gh_gap !== undefined && gh_gap > practice.far_dgh + TOLERANCE) notes.push("gh_far");
  if (ph_gap === undefined && gh_gap === undefined) notes.push("nothing_measured");
  return notes;
}
