/** Grams of a salt that raise hardness or one ion by a wanted amount, and everything else that they add. */
import { Refusal } from "./refusal.js";
import { table } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

// More degrees than this are added in steps (common practice).
const STEP_DH = 2;

/**
 * Grams for the volume, and what each litre gains. Equations, units and refusals: the Python twin.
 * @param {Input<"salt_dose">} input
 * @returns {Outputs<"salt_dose">}
 */
export function salt_dose({ volume_l, salt, raise }) {
  const [name, amount] = asked(raise);
  const row = table("salts").rows[salt];
  const effects = effects_of(salt);
  if (!effects[name]) throw new Refusal("not_in_salt");
  const mmol_l = amount / effects[name];
  const adds = /** @type {Outputs<"salt_dose">["adds"]} */ (
    /** @type {unknown} */ (Object.fromEntries(Object.entries(effects).map(([key, effect]) => [key, effect * mmol_l])))
  );
  const notes = row.slow ? ["slow"] : [];
  if (Math.max(adds.gh_dgh, adds.kh_dkh) > STEP_DH) notes.push("in_steps");
  return { grams: (mmol_l * row.g_mol * volume_l) / 1000, adds, notes };
}

/**
 * What one mmol/L of a salt adds: gh_dgh, kh_dkh, NAME_mg_l of each of its ions.
 * @param {string} salt
 * @returns {Record<string, number>}
 */
export function effects_of(salt) {
  const { ions, rows } = table("salts");
  const per_dh = table("hardness_scales").scales.dh.mmol_l;
  const gives = Object.entries(rows[salt].gives);
  const sum = (/** @type {"hardness" | "charges"} */ counted) =>
    gives.reduce((total, [ion, n]) => total + n * ions[ion][counted], 0);
  return {
    gh_dgh: sum("hardness") / per_dh,
    kh_dkh: sum("charges") / 2 / per_dh,
    ...Object.fromEntries(gives.map(([ion, n]) => [`${ion}_mg_l`, n * ions[ion].g_mol])),
  };
}

/**
 * The one thing to raise: its name among the effects, and the amount.
 * @param {Input<"salt_dose">["raise"]} wanted @returns {[string, number]}
 */
function asked(wanted) {
  if ("ion" in wanted !== "mg_l" in wanted) throw new Refusal("ion_with_amount");
  const given = ["gh_dgh", "kh_dkh", "ion"].filter((name) => name in wanted);
  if (given.length !== 1) throw new Refusal("raise_one");
  const { ion, mg_l = 0, gh_dgh, kh_dkh = 0 } = wanted;
  if (ion) return [`${ion}_mg_l`, mg_l];
  return gh_dgh !== undefined ? ["gh_dgh", gh_dgh] : ["kh_dkh", kh_dkh];
}
