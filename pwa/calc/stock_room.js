/** Space for fish by rules of the trade: surface for each centimetre of fish, and length to swim. */
import { TOLERANCE } from "./tolerance.js";
import { constants } from "./tables.js";

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
 * @param {{kind: string, adult_cm: number, row: import("./animals.js").SpeciesRow | null}} one
 * @param {number} length_cm
 */
export function long_enough(one, length_cm) {
  const rule = constants("room_practice");
  const swims = one.row?.social === "shoal" || one.row?.temperament === "restless";
  const lengths = swims ? rule.swimmer_lengths : rule.other_lengths;
  return one.kind !== "fish" || length_cm >= lengths * one.adult_cm - TOLERANCE;
}
