/** Which fields a form changed, and which changed behind it. Pure. */

/**
 * The fields of a form that differ from the record as it was when the form was opened. Only these are written, so that
 * what the form merely showed does not overwrite another keeper's change.
 * @template {object} F
 * @param {object | null} opened see use_opened
 * @param {F} fields
 * @returns {Partial<F>}
 */
export function changed_fields(opened, fields) {
  const changed = Object.entries(fields).filter(
    ([name, value]) => !opened || in_order(value) !== in_order(field(opened, name)),
  );
  return /** @type {Partial<F>} */ (Object.fromEntries(changed));
}

/**
 * Those of `names` in which the record has changed since the form was opened.
 * @param {object} opened see use_opened @param {object} now @param {string[]} names
 */
export const changed_meanwhile = (opened, now, names) =>
  names.filter((name) => in_order(field(opened, name)) !== in_order(field(now, name)));

/** @param {object} record @param {string} name */
const field = (record, name) => /** @type {Record<string, unknown>} */ (record)[name] ?? null;

/** A value as text that does not depend on the order of its names. @param {unknown} value @returns {string} */
const in_order = (value) =>
  JSON.stringify(value, (_, one) =>
    one && typeof one === "object" && !Array.isArray(one) ? Object.fromEntries(Object.entries(one).sort()) : one,
  );
