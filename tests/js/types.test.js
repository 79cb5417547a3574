/** The generated types are those of shared_schema as it is now. */
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { calculations_types, records_types } from "../types/generate.js";

const committed = (/** @type {string} */ name) =>
  readFileSync(new URL(`../../pwa/types/${name}`, import.meta.url), "utf8");
const STALE = "stale: run node tests/types/generate.js";

test("the types of records are generated from their kinds", () => {
  assert.ok(committed("records.d.ts") === records_types(), STALE);
});

test("the types of calculations are generated from their contracts", () => {
  assert.ok(committed("calculations.d.ts") === calculations_types(), STALE);
});
