/** How much feed a day, and so how many grams of fish, the tank can process now and in one and two weeks. */
import { nominal_input } from "./belief.js";
import * as k from "./kinetics.js";
import { band, conditions_of, even, notes_of, recent_doubts } from "./outlook.js";
import { believed, follow } from "./tank_events.js";

/** @typedef {import("./kinetics.js").Settings} Settings */
/** @typedef {import("./belief.js").Belief} Belief */

/**
 * Feed and fish that the tank keeps up with. Fields, units, sources: the contract and the Python twin.
 * @param {any} input
 */
export function stock_headroom(input) {
  const c = k.settings();
  const { belief, plans } = believed(c, input);
  return headroom_of(c, belief, plans, input);
}

/**
 * The answer of `stock_headroom` from a belief that has reached now.
 * @param {Settings} c @param {Belief} belief @param {any[]} plans @param {any} input
 */
export function headroom_of(c, belief, plans, { tank, feed_share_of_mass }) {
  const share = feed_share_of_mass ?? c.feed_of_fish;
  const per_gram = ((tank.protein_fraction ?? c.protein_fraction) * c.tan_per_protein * 1000) / tank.volume_l;
  const ahead = even(belief);
  const now_h = belief.at_h;
  /** @type {Record<string, any>} */
  const out = {};
  for (const [days, when] of /** @type {[number, string][]} */ ([
    [0, "now"],
    [7, "in_7_days"],
    [14, "in_14_days"],
  ])) {
    const until = now_h + days * 24;
    const due = plans.filter((event) => ahead.at_h < event.at_h && event.at_h <= until);
    follow(c, ahead, tank, due, until);
    const input = ahead.cloud[k.INPUT];
    const feed = k.processed(ahead.cloud, conditions_of(c, ahead), c).map((rate, i) => rate / (input[i] * per_gram));
    const found = band(feed);
    out[`feed_g_day_${when}`] = found;
    out[`fish_g_${when}`] = Object.fromEntries(Object.entries(found).map(([name, value]) => [name, value / share]));
  }
  return {
    ...out,
    feed_g_day_expected: nominal_input(c, tank)[0] / per_gram,
    doubts: recent_doubts(c, belief),
    notes: notes_of(c, belief),
  };
}
