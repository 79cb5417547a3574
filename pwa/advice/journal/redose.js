/** What goes in again after a water change: salts and medicines that were dosed for the whole tank. Pure. */
import { DAY } from "../../figures/durations.js";
import { InvalidInput, run } from "../../contracts.js";

/** @import { Facts, Label } from "../../types/advice.js" */

/** A course on a label has ended after two weeks (assumption). */
const COURSE_DAYS = 14;
/** What stays in the water until it is changed; a fertiliser is used up, a dechlorinator is for new water. */
const STAYS = ["salt", "other"];

/** @typedef {{label: Label, at: string, amount: number, unit: Label["unit"]}} Again `at`: when it was dosed last */

/**
 * By `bath_dose`: the share of the dose that leaves with the water.
 * @param {Facts} facts @param {number} fraction of the water that is changed @returns {Again[]}
 */
export function redose({ tank, doses, now }, fraction) {
  /** @type {Map<string, Again>} */ const again = new Map();
  for (const { label, at } of doses) {
    if (label?.basis !== "whole_tank" || !STAYS.includes(label.use)) continue;
    if (now - Date.parse(at) > COURSE_DAYS * DAY) continue;
    const amount = share_of(label, tank.water_l, fraction);
    if (amount !== null) again.set(label.id, { label, at, amount, unit: label.unit });
  }
  return [...again.values()];
}

/** @param {Label} label @param {number} water_l @param {number} change_fraction @returns {number | null} */
function share_of({ amount, per_l, unit }, water_l, change_fraction) {
  const label = /** @type {const} */ ({
    label_amount: amount,
    label_per_l: per_l,
    label_unit: unit === "g" ? "g" : "ml",
  });
  try {
    const answer = run("bath_dose", { ...label, water_l, change_fraction, every_days: 1, days: 1 });
    const share = (unit === "g" ? answer.again_g : answer.again_ml) ?? null;
    return unit === "drops" && share !== null ? Math.round(share) : share;
  } catch (error) {
    // A fraction or a label that the calculation refuses: nothing is guessed.
    if (!(error instanceof InvalidInput)) throw error;
    return null;
  }
}
