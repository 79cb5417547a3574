/** The tank's water right after a change, by `water_after_change` with what the records say. Pure. */
import { InvalidInput, run } from "../contracts.js";
import { in_degrees } from "./hardness.js";
import { brought } from "./level.js";
import { of_parameter } from "./of_parameter.js";
import { warmth_of } from "./warmth.js";

/** @import { Advice, Facts } from "../types/advice.js" */
/** @import { WaterAfterChangeInput } from "../types/calculations.js" */
/** @import { Answer } from "../types/contract.js" */

/**
 * @param {Facts} facts
 * @param {Pick<Advice, "levels" | "limits">} advice where the tank stands now
 * @param {number} fraction of the water that is changed
 * @returns {{input: WaterAfterChangeInput, answer: Answer<"water_after_change">} | null} null where pH or carbonate
 * hardness of the tank or of the new water is not known
 */
export function after_change(facts, { levels, limits }, fraction) {
  const { tank, source, label, readings } = facts;
  const kh = of_parameter(readings, "kh").at(-1);
  const celsius = warmth_of(facts)?.celsius;
  const input = {
    ph: limits.ph.from === "reading" || limits.ph.from === "usual" ? limits.ph.value : undefined,
    kh_dkh: (kh && in_degrees(kh)) ?? tank.kh_dkh,
    temperature_c: celsius,
    tan_mg_n_l: levels.total_ammonia.now_mg_n_l ?? 0,
    source_ph: source?.ph,
    source_kh_dkh: source?.kh_dkh,
    // New water is made as warm as the tank where nobody says how warm it is.
    source_temperature_c: source?.temperature_c ?? celsius,
    source_tan_mg_n_l: brought(source, "total_ammonia", label),
    fraction,
  };
  if (Object.values(input).includes(undefined)) return null;
  try {
    const whole = /** @type {WaterAfterChangeInput} */ (input);
    return { input: whole, answer: run("water_after_change", whole) };
  } catch (error) {
    if (error instanceof InvalidInput) return null;
    throw error;
  }
}
