/** One tank's records among all of a kind, oldest first, sorted once for all tanks. Pure. */

/** @typedef {{at: string, tank?: string}} Dated */

/**
 * Keyed by the array that a room's `all` answers, which stays the same until a record of its kind changes.
 * @type {WeakMap<readonly Dated[], Map<string | undefined, readonly Dated[]>>}
 */
const known = new WeakMap();
/** @type {readonly never[]} */
const NONE = Object.freeze([]);

/**
 * @template {Dated} T
 * @param {readonly T[]} records as a room's `all` answers them
 * @param {string} tank_id
 * @returns {readonly T[]} frozen; the same array until one of the kind changes
 */
export function of_tank(records, tank_id) {
  const tanks = /** @type {Map<string | undefined, readonly T[]>} */ (known.get(records)) ?? sorted(records);
  known.set(records, tanks);
  return tanks.get(tank_id) ?? NONE;
}

/**
 * @template {Dated} T
 * @param {readonly T[]} records
 * @returns {Map<string | undefined, readonly T[]>} by tank
 */
function sorted(records) {
  /** @type {Map<string | undefined, T[]>} */ const tanks = new Map();
  for (const record of records) {
    const own = tanks.get(record.tank);
    if (own) own.push(record);
    else tanks.set(record.tank, [record]);
  }
  for (const own of tanks.values()) Object.freeze(own.sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0)));
  return tanks;
}
