/** Grams of animals that leave enough oxygen at dawn. */
import { doubt_band } from "./doubt_band.js";
import { DOUBTS, HIGH, LOW, USUAL, others_at_dawn_mg_h, still_night } from "./oxygen_night.js";
import { constants } from "./tables.js";

/** @import { Tank } from "./oxygen_night.js" */
/** @typedef {{g: number, mg_h: number}} Lot a mixture of animals: mass, respiration */

/**
 * The oxygen limit of a mixture of animals, with its band. Units: the Python twin.
 * @param {Tank} tank
 * @param {Lot} lot
 * @param {number} oxidising_mg_h_g
 * @param {number} least_mg_l
 */
export function oxygen_limit(tank, lot, oxidising_mg_h_g, least_mg_l) {
  const grams = (doubt = "", place = USUAL) => oxygen_g_of(tank, lot, oxidising_mg_h_g, least_mg_l, doubt, place);
  const usual = grams();
  const [low, high] = doubt_band(
    usual,
    DOUBTS.flatMap((doubt) => [LOW, HIGH].map((place) => grams(doubt, place))),
  );
  const spare = others_at_dawn_mg_h(still_night(tank), least_mg_l);
  return {
    limit_g: usual,
    low_g: low,
    high_g: high,
    spare_mg_h: spare,
    sure_mg_h: usual > 0 ? (spare * low) / usual : 0,
  };
}

/**
 * The same where oxygen was read at dawn with the animals in it: only what more of them would take is calculated.
 * @param {Tank} tank
 * @param {Lot} lot
 * @param {number} oxidising_mg_h_g
 * @param {number} least_mg_l
 * @param {Lot} used by the animals present
 * @param {number} dawn_mg_l
 */
export function measured_limit(tank, lot, oxidising_mg_h_g, least_mg_l, used, dawn_mg_l) {
  const grams = (doubt = "", place = USUAL) => {
    const night = still_night(tank, doubt, place);
    const more_mg_h = ((dawn_mg_l - least_mg_l) * night.litres_h) / night.renewed;
    return Math.max(0, used.g + more_mg_h * grams_per_mg_h(lot, oxidising_mg_h_g, doubt, place));
  };
  const usual = grams();
  const [low, high] = doubt_band(
    usual,
    DOUBTS.flatMap((doubt) => [LOW, HIGH].map((place) => grams(doubt, place))),
  );
  const per_mg_h = grams_per_mg_h(lot, oxidising_mg_h_g, "", USUAL);
  return {
    limit_g: usual,
    low_g: low,
    high_g: high,
    spare_mg_h: used.mg_h + (usual - used.g) / per_mg_h,
    sure_mg_h: used.mg_h + (low - used.g) / per_mg_h,
  };
}

/**
 * Mass of the lot that leaves `least_mg_l` at dawn after its respiration and its ammonia's oxidation.
 * @param {Tank} tank @param {Lot} lot @param {number} oxidising_mg_h_g @param {number} least_mg_l
 * @param {string} doubt @param {number} place
 */
function oxygen_g_of(tank, lot, oxidising_mg_h_g, least_mg_l, doubt, place) {
  const spare = others_at_dawn_mg_h(still_night(tank, doubt, place), least_mg_l);
  return Math.max(0, spare) * grams_per_mg_h(lot, oxidising_mg_h_g, doubt, place);
}

/**
 * Mass of the lot whose respiration, with the oxidation of its ammonia, takes 1 mg/h of oxygen.
 * @param {Lot} lot @param {number} oxidising_mg_h_g @param {string} doubt @param {number} place
 */
function grams_per_mg_h(lot, oxidising_mg_h_g, doubt, place) {
  const breath = constants("animal_breathing");
  const rate = [breath.night_low, breath.night_usual, breath.night_high];
  const breathing = lot.mg_h * rate[doubt === "animals" ? place : USUAL];
  return lot.g / (breathing + lot.g * oxidising_mg_h_g);
}
