/**
 * Two-step nitrification with plants: one stable step of the outlook's model. Equations, units, sources: the Python
 * twin.
 */
import { constants } from "./tables.js";

/** @typedef {Float64Array[]} Cloud one row a quantity, one column a draw */
/** @typedef {[number, number, number]} Water growth of both groups and decay in this water */
/** @typedef {Readonly<Record<string, number>>} Settings */

export const TAN = 0;
export const NITRITE = 1;
export const NITRATE = 2;
export const CAPACITY_1 = 3;
export const CAPACITY_2 = 4;
export const INPUT = 5;
export const UPTAKE = 6;
export const GROWTH_1 = 7;
export const GROWTH_2 = 8;
export const HALF_1 = 9;
export const HALF_2 = 10;
export const DECAY = 11;
export const PH_OFFSET = 12;
export const APPETITE = 13;
export const ROWS = 14;
const GROUPS = [
  "metcalf_eddy_2014",
  "metcalf_eddy_nitrite_oxidisers",
  "nitrifier_water",
  "timmons_ebeling",
  "belief_prior",
  "belief_walk",
  "belief_reading",
  "belief_drift",
  "outlook",
];

/** Every constant of the outlook by name; tables/constants.json has units and provenance. @returns {Settings} */
export const settings = () => Object.freeze(Object.assign({}, ...GROUPS.map((group) => constants(group))));

/**
 * Factors of this water on the growth of both groups and on their decay.
 * @param {Settings} c
 * @param {number} temperature_c
 * @param {number} ph
 * @param {number | undefined} kh_dkh
 * @returns {Water}
 */
export function conditions(c, temperature_c, ph, kh_dkh) {
  let factor = c.ph_base ** Math.min(ph - c.ph_cap, 0);
  factor *= (c.ph_high * (c.ph_zero - Math.min(ph, c.ph_zero))) / (c.ph_pole - Math.min(ph, c.ph_zero));
  if (kh_dkh !== undefined) factor *= kh_dkh / (c.half_kh_dkh + kh_dkh);
  factor = Math.max(factor, c.least_activity);
  const warm = temperature_c - 20;
  return [factor * c.theta_growth_1 ** warm, factor * c.theta_growth_2 ** warm, c.theta_decay ** warm];
}

/**
 * Move `cloud` forward by `days` in place; semi-implicit, so stable at any rate.
 * @param {Cloud} cloud @param {number} days @param {number} base mg N/L/day @param {number} released mg N/L
 * @param {Water} water @param {Settings} c
 */
export function step(cloud, days, base, released, water, c) {
  const [tan, nitrite, nitrate, capacity_1, capacity_2, input, uptake] = cloud;
  const [, , , , , , , growth_1, growth_2, half_1, half_2, decay, , appetite] = cloud;
  const { half_uptake, half_nitrate } = c;
  const active_1 = days * water[0];
  const active_2 = days * water[1];
  const lost = days * water[2];
  const given = days * base + released;
  for (let i = 0; i < tan.length; i += 1) {
    const n1 = tan[i];
    const n2 = nitrite[i];
    const rate_1 = (active_1 * capacity_1[i]) / (half_1[i] + n1);
    const rate_u = (days * uptake[i]) / (half_uptake + n1);
    const next_1 = (n1 + input[i] * appetite[i] * given) / (1 + rate_1 + rate_u);
    const oxidised_1 = rate_1 * next_1;
    const rate_2 = (active_2 * capacity_2[i]) / (half_2[i] + n2);
    const next_2 = (n2 + oxidised_1) / (1 + rate_2);
    const oxidised_2 = rate_2 * next_2;
    const spare = Math.max(days * uptake[i] - rate_u * next_1, 0);
    nitrate[i] = (nitrate[i] + oxidised_2) / (1 + spare / (half_nitrate + nitrate[i]));
    tan[i] = next_1;
    nitrite[i] = next_2;
    const kept = 1 + lost * decay[i];
    capacity_1[i] = (capacity_1[i] + growth_1[i] * oxidised_1) / kept;
    capacity_2[i] = (capacity_2[i] + growth_2[i] * oxidised_2) / kept;
  }
}

/**
 * What each draw's tank processes, mg N/L/day, while ammonia and nitrite stay at these concentrations.
 * @param {Cloud} cloud @param {Water} water @param {Settings} c
 * @param {number} tan_mg_n_l @param {number} nitrite_mg_n_l
 */
export function processed(cloud, water, c, tan_mg_n_l, nitrite_mg_n_l) {
  return cloud[TAN].map((_, i) => {
    const first = (water[0] * cloud[CAPACITY_1][i] * tan_mg_n_l) / (cloud[HALF_1][i] + tan_mg_n_l);
    const second = (water[1] * cloud[CAPACITY_2][i] * nitrite_mg_n_l) / (cloud[HALF_2][i] + nitrite_mg_n_l);
    return Math.min(first, second) + (cloud[UPTAKE][i] * tan_mg_n_l) / (c.half_uptake + tan_mg_n_l);
  });
}
