/** Which kit reads a parameter: the keeper's own, or else common steps that are labelled as such. */
import { HARDNESS } from "../advice/hardness.js";
import { all } from "./state/live.js";

/** @import { View } from "../types/views.js" */
/**
 * How a parameter is read: by a kit, or without an `id` by `common` steps.
 * @typedef {Omit<Partial<View<"test_kit">>, "parameter"> & {parameter: string, entry: "steps" | "keypad", common?:
 * boolean}}
 * Kit
 */

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
 * Steps of 1, 2.5 and 5, read as the ion, for a keeper without a recorded kit (assumption).
 * @type {Record<string, Pick<Kit, "entry" | "basis" | "steps">>}
 */
const COMMON = {
  total_ammonia: { entry: "steps", basis: "ion", steps: [0, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10] },
  nitrite: { entry: "steps", basis: "ion", steps: [0, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10] },
  nitrate: { entry: "steps", basis: "ion", steps: [0, 1, 2.5, 5, 10, 25, 50, 100, 250] },
  ph: { entry: "keypad" },
  temperature: { entry: "keypad" },
};

/** How a parameter is read without a kit of the keeper's own. @param {string} parameter @returns {Kit} */
export const common_kit = (parameter) => ({ ...(COMMON[parameter] ?? { entry: "keypad" }), parameter, common: true });

/**
 * The kit last used for a parameter, or else the newest one, or else the common steps (without an id).
 * @param {string} parameter
 * @returns {Kit}
 */
export function kit_for(parameter) {
  const own = all("test_kit").filter((kit) => kit.parameter === parameter && !kit.retired);
  if (own.length === 0) return common_kit(parameter);
  const used = all("reading").filter((reading) => reading.parameter === parameter && reading.kit);
  const last = used.reduce((late, reading) => (late && late.at >= reading.at ? late : reading), used.at(0));
  return own.find((kit) => kit.id === last?.kit) ?? [...own].sort((a, b) => (a.id < b.id ? 1 : -1))[0];
}

/** The fields of a reading made with a kit. @param {Kit} kit @param {number} value */
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
