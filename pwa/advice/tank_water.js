/** Water that came out of another tank, as a source water: what its last tests before the change read. Pure. */
import { as_nitrogen, possible } from "./level.js";

/** @type {Record<string, string>} */
const FIELDS = { total_ammonia: "tan_mg_n_l", nitrite: "nitrite_mg_n_l", nitrate: "nitrate_mg_n_l" };

/**
 * @param {any[]} readings of the room, in any order
 * @param {{from_tank: string, at: string}} change
 * @returns {any} the fields of a source water; what was never tested is not there
 */
export function tank_water(readings, { from_tank, at }) {
  /** @type {Map<string, any>} */ const newest = new Map();
  for (const one of readings) {
    if (one.tank !== from_tank || one.at > at || !(one.parameter in FIELDS) || !possible(one)) continue;
    if (!newest.has(one.parameter) || newest.get(one.parameter).at < one.at) newest.set(one.parameter, one);
  }
  return {
    disinfectant: "none",
    ...Object.fromEntries([...newest.values()].map((one) => [FIELDS[one.parameter], as_nitrogen(one)])),
  };
}
