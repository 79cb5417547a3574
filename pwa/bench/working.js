/** The working, step by step: the contract's sentences with their figures, in the contract's own units. */
import { check, field_named } from "../contracts.js";
import { marks_of } from "../figures/number_text.js";
import { value_text } from "./result.js";

/** @import { Values } from "../contracts.js" */
/** @import { Contract, Item, OutputItem } from "../types/contract.js" */
/** @import { Manner } from "./result.js" */

/**
 * The steps whose figures all exist; a step about a field that plays no part is left out.
 * @param {Contract} spec @param {object} payload a valid input @param {object} answer of run()
 * @param {Manner} [manner] its system is not used: formulas hold in their own units
 * @returns {string[]}
 */
export function working_steps(spec, payload, answer, { marks = marks_of(), yes, no } = {}) {
  const manner = { marks, yes, no };
  /** @type {Values} */ const values = { ...check(spec, payload), ...answer };
  const specs = [...spec.inputs, ...spec.outputs];
  const steps = [];
  for (const template of spec.working) {
    const names = [...template.matchAll(/\{(\w+)\}/g)].map((found) => found[1]);
    if (names.some((name) => values[name] === undefined || values[name] === null)) continue;
    steps.push(
      template.replace(/\{(\w+)\}/g, (/** @type {string} */ _, /** @type {string} */ name) =>
        text_of(field_named(specs, name), values[name], manner),
      ),
    );
  }
  return steps;
}

/** @param {Item | OutputItem} spec @param {unknown} value @param {Manner} manner @returns {string} */
function text_of(spec, value, manner) {
  if (spec.type === "list")
    return /** @type {unknown[]} */ (value).map((entry) => text_of(spec.item, entry, manner)).join("; ");
  if (spec.type !== "object") return value_text(spec, value, manner);
  const values = /** @type {Values} */ (value);
  return spec.fields
    .filter((field) => values[field.name] !== undefined && values[field.name] !== null)
    .map((field) => `${field.label} ${text_of(field, values[field.name], manner)}`)
    .join(", ");
}
