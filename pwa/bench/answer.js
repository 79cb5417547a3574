/** What the calculation says to a form: the answer, or which fields are still needed and which are wrong and why. */
import { InvalidInput, check, run } from "../contracts.js";
import { nodeAt } from "./draft.js";
import { formOf, payloadOf } from "./form.js";
import { partsOf, withParts } from "./refusal_parts.js";

/** @typedef {import("../contracts.js").FieldError} FieldError */
/**
 * @typedef {{answer: any, payload: Record<string, any>} | {needed: string[], wrong: FieldError[], payload: Record<string, any>}} Outcome
 * `needed` labels of fields left empty; `wrong` errors in the API's words, field names read out as labels
 */

/** @param {any} spec the contract @param {import("./form.js").Filling} filling @returns {Outcome} */
export function answerOf(spec, filling) {
  const payload = payloadOf(spec, filling);
  const found = foundOf(spec.name, payload);
  return "answer" in found ? { answer: found.answer, payload } : refusedOf(spec, filling, payload, found.errors);
}

/**
 * What can be said before anything is calculated: the input to ask with, or what is still needed or wrong.
 * @param {any} spec the contract @param {import("./form.js").Filling} filling @returns {Exclude<Outcome, {answer: any}> | {payload: Record<string, any>}}
 */
export function checkedOf(spec, filling) {
  const payload = payloadOf(spec, filling);
  try {
    check(spec, payload);
    return { payload };
  } catch (no) {
    if (!(no instanceof InvalidInput)) throw no;
    return refusedOf(spec, filling, payload, no.errors);
  }
}

/** The answer, or the errors, as a worker tells them too. @param {string} name @param {unknown} payload @returns {{answer: any} | {errors: FieldError[]}} */
export function foundOf(name, payload) {
  try {
    return { answer: run(name, payload) };
  } catch (no) {
    if (!(no instanceof InvalidInput)) throw no;
    return { errors: no.errors };
  }
}

/**
 * Errors as the form says them.
 * @param {any} spec @param {import("./form.js").Filling} filling @param {Record<string, any>} payload @param {FieldError[]} errors
 */
export function refusedOf(spec, filling, payload, errors) {
  const needed = errors.map((error) => emptyOf(spec, filling, error));
  return {
    payload,
    needed: [...new Set(needed.flat())],
    wrong: errors
      .filter((_, index) => needed[index].length === 0)
      .map((error) => ({ ...error, message: readOut(spec, error.message) })),
  };
}

/**
 * Labels of the fields whose emptiness is the error, or [] if something typed is wrong. A calculation's own
 * refusal is said in full, but not to a form that nobody has touched.
 * @param {any} spec @param {import("./form.js").Filling} filling @param {FieldError} error @returns {string[]}
 */
function emptyOf(spec, filling, error) {
  const untouched = Object.keys(filling.draft.typed ?? {}).length === 0;
  if (!untouched && Object.values(spec.refusals).some((words) => words.message === error.message)) return [];
  const between = betweenFields(error.message);
  const asked = new Set(formOf(spec, filling).flatMap((view) => ("key" in view ? [view.key] : [])));
  const keys = between ? between.names.filter((name) => asked.has(name)) : [error.field];
  return keys.filter((key) => isEmpty(spec, filling, key)).map((key) => labelOf(spec, key));
}

/** @param {any} spec @param {import("./form.js").Filling} filling @param {string} key */
function isEmpty(spec, { draft, tank = {} }, key) {
  const path = pathOf(key);
  if (!spec.inputs.some((/** @type {any} */ field) => field.name === path[0])) return false;
  const { spec: field, node } = nodeAt(spec.inputs, draft, tank, path);
  if (field.type === "number" || field.type === "integer") return "text" in node && node.text.trim() === "";
  if (field.type === "object") return Object.keys(node).length === 0;
  return node === "" || (field.type === "list" && node.length === 0);
}

/** A field by its error key, "sources.0.gh_dgh" -> ["sources", 0, "gh_dgh"]. @param {string} key @returns {(string | number)[]} */
const pathOf = (key) => key.split(".").map((step) => (/^\d+$/.test(step) ? Number(step) : step));

/** The words on a field, with its row inside a list: "Water 1: General hardness". @param {any} spec @param {string} key @returns {string} */
export function labelOf(spec, key) {
  let here = /** @type {any} */ ({ type: "object", fields: spec.inputs });
  /** @type {string[]} */ const words = [];
  for (const step of pathOf(key)) {
    if (typeof step === "number") {
      const list = words.pop();
      here = here.item;
      words.push(`${here.label ?? list} ${step + 1}`);
    } else {
      here = here.fields?.find((/** @type {any} */ one) => one.name === step);
      if (!here) return key;
      words.push(here.label);
    }
  }
  return words.join(": ");
}

const RULES = ["exactly_one", "at_most_one", "together"];

/** The rule between fields that the message tells of, with the names it lists. @param {string} message */
function betweenFields(message) {
  for (const rule of RULES) {
    const parts = partsOf(rule, message);
    if (parts) return { rule, names: parts.fields.split(", ") };
  }
  return null;
}

/** The API's sentence with the labels of the form where the API names its fields. @param {any} spec @param {string} message */
function readOut(spec, message) {
  const between = betweenFields(message);
  if (between) return withParts(between.rule, { fields: between.names.map((name) => labelOf(spec, name)).join(", ") });
  const beside = partsOf("missing_when", message);
  const other = beside && spec.inputs.find((/** @type {any} */ one) => one.name === beside.other);
  if (!other) return message;
  const choice = other.choices?.find((/** @type {any} */ one) => one.value === beside.value);
  return withParts("missing_when", { other: other.label, value: choice?.label ?? beside.value });
}
