/**
 * The form of a record kind's fields: which of them matter now, how they stand in the form, and what the record says.
 * What is typed stays as typed: a figure is a text, or a text with its unit where that is not the field's own.
 */
import { shown_number, value_of as number_of } from "./draft.js";
import { typed_form } from "../figures/number_text.js";
import { unit_in, unit_label } from "../figures/units.js";
import { find_field } from "../contracts.js";

/** @typedef {import("../types/contract.js").Field} Field */
/** @typedef {import("../types/contract.js").Item} Item */
/** @typedef {import("./form.js").FieldView} FieldView */
/** @typedef {import("../figures/number_text.js").Marks} Marks */
/** @typedef {(string | number)[]} Path */
/** @typedef {{text: string, unit: string}} Typed a figure typed in another unit than the field's own */
/**
 * What is typed, by field. `any`, because the specs say what each field holds: a text or `Typed`, what is chosen or
 * ticked, a list of these.
 * @typedef {Record<string, any>} Raw
 */

/** More characters than this are typed into a field of several lines. */
const LINE = 300;
/** More choices than this are a list to open: there nothing is chosen until the keeper chooses. */
export const TILES = 6;

/** Whether a field matters beside what is chosen. @param {Field} spec @param {Field[]} specs @param {Raw} raw */
export const matters = (spec, specs, raw) =>
  Object.entries(spec.when ?? {}).every(([other, wanted]) =>
    wanted.includes(raw[other] ?? find_field(specs, other)?.default),
  );

/**
 * What the form says, ready to be checked: empty fields are left out, numbers may have a comma or a point.
 * @param {Field[]} specs @param {Raw} raw @param {Marks} marks
 */
export function payload_of(specs, raw, marks) {
  const said = specs
    .filter((spec) => matters(spec, specs, raw))
    .map((spec) => [spec.name, value_of(spec, raw[spec.name], marks)]);
  return Object.fromEntries(said.filter(([, value]) => value !== undefined));
}

/** @param {Item} spec @param {any} typed see Raw @param {Marks} marks @returns {unknown} */
function value_of(spec, typed, marks) {
  if (typed === undefined || typed === null || typed === "") return undefined;
  if (is_figure(spec)) return number_of(spec, node_of(spec, typed), marks);
  if (spec.type === "list") {
    const list = typed.map((/** @type {unknown} */ entry) => value_of(spec.item, entry, marks));
    const filled = list.filter((/** @type {unknown} */ value) => value !== undefined);
    return filled.length ? filled : undefined;
  }
  if (spec.type === "object") return spec.open ? typed : payload_of(spec.fields, typed, marks);
  return typeof typed === "string" ? typed.trim() || undefined : typed;
}

/**
 * The values of a record as the form holds them typed.
 * @param {Field[]} specs @param {Record<string, any>} values @param {Marks} marks @returns {Raw}
 */
export function raw_of(specs, values, marks) {
  const known = specs.filter((spec) => values[spec.name] !== undefined);
  return Object.fromEntries(known.map((spec) => [spec.name, typed_of(spec, values[spec.name], marks)]));
}

/** @param {Item} spec @param {any} value as the record holds it @param {Marks} marks @returns {unknown} */
function typed_of(spec, value, marks) {
  if (is_figure(spec)) return typed_form(value, marks);
  if (spec.type === "list") return value.map((/** @type {unknown} */ entry) => typed_of(spec.item, entry, marks));
  return spec.type === "object" && !spec.open ? raw_of(spec.fields, value, marks) : value;
}

/**
 * The fields to show now.
 * @param {Field[]} specs @param {Raw} raw
 * @param {{all?: Field[], system: string, marks: Marks}} manner `all`: every field of the form, where only some are
 * shown
 * @param {Path} [path] to them
 * @returns {FieldView[]}
 */
export const views_of = (specs, raw, { all = specs, ...manner }, path = []) =>
  specs
    .filter((spec) => matters(spec, all, raw))
    .map((spec) => view_of(spec, raw[spec.name], manner, [...path, spec.name]));

/**
 * @param {Item} spec
 * @param {any} typed see Raw
 * @param {{system: string, marks: Marks}} manner
 * @param {Path} path
 * @returns {FieldView}
 */
function view_of(spec, typed, manner, path) {
  /** @type {FieldView} */
  const view = {
    path,
    key: path.join("."),
    spec,
    kind: kind_of(spec),
    label: spec.label ?? "",
    optional: false,
    from: typed === undefined ? "empty" : "typed",
    value: typed ?? "",
  };
  if (is_figure(spec)) {
    const { system, marks } = manner;
    const shown = shown_number(node_of(spec, typed ?? ""), unit_in({ ...spec, name: spec.name ?? "" }, system), marks);
    const usual = spec.default === undefined ? undefined : { value: Number(spec.default), unit: spec.unit ?? "" };
    return {
      ...view,
      value: shown.text,
      unit: unit_label(shown.unit),
      typed_in: shown.unit,
      usual: usual && shown_number(usual, shown.unit, marks).text,
    };
  }
  if (spec.type === "choice" && spec.choices.length <= TILES) return { ...view, value: typed ?? spec.default };
  if (spec.type === "object") return { ...view, fields: views_of(spec.fields, typed ?? {}, manner, path) };
  if (spec.type !== "list") return view;
  const { item } = spec;
  const rows = (typed ?? []).map((/** @type {any} */ entry, /** @type {number} */ index) =>
    item.type === "object"
      ? views_of(item.fields, entry, manner, [...path, index])
      : [view_of(item, entry, manner, [...path, index])],
  );
  return { ...view, rows };
}

/** @param {Item} spec */
function kind_of(spec) {
  if (is_figure(spec)) return "number";
  if (spec.type === "boolean") return "tick";
  if (spec.type !== "text") return spec.type;
  if (spec.format === "date-time") return "day";
  return spec.max_length > LINE ? "words" : "text";
}

/**
 * What is typed with one field put in place.
 * @param {Field[]} specs @param {Raw} raw @param {Path} path @param {any} node as the form tells it, see FieldView
 * @returns {Raw}
 */
export function put(specs, raw, [name, ...rest], node) {
  const spec = find_field(specs, String(name));
  return spec ? { ...raw, [spec.name]: within(spec, raw[spec.name], rest, node) } : raw;
}

/** @param {Item} spec @param {any} typed see Raw @param {Path} path @param {any} node @returns {unknown} */
function within(spec, typed, path, node) {
  if (path.length === 0) return as_typed(spec, node);
  if (spec.type === "object") return put(spec.fields, typed ?? {}, path, node);
  if (spec.type !== "list") return typed;
  const index = Number(path[0]);
  return typed.with(index, within(spec.item, typed[index], path.slice(1), node));
}

/** @param {Item} spec @param {any} node @returns {unknown} */
function as_typed(spec, node) {
  if (is_figure(spec)) return node.text === "" || node.unit === (spec.unit ?? "") ? node.text : node;
  return spec.type === "choice" && node === "" ? undefined : node;
}

/** A list in what is typed. @param {Raw} raw @param {Path} path @returns {any[]} see Raw */
const list_at = (raw, path) => path.reduce((node, step) => node?.[step], /** @type {any} */ (raw)) ?? [];

/** What is typed with one more entry in a list. @param {Field[]} specs @param {Raw} raw @param {Path} path */
export function add_row(specs, raw, path) {
  const spec = spec_at(specs, path);
  const empty = spec?.type === "list" && spec.item.type === "object" ? {} : "";
  return put(specs, raw, path, [...list_at(raw, path), empty]);
}

/**
 * What is typed without one entry of a list.
 * @param {Field[]} specs
 * @param {Raw} raw
 * @param {Path} path
 * @param {number} index
 */
export const remove_row = (specs, raw, path, index) => put(specs, raw, path, list_at(raw, path).toSpliced(index, 1));

/**
 * The field at a path; what a list holds bears the list's label if it has none of its own.
 * @param {Field[]} specs @param {Path} path @returns {Item | undefined}
 */
export function spec_at(specs, [name, ...rest]) {
  /** @type {Item | undefined} */ let here = find_field(specs, String(name));
  for (const step of rest) {
    if (here?.type === "list") here = { ...here.item, label: here.item.label ?? here.label };
    else here = here?.type === "object" ? find_field(here.fields, String(step)) : undefined;
  }
  return here;
}

/** @param {Item} spec @returns {spec is Extract<Item, {type: "number" | "integer"}>} */
const is_figure = (spec) => spec.type === "number" || spec.type === "integer";

/**
 * A figure keeps its text and the unit it was typed in; a text alone is in the field's own.
 * @param {Extract<Item, {type: "number" | "integer"}>} spec @param {string | number | Typed} typed
 */
const node_of = (spec, typed) => (typeof typed === "object" ? typed : { text: String(typed), unit: spec.unit ?? "" });
