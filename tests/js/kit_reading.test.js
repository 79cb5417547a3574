/** Between which values the water reads as a step of a kit. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { interval } from "../../pwa/calc/kit_reading.js";

test("a step reaches halfway to its neighbours; the lowest has no lower bound, the highest no upper one", () => {
  assert.deepEqual(
    [0, 2, 4].map((step) => interval(step, [0, 2, 4], 0.1, 0.1)),
    [
      [null, 1],
      [1, 3],
      [3, null],
    ],
  );
});
