/**
 * A half-filled form: what was typed, field by field, over the tank's own figures, over the usual ones.
 * A number keeps its text and the unit it was typed in, so that no switch of units can change or lose it.
 */
import { read_number, typed_form } from "../figures/number_text.js";
import { convert } from "../figures/units.js";

/** @typedef {import("../figures/number_text.js").Marks} Marks */
/** @typedef {{text: string, unit: string}} TypedNumber */
/** @typedef {{value: number, unit: string}} GivenNumber a tank's or usual figure: no keeper's text yet */
/**
 * @typedef {{typed?: Record<string, any>, chosen?: Record<string, string>, tank?: string | null}} Draft
 * `typed` a tree like the input, `chosen` which side of an either-or is used, `tank` whose figures fill the rest
 */
/** @typedef {{node: any, from: "typed" | "tank" | "usual" | "empty"}} Filled */

/**
 * What stands in a field now, and where it comes from.
 * @param {any} spec
 * @param {any} typed
 * @param {any} tank
 * @returns {Filled}
 */
export function filled(spec, typed, tank) {
  if (typed !== undefined) return { node: typed, from: "typed" };
  if (tank !== undefined) return { node: node_of(spec, tank), from: "tank" };
  if ("default" in spec) return { node: node_of(spec, spec.default), from: "usual" };
  return { node: blank(spec), from: "empty" };
}

/** An untouched field. @param {any} spec @returns {any} */
function blank(spec) {
  if (spec.type === "number" || spec.type === "integer") return { text: "", unit: spec.unit ?? "" };
  if (spec.type === "list") return Array.from({ length: spec.required ? spec.min_items : 0 }, () => blank(spec.item));
  if (spec.type === "object") return {};
  return "";
}

/** A value of the contract as a node of the form. @param {any} spec @param {any} value @returns {any} */
export function node_of(spec, value) {
  if (spec.type === "number" || spec.type === "integer") return { value, unit: spec.unit ?? "" };
  if (spec.type === "list") return value.map((/** @type {any} */ entry) => node_of(spec.item, entry));
  if (spec.type === "object") {
    const known = spec.fields.filter((/** @type {any} */ field) => value[field.name] !== undefined);
    return Object.fromEntries(known.map((/** @type {any} */ field) => [field.name, node_of(field, value[field.name])]));
  }
  return value;
}

/**
 * The contract's value of a field, or undefined if it is left empty. A text that is no number stays text,
 * so that the contract itself refuses it in its own words.
 * @param {any} spec @param {any} node @param {Marks} marks @returns {any}
 */
export function value_of(spec, node, marks) {
  if (spec.type !== "number" && spec.type !== "integer") return node === "" ? undefined : node;
  const read = "value" in node ? node : read_number(node.text, marks);
  if ("empty" in read) return undefined;
  return "problem" in read ? node.text : convert(read.value, node.unit, spec.unit ?? "");
}

/**
 * The text of a number field in the unit shown: exactly what was typed while the unit is the one it was typed in,
 * else converted to five significant digits; a text that is no number stays as it is, in its own unit.
 * @param {TypedNumber | GivenNumber} node @param {string} unit @param {Marks} marks @returns {TypedNumber}
 */
export function shown_number(node, unit, marks) {
  const read = "value" in node ? node : read_number(node.text, marks);
  if ("empty" in read) return { text: "", unit };
  if (!("value" in read)) return /** @type {TypedNumber} */ (node);
  if (unit !== node.unit)
    return { text: typed_form(Number(convert(read.value, node.unit, unit).toPrecision(5)), marks), unit };
  return { text: "text" in node ? node.text : typed_form(read.value, marks), unit };
}

/**
 * The draft with one node put in place; lists and objects on the way start from what is shown there now.
 * @param {any[]} inputs @param {Draft} draft @param {Record<string, any>} tank figures by field name
 * @param {(string | number)[]} path @param {any} node undefined gives the field back to the tank's or usual figure
 * @returns {Draft}
 */
export function put(inputs, draft, tank, [name, ...rest], node) {
  const spec = inputs.find((field) => field.name === name);
  const typed = { ...draft.typed };
  if (rest.length === 0) typed[name] = node;
  else typed[name] = within(spec, filled(spec, typed[name], tank[name]).node, rest, node);
  if (typed[name] === undefined) delete typed[name];
  return { ...draft, typed };
}

/** @param {any} spec @param {any} old @param {(string | number)[]} path @param {any} node @returns {any} */
function within(spec, old, [step, ...rest], node) {
  if (spec.type === "list") {
    const rows = [...old];
    rows[Number(step)] = rest.length ? within(spec.item, rows[Number(step)], rest, node) : node;
    return rows;
  }
  const field = spec.fields.find((/** @type {any} */ one) => one.name === step);
  const inner = filled(field, old[step], undefined).node;
  return { ...old, [step]: rest.length ? within(field, inner, rest, node) : node };
}

/**
 * The node at a path as it is shown now.
 * @param {any[]} inputs
 * @param {Draft} draft
 * @param {Record<string, any>} tank
 * @param {(string | number)[]} path
 */
export function node_at(inputs, draft, tank, [name, ...rest]) {
  const spec = inputs.find((field) => field.name === name);
  let node = filled(spec, draft.typed?.[name], tank[name]).node;
  let here = spec;
  for (const step of rest) {
    here = here.type === "list" ? here.item : here.fields.find((/** @type {any} */ one) => one.name === step);
    node = typeof step === "number" ? node[step] : filled(here, node[step], undefined).node;
  }
  return { spec: here, node };
}

/**
 * The draft with one more empty row.
 * @param {any[]} inputs
 * @param {Draft} draft
 * @param {Record<string, any>} tank
 * @param {(string | number)[]} path
 */
export function add_row(inputs, draft, tank, path) {
  const { spec, node } = node_at(inputs, draft, tank, path);
  return put(inputs, draft, tank, path, [...node, blank({ ...spec.item, required: true })]);
}

/**
 * The draft without one row.
 * @param {any[]} inputs
 * @param {Draft} draft
 * @param {Record<string, any>} tank
 * @param {(string | number)[]} path
 * @param {number} index
 */
export function remove_row(inputs, draft, tank, path, index) {
  const { node } = node_at(inputs, draft, tank, path);
  return put(
    inputs,
    draft,
    tank,
    path,
    node.filter((/** @type {any} */ _, /** @type {number} */ at) => at !== index),
  );
}
