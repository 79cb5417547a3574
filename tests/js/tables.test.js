/** The tables that the calculations read: those installed last, and none that is missing. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { constants, install, table } from "../../pwa/calc/tables.js";
import { some } from "./fixtures.js";

const group = (/** @type {number} */ value) => ({ groups: { shown: { values: { half_life_h: { value } } } } });

test("figures come from the tables that were installed last", () => {
  for (const value of [4, 5]) {
    install(some({ constants: group(value) }));
    assert.equal(constants("shown").half_life_h, value);
  }
});

test("a table that is not installed is named", () => {
  install(some({}));
  assert.throws(() => table("species"), /table species is not installed/);
});
