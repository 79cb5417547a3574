/** What to buy, in words. */
import { choice_label, entry_field, input_of, record_field } from "../../contracts.js";
import { number, short, t, within_sentence } from "../../i18n/words.js";
import { dose_said, litres_said, measured, parameter_short_name } from "./figures.js";
import { plant_name } from "../setup/setup_plants.js";

/** @param {import("../../advice/setup/shopping.js").Thing} thing @returns {string} */
export function thing_said({ code, key: _, ...parts }) {
  const said = Object.fromEntries(
    Object.entries(parts).map(([name, value]) => [name, SAID[name] ? SAID[name](value, parts) : value]),
  );
  return t(`buy.${code}`, said);
}

/**
 * Each part in words; `any`, because each part has its own type.
 * @type {Record<string, (value: any, parts: any) => string>}
 */
const SAID = {
  material: (value) => substrate_material(value),
  litres: (value) => whole(litres_said(value)),
  kg: (value) => whole(measured(value, "kg", 1)),
  filter: (value) => choice_label(record_field("tank", "filter"), value),
  pack: (value, { pack_unit }) => whole(measured(value, pack_unit, 1)),
  kind: (value) => t(`setup.of_${value}`),
  watts: (value) => whole(`${number(value, 0)} W`),
  light: (value) => number(value, 0),
  hours: (value) => short(value, 1),
  area_cm2: (value) => whole(measured(value, "cm²", 0)),
  species: (value) => `${plant_name(value)} (${value})`,
  amount: (value, { unit }) => whole(dose_said({ amount: value, unit })),
  parameter: (value) => within_sentence(parameter_short_name(value)),
};

/** A figure with its unit on the same line. @param {string} text */
const whole = (text) => text.replaceAll(" ", "\u00a0");

/** @param {number} kg */
export const whole_kg = (kg) => whole(measured(kg, "kg", 0));

/** @param {string} value */
const substrate_material = (value) => choice_label(entry_field(input_of("substrate", "layers"), "material"), value);
