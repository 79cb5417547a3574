/** The surface of a tank's water, by its measures. Pure. */
import { InvalidInput, run } from "../contracts.js";

/** @import { VolumeInput } from "../types/calculations.js" */

/**
 * @param {unknown} measures the input of `volume`, as far as it is known
 * @returns {number | undefined} cm²; undefined if they are incomplete
 */
export function surface_of(measures) {
  try {
    return run("volume", /** @type {VolumeInput} what is not is refused */ (measures)).surface_cm2;
  } catch (error) {
    if (error instanceof InvalidInput) return undefined;
    throw error;
  }
}
