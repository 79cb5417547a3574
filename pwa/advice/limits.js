/** The limits of one tank now: ammonia's by pH and temperature, nitrite's by the source water's chloride. */
import { DAY } from "../figures/durations.js";
import { input_of, run } from "../contracts.js";
import { chloride_of } from "./chloride.js";
import { of_parameter } from "./of_parameter.js";

/** pH and temperature of a tank hardly move in a week (common practice: measured weekly). */
const RECENT = 7 * DAY;
/** Where nothing is known (careful assumption: warmth and a high pH make more of the ammonia toxic). */
export const CAREFUL = { ph: 8, temperature_c: 26 };

/** @import { Facts, Figure, Limits, Reason, Watched } from "../types/advice.js" */

/** @param {Pick<Facts, "now" | "tank" | "readings" | "source" | "changes" | "doses">} facts @returns {Limits} */
export function limits_at(facts) {
  const ph = figure(facts, "ph", facts.tank.ph, CAREFUL.ph, facts.source?.ph);
  const temperature_c = figure(facts, "temperature", facts.tank.temperature_c, CAREFUL.temperature_c);
  const chloride_mg_l = chloride_of(facts);
  const found = run("water_limits", {
    ph: ph.value,
    temperature_c: temperature_c.value,
    ...(chloride_mg_l === undefined ? {} : { chloride_mg_l }),
  });
  return {
    ph,
    temperature_c,
    total_ammonia: { mg_n_l: found.tan_mg_n_l, by: found.tan_by },
    act_at: {
      total_ammonia: found.tan_act_mg_n_l,
      nitrite: found.nitrite_act_mg_n_l,
      nitrate: Infinity,
    },
    nitrite: { mg_n_l: found.nitrite_mg_n_l, by: "working" },
    nitrate: { mg_n_l: found.nitrate_mg_n_l, by: "working" },
  };
}

/**
 * The pH and temperature behind ammonia's limit, where nobody read them this week.
 * @param {Limits} limits
 * @param {Watched | undefined} parameter the one that is spoken of
 * @returns {Reason[]}
 */
export function assumed_for(limits, parameter) {
  if (parameter !== "total_ammonia") return [];
  return /** @type {const} */ (["ph", "temperature_c"])
    .filter((name) => limits[name].from !== "reading")
    .map((name) => {
      const { from, value } = limits[name];
      if (from === "source") return { code: /** @type {const} */ ("source_ph"), value };
      return { code: /** @type {const} */ (`${from === "usual" ? "usual" : "assumed"}_${name}`), value };
    });
}

/**
 * @param {Pick<Facts, "now" | "readings">} facts
 * @param {"ph" | "temperature"} parameter
 * @param {number | undefined} usual
 * @param {number} careful
 * @param {number} [of_source] the new water's: a tank that nobody tested is nearest to it
 * @returns {Figure}
 */
function figure({ readings, now }, parameter, usual, careful, of_source) {
  const field = parameter === "ph" ? "ph" : "temperature_c";
  const { min, max } = input_of("water_limits", field);
  const last = of_parameter(readings, parameter).findLast(
    (one) => now - Date.parse(one.at) <= RECENT && one.value >= min && one.value <= max,
  );
  if (last) return { value: last.value, from: "reading", at: last.at };
  const fits = (/** @type {number | undefined} */ value) => value !== undefined && value >= min && value <= max;
  if (fits(usual)) return { value: /** @type {number} */ (usual), from: "usual" };
  return fits(of_source)
    ? { value: /** @type {number} */ (of_source), from: "source" }
    : { value: careful, from: "assumed" };
}
