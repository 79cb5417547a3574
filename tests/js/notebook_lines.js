/** One notebook from standard input, read as the phone reads it: records with their ids, and errors by row. */
import { readFileSync } from "node:fs";
import { install } from "../../pwa/contracts.js";
import { cells, id_by_content } from "../../pwa/data/notebook_file.js";
import { cells_of, date_order, decimal_sign, figures_in, read_rows } from "../../pwa/advice/notebook.js";
import { recognised, units_said } from "../../pwa/advice/notebook.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());
const { text, tanks, ids, now } = JSON.parse(readFileSync(0, "utf8"));
const { header, rows } = cells(text);
const columns = recognised(header);
const dates = date_order(cells_of(rows, columns, "date"));
const decimals = decimal_sign(figures_in(rows, columns));
const said = units_said(header, columns);
const known = { dates: dates ?? "mdy", decimals: decimals ?? /** @type {const} */ ("point") };
const { made, wrong } = read_rows(rows, { columns, ...known, ...said, tanks: ids, one_tank: tanks[0].id }, tanks, now);
const answer = {
  ...{ columns, dates, decimals, said },
  made: made.map(({ kind, fields, row }) => [row, kind, id_by_content(kind, fields), fields]),
  wrong: wrong.map(({ row, column, code }) => [row, column, code]),
};
console.log(JSON.stringify(answer));
