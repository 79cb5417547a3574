/** How fast nitrification uses up carbonate hardness, and whether water changes keep up with it. */
import { nitrogen_load } from "./nitrogen_load.js";
import { Refusal } from "./refusal.js";
import { constants, table } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

// Nobody plans further ahead: a floor that is not reached in ten years is not reached.
const FAR_DAYS = 3650;
// Tolerance for float rounding at the floor.
const ROUNDING = 1e-9;

/**
 * Carbonate hardness used up a day, and the days until a floor is reached. Equations, units and refusals: the Python
 * twin.
 * @param {Input<"alkalinity_use">} input
 * @returns {Outputs<"alkalinity_use">}
 */
export function alkalinity_use(input) {
  const { kh_dkh, floor_kh_dkh = 1, source_kh_dkh, change_fraction, every_days } = input;
  const nitrified_mg_n_l_day = nitrified(input);
  const { acid_mol_per_mol_n } = constants("nitrification");
  const acid_mmol_l_day = (nitrified_mg_n_l_day / constants("molar_mass").n_g_mol) * acid_mol_per_mol_n;
  const use = acid_mmol_l_day / (2 * table("hardness_scales").scales.dh.mmol_l);
  /** @type {Outputs<"alkalinity_use">} */
  const answer = { kh_dkh_per_day: use, nitrified_mg_n_l_day };
  const notes = kh_dkh <= floor_kh_dkh ? ["at_floor"] : [];
  /** @type {number} */ let days;
  if (change_fraction === undefined || every_days === undefined) {
    days = days_without_changes(kh_dkh, floor_kh_dkh, use);
  } else {
    if (source_kh_dkh === undefined) throw new Refusal("no_source_kh");
    const used_between = use * every_days;
    days = days_with_changes(kh_dkh, floor_kh_dkh, used_between, source_kh_dkh, change_fraction, every_days);
    const steady = source_kh_dkh - used_between / change_fraction;
    if (steady >= 0) answer.steady_kh_dkh = steady;
    if (steady < floor_kh_dkh - ROUNDING) notes.push("not_held");
    const spare = source_kh_dkh - floor_kh_dkh;
    if (spare > 0 && used_between <= spare) answer.fraction_needed = used_between / spare;
  }
  if (days <= FAR_DAYS) answer.days_to_floor = days;
  return { ...answer, notes };
}

/** The nitrogen as given, or the ammonia of the food, in mg N/L a day. @param {Input<"alkalinity_use">} input */
function nitrified({ nitrogen_mg_n_l_day = 0, feed_g_day, protein_fraction = 0, volume_l = 0 }) {
  return feed_g_day === undefined
    ? nitrogen_mg_n_l_day
    : nitrogen_load({ feed_g_day, protein_fraction, volume_l }).tan_mg_n_l_day;
}

/**
 * Days until the floor at a steady use; infinite if nothing is used.
 * @param {number} kh_dkh @param {number} floor_kh_dkh @param {number} use
 */
function days_without_changes(kh_dkh, floor_kh_dkh, use) {
  return kh_dkh <= floor_kh_dkh ? 0 : (kh_dkh - floor_kh_dkh) / use;
}

/**
 * Days until the floor, from change to change; infinite if it is not reached within FAR_DAYS.
 * @param {number} kh_dkh @param {number} floor_kh_dkh @param {number} used_between @param {number} source_kh_dkh
 * @param {number} fraction @param {number} every_days
 */
function days_with_changes(kh_dkh, floor_kh_dkh, used_between, source_kh_dkh, fraction, every_days) {
  if (kh_dkh <= floor_kh_dkh) return 0;
  let now = kh_dkh;
  for (let day = 0; day < FAR_DAYS; day += every_days) {
    if (now < floor_kh_dkh - ROUNDING) return day;
    const lowest = now - used_between;
    if (lowest < floor_kh_dkh - ROUNDING) return day + ((now - floor_kh_dkh) / used_between) * every_days;
    now = lowest * (1 - fraction) + source_kh_dkh * fraction;
  }
  return Infinity;
}
