/** The smallest water change now that keeps every limit until the next test, within the keeper's risk. */
import { change_water, copy } from "./belief.js";
import * as k from "./kinetics.js";
import { Watch, band, even, notes_of, recent_doubts, working_limits } from "./outlook.js";
import { believed, follow } from "./tank_events.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/** @typedef {import("./kinetics.js").Settings} Settings */
/** @typedef {import("./belief.js").Belief} Belief */
/** @typedef {import("./belief.js").Source} Source */
/** @typedef {import("./outlook.js").Limits} Limits */
/** @typedef {import("./tank_events.js").Event} Event */
/** @typedef {import("./tank_events.js").Tank} Tank */

/**
 * The fraction and litres to change now; the chance and peaks that then remain; what else to do. Fields, units,
 * sources: the contract and the Python twin.
 * @param {Input<"change_plan">} input
 * @returns {Outputs<"change_plan">}
 */
export function change_plan(input) {
  const c = k.settings();
  const { belief, plans } = believed(c, input);
  return plan_of(c, belief, plans, input);
}

/**
 * The answer of `change_plan` from a belief that has reached now.
 * @param {Settings} c @param {Belief} belief @param {Event[]} plans @param {Input<"change_plan">} input
 * @returns {Outputs<"change_plan">}
 */
export function plan_of(c, belief, plans, { tank, source, limits, risk = 0.1, next_test_h = 24, max_fraction = 0.9 }) {
  const trial = new Trial(c, even(belief), plans, tank, source ?? {}, working_limits(limits), next_test_h);
  let { fraction, watch } = trial.smallest(risk, max_fraction);
  let enough = watch.chance_of_any() <= risk;
  /** @type {ReturnType<Trial["two_changes"]>} */ let halves = null;
  if (!enough || fraction > c.lean_from) {
    // Half the food is easier on tank, animals and keeper than a second change or a change of most of the water.
    trial.feed = c.lean_feed;
    const lean = trial.smallest(risk, max_fraction);
    if (enough && lean.fraction > fraction - c.lean_gain) trial.feed = 1;
    else {
      ({ fraction, watch } = lean);
      enough = false;
      if (watch.chance_of_any() > risk) halves = trial.two_changes(risk, max_fraction);
    }
  }
  const chance = watch.chance_of_any();
  const [nh3, nitrite, nitrate] = watch.peaks.map(band);
  return {
    fraction,
    litres: fraction * tank.volume_l,
    pass_chance: chance,
    pass_chance_without: trial.run(0, { feed: 1 }).chance_of_any(),
    enough,
    two_changes: halves,
    advice: advice_of(trial, watch, fraction, enough, halves, risk),
    peak: { nh3_mg_n_l: nh3, nitrite_mg_n_l: nitrite, nitrate_mg_n_l: nitrate },
    doubts: recent_doubts(c, belief),
    notes: notes_of(c, belief),
  };
}

/** Tries changes on copies of one belief with the same random numbers, so that they can be compared. */
class Trial {
  /**
   * @param {Settings} c
   * @param {Belief} belief
   * @param {Event[]} plans
   * @param {Tank} tank
   * @param {Source} source
   * @param {Limits} limits @param {number} hours
   */
  constructor(c, belief, plans, tank, source, limits, hours) {
    this.c = c;
    this.belief = belief;
    this.plans = plans;
    this.tank = tank;
    this.source = source;
    this.limits = limits;
    this.hours = hours;
    this.feed = 1;
  }

  /**
   * What happens until the next test after a change of `fraction` now and `again` half-way.
   * @param {number} fraction @param {{again?: number, feed?: number, hours?: number}} [besides]
   */
  run(fraction, { again = 0, feed = this.feed, hours = this.hours } = {}) {
    const ahead = copy(this.belief);
    const now_h = ahead.at_h;
    change_water(ahead, fraction, this.source);
    let plans = this.plans.map((plan) => (plan.kind === "feeding" ? { ...plan, feed_g: plan.feed_g * feed } : plan));
    const watch = new Watch(ahead, this.limits);
    if (again) {
      plans = [
        ...plans,
        /** @type {Event} */ ({ kind: "change", at_h: now_h + hours / 2, fraction: again, source: this.source }),
      ];
      plans.sort((one, other) => one.at_h - other.at_h);
    }
    if (feed !== 1) {
      // Food already eaten still releases its nitrogen, so the smaller ration counts only from `turn_h` on.
      const turn_h = now_h + Math.min(this.c.lean_after_h, hours);
      follow(this.c, ahead, this.tank, plans, turn_h, watch.see);
      ahead.base *= feed;
      plans = plans.filter((plan) => plan.at_h > turn_h);
    }
    follow(this.c, ahead, this.tank, plans, now_h + hours, watch.see);
    return watch;
  }

  /**
   * The smallest fraction, in hundredths, that keeps within the risk. If none does: the smallest tenth whose
   * time over a limit is within `plan_slack` of the least.
   * @param {number} risk @param {number} max_fraction
   */
  smallest(risk, max_fraction) {
    const tried = [];
    for (const fraction of tenths(max_fraction)) {
      const watch = this.run(fraction);
      if (watch.chance_of_any() <= risk) return this.refine(fraction, watch, risk, (middle) => this.run(middle));
      tried.push({ fraction, watch, over: watch.mean_over_h() });
    }
    const most = Math.min(...tried.map(({ over }) => over)) + this.c.plan_slack * this.hours;
    return /** @type {{fraction: number, watch: Watch}} */ (tried.find(({ over }) => over <= most));
  }

  /**
   * Two equal changes, in hundredths, now and half-way, that keep within the risk; null if none do.
   * @param {number} risk
   * @param {number} max_fraction
   */
  two_changes(risk, max_fraction) {
    const twice = (/** @type {number} */ fraction) => this.run(fraction, { again: fraction });
    for (const tenth of tenths(max_fraction).slice(1)) {
      const tried = twice(tenth);
      if (tried.chance_of_any() > risk) continue;
      const { fraction, watch } = this.refine(tenth, tried, risk, twice);
      return { fraction_each: fraction, after_h: this.hours / 2, pass_chance: watch.chance_of_any() };
    }
    return null;
  }

  /**
   * The smallest hundredth found between `fraction`, which keeps within the risk, and the tenth below it.
   * @param {number} fraction @param {Watch} watch @param {number} risk @param {(fraction: number) => Watch} run
   */
  refine(fraction, watch, risk, run) {
    if (fraction === 0) return { fraction, watch };
    // `max_fraction` may not be a whole hundredth: try the hundredth below it, never the one above.
    let high = Math.ceil(fraction * 100 - 1e-9);
    let low = Math.max(0, Math.ceil(fraction * 10 - 1e-9) * 10 - 10);
    while (high - low > 1) {
      const middle = Math.floor((low + high) / 2);
      const tried = run(middle / 100);
      if (tried.chance_of_any() <= risk) {
        high = middle;
        fraction = middle / 100;
        watch = tried;
      } else low = middle;
    }
    return { fraction, watch };
  }
}

/** 0, 0.1, ... below `max_fraction`, then `max_fraction` itself. @param {number} max_fraction */
function tenths(max_fraction) {
  const all = Array.from({ length: 10 }, (_, tenth) => tenth / 10);
  return [...all.filter((fraction) => fraction < max_fraction), max_fraction];
}

/**
 * Codes of what else to do; the effect of feeding or testing differently is tried on the belief first.
 * @param {Trial} trial
 * @param {Watch} watch
 * @param {number} fraction
 * @param {boolean} enough
 * @param {Outputs<"change_plan">["two_changes"]} halves
 * @param {number} risk
 * @returns {Outputs<"change_plan">["advice"]}
 */
function advice_of(trial, watch, fraction, enough, halves, risk) {
  const { source, limits } = trial;
  const { nitrite_mg_n_l = 0, nitrate_mg_n_l = 0 } = source;
  const dirty = nitrite_mg_n_l > limits.nitrite_mg_n_l || nitrate_mg_n_l > limits.nitrate_mg_n_l;
  /** @type {Outputs<"change_plan">["advice"]} */
  const advice = dirty ? ["source_over_limit"] : [];
  if (fraction > 0.5) advice.push("large_change");
  if (enough) return fraction ? advice : [...advice, "no_change"];
  if (watch.chance_of_any() <= risk) return [...advice, "feed_half"];
  if (halves) advice.push("two_changes");
  const chances = watch.chances();
  if (chances.nh3 <= risk && chances.nitrite <= risk && chances.nitrate > risk)
    return [...advice, "feed_less", "nitrate_slowly"];
  advice.push(trial.run(fraction, { feed: 0 }).chance_of_any() <= risk ? "feed_nothing" : "feed_less");
  const half_time = trial.run(fraction, { hours: trial.hours / 2 }).chance_of_any() <= risk;
  advice.push(half_time ? "test_at_half_time" : "test_sooner");
  return advice;
}
