/** What to buy for a tank that is set up: each thing as a code with its figures, in the order of the steps. Pure. */
import { constants } from "../../calc/tables.js";
import { dose_for } from "../litres.js";
import {
  asked,
  done,
  floor_of,
  heater_input,
  light_input,
  pack_unit,
  said_at,
  substrate_input,
  weight_input,
} from "./setting_up.js";
import { portions_for } from "./setting_up_life.js";

/** Tests a new tank wants; the last three once, for its water. */
const TESTS = ["total_ammonia", "nitrite", "nitrate", "ph", "temperature", "kh", "gh"];

/** @typedef {{code: string, key: string, [part: string]: any}} Thing `key`: the same as long as it is the same thing */

/**
 * @param {any} tank its record, with the plan
 * @param {{kits: any[], source: any, label: any}} room its own kits, the tank's source water and dechlorinator
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

/** What it will weigh, filled; null while a measure is missing. @param {any} tank @returns {number | null} */
export const weight_of = (tank) =>
  asked("filled_weight", weight_input(tank, said_at(tank, "place"))).answer?.total_kg ?? null;

/** @param {any} tank @returns {Thing[]} */
function bed(tank) {
  const said = said_at(tank, "substrate");
  const input = substrate_input(tank.measures, said);
  const found = input && asked("substrate", input).answer;
  if (!found) return [];
  const layers = found.layers.map((/** @type {any} */ layer, /** @type {number} */ i) => {
    const { material, role } = input.layers[i];
    return {
      code: layer.packs === undefined ? "layer" : "layer_packs",
      key: `bed.${role}`,
      material,
      litres: layer.litres,
      kg: layer.kg,
      count: layer.packs ?? 0,
      pack: said[`${role === "nutrient" ? "nutrient" : "cap"}_pack`] ?? 0,
      pack_unit: pack_unit(material),
    };
  });
  return said.support_bags
    ? [...layers, { code: "mesh", key: "mesh", count: said.support_bags, litres: found.support_l }]
    : layers;
}

/** @param {any} tank @returns {Thing[]} */
function stones(tank) {
  const said = said_at(tank, "hardscape");
  return Object.keys(constants("hardscape_densities"))
    .filter((kind) => said[`${kind}_kg`] > 0)
    .map((kind) => ({ code: "hardscape", key: `hardscape.${kind}`, kind, kg: said[`${kind}_kg`] }));
}

/** @param {any} tank @returns {Thing[]} */
function warmth(tank) {
  const said = said_at(tank, "warmth");
  const heat = asked("heater_power", heater_input(tank, said)).answer;
  const { ppfd_umol_m2_s, hours } = light_input(said);
  return [
    ...(heat?.heater_w > 0 ? [{ code: "heater", key: "heater", watts: heat.heater_w }] : []),
    ...(said.filter === "none" ? [] : [{ code: "filter", key: "filter", filter: said.filter }]),
    { code: "lamp", key: "lamp", light: ppfd_umol_m2_s, hours, area_cm2: floor_of(tank.measures).area_cm2 },
  ];
}

/** @param {any} tank @returns {Thing[]} */
function plants(tank) {
  const { list, planting } = said_at(tank, "plants");
  const chosen = list.filter((/** @type {any} */ one) => one.portions > 0);
  const rest =
    portions_for(tank.measures, planting) -
    chosen.reduce((/** @type {number} */ sum, /** @type {any} */ one) => sum + one.portions, 0);
  const named = chosen.map((/** @type {any} */ one) => ({
    code: "plant",
    key: `plant.${one.species}`,
    species: one.species,
    count: one.portions,
  }));
  return rest > 0 ? [...named, { code: "plants_more", key: "plants_more", count: rest }] : named;
}

/** @param {any} tank @param {any} source @param {any} label @returns {Thing[]} */
function dechlorinator(tank, source, label) {
  const dose = dose_for({ tank, source, label }, tank.water_l);
  if (!dose.needed) return [];
  if (dose.missing) return [{ code: `dechlorinator_${dose.missing}`, key: "dechlorinator", litres: tank.water_l }];
  return [
    {
      code: "dechlorinator",
      key: "dechlorinator",
      amount: dose.amount,
      unit: dose.unit,
      name: label.name,
      litres: tank.water_l,
    },
  ];
}
