/** Which kit reads a parameter: the keeper's own, else a plainly labelled set of common steps. */
import { HARDNESS } from "../advice/hardness.js";
import { all } from "./state/live.js";

/** The order of a test, and the unit each is read in. */
export const TESTED = ["total_ammonia", "nitrite", "nitrate", "ph", "temperature"];
/** What is tested now and then, behind those of every day. */
export const SELDOM = Object.keys(HARDNESS);
/** @type {Record<string, string>} */
export const UNITS = {
  total_ammonia: "mg/L",
  nitrite: "mg/L",
  nitrate: "mg/L",
  ph: "",
  temperature: "°C",
  ...HARDNESS,
};

/**
 * Steps of 1, 2.5 and 5, read as the ion, for a keeper who has not set down a kit yet (assumption).
 * @type {Record<string, any>}
 */
const COMMON = {
  total_ammonia: { entry: "steps", basis: "ion", steps: [0, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10] },
  nitrite: { entry: "steps", basis: "ion", steps: [0, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10] },
  nitrate: { entry: "steps", basis: "ion", steps: [0, 1, 2.5, 5, 10, 25, 50, 100, 250] },
  ph: { entry: "keypad" },
  temperature: { entry: "keypad" },
};

/** How a parameter is read without a kit of one's own. @param {string} parameter */
export const common_kit = (parameter) => ({ ...(COMMON[parameter] ?? { entry: "keypad" }), parameter, common: true });

/**
 * The kit used last for it, else the newest set down, else the common steps (without an id).
 * @param {string} parameter
 */
export function kit_for(parameter) {
  const own = all("test_kit").filter((kit) => kit.parameter === parameter && !kit.retired);
  if (own.length === 0) return common_kit(parameter);
  const used = all("reading").filter((reading) => reading.parameter === parameter && reading.kit);
  const last = used.reduce((late, reading) => (late && late.at >= reading.at ? late : reading), used.at(0));
  return own.find((kit) => kit.id === last?.kit) ?? own.toSorted((a, b) => (a.id < b.id ? 1 : -1))[0];
}

/** The fields of a reading made with a kit. @param {any} kit @param {number} value */
export function reading_of(kit, value) {
  const unit = kit.unit ?? UNITS[kit.parameter];
  return {
    parameter: kit.parameter,
    value,
    ...(kit.basis ? { basis: kit.basis } : {}),
    ...(unit ? { unit } : {}),
    ...(kit.entry === "steps" ? { steps: kit.steps ?? [] } : {}),
    ...(kit.id ? { kit: kit.id } : {}),
  };
}
