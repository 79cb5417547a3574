/**
 * What the trace says of each tank: how it was reached, in the order of time, the nearest tank first. Which tanks are
 * reached is checked by networkx (tests/outside).
 */
import assert from "node:assert/strict";
import { test } from "node:test";
import { shared_between, trace } from "../../pwa/advice/life/trace.js";
import { view } from "./fixtures.js";

const at = (/** @type {number} */ day) => `2026-05-0${day}T08:00:00.000Z`;
/** @param {string} id @param {number} day @param {string} from_tank @param {string} tank */
const water = (id, day, from_tank, tank) => view("water_change", { id, at: at(day), from_tank, tank });
/**
 * @param {string} id @param {number} day @param {string} tank @param {string} other_tank
 * @param {import("../../pwa/types/records.js").SharedToolFields["order"]} order
 */
const tool = (id, day, tank, other_tank, order) =>
  view("shared_tool", { id, at: at(day), tank, other_tank, order, tool: "net" });
const records = {
  water_changes: [water("w3", 3, "a", "b"), water("w1", 1, "a", "b"), water("w4", 4, "b", "c")],
  plantings: [],
  stock_changes: [],
  shared_tools: [tool("t2", 2, "a", "d", "here")],
};

test("all that was shared comes oldest first, and each tank with all that reached it", () => {
  const shared = shared_between(records);
  assert.deepEqual(
    shared.map(({ id }) => id),
    ["w1", "t2", "w3", "w4"],
  );
  const { to, from } = trace("a", shared, { now: Date.parse(at(9)), days: 30 });
  assert.deepEqual(
    to.map(({ tank, steps, by }) => [tank, steps, by.map(({ id }) => id)]),
    [
      ["b", 1, ["w1", "w3"]],
      ["d", 1, ["t2"]],
      ["c", 2, ["w4"]],
    ],
  );
  assert.deepEqual([to[0].at, from], [at(1), []]);
  const back = trace("c", shared, { now: Date.parse(at(9)), days: 30 }).from;
  assert.deepEqual(
    back.map(({ tank, steps, by, at: last }) => [tank, steps, by.map(({ id }) => id), last]),
    [
      ["b", 1, ["w4"], at(4)],
      ["a", 2, ["w1", "w3"], at(3)],
    ],
  );
});

test("the same moment comes always in the same order", () => {
  const twice = { ...records, water_changes: [water("w2", 1, "a", "c"), water("w1", 1, "a", "b")], shared_tools: [] };
  assert.deepEqual(
    shared_between(twice).map(({ id }) => id),
    ["w1", "w2"],
  );
});
