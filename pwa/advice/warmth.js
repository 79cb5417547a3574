/** New water as warm as the tank: its temperature from the records, and the cold and hot water that make it. */
import { DAY } from "../figures/durations.js";
import { answered, run } from "../contracts.js";
import { of_parameter } from "./of_parameter.js";

/** @import { Facts } from "../types/advice.js" */

/** A reading older than this says less about now than the tank's usual figure (assumption). */
const FRESH_MS = 2 * DAY;

/**
 * How warm the tank is: by a reading of the last two days, else by its usual figure.
 * @param {Pick<Facts, "readings" | "tank" | "now">} facts
 * @returns {{celsius: number, at: string | null} | null} `at` null: the usual figure; null: nobody knows
 */
export function warmth_of({ readings, tank, now }) {
  const read = of_parameter(readings, "temperature").at(-1);
  if (read && now - Date.parse(read.at) < FRESH_MS) return { celsius: read.value, at: read.at };
  if (tank.temperature_c !== undefined) return { celsius: tank.temperature_c, at: null };
  return read ? { celsius: read.value, at: read.at } : null;
}

/**
 * Cold and hot water that make so many litres of that temperature, by `water_blend`; `met`: reached within half a
 * degree.
 * @param {number} litres
 * @param {number} celsius
 * @param {{cold: number, hot: number}} taps in °C
 * @throws {import("../contracts.js").InvalidInput} as the contract says
 */
export function tap_mix(litres, celsius, { cold, hot }) {
  const input = {
    sources: [{ temperature_c: cold }, { temperature_c: hot }],
    target: { temperature_c: celsius },
    litres,
  };
  const answer = run("water_blend", input);
  const [cold_l, hot_l] = answer.litres;
  const reached_c = answered(answer.reached, "temperature_c");
  return { input, answer, cold_l, hot_l, reached_c, met: Math.abs(reached_c - celsius) <= 0.5 };
}
