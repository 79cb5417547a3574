/** A month for paper, and a year looked back on, from records made for it. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { month_named, month_of, month_span } from "../../pwa/advice/journal/month.js";
import { counted_together, year_of, year_span } from "../../pwa/advice/journal/year.js";
import { install } from "../../pwa/contracts.js";
import { as_facts, near, some, there, view } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());

const YEAR = 2025;
/** @param {number} month 1 to 12 @param {number} day @param {number} [hour] */
const at = (month, day, hour = 9) => new Date(YEAR, month - 1, day, hour).toISOString();
let made = 0;
const id = () => `made-${String(++made).padStart(4, "0")}`;
/**
 * @param {string} when
 * @param {import("../../pwa/types/records.js").ReadingFields["parameter"]} parameter
 * @param {number} value
 * @param {Record<string, unknown>} [more]
 */
const read = (when, parameter, value, more = {}) =>
  view("reading", some({ kind: "reading", id: id(), tank: "tank-0001", at: when, parameter, value, ...more }));
/** @param {string} when @param {number} litres */
const changed = (when, litres) =>
  view("water_change", { kind: "water_change", id: id(), tank: "tank-0001", at: when, litres, fraction: litres / 40 });

test("a month: readings by day, the rest by day, sums; the neighbours' days are left out", () => {
  const lists = {
    reading: [
      read(at(4, 30, 23), "nitrite", 1),
      read(at(5, 1, 0), "nitrate", 10, { test: "test-0001" }),
      read(at(5, 1, 0), "nitrite", 0.25, { test: "test-0001" }),
      read(at(5, 1, 20), "nitrite", 0),
      read(at(5, 31, 23), "ph", 7),
      read(at(6, 1, 0), "ph", 8),
    ],
    water_change: [changed(at(5, 3), 10), changed(at(5, 3, 18), 6)],
    feeding: [view("feeding", { kind: "feeding", id: id(), tank: "tank-0001", at: at(5, 4), feed_g: 0.4 })],
    note: [view("note", { kind: "note", id: id(), tank: "tank-0002", at: at(5, 4), text: "elsewhere" })],
  };
  const room = some({
    all: (/** @type {keyof typeof lists} */ kind) => lists[kind] ?? [],
    get: () => null,
    earlier: () => [],
  });
  const told = month_of(room, "tank-0001", month_span(YEAR, 4));
  assert.deepEqual(told.parameters, ["nitrite", "nitrate", "ph"], "in the order of the trends");
  assert.deepEqual(
    told.tested.map(({ day, figures }) => [new Date(day).getDate(), (figures.nitrite ?? []).map(({ value }) => value)]),
    [
      [1, [0.25, 0]],
      [31, []],
    ],
  );
  assert.deepEqual(
    told.done.map(({ day, events }) => [new Date(day).getDate(), events.map(({ kind }) => kind)]),
    [
      [3, ["water_change", "water_change"]],
      [4, ["feeding"]],
    ],
  );
  assert.deepEqual(told.totals, { tests: 3, changes: 2, litres: 16, meals: 1, feed_g: 0.4, doses: 0 });
});

test("an address names a month, or the present one is meant", () => {
  const now = +new Date(2026, 10, 29);
  assert.deepEqual(month_named("2025-02", now), { year: 2025, month: 1 });
  for (const none of [null, "2025-13", "last"]) assert.deepEqual(month_named(none, now), { year: 2026, month: 10 });
});

/** A year with a bad week in March and a quiet summer. */
const a_year = () =>
  as_facts({
    now: +new Date(YEAR + 1, 1, 1),
    tank: { id: "tank-0001", name: "Pool", water_l: 40, ph: 7, temperature_c: 24 },
    source: null,
    readings: [
      read(new Date(YEAR - 1, 11, 31, 9).toISOString(), "nitrite", 5, { basis: "n" }),
      read(at(1, 10), "nitrite", 0, { basis: "n" }),
      read(at(1, 20), "nitrite", 0.02, { basis: "n" }),
      read(at(3, 1), "nitrite", 2, { basis: "n", test: "test-0301" }),
      read(at(3, 1), "nitrate", 4, { basis: "n", test: "test-0301" }),
      read(at(3, 4), "nitrite", 3.5, { basis: "n" }),
      read(at(4, 1), "nitrite", 0, { basis: "n" }),
      read(at(9, 30), "nitrate", 3, { basis: "n" }),
      read(at(10, 1), "temperature", 21.5),
      read(at(10, 2), "temperature", 26),
    ],
    changes: [changed(at(2, 1), 10), changed(at(3, 1), 30), changed(new Date(YEAR + 1, 0, 1, 0).toISOString(), 40)],
    doses: [{ at: at(2, 1), amount: 2, unit: "ml" }],
    feedings: [
      { at: at(2, 1), feed_g: 0.5 },
      { at: at(2, 2), feed_g: 0 },
    ],
    stock: [
      { at: at(1, 5), change: "arrival", count: 6 },
      { at: at(3, 2), change: "death", count: 2 },
      { at: at(6, 2), change: "birth", count: 9 },
      { at: at(6, 3), change: "move_out", count: 3 },
    ],
  });

test("a year: counts of what lies in it alone", () => {
  const { counts } = year_of(a_year(), year_span(YEAR));
  assert.deepEqual(counts, {
    ...{ changes: 2, litres: 40, refills: 1, tests: 8, readings: 9, meals: 1, feed_g: 0.5, doses: 1 },
    ...{ arrivals: 6, births: 9, deaths: 2, removals: 0 },
  });
  assert.equal(counted_together([counts, counts]).deaths, 4);
});

test("a year: the worst reading against its limit then, the longest time within limits", () => {
  const { worst, best, over } = year_of(a_year(), year_span(YEAR));
  const { reading, mg_n_l, limit_mg_n_l } = there(worst);
  assert.deepEqual([reading.at, mg_n_l], [at(3, 4), 3.5]);
  assert.ok(limit_mg_n_l > 0 && limit_mg_n_l < 2);
  assert.equal(over, 2, "tests, not readings");
  const calm = there(best);
  assert.deepEqual([new Date(calm.from).getMonth(), new Date(calm.to).getMonth(), calm.tests], [3, 8, 2]);
  near(calm.days, 182);
});

test("a year: the lowest and the highest of each parameter that was read", () => {
  const { extremes } = year_of(a_year(), year_span(YEAR));
  assert.deepEqual(
    extremes.map(({ parameter, low, high }) => [parameter, low.value, high.value]),
    [
      ["nitrite", 0, 3.5],
      ["nitrate", 3, 4],
      ["temperature", 21.5, 26],
    ],
  );
});

test("a year without records has nothing best or worst", () => {
  const { counts, extremes, worst, best, over } = year_of(a_year(), year_span(YEAR - 5));
  assert.deepEqual([extremes, worst, best, over], [[], null, null, 0]);
  assert.ok(Object.values(counts).every((count) => count === 0));
});
