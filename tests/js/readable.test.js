/** What a reading can be: a point left out or a key hit twice is refused before it is saved. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { litres_refused, litres_spec } from "../../pwa/advice/litres.js";
import { figure_spec, no_figure } from "../../pwa/advice/readable.js";
import { install } from "../../pwa/contracts.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());

/** @param {string} parameter @param {number} value @param {string} [unit] */
const said = (parameter, value, unit) => no_figure(figure_spec({ parameter, unit }, parameter), value)?.message ?? null;

test("a pH of 72 and water at 250 °C are refused, and the error says what is allowed", () => {
  assert.deepEqual([said("ph", 72), said("temperature", 250)], ["must be from 0 to 14", "must be from 0 to 50 °C"]);
  assert.deepEqual([said("ph", 0), said("ph", 14), said("ph", 14.01)], [null, null, "must be from 0 to 14"]);
});

test("sour, hot or dirty water is recorded as it is", () => {
  assert.deepEqual(
    [said("ph", 3.9), said("temperature", 39), said("total_ammonia", 60, "mg/L"), said("kh", 300, "mg/L")],
    [null, null, null, null],
  );
  assert.equal(said("nitrate", 20_000, "mg/L"), "must be from 0 to 10000 mg/L");
  assert.equal(said("conductivity", -1, "µS/cm"), "must be from 0 to 100000 µS/cm");
});

test("a change of more than the tank holds is refused, and the field says how much it holds", () => {
  const tank = { water_l: 40 };
  assert.equal(litres_refused(tank, 40), null);
  assert.equal(litres_refused(tank, 41)?.message, "is more than the water in the tank");
  assert.deepEqual([litres_spec(tank, "Litres").max, litres_spec(tank, "Litres").unit], [40, "L"]);
});
