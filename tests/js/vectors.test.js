/** The shared vectors, run by the phone's calculations. tests/test_vectors.py runs the same on the server's. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { InvalidInput, contracts, install, run_named } from "../../pwa/contracts.js";
import { there } from "./fixtures.js";
import { folder, shared_bundle } from "./shared_bundle.js";

install(shared_bundle());
const vectors = folder("vectors");

for (const [name, spec] of Object.entries(contracts())) {
  const { cases, count } = vectors[name];
  test(`${name}: the vector file holds as many cases as it says`, () => assert.equal(cases.length, count));
  for (const vector of [...there(spec).examples, ...cases]) {
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

/** Whether the answer has a value at a path such as plan.0.drops_s. */
function holds(got, path) {
  const steps = path.split(".");
  const last = steps.pop();
  return last in steps.reduce((part, step) => part[step], got);
}

/** Expected is a subset of got; numbers within the tolerance, all else equal. */
function agrees(got, expected, tolerance, path) {
  if (typeof expected === "number") {
    const room = (tolerance.absolute ?? 0) + (tolerance.relative ?? 0) * Math.abs(expected);
    assert.ok(Math.abs(got - expected) <= room, `${path}: ${got} is not ${expected} ± ${room}`);
  } else if (expected !== null && typeof expected === "object") {
    if (Array.isArray(expected)) assert.equal(got.length, expected.length, path);
    for (const key of Object.keys(expected)) agrees(got[key], expected[key], tolerance, `${path}.${key}`);
  } else assert.equal(got, expected, path);
}
