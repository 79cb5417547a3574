/** Limits of total ammonia at a pH and temperature: the 2013 United States criteria and the European one. */
import { free_ammonia } from "./free_ammonia.js";
import { constants, table } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

const PUBLISHED_PH = [6.5, 9];
const PUBLISHED_TEMPERATURE_C = [0, 30];

/**
 * Acute and chronic criteria as total ammonia nitrogen, and the EIFAC limit converted to the same basis. Equations,
 * units and source: the Python twin.
 * @param {Input<"ammonia_limits">} input
 * @returns {Outputs<"ammonia_limits">}
 */
export function ammonia_limits({ ph, temperature_c }) {
  const epa = constants("epa_2013");
  const animals = epa.acute_scale * by_ph(epa, "acute", ph);
  const acute_by_heat = epa.acute_at_20c * 10 ** (epa.acute_per_c * (20 - temperature_c));
  const chronic_by_heat =
    epa.chronic_at_20c * 10 ** (epa.chronic_per_c * (20 - Math.max(temperature_c, epa.chronic_coldest_c)));
  const { fraction } = free_ammonia({ tan_mg_n_l: 1, ph, temperature_c });
  const free_limit_mg_l = table("limits").limits.free_ammonia_mg_l.value;
  const published =
    PUBLISHED_PH[0] <= ph &&
    ph <= PUBLISHED_PH[1] &&
    PUBLISHED_TEMPERATURE_C[0] <= temperature_c &&
    temperature_c <= PUBLISHED_TEMPERATURE_C[1];
  return {
    acute_tan_mg_n_l: animals * Math.min(epa.acute_cap, acute_by_heat),
    acute_salmonid_tan_mg_n_l: Math.min(by_ph(epa, "salmonid", ph), animals * acute_by_heat),
    chronic_tan_mg_n_l: epa.chronic_scale * by_ph(epa, "chronic", ph) * chronic_by_heat,
    eifac_tan_mg_n_l: free_limit_mg_l / constants("nitrogen_species").nh3_per_n / fraction,
    fraction,
    notes: published ? [] : ["extended"],
  };
}

/**
 * How one criterion falls with pH.
 * @param {Readonly<Record<string, number>>} epa @param {string} kind @param {number} ph
 */
function by_ph(epa, kind, ph) {
  const turn = epa[`${kind}_turn_ph`];
  return epa[`${kind}_un_ionised`] / (1 + 10 ** (turn - ph)) + epa[`${kind}_ionised`] / (1 + 10 ** (ph - turn));
}
