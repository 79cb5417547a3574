/** New water as warm as the tank's: how warm that is by the records, and how much cold and hot water make it. */
import { answered, run } from "../contracts.js";

/**
 * A thermometer read longer ago than this says little about now; then the tank's usual figure is closer (assumption).
 */
const FRESH_MS = 2 * 86_400_000;

/**
 * How warm the tank is: by a reading of the last two days, else as the tank usually is.
 * @param {any} facts see facts.js
 * @returns {{celsius: number, at: string | null} | null} `at` null: the usual figure; null: nobody knows
 */
export function warmth_of({ readings, tank, now }) {
  const read = readings.findLast((/** @type {any} */ one) => one.parameter === "temperature");
  if (read && now - Date.parse(read.at) < FRESH_MS) return { celsius: read.value, at: read.at };
  if (tank.temperature_c !== undefined) return { celsius: tank.temperature_c, at: null };
  return read ? { celsius: read.value, at: read.at } : null;
}

/**
 * Cold and hot water that make so many litres of that warmth, by the contract `water_blend`.
 * @param {number} litres @param {number} celsius @param {{cold: number, hot: number}} taps in °C
 * @returns {{input: any, answer: any, cold_l: number, hot_l: number, reached_c: number, met: boolean}} `met`: within
 * half a degree
 * @throws InvalidInput as the contract says
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
