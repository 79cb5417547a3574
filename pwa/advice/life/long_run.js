/** Where nitrate and carbonate hardness settle under what is really done in a tank, and the least that holds. Pure. */
import { DAY } from "../../figures/durations.js";
import { run } from "../../contracts.js";
import { belief_input } from "../forecast/belief_input.js";
import { in_degrees } from "../hardness.js";
import { as_nitrogen, possible } from "../level.js";
import { limits_at } from "../limits.js";
import { bucket_litres, most_at_once } from "../litres.js";
import { of_parameter } from "../of_parameter.js";
import { settings } from "../../calc/model_settings.js";

/** @import { Facts } from "../../types/advice.js" */
/** @import { Answer, Input } from "../../types/contract.js" */
/** @import { Reading } from "../../types/views.js" */

/** What is "really done": the changes of these days (assumption: a month shows a keeper's routine). */
const ROUTINE_DAYS = 28;
/** A younger tank's routine is not known yet (assumption). */
const LEAST_DAYS = 14;
/** Tests this old still tell how fast nitrate rises (assumption). */
const TESTS_DAYS = 90;
/** So many tests over so many days tell the rise; fewer, and the food has to (assumption). */
const LEAST_TESTS = 3;
const TESTS_SPAN_DAYS = 21;
/** Error of a nitrate test by colour, as a share (assumption: Boyd's kits differ by 30 to 50 %). */
const KIT_ERROR = 0.3;
/** Hardness hardly moves in two months (assumption). */
const HARDNESS_DAYS = 60;
/** How often a keeper would rather change: weekly, else every three days, else daily (common practice). */
const OFTEN_DAYS = [7, 3, 1];
const FLOOR_KH_DKH = 1;

/**
 * A calculation that was run, to show where its figures come from.
 * @template {"steady_routine" | "alkalinity_use"} N
 * @typedef {{input: Input<N>, answer: Answer<N>}} Worked
 */
/** @typedef {{count: number, litres: number, fraction: number, every_days: number}} Routine */
/** @typedef {{litres: number, every_days: number}} Least the smallest routine that holds */
/**
 * @typedef {{low: number, usual: number, high: number}} Range
 * @typedef {{
 *   from: "readings" | "food", rise_mg_n_l_day: Range, limit_mg_n_l: number,
 *   settles_mg_n_l: Range | null, days_to_limit: number | null, least: Least | null, source_over: boolean,
 *   worked: Worked<"steady_routine"> | null,
 * }} Nitrate `settles_mg_n_l`: just before a change; null without a routine
 * @typedef {{
 *   falls_dkh_week: number, now_dkh: number, steady_dkh: number | null, days_to_floor: number | null,
 *   least: Least | null, source_known: boolean,
 *   worked: Worked<"alkalinity_use">,
 * }} Hardness
 * @typedef {{routine: Routine | null, young: boolean, nitrate: Nitrate | null, kh: Hardness | null}} LongRun
 */

/** What was found before; facts are never altered. @type {WeakMap<Facts, LongRun>} */
const known = new WeakMap();

/** @param {Facts} facts @returns {LongRun} */
export function long_run(facts) {
  const found = known.get(facts) ?? found_of(facts);
  known.set(facts, found);
  return found;
}

/** @param {Facts} facts @returns {LongRun} */
function found_of(facts) {
  const routine = routine_of(facts);
  const rise = rise_of(facts);
  return {
    routine,
    young: age_days(facts) < LEAST_DAYS,
    nitrate: rise && nitrate_of(facts, routine, rise),
    kh: rise && hardness_of(facts, routine, rise.rise.usual),
  };
}

/** Days since the tank's first filling, or since its first record. @param {Facts} facts */
function age_days({ tank, now, changes, readings }) {
  const first = [tank.started_at, changes[0]?.at, readings[0]?.at].flatMap((at) => (at ? [Date.parse(at)] : []));
  return first.length ? (now - Math.min(...first)) / DAY : 0;
}

/**
 * The mean change of the last four weeks and the mean time between two; null where nothing was changed.
 * @param {Facts} facts @returns {Routine | null}
 */
export function routine_of(facts) {
  const days = Math.min(ROUTINE_DAYS, age_days(facts));
  const recent = facts.changes.filter(({ at }) => within(at, facts.now, ROUTINE_DAYS));
  if (recent.length === 0 || days < LEAST_DAYS) return null;
  const kept = recent.reduce((share, { fraction }) => share * (1 - Math.min(fraction, 0.95)), 1);
  const fraction = 1 - kept ** (1 / recent.length);
  if (fraction < 0.01) return null;
  return { count: recent.length, litres: fraction * facts.tank.water_l, fraction, every_days: days / recent.length };
}

/** @param {Facts} facts @returns {{from: Nitrate["from"], rise: Range} | null} */
function rise_of(facts) {
  const read = rise_by_tests(facts);
  if (read) return { from: "readings", rise: read };
  const { feed_g_day, fish_g, protein_fraction, volume_l } = belief_input(facts).records.tank;
  const { feed_of_fish, protein_fraction: usual_protein } = settings();
  const fed = feed_g_day ?? (fish_g === undefined ? undefined : fish_g * feed_of_fish);
  if (!fed) return null;
  const input = { feed_g_day: fed, protein_fraction: protein_fraction ?? usual_protein, volume_l };
  const most = run("nitrogen_load", input).tan_mg_n_l_day;
  // Plants take up some of it, up to all; nobody knows how much before nitrate has been tested.
  return { from: "food", rise: { low: 0, usual: most, high: most } };
}

/**
 * The rise of nitrate a day that fits the tests of the last three months and the changes between them.
 *
 * Between two tests: level = before x kept + brought by the new water + rise x days, the days before a change counted
 * by the share of that water which stayed. The rise is the sum of what is left over all such days.
 * @param {Facts} facts @returns {Range | null} mg N/L/day; null where the tests are too few
 */
export function rise_by_tests(facts) {
  const tests = of_parameter(facts.readings, "nitrate").filter(
    (one) => within(one.at, facts.now, TESTS_DAYS) && possible(one) && !at_the_top(one),
  );
  const [first, last] = [tests[0], tests.at(-1)];
  if (!last || tests.length < LEAST_TESTS) return null;
  if (Date.parse(last.at) - Date.parse(first.at) < TESTS_SPAN_DAYS * DAY) return null;
  let risen = 0;
  let days = 0;
  for (let at = 1; at < tests.length; at++) {
    const between = passed(facts, tests[at - 1], tests[at]);
    risen += as_nitrogen(tests[at]) - between.left;
    days += between.days;
  }
  if (days <= 0) return null;
  // The error of a test in between mostly cancels, for it ends one span and begins the next.
  const spread = (KIT_ERROR * Math.hypot(as_nitrogen(first), as_nitrogen(last))) / days;
  const rise = risen / days;
  return { low: Math.max(0, rise - spread), usual: Math.max(0, rise), high: Math.max(0, rise + spread) };
}

/**
 * What is left of the first test's level at the second one, with what new water brought, and the days that count.
 * @param {Facts} facts @param {Reading} from @param {Reading} until
 */
function passed({ changes }, from, until) {
  let left = as_nitrogen(from);
  let days = 0;
  let since = Date.parse(from.at);
  for (const { at, fraction, source } of changes) {
    if (at <= from.at || at > until.at) continue;
    days = (days + (Date.parse(at) - since) / DAY) * (1 - fraction);
    left = left * (1 - fraction) + fraction * (source?.nitrate_mg_n_l ?? 0);
    since = Date.parse(at);
  }
  return { left, days: days + (Date.parse(until.at) - since) / DAY };
}

/** The last step of a chart says "this or more". @param {Reading} one */
const at_the_top = ({ value, steps }) =>
  Boolean(steps?.length) && value >= Math.max(.../** @type {number[]} */ (steps));

/**
 * @param {Facts} facts @param {Routine | null} routine @param {{from: Nitrate["from"], rise: Range}} found
 * @returns {Nitrate}
 */
function nitrate_of(facts, routine, { from, rise }) {
  const limit = limits_at(facts).nitrate.mg_n_l;
  const source = facts.source?.nitrate_mg_n_l ?? 0;
  const last = of_parameter(facts.readings, "nitrate").findLast(possible);
  const settles = (/** @type {number} */ add_mg_l_day) => {
    if (!routine) return null;
    const input = {
      ...{ add_mg_l_day, change_fraction: routine.fraction, every_days: Math.min(routine.every_days, 365) },
      ...{ source_mg_l: source, ceiling_mg_l: limit },
    };
    return { input, answer: run("steady_routine", input) };
  };
  const before = (/** @type {number} */ add) => settles(add)?.answer.before_change_mg_l ?? 0;
  const worked = settles(rise.usual);
  return {
    from,
    rise_mg_n_l_day: rise,
    limit_mg_n_l: limit,
    settles_mg_n_l: worked && { low: before(rise.low), usual: before(rise.usual), high: before(rise.high) },
    worked,
    days_to_limit: routine || rise.usual <= 0 ? null : Math.max(0, limit - (last ? as_nitrogen(last) : 0)) / rise.usual,
    least: least_of(facts, routine, (every_days) =>
      rise.usual <= 0
        ? undefined
        : run("steady_routine", {
            add_mg_l_day: rise.usual,
            change_fraction: 0.5,
            every_days,
            source_mg_l: source,
            ceiling_mg_l: limit,
          }).fraction_needed,
    ),
    source_over: source >= limit,
  };
}

/** @param {Facts} facts @param {Routine | null} routine @param {number} nitrified @returns {Hardness | null} */
function hardness_of(facts, routine, nitrified) {
  const last = of_parameter(facts.readings, "kh").findLast(
    (one) => within(one.at, facts.now, HARDNESS_DAYS) && in_degrees(one) !== undefined,
  );
  const now_dkh = last ? in_degrees(last) : facts.tank.kh_dkh;
  if (now_dkh === undefined || now_dkh > 60) return null;
  const source = facts.source?.kh_dkh;
  const use = { kh_dkh: now_dkh, nitrogen_mg_n_l_day: Math.min(nitrified, 100), floor_kh_dkh: FLOOR_KH_DKH };
  const needed = (/** @type {number} */ every_days) =>
    run("alkalinity_use", { ...use, source_kh_dkh: source, change_fraction: 0.5, every_days }).fraction_needed;
  const input =
    routine && source !== undefined
      ? {
          ...{ ...use, source_kh_dkh: source, change_fraction: routine.fraction },
          every_days: Math.min(Math.max(routine.every_days, 0.5), 365),
        }
      : use;
  const found = run("alkalinity_use", input);
  return {
    now_dkh,
    falls_dkh_week: found.kh_dkh_per_day * 7,
    steady_dkh: found.steady_kh_dkh ?? null,
    days_to_floor: found.days_to_floor ?? null,
    least: source === undefined || nitrified <= 0 ? null : least_of(facts, routine, needed),
    source_known: source !== undefined,
    worked: { input, answer: found },
  };
}

/**
 * The smallest change that holds, as often as now, else weekly or more often: what one change may be at most.
 * @param {Facts} facts @param {Routine | null} routine
 * @param {(every_days: number) => number | null | undefined} needed the fraction that holds at this interval
 * @returns {Least | null}
 */
function least_of(facts, routine, needed) {
  const { water_l } = facts.tank;
  const most_l = most_at_once(facts, { unhurried: true });
  const now = routine ? [Math.min(30, Math.max(1, Math.round(routine.every_days)))] : [];
  for (const every_days of [...now, ...OFTEN_DAYS]) {
    const fraction = needed(every_days);
    if (typeof fraction !== "number" || fraction * water_l > most_l) continue;
    return { litres: bucket_litres(fraction * water_l, water_l, facts.water_unit, most_l), every_days };
  }
  return null;
}

/** @param {string} at @param {number} now @param {number} days */
const within = (at, now, days) => {
  const age = now - Date.parse(at);
  return age >= 0 && age <= days * DAY;
};
