/** One reading of a nitrogen species, as nitrogen and as the ion or molecule itself. */
import { constants } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/**
 * The same amount on both bases. Units and source: the Python twin.
 * @param {Input<"nitrogen_units">} input
 * @returns {Outputs<"nitrogen_units">}
 */
export function nitrogen_units({ value, species, basis }) {
  const ion_per_n = constants("nitrogen_species")[`${species}_per_n`];
  return {
    as_n_mg_l: basis === "n" ? value : value / ion_per_n,
    as_ion_mg_l: basis === "ion" ? value : value * ion_per_n,
    ion_per_n,
  };
}
