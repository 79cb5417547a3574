/** The shared vectors, run by the phone's calculations. tests/test_vectors.py runs the same on the server's. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { InvalidInput, contracts, install, run_named } from "../../pwa/contracts.js";
import { there } from "./fixtures.js";
import { folder, shared_bundle } from "./shared_bundle.js";

install(shared_bundle());
/** @typedef {{absolute?: number, relative?: number}} Tolerance */
/**
 * @typedef {{id: string, why: string, input: Record<string, unknown>, errors?: object[], expected?: object,
 *   tolerance?: Tolerance, absent?: string[]}} Vector
 */
/** @type {Record<string, {count: number, cases: Vector[]}>} */ const vectors = folder("vectors");

for (const [name, spec] of Object.entries(contracts())) {
  const { cases, count } = vectors[name];
  test(`${name}: the vector file holds as many cases as it says`, () => assert.equal(cases.length, count));
  for (const vector of /** @type {Vector[]} */ ([...there(spec).examples, ...cases])) {
    test(`${vector.id}: ${vector.why}`, () => {
      if (vector.errors) {
        assert.throws(
          () => run_named(name, vector.input),
          (/** @type {unknown} */ error) => {
            assert.ok(error instanceof InvalidInput);
            assert.deepEqual(error.errors, vector.errors);
            return true;
          },
        );
      } else {
        const got = run_named(name, vector.input);
        agrees(got, vector.expected, vector.tolerance, vector.id);
        assert.deepEqual(
          (vector.absent ?? []).filter((path) => holds(got, path)),
          [],
        );
      }
    });
  }
}

/** Whether the answer has a value at a path such as plan.0.drops_s. @param {unknown} got @param {string} path */
function holds(got, path) {
  const steps = path.split(".");
  const last = there(steps.pop());
  return last in steps.reduce((part, step) => as_parts(part[step]), as_parts(got));
}

/** @param {unknown} value */
const as_parts = (value) => /** @type {Record<string, unknown>} */ (value);

/**
 * Expected is a subset of got; numbers within the tolerance, all else equal.
 * @param {unknown} got @param {unknown} expected @param {Tolerance | undefined} tolerance @param {string} path
 */
function agrees(got, expected, tolerance, path) {
  if (typeof expected === "number") {
    const margin = (tolerance?.absolute ?? 0) + (tolerance?.relative ?? 0) * Math.abs(expected);
    assert.ok(Math.abs(Number(got) - expected) <= margin, `${path}: ${got} is not ${expected} ± ${margin}`);
  } else if (expected !== null && typeof expected === "object") {
    if (Array.isArray(expected)) assert.equal(as_parts(got).length, expected.length, path);
    for (const [key, value] of Object.entries(expected)) agrees(as_parts(got)[key], value, tolerance, `${path}.${key}`);
  } else assert.equal(got, expected, path);
}
