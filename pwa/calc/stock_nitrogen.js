/** Grams of animals that a tank's nitrogen allows: by what it processes, and by a ceiling on nitrate. */
import { doubt_band } from "./doubt_band.js";
import { constants, table } from "./tables.js";

/**
 * @typedef {{protein_g: number, bottom_m2: number, planting: string, floating_cover: number, plants_share: number,
 * maturity: string, capacity_mg_n_day?: number, changed_mg_n_day: number}} Given
 */

// Places in a triple: low, usual, high.
const LOW = 0;
const USUAL = 1;
const HIGH = 2;
// The doubtful figures, each varied alone.
export const NITROGEN_DOUBTS = ["capacity", "dry", "growth", "floating", "excretion"];

/** The nitrogen limit and its parts, with its band. @param {Given} given */
export function nitrogen_limit(given) {
  const usual = nitrogen_room(given);
  const [low_g, high_g] = doubt_band(
    usual.limit_g,
    NITROGEN_DOUBTS.flatMap((doubt) => [LOW, HIGH].map((place) => nitrogen_room(given, doubt, place).limit_g)),
  );
  return { ...usual, low_g, high_g };
}

/** Share of their uptake that plants reach so many days after planting. @param {number} days */
export function plants_share(days) {
  const { first_share, full_after_days } = constants("plants_settling");
  return first_share + (1 - first_share) * Math.min(1, days / full_after_days);
}

/**
 * The nitrogen limit and its parts, with one doubtful figure at `place` of its triple. Equations and units: the
 * Python twin.
 * @param {Given} given @param {string} [doubt] @param {number} [place]
 */
export function nitrogen_room(given, doubt = "", place = USUAL) {
  const at = (/** @type {string} */ name) => (name === doubt ? place : USUAL);
  const classes = table("tank_classes");
  const plants = constants("plant_nitrogen");
  const shares = constants("nitrogen_shares");
  const dry = classes.planting.classes[given.planting].dry_g_m2[at("dry")];
  const growth = [plants.uptake_low_mg_g_day, plants.uptake_usual_mg_g_day, plants.uptake_high_mg_g_day][at("growth")];
  const afloat = [plants.floating_low_mg_m2_day, plants.floating_mg_m2_day, plants.floating_high_mg_m2_day][
    at("floating")
  ];
  const taken_up = given.plants_share * given.bottom_m2 * (dry * growth + given.floating_cover * afloat);
  const settled = classes.maturity.classes[given.maturity].nitrified_mg_n_m2_day;
  const capacity = given.capacity_mg_n_day ?? settled[at("capacity")] * given.bottom_m2;
  const excreted = [shares.excretion_low, 1, shares.excretion_high][at("excretion")];
  const tan = given.protein_g * 1000 * constants("timmons_ebeling").tan_per_protein * excreted;
  const fed = given.protein_g * 1000 * constants("feed_nitrogen").n_per_protein;
  const nitrate = fed * [shares.nitrate_low, shares.nitrate_usual, shares.nitrate_high][at("excretion")];
  const processing_g = (capacity + taken_up) / tan;
  const nitrate_g = (Math.max(0, given.changed_mg_n_day) + taken_up) / nitrate;
  return {
    limit_g: Math.min(processing_g, nitrate_g),
    by: /** @type {"processing" | "nitrate"} */ (processing_g <= nitrate_g ? "processing" : "nitrate"),
    tan_mg_n_g_day: tan,
    nitrate_mg_n_g_day: nitrate,
    capacity,
    plants: taken_up,
  };
}
