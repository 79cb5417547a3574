/** The oxygen that a tank's animals find at dawn, by `oxygen_night` with what its records say. Pure. */
import { InvalidInput, run } from "../../contracts.js";
import { stock_tank } from "./stock_tank.js";
import { animals_for, as_animals, has_length, most_kinds, stock_of } from "./stock.js";
import { surface_of } from "../surface.js";
import { warmth_of } from "../warmth.js";

/** @import { Facts } from "../../types/advice.js" */
/** @import { OxygenNightAnswer, OxygenNightInput } from "../../types/calculations.js" */

/**
 * The answer for tonight; null without animals of known length, the tank's measures or its temperature.
 * @param {Facts} facts
 * @returns {OxygenNightAnswer | null}
 */
export function night_of(facts) {
  const { tank, stock, own_species, now } = facts;
  const celsius = warmth_of(facts)?.celsius;
  const animals = as_animals(stock_of(stock, now).animals, own_species).filter(has_length);
  const surface_cm2 = tank.measures && surface_of(tank.measures);
  if (celsius === undefined || animals.length === 0 || surface_cm2 === undefined) return null;
  try {
    const input = {
      water_l: tank.water_l,
      surface_cm2,
      temperature_c: celsius,
      animals: animals_for("oxygen_night", animals).slice(0, most_kinds("oxygen_night")),
      ...night_figures(tank, now),
    };
    return run("oxygen_night", /** @type {OxygenNightInput} */ (input));
  } catch (error) {
    if (error instanceof InvalidInput) return null;
    throw error;
  }
}

/**
 * What the record and the plan say of the night; the rest is left to the calculation.
 * @param {Facts["tank"]} tank
 * @param {number} now
 */
function night_figures(tank, now) {
  const known = { planting: tank.planting, filter: tank.filter, ...stock_tank(tank, now) };
  const { planting, filter, cover, substrate } = /** @type {Partial<OxygenNightInput>} */ (known);
  return Object.fromEntries(Object.entries({ planting, filter, cover, substrate }).filter(([, value]) => value));
}
