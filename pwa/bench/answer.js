/** What a calculation tells a form: its answer, or which fields are still needed and which are wrong and why. */
import { InvalidInput, check, choice_label, find_field, run_named } from "../contracts.js";
import { named } from "../figures/number_text.js";
import { node_at, number_in } from "./draft.js";
import { form_of, payload_of } from "./form.js";
import { parts_of, with_parts } from "./refusal_parts.js";

/** @import { FieldError, Values } from "../contracts.js" */
/** @import { Contract, Field, Item, Said } from "../types/contract.js" */
/** @import { Path } from "./draft.js" */
/** @import { Filling } from "./form.js" */
/** @typedef {Values & Said} Answered the outputs of a calculation whose name is only known at run time */
/**
 * @typedef {{needed: string[], wrong: FieldError[], payload: Values}} Refused
 * `needed` holds the labels of empty fields, `wrong` the errors in the API's words with labels for the fields' names
 */
/** @typedef {{answer: Answered, payload: Values} | Refused} Outcome */

/** @param {Contract} spec @param {Filling} filling @returns {Outcome} */
export function answer_of(spec, filling) {
  const payload = payload_of(spec, filling);
  const found = found_of(spec.name, payload);
  return "answer" in found ? { answer: found.answer, payload } : refused_of(spec, filling, payload, found.errors);
}

/**
 * What is known before anything is calculated: the checked input, or what is still needed or wrong.
 * @param {Contract} spec
 * @param {Filling} filling
 * @returns {Refused | {payload: Values}}
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
 * The answer or the errors, as a worker gives them too.
 * @param {string} name
 * @param {unknown} payload
 * @returns {{answer: Answered} | {errors: FieldError[]}}
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
 * The errors in the form's words.
 * @param {Contract} spec
 * @param {Filling} filling
 * @param {Values} payload
 * @param {FieldError[]} errors
 * @returns {Refused}
 */
export function refused_of(spec, filling, payload, errors) {
  const needed = errors.map((error) => empty_of(spec, filling, error));
  return {
    payload,
    needed: [...new Set(needed.flat())],
    wrong: errors
      .filter((_, index) => needed[index].length === 0)
      .map((error) => ({ ...error, message: read_out(spec, error.message, filling) })),
  };
}

/**
 * The labels of the empty fields that cause an error, [] if something typed is wrong. A calculation's own refusal
 * counts as wrong, unless nothing is typed yet.
 * @param {Contract} spec @param {Filling} filling @param {FieldError} error @returns {string[]}
 */
function empty_of(spec, filling, error) {
  const untouched = Object.keys(filling.draft.typed ?? {}).length === 0;
  if (!untouched && Object.values(spec.refusals).some((words) => words.message === error.message)) return [];
  const between = between_fields(error.message);
  const asked = new Set(form_of(spec, filling).flatMap((view) => ("key" in view ? [view.key] : [])));
  const keys = between ? between.names.filter((name) => asked.has(name)) : [error.field];
  return keys.filter((key) => is_empty(spec, filling, key)).map((key) => label_of(spec, key, filling.marks));
}

/** @param {Contract} spec @param {Filling} filling @param {string} key */
function is_empty(spec, { draft, tank = {} }, key) {
  const path = path_of(key);
  if (!spec.inputs.some((field) => field.name === path[0])) return false;
  const { spec: field, node } = node_at(spec.inputs, draft, tank, path);
  if (field.type === "number" || field.type === "integer") {
    const number = number_in(node);
    return "text" in number && number.text.trim() === "";
  }
  if (field.type === "object") return Object.keys(node).length === 0;
  return node === "" || (Array.isArray(node) && node.length === 0);
}

/**
 * The path to the field that an error names, "sources.0.gh_dgh" -> ["sources", 0, "gh_dgh"].
 * @param {string} key
 * @returns {Path}
 */
const path_of = (key) => key.split(".").map((step) => (/^\d+$/.test(step) ? Number(step) : step));

/**
 * The label of a field, with its row inside a list, "Water 1: General hardness"; the key itself if there is no such
 * field.
 * @param {Contract} spec
 * @param {string} key
 * @param {import("../figures/number_text.js").Marks} [marks]
 * @returns {string}
 */
export function label_of(spec, key, marks) {
  /** @type {Item} */ let here = { type: "object", fields: spec.inputs };
  /** @type {string[]} */ const words = [];
  for (const step of path_of(key)) {
    if (typeof step === "number") {
      const list = words.pop();
      if (here.type !== "list") return key;
      here = here.item;
      words.push(`${here.label ?? list} ${step + 1}`);
    } else {
      /** @type {Field | undefined} */
      const field = here.type === "object" ? find_field(here.fields, step) : undefined;
      if (!field) return key;
      here = field;
      words.push(field.label);
    }
  }
  return words.reduce((list, field) => named(list, field, marks));
}

const RULES = ["exactly_one", "at_most_one", "together"];

/** The rule between fields that a message states, with the names in it. @param {string} message */
function between_fields(message) {
  for (const rule of RULES) {
    const parts = parts_of(rule, message);
    if (parts) return { rule, names: parts.fields.split(", ") };
  }
  return null;
}

/**
 * The API's sentence with the form's labels for the fields' names.
 * @param {Contract} spec
 * @param {string} message
 * @param {Filling} filling
 */
function read_out(spec, message, { marks }) {
  const between = between_fields(message);
  if (between)
    return with_parts(between.rule, { fields: between.names.map((name) => label_of(spec, name, marks)).join(", ") });
  const beside = parts_of("missing_when", message);
  const other = beside && find_field(spec.inputs, beside.other);
  if (!other) return message;
  return with_parts("missing_when", { other: other.label, value: choice_label(other, beside.value) });
}
