/** The ammonia that replaces the planned fish while a tank starts without them. */
import { nitrogen_load } from "./nitrogen_load.js";
import { Refusal } from "./refusal.js";
import { constants } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/**
 * Ammonium chloride, or household ammonia of a stated strength, for one dose. Equations, units and source: the Python
 * twin.
 * @param {Input<"starter_dose">} input
 * @returns {Outputs<"starter_dose">}
 */
export function starter_dose({
  volume_l,
  tan_mg_n_l,
  feed_g_day,
  protein_fraction,
  ammonia_percent,
  ammonia_density_kg_l,
}) {
  const notes = [];
  let dose_mg_n_l = tan_mg_n_l;
  if (dose_mg_n_l === undefined) {
    const food = { feed_g_day: Number(feed_g_day), protein_fraction: Number(protein_fraction) };
    dose_mg_n_l = nitrogen_load({ ...food, volume_l }).tan_mg_n_l_day;
    notes.push("daily");
  }
  if (dose_mg_n_l > constants("starting_without_fish").strong_tan_mg_n_l) notes.push("strong_dose");
  const tan_mg_n = dose_mg_n_l * volume_l;
  const out = {
    tan_mg_n_l: dose_mg_n_l,
    tan_mg_n,
    ammonium_chloride_g: (tan_mg_n * constants("ammonium_chloride").mass_per_n) / 1000,
  };
  if (ammonia_percent === undefined) {
    if (ammonia_density_kg_l !== undefined) throw new Refusal("density_alone");
    return { ...out, notes: [...notes, "no_strength"] };
  }
  const density_kg_l = ammonia_density_kg_l ?? density_of(ammonia_percent);
  const nh3_g = (tan_mg_n * constants("nitrogen_species").nh3_per_n) / 1000;
  return { ...out, household_ammonia_ml: nh3_g / ((ammonia_percent / 100) * density_kg_l), density_kg_l, notes };
}

/** @param {number} ammonia_percent */
function density_of(ammonia_percent) {
  const water = constants("ammonia_water");
  return (
    water.density_0_kg_l + water.slope_kg_l * ammonia_percent + water.curve_kg_l * ammonia_percent * ammonia_percent
  );
}
