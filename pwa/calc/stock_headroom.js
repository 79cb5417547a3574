/** How much feed a day, and so how many grams of fish, the tank can process now and in one and two weeks. */
import { nominal_input } from "./belief.js";
import * as k from "./kinetics.js";
import { band, conditions_of, even, notes_of, recent_doubts } from "./outlook.js";
import { believed, follow } from "./tank_events.js";

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
export function headroom_of(c, belief, plans, { tank, feed_share_of_mass }) {
  const share = feed_share_of_mass ?? c.feed_of_fish;
  const per_gram = ((tank.protein_fraction ?? c.protein_fraction) * c.tan_per_protein * 1000) / tank.volume_l;
  const ahead = even(belief);
  const now_h = belief.at_h;
  const after_days = (/** @type {number} */ days) => {
    const until = now_h + days * 24;
    const due = plans.filter((event) => ahead.at_h < event.at_h && event.at_h <= until);
    follow(c, ahead, tank, due, until);
    const input = ahead.cloud[k.INPUT];
    const feed = k.processed(ahead.cloud, conditions_of(c, ahead), c).map((rate, i) => rate / (input[i] * per_gram));
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
    notes: notes_of(c, belief),
  };
}
