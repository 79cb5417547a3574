/** What a tank's meal usually is, which foods the room knows, and what a meal becomes in its water. Pure. */
import { settings } from "../../calc/model_settings.js";
import { InvalidInput, run } from "../../contracts.js";
import { animals_for, mass_of, stock_of } from "../life/stock.js";
import { limits_at } from "../limits.js";
import { nice_step } from "./steps.js";

/** @import { Advice, Facts } from "../../types/advice.js" */
/** @import { Tank, View } from "../../types/views.js" */

/** The median of the last few meals is usual: one treat does not move it (assumption). */
const MEALS = 5;
/** A pinch for a few small fish, where nothing is recorded yet (assumption). */
const PINCH_G = 0.1;
/** At most this many foods have a tile. */
const FOODS = 4;

/**
 * @typedef {{
 *   feed_g: number, from: "meals" | "tank" | "animals" | "pinch", food?: string, protein_fraction?: number,
 * }} Meal
 */
/** @typedef {{food: string, protein_fraction?: number}} Food */

/**
 * The median of the last meals, else what the tank gets a day, else what its animals take, else a pinch; food and
 * protein as last time.
 * @param {Tank} tank
 * @param {readonly View<"feeding">[]} feedings its own, oldest first
 * @param {number} [ration_g] a day, of its animals
 * @returns {Meal}
 */
export function usual_meal(tank, feedings, ration_g) {
  const meals = feedings.filter(({ feed_g }) => feed_g > 0);
  const last = meals.at(-1);
  const protein = last?.protein_fraction ?? tank.protein_fraction;
  const food = {
    ...(last?.food ? { food: last.food } : {}),
    ...(protein === undefined ? {} : { protein_fraction: protein }),
  };
  const grams = meals
    .slice(-MEALS)
    .map(({ feed_g }) => feed_g)
    .sort((a, b) => a - b);
  if (grams.length) return { feed_g: grams[Math.floor(grams.length / 2)], from: "meals", ...food };
  if (tank.feed_g_day !== undefined && tank.feed_g_day > 0) return { feed_g: tank.feed_g_day, from: "tank", ...food };
  if (ration_g) return { feed_g: Math.max(0.01, Math.round(ration_g * 100) / 100), from: "animals", ...food };
  return { feed_g: PINCH_G, from: "pinch", ...food };
}

/**
 * The dry food that the animals of a tank take a day, by `feed_ration` at the tank's temperature; null where none is
 * recorded, or one of them cannot be weighed.
 * @param {Facts} facts
 */
export function ration_of(facts) {
  const mass = mass_of(stock_of(facts.stock, facts.now).animals, facts.own_species);
  if (!mass || mass.unknown.length > 0) return null;
  const input = {
    temperature_c: limits_at(facts).temperature_c.value,
    animals: animals_for("feed_ration", mass.input.animals),
  };
  try {
    return { input, answer: run("feed_ration", input) };
  } catch (error) {
    if (!(error instanceof InvalidInput)) throw error;
    return null;
  }
}

/** The step of a meal's stepper: about a tenth of it, at least a hundredth of a gram. @param {number} feed_g */
export const feed_step = (feed_g) => Math.max(nice_step(feed_g / 10), 0.01);

/**
 * The room's foods with their last recorded protein, the latest first.
 * @param {View<"feeding">[]} feedings of the room
 * @returns {Food[]}
 */
export function foods(feedings) {
  /** @type {Map<string, Food>} */ const known = new Map();
  for (const { food, protein_fraction } of [...feedings].sort((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0))) {
    if (food && !known.has(food))
      known.set(food, { food, ...(protein_fraction === undefined ? {} : { protein_fraction }) });
  }
  return [...known.values()].slice(0, FOODS);
}

/**
 * What a meal becomes, by `nitrogen_load`; where no protein is recorded, the forecast's own assumption is used.
 * @param {Tank} tank
 * @param {number} feed_g
 * @param {number | undefined} protein_fraction
 */
export function becomes(tank, feed_g, protein_fraction) {
  const input = {
    feed_g_day: feed_g,
    protein_fraction: protein_fraction ?? settings().protein_fraction,
    volume_l: tank.water_l,
  };
  return { input, answer: run("nitrogen_load", input), assumed: protein_fraction === undefined };
}

/**
 * The tanks that can be fed as usual in one go: their usual meal is known, none is recorded today, and nothing is wrong
 * that food would make worse.
 * @param {{tank: Tank, advice: Pick<Advice, "act">, feedings: readonly View<"feeding">[]}[]} stops feedings oldest
 * first
 * @param {number} now
 * @returns {{tank: Tank, meal: Meal}[]}
 */
export function to_feed(stops, now) {
  const today = new Date(now).setHours(0, 0, 0, 0);
  return stops
    .filter(
      ({ advice, feedings }) =>
        ["nothing", "test"].includes(advice.act) && !(Date.parse(feedings.at(-1)?.at ?? "") >= today),
    )
    .map(({ tank, feedings }) => ({ tank, meal: usual_meal(tank, feedings) }))
    .filter(({ meal }) => meal.from !== "pinch");
}
