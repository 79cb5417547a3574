/**
 * One tank's records as the input of `outlook`, `change_plan` and `stock_headroom`, exactly as their contracts want it.
 * Pure. What the records do not say is filled from the tank's usual figures or assumed, and named in `filled`;
 * what a contract would refuse is left out, and named in `left_out`.
 */
import { check_fields, field_named, input_of, run } from "../../contracts.js";
import { in_degrees } from "../hardness.js";
import { brought } from "../level.js";
import { CAREFUL } from "../limits.js";
import { set_up_here } from "../setup/setting_up.js";
import { stock_g, stock_of } from "../life/stock.js";

const HOUR = 3_600_000;
/** A phone whose clock is a little slow still counts what it has just recorded (assumption). */
const CLOCK_ERROR = HOUR;
/**
 * A tank that ran for so long before its first record is a running tank: what was changed and fed before, nobody
 * wrote down, so the belief begins shortly before the records, with mature bacteria (assumptions).
 */
const RUNNING_H = 60 * 24;
const RUN_IN_H = 14 * 24;
/** What the belief learns from. */
const LEARNT_FROM = ["total_ammonia", "nitrite", "nitrate", "ph", "temperature", "kh"];
/** The lists of the contracts, and the records they are made of. */
const LISTS = /** @type {const} */ (["readings", "changes", "doses", "feedings"]);

/**
 * @typedef {{code: string, value?: number}} Filled
 * @typedef {{list: string, id: string, at: string, message: string, allowed: string, parameter?: string}} LeftOut
 * @typedef {{tank: any, now_h: number, readings: any[], changes: any[], doses: any[], feedings: any[]}} Records
 * @typedef {{records: Records, start: number, filled: Filled[], left_out: LeftOut[]}} BeliefInput
 */

/**
 * @param {any} facts see facts.js
 * @returns {BeliefInput} `start`: ms from which the hours count: when it was first filled, as far as the records reach
 */
export function belief_input(facts) {
  const { tank, filled } = tank_of(facts);
  const until = facts.now + CLOCK_ERROR;
  const dated = Object.fromEntries(
    LISTS.map((list) => [list, facts[list].filter((/** @type {any} */ one) => time(one) <= until)]),
  );
  // One record of a wrong year must not take the whole forecast: what lies before the longest that the contracts take
  // is left out, and named.
  const oldest = until - input_of("outlook", "now_h").max * HOUR;
  const first = Math.min(
    ...LISTS.flatMap((list) => dated[list].map(time).filter((/** @type {number} */ at) => at >= oldest)),
    facts.now,
  );
  const said = Date.parse(facts.tank.started_at ?? "");
  const running = first - said > RUNNING_H * HOUR;
  if (Number.isNaN(said)) filled.push({ code: "start" });
  const began = Number.isNaN(said) ? first : running ? first - RUN_IN_H * HOUR : Math.min(said, first);
  const start = Math.max(began, oldest);

  /** @type {LeftOut[]} */ const left_out = [];
  const records = /** @type {any} */ ({ tank: running ? { ...tank, seeded: "mature_media" } : tank });
  for (const list of LISTS) {
    const { item, max_items } = input_of("outlook", list);
    records[list] = dated[list]
      .flatMap((/** @type {any} */ one) => {
        const said = SAYS[list](one, facts);
        if (!said) return [];
        const entry = { at_h: (time(one) - start) / HOUR, ...said };
        const [wrong] = [...check_fields(item.fields, entry).errors, ...strange(list, entry)];
        if (wrong)
          left_out.push({
            list,
            id: one.id,
            at: one.at,
            message: wrong.message,
            allowed: wrong.allowed,
            ...(one.parameter ? { parameter: one.parameter } : {}),
          });
        return wrong ? [] : [{ entry, id: one.id }];
      })
      .sort(in_order)
      .map((/** @type {any} */ one) => one.entry)
      .slice(-max_items);
  }
  const last_h = Math.max(0, ...LISTS.flatMap((list) => records[list].map((/** @type {any} */ one) => one.at_h)));
  // By the hour, so that the answer stands still between records.
  records.now_h = Math.max(Math.floor((facts.now - start) / HOUR), last_h);
  return { records, start, filled: filled.filter(({ code }) => code !== "seeded" || !running), left_out };
}

/**
 * Nitrogen that a source water brings into the tank, as the contracts name it.
 * @param {any} source
 * @param {any} label
 */
export const source_of = (source, label) => ({
  tan_mg_n_l: brought(source, "total_ammonia", label),
  nitrite_mg_n_l: brought(source, "nitrite", label),
  nitrate_mg_n_l: brought(source, "nitrate", label),
});

/**
 * The limits of limits.js as the contracts name them: ammonia's as free ammonia at the same pH and temperature.
 * @param {import("../limits.js").Limits} limits
 */
export function limits_of(limits) {
  const { ph, temperature_c, total_ammonia, nitrite, nitrate } = limits;
  const { nh3_mg_n_l } = run("free_ammonia", {
    tan_mg_n_l: total_ammonia.mg_n_l,
    ph: ph.value,
    temperature_c: temperature_c.value,
  });
  return { nh3_mg_n_l, nitrite_mg_n_l: nitrite.mg_n_l, nitrate_mg_n_l: nitrate.mg_n_l };
}

/** The contract's `tank`: its record, then its first readings, then what is assumed. @param {any} facts */
function tank_of({ tank, readings, now, feedings, stock = [], own_species = [] }) {
  /** @type {Filled[]} */ const filled = [];
  const { fields } = input_of("outlook", "tank");
  const usable = (/** @type {string} */ name, /** @type {any} */ value) => {
    const spec = field_named(fields, name);
    return value !== undefined && check_fields([spec], { [name]: value }).errors.length === 0;
  };
  const figure = (/** @type {"ph" | "temperature_c"} */ name, /** @type {string} */ parameter) => {
    if (usable(name, tank[name])) return tank[name];
    const read = readings.find((/** @type {any} */ one) => one.parameter === parameter && usable(name, one.value));
    filled.push({ code: name, value: read ? read.value : CAREFUL[name] });
    return read ? read.value : CAREFUL[name];
  };
  const hardness =
    tank.kh_dkh ??
    readings
      .filter((/** @type {any} */ one) => one.parameter === "kh")
      .map(in_degrees)
      .find((/** @type {any} */ value) => usable("kh_dkh", value));
  // Animals that were written down with their lengths weigh what those say; else the tank's own figure stands.
  const weighed_g = stock_g(stock, own_species, now);
  const known = {
    kh_dkh: hardness,
    feed_g_day: tank.feed_g_day,
    protein_fraction: tank.protein_fraction,
    fish_g: weighed_g ?? tank.fish_g,
  };
  // A tank set up here keeps its animals' records from the first: none recorded are none in it.
  if (
    set_up_here(tank) &&
    known.feed_g_day === undefined &&
    known.fish_g === undefined &&
    feedings.length === 0 &&
    stock_of(stock, now).animals.length === 0
  ) {
    known.feed_g_day = 0;
    filled.push({ code: "no_animals" });
  } else if (known.feed_g_day === undefined)
    filled.push(
      weighed_g !== undefined
        ? { code: "feed_of_stock", value: weighed_g }
        : { code: known.fish_g === undefined ? "feed" : "feed_of_fish" },
    );
  for (const name of ["planting", "seeded"]) if (!tank[name]) filled.push({ code: name });
  return {
    filled,
    tank: {
      volume_l: tank.water_l,
      temperature_c: figure("temperature_c", "temperature"),
      ph: figure("ph", "ph"),
      ...(tank.planting ? { planting: tank.planting } : {}),
      ...(tank.seeded ? { seeded: tank.seeded } : {}),
      ...Object.fromEntries(Object.entries(known).filter(([name, value]) => usable(name, value))),
    },
  };
}

/** What one record says to the belief, null if nothing. @type {Record<string, (one: any, facts: any) => any>} */
const SAYS = {
  readings: (reading) => {
    const { parameter, value, basis, steps } = reading;
    if (!LEARNT_FROM.includes(parameter)) return null;
    if (parameter === "kh") return { parameter, value: in_degrees(reading) };
    if (parameter === "ph" || parameter === "temperature") return { parameter, value };
    return { parameter, value, basis: basis === "n" ? "n" : "ion", ...(steps?.length ? { steps } : {}) };
  },
  changes: (change, { source, label, doses }) => {
    const dosed = doses.find((/** @type {any} */ dose) => dose.water_change === change.id && dose.label);
    return { fraction: change.fraction, source: source_of(change.source ?? source, dosed ? dosed.label : label) };
  },
  doses: ({ tan_mg_n_l }) => (tan_mg_n_l ? { tan_mg_n_l } : null),
  feedings: ({ feed_g, protein_fraction }) => ({
    feed_g,
    ...(protein_fraction === undefined ? {} : { protein_fraction }),
  }),
};

/** By time; at the same time always alike, whatever order the records come in. @param {any} a @param {any} b */
const in_order = (a, b) =>
  a.entry.at_h - b.entry.at_h ||
  LEARNT_FROM.indexOf(a.entry.parameter) - LEARNT_FROM.indexOf(b.entry.parameter) ||
  (a.id < b.id ? -1 : 1);

/** Readings that no tank has: the calculation refuses them whole. @param {string} list @param {any} entry */
function strange(list, { parameter, value }) {
  const name =
    list !== "readings"
      ? undefined
      : { ph: "ph", temperature: "temperature_c", kh: "kh_dkh" }[/** @type {"ph"} */ (parameter)];
  return name
    ? check_fields(
        input_of("outlook", "tank").fields.filter((/** @type {any} */ field) => field.name === name),
        { [name]: value },
      ).errors
    : [];
}

/** @param {{at: string}} record */
const time = ({ at }) => Date.parse(at);
