/** The round: on to the next tank that wants something, and over again after the last. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { next_stop, wants } from "../../pwa/advice/next_stop.js";
import { as_facts } from "./fixtures.js";

const tanks = ["a", "b", "c", "d"].map((id) => ({ id }));
const from = (/** @type {string} */ id, /** @type {string[]} */ ...wanting) =>
  next_stop(tanks, id, (tank) => wanting.includes(tank.id))?.id ?? null;

test("the next tank that wants something, past those that do not, and over again after the last", () => {
  assert.equal(from("a", "c", "d"), "c");
  assert.equal(from("c", "a", "b"), "a");
  assert.equal(from("d", "b"), "b");
  assert.equal(from("b", "a", "d"), "d", "onwards before round again");
});

test("no next tank while this one wants something, when no other does, or from a tank put away", () => {
  assert.equal(from("a", "a", "b"), null);
  assert.equal(from("a"), null);
  assert.equal(from("away", "b"), null);
});

test("what counts as wanting something", () => {
  const now = Date.parse("2026-05-04T18:00:00.000Z");
  const at = (/** @type {string} */ time) => [{ at: `2026-05-04T${time}:00.000Z` }];
  const facts = as_facts({ now, readings: at("07:00"), changes: [] });
  /** @param {import("../../pwa/types/advice.js").Advice["act"]} act */
  const asks = (act, more = {}, test_due = false, tasks = 0) =>
    wants({ act, test_due, findings: [] }, tasks, { ...facts, ...more });
  assert.deepEqual(
    /** @type {const} */ (["nothing", "test", "change", "hold", "confirm", "retest"]).map((act) => asks(act)),
    [false, true, true, false, false, true],
  );
  assert.equal(asks("nothing", {}, true), true);
  assert.equal(asks("nothing", {}, false, 1), true);
  assert.equal(asks("change", { readings: at("17:30"), changes: at("17:40") }), false, "just changed");
  assert.equal(
    asks("change", { readings: at("07:00"), changes: [...at("08:00"), ...at("17:40")] }),
    false,
    "the last change counts",
  );
  assert.equal(
    asks("change", { readings: at("17:50"), changes: at("17:40") }),
    true,
    "a test after the change asks again",
  );
  assert.equal(asks("change", { readings: at("07:00"), changes: at("08:00") }), true, "hours ago");
  assert.deepEqual(
    ["15:00", "14:59"].map((time) => asks("test", { readings: [...at("07:00"), ...at(time)] })),
    [false, true],
    "three hours, by the last one",
  );
  assert.equal(asks("test", { readings: at("17:30"), changes: at("17:40") }), false, "the change shows in a while");
  assert.equal(
    wants({ act: "test", test_due: true, findings: [] }, 0, { now, readings: [], changes: [] }),
    true,
    "never tested",
  );
});
