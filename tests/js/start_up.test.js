/** Twenty-one days lived by the advice: the table is up to date, no day is careless, no day pours too much water. */
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { TABLE, WATER_L, live, table_of } from "./start_up.js";

const lived = live();

test("the table is up to date (node tests/js/start_up.js writes it)", () => {
  assert.equal(readFileSync(TABLE, "utf-8"), table_of(lived));
});

test("no eight days take more than twice the tank, and no single change more than half of it", () => {
  for (let i = 0; i + 8 <= lived.length; i += 1) {
    const litres = lived.slice(i, i + 8).reduce((sum, day) => sum + day.litres, 0);
    assert.ok(litres <= 2 * WATER_L, `days ${i + 1} to ${i + 8}: ${litres.toFixed(0)} L`);
  }
  for (const { day, advice } of lived) assert.ok((advice.litres ?? 0) <= WATER_L / 2, `day ${day}`);
});

test("the page is never calmer than the readings", () => {
  for (const { day, advice } of lived)
    for (const parameter of /** @type {const} */ (["total_ammonia", "nitrite"])) {
      const { read_mg_n_l, limit_mg_n_l } = advice.levels[parameter];
      if ((read_mg_n_l ?? 0) > limit_mg_n_l) assert.notEqual(advice.state, "steady", `day ${day}`);
    }
});
