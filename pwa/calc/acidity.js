/**
 * The acidity of each draw's water: alkalinity and carbon dioxide, and the pH that goes with both. Method, units and
 * sources: the Python twin.
 */
import { draw } from "./belief.js";
import * as k from "./kinetics.js";

/** @typedef {import("./kinetics.js").Settings} Settings */
/** @typedef {import("./belief.js").Belief} Belief */

// A water of less is taken as this much where its logarithm is needed, dKH.
export const LEAST_KH = 0.05;
// What a tank can hold: alkalinity in dKH, dissolved carbon dioxide in mg/L. Without these bounds, readings that fit no
// water would carry the draws further away with each reading.
const MOST_KH = 100;
const LEAST_CO2 = 1e-3;
const MOST_CO2 = 300;

/**
 * Fills the rows of the water from what is told of it; `noise`: standard normals, `ROWS` sets one after another.
 * @param {Settings} c @param {Belief} belief @param {Float64Array} noise
 */
export function begin(c, belief, noise) {
  const { cloud, temperature_c: at_c } = belief;
  const n = belief.weight.length;
  const told = belief.kh_dkh;
  const ph = Float64Array.from({ length: n }, (_, i) => belief.ph + c.sd_ph * noise[k.PH_OFFSET * n + i]);
  const least = k.kh_of_water(ph, c.least_co2_mg_l, at_c);
  const kh = ph.map((_, i) => {
    const luck = noise[k.KH * n + i];
    const drawn = told === undefined ? c.unknown_kh_dkh * Math.exp(c.sd_unknown_kh * luck) : told + c.sd_kh * luck;
    // No open water holds much less carbon dioxide than the air gives it, so a high pH means some hardness.
    return Math.max(drawn, Math.max(least[i], 0));
  });
  cloud[k.KH] = kh;
  cloud[k.CO2] = k.co2_of_water(ph, kh, at_c).map((co2) => Math.max(co2, c.least_co2_mg_l));
  cloud[k.SOURCE_KH] = kh.slice();
  cloud[k.ALKALI] = Float64Array.from({ length: n }, (_, i) => (noise[k.ALKALI * n + i] > 0 ? 1 : 0));
  cloud[k.PH_OFFSET] = k.ph_of_water(kh, cloud[k.CO2], at_c).map((one) => one - belief.ph);
}

/** What the water of each draw does to its bacteria now. @param {Settings} c @param {Belief} belief */
export const water_of = (c, belief) => k.conditions(c, belief.temperature_c, ph_now(belief));

/** @param {Belief} belief */
function ph_now(belief) {
  const ph = belief.cloud[k.PH_OFFSET].slice();
  for (let i = 0; i < ph.length; i += 1) ph[i] += belief.ph;
  return ph;
}

/** Lets each draw's pH follow its alkalinity and carbon dioxide; `ph` moves with the mean. @param {Belief} belief */
export function settle(belief) {
  const { cloud, weight } = belief;
  const [kh, source_kh, co2] = [cloud[k.KH], cloud[k.SOURCE_KH], cloud[k.CO2]];
  for (let i = 0; i < kh.length; i += 1) {
    kh[i] = Math.min(kh[i], MOST_KH);
    source_kh[i] = Math.min(source_kh[i], MOST_KH);
    co2[i] = Math.min(Math.max(co2[i], LEAST_CO2), MOST_CO2);
  }
  const ph = k.ph_of_water(cloud[k.KH], cloud[k.CO2], belief.temperature_c);
  const offset = cloud[k.PH_OFFSET];
  let moved = 0;
  for (let i = 0; i < ph.length; i += 1) moved += weight[i] * (ph[i] - belief.ph - offset[i]);
  belief.ph += moved;
  for (let i = 0; i < ph.length; i += 1) offset[i] = ph[i] - belief.ph;
  if (belief.kh_dkh !== undefined) belief.kh_dkh = mean_of(cloud[k.KH], weight);
}

/**
 * Takes in a reading of the temperature: the pH stays, and carbon dioxide is what goes with it.
 * @param {Belief} belief @param {number} temperature_c
 */
export function warm(belief, temperature_c) {
  const ph = ph_now(belief);
  belief.temperature_c = temperature_c;
  belief.cloud[k.CO2] = k.co2_of_water(ph, belief.cloud[k.KH], temperature_c).map((co2) => Math.max(co2, LEAST_CO2));
}

/**
 * Corrects alkalinity, the source's, carbon dioxide and what doses bring by a reading of pH or of hardness, dKH.
 * @param {Settings} c @param {Belief} belief @param {"ph" | "kh"} parameter @param {number} value
 */
export function observe(c, belief, parameter, value) {
  const { cloud, weight } = belief;
  const log_kh = cloud[k.KH].map((kh) => Math.log(Math.max(kh, LEAST_KH)));
  const log_source = cloud[k.SOURCE_KH].map((kh) => Math.log(Math.max(kh, LEAST_KH)));
  const log_co2 = cloud[k.CO2].map((co2) => Math.log(co2));
  const hardness = parameter === "kh";
  if (hardness) belief.kh_dkh ??= value;
  const seen = hardness ? log_kh : ph_now(belief);
  const error = hardness ? c.sd_kh / (Math.max(value, 0) + c.sd_kh) : c.sd_ph_reading;
  const wanted = hardness ? Math.log(Math.max(value, LEAST_KH)) : value;
  const mean = mean_of(seen, weight);
  const off = seen.map((one) => one - mean);
  const spread = product_of(off, off, weight);
  const far = (wanted - mean) ** 2 / c.far_sd ** 2 - error * error;
  const wide = Math.max(1, far / Math.max(spread, 1e-9));
  const root = Math.sqrt(wide);
  const luck = draw(belief, 1);
  const share = off.map((one, i) => (wanted + error * luck[i] - mean - root * one) / (wide * spread + error * error));
  const corrected = (/** @type {Float64Array} */ row) => {
    const centre = mean_of(row, weight);
    const away = row.map((one) => one - centre);
    const gain = wide * product_of(away, off, weight);
    return away.map((one, i) => centre + root * one + gain * share[i]);
  };
  // Beyond 50 the bounds of `settle` hold anyway.
  cloud[k.KH] = corrected(log_kh).map((one) => Math.exp(Math.min(one, 50)));
  cloud[k.SOURCE_KH] = corrected(log_source).map((one) => Math.exp(Math.min(one, 50)));
  cloud[k.CO2] = corrected(log_co2).map((one) => Math.exp(Math.min(one, 50)));
  cloud[k.ALKALI] = corrected(cloud[k.ALKALI]).map((one) => Math.min(Math.max(one, 0), 1));
  settle(belief);
}

/** @param {Float64Array} values @param {Float64Array} weight */
function mean_of(values, weight) {
  let sum = 0;
  for (let i = 0; i < values.length; i += 1) sum += weight[i] * values[i];
  return sum;
}

/** @param {Float64Array} one @param {Float64Array} other @param {Float64Array} weight */
function product_of(one, other, weight) {
  let sum = 0;
  for (let i = 0; i < one.length; i += 1) sum += weight[i] * one[i] * other[i];
  return sum;
}
