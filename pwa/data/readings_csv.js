/** The readings that stand, as a table for a spreadsheet: CSV (RFC 4180), the same columns as the server writes. */
/** @import { Reading, Tank } from "../types/views.js" */

const COLUMNS = /** @type {const} */ ([
  "at",
  "tank",
  "parameter",
  "value",
  "unit",
  "basis",
  "by",
  "note",
  "tank_id",
  "test",
  "id",
]);

/**
 * @param {Reading[]} readings @param {Tank[]} tanks @param {(keeper_id: string | null) => string | null} name_of
 * @returns {string} oldest first; lines end in CR LF
 */
export function readings_csv(readings, tanks, name_of) {
  const names = new Map(tanks.map((tank) => [tank.id, tank.name]));
  const rows = [...readings]
    .sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : a.id < b.id ? -1 : 1))
    .map((reading) => ({
      ...reading,
      tank: words(names.get(reading.tank)),
      tank_id: reading.tank,
      by: words(name_of(reading.meta.made_by)),
      note: words(reading.note),
      unit: words(reading.unit),
    }));
  return csv_lines([COLUMNS, ...rows.map((row) => COLUMNS.map((name) => row[name] ?? ""))]);
}

/** Rows of cells as RFC 4180 has them. @param {(readonly unknown[])[]} rows */
export const csv_lines = (rows) => rows.map((cells) => `${cells.map(cell).join(",")}\r\n`).join("");

/**
 * Signs that begin a formula, also in their full-width forms, at the start of a cell or after what parts cells or
 * lines. The server's twin is FORMULA in limnary/store/archive.py.
 */
const FORMULA = /(?:^|[;,\t\r\n])[ \t\r\n]*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r]/;

/** Text that a spreadsheet would run as a formula is quoted. @param {string | null | undefined} text */
export const words = (text) => (FORMULA.test(text ?? "") ? `'${text}` : (text ?? ""));

/** The text that `words` made harmless. @param {string} cell */
export const unquoted = (cell) => (cell.startsWith("'") && FORMULA.test(cell.slice(1)) ? cell.slice(1) : cell);

/** @param {unknown} value */
function cell(value) {
  const text = String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
