/** One field of a record in words: what it is called, and what it says. Pure. */

/**
 * @typedef {{
 *   get: (kind: string, id: string) => any, yes_no: (value: boolean) => string,
 *   figure: (value: number, unit: string) => string, time: (at: string) => string,
 * }} Words how the screen says what a field holds; `get`: the record that a field refers to
 */

/** A moment by the pattern that all such fields have. @param {any} spec */
const is_time = (spec) => spec?.pattern?.endsWith("?Z");

/**
 * A field's label without the explanation that a form adds in brackets or behind a semicolon.
 * @param {any} spec
 * @param {string} name
 * @returns {string}
 */
export const label_of = (spec, name) => spec?.label.replace(/ \(.*\)$|;.*$/, "") ?? name;

/** A field's value in words. @param {any} spec @param {any} value @param {Words} words @returns {string} */
export function value_said(spec, value, words) {
  if (value === null) return "–";
  if (Array.isArray(value)) return value.map((one) => value_said(spec?.item, one, words)).join(", ");
  if (typeof value === "object") {
    const of = (/** @type {string} */ name) => spec?.fields?.find((/** @type {any} */ field) => field.name === name);
    return Object.entries(value)
      .filter(([, one]) => typeof one !== "object")
      .map(([name, one]) => value_said(of(name), one, words))
      .join(", ");
  }
  if (typeof value === "boolean") return words.yes_no(value);
  if (typeof value === "number") return words.figure(value, spec?.unit ?? "");
  if (spec?.refers_to) return words.get(spec.refers_to, value)?.name ?? value;
  if (is_time(spec)) return words.time(value);
  return spec?.choices?.find((/** @type {any} */ one) => one.value === value)?.label ?? value;
}
