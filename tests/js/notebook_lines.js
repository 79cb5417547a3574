/** One notebook from standard input, read as the phone reads it: records with their ids, and errors by row. */
import { readFileSync } from "node:fs";
import { install } from "../../pwa/contracts.js";
import { cells, id_by_content } from "../../pwa/data/notebook_file.js";
import { cells_of, date_order, decimal_sign, figures_in, read_rows } from "../../pwa/advice/notebook.js";
import { own_kind, own_tanks_named, read_own, recognised, units_said } from "../../pwa/advice/notebook.js";
import { shared_bundle } from "./shared_bundle.js";

/** @import { Made, Wrong } from "../../pwa/advice/notebook.js" */

install(shared_bundle());
const { text, tanks, ids, now, kits = [] } = JSON.parse(readFileSync(0, "utf8"));
const { header, rows } = cells(text);
const kind = own_kind(header);
console.log(JSON.stringify(kind ? own_table(kind) : notebook()));

/** @param {Made["kind"]} kind */
function own_table(kind) {
  const named = own_tanks_named(header, rows, tanks);
  return { named, ...in_short(read_own(kind, header, rows, ids, tanks, now, (_, id) => kits.includes(id))) };
}

function notebook() {
  const columns = recognised(header);
  const dates = date_order(cells_of(rows, columns, "date"));
  const decimals = decimal_sign(figures_in(rows, columns));
  const said = units_said(header, columns);
  const known = { dates: dates ?? "mdy", decimals: decimals ?? /** @type {const} */ ("point") };
  const read = read_rows(rows, { columns, ...known, ...said, tanks: ids, one_tank: tanks[0].id }, tanks, now);
  return { columns, dates, decimals, said, ...in_short(read) };
}

/** @param {{made: Made[], wrong: Wrong[]}} read */
function in_short({ made, wrong }) {
  return {
    made: made.map(({ kind, fields, row, id }) => [row, kind, id ?? id_by_content(kind, fields), fields]),
    wrong: wrong.map(({ row, column, code }) => [row, column, code]),
  };
}
