/** The tank that a calculation is for: its own figures, live from the fish room. */
import { of_tank } from "../../advice/of_tank.js";
import { as_planned } from "../../advice/setup/setting_up.js";
import { tank_figures } from "../../bench/tank_figures.js";
import { all, get, now } from "../state/live.js";

/** @param {string} id a tank's @returns {Record<string, any>} its figures by field name; none if it is gone */
export function figures_of(id) {
  const record = get("tank", id);
  if (!record) return {};
  const tank = as_planned(record);
  const of = (/** @type {string} */ kind) => of_tank(all(kind), id);
  return tank_figures({
    tank,
    readings: of("reading"),
    stock_changes: of("stock_change"),
    own_species: all("own_species"),
    source_waters: all("source_water"),
    source_water: get("source_water", tank.source_water),
    label: get("label", tank.dechlorinator),
    changes: of("water_change").map((change) => ({ ...change, source: get("source_water", change.source_water) })),
    doses: of("dose").map((dose) => ({ ...dose, label: get("label", dose.label) })),
    feedings: of("feeding"),
    now: now.peek(),
  });
}
