/** The nitrogen that a tank has to process, and the last tests that tell whether it does. Units: the Python twin. */
import { water_of } from "./acidity.js";
import { free_ammonia } from "./free_ammonia.js";
import * as k from "./kinetics.js";
import { last_reading } from "./tank_events.js";

/** @typedef {import("./kinetics.js").Settings} Settings */
/** @typedef {import("./belief.js").Belief} Belief */
/** @typedef {import("./tank_events.js").Tank} Tank */
/** @typedef {import("./outlook.js").Limits} Limits */
/** @typedef {import("./tank_events.js").Reading} Reading */

const WEEK_H = 168;
const QUICK = /** @type {const} */ (["total_ammonia", "nitrite"]);

/**
 * Food a day (undefined where it is not known) and ammonia a day that were given up to `until_h`.
 * @param {Settings} c
 * @param {Tank} tank
 * @param {number} until_h
 * @param {import("./tank_events.js").Dose[]} doses
 * @param {import("./tank_events.js").Feeding[]} feedings
 */
export function load_of(c, tank, until_h, doses, feedings) {
  const usual = tank.feed_g_day ?? (tank.fish_g === undefined ? undefined : c.feed_of_fish * tank.fish_g);
  const recorded = regular(
    feedings.map(({ at_h, feed_g }) => [at_h, feed_g]),
    until_h,
  );
  const dosed_mg_n_l_day = regular(
    doses.map(({ at_h, tan_mg_n_l }) => [at_h, tan_mg_n_l]),
    until_h,
  );
  const known = usual !== undefined || recorded > 0;
  return { feed_g_day: known ? Math.max(usual ?? 0, recorded) : undefined, dosed_mg_n_l_day };
}

/**
 * What [hour, amount] pairs of the week before `until_h` come to a day.
 * @param {[number, number][]} given
 * @param {number} until_h
 */
export function regular(given, until_h) {
  const week = given
    .filter(([at_h]) => until_h - WEEK_H < at_h && at_h <= until_h)
    .sort(([a, of_a], [b, of_b]) => a - b || of_a - of_b);
  if (week.length === 0) return 0;
  const total = week.reduce((sum, [, amount]) => sum + amount, 0);
  if (week.length === 1) return total / 7;
  const days = (((week[week.length - 1][0] - week[0][0]) / 24) * week.length) / (week.length - 1);
  return total / Math.max(days, 1);
}

/** Total ammonia that a gram of food brings. @param {Settings} c @param {Tank} tank */
export const per_gram_of = (c, tank) =>
  ((tank.protein_fraction ?? c.protein_fraction) * c.tan_per_protein * 1000) / tank.volume_l;

/**
 * Total ammonia and nitrite at which a tank must process its load.
 * @param {Settings} c
 * @param {Belief} belief
 * @param {Limits} limits
 * @returns {[number, number]}
 */
export const levels_of = (c, belief, limits) => [
  Math.min(c.ready_mg_n_l, tan_limit(belief, limits)),
  Math.min(c.ready_mg_n_l, limits.nitrite_mg_n_l),
];

/** The limit of free ammonia as total ammonia in this water. @param {Belief} belief @param {Limits} limits */
export function tan_limit({ ph, temperature_c }, limits) {
  return limits.nh3_mg_n_l / free_ammonia({ tan_mg_n_l: 1, ph, temperature_c }).fraction;
}

/**
 * `untested` while ammonia or nitrite has no reading, `over_limit` while the last of either is over its limit.
 * @param {Belief} belief
 * @param {Limits} limits
 * @param {Reading[]} readings
 */
export function untested_or_over(belief, limits, readings) {
  const allowed = { total_ammonia: tan_limit(belief, limits), nitrite: limits.nitrite_mg_n_l };
  const last = QUICK.map((name) => ({ name, read: last_reading(readings, name, belief.at_h) }));
  const notes = [];
  if (last.some(({ read }) => !read)) notes.push("untested");
  if (last.some(({ name, read }) => read && read.mg_n_l > allowed[name])) notes.push("over_limit");
  return notes;
}

/** The hour up to which both are tested; both must have a reading. @param {Reading[]} readings @param {number} now_h */
export const tested_until = (readings, now_h) =>
  Math.min(...QUICK.map((name) => last_reading(readings, name, now_h)?.at_h ?? 0));

/**
 * What each draw processes at `levels_of` its limits, mg N/L/day.
 * @param {Settings} c
 * @param {Belief} belief
 * @param {Limits} limits
 */
export function processed_at_limits(c, belief, limits) {
  return k.processed(belief.cloud, water_of(c, belief), c, ...levels_of(c, belief, limits));
}
