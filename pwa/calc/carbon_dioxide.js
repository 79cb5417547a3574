/** Carbon dioxide from pH and carbonate hardness, by the carbonate equilibria instead of a rule of thumb. */
import { carbon_ratios, davies, equilibrium } from "./carbonate.js";
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
  const { carbon_dioxide: carbon_dioxide_ratio, carbonate, hydroxide } = carbon_ratios(ph, kelvin, activity);
  const pair = equilibrium("calcium_bicarbonate", kelvin) * activity ** 4;
  const neutral_pair = equilibrium("calcium_carbonate", kelvin) * activity ** 8 * carbonate;
  const left = alkalinity - hydroxide;
  if (left <= 0) throw new Refusal("no_such_water");
  let calcium = hardness;
  let bicarbonate = left;
  for (let round = 0; round < PAIRING_ROUNDS; round++) {
    bicarbonate = left / (1 + 2 * carbonate + (pair + 2 * neutral_pair) * calcium);
    calcium = hardness / (1 + (pair + neutral_pair) * bicarbonate);
  }
  const co2_mg_l = carbon_dioxide_ratio * bicarbonate * constants("molar_mass").co2_g_mol * 1000;
  const rule_mg_l = 3 * kh_dkh * 10 ** (7 - ph);
  return {
    co2_mg_l,
    rule_mg_l,
    rule_off_percent: (rule_mg_l / co2_mg_l - 1) * 100,
    bicarbonate_mmol_l: bicarbonate * 1000,
    notes: co2_mg_l > table("limits").limits.carbon_dioxide_mg_l.value ? ["high"] : [],
  };
}
