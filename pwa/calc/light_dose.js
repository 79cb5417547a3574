/** The light that a planted tank gets in a day, and the hours that a wanted amount needs. */
import { TOLERANCE } from "./tolerance.js";
import { Refusal } from "./refusal.js";
import { constants } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

const SECONDS_PER_HOUR = 3600;
const UMOL_PER_MOL = 1_000_000;

/**
 * Daily light integral of a lamp that fades in and out linearly. Equations, units and source: the Python twin.
 * @param {Input<"light_dose">} input
 * @returns {Outputs<"light_dose">}
 */
export function light_dose({ ppfd_umol_m2_s, hours, ramp_minutes = 0, wanted_mol_m2_day }) {
  const ramp_hours = ramp_minutes / 60;
  if (2 * ramp_hours > hours) throw new Refusal("ramp_too_long");
  const full_hours = hours - ramp_hours;
  const mol_m2_hour = (ppfd_umol_m2_s * SECONDS_PER_HOUR) / UMOL_PER_MOL;
  /** @type {Outputs<"light_dose">} */
  const out = { dli_mol_m2_day: mol_m2_hour * full_hours, full_hours, band: band(ppfd_umol_m2_s) };
  const notes = notes_on(ppfd_umol_m2_s, hours);
  if (wanted_mol_m2_day !== undefined) {
    if (wanted_mol_m2_day <= mol_m2_hour * (24 - ramp_hours) + TOLERANCE && mol_m2_hour > TOLERANCE) {
      out.hours_needed = Math.min(24, wanted_mol_m2_day / mol_m2_hour + ramp_hours);
    } else notes.push("cannot_reach");
  }
  return { ...out, notes };
}

/** @param {number} ppfd_umol_m2_s */
function band(ppfd_umol_m2_s) {
  const practice = constants("light_practice");
  if (ppfd_umol_m2_s >= practice.high_from_umol_m2_s) return "high";
  return ppfd_umol_m2_s >= practice.medium_from_umol_m2_s ? "medium" : "low";
}

/** @param {number} ppfd_umol_m2_s @param {number} hours @returns {string[]} */
function notes_on(ppfd_umol_m2_s, hours) {
  const egeria = constants("light_for_submerged_plants");
  const notes = [];
  if (ppfd_umol_m2_s < egeria.compensation_low_umol_m2_s) notes.push("below_compensation");
  else if (ppfd_umol_m2_s <= egeria.compensation_high_umol_m2_s) notes.push("near_compensation");
  if (hours > constants("light_practice").long_day_hours) notes.push("long_day");
  return notes;
}
