/** Carbon dioxide from pH and carbonate hardness, by the carbonate equilibria instead of a rule of thumb. */
import { Refusal } from "./refusal.js";
import { constants, table } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

const PAIRING_ROUNDS = 8;

/**
 * Dissolved CO2, and the error of the rule 3 x KH x 10^(7 - pH). Equations, units and source: the Python twin.
 * @param {Input<"carbon_dioxide">} input
 * @returns {Outputs<"carbon_dioxide">}
 */
export function carbon_dioxide({ ph, kh_dkh, temperature_c, gh_dgh = 0 }) {
  const kelvin = temperature_c + constants("kelvin").zero_celsius_k;
  const mmol_l_per_dh = table("hardness_scales").scales.dh.mmol_l;
  const alkalinity = (kh_dkh * mmol_l_per_dh * 2) / 1000;
  const hardness = (gh_dgh * mmol_l_per_dh) / 1000;
  const activity = davies(Math.max(alkalinity + hardness, 3 * hardness));
  const hydrogen = 10 ** -ph;
  const water = constant("water", kelvin) / hydrogen;
  const carbonate = (constant("carbonic_2", kelvin) * activity) / (activity ** 4 * hydrogen);
  const pair = constant("calcium_bicarbonate", kelvin) * activity ** 4;
  const neutral_pair = constant("calcium_carbonate", kelvin) * activity ** 8 * carbonate;
  const left = alkalinity - (water - hydrogen) / activity;
  if (left <= 0) throw new Refusal("no_such_water");
  let calcium = hardness;
  let bicarbonate = left;
  for (let round = 0; round < PAIRING_ROUNDS; round++) {
    bicarbonate = left / (1 + 2 * carbonate + (pair + 2 * neutral_pair) * calcium);
    calcium = hardness / (1 + (pair + neutral_pair) * bicarbonate);
  }
  const co2_mg_l =
    ((activity * bicarbonate * hydrogen) / constant("carbonic_1", kelvin)) * constants("molar_mass").co2_g_mol * 1000;
  const rule_mg_l = 3 * kh_dkh * 10 ** (7 - ph);
  return {
    co2_mg_l,
    rule_mg_l,
    rule_off_percent: (rule_mg_l / co2_mg_l - 1) * 100,
    bicarbonate_mmol_l: bicarbonate * 1000,
    notes: co2_mg_l > table("limits").limits.carbon_dioxide_mg_l.value ? ["high"] : [],
  };
}

/** 10^(a + b T + c/T + d log10 T + e/T^2). @param {string} name @param {number} kelvin */
function constant(name, kelvin) {
  const k = constants(`equilibrium_${name}`);
  return 10 ** (k.a + k.b * kelvin + k.c / kelvin + k.d * Math.log10(kelvin) + k.e / (kelvin * kelvin));
}

/** @param {number} ionic_strength */
function davies(ionic_strength) {
  const { a_25c, linear } = constants("davies_1962");
  const root = Math.sqrt(ionic_strength);
  return 10 ** (-a_25c * (root / (1 + root) - linear * ionic_strength));
}
