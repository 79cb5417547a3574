/** One reading of a nitrogen species, as nitrogen and as the ion or molecule itself. */
import { constants } from "./tables.js";

/**
 * The same amount on both bases. Units and source: the Python twin.
 * @param {{value: number, species: string, basis: string}} input
 */
export function nitrogen_units({ value, species, basis }) {
  const ion_per_n = constants("nitrogen_species")[`${species}_per_n`];
  return {
    as_n_mg_l: basis === "n" ? value : value / ion_per_n,
    as_ion_mg_l: basis === "ion" ? value : value * ion_per_n,
    ion_per_n,
  };
}
