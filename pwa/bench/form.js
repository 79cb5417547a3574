/** The form of one calculation, made from its contract alone: what to show, and what to hand to the calculation. */
import { filled, shownNumber, valueOf } from "./draft.js";
import { marksOf, readNumber, typedForm } from "./number_text.js";
import { relevant, whenShown } from "./relevance.js";
import { unitIn, unitLabel } from "./units.js";

/** @typedef {import("./draft.js").Draft} Draft */
/** @typedef {import("./number_text.js").Marks} Marks */
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
 * @property {string} [aside] a second reading of the same number, "42 %"
 * @property {boolean} [ambiguous] the typed text could be two numbers ("1,000")
 * @property {string} [own] the tank's figure, with its unit, where something else was typed over it
 * @property {FieldView[][]} [rows] of a list: one list of fields a row
 * @property {FieldView[]} [fields] of an object
 * @property {any[]} [beside] of a pick from a table inside a list: the fields of its entry, which a keeper's own row fills
 */
/** @typedef {{choice: import("./relevance.js").EitherOr, labels: string[]}} ChoiceView */

/**
 * The fields to show now, in the contract's order; an either-or stands before its first field.
 * @param {any} spec the contract @param {Filling} filling @returns {(FieldView | ChoiceView)[]}
 */
export function formOf(spec, filling) {
  const { draft, tank = {}, marks = marksOf() } = filling;
  const { shown, choices } = relevant(spec, draft, tank, marks);
  const labelOf = (/** @type {string} */ name) => spec.inputs.find((/** @type {any} */ one) => one.name === name).label;
  const sides = chosenSides(spec.rules ?? [], choices);
  const waiting = [...choices];
  /** @type {(FieldView | ChoiceView)[]} */ const out = [];
  for (const field of spec.inputs) {
    for (const choice of waiting.filter((one) => one.options.includes(field.name))) {
      out.push({ choice, labels: choice.options.map(labelOf) });
      waiting.splice(waiting.indexOf(choice), 1);
    }
    if (!shown.has(field.name)) continue;
    const asked = sides.has(field.name);
    const view = viewOf(field, [field.name], filled(field, draft.typed?.[field.name], tank[field.name]), filling);
    if (asked) view.optional = false;
    if (view.from === "typed") view.own = ownFigure(field, tank[field.name], view, filling);
    out.push(view);
  }
  return out;
}

/**
 * The chosen side of each either-or that must be answered, and what belongs together with it: needed, not optional.
 * @param {{rule: string, fields: string[]}[]} rules @param {import("./relevance.js").EitherOr[]} choices @returns {Set<string>}
 */
function chosenSides(rules, choices) {
  const chosen = choices.flatMap((one) => (one.chosen && !one.optional ? [one.chosen] : []));
  const along = rules.filter(({ rule, fields }) => rule === "together" && fields.some((name) => chosen.includes(name)));
  return new Set([...chosen, ...along.flatMap(({ fields }) => fields)]);
}

/** @param {any} spec @param {(string | number)[]} path @param {import("./draft.js").Filled} now @param {Filling} filling @returns {FieldView} */
function viewOf(spec, path, { node, from }, filling) {
  const { system = "metric", marks = marksOf() } = filling;
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
    const shown = shownNumber(node, unitIn(spec, system), marks);
    const read = readNumber(shown.text, marks);
    const ambiguous = "problem" in read && read.problem === "ambiguous";
    return {
      ...view,
      value: shown.text,
      unit: unitLabel(shown.unit),
      typed_in: shown.unit,
      aside: percent(spec, read, marks),
      ambiguous,
    };
  }
  if (spec.type === "object") return { ...view, fields: fieldsOf(spec.fields, path, node, filling) };
  if (spec.type === "list") {
    const rows = node.map((/** @type {any} */ row, /** @type {number} */ index) =>
      spec.item.type === "object"
        ? fieldsOf(spec.item.fields, [...path, index], row, filling)
        : [viewOf({ ...spec.item, required: true }, [...path, index], { node: row, from }, filling)],
    );
    return { ...view, rows };
  }
  return view;
}

/** The tank's figure beside what was typed over it; none if both say the same. @param {any} spec @param {any} figure @param {FieldView} typed @param {Filling} filling */
function ownFigure(spec, figure, typed, filling) {
  if (figure === undefined || ["list", "object", "boolean"].includes(spec.type)) return undefined;
  const own = viewOf(spec, typed.path, filled(spec, undefined, figure), filling);
  if (own.value === typed.value) return undefined;
  const choice = spec.choices?.find((/** @type {any} */ one) => one.value === own.value);
  return `${choice?.label ?? own.value}${own.unit ? ` ${own.unit}` : ""}`;
}

/** @param {any[]} fields @param {(string | number)[]} path @param {any} node @param {Filling} filling */
function fieldsOf(fields, path, node, filling) {
  const shown = whenShown(fields, node, {}, filling.marks ?? marksOf());
  return fields
    .filter((field) => shown.has(field.name))
    .map((field) => ({
      ...viewOf(field, [...path, field.name], filled(field, node[field.name], undefined), filling),
      ...(field.table ? { beside: fields } : {}),
    }));
}

/**
 * A fraction said as a percentage too, for bags and labels print those.
 * @param {any} spec @param {import("./number_text.js").Reading} read @param {Marks} marks
 */
function percent(spec, read, marks) {
  const isShare = !unitLabel(spec.unit) && spec.max <= 1 && spec.min >= 0;
  if (!isShare || !("value" in read) || read.value < 0 || read.value > 1) return undefined;
  return `${typedForm(Number((read.value * 100).toPrecision(6)), marks)} %`;
}

/**
 * The input for the calculation: relevant fields with something in them, in the contract's units.
 * @param {any} spec the contract @param {Filling} filling @returns {Record<string, any>}
 */
export function payloadOf(spec, { draft, tank = {}, marks = marksOf() }) {
  const { shown } = relevant(spec, draft, tank, marks);
  /** @type {Record<string, any>} */ const out = {};
  for (const field of spec.inputs) {
    if (!shown.has(field.name)) continue;
    const now = filled(field, draft.typed?.[field.name], tank[field.name]);
    if (now.from === "usual") continue;
    const value = contentOf(field, now.node, marks);
    if (value !== undefined) out[field.name] = value;
  }
  return out;
}

/** @param {any} spec @param {any} node @param {Marks} marks @returns {any} */
function contentOf(spec, node, marks) {
  if (spec.type === "list") {
    if (node.length === 0 && !spec.required) return undefined;
    return node.map((/** @type {any} */ row) => contentOf({ ...spec.item, required: true }, row, marks) ?? "");
  }
  if (spec.type !== "object") return valueOf(spec, node, marks);
  const shown = whenShown(spec.fields, node, {}, marks);
  /** @type {Record<string, any>} */ const out = {};
  for (const field of spec.fields) {
    const now = filled(field, node[field.name], undefined);
    if (!shown.has(field.name) || now.from === "usual") continue;
    const value = contentOf(field, now.node, marks);
    if (value !== undefined) out[field.name] = value;
  }
  return Object.keys(out).length || spec.required ? out : undefined;
}

/** A contract's range in the unit shown, or "" where it is the contract's own. @param {any} spec @param {string} system @param {Marks} [marks] */
export function rangeShown(spec, system, marks = marksOf()) {
  const ends = endsShown(spec, system, marks);
  return ends ? `${ends.min} – ${ends.max} ${ends.unit}` : "";
}

/** The two ends of that range and their unit, null where it is the contract's own. @param {any} spec @param {string} system @param {Marks} marks */
export function endsShown(spec, system, marks) {
  const unit = spec.unit === undefined ? "" : unitIn(spec, system);
  if (!unit || unit === spec.unit) return null;
  const end = (/** @type {number} */ value) => shownNumber({ value, unit: spec.unit }, unit, marks).text;
  return { min: end(spec.min), max: end(spec.max), unit: unitLabel(unit) };
}
