/** The chloride in a tank's water, by its source water and the salts that were dosed. Pure. */
import { table } from "../calc/tables.js";

/** @import { Facts } from "../types/advice.js" */

/**
 * What is assumed of water whose chloride nobody knows, mg/L: most taps hold more (assumption; `water_limits` assumes
 * the same).
 */
export const ASSUMED_MG_L = 9;

/**
 * @param {Pick<Facts, "tank" | "source" | "changes" | "doses">} facts
 * @returns {number | undefined} mg/L; undefined where neither the source's chloride nor a salt is recorded
 */
export function chloride_of({ tank, source, changes, doses }) {
  const salted = (doses ?? []).map((dose) => ({ at: dose.at, added_mg_l: chloride_mg(dose) / tank.water_l }));
  const known = source?.chloride_mg_l;
  if (!salted.some(({ added_mg_l }) => added_mg_l > 0)) return known;
  const changed = changes.map(({ at, fraction }) => ({ at, fraction }));
  let mg_l = known ?? ASSUMED_MG_L;
  for (const event of [...[...salted, ...changed]].sort((a, b) => (a.at < b.at ? -1 : 1))) {
    if ("fraction" in event) mg_l += event.fraction * ((known ?? ASSUMED_MG_L) - mg_l);
    else mg_l += event.added_mg_l;
  }
  return mg_l;
}

/**
 * Chloride of one dose of a salt, mg; 0 of anything else.
 * @param {{what_code?: string, amount: number, unit: string}} dose
 */
function chloride_mg({ what_code = "", amount, unit }) {
  const { rows, ions } = table("salts");
  const salt = Object.hasOwn(rows, what_code) && unit === "g" ? rows[what_code] : null;
  return salt?.gives.cl ? (amount * 1000 * salt.gives.cl * ions.cl.g_mol) / salt.g_mol : 0;
}

/**
 * Plain salt that brings a tank to so much chloride, g.
 * @param {number} to_mg_l
 * @param {Pick<Facts, "tank" | "source" | "changes" | "doses">} facts
 */
export function salt_g(to_mg_l, facts) {
  const { rows, ions } = table("salts");
  const missing = Math.max(0, to_mg_l - (chloride_of(facts) ?? ASSUMED_MG_L));
  return (missing * rows.sodium_chloride.g_mol * facts.tank.water_l) / ions.cl.g_mol / 1000;
}
