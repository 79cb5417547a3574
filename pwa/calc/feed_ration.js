/** How much dry food a stock needs a day, from what its animals breathe. */
import { resolve } from "./animals.js";
import { breathing_mg_h } from "./oxygen_night.js";
import { constants } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/**
 * Food that replaces the energy breathed, and what active and growing animals take. Equations, units, refusals and
 * source: the Python twin.
 * @param {Input<"feed_ration">} input
 * @returns {Outputs<"feed_ration">}
 */
export function feed_ration({ temperature_c, animals, feed_g_day, food_dry_fraction = 0.92 }) {
  const stock = resolve(animals);
  const [energy, factors] = [constants("fish_energy"), constants("feed_ration")];
  const animals_g = stock.reduce((total, one) => total + one.count * one.mass_g, 0);
  const breathed = stock.reduce((total, one) => total + one.count * breathing_mg_h(one.mass_g, temperature_c), 0);
  const oxygen_mg_day = 24 * breathed;
  const energy_kj_g = energy.food_kj_g_dry * food_dry_fraction;
  const upkeep_g_day = ((oxygen_mg_day / 1000) * energy.oxygen_kj_g) / energy_kj_g;
  /** @type {Outputs<"feed_ration">} */
  const answer = {
    upkeep_g_day,
    usual_g_day: upkeep_g_day * factors.usual,
    most_g_day: upkeep_g_day * factors.most,
    animals_g,
    oxygen_mg_day,
  };
  if (animals_g > 0) answer.usual_percent = (answer.usual_g_day / animals_g) * 100;
  return { ...answer, notes: notes(answer, feed_g_day, temperature_c) };
}

/** @param {Outputs<"feed_ration">} answer @param {number | undefined} feed_g_day @param {number} temperature_c */
function notes({ upkeep_g_day, most_g_day }, feed_g_day, temperature_c) {
  const found = [];
  if (feed_g_day !== undefined && feed_g_day > most_g_day) found.push("more_than_eaten");
  else if (feed_g_day !== undefined && feed_g_day < upkeep_g_day) found.push("less_than_upkeep");
  if (temperature_c > constants("clarke_johnston_1999").warmest_c) found.push("warmer_than_measured");
  return found;
}
