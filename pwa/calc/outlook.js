/** The outlook: what a tank will do before its next test, as bands, chances and a date range. */
import { band } from "./bands.js";
import { mixed_band } from "./drift.js";
import { copy, pick, systematic } from "./belief.js";
import { free_ammonia } from "./free_ammonia.js";
import { kh_gone } from "./hardness_ahead.js";
import * as k from "./kinetics.js";
import { readiness } from "./readiness.js";
import { constants, table } from "./tables.js";
import { believed, follow } from "./tank_events.js";
import { load_of, per_gram_of, processed_at_limits } from "./tank_load.js";
import { water_limits } from "./water_limits.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/** @typedef {import("./kinetics.js").Settings} Settings */
/** @typedef {import("./belief.js").Belief} Belief */

/** @typedef {import("./tank_events.js").Event} Event */
/** @typedef {import("./tank_events.js").Tank} Tank */
/** @typedef {{nh3_mg_n_l: number, nitrite_mg_n_l: number, nitrate_mg_n_l: number}} Limits */

/**
 * Bands for ammonia, nitrite, nitrate to a horizon; chance of passing each limit; when the tank is ready and when its
 * carbonate hardness is used up. Fields, units, sources: the contract and the Python twin.
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
export function outlook_of(c, belief, plans, input) {
  const { tank, now_h, horizon_h = 72 } = input;
  const cloud = even(belief);
  const watch = new Watch(cloud, working_limits(tank, input.limits));
  const limits_now = watch.limits;
  const series = [watch.bands(c, cloud)];
  // How urgent a change is rests on the equations alone, as every plan does.
  const { at_h: _, ...now } = watch.bands(c, { ...cloud, drifts: {} });
  const every = Math.max(1, Math.ceil(horizon_h / c.step_h / c.series_points)) * c.step_h;
  const ahead = copy(cloud);
  const count = Math.ceil(horizon_h / every - 1e-9);
  for (let i = 0, before_h = now_h; i < count; i += 1) {
    const at_h = Math.min(now_h + (i + 1) * every, now_h + horizon_h);
    // Start at `before_h`, not at the hour reached: rounding can leave that slightly earlier, and a plan in the gap
    // would act twice.
    const due = plans.filter((event) => before_h < event.at_h && event.at_h <= at_h);
    follow(c, ahead, tank, due, at_h, watch.see);
    series.push(watch.bands(c, ahead));
    before_h = at_h;
  }
  const { settled_h, unsettled } = readiness(c, cloud, limits_now, input);
  const { changes = [], doses = [], feedings = [] } = input;
  const { dosed_mg_n_l_day, feed_g_day = 0 } = load_of(c, tank, now_h, doses, feedings);
  const capacity = processed_at_limits(c, cloud, limits_now).map((rate) => rate * tank.volume_l);
  return {
    series,
    now,
    pass_chance: watch.chances(),
    settled_h,
    kh_gone_h: kh_gone(c, cloud, changes, dosed_mg_n_l_day, feed_g_day * per_gram_of(c, tank)),
    capacity_mg_n_day: band(capacity),
    doubts: recent_doubts(c, belief),
    notes: [...notes_of(c, belief), ...unsettled],
  };
}

/**
 * The limits to keep, mg N/L, as a function of pH and temperature: those given, else those of `water_limits`.
 * @param {Tank} tank
 * @param {Partial<Limits>} [given]
 * @returns {(ph: number, temperature_c: number) => Limits}
 */
export function working_limits({ chloride_mg_l }, given) {
  return (ph, temperature_c) => {
    const { nh3_mg_n_l, nitrite_mg_n_l, nitrate_mg_n_l } = water_limits({ ph, temperature_c, chloride_mg_l });
    return { nh3_mg_n_l, nitrite_mg_n_l, nitrate_mg_n_l, ...given };
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

/** Records which draws passed which limit, for how long and how far, while the belief moves. */
export class Watch {
  /**
   * @param {Belief} belief
   * @param {ReturnType<typeof working_limits>} limits_at
   * @param {import("./changed_water.js").ChangedWater} [water] where changes move pH and temperature
   */
  constructor(belief, limits_at, water) {
    const n = belief.weight.length;
    this.limits_at = limits_at;
    this.water = water;
    /** @type {Limits} */
    this.limits = limits_at(belief.ph, belief.temperature_c);
    this.ph = belief.ph;
    this.share_nh3 = share_nh3(belief, belief.ph, belief.temperature_c);
    this.passed = [new Uint8Array(n), new Uint8Array(n), new Uint8Array(n)];
    this.peaks = [new Float64Array(n), new Float64Array(n), new Float64Array(n)];
    this.over_h = new Float64Array(n);
    this.passed_last = new Uint8Array(n);
    this.free = new Uint8Array(n);
    this.free_limit = eifac_nh3_mg_n_l();
    this.see(belief, 0);
  }

  /** @param {Belief} belief @param {number} ph @param {number} temperature_c */
  in_water(belief, ph, temperature_c) {
    this.ph = belief.ph;
    this.limits = this.limits_at(ph, temperature_c);
    this.share_nh3 = share_nh3(belief, ph, temperature_c);
  }

  /** Record where each draw stands after a step. @param {Belief} belief @param {number} hours */
  see = (belief, hours) => {
    if (this.water?.known) {
      const { ph, temperature_c } = this.water.at(belief.at_h);
      this.in_water(belief, ph, temperature_c);
    } else if (belief.ph !== this.ph) this.in_water(belief, belief.ph, belief.temperature_c);
    const [tan, nitrite, nitrate] = belief.cloud;
    const { passed, passed_last, peaks, over_h, free, free_limit, share_nh3: share } = this;
    const { nh3_mg_n_l, nitrite_mg_n_l, nitrate_mg_n_l } = this.limits;
    for (let i = 0; i < tan.length; i += 1) {
      const nh3 = tan[i] * share[i];
      if (nh3 > free_limit) free[i] = 1;
      if (nh3 > peaks[0][i]) peaks[0][i] = nh3;
      if (nitrite[i] > peaks[1][i]) peaks[1][i] = nitrite[i];
      if (nitrate[i] > peaks[2][i]) peaks[2][i] = nitrate[i];
      const first = nh3 / nh3_mg_n_l;
      const second = nitrite[i] / nitrite_mg_n_l;
      if (first > 1) {
        passed[0][i] = passed_last[i] = 1;
        over_h[i] += hours * first;
      }
      if (second > 1) {
        passed[1][i] = passed_last[i] = 1;
        over_h[i] += hours * second;
      }
      if (nitrate[i] / nitrate_mg_n_l > 1) passed[2][i] = 1;
    }
  };

  /** Record where each draw stands after a further change; `last_chance` counts from here. @param {Belief} belief */
  changed(belief) {
    this.passed_last.fill(0);
    this.see(belief, 0);
  }

  /**
   * One row of the series. In total ammonia and nitrite the drift counts by its weight beside the equations; free
   * ammonia, a matter of limits, rests on the equations alone, as all plans and chances do.
   * @param {Settings} c @param {Belief} belief
   */
  bands(c, belief) {
    const mixed = (/** @type {number} */ row) => {
      const drift = belief.drifts[row];
      return drift ? mixed_band(c, belief.cloud[row], drift, belief.at_h) : band(belief.cloud[row]);
    };
    return {
      at_h: belief.at_h,
      total_ammonia_mg_n_l: mixed(k.TAN),
      nitrite_mg_n_l: mixed(k.NITRITE),
      nitrate_mg_n_l: band(belief.cloud[k.NITRATE]),
      nh3_mg_n_l: band(belief.cloud[k.TAN].map((value, i) => value * this.share_nh3[i])),
    };
  }

  /** The chance that each limit is passed at any time so far. */
  chances() {
    const [nh3, nitrite, nitrate] = this.passed.map(share_of);
    return { nh3, nitrite, nitrate };
  }

  /** The chance that ammonia or nitrite passes its limit at any time so far. */
  chance() {
    const [nh3, nitrite] = this.passed;
    return share_of(nh3.map((passed, i) => passed | nitrite[i]));
  }

  /** The chance that ammonia or nitrite passes its limit after the last change. */
  last_chance() {
    return share_of(this.passed_last);
  }

  /** Hours over ammonia's and nitrite's limits, each times concentration / limit, the mean of the draws. */
  mean_over_h() {
    return this.over_h.reduce((sum, hours) => sum + hours, 0) / this.over_h.length;
  }

  /** Whether neither the chance nor the time over a limit is higher than in another. @param {Watch} other */
  harms_no_more_than(other) {
    return this.chance() <= other.chance() && this.mean_over_h() <= other.mean_over_h();
  }

  /** The chance that free ammonia passes EIFAC's limit, in sour water higher than the limit of total ammonia. */
  free_chance() {
    return share_of(this.free);
  }
}

/** EIFAC's limit of free ammonia, mg N/L (eifac_1970). */
const eifac_nh3_mg_n_l = () => table("limits").limits.free_ammonia_mg_l.value / constants("nitrogen_species").nh3_per_n;

/**
 * The un-ionised share of each draw's ammonia at its own pH (emerson_1975).
 * @param {Belief} belief
 * @param {number} ph
 * @param {number} temperature_c
 */
function share_nh3(belief, ph, temperature_c) {
  const { pka } = free_ammonia({ tan_mg_n_l: 0, ph, temperature_c });
  return belief.cloud[k.PH_OFFSET].map((offset) => 1 / (1 + 10 ** (pka - ph - offset)));
}

/** @param {Uint8Array} flags */
const share_of = (flags) => flags.reduce((sum, flag) => sum + flag, 0) / flags.length;

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
