/** Where the advice by the forecast turns: hand-made answers of the belief, each limit from both sides. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { foretold } from "../../pwa/advice/foretold.js";
import { WATCHED } from "../../pwa/advice/level.js";
import { ask_of } from "../../pwa/advice/forecast/questions.js";
import { today } from "../../pwa/advice/today.js";
import { contracts, install } from "../../pwa/contracts.js";
import { reasons_of, some, view, there } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";
import { HOUR, LABEL, NOW, ago, codes, facts, read } from "./tank_facts.js";

install(shared_bundle());

/** @typedef {import("./tank_facts.js").SomeFacts} SomeFacts */
/** @typedef {import("../../pwa/types/views.js").Reading} Reading */
/** @typedef {import("../../pwa/types/advice.js").BeliefLimits} BeliefLimits */
/** @typedef {import("../../pwa/types/advice.js").PlanAnswer} PlanAnswer */
/** @typedef {import("../../pwa/types/advice.js").Rule} Rule */
/** @typedef {import("../../pwa/types/advice.js").AheadAnswer} AheadAnswer */
/** @typedef {import("../../pwa/types/advice.js").Species} Species */
/** @typedef {[number, number, number]} Shares of a limit: one in ten below, the middle, one in ten above */
/**
 * @template T
 * @typedef {import("./fixtures.js").Some<T>} Some
 */

const START = NOW - 240 * HOUR;
const TANK = view("tank", {
  id: "tank-one-1",
  water_l: 100,
  started_at: ago(240),
  ph: 7.5,
  temperature_c: 25,
  feed_g_day: 0.3,
  planting: "light",
  seeded: "none",
});
const TESTED = [read("total_ammonia", 0, 1), read("nitrite", 0, 1), read("nitrate", 2, 1)];
const band = (/** @type {number} */ p10, p50 = p10, p90 = p50) => ({ p10, p50, p90 });

/** @type {Shares} */ const NONE = [0, 0, 0];
/** @param {Shares} shares @param {number} limit */
const band_of = ([p10, p50, p90], limit) => band(p10 * limit, p50 * limit, p90 * limit);

/**
 * One row of the outlook's series: shares of the limits that the belief was asked with.
 * @param {BeliefLimits} limits @param {number} at_h @param {Partial<Record<Species, Shares>>} [shares]
 */
const row = (limits, at_h, { nh3 = NONE, nitrite = NONE, nitrate = NONE } = {}) => ({
  at_h,
  nh3_mg_n_l: band_of(nh3, limits.nh3_mg_n_l),
  nitrite_mg_n_l: band_of(nitrite, limits.nitrite_mg_n_l),
  nitrate_mg_n_l: band_of(nitrate, limits.nitrate_mg_n_l),
});

/**
 * How the belief answers, where it says something; `tank` and the rest are facts.
 * @typedef {{
 *   plan?: Some<PlanAnswer>, pass_chance?: Partial<Record<Species, number>>, now?: Some<AheadAnswer["now"]>,
 *   rows?: Partial<Record<Species, Shares>>[], doubts?: readonly Some<PlanAnswer["doubts"][number]>[],
 *   asked?: {start?: number}, rule?: Some<Rule>, readings?: readonly Reading[],
 * } & Omit<SomeFacts, "readings" | "now">} Told
 */

/** The advice by answers that say nothing unless the test says otherwise. @param {Told} [how] */
function told(how = {}) {
  const { plan, pass_chance, now, rows = [{}], doubts = [], rule: ruled, asked: put, readings = TESTED, ...more } = how;
  const known = facts(readings, { tank: TANK, ...more });
  const rule = /** @type {Rule} */ ({ ...today(known), ...ruled });
  const asked = { ...ask_of(known, rule), ...put };
  const none = band(0);
  /** @type {Some<import("../../pwa/types/advice.js").Answers>} */
  const answers = {
    plan: {
      fraction: 0,
      enough: true,
      advice: ["no_change"],
      pass_chance: 0.01,
      several: null,
      cause: null,
      doubts,
      notes: [],
      peak: { nh3_mg_n_l: none, nitrite_mg_n_l: none, nitrate_mg_n_l: none },
      ...plan,
    },
    next: {
      series: rows.map((shares, i) => row(asked.limits, 240 + 3 * i, shares)),
      now: { total_ammonia_mg_n_l: none, nitrite_mg_n_l: none, nitrate_mg_n_l: none, ...now },
      pass_chance: { nh3: 0, nitrite: 0, nitrate: 0, ...pass_chance },
    },
  };
  return { advice: foretold(known, rule, asked, { state: "ready", answers: some(answers) }), rule, asked };
}
/** @type {Told} */
const CHANGE = { plan: { fraction: 0.3, advice: [] }, pass_chance: { nitrite: 0.4 } };
/** @type {Shares} */ const OVER = [0, 0.5, 1.01];
/** @type {Shares} */ const AT = [0, 0.5, 1];

test("a change is due by the hour at which one draw in ten is over a limit, not now and not when half are", () => {
  const by = (/** @type {NonNullable<Told["rows"]>} */ ...rows) => told({ ...CHANGE, rows }).advice.by;
  assert.equal(by({}, { nitrite: AT }, { nitrite: OVER }, { nitrite: [0, 1.2, 2] }), NOW + 6 * HOUR);
  assert.equal(by({}, { nh3: OVER }, { nitrite: OVER }), NOW + 3 * HOUR, "whichever comes first");
  assert.equal(by({ nitrite: OVER }, {}), NOW, "perhaps already");
  assert.equal(by({ nitrite: [0, 1, 1] }, { nitrite: OVER }), NOW + 3 * HOUR, "at a limit is not over it");
  assert.equal(by({}, { nitrate: OVER }), undefined, "nitrate is for no hour");
});

test("what is over its limit by more than half of the draws is for now", () => {
  assert.equal(told({ ...CHANGE, rows: [{ nitrite: [0, 1.01, 1.5] }, {}] }).advice.by, NOW);
  assert.equal(told({ ...CHANGE, rows: [{ nitrate: [0, 1.01, 1.5] }, { nitrite: OVER }] }).advice.by, NOW + 3 * HOUR);
});

test("an hour that has passed counts as now", () => {
  const { advice } = told({ ...CHANGE, rows: [{}, { nitrite: OVER }], asked: { start: START - 9 * HOUR } });
  assert.equal(advice.by, NOW);
});

test("the change is the plan's, in a bucket's litres, with the dose for those", () => {
  const { advice } = told({ ...CHANGE, plan: { fraction: 0.302, advice: ["nitrate_slowly"] } });
  assert.deepEqual([advice.act, advice.state, advice.from], ["change", "change today", "forecast"]);
  assert.deepEqual([advice.exact_litres, advice.litres, advice.fraction], [30.2, 31, 0.31]);
  assert.equal(advice.dose?.amount, 6.2);
  assert.deepEqual([advice.besides, advice.second, advice.again], [["nitrate_slowly"], undefined, false]);
  const none = told({}).advice;
  assert.deepEqual(
    [none.act, none.state, none.litres, none.by, none.dose],
    ["nothing", "steady", undefined, undefined, undefined],
  );
});

test("several changes: the first now, the others in their hours", () => {
  const several = { count: 3, fraction_each: 0.4, every_h: 8, pass_chance: 0.07 };
  const { advice } = told({
    ...CHANGE,
    plan: { fraction: 0.5, enough: false, advice: ["several_changes", "feed_less"], several },
  });
  assert.deepEqual(
    [advice.litres, advice.second, advice.besides],
    [40, { at: NOW + 8 * HOUR, litres: 40, count: 3, every_h: 8 }, ["feed_less"]],
  );
  assert.equal(reasons_of(advice, "after_several")[0].chance, 0.07);
});

test("over the level to act on now it is for now, at it for today", () => {
  const at = (/** @type {Told["now"]} */ now) => told({ ...CHANGE, now }).advice.state;
  assert.deepEqual(
    [at({ nitrite_mg_n_l: band(0, 0.3) }), at({ nitrite_mg_n_l: band(0, 0.31) })],
    ["change today", "act now"],
  );
  assert.equal(at({ nitrite_mg_n_l: band(0, 0.1, 0.9) }), "change today", "by the middle of the belief");
  assert.equal(at({ total_ammonia_mg_n_l: band(0, 9) }), "act now");
  assert.equal(at({ nitrate_mg_n_l: band(0, 90) }), "change today");
  assert.equal(told({ now: { nitrite_mg_n_l: band(0, 0.31) } }).advice.state, "steady", "no change is planned");
});

test("a test that is due comes before a change, and before anything but danger", () => {
  const due = { test_due: true };
  /** @param {import("../../pwa/types/advice.js").Advice} advice */
  const said = ({ act, state }) => [act, state];
  assert.deepEqual(said(told({ ...CHANGE, rule: due }).advice), ["test", "change today"]);
  assert.deepEqual(said(told({ rule: due }).advice), ["test", "watch"]);
  assert.deepEqual(said(told({ ...CHANGE, rule: due, now: { nitrite_mg_n_l: band(0, 0.4) } }).advice), [
    "change",
    "act now",
  ]);
  assert.equal(told({ ...CHANGE, rule: due }).advice.litres, 30, "with the litres for whoever cannot test");
});

test("one chance in twenty is steady, more is watched", () => {
  const at = (/** @type {number} */ pass_chance) => told({ plan: { pass_chance } }).advice.state;
  assert.deepEqual([at(0.05), at(0.051)], ["steady", "watch"]);
});

test("where no change helps none is made, and a test follows in twelve hours; half the food helps", () => {
  const hold = told({ plan: { enough: false, advice: ["feed_less"] } }).advice;
  assert.deepEqual([hold.act, hold.state, hold.next_test_hours], ["hold", "change today", 12]);
  const half = told({ plan: { enough: false, advice: ["feed_half"] } }).advice;
  assert.deepEqual([half.act, half.state, half.next_test_hours], ["nothing", "watch", 24]);
});

test("without a test of ammonia or nitrite a test comes first", () => {
  const only = (/** @type {Reading[]} */ readings) => told({ ...CHANGE, readings }).advice;
  assert.deepEqual([only([read("nitrate", 5, 1)]).act, only([read("nitrate", 5, 1)]).litres], ["test", undefined]);
  assert.equal(only([read("nitrate", 5, 1)]).unhurried, false);
  assert.equal(only([read("nitrite", 0, 1), read("total_ammonia", 0, 1)]).act, "change");
  assert.equal(only([read("total_ammonia", 0, 1), read("nitrite", 0, 1)]).act, "change");
});

test("one chance in ten of ammonia and nitrite is no hurry, more is", () => {
  const at = (/** @type {Told["pass_chance"]} */ pass_chance) =>
    told({ plan: CHANGE.plan, pass_chance }).advice.unhurried;
  assert.deepEqual(
    [at({ nh3: 0.1, nitrite: 0.1, nitrate: 1 }), at({ nh3: 0.11 }), at({ nitrite: 0.11 })],
    [true, false, false],
  );
});

test("a change for nitrate that the plan refuses, because it would bring ammonia, is held", () => {
  const at = (/** @type {Told["plan"]} */ more) => told({ plan: { fraction: 0, ...more } }).advice;
  const held = at({ cause: "total_ammonia", advice: ["source_is_the_cause"] });
  assert.deepEqual(
    [held.act, held.litres, held.state, held.unhurried, held.besides],
    ["hold", undefined, "change today", true, ["source_is_the_cause"]],
  );
  assert.equal(at({ cause: null }).act, "nothing");
  const some_water = at({ fraction: 0.2, cause: "total_ammonia", advice: ["nitrate_slowly"] });
  assert.equal(some_water.act, "change", "what is advised in spite of it is done");
});

test("a doubted reading asks for the test again until a later one of the same is there", () => {
  /** @type {PlanAnswer["doubts"][number]} */
  const doubt = {
    at_h: 239,
    parameter: "nitrite",
    value_mg_n_l: 2,
    expected_p10_mg_n_l: 0.01,
    expected_p90_mg_n_l: 0.2,
  };
  /** @param {readonly Reading[]} readings @param {Told} [more] */
  const at = (readings, more = {}) => told({ doubts: [doubt], readings, ...more }).advice;
  const found = at(TESTED);
  assert.deepEqual([found.act, found.state, found.doubt?.at], ["retest", "watch", NOW - HOUR]);
  assert.deepEqual(found.reasons[0], {
    code: "doubt",
    parameter: "nitrite",
    read: 2,
    low: 0.01,
    high: 0.2,
    at: NOW - HOUR,
  });
  assert.equal(at([...TESTED, read("nitrite", 0, 0.5)]).act, "nothing");
  assert.equal(at([...TESTED, read("total_ammonia", 0, 0.5)]).act, "retest", "of the same");
  assert.equal(at(TESTED, { ...CHANGE, now: { nitrite_mg_n_l: band(0, 0.4) } }).state, "act now");
  const two = told({ doubts: [{ ...doubt, parameter: "total_ammonia", at_h: 200 }, doubt] }).advice;
  assert.equal(two.doubt?.parameter, "nitrite", "the last one");
});

test("each parameter stands over its limit, perhaps does, or has a chance to", () => {
  /** @param {number} p10 @param {number} p50 @param {Told} [more] */
  const at = (p10, p50, more = CHANGE) => {
    const { advice, asked } = told({
      ...more,
      now: { nitrite_mg_n_l: band(p10, p50, 0.5) },
      pass_chance: { nitrite: 0.4 },
    });
    const [first] = advice.reasons;
    assert.ok("until" in first);
    assert.deepEqual(
      [first.parameter, first.low, first.high, first.limit, first.until],
      ["nitrite", p10, 0.5, 0.1, asked.next_test_at],
    );
    return first.code;
  };
  assert.deepEqual(
    [at(0.11, 0.2), at(0.1, 0.2), at(0.1, 0.11), at(0, 0.1)],
    ["stands_over", "perhaps_over", "perhaps_over", "chance_without"],
  );
  assert.equal(at(0, 0.1, {}), "chance");
});

test("the greatest chance is said first, others above one in twenty; nitrate only where it is known", () => {
  /** @param {Told["pass_chance"]} pass_chance @param {Told} [more] */
  const at = (pass_chance, more = {}) =>
    reasons_of(told({ pass_chance, ...more }).advice, "chance").map(({ parameter, chance }) => [parameter, chance]);
  assert.deepEqual(at({ nh3: 0.05, nitrite: 0.2, nitrate: 0.06 }), [
    ["nitrite", 0.2],
    ["nitrate", 0.06],
  ]);
  assert.deepEqual(at({ nh3: 0.02, nitrite: 0.01 }), [["total_ammonia", 0.02]]);
  assert.deepEqual(at({ nitrate: 0.9 }, { readings: TESTED.slice(0, 2) }), [["total_ammonia", 0]]);
});

test("what the change does: enough, with half the food, not enough, or all of the limits together", () => {
  const after = (/** @type {Told["plan"]} */ plan, nitrite = 0.4) =>
    codes(told({ plan: { fraction: 0.3, advice: [], ...plan }, pass_chance: { nitrite } }).advice).filter(
      (code) => code.startsWith("after") || code === "together",
    );
  assert.deepEqual(after({}), ["after"]);
  assert.deepEqual(after({ enough: false, advice: ["feed_half"] }), ["after_half_food"]);
  assert.deepEqual(after({ enough: false }), ["after_not_enough"]);
  assert.deepEqual([after({}, 0.1), after({}, 0.11)], [["together", "after"], ["after"]]);
  assert.equal(
    reasons_of(
      told({ plan: { fraction: 0.3, advice: [], pass_chance: 0.08 }, pass_chance: { nitrite: 0.1 } }).advice,
      "together",
    )[0].chance,
    0.1,
  );
  const over = told({ ...CHANGE, pass_chance: { nitrite: 0.1 }, now: { nitrite_mg_n_l: band(0.2) } }).advice;
  assert.ok(!codes(over).includes("together"), "not where one stands over its limit");
});

test("what the chloramine of the new water frees is said with a change only", () => {
  const chloramine = /** @type {const} */ ({ id: "tap-water-2", disinfectant: "chloramine", disinfectant_mg_l: 1 });
  const freed = (/** @type {Told} */ more) =>
    codes(told({ ...CHANGE, ...more }).advice).filter((code) => code.startsWith("freed"));
  assert.deepEqual(freed({ source: chloramine }), ["freed"]);
  assert.deepEqual(freed({ source: chloramine, label: { ...LABEL, binds_ammonia: true } }), ["freed_bound"]);
  assert.deepEqual(freed({ source: { id: "tap-water-3", disinfectant: "chloramine" } }), ["freed_unknown"]);
  assert.deepEqual(freed({}), []);
  assert.deepEqual(
    codes(told({ source: chloramine }).advice).filter((code) => code.startsWith("freed")),
    [],
  );
});

test("how much the forecast rests on: no test, few, and what was never read", () => {
  const known = (/** @type {Told} */ more) =>
    codes(told(more).advice).filter((code) => ["prior", "few", "no_reading"].includes(code));
  assert.deepEqual(known({ readings: [] }), ["prior"]);
  assert.deepEqual(known({ readings: [{ ...read("ph", 7, 1), basis: undefined }] }), ["prior"]);
  assert.deepEqual(known({}), []);
  const { few_readings, doubted, source_ph_unknown } = there(contracts().change_plan.notes);
  assert.deepEqual(known({ plan: { notes: [few_readings] } }), ["few"]);
  const doubts = [
    {
      at_h: 200,
      parameter: /** @type {const} */ ("nitrite"),
      value_mg_n_l: 2,
      expected_p10_mg_n_l: 0,
      expected_p90_mg_n_l: 1,
    },
  ];
  assert.deepEqual(known({ plan: { notes: [source_ph_unknown, doubted] }, doubts }), []);
  assert.deepEqual(known({ plan: { notes: [few_readings, doubted] }, doubts }), ["few"]);
  assert.deepEqual(known({ readings: TESTED.slice(0, 2) }), ["no_reading"]);
});

test("what was filled in or left out is said, and where there is none, nothing", () => {
  const said = (/** @type {Told} */ more) =>
    codes(told(more).advice).filter((code) => ["filled", "left_out"].includes(code));
  assert.deepEqual(said({}), []);
  assert.deepEqual(said({ tank: { ...TANK, planting: undefined } }), ["filled"]);
  const { advice } = told({ readings: [...TESTED, read("nitrite", 5000, 2)] });
  const [left_out] = reasons_of(advice, "left_out");
  assert.deepEqual([left_out.count, left_out.first.id], [1, "nitrite-2"]);
  assert.equal(advice.reasons.at(-1)?.code, "forecast");
});

test("the levels are the belief's, but nitrate only where it was tested", () => {
  const now = { total_ammonia_mg_n_l: band(0, 0.2), nitrite_mg_n_l: band(0, 0.03), nitrate_mg_n_l: band(0, 7) };
  const { levels } = told({ now }).advice;
  assert.deepEqual(
    WATCHED.map((parameter) => levels[parameter].now_mg_n_l),
    [0.2, 0.03, 7],
  );
  assert.equal(told({ now, readings: TESTED.slice(0, 2) }).advice.levels.nitrate.now_mg_n_l, null);
});

test("held: the rule's reason is kept where the water brings more, not where the change itself does", () => {
  const worse = /** @type {const} */ ({ code: "source_worse", parameter: "nitrite", source: 1 });
  /** @type {Some<Rule>} */
  const rule = { reasons: [worse, { code: "brings_over", parameter: "nitrite" }, { code: "carried" }] };
  const held = told({ plan: { enough: false, advice: [] }, rule }).advice;
  assert.deepEqual(
    codes(held).filter((code) => ["source_worse", "brings_over", "carried"].includes(code)),
    ["source_worse", "brings_over"],
  );
  assert.deepEqual(
    codes(told({ rule }).advice).filter((code) => code === "source_worse"),
    [],
  );
});

test("the assumed pH is said where ammonia is spoken of first", () => {
  const said = (/** @type {Told["pass_chance"]} */ pass_chance) =>
    codes(told({ pass_chance }).advice).filter((code) => code.startsWith("usual_"));
  assert.deepEqual(said({ nh3: 0.2 }), ["usual_ph", "usual_temperature_c"]);
  assert.deepEqual(said({ nitrite: 0.2 }), []);
});

test("the questions: the hour of the next test, the most to change, and how long nitrate is known", () => {
  /** @param {Pick<Told, "readings" | "tank" | "feedings">} [more] @param {Partial<Rule>} [ruled] */
  const asked = ({ readings = TESTED, ...more } = {}, ruled = {}) => {
    const known = facts(readings, { tank: TANK, ...more });
    return ask_of(known, { ...today(known), ...ruled });
  };
  /** @param {ReturnType<typeof asked>} asked */
  const most_of = ({ questions: [plan] }) => plan.label === "plan" && plan.input.max_fraction;
  /** @param {import("../../pwa/types/advice.js").Question} question */
  const horizon_of = ({ input }) => ("horizon_h" in input ? input.horizon_h : undefined);
  const tested = (/** @type {number} */ hours) => [read("total_ammonia", 0, hours), read("nitrite", 0, hours)];
  assert.deepEqual([asked().next_test_h, asked().next_test_at], [23, NOW + 23 * HOUR]);
  assert.equal(asked({ readings: tested(13) }).next_test_h, 12, "not sooner than twelve hours");
  assert.deepEqual(
    [asked({ readings: tested(23.5) }).next_test_h, asked({ readings: tested(23.5) }).next_test_at],
    [12, NOW + 0.5 * HOUR],
  );
  assert.deepEqual(
    [asked({ readings: tested(24) }).next_test_h, asked({ readings: tested(24) }).next_test_at],
    [24, NOW + 24 * HOUR],
  );
  assert.equal(most_of(asked()), 0.5);
  const nitrate = (/** @type {number} */ hours) =>
    asked({
      tank: { ...TANK, started_at: ago(2400) },
      readings: [...TESTED.slice(0, 2), read("nitrate", 2, hours)],
      feedings: [{ id: "f", at: ago(2000), feed_g: 0.1 }],
    });
  assert.deepEqual([nitrate(1439).nitrate_known, nitrate(1440).nitrate_known], [true, false]);
  assert.deepEqual([nitrate(1439).limits.nitrate_mg_n_l, nitrate(1441).limits.nitrate_mg_n_l], [10, 1000]);
  assert.deepEqual(asked().further.map(horizon_of), [72, undefined]);
  assert.equal(horizon_of(asked({}, { usual_test_hours: 168 }).further[0]), 167);
});
