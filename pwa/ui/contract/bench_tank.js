/** The tank that a calculation is for: its own figures, live from the fish room. */
import { facts_of } from "../../advice/facts.js";
import { as_planned } from "../../advice/setup/setting_up.js";
import { tank_figures } from "../../bench/tank_figures.js";
import { all, get, live_room, now } from "../state/live.js";

/**
 * @param {string} tank_id
 * @returns {import("../../bench/tank_figures.js").Figures} none if the tank is gone
 */
export function figures_of(tank_id) {
  const record = get("tank", tank_id);
  return record ? tank_figures(facts_of(live_room, as_planned(record), now.peek()), all("source_water")) : {};
}
