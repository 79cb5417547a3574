/**
 * The away sheet of one tank: food, tests, the change by the tank's own litres and label, the tasks within the days.
 */
import assert from "node:assert/strict";
import { test } from "node:test";
import { install } from "../../pwa/contracts.js";
import { away_tank, in_round, sheet_now } from "../../pwa/advice/away.js";
import { occurrences } from "../../pwa/advice/tasks/recurrence.js";
import { as_facts, some, view } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());
const ms = (/** @type {string} */ iso) => Date.parse(iso);
const NOW = ms("2026-05-04T08:00:00Z");
const facts = as_facts({
  now: NOW,
  tank: { id: "tank-0001", name: "Reed pool", water_l: 81 },
  source: { disinfectant: "chlorine" },
  label: { amount: 2, unit: "ml", per_l: 10, basis: "new_water", name: "Tap safe" },
});
/** @typedef {import("../../pwa/types/advice.js").Advice} Advice */
/** @type {Advice} */
const advice = some({
  usual_test_hours: 168,
  next_test_hours: 168,
  test_due: false,
  levels: { total_ammonia: { reading: null }, nitrite: { reading: { at: "2026-05-02T08:00:00.000Z" } } },
  limits: { total_ammonia: { mg_n_l: 0.4 }, nitrite: { mg_n_l: 0.1 } },
});
const span = { from: ms("2026-05-08T00:00:00Z"), to: ms("2026-05-15T00:00:00Z"), feed_every_days: 2 };
const weekly = view("task", {
  id: "task-0001",
  title: "Wipe the glass",
  starts_at: "2026-05-02T08:00:00.000Z",
  rule: "FREQ=WEEKLY",
});
/**
 * @template T
 * @typedef {import("./fixtures.js").Some<T>} Some
 */
/** @param {{facts?: Some<import("./fixtures.js").Facts>, advice?: Some<Advice>, span?: Partial<typeof span>}} [more] */
const said = (more = {}, tasks = [weekly]) =>
  away_tank(
    some({
      facts: { ...facts, ...more.facts },
      advice: { ...advice, ...more.advice },
      meal: { feed_g: 0.3, from: "tank" },
    }),
    { ...span, ...more.span },
    tasks,
    [],
    occurrences,
  );

test("half the water by the bucket, with the dose of its own label", () => {
  const { change } = said();
  assert.equal(change.litres, 40);
  assert.equal(change.dose.amount, 8);
  assert.equal(said({ facts: { label: null } }).change.dose.missing, "label");
});

test("in the buckets of a phone that shows gallons", () => {
  const { change } = said({ facts: { water_unit: "US gal" } });
  assert.equal(
    Number((change.litres / 3.785411784).toFixed(6)),
    10.5,
    "half of 81 L, down to the next half gallon: never more than half",
  );
});

test("the next test falls when it is due, never before the sheet begins", () => {
  assert.equal(said().test.first, ms("2026-05-09T08:00:00Z"), "a week after the last of ammonia or nitrite");
  assert.equal(said({ advice: { test_due: true } }).test.first, span.from);
  assert.equal(
    said({ advice: { levels: { total_ammonia: { reading: null }, nitrite: { reading: null } } } }).test.first,
    span.from,
  );
  assert.deepEqual([said().test.every_days, said({ advice: { usual_test_hours: 24 } }).test.every_days], [7, 1]);
});

test("food as usual, every few days or none; tasks with their days", () => {
  assert.deepEqual(said().feed, { feed_g: 0.3, food: undefined, every_days: 2 });
  assert.equal(said({ span: { feed_every_days: 0 } }).feed, null);
  assert.deepEqual(
    said().tasks.map(({ task, days }) => [task.title, days]),
    [["Wipe the glass", [ms("2026-05-09T08:00:00Z")]]],
  );
  assert.deepEqual(said({ span: { to: ms("2026-05-08T12:00:00Z") } }).tasks, []);
});

test("the sheet in force is the first that is not over; the round shows it from two days before", () => {
  const sheet = (/** @type {string} */ from, /** @type {string} */ to) =>
    view("away_sheet", { from_at: `2026-05-${from}T12:00:00.000Z`, to_at: `2026-05-${to}T22:00:00.000Z` });
  const sheets = [sheet("20", "25"), sheet("01", "03"), sheet("06", "10")];
  assert.equal(sheet_now(sheets, NOW), sheets[2]);
  assert.equal(sheet_now([sheets[1]], NOW), null);
  assert.deepEqual(
    [in_round(sheets[2], NOW), in_round(sheets[2], NOW + 86_400_000), in_round(null, NOW)],
    [false, true, false],
  );
});
