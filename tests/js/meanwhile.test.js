/** Until a new forecast is there, the last one stands with its age, unless the records say more. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { meanwhile } from "../../pwa/advice/meanwhile.js";
import { digest } from "../../pwa/figures/digest.js";
import { some } from "./fixtures.js";

const AT = Date.UTC(2026, 4, 4, 7);
const forecast = (/** @type {string} */ state, more = {}) =>
  some({ from: "forecast", state, act: "change", litres: 48, ...more });
const rule = (/** @type {string} */ state, more = {}) =>
  some({ state, act: "change", litres: 24, test_due: false, ...more });
const last = (/** @type {object} */ told, changed = "nothing") => some({ told, at: AT, changed });

test("the last forecast's litres stand, with their age, however alarmed the rule is", () => {
  const said = rule("act now");
  const { litres, as_of, state } = meanwhile(said, said, last(forecast("change today")));
  assert.deepEqual([litres, as_of, state], [48, AT, "change today"]);
});

test("the bare rule stands only where there was never a forecast", () => {
  const said = rule("watch");
  assert.equal(meanwhile(said, said, null), said);
});

test("a new test that asks for more is not hidden behind an older, calmer sentence", () => {
  const calm = forecast("steady", { act: "nothing", litres: undefined });
  const said = rule("act now");
  assert.equal(meanwhile(said, said, last(calm, "tests")), said);
  const more = rule("change today", { litres: 60 });
  assert.equal(meanwhile(more, more, last(forecast("change today"), "tests")), more, "of two changes, the larger");
});

test("a new test that asks for less waits for its forecast", () => {
  const said = rule("steady", { act: "nothing", litres: undefined });
  assert.equal(meanwhile(said, said, last(forecast("change today"), "tests")).litres, 48);
  const less = rule("change today", { litres: 24 });
  assert.equal(meanwhile(less, less, last(forecast("change today"), "tests")).litres, 48);
});

test("after a change of water, the litres that were asked for before it are spent", () => {
  const said = rule("watch", { act: "confirm", litres: undefined });
  assert.equal(meanwhile(said, said, last(forecast("act now"), "water")), said);
});

test("where a test has fallen due since, it is not left out", () => {
  const said = rule("watch", { act: "test", litres: undefined, test_due: true });
  const calm = forecast("steady", { act: "nothing", litres: undefined });
  assert.equal(meanwhile(said, said, last(calm)), said);
  assert.equal(meanwhile(said, said, last(forecast("change today"))).test_due, true);
});

test("a digest tells texts apart", () => {
  const texts = ["", "a", "b", "ab", "ba", "a".repeat(1000), `${"a".repeat(999)}b`, "\u0000", "1.1"];
  assert.equal(new Set(texts.map(digest)).size, texts.length);
  assert.equal(digest("ab"), digest("ab"));
});
