/** A tank's whole history as the forecasts take it: the same input that the tank's own forecast takes. */
import { belief_input, new_water_of } from "../advice/forecast/belief_input.js";

/** @import { Facts } from "../types/advice.js" */

/**
 * What the tank's record lacks stays empty in the form; the forecast's own assumptions are not copied.
 * @param {Facts} facts
 * @param {Record<string, unknown>} figures the tank's own, by field name
 */
export function history_figures(facts, figures) {
  const { records } = belief_input(facts);
  const { seeded } = records.tank;
  return {
    ...records,
    source: facts.source && new_water_of(facts.source, facts.label),
    tank: { ...figures, ...(seeded ? { seeded } : {}) },
  };
}
