/** When a tank will be ready and what it could carry, and what its charts show, from the contracts' own answers. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { chart_lines, lines_in, span } from "../../pwa/advice/forecast/chart_lines.js";
import { ready, headroom_by_week } from "../../pwa/advice/forecast/readiness.js";
import { install } from "../../pwa/contracts.js";
import { as_read } from "../../pwa/advice/level.js";
import { as_facts, some, there } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());

const HOUR = 3_600_000;
const START = Date.parse("2026-05-01T06:00:00.000Z");
const at = (/** @type {number} */ hours) => new Date(START + hours * HOUR).toISOString();

/** The same unit. @param {number} value */
const same = (value) => value;

test("a range of days, what lies behind, and what is not in sight", () => {
  const says = (/** @type {{ p10: number; p50?: number | null; p90?: number | null; } | null | undefined} */ settled) =>
    ready(settled, 100, START);
  assert.deepEqual(says({ p10: 150, p50: 200, p90: 300 }), {
    code: "between",
    from: START + 150 * HOUR,
    likely: START + 200 * HOUR,
    to: START + 300 * HOUR,
  });
  assert.deepEqual(
    [
      says({ p10: 100, p50: 200, p90: 300 }).code,
      says({ p10: 100, p50: 100, p90: 300 }).code,
      says({ p10: 100, p50: 100, p90: 100 }).code,
    ],
    ["soon", "likely", "now"],
  );
  const open_ended = (/** @type {number} */ p10, /** @type {number | null} */ p50) => says({ p10, p50, p90: null });
  assert.deepEqual(
    [open_ended(150, null), open_ended(90, null), says(null)],
    [{ code: "not_before", from: START + 150 * HOUR }, { code: "not_in_sight" }, { code: "not_in_sight" }],
    "no date that has passed is named",
  );
  assert.deepEqual(
    [open_ended(90, 100), open_ended(90, 200)],
    [{ code: "even_now" }, { code: "even", likely: START + 200 * HOUR }],
    "a middle is said where there is one",
  );
});

test("fish beyond today's are the feed beyond today's by the share they eat, never less than none", () => {
  const band = (/** @type {number} */ p10, /** @type {number} */ p50, /** @type {number} */ p90) => ({ p10, p50, p90 });
  const rooms = headroom_by_week(
    some({
      feed_g_day_now: band(0.1, 0.4, 1),
      feed_g_day_in_7_days: band(0.5, 1, 2),
      feed_g_day_in_14_days: band(1, 2, 3),
      feed_g_day_expected: 0.4,
    }),
  );
  // Fish eat about 1.2 % of their mass a day: 0.6 g of feed more is 50 g of fish.
  assert.deepEqual(
    Object.values(rooms[0].more_fish_g).map((grams) => Math.round(grams)),
    [0, 0, 50],
  );
  assert.deepEqual(
    rooms.map(({ days }) => days),
    [0, 7, 14],
  );
});

const facts = as_facts({
  feedings: [
    { at: at(99), feed_g: 0.3 },
    { at: at(120), feed_g: 0.3 },
  ],
  changes: [{ at: at(50), litres: 20 }],
});
/** @returns {import("./fixtures.js").Some<Asked["records"]["readings"][number]>} */
const reading = (
  /** @type {number} */ at_h,
  /** @type {number} */ value,
  parameter = /** @type {const} */ ("nitrite"),
) => ({
  at_h,
  parameter,
  value,
  basis: "n",
  steps: [0, 0.1, 0.4, 0.8],
});
/** @typedef {import("../../pwa/types/advice.js").Asked} Asked */
/** @type {Asked} */
const asked = some({
  start: START,
  nitrate_known: false,
  records: {
    now_h: 100,
    readings: [reading(98, 0.4), reading(20, 0), reading(60, 0.8), { at_h: 60, parameter: "ph", value: 7.2 }],
  },
});
/** @typedef {import("../../pwa/types/calculations.js").OutlookAnswer["series"][number]} Hour */
/** @type {Hour} */
const fan = some({
  at_h: 100,
  nitrite_mg_n_l: { p10: 0.1, p50: 0.2, p90: 0.9 },
  nitrate_mg_n_l: { p10: 0, p50: 1, p90: 9 },
});
const fans = /** @type {import("../../pwa/types/calculations.js").OutlookAnswer["series"]} */ ([fan]);
/** @type {import("../../pwa/types/advice.js").Limits} */
const limits = some({
  nitrite: { mg_n_l: 0.1, by: "working" },
  nitrate: { mg_n_l: 10, by: "working" },
  ph: { value: 7.2 },
});

test("a reading spans half the way to its kit's next steps, without a bound below the first and above the last", () => {
  const { dots, marks } = chart_lines(
    "nitrite",
    facts,
    asked,
    some({ series: fans, doubts: [{ parameter: "nitrite", at_h: 60 }] }),
    limits,
    14,
  );
  assert.deepEqual(
    dots.map(({ value, low, high, doubted }) => [value, low, high && Number(high.toFixed(3)), doubted]),
    [
      [0.4, 0.25, 0.6, false],
      [0, null, 0.05, false],
      [0.8, 0.6000000000000001, null, true],
    ],
  );
  assert.deepEqual(
    marks.map(({ kind, said }) => [kind, said]),
    [
      ["change", 20],
      ["feeding", 0.3],
    ],
    "what is still to come is no mark",
  );
});

test("a meter's figure spans its own error, never below nothing; a meter of pH has no bar", () => {
  /** @type {Asked} */
  const meter = some({
    ...asked,
    records: {
      now_h: 100,
      readings: [
        { at_h: 98, parameter: "nitrite", value: 0, basis: "n" },
        { at_h: 98, parameter: "ph", value: 7.2 },
      ],
    },
  });
  const [dot] = chart_lines("nitrite", facts, meter, undefined, limits, 14).dots;
  assert.ok(dot.low === 0 && there(dot.high) > 0 && there(dot.high) < 0.02);
  const [ph] = chart_lines("ph", facts, meter, undefined, limits, 14).dots;
  assert.deepEqual([ph.low, ph.high], [7.2, 7.2]);
  /** @type {Asked} */
  const strip = some({
    ...asked,
    records: { now_h: 100, readings: [{ at_h: 98, parameter: "ph", value: 7.2, steps: [6.4, 6.8, 7.2, 7.6] }] },
  });
  assert.deepEqual(
    chart_lines("ph", facts, strip, undefined, limits, 14).dots.map(({ low, high }) => [
      low?.toFixed(3),
      high?.toFixed(3),
    ]),
    [["7.000", "7.400"]],
  );
});

test("a chart draws its window only, limit and fan always fit, and nitrate that nobody tested has no fan", () => {
  const lines = chart_lines("nitrite", facts, asked, some({ series: fans, doubts: [] }), limits, 1);
  assert.equal(lines.dots.length, 1, "older readings lie outside");
  const drawn = lines_in(lines, same);
  assert.ok(span(drawn)[0] === 0 && span(drawn)[1] > 0.9);
  assert.deepEqual(chart_lines("nitrate", facts, asked, some({ series: fans, doubts: [] }), limits, 14).fan, []);
  const ph = chart_lines("ph", facts, asked, some({ series: fans, doubts: [] }), limits, 14);
  assert.deepEqual(
    [ph.limit, ph.fan, span(lines_in(ph, same)).map((edge) => Number(edge.toFixed(9)))],
    [null, [], [6.7, 7.7]],
  );
});

test("nitrite is drawn as its kit reads it: dots, fan, limit and axis alike", () => {
  const lines = chart_lines("nitrite", facts, asked, some({ series: fans, doubts: [] }), limits, 14);
  // Nitrite holds 14.007 / 46.005 of nitrogen (IUPAC 2021).
  const factor = 46.005 / 14.007;
  const drawn = lines_in(lines, as_read("nitrite", "ion"));
  const near = (/** @type {number | null} */ one, /** @type {number} */ other) =>
    assert.ok(Math.abs(there(one) / other - factor) < 0.001);
  near(drawn.dots[0].value, lines.dots[0].value);
  near(drawn.dots[0].high, there(lines.dots[0].high));
  near(drawn.fan[0].p90, lines.fan[0].p90);
  near(drawn.line, there(lines.limit).mg_n_l);
  near(span(drawn)[1], span(lines_in(lines, same))[1]);
  assert.deepEqual(lines_in(lines, as_read("nitrite", "n")).fan, lines.fan);
});

test("a temperature is drawn in the phone's unit, dots and axis alike", () => {
  /** @type {Asked} */
  const warm = some({
    ...asked,
    records: {
      now_h: 100,
      readings: [
        { at_h: 60, parameter: "temperature", value: 20 },
        { at_h: 98, parameter: "temperature", value: 25, steps: [20, 25, 30] },
      ],
    },
  });
  const lines = chart_lines("temperature", facts, warm, undefined, limits, 14);
  // 20 °C are 68 °F and 25 °C are 77 °F exactly (NIST SP 811).
  const shown = lines_in(lines, (celsius) => (celsius * 9) / 5 + 32);
  assert.deepEqual(
    shown.dots.map(({ value, low, high }) => [value, low, high]),
    [
      [68, 68, 68],
      [77, 72.5, 81.5],
    ],
  );
  const [bottom, top] = span(shown);
  assert.ok(bottom < 68 && bottom > 60 && top > 81.5 && top < 90);
  assert.deepEqual([shown.from, shown.to, shown.marks], [lines.from, lines.to, lines.marks]);
  const unbound = {
    ...lines,
    dots: [{ ...lines.dots[0], low: null, high: null }],
    fan: [{ at: 1, p10: 0, p50: 10, p90: 20 }],
  };
  assert.deepEqual(
    lines_in(unbound, (value) => value * 2),
    { ...unbound, dots: [{ ...unbound.dots[0], value: 40 }], fan: [{ at: 1, p10: 0, p50: 20, p90: 40 }], line: null },
  );
});
