/**
 * One tank's records among all of a kind, oldest first: sorted into tanks once, however many tanks and years there are.
 */

/**
 * A room answers the same array until a record of that kind changes.
 * @type {WeakMap<readonly any[], Map<string, readonly any[]>>}
 */
const known = new WeakMap();
/** @type {readonly any[]} */ const NONE = Object.freeze([]);

/**
 * @param {any[]} records as a room's `all` answers them
 * @param {string} tank its id
 * @returns {any[]} frozen; the same until one of the kind changes
 */
export function of_tank(records, tank) {
  const tanks = known.get(records) ?? sorted(records);
  known.set(records, tanks);
  return /** @type {any[]} */ (tanks.get(tank) ?? NONE);
}

/** @param {any[]} records @returns {Map<string, readonly any[]>} by tank */
function sorted(records) {
  /** @type {Map<string, any[]>} */ const tanks = new Map();
  for (const record of records) {
    const its = tanks.get(record.tank);
    if (its) its.push(record);
    else tanks.set(record.tank, [record]);
  }
  for (const its of tanks.values()) Object.freeze(its.sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0)));
  return tanks;
}
