/**
 * What a tank wants today by its forecast: the plan's own litres, when a test comes first, what is doubted, when the
 * rule stands.
 */
import assert from "node:assert/strict";
import { test } from "node:test";
import { foretold } from "../../pwa/advice/foretold.js";
import { ask_of } from "../../pwa/advice/forecast/questions.js";
import { today } from "../../pwa/advice/today.js";
import { install, run } from "../../pwa/contracts.js";
import { choose } from "../../pwa/i18n/words.js";
import { chance_said } from "../../pwa/ui/words/chance.js";
import { as_facts, reasons_of, there, view } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";
import { HOUR, NOW, ago, codes } from "./tank_facts.js";

install(shared_bundle());
await choose(["en-GB"]);

/** @typedef {import("./tank_facts.js").Parameter} Parameter */
/** @typedef {import("../../pwa/types/views.js").Reading} Reading */

const STEPS = [0, 0.05, 0.1, 0.2, 0.4, 0.8, 1.6];
const TAP = view("source_water", { id: "tap-water-1", disinfectant: "chlorine", nitrate_mg_n_l: 1 });
const LABEL = view("label", {
  id: "label-one-1",
  name: "Bottle",
  basis: "new_water",
  amount: 2,
  unit: "ml",
  per_l: 10,
});
const TANK = view("tank", {
  id: "tank-one-1",
  water_l: 100,
  started_at: ago(12 * 24),
  temperature_c: 25,
  ph: 7.8,
  feed_g_day: 0.4,
  planting: "light",
  seeded: "none",
});
let made = 0;
const read = (/** @type {Parameter} */ parameter, /** @type {number} */ value, /** @type {number} */ hours) =>
  view("reading", {
    id: `reading-${++made}`,
    at: ago(hours),
    parameter,
    value,
    ...(["ph", "temperature"].includes(parameter) ? {} : { basis: "n", steps: STEPS }),
  });
/** Twelve mornings; values from oldest to newest, the last an hour ago. */
const mornings = (/** @type {Parameter} */ parameter, /** @type {number[]} */ values) =>
  values.map((/** @type {number} */ value, i) => read(parameter, value, (values.length - 1 - i) * 24 + 1));
const water = (hours = 1) => [read("ph", 7.8, hours), read("temperature", 25, hours)];
/** @param {import("./fixtures.js").Some<import("./fixtures.js").Facts>} [more] */
const facts = (/** @type {Reading[]} */ readings, more = {}) =>
  as_facts({
    now: NOW,
    tank: TANK,
    readings: readings.toSorted((a, b) => (a.at < b.at ? -1 : 1)),
    changes: [],
    doses: [],
    feedings: [],
    source: TAP,
    label: LABEL,
    ...more,
  });

/** @typedef {import("../../pwa/types/advice.js").Answers} Answers */
/** @typedef {import("../../pwa/types/advice.js").Reason} Reason */
/**
 * @template T
 * @typedef {import("./fixtures.js").Some<T>} Some
 */

/** @param {import("../../pwa/types/advice.js").Asked} asked @returns {Answers} */
const answers_to = ({ questions }) =>
  Object.fromEntries(questions.map(({ label, name, input }) => [label, run(name, input)]));

function told(/** @type {import("./fixtures.js").Facts} */ known) {
  const rule = today(known);
  const asked = ask_of(known, rule);
  const answers = answers_to(asked);
  return { rule, asked, answers, advice: foretold(known, rule, asked, { state: "ready", answers }) };
}
const RISING = [
  ...mornings("total_ammonia", [0.1, 0.1, 0.2, 0.2, 0.4, 0.4]),
  ...mornings("nitrite", [0, 0, 0, 0, 0.05, 0.05]),
];

test("the litres are the plan's, rounded up to a bucket, with the dose for exactly those", () => {
  const { advice, answers } = told(facts([...RISING, ...water()]));
  assert.deepEqual([advice.act, advice.from], ["change", "forecast"]);
  const plan = there(answers.plan);
  assert.ok(plan.enough && plan.fraction > 0);
  assert.equal(advice.exact_litres, plan.fraction * 100);
  assert.equal(advice.litres, Math.ceil(plan.litres - 1e-9));
  assert.equal(
    advice.dose?.amount,
    run("dechlorinator_dose", { change_l: advice.litres, tank_l: 100, label_ml: 2, label_per_l: 10 }).label_dose_ml,
  );
  assert.ok(there(advice.by) >= NOW, "before the chance of passing is one in ten");
  assert.ok(
    codes(advice).includes("chance_without") && codes(advice).includes("after") && codes(advice).at(-1) === "forecast",
  );
});

test("once that change is logged, the forecast asks for no more", () => {
  const { advice } = told(facts([...RISING, ...water()]));
  const change = { id: "change-1", at: ago(0), litres: advice.litres, fraction: advice.fraction, source: TAP };
  const after = told(facts([...RISING, ...water()], { changes: [change] })).advice;
  assert.deepEqual([after.act, after.litres], ["nothing", undefined]);
});

test("tests that never showed anything: steady, and the chance is said", () => {
  const settled = facts(
    [...mornings("total_ammonia", Array(12).fill(0)), ...mornings("nitrite", Array(12).fill(0)), ...water()],
    { tank: { ...TANK, started_at: ago(400 * 24), feed_g_day: 0.1 } },
  );
  const { advice } = told(settled);
  assert.deepEqual([advice.state, advice.act, advice.litres], ["steady", "nothing", undefined]);
  assert.ok(codes(advice).includes("chance"));
});

test("a reading that does not fit asks for the test again, until the next one settles it", () => {
  const quiet = [
    ...mornings("total_ammonia", [0, 0, 0, 0, 0, 0]),
    ...mornings("nitrite", [0, 0, 0, 0, 0, 0]),
    ...water(),
  ];
  const doubted = told(facts([...quiet, read("nitrite", 1.6, 0.5)])).advice;
  assert.deepEqual([doubted.act, doubted.doubt?.parameter, doubted.doubt?.value_mg_n_l], ["retest", "nitrite", 1.6]);
  assert.equal(codes(doubted)[0], "doubt");
  const settled = told(facts([...quiet, read("nitrite", 1.6, 0.5), read("nitrite", 0, 0.25)])).advice;
  assert.notEqual(settled.act, "retest");
  const confirmed = told(facts([...quiet, read("nitrite", 1.6, 0.5), read("nitrite", 1.6, 0.25)])).advice;
  assert.deepEqual([confirmed.act, confirmed.state], ["change", "act now"]);
});

test("without a test the forecast is the prior and says so, and a test comes first", () => {
  const { advice } = told(facts([]));
  assert.deepEqual([advice.act, advice.litres], ["test", undefined]);
  assert.ok(codes(advice).includes("prior") && !codes(advice).includes("few"));
  assert.ok(codes(told(facts([read("nitrite", 0, 1), read("total_ammonia", 0, 1)])).advice).includes("few"));
  assert.equal(
    told(facts([{ ...read("nitrate", 60, 1), steps: [0, 20, 60] }, ...water()])).advice.act,
    "test",
    "nitrate says nothing of the other two",
  );
});

test("a test that is overdue comes before a change, with the change for whoever cannot test", () => {
  const old = RISING.map((one) => ({ ...one, at: new Date(Date.parse(one.at) - 60 * HOUR).toISOString() }));
  const { advice } = told(facts([...old, ...water(61)]));
  assert.equal(advice.act, advice.state === "act now" ? "change" : "test");
  assert.ok(there(advice.litres) > 0);
});

test("untested nitrate is not guessed, and the advice says that it is missing", () => {
  const { advice, asked } = told(
    facts([...mornings("total_ammonia", Array(8).fill(0)), ...mornings("nitrite", Array(8).fill(0)), ...water()], {
      tank: { ...TANK, started_at: ago(400 * 24), feed_g_day: 0.1 },
    }),
  );
  assert.equal(asked.limits.nitrate_mg_n_l, 1000);
  assert.ok(reasons_of(advice, "no_reading").some(({ parameter }) => parameter === "nitrate"));
  assert.ok(
    !advice.reasons.some(
      (reason) => reason.code !== "no_reading" && "parameter" in reason && reason.parameter === "nitrate",
    ),
  );
});

test("nitrate alone is not urgent: a third at most, and not with water that brings ammonia", () => {
  const high = [
    ...mornings("total_ammonia", Array(8).fill(0)),
    ...mornings("nitrite", Array(8).fill(0)),
    read("nitrate", 14, 1),
    ...water(),
  ];
  const steps = (/** @type {Reading} */ one) =>
    one.parameter === "nitrate" ? { ...one, steps: [0, 5, 10, 14, 20] } : one;
  /** @type {import("./fixtures.js").Some<import("./fixtures.js").Facts>} */
  const settled = { tank: { ...TANK, started_at: ago(400 * 24), feed_g_day: 0.1, planting: "dense" } };
  const { advice, asked } = told(facts(high.map(steps), settled));
  assert.deepEqual(
    asked.questions.flatMap(({ input }) => ("max_fraction" in input ? [input.max_fraction] : [])),
    [0.5],
  );
  assert.deepEqual([advice.act, advice.by, advice.state], ["change", undefined, "change today"]);
  assert.ok(there(advice.litres) <= 33);
  const chloramine = view("source_water", {
    id: "tap-water-2",
    disinfectant: "chloramine",
    disinfectant_mg_l: 8,
    nitrate_mg_n_l: 1,
  });
  const higher = high.map((one) => (one.parameter === "nitrate" ? { ...one, value: 30 } : one));
  const held = told(facts(higher, { ...settled, source: chloramine })).advice;
  assert.deepEqual([held.act, held.unhurried, held.litres], ["hold", true, undefined]);
  assert.deepEqual(held.besides, ["source_is_the_cause"]);
});

test("half the food alone, where that is enough: no water is asked for and none is refused", () => {
  const known = facts(
    [...mornings("total_ammonia", Array(12).fill(0)), ...mornings("nitrite", Array(12).fill(0)), ...water()],
    { tank: { ...TANK, started_at: ago(400 * 24), feed_g_day: 0.1 } },
  );
  const { rule, asked, answers } = told(known);
  const plan = /** @type {NonNullable<Answers["plan"]>} */ ({
    ...answers.plan,
    fraction: 0,
    enough: false,
    advice: ["feed_half"],
    pass_chance: 0.02,
  });
  const advice = foretold(known, rule, asked, { state: "ready", answers: { ...answers, plan } });
  assert.deepEqual(
    [advice.act, advice.state, advice.litres, advice.besides],
    ["nothing", "watch", undefined, ["feed_half"]],
  );
});

/**
 * The advice for a settled tank by its real answers, some of which the test replaces.
 * @param {{plan?: Some<Answers["plan"]>, next?: Some<Answers["next"]>, rule_reasons?: Some<Reason>[]}} replaced
 */
function told_with({ plan = {}, next = {}, rule_reasons = [] }) {
  const known = facts(
    [
      ...mornings("total_ammonia", Array(12).fill(0)),
      ...mornings("nitrite", Array(12).fill(0)),
      { ...read("nitrate", 2, 1), steps: [0, 2, 5] },
      ...water(),
    ],
    { tank: { ...TANK, started_at: ago(400 * 24), feed_g_day: 0.1 } },
  );
  const rule = today(known);
  const asked = ask_of(known, rule);
  const answers = answers_to(asked);
  const put = /** @type {Answers} */ ({
    plan: { ...answers.plan, ...plan },
    next: { ...answers.next, ...next },
  });
  const reasons = /** @type {Reason[]} */ (rule_reasons);
  return foretold(known, { ...rule, reasons: [...reasons, ...rule.reasons] }, asked, {
    state: "ready",
    answers: put,
  });
}

test("several changes: as many litres each, and the chance is that after the last", () => {
  const advice = told_with({
    plan: {
      fraction: 0.5,
      enough: false,
      advice: ["several_changes"],
      several: { count: 2, fraction_each: 0.4, every_h: 12, pass_chance: 0.07 },
    },
  });
  const second = { at: NOW + 12 * HOUR, litres: 40, count: 2, every_h: 12 };
  assert.deepEqual([advice.litres, advice.second, advice.besides], [40, second, []]);
  assert.deepEqual(
    advice.reasons.filter(({ code }) => code.startsWith("after")),
    [{ code: "after_several", chance: 0.07 }],
  );
});

test("of the three chances the greatest is said, and another from one in twenty on", () => {
  const said = (/** @type {Record<"nh3" | "nitrite" | "nitrate", number>} */ pass_chance) =>
    reasons_of(told_with({ next: { pass_chance } }), "chance").map(({ parameter }) => parameter);
  assert.deepEqual(said({ nh3: 0.045, nitrite: 0.2, nitrate: 0.06 }), ["nitrite", "nitrate"]);
  assert.deepEqual(said({ nh3: 0.01, nitrite: 0, nitrate: 0 }), ["total_ammonia"]);
});

test("where no single limit asks for the change, it is said that all together do", () => {
  const said = (/** @type {number} */ nitrite, /** @type {number} */ fraction) =>
    codes(
      told_with({
        plan: { fraction, enough: true, advice: [], pass_chance: 0.095 },
        next: { pass_chance: { nh3: 0.05, nitrite, nitrate: 0 } },
      }),
    ).filter((/** @type {string} */ code) => ["together", "after"].includes(code));
  assert.deepEqual(said(0.09, 0.05), ["together", "after"]);
  assert.deepEqual(said(0.11, 0.05), ["after"]);
  assert.deepEqual(said(0.09, 0), []);
});

test("where no change helps, the rule's reason is kept: the water brings more", () => {
  /** @type {Reason} */
  const worse = { code: "source_worse", parameter: "nitrite", source: 1 };
  const advice = told_with({
    plan: { fraction: 0, enough: false, advice: [] },
    rule_reasons: [worse, { code: "carried" }],
  });
  assert.deepEqual(
    [
      advice.act,
      advice.next_test_hours,
      advice.reasons.filter(({ code }) => code === "source_worse" || code === "carried"),
    ],
    ["hold", 12, [worse]],
  );
});

test("nitrate that a change cannot bring low enough does not hold the change back", () => {
  const peak = { nh3_mg_n_l: { p90: 0 }, nitrite_mg_n_l: { p90: 0 }, nitrate_mg_n_l: { p90: 900 } };
  const advice = told_with({ plan: { fraction: 0.5, enough: false, advice: [], peak } });
  assert.deepEqual([advice.act, advice.litres, codes(advice).includes("after_not_enough")], ["change", 50, true]);
});

test("until the forecast is there, or where it fails, the rule stands and says which", () => {
  const known = facts([...RISING, ...water()]);
  const rule = today(known);
  const asked = ask_of(known, rule);
  const states = /** @type {const} */ ([
    ["working", "rule_working"],
    ["failed", "rule_failed"],
  ]);
  for (const [state, code] of states) {
    const advice = foretold(known, rule, asked, { state, answers: {}, problem: "why" });
    assert.deepEqual([advice.act, advice.litres, advice.from], [rule.act, rule.litres, undefined]);
    assert.equal(codes(advice).at(-1), code);
  }
});

test("a chance in plain words keeps its number", () => {
  assert.deepEqual([0, 0.004, 1 / 12, 0.2, 0.29, 0.4, 0.72, 0.94, 0.99].map(chance_said), [
    "under 1\u00a0%",
    "under 1\u00a0%",
    "about 1 in 12",
    "about 1 in 5",
    "about 1 in 3",
    "about 4 in 10",
    "about 7 in 10",
    "about 9 in 10",
    "over 95\u00a0%",
  ]);
});
