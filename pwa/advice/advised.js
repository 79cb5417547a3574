/**
 * What a tank wants: its water by the rule and the forecast, whichever is more careful, and all that its records say
 * besides. This is the advice that the screens show. Pure.
 */
import { DAY } from "../figures/durations.js";
import { findings_of, inhabited, state_of } from "./findings.js";
import { foretold } from "./foretold.js";
import { QUICK, as_nitrogen, is_known, possible } from "./level.js";
import { bucket_litres, dose_for, most_at_once } from "./litres.js";
import { meanwhile } from "./meanwhile.js";
import { ways } from "./ways.js";

/** @import { Advice, Advised, Asked, Facts, Forecast, KnownJudgement, Rule } from "../types/advice.js" */

/** Three tests that rise within this long are a trend (assumption). */
const TREND = 8 * DAY;
const TREND_TESTS = 3;
/** From this share of its limit on a level is watched, whatever the forecast thinks (assumption). */
const WATCHED_SHARE = 0.25;
/**
 * Ammonia above this holds the bacteria back that a tank without animals is waiting for, mg N/L (common practice: about
 * 5 mg/L as most kits read).
 */
const TOO_STRONG_MG_N_L = 4;

/**
 * @param {Facts} facts
 * @param {Rule} rule
 * @param {Asked} asked
 * @param {Forecast} forecast
 * @returns {Advised}
 */
export const advised = (facts, rule, asked, forecast) =>
  with_findings(facts, rule, told_now(rule, foretold(facts, rule, asked, forecast), forecast, null));

/**
 * What is told of the water now: by the forecast, or until it is there by the last one.
 * @param {Rule} rule
 * @param {Advice} told as foretold.js answers it
 * @param {Pick<Forecast, "state">} forecast
 * @param {import("./meanwhile.js").Last | null} last
 */
export const told_now = (rule, told, { state }, last) =>
  told.from || state === "failed" ? told : meanwhile(told, rule, last);

/**
 * What is told of the water, with all that the records say besides.
 * @param {Facts} facts
 * @param {Rule} rule
 * @param {Advice} told
 * @returns {Advised}
 */
export function with_findings(facts, rule, told) {
  const water = inhabited(facts) ? careful(facts, rule, told) : waiting(facts, rule, told);
  const findings = findings_of(facts, water);
  return { ...water, instead: inhabited(facts) ? ways(facts, water) : [], state: state_of(findings), findings };
}

/**
 * Where the readings ask for more than the forecast, they count: over a limit, or rising over three tests towards it.
 * @param {Facts} facts
 * @param {Rule} rule
 * @param {Advice} told
 * @returns {Advice}
 */
function careful(facts, rule, told) {
  if (!told.from) return told;
  const known = QUICK.map((parameter) => rule.levels[parameter]).filter(is_known);
  const over = known.filter((one) => one.read_mg_n_l > one.limit_mg_n_l && !one.changed_since);
  const pressing = [...over, ...known.filter((one) => one.share > 1 && rises(facts, one))];
  const calm = told.state === "steady" || (told.state === "watch" && told.act !== "confirm");
  if (pressing.length > 0 && (calm || told.act === "nothing") && rule.act !== "nothing")
    return { ...by_readings(rule, told), reasons: with_forecast(rule, told) };
  if (told.state === "steady" && known.some((one) => one.share > WATCHED_SHARE))
    return { ...told, state: "watch", reasons: with_forecast(rule, told) };
  return told;
}

/**
 * The rule's change beside what the forecast doubts: a reading that does not fit is first read again.
 * @param {Rule} rule
 * @param {Advice} told
 * @returns {Advice}
 */
function by_readings(rule, told) {
  const { levels } = told;
  // A doubt about nitrate can wait, what rises towards harm cannot.
  if (told.act !== "retest" || told.doubt?.parameter === "nitrate") return { ...rule, levels };
  const { litres, exact_litres, fraction, dose, by } = rule;
  const change = litres ? { litres, exact_litres, fraction, dose, by } : {};
  return { ...told, state: rule.state, ...change };
}

/** The readings' reasons first, then what the forecast thinks. @param {Rule} rule @param {Advice} told */
const with_forecast = (rule, told) => [
  ...rule.reasons.filter(({ code }) => code !== "rule"),
  { code: /** @type {const} */ ("reading_leads") },
  ...told.reasons,
];

/**
 * Whether the last three tests rose, each more than the one before, without a change that could hide it.
 * @param {Facts} facts
 * @param {KnownJudgement} level
 */
function rises(facts, { parameter }) {
  const tests = facts.readings
    .filter((one) => one.parameter === parameter && facts.now - Date.parse(one.at) <= TREND && possible(one))
    .slice(-TREND_TESTS)
    .map(as_nitrogen);
  return tests.length === TREND_TESTS && tests.every((value, i) => i === 0 || value > tests[i - 1]);
}

/**
 * A tank without animals: nothing is harmed, and the bacteria grow on what stands there.
 * @param {Facts} facts
 * @param {Rule} rule
 * @param {Advice} told
 * @returns {Advice}
 */
function waiting(facts, rule, told) {
  const { total_ammonia, nitrite } = rule.levels;
  const { litres: _litres, dose: _dose, by: _by, second: _second, fraction: _fraction, ...rest } = told;
  const quiet = { ...rest, besides: [], unhurried: false, again: false };
  const reasons = [{ code: /** @type {const} */ ("no_animals") }, ...told.reasons];
  const read = total_ammonia.now_mg_n_l ?? 0;
  if (read > TOO_STRONG_MG_N_L) {
    const { water_l } = facts.tank;
    const exact_litres = Math.min((1 - TOO_STRONG_MG_N_L / 2 / read) * water_l, most_at_once(facts));
    const litres = bucket_litres(exact_litres, water_l, facts.water_unit, most_at_once(facts));
    const change = { litres, exact_litres, fraction: litres / water_l, dose: dose_for(facts, litres) };
    return { ...quiet, ...change, state: "change today", act: "change", reasons };
  }
  if (rule.test_due) return { ...quiet, state: "watch", act: "test", reasons };
  const clean = [total_ammonia, nitrite].every((one) => is_known(one) && one.now_mg_n_l <= one.limit_mg_n_l);
  return { ...quiet, state: clean && told.state === "steady" ? "steady" : "watch", act: "nothing", reasons };
}
