/** A year of a tank looked back on: what was done, what lived and died, and how its tests kept to the limits. Pure. */
import { DAY } from "../../figures/durations.js";
import { as_nitrogen, is_watched, possible } from "../level.js";
import { limits_at } from "../limits.js";

/** @import { Facts, Watched } from "../../types/advice.js" */
/** @import { Reading } from "../../types/views.js" */

/**
 * @typedef {{reading: Reading, mg_n_l: number, limit_mg_n_l: number}} Over a reading above its limit at that time
 * @typedef {{from: number, to: number, days: number, tests: number}} Calm a stretch of tests that are all within limits
 * @typedef {object} Counts
 * @property {number} changes
 * @property {number} litres
 * @property {number} refills how often the changes together replaced the whole water
 * @property {number} tests readings taken together are one test
 * @property {number} readings
 * @property {number} meals
 * @property {number} feed_g
 * @property {number} doses
 * @property {number} arrivals animals
 * @property {number} births
 * @property {number} deaths
 * @property {number} removals
 * @typedef {{parameter: string, low: Reading, high: Reading}} Extremes
 * @typedef {{counts: Counts, extremes: Extremes[], worst: Over | null, over: number, best: Calm | null}} Year
 * `over`: how many tests read ammonia, nitrite or nitrate above its limit
 */

/** Parameters whose lowest and highest are told, in the order shown. */
const TOLD = ["total_ammonia", "nitrite", "nitrate", "ph", "temperature"];

/** The first moment of a year and of the next one, here. @param {number} year */
export const year_span = (year) => ({ from: +new Date(year, 0, 1), to: +new Date(year + 1, 0, 1) });

/**
 * The year that an address names; the present one where it names none.
 * @param {string | null} said @param {number} now ms
 */
export const year_named = (said, now) => (/^\d{4}$/.test(said ?? "") ? Number(said) : new Date(now).getFullYear());

/**
 * @param {Facts} facts of one tank, all its records oldest first
 * @param {{from: number, to: number}} span ms
 * @returns {Year}
 */
export function year_of(facts, { from, to }) {
  const within = (/** @type {{at: string}} */ { at }) => Date.parse(at) >= from && Date.parse(at) < to;
  const readings = facts.readings.filter(within);
  const told = readings.filter((one) => is_watched(one.parameter) && possible(one)).map((one) => judged(facts, one));
  const over = told.filter(({ mg_n_l, limit_mg_n_l }) => mg_n_l > limit_mg_n_l);
  return {
    counts: counts_of(facts, within, readings),
    extremes: TOLD.flatMap((parameter) => extremes(parameter, readings)),
    worst: over.reduce(
      (worst, one) => (!worst || times(one) > times(worst) ? one : worst),
      /** @type {Over | null} */ (null),
    ),
    over: new Set(over.map(({ reading }) => test_of(reading))).size,
    best: longest_calm(told),
  };
}

/** The counts of several tanks together. @param {Counts[]} all @returns {Omit<Counts, "refills">} */
export function counted_together(all) {
  const { refills: _refills, ...none } = NOTHING;
  return all.reduce(
    (sum, one) =>
      /** @type {typeof sum} */ (
        Object.fromEntries(
          Object.entries(sum).map(([name, value]) => [name, value + one[/** @type {keyof Counts} */ (name)]]),
        )
      ),
    none,
  );
}

/** @type {Counts} */
const NOTHING = {
  ...{ changes: 0, litres: 0, refills: 0, tests: 0, readings: 0, meals: 0, feed_g: 0, doses: 0 },
  ...{ arrivals: 0, births: 0, deaths: 0, removals: 0 },
};

/** @param {Facts} facts @param {(one: {at: string}) => boolean} within @param {Reading[]} readings @returns {Counts} */
function counts_of(facts, within, readings) {
  const changes = facts.changes.filter(within);
  const meals = facts.feedings.filter((one) => within(one) && one.feed_g > 0);
  const animals = (/** @type {string} */ change) =>
    total(facts.stock.filter((one) => within(one) && one.change === change).map(({ count }) => count));
  return {
    changes: changes.length,
    litres: total(changes.map(({ litres }) => litres)),
    refills: total(changes.map(({ fraction }) => fraction)),
    tests: new Set(readings.map(test_of)).size,
    readings: readings.length,
    meals: meals.length,
    feed_g: total(meals.map(({ feed_g }) => feed_g)),
    doses: facts.doses.filter(within).length,
    ...{ arrivals: animals("arrival"), births: animals("birth"), deaths: animals("death") },
    removals: animals("removal"),
  };
}

/** @param {number[]} values */
const total = (values) => values.reduce((sum, value) => sum + value, 0);

/** Readings without a test of their own that share a moment are one test. @param {Reading} reading */
const test_of = ({ test, at }) => test ?? at;

/** @param {string} parameter @param {Reading[]} readings @returns {Extremes[]} none or one */
function extremes(parameter, readings) {
  const own = readings.filter((one) => one.parameter === parameter && (!is_watched(parameter) || possible(one)));
  if (own.length === 0) return [];
  const value = (/** @type {Reading} */ one) => (is_watched(parameter) ? as_nitrogen(one) : one.value);
  const least = (/** @type {number} */ sign) =>
    own.reduce((best, one) => (sign * value(one) < sign * value(best) ? one : best));
  return [{ parameter, low: least(1), high: least(-1) }];
}

/**
 * A reading against the limit by the pH and temperature that were known then.
 * @param {Facts} facts @param {Reading} reading @returns {Over}
 */
function judged(facts, reading) {
  const now = Date.parse(reading.at);
  const by_then = (/** @type {{at: string}} */ { at }) => Date.parse(at) <= now;
  const readings = facts.readings.filter((one) => by_then(one) && now - Date.parse(one.at) <= KNOWN_FOR);
  const [changes, doses] = [facts.changes.filter(by_then), facts.doses.filter(by_then)];
  const limits = limits_at({ ...facts, now, readings, changes, doses });
  const parameter = /** @type {Watched} */ (reading.parameter);
  return { reading, mg_n_l: as_nitrogen(reading), limit_mg_n_l: limits[parameter].mg_n_l };
}
/** Longer than a limit rests on a reading of pH or temperature (limits.js). */
const KNOWN_FOR = 14 * DAY;

/** @param {Over} one */
const times = ({ mg_n_l, limit_mg_n_l }) => mg_n_l / limit_mg_n_l;

/** The longest stretch of tests within limits, by time. @param {Over[]} told oldest first @returns {Calm | null} */
function longest_calm(told) {
  /** @type {Over[][]} */ const stretches = [[]];
  const bad = new Set(told.filter((one) => one.mg_n_l > one.limit_mg_n_l).map(({ reading }) => test_of(reading)));
  for (const one of told)
    if (!bad.has(test_of(one.reading))) stretches[stretches.length - 1].push(one);
    else if (stretches[stretches.length - 1].length) stretches.push([]);
  return stretches
    .filter((stretch) => stretch.length > 0)
    .map((stretch) => {
      const [from, to] = [stretch[0], stretch[stretch.length - 1]].map(({ reading }) => Date.parse(reading.at));
      const tests = new Set(stretch.map(({ reading }) => test_of(reading))).size;
      return { from, to, days: Math.round((to - from) / DAY), tests };
    })
    .reduce((best, one) => (!best || one.days > best.days ? one : best), /** @type {Calm | null} */ (null));
}
