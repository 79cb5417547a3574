/** Ammonia from food, and what its oxidation to nitrate takes from the water. */
import { constants } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/**
 * Total ammonia from a day's food, and the nitrate, alkalinity and oxygen of its oxidation. Equations, units and
 * source: the Python twin.
 * @param {Input<"nitrogen_load">} input
 * @returns {Outputs<"nitrogen_load">}
 */
export function nitrogen_load({ feed_g_day, protein_fraction, volume_l, uneaten_fraction = 0 }) {
  const eaten = (1 - uneaten_fraction) * constants("timmons_ebeling").tan_per_protein;
  const left = uneaten_fraction * constants("feed_nitrogen").n_per_protein;
  const tan_mg_n_day = feed_g_day * 1000 * protein_fraction * (eaten + left);
  const tan_mg_n_l_day = tan_mg_n_day / volume_l;
  const oxidation = constants("ebeling_2006");
  const caco3_mg_l_day = tan_mg_n_l_day * oxidation.alkalinity_caco3_per_n;
  return {
    tan_mg_n_day,
    tan_mg_n_l_day,
    nitrate_mg_l_day: tan_mg_n_l_day * oxidation.nitrate_n_per_n * constants("nitrogen_species").no3_per_n,
    kh_drop_dkh_day: caco3_mg_l_day / constants("degree_of_hardness").caco3_mg_l,
    oxygen_mg_day: tan_mg_n_day * oxidation.oxygen_per_n,
  };
}
