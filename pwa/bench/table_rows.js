/**
 * The rows of a shared table, to pick from: each with its name, a second name, and the key that the contract takes.
 */
import { table } from "../calc/tables.js";
import { plain } from "../figures/plain_text.js";

/** @typedef {{key: string, name: string, also: string}} PickRow */

/**
 * All rows of a table and the keepers' own, by name.
 * @param {"species" | "plants" | "salts"} name
 * @param {{name: string}[]} [own]
 * @returns {PickRow[]}
 */
export function pick_rows(name, own = []) {
  const { rows } = table(name);
  return [
    ...Object.entries(rows).map(([key, row]) => pick_row(key, row)),
    ...own.map((one) => pick_row(one.name, one)),
  ].sort((a, b) => a.name.localeCompare(b.name));
}

/** @param {string} key @param {{name?: string, label?: string}} row @returns {PickRow} */
function pick_row(key, row) {
  const name = row.name ?? row.label ?? key;
  return { key, name, also: key === name || /^[a-z0-9_]+$/.test(key) ? "" : key };
}

/** Rows that hold every word, in the name, the second name or the key. @param {PickRow[]} rows @param {string} words */
export function rows_with(rows, words) {
  const wanted = plain(words).split(/\s+/).filter(Boolean);
  return rows.filter((row) => wanted.every((word) => plain(`${row.name} ${row.also} ${row.key}`).includes(word)));
}
