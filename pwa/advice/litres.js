/** Litres rounded to what a bucket can measure, and the dechlorinator for exactly those litres. */
import { convert } from "../figures/units.js";
import { InvalidInput, answered, input_of, run } from "../contracts.js";
import { brought } from "./level.js";
import { stock_of } from "./life/stock.js";
import { surface_of } from "./surface.js";

/** @import { Facts, Label, LabelDose, Level, Limits, Source, Watched } from "../types/advice.js" */
/** @import { DechlorinatorDoseInput, VolumeInput } from "../types/calculations.js" */
/** @import { FieldError } from "../contracts.js" */

/**
 * Steps of water for a small, a medium and a large tank (assumption: what a marked bucket can measure; a quart of a
 * gallon).
 * @type {Record<string, [number, number, number]>}
 */
const STEPS = { L: [0.5, 1, 5], "US gal": [0.25, 0.25, 1], "UK gal": [0.25, 0.25, 1] };

/**
 * The step for a tank, in litres; it is a round step of the unit that the phone shows.
 * @param {number} water_l
 * @param {string} [unit]
 */
export const bucket_step = (water_l, unit = "L") =>
  convert(STEPS[unit][water_l < 30 ? 0 : water_l < 300 ? 1 : 2], unit, "L");

/**
 * Litres rounded up to the step, but never past `most_l`.
 * @param {number} litres
 * @param {number} water_l
 * @param {string} [unit]
 * @param {number} [most_l] left out: what the tank holds
 */
export function bucket_litres(litres, water_l, unit, most_l = water_l) {
  const step = bucket_step(water_l, unit);
  const rounded = Math.ceil(litres / step - 1e-9) * step;
  if (rounded <= most_l || most_l >= water_l) return Math.min(rounded, water_l);
  return Math.floor(most_l / step + 1e-9) * step || most_l;
}

/** The most that is changed at once (common practice: half, so that temperature and hardness do not jump). */
const HALF = 0.5;
/** For nitrate alone: it harms over weeks, a large change harms at once (common practice). */
const THIRD = 1 / 3;
/** Where the new water itself brings ammonia: a little each day (assumption). */
const QUARTER = 0.25;
/** Water above the bed that any fish can swim in, cm; a longer fish needs its own length (assumption). */
const SWIMMING_CM = 6;

/**
 * The most litres that may be changed at once: half, and never so much that the fish cannot swim above the bed.
 * @param {Pick<Facts, "tank" | "stock" | "now">} facts
 * @param {{unhurried?: boolean, in_small_steps?: boolean}} [how] `unhurried`: only nitrate asks for the change;
 * `in_small_steps`: the new water brings ammonia
 * @returns {number}
 */
export function most_at_once({ tank, stock, now }, { unhurried = false, in_small_steps = false } = {}) {
  const share = (in_small_steps ? QUARTER : unhurried ? THIRD : HALF) * tank.water_l;
  const room = above_bed(tank);
  if (!room) return share;
  const longest = Math.max(0, ...stock_of(stock ?? [], now).animals.map(({ length_cm = 0 }) => length_cm));
  const must_stay = (Math.max(SWIMMING_CM, longest) * room.surface_cm2) / 1000;
  // A tank that is shallower than that when full says nothing about a change.
  return must_stay < room.litres ? Math.min(share, room.litres - must_stay) : share;
}

/**
 * Whether only small changes help: the new water itself brings ammonia (as chloramine does), so that a large one makes
 * the nitrite of the next days. Not while there is so much ammonia that a change cannot wait, or nobody knows; salt
 * meets nitrite at once. A quarter of the limit is much to bring (assumption).
 * @param {Pick<Facts, "source" | "label">} facts
 * @param {{levels: Record<Watched, Level>, limits: Limits}} known
 */
export function in_small_steps({ source, label }, { levels: { total_ammonia: ammonia }, limits }) {
  const brings = brought(source, "total_ammonia", label) > limits.total_ammonia.mg_n_l / 4;
  return brings && ammonia.now_mg_n_l !== null && ammonia.now_mg_n_l <= limits.act_at.total_ammonia;
}

/**
 * The water above the bed; null where the tank's measures do not say.
 * @param {Facts["tank"]} tank
 */
function above_bed({ measures, water_l }) {
  const surface_cm2 = measures && surface_of(measures);
  if (surface_cm2 === undefined) return null;
  const { substrate_l = 0, substrate_porosity = 0 } = /** @type {Partial<VolumeInput>} */ (measures);
  return { surface_cm2, litres: water_l - substrate_l * substrate_porosity };
}

/**
 * The dose of the tank's own dechlorinator for a change of `litres`. `missing` names what must be recorded first;
 * nothing is guessed.
 * @param {{tank: {water_l: number}, source: Source | null, label: Label | null}} facts
 * @param {number} litres
 * @returns {LabelDose}
 */
export function dose_for({ tank, source, label }, litres) {
  if (!source) return { needed: true, missing: "source" };
  if (source.disinfectant === "none") return { needed: false };
  if (!label) return { needed: true, missing: "label" };
  const answer = run("dechlorinator_dose", dose_input(tank, source, label, litres));
  return { needed: true, amount: answered(answer, "label_dose_ml"), unit: label.unit, label, answer };
}

/**
 * The field for a change's litres, at most what this tank holds.
 * @param {{water_l: number}} tank
 * @param {string} label
 */
export const litres_spec = (tank, label) => ({
  ...input_of("dechlorinator_dose", "change_l"),
  label,
  max: tank.water_l,
});

/**
 * Why the calculation refuses these litres, in its words; null if it does not.
 * @param {{water_l: number}} tank
 * @param {number} litres
 * @returns {FieldError | null}
 */
export function litres_refused(tank, litres) {
  try {
    run("dechlorinator_dose", { change_l: litres, tank_l: tank.water_l, label_ml: 1, label_per_l: 1 });
    return null;
  } catch (error) {
    if (!(error instanceof InvalidInput)) throw error;
    return error.errors[0];
  }
}

/**
 * The input of `dechlorinator_dose`.
 * @param {{water_l: number}} tank
 * @param {Source | null} source
 * @param {Label} label
 * @param {number} litres
 * @returns {DechlorinatorDoseInput}
 */
export const dose_input = (tank, source, label, litres) => ({
  change_l: litres,
  tank_l: tank.water_l,
  basis: label.basis,
  label_ml: label.amount,
  label_per_l: label.per_l,
  ...(source && source.disinfectant !== "none" && source.disinfectant_mg_l !== undefined
    ? { disinfectant: source.disinfectant, disinfectant_mg_l: source.disinfectant_mg_l }
    : {}),
});
