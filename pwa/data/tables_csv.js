/**
 * Every record that stands as tables for a spreadsheet, one a kind: CSV (RFC 4180), byte for byte what the server's
 * `limnary export-csv` writes (limnary/store/tables.py). server/limnary/store/README.md describes them.
 */
import { harmless } from "../figures/harmless_text.js";
import { csv_lines } from "./readings_csv.js";
import { zip } from "./zip.js";

/** @import { Field, Kinds } from "../contracts.js" */
/** @typedef {{id: string, meta: {made_by: string | null}, [field: string]: unknown}} Shown */

/**
 * @param {{kinds: Kinds, all: (kind: string) => Shown[], name_of: (keeper_id: string | null) => string | null}} of
 * @returns {{name: string, text: string}[]} one file a kind of which there are records, and `columns.csv`
 */
export function tables({ kinds, all, name_of }) {
  const tanks = new Map(all("tank").map(({ id, name }) => [id, String(name)]));
  const files = Object.entries(/** @type {Record<string, {fields: readonly Field[]}>} */ (kinds))
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([kind, { fields }]) => ({
      kind,
      records: all(kind),
      fields: fields.filter(({ name }) => name !== "supersedes"),
    }))
    .filter(({ records }) => records.length > 0);
  const described = files.flatMap(({ kind, fields }) =>
    columns_of(fields).map((name) => {
      const field = fields.find((one) => one.name === name);
      return [kind, name, field?.label ?? "", field && "unit" in field ? field.unit : ""];
    }),
  );
  return [
    { name: "columns.csv", text: csv_lines([["file", "column", "label", "unit"], ...described]) },
    ...files.map(({ kind, records, fields }) => ({ name: `${kind}.csv`, text: table(records, fields) })),
  ];

  /** @param {Shown[]} records @param {readonly Field[]} fields */
  function table(records, fields) {
    const columns = columns_of(fields);
    const rows = [...records].sort(by_time).map((one) =>
      columns.map((name) => {
        if (name === "by") return harmless(name_of(one.meta.made_by));
        if (name === "tank_id") return cell_of(one.tank);
        return name === "tank" ? harmless(tanks.get(String(one.tank))) : cell_of(one[name]);
      }),
    );
    return csv_lines([columns, ...rows]);
  }
}

/** The same as one file. @param {Parameters<typeof tables>[0]} of @returns {Blob} a ZIP */
export const tables_zip = (of) =>
  zip(tables(of).map(({ name, text }) => ({ name, bytes: new TextEncoder().encode(text) })));

/** The record's own columns in the order of its kind; then who wrote it, its tank's id and its own. */
const columns_of = (/** @type {readonly Field[]} */ fields) => {
  const names = fields.map(({ name }) => name);
  return [...names, "by", ...(names.includes("tank") ? ["tank_id"] : []), "id"];
};

/** @param {Shown} a @param {Shown} b */
const by_time = (a, b) => {
  const [one, other] = [a, b].map(({ at = "", id }) => [String(at), id]);
  return one[0] === other[0] ? (one[1] < other[1] ? -1 : 1) : one[0] < other[0] ? -1 : 1;
};

/** A figure or a yes as it is, text made harmless, a list or an object as JSON. @param {unknown} value */
function cell_of(value) {
  if (value === undefined || value === null) return "";
  if (typeof value === "string") return harmless(value);
  return typeof value === "object" ? harmless(JSON.stringify(value)) : String(value);
}
