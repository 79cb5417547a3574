/**
 * A half-filled form: what is typed, field by field, over the tank's own figures, over the usual values.
 * A number keeps its text and the unit it was typed in, so that no switch of units can change or lose it.
 */
import { field_named } from "../contracts.js";
import { read_number, typed_form } from "../figures/number_text.js";
import { convert } from "../figures/units.js";

/** @import { Field, Item } from "../types/contract.js" */
/** @typedef {import("../contracts.js").Values} Values */
/** @typedef {import("../figures/number_text.js").Marks} Marks */
/** @typedef {(string | number)[]} Path to a node: names of fields and indices of rows */
/** @typedef {{text: string, unit: string}} TypedNumber */
/** @typedef {{value: number, unit: string}} GivenNumber a tank's figure or a usual value, of which no text is typed */
/** @typedef {{[name: string]: Node | undefined}} Nodes by field name */
/**
 * @typedef {TypedNumber | GivenNumber | string | boolean | Node[] | Nodes} Node
 * what stands in a field. The type of the field decides the form: a number, the text of a text or a choice, a truth
 * value, the rows of a list, the nodes of an object
 */
/**
 * @typedef {{typed?: Nodes, chosen?: Record<string, string>, tank?: string | null}} Draft
 * `typed` is a tree like the input, `chosen` the side of each either-or, `tank` the tank whose figures fill the rest
 */
/** @typedef {"typed" | "tank" | "usual" | "empty"} Origin */
/** @typedef {{node: Node, from: Origin}} Filled */

/** The node of a number or an integer. @param {Node | undefined} node */
export const number_in = (node) => /** @type {TypedNumber | GivenNumber} */ (node);
/** The node of a list. @param {Node | undefined} node */
export const rows_in = (node) => /** @type {Node[]} */ (node);
/** The node of an object. @param {Node | undefined} node */
export const nodes_in = (node) => /** @type {Nodes} */ (node);

/**
 * What stands in a field now, and where it comes from.
 * @param {Item} spec
 * @param {Node | undefined} typed
 * @param {unknown} tank the tank's own value, in the contract's unit
 * @returns {Filled}
 */
export function filled(spec, typed, tank) {
  if (typed !== undefined) return { node: typed, from: "typed" };
  if (tank !== undefined) return { node: node_of(spec, tank), from: "tank" };
  if ("default" in spec) return { node: node_of(spec, spec.default), from: "usual" };
  return { node: blank(spec), from: "empty" };
}

/** The node of an untouched field. @param {Item} spec @returns {Node} */
function blank(spec) {
  if (spec.type === "number" || spec.type === "integer") return { text: "", unit: spec.unit ?? "" };
  if (spec.type === "list") return Array.from({ length: spec.required ? spec.min_items : 0 }, () => blank(spec.item));
  if (spec.type === "object") return {};
  return "";
}

/** A value of the contract as a node of the form. @param {Item} spec @param {unknown} value @returns {Node} */
export function node_of(spec, value) {
  if (spec.type === "number" || spec.type === "integer")
    return { value: /** @type {number} */ (value), unit: spec.unit ?? "" };
  if (spec.type === "list") return /** @type {unknown[]} */ (value).map((entry) => node_of(spec.item, entry));
  if (spec.type === "object") {
    const values = /** @type {Values} */ (value);
    const known = spec.fields.filter((field) => values[field.name] !== undefined);
    return Object.fromEntries(known.map((field) => [field.name, node_of(field, values[field.name])]));
  }
  return /** @type {string | boolean} */ (value);
}

/**
 * The contract's value of a field, or undefined if the field is empty. A text that is no number stays a text,
 * so that the contract refuses it in its own words.
 * @param {Item} spec @param {Node} node @param {Marks} marks @returns {unknown}
 */
export function value_of(spec, node, marks) {
  if (spec.type !== "number" && spec.type !== "integer") return node === "" ? undefined : node;
  const number = number_in(node);
  const read = "value" in number ? number : read_number(number.text, marks);
  if ("empty" in read) return undefined;
  if ("problem" in read) return /** @type {TypedNumber} */ (number).text;
  return convert(read.value, number.unit, spec.unit ?? "");
}

/** As a person says a figure that was measured in other units: 35.4 in, 13.2 lb. The record keeps the whole of it. */
export const SAID_DIGITS = 3;

/**
 * The text of a number field in the unit shown. A number typed in that unit keeps its text; any other is converted to
 * `digits` significant ones: five of a typed number, else as a person says it. A text that is no number stays as it
 * is, in its own unit.
 * @param {TypedNumber | GivenNumber} node @param {string} unit @param {Marks} marks @param {number} [digits]
 * @returns {TypedNumber}
 */
export function shown_number(node, unit, marks, digits = "value" in node ? SAID_DIGITS : 5) {
  const read = "value" in node ? node : read_number(node.text, marks);
  if ("empty" in read) return { text: "", unit };
  if (!("value" in read)) return /** @type {TypedNumber} */ (node);
  if (unit !== node.unit)
    return { text: typed_form(Number(convert(read.value, node.unit, unit).toPrecision(digits)), marks), unit };
  return { text: "text" in node ? node.text : typed_form(read.value, marks), unit };
}

/**
 * The draft with one node put in place; lists and objects on the way start from what they show now.
 * @param {Field[]} inputs
 * @param {Draft} draft
 * @param {Values} tank its figures by field name
 * @param {Path} path
 * @param {Node | undefined} node undefined gives the field back to the tank's figure or the usual value
 * @returns {Draft}
 */
export function put(inputs, draft, tank, [step, ...rest], node) {
  const name = String(step);
  const typed = { ...draft.typed };
  if (rest.length === 0) typed[name] = node;
  else {
    const spec = field_named(inputs, name);
    typed[name] = within(spec, filled(spec, typed[name], tank[name]).node, rest, node);
  }
  if (typed[name] === undefined) delete typed[name];
  return { ...draft, typed };
}

/** @param {Item} spec @param {Node} old @param {Path} path @param {Node | undefined} node @returns {Node} */
function within(spec, old, [step, ...rest], node) {
  if (spec.type === "list") {
    const rows = [...rows_in(old)];
    const at = Number(step);
    // A row is never given back: `remove_row` takes it away.
    rows[at] = rest.length ? within(spec.item, rows[at], rest, node) : /** @type {Node} */ (node);
    return rows;
  }
  const name = String(step);
  const nodes = nodes_in(old);
  if (rest.length === 0) return { ...nodes, [name]: node };
  const field = inner_field(spec, name);
  return { ...nodes, [name]: within(field, filled(field, nodes[name], undefined).node, rest, node) };
}

/** A field of an object. @param {Item} spec @param {string} name @throws {RangeError} if there is none */
const inner_field = (spec, name) => field_named(spec.type === "object" ? spec.fields : [], name);

/**
 * The node that a path shows now, with its field.
 * @param {Field[]} inputs
 * @param {Draft} draft
 * @param {Values} tank
 * @param {Path} path
 * @returns {{spec: Item, node: Node}}
 * @throws {RangeError} if there is no such field
 */
export function node_at(inputs, draft, tank, [first, ...rest]) {
  const name = String(first);
  /** @type {Item} */ let spec = field_named(inputs, name);
  let { node } = filled(spec, draft.typed?.[name], tank[name]);
  for (const step of rest) {
    spec = spec.type === "list" ? spec.item : inner_field(spec, String(step));
    node = typeof step === "number" ? rows_in(node)[step] : filled(spec, nodes_in(node)[step], undefined).node;
  }
  return { spec, node };
}

/**
 * The draft with one more empty row.
 * @param {Field[]} inputs
 * @param {Draft} draft
 * @param {Values} tank
 * @param {Path} path to a list
 */
export function add_row(inputs, draft, tank, path) {
  const { spec, node } = node_at(inputs, draft, tank, path);
  if (spec.type !== "list") throw new RangeError(`${path.join(".")} has no rows`);
  return put(inputs, draft, tank, path, [...rows_in(node), blank({ ...spec.item, required: true })]);
}

/**
 * The draft without one row.
 * @param {Field[]} inputs
 * @param {Draft} draft
 * @param {Values} tank
 * @param {Path} path to a list
 * @param {number} index
 */
export function remove_row(inputs, draft, tank, path, index) {
  const { node } = node_at(inputs, draft, tank, path);
  return put(
    inputs,
    draft,
    tank,
    path,
    rows_in(node).filter((_, at) => at !== index),
  );
}
