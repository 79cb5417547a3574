/** What lives in a tank by its arrivals, births, losses and moves: a ledger that never goes below zero. Pure. */
import { DAY } from "../../figures/durations.js";
import { table } from "../../calc/tables.js";
import { InvalidInput, check_fields, field_named, input_of, run } from "../../contracts.js";

const IN = ["arrival", "birth", "move_in"];
const MOVES = ["move_in", "move_out"];
/** So long births and deaths are counted as recent (assumption). */
const RECENT_DAYS = 30;

/** @typedef {"animal_mass" | "compatibility" | "stocking_limit" | "oxygen_night"} Weighing calculations of animals */
/**
 * @typedef {{id: string, at: string, tank: string, change: string, species: string, count: number, length_cm?: number,
 * cause?: string, other_tank?: string}} StockChange
 * @typedef {{species: string, count: number, since: string, length_cm?: number, born: number, died: number, moves:
 * StockChange[]}} Kept
 * `since`: when the first of those that are here came; `born`, `died`: in the last 30 days; `length_cm`: the latest
 * known
 * @typedef {{change: StockChange, missing: number}} Short a loss of more animals than were known to be here
 */

/**
 * The animals of one tank now, those that are gone, and losses of more than were known: these are said, never dropped.
 * @param {readonly StockChange[]} changes of the tank, in any order @param {number} now ms
 * @returns {{animals: Kept[], gone: Kept[], short: Short[]}} kinds in the order in which they came
 */
export function stock_of(changes, now) {
  const recent = new Date(now - RECENT_DAYS * DAY).toISOString();
  /** @type {Map<string, Kept>} */ const kinds = new Map();
  /** @type {Short[]} */ const short = [];
  for (const change of changes.toSorted(in_order)) {
    const { species, count, at, length_cm } = change;
    const kept = kinds.get(species) ?? { species, count: 0, since: at, born: 0, died: 0, moves: [] };
    kinds.set(species, kept);
    const here = kept.count;
    if (IN.includes(change.change)) {
      if (here === 0) kept.since = at;
      kept.count += count;
    } else {
      if (count > here) short.push({ change, missing: count - here });
      kept.count = Math.max(0, here - count);
    }
    if (length_cm !== undefined) kept.length_cm = length_cm;
    if (at >= recent && change.change === "birth") kept.born += count;
    if (at >= recent && change.change === "death") kept.died += count;
    if (MOVES.includes(change.change)) kept.moves.push(change);
  }
  const all = [...kinds.values()];
  return { animals: all.filter((one) => one.count > 0), gone: all.filter((one) => one.count === 0), short };
}

/**
 * By time; of the same moment what came stands before what went, then always alike.
 * @param {StockChange} a
 * @param {StockChange} b
 */
const in_order = (a, b) =>
  a.at < b.at
    ? -1
    : a.at > b.at
      ? 1
      : Number(IN.includes(b.change)) - Number(IN.includes(a.change)) || (a.id < b.id ? -1 : 1);

/**
 * The other half of a move: the record that the same tap wrote for the other tank.
 * @template {any} T
 * @param {any} one
 * @param {T[]} all of its kind
 * @returns {T | null}
 */
export function other_half(one, all) {
  if (!MOVES.includes(one.change) || !one.other_tank) return null;
  const is_half = (/** @type {any} */ it) =>
    it.at === one.at &&
    it.tank === one.other_tank &&
    it.other_tank === one.tank &&
    it.species === one.species &&
    MOVES.includes(it.change) &&
    it.change !== one.change;
  return all.find(is_half) ?? null;
}

/**
 * The name to read: the table's, else as the keeper wrote it.
 * @param {"species" | "plants"} rows
 * @param {string} species
 */
export const name_of = (rows, species) =>
  Object.hasOwn(table(rows).rows, species) ? table(rows).rows[species].name : species;

/**
 * The animals as calculations take them: rows of the table by their key, the keeper's own with their columns.
 * @param {{species: string, count: number, length_cm?: number}[]} animals
 * @param {readonly any[]} own own_species records
 * @returns {Record<string, any>[]}
 */
export function as_animals(animals, own) {
  return animals.map(({ species, count, length_cm }) => {
    const length = fits("length_cm", length_cm) ? { length_cm } : {};
    if (Object.hasOwn(table("species").rows, species)) return { species, count, ...length };
    const {
      note: _note,
      id: _id,
      kind: _kind,
      meta: _meta,
      ...columns
    } = own.find(({ name }) => name === species) ?? {};
    return { ...columns, name: species, count, ...length };
  });
}

/**
 * The same with only the fields that this contract's animals have.
 * @param {Weighing} name of the contract
 * @param {Record<string, any>[]} animals
 */
export function animals_for(name, animals) {
  const known = animal_fields(name).map((/** @type {any} */ field) => field.name);
  return animals.map((animal) => Object.fromEntries(Object.entries(animal).filter(([field]) => known.includes(field))));
}

/** Whether its length, and so its mass, is known. @param {Record<string, any>} animal */
export const has_length = (animal) => "species" in animal || "length_cm" in animal;

/**
 * What the animals weigh by `animal_mass`; of a table's animal without a length the grown length is taken.
 * @param {{species: string, count: number, length_cm?: number}[]} animals
 * @param {readonly any[]} own own_species records
 * @returns {{total_g: number, input: any, answer: any, unknown: string[], measured: boolean} | null} null: none can be
 * weighed;
 * `unknown`: kinds without any length, or that the calculation refuses, left out; `measured`: a keeper wrote down at
 * least one length
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
 * Whether the calculation takes this kind: a record may hold more animals, a longer name or half a mass law.
 * @param {Record<string, any>} animal
 */
function weighable(animal) {
  try {
    run("animal_mass", { animals: animals_for("animal_mass", [animal]) });
    return true;
  } catch (no) {
    if (no instanceof InvalidInput) return false;
    throw no;
  }
}

/**
 * Grams of animals by the stock list, where it says lengths and leaves none out.
 * @param {readonly StockChange[]} changes
 * @param {readonly any[]} own
 * @param {number} now ms
 * @returns {number | undefined}
 */
export function stock_g(changes, own, now) {
  const mass = mass_of(stock_of(changes, now).animals, own);
  return mass?.measured && mass.unknown.length === 0 ? mass.total_g : undefined;
}

/**
 * Kinds written down in this room, the newest first, each once.
 * @param {readonly {species: string, at: string}[]} changes
 * @param {number} most
 */
export const recent_kinds = (changes, most) =>
  [...new Set(changes.toSorted((a, b) => (a.at < b.at ? 1 : -1)).map(({ species }) => species))].slice(0, most);

/** @param {Weighing} name */
const animal_fields = (name) => input_of(name, "animals").item.fields;
/** The most kinds that a calculation takes at once. @param {Weighing} name */
export const most_kinds = (name) => input_of(name, "animals").max_items;
/** Whether the calculations take this figure. @param {string} name @param {any} value */
function fits(name, value) {
  if (value === undefined) return false;
  const spec = field_named(animal_fields("animal_mass"), name);
  return check_fields([spec], { [name]: value }).errors.length === 0;
}
