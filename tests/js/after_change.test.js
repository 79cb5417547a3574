/** The water after a change by the records: the calculation's own answer, or none where a figure is missing. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { after_change } from "../../pwa/advice/after_change.js";
import { as_nitrogen } from "../../pwa/advice/level.js";
import { today } from "../../pwa/advice/today.js";
import { run } from "../../pwa/contracts.js";
import { there } from "./fixtures.js";
import { read, tank } from "./situations.js";

/** @typedef {import("./fixtures.js").Some<import("./fixtures.js").Facts>} SomeFacts */

const READ = [read("total_ammonia", 8), read("ph", 6.2), read("temperature", 25), read("kh", 1)];
const SOURCE = { ...there(tank([]).source), ph: 8, kh_dkh: 14, temperature_c: 15, tan_mg_n_l: 0.1 };
const after = (readings = READ, /** @type {SomeFacts} */ more = {}) => {
  const facts = tank(readings, { source: SOURCE, ...more });
  return after_change(facts, today(facts), 0.25);
};

test("hard water into an acid tank full of ammonium: the calculation's figures, and its warning", () => {
  const { input, answer } = there(after());
  assert.deepEqual(input, {
    ph: 6.2,
    kh_dkh: 1,
    temperature_c: 25,
    tan_mg_n_l: as_nitrogen(READ[0]),
    source_ph: 8,
    source_kh_dkh: 14,
    source_temperature_c: 15,
    source_tan_mg_n_l: 0.1,
    fraction: 0.25,
  });
  assert.deepEqual(answer, run("water_after_change", input));
  assert.ok(answer.nh3_mg_n_l > answer.nh3_before_mg_n_l && answer.notes.length > 0);
});

test("the tank's own figures stand in for readings, and its warmth for the new water's", () => {
  const found = there(
    after([read("total_ammonia", 8)], {
      source: { ...SOURCE, temperature_c: undefined },
      tank: { ...tank([]).tank, kh_dkh: 4 },
    }),
  );
  assert.deepEqual(
    [found.input.ph, found.input.kh_dkh, found.input.temperature_c, found.input.source_temperature_c],
    [7.4, 4, 25, 25],
  );
});

test("nothing is said where pH or hardness is not known, or no water has such figures", () => {
  assert.equal(after(READ.slice(0, 3)), null, "no carbonate hardness");
  assert.equal(after(READ, { source: { ...SOURCE, ph: undefined } }), null);
  assert.equal(after(READ, { source: { ...SOURCE, kh_dkh: undefined } }), null);
  assert.equal(after(READ, { source: null }), null);
  assert.equal(after([READ[0], READ[2], READ[3]], { tank: { ...tank([]).tank, ph: undefined } }), null, "assumed pH");
  assert.equal(after([...READ.slice(0, 3), read("kh", 70)]), null, "more than the calculation takes");
});
