/** One field of a record in words: what it is called, and what it says. Pure. */
import { choice_label, find_field } from "../../contracts.js";

/** @import { Item } from "../../types/contract.js" */

/**
 * @typedef {{
 *   get: (kind: string, id: string) => {id: string, name?: string, tank?: string} | null, yes_no: (value: boolean) => string,
 *   figure: (value: number, unit: string) => string, time: (at: string) => string,
 * }} Words how the screen says what a field holds; `get`: the record that a field refers to
 */

/** A moment by the pattern that all such fields have. @param {string | undefined} pattern */
const is_time = (pattern) => pattern?.endsWith("?Z") ?? false;

/**
 * A field's label without the explanation that a form adds in brackets or behind a semicolon.
 * @param {Item | undefined} spec
 * @param {string} name
 * @returns {string}
 */
export const label_of = (spec, name) => spec?.label?.replace(/ \(.*\)$|;.*$/, "") ?? name;

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
  return is_time(spec.pattern) ? words.time(said) : said;
}
