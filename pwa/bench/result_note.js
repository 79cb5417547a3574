/** A result in plain words, to copy or to keep on a tank's journal as a note. */
import { check } from "../contracts.js";
import { result_rows, value_text } from "./result.js";
import { unit_in, unit_label } from "../figures/units.js";

const LONGEST_NOTE = 5000;

/**
 * Title, answer, what it was worked out from; no cautions or sources, which the form shows again.
 * @param {any} spec the contract
 * @param {Record<string, any>} payload
 * @param {any} answer
 * @param {import("./result.js").Manner & {from?: string}} manner
 * `from` is the phrase before the inputs
 * @returns {string}
 */
export function plain_result(spec, payload, answer, manner) {
  const out = result_rows(spec, answer, manner).map((row) => `${row.label}: ${row_text(row)}`);
  const values = check(spec, payload);
  const inputs = spec.inputs
    .filter((/** @type {any} */ field) => payload[field.name] !== undefined)
    .map((/** @type {any} */ field) => `${field.label}: ${input_text(field, values[field.name], manner)}`);
  const notes = answer.notes ?? [];
  return [spec.title, ...out, ...notes, `${manner.from ?? "From"}:`, ...inputs].join("\n").slice(0, LONGEST_NOTE);
}

/** @param {import("./result.js").ResultRow} row @returns {string} */
export function row_text(row) {
  if (!row.rows) return [row.text, row.unit || (row.aside && `(${row.aside})`)].filter(Boolean).join(" ");
  return row.rows
    .map((entry) =>
      entry.map((one) => `${one.label} ${row_text(one)}`.trim()).join(entry.some((one) => one.label) ? ", " : " "),
    )
    .join("; ");
}

/** @param {any} field @param {any} value @param {import("./result.js").Manner} manner @returns {string} */
function input_text(field, value, manner) {
  if (field.type === "list")
    return value.map((/** @type {any} */ entry) => input_text(field.item, entry, manner)).join("; ");
  if (field.type === "object") {
    const given = field.fields.filter((/** @type {any} */ one) => value[one.name] !== undefined);
    return given.map((/** @type {any} */ one) => `${one.label} ${input_text(one, value[one.name], manner)}`).join(", ");
  }
  const unit = typeof value === "number" ? unit_label(unit_in(field, manner.system ?? "metric")) : "";
  return `${value_text(field, value, manner)}${unit ? ` ${unit}` : ""}`;
}
