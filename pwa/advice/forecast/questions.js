/**
 * What the belief is asked about one tank: the smallest change, the chances until the next test, and the days after.
 */
import { HOUR } from "../../figures/durations.js";
import { belief_input, limits_of, new_water_of } from "./belief_input.js";
import { last_test } from "../level.js";
import { mass_of } from "../life/stock.js";
import { in_small_steps, most_at_once } from "../litres.js";

/** @import { Asked, Facts, Question, Rule } from "../../types/advice.js" */

/**
 * A test is rarely made sooner than this after the last; an overdue one is made within a day (assumptions).
 */
const SOONEST_H = 12;
const OVERDUE_H = 24;
/** A nitrate reading says something about today for this long (assumption). */
const NITRATE_STANDS_H = 60 * 24;
/** The highest limit that the contracts take. */
const NO_LIMIT = 1000;
/** How far the fan is drawn. */
const FAN_H = 72;

/** @param {Facts} facts @param {Rule} rule what today.js says of them @returns {Asked} */
export function ask_of(facts, rule) {
  const known = belief_input(facts);
  // Nobody records every change of earlier years, so without a test nitrate is not known.
  const nitrate_known = known.records.readings.some(
    ({ parameter, at_h }) => parameter === "nitrate" && at_h > known.records.now_h - NITRATE_STANDS_H,
  );
  // The calculations take the limits of ammonia and nitrite from the water, also where a change moves its pH.
  const unknown = nitrate_known ? {} : { nitrate_mg_n_l: NO_LIMIT };
  const limits = { ...limits_of(rule.limits), ...unknown };
  const { next_test_h, next_test_at } = to_test(facts, rule);
  const small = in_small_steps(facts, rule);
  const { now_h, ...rest } = known.records;
  const base = text_of(rest);
  /**
   * @param {Question["label"]} label
   * @param {Question["name"]} name
   * @param {Partial<Question["input"]>} more
   */
  const question = (label, name, more) => {
    const how = `${now_h}${JSON.stringify([name, more])}`;
    const input = { ...known.records, ...more };
    return /** @type {Question} */ ({ label, name, input, how, exact: `${how}${base}`, records: base });
  };
  return {
    ...known,
    limits,
    nitrate_known,
    in_small_steps: small,
    next_test_h,
    next_test_at,
    questions: [
      question("plan", "change_plan", {
        source: new_water_of(facts.source, facts.label),
        limits: unknown,
        next_test_h,
        max_fraction: most_at_once(facts, { in_small_steps: small }) / facts.tank.water_l,
      }),
      question("next", "outlook", { limits: unknown, horizon_h: next_test_h }),
    ],
    further: [
      question("ahead", "outlook", { limits: unknown, horizon_h: Math.max(FAN_H, next_test_h), ...to_come(facts) }),
      question("headroom", "stock_headroom", {}),
    ],
  };
}

/** What belief_input.js makes of records as JSON: it is never altered. @type {WeakMap<object, string>} */
const texts = new WeakMap();

/** @param {object} made a list of belief_input.js, or its tank */
export function as_text(made) {
  const text = texts.get(made) ?? JSON.stringify(made);
  texts.set(made, text);
  return text;
}

/**
 * The same as JSON: of years of records only the lists that changed are written anew.
 * @param {Record<string, object>} records
 */
function text_of(records) {
  return `{${Object.entries(records).map(([name, made]) => `${JSON.stringify(name)}:${as_text(made)}`)}}`;
}

/**
 * The food of the planned animals: the tank is ready when it can process that.
 * @param {Facts} facts
 * @returns {{planned_feed_g_day?: number}}
 */
function to_come({ tank, own_species }) {
  const planned_feed_g_day = mass_of(tank.planned_stock ?? [], own_species)?.answer.feed_g_day ?? 0;
  return planned_feed_g_day > 0 ? { planned_feed_g_day } : {};
}

/**
 * How long until the next test of ammonia and nitrite.
 * @param {Facts} facts
 * @param {Rule} rule
 */
function to_test({ now }, { levels, usual_test_hours }) {
  const due = last_test(levels) + usual_test_hours * HOUR;
  if (due <= now) return { next_test_h: OVERDUE_H, next_test_at: now + OVERDUE_H * HOUR };
  return { next_test_h: Math.max(SOONEST_H, Math.ceil((due - now) / HOUR)), next_test_at: due };
}
