/** How long the oxygen of a closed vessel lasts, and what its water is like at the end. */
import { resolve } from "./animals.js";
import { carbon_ratios, davies, equilibrium, ph_of } from "./carbonate.js";
import { free_ammonia } from "./free_ammonia.js";
import { breathing_mg_h } from "./oxygen_night.js";
import { KPA_PER_ATM, saturation_at_mg_l } from "./oxygen_saturation.js";
import { Refusal } from "./refusal.js";
import { constants, table } from "./tables.js";
import { saturation_kpa } from "./water_properties.js";

/** @import {Input, Outputs} from "../types/contract.js" */
/** @typedef {{tan_then_mg_n_l: number, ph_then?: number, co2_then_mg_l?: number, nh3_then_mg_n_l?: number}} Then */

// Longer than this nobody closes animals in, whatever the oxygen (common practice).
const LONGEST_H = 48;

/**
 * Hours until the dissolved oxygen of a closed vessel falls to a limit, and its water then, or after 48 hours.
 * Equations, units, refusals and sources: the Python twin.
 * @param {Input<"closed_water">} input
 * @returns {Outputs<"closed_water">}
 */
export function closed_water(input) {
  const { water_l, temperature_c, animals, air_l = 0, filling = "air", start_percent = 100, least_mg_l = 3 } = input;
  const stock = resolve(animals);
  const rate_mg_h = stock.reduce((total, one) => total + one.count * breathing_mg_h(one.mass_g, temperature_c), 0);
  const saturated_mg_l = saturation_at_mg_l(temperature_c, KPA_PER_ATM);
  const own_mg = ((saturated_mg_l * start_percent) / 100 - least_mg_l) * water_l;
  const gas_mg = air_l * gas_oxygen_mg_l(temperature_c, filling);
  const gas_at_limit_mg = (air_l * gas_oxygen_mg_l(temperature_c, "air") * least_mg_l) / saturated_mg_l;
  const oxygen_mg = Math.max(own_mg + gas_mg - gas_at_limit_mg, 0);
  const answer = {
    oxygen_mg,
    animals_g: stock.reduce((total, one) => total + one.count * one.mass_g, 0),
    animals_mg_h: rate_mg_h,
  };
  if (rate_mg_h <= 0) return { ...answer, notes: [] };
  const hours = oxygen_mg / rate_mg_h;
  const used_mg = rate_mg_h * Math.min(hours, LONGEST_H);
  const then = water_then(input, used_mg / constants("oxygen_molar_mass").mg_per_mmol / 1000);
  return {
    ...answer,
    hours,
    hours_low: hours / constants("animal_breathing").frightened,
    hours_still: Math.max(own_mg, 0) / rate_mg_h,
    ...then,
    notes: notes(hours, then, temperature_c),
  };
}

/**
 * Oxygen in mg in a litre of moist gas at one atmosphere: air, or pure oxygen.
 * @param {number} temperature_c @param {string} filling
 */
function gas_oxygen_mg_l(temperature_c, filling) {
  const { oxygen_share_of_air, r_j_mol_k } = constants("gas");
  const share = filling === "air" ? oxygen_share_of_air : 1;
  const mmol_l = ((share * (KPA_PER_ATM - saturation_kpa(temperature_c))) / (r_j_mol_k * kelvin(temperature_c))) * 1000;
  return mmol_l * constants("oxygen_molar_mass").mg_per_mmol;
}

/**
 * Ammonia, and with pH and carbonate hardness carbon dioxide, pH and free ammonia, once `used_mol` is breathed.
 * @param {Input<"closed_water">} input @param {number} used_mol
 * @returns {Then}
 */
function water_then({ water_l, air_l = 0, temperature_c, ph, kh_dkh, tan_mg_n_l = 0 }, used_mol) {
  const quotients = constants("fish_quotients");
  const n_mol_l = (used_mol * quotients.ammonia_per_oxygen) / water_l;
  const tan_then_mg_n_l = tan_mg_n_l + n_mol_l * constants("molar_mass").n_g_mol * 1000;
  if (ph === undefined || kh_dkh === undefined) return { tan_then_mg_n_l };
  const warmth = kelvin(temperature_c);
  const alkalinity = (kh_dkh * table("hardness_scales").scales.dh.mmol_l * 2) / 1000;
  const activity = davies(alkalinity);
  const start = carbon_ratios(ph, warmth, activity);
  const left = alkalinity - start.hydroxide - free_mol_l(tan_mg_n_l, ph, temperature_c);
  if (left <= 0) throw new Refusal("no_such_water");
  const carbon =
    (left / (1 + 2 * start.carbonate)) * (1 + start.carbon_dioxide + start.carbonate) +
    (used_mol * quotients.carbon_dioxide_per_oxygen) / water_l;
  // A litre of gas holds this many times the carbon dioxide of a litre of water.
  const in_gas = KPA_PER_ATM / (equilibrium("carbon_dioxide_gas", warmth) * constants("gas").r_j_mol_k * warmth);
  const gas_share = 1 + (in_gas * air_l) / water_l;
  const bicarbonate_at = (/** @type {ReturnType<typeof carbon_ratios>} */ ratios) =>
    carbon / (1 + ratios.carbon_dioxide * gas_share + ratios.carbonate);
  // An animal gives off ammonia as NH3, which takes up a hydrogen ion.
  const ph_then = ph_of(alkalinity + n_mol_l, (at) => {
    const ratios = carbon_ratios(at, warmth, activity);
    const free = free_mol_l(tan_then_mg_n_l, at, temperature_c);
    return bicarbonate_at(ratios) * (1 + 2 * ratios.carbonate) + ratios.hydroxide + free;
  });
  const ratios = carbon_ratios(ph_then, warmth, activity);
  const co2_mol_l = bicarbonate_at(ratios) * ratios.carbon_dioxide;
  return {
    tan_then_mg_n_l,
    ph_then,
    co2_then_mg_l: co2_mol_l * constants("molar_mass").co2_g_mol * 1000,
    nh3_then_mg_n_l: free_ammonia({ tan_mg_n_l: tan_then_mg_n_l, ph: ph_then, temperature_c }).nh3_mg_n_l,
  };
}

/** @param {number} tan_mg_n_l @param {number} ph @param {number} temperature_c */
function free_mol_l(tan_mg_n_l, ph, temperature_c) {
  const { nh3_mg_n_l } = free_ammonia({ tan_mg_n_l, ph, temperature_c });
  return nh3_mg_n_l / constants("molar_mass").n_g_mol / 1000;
}

/** @param {number} temperature_c */
const kelvin = (temperature_c) => temperature_c + constants("kelvin").zero_celsius_k;

/** @param {number} hours @param {Then} then @param {number} temperature_c */
function notes(hours, then, temperature_c) {
  const { limits } = table("limits");
  const act_nh3_mg_n_l = limits.free_ammonia_act_mg_l.value / constants("nitrogen_species").nh3_per_n;
  const found = [];
  if (hours <= 0) found.push("no_oxygen");
  if (hours > LONGEST_H) found.push("too_long");
  if ((then.co2_then_mg_l ?? 0) > limits.carbon_dioxide_mg_l.value) found.push("carbon_dioxide");
  if ((then.nh3_then_mg_n_l ?? 0) > act_nh3_mg_n_l) found.push("free_ammonia");
  if (temperature_c > constants("clarke_johnston_1999").warmest_c) found.push("warmer_than_measured");
  return found;
}
