/** What to buy for a tank that is set up: each thing as a code with its figures, in the order of the steps. Pure. */
import { dose_for } from "../litres.js";
import {
  HARDSCAPE,
  asked,
  done,
  floor_of,
  heater_input,
  light_input,
  measures_of,
  pack_unit,
  said_at,
  substrate_input,
  weight_input,
} from "./setting_up.js";
import { portions_for } from "./setting_up_life.js";

/** @import { Label, Source } from "../../types/advice.js" */
/** @import { View } from "../../types/views.js" */
/** @import { Plan } from "./setting_up.js" */

/**
 * Tests that a new tank needs; the last three once, for its water.
 * @type {View<"test_kit">["parameter"][]}
 */
const TESTS = ["total_ammonia", "nitrite", "nitrate", "ph", "temperature", "kh", "gh"];

/**
 * @typedef {{code: string, key: string, [part: string]: string | number | undefined}} Thing `key`: the same as long as
 * it is the same thing
 */

/**
 * @param {Plan} tank
 * @param {{kits: View<"test_kit">[], source: Source | null, label: Label | null}} known the room's kits, the tank's
 * source water and dechlorinator
 * @returns {Thing[]}
 */
export function to_buy(tank, { kits, source, label }) {
  return [
    ...(done(tank, "substrate") ? bed(tank) : []),
    ...(done(tank, "hardscape") ? stones(tank) : []),
    ...(done(tank, "warmth") ? warmth(tank) : []),
    ...(done(tank, "plants") ? plants(tank) : []),
    ...dechlorinator(tank, source, label),
    ...TESTS.filter((parameter) => !kits.some((kit) => kit.parameter === parameter && !kit.retired)).map(
      (parameter) => ({
        code: parameter === "temperature" ? "thermometer" : "test",
        key: `test.${parameter}`,
        parameter,
      }),
    ),
  ];
}

/** The weight of the filled tank in kg; null while a measure is missing. @param {Plan} tank @returns {number | null} */
export const weight_of = (tank) =>
  asked("filled_weight", weight_input(tank, said_at(tank, "place"))).answer?.total_kg ?? null;

/** @param {Plan} tank @returns {Thing[]} */
function bed(tank) {
  const said = said_at(tank, "substrate");
  const input = substrate_input(measures_of(tank), said);
  const found = asked("substrate", input).answer;
  if (!input || !found) return [];
  /** @type {Thing[]} */
  const layers = found.layers.map((layer, i) => {
    const { material, role } = input.layers[i];
    return {
      code: layer.packs === undefined ? "layer" : "layer_packs",
      key: `bed.${role}`,
      material,
      litres: layer.litres,
      kg: layer.kg,
      count: layer.packs ?? 0,
      pack: (role === "nutrient" ? said.nutrient_pack : said.cap_pack) ?? 0,
      pack_unit: pack_unit(material),
    };
  });
  return said.support_bags
    ? [...layers, { code: "mesh", key: "mesh", count: said.support_bags, litres: found.support_l }]
    : layers;
}

/** @param {Plan} tank @returns {Thing[]} */
function stones(tank) {
  const said = said_at(tank, "hardscape");
  return HARDSCAPE.flatMap((kind) => {
    const kg = said[`${kind}_kg`] ?? 0;
    return kg > 0 ? [{ code: "hardscape", key: `hardscape.${kind}`, kind, kg }] : [];
  });
}

/** @param {Plan} tank @returns {Thing[]} */
function warmth(tank) {
  const said = said_at(tank, "warmth");
  const heat = asked("heater_power", heater_input(tank, said)).answer;
  const { ppfd_umol_m2_s, hours } = light_input(said);
  return [
    ...(heat && heat.heater_w > 0 ? [{ code: "heater", key: "heater", watts: heat.heater_w }] : []),
    ...(said.filter === "none" ? [] : [{ code: "filter", key: "filter", filter: said.filter }]),
    { code: "lamp", key: "lamp", light: ppfd_umol_m2_s, hours, area_cm2: floor_of(measures_of(tank)).area_cm2 },
  ];
}

/** @param {Plan} tank @returns {Thing[]} */
function plants(tank) {
  const { list, planting } = said_at(tank, "plants");
  const chosen = list.filter((one) => one.portions > 0);
  const rest = portions_for(measures_of(tank), planting) - chosen.reduce((sum, one) => sum + one.portions, 0);
  /** @type {Thing[]} */
  const named = chosen.map((one) => ({
    code: "plant",
    key: `plant.${one.species}`,
    species: one.species,
    count: one.portions,
  }));
  return rest > 0 ? [...named, { code: "plants_more", key: "plants_more", count: rest }] : named;
}

/** @param {Plan} tank @param {Source | null} source @param {Label | null} label @returns {Thing[]} */
function dechlorinator(tank, source, label) {
  const dose = dose_for({ tank, source, label }, tank.water_l);
  if (!dose.needed) return [];
  if (dose.amount === undefined)
    return [{ code: `dechlorinator_${dose.missing}`, key: "dechlorinator", litres: tank.water_l }];
  return [
    {
      code: "dechlorinator",
      key: "dechlorinator",
      amount: dose.amount,
      unit: dose.unit,
      name: dose.label.name,
      litres: tank.water_l,
    },
  ];
}
