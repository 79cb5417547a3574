/** What helps besides a change, or where the new water is itself the cause: ways that are open to this tank. Pure. */
import { nitrogen_units } from "../calc/nitrogen_units.js";
import { constants } from "../calc/tables.js";
import { salt_g } from "./chloride.js";
import { brought } from "./level.js";

/** @import { Advice, Facts, Instead } from "../types/advice.js" */

/** Chloride that freshwater life bears for weeks, mg/L (CCME 2011): plants, snails and fish of the trade. */
const BORNE_MG_L = 120;
/** Twice the chloride from which nitrite's highest limit holds, so that one change leaves enough of it (assumption). */
const SHIELD_MG_L = 20;
/** From this share of its limit on, nitrite is worth a shield. */
const NEAR = 0.8;

/**
 * @param {Facts} facts
 * @param {Advice} water what its ammonia, nitrite and nitrate want
 * @returns {Instead[]} empty where a change or nothing is all that is needed
 */
export function ways(facts, water) {
  const { act, unhurried, reasons, levels, limits, besides = [] } = water;
  const nitrite = levels.nitrite.now_mg_n_l ?? 0;
  const salt = nitrite > NEAR * limits.nitrite.mg_n_l ? against_nitrite(facts, nitrite) : [];
  const worse = reasons.find(({ code }) => code === "source_worse" || code === "brings_over");
  const of_ammonia =
    (worse && "parameter" in worse && worse.parameter === "total_ammonia") ||
    (besides.includes("source_is_the_cause") && brought(facts.source, "total_ammonia", facts.label) > 0);
  const bind = of_ammonia && !facts.label?.binds_ammonia ? [{ code: /** @type {const} */ ("bind") }] : [];
  if (act !== "hold" || unhurried) return act === "change" || act === "retest" ? [...bind, ...salt] : [];
  return [...bind, ...salt, { code: "feed_less" }, { code: "other_water" }];
}

/**
 * Plain salt: chloride keeps nitrite out of the gills.
 * @param {Facts} facts
 * @param {number} nitrite_mg_n_l
 * @returns {Instead[]}
 */
function against_nitrite(facts, nitrite_mg_n_l) {
  const { as_ion_mg_l } = nitrogen_units({ value: nitrite_mg_n_l, species: "no2", basis: "n" });
  const wanted = Math.max(SHIELD_MG_L, constants("chloride_shield").chloride_per_nitrite * as_ion_mg_l);
  const grams = salt_g(Math.min(wanted, BORNE_MG_L), facts);
  // Less than a pinch changes nothing.
  return grams > 0.05 ? [{ code: "salt", salt_g: grams }] : [];
}
