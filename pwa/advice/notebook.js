/**
 * A notebook kept elsewhere, read as records: its columns, its dates and decimals, its tanks, and what is wrong in
 * which row. Nothing is guessed where two readings are possible. Pure.
 */
import { check_fields, kind_of } from "../contracts.js";
import { unquoted } from "../figures/harmless_text.js";
import { plain } from "../figures/plain_text.js";
import { convert } from "../figures/units.js";

/** @import { FieldError } from "../contracts.js" */
/** @import { View } from "../types/views.js" */

/**
 * @typedef {View<"reading">["parameter"]} Parameter
 * @typedef {"ignore" | "date" | "time" | "tank" | "note" | "litres" | "percent" | "feed_g" | "food" | Parameter} Column
 * @typedef {"dmy" | "mdy" | "ymd"} DateOrder
 * @typedef {"comma" | "point"} Decimal
 * @typedef {object} Choices what the keeper chose once
 * @property {Column[]} columns by their place in the row
 * @property {DateOrder | null} dates null: not chosen yet
 * @property {Decimal | null} decimals
 * @property {Partial<Record<Parameter, "ion" | "n">>} basis
 * @property {"L" | "US gal" | "UK gal"} volume
 * @property {"°C" | "°F"} warmth
 * @property {Record<string, string>} tanks the id of each tank named in the file; "" for one that is left out
 * @property {string} one_tank where no column names the tank
 * @typedef {{row: number, text: string, column: Column, code: "date" | "future" | "number" | "range" | "tank" |
 * "nothing", error?: FieldError}} Wrong `row` as a spreadsheet counts, the header being 1
 * @typedef {{column: Column, value: number | null, kind: Made["kind"], fields: Made["fields"]}} Entry
 * @typedef {{kind: "reading" | "water_change" | "feeding", fields: Record<string, unknown> & {tank: string, at:
 * string}, row: number, id?: string}} Made `id`: where the table says it; else it follows from the fields
 */

/** Words of a heading, in three languages, by the column that they mean; the first that fits counts. */
const HEADINGS = /** @type {[Column, RegExp][]} */ ([
  ["date", /^(date|datum|at|when|day|tag|jour|wann|quand)\b/],
  ["time", /^(time|uhrzeit|zeit|heure|hour)\b/],
  ["tank", /^(tank|aquarium|becken|bac|pool)s?\b/],
  ["total_ammonia", /ammoni|\bnh[34]\b|\btan\b/],
  ["nitrite", /nitrit|\bno2\b/],
  ["nitrate", /nitrat|\bno3\b/],
  ["ph", /^ph\b/],
  ["temperature", /temp|^°?[cf]$/],
  ["kh", /^kh\b|\bdkh\b|carbonat|karbonat|alkalinit/],
  ["gh", /^gh\b|\bdgh\b|general hardness|gesamth|durete/],
  ["phosphate", /phosph|\bpo4\b/],
  ["conductivity", /conduct|leitf|\bec\b|µs/],
  ["oxygen", /oxygen|sauerstoff|oxygene|\bo2\b/],
  ["chlorine", /^chlor/],
  ["percent", /(change|wechsel).*%|%.*(change|wechsel)/],
  ["litres", /change|wechsel|liters? out|litres?|gallons?|\bgal\b/],
  ["feed_g", /\bfed\b|feed|futterung|(food|futter|nourri).*\b(g|gram\w*)\b/],
  ["food", /food|futter|nourri|aliment/],
  ["note", /note|comment|bemerk|notiz|remarq/],
]);
/** Those read as the ion or as nitrogen. */
export const WITH_BASIS = /** @type {Parameter[]} */ (["total_ammonia", "nitrite", "nitrate"]);
/** For these parameters "<0.25" is a reading below the kit's lowest step; for pH and temperature it is an error. */
const FROM_ZERO = /** @type {Column[]} */ ([...WITH_BASIS, "phosphate", "oxygen", "chlorine"]);
/** What a parameter is read in where the record holds a unit. @type {Partial<Record<Column, string>>} */
const UNITS = { temperature: "°C", kh: "°dKH", gh: "°dGH", phosphate: "mg/L", conductivity: "µS/cm", oxygen: "mg/L" };
/** @type {Column[]} */
export const COLUMNS = ["ignore", ...HEADINGS.map(([column]) => column)];
const OTHERS = ["ignore", "date", "time", "tank", "note", "litres", "percent", "feed_g", "food"];
/** @param {Column} column @returns {column is Parameter} */
export const is_parameter = (column) => !OTHERS.includes(column);

/** The column that a heading means; each but "ignore" once. @param {readonly string[]} header @returns {Column[]} */
export function recognised(header) {
  /** @type {Set<Column>} */ const taken = new Set();
  return header.map((heading) => {
    const words = plain(heading).trim();
    const found = HEADINGS.find(([column, pattern]) => !taken.has(column) && pattern.test(words))?.[0] ?? "ignore";
    taken.add(found);
    return found;
  });
}

/** What the headings say of units and basis. @param {readonly string[]} header @param {Column[]} columns */
export function units_said(header, columns) {
  const heading = (/** @type {Column} */ column) => plain(header[columns.indexOf(column)] ?? "");
  /** @type {Choices["basis"]} */ const basis = {};
  for (const parameter of WITH_BASIS)
    if (/-n\b|\bn\)|as n\b|als n\b/.test(heading(parameter))) basis[parameter] = "n";
    else if (/nh[34]|no[23]|ion/.test(heading(parameter))) basis[parameter] = "ion";
  return {
    basis,
    volume: /** @type {Choices["volume"]} */ (/gal/.test(heading("litres")) ? "US gal" : "L"),
    warmth: /** @type {Choices["warmth"]} */ (/°\s*f|\(f\)|fahrenheit|\bf$/.test(heading("temperature")) ? "°F" : "°C"),
  };
}

const NUMBERS_OF_DATE = /^(\d{1,4})[./-](\d{1,2})[./-](\d{1,4})(?:[T ,]+(.*))?$/;

/**
 * The order of day, month and year that the dates allow: "dmy" or "mdy" where one of them proves it, null where both
 * are possible.
 * @param {readonly string[]} cells @returns {DateOrder | null}
 */
export function date_order(cells) {
  const parts = cells.flatMap((cell) => {
    const found = NUMBERS_OF_DATE.exec(cell.trim());
    return found && found[1].length < 3 ? [[Number(found[1]), Number(found[2]), cell.includes(".") ? 1 : 0]] : [];
  });
  if (parts.length === 0) return "ymd";
  const day_first = parts.some(([a, , dots]) => a > 12 || dots === 1);
  const month_first = parts.some(([, b]) => b > 12);
  return day_first === month_first ? null : day_first ? "dmy" : "mdy";
}

/**
 * The decimal sign that the figures prove; null where "1,234" could be either.
 * @param {readonly string[]} cells @returns {Decimal | null}
 */
export function decimal_sign(cells) {
  const clean = cells.map((cell) => cell.replace(/[^\d.,]/g, ""));
  const proves = (/** @type {string} */ sign, /** @type {string} */ other) =>
    clean.some(
      (cell) =>
        new RegExp(`^\\d*[${sign}](\\d{1,2}|\\d{4,})$|^0[${sign}]\\d+$`).test(cell) ||
        (cell.includes(sign) && cell.lastIndexOf(sign) > cell.indexOf(other) && cell.includes(other)),
    );
  const [comma, point] = [proves(",", "."), proves(".", ",")];
  if (comma !== point) return comma ? "comma" : "point";
  return comma || clean.some((cell) => /[.,]/.test(cell)) ? null : "point";
}

/** The cells of all columns of figures. @param {string[][]} rows @param {Column[]} columns @returns {string[]} */
export const figures_in = (rows, columns) =>
  rows.flatMap((row) => row.filter((cell, i) => cell.trim() && is_figure(columns[i])));
/** @param {Column} column */
const is_figure = (column) => is_parameter(column) || ["litres", "percent", "feed_g"].includes(column);

/** The cells of one column. @param {string[][]} rows @param {Column[]} columns @param {Column} column */
export function cells_of(rows, columns, column) {
  const at = columns.indexOf(column);
  return at < 0 ? [] : rows.flatMap((row) => (row[at]?.trim() ? [row[at].trim()] : []));
}

/** The tanks named, each once. @param {string[][]} rows @param {Column[]} columns @returns {string[]} */
export const tanks_named = (rows, columns) => [...new Set(cells_of(rows, columns, "tank"))];

/**
 * The id of the tank that a name means: the same letters, whatever their case and accents.
 * @param {string} name @param {readonly {id: string, name: string}[]} tanks
 */
export const tank_named = (name, tanks) => tanks.find((tank) => plain(tank.name) === plain(name))?.id ?? "";

/**
 * A moment in UTC, by this phone's own time zone; null if the date or the time does not exist.
 * @param {string} date @param {string} time "" for noon, because nobody wrote one @param {DateOrder} order
 * @returns {string | null}
 */
export function moment_of(date, time, order) {
  if (/^\d{4}-\d\d-\d\dT[\d:.]+Z$/.test(date)) return new Date(date).toJSON();
  const found = NUMBERS_OF_DATE.exec(date.trim());
  if (!found) return null;
  const numbers = [Number(found[1]), Number(found[2]), Number(found[3])];
  const [year, month, day] =
    found[1].length === 4
      ? numbers
      : order === "mdy"
        ? [numbers[2], numbers[0], numbers[1]]
        : [numbers[2], numbers[1], numbers[0]];
  const full = year < 100 ? 2000 + year : year;
  const clock = /^(\d{1,2})[:.h](\d{2})(?::\d{2})?\s*([ap])?\.?m?\.?$/i.exec((time || found[4] || "12:00").trim());
  if (!clock) return null;
  const [hour, minute] = [Number(clock[1]), Number(clock[2])];
  const shifted = clock[3] ? (hour % 12) + (clock[3].toLowerCase() === "p" ? 12 : 0) : hour;
  const at = new Date(full, month - 1, day, shifted, minute);
  const same = at.getFullYear() === full && at.getMonth() === month - 1 && at.getDate() === day;
  return same && shifted < 24 && minute < 60 ? at.toJSON() : null;
}

/** A figure; null if it is none. A unit after it is let go. @param {string} text @param {Decimal} decimals */
export function figure_of(text, decimals) {
  const typed = text
    .trim()
    .replace(/[−–]/g, "-")
    .replace(/\s*(mg\/l|ppm|°?\s?[cf]|°?d[kg]?h|l|gal|g|%|µs\/cm)$/i, "");
  const group = decimals === "comma" ? "." : ",";
  const plain_form = typed
    .replaceAll(group, "")
    .replace(/[ \u00a0\u202f']/g, "")
    .replace(",", ".");
  const grouped =
    decimals === "comma"
      ? /^-?\d{1,3}(\.\d{3})*(,\d+)?$|^-?\d+(,\d+)?$/
      : /^-?\d{1,3}(,\d{3})*(\.\d+)?$|^-?\d+(\.\d+)?$/;
  return grouped.test(typed.replace(/[ \u00a0\u202f']/g, "")) ? Number(plain_form) : null;
}

/**
 * The kit's lowest step in "<0.25": the reading lies below it. Null if it is written otherwise.
 * @param {string} text @param {Decimal} decimals
 */
function below(text, decimals) {
  const least = /^\s*<\s*(.*)$/.exec(text);
  const figure = least ? figure_of(least[1], decimals) : null;
  return figure !== null && figure > 0 ? figure : null;
}

/**
 * The records of all rows, and what is wrong in the others: a row with an error makes no record at all.
 * @param {string[][]} rows without the header @param {Choices & {dates: DateOrder, decimals: Decimal}} choices
 * @param {readonly {id: string, water_l: number}[]} tanks @param {number} now ms
 * @returns {{made: Made[], wrong: Wrong[]}}
 */
export function read_rows(rows, choices, tanks, now) {
  /** @type {Made[]} */ const made = [];
  /** @type {Wrong[]} */ const wrong = [];
  for (const [i, cells] of rows.entries()) {
    const { records, errors } = read_row(cells, i + 2, choices, tanks, now);
    made.push(...records);
    wrong.push(...errors);
  }
  return { made, wrong };
}

/**
 * @param {string[]} cells @param {number} row @param {Choices & {dates: DateOrder, decimals: Decimal}} choices
 * @param {readonly {id: string, water_l: number}[]} tanks @param {number} now
 * @returns {{records: Made[], errors: Wrong[]}}
 */
function read_row(cells, row, choices, tanks, now) {
  const cell = (/** @type {Column} */ column) => cells[choices.columns.indexOf(column)]?.trim() ?? "";
  /** @type {Wrong[]} */ const errors = [];
  const no = (
    /** @type {Column} */ column,
    /** @type {Wrong["code"]} */ code,
    /** @type {FieldError | undefined} */ error = undefined,
  ) => void errors.push({ row, text: cell(column), column, code, ...(error ? { error } : {}) });
  const named = choices.columns.includes("tank");
  const tank_id = named ? choices.tanks[cell("tank")] : choices.one_tank;
  if (named && tank_id === "" && cell("tank")) return { records: [], errors };
  const tank = tanks.find(({ id }) => id === tank_id);
  if (!tank) no("tank", "tank");
  const at = moment_of(cell("date"), cell("time"), choices.dates);
  if (!at) no("date", "date");
  else if (Date.parse(at) > now) no("date", "future");
  if (!tank || !at) return { records: [], errors };
  const found = entries(cell, choices, tank, at);
  /** @type {Made[]} */ const records = [];
  for (const { column, value, kind, fields } of found) {
    const [error] = value === null ? [] : check_fields(kind_of(kind).fields, fields).errors;
    if (value === null) no(column, "number");
    else if (error) no(column, "range", error);
    else records.push({ kind, fields, row });
  }
  if (found.length === 0) no("ignore", "nothing");
  return { records: errors.length ? [] : records, errors };
}

/**
 * @param {(column: Column) => string} cell @param {Choices & {decimals: Decimal}} choices
 * @param {{id: string, water_l: number}} tank @param {string} at
 * @returns {Entry[]}
 */
function entries(cell, { columns, decimals, basis, volume, warmth }, { id, water_l }, at) {
  const note = cell("note") ? { note: cell("note") } : {};
  return columns.flatMap(
    /** @returns {Entry[]} */ (column) => {
      if (!is_figure(column) || !cell(column)) return [];
      let value = figure_of(cell(column), decimals);
      const shared = { tank: id, at };
      if (is_parameter(column)) {
        const least = FROM_ZERO.includes(column) ? below(cell(column), decimals) : null;
        if (least !== null) value = 0;
        const held = column === "temperature" && value !== null ? rounded(convert(value, warmth, "°C")) : value;
        const how = {
          ...(least !== null ? { steps: [0, least] } : {}),
          ...(basis[column] ? { basis: basis[column] } : {}),
          ...(UNITS[column] ? { unit: UNITS[column] } : {}),
        };
        return [
          { column, value, kind: "reading", fields: { ...shared, parameter: column, value: held, ...how, ...note } },
        ];
      }
      if (column === "feed_g") {
        const food = cell("food") ? { food: cell("food") } : {};
        return [{ column, value, kind: "feeding", fields: { ...shared, feed_g: value, ...food, ...note } }];
      }
      const litres =
        value === null ? null : column === "percent" ? (value / 100) * water_l : convert(value, volume, "L");
      if (litres === 0) return [];
      const fields = { ...shared, litres: rounded(litres ?? 0), fraction: rounded((litres ?? 0) / water_l), ...note };
      return [{ column, value, kind: "water_change", fields }];
    },
  );
}

/** Without the digits that a conversion adds. @param {number} value */
const rounded = (value) => Number(value.toPrecision(6));

/** What tells the tables that this app writes from a notebook, and the kinds that are taken in again. */
const OWN = ["at", "tank", "tank_id", "by", "id"];
const OWN_KINDS = /** @type {const} */ (["reading", "water_change", "feeding"]);
/** The kind of a table that this app wrote; null for a notebook. @param {readonly string[]} header */
export const own_kind = (header) =>
  (OWN.every((name) => header.includes(name)) &&
    OWN_KINDS.find((kind) => kind_of(kind).fields.every(({ name, required }) => !required || header.includes(name)))) ||
  null;

/** The tanks named in a table of our own whose ids are not here. @param {string[]} header @param {string[][]} rows */
export function own_tanks_named(header, rows, /** @type {readonly {id: string}[]} */ tanks) {
  const here = new Set(tanks.map(({ id }) => id));
  const cell = cells_by_name(header);
  return [...new Set(rows.filter((row) => !here.has(cell(row, "tank_id"))).map((row) => cell(row, "tank")))];
}

/** @param {readonly string[]} header @returns {(row: readonly string[], name: string) => string} */
const cells_by_name = (header) => (row, name) => unquoted(row[header.indexOf(name)]?.trim() ?? "");

/**
 * A table of our own: each record keeps its id, so what is here already stays as it is.
 * @param {Made["kind"]} kind @param {string[]} header @param {string[][]} rows
 * @param {Record<string, string>} ids of tanks by name; "": left out
 * @param {readonly {id: string}[]} tanks @param {number} now ms
 * @param {(kind: string, id: string) => boolean} here whether a record is in this room
 * @returns {{made: Made[], wrong: Wrong[]}}
 */
export function read_own(kind, header, rows, ids, tanks, now, here) {
  /** @type {Made[]} */ const made = [];
  /** @type {Wrong[]} */ const wrong = [];
  const cell = cells_by_name(header);
  const known = new Set(tanks.map(({ id }) => id));
  for (const [i, row] of rows.entries()) {
    const no = (/** @type {Wrong["column"]} */ column, /** @type {Wrong["code"]} */ code, text = "", more = {}) =>
      wrong.push({ row: i + 2, text, column, code, ...more });
    const tank = known.has(cell(row, "tank_id")) ? cell(row, "tank_id") : ids[cell(row, "tank")];
    if (tank === "") continue;
    const at = moment_of(cell(row, "at"), "", "ymd");
    if (!known.has(tank)) no("tank", "tank", cell(row, "tank"));
    else if (!at) no("date", "date", cell(row, "at"));
    else if (Date.parse(at) > now) no("date", "future", cell(row, "at"));
    else {
      /** @type {Made["fields"]} */
      const fields = { ...own_fields(kind, header, (name) => cell(row, name), here), tank, at };
      const [error] = check_fields(kind_of(kind).fields, fields).errors;
      if (error) no("ignore", "range", cell(row, error.field), { error });
      else made.push({ kind, fields, row: i + 2, id: cell(row, "id") });
    }
  }
  return { made, wrong };
}

/**
 * The fields of a record by their names; what refers to a record that is not here is left out.
 * @param {Made["kind"]} kind @param {string[]} header @param {(name: string) => string} cell
 * @param {(kind: string, id: string) => boolean} here
 * @returns {Record<string, unknown>}
 */
function own_fields(kind, header, cell, here) {
  const filled = kind_of(kind).fields.filter(
    ({ name }) => header.includes(name) && name !== "supersedes" && cell(name) !== "",
  );
  const known = filled.filter((field) => !("refers_to" in field) || here(String(field.refers_to), cell(field.name)));
  return Object.fromEntries(known.map(({ name, type }) => [name, own_value(type, cell(name))]));
}

/** @param {string} type of the field @param {string} text */
function own_value(type, text) {
  if (type === "number") return figure_of(text, "point") ?? text;
  if (type !== "list") return text;
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}
