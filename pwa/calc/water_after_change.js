/** pH, hardness, warmth and free ammonia of a tank after a water change: at once, and once its gases have settled. */
import { carbon_ratios, davies, ph_of } from "./carbonate.js";
import { free_ammonia } from "./free_ammonia.js";
import { Refusal } from "./refusal.js";
import { constants, table } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */
/** @typedef {ReturnType<typeof dissolved>} Dissolved */

// Tolerance for float rounding: less is not more free ammonia, nor a larger move of the pH.
const ROUNDING = 1e-6;
// A smaller rise of the pH shows on no meter (assumption): then it is not what raised the free ammonia.
const SEEN_PH = 0.05;
/** From this share of a limit on a tank is watched (assumption). */
const WATCHED = 0.25;

/**
 * The tank's water after `fraction` of it was changed, as a closed vessel and after settling. Equations, units,
 * assumptions and source: the Python twin.
 * @param {Input<"water_after_change">} input
 * @returns {Outputs<"water_after_change">}
 */
export function water_after_change(input) {
  const { ph, kh_dkh, temperature_c, tan_mg_n_l, fraction } = input;
  const { source_ph, source_kh_dkh, source_temperature_c, source_tan_mg_n_l = 0 } = input;
  const tank = dissolved(ph, kh_dkh, temperature_c, tan_mg_n_l);
  if (tank.carbon <= 0) throw new Refusal("no_such_water");
  const source = dissolved(source_ph, source_kh_dkh, source_temperature_c, source_tan_mg_n_l);
  const pure = source.carbon <= 0;
  if (pure) source.carbon = 0;
  const mix = (/** @type {keyof Dissolved} */ name) => (1 - fraction) * tank[name] + fraction * source[name];
  const mixed = {
    alkalinity: mix("alkalinity"),
    carbon: mix("carbon"),
    carbon_dioxide: mix("carbon_dioxide"),
    kh_dkh: mix("kh_dkh"),
    temperature_c: mix("temperature_c"),
    tan_mg_n_l: mix("tan_mg_n_l"),
  };
  const at_once = ph_of_carbon(mixed, mixed.temperature_c);
  const settled = ph_of_carbon_dioxide(mixed, tank.carbon_dioxide, temperature_c);
  const nh3_before_mg_n_l = free(tan_mg_n_l, ph, temperature_c);
  const nh3_mg_n_l = free(mixed.tan_mg_n_l, at_once, mixed.temperature_c);
  const nh3_settled_mg_n_l = free(mixed.tan_mg_n_l, settled, temperature_c);
  return {
    ph: at_once,
    kh_dkh: mixed.kh_dkh,
    temperature_c: mixed.temperature_c,
    tan_mg_n_l: mixed.tan_mg_n_l,
    nh3_mg_n_l,
    ph_settled: settled,
    nh3_settled_mg_n_l,
    nh3_before_mg_n_l,
    notes: [
      ...notes(ph, nh3_before_mg_n_l, [
        { nh3: nh3_mg_n_l, ph: at_once },
        { nh3: nh3_settled_mg_n_l, ph: settled },
      ]),
      ...(pure ? ["pure_source"] : []),
    ],
  };
}

/**
 * What mixes by volume, of one water: alkalinity, carbon, carbon_dioxide in mol/L and the given figures. The carbon is
 * not above zero where no water has that pH with so little alkalinity.
 * @param {number} ph @param {number} kh_dkh @param {number} temperature_c @param {number} tan_mg_n_l
 */
function dissolved(ph, kh_dkh, temperature_c, tan_mg_n_l) {
  const alkalinity = (kh_dkh * table("hardness_scales").scales.dh.mmol_l * 2) / 1000;
  const ratios = carbon_ratios(ph, kelvin(temperature_c), davies(alkalinity));
  const left = alkalinity - ratios.hydroxide - free_mol_l(tan_mg_n_l, ph, temperature_c);
  const bicarbonate = left / (1 + 2 * ratios.carbonate);
  return {
    alkalinity,
    carbon: bicarbonate * (1 + ratios.carbon_dioxide + ratios.carbonate),
    carbon_dioxide: bicarbonate * ratios.carbon_dioxide,
    kh_dkh,
    temperature_c,
    tan_mg_n_l,
  };
}

/** The pH of a closed vessel: all its inorganic carbon stays. @param {Dissolved} water @param {number} temperature_c */
function ph_of_carbon(water, temperature_c) {
  const [warmth, activity] = [kelvin(temperature_c), davies(water.alkalinity)];
  return ph_of(water.alkalinity, (ph) => {
    const ratios = carbon_ratios(ph, warmth, activity);
    const bicarbonate = water.carbon / (1 + ratios.carbon_dioxide + ratios.carbonate);
    return alkalinity(ratios, bicarbonate, free_mol_l(water.tan_mg_n_l, ph, temperature_c));
  });
}

/**
 * The pH of a water whose dissolved carbon dioxide is held.
 * @param {Dissolved} water @param {number} carbon_dioxide mol/L @param {number} temperature_c
 */
function ph_of_carbon_dioxide(water, carbon_dioxide, temperature_c) {
  const [warmth, activity] = [kelvin(temperature_c), davies(water.alkalinity)];
  return ph_of(water.alkalinity, (ph) => {
    const ratios = carbon_ratios(ph, warmth, activity);
    const bicarbonate = carbon_dioxide / ratios.carbon_dioxide;
    return alkalinity(ratios, bicarbonate, free_mol_l(water.tan_mg_n_l, ph, temperature_c));
  });
}

/** @param {ReturnType<typeof carbon_ratios>} ratios @param {number} bicarbonate @param {number} nh3_mol_l */
const alkalinity = (ratios, bicarbonate, nh3_mol_l) =>
  bicarbonate * (1 + 2 * ratios.carbonate) + ratios.hydroxide + nh3_mol_l;

/** @param {number} tan_mg_n_l @param {number} ph @param {number} temperature_c */
const free = (tan_mg_n_l, ph, temperature_c) => free_ammonia({ tan_mg_n_l, ph, temperature_c }).nh3_mg_n_l;

/** @param {number} tan_mg_n_l @param {number} ph @param {number} temperature_c */
const free_mol_l = (tan_mg_n_l, ph, temperature_c) =>
  free(tan_mg_n_l, ph, temperature_c) / constants("molar_mass").n_g_mol / 1000;

/** @param {number} temperature_c */
const kelvin = (temperature_c) => temperature_c + constants("kelvin").zero_celsius_k;

/**
 * What a keeper should know: more free ammonia than before, and why; a pH that moves far. A rise that stays within
 * `WATCHED` of the limit for long times harms no animal (eifac_1970).
 * @param {number} ph @param {number} free_before
 * @param {[{nh3: number, ph: number}, {nh3: number, ph: number}]} after at once and settled
 */
function notes(ph, free_before, after) {
  const found = [];
  const worst = after[1].nh3 > after[0].nh3 ? after[1] : after[0];
  const limit = table("limits").limits.free_ammonia_mg_l.value / constants("nitrogen_species").nh3_per_n;
  if (worst.nh3 > free_before * (1 + ROUNDING) && worst.nh3 > WATCHED * limit)
    found.push(worst.ph > ph + SEEN_PH ? "lifts_ph" : "brings_ammonia");
  const furthest = Math.max(...after.map((one) => Math.abs(one.ph - ph)));
  if (furthest > constants("acclimation_fao").ph_far + ROUNDING) found.push("ph_jump");
  return found;
}
