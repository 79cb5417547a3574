/** What lives in a tank, from its arrivals, births, losses and moves. The ledger never goes below zero. Pure. */
import { DAY } from "../../figures/durations.js";
import { table } from "../../calc/tables.js";
import { InvalidInput, check_fields, field_named, input_of, run } from "../../contracts.js";

const IN = ["arrival", "birth", "move_in"];
const MOVES = ["move_in", "move_out"];
/** Births and deaths count as recent for this long (assumption). */
const RECENT_DAYS = 30;

/** @import { CompatibilityInput } from "../../types/calculations.js" */
/** @import { View } from "../../types/views.js" */

/**
 * @typedef {"animal_mass" | "compatibility" | "feed_ration" | "stocking_limit" | "oxygen_night"} Weighing calculations
 * of animals
 * @typedef {CompatibilityInput["animals"][number]} Columns
 * @typedef {(Columns & {species: string, name?: undefined}) | (Columns & {name: string, species?: undefined})} Animal
 * one kind as calculations take it: a key of the table, or a name of the keeper's own
 * @typedef {{species: string, count: number, length_cm?: number}} Counted
 * @typedef {View<"stock_change">} StockChange
 * @typedef {Counted & {since: string, born: number, died: number, moves: StockChange[]}} Living one kind in a tank;
 * `since`: when the first of those that are here came; `born`, `died`: in the last 30 days; `length_cm`: the latest
 * known
 * @typedef {{change: StockChange, missing: number}} Short a loss of more animals than were known to be here
 */

/**
 * The animals of one tank now, those that are gone, and losses of more than were known, which are reported and never
 * dropped.
 * @param {readonly StockChange[]} changes of the tank, in any order @param {number} now ms
 * @returns {{animals: Living[], gone: Living[], short: Short[]}} kinds in the order in which they came
 */
export function stock_of(changes, now) {
  const recent = new Date(now - RECENT_DAYS * DAY).toISOString();
  /** @type {Map<string, Living>} */ const kinds = new Map();
  /** @type {Short[]} */ const short = [];
  for (const change of [...changes].sort(in_order)) {
    const { species, count, at, length_cm } = change;
    const kind = kinds.get(species) ?? { species, count: 0, since: at, born: 0, died: 0, moves: [] };
    kinds.set(species, kind);
    const here = kind.count;
    if (IN.includes(change.change)) {
      if (here === 0) kind.since = at;
      kind.count += count;
    } else {
      if (count > here) short.push({ change, missing: count - here });
      kind.count = Math.max(0, here - count);
    }
    if (length_cm !== undefined) kind.length_cm = length_cm;
    if (at >= recent && change.change === "birth") kind.born += count;
    if (at >= recent && change.change === "death") kind.died += count;
    if (MOVES.includes(change.change)) kind.moves.push(change);
  }
  const all = [...kinds.values()];
  return { animals: all.filter((one) => one.count > 0), gone: all.filter((one) => one.count === 0), short };
}

/**
 * By time; at the same moment arrivals come before losses, then by id so that the order is fixed.
 * @param {StockChange} a
 * @param {StockChange} b
 */
const in_order = (a, b) =>
  a.at < b.at
    ? -1
    : a.at > b.at
      ? 1
      : Number(IN.includes(b.change)) - Number(IN.includes(a.change)) || (a.id < b.id ? -1 : 1);

/** @typedef {View<"stock_change" | "planting">} Move */

/**
 * The other half of a move: the record that the same tap wrote for the other tank.
 * @template {Move} T
 * @param {Move} one
 * @param {readonly T[]} all of its kind
 * @returns {T | null}
 */
export function other_half(one, all) {
  if (!MOVES.includes(one.change) || !one.other_tank) return null;
  const is_half = (/** @type {T} */ it) =>
    it.at === one.at &&
    it.tank === one.other_tank &&
    it.other_tank === one.tank &&
    it.species === one.species &&
    MOVES.includes(it.change) &&
    it.change !== one.change;
  return all.find(is_half) ?? null;
}

/**
 * The name to show: the table's, else the keeper's.
 * @param {"species" | "plants"} rows
 * @param {string} species
 */
export const name_of = (rows, species) =>
  Object.hasOwn(table(rows).rows, species) ? table(rows).rows[species].name : species;

/**
 * The animals as calculations take them: those of the table by key, the keeper's own with their columns.
 * @param {readonly Counted[]} animals
 * @param {readonly View<"own_species">[]} own
 * @returns {Animal[]}
 */
export function as_animals(animals, own) {
  return animals.map(({ species, count, length_cm }) => {
    const length = fits("length_cm", length_cm) ? { length_cm } : {};
    if (Object.hasOwn(table("species").rows, species)) return { species, count, ...length };
    return { ...columns_of(own.find(({ name }) => name === species)), name: species, count, ...length };
  });
}

/** The columns of a keeper's own species. @param {View<"own_species"> | undefined} own */
function columns_of(own) {
  if (!own) return {};
  const { note: _note, id: _id, kind: _kind, meta: _meta, ...columns } = own;
  return columns;
}

/**
 * The same animals with only the fields that this contract knows.
 * @param {Weighing} name of the contract
 * @param {Animal[]} animals
 * @returns {Animal[]}
 */
export function animals_for(name, animals) {
  const known = animal_fields(name).map((field) => field.name);
  return animals.map(
    (animal) =>
      /** @type {Animal} */ (Object.fromEntries(Object.entries(animal).filter(([field]) => known.includes(field)))),
  );
}

/** Whether its length, and so its mass, is known. @param {Animal} animal */
export const has_length = (animal) => animal.species !== undefined || animal.length_cm !== undefined;

/**
 * The mass of the animals by `animal_mass`; without a recorded length, the table's grown length is used. Null if none
 * can be weighed. `unknown`: kinds left out because they have no length or the calculation refuses them; `measured`: at
 * least one length was recorded.
 * @param {readonly Counted[]} animals
 * @param {readonly View<"own_species">[]} own
 */
export function mass_of(animals, own) {
  const entries = as_animals(animals, own);
  const weighed = entries.filter((one) => has_length(one) && weighable(one));
  if (weighed.length === 0) return null;
  const input = { animals: animals_for("animal_mass", weighed).slice(0, most_kinds("animal_mass")) };
  const answer = run("animal_mass", input);
  const unknown = [...entries.filter((one) => !weighed.includes(one)), ...weighed.slice(most_kinds("animal_mass"))].map(
    (one) => one.name ?? one.species,
  );
  return {
    total_g: answer.total_g,
    input,
    answer,
    unknown,
    measured: animals.some(({ length_cm }) => fits("length_cm", length_cm)),
  };
}

/**
 * Whether the calculation accepts this kind. A record may hold more animals, a longer name or half a mass law.
 * @param {Animal} animal
 */
function weighable(animal) {
  try {
    run("animal_mass", { animals: animals_for("animal_mass", [animal]) });
    return true;
  } catch (error) {
    if (error instanceof InvalidInput) return false;
    throw error;
  }
}

/**
 * Grams of animals from recorded lengths; undefined if no length is recorded or a kind has to be left out.
 * @param {readonly StockChange[]} changes
 * @param {readonly View<"own_species">[]} own
 * @param {number} now ms
 * @returns {number | undefined}
 */
export function stock_g(changes, own, now) {
  const mass = mass_of(stock_of(changes, now).animals, own);
  return mass?.measured && mass.unknown.length === 0 ? mass.total_g : undefined;
}

/**
 * Kinds recorded in this room, the newest first, each once.
 * @param {readonly {species: string, at: string}[]} changes
 * @param {number} most
 */
export const recent_kinds = (changes, most) =>
  [...new Set([...changes].sort((a, b) => (a.at < b.at ? 1 : -1)).map(({ species }) => species))].slice(0, most);

/** @param {Weighing} name */
const animal_fields = (name) => input_of(name, "animals").item.fields;
/** The most kinds that a calculation takes at once. @param {Weighing} name */
export const most_kinds = (name) => input_of(name, "animals").max_items;
/** Whether the calculations take this figure. @param {string} name @param {number | undefined} value */
function fits(name, value) {
  if (value === undefined) return false;
  const spec = field_named(animal_fields("animal_mass"), name);
  return check_fields([spec], { [name]: value }).errors.length === 0;
}
