/** How much oxygen water holds in equilibrium with air, by temperature and altitude or barometer. */
import { constants } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

export const KPA_PER_ATM = 101.325;

/**
 * Saturation of fresh water, and a measured oxygen as a share of it. Equations, units and source: the Python twin.
 * @param {Input<"oxygen_saturation">} input
 * @returns {Outputs<"oxygen_saturation">}
 */
export function oxygen_saturation({ temperature_c, altitude_m = 0, pressure_kpa, oxygen_mg_l }) {
  const air_pressure_kpa = pressure_kpa ?? pressure_at_kpa(altitude_m);
  const saturation_mg_l = saturation_at_mg_l(temperature_c, air_pressure_kpa);
  /** @type {Outputs<"oxygen_saturation">} */
  const answer = { saturation_mg_l, air_pressure_kpa };
  if (oxygen_mg_l !== undefined) answer.saturation_percent = (oxygen_mg_l / saturation_mg_l) * 100;
  return answer;
}

/** Pressure of the standard atmosphere. @param {number} altitude_m */
function pressure_at_kpa(altitude_m) {
  const { lapse_per_m, exponent } = constants("iso_2533");
  return KPA_PER_ATM * (1 - lapse_per_m * altitude_m) ** exponent;
}

/** Oxygen in fresh water in equilibrium with moist air. @param {number} temperature_c @param {number} pressure_kpa */
export function saturation_at_mg_l(temperature_c, pressure_kpa) {
  const bk = constants("benson_krause_1984");
  const t = temperature_c + constants("kelvin").zero_celsius_k;
  const at_one = Math.exp(bk.a0 + bk.a1 / t + bk.a2 / t ** 2 + bk.a3 / t ** 3 + bk.a4 / t ** 4);
  const vapour = Math.exp(bk.u0 + bk.u1 / t + bk.u2 / t ** 2);
  const theta = bk.theta0 + bk.theta1 * temperature_c + bk.theta2 * temperature_c ** 2;
  const p = pressure_kpa / KPA_PER_ATM;
  return (at_one * p * (1 - vapour / p) * (1 - theta * p)) / ((1 - vapour) * (1 - theta));
}
