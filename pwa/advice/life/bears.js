/** What the animals of a tank bear: the range of each figure that suits all of them, and who sets its ends. Pure. */
import { table } from "../../calc/tables.js";
import { name_of, stock_of } from "./stock.js";

/** @import { Facts } from "../../types/advice.js" */
/** @import { View } from "../../types/views.js" */

/** @typedef {"temperature_c" | "ph" | "gh_dgh"} Borne */
/** @typedef {{value: number, who: string}} End */

/** The fields of a keeper's own animal. @type {Record<Borne, readonly ["temperature_low_c" | "ph_low" | "gh_low_dgh",
 *   "temperature_high_c" | "ph_high" | "gh_high_dgh"]>} */
const OWN = {
  temperature_c: ["temperature_low_c", "temperature_high_c"],
  ph: ["ph_low", "ph_high"],
  gh_dgh: ["gh_low_dgh", "gh_high_dgh"],
};

/**
 * The highest of the lower ends and the lowest of the upper ends; null where no animal here says anything.
 * @param {Pick<Facts, "stock" | "own_species" | "now">} facts
 * @param {Borne} figure
 * @returns {{low: End | null, high: End | null}}
 */
export function borne({ stock, own_species, now }, figure) {
  /** @type {End[]} */ const lows = [];
  /** @type {End[]} */ const highs = [];
  for (const { species } of stock_of(stock, now).animals) {
    const [low, high] = range_of(species, figure, own_species);
    const who = name_of("species", species);
    if (low !== undefined) lows.push({ value: low, who });
    if (high !== undefined) highs.push({ value: high, who });
  }
  return {
    low: [...lows].sort((a, b) => b.value - a.value)[0] ?? null,
    high: [...highs].sort((a, b) => a.value - b.value)[0] ?? null,
  };
}

/**
 * @param {string} species a key of the table, or a name of the keeper's own
 * @param {Borne} figure
 * @param {readonly View<"own_species">[]} own
 * @returns {readonly [number | undefined, number | undefined]}
 */
function range_of(species, figure, own) {
  const { rows } = table("species");
  if (Object.hasOwn(rows, species)) return rows[species][figure] ?? [undefined, undefined];
  const row = own.find(({ name }) => name === species);
  const [low, high] = OWN[figure];
  return [row?.[low], row?.[high]];
}
