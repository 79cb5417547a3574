/** The readings that stand, as a table for a spreadsheet: CSV (RFC 4180), the same columns as the server writes. */
import { harmless } from "../figures/harmless_text.js";

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
      tank: harmless(names.get(reading.tank)),
      tank_id: reading.tank,
      by: harmless(name_of(reading.meta.made_by)),
      note: harmless(reading.note),
      unit: harmless(reading.unit),
    }));
  return csv_lines([COLUMNS, ...rows.map((row) => COLUMNS.map((name) => row[name] ?? ""))]);
}

/** Rows of cells as RFC 4180 has them. @param {(readonly unknown[])[]} rows */
export const csv_lines = (rows) => rows.map((cells) => `${cells.map(cell).join(",")}\r\n`).join("");

/** @param {unknown} value */
function cell(value) {
  const text = String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
