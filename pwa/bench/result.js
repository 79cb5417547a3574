/** The answer as rows to read: each output in the units shown, rounded once, to the contract's decimals. */
import { display } from "../calc/rounding.js";
import { choice_label } from "../contracts.js";
import { marks_of, typed_form } from "../figures/number_text.js";
import { convert, decimals_in, unit_in, unit_label } from "../figures/units.js";
import { SAID_DIGITS } from "./draft.js";

/** @import { Values } from "../contracts.js" */
/** @import { Contract, Item, Output, OutputItem } from "../types/contract.js" */
/** @import { Quantity } from "../figures/units.js" */
/** @typedef {import("../figures/number_text.js").Marks} Marks */
/**
 * @typedef {{name: string, label: string, text: string, unit: string, aside?: string, rows?: ResultRow[][]}} ResultRow
 * `aside` is the same figure read another way, a share in per cent. A list or an object has `rows` instead of a text:
 * those of each entry
 */
/**
 * @typedef {{system?: string, marks?: Marks, yes?: string, no?: string, said?: boolean}} Manner
 * `said`: a converted figure is rounded as a person says it, to three digits; the working has all
 */
/** @typedef {OutputItem & {share?: boolean}} Shown `share`: a figure of an object that holds shares */

/**
 * @param {Pick<Contract, "outputs">} spec
 * @param {object} answer of run()
 * @param {Manner} [manner]
 * @returns {ResultRow[]} the outputs that hold something, without the figures on the way
 */
export function result_rows(spec, answer, manner = {}) {
  return rows_of(
    spec.outputs.filter((output) => !output.working),
    /** @type {Values} */ (answer),
    manner,
  );
}

/** @param {Output[]} outputs @param {Values} answer @param {Manner} manner @returns {ResultRow[]} */
function rows_of(outputs, answer, manner) {
  return outputs
    .flatMap((output) => as_chosen(output, outputs, answer))
    .filter((output) => answer[output.name] !== undefined && answer[output.name] !== null && answer[output.name] !== "")
    .map((output) => row_of(output, answer[output.name], manner));
}

/**
 * An output with the label and the unit that the choice beside it gives: what a figure means depends on what was found.
 * @param {Output} output
 * @param {Output[]} outputs
 * @param {Values} answer
 * @returns {Output[]}
 */
function as_chosen(output, outputs, answer) {
  const chosen = outputs
    .flatMap((one) => (one.type === "choice" ? one.choices.filter(({ value }) => value === answer[one.name]) : []))
    .find((choice) => choice.said);
  if (!chosen) return [output];
  const label = chosen.said?.[output.name];
  if (output.type === "number") return label ? [{ ...output, label, unit: chosen.unit ?? output.unit }] : [];
  return [{ ...output, label: label ?? output.label }];
}

/** @param {Shown} output @param {unknown} value @param {Manner} manner @returns {ResultRow} */
function row_of(output, value, manner) {
  const { system = "metric" } = manner;
  const row = { name: output.name ?? "", label: output.label ?? "", text: "", unit: "" };
  if (output.type === "list")
    return { ...row, rows: entries_of(output.item, /** @type {unknown[]} */ (value), manner) };
  if (output.type === "object")
    return { ...row, rows: [rows_of(shares(output), /** @type {Values} */ (value), manner)] };
  const unit = typeof value === "number" ? unit_label(unit_in(output, system)) : "";
  return {
    ...row,
    text: value_text(output, value, { ...manner, said: true }),
    unit,
    aside: percent(output, value, manner),
  };
}

/** The rows of each entry of a list. @param {OutputItem} item @param {unknown[]} entries @param {Manner} manner */
const entries_of = (item, entries, manner) =>
  entries.map((entry) =>
    item.type === "object"
      ? rows_of(item.fields, /** @type {Values} */ (entry), manner)
      : [row_of({ ...item, label: "" }, entry, manner)],
  );

/**
 * A share in per cent too.
 * @param {Shown} output
 * @param {unknown} value
 * @param {Manner} manner
 * @returns {string | undefined}
 */
function percent(output, value, { marks = marks_of() }) {
  if (typeof value !== "number" || (output.type !== "number" && output.type !== "integer")) return undefined;
  if (unit_label(output.unit ?? "") || !(output.share ?? is_share(output))) return undefined;
  return `${grouped(display(value * 100, Math.max(0, (output.decimals ?? 3) - 2)), marks)}\u00a0%`;
}

/**
 * The fields of an object; if the object holds shares, each of them is one.
 * @param {Extract<OutputItem, {type: "object"}>} output
 * @returns {(Output & {share?: boolean})[]}
 */
const shares = (output) => (is_share(output) ? output.fields.map((one) => ({ ...one, share: true })) : output.fields);

/** @param {OutputItem} output */
const is_share = (output) =>
  !unit_label(("unit" in output && output.unit) || "") && /fraction|share|chance/.test(output.name ?? "");

/**
 * One value in words or figures.
 * @param {Item | OutputItem} spec of an input or an output
 * @param {unknown} value
 * @param {Manner} [manner]
 * @returns {string}
 */
export function value_text(spec, value, manner = {}) {
  const { system = "metric", marks = marks_of(), yes = "yes", no = "no", said = false } = manner;
  if (typeof value === "boolean") return value ? yes : no;
  if (typeof value === "number") return figure(spec, value, system, marks, said);
  return spec.type === "choice" ? choice_label(spec, String(value)) : String(value);
}

/** @param {Quantity} spec @param {number} value @param {string} system @param {Marks} marks @param {boolean} said */
function figure(spec, value, system, marks, said) {
  const [from, to] = [spec.unit ?? "", unit_in(spec, system)];
  const there = convert(value, from, to);
  if (spec.decimals === undefined) return minus(typed_form(Number(there.toPrecision(from === to ? 6 : 4)), marks));
  const fine = decimals_in(spec.decimals, from, to);
  const decimals = said && from !== to ? Math.min(fine, decimals_said(there)) : fine;
  return minus(grouped(display(there, decimals), marks));
}

/** Decimals that leave three digits, or a whole number. @param {number} value */
const decimals_said = (value) =>
  Math.max(0, SAID_DIGITS - 1 - Math.floor(Math.log10(Math.max(Math.abs(value), Number.MIN_VALUE))));

/** A rounded figure with the reader's own marks. @param {string} text @param {Marks} marks */
function grouped(text, { decimal, group }) {
  const [whole, rest] = text.split(".");
  const parted = whole.replace(/\B(?=(\d{3})+$)/g, group);
  return rest === undefined ? parted : parted + decimal + rest;
}

/** With a true minus sign, after which no line breaks. @param {string} text */
const minus = (text) => text.replace(/^-/, "−");
