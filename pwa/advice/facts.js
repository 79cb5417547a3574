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
    changes: own(room, "water_change", tank.id).map((change) => ({
      ...change,
      source: change.from_tank
        ? tank_water(own(room, "reading", change.from_tank), { from_tank: change.from_tank, at: change.at })
        : known(room, "source_water", change.source_water),
    })),
    doses: own(room, "dose", tank.id).map((dose) => ({ ...dose, label: known(room, "label", dose.label) })),
    feedings: own(room, "feeding", tank.id),
    stock: own(room, "stock_change", tank.id),
    notes: own(room, "note", tank.id),
    own_species: room.all("own_species"),
    source: known(room, "source_water", tank.source_water),
    label: known(room, "label", tank.dechlorinator),
  };
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
