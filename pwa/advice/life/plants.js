/** What grows in a tank, from its records of planting, trimming, removing and moving. Pure. */

const IN = ["plant", "move_in"];

/** @import { View } from "../../types/views.js" */

/**
 * @typedef {View<"planting">} Planting
 * @typedef {{species: string, since: string, amounts: Planting[], last_trim?: string}} Growing `amounts`: the plantings
 * that say one, oldest first
 */

/**
 * The plants of one tank now, and those that are gone. Amounts are the keeper's words and cannot be added up: a plant
 * is gone when it was removed or moved without an amount, which means all of it.
 * @param {readonly Planting[]} plantings of the tank, in any order
 * @returns {{growing: Growing[], gone: Growing[]}} in the order in which they came
 */
export function plants_of(plantings) {
  /** @type {Map<string, Growing & {here: boolean}>} */ const kinds = new Map();
  for (const planting of [...plantings].sort(in_order)) {
    const { species, at, change } = planting;
    const amount = planting.amount ?? planting.amount_code ?? planting.portions;
    const plant = kinds.get(species) ?? { species, since: at, amounts: [], here: false };
    kinds.set(species, plant);
    if (IN.includes(change)) {
      if (!plant.here) Object.assign(plant, { since: at, amounts: [], here: true });
      if (amount) plant.amounts.push(planting);
    } else if (change === "trim") {
      plant.last_trim = at;
      // A trimmed plant grows here, even if its planting was never recorded.
      plant.here = true;
    } else if (!amount) plant.here = false;
  }
  const all = [...kinds.values()].map(({ here, ...plant }) => ({ here, plant }));
  return {
    growing: all.filter(({ here }) => here).map(({ plant }) => plant),
    gone: all.filter(({ here }) => !here).map(({ plant }) => plant),
  };
}

/** By time; at the same moment arrivals come first. @param {Planting} a @param {Planting} b */
const in_order = (a, b) =>
  a.at < b.at
    ? -1
    : a.at > b.at
      ? 1
      : Number(IN.includes(b.change)) - Number(IN.includes(a.change)) || (a.id < b.id ? -1 : 1);
