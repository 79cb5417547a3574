/** The form of one calculation, made from its contract alone: what it shows, and what it hands to the calculation. */
import { field_named } from "../contracts.js";
import { filled, nodes_in, number_in, rows_in, shown_number, value_of } from "./draft.js";
import { marks_of, read_number, typed_form } from "../figures/number_text.js";
import { as_helped, relevant, when_shown } from "./relevance.js";
import { unit_in, unit_label } from "../figures/units.js";

/** @import { Contract, Field, Item, NumberSpec } from "../types/contract.js" */
/** @import { Draft, Filled, Node, Nodes, Origin, Path } from "./draft.js" */
/** @typedef {import("../contracts.js").Values} Values */
/** @typedef {import("../figures/number_text.js").Marks} Marks */
/**
 * @typedef {{draft: Draft, tank?: Values, system?: string, marks?: Marks}} Filling
 * `tank` holds the tank's own figures by field name, in the contract's units
 */
/**
 * @typedef {object} FieldView
 * @property {Path} path @property {string} key the path as errors name it, "sources.0.gh_dgh"
 * @property {any} spec its Item; `any`, because each control reads the properties of its own kind
 * @property {string} kind the contract's type, or "table" for a pick from a table
 * @property {string} label @property {boolean} optional @property {Origin} from
 * @property {any} value the text of a number, else what stands there; `any` as `spec`
 * @property {string} [unit] the unit to print beside a number
 * @property {string} [typed_in] the unit of a text that is typed now, by its name in the table of units
 * @property {string} [usual] the value that counts where none is typed, in the unit shown
 * @property {string} [aside] the same number read another way, "42 %"
 * @property {boolean} [ambiguous] the typed text can be read as two numbers ("1,000")
 * @property {string} [own] the tank's figure, with its unit, where another is typed over it
 * @property {FieldView[][]} [rows] of a list: the fields of each row
 * @property {FieldView[]} [fields] of an object
 * @property {Field[]} [beside] of a pick from a table inside a list: the fields of its entry, which a keeper's own row
 * fills
 */
/** @typedef {{choice: import("./relevance.js").EitherOr, labels: string[]}} ChoiceView */

/**
 * The fields to show now, in the contract's order; an either-or stands before its first field.
 * @param {Contract} spec @param {Filling} filling @returns {(FieldView | ChoiceView)[]}
 */
export function form_of(spec, filling) {
  const { draft, tank = {}, marks = marks_of() } = filling;
  const { shown, choices } = relevant(spec, draft, tank, marks);
  const label_of = (/** @type {string} */ name) => field_named(spec.inputs, name).label;
  const sides = chosen_sides(spec.rules ?? [], choices);
  const waiting = [...choices];
  /** @type {(FieldView | ChoiceView)[]} */ const out = [];
  for (const field of spec.inputs) {
    for (const choice of waiting.filter((one) => one.options.includes(field.name))) {
      out.push({ choice, labels: choice.options.map(label_of) });
      waiting.splice(waiting.indexOf(choice), 1);
    }
    if (!shown.has(field.name)) continue;
    const asked = sides.has(field.name);
    const helped = as_helped(field, spec.inputs, draft.typed ?? {}, tank, marks);
    const view = view_of(helped, [field.name], filled(field, draft.typed?.[field.name], tank[field.name]), filling);
    if (asked) view.optional = false;
    if (view.from === "typed") view.own = own_figure(field, tank[field.name], view, filling);
    out.push(view);
  }
  return out;
}

/**
 * The chosen side of each either-or that must be answered, and the fields that belong to it. They are needed.
 * @param {{rule: string, fields: string[]}[]} rules
 * @param {import("./relevance.js").EitherOr[]} choices
 * @returns {Set<string>}
 */
function chosen_sides(rules, choices) {
  const chosen = choices.flatMap((one) => (one.chosen && !one.optional ? [one.chosen] : []));
  const along = rules.filter(({ rule, fields }) => rule === "together" && fields.some((name) => chosen.includes(name)));
  return new Set([...chosen, ...along.flatMap(({ fields }) => fields)]);
}

/**
 * @param {Item} spec
 * @param {Path} path
 * @param {Filled} now
 * @param {Filling} filling
 * @returns {FieldView}
 */
function view_of(spec, path, { node, from }, filling) {
  const { system = "metric", marks = marks_of() } = filling;
  /** @type {FieldView} */
  const view = {
    path,
    key: path.join("."),
    spec,
    from,
    value: node,
    kind: spec.type === "text" && spec.table ? "table" : spec.type,
    label: spec.label ?? "",
    optional: !spec.required && !("default" in spec),
  };
  if (spec.type === "number" || spec.type === "integer") {
    const shown = shown_number(number_in(node), unit_in(spec, system), marks);
    const read = read_number(shown.text, marks);
    const ambiguous = "problem" in read && read.problem === "ambiguous";
    return {
      ...view,
      value: shown.text,
      unit: unit_label(shown.unit),
      typed_in: shown.unit,
      aside: percent(spec, read, marks),
      ambiguous,
    };
  }
  if (spec.type === "object") return { ...view, fields: fields_of(spec.fields, path, nodes_in(node), filling) };
  if (spec.type === "list") {
    const { item } = spec;
    const rows = rows_in(node).map((row, index) =>
      item.type === "object"
        ? fields_of(item.fields, [...path, index], nodes_in(row), filling)
        : [view_of({ ...item, required: true }, [...path, index], { node: row, from }, filling)],
    );
    return { ...view, rows };
  }
  return view;
}

/**
 * The tank's figure beside what is typed over it; none if both are the same.
 * @param {Field} spec
 * @param {unknown} figure
 * @param {FieldView} typed
 * @param {Filling} filling
 */
function own_figure(spec, figure, typed, filling) {
  if (figure === undefined || ["list", "object", "boolean"].includes(spec.type)) return undefined;
  const own = view_of(spec, typed.path, filled(spec, undefined, figure), filling);
  if (own.value === typed.value) return undefined;
  const choice = spec.type === "choice" ? spec.choices.find((one) => one.value === own.value) : undefined;
  return `${choice?.label ?? own.value}${own.unit ? ` ${own.unit}` : ""}`;
}

/** @param {Field[]} fields @param {Path} path @param {Nodes} nodes @param {Filling} filling @returns {FieldView[]} */
function fields_of(fields, path, nodes, filling) {
  const shown = when_shown(fields, nodes, {}, filling.marks ?? marks_of());
  return fields
    .filter((field) => shown.has(field.name))
    .map((field) => ({
      ...view_of(field, [...path, field.name], filled(field, nodes[field.name], undefined), filling),
      ...(field.type === "text" && field.table ? { beside: fields } : {}),
    }));
}

/**
 * A fraction as a percentage too, because bags and labels print percentages.
 * @param {NumberSpec} spec @param {import("../figures/number_text.js").Reading} read @param {Marks} marks
 */
function percent(spec, read, marks) {
  const is_share = !unit_label(spec.unit) && spec.max <= 1 && spec.min >= 0;
  if (!is_share || !("value" in read) || read.value < 0 || read.value > 1) return undefined;
  return `${typed_form(Number((read.value * 100).toPrecision(6)), marks)} %`;
}

/**
 * The input for the calculation: the relevant fields that are not empty, in the contract's units.
 * @param {Contract} spec @param {Filling} filling @returns {Values}
 */
export function payload_of(spec, { draft, tank = {}, marks = marks_of() }) {
  const { shown } = relevant(spec, draft, tank, marks);
  /** @type {Values} */ const out = {};
  for (const field of spec.inputs) {
    if (!shown.has(field.name)) continue;
    const now = filled(field, draft.typed?.[field.name], tank[field.name]);
    if (now.from === "usual") continue;
    const value = content_of(field, now.node, marks);
    if (value !== undefined) out[field.name] = value;
  }
  return out;
}

/** @param {Item} spec @param {Node} node @param {Marks} marks @returns {unknown} */
function content_of(spec, node, marks) {
  if (spec.type === "list") {
    const rows = rows_in(node);
    if (rows.length === 0 && !spec.required) return undefined;
    return rows.map((row) => content_of({ ...spec.item, required: true }, row, marks) ?? "");
  }
  if (spec.type !== "object") return value_of(spec, node, marks);
  const nodes = nodes_in(node);
  const shown = when_shown(spec.fields, nodes, {}, marks);
  /** @type {Values} */ const out = {};
  for (const field of spec.fields) {
    const now = filled(field, nodes[field.name], undefined);
    if (!shown.has(field.name) || now.from === "usual") continue;
    const value = content_of(field, now.node, marks);
    if (value !== undefined) out[field.name] = value;
  }
  return Object.keys(out).length || spec.required ? out : undefined;
}

/**
 * The range of a number in the unit shown, "" where that is the contract's own unit.
 * @param {NumberSpec & {name?: string}} spec
 * @param {string} system
 * @param {Marks} [marks]
 */
export function range_shown(spec, system, marks = marks_of()) {
  const ends = ends_shown(spec, system, marks);
  return ends ? `${ends.min} – ${ends.max} ${ends.unit}` : "";
}

/**
 * The two ends of that range and their unit, null where that is the contract's own unit.
 * @param {NumberSpec & {name?: string}} spec
 * @param {string} system
 * @param {Marks} marks
 */
export function ends_shown(spec, system, marks) {
  const unit = spec.unit === undefined ? "" : unit_in(spec, system);
  if (!unit || unit === spec.unit) return null;
  const end = (/** @type {number} */ value) => shown_number({ value, unit: spec.unit }, unit, marks, 5).text;
  return { min: end(spec.min), max: end(spec.max), unit: unit_label(unit) };
}
