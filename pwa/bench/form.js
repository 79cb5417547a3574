/** The form of one calculation, made from its contract alone: what to show, and what to hand to the calculation. */
import { filled, shown_number, value_of } from "./draft.js";
import { marks_of, read_number, typed_form } from "../figures/number_text.js";
import { relevant, when_shown } from "./relevance.js";
import { unit_in, unit_label } from "../figures/units.js";

/** @typedef {import("./draft.js").Draft} Draft */
/** @typedef {import("../figures/number_text.js").Marks} Marks */
/**
 * @typedef {{draft: Draft, tank?: Record<string, any>, system?: string, marks?: Marks}} Filling
 * `tank` the tank's own figures by field name, in the contract's units
 */
/**
 * @typedef {object} FieldView
 * @property {(string | number)[]} path @property {string} key the path as errors name it, "sources.0.gh_dgh"
 * @property {any} spec @property {string} kind the contract's type, or "table" for a pick from a table
 * @property {string} label @property {boolean} optional @property {"typed" | "tank" | "usual" | "empty"} from
 * @property {any} value text of a number, choice, text or truth value as it stands
 * @property {string} [unit] the unit to print beside a number
 * @property {string} [typed_in] the unit that a text typed there now is in, by its name in the table
 * @property {string} [usual] the figure that counts where none is typed, in the unit shown
 * @property {string} [aside] a second reading of the same number, "42 %"
 * @property {boolean} [ambiguous] the typed text could be two numbers ("1,000")
 * @property {string} [own] the tank's figure, with its unit, where something else was typed over it
 * @property {FieldView[][]} [rows] of a list: one list of fields a row
 * @property {FieldView[]} [fields] of an object
 * @property {any[]} [beside] of a pick from a table inside a list: the fields of its entry, which a keeper's own row
 * fills
 */
/** @typedef {{choice: import("./relevance.js").EitherOr, labels: string[]}} ChoiceView */

/**
 * The fields to show now, in the contract's order; an either-or stands before its first field.
 * @param {any} spec the contract @param {Filling} filling @returns {(FieldView | ChoiceView)[]}
 */
export function form_of(spec, filling) {
  const { draft, tank = {}, marks = marks_of() } = filling;
  const { shown, choices } = relevant(spec, draft, tank, marks);
  const label_of = (/** @type {string} */ name) =>
    spec.inputs.find((/** @type {any} */ one) => one.name === name).label;
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
    const view = view_of(field, [field.name], filled(field, draft.typed?.[field.name], tank[field.name]), filling);
    if (asked) view.optional = false;
    if (view.from === "typed") view.own = own_figure(field, tank[field.name], view, filling);
    out.push(view);
  }
  return out;
}

/**
 * The chosen side of each either-or that must be answered, and what belongs together with it: needed, not optional.
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
 * @param {any} spec
 * @param {(string | number)[]} path
 * @param {import("./draft.js").Filled} now
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
    const shown = shown_number(node, unit_in(spec, system), marks);
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
  if (spec.type === "object") return { ...view, fields: fields_of(spec.fields, path, node, filling) };
  if (spec.type === "list") {
    const rows = node.map((/** @type {any} */ row, /** @type {number} */ index) =>
      spec.item.type === "object"
        ? fields_of(spec.item.fields, [...path, index], row, filling)
        : [view_of({ ...spec.item, required: true }, [...path, index], { node: row, from }, filling)],
    );
    return { ...view, rows };
  }
  return view;
}

/**
 * The tank's figure beside what was typed over it; none if both say the same.
 * @param {any} spec
 * @param {any} figure
 * @param {FieldView} typed
 * @param {Filling} filling
 */
function own_figure(spec, figure, typed, filling) {
  if (figure === undefined || ["list", "object", "boolean"].includes(spec.type)) return undefined;
  const own = view_of(spec, typed.path, filled(spec, undefined, figure), filling);
  if (own.value === typed.value) return undefined;
  const choice = spec.choices?.find((/** @type {any} */ one) => one.value === own.value);
  return `${choice?.label ?? own.value}${own.unit ? ` ${own.unit}` : ""}`;
}

/** @param {any[]} fields @param {(string | number)[]} path @param {any} node @param {Filling} filling */
function fields_of(fields, path, node, filling) {
  const shown = when_shown(fields, node, {}, filling.marks ?? marks_of());
  return fields
    .filter((field) => shown.has(field.name))
    .map((field) => ({
      ...view_of(field, [...path, field.name], filled(field, node[field.name], undefined), filling),
      ...(field.table ? { beside: fields } : {}),
    }));
}

/**
 * A fraction said as a percentage too, for bags and labels print those.
 * @param {any} spec @param {import("../figures/number_text.js").Reading} read @param {Marks} marks
 */
function percent(spec, read, marks) {
  const is_share = !unit_label(spec.unit) && spec.max <= 1 && spec.min >= 0;
  if (!is_share || !("value" in read) || read.value < 0 || read.value > 1) return undefined;
  return `${typed_form(Number((read.value * 100).toPrecision(6)), marks)} %`;
}

/**
 * The input for the calculation: relevant fields with something in them, in the contract's units.
 * @param {any} spec the contract @param {Filling} filling @returns {Record<string, any>}
 */
export function payload_of(spec, { draft, tank = {}, marks = marks_of() }) {
  const { shown } = relevant(spec, draft, tank, marks);
  /** @type {Record<string, any>} */ const out = {};
  for (const field of spec.inputs) {
    if (!shown.has(field.name)) continue;
    const now = filled(field, draft.typed?.[field.name], tank[field.name]);
    if (now.from === "usual") continue;
    const value = content_of(field, now.node, marks);
    if (value !== undefined) out[field.name] = value;
  }
  return out;
}

/** @param {any} spec @param {any} node @param {Marks} marks @returns {any} */
function content_of(spec, node, marks) {
  if (spec.type === "list") {
    if (node.length === 0 && !spec.required) return undefined;
    return node.map((/** @type {any} */ row) => content_of({ ...spec.item, required: true }, row, marks) ?? "");
  }
  if (spec.type !== "object") return value_of(spec, node, marks);
  const shown = when_shown(spec.fields, node, {}, marks);
  /** @type {Record<string, any>} */ const out = {};
  for (const field of spec.fields) {
    const now = filled(field, node[field.name], undefined);
    if (!shown.has(field.name) || now.from === "usual") continue;
    const value = content_of(field, now.node, marks);
    if (value !== undefined) out[field.name] = value;
  }
  return Object.keys(out).length || spec.required ? out : undefined;
}

/**
 * A contract's range in the unit shown, or "" where it is the contract's own.
 * @param {any} spec
 * @param {string} system
 * @param {Marks} [marks]
 */
export function range_shown(spec, system, marks = marks_of()) {
  const ends = ends_shown(spec, system, marks);
  return ends ? `${ends.min} – ${ends.max} ${ends.unit}` : "";
}

/**
 * The two ends of that range and their unit, null where it is the contract's own.
 * @param {any} spec
 * @param {string} system
 * @param {Marks} marks
 */
export function ends_shown(spec, system, marks) {
  const unit = spec.unit === undefined ? "" : unit_in(spec, system);
  if (!unit || unit === spec.unit) return null;
  const end = (/** @type {number} */ value) => shown_number({ value, unit: spec.unit }, unit, marks).text;
  return { min: end(spec.min), max: end(spec.max), unit: unit_label(unit) };
}
