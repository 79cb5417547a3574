/** Which limits hold for one tank now: ammonia by its pH and temperature, nitrite and nitrate by the working limits. */
import { input_of, run } from "../contracts.js";
import { table } from "../calc/tables.js";
import { DAY } from "./level.js";

/** pH and temperature of a tank hardly move in a week (common practice: measured weekly). */
const RECENT = 7 * DAY;
/** Where nothing is known (assumption, on the careful side: warmer and higher pH make more of the ammonia toxic). */
export const CAREFUL = { ph: 8, temperature_c: 26 };

/**
 * @typedef {{value: number, from: "reading" | "usual" | "assumed", at?: string}} Figure
 * @typedef {{ph: Figure, temperature_c: Figure, total_ammonia: {mg_n_l: number, by: "chronic" | "eifac"},
 * act_at: Record<string, number>, nitrite: {mg_n_l: number, by: "working"}, nitrate: {mg_n_l: number, by: "working"}}}
 * Limits
 */

/** @param {any} facts see facts.js @returns {Limits} */
export function limits_at(facts) {
  const ph = figure(facts, "ph", facts.tank.ph, CAREFUL.ph);
  const temperature_c = figure(facts, "temperature", facts.tank.temperature_c, CAREFUL.temperature_c);
  const found = run("ammonia_limits", { ph: ph.value, temperature_c: temperature_c.value });
  const eifac = found.eifac_tan_mg_n_l <= found.chronic_tan_mg_n_l;
  return {
    ph,
    temperature_c,
    total_ammonia: eifac
      ? { mg_n_l: found.eifac_tan_mg_n_l, by: "eifac" }
      : { mg_n_l: found.chronic_tan_mg_n_l, by: "chronic" },
    // Twice a limit made for weeks is no matter for this evening (assumption); what harms within the hour lies higher
    // still.
    act_at: {
      total_ammonia: 2 * Math.min(found.eifac_tan_mg_n_l, found.chronic_tan_mg_n_l),
      nitrite: working("nitrite_act_mg_n_l"),
      nitrate: Infinity,
    },
    nitrite: { mg_n_l: working("nitrite_mg_n_l"), by: "working" },
    nitrate: { mg_n_l: working("nitrate_mg_n_l"), by: "working" },
  };
}

/** @param {string} name */
const working = (name) => table("limits").limits[name].value;

/**
 * @param {any} facts
 * @param {string} parameter
 * @param {number | undefined} usual
 * @param {number} careful
 * @returns {Figure}
 */
function figure({ readings, now }, parameter, usual, careful) {
  const field = parameter === "ph" ? "ph" : "temperature_c";
  const { min, max } = input_of("ammonia_limits", field);
  const usable = (/** @type {any} */ r) =>
    r.parameter === parameter && now - Date.parse(r.at) <= RECENT && r.value >= min && r.value <= max;
  const last = readings.findLast(usable);
  if (last) return { value: last.value, from: "reading", at: last.at };
  return usual !== undefined && usual >= min && usual <= max
    ? { value: usual, from: "usual" }
    : { value: careful, from: "assumed" };
}
