/** The state of the house: what `node tests/house.js` counts, where a figure must not grow. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { LONGEST, WIDEST, anys, long_functions, wide_lines } from "../house.js";

/** Uses of the type `any` in the phone's code. */
const MOST_ANYS = 35;
/** Functions that are still longer; each that becomes short leaves the list. @type {string[]} */
const STILL_LONG = [];

test(`no line of hand-written JavaScript is over ${WIDEST} columns`, () => {
  assert.deepEqual(wide_lines(), []);
});

test(`no other function of the phone's code is over ${LONGEST} lines`, () => {
  assert.deepEqual(
    long_functions()
      .map(({ name }) => name)
      .toSorted(),
    STILL_LONG,
  );
});

test(`the phone's code says "any" at most ${MOST_ANYS} times`, () => {
  const count = anys().reduce((sum, [, of_file]) => sum + of_file, 0);
  assert.ok(count <= MOST_ANYS, `${count} times: node tests/house.js . --all tells where`);
});
