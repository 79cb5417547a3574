/** One field of a record in words: what it is called, and what it says. Pure. */
import { choice_label, find_field } from "../../contracts.js";

/** @import { Item } from "../../types/contract.js" */

/**
 * @typedef {{
 * get: (kind: string, id: string) => {id: string, name?: string, tank?: string} | null, yes_no: (value: boolean) =>
 * string,
 *   figure: (value: number, unit: string) => string, time: (at: string) => string,
 * }} Words how the screen says what a field holds; `get`: the record that a field refers to
 */

/**
 * A field's label without the explanation that a form adds.
 * @param {Item | undefined} spec
 * @param {string} name
 * @returns {string}
 */
export const label_of = (spec, name) => spec?.short_label ?? spec?.label ?? name;

/**
 * A field's value in words.
 * @param {Item | undefined} spec
 * @param {unknown} value
 * @param {Words} words
 * @returns {string}
 */
export function value_said(spec, value, words) {
  if (value === null || value === undefined) return "–";
  if (Array.isArray(value)) {
    const item = spec?.type === "list" ? spec.item : undefined;
    return value.map((one) => value_said(item, one, words)).join(", ");
  }
  if (typeof value === "object") {
    const fields = spec?.type === "object" ? spec.fields : [];
    return Object.entries(value)
      .filter(([, one]) => typeof one !== "object")
      .map(([name, one]) => value_said(find_field(fields, name), one, words))
      .join(", ");
  }
  if (typeof value === "boolean") return words.yes_no(value);
  if (typeof value === "number") return words.figure(value, spec && "unit" in spec ? spec.unit : "");
  const said = String(value);
  if (spec?.type === "choice") return choice_label(spec, said);
  if (spec?.type !== "text") return said;
  if (spec.refers_to) return words.get(spec.refers_to, said)?.name ?? said;
  return spec.format === "date-time" ? words.time(said) : said;
}
