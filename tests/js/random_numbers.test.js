/**
 * The outlook's random numbers against the known answers of Threefry-2x32, 20 rounds: kat_vectors of the Random123
 * distribution (Salmon et al. 2011), from memory. tests/outside/test_threefry.py holds the server's to the same.
 */
import assert from "node:assert/strict";
import { test } from "node:test";
import { normals, threefry } from "../../pwa/calc/random_numbers.js";

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

/** The words of `count` counters. @param {[number, number]} key @param {[number, number]} counter */
function words(key, counter, count = 1) {
  const [first, second] = [new Uint32Array(count), new Uint32Array(count)];
  threefry(...key, ...counter, first, second);
  return [...first].map((word, i) => [word, second[i]]);
}

for (const [key, counter, answer] of KNOWN) {
  test(`Threefry of key ${key} and counter ${counter}`, () => {
    assert.deepEqual(words(key, counter), [answer]);
  });
}

test("many counters give what each of them gives", () => {
  assert.deepEqual(
    words([7, 0], [4294967294, 0], 3),
    [4294967294, 4294967295, 4294967296].map((low) => words([7, 0], [low, 0])[0]),
  );
});

test("normal draws are those of Box and Muller, whatever the angle", () => {
  const found = normals(3, 40, new Float64Array(2000));
  const unit = (/** @type {number} */ word) => (word + 0.5) / 2 ** 32;
  for (const [i, [first, second]] of words([3, 0], [40, 0], 1000).entries()) {
    const [radius, angle] = [Math.sqrt(-2 * Math.log(unit(first))), 2 * Math.PI * unit(second)];
    assert.ok(Math.abs(found[2 * i] - radius * Math.cos(angle)) < 1e-14);
    assert.ok(Math.abs(found[2 * i + 1] - radius * Math.sin(angle)) < 1e-14);
  }
});
