/** Litres of a tank: to the rim, and of water when filled, less substrate and hardscape. */
import { TOLERANCE } from "./tolerance.js";
import { Refusal } from "./refusal.js";
import { floor_cm2 } from "./tank_shapes.js";

/** @import {Input, Outputs} from "../types/contract.js" */

const CM3_PER_L = 1000;

/**
 * Gross litres to the rim and litres of water at the fill height. Equations, units and refusals: the Python twin.
 * @param {Input<"volume">} input
 * @returns {Outputs<"volume">}
 */
export function volume({
  shape,
  height_cm,
  measures = "inside",
  glass_mm = 0,
  fill_height_cm,
  substrate_l = 0,
  substrate_porosity = 0.4,
  hardscape_kg = 0,
  hardscape_density_kg_l = 2.6,
  metered_l,
  ...plan
}) {
  const glass_cm = measures === "outside" ? glass_mm / 10 : 0;
  const inside_height_cm = height_cm - glass_cm;
  if (inside_height_cm <= 0) throw new Refusal("glass_too_thick");
  if (fill_height_cm !== undefined && fill_height_cm > inside_height_cm + TOLERANCE)
    throw new Refusal("fill_above_rim");
  const filled_to_cm = Math.min(fill_height_cm ?? inside_height_cm, inside_height_cm);
  let gross_l, filled_l, surface_cm2;
  if (shape === "bowl") {
    const diameter_cm = /** @type {number} */ (plan.diameter_cm) - 2 * glass_cm;
    if (diameter_cm <= 0) throw new Refusal("glass_too_thick");
    if (inside_height_cm > diameter_cm + TOLERANCE) throw new Refusal("bowl_too_tall");
    [gross_l] = bowl(diameter_cm / 2, inside_height_cm);
    [filled_l, surface_cm2] = bowl(diameter_cm / 2, filled_to_cm);
  } else {
    surface_cm2 = floor_cm2(shape, /** @type {Record<string, number>} */ (plan), glass_cm);
    gross_l = (surface_cm2 * inside_height_cm) / CM3_PER_L;
    filled_l = (surface_cm2 * filled_to_cm) / CM3_PER_L;
  }
  if (substrate_l >= filled_l && substrate_l > 0) throw new Refusal("substrate_too_much");
  const displaced_l = substrate_l * (1 - substrate_porosity) + hardscape_kg / hardscape_density_kg_l;
  if (displaced_l >= filled_l) throw new Refusal("displaced_too_much");
  const notes = [];
  if (fill_height_cm === undefined && metered_l === undefined) notes.push("filled_to_rim");
  if (metered_l !== undefined && metered_l > gross_l + TOLERANCE) notes.push("metered_above_gross");
  return {
    gross_l,
    water_l: metered_l ?? filled_l - displaced_l,
    surface_cm2,
    inside_height_cm,
    filled_to_cm,
    filled_l,
    displaced_l,
    notes,
  };
}

/**
 * Litres and water surface of a sphere filled to a depth from its lowest point.
 * @param {number} radius_cm @param {number} depth_cm @returns {[number, number]}
 */
function bowl(radius_cm, depth_cm) {
  depth_cm = Math.min(depth_cm, 2 * radius_cm);
  const held_cm3 = (Math.PI * depth_cm * depth_cm * (3 * radius_cm - depth_cm)) / 3;
  return [held_cm3 / CM3_PER_L, Math.PI * depth_cm * (2 * radius_cm - depth_cm)];
}
