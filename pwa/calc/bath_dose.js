/** A salt bath or a medicine by its label: the dose on net litres, what to dose again after a change, how it leaves. */
import { SETTLED_SHARE } from "./dilution.js";
import { constants } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

// Tolerance for float rounding where a change falls on the last day.
const ROUNDING = 1e-9;

/**
 * Dose, renewal after each water change, and the whole of it over a course. Equations, units and source: the Python
 * twin.
 * @param {Input<"bath_dose">} input
 * @returns {Outputs<"bath_dose">}
 */
export function bath_dose(input) {
  const { water_l, days, label_amount = 0, label_per_l = 1, label_unit = "ml", wanted_g_l } = input;
  const { change_fraction, every_days = 1 } = input;
  const in_grams = wanted_g_l !== undefined || label_unit === "g";
  const dose = wanted_g_l === undefined ? (label_amount * water_l) / label_per_l : wanted_g_l * water_l;
  const strong = wanted_g_l !== undefined && wanted_g_l > constants("bath_practice").long_bath_most_g_l;
  const notes = strong ? ["strong"] : [];
  if (change_fraction === undefined)
    return in_grams ? { dose_g: dose, total_g: dose, notes } : { dose_ml: dose, total_ml: dose, notes };
  const again = dose * change_fraction;
  const changes = Math.ceil(days / every_days - ROUNDING) - 1;
  const changes_to_clear =
    change_fraction >= 1 ? 1 : Math.ceil(Math.log(SETTLED_SHARE) / Math.log(1 - change_fraction));
  const total = dose + changes * again;
  const amounts = in_grams
    ? { dose_g: dose, again_g: again, total_g: total }
    : { dose_ml: dose, again_ml: again, total_ml: total };
  return { ...amounts, changes, changes_to_clear, notes };
}
