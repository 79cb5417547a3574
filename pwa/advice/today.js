/**
 * What one tank wants today: a rule from limits and recent readings, not yet a forecast.
 * Pure: facts in, advice out, no words; the words stand in the catalogue and are put together in ui/words/sentence.js.
 */
import { answered, run } from "../contracts.js";
import { DAY, HOUR, as_nitrogen, brought, freed_ammonia, level, possible } from "./level.js";
import { limits_at } from "./limits.js";
import { bucket_litres, dose_for } from "./litres.js";

/** The most that is changed at once (common practice: half, so that temperature and hardness do not jump). */
const MOST_AT_ONCE = 0.5;
/**
 * A tank is settled after this long with ammonia and nitrite under a quarter of their limits; it is tested weekly
 * (common practice).
 */
const SETTLED_DAYS = 10;
const SETTLED_TESTS = 3;
/** A test that comes half a day late is not late yet (assumption). */
const GRACE = 12 * HOUR;
/** Where a change was not enough, or no test has shown what it did, the next test comes this soon (assumption). */
const SOON_HOURS = 12;
/** So little over a limit is the computer's rounding: a change against it would be of no litres. */
const ROUNDING = 1e-6;

/**
 * @typedef {{code: string, [part: string]: any}} Reason
 * @typedef {{
 *   state: "steady" | "watch" | "change today" | "act now",
 *   act: "nothing" | "test" | "change" | "hold" | "confirm" | "retest",
 *   from?: "forecast", besides?: string[], second?: {at: number, litres: number}, doubt?: any, brings?: any[],
 * litres?: number, exact_litres?: number, fraction?: number, dose?: ReturnType<typeof dose_for>, by?: number, again:
 * boolean, unhurried: boolean,
 * next_test_hours: number, usual_test_hours: number, test_due: boolean, worst: any, levels: any[], limits:
 * import("./limits.js").Limits, reasons: Reason[],
 * }} Advice
 */

/** @param {any} facts see facts.js @returns {Advice} */
export function today(facts) {
  const limits = limits_at(facts);
  const settled = is_settled(facts, limits);
  const next_test_hours = settled ? 168 : 24;
  const days = next_test_hours / 24;
  const levels = ["total_ammonia", "nitrite", "nitrate"].map((parameter) => {
    const recent = settled || parameter === "nitrate" ? 8 * DAY : undefined;
    return judged(level(parameter, facts, recent), limits, facts, days);
  });
  const known = levels.filter((one) => one.now_mg_n_l !== null);
  const worst = known.toSorted((a, b) => b.share - a.share)[0] ?? null;
  const last_test = Math.max(
    -Infinity,
    ...levels.slice(0, 2).map((one) => (one.reading ? Date.parse(one.reading.at) : -Infinity)),
  );
  const unknown = levels.slice(0, 2).filter((one) => one.now_mg_n_l === null);
  const test_due = unknown.length > 0 || facts.now - last_test > next_test_hours * HOUR + GRACE;
  const base = {
    again: false,
    unhurried: false,
    next_test_hours,
    usual_test_hours: next_test_hours,
    test_due,
    worst,
    levels,
    limits,
  };
  const told = [
    ...said_of(worst, days),
    ...unknown.map(({ parameter, reading }) => ({
      code: reading ? "too_old" : "no_reading",
      parameter,
      at: reading?.at,
    })),
  ];

  const over = known.filter((one) => one.share > 1 + ROUNDING);
  if (over.length === 0) {
    const state = test_due || known.some((one) => one.share > 0.5) ? "watch" : "steady";
    return {
      ...base,
      state,
      act: test_due ? "test" : "nothing",
      reasons: [...told, ...assumed(limits, worst), { code: "rule" }],
    };
  }
  const changed = last_change(facts);
  if (over.every((one) => one.changed_since && one.now_mg_n_l <= one.limit_mg_n_l)) {
    // Just changed: a test tells what the change did before more water is asked for.
    const by = Math.min(passing(over, facts.now), Math.max(facts.now, changed + SOON_HOURS * HOUR));
    const act = by <= facts.now ? /** @type {const} */ ("test") : /** @type {const} */ ("confirm");
    return { ...base, state: "watch", act, by, reasons: [...told, ...assumed(limits, worst), { code: "rule" }] };
  }
  const found = change(over, facts, limits, days);
  const { fraction } = found;
  const raised =
    fraction === undefined
      ? []
      : levels.filter((one) => !over.includes(one) && left_after(one, fraction) > one.limit_mg_n_l);
  // A change for nitrate alone is not worth ammonia over its limit.
  const unhurried = over.every((one) => one.parameter === "nitrate");
  const decided = raised.length > 0 && unhurried ? { state: found.state, act: /** @type {const} */ ("hold") } : found;
  const reasons = [
    ...told,
    ...change_reasons(over, raised, fraction ?? 0, facts),
    ...assumed(limits, raised[0] ?? worst),
    { code: "rule" },
  ];
  return { ...base, unhurried, ...decided, reasons };
}

/**
 * The level beside its limit: expected at the next test, and the share of the limit that is.
 * @param {any} one
 * @param {any} limits
 * @param {any} facts
 * @param {number} days
 */
function judged(one, limits, facts, days) {
  const limit_mg_n_l = limits[one.parameter].mg_n_l;
  const source_mg_n_l = brought(facts.source, one.parameter, facts.label);
  if (one.now_mg_n_l === null) return { ...one, limit_mg_n_l, source_mg_n_l };
  const expected_mg_n_l = one.now_mg_n_l + one.rise_mg_n_l_day * days;
  return {
    ...one,
    limit_mg_n_l,
    source_mg_n_l,
    expected_mg_n_l,
    share: expected_mg_n_l / limit_mg_n_l,
    by: limits[one.parameter].by,
  };
}

/**
 * The smallest change that holds all of them under their limits until the next test.
 * @param {any[]} over @param {any} facts @param {any} limits @param {number} days
 * @returns {Pick<Advice, "state" | "act"> & Partial<Advice>}
 */
function change(over, facts, limits, days) {
  const needs = over.map((one) => needed(one, days));
  const urgent = over.some((one) => one.now_mg_n_l > limits.act_at[one.parameter]);
  // Nitrate harms over weeks: a change for it alone is for today, at no hour.
  const poisons = over.filter((one) => one.parameter !== "nitrate");
  const above = poisons.some((one) => one.now_mg_n_l > one.limit_mg_n_l);
  const state = /** @type {"act now" | "change today"} */ (urgent ? "act now" : "change today");
  if (over.every((one) => one.source_mg_n_l >= one.now_mg_n_l))
    return { state, act: "hold", ...(poisons.length > 0 ? { next_test_hours: SOON_HOURS } : {}) };
  const again = needs.some((need) => need > MOST_AT_ONCE);
  const fraction = Math.min(Math.max(...needs), MOST_AT_ONCE);
  const exact_litres = fraction * facts.tank.water_l;
  const litres = bucket_litres(exact_litres, facts.tank.water_l, facts.water_unit);
  return {
    state,
    act: "change",
    fraction: litres / facts.tank.water_l,
    exact_litres,
    litres,
    dose: dose_for(facts, litres),
    ...(poisons.length === 0 ? {} : { by: above || urgent ? facts.now : passing(poisons, facts.now) }),
    again,
    ...(again ? { next_test_hours: SOON_HOURS } : {}),
  };
}

/**
 * Fraction that keeps one of them under its limit; more than 1 when no change can.
 * @param {any} one
 * @param {number} days
 */
function needed(one, days) {
  const target_mg_l = one.limit_mg_n_l - one.rise_mg_n_l_day * days;
  if (target_mg_l <= one.source_mg_n_l) return Infinity;
  const { now_mg_n_l: before_mg_l, source_mg_n_l: source_mg_l } = one;
  return answered(run("dilution", { before_mg_l, source_mg_l, fractions: [], target_mg_l }), "fraction_needed");
}

/** @param {any} facts */
const last_change = ({ changes }) =>
  Math.max(-Infinity, ...changes.map((/** @type {any} */ one) => Date.parse(one.at)));

/** When the first of them is expected to pass its limit. @param {any[]} over @param {number} now */
const passing = (over, now) =>
  Math.min(...over.map((one) => now + ((one.limit_mg_n_l - one.now_mg_n_l) / one.rise_mg_n_l_day) * DAY));

/** @param {any} worst @param {number} days @returns {Reason[]} */
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
  const code = worst.now_mg_n_l > worst.limit_mg_n_l ? "over" : worst.share > 1 + ROUNDING ? "will_pass" : "under";
  const basis = {
    readings: worst.rise_mg_n_l_day > 0 ? "rise_known" : "rise_none",
    doubling: "rise_doubling",
    nothing: "rise_unknown",
  }[/** @type {"readings"} */ (worst.rise_from)];
  const silent = worst.rise_from === "nothing" && worst.parameter !== "nitrate";
  return [
    { code, ...parts },
    ...(silent ? [] : [{ code: basis, ...parts }]),
    ...(worst.changed_since ? [{ code: "carried", ...parts }] : []),
  ];
}

/**
 * What a change leaves of one of them; what is not known counts as none.
 * @param {any} one
 * @param {number} fraction
 * @returns {number}
 */
const left_after = (one, fraction) =>
  run("dilution", { before_mg_l: one.now_mg_n_l ?? 0, source_mg_l: one.source_mg_n_l, fractions: [fraction] })
    .after_mg_l;

/** @param {any[]} over @param {any[]} raised @param {number} fraction @param {any} facts @returns {Reason[]} */
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

/** @param {any} limits @param {any} worst @returns {Reason[]} */
function assumed(limits, worst) {
  if (worst?.parameter !== "total_ammonia") return [];
  return /** @type {const} */ (["ph", "temperature_c"])
    .filter((name) => limits[name].from !== "reading")
    .map((name) => ({
      code: limits[name].from === "usual" ? `usual_${name}` : `assumed_${name}`,
      value: limits[name].value,
    }));
}

/** @param {any} facts @param {any} limits */
function is_settled(facts, limits) {
  const low = ["total_ammonia", "nitrite"].map((parameter) => {
    const tests = facts.readings.filter(
      (/** @type {any} */ r) => r.parameter === parameter && facts.now - Date.parse(r.at) <= 60 * DAY && possible(r),
    );
    let run_of = 0;
    let from = facts.now;
    for (const reading of tests.toReversed()) {
      if (as_nitrogen(reading) > limits[parameter].mg_n_l / 4) break;
      run_of += 1;
      from = Date.parse(reading.at);
    }
    return run_of >= SETTLED_TESTS && facts.now - from >= SETTLED_DAYS * DAY;
  });
  return low.every(Boolean);
}
