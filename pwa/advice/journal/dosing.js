/** Doses by the keeper's own labels, and of ammonia for a tank without animals. Pure. */
import { answered, run } from "../../contracts.js";
import { bucket_litres } from "../litres.js";
import { planned_feed, starter as planned_starter } from "../setup/setting_up_life.js";

/** @import { Dose, Label } from "../../types/advice.js" */
/** @import { Tank, View } from "../../types/views.js" */

/** The share of new water where no change is recorded: a quarter (common practice). */
const USUAL_CHANGE = 0.25;
/** The ammonia for a start without fish where no food is planned yet (common practice). */
const USUAL_TAN_MG_N_L = 1;
/**
 * Which stock changes bring animals in (1) and which take them out (-1).
 * @type {Record<View<"stock_change">["change"], number>}
 */
const ANIMALS = { arrival: 1, birth: 1, move_in: 1, death: -1, removal: -1, move_out: -1 };

/**
 * The room's labels, those used last in this tank first, then by name.
 * @param {Label[]} labels
 * @param {readonly Dose[]} doses of the tank as facts.js gathers them, oldest first
 */
export function labels_by_use(labels, doses) {
  const used = (/** @type {Label} */ label) => doses.findLastIndex((dose) => dose.label?.id === label.id);
  return [...labels].sort((a, b) => used(b) - used(a) || a.name.localeCompare(b.name));
}

/**
 * The water a label's dose is for: the whole tank, or as much new water as last time.
 * @param {Tank} tank
 * @param {Label} label
 * @param {readonly View<"water_change">[]} changes oldest first
 */
export const litres_for = (tank, label, changes) =>
  label.basis === "whole_tank"
    ? tank.water_l
    : (changes.at(-1)?.litres ?? bucket_litres(USUAL_CHANGE * tank.water_l, tank.water_l));

/**
 * A label's dose for so many litres; drops are whole, at least one.
 * @param {Label} label
 * @param {number} litres
 * @returns {{amount: number, unit: Label["unit"]}}
 * @throws {import("../../contracts.js").InvalidInput} litres out of range
 */
export function label_dose(label, litres) {
  const answer = run("dechlorinator_dose", {
    change_l: litres,
    basis: "new_water",
    label_ml: label.amount,
    label_per_l: label.per_l,
  });
  const label_dose_ml = answered(answer, "label_dose_ml");
  return { amount: label.unit === "drops" ? Math.max(1, Math.round(label_dose_ml)) : label_dose_ml, unit: label.unit };
}

/**
 * Ammonia for the bacteria, by the nitrogen that is wanted.
 * @param {Tank} tank
 * @param {number} tan_mg_n_l
 * @param {number} [ammonia_percent] of household ammonia; left out: ammonium chloride
 * @throws {import("../../contracts.js").InvalidInput}
 */
export function starter(tank, tan_mg_n_l, ammonia_percent) {
  const input = { volume_l: tank.water_l, tan_mg_n_l, ...(ammonia_percent === undefined ? {} : { ammonia_percent }) };
  const answer = run("starter_dose", input);
  const salt = ammonia_percent === undefined;
  return {
    input,
    answer,
    amount: salt ? answer.ammonium_chloride_g : answered(answer, "household_ammonia_ml"),
    unit: /** @type {"g" | "ml"} */ (salt ? "g" : "ml"),
    tan_mg_n_l: answer.tan_mg_n_l,
  };
}

/**
 * The nitrogen of one day's food: this tank's own, else that of its planned animals, else what is usual.
 * @param {Tank} tank
 * @param {View<"own_species">[]} [own]
 */
export function wanted_tan(tank, own = []) {
  const { water_l: volume_l, feed_g_day = 0, protein_fraction = 0 } = tank;
  const of_plan = planned_feed(tank, own);
  if (feed_g_day <= 0 && of_plan > 0) return run("starter_dose", planned_starter(volume_l, of_plan).input).tan_mg_n_l;
  if (feed_g_day <= 0 || protein_fraction <= 0) return USUAL_TAN_MG_N_L;
  return run("starter_dose", { volume_l, feed_g_day, protein_fraction }).tan_mg_n_l;
}

/** Whether the records show animals in a tank. @param {readonly View<"stock_change">[]} stock_changes of the tank */
export const animals_known = (stock_changes) =>
  stock_changes.reduce((sum, { change, count }) => sum + (ANIMALS[change] ?? 0) * (count ?? 0), 0) > 0;
