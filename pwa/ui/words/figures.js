/** Figures in words, each on one line with its unit: readings as the kit wrote them and as nitrogen, doses, litres. */
import { choice_label, record_field, short_choice_label } from "../../contracts.js";
import { HARDNESS, in_degrees } from "../../advice/hardness.js";
import { SPECIES, both_ways } from "../../advice/level.js";

/** @import { Basis } from "../../advice/level.js" */
import { number, short, t } from "../../i18n/words.js";
import { shown_in } from "../state/measures.js";

/** @type {Record<string, string>} */
const ION = { nh4: "NH₄", no2: "NO₂", no3: "NO₃" };

/** @param {string} parameter */
export const parameter_name = (parameter) => choice_label(record_field("reading", "parameter"), parameter);

/** "Ammonia" for "Ammonia (total)". @param {string} parameter */
export const parameter_short_name = (parameter) => short_choice_label(record_field("reading", "parameter"), parameter);

/** "as NH₄" or "as N"; empty for a parameter without that choice. @param {string} parameter @param {string} [basis] */
export function read_as(parameter, basis) {
  const species = SPECIES[/** @type {keyof typeof SPECIES} */ (parameter)];
  if (!species) return "";
  return t("read_as", { what: basis === "n" ? "N" : ION[species] });
}

/**
 * A reading as it was read. The nitrogen three are also said the other way (ion or nitrogen), hardness also in our
 * degrees.
 * @param {{parameter: string, value: number, basis?: "ion" | "n", unit?: string}} reading
 * @returns {{value: string, unit: string, also: string | null}}
 */
export function figure(reading) {
  const { parameter, value, basis, unit = "" } = reading;
  if (parameter === "temperature" && unit === "°C") {
    const { show, label } = shown_in(unit);
    return { value: number(show(value), 1), unit: label, also: null };
  }
  if (parameter in HARDNESS) {
    const ours = HARDNESS[parameter];
    const degrees = unit === ours ? undefined : in_degrees(reading);
    return {
      value: short(value, 3),
      unit: unit || ours,
      also: unit && degrees !== undefined ? `= ${short(degrees, 1)} ${ours}` : null,
    };
  }
  const plain = {
    value: parameter === "ph" || parameter === "temperature" ? number(value, 1) : short(value, 3),
    unit: [unit, read_as(parameter, basis)].join(" ").trim(),
  };
  if (!(parameter in SPECIES) || value === 0) return { ...plain, also: null };
  const both = both_ways(parameter, value, basis);
  const other = basis === "n" ? both.as_ion_mg_l : both.as_n_mg_l;
  return { ...plain, also: `= ${nitrogen(other)} mg/L ${read_as(parameter, basis === "n" ? "ion" : "n")}` };
}

/**
 * A concentration as the kit reads it, without its unit.
 * @param {string} parameter
 * @param {number} mg_n_l
 * @param {Basis} basis
 */
export const level_figure = (parameter, mg_n_l, basis) =>
  nitrogen(basis === "n" ? mg_n_l : both_ways(parameter, mg_n_l, "n").as_ion_mg_l);

/** The same with its unit. @param {string} parameter @param {number} mg_n_l @param {Basis} basis */
export const level_said = (parameter, mg_n_l, basis) => `${level_figure(parameter, mg_n_l, basis)}\u00a0mg/L`;

/** A level in mg/L with as many decimals as its size needs. @param {number} value */
export const nitrogen = (value) => number(value, value >= 10 ? 0 : value >= 2 ? 1 : 2);

/** "mg/L as NO₂": the unit of a level as the kit reads it. @param {string} parameter @param {Basis} basis */
export const level_unit = (parameter, basis) => `mg/L ${read_as(parameter, basis)}`;

/**
 * "23.5 L", "6.2 US gal", "6.25 US gal": litres in the units of this phone. A quarter gallon is said as one.
 * @param {number} litres
 */
export function litres_said(litres) {
  const { unit, show } = shown_in("L");
  const quarters = show(litres) * 4;
  return measured(litres, "L", unit !== "L" && Math.abs(quarters - Math.round(quarters)) < 1e-6 ? 2 : 1);
}

/** "24.5 °C", "76.1 °F". @param {number} celsius */
export const temperature_said = (celsius) => measured(celsius, "°C", 1);

/**
 * A figure held in `unit`, in the units of this phone.
 * @param {number} value
 * @param {string} unit
 * @param {number} most decimals at most, in either unit
 */
export function measured(value, unit, most) {
  const { show, label } = shown_in(unit);
  return `${short(show(value), most)}\u00a0${label}`;
}

/** "0.3 g". @param {number} grams */
export const grams_said = (grams) => `${short(grams, 3)}\u00a0g`;

/** "3 ml". @param {{amount?: number, unit?: string}} dose */
export const dose_said = (dose) => `${short(dose.amount ?? 0, 2)}\u00a0${t(`unit.${dose.unit ?? "ml"}`)}`;
