/** A result in plain words, to copy or to keep in a tank's journal as a note. */
import { check } from "../contracts.js";
import { named } from "../figures/number_text.js";
import { result_rows, value_text } from "./result.js";
import { unit_in, unit_label } from "../figures/units.js";

/** @import { Values } from "../contracts.js" */
/** @import { Contract, Item } from "../types/contract.js" */
/** @import { Answered } from "./answer.js" */
/** @import { Manner, ResultRow } from "./result.js" */

const LONGEST_NOTE = 5000;

/**
 * The title, the answer and the inputs; without cautions and sources, which the form shows again.
 * @param {Contract} spec
 * @param {Values} payload
 * @param {Answered} answer
 * @param {Manner & {from?: string}} manner `from` is the phrase before the inputs
 * @returns {string}
 */
export function plain_result(spec, payload, answer, manner) {
  const out = result_rows(spec, answer, manner).map((row) => named(row.label, row_text(row), manner.marks));
  const values = check(spec, payload);
  const inputs = spec.inputs
    .filter((field) => payload[field.name] !== undefined)
    .map((field) => named(field.label, input_text(field, values[field.name], manner), manner.marks));
  const notes = answer.notes ?? [];
  return [spec.title, ...out, ...notes, named(manner.from ?? "From", "", manner.marks).trimEnd(), ...inputs]
    .join("\n")
    .slice(0, LONGEST_NOTE);
}

/** @param {ResultRow} row @returns {string} */
export function row_text(row) {
  if (!row.rows) return [row.text, row.unit || (row.aside && `(${row.aside})`)].filter(Boolean).join(" ");
  return row.rows
    .map((entry) =>
      entry.map((one) => `${one.label} ${row_text(one)}`.trim()).join(entry.some((one) => one.label) ? ", " : " "),
    )
    .join("; ");
}

/** @param {Item} field @param {unknown} value @param {Manner} manner @returns {string} */
function input_text(field, value, manner) {
  if (field.type === "list")
    return /** @type {unknown[]} */ (value).map((entry) => input_text(field.item, entry, manner)).join("; ");
  if (field.type === "object") {
    const values = /** @type {Values} */ (value);
    const given = field.fields.filter((one) => values[one.name] !== undefined);
    return given.map((one) => `${one.label} ${input_text(one, values[one.name], manner)}`).join(", ");
  }
  const unit = typeof value === "number" ? unit_label(unit_in(field, manner.system ?? "metric")) : "";
  return `${value_text(field, value, manner)}${unit ? ` ${unit}` : ""}`;
}
