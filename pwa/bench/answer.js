/** What the calculation says to a form: the answer, or which fields are still needed and which are wrong and why. */
import { InvalidInput, check, run_named } from "../contracts.js";
import { node_at } from "./draft.js";
import { form_of, payload_of } from "./form.js";
import { parts_of, with_parts } from "./refusal_parts.js";

/** @typedef {import("../contracts.js").FieldError} FieldError */
/**
 * @typedef {{answer: any, payload: Record<string, any>} | {needed: string[], wrong: FieldError[], payload:
 * Record<string, any>}} Outcome
 * `needed` labels of fields left empty; `wrong` errors in the API's words, field names read out as labels
 */

/** @param {any} spec the contract @param {import("./form.js").Filling} filling @returns {Outcome} */
export function answer_of(spec, filling) {
  const payload = payload_of(spec, filling);
  const found = found_of(spec.name, payload);
  return "answer" in found ? { answer: found.answer, payload } : refused_of(spec, filling, payload, found.errors);
}

/**
 * What can be said before anything is calculated: the input to ask with, or what is still needed or wrong.
 * @param {any} spec the contract
 * @param {import("./form.js").Filling} filling
 * @returns {Exclude<Outcome, {answer: any}> | {payload: Record<string, any>}}
 */
export function checked_of(spec, filling) {
  const payload = payload_of(spec, filling);
  try {
    check(spec, payload);
    return { payload };
  } catch (no) {
    if (!(no instanceof InvalidInput)) throw no;
    return refused_of(spec, filling, payload, no.errors);
  }
}

/**
 * The answer, or the errors, as a worker tells them too.
 * @param {string} name
 * @param {unknown} payload
 * @returns {{answer: any} | {errors: FieldError[]}}
 */
export function found_of(name, payload) {
  try {
    return { answer: run_named(name, payload) };
  } catch (no) {
    if (!(no instanceof InvalidInput)) throw no;
    return { errors: no.errors };
  }
}

/**
 * Errors as the form says them.
 * @param {any} spec
 * @param {import("./form.js").Filling} filling
 * @param {Record<string, any>} payload
 * @param {FieldError[]} errors
 */
export function refused_of(spec, filling, payload, errors) {
  const needed = errors.map((error) => empty_of(spec, filling, error));
  return {
    payload,
    needed: [...new Set(needed.flat())],
    wrong: errors
      .filter((_, index) => needed[index].length === 0)
      .map((error) => ({ ...error, message: read_out(spec, error.message) })),
  };
}

/**
 * Labels of the fields whose emptiness is the error, or [] if something typed is wrong. A calculation's own
 * refusal is said in full, but not to a form that nobody has touched.
 * @param {any} spec @param {import("./form.js").Filling} filling @param {FieldError} error @returns {string[]}
 */
function empty_of(spec, filling, error) {
  const untouched = Object.keys(filling.draft.typed ?? {}).length === 0;
  if (!untouched && Object.values(spec.refusals).some((words) => words.message === error.message)) return [];
  const between = between_fields(error.message);
  const asked = new Set(form_of(spec, filling).flatMap((view) => ("key" in view ? [view.key] : [])));
  const keys = between ? between.names.filter((name) => asked.has(name)) : [error.field];
  return keys.filter((key) => is_empty(spec, filling, key)).map((key) => label_of(spec, key));
}

/** @param {any} spec @param {import("./form.js").Filling} filling @param {string} key */
function is_empty(spec, { draft, tank = {} }, key) {
  const path = path_of(key);
  if (!spec.inputs.some((/** @type {any} */ field) => field.name === path[0])) return false;
  const { spec: field, node } = node_at(spec.inputs, draft, tank, path);
  if (field.type === "number" || field.type === "integer") return "text" in node && node.text.trim() === "";
  if (field.type === "object") return Object.keys(node).length === 0;
  return node === "" || (field.type === "list" && node.length === 0);
}

/**
 * A field by its error key, "sources.0.gh_dgh" -> ["sources", 0, "gh_dgh"].
 * @param {string} key
 * @returns {(string | number)[]}
 */
const path_of = (key) => key.split(".").map((step) => (/^\d+$/.test(step) ? Number(step) : step));

/**
 * The words on a field, with its row inside a list: "Water 1: General hardness".
 * @param {any} spec
 * @param {string} key
 * @returns {string}
 */
export function label_of(spec, key) {
  let here = /** @type {any} */ ({ type: "object", fields: spec.inputs });
  /** @type {string[]} */ const words = [];
  for (const step of path_of(key)) {
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
function between_fields(message) {
  for (const rule of RULES) {
    const parts = parts_of(rule, message);
    if (parts) return { rule, names: parts.fields.split(", ") };
  }
  return null;
}

/**
 * The API's sentence with the labels of the form where the API names its fields.
 * @param {any} spec
 * @param {string} message
 */
function read_out(spec, message) {
  const between = between_fields(message);
  if (between)
    return with_parts(between.rule, { fields: between.names.map((name) => label_of(spec, name)).join(", ") });
  const beside = parts_of("missing_when", message);
  const other = beside && spec.inputs.find((/** @type {any} */ one) => one.name === beside.other);
  if (!other) return message;
  const choice = other.choices?.find((/** @type {any} */ one) => one.value === beside.value);
  return with_parts("missing_when", { other: other.label, value: choice?.label ?? beside.value });
}
