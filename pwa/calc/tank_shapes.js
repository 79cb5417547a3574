/** Inside floor area of every straight-walled tank shape. Equations: the Python twin. */
import { Refusal } from "./refusal.js";

/** @typedef {Record<string, number>} Measures */

/** Area between an arc and its chord. @param {number} chord_cm @param {number} sagitta_cm */
function circular_segment_cm2(chord_cm, sagitta_cm) {
  const radius = ((chord_cm * chord_cm) / 4 + sagitta_cm * sagitta_cm) / (2 * sagitta_cm);
  const angle = 4 * Math.atan((2 * sagitta_cm) / chord_cm);
  return ((radius * radius) / 2) * (angle - Math.sin(angle));
}

/**
 * Inside floor area; `glass_cm` is 0 for inside measures.
 * @param {string} shape @param {Measures} measures @param {number} glass_cm
 */
export function floor_cm2(shape, measures, glass_cm) {
  return FLOORS[shape](measures, glass_cm);
}

/** @param {Measures} measures @param {number} glass */
const cuboid = ({ length_cm, width_cm }, glass) => left(length_cm - 2 * glass) * left(width_cm - 2 * glass);

/** @param {Measures} measures @param {number} glass */
function cylinder({ diameter_cm }, glass) {
  const radius = left(diameter_cm / 2 - glass);
  return Math.PI * radius * radius;
}

/** @param {Measures} measures @param {number} glass */
function bow_front({ length_cm, width_cm, bow_cm }, glass) {
  if (bow_cm > length_cm / 2) throw new Refusal("bow_too_deep");
  const chord = left(length_cm - 2 * glass);
  const radius = ((length_cm * length_cm) / 4 + bow_cm * bow_cm) / (2 * bow_cm) - glass;
  const half = chord / 2;
  const sagitta = (half * half) / (radius + Math.sqrt(Math.max(0, radius * radius - half * half)));
  const ends = left(width_cm + bow_cm - 2 * glass - sagitta);
  return chord * ends + circular_segment_cm2(chord, sagitta);
}

/** @param {Measures} measures @param {number} glass */
function half_round({ diameter_cm }, glass) {
  // The flat back takes a strip off the half circle that the curved pane encloses.
  const radius = diameter_cm / 2 - glass;
  const sagitta = left(radius - glass);
  return circular_segment_cm2(2 * Math.sqrt(radius * radius - glass * glass), sagitta);
}

/** @param {Measures} measures @param {number} glass */
function quarter_round({ length_cm }, glass) {
  // Both straight panes take a strip. What is left is the sector between them less two triangles at the corner.
  const radius = left(length_cm - glass);
  const reach = Math.sqrt(Math.max(0, radius * radius - glass * glass));
  left(reach - glass);
  const angle = Math.atan2(reach, glass) - Math.atan2(glass, reach);
  return ((radius * radius) / 2) * angle - glass * (reach - glass);
}

/** @param {Measures} measures @param {number} glass */
function hexagon({ width_cm }, glass) {
  const across = left(width_cm - 2 * glass);
  return (Math.sqrt(3) / 2) * across * across;
}

/** @type {Record<string, (measures: Measures, glass: number) => number>} */
const FLOORS = { cuboid, cylinder, bow_front, half_round, quarter_round, hexagon };

/** The inside length; Refusal if the glass leaves nothing. @param {number} inside_cm */
function left(inside_cm) {
  if (inside_cm <= 0) throw new Refusal("glass_too_thick");
  return inside_cm;
}
