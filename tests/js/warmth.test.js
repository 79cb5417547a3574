/** New water as warm as the tank's: which warmth counts, and the mixing rule of two waters by hand. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { tap_mix, warmth_of } from "../../pwa/advice/warmth.js";
import { InvalidInput, install } from "../../pwa/contracts.js";
import { view } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());

const now = Date.parse("2026-05-10T08:00:00.000Z");
const read = (/** @type {number} */ value, /** @type {string} */ at) =>
  view("reading", { parameter: "temperature", value, at });
const usual = (/** @type {number} */ temperature_c) => view("tank", { temperature_c });

test("a reading of the last two days counts, then the usual figure, then an older reading", () => {
  const fresh = read(24.5, "2026-05-09T08:00:00.000Z");
  const old = read(21, "2026-05-01T08:00:00.000Z");
  assert.deepEqual(warmth_of({ now, readings: [old, fresh], tank: usual(23) }), {
    celsius: 24.5,
    at: fresh.at,
  });
  assert.deepEqual(warmth_of({ now, readings: [old], tank: usual(23) }), { celsius: 23, at: null });
  const hours_ago = (/** @type {number} */ hours) => read(24.5, new Date(now - hours * 3_600_000).toISOString());
  assert.deepEqual(
    [47, 49].map((hours) => warmth_of({ now, readings: [hours_ago(hours)], tank: usual(23) })?.celsius),
    [24.5, 23],
  );
  assert.deepEqual(warmth_of({ now, readings: [old], tank: view("tank", {}) }), { celsius: 21, at: old.at });
  assert.equal(warmth_of({ now, readings: [], tank: view("tank", {}) }), null);
});

test("cold and hot by the lever rule: 40 L of 24 °C from 12 °C and 52 °C are 28 L and 12 L", () => {
  const { cold_l, hot_l, reached_c, met } = tap_mix(40, 24, { cold: 12, hot: 52 });
  for (const [found, expected] of [
    [cold_l, 28],
    [hot_l, 12],
    [reached_c, 24],
  ])
    assert.ok(Math.abs(found - expected) < 1e-6, `${found}`);
  assert.equal(met, true);
});

test("taps that are both too cold or too warm give the nearest, and that is said", () => {
  assert.deepEqual(
    [tap_mix(10, 25, { cold: 10, hot: 20 })].map(({ reached_c, met }) => [Math.round(reached_c * 1e6) / 1e6, met]),
    [[20, false]],
  );
  assert.deepEqual(
    [tap_mix(10, 20, { cold: 26, hot: 50 })].map(({ reached_c, met }) => [Math.round(reached_c * 1e6) / 1e6, met]),
    [[26, false]],
  );
  assert.equal(tap_mix(10, 24, { cold: 24.4, hot: 50 }).met, true);
});

test("impossible litres are refused in the contract's words", () =>
  assert.throws(() => tap_mix(0, 24, { cold: 12, hot: 52 }), InvalidInput));
