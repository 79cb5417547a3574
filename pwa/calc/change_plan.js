/** The smallest water change now that keeps ammonia and nitrite under their limits until the next test. */
import { band } from "./bands.js";
import { Trial } from "./change_trial.js";
import * as k from "./kinetics.js";
import { even, notes_of, recent_doubts, working_limits } from "./outlook.js";
import { believed, last_reading } from "./tank_events.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/** @typedef {import("./kinetics.js").Settings} Settings */
/** @typedef {import("./belief.js").Belief} Belief */
/** @typedef {import("./tank_events.js").Event} Event */

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
export function plan_of(c, belief, plans, input) {
  const { tank, source = {}, risk = 0.1, next_test_h = 24, max_fraction = 0.5, readings = [], changes = [] } = input;
  const limits_at = working_limits(tank, input.limits);
  const trial = new Trial(c, even(belief), plans, tank, source, limits_at, risk, next_test_h);
  let { fraction, watch } = trial.smallest(max_fraction);
  const enough = trial.enough(watch);
  /** @type {ReturnType<Trial["several"]>} */ let several = null;
  if (!enough) {
    // Half the food is easier on tank, animals and keeper than more changes.
    trial.feed = c.lean_feed;
    ({ fraction, watch } = trial.smallest(max_fraction));
    if (!trial.enough(watch)) several = trial.several(fraction, watch);
  }
  let cause = enough ? null : trial.cause(max_fraction, watch);
  let routine = false;
  if (trial.enough(watch)) {
    const slow = Math.min(nitrate_fraction(c, trial, readings, changes), max_fraction);
    if (slow > fraction) {
      const tried = trial.run(slow);
      if (trial.harms_no_more(tried, watch)) {
        fraction = slow;
        watch = tried;
        routine = true;
      } else cause ??= trial.worst_of_source(slow);
    }
  }
  const [nh3, nitrite, nitrate] = watch.peaks.map(band);
  return {
    fraction,
    litres: fraction * tank.volume_l,
    pass_chance: watch.chance(),
    pass_chance_without: trial.run(0, { feed: 1 }).chance(),
    enough,
    several,
    cause,
    advice: advice_of(trial, { fraction, watch, enough, several, cause, routine }),
    peak: { nh3_mg_n_l: nh3, nitrite_mg_n_l: nitrite, nitrate_mg_n_l: nitrate },
    doubts: recent_doubts(c, belief),
    notes: [...(fraction > 0 && trial.ph_matters() ? ["source_ph_unknown"] : []), ...notes_of(c, belief)],
  };
}

/**
 * The change that is still due this week to bring nitrate to its limit in weekly changes. Equation: the Python twin.
 * @param {Settings} c
 * @param {Trial} trial
 * @param {import("./tank_events.js").Reading[]} readings
 * @param {import("./tank_events.js").Change[]} changes
 */
function nitrate_fraction(c, trial, readings, changes) {
  const now_h = trial.belief.at_h;
  const brought = trial.source.nitrate_mg_n_l ?? 0;
  const limit = trial.limits.nitrate_mg_n_l;
  const last = last_reading(readings, "nitrate", now_h);
  if (!last || now_h - last.at_h > c.nitrate_stands_h) return 0;
  const nitrate = changes
    .filter(({ at_h }) => last.at_h <= at_h && at_h <= now_h)
    .sort((one, other) => one.at_h - other.at_h)
    .reduce((left, { fraction, source }) => left + fraction * ((source?.nitrate_mg_n_l ?? 0) - left), last.mg_n_l);
  if (nitrate <= limit || nitrate <= brought) return 0;
  const share = Math.max(limit - brought, 0) / (nitrate - brought);
  const weekly = Math.min(Math.max(1 - share ** (1 / c.nitrate_weeks), c.nitrate_least), c.nitrate_most);
  const kept = changes
    .filter(({ at_h }) => now_h - 168 < at_h && at_h <= now_h)
    .reduce((left, { fraction }) => left * (1 - fraction), 1);
  const due = kept > 0 ? 1 - (1 - weekly) / kept : 0;
  return due >= c.nitrate_least - 1e-9 ? Math.ceil(due * 100 - 1e-9) / 100 : 0;
}

/**
 * Codes of what else to do; the effect of feeding or testing differently is tried on the belief first.
 * @param {Trial} trial
 * @param {{watch: import("./outlook.js").Watch, routine: boolean} & Pick<Outputs<"change_plan">, "fraction" |
 *   "enough" | "several" | "cause">} found
 * @returns {Outputs<"change_plan">["advice"]}
 */
function advice_of(trial, { fraction, watch, enough, several, cause, routine }) {
  /** @type {Outputs<"change_plan">["advice"]} */
  const advice = [];
  if (cause) advice.push("source_is_the_cause");
  else if (trial.source_over_limit()) advice.push("source_over_limit");
  if (routine) advice.push("nitrate_slowly");
  if (enough) return fraction || cause ? advice : [...advice, "no_change"];
  if (trial.enough(watch)) return [...advice, "feed_half"];
  if (several) advice.push("several_changes");
  if (several && several.pass_chance <= trial.risk) return [...advice, "feed_half"];
  advice.push(trial.enough(trial.run(fraction, { feed: 0 })) ? "feed_nothing" : "feed_less");
  const half_time = trial.enough(trial.run(fraction, { hours: trial.hours / 2 }));
  advice.push(half_time ? "test_at_half_time" : "test_sooner");
  return advice;
}
