/** Numbers as a keeper types and reads them: comma or point, never guessed where both readings are possible. */

/** @typedef {{decimal: string, group: string, colon?: string}} Marks how the reader's language writes */
/** @typedef {{value: number} | {empty: true} | {problem: "not_number" | "ambiguous"}} Reading */

/** The marks of languages that were asked for before. @type {Map<string | undefined, Marks>} */
const known = new Map();

/** The marks of a language. @param {string | undefined} [locale] the browser's own if left out @returns {Marks} */
export function marks_of(locale) {
  const held = known.get(locale) ?? found_marks(locale);
  known.set(locale, held);
  return held;
}

/** @param {string | undefined} locale @returns {Marks} */
function found_marks(locale) {
  const parts = new Intl.NumberFormat(locale).formatToParts(1234567.5);
  const mark = (/** @type {string} */ type) => parts.find((part) => part.type === type)?.value ?? "";
  const colon = locale?.startsWith("fr") ? "\u00a0: " : ": ";
  return { decimal: mark("decimal") || ".", group: mark("group"), colon };
}

/** What stands behind its name and a colon. @param {string} name @param {string} text @param {Marks} [marks] */
export const named = (name, text, { colon = ": " } = marks_of()) => name + colon + text;

const ONE_MARK = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/;
const SPACED = /^[+-]?\d{1,3}([ \u00a0\u202f'’]\d{3})+([.,]\d*)?$/;
const SAME_GROUPS = /^[+-]?\d{1,3}([.,])\d{3}(\1\d{3})+$/;
const GROUPS_AND_DECIMAL = /^[+-]?\d{1,3}(?:([.,])\d{3})(?:\1\d{3})*(?!\1)[.,]\d*$/;

/**
 * What a typed text says. "1,000" where the comma also groups thousands is `ambiguous`, not guessed:
 * a dose a thousand times too large is no reading to take silently.
 * @param {string} text @param {Marks} [marks] @returns {Reading}
 */
export function read_number(text, marks = { decimal: ".", group: "," }) {
  const typed = text.trim().replace(/[−–]/g, "-");
  if (typed === "") return { empty: true };
  if (SPACED.test(typed)) return { value: Number(typed.replace(/[ \u00a0\u202f'’]/g, "").replace(",", ".")) };
  if (SAME_GROUPS.test(typed)) return { value: Number(typed.replace(/[.,]/g, "")) };
  if (GROUPS_AND_DECIMAL.test(typed)) {
    const at = Math.max(typed.lastIndexOf("."), typed.lastIndexOf(","));
    return { value: Number(`${typed.slice(0, at).replace(/[.,]/g, "")}.${typed.slice(at + 1)}`) };
  }
  if (!ONE_MARK.test(typed)) return { problem: "not_number" };
  const mark = typed.match(/[.,]/)?.[0];
  if (mark && mark === marks.group && /^[+-]?[1-9]\d{0,2}[.,]\d{3}$/.test(typed)) return { problem: "ambiguous" };
  return { value: Number(typed.replace(",", ".")) };
}

/**
 * A number as one would type it: at most 12 significant digits, no exponent.
 * @param {number} value
 * @param {Marks} [marks]
 */
export function typed_form(value, marks = { decimal: ".", group: "," }) {
  const clean = Number(value.toPrecision(12));
  let text = String(clean);
  if (text.includes("e")) {
    text = Math.abs(clean) < 1 ? clean.toFixed(18).replace(/0+$/, "") : BigInt(Math.round(clean)).toString();
  }
  return text.replace(".", marks.decimal === "," ? "," : ".");
}
