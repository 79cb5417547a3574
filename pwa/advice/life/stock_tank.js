/** What the calculations about animals need to know of a tank, from its record and its plan. Pure. */
import { DAY } from "../../figures/durations.js";
import { table } from "../../calc/tables.js";
import { InvalidInput } from "../../contracts.js";
import { done, floor_of, measures_of, said_at, set_up_here } from "../setup/setting_up.js";

/** @import { StockingLimitInput } from "../../types/calculations.js" */
/** @import { Plan } from "../setup/setting_up.js" */

/** @typedef {NonNullable<StockingLimitInput["maturity"]>} Maturity */

const BOTTOM = /** @type {const} */ ({ bare: "bare", plain: "sand", capped: "soil" });

/**
 * By the names that the contracts share; `inside_length_cm` is the length that a fish has to swim. What is not known is
 * left out.
 * @param {Plan} tank
 * @param {number} now ms
 */
export function stock_tank(tank, now) {
  return {
    ...floor_figures(tank),
    ...(tank.started_at || set_up_here(tank) ? age_figures(tank, now) : {}),
    ...(set_up_here(tank) ? plan_figures(tank) : {}),
  };
}

/**
 * The floor inside; nothing where the measures are incomplete.
 * @param {Plan} tank
 */
function floor_figures(tank) {
  if (!tank.measures) return {};
  try {
    const { length_cm, area_cm2 } = floor_of(measures_of(tank));
    return { inside_length_cm: length_cm, surface_cm2: area_cm2 };
  } catch (error) {
    if (error instanceof InvalidInput) return {};
    throw error;
  }
}

/**
 * @param {Pick<Plan, "started_at">} tank
 * @param {number} now ms
 */
function age_figures(tank, now) {
  const days = tank.started_at ? Math.max(0, now - Date.parse(tank.started_at)) / DAY : 0;
  return { maturity: maturity_at(days), plants_age_days: days };
}

/** How old a tank is, in the classes of the stocking limit. @param {number} days @returns {Maturity} */
export function maturity_at(days) {
  const { classes } = table("tank_classes").maturity;
  const names = /** @type {Maturity[]} */ (Object.keys(classes));
  return names.findLast((name) => days >= classes[name].from_days) ?? names[0];
}

/** What the plan says where the record does not. @param {Plan} tank */
function plan_figures(tank) {
  const { temperature_c, cover, filter } = said_at(tank, "warmth");
  return {
    cover,
    substrate: BOTTOM[done(tank, "substrate") ? said_at(tank, "substrate").bed : "plain"],
    temperature_c: tank.temperature_c ?? temperature_c,
    filter: tank.filter ?? filter,
    planting: tank.planting ?? said_at(tank, "plants").planting,
  };
}

/** The same tank once it has matured. @template {object} F @param {F} figures */
export const matured = (figures) => ({ ...figures, maturity: "mature", plants_age_days: undefined });
