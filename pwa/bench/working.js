/**
 * The working, step by step: the contract's sentences with their figures, in the units shown. A formula that holds only
 * in the contract's own units gets each figure with the factor that leads there: "(14.3 US gal × 3.785)".
 */
import { check, field_named } from "../contracts.js";
import { marks_of, typed_form } from "../figures/number_text.js";
import { convert, unit_in, unit_label } from "../figures/units.js";
import { value_text } from "./result.js";

/** @import { Values } from "../contracts.js" */
/** @import { Contract, Item, OutputItem } from "../types/contract.js" */
/** @import { Manner } from "./result.js" */
/**
 * One figure of a step: `own` and `shown` are its units, `operand` says whether the step calculates with it, `result`
 * whether the step's formula ends in it.
 * @typedef {{spec: Item | OutputItem, value: unknown, own: string, shown: string, operand: boolean, result: boolean}}
 * Figure
 */

/**
 * The steps whose figures all exist; a step about a field that plays no part is left out. `{8 cm}` in a step is a fixed
 * quantity.
 * @param {Contract} spec @param {object} payload a valid input @param {object} answer of run()
 * @param {Manner} [manner]
 * @returns {string[]}
 */
export function working_steps(spec, payload, answer, { system, marks = marks_of(), yes, no } = {}) {
  const manner = { system, marks, yes, no };
  /** @type {Values} */ const values = { ...check(spec, payload), ...answer };
  // An answer's figure may have the name of what was asked: it stands for both.
  const specs = [...spec.outputs, ...spec.inputs];
  const known = (/** @type {string} */ name) => values[name] !== undefined && values[name] !== null;
  return spec.working
    .map((template) => template.split(/\{([^}]+)\}/))
    .filter((parts) => parts.every((part, at) => at % 2 === 0 || / /.test(part) || known(part)))
    .map((parts) =>
      step_of(parts, manner, (name) => {
        const [number, unit] = name.split(/ (.*)/);
        if (!unit) return { spec: field_named(specs, name), value: values[name] };
        return { spec: { name: "", label: "", type: "number", unit }, value: Number(number) };
      }),
    );
}

/**
 * @param {string[]} parts words and the names of figures in turn
 * @param {Manner} manner
 * @param {(name: string) => {spec: Item | OutputItem, value: unknown}} find
 */
function step_of(parts, manner, find) {
  const words = parts.filter((_, at) => at % 2 === 0);
  const figures = parts
    .filter((_, at) => at % 2 === 1)
    .map((name, at) => {
      const found = find(name);
      const own = units_of(found.spec)[0] ?? "";
      const shown = unit_in({ name, unit: own }, manner.system ?? "metric");
      // A fixed quantity brings its unit; behind any other it stands in the words.
      if (name.includes(" ")) words[at + 1] = ` ${unit_label(own)}${words[at + 1]}`;
      const rest = without_unit(words[at + 1], own);
      const operand = /[×/+−-] *$/.test(words[at]) || /^ *[×/+−-]/.test(rest ?? words[at + 1]);
      return { ...found, own, shown, operand, result: !operand && /= *$/.test(words[at]) };
    });
  const factors = figures.some(({ own, shown, operand }) => operand && own !== shown) && !homogeneous(words, figures);
  return figures.reduce((text, figure, at) => {
    const rest = without_unit(words[at + 1], figure.own);
    const unit = rest === null ? "" : `\u00a0${unit_label(figure.shown)}`;
    return text + figure_said(figure, unit, factors, manner) + as_printed(rest ?? words[at + 1]);
  }, as_printed(words[0]));
}

/** With a true minus between figures. @param {string} words */
const as_printed = (words) => words.replaceAll(" - ", " − ");

/** @param {Figure} figure @param {string} unit @param {boolean} factors @param {Manner} manner */
function figure_said(figure, unit, factors, manner) {
  const { own, shown, operand, result } = figure;
  const bare = text_of(figure.spec, figure.value, manner);
  const said = bare + unit;
  if (own === shown || !factors || !(operand || result)) return said;
  const { marks = marks_of() } = manner;
  const constant = (/** @type {number} */ value) => typed_form(Number(value.toPrecision(4)), marks);
  const zero = convert(0, own, shown);
  if (zero) return `(${bare} ${unit_label(shown)} − ${constant(zero)}) / ${constant(convert(1, own, shown) - zero)}`;
  const factor = constant(convert(1, shown, own));
  if (operand) return `(${bare}\u00a0${unit_label(shown)} × ${factor})`;
  const as_calculated = text_of(figure.spec, figure.value, { ...manner, system: "metric" });
  return `${as_calculated}; ${as_calculated} / ${factor} = ${said}`;
}

/** Whether a formula holds in any units: no number of its own, no figure for each litre or kilogram.
 * @param {string[]} words @param {Figure[]} figures
 */
const homogeneous = (words, figures) =>
  !words.some((text) => /(^|[\s(×/+−-])\d/.test(text)) &&
  !figures.some(({ spec, own, shown }) => own === shown && units_of(spec).some((unit) => /\/(L|kg)\b/.test(unit)));

/** What follows a figure after its unit; null if its unit does not follow. @param {string} words @param {string} own */
function without_unit(words, own) {
  const unit = [unit_label(own), own].find((one) => one && /[ \u00a0]/.test(words[0]) && words.startsWith(one, 1));
  const rest = unit && words.slice(unit.length + 1);
  return rest !== undefined && !/^[\p{L}/²³]/u.test(rest) ? rest : null;
}

/** The units of a figure, of the entries of a list, of the fields of an object.
 * @param {Item | OutputItem} spec @returns {string[]}
 */
function units_of(spec) {
  if (spec.type === "list") return units_of(spec.item);
  if (spec.type === "object") return spec.fields.flatMap(units_of);
  return "unit" in spec && spec.unit ? [spec.unit] : [];
}

/** @param {Item | OutputItem} spec @param {unknown} value @param {Manner} manner @returns {string} */
function text_of(spec, value, manner) {
  if (spec.type === "list")
    return /** @type {unknown[]} */ (value).map((entry) => text_of(spec.item, entry, manner)).join("; ");
  if (spec.type !== "object") return value_text(spec, value, manner);
  const values = /** @type {Values} */ (value);
  return spec.fields
    .filter((field) => values[field.name] !== undefined && values[field.name] !== null)
    .map((field) => `${field.label} ${text_of(field, values[field.name], manner)}`)
    .join(", ");
}
