/**
 * What one tank wants today by its forecast: the change that `change_plan` answers, put beside the rule's tests and
 * limits.
 * Pure: no words. Where there is no forecast, the rule of today.js stands, and says why.
 */
import { contracts } from "../contracts.js";
import { HOUR } from "../figures/durations.js";
import { QUICK, WATCHED, freed_ammonia } from "./level.js";
import { assumed_for } from "./limits.js";
import { bucket_litres, dose_for, most_at_once } from "./litres.js";

/** @import { Advice, AheadAnswer, Answers, Asked, BeliefLimits, Doubt, Facts, Forecast } from "../types/advice.js" */
/** @import { PlanAnswer, Reason, Rule, Species, Watched } from "../types/advice.js" */

/** The chance of passing a limit that is allowed; at half of it the tank is watched (assumption). */
const RISK = 0.1;
/** Where no change is enough, the next test comes this soon (assumption). */
const SOON_HOURS = 12;
/** Hardness that will be used up within so many days is said (assumption). */
const KH_SAID_DAYS = 14;
/** What the contracts call the three: ammonia is limited as free ammonia. @type {Record<Watched, Species>} */
const SPECIES_OF = { total_ammonia: "nh3", nitrite: "nitrite", nitrate: "nitrate" };
const QUICK_SPECIES = QUICK.map((parameter) => SPECIES_OF[parameter]);

/**
 * @typedef {{plan: PlanAnswer, next: AheadAnswer}} Told the two answers that an advice is made from
 * @typedef {ReturnType<typeof signs_of>} Signs
 */

/**
 * What to do, by the first line that holds. `says` tells what goes with it: nothing more, or the whole plan.
 * @type {{when: (signs: Signs) => boolean, state: Advice["state"], act: Advice["act"], says: "nothing" | "plan"}[]}
 */
const DECISIONS = [
  // Without any test the forecast only says what is usual: test before carrying water.
  { when: (it) => it.untested, state: "watch", act: "test", says: "nothing" },
  { when: (it) => it.doubted && it.urgent, state: "act now", act: "retest", says: "plan" },
  { when: (it) => it.doubted, state: "watch", act: "retest", says: "plan" },
  { when: (it) => it.urgent, state: "act now", act: "change", says: "plan" },
  // A test takes ten minutes and says more than any forecast: a test that is due comes first.
  { when: (it) => it.test_due && it.changing, state: "change today", act: "test", says: "plan" },
  { when: (it) => it.test_due, state: "watch", act: "test", says: "plan" },
  { when: (it) => it.changing, state: "change today", act: "change", says: "plan" },
  { when: (it) => it.refused, state: "change today", act: "hold", says: "plan" },
  { when: (it) => it.helpless, state: "change today", act: "hold", says: "plan" },
  { when: (it) => it.half_food || it.near, state: "watch", act: "nothing", says: "plan" },
  { when: () => true, state: "steady", act: "nothing", says: "plan" },
];

/**
 * @param {Facts} facts
 * @param {Rule} rule
 * @param {Asked} asked
 * @param {Forecast} forecast
 * @returns {Advice}
 */
export function foretold(facts, rule, asked, forecast) {
  const { next } = forecast.answers;
  const plan = in_steps(forecast.answers.plan, asked);
  if (!plan || !next)
    return { ...rule, reasons: rule.reasons.map((one) => (one.code === "rule" ? why_rule(forecast) : one)) };
  const doubt = standing(plan.doubts, asked);
  const signs = signs_of(rule, asked, { plan, next }, doubt);
  const { state, act, says } = /** @type {typeof DECISIONS[number]} the last line always holds */ (
    DECISIONS.find(({ when }) => when(signs))
  );
  /** @type {Omit<Advice, "reasons">} */
  const advice = {
    from: "forecast",
    state,
    act,
    besides: [],
    ...(says === "plan" ? planned_change(facts, asked, { plan, next }) : {}),
    ...(says === "nothing" ? {} : { doubt }),
    unhurried: says !== "nothing" && signs.unhurried,
    again: false,
    next_test_hours: act === "hold" && says === "plan" ? SOON_HOURS : rule.usual_test_hours,
    usual_test_hours: rule.usual_test_hours,
    test_due: rule.test_due,
    levels: foreseen_levels(rule, asked, next),
    limits: rule.limits,
  };
  return { ...advice, reasons: reasons(facts, rule, advice, asked, { plan, next }) };
}

/**
 * The plan without more changes on the same day, where the new water itself brings ammonia.
 * @param {PlanAnswer | undefined} plan
 * @param {Asked} asked
 */
const in_steps = (plan, { in_small_steps }) => (plan && in_small_steps ? { ...plan, several: null } : plan);

/** @param {Forecast} forecast @returns {Reason} */
const why_rule = ({ state, problem }) =>
  state === "failed" ? { code: "rule_failed", problem } : { code: "rule_working" };

/**
 * What the decision depends on.
 * @param {Rule} rule
 * @param {Asked} asked
 * @param {Told} told
 * @param {Doubt | undefined} doubt
 */
function signs_of(rule, asked, { plan, next }, doubt) {
  const changing = fraction_of(plan) > 0;
  const unhurried = QUICK_SPECIES.every((name) => next.pass_chance[name] <= RISK);
  const half_food = plan.advice.includes("feed_half");
  return {
    untested: !asked.records.readings.some(({ parameter }) => parameter === "total_ammonia" || parameter === "nitrite"),
    /** Only nitrate may pass its limit. */
    unhurried,
    doubted: doubt !== undefined,
    changing,
    urgent: changing && QUICK.some((name) => next.now[`${name}_mg_n_l`].p50 > rule.limits.act_at[name]),
    test_due: rule.test_due,
    half_food,
    /** The change that nitrate asks for would bring ammonia or nitrite over. */
    refused: plan.enough && !changing && Boolean(plan.cause),
    /** No change is enough, with the usual food or with half of it. */
    helpless: !plan.enough && !half_food,
    near: plan.pass_chance > RISK / 2,
  };
}

/** When carbonate hardness is likely used up, if that is soon. @param {Asked} asked @param {AheadAnswer} next */
function hardness_reason({ records }, { kh_gone_h }) {
  const days = kh_gone_h ? (kh_gone_h.p50 - records.now_h) / 24 : Infinity;
  return days <= KH_SAID_DAYS ? [{ code: /** @type {const} */ ("kh_gone"), count: Math.max(1, Math.round(days)) }] : [];
}

/** The share of the water that the plan changes now. @param {PlanAnswer} plan */
const fraction_of = (plan) => plan.several?.fraction_each ?? plan.fraction;

/**
 * The plan's change, how much and by when, and what it advises besides.
 * @param {Facts} facts
 * @param {Asked} asked
 * @param {Told} told
 * @returns {Partial<Advice>}
 */
function planned_change(facts, asked, { plan, next }) {
  const { water_l } = facts.tank;
  const most_l = most_at_once(facts, { in_small_steps: asked.in_small_steps });
  const exact_litres = Math.min(fraction_of(plan) * water_l, most_l);
  const litres = bucket_litres(exact_litres, water_l, facts.water_unit, most_l);
  const above = QUICK_SPECIES.some((name) => over(next, name, asked.limits, 0, "p50"));
  const besides = plan.advice.filter((code) => code !== "no_change" && code !== "several_changes");
  const { several } = plan;
  const second = several
    ? { at: facts.now + several.every_h * HOUR, litres, count: several.count, every_h: several.every_h }
    : undefined;
  if (!(exact_litres > 0)) return { besides, second };
  return {
    besides,
    second,
    litres,
    exact_litres,
    fraction: litres / water_l,
    dose: dose_for(facts, litres),
    by: above ? facts.now : passing(facts, asked, next),
  };
}

/**
 * The levels now as the forecast holds them; a guess at nitrate is left out.
 * @param {Rule} rule
 * @param {Asked} asked
 * @param {AheadAnswer} next
 * @returns {Advice["levels"]}
 */
function foreseen_levels({ levels }, asked, next) {
  const of = (/** @type {Watched} */ parameter) => {
    if (parameter === "nitrate" && !asked.nitrate_known) return levels[parameter];
    const now_mg_n_l = next.now[`${parameter}_mg_n_l`].p50;
    return { ...levels[parameter], now_mg_n_l };
  };
  return { total_ammonia: of("total_ammonia"), nitrite: of("nitrite"), nitrate: of("nitrate") };
}

/**
 * Whether one of three is over its limit at one point of the series.
 * @param {AheadAnswer} next
 * @param {Species} name
 * @param {BeliefLimits} limits
 * @param {number} at
 * @param {"p50" | "p90"} point
 */
function over({ series }, name, limits, at, point) {
  return series[at][`${name}_mg_n_l`][point] > limits[`${name}_mg_n_l`];
}

/**
 * When the chance of passing first reaches one in ten, in ms; undefined where nitrate alone asks for the change.
 * @param {Facts} facts
 * @param {Asked} asked
 * @param {AheadAnswer} next
 */
function passing(facts, { start, limits }, next) {
  const at = next.series.findIndex((_, i) => QUICK_SPECIES.some((name) => over(next, name, limits, i, "p90")));
  return at < 0 ? undefined : Math.max(facts.now, start + next.series[at].at_h * HOUR);
}

/**
 * The doubted reading that no later test of the same has settled.
 * @param {PlanAnswer["doubts"]} doubts
 * @param {Asked} asked
 * @returns {Doubt | undefined}
 */
function standing(doubts, { records, start }) {
  const open = doubts.filter(
    (doubt) => !records.readings.some((one) => one.parameter === doubt.parameter && one.at_h > doubt.at_h),
  );
  const last = open.at(-1);
  return last && { ...last, at: start + last.at_h * HOUR };
}

/**
 * @param {Facts} facts
 * @param {Rule} rule
 * @param {Omit<Advice, "reasons">} advice
 * @param {Asked} asked
 * @param {Told} told
 * @returns {Reason[]}
 */
function reasons(facts, rule, advice, asked, { plan, next }) {
  const { limits, doubt } = advice;
  const litres = advice.litres ?? 0;
  const chances = chances_of(advice, asked, next, litres > 0);
  const said = chances.filter((one, i) => i === 0 || one.chance > RISK / 2);
  return [
    ...(doubt ? [doubt_reason(doubt)] : []),
    ...said,
    ...hardness_reason(asked, next),
    ...(litres > 0 ? after_change(plan, chances) : []),
    ...(advice.act === "hold"
      ? rule.reasons.filter(({ code }) => code === "source_worse" || code === "brings_over")
      : []),
    ...(litres > 0 || plan.cause ? freed_reason(facts) : []),
    ...knowledge(advice, asked, plan),
    ...assumed_for(limits, said[0]?.parameter),
    ...(asked.filled.length > 0 ? [{ code: /** @type {const} */ ("filled"), filled: asked.filled }] : []),
    ...(asked.left_out.length > 0
      ? [{ code: /** @type {const} */ ("left_out"), count: asked.left_out.length, first: asked.left_out[0] }]
      : []),
    { code: "forecast" },
  ];
}

/** @param {Doubt} doubt @returns {Reason} */
const doubt_reason = (doubt) => ({
  code: "doubt",
  parameter: doubt.parameter,
  read: doubt.value_mg_n_l,
  low: doubt.expected_p10_mg_n_l,
  high: doubt.expected_p90_mg_n_l,
  at: doubt.at,
});

/**
 * The chance of each to pass its limit before the next test, the highest first.
 * @param {Pick<Advice, "limits">} advice
 * @param {Asked} asked
 * @param {AheadAnswer} next
 * @param {boolean} changing
 */
function chances_of({ limits }, asked, next, changing) {
  return [
    ...WATCHED.filter((parameter) => parameter !== "nitrate" || asked.nitrate_known).map((parameter) => {
      const { p10, p50, p90 } = next.now[`${parameter}_mg_n_l`];
      const { mg_n_l: limit, by } = limits[parameter];
      /** @type {"stands_over" | "perhaps_over" | "chance_without" | "chance"} */
      const code = p10 > limit ? "stands_over" : p50 > limit ? "perhaps_over" : changing ? "chance_without" : "chance";
      const chance = next.pass_chance[SPECIES_OF[parameter]];
      return { code, parameter, chance, low: p10, high: p90, limit, by, until: asked.next_test_at };
    }),
  ].sort((a, b) => b.chance - a.chance);
}

/**
 * What the change does to the chance.
 * @param {PlanAnswer} plan
 * @param {{code: string, chance: number}[]} chances
 * @returns {Reason[]}
 */
function after_change(plan, chances) {
  const low = chances.every(({ code, chance }) => code === "chance_without" && chance <= RISK);
  /** @type {Reason} */
  const after = plan.several
    ? { code: "after_several", chance: plan.several.pass_chance }
    : {
        code: plan.enough ? "after" : plan.advice.includes("feed_half") ? "after_half_food" : "after_not_enough",
        chance: plan.pass_chance,
      };
  // Without this line the chance after the change would look no better than before.
  return low ? [{ code: "together", chance: RISK }, after] : [after];
}

/** What the new water's chloramine frees. @param {Facts} facts @returns {Reason[]} */
function freed_reason({ source, label }) {
  const freed = freed_ammonia(source);
  if (freed === null) return [{ code: "freed_unknown" }];
  return freed > 0 ? [{ code: label?.binds_ammonia ? "freed_bound" : "freed", freed }] : [];
}

/**
 * How much the forecast rests on tests.
 * @param {Pick<Advice, "levels">} advice
 * @param {Asked} asked
 * @param {PlanAnswer} plan
 * @returns {Reason[]}
 */
function knowledge({ levels }, asked, plan) {
  const tests = asked.records.readings.filter(({ parameter }) => parameter !== "ph" && parameter !== "temperature");
  if (tests.length === 0) return [{ code: "prior" }];
  const words = contracts().change_plan.notes ?? {};
  const few = plan.notes.some((note) => note === words.few_readings || note === words.prior_only);
  return [
    ...(few ? [{ code: /** @type {const} */ ("few") }] : []),
    ...WATCHED.filter((parameter) => !levels[parameter].reading).map((parameter) => ({
      code: /** @type {const} */ ("no_reading"),
      parameter,
    })),
  ];
}
