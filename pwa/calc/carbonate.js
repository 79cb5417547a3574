/** The carbonate system of fresh water: equilibria, activity, and the pH that goes with alkalinity and carbon. */
import { constants } from "./tables.js";

// Halving pH 0 to 14 this often leaves a span below 1e-13.
const HALVINGS = 47;

/** 10^(a + b T + c/T + d log10 T + e/T^2). @param {string} name @param {number} kelvin */
export function equilibrium(name, kelvin) {
  const k = constants(`equilibrium_${name}`);
  return 10 ** (k.a + k.b * kelvin + k.c / kelvin + k.d * Math.log10(kelvin) + k.e / (kelvin * kelvin));
}

/** The activity coefficient of singly charged ions. @param {number} ionic_strength mol/L */
export function davies(ionic_strength) {
  const { a_25c, linear } = constants("davies_1962");
  const root = Math.sqrt(ionic_strength);
  return 10 ** (-a_25c * (root / (1 + root) - linear * ionic_strength));
}

/**
 * CO2 / HCO3, CO3 / HCO3 and OH - H in mol/L at a pH.
 * @param {number} ph @param {number} kelvin @param {number} activity
 */
export function carbon_ratios(ph, kelvin, activity) {
  const hydrogen = 10 ** -ph;
  const carbon_dioxide = (activity * hydrogen) / equilibrium("carbonic_1", kelvin);
  const carbonate = (equilibrium("carbonic_2", kelvin) * activity) / (activity ** 4 * hydrogen);
  const hydroxide = (equilibrium("water", kelvin) / hydrogen - hydrogen) / activity;
  return { carbon_dioxide, carbonate, hydroxide };
}

/**
 * The pH at which `alkalinity_at`, which rises with pH, equals `alkalinity`; by halving pH 0 to 14.
 * @param {number} alkalinity mol/L @param {(ph: number) => number} alkalinity_at
 */
export function ph_of(alkalinity, alkalinity_at) {
  let [low, high] = [0, 14];
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2;
    if (alkalinity_at(middle) < alkalinity) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
