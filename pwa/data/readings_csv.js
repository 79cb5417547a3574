/** The readings that stand, as a table for a spreadsheet: CSV (RFC 4180), column for column as the server writes it. */

const COLUMNS = ["at", "tank", "parameter", "value", "unit", "basis", "by", "note", "tank_id", "test", "id"];

/**
 * @param {any[]} readings that are to be seen @param {any[]} tanks @param {(keeper: string | null) => string | null} name_of
 * @returns {string} oldest first; lines end in CR LF
 */
export function readings_csv(readings, tanks, name_of) {
  const names = new Map(tanks.map((tank) => [tank.id, tank.name]));
  const rows = readings
    .toSorted((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : a.id < b.id ? -1 : 1))
    .map((one) => ({
      ...one,
      tank: words(names.get(one.tank)),
      tank_id: one.tank,
      by: words(name_of(one.meta.made_by)),
      note: words(one.note),
      unit: words(one.unit),
    }));
  return [COLUMNS, ...rows.map((row) => COLUMNS.map((name) => row[/** @type {keyof typeof row} */ (name)] ?? ""))]
    .map((cells) => `${cells.map(cell).join(",")}\r\n`)
    .join("");
}

/** What a spreadsheet would run as a formula is quoted. @param {string | null | undefined} text */
const words = (text) => (/^[=+\-@\t\r]/.test(text ?? "") ? `'${text}` : (text ?? ""));

/** @param {unknown} value */
function cell(value) {
  const text = String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
