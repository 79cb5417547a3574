/** One tank's records out of all: by time, found once for as long as the room answers the same array. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { of_tank } from "../../pwa/advice/of_tank.js";

const fed = (/** @type {string} */ id, /** @type {string} */ tank, /** @type {string} */ at) => ({ id, tank, at });
const ALL = [
  fed("c", "one", "2026-05-03"),
  fed("a", "one", "2026-05-01"),
  fed("x", "two", "2026-05-02"),
  fed("b", "one", "2026-05-01"),
];

test("a tank's records, oldest first, and those of one moment in the order they came", () => {
  assert.deepEqual(
    of_tank(ALL, "one").map(({ id }) => id),
    ["a", "b", "c"],
  );
  assert.deepEqual(
    of_tank(ALL, "two").map(({ id }) => id),
    ["x"],
  );
  assert.deepEqual(of_tank(ALL, "none"), []);
  assert.deepEqual(
    ALL.map(({ id }) => id),
    ["c", "a", "x", "b"],
    "the room's own array is left as it is",
  );
});

test("they are sorted once, and again when the room answers another array", () => {
  assert.equal(of_tank(ALL, "one"), of_tank(ALL, "one"));
  const more = [...ALL, fed("d", "one", "2026-05-02")];
  assert.deepEqual(
    of_tank(more, "one").map(({ id }) => id),
    ["a", "b", "d", "c"],
  );
});

test("no caller can alter the array that all share", () => {
  assert.throws(() => /** @type {unknown[]} */ (of_tank(ALL, "one")).sort(), TypeError);
  assert.throws(() => /** @type {unknown[]} */ (of_tank(ALL, "none")).push({}), TypeError);
});
