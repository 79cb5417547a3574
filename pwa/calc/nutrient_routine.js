/** What a routine of fertiliser salts gives a week, what piles up under water changes, and the dose for a target. */
import { Refusal } from "./refusal.js";
import { effects_of } from "./salt_dose.js";
import { constants, table } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

// What falls out together with calcium in one bottle.
const CLOUDS = ["so4", "po4", "co3", "hco3"];

/**
 * Ions and hardness that the doses of a week add to each litre, and where each settles. Equations, units, refusals and
 * source: the Python twin.
 * @param {Input<"nutrient_routine">} input
 * @returns {Outputs<"nutrient_routine">}
 */
export function nutrient_routine(input) {
  const { water_l, salts, doses_per_week = 1, stock_ml, dose_ml = 0, target_ion, target_mg_l_week = 0 } = input;
  const { change_fraction, every_days = 0, uptake_fraction = 0 } = input;
  if (stock_ml !== undefined && dose_ml > stock_ml) throw new Refusal("dose_above_stock");
  const share = stock_ml === undefined ? 1 : dose_ml / stock_ml;
  /** @type {Outputs<"nutrient_routine">["week"] & Record<string, number>} */
  const week = { gh_dgh: 0, kh_dkh: 0 };
  for (const { salt, g } of salts) {
    const mmol_l = ((g * share * 1000) / table("salts").rows[salt].g_mol / water_l) * doses_per_week;
    for (const [name, effect] of Object.entries(effects_of(salt))) week[name] = (week[name] ?? 0) + effect * mmol_l;
  }
  /** @type {Outputs<"nutrient_routine">} */
  const answer = { week };
  const notes = stock_ml === undefined ? [] : of_bottle(salts);
  if (change_fraction !== undefined) {
    const held = (((1 - uptake_fraction) / 7) * every_days) / change_fraction;
    const settles = { ...week };
    for (const name of Object.keys(settles)) settles[name] *= held;
    answer.settles = settles;
    const limit_mg_l = table("limits").limits.nitrate_mg_n_l.value * constants("nitrogen_species").no3_per_n;
    if ((settles.no3_mg_l ?? 0) > limit_mg_l) notes.push("nitrate_high");
  }
  if (target_ion !== undefined) {
    const given = week[`${target_ion}_mg_l`] ?? 0;
    if (given <= 0) throw new Refusal("not_in_salts");
    answer.dose_factor = target_mg_l_week / given;
  }
  return { ...answer, notes };
}

/**
 * What a bottle with these salts will not do: stay clear, or dissolve.
 * @param {Input<"nutrient_routine">["salts"]} salts
 */
function of_bottle(salts) {
  const rows = salts.map(({ salt }) => table("salts").rows[salt]);
  const ions = new Set(rows.flatMap((row) => Object.keys(row.gives)));
  const notes = ions.has("ca") && CLOUDS.some((ion) => ions.has(ion)) ? ["falls_out"] : [];
  return rows.some((row) => row.slow) ? [...notes, "slow"] : notes;
}
