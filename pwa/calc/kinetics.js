/**
 * Two-step nitrification with plants: one stable step of the outlook's model. Equations, units, sources: the Python
 * twin.
 */
import { equilibrium } from "./carbonate.js";
import { free_ammonia } from "./free_ammonia.js";
export { settings } from "./model_settings.js";
import { constants, table } from "./tables.js";

/** @typedef {Float64Array[]} Cloud one row a quantity, one column a draw */
/**
 * @typedef {{acid: Float64Array, warmth_1: number, warmth_2: number, decay: number, share_nh3: Float64Array,
 *   share_hno2: Float64Array}} Water what the water of each draw does to its bacteria
 */
/** @typedef {import("./model_settings.js").Settings} Settings */

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
// Alkalinity of the tank and of the water that changes bring [dKH]; dissolved carbon dioxide [mg/L]; how much free
// ammonia and nitrous acid the bacteria bear, as a multiple of the published; alkalinity that a dose of ammonia brings
// (0: a salt, 1: ammonia water).
export const KH = 14;
export const SOURCE_KH = 15;
export const CO2 = 16;
export const TOLERANCE = 17;
export const ALKALI = 18;
export const ROWS = 19;

/**
 * Factors of each draw's water on the growth of both groups and on their decay; shares of NH3 and HNO2.
 * @param {Settings} c
 * @param {number} temperature_c
 * @param {Float64Array} ph
 * @returns {Water}
 */
export function conditions(c, temperature_c, ph) {
  const n = ph.length;
  const [acid, share_nh3, share_hno2] = [0, 1, 2].map(() => new Float64Array(n));
  const [warmth_1, warmth_2] = warmth(c, temperature_c);
  const { ph_cap, ph_high, ph_zero, ph_pole } = c;
  const log_base = Math.log(c.ph_base);
  const { pka } = free_ammonia({ tan_mg_n_l: 0, ph: 7, temperature_c });
  const [k_nh3, k_hno2] = [10 ** -pka, Math.exp(-c.hno2_kelvin / (temperature_c + 273.15))];
  for (let i = 0; i < n; i += 1) {
    const below = Math.min(ph[i], ph_zero);
    const factor = ph[i] < ph_cap ? Math.exp(log_base * (ph[i] - ph_cap)) : 1;
    acid[i] = factor * ((ph_high * (ph_zero - below)) / (ph_pole - below));
    const h = Math.exp(-Math.LN10 * ph[i]);
    share_nh3[i] = k_nh3 / (k_nh3 + h);
    share_hno2[i] = h / (h + k_hno2);
  }
  return { acid, warmth_1, warmth_2, decay: c.theta_decay ** (temperature_c - 20), share_nh3, share_hno2 };
}

/**
 * Acid x min(KH / (2.4 + what a step would take at full activity), 1), never below 0.02; for one draw.
 * @param {number} acid @param {number} kh_dkh @param {number} needed_dkh 2.4 + what the step would take
 * @param {number} least
 */
export const activity = (acid, kh_dkh, needed_dkh, least) =>
  Math.max(kh_dkh < needed_dkh ? (acid * Math.max(kh_dkh, 0)) / needed_dkh : acid, least);

/**
 * Factors of the temperature on the growth of both groups, 1 at 20 °C.
 * @param {Settings} c @param {number} temperature_c @returns {[number, number]}
 */
export function warmth(c, temperature_c) {
  const borne = (/** @type {1 | 2} */ group, /** @type {number} */ at_c) =>
    (1 - Math.exp(c[`heat_${group}`] * Math.min(at_c - c[`hottest_${group}_c`], 0))) ** 2;
  const factor = (/** @type {1 | 2} */ group) =>
    (c[`theta_growth_${group}`] ** (temperature_c - 20) * borne(group, temperature_c)) / borne(group, 20);
  return [factor(1), factor(2)];
}

/**
 * pH of water with this alkalinity [dKH] and dissolved carbon dioxide [mg/L], one a draw.
 * @param {Float64Array} kh_dkh @param {Float64Array} co2_mg_l @param {number} temperature_c
 */
export function ph_of_water(kh_dkh, co2_mg_l, temperature_c) {
  const { first, water } = equilibria(temperature_c);
  const per_dkh = eq_per_dkh();
  const per_mg = first / co2_mg_mol();
  const ph = new Float64Array(kh_dkh.length);
  for (let i = 0; i < ph.length; i += 1) {
    const alkalinity = kh_dkh[i] * per_dkh;
    const product = per_mg * co2_mg_l[i] + water;
    const root = Math.sqrt(alkalinity * alkalinity + 4 * product);
    // Either form loses digits on one side of zero.
    ph[i] = -Math.log10(alkalinity > 0 ? (2 * product) / (alkalinity + root) : (root - alkalinity) / 2);
  }
  return ph;
}

/**
 * Dissolved carbon dioxide [mg/L] of water with this pH and alkalinity [dKH], one a draw.
 * @param {Float64Array} ph @param {Float64Array} kh_dkh @param {number} temperature_c
 */
export function co2_of_water(ph, kh_dkh, temperature_c) {
  const { first, water } = equilibria(temperature_c);
  const [per_dkh, per_mol] = [eq_per_dkh(), co2_mg_mol()];
  return ph.map((one, i) => {
    const h = 10 ** -one;
    return ((h * (h + kh_dkh[i] * per_dkh) - water) / first) * per_mol;
  });
}

/**
 * Alkalinity [dKH] of waters with these pH and this dissolved carbon dioxide [mg/L].
 * @param {Float64Array} ph @param {number} co2_mg_l @param {number} temperature_c
 */
export function kh_of_water(ph, co2_mg_l, temperature_c) {
  const { first, water } = equilibria(temperature_c);
  const [per_dkh, per_mol] = [eq_per_dkh(), co2_mg_mol()];
  return ph.map((one) => {
    const h = 10 ** -one;
    return (((first * co2_mg_l) / per_mol + water) / h - h) / per_dkh;
  });
}

/** @param {number} temperature_c */
function equilibria(temperature_c) {
  const kelvin = temperature_c + 273.15;
  return { first: equilibrium("carbonic_1", kelvin), water: equilibrium("water", kelvin) };
}

const co2_mg_mol = () => constants("molar_mass").co2_g_mol * 1000;
/** Equivalents of alkalinity a litre that one degree stands for. */
const eq_per_dkh = () => (2 * table("hardness_scales").scales.dh.mmol_l) / 1000;
/** Alkalinity [dKH] of one equivalent a mole of nitrogen, for each mg N/L. */
export const dkh_per_mg_n = () => 1 / (constants("molar_mass").n_g_mol * 1000 * eq_per_dkh());

/**
 * Move `cloud` forward by `days` in place; semi-implicit, so stable at any rate.
 * @param {Cloud} cloud @param {number} days @param {number} base mg N/L/day @param {number} released mg N/L
 * @param {Water} water @param {Settings} c
 */
export function step(cloud, days, base, released, water, c) {
  const [tan, nitrite, nitrate, capacity_1, capacity_2, input, uptake, growth_1, growth_2, half_1, half_2, decay] =
    cloud;
  const [appetite, kh, tolerance] = [cloud[APPETITE], cloud[KH], cloud[TOLERANCE]];
  const { half_uptake, half_nitrate, enough_kh_dkh, least_activity } = c;
  const [per_nh3_1, per_nh3_2] = [1 / c.nh3_half_1, 1 / c.nh3_half_2];
  const [per_hno2_1, per_hno2_2] = [1 / c.hno2_half_1, 1 / c.hno2_half_2];
  const { share_nh3, share_hno2, acid } = water;
  const [days_1, days_2] = [days * water.warmth_1, days * water.warmth_2];
  const lost = days * water.decay;
  const fed = days * base + released;
  const per_mg_n = dkh_per_mg_n();
  for (let i = 0; i < tan.length; i += 1) {
    const n1 = tan[i];
    const n2 = nitrite[i];
    const n3 = nitrate[i];
    const per_borne = 1 / tolerance[i];
    const nh3 = share_nh3[i] * n1 * per_borne;
    const hno2 = share_hno2[i] * n2 * per_borne;
    const halved_1 = (half_1[i] + n1 * (1 + nh3 * per_nh3_1)) * (1 + hno2 * per_hno2_1);
    const halved_2 = (half_2[i] + n2 * (1 + nh3 * per_nh3_2)) * (1 + hno2 * per_hno2_2);
    const wanted = days * uptake[i];
    const rate_u = wanted / (half_uptake + n1);
    const given = input[i] * appetite[i] * fed;
    const full_1 = (days_1 * capacity_1[i]) / halved_1;
    const at_most = (full_1 * (n1 + given)) / (1 + full_1 + rate_u);
    const active = activity(acid[i], kh[i], enough_kh_dkh + 2 * per_mg_n * at_most, least_activity);
    const rate_1 = active * full_1;
    const next_1 = (n1 + given) / (1 + rate_1 + rate_u);
    const oxidised_1 = rate_1 * next_1;
    const taken = rate_u * next_1;
    const next_2 = (n2 + oxidised_1) / (1 + (active * days_2 * capacity_2[i]) / halved_2);
    const oxidised_2 = n2 + oxidised_1 - next_2;
    const before_3 = n3 + oxidised_2;
    const next_3 = before_3 / (1 + Math.max(wanted - taken, 0) / (half_nitrate + n3));
    kh[i] += per_mg_n * (given - taken - 2 * oxidised_1 + (before_3 - next_3));
    nitrate[i] = next_3;
    tan[i] = next_1;
    nitrite[i] = next_2;
    const kept = 1 / (1 + lost * decay[i]);
    capacity_1[i] = (capacity_1[i] + growth_1[i] * oxidised_1) * kept;
    capacity_2[i] = (capacity_2[i] + growth_2[i] * oxidised_2) * kept;
  }
}

/**
 * What each draw's tank processes, mg N/L/day, while ammonia and nitrite stay at these concentrations.
 * @param {Cloud} cloud @param {Water} water @param {Settings} c
 * @param {number} tan_mg_n_l @param {number} nitrite_mg_n_l
 */
export function processed(cloud, water, c, tan_mg_n_l, nitrite_mg_n_l) {
  const rates = new Float64Array(cloud[TAN].length);
  for (let i = 0; i < rates.length; i += 1) {
    const active = activity(water.acid[i], cloud[KH][i], c.enough_kh_dkh, c.least_activity);
    const first = (active * water.warmth_1 * cloud[CAPACITY_1][i] * tan_mg_n_l) / (cloud[HALF_1][i] + tan_mg_n_l);
    const second =
      (active * water.warmth_2 * cloud[CAPACITY_2][i] * nitrite_mg_n_l) / (cloud[HALF_2][i] + nitrite_mg_n_l);
    rates[i] = Math.min(first, second) + (cloud[UPTAKE][i] * tan_mg_n_l) / (c.half_uptake + tan_mg_n_l);
  }
  return rates;
}
