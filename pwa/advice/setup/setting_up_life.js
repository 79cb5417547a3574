/**
 * The life of a tank that is set up: how many plants, which first, what the planned animals need, when they may come.
 * Pure.
 */
import { constants, table } from "../../calc/tables.js";
import { input_of, run } from "../../contracts.js";
import { floor_of } from "./setting_up.js";
import { how_many } from "../life/how_many.js";
import { as_animals, has_length, mass_of } from "../life/stock.js";
import { matured } from "../life/stock_tank.js";

/** @import { StarterDoseInput, VolumeInput } from "../../types/calculations.js" */
/** @import { Planned, Planting, Said } from "../../types/setup.js" */
/** @import { View } from "../../types/views.js" */
/** @import { Figures } from "../life/how_many.js" */
/** @import { Counted } from "../life/stock.js" */
/** @import { Plan } from "./setting_up.js" */

/**
 * @typedef {import("../../types/tables.js").PlantRow} PlantRow
 * @typedef {import("../../types/tables.js").SpeciesRow} SpeciesRow
 * @typedef {readonly View<"own_species">[]} OwnSpecies
 */

const BRIGHTNESS = ["low", "medium", "high"];
const SPEED = ["fast", "medium", "slow"];
/** They have no roots in the bed and feed on the water alone. */
const FREE = ["free", "floating"];
/** @returns {[string, SpeciesRow][]} */
const species_rows = () => Object.entries(table("species").rows);
/** @returns {[string, PlantRow][]} */
const plant_rows = () => Object.entries(table("plants").rows);

/**
 * Portions for a floor (common practice: constants, planting_practice).
 * @param {VolumeInput} measures
 * @param {Planting} planting
 */
export function portions_for(measures, planting) {
  if (planting === "none") return 0;
  const practice = constants("planting_practice");
  return Math.ceil((floor_of(measures).area_cm2 * practice[`cover_${planting}`]) / practice.portion_cm2 - 1e-9);
}

/**
 * Plants that suit the planned warmth and light, those that take up most first: fast growers carry a new tank, above
 * all those that float or drift.
 * @param {Pick<Said["warmth"], "temperature_c" | "light">} warmth
 */
export function plants_for({ temperature_c, light }) {
  return plant_rows()
    .map(([key, row]) => ({ key, row }))
    .filter(
      ({ row }) =>
        row.temperature_c[0] <= temperature_c &&
        temperature_c <= row.temperature_c[1] &&
        BRIGHTNESS.indexOf(row.light) <= BRIGHTNESS.indexOf(light),
    )
    .sort((a, b) => rank(a.row) - rank(b.row) || a.row.name.localeCompare(b.row.name));
}

/** @param {PlantRow} row */
const rank = (row) =>
  100 * SPEED.indexOf(row.growth) + 10 * (FREE.includes(row.form) ? 0 : 1) + BRIGHTNESS.indexOf(row.light);

/** Planned kinds whose length nobody knows. @param {readonly Counted[]} stock @param {OwnSpecies} own */
export const unweighed = (stock, own) =>
  stock.filter((one) => !has_length(as_animals([one], own)[0])).map(({ species }) => species);

/**
 * Peaceful fish that this tank would suit once matured: its water and the new water lie in their range, where known,
 * and it bears a whole group beside those already planned. First come those whose range has the tank's warmth nearest
 * its middle.
 * @param {Figures} figures of the tank, as the Bench has them
 * @param {readonly Counted[]} stock planned so far
 * @param {OwnSpecies} [own]
 * @returns {{key: string, row: SpeciesRow}[]}
 */
export function suggested(figures, stock, own = []) {
  const inside = (/** @type {SpeciesRow} */ row) =>
    RANGED.every(([column, names]) => {
      const [low, high] = row[column];
      return names.every((name) => {
        const value = figures[name];
        return typeof value !== "number" || (low <= value && value <= high);
      });
    });
  const fits = (/** @type {string} */ species, /** @type {SpeciesRow} */ { group_min }) => {
    const wanted = [{ species, count: group_min }];
    const told = how_many({ figures: matured(figures), present: stock, wanted, own });
    // The plan may hold more than the calculation takes. The step must still open, or nobody could correct it.
    if (!told || told.missing) return false;
    return told.kinds.some((kind) => kind.species === species && kind.come === group_min) && told.whole?.fits;
  };
  const found = species_rows().filter(
    ([key, row]) =>
      row.kind === "fish" &&
      row.temperament === "peaceful" &&
      inside(row) &&
      !stock.some(({ species }) => species === key) &&
      fits(key, row),
  );
  const off_middle = (/** @type {SpeciesRow} */ { temperature_c: [low, high] }) =>
    Math.abs(2 * Number(figures.temperature_c ?? 0) - low - high) / (high - low);
  return found
    .map(([key, row]) => ({ key, row }))
    .sort((a, b) => off_middle(a.row) - off_middle(b.row) || a.row.length_cm - b.row.length_cm);
}

/**
 * Each range of a species, and the figures that must lie in it.
 * @type {["temperature_c" | "ph" | "gh_dgh", string[]][]}
 */
const RANGED = [
  ["temperature_c", ["temperature_c"]],
  ["ph", ["ph", "source_ph"]],
  ["gh_dgh", ["gh_dgh", "source_gh_dgh"]],
];

/**
 * Protein in the food of the planned animals: the stocking limit's assumption, so that all figures agree.
 */
const protein = () => /** @type {number} */ (input_of("stocking_limit", "protein_fraction").default);

/** Less than this shows neither on scales nor in a test: then the food of several days goes in at once (assumption). */
const LEAST_STARTER_MG_N_L = 0.5;

/**
 * Ammonia in place of the planned animals' food: one day's, or that of enough days to weigh and test it.
 * @param {number} water_l
 * @param {number} feed_g_day
 * @param {number} [ammonia_percent]
 * @returns {{input: StarterDoseInput, days: number}}
 */
export function starter(water_l, feed_g_day, ammonia_percent) {
  const strength = ammonia_percent ? { ammonia_percent } : {};
  const input = { volume_l: water_l, feed_g_day, protein_fraction: protein(), ...strength };
  const { tan_mg_n_l } = run("starter_dose", { volume_l: water_l, feed_g_day, protein_fraction: protein() });
  if (tan_mg_n_l >= LEAST_STARTER_MG_N_L || tan_mg_n_l === 0) return { input, days: 1 };
  return {
    input: { volume_l: water_l, tan_mg_n_l: LEAST_STARTER_MG_N_L, ...strength },
    days: Math.round(LEAST_STARTER_MG_N_L / tan_mg_n_l),
  };
}

/** Food a day of the planned animals at the length they come with. @param {Plan} tank @param {OwnSpecies} own */
export const planned_feed = (tank, own) => mass_of(tank.planned_stock ?? [], own)?.answer.feed_g_day ?? 0;

/**
 * The planned animals that are not in the tank yet.
 * @param {readonly Planned[]} planned
 * @param {readonly {species: string, count: number}[]} inside
 */
export const still_to_come = (planned, inside) =>
  planned
    .map((one) => ({ ...one, count: one.count - (inside.find(({ species }) => species === one.species)?.count ?? 0) }))
    .filter(({ count }) => count > 0);
