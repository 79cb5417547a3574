/** After a change, what was dosed for the whole tank goes in again in part; nothing else does. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { redose } from "../../pwa/advice/journal/redose.js";
import { install } from "../../pwa/contracts.js";
import { as_facts, some } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());

const NOW = Date.parse("2026-06-20T12:00:00.000Z");
const at = (/** @type {number} */ days) => new Date(NOW - days * 86_400_000).toISOString();

/** @typedef {import("../../pwa/types/advice.js").Label} Label */
/** @param {Partial<Label>} more */
const label = (more = {}) =>
  /** @type {Label} */ (
    some({ id: "salt", name: "Salt", use: "salt", amount: 10, unit: "g", per_l: 10, basis: "whole_tank", ...more })
  );
/** @param {number} days @param {Label} of */
const dosed = (days, of) => ({ at: at(days), label: of });
/** @param {ReturnType<typeof dosed>[]} doses @param {number} fraction */
const again = (doses, fraction = 0.25) =>
  redose(as_facts({ now: NOW, tank: { water_l: 80 }, doses }), fraction).map(({ label: of, amount, unit }) => [
    of.id,
    amount,
    unit,
  ]);

test("a quarter of the water takes a quarter of the dose with it: 80 g in 80 L, 20 g again", () => {
  assert.deepEqual(again([dosed(3, label())]), [["salt", 20, "g"]]);
});

test("each label once, by its last dose, for two weeks", () => {
  assert.deepEqual(again([dosed(9, label()), dosed(3, label())]), [["salt", 20, "g"]]);
  assert.deepEqual(again([dosed(14, label())]).length, 1);
  assert.deepEqual(again([dosed(14.1, label())]), []);
});

test("drops are whole", () => {
  const drops = label({ id: "drops", use: "other", amount: 1, unit: "drops", per_l: 10 });
  assert.deepEqual(again([dosed(1, drops)], 0.3), [["drops", 2, "drops"]]);
});

test("what is for new water, or is used up, does not go in again", () => {
  assert.deepEqual(again([dosed(1, label({ basis: "new_water" }))]), []);
  assert.deepEqual(again([dosed(1, label({ use: "fertiliser" }))]), []);
  assert.deepEqual(again([dosed(1, label({ use: "dechlorinator" }))]), []);
  assert.deepEqual(again([dosed(1, label())], 0), [], "no change, no dose");
});
