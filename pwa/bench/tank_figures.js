/**
 * A tank's own figures, by the field names that the contracts share: from its record, the newest reading of each
 * parameter, its source water, its dechlorinator's label, its animals and its history. A form takes those that it has
 * fields for.
 */
import { DAY } from "../figures/durations.js";
import { in_degrees } from "../advice/hardness.js";
import { brought } from "../advice/level.js";
import { as_animals, stock_of } from "../advice/life/stock.js";
import { stock_tank } from "../advice/life/stock_tank.js";
import { constants } from "../calc/tables.js";
import { history_figures } from "./tank_history.js";

/** @import { Facts, Label, Source } from "../types/advice.js" */
/** @import { Field, Item } from "../types/contract.js" */
/** @import { Reading, View } from "../types/views.js" */
/** @typedef {Record<string, unknown>} Figures by field name */

/**
 * @param {Facts} facts
 * @param {View<"source_water">[]} [source_waters] of the room
 * @returns {Figures} in contract units, without those that are not known
 */
export function tank_figures(facts, source_waters = []) {
  const { now, tank, readings, stock, own_species, source, label } = facts;
  const newest = newest_readings(readings);
  const animals = as_animals(stock_of(stock, now).animals, own_species);
  const from_plan = known(stock_tank(tank, now));
  const figures = known({
    ...tank.measures,
    ...from_plan,
    ...pick(tank, ["water_l", "gross_l", "planting", "filter", "feed_g_day", "protein_fraction", "fish_g"]),
    volume_l: tank.water_l,
    tank_l: tank.water_l,
    ph: newest.ph?.value ?? tank.ph,
    temperature_c: newest.temperature?.value ?? tank.temperature_c ?? from_plan.temperature_c,
    kh_dkh: (newest.kh && in_degrees(newest.kh)) ?? tank.kh_dkh,
    gh_dgh: (newest.gh && in_degrees(newest.gh)) ?? tank.gh_dgh,
    tan_mg_n_l: as_nitrogen(newest.total_ammonia, "nh4_per_n"),
    nitrite_mg_n_l: as_nitrogen(newest.nitrite, "no2_per_n"),
    nitrate_mg_n_l: as_nitrogen(newest.nitrate, "no3_per_n"),
    oxygen_mg_l: newest.oxygen?.value,
    dawn_oxygen_mg_l: dawn_oxygen(facts),
    ...source_figures(source, label),
    ...label_figures(label),
    sources: source_waters.length
      ? source_waters.map((water) => pick(water, ["name", "gh_dgh", "kh_dkh", "temperature_c"]))
      : undefined,
    animals: animals.length ? animals : undefined,
  });
  return known({ ...figures, ...history_figures(facts, figures) });
}

/** Hours in which a reading of oxygen stands for the end of the night, and for how long (assumptions). */
const DAWN = [4, 9];
const DAWN_DAYS = 30;
const FEWER = ["death", "removal", "move_out"];

/**
 * Oxygen as last read at dawn; undefined where animals came since, or where it is too long ago.
 * @param {Pick<Facts, "now" | "readings" | "stock">} facts
 */
function dawn_oxygen({ now, readings, stock }) {
  const last = readings.findLast(({ parameter, at }) => {
    const hour = new Date(at).getHours();
    return parameter === "oxygen" && DAWN[0] <= hour && hour < DAWN[1] && now - Date.parse(at) < DAWN_DAYS * DAY;
  });
  const came = stock.some(({ at, change }) => last && at > last.at && !FEWER.includes(change));
  return last && !came ? last.value : undefined;
}

/** @param {readonly Reading[]} readings oldest first @returns {Partial<Record<Reading["parameter"], Reading>>} */
const newest_readings = (readings) => Object.fromEntries(readings.map((reading) => [reading.parameter, reading]));

/**
 * A reading in mg N/L; one without a basis counts as the ion, which most kits read.
 * @param {Reading | undefined} reading
 * @param {string} per_n
 */
function as_nitrogen(reading, per_n) {
  if (!reading) return undefined;
  return reading.basis === "n" ? reading.value : reading.value / constants("nitrogen_species")[per_n];
}

/** @param {Source | null} water @param {Label | null} label whose conditioner may bind what chloramine frees */
function source_figures(water, label) {
  if (!water) return {};
  return {
    disinfectant: water.disinfectant === "none" ? undefined : water.disinfectant,
    disinfectant_mg_l: water.disinfectant_mg_l,
    chloride_mg_l: water.chloride_mg_l,
    source_temperature_c: water.temperature_c,
    source_ph: water.ph,
    source_gh_dgh: water.gh_dgh,
    source_kh_dkh: water.kh_dkh,
    source_tan_mg_n_l: brought(water, "total_ammonia", label) || undefined,
  };
}

/** A dechlorinator's label; the calculation takes doses in millilitres only. @param {Label | null} label */
function label_figures(label) {
  if (!label) return {};
  return label.unit === "ml"
    ? { label_ml: label.amount, label_per_l: label.per_l, basis: label.basis }
    : { basis: label.basis };
}

/**
 * @template {object} R
 * @param {R} record
 * @param {(keyof R & string)[]} names
 */
const pick = (record, names) => known(Object.fromEntries(names.map((name) => [name, record[name]])));

/** @param {Figures} figures @returns {Figures} */
const known = (figures) =>
  Object.fromEntries(Object.entries(figures).filter(([, value]) => value !== undefined && value !== null));

/**
 * The figures that this contract has a field for and accepts as they are. An unknown choice or a list entry that lacks
 * a needed field is left to the keeper.
 * @param {Field[]} inputs
 * @param {Figures} figures
 * @returns {Figures}
 */
export function fitting(inputs, figures) {
  /** @type {Figures} */ const out = {};
  for (const field of inputs) {
    const fit = fitted(field, figures[String(field.from_tank ?? field.name)]);
    if (fit !== undefined) out[field.name] = fit;
  }
  return out;
}

const JSON_TYPE = { number: "number", integer: "number", boolean: "boolean", text: "string" };

/** @param {Item} field @param {unknown} value @returns {unknown} */
function fitted(field, value) {
  if (value === undefined || value === null) return undefined;
  if (field.type === "choice") return field.choices.some((choice) => choice.value === value) ? value : undefined;
  if (field.type === "object") {
    const inner = typeof value === "object" ? fitting(field.fields, /** @type {Figures} */ (value)) : {};
    const whole = field.fields.every((one) => !one.required || one.when || one.name in inner);
    return whole && Object.keys(inner).length ? inner : undefined;
  }
  if (field.type !== "list") return typeof value === JSON_TYPE[field.type] ? value : undefined;
  if (!Array.isArray(value)) return undefined;
  const rows = value
    .map((entry) => fitted(field.item, entry))
    .filter((entry) => entry !== undefined)
    .slice(0, field.max_items);
  return rows.length >= Math.max(1, field.min_items) ? rows : undefined;
}
