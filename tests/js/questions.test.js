/** What the belief is asked about a tank: until when, against which limits, how much water at most, how far ahead. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { ask_of } from "../../pwa/advice/forecast/questions.js";
import { today } from "../../pwa/advice/today.js";
import { planned_feed } from "../../pwa/advice/setup/setting_up_life.js";
import { check, contracts, install } from "../../pwa/contracts.js";
import { as_facts, view } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";
import { HOUR, NOW, ago, facts, read as read_at } from "./tank_facts.js";

install(shared_bundle());

/** @typedef {import("./tank_facts.js").Parameter} Parameter */
/** @typedef {import("../../pwa/types/views.js").Reading} Reading */

const TANK = view("tank", {
  id: "tank-one-1",
  water_l: 100,
  started_at: ago(100 * 24),
  temperature_c: 25,
  ph: 7,
  feed_g_day: 0.1,
  planting: "dense",
  seeded: "none",
});
/** @param {Parameter} parameter @param {number} hours ago @param {number} [value] */
const read = (parameter, hours, value = 0) => read_at(parameter, value, hours);
const both = (/** @type {number[]} */ ...hours) =>
  hours.flatMap((one) => [read("total_ammonia", one), read("nitrite", one)]);

function asked(/** @type {Reading[]} */ readings) {
  const known = facts(readings, { tank: TANK, source: { disinfectant: "none" }, label: null });
  const all = ask_of(known, today(known));
  /** @type {Record<string, any>} by label; each question has the input of its own calculation */
  const inputs = Object.fromEntries([...all.questions, ...all.further].map(({ label, input }) => [label, input]));
  return { ...all, inputs };
}
const until = (/** @type {Reading[]} */ readings) =>
  [asked(readings)].map(({ next_test_h, next_test_at }) => [next_test_h, (next_test_at - NOW) / HOUR])[0];

test("the next test comes a day after the last of ammonia or nitrite, in a settled tank a week after it", () => {
  assert.deepEqual(until(both(5)), [19, 19]);
  assert.deepEqual(until(both(5.5)), [19, 18.5], "the belief is asked by whole hours, the time is kept");
  assert.deepEqual(until([read("total_ammonia", 30), read("nitrite", 5)]), [19, 19]);
  assert.deepEqual(until([read("nitrite", 30), read("total_ammonia", 5)]), [19, 19]);
  assert.deepEqual(until(both(4, 100, 200, 300)), [164, 164]);
});

test("no sooner than in half a day, and within a day where it is overdue or none was ever made", () => {
  assert.deepEqual(until(both(20)), [12, 4]);
  assert.deepEqual(
    [until(both(24)), until(both(50)), until([])],
    [
      [24, 24],
      [24, 24],
      [24, 24],
    ],
  );
});

test("the change and the chances are asked for until that test, the fan for three days at the least", () => {
  const { inputs } = asked(both(5));
  assert.deepEqual([inputs.plan.next_test_h, inputs.next.horizon_h, inputs.ahead.horizon_h], [19, 19, 72]);
  assert.equal(asked(both(4, 100, 200, 300)).inputs.ahead.horizon_h, 164);
});

test("what the tank must be ready for is the food of its planned animals", () => {
  const planned_stock = [{ species: "Hyphessobrycon amandae", count: 10 }];
  const known = facts(both(5), { tank: { ...TANK, planned_stock }, source: { disinfectant: "none" }, label: null });
  /** @param {typeof known} of @returns {Record<string, unknown>} */
  const ahead = (of) => ({ ...ask_of(of, today(of)).further[0].input });
  assert.equal(ahead(known).planned_feed_g_day, planned_feed(known.tank, []));
  assert.ok(planned_feed(known.tank, []) > 0);
  assert.ok(!("planned_feed_g_day" in ahead(facts(both(5), { tank: TANK, source: null, label: null }))));
});

test("nitrate has its limit where it was read within sixty days", () => {
  const limit = (/** @type {number} */ hours) =>
    [asked([...both(5), read("nitrate", hours, 3)])].map(({ nitrate_known, limits }) => [
      nitrate_known,
      limits.nitrate_mg_n_l,
    ]);
  assert.deepEqual(
    [limit(59 * 24), limit(61 * 24)],
    [[[true, shared_bundle().tables.limits.limits.nitrate_mg_n_l.value]], [[false, 1000]]],
  );
});

test("half the water at the most, however much ammonia there is", () => {
  const most = (/** @type {Reading[]} */ readings) => asked(readings).inputs.plan.max_fraction;
  assert.deepEqual([most(both(5)), most([...both(29), read("total_ammonia", 5), read("nitrite", 5, 0.2)])], [0.5, 0.5]);
});

test("every question about a tank of any pH and temperature is one that its contract takes", () => {
  for (const ph of [3, 4, 4.5, 5, 6, 8, 10, 11]) {
    for (const temperature_c of [0, 2, 10, 25, 40, 45]) {
      const facts = as_facts({
        now: NOW,
        tank: { ...TANK, ph, temperature_c },
        readings: [],
        changes: [],
        doses: [],
        feedings: [],
        source: null,
        label: null,
      });
      const { questions, further } = ask_of(facts, today(facts));
      for (const { name, input } of [...questions, ...further])
        assert.ok(check(contracts()[name], input), `pH ${ph}, ${temperature_c} °C`);
    }
  }
});
