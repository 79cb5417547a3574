/** The outlook: what a tank will do before its next test, as bands, chances and a date range. */
import { advance, copy, draw, pick, systematic } from "./belief.js";
import { free_ammonia } from "./free_ammonia.js";
import * as k from "./kinetics.js";
import { constants, table } from "./tables.js";
import { believed, follow } from "./tank_events.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/** @typedef {import("./kinetics.js").Settings} Settings */
/** @typedef {import("./belief.js").Belief} Belief */

/** @typedef {import("./tank_events.js").Event} Event */
/** @typedef {import("./tank_events.js").Change} Change */
/** @typedef {{p10: number, p50: number, p90: number}} Band */
/** @typedef {{nh3_mg_n_l: number, nitrite_mg_n_l: number, nitrate_mg_n_l: number}} Limits */

/**
 * Bands for ammonia, nitrite, nitrate to a horizon; chance of passing each limit; when the tank is ready. Fields,
 * units, sources: the contract and the Python twin.
 * @param {Input<"outlook">} input
 * @returns {Outputs<"outlook">}
 */
export function outlook(input) {
  const c = k.settings();
  const { belief, plans } = believed(c, input);
  return outlook_of(c, belief, plans, input);
}

/**
 * The answer of `outlook` from a belief that has reached `now_h`.
 * @param {Settings} c @param {Belief} belief @param {Event[]} plans @param {Input<"outlook">} input
 * @returns {Outputs<"outlook">}
 */
export function outlook_of(c, belief, plans, { tank, now_h, horizon_h = 72, changes = [], limits }) {
  const cloud = even(belief);
  const watch = new Watch(cloud, working_limits(limits));
  const series = [watch.bands(cloud)];
  const every = Math.max(1, Math.ceil(horizon_h / c.step_h / c.series_points)) * c.step_h;
  const ahead = copy(cloud);
  const count = Math.ceil(horizon_h / every - 1e-9);
  for (let i = 0, before_h = now_h; i < count; i += 1) {
    const at_h = Math.min(now_h + (i + 1) * every, now_h + horizon_h);
    // Start at `before_h`, not at the hour reached: rounding can leave that slightly earlier, and a plan in the gap
    // would act twice.
    const due = plans.filter((event) => before_h < event.at_h && event.at_h <= at_h);
    follow(c, ahead, tank, due, at_h, watch.see);
    series.push(watch.bands(ahead));
    before_h = at_h;
  }
  const settled_h = settled_band(c, cloud, changes);
  const capacity = k.processed(cloud.cloud, conditions_of(c, cloud), c).map((rate) => rate * tank.volume_l);
  const { at_h: _, ...now } = series[0];
  return {
    series,
    now,
    pass_chance: watch.chances(),
    settled_h,
    capacity_mg_n_day: band(capacity),
    doubts: recent_doubts(c, belief),
    notes: [...notes_of(c, belief), ...(settled_h ? [] : ["not_settled_in_sight"])],
  };
}

/**
 * The limits to keep, mg N/L; the working limits where none is given.
 * @param {Partial<Limits>} [limits]
 * @returns {Limits}
 */
export function working_limits(limits) {
  const known = table("limits").limits;
  return {
    nh3_mg_n_l: known.free_ammonia_mg_l.value / constants("nitrogen_species").nh3_per_n,
    nitrite_mg_n_l: known.nitrite_mg_n_l.value,
    nitrate_mg_n_l: known.nitrate_mg_n_l.value,
    ...limits,
  };
}

/** The same belief with equal weights, so that a quantile is a rank. @param {Belief} belief @returns {Belief} */
export function even(belief) {
  const chosen = systematic(belief);
  return {
    ...belief,
    cloud: belief.cloud.map((row) => pick(row, chosen)),
    weight: new Float64Array(chosen.length).fill(1 / chosen.length),
    doubts: [...belief.doubts],
  };
}

/** `conditions` of the belief's water. @param {Settings} c @param {Belief} belief */
export const conditions_of = (c, belief) => k.conditions(c, belief.temperature_c, belief.ph, belief.kh_dkh);

/**
 * The 10 %, 50 % and 90 % points of equally weighted draws.
 * @param {Float64Array} values
 * @returns {Band}
 */
export function band(values) {
  const ranked = values.slice().sort();
  const at = (/** @type {number} */ share) => ranked[Math.ceil(share * ranked.length - 1e-9) - 1];
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9) };
}

/** Records which draws passed which limit, for how long and how far, while the belief moves. */
export class Watch {
  /** @param {Belief} belief @param {Limits} limits */
  constructor(belief, limits) {
    const n = belief.weight.length;
    this.limits = [limits.nh3_mg_n_l, limits.nitrite_mg_n_l, limits.nitrate_mg_n_l];
    this.passed = [new Uint8Array(n), new Uint8Array(n), new Uint8Array(n)];
    this.peaks = [new Float64Array(n), new Float64Array(n), new Float64Array(n)];
    this.over_h = new Float64Array(n);
    // The un-ionised share of each draw's ammonia at its own pH (emerson_1975).
    const { pka } = free_ammonia({ tan_mg_n_l: 0, ph: belief.ph, temperature_c: belief.temperature_c });
    this.share_nh3 = belief.cloud[k.PH_OFFSET].map((offset) => 1 / (1 + 10 ** (pka - belief.ph - offset)));
    this.see(belief, 0);
  }

  /** Record where each draw stands after a step. @param {Belief} belief @param {number} hours */
  see = (belief, hours) => {
    const [tan, nitrite, nitrate] = belief.cloud;
    const { limits, passed, peaks, over_h, share_nh3 } = this;
    for (let i = 0; i < tan.length; i += 1) {
      const nh3 = tan[i] * share_nh3[i];
      if (nh3 > peaks[0][i]) peaks[0][i] = nh3;
      if (nitrite[i] > peaks[1][i]) peaks[1][i] = nitrite[i];
      if (nitrate[i] > peaks[2][i]) peaks[2][i] = nitrate[i];
      const first = nh3 / limits[0];
      const second = nitrite[i] / limits[1];
      const third = nitrate[i] / limits[2];
      if (first > 1) passed[0][i] = 1;
      if (second > 1) passed[1][i] = 1;
      if (third > 1) passed[2][i] = 1;
      const worst = Math.max(first, second, third);
      if (worst > 1) over_h[i] += hours * worst;
    }
  };

  /** One row of the series. @param {Belief} belief */
  bands(belief) {
    const tan = belief.cloud[k.TAN];
    return {
      at_h: belief.at_h,
      total_ammonia_mg_n_l: band(tan),
      nitrite_mg_n_l: band(belief.cloud[k.NITRITE]),
      nitrate_mg_n_l: band(belief.cloud[k.NITRATE]),
      nh3_mg_n_l: band(tan.map((value, i) => value * this.share_nh3[i])),
    };
  }

  /** The chance that each limit is passed at any time so far. */
  chances() {
    const [nh3, nitrite, nitrate] = this.passed.map(share_of);
    return { nh3, nitrite, nitrate };
  }

  /** The chance that any limit is passed at any time so far. */
  chance_of_any() {
    const [nh3, nitrite, nitrate] = this.passed;
    return share_of(nh3.map((passed, i) => passed | nitrite[i] | nitrate[i]));
  }

  /** Hours over any limit, the mean of the draws. */
  mean_over_h() {
    return this.over_h.reduce((sum, hours) => sum + hours, 0) / this.over_h.length;
  }
}

/** @param {Uint8Array} flags */
const share_of = (flags) => flags.reduce((sum, flag) => sum + flag, 0) / flags.length;

/**
 * When the tank will likely process its load; null: not within `far_h`.
 * @param {Settings} c
 * @param {Belief} even_belief
 * @param {Change[]} changes
 * @returns {Outputs<"outlook">["settled_h"]}
 */
export function settled_band(c, even_belief, changes) {
  const n = even_belief.weight.length / c.far_every;
  const every = Int32Array.from({ length: n }, (_, i) => i * c.far_every);
  const thinned = { ...copy(even_belief), cloud: even_belief.cloud.map((row) => pick(row, every)) };
  thinned.weight = new Float64Array(n).fill(1 / n);
  const stretch = draw(thinned, 1)
    .slice(0, n)
    .map((luck) => Math.exp(c.sd_far * luck));
  const now_h = even_belief.at_h;
  let daily = 0;
  for (const { at_h, fraction } of changes) {
    if (now_h - 168 <= at_h && at_h <= now_h) daily -= Math.log(1 - Math.min(fraction, 0.99));
  }
  const kept = Math.exp((-(daily / 7) * c.walk_h) / 24);
  const water = conditions_of(c, thinned);
  const ready_at = new Float64Array(n).fill(Infinity);
  // Steps can add up to slightly less than the horizon. That counts as reached: `advance` comes no closer.
  const far_h = now_h + c.far_h;
  for (let ready = 0; ; ) {
    const rates = k.processed(thinned.cloud, water, c);
    const [tan, nitrite, nitrate, , , input] = thinned.cloud;
    for (let i = 0; i < n; i += 1) {
      if (ready_at[i] === Infinity && rates[i] >= input[i] * thinned.base) {
        ready_at[i] = thinned.at_h;
        ready += 1;
      }
    }
    if (thinned.at_h >= far_h - 1e-9 || ready / n >= 0.95) break;
    advance(c, thinned, Math.min(thinned.at_h + c.walk_h, far_h));
    for (let i = 0; i < n; i += 1) {
      if (tan[i] > c.care_tan_mg_n_l || nitrite[i] > c.care_nitrite_mg_n_l) {
        tan[i] *= kept;
        nitrite[i] *= kept;
        nitrate[i] *= kept;
      }
    }
  }
  // The error of a date grows in proportion to how far off it is.
  const dates = ready_at.map((at_h, i) => now_h + (at_h - now_h) * stretch[i]);
  const { p10, p50, p90 } = band(dates);
  const known = (/** @type {number} */ at_h) => (Number.isFinite(at_h) ? at_h : null);
  return Number.isFinite(p10) ? { p10, p50: known(p50), p90: known(p90) } : null;
}

/** Readings of the last days that did not fit what was expected. @param {Settings} c @param {Belief} belief */
export const recent_doubts = (c, belief) =>
  belief.doubts.filter((doubt) => belief.at_h - doubt.at_h <= c.doubt_stands_h);

/**
 * Codes of what a keeper should know about this belief.
 * @param {Settings} c
 * @param {Belief} belief
 * @returns {string[]}
 */
export function notes_of(c, belief) {
  const notes = [];
  if (belief.readings === 0) notes.push("prior_only");
  else if (belief.readings < c.few_readings) notes.push("few_readings");
  if (recent_doubts(c, belief).length) notes.push("doubted");
  return notes;
}
