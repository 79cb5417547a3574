/** A round of many tanks: groups by place, and finding one by name or number. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { by_place, find_tanks } from "../../pwa/advice/many_tanks.js";
import { view } from "./fixtures.js";

const tanks = ["Reed pool", "Moss 3", "Stone stream", "Fern 13", "Lily", "Reed corner"].map((name, i) =>
  view("tank", { id: `tank-000${i}`, name, place: ["Left", "", "Right", "Left", " Right ", "Left"][i] }),
);
const found = (/** @type {string} */ words) => find_tanks(tanks, words).map(({ tank, number }) => [number, tank.name]);

test("the tanks of each place in walking order, those without one last", () =>
  assert.deepEqual(
    by_place(tanks).map(({ place, tanks: own }) => [place, own.map(({ name }) => name)]),
    [
      ["Left", ["Reed pool", "Fern 13", "Reed corner"]],
      ["Right", ["Stone stream", "Lily"]],
      ["", ["Moss 3"]],
    ],
  ));

test("a number found exactly comes first, then names that begin so, then names that hold it", () => {
  assert.deepEqual(found("3"), [
    [3, "Stone stream"],
    [2, "Moss 3"],
    [4, "Fern 13"],
  ]);
  assert.deepEqual(found(" REED"), [
    [1, "Reed pool"],
    [6, "Reed corner"],
  ]);
  assert.deepEqual([found(""), found("heron")], [[], []]);
});
