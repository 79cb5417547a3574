/** A tank's whole history as the forecasts take it, the very input that its own sentence is made from. */
import { belief_input, source_of } from "../advice/forecast/belief_input.js";

/** @typedef {import("./tank_figures.js").TankRecords} TankRecords */

/**
 * What is assumed where the tank's record says nothing is left to the form.
 * @param {TankRecords} records @returns {Record<string, any>} {now_h, readings, changes, doses, feedings, source, tank}
 */
export function history_figures(
  {
    tank,
    readings = [],
    changes = [],
    doses = [],
    feedings = [],
    source_water,
    label,
    stock_changes = [],
    own_species = [],
    now = 0,
  },
  figures = {},
) {
  const first_to_last = readings.toSorted((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
  const { records } = belief_input({
    now,
    tank,
    readings: first_to_last,
    changes,
    doses,
    feedings,
    source: source_water,
    label,
    stock: stock_changes,
    own_species,
  });
  const { seeded } = records.tank;
  return {
    ...records,
    source: source_water && source_of(source_water, label),
    tank: { ...figures, ...(seeded ? { seeded } : {}) },
  };
}
