/** Free (un-ionised) ammonia from total ammonia, pH, temperature and ionic strength. */
import { constants } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/**
 * The share of total ammonia that is NH3, and its concentration. Equations, units and source: the Python twin.
 * @param {Input<"free_ammonia">} input
 * @returns {Outputs<"free_ammonia">}
 */
export function free_ammonia({ tan_mg_n_l, ph, temperature_c, ionic_strength_mol_l = 0 }) {
  const emerson = constants("emerson_1975");
  const davies = constants("davies_1962");
  const pka = emerson.intercept + emerson.slope_k / (temperature_c + constants("kelvin").zero_celsius_k);
  const root = Math.sqrt(ionic_strength_mol_l);
  const log_gamma = -davies.a_25c * (root / (1 + root) - davies.linear * ionic_strength_mol_l);
  const pka_in_water = pka - log_gamma;
  const fraction = 1 / (1 + 10 ** (pka_in_water - ph));
  const nh3_mg_n_l = tan_mg_n_l * fraction;
  return {
    fraction,
    nh3_mg_n_l,
    nh3_mg_l: nh3_mg_n_l * constants("nitrogen_species").nh3_per_n,
    pka: pka_in_water,
  };
}
