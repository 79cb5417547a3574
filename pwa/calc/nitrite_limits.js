/** How much nitrite a water may hold by its chloride, as British Columbia's guideline prints it. */
import { table } from "./tables.js";

/** @import { NitriteStep } from "../types/tables.js" */

/**
 * The step of the guideline's table that this chloride lies in. Units and source: the Python twin.
 * @param {number} chloride_mg_l
 * @returns {NitriteStep}
 */
export function nitrite_limits(chloride_mg_l) {
  const { steps, above } = table("limits").nitrite_by_chloride;
  return steps.find((step) => chloride_mg_l <= step.chloride_to_mg_l) ?? above;
}
