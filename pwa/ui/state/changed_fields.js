/** What a form changed. Pure. */

/**
 * Of a form's fields those that say something else than the record did when the form was opened: what another
 * keeper changed meanwhile is not overwritten by what this form merely showed.
 * @param {Record<string, any> | null} opened see use_opened @param {Record<string, any>} fields
 */
export const changed_fields = (opened, fields) =>
  Object.fromEntries(
    Object.entries(fields).filter(([name, value]) => !opened || in_order(value) !== in_order(opened[name] ?? null)),
  );

/**
 * Of these fields those in which the record says something else now than when the form was opened.
 * @param {Record<string, any>} opened see use_opened @param {Record<string, any>} now @param {string[]} names
 */
export const changed_meanwhile = (opened, now, names) =>
  names.filter((name) => in_order(opened[name] ?? null) !== in_order(now[name] ?? null));

/** A value as text that does not hang on the order of its names. @param {any} value @returns {string} */
const in_order = (value) =>
  JSON.stringify(value, (_, one) =>
    one && typeof one === "object" && !Array.isArray(one) ? Object.fromEntries(Object.entries(one).sort()) : one,
  );
