/**
 * What one tank wants today by its forecast: the change that `change_plan` answers, put beside the rule's tests and
 * limits.
 * Pure: no words. Where there is no forecast, the rule of today.js stands, and says why.
 */
import { HOUR, freed_ammonia } from "./level.js";
import { bucket_litres, dose_for } from "./litres.js";

/** Half the risk that is allowed is watched before it is reached (assumption). */
const RISK = 0.1;
/** The three that a limit is kept for: the chance's name, the level's. */
const WATCHED = /** @type {const} */ ([
  ["nh3", "total_ammonia"],
  ["nitrite", "nitrite"],
  ["nitrate", "nitrate"],
]);

/** What harms within days; nitrate harms over weeks. */
const QUICK = ["nh3", "nitrite"];

/** @typedef {import("./today.js").Advice} Advice */

/**
 * @param {any} facts see facts.js @param {Advice} rule @param {import("./forecast/questions.js").Asked} asked
 * @param {import("./forecast/answers.js").Forecast} forecast @returns {Advice}
 */
export function foretold(facts, rule, asked, forecast) {
  const { plan, next } = forecast.answers;
  if (!plan || !next)
    return { ...rule, reasons: rule.reasons.map((one) => (one.code === "rule" ? why_rule(forecast) : one)) };
  const guessed = (/** @type {string} */ parameter) => parameter === "nitrate" && !asked.nitrate_known;
  const levels = rule.levels.map((one) =>
    guessed(one.parameter) ? one : { ...one, now_mg_n_l: next.now[`${one.parameter}_mg_n_l`].p50 },
  );
  const doubt = standing(plan.doubts, asked);
  const base = {
    ...rule,
    ...what(facts, rule, asked, forecast.answers, doubt),
    levels,
    from: /** @type {const} */ ("forecast"),
  };
  return { ...base, reasons: reasons(facts, rule, base, asked, forecast.answers, doubt) };
}

/** @param {import("./forecast/answers.js").Forecast} forecast */
const why_rule = ({ state, problem }) =>
  state === "failed" ? { code: "rule_failed", problem } : { code: "rule_working" };

/**
 * What to do, how much and by when.
 * @param {any} facts
 * @param {Advice} rule
 * @param {import("./forecast/questions.js").Asked} asked
 * @param {any} answers
 * @param {any} doubt
 */
function what(facts, rule, asked, { plan, next }, doubt) {
  const { water_l } = facts.tank;
  const fraction = plan.two_changes?.fraction_each ?? plan.fraction;
  const exact_litres = fraction * water_l;
  const litres = bucket_litres(exact_litres, water_l, facts.water_unit);
  const changing = fraction > 0;
  const above = QUICK.some((name) => over(next, name, asked.limits, 0, "p50"));
  const tested = asked.records.readings.some(
    ({ parameter }) => parameter === "total_ammonia" || parameter === "nitrite",
  );
  const urgent =
    changing && ["total_ammonia", "nitrite"].some((name) => next.now[`${name}_mg_n_l`].p50 > rule.limits.act_at[name]);
  const by = above ? facts.now : passing(facts, asked, next);
  const amount = changing
    ? { litres, exact_litres, fraction: litres / water_l, dose: dose_for(facts, litres), by }
    : {};
  const none = {
    next_test_hours: rule.usual_test_hours,
    litres: undefined,
    exact_litres: undefined,
    fraction: undefined,
    dose: undefined,
    by: undefined,
    again: false,
  };
  const besides = plan.advice.filter((/** @type {string} */ code) => !["no_change", "two_changes"].includes(code));
  const second = plan.two_changes ? { at: facts.now + plan.two_changes.after_h * HOUR, litres } : undefined;
  // Nobody carries water for what is only usual: the first test comes first.
  if (!tested)
    return {
      ...none,
      state: /** @type {const} */ ("watch"),
      act: /** @type {const} */ ("test"),
      besides: [],
      brings: [],
      unhurried: false,
    };
  const unhurried = QUICK.every((name) => next.pass_chance[name] <= RISK);
  // A change for nitrate alone is not worth ammonia or nitrite over its limit.
  const brings = unhurried && changing && !plan.enough ? brought_over(plan, asked.limits) : [];
  if (brings.length)
    return {
      ...none,
      besides: [],
      doubt,
      unhurried,
      brings,
      state: /** @type {const} */ ("change today"),
      act: /** @type {const} */ ("hold"),
    };
  const said = { ...none, ...amount, besides, second, doubt, unhurried, brings };
  if (doubt)
    return {
      ...said,
      state: urgent ? /** @type {const} */ ("act now") : /** @type {const} */ ("watch"),
      act: /** @type {const} */ ("retest"),
    };
  if (urgent) return { ...said, state: /** @type {const} */ ("act now"), act: /** @type {const} */ ("change") };
  // A test takes ten minutes and says more than any forecast: where one is due it comes first.
  if (rule.test_due)
    return {
      ...said,
      state: changing ? /** @type {const} */ ("change today") : /** @type {const} */ ("watch"),
      act: /** @type {const} */ ("test"),
    };
  if (changing) return { ...said, state: /** @type {const} */ ("change today"), act: /** @type {const} */ ("change") };
  const half_food_will_do = plan.advice.includes("feed_half");
  if (!plan.enough && !half_food_will_do)
    return {
      ...said,
      state: /** @type {const} */ ("change today"),
      act: /** @type {const} */ ("hold"),
      next_test_hours: 12,
    };
  return {
    ...said,
    state:
      half_food_will_do || plan.pass_chance > RISK / 2
        ? /** @type {const} */ ("watch")
        : /** @type {const} */ ("steady"),
    act: /** @type {const} */ ("nothing"),
  };
}

/**
 * Whether one of three is over its limit at one point of the series.
 * @param {any} next
 * @param {string} name
 * @param {any} limits
 * @param {number} at
 * @param {"p50" | "p90"} point
 */
function over({ series }, name, limits, at, point) {
  return series[at][`${name}_mg_n_l`][point] > limits[`${name}_mg_n_l`];
}

/**
 * Which of the quick poisons the change itself may bring over its limit, and how far.
 * @param {any} plan
 * @param {any} limits
 */
const brought_over = (plan, limits) =>
  WATCHED.slice(0, 2)
    .map(([name, parameter]) => ({ parameter, share: plan.peak[`${name}_mg_n_l`].p90 / limits[`${name}_mg_n_l`] }))
    .filter(({ share }) => share > 1);

/**
 * When the chance of passing first reaches one in ten; today where nitrate alone asks for it.
 * @param {any} facts
 * @param {import("./forecast/questions.js").Asked} asked
 * @param {any} next
 */
function passing(facts, { start, limits }, next) {
  const at = next.series.findIndex((/** @type {any} */ _, /** @type {number} */ i) =>
    QUICK.some((name) => over(next, name, limits, i, "p90")),
  );
  return at < 0 ? undefined : Math.max(facts.now, start + next.series[at].at_h * HOUR);
}

/**
 * The doubted reading that no later test of the same has settled.
 * @param {any[]} doubts
 * @param {import("./forecast/questions.js").Asked} asked
 */
function standing(doubts, { records, start }) {
  const open = doubts.filter(
    (doubt) => !records.readings.some((one) => one.parameter === doubt.parameter && one.at_h > doubt.at_h),
  );
  const last = open.at(-1);
  return last && { ...last, at: start + last.at_h * HOUR };
}

/**
 * @param {any} facts
 * @param {Advice} rule
 * @param {any} advice
 * @param {import("./forecast/questions.js").Asked} asked
 * @param {any} answers
 * @param {any} doubt
 * @returns {import("./today.js").Reason[]}
 */
function reasons(facts, rule, advice, asked, { plan, next }, doubt) {
  const { source, label } = facts;
  const { limits, levels, litres } = advice;
  const until = asked.next_test_at;
  const without = litres > 0 ? "chance_without" : "chance";
  const chances = WATCHED.filter(([name]) => name !== "nitrate" || asked.nitrate_known)
    .map(([name, parameter]) => {
      const { p10, p50, p90 } = next.now[`${parameter}_mg_n_l`];
      const limit = limits[parameter].mg_n_l;
      return {
        code: p10 > limit ? "stands_over" : p50 > limit ? "perhaps_over" : without,
        parameter,
        chance: next.pass_chance[name],
        low: p10,
        high: p90,
        limit,
        by: limits[parameter].by,
        until,
      };
    })
    .toSorted((a, b) => b.chance - a.chance);
  const told = chances.filter((one, i) => i === 0 || one.chance > RISK / 2);
  const known = asked.records.readings.filter(
    ({ parameter }) => parameter !== "ph" && parameter !== "temperature",
  ).length;
  const freed = litres || advice.brings.length ? freed_ammonia(source) : 0;
  /** @type {(import("./today.js").Reason | false | null | undefined)[]} */
  const all = [
    doubt && {
      code: "doubt",
      parameter: doubt.parameter,
      read: doubt.value_mg_n_l,
      low: doubt.expected_p10_mg_n_l,
      high: doubt.expected_p90_mg_n_l,
      at: doubt.at,
    },
    ...told,
    // Else the chance after the change would seem no better than the one before it.
    litres > 0 &&
      chances.every(({ code, chance }) => code === without && chance <= RISK) && { code: "together", chance: RISK },
    litres > 0 &&
      !plan.two_changes && {
        code: plan.enough ? "after" : plan.advice.includes("feed_half") ? "after_half_food" : "after_not_enough",
        chance: plan.pass_chance,
      },
    litres > 0 && plan.two_changes && { code: "after_two", chance: plan.two_changes.pass_chance },
    ...advice.brings.map((/** @type {any} */ one) => ({
      code: "brings_over",
      parameter: one.parameter,
      expected: one.share * limits[one.parameter].mg_n_l,
      limit: limits[one.parameter].mg_n_l,
    })),
    ...(advice.act === "hold" && advice.brings.length === 0
      ? rule.reasons.filter(({ code }) => code === "source_worse" || code === "brings_over")
      : []),
    freed
      ? { code: label?.binds_ammonia ? "freed_bound" : "freed", freed }
      : freed === null && { code: "freed_unknown" },
    known === 0 ? { code: "prior" } : plan.notes.length > (plan.doubts.length ? 1 : 0) && { code: "few" },
    ...levels
      .filter((/** @type {any} */ one) => !one.reading && known > 0)
      .map((/** @type {any} */ one) => ({ code: "no_reading", parameter: one.parameter })),
    ...assumed(advice, told[0]?.parameter),
    asked.filled.length > 0 && { code: "filled", filled: asked.filled },
    asked.left_out.length > 0 && { code: "left_out", count: asked.left_out.length, first: asked.left_out[0] },
    { code: "forecast" },
  ];
  return /** @type {import("./today.js").Reason[]} */ (all.filter(Boolean));
}

/**
 * The pH and temperature that ammonia's limit was made with, where nobody read them this week.
 * @param {Advice} advice
 * @param {string} parameter
 */
function assumed({ limits }, parameter) {
  if (parameter !== "total_ammonia") return [];
  return /** @type {const} */ (["ph", "temperature_c"])
    .filter((name) => limits[name].from !== "reading")
    .map((name) => ({
      code: limits[name].from === "usual" ? `usual_${name}` : `assumed_${name}`,
      value: limits[name].value,
    }));
}
