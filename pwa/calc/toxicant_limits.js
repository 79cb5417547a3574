/** Limits of copper, chloride and chlorine for fish and for shrimp and snails, by hardness. */
import { constants, table } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

// The hardness that the copper criteria were drawn for (from memory), mg/L as CaCO3.
const DRAWN_FOR_MG_L = { least: 25, most: 400 };

/**
 * Short and long limits for freshwater life, and which of them a measured figure passes. Equations, units and sources:
 * the Python twin.
 * @param {Input<"toxicant_limits">} input
 * @returns {Outputs<"toxicant_limits">}
 */
export function toxicant_limits({ gh_dgh, hardness_mg_caco3_l = 0, copper_ug_l, chloride_mg_l, chlorine_ug_l }) {
  const hardness_mg_l =
    gh_dgh === undefined ? hardness_mg_caco3_l : gh_dgh * constants("degree_of_hardness").caco3_mg_l;
  const { limits } = table("limits");
  const answer = {
    copper_acute_ug_l: dissolved_ug_l("acute", hardness_mg_l),
    copper_chronic_ug_l: dissolved_ug_l("chronic", hardness_mg_l),
    copper_ccme_ug_l: ccme_ug_l(hardness_mg_l),
    chloride_acute_mg_l: limits.chloride_acute_mg_l.value,
    chloride_chronic_mg_l: limits.chloride_mg_l.value,
    chlorine_acute_ug_l: limits.chlorine_acute_mg_l.value * 1000,
    chlorine_chronic_ug_l: limits.chlorine_mg_l.value * 1000,
    chlorine_ccme_ug_l: limits.chlorine_ccme_mg_l.value * 1000,
    hardness_mg_l,
  };
  const drawn_for = DRAWN_FOR_MG_L.least <= hardness_mg_l && hardness_mg_l <= DRAWN_FOR_MG_L.most;
  return {
    ...answer,
    notes: [
      ...(drawn_for ? [] : ["hardness_extended"]),
      ...passed("copper", copper_ug_l, answer.copper_acute_ug_l, answer.copper_ccme_ug_l),
      ...passed("chloride", chloride_mg_l, answer.chloride_acute_mg_l, answer.chloride_chronic_mg_l),
      ...passed("chlorine", chlorine_ug_l, answer.chlorine_acute_ug_l, answer.chlorine_chronic_ug_l),
    ],
  };
}

/** The United States criterion of dissolved copper. @param {"acute" | "chronic"} kind @param {number} hardness_mg_l */
function dissolved_ug_l(kind, hardness_mg_l) {
  const law = constants("epa_1995_copper");
  return law.dissolved * Math.exp(law[`${kind}_slope`] * Math.log(hardness_mg_l) + law[`${kind}_intercept`]);
}

/** Canada's guideline for total copper, level below and above its hardness. @param {number} hardness_mg_l */
function ccme_ug_l(hardness_mg_l) {
  const law = constants("ccme_copper");
  const held = Math.min(Math.max(hardness_mg_l, law.least_hardness_mg_l), law.most_hardness_mg_l);
  return law.factor * Math.exp(law.slope * Math.log(held) + law.intercept);
}

/**
 * The note of a measured figure: over the short limit, over the long one, or none.
 * @param {string} what @param {number | undefined} measured @param {number} acute @param {number} chronic
 */
function passed(what, measured, acute, chronic) {
  if (measured === undefined || measured <= chronic) return [];
  return [measured > acute ? `${what}_acute` : `${what}_chronic`];
}
