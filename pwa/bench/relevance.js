/** Which fields of a contract matter now, by `when`, `beside`, its either-or rules and what stands in the form. */
import { field_named, with_help } from "../contracts.js";
import { filled, value_of } from "./draft.js";

/** @import { Contract, Field } from "../types/contract.js" */
/** @import { Draft, Marks, Nodes } from "./draft.js" */
/** @typedef {import("../contracts.js").Values} Values */
/** @typedef {{key: string, options: string[], chosen: string | null, optional: boolean}} EitherOr */

/**
 * @param {Pick<Contract, "inputs" | "rules">} spec
 * @param {Draft} draft @param {Values} tank @param {Marks} marks
 * @returns {{shown: Set<string>, choices: EitherOr[]}} fields to show, and the either-ors to offer
 */
export function relevant(spec, draft, tank, marks) {
  const shown = when_shown(spec.inputs, draft.typed ?? {}, tank, marks);
  const choices = [];
  /** @type {Set<string>} */ const left = new Set();
  for (const { rule, fields } of spec.rules ?? []) {
    if (rule === "together") continue;
    const options = fields.filter((name) => shown.has(name));
    if (options.length < 2) continue;
    const optional = rule === "at_most_one";
    const key = fields.join("|");
    const asked = draft.chosen?.[key];
    const given = options.find((name) => holds(spec.inputs, name, draft, tank, marks));
    const chosen =
      asked && options.includes(asked)
        ? asked
        : optional && asked === ""
          ? null
          : (given ?? (optional ? null : options[0]));
    choices.push({ key, options, chosen, optional });
    for (const name of options) if (name !== chosen) left.add(name);
  }
  const offered = new Set(choices.flatMap((choice) => choice.options));
  for (const { rule, fields } of spec.rules ?? []) {
    if (rule !== "together" || !fields.some((name) => left.has(name))) continue;
    for (const name of fields) if (!offered.has(name)) left.add(name);
  }
  for (const { name, beside = name } of spec.inputs) if (left.has(beside)) left.add(name);
  for (const name of left) shown.delete(name);
  return { shown, choices };
}

/**
 * The fields whose `when` holds. A hidden field counts by its usual value, as it does for the contract.
 * @param {Field[]} inputs
 * @param {Nodes} typed
 * @param {Values} tank
 * @param {Marks} marks
 * @returns {Set<string>}
 */
export function when_shown(inputs, typed, tank, marks) {
  /** @type {Map<string, boolean>} */ const known = new Map();
  /** @type {(spec: Field) => boolean} */
  const is_shown = (spec) => {
    const before = known.get(spec.name);
    if (before !== undefined) return before;
    known.set(spec.name, true);
    const holds_now = Object.entries(spec.when ?? {}).every(([other, wanted]) => {
      const beside = field_named(inputs, other);
      const value = is_shown(beside) ? current(beside, typed, tank, marks) : beside.default;
      return wanted.some((choice) => choice === value);
    });
    known.set(spec.name, holds_now);
    return holds_now;
  };
  return new Set(inputs.filter(is_shown).map((spec) => spec.name));
}

/**
 * @param {Field} spec
 * @param {Nodes} typed
 * @param {Values} tank
 * @param {Marks} marks
 */
function current(spec, typed, tank, marks) {
  const { node } = filled(spec, typed[spec.name], tank[spec.name]);
  return value_of(spec, node, marks);
}

/**
 * A field with the words of help that fit what the form holds.
 * @param {Field} field @param {Field[]} inputs @param {Nodes} typed @param {Values} tank @param {Marks} marks
 */
export const as_helped = (field, inputs, typed, tank, marks) =>
  with_help(field, (name) => current(field_named(inputs, name), typed, tank, marks));

/**
 * @param {Field[]} inputs
 * @param {string} name
 * @param {Draft} draft
 * @param {Values} tank
 * @param {Marks} marks
 */
function holds(inputs, name, draft, tank, marks) {
  const spec = field_named(inputs, name);
  const value = current(spec, draft.typed ?? {}, tank, marks);
  return value !== undefined && !(Array.isArray(value) && value.length === 0) && !is_empty_object(value);
}

/** @param {unknown} value */
const is_empty_object = (value) =>
  typeof value === "object" && value !== null && !Array.isArray(value) && Object.keys(value).length === 0;
