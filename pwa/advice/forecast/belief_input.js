/**
 * One tank's records as the input of `outlook`, `change_plan` and `stock_headroom`, exactly as their contracts want it.
 * Pure. What the records do not say is filled from the tank's usual figures or assumed, and named in `filled`;
 * what a contract would refuse is left out, and named in `left_out`.
 */
import { HOUR } from "../../figures/durations.js";
import { check_fields, field_named, input_of, run } from "../../contracts.js";
import { in_degrees } from "../hardness.js";
import { brought } from "../level.js";
import { chloride_of } from "../chloride.js";
import { CAREFUL } from "../limits.js";
import { set_up_here } from "../setup/setting_up.js";
import { stock_g, stock_of } from "../life/stock.js";

/** @import { BeliefInput, BeliefList, BeliefRecords, Change, Dose, Facts, Filled } from "../../types/advice.js" */
/** @import { Label, LeftOut, Limits, Source } from "../../types/advice.js" */
/** @import { Reading, Tank, View } from "../../types/views.js" */

/** Records this far ahead still count, for a phone whose clock is a little slow (assumption). */
const CLOCK_ERROR = HOUR;
/**
 * A tank that ran this long before its first record is a running tank. Nobody recorded the changes and meals before, so
 * the belief begins shortly before the records, with mature bacteria (assumptions).
 */
const RUNNING_H = 60 * 24;
const RUN_IN_H = 14 * 24;
/** What the belief learns from. */
const LEARNT_FROM = /** @type {const} */ (["total_ammonia", "nitrite", "nitrate", "ph", "temperature", "kh"]);
/** The lists of the contracts, and the records they are made of. */
const LISTS = /** @type {const} */ (["readings", "changes", "doses", "feedings"]);

/**
 * @template {BeliefList} [L=BeliefList]
 * @typedef {BeliefRecords[L][number]} Entry what one record says to the belief
 */

/** @param {Facts} facts @returns {BeliefInput} */
export function belief_input(facts) {
  const { tank, filled } = tank_of(facts);
  const until = facts.now + CLOCK_ERROR;
  // One record with a wrong year must not break the whole forecast: records older than the contracts accept are left
  // out and named.
  const oldest = until - input_of("outlook", "now_h").max * HOUR;
  let first = facts.now;
  for (const list of LISTS)
    for (const at of times_of(facts[list])) if (at >= oldest && at <= until && at < first) first = at;
  const said = Date.parse(facts.tank.started_at ?? "");
  const running = first - said > RUNNING_H * HOUR;
  if (Number.isNaN(said)) filled.push({ code: "start" });
  const began = Number.isNaN(said) ? first : running ? first - RUN_IN_H * HOUR : Math.min(said, first);
  const start = Math.max(began, oldest);

  const readings = entries("readings", facts, start, until);
  const changes = entries("changes", facts, start, until);
  const doses = entries("doses", facts, start, until);
  const feedings = entries("feedings", facts, start, until);
  const counted = [readings, changes, doses, feedings];
  const last_h = Math.max(0, ...counted.flatMap((list) => list.entries.map(({ at_h }) => at_h)));
  return {
    records: {
      tank: running ? { ...tank, seeded: "mature_media" } : tank,
      readings: readings.entries,
      changes: changes.entries,
      doses: doses.entries,
      feedings: feedings.entries,
      // Whole hours, so that the answer does not change from minute to minute.
      now_h: Math.max(Math.floor((facts.now - start) / HOUR), last_h),
    },
    start,
    filled: filled.filter(({ code }) => code !== "seeded" || !running),
    left_out: counted.flatMap((list) => list.left_out),
  };
}

/** @template {BeliefList} [L=BeliefList] @typedef {{entry: Entry<L>, id: string}} Taken */
/** Lists of which a record says the same whatever else is known. @type {readonly BeliefList[]} */
const BY_THEMSELVES = ["readings", "feedings"];
/**
 * What such records said before, from the same start: of years of records only the new ones are read again.
 * @type {WeakMap<object, {start: number, at: number, taken: Taken}>}
 */
const known = new WeakMap();
/**
 * What was made of a whole list. A room's lists are frozen; when a record changes, the room makes another list.
 * `by`: the other records that those of the list name.
 * @typedef {{by: unknown[], latest: number, found: {entries: Entry[], left_out: []}}} Whole
 * @type {WeakMap<readonly {at: string}[], Whole>}
 */
const known_lists = new WeakMap();
/** @type {WeakMap<readonly {at: string}[], number[]>} */
const known_times = new WeakMap();

/** When the records of a list happened, in ms. @param {readonly {at: string}[]} records */
function times_of(records) {
  const times = known_times.get(records) ?? records.map(time);
  if (Object.isFrozen(records)) known_times.set(records, times);
  return times;
}

/**
 * What the records of one list say to the belief, and those that the calculation refuses.
 * @template {BeliefList} L
 * @param {L} list
 * @param {Facts} facts
 * @param {number} start ms
 * @param {number} until ms
 * @returns {{entries: Entry<L>[], left_out: LeftOut[]}}
 */
function entries(list, facts, start, until) {
  const before = known_lists.get(facts[list]);
  const by = [start, ...(BY_THEMSELVES.includes(list) ? [] : [facts.source, facts.label, facts.doses])];
  if (before && before.latest <= until && by.every((one, i) => one === before.by[i]))
    return /** @type {{entries: Entry<L>[], left_out: []}} */ (before.found);
  const found = entries_anew(list, facts, start, until);
  const latest = times_of(facts[list]).reduce((last, at) => Math.max(last, at), -Infinity);
  // What lies ahead counts later, and the words of what is left out depend on the language.
  if (Object.isFrozen(facts[list]) && latest <= until && found.left_out.length === 0)
    known_lists.set(facts[list], { by, latest, found: { entries: found.entries, left_out: [] } });
  return found;
}

/**
 * @template {BeliefList} L
 * @param {L} list
 * @param {Facts} facts
 * @param {number} start ms
 * @param {number} until ms
 * @returns {{entries: Entry<L>[], left_out: LeftOut[]}}
 */
function entries_anew(list, facts, start, until) {
  const { item, max_items } = input_of("outlook", /** @type {BeliefList} */ (list));
  /** @type {LeftOut[]} */ const left_out = [];
  /** @type {Taken<L>[]} */ const taken = [];
  for (const record of facts[list]) {
    const before = known.get(record);
    if (before && before.start === start && before.at <= until) {
      taken.push(/** @type {Taken<L>} */ (before.taken));
      continue;
    }
    const at = time(record);
    const said = at <= until ? SAYS[list](record, facts) : null;
    if (!said) continue;
    const entry = /** @type {Entry<L>} */ ({ at_h: (at - start) / HOUR, ...said });
    const [wrong] = [...check_fields(item.fields, entry).errors, ...strange(entry)];
    if (!wrong) {
      const one = { entry, id: record.id };
      taken.push(one);
      if (BY_THEMSELVES.includes(list)) known.set(record, { start, at, taken: one });
    } else
      left_out.push({
        list,
        id: record.id,
        at: record.at,
        message: wrong.message,
        allowed: wrong.allowed,
        ...("parameter" in record ? { parameter: record.parameter } : {}),
      });
  }
  return {
    entries: taken
      .sort(in_order)
      .slice(-max_items)
      .map(({ entry }) => entry),
    left_out,
  };
}

/**
 * Nitrogen that a source water brings into the tank, as the contracts name it.
 * @param {Source | null} source
 * @param {Label | null} label
 */
export const source_of = (source, label) => ({
  tan_mg_n_l: brought(source, "total_ammonia", label),
  nitrite_mg_n_l: brought(source, "nitrite", label),
  nitrate_mg_n_l: brought(source, "nitrate", label),
});

/**
 * The water of the next change: its nitrogen, and what moves the tank's pH and temperature.
 * @param {Source | null} source
 * @param {Label | null} label
 */
export const new_water_of = (source, label) => ({
  ...source_of(source, label),
  ...Object.fromEntries(
    /** @type {const} */ (["ph", "kh_dkh", "temperature_c"]).flatMap((name) =>
      usable(name, source?.[name]) ? [[name, source?.[name]]] : [],
    ),
  ),
});

/**
 * The limits of limits.js as the contracts name them: ammonia's as free ammonia at the same pH and temperature.
 * @param {Limits} limits
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

/**
 * The contract's `tank`: its record, then its first readings, then what is assumed.
 * @param {Facts} facts
 * @returns {{tank: BeliefRecords["tank"], filled: Filled[]}}
 */
function tank_of(facts) {
  const { tank, readings } = facts;
  /** @type {Filled[]} */ const filled = [];
  const figure = (/** @type {"ph" | "temperature_c"} */ name, /** @type {Reading["parameter"]} */ parameter) => {
    const usual = tank[name];
    if (usable(name, usual)) return usual;
    const read = readings.find((one) => one.parameter === parameter && usable(name, one.value));
    const of_source = name === "ph" && usable("ph", facts.source?.ph) ? facts.source?.ph : undefined;
    const value = read?.value ?? of_source ?? CAREFUL[name];
    filled.push({ code: name, value });
    return value;
  };
  const hardness =
    tank.kh_dkh ??
    readings
      .filter((one) => one.parameter === "kh")
      .map(in_degrees)
      .find((value) => usable("kh_dkh", value));
  const fed = fed_of(facts);
  filled.push(...fed.filled);
  if (!tank.planting) filled.push({ code: "planting" });
  if (!tank.seeded) filled.push({ code: "seeded" });
  const temperature_c = figure("temperature_c", "temperature");
  const ph = figure("ph", "ph");
  const known = {
    kh_dkh: hardness,
    chloride_mg_l: chloride_of(facts),
    feed_g_day: fed.feed_g_day,
    protein_fraction: tank.protein_fraction,
    fish_g: fed.fish_g,
  };
  return {
    filled,
    tank: {
      volume_l: tank.water_l,
      temperature_c,
      ph,
      ...(tank.planting ? { planting: tank.planting } : {}),
      ...(tank.seeded ? { seeded: tank.seeded } : {}),
      ...Object.fromEntries(Object.entries(known).filter(([name, value]) => usable(name, value))),
    },
  };
}

/**
 * Food a day and grams of fish as far as they are known, and what stands for the food else.
 * @param {Facts} facts
 * @returns {{feed_g_day?: number, fish_g?: number, filled: Filled[]}}
 */
function fed_of({ tank, now, feedings, stock = [], own_species = [] }) {
  // Use the mass from recorded lengths if there are any, else the tank's own figure.
  const weighed_g = stock_g(stock, own_species, now);
  const fish_g = weighed_g ?? tank.fish_g;
  if (tank.feed_g_day !== undefined) return { feed_g_day: tank.feed_g_day, fish_g, filled: [] };
  if (weighed_g !== undefined) return { fish_g, filled: [{ code: "feed_of_stock", value: weighed_g }] };
  if (fish_g !== undefined) return { fish_g, filled: [{ code: "feed_of_fish" }] };
  // A tank created in this app has its animals recorded from day one, so no records means no animals.
  if (set_up_here(tank) && feedings.length === 0 && stock_of(stock, now).animals.length === 0)
    return { feed_g_day: 0, filled: [{ code: "no_animals" }] };
  return { filled: [{ code: "feed" }] };
}

/**
 * Whether the calculations take this figure of a tank.
 * @param {string} name
 * @param {number | undefined} value
 * @returns {value is number}
 */
const usable = (name, value) =>
  value !== undefined && check_fields([field_of_tank(name)], { [name]: value }).errors.length === 0;

/** @param {Reading} reading @returns {Omit<Entry<"readings">, "at_h" | "value"> & {value?: number} | null} */
function reading_said(reading) {
  const { value, basis, steps } = reading;
  const parameter = LEARNT_FROM.find((one) => one === reading.parameter);
  if (!parameter) return null;
  if (parameter === "kh") return { parameter, value: in_degrees(reading) };
  if (parameter === "ph" || parameter === "temperature") return { parameter, value };
  return { parameter, value, basis: basis === "n" ? "n" : "ion", ...(steps?.length ? { steps } : {}) };
}

/** @param {Change} change @param {Facts} facts @returns {Omit<Entry<"changes">, "at_h">} */
function change_said(change, { source, label, doses }) {
  const dosed = doses.find((dose) => dose.water_change === change.id && dose.label);
  const water = change.source ?? source;
  const kh_dkh = water?.kh_dkh;
  return {
    fraction: change.fraction,
    source: { ...source_of(water, dosed ? dosed.label : label), ...(usable("kh_dkh", kh_dkh) ? { kh_dkh } : {}) },
  };
}

/** @param {View<"feeding">} feeding @returns {Omit<Entry<"feedings">, "at_h">} */
const feeding_said = ({ feed_g, protein_fraction }) => ({
  feed_g,
  ...(protein_fraction === undefined ? {} : { protein_fraction }),
});

/** @param {Dose} dose @returns {Omit<Entry<"doses">, "at_h"> | null} */
const dose_said = ({ tan_mg_n_l }) => (tan_mg_n_l ? { tan_mg_n_l } : null);

/**
 * What one record says to the belief, null if nothing.
 * @type {Record<BeliefList, (record: any, facts: Facts) => object | null>} any: each list has its own kind of record
 */
const SAYS = { readings: reading_said, changes: change_said, doses: dose_said, feedings: feeding_said };

/** Where an entry stands among those of the same hour. @param {Entry} entry */
const rank = (entry) => ("parameter" in entry ? LEARNT_FROM.indexOf(entry.parameter) : 0);

/**
 * By time; at the same time always alike, whatever order the records come in.
 * @param {Taken} a
 * @param {Taken} b
 */
const in_order = (a, b) => a.entry.at_h - b.entry.at_h || rank(a.entry) - rank(b.entry) || (a.id < b.id ? -1 : 1);

/** What a tank's figure is called where a reading of it must fit too. @type {Record<string, string>} */
const FIELD_OF = { ph: "ph", temperature: "temperature_c", kh: "kh_dkh" };

/** Readings that no tank has: the calculation refuses them whole. @param {Entry} entry */
function strange(entry) {
  const name = "parameter" in entry ? FIELD_OF[entry.parameter] : undefined;
  return name && "value" in entry ? check_fields([field_of_tank(name)], { [name]: entry.value }).errors : [];
}

/** @param {string} name */
const field_of_tank = (name) => field_named(input_of("outlook", "tank").fields, name);
/** @param {{at: string}} record */
const time = ({ at }) => Date.parse(at);
