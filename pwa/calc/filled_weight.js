/** The weight of a filled tank with contents, equipment and stand, and its pressure on the floor. */
import { TOLERANCE } from "./tolerance.js";
import { Refusal } from "./refusal.js";
import { constants } from "./tables.js";
import { density_kg_m3 } from "./water_properties.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/**
 * Total mass, and the pressure of its weight on the footprint. Equations, units, refusals and source: the Python twin.
 * @param {Input<"filled_weight">} input
 * @returns {Outputs<"filled_weight">}
 */
export function filled_weight({
  length_cm,
  width_cm,
  height_cm,
  measures = "outside",
  glass_mm,
  base_glass_mm,
  tank_kg,
  fill_height_cm,
  water_l,
  temperature_c = 25,
  substrate_kg = 0,
  hardscape_kg = 0,
  hardscape_density_kg_l = 2.6,
  equipment_kg = 0,
  stand_kg = 0,
  footprint_length_cm,
  footprint_width_cm,
}) {
  const notes = [];
  const density = density_kg_m3(temperature_c);
  if (tank_kg !== undefined) {
    if (base_glass_mm !== undefined) throw new Refusal("base_without_measures");
    if (water_l === undefined) throw new Refusal("water_needed");
    if (footprint_length_cm === undefined) throw new Refusal("footprint_needed");
  } else {
    const box = box_of(
      Number(length_cm),
      Number(width_cm),
      Number(height_cm),
      measures,
      Number(glass_mm),
      base_glass_mm ?? Number(glass_mm),
    );
    tank_kg = (box.glass_l / 1000) * constants("solids").glass_kg_m3;
    if (footprint_length_cm === undefined) [footprint_length_cm, footprint_width_cm] = [box.length_cm, box.width_cm];
    if (water_l === undefined) {
      if (fill_height_cm === undefined) notes.push("to_the_rim");
      const pushed_out_l = substrate_kg / constants("solids").grains_kg_l + hardscape_kg / hardscape_density_kg_l;
      water_l = litres_in(box, fill_height_cm ?? box.inside_height_cm, pushed_out_l);
    } else if (water_l > litres_in(box, box.inside_height_cm, 0) + TOLERANCE) throw new Refusal("more_than_it_holds");
  }
  const water_kg = (water_l * density) / 1000;
  const total_kg = tank_kg + water_kg + substrate_kg + hardscape_kg + equipment_kg + stand_kg;
  const footprint_m2 = (footprint_length_cm * Number(footprint_width_cm)) / 10_000;
  const footprint_kpa = (total_kg * constants("standard_gravity").g_m_s2) / 1000 / footprint_m2;
  if (total_kg > constants("floor").heavy_kg) notes.push("heavy");
  if (footprint_kpa > constants("floor").dwelling_kpa) notes.push("over_room_figure");
  return {
    total_kg,
    footprint_kpa,
    dwelling_kpa: constants("floor").dwelling_kpa,
    foot_kg: total_kg / 4,
    empty_tank_kg: tank_kg,
    water_kg,
    density_kg_m3: density,
    footprint_m2,
    notes,
  };
}

/**
 * Outside and inside of a box of five panes, measured outside or inside.
 * @param {number} length_cm @param {number} width_cm @param {number} height_cm
 * @param {string} measures @param {number} glass_mm @param {number} base_glass_mm
 */
function box_of(length_cm, width_cm, height_cm, measures, glass_mm, base_glass_mm) {
  const walls_cm = (2 * glass_mm) / 10;
  const base_cm = base_glass_mm / 10;
  const given = [length_cm, width_cm, height_cm];
  const glass = [walls_cm, walls_cm, base_cm];
  // Do not add and subtract the glass: 40 + 0.8 - 0.8 is not quite 40, and a fill to the rim would be refused.
  const [length, width, height] = measures === "inside" ? given.map((side, i) => side + glass[i]) : given;
  const inside = measures === "inside" ? given : given.map((side, i) => side - glass[i]);
  const [inside_length, inside_width, inside_height_cm] = inside;
  if (inside_length <= 0 || inside_width <= 0 || inside_height_cm <= 0) throw new Refusal("glass_too_thick");
  const inside_cm2 = inside_length * inside_width;
  const glass_l = (length * width * height - inside_cm2 * inside_height_cm) / 1000;
  return { length_cm: length, width_cm: width, inside_cm2, inside_height_cm, glass_l };
}

/**
 * Water below the fill line, less what stands in it.
 * @param {{inside_cm2: number, inside_height_cm: number}} box @param {number} depth_cm @param {number} pushed_out_l
 */
function litres_in(box, depth_cm, pushed_out_l) {
  if (depth_cm > box.inside_height_cm + TOLERANCE) throw new Refusal("above_rim");
  const water_l = (box.inside_cm2 * depth_cm) / 1000 - pushed_out_l;
  if (water_l < 0) throw new Refusal("no_room_for_water");
  return water_l;
}
