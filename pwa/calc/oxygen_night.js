/** Oxygen at dawn in a still, planted, stocked tank. */
import { resolve } from "./animals.js";
import { oxygen_saturation } from "./oxygen_saturation.js";
import { constants, table } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/**
 * @typedef {{water_l: number, surface_cm2: number, temperature_c: number, altitude_m: number, dark_hours: number,
 * evening_percent?: number, planting: string, floating_cover: number, substrate: string, filter: string,
 * cover: string}} Tank `evening_percent` left out: as the planting class says
 */
/** @typedef {ReturnType<typeof still_night>} Night */

// Places in a triple of the tank classes.
export const LOW = 0;
export const USUAL = 1;
export const HIGH = 2;
// The doubtful figures, each varied alone; the deviations add up as the root of the sum of their squares.
export const DOUBTS = ["exchange", "evening", "dry", "plants", "substrate", "animals"];

/**
 * Dissolved oxygen at the end of a night without light. Equation, units and sources: the Python twin.
 * @param {Input<"oxygen_night">} input
 * @returns {Outputs<"oxygen_night">}
 */
export function oxygen_night({
  water_l,
  surface_cm2,
  temperature_c,
  animals,
  altitude_m = 0,
  dark_hours = 14,
  evening_percent,
  planting = "medium",
  floating_cover = 0,
  substrate = "sand",
  filter = "none",
  cover = "lid",
  nitrified_mg_n_day = 0,
  least_mg_l = 4,
}) {
  const tank = {
    water_l,
    surface_cm2,
    temperature_c,
    altitude_m,
    dark_hours,
    evening_percent,
    planting,
    floating_cover,
    substrate,
    filter,
    cover,
  };
  const stock = resolve(animals ?? []);
  const breathing = stock.reduce((sum, one) => sum + one.count * breathing_mg_h(one.mass_g, temperature_c), 0);
  const bacteria = (nitrified_mg_n_day / 24) * constants("ebeling_2006").oxygen_per_n;
  const night = still_night(tank);
  const usual = dawn_mg_l(night, breathing + bacteria);
  const [below, above] = dawn_band(tank, breathing, bacteria);
  const dawn = Math.max(0, usual);
  const lowest = Math.min(night.evening_mg_l, dawn);
  const low = Math.max(0, usual - below);
  return {
    dawn_mg_l: dawn,
    dawn_low_mg_l: low,
    dawn_high_mg_l: Math.max(0, usual + above),
    dawn_percent: (100 * dawn) / night.saturation_mg_l,
    lowest_mg_l: lowest,
    hours_to_limit: hours_to(night, breathing + bacteria, least_mg_l, dark_hours),
    saturation_mg_l: night.saturation_mg_l,
    evening_mg_l: night.evening_mg_l,
    exchange_cm_h: night.exchange_cm_h,
    animals_g: stock.reduce((sum, one) => sum + one.count * one.mass_g, 0),
    animals_mg_h: breathing,
    plants_mg_h: night.plants_mg_h,
    substrate_mg_h: night.substrate_mg_h,
    bacteria_mg_h: bacteria,
    notes: notes(usual, low, lowest, least_mg_l, temperature_c),
  };
}

/** Oxygen that one animal consumes [mg/h]. @param {number} mass_g @param {number} temperature_c */
export function breathing_mg_h(mass_g, temperature_c) {
  const law = constants("clarke_johnston_1999");
  const kelvin = temperature_c + constants("kelvin").zero_celsius_k;
  const mmol_h = Math.exp(law.intercept - law.slope_k / kelvin) * (mass_g / law.reference_g) ** law.exponent;
  return mmol_h * constants("oxygen_molar_mass").mg_per_mmol;
}

/** Schmidt number of oxygen in fresh water, -2 to 40 °C. @param {number} t [°C] */
export function schmidt_oxygen(t) {
  const a = constants("wanninkhof_2014");
  return a.a0 + t * (a.a1 + t * (a.a2 + t * (a.a3 + t * a.a4)));
}

/**
 * The night without its animals; `doubt` names the one figure taken at `place` of its triple.
 * @param {Tank} tank @param {string} [doubt] @param {number} [place]
 */
export function still_night(tank, doubt = "", place = USUAL) {
  const at = (/** @type {string} */ name) => (name === doubt ? place : USUAL);
  const classes = table("tank_classes");
  const smooth = constants("schmidt_smooth");
  const t = tank.temperature_c;
  let stirred = classes.filter.classes[tank.filter].exchange[at("exchange")];
  if (tank.filter === "none") stirred *= classes.cover.classes[tank.cover].exchange[at("exchange")];
  const k =
    stirred *
    constants("cole_caraco_1998").k600_still_cm_h *
    (schmidt_oxygen(t) / smooth.reference) ** -smooth.exponent;
  const bottom_m2 = tank.surface_cm2 / 10000;
  const dry_g = bottom_m2 * classes.planting.classes[tank.planting].dry_g_m2[at("dry")];
  const plants = constants("plant_breathing");
  const dark = [plants.dark_low_mg_g_h, plants.dark_usual_mg_g_h, plants.dark_high_mg_g_h][at("plants")];
  const demand = classes.substrate.classes[tank.substrate].oxygen_g_m2_day[at("substrate")];
  const evening_percent = tank.evening_percent ?? classes.evening.classes[tank.planting].percent[at("evening")];
  const saturation = oxygen_saturation({ temperature_c: t, altitude_m: tank.altitude_m }).saturation_mg_l;
  const litres_h = (k * tank.surface_cm2 * (1 - tank.floating_cover)) / 1000;
  const per_hour = litres_h / tank.water_l;
  return {
    saturation_mg_l: saturation,
    evening_mg_l: (saturation * evening_percent) / 100,
    exchange_cm_h: k,
    litres_h,
    per_hour,
    kept: Math.exp(-per_hour * tank.dark_hours),
    renewed: -Math.expm1(-per_hour * tank.dark_hours),
    plants_mg_h: dry_g * dark * plants.night_mean_share * plants.theta ** (t - 20),
    substrate_mg_h: ((bottom_m2 * demand * 1000) / 24) * constants("sediment_oxygen").theta ** (t - 20),
  };
}

/** Oxygen at dawn [mg/L]; below zero if it runs out. @param {Night} night @param {number} others_mg_h */
export function dawn_mg_l(night, others_mg_h) {
  const demand = others_mg_h + night.plants_mg_h + night.substrate_mg_h;
  const kept = night.saturation_mg_l + (night.evening_mg_l - night.saturation_mg_l) * night.kept;
  return kept - (demand / night.litres_h) * night.renewed;
}

/**
 * What animals and nitrifiers may take [mg/h] to leave `least_mg_l` at dawn.
 * @param {Night} night
 * @param {number} least_mg_l
 */
export function others_at_dawn_mg_h(night, least_mg_l) {
  const kept = night.saturation_mg_l + (night.evening_mg_l - night.saturation_mg_l) * night.kept;
  const demand = ((kept - least_mg_l) * night.litres_h) / night.renewed;
  return demand - night.plants_mg_h - night.substrate_mg_h;
}

/**
 * Hours after lights out at which oxygen passes `least_mg_l`; null where it does not before dawn.
 * @param {Night} night @param {number} others_mg_h @param {number} least_mg_l @param {number} dark_hours
 */
function hours_to(night, others_mg_h, least_mg_l, dark_hours) {
  const settle = dawn_settles_at(night, others_mg_h);
  if (!(night.evening_mg_l > least_mg_l && least_mg_l > settle)) return null;
  const reached = Math.log1p((night.evening_mg_l - least_mg_l) / (least_mg_l - settle)) / night.per_hour;
  return reached <= dark_hours ? reached : null;
}

/** Where oxygen would settle if the night never ended [mg/L]. @param {Night} night @param {number} others_mg_h */
function dawn_settles_at(night, others_mg_h) {
  const demand = others_mg_h + night.plants_mg_h + night.substrate_mg_h;
  return night.saturation_mg_l - demand / night.litres_h;
}

/**
 * How far oxygen at dawn may lie below and above the usual value [mg/L, both positive].
 * @param {Tank} tank @param {number} animals_mg_h @param {number} bacteria_mg_h @returns {[number, number]}
 */
function dawn_band(tank, animals_mg_h, bacteria_mg_h) {
  const breath = constants("animal_breathing");
  const rate = [breath.night_low, breath.night_usual, breath.night_high];
  const usual = dawn_mg_l(still_night(tank), animals_mg_h + bacteria_mg_h);
  let below = 0;
  let above = 0;
  for (const doubt of DOUBTS) {
    for (const place of [LOW, HIGH]) {
      const animals = animals_mg_h * rate[doubt === "animals" ? place : USUAL];
      const off = dawn_mg_l(still_night(tank, doubt, place), animals + bacteria_mg_h) - usual;
      if (off < 0) below += off * off;
      else above += off * off;
    }
  }
  return [Math.sqrt(below), Math.sqrt(above)];
}

/**
 * @param {number} usual
 * @param {number} low
 * @param {number} lowest
 * @param {number} least_mg_l
 * @param {number} temperature_c
 */
function notes(usual, low, lowest, least_mg_l, temperature_c) {
  const found = [];
  if (usual <= 0) found.push("used_up");
  else if (lowest < constants("epa_1986_oxygen").day_minimum_mg_l) found.push("under_day_minimum");
  else if (lowest < least_mg_l) found.push("under_limit");
  else if (low < least_mg_l) found.push("may_fall_under");
  if (temperature_c > constants("clarke_johnston_1999").warmest_c) found.push("warmer_than_measured");
  return found;
}
