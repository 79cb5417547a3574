/**
 * Finding by words what a room holds (tanks, animals, plants, notes, tasks, labels), calculations, and what can go
 * wrong. Accents and case do not matter. Pure.
 */
import { plain } from "../../figures/plain_text.js";
import { plants_of } from "../life/plants.js";
import { name_of, stock_of } from "../life/stock.js";
import { of_tank } from "../of_tank.js";

/** @import { Contract } from "../../types/contract.js" */
/** @import { Records, Tank, View } from "../../types/views.js" */

/** The groups in the order in which they are shown. */
const GROUPS = /** @type {const} */ (["tank", "incident", "animals", "plants", "task", "note", "label", "calculation"]);
/** What the page of labels and waters lists. */
const LABELLED = /** @type {const} */ (["label", "source_water", "test_kit", "own_species", "own_plant"]);

/**
 * @typedef {typeof GROUPS[number]} Group
 * @typedef {{kind: Group, title: string, also: string, path: string}} Found `also`: what is said beside the title
 * @typedef {{code: string, name: string, words: string}} Incident
 * @typedef {Found & {words: string, at: string}} Entry `words`: all that is searched
 */

/**
 * Everything that can be found in a room.
 * @param {Pick<Records, "all">} room
 * @param {Record<string, Contract | undefined>} contracts by name
 * @param {number} now ms
 * @param {{note: (note: View<"note">) => string, task: (task: View<"task">) => string, incidents?: Incident[]}} said
 * how this phone says them, whatever words the record holds; `incidents`: what can go wrong, by everyday words
 * @returns {Entry[]}
 */
export function findable(room, contracts, now, said) {
  const tanks = room.all("tank");
  const name_of_tank = (/** @type {string | undefined} */ id) => tanks.find((tank) => tank.id === id)?.name ?? "";
  return [
    ...tanks.map(({ id, name, place, note }) => entry("tank", name, place, `/tank/${id}`, [note])),
    ...(tanks.length === 0 ? [] : (said.incidents ?? [])).map(({ code, name, words }) =>
      entry("incident", name, "", `/incidents?what=${code}`, [words]),
    ),
    ...tanks.flatMap((tank) => living(room, tank, now)),
    ...room.all("note").map((note) => {
      const path = note.tank ? `/tank/${note.tank}/history` : "/";
      return entry("note", said.note(note), name_of_tank(note.tank), path, [note.text], note.at);
    }),
    ...room
      .all("task")
      .map((task) =>
        entry("task", said.task(task), name_of_tank(task.tank), `/task/${task.id}`, [task.title, task.note]),
      ),
    ...LABELLED.flatMap((kind) =>
      room.all(kind).map(({ id, name, note }) => entry("label", name, "", `/room/${kind}/${id}`, [note])),
    ),
    ...Object.values(contracts).flatMap((spec) =>
      spec ? [entry("calculation", spec.title, spec.purpose, bench_path(spec.name))] : [],
    ),
  ];
}

/**
 * The animals and plants of one tank.
 * @param {Pick<Records, "all">} room
 * @param {Tank} tank
 * @param {number} now ms
 */
function living(room, { id, name }, now) {
  const { animals } = stock_of(of_tank(room.all("stock_change"), id), now);
  const { growing } = plants_of(of_tank(room.all("planting"), id));
  return [
    ...animals.map(({ species }) =>
      entry("animals", name_of("species", species), name, `/tank/${id}/stock`, [species]),
    ),
    ...growing.map(({ species }) => entry("plants", name_of("plants", species), name, `/tank/${id}/plants`, [species])),
  ];
}

/**
 * @param {Group} kind
 * @param {string} title
 * @param {string | undefined} also
 * @param {string} path
 * @param {(string | undefined)[]} [more] what is searched too
 * @param {string} [at]
 * @returns {Entry}
 */
const entry = (kind, title, also = "", path, more = [], at = "") => ({
  kind,
  title,
  also,
  path,
  at,
  words: plain([title, also, ...more].join(" ")),
});

/** @param {string} calculation */
const bench_path = (calculation) => `/bench/${calculation}`;

/**
 * Entries that hold every word. Titles that begin with the words come first, then titles that hold them, then the
 * newest.
 * @param {Entry[]} entries
 * @param {string} words
 * @param {(words: string) => {name: string}[]} shelved the calculations that the Bench finds by these words
 * @returns {{kind: Group, found: Found[]}[]} groups that hold something
 */
export function find(entries, words, shelved) {
  const wanted = plain(words).split(/\s+/).filter(Boolean);
  if (wanted.length === 0) return [];
  const calculations = new Set(shelved(words).map(({ name }) => bench_path(name)));
  const hit = entries.filter((one) =>
    one.kind === "calculation" ? calculations.has(one.path) : wanted.every((word) => one.words.includes(word)),
  );
  const rank = (/** @type {Entry} */ one) => {
    const title = plain(one.title);
    return title.startsWith(wanted.join(" ")) ? 2 : wanted.every((word) => title.includes(word)) ? 1 : 0;
  };
  const found = [...hit].sort(
    (a, b) => rank(b) - rank(a) || (a.at < b.at ? 1 : a.at > b.at ? -1 : a.title.localeCompare(b.title)),
  );
  return GROUPS.map((kind) => ({ kind, found: found.filter((one) => one.kind === kind) })).filter(
    (group) => group.found.length > 0,
  );
}
