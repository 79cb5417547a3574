/** Tries water changes on copies of one belief until the next test. */
import { change_water, copy } from "./belief.js";
import { ChangedWater } from "./changed_water.js";
import { Watch } from "./outlook.js";
import { follow } from "./tank_events.js";
import { tan_limit } from "./tank_load.js";

/** @import {Input, Outputs} from "../types/contract.js" */
/** @typedef {import("./kinetics.js").Settings} Settings */
/** @typedef {import("./belief.js").Belief} Belief */
/** @typedef {import("./tank_events.js").Event} Event */
/** @typedef {Partial<NonNullable<Input<"change_plan">["source"]>>} NewWater */
/** @typedef {NonNullable<Outputs<"change_plan">["cause"]>} Cause */

/**
 * What of the new water can be a reason not to change, in the order in which it is named.
 * @type {[Cause, (keyof NewWater)[]][]}
 */
const CAUSES = [
  ["total_ammonia", ["tan_mg_n_l"]],
  ["nitrite", ["nitrite_mg_n_l"]],
  ["ph", ["ph", "kh_dkh", "temperature_c"]],
];

/** Tries changes on copies of one belief with the same random numbers, so that they can be compared. */
export class Trial {
  /**
   * @param {Settings} c
   * @param {Belief} belief equally weighted, at now
   * @param {Event[]} plans
   * @param {import("./tank_events.js").Tank} tank
   * @param {NewWater} source
   * @param {ReturnType<typeof import("./outlook.js").working_limits>} limits_at
   * @param {number} risk the chance of passing a limit that is accepted
   * @param {number} hours to the next test
   */
  constructor(c, belief, plans, tank, source, limits_at, risk, hours) {
    this.c = c;
    this.belief = belief;
    this.plans = plans;
    this.tank = tank;
    this.source = source;
    this.limits_at = limits_at;
    this.limits = limits_at(belief.ph, belief.temperature_c);
    this.risk = risk;
    this.hours = hours;
    /** The share of the usual food that `run` assumes. */
    this.feed = 1;
  }

  /**
   * What happens until the next test after `count` equal changes, evenly spaced from now on.
   * @param {number} fraction
   * @param {{count?: number, feed?: number, hours?: number, source?: NewWater}} [besides]
   */
  run(fraction, { count = 1, feed = this.feed, hours = this.hours, source = this.source } = {}) {
    const ahead = copy(this.belief);
    const now_h = ahead.at_h;
    const water = new ChangedWater(this.c, ahead, source);
    let plans = this.plans.map((plan) => (plan.kind === "feeding" ? { ...plan, feed_g: plan.feed_g * feed } : plan));
    change_water(ahead, fraction, source);
    water.change(fraction, now_h);
    const watch = new Watch(ahead, this.limits_at, water);
    /** @type {{at_h: number, fraction: number | null}[]} */
    const moments = Array.from({ length: count - 1 }, (_, i) => ({
      at_h: now_h + (hours * (i + 1)) / count,
      fraction,
    }));
    // Food already eaten still releases its nitrogen, so a smaller ration counts only from `lean_after_h` on.
    if (feed !== 1) moments.push({ at_h: now_h + Math.min(this.c.lean_after_h, hours), fraction: null });
    for (const { at_h, fraction: changed } of moments.sort((one, other) => one.at_h - other.at_h)) {
      follow(this.c, ahead, this.tank, plans, at_h, watch.see);
      plans = plans.filter((plan) => plan.at_h > at_h);
      if (changed === null) ahead.base *= feed;
      else {
        change_water(ahead, changed, source);
        water.change(changed, at_h);
        watch.changed(ahead);
      }
    }
    follow(this.c, ahead, this.tank, plans, now_h + hours, watch.see);
    return watch;
  }

  /** Whether the chance of passing ammonia's or nitrite's limit is within the risk. @param {Watch} watch */
  enough(watch) {
    return watch.chance() <= this.risk;
  }

  /**
   * Whether a change raises neither the chance of passing a limit nor the time over one, nor brings free ammonia over
   * EIFAC's limit. Why that besides: the Python twin.
   * @param {Watch} watch
   * @param {Watch} than
   */
  harms_no_more(watch, than) {
    return watch.harms_no_more_than(than) && watch.free_chance() <= Math.max(than.free_chance(), this.risk);
  }

  /**
   * The smallest fraction, in hundredths, that keeps within the risk. If none does: the smallest tenth whose time over
   * a limit is within `plan_slack` of the least. Of the changes only those count that do more good than harm.
   * @param {number} max_fraction
   * @returns {{fraction: number, watch: Watch}}
   */
  smallest(max_fraction) {
    const none = this.run(0);
    if (this.enough(none)) return { fraction: 0, watch: none };
    const tried = [{ fraction: 0, watch: none }];
    for (const fraction of tenths(max_fraction)) {
      const watch = this.run(fraction);
      if (!this.harms_no_more(watch, none)) continue;
      if (this.enough(watch)) return this.refine(fraction, watch, none, (middle) => this.run(middle));
      tried.push({ fraction, watch });
    }
    const most = Math.min(...tried.map(({ watch }) => watch.mean_over_h())) + this.c.plan_slack * this.hours;
    return tried.find(({ watch }) => watch.mean_over_h() <= most) ?? tried[0];
  }

  /**
   * The fewest changes like `single` after which the risk holds; if none do, as many as each do enough good; null where
   * not even a second one does.
   * @param {number} fraction that of `single`
   * @param {Watch} single the best that one change can do
   * @returns {Outputs<"change_plan">["several"]}
   */
  several(fraction, single) {
    /** @type {Outputs<"change_plan">["several"]} */ let found = null;
    let last = single;
    for (let count = 2; count <= this.c.several_most && fraction > 0; count += 1) {
      const every_h = this.hours / count;
      if (every_h < this.c.several_every_h - 1e-9) break;
      const watch = this.run(fraction, { count });
      const better = last.mean_over_h() - watch.mean_over_h() > this.c.plan_slack * this.hours;
      const holds = watch.last_chance() <= this.risk;
      if (!this.harms_no_more(watch, last) || !(better || holds)) break;
      last = watch;
      found = { count, fraction_each: fraction, every_h, pass_chance: watch.last_chance() };
      if (holds) break;
    }
    return found;
  }

  /**
   * What in the new water is the reason that a change does not do the good it could; null: nothing in it.
   * @param {number} max_fraction
   * @param {Watch} watch of the change that is planned
   */
  cause(max_fraction, watch) {
    const clean = this.run(max_fraction, { source: {} });
    const worse = watch.mean_over_h() - clean.mean_over_h() > this.c.plan_slack * this.hours;
    return worse ? this.worst_of_source(max_fraction) : null;
  }

  /**
   * What in the new water adds most to the time over a limit in a change of `fraction`; null: nothing.
   * @param {number} fraction
   * @returns {Cause | null}
   */
  worst_of_source(fraction) {
    /** @type {Cause | null} */ let found = null;
    let least_h = this.run(fraction).mean_over_h();
    for (const [name, fields] of CAUSES) {
      const source = { ...this.source };
      for (const field of fields) delete source[field];
      const over_h = this.run(fraction, { source }).mean_over_h();
      if (over_h < least_h) {
        found = name;
        least_h = over_h;
      }
    }
    return found;
  }

  /** Whether the unknown pH of the new water could free much ammonia: sour water with ammonia over its limit. */
  ph_matters() {
    const { known } = new ChangedWater(this.c, this.belief, this.source);
    return !known && this.belief.ph < this.c.sour_ph && this.run(0).chances().nh3 > this.risk;
  }

  /** Whether the new water's own ammonia, nitrite or nitrate is over the tank's limit. */
  source_over_limit() {
    const { tan_mg_n_l = 0, nitrite_mg_n_l = 0, nitrate_mg_n_l = 0 } = this.source;
    return (
      tan_mg_n_l > tan_limit(this.belief, this.limits) ||
      nitrite_mg_n_l > this.limits.nitrite_mg_n_l ||
      nitrate_mg_n_l > this.limits.nitrate_mg_n_l
    );
  }

  /**
   * The smallest hundredth found between `fraction`, which is enough, and the tenth below it.
   * @param {number} fraction
   * @param {Watch} watch
   * @param {Watch} than
   * @param {(fraction: number) => Watch} run
   */
  refine(fraction, watch, than, run) {
    // `max_fraction` may not be a whole hundredth: try the hundredth below it, never the one above.
    let high = Math.ceil(fraction * 100 - 1e-9);
    let low = Math.max(0, Math.ceil(fraction * 10 - 1e-9) * 10 - 10);
    let found = { fraction, watch };
    while (high - low > 1) {
      const middle = Math.floor((low + high) / 2);
      const tried = run(middle / 100);
      if (this.enough(tried) && this.harms_no_more(tried, than)) {
        high = middle;
        found = { fraction: middle / 100, watch: tried };
      } else low = middle;
    }
    return found;
  }
}

/** 0.1, 0.2, ... below `max_fraction`, then `max_fraction` itself. @param {number} max_fraction */
function tenths(max_fraction) {
  const all = Array.from({ length: 9 }, (_, i) => (i + 1) / 10);
  return [...all.filter((fraction) => fraction < max_fraction), max_fraction];
}
