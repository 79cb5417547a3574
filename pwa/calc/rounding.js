/** Rounding for display: half away from zero, the only rounding in the product. */

/**
 * `value` as text with `decimals` places, halves away from zero, never "-0".
 * toFixed rounds the exact binary value, as the Python twin does.
 * @param {number} value @param {number} decimals @returns {string}
 */
export function display(value, decimals) {
  const text = value.toFixed(decimals);
  return /[1-9]/.test(text) ? text : text.replace("-", "");
}
