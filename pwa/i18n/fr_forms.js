/** French plural forms: 0 and 1 are "one"; whole millions read like every other number here. */

/** @param {string} one @param {string} other @returns {{one: string, many: string, other: string}} */
export const forms = (one, other) => ({ one, many: other, other });
