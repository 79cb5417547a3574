/** Mass of animals from their length, and the food that they eat in a day. */
import { resolve } from "./animals.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/**
 * Mass of each animal in a list and of all together, and their dry food per day. Equations, units and sources: the
 * Python twin.
 * @param {Input<"animal_mass">} input
 * @returns {Outputs<"animal_mass">}
 */
export function animal_mass({ animals, feed_share_day = 0.012 }) {
  const each = resolve(animals).map(({ name, count, length_cm, mass_g }) => ({
    name,
    count,
    length_cm,
    each_g: mass_g,
    total_g: count * mass_g,
  }));
  const total_g = each.reduce((sum, one) => sum + one.total_g, 0);
  return { total_g, feed_g_day: total_g * feed_share_day, each };
}
