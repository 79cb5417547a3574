/**
 * The form of a record kind's fields: which of them matter now, how they stand in the form, and what the record says.
 * What is typed stays as typed: a number is a text, or a text with its unit where that is not the field's own.
 */
import { SAID_DIGITS, shown_number, value_of as number_of } from "./draft.js";
import { typed_form } from "../figures/number_text.js";
import { unit_in, unit_label } from "../figures/units.js";
import { find_field, with_help } from "../contracts.js";

/** @typedef {import("../types/contract.js").Field} Field */
/** @typedef {import("../types/contract.js").Item} Item */
/** @typedef {import("./form.js").FieldView} FieldView */
/** @typedef {import("../figures/number_text.js").Marks} Marks */
/** @typedef {(string | number)[]} Path */
/** @typedef {import("./draft.js").TypedNumber} TypedNumber */
/** @typedef {import("./draft.js").Node} Node */
/** @typedef {import("../contracts.js").Values} Values */
/**
 * What is typed, by field: a text, a `TypedNumber` in another unit than the field's own, what is chosen or ticked, a
 * list or an object of these. `any`, because each screen knows which of them its own fields hold.
 * @typedef {Record<string, any>} Raw
 */

/** A text that may be longer than this has a field of several lines. */
const LINE = 300;
/** More choices than this make a list to open, in which nothing is chosen until the keeper chooses. */
export const TILES = 6;

/** Whether a field matters, given what is chosen. @param {Field} spec @param {Field[]} specs @param {Raw} raw */
export const matters = (spec, specs, raw) =>
  Object.entries(spec.when ?? {}).every(([other, wanted]) =>
    wanted.includes(raw[other] ?? find_field(specs, other)?.default),
  );

/**
 * What the form holds, ready to be checked: empty fields are left out, numbers may have a comma or a point.
 * @param {Field[]} specs @param {Raw} raw @param {Marks} marks
 */
export function payload_of(specs, raw, marks) {
  const said = specs
    .filter((spec) => matters(spec, specs, raw))
    .map((spec) => [spec.name, value_of(spec, raw[spec.name], marks)]);
  return Object.fromEntries(said.filter(([, value]) => value !== undefined));
}

/** @param {Item} spec @param {unknown} typed as in Raw @param {Marks} marks @returns {unknown} */
function value_of(spec, typed, marks) {
  if (typed === undefined || typed === null || typed === "") return undefined;
  if (is_number(spec)) return number_of(spec, node_of(spec, typed), marks);
  if (spec.type === "list") {
    const list = list_in(typed).map((entry) => value_of(spec.item, entry, marks));
    const filled = list.filter((value) => value !== undefined);
    return filled.length ? filled : undefined;
  }
  if (spec.type === "object") return spec.open ? typed : payload_of(spec.fields, raw_in(typed), marks);
  return typeof typed === "string" ? typed.trim() || undefined : typed;
}

/**
 * The values of a record as the form holds them typed.
 * @param {Field[]} specs @param {Values} values @param {Marks} marks @returns {Raw}
 */
export function raw_of(specs, values, marks) {
  const known = specs.filter((spec) => values[spec.name] !== undefined);
  return Object.fromEntries(known.map((spec) => [spec.name, typed_of(spec, values[spec.name], marks)]));
}

/** @param {Item} spec @param {unknown} value as the record holds it @param {Marks} marks @returns {unknown} */
function typed_of(spec, value, marks) {
  if (is_number(spec)) return typed_form(/** @type {number} */ (value), marks);
  if (spec.type === "list") return list_in(value).map((entry) => typed_of(spec.item, entry, marks));
  return spec.type === "object" && !spec.open ? raw_of(spec.fields, /** @type {Values} */ (value), marks) : value;
}

/**
 * The fields to show now.
 * @param {Field[]} specs @param {Raw} raw
 * @param {{all?: Field[], system: string, marks: Marks}} manner `all` holds every field of the form, where `specs` are
 * only some of them
 * @param {Path} [path] to them
 * @returns {FieldView[]}
 */
export const views_of = (specs, raw, { all = specs, ...manner }, path = []) =>
  specs
    .filter((spec) => matters(spec, all, raw))
    .map((spec) => with_help(spec, (name) => raw[name] ?? find_field(all, name)?.default))
    .map((spec) => view_of(spec, raw[spec.name], manner, [...path, spec.name]));

/**
 * @param {Item} spec
 * @param {unknown} typed as in Raw
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
  if (is_number(spec)) {
    const { system, marks } = manner;
    const shown = shown_number(node_of(spec, typed ?? ""), unit_in(spec, system), marks, SAID_DIGITS);
    const usual = spec.default === undefined ? undefined : { value: Number(spec.default), unit: spec.unit ?? "" };
    return {
      ...view,
      value: shown.text,
      unit: unit_label(shown.unit),
      typed_in: shown.unit,
      usual: usual && shown_number(usual, shown.unit, marks, SAID_DIGITS).text,
    };
  }
  if (spec.type === "choice" && spec.choices.length <= TILES) return { ...view, value: typed ?? spec.default };
  if (spec.type === "object") return { ...view, fields: views_of(spec.fields, raw_in(typed ?? {}), manner, path) };
  if (spec.type !== "list") return view;
  const { item } = spec;
  const rows = list_in(typed ?? []).map((entry, index) =>
    item.type === "object"
      ? views_of(item.fields, raw_in(entry), manner, [...path, index])
      : [view_of(item, entry, manner, [...path, index])],
  );
  return { ...view, rows };
}

/** @param {Item} spec */
function kind_of(spec) {
  if (is_number(spec)) return "number";
  if (spec.type === "boolean") return "tick";
  if (spec.type !== "text") return spec.type;
  if (spec.format === "date-time") return "day";
  return spec.max_length > LINE ? "words" : "text";
}

/**
 * What is typed with one field put in place.
 * @param {Field[]} specs @param {Raw} raw @param {Path} path @param {Node | undefined} node from the form
 * @returns {Raw}
 */
export function put(specs, raw, [name, ...rest], node) {
  const spec = find_field(specs, String(name));
  return spec ? { ...raw, [spec.name]: within(spec, raw[spec.name], rest, node) } : raw;
}

/**
 * @param {Item} spec @param {unknown} typed as in Raw @param {Path} path @param {Node | undefined} node
 * @returns {unknown} as in Raw
 */
function within(spec, typed, path, node) {
  if (path.length === 0) return as_typed(spec, node);
  if (spec.type === "object") return put(spec.fields, raw_in(typed ?? {}), path, node);
  if (spec.type !== "list") return typed;
  const index = Number(path[0]);
  const list = list_in(typed);
  return list.map((one, at) => (at === index ? within(spec.item, one, path.slice(1), node) : one));
}

/** @param {Item} spec @param {Node | undefined} node @returns {unknown} as in Raw */
function as_typed(spec, node) {
  if (is_number(spec)) {
    const typed = /** @type {TypedNumber} */ (node);
    return typed.text === "" || typed.unit === (spec.unit ?? "") ? typed.text : typed;
  }
  return spec.type === "choice" && node === "" ? undefined : node;
}

/** A list in what is typed. @param {Raw} raw @param {Path} path @returns {Node[]} */
const list_at = (raw, path) => /** @type {Node[]} */ (path.reduce((here, step) => here?.[step], raw) ?? []);

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
export const remove_row = (specs, raw, path, index) =>
  put(
    specs,
    raw,
    path,
    list_at(raw, path).filter((_, at) => at !== index),
  );

/**
 * The field at a path; an item of a list without a label of its own has the list's label.
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
const is_number = (spec) => spec.type === "number" || spec.type === "integer";

/** What a list holds. @param {unknown} typed */
const list_in = (typed) => /** @type {unknown[]} */ (typed);
/** What an object holds. @param {unknown} typed */
const raw_in = (typed) => /** @type {Raw} */ (typed);

/**
 * The node of a number: its text with the unit it was typed in. A text alone is in the field's own unit.
 * @param {Extract<Item, {type: "number" | "integer"}>} spec @param {unknown} typed as in Raw
 */
const node_of = (spec, typed) =>
  typeof typed === "object" ? /** @type {TypedNumber} */ (typed) : { text: String(typed), unit: spec.unit ?? "" };
