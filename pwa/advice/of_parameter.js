/** A tank's readings of one parameter, sorted out once for all who ask. Pure. */

/** @typedef {{parameter: string}} Read */

/**
 * Keyed by frozen arrays, as a room's `of` answers them: they stay the same until a reading of the tank changes.
 * @type {WeakMap<readonly Read[], Map<string, readonly Read[]>>}
 */
const known = new WeakMap();
/** @type {readonly never[]} */
const NONE = Object.freeze([]);

/**
 * @template {Read} T
 * @param {readonly T[]} readings
 * @param {string} parameter
 * @returns {readonly T[]} in the order of `readings`
 */
export function of_parameter(readings, parameter) {
  if (!Object.isFrozen(readings)) return readings.filter((one) => one.parameter === parameter);
  const sorted = /** @type {Map<string, readonly T[]>} */ (known.get(readings)) ?? by_parameter(readings);
  known.set(readings, sorted);
  return sorted.get(parameter) ?? NONE;
}

/**
 * @template {Read} T
 * @param {readonly T[]} readings
 * @returns {Map<string, readonly T[]>}
 */
function by_parameter(readings) {
  /** @type {Map<string, T[]>} */ const sorted = new Map();
  for (const reading of readings) {
    const own = sorted.get(reading.parameter);
    if (own) own.push(reading);
    else sorted.set(reading.parameter, [reading]);
  }
  return sorted;
}
