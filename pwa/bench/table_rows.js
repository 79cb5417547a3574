/** The rows of a shared table as a keeper picks from them: a name to read, a second name, the key that the contract takes. */
import { table } from "../calc/tables.js";
import { plain } from "./search.js";

/** @typedef {{key: string, name: string, also: string}} PickRow */

/** All rows of a table, by name. @param {string} name @returns {PickRow[]} */
export function pickRows(name) {
  return Object.entries(table(name).rows)
    .map(([key, row]) => pickRow(key, /** @type {any} */ (row)))
    .sort((a, b) => a.name.localeCompare(b.name));
}

/** @param {string} key @param {{name?: string, label?: string}} row @returns {PickRow} */
function pickRow(key, row) {
  const name = row.name ?? row.label ?? key;
  return { key, name, also: key === name || /^[a-z0-9_]+$/.test(key) ? "" : key };
}

/** Rows that hold every word, in the name, the second name or the key. @param {PickRow[]} rows @param {string} words */
export function rowsWith(rows, words) {
  const wanted = plain(words).split(/\s+/).filter(Boolean);
  return rows.filter((row) => wanted.every((word) => plain(`${row.name} ${row.also} ${row.key}`).includes(word)));
}
