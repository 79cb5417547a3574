/**
 * A refusal beside its field speaks in one unit, the one that the field is typed in, and names choices by their words.
 */
import assert from "node:assert/strict";
import { test } from "node:test";
import { wrong_words } from "../../pwa/bench/wrong_words.js";
import { InvalidInput, contracts, input_of, install, run_named } from "../../pwa/contracts.js";
import { there } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

const MARKS = { decimal: ".", group: "," };
install(shared_bundle());
const spec = (/** @type {string} */ name) => contracts().volume.inputs.find((one) => one.name === name);
/** @param {object} input @param {string} field */
const refused = (input, field) => {
  try {
    run_named("volume", input);
  } catch (no) {
    assert.ok(no instanceof InvalidInput);
    return there(no.errors.find((one) => one.field === field));
  }
  return assert.fail("it is refused");
};
const GLASS = { shape: "cuboid", measures: "inside", length_cm: 60, width_cm: 30 };

test("out of range in inches: no centimetres beside them", () => {
  const error = refused({ ...GLASS, height_cm: 0 }, "height_cm");
  assert.deepEqual(wrong_words(spec("height_cm"), error, "us", MARKS), {
    message: "must be from 0.3937 to 118.11 in",
    allowed: "0.3937 – 118.11 in",
  });
  assert.equal(wrong_words(spec("height_cm"), error, "metric", MARKS).message, "must be from 1 to 300 cm");
});

test("the refusal of a text that is no number keeps its words", () => {
  const error = refused({ ...GLASS, height_cm: "abc" }, "height_cm");
  assert.deepEqual(wrong_words(spec("height_cm"), error, "us", MARKS), {
    message: "must be a number",
    allowed: "0.3937 – 118.11 in",
  });
});

test("choices are named as the form names them", () => {
  const labels = input_of("volume", "shape")
    .choices.map((one) => one.label)
    .join(", ");
  assert.ok(labels.startsWith("rectangular, "));
  assert.deepEqual(wrong_words(spec("shape"), refused({}, "shape"), "metric", MARKS), {
    message: "is needed",
    allowed: labels,
  });
  const odd = wrong_words(spec("shape"), refused({ ...GLASS, height_cm: 40, shape: "cube" }, "shape"), "metric", MARKS);
  assert.deepEqual(odd, { message: `must be one of: ${labels}`, allowed: labels });
});

test("a refusal without a field of its own stays as it came", () => {
  assert.deepEqual(wrong_words(undefined, { message: "is needed", allowed: "text" }, "us", MARKS), {
    message: "is needed",
    allowed: "text",
  });
});

test("several refusals in one line, each by its label, not by the name of its field", async () => {
  globalThis.navigator ??= /** @type {any} */ ({ language: "en-GB" });
  const { refusal_said } = await import("../../pwa/ui/words/refusal_said.js");
  const no = new InvalidInput([
    refused({ ...GLASS, height_cm: 0 }, "height_cm"),
    { field: "odd", message: "is not a field here", allowed: "none" },
  ]);
  assert.match(
    refusal_said(no, contracts().volume.inputs),
    /^Height must be from 1 to 300 cm\. Allowed: .* odd is not a field here\. Allowed: none\.$/,
  );
});
