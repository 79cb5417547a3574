/**
 * What one tank needs today by a rule from limits and recent readings, not by a forecast. Pure: facts in, advice out.
 * The words are in the catalogue; ui/words/sentence.js puts them together.
 */
import { DAY, HOUR } from "../figures/durations.js";
import { answered, run } from "../contracts.js";
import { QUICK, WATCHED, as_nitrogen, brought, freed_ammonia } from "./level.js";
import { is_known, last_test, level, possible } from "./level.js";
import { assumed_for, limits_at } from "./limits.js";
import { bucket_litres, dose_for, in_small_steps, most_at_once } from "./litres.js";
import { of_parameter } from "./of_parameter.js";

/** @import { Advice, Facts, Judgement, KnownJudgement, Level, Limits, Reason } from "../types/advice.js" */
/** @import { Rule, UnknownLevel, Watched } from "../types/advice.js" */

/**
 * A tank is settled after this long with ammonia and nitrite under a quarter of their limits; it is tested weekly
 * (common practice).
 */
const SETTLED_DAYS = 10;
const SETTLED_TESTS = 3;
/** A test is overdue only after half a day (assumption). */
const GRACE = 12 * HOUR;
/** Where a change was not enough, or no test has shown what it did, the next test comes this soon (assumption). */
const SOON_HOURS = 12;
/** Tolerance for float rounding at a limit: a change for less would be 0 litres. */
const ROUNDING = 1e-6;

/** How long from one test to the next. */
const DAILY_HOURS = 24;
const WEEKLY_HOURS = 168;

/**
 * What is decided, with its own reasons; `about` is the level whose limit is explained.
 * @typedef {Pick<Advice, "state" | "act"> & Partial<Pick<Advice, "litres" | "exact_litres" | "fraction" | "dose" | "by"
 *   | "again" | "unhurried" | "next_test_hours">> & {because?: Reason[], about?: Judgement}} Decision
 */

/** @param {Facts} facts @returns {Rule} */
export function today(facts) {
  const limits = limits_at(facts);
  const settled = is_settled(facts, limits);
  const usual_test_hours = settled ? WEEKLY_HOURS : DAILY_HOURS;
  const days = usual_test_hours / 24;
  const levels = judged_levels(facts, limits, settled, days);
  const known = all_of(levels).filter(is_known);
  const unknown = QUICK.map((parameter) => levels[parameter]).filter((one) => !is_known(one));
  const worst = [...known].sort((a, b) => b.share - a.share)[0];
  const test_due = unknown.length > 0 || facts.now - last_test(levels) > usual_test_hours * HOUR + GRACE;

  const over = known.filter((one) => one.share > 1 + ROUNDING);
  const decided =
    over.length === 0
      ? no_change(known, test_due)
      : (just_changed(over, facts) ?? change(over, levels, facts, limits, usual_test_hours));
  const { because = [], about = worst, ...what } = decided;
  return {
    again: false,
    unhurried: false,
    next_test_hours: usual_test_hours,
    ...what,
    usual_test_hours,
    test_due,
    levels,
    limits,
    reasons: [
      ...said_of(worst, days),
      ...unknown.map(unknown_reason),
      ...because,
      ...assumed_for(limits, about?.parameter),
      { code: "rule" },
    ],
  };
}

/** @template T @param {Record<Watched, T>} levels */
const all_of = (levels) => WATCHED.map((parameter) => levels[parameter]);

/**
 * @param {Facts} facts
 * @param {Limits} limits
 * @param {boolean} settled
 * @param {number} days until the next test
 * @returns {Record<Watched, Judgement>}
 */
function judged_levels(facts, limits, settled, days) {
  const of = (/** @type {Watched} */ parameter) => {
    const recent = settled || parameter === "nitrate" ? 8 * DAY : undefined;
    return judged(level(parameter, facts, recent), limits, facts, days);
  };
  return { total_ammonia: of("total_ammonia"), nitrite: of("nitrite"), nitrate: of("nitrate") };
}

/**
 * The level beside its limit: what is expected at the next test, and its share of the limit.
 * @param {Level} one
 * @param {Limits} limits
 * @param {Facts} facts
 * @param {number} days
 * @returns {Judgement}
 */
function judged(one, limits, facts, days) {
  const { mg_n_l: limit_mg_n_l, by } = limits[one.parameter];
  const source_mg_n_l = brought(facts.source, one.parameter, facts.label);
  if (one.now_mg_n_l === null) return { ...one, limit_mg_n_l, source_mg_n_l };
  const expected_mg_n_l = one.now_mg_n_l + one.rise_mg_n_l_day * days;
  return { ...one, limit_mg_n_l, source_mg_n_l, expected_mg_n_l, share: expected_mg_n_l / limit_mg_n_l, by };
}

/**
 * Nothing is expected over its limit.
 * @param {KnownJudgement[]} known
 * @param {boolean} test_due
 * @returns {Decision}
 */
const no_change = (known, test_due) => ({
  state: test_due || known.some((one) => one.share > 0.5) ? "watch" : "steady",
  act: test_due ? "test" : "nothing",
});

/**
 * After a change that should have been enough, ask for a test before asking for more water.
 * @param {KnownJudgement[]} over
 * @param {Facts} facts
 * @returns {Decision | null}
 */
function just_changed(over, facts) {
  if (!over.every((one) => one.changed_since && one.now_mg_n_l <= one.limit_mg_n_l)) return null;
  const by = Math.min(passing(over, facts.now), Math.max(facts.now, last_change(facts) + SOON_HOURS * HOUR));
  return { state: "watch", act: by <= facts.now ? "test" : "confirm", by };
}

/**
 * The smallest change that holds all of them under their limits until the next test.
 * @param {KnownJudgement[]} over
 * @param {Record<Watched, Judgement>} levels
 * @param {Facts} facts
 * @param {Limits} limits
 * @param {number} usual_test_hours
 * @returns {Decision}
 */
function change(over, levels, facts, limits, usual_test_hours) {
  const { water_l } = facts.tank;
  // Nitrate harms over weeks: a change for it alone has the whole day.
  const poisons = over.filter((one) => one.parameter !== "nitrate");
  const unhurried = poisons.length === 0;
  const urgent = over.some((one) => one.now_mg_n_l > limits.act_at[one.parameter]);
  const state = urgent ? "act now" : "change today";
  if (over.every((one) => one.source_mg_n_l >= one.now_mg_n_l)) {
    const next_test_hours = unhurried ? usual_test_hours : SOON_HOURS;
    return { state, act: "hold", unhurried, next_test_hours, because: change_reasons(over, [], 0, facts) };
  }
  const most_l = most_at_once(facts, { unhurried, in_small_steps: in_small_steps(facts, { levels, limits }) });
  const needed_l = Math.max(...over.map((one) => needed(one, usual_test_hours / 24))) * water_l;
  // What is too much nitrate is brought down over weeks: more than one change is no failure.
  const again = needed_l > most_l && !unhurried;
  const exact_litres = Math.min(needed_l, most_l);
  const litres = bucket_litres(exact_litres, water_l, facts.water_unit, most_l);
  const fraction = litres / water_l;
  const raised = all_of(levels).filter(
    (one) => !over.some(({ parameter }) => parameter === one.parameter) && left_after(one, fraction) > one.limit_mg_n_l,
  );
  const because = change_reasons(over, raised, fraction, facts);
  // A change for nitrate alone is not worth ammonia over its limit.
  if (raised.length > 0 && unhurried) return { state, act: "hold", unhurried, because, about: raised[0] };
  const above = urgent || poisons.some((one) => one.now_mg_n_l > one.limit_mg_n_l);
  return {
    state,
    act: "change",
    unhurried,
    fraction,
    exact_litres,
    litres,
    dose: dose_for(facts, litres),
    by: unhurried ? undefined : above ? facts.now : passing(poisons, facts.now),
    again,
    next_test_hours: again ? SOON_HOURS : usual_test_hours,
    because,
    about: raised[0],
  };
}

/**
 * Fraction that keeps one of them under its limit; more than 1 when no change can.
 * @param {KnownJudgement} one
 * @param {number} days
 */
function needed(one, days) {
  const { now_mg_n_l: before_mg_l, source_mg_n_l: source_mg_l } = one;
  const target_mg_l = one.limit_mg_n_l - one.rise_mg_n_l_day * days;
  if (target_mg_l <= source_mg_l) return Infinity;
  return answered(run("dilution", { before_mg_l, source_mg_l, fractions: [], target_mg_l }), "fraction_needed");
}

/** @param {Facts} facts */
const last_change = ({ changes }) => Math.max(-Infinity, ...changes.map((one) => Date.parse(one.at)));

/** When the first of them is expected to pass its limit. @param {KnownJudgement[]} over @param {number} now */
const passing = (over, now) =>
  Math.min(...over.map((one) => now + ((one.limit_mg_n_l - one.now_mg_n_l) / one.rise_mg_n_l_day) * DAY));

/** @param {UnknownLevel} one @returns {Reason} */
const unknown_reason = ({ parameter, reading }) => ({
  code: reading ? "too_old" : "no_reading",
  parameter,
  at: reading?.at,
});

/** @param {KnownJudgement | undefined} worst @param {number} days @returns {Reason[]} */
function said_of(worst, days) {
  if (!worst) return [];
  const parts = {
    parameter: worst.parameter,
    now: worst.now_mg_n_l,
    limit: worst.limit_mg_n_l,
    by: worst.by,
    expected: worst.expected_mg_n_l,
    rise: worst.rise_mg_n_l_day,
    days,
  };
  const { rise_from } = worst;
  const code = worst.now_mg_n_l > worst.limit_mg_n_l ? "over" : worst.share > 1 + ROUNDING ? "will_pass" : "under";
  /** @type {Reason[]} */ const reasons = [{ code, ...parts }];
  if (rise_from === "readings")
    reasons.push({ code: worst.rise_mg_n_l_day > 0 ? "rise_known" : "rise_none", ...parts });
  if (rise_from === "doubling") reasons.push({ code: "rise_doubling", ...parts });
  if (rise_from === "nothing" && worst.parameter === "nitrate") reasons.push({ code: "rise_unknown", ...parts });
  if (worst.changed_since) reasons.push({ code: "carried", ...parts });
  return reasons;
}

/**
 * What a change leaves of one of them; what is not known counts as none.
 * @param {Judgement} one
 * @param {number} fraction
 * @returns {number}
 */
const left_after = (one, fraction) =>
  run("dilution", { before_mg_l: one.now_mg_n_l ?? 0, source_mg_l: one.source_mg_n_l, fractions: [fraction] })
    .after_mg_l;

/**
 * @param {KnownJudgement[]} over
 * @param {Judgement[]} raised what the change would bring over its limit
 * @param {number} fraction
 * @param {Facts} facts
 * @returns {Reason[]}
 */
function change_reasons(over, raised, fraction, facts) {
  /** @type {Reason[]} */ const reasons = [];
  const freed = freed_ammonia(facts.source);
  if (freed) reasons.push({ code: facts.label?.binds_ammonia ? "freed_bound" : "freed", freed });
  if (freed === null) reasons.push({ code: "freed_unknown" });
  for (const one of over.filter((each) => each.source_mg_n_l >= each.now_mg_n_l))
    reasons.push({ code: "source_worse", parameter: one.parameter, source: one.source_mg_n_l });
  for (const one of raised)
    reasons.push({
      code: "brings_over",
      parameter: one.parameter,
      expected: left_after(one, fraction),
      limit: one.limit_mg_n_l,
    });
  return reasons;
}

/**
 * Whether the last tests of ammonia and nitrite, over days enough, were all low.
 * @param {Facts} facts
 * @param {Limits} limits
 */
function is_settled(facts, limits) {
  return QUICK.every((parameter) => {
    const tests = of_parameter(facts.readings, parameter).filter(
      (one) => facts.now - Date.parse(one.at) <= 60 * DAY && possible(one),
    );
    let run_of = 0;
    let from = facts.now;
    for (const reading of [...tests].reverse()) {
      if (as_nitrogen(reading) > limits[parameter].mg_n_l / 4) break;
      run_of += 1;
      from = Date.parse(reading.at);
    }
    return run_of >= SETTLED_TESTS && facts.now - from >= SETTLED_DAYS * DAY;
  });
}
