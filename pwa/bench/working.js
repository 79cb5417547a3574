/** The working, step by step: the contract's sentences with the figures put in, in the contract's own units. */
import { check } from "../contracts.js";
import { marks_of } from "../figures/number_text.js";
import { value_text } from "./result.js";

/**
 * Steps whose figures all exist; a step about a field that plays no part is left out.
 * @param {any} spec the contract @param {Record<string, any>} payload a valid input @param {any} answer of run()
 * @param {import("./result.js").Manner} [manner] its system is not used: formulas hold in their own units
 * @returns {string[]}
 */
export function working_steps(spec, payload, answer, { marks = marks_of(), yes, no } = {}) {
  const manner = { marks, yes, no };
  const values = { ...check(spec, payload), ...answer };
  /** @type {Map<string, any>} */
  const specs = new Map([...spec.inputs, ...spec.outputs].map((one) => [one.name, one]));
  const steps = [];
  for (const template of spec.working) {
    const names = [...template.matchAll(/\{(\w+)\}/g)].map((found) => found[1]);
    if (names.some((name) => values[name] === undefined || values[name] === null)) continue;
    steps.push(
      template.replace(/\{(\w+)\}/g, (/** @type {string} */ _, /** @type {string} */ name) =>
        text_of(specs.get(name), values[name], manner),
      ),
    );
  }
  return steps;
}

/** @param {any} spec @param {any} value @param {import("./result.js").Manner} manner @returns {string} */
function text_of(spec, value, manner) {
  if (Array.isArray(value)) return value.map((entry) => text_of(spec.item ?? {}, entry, manner)).join("; ");
  if (typeof value !== "object") return value_text(spec, value, manner);
  const fields = spec.fields ?? Object.keys(value).map((name) => ({ name, label: name }));
  return fields
    .filter((/** @type {any} */ field) => value[field.name] !== undefined && value[field.name] !== null)
    .map((/** @type {any} */ field) => `${field.label} ${text_of(field, value[field.name], manner)}`)
    .join(", ");
}
