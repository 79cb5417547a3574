/** A notebook brought along: columns, dates, decimals, units, tanks, errors by row, ids that follow from content. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { MOST_ROWS, cells, id_by_content, text_of } from "../../pwa/data/notebook_file.js";
import { install } from "../../pwa/contracts.js";
import { cells_of, date_order, decimal_sign, figure_of, figures_in } from "../../pwa/advice/notebook.js";
import { moment_of, read_rows, recognised, tank_named, tanks_named, units_said } from "../../pwa/advice/notebook.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());
const NOW = Date.parse("2026-05-10T08:00:00.000Z");
const TANKS = [
  { id: "tank-0001", name: "Schilfbecken", water_l: 100 },
  { id: "tank-0002", name: "Moss bowl", water_l: 20 },
];

/** A file with the choices that its own cells make. @param {string} text @param {object} [chosen] */
function read(text, chosen = {}) {
  const { header, rows } = cells(text);
  const columns = recognised(header);
  const dates = date_order(cells_of(rows, columns, "date"));
  const decimals = decimal_sign(figures_in(rows, columns));
  const tanks = Object.fromEntries(tanks_named(rows, columns).map((name) => [name, tank_named(name, TANKS)]));
  const choices = { columns, dates, decimals, tanks, one_tank: "tank-0001", ...units_said(header, columns), ...chosen };
  return { columns, dates, decimals, ...read_rows(rows, /** @type {any} */ (choices), TANKS, NOW) };
}

test("comma decimals with day-first dates, semicolons between the cells", () => {
  const got = read(
    "Datum;Uhrzeit;Becken;NH4;Nitrit (NO2);pH;Temperatur;Wechsel Liter;Bemerkung\n" +
      "03.04.2026;08:15;schilfbecken;0,25;0,05;7,2;24,5;;frisch\n14.04.2026;;Schilfbecken;0;;;;25;\n",
  );
  assert.deepEqual([got.dates, got.decimals, got.wrong], ["dmy", "comma", []]);
  assert.deepEqual(
    got.made.map(({ kind, fields }) => [kind, fields.parameter ?? fields.litres, fields.value ?? fields.fraction]),
    [
      ["reading", "total_ammonia", 0.25],
      ["reading", "nitrite", 0.05],
      ["reading", "ph", 7.2],
      ["reading", "temperature", 24.5],
      ["reading", "total_ammonia", 0],
      ["water_change", 25, 0.25],
    ],
  );
  assert.deepEqual(got.made[0].fields.note, "frisch");
  assert.equal(got.made[0].fields.at, new Date(2026, 3, 3, 8, 15).toJSON());
  assert.equal(got.made[0].fields.basis, "ion");
});

test("US dates with gallons and degrees Fahrenheit, tabs between the cells", () => {
  const got = read(
    "Date\tTime\tTemp (°F)\tNitrate-N\tGallons changed\tFood fed g\n4/25/2026\t7:30 pm\t77\t1,234.5\t5\t0.2\n",
  );
  assert.deepEqual([got.dates, got.decimals, got.wrong], ["mdy", "point", []]);
  const [warm, nitrate, change, meal] = got.made.map(({ fields }) => fields);
  assert.deepEqual([warm.value, warm.at], [25, new Date(2026, 3, 25, 19, 30).toJSON()]);
  assert.deepEqual([nitrate.value, nitrate.basis], [1234.5, "n"]);
  assert.deepEqual([change.litres, change.fraction, meal.feed_g], [18.9271, 0.189271, 0.2]);
});

test("what could be read two ways is not guessed", () => {
  assert.equal(date_order(["03/04/2026", "5/6/2026"]), null);
  assert.equal(date_order(["03/04/2026", "13/6/2026"]), "dmy");
  assert.equal(date_order(["13/04/2026", "4/13/2026"]), null, "no order fits both");
  assert.equal(date_order(["2026-04-03"]), "ymd");
  assert.equal(decimal_sign(["1,234", "7"]), null);
  assert.equal(decimal_sign(["1,234", "7,5"]), "comma");
  assert.equal(decimal_sign(["1.234,5"]), "comma");
  assert.equal(decimal_sign(["0,125"]), "comma");
  assert.equal(decimal_sign(["7.5", "7,5"]), null);
  assert.equal(decimal_sign(["7", "8"]), "point");
  assert.deepEqual(
    [figure_of("1,234", "point"), figure_of("1,234", "comma"), figure_of("7,5", "point")],
    [1234, 1.234, null],
  );
  assert.deepEqual(
    [figure_of("0.5 mg/L", "point"), figure_of("−2", "point"), figure_of("nd", "point")],
    [0.5, -2, null],
  );
});

test("dates and times that do not exist are none", () => {
  assert.equal(moment_of("31.02.2026", "", "dmy"), null);
  assert.equal(moment_of("1.2.26", "25:00", "dmy"), null);
  assert.equal(moment_of("4/25/26", "12:05 am", "mdy"), new Date(2026, 3, 25, 0, 5).toJSON());
  assert.equal(moment_of("2026-04-25T07:30:00.000Z", "", "ymd"), "2026-04-25T07:30:00.000Z");
  assert.equal(moment_of("2026-04-25 18:40", "", "ymd"), new Date(2026, 3, 25, 18, 40).toJSON());
});

test("each broken row is named with what is wrong, and makes no record", () => {
  const got = read(
    "date,tank,nitrite,ph\n2026-04-01,Moss bowl,0.1,7\n2026-04-31,Moss bowl,0.1,7\n2026-04-02,Nobody,0.1,7\n" +
      "2026-04-03,Moss bowl,abc,7\n2026-04-04,Moss bowl,200000,7\n2027-01-01,Moss bowl,0.1,7\n" +
      "2026-04-05,Moss bowl,,\n,Moss bowl,1,7\n",
    { tanks: { "Moss bowl": "tank-0002", Nobody: "gone" } },
  );
  assert.deepEqual(
    got.wrong.map(({ row, code }) => [row, code]),
    [
      [3, "date"],
      [4, "tank"],
      [5, "number"],
      [6, "range"],
      [7, "future"],
      [8, "nothing"],
      [9, "date"],
    ],
  );
  assert.deepEqual(
    got.made.map(({ row }) => row),
    [2, 2],
  );
  assert.match(got.wrong[3].error?.allowed ?? "", /100,?000/);
});

test("a tank that is left out leaves its rows out without an error", () => {
  const got = read("date,tank,ph\n2026-04-01,Moss bowl,7\n2026-04-01,Old,7\n");
  assert.deepEqual([got.made.length, got.wrong], [1, []]);
});

test("the same row makes the same id in whatever order its fields stand; another value another id", () => {
  const id = id_by_content("reading", { tank: "t", at: "a", value: 1 });
  assert.equal(id, id_by_content("reading", { value: 1, at: "a", tank: "t" }));
  assert.notEqual(id, id_by_content("reading", { tank: "t", at: "a", value: 2 }));
  assert.match(id, /^nb-[0-9a-f]{40}$/);
});

test("files of older spreadsheets are read, too", () => {
  assert.equal(text_of(new Uint8Array([0xb0, 0x43]).buffer), "°C");
  assert.equal(text_of(new TextEncoder().encode("°C").buffer), "°C");
  assert.equal(text_of(new Uint8Array([0xff, 0xfe, 0x41, 0]).buffer), "A");
});

test("all rows are there, also those beyond what is taken at once: the page refuses them in words", () => {
  assert.equal(cells(`date,ph\n${"2026-04-01,7\n".repeat(MOST_ROWS + 1)}`).rows.length, MOST_ROWS + 1);
});
