/** The answer as rows to read: each output in the unit system, rounded once, by the contract's decimals. */
import { display } from "../calc/rounding.js";
import { marks_of, typed_form } from "../figures/number_text.js";
import { convert, decimals_in, unit_in, unit_label } from "../figures/units.js";

/** @typedef {import("../figures/number_text.js").Marks} Marks */
/**
 * @typedef {{name: string, label: string, text: string, unit: string, aside?: string, rows?: ResultRow[][]}} ResultRow
 * `aside` the same figure read another way, a share in per cent;
 * `rows` instead of a text where the output is a list or an object: one list of rows an entry
 */
/** @typedef {{system?: string, marks?: Marks, yes?: string, no?: string}} Manner */

/**
 * @param {any} spec the contract
 * @param {any} answer of run()
 * @param {Manner} [manner]
 * @returns {ResultRow[]} outputs that hold something, figures on the way left out
 */
export function result_rows(spec, answer, manner = {}) {
  return rows_of(
    spec.outputs.filter((/** @type {any} */ output) => !output.working),
    answer,
    manner,
  );
}

/** @param {any[]} outputs @param {any} answer @param {Manner} manner @returns {ResultRow[]} */
function rows_of(outputs, answer, manner) {
  return outputs
    .flatMap((output) => as_chosen(output, outputs, answer))
    .filter((output) => answer[output.name] !== undefined && answer[output.name] !== null && answer[output.name] !== "")
    .map((output) => row_of(output, answer[output.name], manner));
}

/**
 * A field as the choice beside it says it: what a figure means may hang on what was found.
 * @param {any} output
 * @param {any[]} outputs
 * @param {any} answer
 * @returns {any[]}
 */
function as_chosen(output, outputs, answer) {
  const chosen = outputs
    .map((one) => one.choices?.find((/** @type {any} */ choice) => choice.value === answer[one.name]))
    .find((choice) => choice?.said);
  if (!chosen) return [output];
  const label = chosen.said[output.name];
  if (output.type === "number") return label ? [{ ...output, label, unit: chosen.unit ?? output.unit }] : [];
  return [{ ...output, label: label ?? output.label }];
}

/** @param {any} output @param {any} value @param {Manner} manner @returns {ResultRow} */
function row_of(output, value, manner) {
  const { system = "metric" } = manner;
  const row = { name: output.name ?? "", label: output.label ?? "", text: "", unit: "" };
  if (output.type === "list") {
    const entries = value.map((/** @type {any} */ entry) =>
      output.item?.fields
        ? rows_of(output.item.fields, entry, manner)
        : [row_of({ ...output.item, label: "" }, entry, manner)],
    );
    return { ...row, rows: entries };
  }
  if (output.type === "object")
    return {
      ...row,
      rows: [output.fields ? rows_of(shares(output), value, manner) : loose_rows(output, value, manner)],
    };
  const unit = typeof value === "number" ? unit_label(unit_in(output, system)) : "";
  return { ...row, text: value_text(output, value, manner), unit, aside: percent(output, value, manner) };
}

/**
 * A share said in per cent too.
 * @param {any} output
 * @param {any} value
 * @param {Manner} manner
 * @returns {string | undefined}
 */
function percent(output, value, { marks = marks_of() }) {
  if (typeof value !== "number" || unit_label(output.unit ?? "") || !(output.share ?? is_share(output)))
    return undefined;
  return `${grouped(display(value * 100, Math.max(0, (output.decimals ?? 3) - 2)), marks)}\u00a0%`;
}

/** An object's fields; where it is of shares, they are. @param {any} output @returns {any[]} */
const shares = (output) =>
  is_share(output) ? output.fields.map((/** @type {any} */ one) => ({ ...one, share: true })) : output.fields;

/** @param {any} output */
const is_share = ({ name, unit }) => !unit_label(unit ?? "") && /fraction|share|chance/.test(name ?? "");

/**
 * An object whose names are part of the answer (ions by name): a row each.
 * @param {any} output
 * @param {Record<string, any>} value
 * @param {Manner} manner
 */
function loose_rows(output, value, manner) {
  return Object.entries(value).map(([name, inner]) =>
    row_of(
      { ...output, type: typeof inner === "number" ? "number" : "text", share: is_share(output), name, label: name },
      inner,
      manner,
    ),
  );
}

/**
 * One value in words or figures.
 * @param {any} spec input or output
 * @param {any} value
 * @param {Manner} [manner]
 * @returns {string}
 */
export function value_text(spec, value, { system = "metric", marks = marks_of(), yes = "yes", no = "no" } = {}) {
  if (typeof value === "boolean") return value ? yes : no;
  if (typeof value === "number") return figure(spec, value, system, marks);
  return spec.choices?.find((/** @type {any} */ choice) => choice.value === value)?.label ?? String(value);
}

/** @param {any} spec @param {number} value @param {string} system @param {Marks} marks */
function figure(spec, value, system, marks) {
  const [from, to] = [spec.unit ?? "", unit_in(spec, system)];
  const there = convert(value, from, to);
  if (spec.decimals === undefined) return minus(typed_form(Number(there.toPrecision(6)), marks));
  return minus(grouped(display(there, decimals_in(spec.decimals, from, to)), marks));
}

/** A rounded figure with the reader's own marks. @param {string} text @param {Marks} marks */
function grouped(text, { decimal, group }) {
  const [whole, rest] = text.split(".");
  const parted = whole.replace(/(?<=\d)(?=(\d{3})+$)/g, group);
  return rest === undefined ? parted : parted + decimal + rest;
}

/** A true minus sign, which no line break parts from its figure. @param {string} text */
const minus = (text) => text.replace(/^-/, "−");
