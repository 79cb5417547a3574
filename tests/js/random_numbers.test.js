/**
 * The outlook's random numbers against the known answers of Threefry-2x32, 20 rounds: kat_vectors of the Random123
 * distribution (Salmon et al. 2011), from memory. tests/outside/test_threefry.py holds the server's to the same.
 */
import assert from "node:assert/strict";
import { test } from "node:test";
import { threefry } from "../../pwa/calc/random_numbers.js";

/** Key, counter, answer. @type {[[number, number], [number, number], [number, number]][]} */
const KNOWN = [
  [
    [0, 0],
    [0, 0],
    [0x6b200159, 0x99ba4efe],
  ],
  [
    [0xffffffff, 0xffffffff],
    [0xffffffff, 0xffffffff],
    [0x1cb996fc, 0xbb002be7],
  ],
  [
    [0x13198a2e, 0x03707344],
    [0x243f6a88, 0x85a308d3],
    [0xc4923a9c, 0x483df7a0],
  ],
];

for (const [key, counter, answer] of KNOWN) {
  test(`Threefry of key ${key} and counter ${counter}`, () => {
    assert.deepEqual(
      [...threefry(...key, ...counter)].map((word) => word >>> 0),
      answer,
    );
  });
}
