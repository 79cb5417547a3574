/** Litres that a bucket can do, and the dechlorinator for exactly those litres. */
import { convert } from "../figures/units.js";
import { InvalidInput, input_of, run } from "../contracts.js";

/**
 * Steps in which water is said, for a small, a middling and a large tank (assumption: what a bucket with marks can do).
 * @type {Record<string, [number, number, number]>}
 */
const STEPS = { L: [0.5, 1, 5], "US gal": [0.1, 0.5, 1], "UK gal": [0.1, 0.5, 1] };

/**
 * The step in which water is said, in litres, a whole step of the unit that the phone shows.
 * @param {number} water_l
 * @param {string} [unit]
 */
export const bucket_step = (water_l, unit = "L") =>
  convert(STEPS[unit][water_l < 30 ? 0 : water_l < 300 ? 1 : 2], unit, "L");

/**
 * Litres rounded up to what a bucket can do, never more than the tank holds.
 * @param {number} litres
 * @param {number} water_l
 * @param {string} [unit]
 */
export function bucket_litres(litres, water_l, unit) {
  const step = bucket_step(water_l, unit);
  return Math.min(Math.ceil(litres / step - 1e-9) * step, water_l);
}

/**
 * The dose of the tank's own dechlorinator label for a change of `litres`.
 * `missing` names what must be set down first; none of it is guessed.
 * @param {any} facts see facts.js @param {number} litres
 * @returns {{needed: boolean, missing?: "source" | "label", amount?: number, unit?: string, label?: any, answer?: any}}
 */
export function dose_for({ tank, source, label }, litres) {
  if (!source) return { needed: true, missing: "source" };
  if (source.disinfectant === "none") return { needed: false };
  if (!label) return { needed: true, missing: "label" };
  const answer = run("dechlorinator_dose", dose_input(tank, source, label, litres));
  return { needed: true, amount: answer.label_dose_ml, unit: label.unit, label, answer };
}

/**
 * The field of a change's litres: no more than this tank holds.
 * @param {any} tank
 * @param {string} label
 * @returns {any}
 */
export const litres_spec = (tank, label) => ({
  ...input_of("dechlorinator_dose", "change_l"),
  label,
  max: tank.water_l,
});

/**
 * Litres that the calculation refuses for this tank, in its words.
 * @param {any} tank
 * @param {number} litres
 * @returns {{field: string, message: string, allowed: string} | null}
 */
export function litres_refused(tank, litres) {
  try {
    run("dechlorinator_dose", { change_l: litres, tank_l: tank.water_l, label_ml: 1, label_per_l: 1 });
    return null;
  } catch (no) {
    if (!(no instanceof InvalidInput)) throw no;
    return no.errors[0];
  }
}

/**
 * The question to `dechlorinator_dose`.
 * @param {any} tank
 * @param {any} source
 * @param {any} label
 * @param {number} litres
 */
export const dose_input = (tank, source, label, litres) => ({
  change_l: litres,
  tank_l: tank.water_l,
  basis: label.basis,
  label_ml: label.amount,
  label_per_l: label.per_l,
  ...(source.disinfectant_mg_l === undefined
    ? {}
    : { disinfectant: source.disinfectant, disinfectant_mg_l: source.disinfectant_mg_l }),
});
