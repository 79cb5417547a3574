/**
 * Finding by words what a room holds: tanks, animals, plants, notes, tasks, labels, calculations. Pure; accents and
 * case do not matter.
 */
import { of_tank } from "../of_tank.js";
import { shelf, plain } from "../../bench/search.js";
import { plants_of } from "../life/plants.js";
import { name_of, stock_of } from "../life/stock.js";

/** @typedef {{kind: string, title: string, also: string, path: string}} Found `also`: what is said beside the title */
/** @typedef {Found & {words: string, at: string}} Entry `words`: all that is searched */

/**
 * Everything that can be found in a room.
 * @param {import("../../types/views.js").Records} room
 * @param {Record<string, any>} contracts by name
 * @param {number} now ms
 * @param {{note: (note: any) => string, task: (task: any) => string}} said how this phone says them, whatever words the
 * record holds
 * @returns {Entry[]}
 */
export function findable(room, contracts, now, said) {
  const tanks = room.all("tank");
  const tank_of = (/** @type {any} */ one) => tanks.find(({ id }) => id === one.tank)?.name ?? "";
  const entry = (
    /** @type {string} */ kind,
    /** @type {string} */ title,
    /** @type {string} */ also,
    /** @type {string} */ path,
    more = "",
    at = "",
  ) => ({ kind, title, also, path, at, words: plain([title, also, more].join(" ")) });
  const living = tanks.flatMap((tank) => {
    const { animals } = stock_of(of_tank(room.all("stock_change"), tank.id), now);
    const { growing } = plants_of(of_tank(room.all("planting"), tank.id));
    return [
      ...animals.map(({ species }) =>
        entry("animals", name_of("species", species), tank.name, `/tank/${tank.id}/stock`, species),
      ),
      ...growing.map(({ species }) =>
        entry("plants", name_of("plants", species), tank.name, `/tank/${tank.id}/plants`, species),
      ),
    ];
  });
  return [
    ...tanks.map((tank) => entry("tank", tank.name, tank.place ?? "", `/tank/${tank.id}`, tank.note)),
    ...living,
    ...room
      .all("note")
      .map((note) =>
        entry(
          "note",
          said.note(note),
          tank_of(note),
          note.tank ? `/tank/${note.tank}/history` : "/",
          note.text,
          note.at,
        ),
      ),
    ...room
      .all("task")
      .map((task) =>
        entry("task", said.task(task), tank_of(task), `/task/${task.id}`, [task.title, task.note].join(" ")),
      ),
    ...SET_DOWN.flatMap((kind) =>
      room
        .all(kind)
        .map((/** @type {{id: string, name: string, note?: string}} */ one) =>
          entry("label", one.name, "", `/room/${kind}/${one.id}`, one.note),
        ),
    ),
    ...Object.values(contracts).map((spec) => entry("calculation", spec.title, spec.purpose, `/bench/${spec.name}`)),
  ];
}

/** @type {("label" | "source_water" | "test_kit" | "own_species" | "own_plant")[]} */
const SET_DOWN = ["label", "source_water", "test_kit", "own_species", "own_plant"];

/** The groups in the order in which they are shown. */
export const GROUPS = ["tank", "animals", "plants", "task", "note", "label", "calculation"];

/**
 * Entries that hold every word; where a title begins with the words it comes first, then where it holds them, then the
 * newest.
 * @param {Entry[]} entries
 * @param {string} words
 * @param {Record<string, any>} contracts by name, searched the Bench's own way
 * @returns {{kind: string, found: Found[]}[]} groups that hold something
 */
export function find(entries, words, contracts) {
  const wanted = plain(words).split(/\s+/).filter(Boolean);
  if (wanted.length === 0) return [];
  const shelved = new Set(shelf(contracts, words).flatMap((one) => one.entries.map((spec) => `/bench/${spec.name}`)));
  const hit = entries.filter((one) =>
    one.kind === "calculation" ? shelved.has(one.path) : wanted.every((word) => one.words.includes(word)),
  );
  const rank = (/** @type {Entry} */ one) => {
    const title = plain(one.title);
    return title.startsWith(wanted.join(" ")) ? 2 : wanted.every((word) => title.includes(word)) ? 1 : 0;
  };
  const found = hit.toSorted(
    (a, b) => rank(b) - rank(a) || (a.at < b.at ? 1 : a.at > b.at ? -1 : a.title.localeCompare(b.title)),
  );
  return GROUPS.map((kind) => ({ kind, found: found.filter((one) => one.kind === kind) })).filter(
    (group) => group.found.length > 0,
  );
}
