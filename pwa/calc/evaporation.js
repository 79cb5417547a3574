/** Water that evaporates from a quiet, open surface, and the heat that it takes away. */
import { constants } from "./tables.js";
import { density_kg_m3, latent_heat_kj_kg, saturation_kpa } from "./water_properties.js";

/** @import {Input, Outputs} from "../types/contract.js" */

const SECONDS_PER_DAY = 86400;
const DAYS_PER_MONTH = 30;

/**
 * Evaporation from the open part of a quiet surface; zero where the room's vapour pressure is higher. Equations, units
 * and source: the Python twin.
 * @param {Input<"evaporation">} input
 * @returns {Outputs<"evaporation">}
 */
export function evaporation({
  temperature_c,
  room_c,
  length_cm,
  width_cm,
  surface_cm2,
  humidity_percent = 50,
  air_speed_m_s = 0,
  open_fraction = 1,
  water_l,
  source_gh_dgh,
}) {
  const surface_m2 = (surface_cm2 ?? Number(length_cm) * Number(width_cm)) / 10_000;
  const open_m2 = surface_m2 * open_fraction;
  const gap_kpa = saturation_kpa(temperature_c) - (humidity_percent / 100) * saturation_kpa(room_c);
  const smith = constants("smith_1998");
  const w_m2_kpa = smith.quiet_share * (smith.still_w_m2_kpa + smith.moving_w_m2_kpa * air_speed_m_s);
  const heat_w = w_m2_kpa * Math.max(gap_kpa, 0) * open_m2;
  const kg_day = (heat_w / 1000 / latent_heat_kj_kg(temperature_c)) * SECONDS_PER_DAY;
  const litres_day = (kg_day / density_kg_m3(temperature_c)) * 1000;
  /** @type {Outputs<"evaporation">} */
  const out = {
    litres_day,
    litres_week: litres_day * 7,
    drop_mm_day: litres_day / surface_m2,
    heat_w,
    pressure_gap_kpa: gap_kpa,
    open_m2,
    notes: gap_kpa <= 0 ? ["condenses"] : [],
  };
  if (water_l !== undefined) out.gh_rise_dgh_month = ((litres_day * DAYS_PER_MONTH) / water_l) * Number(source_gh_dgh);
  return out;
}
