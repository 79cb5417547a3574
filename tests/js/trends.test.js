/** Trends: readings as nitrogen, feed a day, water a week, in the keeper's own days. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { SPANS, TRENDS, in_brief, span, trend } from "../../pwa/advice/journal/trends.js";
import { install } from "../../pwa/contracts.js";
import { some } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());

const NOW = new Date(2026, 4, 20, 12).getTime();
const at = (/** @type {number} */ day, hour = 8, month = 4) => new Date(2026, month, day, hour).toISOString();
const facts = (more = {}) => ({ now: NOW, readings: [], changes: [], feedings: [], ...more });

test("readings of the span, the nitrogen three as nitrogen by the molar masses", () => {
  const readings = [
    { at: at(1), parameter: "nitrate", value: 50, basis: "ion" },
    { at: at(18), parameter: "nitrate", value: 20, basis: "ion" },
    { at: at(19), parameter: "nitrate", value: 3, basis: "n" },
    { at: at(19), parameter: "ph", value: 7.4 },
  ];
  const { points, bars, unit } = trend("nitrate", facts({ readings }), 7);
  assert.deepEqual([points.length, bars, unit], [2, false, "mg N/L"]);
  // Nitrate holds 14.007 / 62.004 of nitrogen (IUPAC 2021).
  assert.ok(Math.abs(points[0].value - (20 * 14.007) / 62.004) < 0.001);
  assert.equal(points[1].value, 3);
  assert.deepEqual(
    trend("ph", facts({ readings }), 30).points.map(({ value }) => value),
    [7.4],
  );
});

test("hardness in degrees, whatever scale the kit prints; a scale nobody knows is left out", () => {
  /** @param {number} day @param {string} parameter @param {number} value @param {string} [unit] */
  const read = (day, parameter, value, unit) => ({ at: at(day), parameter, value, unit });
  // 17.8 mg/L as CaCO3 and 1.78 °fH are 1 °dH, 1 mmol/L of calcium 5.6 °dH (molar masses of IUPAC).
  const readings = [
    read(16, "kh", 6, "°dKH"),
    read(17, "kh", 89.2, "mg/L CaCO₃"),
    read(18, "kh", 4),
    read(19, "kh", 7, "spoons"),
    read(17, "gh", 1, "mmol/L"),
    read(18, "gh", 17.85, "°fH"),
  ];
  const drawn = (/** @type {Parameters<typeof trend>[0]} */ what) =>
    trend(what, facts({ readings }), 7).points.map(({ value }) => Number(value.toFixed(1)));
  assert.deepEqual(
    [drawn("kh"), drawn("gh"), trend("gh", facts({ readings }), 7).unit],
    [[6, 5, 4], [5.6, 10], "°dGH"],
  );
});

test("meals are summed by day; a day with no meal written down is left out", () => {
  const feedings = [
    { at: at(13, 19), feed_g: 5 },
    { at: at(14, 7), feed_g: 0.1 },
    { at: at(17, 7), feed_g: 0.2 },
    { at: at(17, 19), feed_g: 0.3 },
    { at: at(19, 7), feed_g: 0 },
  ];
  const { points, step } = trend("feed", facts({ feedings }), 7);
  assert.deepEqual(
    points.map(({ at: day, value }) => [new Date(day).getDate(), value]),
    [
      [14, 0.1],
      [17, 0.5],
      [19, 0],
    ],
    "seven days with today's",
  );
  assert.ok(
    points.every(
      ({ at: day }) =>
        new Date(day).getHours() +
          new Date(day).getMinutes() +
          new Date(day).getSeconds() +
          new Date(day).getMilliseconds() ===
        0,
    ),
  );
  assert.equal(step, 86_400_000);
});

test("changes are summed by ISO 8601 weeks, weeks without one count zero, also when the clocks change", () => {
  const changes = [
    { at: at(20, 9, 2), litres: 20 },
    { at: at(21, 9, 2), litres: 5 },
    { at: at(7, 9, 3), litres: 30 },
  ];
  const { points } = trend("changed", { ...facts({ changes }), now: new Date(2026, 3, 15).getTime() }, 90);
  assert.deepEqual(
    points.map(({ at: day, value }) => [new Date(day).getDay(), new Date(day).getHours(), value]),
    [
      [1, 0, 25],
      [1, 0, 0],
      [1, 0, 0],
      [1, 0, 30],
      [1, 0, 0],
    ],
  );
  assert.deepEqual(trend("changed", facts(), 90).points, []);
});

test("marks show when water was changed; the chart of the changes needs none", () => {
  const changes = [{ at: at(18), litres: 20 }];
  assert.deepEqual(trend("ph", facts({ changes }), 7).marks, [Date.parse(at(18))]);
  assert.deepEqual(trend("changed", facts({ changes }), 7).marks, []);
});

test("a trend in brief, and the span to draw", () => {
  const points = [1, 3, 2].map((value, i) => ({ at: i, value }));
  assert.deepEqual(in_brief(some({ points })), { count: 3, last: points[2], low: 1, high: 3, mean: 2 });
  assert.equal(in_brief(some({ points: [] })), null);
  assert.deepEqual(span(some({ what: "feed", points })), [0, 3 * 1.12]);
  assert.deepEqual(span(some({ what: "ph", points: [{ value: 7 }, { value: 7 }] })), [6.5, 7.5]);
  assert.deepEqual(span(some({ what: "nitrite", points: [{ value: 0 }] })), [0, 1]);
  assert.deepEqual([SPANS.length, Object.keys(TRENDS).length], [4, 9]);
});
