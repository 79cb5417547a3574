/** The phone's belief resumes from what was kept, also through a structured clone, without changing a digit. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { settings } from "../../pwa/calc/kinetics.js";
import { believed } from "../../pwa/calc/tank_events.js";
import { install, run_named } from "../../pwa/contracts.js";
import { outlook_of } from "../../pwa/calc/outlook.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());
/** @typedef {import("../../pwa/types/calculations.js").OutlookValues} OutlookValues */

const tank = /** @type {const} */ ({
  volume_l: 90,
  temperature_c: 23,
  ph: 7.1,
  feed_g_day: 0.3,
  planting: "light",
  seeded: "none",
});
/**
 * @param {number} day @param {"total_ammonia" | "nitrite"} parameter @param {number} value
 * @returns {NonNullable<OutlookValues["readings"]>[number]}
 */
const reading = (day, parameter, value) => ({
  at_h: 24 * day,
  parameter,
  value,
  basis: "ion",
  steps: [0, 0.25, 0.5, 1, 2, 4],
});
const days = (/** @type {number} */ n) =>
  Array.from({ length: n }, (_, d) => [reading(d + 1, "total_ammonia", 0.5), reading(d + 1, "nitrite", 1)]).flat();

test("a new reading is followed from the kept belief and gives the same answer", () => {
  const c = settings();
  const first = believed(c, { tank, now_h: 20 * 24, readings: days(20) });
  const kept = structuredClone(first.kept);
  const input = { tank, now_h: 21 * 24, readings: days(21) };
  const on = believed(c, input, kept);
  assert.equal(on.kept.applied.length, 42);
  assert.deepEqual(on.belief, believed(c, input).belief);
  assert.deepEqual(kept, first.kept, "what was kept is not altered by going on");
  const answer = run_named("outlook", input, (values) => outlook_of(c, believed(c, values, kept).belief, [], values));
  assert.deepEqual(answer, run_named("outlook", input));
});

test("another tank, or an altered or removed record, makes the belief start over", () => {
  const c = settings();
  const { kept } = believed(c, { tank, now_h: 240, readings: days(9) });
  for (const input of [
    { tank: { ...tank, ph: 7.5 }, now_h: 240, readings: days(9) },
    { tank, now_h: 240, readings: days(8) },
    { tank, now_h: 240, readings: [{ ...days(9)[0], value: 4 }, ...days(9).slice(1)] },
    { tank, now_h: 240, readings: days(9), seed: 2 },
  ])
    assert.deepEqual(believed(c, input, kept).belief, believed(c, input).belief);
});

test("without a new record the kept belief is answered as it is", () => {
  const c = settings();
  const { kept } = believed(c, { tank, now_h: 240, readings: days(9) });
  assert.equal(believed(c, { tank, now_h: 250, readings: days(9) }, kept).kept, kept);
});
