/** What the advice needs to know of one tank, gathered from the fish room's records. */
import { of_tank } from "./of_tank.js";
import { planned } from "./setup/setting_up.js";
import { tank_water } from "./tank_water.js";

/** @import { Facts } from "../types/advice.js" */
/** @import { RecordKind } from "../types/records.js" */
/** @import { Records, Tank, View } from "../types/views.js" */
/** @import { Dated } from "./of_tank.js" */

/**
 * @param {Records} room
 * @param {Tank} tank
 * @param {number} now ms
 * @returns {Facts} every list oldest first
 */
export function facts_of(room, tank, now) {
  return {
    now,
    tank,
    readings: own(room, "reading", tank.id),
    changes: changes_of(room, tank.id),
    doses: doses_of(room, tank.id),
    feedings: own(room, "feeding", tank.id),
    stock: own(room, "stock_change", tank.id),
    notes: own(room, "note", tank.id),
    own_species: room.all("own_species"),
    source: known(room, "source_water", tank.source_water),
    label: known(room, "label", tank.dechlorinator),
  };
}

/** @param {Records} room @param {string} tank_id @returns {Facts["changes"]} each with the water that it brought */
function changes_of(room, tank_id) {
  const changes = own(room, "water_change", tank_id);
  const from = new Set(changes.flatMap(({ from_tank }) => from_tank ?? []));
  return made_once(
    changes,
    [room.all("source_water"), ...[...from].map((id) => own(room, "reading", id))],
    (change) => ({
      ...change,
      source: change.from_tank
        ? tank_water(own(room, "reading", change.from_tank), { from_tank: change.from_tank, at: change.at })
        : known(room, "source_water", change.source_water),
    }),
  );
}

/** @param {Records} room @param {string} tank_id @returns {Facts["doses"]} each with its label */
const doses_of = (room, tank_id) =>
  made_once(own(room, "dose", tank_id), [room.all("label")], (dose) => ({
    ...dose,
    label: known(room, "label", dose.label),
  }));

/**
 * What lists of a room were made into, and with which other lists.
 * @type {WeakMap<object, {by: object[], made: readonly unknown[]}>}
 */
const made_before = new WeakMap();

/**
 * What becomes of each record of a list: the same frozen array until the list or one of those in `by` changes.
 * @template T, U @param {readonly T[]} records as a room answers them @param {object[]} by @param {(one: T) => U} make
 * @returns {readonly U[]}
 */
function made_once(records, by, make) {
  const before = made_before.get(records);
  if (before && before.by.length === by.length && before.by.every((one, i) => one === by[i]))
    return /** @type {readonly U[]} */ (before.made);
  const made = Object.freeze(records.map(make));
  if (Object.isFrozen(records)) made_before.set(records, { by, made });
  return made;
}

/**
 * One tank's records of a kind, oldest first.
 * @template {RecordKind} K
 * @param {Records} room
 * @param {K} kind
 * @param {string} tank_id
 * @returns {readonly View<K>[]}
 */
function own(room, kind, tank_id) {
  if (room.of) return room.of(kind, tank_id);
  const dated = /** @type {unknown} */ (room.all(kind));
  const found = /** @type {unknown} */ (of_tank(/** @type {readonly Dated[]} */ (dated), tank_id));
  return /** @type {readonly View<K>[]} */ (found);
}

/**
 * @template {"source_water" | "label"} K
 * @param {Records} room
 * @param {K} kind
 * @param {string | undefined} id
 */
const known = (room, kind, id) => (id ? (room.get(kind, id) ?? null) : null);

/**
 * Filled tanks in walking order; with `resting`, the put-away ones instead.
 * @param {Pick<Records, "all">} room
 * @param {{resting?: boolean}} [which]
 */
export function walk(room, { resting = false } = {}) {
  return [...room.all("tank").filter((tank) => Boolean(tank.resting) === resting && (resting || !planned(tank)))].sort(
    (a, b) => (a.walk_order ?? 1e9) - (b.walk_order ?? 1e9) || a.name.localeCompare(b.name),
  );
}

/** The place in the walk of a new tank: after all the others. @param {Pick<Records, "all">} room */
export const last_place = (room) => room.all("tank").reduce((most, one) => Math.max(most, one.walk_order ?? 0), 0) + 1;
