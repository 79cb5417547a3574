/** What the advice needs to know of one tank, gathered from the fish room's records. */
import { of_tank } from "./of_tank.js";
import { planned } from "./setup/setting_up.js";
import { tank_water } from "./tank_water.js";

/**
 * @param {import("../types/views.js").Records} room
 * @param {any} tank its record @param {number} now ms
 * @returns {{now: number, tank: any, readings: any[], changes: any[], doses: any[], feedings: any[], stock: any[],
 * own_species: any[], source: any, label: any}} oldest first
 */
export function facts_of(room, tank, now) {
  const known = (/** @type {"source_water" | "label"} */ kind, /** @type {string | undefined} */ id) =>
    id ? (room.get(kind, id) ?? null) : null;
  const of = (/** @type {import("../types/records.js").RecordKind} */ kind) => of_tank(room.all(kind), tank.id);
  return {
    now,
    tank,
    readings: of("reading"),
    changes: of("water_change").map((change) => ({
      ...change,
      source: change.from_tank ? tank_water(room.all("reading"), change) : known("source_water", change.source_water),
    })),
    doses: of("dose").map((dose) => ({ ...dose, label: known("label", dose.label) })),
    feedings: of("feeding"),
    stock: of("stock_change"),
    own_species: room.all("own_species"),
    source: known("source_water", tank.source_water),
    label: known("label", tank.dechlorinator),
  };
}

/**
 * Tanks in walking order; those put away last or left out, those never filled yet left out.
 * @param {Pick<import("../types/views.js").Records, "all">} room
 * @param {{resting?: boolean}} [which]
 */
export function walk(room, { resting = false } = {}) {
  return room
    .all("tank")
    .filter((tank) => Boolean(tank.resting) === resting && (resting || !planned(tank)))
    .toSorted((a, b) => (a.walk_order ?? 1e9) - (b.walk_order ?? 1e9) || a.name.localeCompare(b.name));
}

/** The place in the walk of one more tank: after all the others. @param {Pick<import("../types/views.js").Records, "all">} room */
export const last_place = (room) => room.all("tank").reduce((most, one) => Math.max(most, one.walk_order ?? 0), 0) + 1;
