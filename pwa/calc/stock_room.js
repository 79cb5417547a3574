/** Space and company by rules of the trade: surface for each centimetre of fish, length to swim, more of a kind. */
import { TOLERANCE } from "./tolerance.js";
import { constants } from "./tables.js";

/** @import { SpeciesRow } from "./animals.js" */

/**
 * Surface that one grown fish needs [cm²]; 0 for shrimp and snails.
 * @param {{kind: string, adult_cm: number}} one
 */
export function surface_asked_cm2(one) {
  if (one.kind !== "fish") return 0;
  const rule = constants("room_practice");
  return rule.surface_cm2_per_cm * one.adult_cm * Math.max(1, one.adult_cm / rule.slim_to_cm);
}

/**
 * Whether the tank is long enough for one grown fish to swim; always true for shrimp and snails.
 * @param {{kind: string, adult_cm: number, row: SpeciesRow | null}} one
 * @param {number} length_cm
 */
export function long_enough(one, length_cm) {
  const rule = constants("room_practice");
  const swims = one.row?.social === "shoal" || one.row?.temperament === "restless";
  const lengths = swims ? rule.swimmer_lengths : rule.other_lengths;
  return one.kind !== "fish" || length_cm >= lengths * one.adult_cm - TOLERANCE;
}

/**
 * Grams of a mixture of animals that the surface has room for, with the band; null for animals that need no room.
 * @param {number} surface_cm2
 * @param {{g: number, cm2: number, fits: boolean}} lot
 * @returns {{limit_g: number | null, low_g: number | null, high_g: number | null}}
 */
export function room_limit(surface_cm2, lot) {
  if (lot.cm2 <= 0) return { limit_g: null, low_g: null, high_g: null };
  const practice = constants("room_practice");
  const limit = lot.fits ? (surface_cm2 / lot.cm2) * lot.g : 0;
  return { limit_g: limit, low_g: limit / practice.low_factor, high_g: limit * practice.high_factor };
}

/**
 * How many more of its own kind an animal bears; null where company does not limit it.
 * @param {{row: SpeciesRow | null, count: number}} one
 * @param {string} temperament
 */
export function company_more({ row, count }, temperament) {
  if (temperament === "aggressive" && count > 0) return 0;
  const most = row?.social === "pair" ? 2 : row?.social === "solitary" || temperament === "aggressive" ? 1 : null;
  return most === null ? null : Math.max(0, most - count);
}
