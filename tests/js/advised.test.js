/**
 * The more careful of rule and forecast: beside a forecast that is calm, doubts or asks for a change, and in a tank
 * without animals.
 */
import assert from "node:assert/strict";
import { test } from "node:test";
import { advised } from "../../pwa/advice/advised.js";
import { ask_of } from "../../pwa/advice/forecast/questions.js";
import { today } from "../../pwa/advice/today.js";
import { reasons_of, some, there, view } from "./fixtures.js";
import { NOW, ago, tank } from "./situations.js";

/** @typedef {import("./fixtures.js").Some<import("./fixtures.js").Facts>} SomeFacts */
/** @typedef {import("../../pwa/types/views.js").Reading} Reading */

let made = 0;
/** A reading as nitrogen. @param {Reading["parameter"]} parameter @param {number} value @param {number} hours ago */
const read = (parameter, value, hours = 1) =>
  view("reading", { id: `n-${++made}`, at: ago(hours), parameter, value, basis: "n" });
/** One a day, the last an hour ago. @param {"total_ammonia" | "nitrite"} parameter @param {number[]} values */
const daily = (parameter, ...values) =>
  values.map((value, i) => read(parameter, value, (values.length - 1 - i) * 24 + 1));
const WATER = [
  view("reading", { id: "ph", at: ago(1), parameter: "ph", value: 7 }),
  view("reading", { id: "c", at: ago(1), parameter: "temperature", value: 25 }),
];
const band = (/** @type {number} */ p50) => ({ p10: p50, p50, p90: p50 });

/**
 * The advice beside a forecast of that plan; it is calm unless the test says otherwise.
 * @param {Reading[]} readings
 * @param {{plan?: object, pass_chance?: object, state?: "ready" | "working"}} [forecast]
 * @param {SomeFacts} [more]
 */
function told(readings, { plan = {}, pass_chance = {}, state = "ready" } = {}, more = {}) {
  const known = tank([...WATER, ...readings], more);
  const rule = today(known);
  const asked = ask_of(known, rule);
  const none = band(0);
  const answers = {
    plan: {
      fraction: 0,
      enough: true,
      advice: /** @type {const} */ (["no_change"]),
      pass_chance: 0.01,
      several: null,
      cause: null,
      doubts: [],
      notes: [],
      peak: { nh3_mg_n_l: none, nitrite_mg_n_l: none, nitrate_mg_n_l: none },
      ...plan,
    },
    next: {
      series: [{ at_h: asked.records.now_h, nh3_mg_n_l: none, nitrite_mg_n_l: none, nitrate_mg_n_l: none }],
      now: { total_ammonia_mg_n_l: none, nitrite_mg_n_l: none, nitrate_mg_n_l: none },
      pass_chance: { nh3: 0, nitrite: 0, nitrate: 0, ...pass_chance },
    },
  };
  return { rule, advice: advised(known, rule, asked, { state, answers: state === "ready" ? some(answers) : {} }) };
}
const said = (/** @type {ReturnType<typeof told>} */ { advice }) => [advice.state, advice.act, advice.from];
const LIMIT = 0.1;
const zeros = daily("total_ammonia", 0, 0, 0);

test("the rule stands where there is no forecast, and a calm forecast where the readings are calm too", () => {
  assert.deepEqual(said(told([...zeros, ...daily("nitrite", 0, 0, 0)], { state: "working" })), [
    "steady",
    "nothing",
    undefined,
  ]);
  assert.deepEqual(said(told([...zeros, ...daily("nitrite", 0, 0, 0)])), ["steady", "nothing", "forecast"]);
});

test("a reading over its limit asks for a change, whatever the forecast says; one at its limit does not", () => {
  const { advice, rule } = told([...zeros, ...daily("nitrite", 0.15, 0.15, 0.15)]);
  assert.deepEqual([advice.state, advice.act, advice.litres], [rule.state, "change", rule.litres]);
  assert.deepEqual(
    advice.reasons
      .map(({ code }) => code)
      .filter((code) => code === "over" || code === "reading_leads" || code === "forecast"),
    ["over", "reading_leads", "forecast"],
  );
  assert.ok(!advice.reasons.some(({ code }) => code === "rule"));
  assert.deepEqual(said(told([...zeros, ...daily("nitrite", LIMIT, LIMIT, LIMIT)])), ["watch", "nothing", "forecast"]);
});

test("over its limit but changed since: the forecast stands until the next test", () => {
  const changed = { label: null, changes: [{ id: "c", at: ago(0.5), litres: 40, fraction: 0.4 }] };
  const { advice } = told([...zeros, ...daily("nitrite", 0.12, 0.12, 0.12)], {}, changed);
  assert.deepEqual([advice.state, advice.from], ["watch", "forecast"]);
  const still = told([...zeros, ...daily("nitrite", 0.2, 0.15, 0.19)], {}, changed).advice;
  assert.deepEqual([still.state, still.act, still.from], ["watch", "nothing", "forecast"], "perhaps still over it");
});

test("three tests that rise, each over the one before, past the limit by the next one", () => {
  const nitrite = (/** @type {number[]} */ ...values) => told([...zeros, ...daily("nitrite", ...values)]);
  assert.equal(nitrite(0.02, 0.05, 0.08).advice.act, "change", "0.11 tomorrow");
  assert.equal(nitrite(0.02, 0.04, 0.06).advice.act, "nothing", "0.08 tomorrow");
  assert.equal(nitrite(0.02, 0.08, 0.08).advice.act, "nothing", "no rise to the last");
  assert.equal(nitrite(0.05, 0.08).advice.act, "nothing", "two tests");
  const old = [read("nitrite", 0.0, 9 * 24), read("nitrite", 0.05, 25), read("nitrite", 0.08, 1)];
  assert.equal(told([...zeros, ...old]).advice.act, "nothing", "the first is nine days old");
  const others = [read("total_ammonia", 0.01, 49), read("nitrite", 0.05, 25), read("nitrite", 0.08, 1)];
  assert.equal(told(others).advice.act, "nothing", "each parameter by itself");
});

test("a level is watched from a quarter of its limit on", () => {
  const state = (/** @type {number} */ value) =>
    told([...zeros, ...daily("nitrite", value, value, value)]).advice.state;
  assert.deepEqual([state(0.25 * LIMIT), state(0.26 * LIMIT)], ["steady", "watch"]);
});

test("a change that the forecast asks for keeps the forecast's litres and reasons", () => {
  const plan = { fraction: 0.3, advice: [] };
  const { advice } = told([...zeros, ...daily("nitrite", 0.15, 0.15, 0.15)], { plan, pass_chance: { nitrite: 0.5 } });
  assert.deepEqual([advice.litres, advice.from], [30, "forecast"]);
  assert.equal(reasons_of(advice, "reading_leads").length, 0);
});

test("a doubted reading is read again first, with the rule's litres; a doubt about nitrate does not wait for", () => {
  const doubt = (/** @type {string} */ parameter, value = 0.4) => ({
    plan: {
      doubts: [
        { parameter, at_h: tank([]).now, value_mg_n_l: value, expected_p10_mg_n_l: 0, expected_p90_mg_n_l: 0.1 },
      ],
    },
  });
  const high = [...zeros, ...daily("nitrite", 0.15, 0.15, 0.4)];
  const nitrite = told(high, doubt("nitrite"));
  assert.deepEqual(
    [nitrite.advice.act, nitrite.advice.state, nitrite.advice.litres],
    ["retest", nitrite.rule.state, nitrite.rule.litres],
  );
  assert.ok(there(nitrite.rule.litres) > 0);
  const nitrate = told(high, doubt("nitrate", 30));
  assert.deepEqual([nitrate.advice.act, nitrate.advice.litres], ["change", nitrate.rule.litres]);
});

const NOBODY = { stock: [], tank: { ...there(tank([]).tank), feed_g_day: 0 } };

test("without animals no change is asked for, and the tank is steady only once both tests read zero", () => {
  const alone = (/** @type {number} */ ammonia, /** @type {number} */ nitrite, hours = 1) =>
    told([read("total_ammonia", ammonia, hours), read("nitrite", nitrite, hours)], {}, NOBODY).advice;
  assert.deepEqual([alone(0, 0).state, alone(0, 0).act], ["steady", "nothing"]);
  assert.deepEqual([alone(0, 0.5).state, alone(0, 0.5).act, alone(0, 0.5).litres], ["watch", "nothing", undefined]);
  assert.deepEqual([alone(2, 0).state, alone(2, 0).act], ["watch", "nothing"]);
  assert.deepEqual([alone(0, 0, 60).state, alone(0, 0, 60).act], ["watch", "test"]);
  assert.equal(told([], {}, NOBODY).advice.act, "test");
  assert.equal(alone(0, 0).reasons[0].code, "no_animals");
  assert.deepEqual(alone(0, 0.5).instead, []);
});

test("without animals, ammonia that slows the bacteria is changed down to 2 mg N/L", () => {
  const strong = (/** @type {number} */ ammonia) =>
    told([read("total_ammonia", ammonia), read("nitrite", 0)], {}, NOBODY).advice;
  assert.deepEqual([strong(4).act, strong(4.1).act, strong(4.1).state], ["nothing", "change", "change today"]);
  const { exact_litres, litres, fraction, dose } = strong(4.1);
  // From 4.1 to 2 mg N/L: 1 - 2 / 4.1 of 100 L is over half, so half.
  assert.deepEqual([exact_litres, litres, fraction, dose?.amount], [50, 50, 0.5, 6.25]);
  assert.ok(NOW > 0);
});
