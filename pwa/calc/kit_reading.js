/**
 * What one reading tells: the interval of the true value, and how well each draw agrees with it. Source: the Python
 * twin.
 */

/**
 * Offset, mg N/L, near which a reading can hardly be told from zero: the kit's first step above zero;
 * `otherwise` for a reading without steps.
 * @param {number[] | undefined} steps @param {number} otherwise
 */
export function blur(steps, otherwise) {
  const first = Math.min(...(steps ?? []).filter((step) => step > 0));
  return Number.isFinite(first) ? first : otherwise;
}

/**
 * Between which values, mg N/L, the water reads as `value`; null stands for no bound.
 * @param {number} value @param {number[] | undefined} steps @param {number} offset @param {number} scale
 * @returns {[number | null, number | null]}
 */
export function interval(value, steps, offset, scale) {
  if (!steps?.length) {
    const half = Math.exp(0.5 * scale);
    return [(value + offset) / half - offset, (value + offset) * half - offset];
  }
  const below = Math.max(...steps.filter((step) => step < value - 1e-12));
  const above = Math.min(...steps.filter((step) => step > value + 1e-12));
  return [Number.isFinite(below) ? (below + value) / 2 : null, Number.isFinite(above) ? (value + above) / 2 : null];
}

/**
 * Chance that a test of water at each of `values` reads below `bound`; `unbounded` if there is no bound.
 * @param {Float64Array} values
 * @param {number | null} bound
 * @param {number} offset
 * @param {number} scale
 * @param {number} unbounded
 */
export function share_below(values, bound, offset, scale, unbounded) {
  const below = new Float64Array(values.length);
  if (bound === null) return below.fill(unbounded);
  const [steep, middle] = [1 / scale, Math.log(bound + offset)];
  for (let i = 0; i < below.length; i += 1)
    below[i] = 1 / (1 + Math.exp(steep * (Math.log(values[i] + offset) - middle)));
  return below;
}
