/** How much feed a day, and so how many grams of fish, the tank can process now and in one and two weeks. */
import { band } from "./bands.js";
import { nominal_input } from "./belief.js";
import * as k from "./kinetics.js";
import { even, notes_of, recent_doubts, working_limits } from "./outlook.js";
import { believed, follow } from "./tank_events.js";
import { load_of, per_gram_of, processed_at_limits, tested_until, untested_or_over } from "./tank_load.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/** @typedef {import("./kinetics.js").Settings} Settings */
/** @typedef {import("./belief.js").Belief} Belief */

/**
 * Feed and fish that the nitrifiers and plants can keep up with, as bands. Fields, units, sources: the contract and the
 * Python twin.
 * @param {Input<"stock_headroom">} input
 * @returns {Outputs<"stock_headroom">}
 */
export function stock_headroom(input) {
  const c = k.settings();
  const { belief, plans } = believed(c, input);
  return headroom_of(c, belief, plans, input);
}

/**
 * The answer of `stock_headroom` from a belief that has reached now.
 * @param {Settings} c @param {Belief} belief @param {import("./tank_events.js").Event[]} plans
 * @param {Input<"stock_headroom">} input
 * @returns {Outputs<"stock_headroom">}
 */
export function headroom_of(c, belief, plans, input) {
  const { tank, feed_share_of_mass } = input;
  const share = feed_share_of_mass ?? c.feed_of_fish;
  const per_gram = per_gram_of(c, tank);
  const limits = working_limits(tank)(belief.ph, belief.temperature_c);
  const { most_g_day, unshown } = most_shown(c, belief, limits, input);
  const ahead = even(belief);
  const now_h = belief.at_h;
  const after_days = (/** @type {number} */ days) => {
    const until = now_h + days * 24;
    const due = plans.filter((event) => ahead.at_h < event.at_h && event.at_h <= until);
    follow(c, ahead, tank, due, until);
    const input_of_draw = ahead.cloud[k.INPUT];
    const feed = processed_at_limits(c, ahead, limits).map((rate, i) =>
      Math.min(rate / (input_of_draw[i] * per_gram), most_g_day),
    );
    const { p10, p50, p90 } = band(feed);
    return { feed: { p10, p50, p90 }, fish: { p10: p10 / share, p50: p50 / share, p90: p90 / share } };
  };
  // The order matters: each continues from the belief that the one before it reached.
  const [now, in_7_days, in_14_days] = [0, 7, 14].map(after_days);
  return {
    feed_g_day_now: now.feed,
    fish_g_now: now.fish,
    feed_g_day_in_7_days: in_7_days.feed,
    fish_g_in_7_days: in_7_days.fish,
    feed_g_day_in_14_days: in_14_days.feed,
    fish_g_in_14_days: in_14_days.fish,
    feed_g_day_expected: nominal_input(c, tank)[0] / per_gram,
    doubts: recent_doubts(c, belief),
    notes: [...notes_of(c, belief), ...unshown],
  };
}

/**
 * The most feed a day that the tests allow to promise, with notes that say why. The rule: the Python twin.
 * @param {Settings} c
 * @param {Belief} belief
 * @param {import("./outlook.js").Limits} limits
 * @param {Input<"stock_headroom">} input
 * @returns {{most_g_day: number, unshown: string[]}}
 */
function most_shown(c, belief, limits, { tank, readings = [], doses = [], feedings = [] }) {
  const unshown = untested_or_over(belief, limits, readings);
  if (unshown.includes("untested")) return { most_g_day: 0, unshown };
  const load = load_of(c, tank, tested_until(readings, belief.at_h), doses, feedings);
  const shown_g_day = Math.max(load.feed_g_day ?? 0, load.dosed_mg_n_l_day / per_gram_of(c, tank));
  if (shown_g_day <= 0) return { most_g_day: 0, unshown: [...unshown, "no_load"] };
  return { most_g_day: (unshown.includes("over_limit") ? 1 : c.shown_times) * shown_g_day, unshown };
}
