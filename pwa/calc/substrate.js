/** Litres, kilograms and shop bags of a layered, sloping bed. */
import { TOLERANCE } from "./tolerance.js";
import { Refusal } from "./refusal.js";
import { constants } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/**
 * @typedef {{role?: string, material: string, front_cm: number, back_cm: number, density_kg_l?: number, pack_l?:
 * number, pack_kg?: number}} Layer
 */

/**
 * Amounts of each layer of a bed whose depth changes linearly from front to back. Equations, units, refusals and
 * source: the Python twin.
 * @param {Input<"substrate">} input
 * @returns {Outputs<"substrate">}
 */
export function substrate({ length_cm, width_cm, layers, support_bags = 0, support_bag_l, support_fill = 0.5 }) {
  if (support_bags > 0 && support_bag_l === undefined) throw new Refusal("bag_size_needed");
  const support_l = support_bags > 0 ? support_bags * Number(support_bag_l) * support_fill : 0;
  const base_cm2 = length_cm * width_cm;
  const amounts = layers.map((layer, place) => {
    let litres = (base_cm2 * (layer.front_cm + layer.back_cm)) / 2 / 1000;
    if (place === 0) {
      if (support_l > litres + TOLERANCE) throw new Refusal("bags_do_not_fit");
      litres = Math.max(0, litres - support_l);
    }
    return amount_of(layer, litres, place);
  });
  const front_cm = sum(layers.map((layer) => layer.front_cm));
  const back_cm = sum(layers.map((layer) => layer.back_cm));
  const rise = (back_cm - front_cm) / width_cm;
  /** @type {Outputs<"substrate">} */
  const out = {
    litres: sum(amounts.map((amount) => amount.litres)),
    kg: sum(amounts.map((amount) => amount.kg)),
    layers: amounts,
    support_l,
    front_cm,
    back_cm,
    slope_deg: (Math.atan(rise) * 180) / Math.PI,
  };
  const notes = [];
  const highest = layers.findLastIndex((layer) => layer.role === "nutrient");
  if (highest >= 0) {
    const cap = layers.slice(highest + 1);
    out.cap_front_cm = sum(cap.map((layer) => layer.front_cm));
    out.cap_back_cm = sum(cap.map((layer) => layer.back_cm));
    notes.push(...cap_notes(out.cap_front_cm, out.cap_back_cm));
    const most_cm = practice("nutrient_most_cm");
    if (layers.some((layer) => layer.role === "nutrient" && deepest(layer) > most_cm)) notes.push("deep_nutrient");
  }
  if (Math.max(front_cm, back_cm) > practice("bed_most_cm")) notes.push("deep_bed");
  if (Math.abs(rise) > Math.tan((constants("angle_of_repose").sand_deg * Math.PI) / 180)) notes.push("steep");
  return { ...out, notes };
}

/** @param {Layer} layer @param {number} litres @param {number} place */
function amount_of(layer, litres, place) {
  let density = layer.density_kg_l;
  if (density === undefined) {
    if (layer.material === "other") throw new Refusal("density_needed", `layers.${place}.density_kg_l`);
    density = constants("bulk_density")[layer.material];
  }
  const kg = litres * density;
  const { pack_l, pack_kg } = layer;
  if (pack_l !== undefined && pack_kg !== undefined) throw new Refusal("one_pack_size", `layers.${place}.pack_kg`);
  /** @type {{litres: number, kg: number, packs?: number}} */
  const amount = { litres, kg };
  if (pack_l !== undefined) amount.packs = packs(litres / pack_l);
  else if (pack_kg !== undefined) amount.packs = packs(kg / pack_kg);
  return amount;
}

/** Whole bags, rounded up; an excess of 1e-9 bag is float rounding and needs no further bag. @param {number} exact */
const packs = (exact) => Math.ceil(exact - 1e-9) + 0;

/** @param {number} front_cm @param {number} back_cm @returns {string[]} */
function cap_notes(front_cm, back_cm) {
  if (Math.max(front_cm, back_cm) === 0) return ["no_cap"];
  const thin = Math.min(front_cm, back_cm) < practice("cap_least_cm") ? ["thin_cap"] : [];
  const thick = Math.max(front_cm, back_cm) > practice("cap_most_cm") ? ["thick_cap"] : [];
  return [...thin, ...thick];
}

/** @param {Layer} layer */
const deepest = ({ front_cm, back_cm }) => Math.max(front_cm, back_cm);
/** @param {number[]} numbers */
const sum = (numbers) => numbers.reduce((total, one) => total + one, 0);
/** @param {string} name */
const practice = (name) => constants("substrate_practice")[name];
