/** When a tank will likely process its load with ammonia and nitrite under their limits. */
import { band } from "./bands.js";
import { water_of } from "./acidity.js";
import { advance, daily_change, draw, thinned } from "./belief.js";
import * as k from "./kinetics.js";
import { levels_of, load_of, per_gram_of, untested_or_over } from "./tank_load.js";

/** @import {Input, Outputs} from "../types/contract.js" */
/** @typedef {import("./kinetics.js").Settings} Settings */
/** @typedef {import("./belief.js").Belief} Belief */
/** @typedef {import("./outlook.js").Limits} Limits */
/** @typedef {import("./tank_events.js").Change} Change */

/**
 * The band of `settled_band`, or null with notes that say why. The load and what is open: the Python twin.
 * @param {Settings} c
 * @param {Belief} even_belief
 * @param {Limits} limits
 * @param {Pick<Input<"outlook">, "tank" | "readings" | "changes" | "doses" | "feedings" | "planned_feed_g_day">} input
 * @returns {{settled_h: Outputs<"outlook">["settled_h"], unsettled: string[]}}
 */
export function readiness(c, even_belief, limits, input) {
  const { tank, readings = [], changes = [], doses = [], feedings = [], planned_feed_g_day = 0 } = input;
  const load = load_of(c, tank, even_belief.at_h, doses, feedings);
  const per_gram = per_gram_of(c, tank);
  const usual = load.feed_g_day === undefined ? c.unknown_input : load.feed_g_day * per_gram;
  const fed = Math.max(usual, planned_feed_g_day * per_gram);
  const dosed = load.dosed_mg_n_l_day;
  const unsettled = untested_or_over(even_belief, limits, readings);
  if (fed <= 0 && dosed <= 0) unsettled.push("no_load");
  if (unsettled.length) return { settled_h: null, unsettled };
  const settled_h = settled_band(c, even_belief, changes, limits, { usual, fed, dosed });
  return { settled_h, unsettled: settled_h ? [] : ["not_settled_in_sight"] };
}

/**
 * When the tank will likely process its load; null: not within `far_h`.
 * @param {Settings} c
 * @param {Belief} even_belief
 * @param {Change[]} changes
 * @param {Limits} limits
 * @param {{usual: number, fed: number, dosed: number}} load mg N/L/day
 * @returns {Outputs<"outlook">["settled_h"]}
 */
export function settled_band(c, even_belief, changes, limits, { usual, fed, dosed }) {
  const ahead = thinned(even_belief, c.far_every);
  const n = ahead.weight.length;
  ahead.base = Math.max(ahead.base, usual);
  const stretch = draw(ahead, 1)
    .slice(0, n)
    .map((luck) => Math.exp(c.sd_far * luck));
  const now_h = even_belief.at_h;
  const kept = Math.exp((-daily_change(changes, now_h) * c.walk_h) / 24);
  const levels = levels_of(c, ahead, limits);
  const ready_at = new Float64Array(n).fill(Infinity);
  // Steps can add up to slightly less than the horizon. That counts as reached: `advance` comes no closer.
  const far_h = now_h + c.far_h;
  for (let ready = 0; ; ) {
    const rates = k.processed(ahead.cloud, water_of(c, ahead), c, ...levels);
    const [tan, nitrite, nitrate, , , input] = ahead.cloud;
    const [kh, source_kh] = [ahead.cloud[k.KH], ahead.cloud[k.SOURCE_KH]];
    for (let i = 0; i < n; i += 1) {
      if (ready_at[i] === Infinity && rates[i] >= Math.max(input[i] * fed, dosed)) {
        ready_at[i] = ahead.at_h;
        ready += 1;
      }
    }
    if (ahead.at_h >= far_h - 1e-9 || ready / n >= 0.95) break;
    const before_h = ahead.at_h;
    const kh_before = kh.slice();
    advance(c, ahead, Math.min(before_h + c.walk_h, far_h));
    const brought = (dosed * (ahead.at_h - before_h)) / 24;
    for (let i = 0; i < n; i += 1) {
      tan[i] += brought;
      if (tan[i] > c.care_tan_mg_n_l || nitrite[i] > c.care_nitrite_mg_n_l) {
        tan[i] *= kept;
        nitrite[i] *= kept;
        nitrate[i] *= kept;
      }
      kh[i] = kept * kh_before[i] + (1 - kept) * source_kh[i];
    }
  }
  // The error of a date grows in proportion to how far off it is.
  const dates = ready_at.map((at_h, i) => now_h + (at_h - now_h) * stretch[i]);
  const { p10, p50, p90 } = band(dates);
  const known = (/** @type {number} */ at_h) => (Number.isFinite(at_h) ? at_h : null);
  return Number.isFinite(p10) ? { p10, p50: known(p50), p90: known(p90) } : null;
}
