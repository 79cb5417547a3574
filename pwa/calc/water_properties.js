/** Density, vapour pressure and latent heat of fresh water. Equations, units and sources: the Python twin. */
import { constants } from "./tables.js";

/** Density in kg/m³. @param {number} temperature_c */
export function density_kg_m3(temperature_c) {
  const tanaka = constants("tanaka_2001");
  const away = temperature_c - tanaka.t_max_c;
  const bend = (away * away * (temperature_c + tanaka.a_c)) / (tanaka.b_c2 * (temperature_c + tanaka.d_c));
  return tanaka.rho_max_kg_m3 * (1 - bend);
}

/** Vapour pressure of saturated air in kPa. @param {number} temperature_c */
export function saturation_kpa(temperature_c) {
  const magnus = constants("alduchov_1996");
  return magnus.p0_kpa * Math.exp((magnus.slope * temperature_c) / (temperature_c + magnus.offset_c));
}

/** Heat of evaporation in kJ/kg. @param {number} temperature_c */
export function latent_heat_kj_kg(temperature_c) {
  const harrison = constants("harrison_1963");
  return harrison.latent_0_kj_kg - harrison.slope_kj_kg_k * temperature_c;
}
