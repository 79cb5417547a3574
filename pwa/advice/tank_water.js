/** Water out of another tank as a source water, from that tank's last tests before the change. Pure. */
import { as_nitrogen, is_watched, possible } from "./level.js";

/** @import { Source } from "../types/advice.js" */
/** @import { Reading } from "../types/views.js" */

const FIELDS = /** @type {const} */ ({
  total_ammonia: "tan_mg_n_l",
  nitrite: "nitrite_mg_n_l",
  nitrate: "nitrate_mg_n_l",
});

/**
 * @param {readonly Reading[]} readings of the room, in any order
 * @param {{from_tank: string, at: string}} change
 * @returns {Source} what was never tested is not there
 */
export function tank_water(readings, { from_tank, at }) {
  /** @type {Source} */ const water = { disinfectant: "none" };
  /** @type {Record<string, string>} */ const read_at = {};
  for (const one of readings) {
    if (one.tank !== from_tank || one.at > at || !is_watched(one.parameter) || !possible(one)) continue;
    if (read_at[one.parameter] >= one.at) continue;
    read_at[one.parameter] = one.at;
    water[FIELDS[one.parameter]] = as_nitrogen(one);
  }
  return water;
}
