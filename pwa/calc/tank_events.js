/** Applies a tank's records to the belief in order of time: readings, doses, feedings, water changes. */
import * as acidity from "./acidity.js";
import { add_ammonia, advance, change_water, copy, observe, prior } from "./belief.js";
import { Refusal } from "./refusal.js";
import { constants } from "./tables.js";

/** @import {Input} from "../types/contract.js" */
/** @typedef {import("./kinetics.js").Settings} Settings */
/** @typedef {import("./belief.js").Belief} Belief */

/** @typedef {Input<"outlook">} Records what all forecasts ask for; each has more beside it */
/** @typedef {Pick<Records, "tank" | "now_h" | "readings" | "changes" | "doses" | "feedings" | "seed">} Known */
/** @typedef {Records["tank"]} Tank */
/** @typedef {NonNullable<Records["readings"]>[number]} Reading */
/** @typedef {NonNullable<Records["changes"]>[number]} Change */
/** @typedef {NonNullable<Records["doses"]>[number]} Dose */
/** @typedef {NonNullable<Records["feedings"]>[number]} Feeding */
/**
 * @typedef {(Reading & {kind: "reading"}) | (Dose & {kind: "dose"}) | (Feeding & {kind: "feeding"}) |
 *   (Change & {kind: "change"})} Event a record with its kind
 */

// At the same hour the test comes before the dose, the feeding and the change that it led to.
/** @type {Record<string, number>} */
const ORDER = { reading: 0, dose: 1, feeding: 2, change: 3 };
/** @type {Record<string, [number, number]>} */
const RANGE = { ph: [4, 10], temperature: [2, 40], kh: [0, 60] };
/** @type {Record<string, string>} */
const PER_N = { total_ammonia: "nh4_per_n", nitrite: "no2_per_n", nitrate: "no3_per_n" };

/** @typedef {{tank: string, applied: string[], belief: Belief}} Kept the belief at the last record, to resume from */

/**
 * The belief at `now_h`, the records after it, and what to keep to go on from the last record.
 * If `kept` holds the same tank and only later records came, it resumes from there; else it follows all records again.
 * @param {Settings} c @param {Known} input @param {Kept} [kept]
 * @returns {{belief: Belief, plans: Event[], kept: Kept}}
 */
export function believed(c, { tank, now_h, readings = [], changes = [], doses = [], feedings = [], seed = 1 }, kept) {
  const events = ordered(c, now_h, readings, changes, doses, feedings);
  const past = events.filter((event) => event.at_h <= now_h);
  const start = begins_h(c, now_h);
  // Chloride decides a limit; the belief does not depend on it.
  const same_tank = JSON.stringify([{ ...tank, chloride_mg_l: null }, seed, start]);
  const applied = past.map((event) => JSON.stringify(event));
  let at_last = kept;
  if (!at_last || at_last.tank !== same_tank || at_last.applied.some((event, i) => event !== applied[i])) {
    at_last = { tank: same_tank, applied: [], belief: prior(c, tank, seed, start) };
  }
  if (at_last.applied.length < applied.length) {
    const last = copy(at_last.belief);
    follow(c, last, tank, past.slice(at_last.applied.length), past[past.length - 1].at_h);
    at_last = { tank: same_tank, applied, belief: last };
  }
  const belief = copy(at_last.belief);
  advance(c, belief, now_h);
  return { belief, plans: events.slice(past.length), kept: at_last };
}

/** The hour from which records count. @param {Settings} c @param {number} now_h */
const begins_h = (c, now_h) => Math.max(0, Math.floor((now_h - c.look_back_h) / c.block_h) * c.block_h);

/**
 * Every record that counts, in order of time; readings after `now_h` are refused, other later records are plans.
 * @param {Settings} c
 * @param {number} now_h
 * @param {Reading[]} readings
 * @param {Change[]} changes
 * @param {Dose[]} doses
 * @param {Feeding[]} feedings
 * @returns {Event[]}
 */
export function ordered(c, now_h, readings, changes, doses, feedings) {
  readings.forEach(({ at_h, parameter, value }, index) => {
    if (at_h > now_h) throw new Refusal("reading_after_now", `readings.${index}.at_h`);
    const [low, high] = RANGE[parameter] ?? [-Infinity, Infinity];
    if (value < low || value > high) throw new Refusal(`${parameter}_reading`, `readings.${index}.value`);
  });
  const start = begins_h(c, now_h);
  return Object.entries({ reading: readings, dose: doses, feeding: feedings, change: changes })
    .flatMap(([kind, records]) => records.map((record) => /** @type {Event} */ ({ ...record, kind })))
    .filter((event) => event.at_h >= start)
    .sort((one, other) => one.at_h - other.at_h || ORDER[one.kind] - ORDER[other.kind]);
}

/**
 * Advances the belief through `events` (all at or after its hour) to `until_h`, in place.
 * @param {Settings} c @param {Belief} belief @param {Tank} tank @param {Event[]} events @param {number} until_h
 * @param {(belief: Belief, hours: number) => void} [seen]
 */
export function follow(c, belief, tank, events, until_h, seen) {
  for (const event of events) {
    if (event.at_h > until_h) break;
    advance(c, belief, event.at_h, seen);
    apply(c, belief, tank, event);
  }
  advance(c, belief, until_h, seen);
}

/**
 * Applies one record to the belief.
 * @param {Settings} c
 * @param {Belief} belief
 * @param {Tank} tank
 * @param {Event} event
 */
export function apply(c, belief, tank, event) {
  if (event.kind === "dose") add_ammonia(c, belief, event.tan_mg_n_l);
  else if (event.kind === "feeding") {
    const protein = event.protein_fraction ?? tank.protein_fraction ?? c.protein_fraction;
    belief.meal_n += (event.feed_g * protein * c.tan_per_protein * 1000) / tank.volume_l;
    belief.fed_until_h = event.at_h + c.meal_stands_for_h;
  } else if (event.kind === "change") change_water(belief, event.fraction, event.source ?? {});
  else if (event.parameter === "temperature") acidity.warm(belief, event.value);
  else if (event.parameter === "ph" || event.parameter === "kh") {
    acidity.observe(c, belief, event.parameter, event.value);
  } else {
    const { value, steps } = in_nitrogen(event);
    observe(c, belief, event.parameter, value, steps);
  }
}

/**
 * The last reading of a parameter up to `now_h`; undefined without one.
 * @param {Reading[]} readings
 * @param {Reading["parameter"]} parameter
 * @param {number} now_h
 */
export function last_reading(readings, parameter, now_h) {
  const last = readings
    .filter((one) => one.parameter === parameter && one.at_h <= now_h)
    .sort((one, other) => one.at_h - other.at_h)
    .at(-1);
  return last && { at_h: last.at_h, mg_n_l: in_nitrogen(last).value };
}

/**
 * Value and steps of a reading as mg N/L.
 * @param {{parameter: string, value: number, basis?: string, steps?: number[]}} reading
 * @returns {{value: number, steps?: number[]}}
 */
export function in_nitrogen(reading) {
  if (reading.basis === "n") return reading;
  const per_n = constants("nitrogen_species")[PER_N[reading.parameter]];
  return {
    value: reading.value / per_n,
    steps: reading.steps?.map((step) => step / per_n),
  };
}
