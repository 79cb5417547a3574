import assert from "node:assert/strict";
import { test } from "node:test";
import { reasons_above } from "../../pwa/advice/forecast/reasons_above.js";

/** @typedef {Parameters<typeof reasons_above>[0]} Told */

/** @param {string[]} findings @param {string[]} reasons */
const codes = (findings, reasons) =>
  reasons_above(
    /** @type {Told} */ (
      /** @type {unknown} */ ({
        findings: findings.map((code) => ({ code })),
        reasons: reasons.map((code) => ({ code })),
      })
    ),
  ).map(({ code }) => code);

test("above the charts stands what no chart says", () => {
  assert.deepEqual(codes(["water"], ["chance", "few", "kh_gone"]), ["few", "kh_gone"]);
});

test("hardness is said once where it leads the page", () => {
  assert.deepEqual(codes(["kh_ends"], ["kh_gone", "few"]), ["few"]);
  assert.deepEqual(codes(["water", "kh_ends"], ["kh_gone"]), ["kh_gone"]);
});
