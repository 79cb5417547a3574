/**
 * The life of a tank that is set up: how many plants, which first, what the planned animals need, when they may come.
 * Pure.
 */
import { DAY } from "../../figures/durations.js";
import { constants, table } from "../../calc/tables.js";
import { input_of, run } from "../../contracts.js";
import { asked, done, floor_of, measures_of, said_at } from "./setting_up.js";
import { animals_for, as_animals, has_length, mass_of, most_kinds } from "../life/stock.js";

/** @import { Source } from "../../types/advice.js" */
/** @import { CompatibilityInput, StarterDoseInput, StockHeadroomAnswer } from "../../types/calculations.js" */
/** @import { StockingLimitInput, VolumeInput } from "../../types/calculations.js" */
/** @import { Light, Planned, Planting, Said } from "../../types/setup.js" */
/** @import { View } from "../../types/views.js" */
/** @import { Counted, Weighing } from "../life/stock.js" */
/** @import { Plan } from "./setting_up.js" */

/**
 * @typedef {[number, number]} Range
 * @typedef {import("../../types/tables.js").PlantRow} PlantRow
 * @typedef {import("../../types/tables.js").SpeciesRow} SpeciesRow
 * @typedef {readonly View<"own_species">[]} OwnSpecies
 * @typedef {NonNullable<StockingLimitInput["maturity"]>} Maturity
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

/**
 * The planned animals at grown length, as a calculation takes them; kinds without a known length are left out.
 * @param {Weighing} name of the contract
 * @param {readonly Counted[]} stock
 * @param {OwnSpecies} own
 */
export function animals_of(name, stock, own) {
  const grown = stock.map(({ species, count, length_cm }) => {
    const known =
      Object.hasOwn(table("species").rows, species) || own.some((one) => one.name === species && one.length_cm);
    return { species, count, ...(known ? {} : { length_cm }) };
  });
  return animals_for(name, as_animals(grown, own).filter(has_length));
}

/** Planned kinds whose length nobody knows. @param {readonly Counted[]} stock @param {OwnSpecies} own */
export const unweighed = (stock, own) =>
  stock.filter((one) => !has_length(as_animals([one], own)[0])).map(({ species }) => species);

/**
 * How old a tank is, in the words of the stocking limit: two and six weeks, as tank_classes.json has it.
 * @param {Pick<Plan, "started_at">} tank
 * @param {number} now ms
 * @returns {Maturity}
 */
export function maturity_of(tank, now) {
  const days = tank.started_at ? (now - Date.parse(tank.started_at)) / DAY : 0;
  return days < 14 ? "new" : days < 42 ? "starting" : "mature";
}

const BOTTOM = /** @type {const} */ ({ bare: "bare", plain: "sand", capped: "soil" });

/**
 * The input of the stocking limit for these animals.
 * @param {Plan} tank
 * @param {readonly Counted[]} stock
 * @param {Maturity} maturity
 * @param {OwnSpecies} [own]
 * @returns {StockingLimitInput | null} null without animals
 */
export function limit_input(tank, stock, maturity, own = []) {
  const animals = animals_of("stocking_limit", stock, own);
  if (animals.length === 0) return null;
  const { length_cm, area_cm2 } = floor_of(measures_of(tank));
  const warmth = said_at(tank, "warmth");
  return {
    animals,
    water_l: tank.water_l,
    surface_cm2: area_cm2,
    length_cm,
    temperature_c: tank.temperature_c ?? warmth.temperature_c,
    maturity,
    planting: tank.planting ?? said_at(tank, "plants").planting,
    substrate: BOTTOM[done(tank, "substrate") ? said_at(tank, "substrate").bed : "plain"],
    cover: warmth.cover,
    filter: tank.filter ?? warmth.filter,
  };
}

/**
 * Peaceful fish that this tank would suit once matured: its warmth and, where known, its pH and hardness lie in their
 * range, it is long enough, and it bears a whole group beside those already planned. First come those whose range has
 * the tank's warmth nearest its middle.
 * @param {Plan} tank
 * @param {Source | null} source
 * @param {readonly Counted[]} stock planned so far
 * @param {OwnSpecies} [own]
 * @returns {{key: string, row: SpeciesRow}[]}
 */
export function suggested(tank, source, stock, own = []) {
  const water = water_of(tank, source);
  const inside = (/** @type {SpeciesRow} */ row) =>
    /** @type {const} */ (["temperature_c", "ph", "gh_dgh"]).every((name) => {
      const [low, high] = row[name];
      const value = water[name];
      return value === undefined || (low <= value && value <= high);
    });
  const rows = species_rows().filter(
    ([key, row]) =>
      row.kind === "fish" &&
      row.temperament === "peaceful" &&
      inside(row) &&
      !stock.some(({ species }) => species === key),
  );
  const before = animals_of("stocking_limit", stock, own).length;
  /** @type {{key: string, row: SpeciesRow}[]} */ const found = [];
  for (let i = 0, at = most_kinds("stocking_limit") - before; i < rows.length && at > 0; i += at) {
    const lot = rows.slice(i, i + at);
    const { answer } = asked(
      "stocking_limit",
      limit_input(tank, [...stock, ...lot.map(([species]) => ({ species, count: 0 }))], "mature", own),
    );
    // The plan may hold more than the calculation takes. The step must still open, or nobody could correct it.
    if (!answer) return [];
    lot.forEach(([key, row], j) => {
      const fits = answer.more[before + j];
      if (fits.long_enough && fits.more >= row.group_min) found.push({ key, row });
    });
  }
  const off_middle = (/** @type {SpeciesRow} */ row) =>
    Math.abs(2 * water.temperature_c - row.temperature_c[0] - row.temperature_c[1]) /
    (row.temperature_c[1] - row.temperature_c[0]);
  return found.sort((a, b) => off_middle(a.row) - off_middle(b.row) || a.row.length_cm - b.row.length_cm);
}

/**
 * The tank's water as far as it is known: its own figures, else its source's.
 * @param {Plan} tank
 * @param {Source | null} source
 */
const water_of = (tank, source) => ({
  temperature_c: tank.temperature_c ?? said_at(tank, "warmth").temperature_c,
  ph: tank.ph ?? source?.ph,
  gh_dgh: tank.gh_dgh ?? source?.gh_dgh,
});

/**
 * The input of `compatibility`: whether they suit each other and the water.
 * @param {Plan} tank
 * @param {Source | null} source
 * @param {readonly Counted[]} stock
 * @param {OwnSpecies} [own]
 * @returns {CompatibilityInput | null} null without animals
 */
export function together_input(tank, source, stock, own = []) {
  const animals = animals_of("compatibility", stock, own);
  if (animals.length === 0) return null;
  const water = Object.fromEntries(Object.entries(water_of(tank, source)).filter(([, value]) => value !== undefined));
  return { animals, ...water, planting: tank.planting ?? said_at(tank, "plants").planting };
}

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
 * When the tank can bear so many grams of animals: judged by the lower end of each band of what it processes.
 * @param {number} planned_g
 * @param {StockHeadroomAnswer} headroom
 * @returns {"now" | "perhaps" | "in_7" | "in_14" | "later"}
 */
export function bears(planned_g, headroom) {
  if (headroom.fish_g_now.p10 >= planned_g) return "now";
  if (headroom.fish_g_in_7_days.p10 >= planned_g) return "in_7";
  if (headroom.fish_g_in_14_days.p10 >= planned_g) return "in_14";
  return headroom.fish_g_now.p50 >= planned_g ? "perhaps" : "later";
}

/**
 * The planned animals that are not in the tank yet.
 * @param {readonly Planned[]} planned
 * @param {readonly {species: string, count: number}[]} inside
 */
export const still_to_come = (planned, inside) =>
  planned
    .map((one) => ({ ...one, count: one.count - (inside.find(({ species }) => species === one.species)?.count ?? 0) }))
    .filter(({ count }) => count > 0);
