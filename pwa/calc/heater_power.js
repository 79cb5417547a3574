/** Watts that keep a tank warm: heat lost through panes and top, and by evaporation. */
import { evaporation } from "./evaporation.js";
import { constants } from "./tables.js";
import { density_kg_m3 } from "./water_properties.js";

/** @import {Input, Outputs} from "../types/contract.js" */

const LID_M = 0.004; // a common cover glass; its own resistance hardly counts

/**
 * Steady heat loss at the wanted temperature, and a heater with some reserve, rounded up to 5 W. Equations, units and
 * source: the Python twin.
 * @param {Input<"heater_power">} input
 * @returns {Outputs<"heater_power">}
 */
export function heater_power({
  length_cm,
  width_cm,
  height_cm,
  temperature_c,
  room_c,
  glass_mm = 6,
  humidity_percent = 50,
  open_fraction = 1,
  reserve = 1.25,
  water_l,
}) {
  const heat = constants("tank_heat_loss");
  const film = 1 / heat.water_film_w_m2_k;
  const pane = glass_mm / 1000 / heat.glass_w_m_k;
  const side = 1 / (film + pane + heat.side_m2_k_w);
  const base = 1 / (film + pane + heat.board_m2_k_w + heat.down_m2_k_w);
  const bare = 1 / (film + heat.up_m2_k_w);
  const lid = 1 / (heat.under_lid_m2_k_w + LID_M / heat.glass_w_m_k + heat.up_m2_k_w);
  const sides_m2 = (2 * (length_cm + width_cm) * height_cm) / 10_000;
  const base_m2 = (length_cm * width_cm) / 10_000;
  const warmer = temperature_c - room_c;
  const glass_loss_w = (side * sides_m2 + base * base_m2) * warmer;
  const top_loss_w = (open_fraction * bare + (1 - open_fraction) * lid) * base_m2 * warmer;
  const air = { temperature_c, room_c, length_cm, width_cm, humidity_percent, open_fraction };
  const evaporation_w = evaporation(air).heat_w;
  const loss_w = glass_loss_w + top_loss_w + evaporation_w;
  const practice = constants("heaters_in_practice");
  const steps = Math.ceil((Math.max(loss_w, 0) * reserve) / practice.step_w - 1e-9);
  const heater_w = Math.max(steps, 0) * practice.step_w;
  /** @type {Outputs<"heater_power">} */
  const out = {
    heater_w,
    loss_w,
    glass_loss_w,
    top_loss_w,
    evaporation_w,
    side_w_m2_k: side,
    notes: notes_on(loss_w, warmer, heater_w),
  };
  if (water_l !== undefined && loss_w > 0) {
    const kj_k = ((water_l * density_kg_m3(temperature_c)) / 1000) * heat.heat_of_water_kj_kg_k;
    out.warming_c_hour = ((heater_w - loss_w) * 3.6) / kj_k;
    out.cooling_c_hour = (loss_w * 3.6) / kj_k;
  }
  return out;
}

/** @param {number} loss_w @param {number} warmer @param {number} heater_w */
function notes_on(loss_w, warmer, heater_w) {
  const notes = loss_w <= 0 ? ["none_needed"] : [];
  if (warmer < 0) notes.push("warm_room");
  if (heater_w >= constants("heaters_in_practice").two_from_w) notes.push("two_heaters");
  return notes;
}
