/** Bands of equally weighted draws. */

/** @typedef {{p10: number, p50: number, p90: number}} Band */

/**
 * The 10 %, 50 % and 90 % points of equally weighted draws.
 * @param {Float64Array} values
 * @returns {Band}
 */
export function band(values) {
  const ranked = values.slice().sort();
  const at = (/** @type {number} */ share) => ranked[Math.ceil(share * ranked.length - 1e-9) - 1];
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9) };
}
