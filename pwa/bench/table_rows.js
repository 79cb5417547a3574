/** The rows of a shared table as a keeper picks from them: a name to read, a second name, the key that the contract takes. */
import { table } from "../calc/tables.js";
import { plain } from "./search.js";

/** @typedef {{key: string, name: string, also: string}} PickRow */

/** All rows of a table, by name. @param {string} name @returns {PickRow[]} */
export function pickRows(name) {
  const held = table(name);
  const rows = held.rows ?? held[name] ?? held.entries;
  return Object.entries(rows)
    .map(([key, row]) => pickRow(key, /** @type {any} */ (row)))
    .sort((a, b) => a.name.localeCompare(b.name));
}

/** @param {string} key @param {any} row @returns {PickRow} */
function pickRow(key, row) {
  const name = row.common_name ?? row.name ?? row.label ?? key;
  const also = row.scientific_name ?? row.formula ?? "";
  return { key, name, also: also === name ? "" : also };
}

/** Rows that hold every word, in the name, the second name or the key. @param {PickRow[]} rows @param {string} words */
export function rowsWith(rows, words) {
  const wanted = plain(words).split(/\s+/).filter(Boolean);
  return rows.filter((row) => wanted.every((word) => plain(`${row.name} ${row.also} ${row.key}`).includes(word)));
}
