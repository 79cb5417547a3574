/** Setting a tank up, its life: how many plants, which first, what the planned animals ask, when they may come. Pure. */
import { constants, table } from "../calc/tables.js";
import { run } from "../contracts.js";
import { FIRST, floor_of, said_at } from "./setting_up.js";

const BRIGHTNESS = ["low", "medium", "high"];
const SPEED = ["fast", "medium", "slow"];
/** Rooted in nothing: they feed on the water alone. */
const FREE = ["free", "floating"];
const DAY = 86_400_000;

/** Portions for a floor (common practice: constants, planting_practice). @param {any} measures @param {string} planting */
export function portions_for(measures, planting) {
  if (planting === "none") return 0;
  const practice = constants("planting_practice");
  return Math.ceil((floor_of(measures).area_cm2 * practice[`cover_${planting}`]) / practice.portion_cm2 - 1e-9);
}

/**
 * Plants that bear the planned warmth and light, those that feed on the most first: fast ones carry a new tank, and of those the ones that float or drift.
 * @param {{temperature_c: number, light: string}} warmth @returns {{key: string, row: any}[]}
 */
export function plants_for({ temperature_c, light }) {
  return Object.entries(table("plants").rows)
    .map(([key, row]) => ({ key, row: /** @type {any} */ (row) }))
    .filter(({ row }) => row.temperature_c[0] <= temperature_c && temperature_c <= row.temperature_c[1] && BRIGHTNESS.indexOf(row.light) <= BRIGHTNESS.indexOf(light))
    .sort((a, b) => rank(a.row) - rank(b.row) || a.row.name.localeCompare(b.row.name));
}

/** @param {any} row */
const rank = (row) => 100 * SPEED.indexOf(row.growth) + 10 * (FREE.includes(row.form) ? 0 : 1) + BRIGHTNESS.indexOf(row.light);

/** The planned animals as the calculations take them; grown, unless `as_they_come`. @param {any[]} stock @param {{as_they_come?: boolean}} [how] */
export const animals_of = (stock, { as_they_come = false } = {}) =>
  stock.map(({ species, count, length_cm }) => {
    const known = Object.hasOwn(table("species").rows, species);
    return { ...(known ? { species } : { name: species }), count, ...(length_cm && (as_they_come || !known) ? { length_cm } : {}) };
  });

/** How old a tank is, in the words of the stocking limit. @param {any} tank @param {number} now ms */
export function maturity_of(tank, now) {
  const days = tank.started_at ? (now - Date.parse(tank.started_at)) / DAY : 0;
  return days < 14 ? "new" : days < 42 ? "starting" : "mature";
}

const BOTTOM = /** @type {Record<string, string>} */ ({ bare: "bare", plain: "sand", capped: "soil" });

/** What the tank carries of these animals. @param {any} tank @param {any[]} stock @param {string} maturity @returns {any} null without animals */
export function limit_input(tank, stock, maturity) {
  if (stock.length === 0) return null;
  const { length_cm, area_cm2 } = floor_of(tank.measures);
  const warmth = said_at(tank, "warmth");
  return {
    animals: animals_of(stock),
    water_l: tank.water_l,
    surface_cm2: area_cm2,
    length_cm,
    temperature_c: tank.temperature_c ?? warmth.temperature_c,
    maturity,
    planting: tank.planting ?? said_at(tank, "plants").planting,
    substrate: BOTTOM[tank.setup?.steps?.substrate === "done" ? said_at(tank, "substrate").bed : "plain"],
    cover: warmth.cover,
    filter: tank.filter ?? warmth.filter,
  };
}

/** As many kinds are asked about at once as the stocking limit takes. */
const AT_ONCE = 40;

/**
 * Peaceful fish that this tank would suit once matured: its warmth and, where known, its pH and hardness in their range,
 * long enough, and room for a whole group beside those already planned. Those first whose range has the tank's warmth in its middle.
 * @param {any} tank @param {any} source its source water @param {any[]} stock planned so far @returns {{key: string, row: any}[]}
 */
export function animals_for(tank, source, stock) {
  const water = together_input(tank, source, [{ species: "", count: 0 }]);
  const inside = (/** @type {any} */ row) =>
    [["temperature_c", "temperature_c"], ["ph", "ph"], ["gh_dgh", "gh_dgh"]].every(([own, range]) => water[own] === undefined || (row[range][0] <= water[own] && water[own] <= row[range][1]));
  const rows = Object.entries(table("species").rows).filter(([key, row]) => row.kind === "fish" && row.temperament === "peaceful" && inside(row) && !stock.some(({ species }) => species === key));
  /** @type {{key: string, row: any}[]} */ const found = [];
  for (let i = 0, at = AT_ONCE - stock.length; i < rows.length && at > 0; i += at) {
    const lot = rows.slice(i, i + at);
    const { more } = run("stocking_limit", limit_input(tank, [...stock, ...lot.map(([species]) => ({ species, count: 0 }))], "mature"));
    lot.forEach(([key, row], j) => {
      const fits = more[stock.length + j];
      if (fits.long_enough && fits.more >= /** @type {any} */ (row).group_min) found.push({ key, row });
    });
  }
  const off_middle = (/** @type {any} */ row) => Math.abs(2 * water.temperature_c - row.temperature_c[0] - row.temperature_c[1]) / (row.temperature_c[1] - row.temperature_c[0]);
  return found.sort((a, b) => off_middle(a.row) - off_middle(b.row) || a.row.length_cm - b.row.length_cm);
}

/** Whether they suit each other and the water. @param {any} tank @param {any} source its source water @param {any[]} stock @returns {any} */
export function together_input(tank, source, stock) {
  if (stock.length === 0) return null;
  const ph = tank.ph ?? source?.ph;
  const gh_dgh = tank.gh_dgh ?? source?.gh_dgh;
  return {
    animals: animals_of(stock),
    temperature_c: tank.temperature_c ?? said_at(tank, "warmth").temperature_c,
    planting: tank.planting ?? FIRST.plants.planting,
    ...(ph === undefined ? {} : { ph }),
    ...(gh_dgh === undefined ? {} : { gh_dgh }),
  };
}

/** Food of the planned animals: an assumption of the stocking limit, so that every sum counts with the same. */
const PROTEIN = 0.42;

/** Less than this neither scales nor a test kit show: then the food of several days is given at once (assumption). */
const LEAST_STARTER_MG_N_L = 0.5;

/**
 * Ammonia in place of the planned animals' food: a day's, or of as many days as can be weighed and read.
 * @param {number} water_l @param {number} feed_g_day @param {number} [ammonia_percent] @returns {{input: any, days: number}}
 */
export function starter(water_l, feed_g_day, ammonia_percent) {
  const strength = ammonia_percent ? { ammonia_percent } : {};
  const input = { volume_l: water_l, feed_g_day, protein_fraction: PROTEIN, ...strength };
  const { tan_mg_n_l } = run("starter_dose", { volume_l: water_l, feed_g_day, protein_fraction: PROTEIN });
  if (tan_mg_n_l >= LEAST_STARTER_MG_N_L || tan_mg_n_l === 0) return { input, days: 1 };
  return { input: { volume_l: water_l, tan_mg_n_l: LEAST_STARTER_MG_N_L, ...strength }, days: Math.round(LEAST_STARTER_MG_N_L / tan_mg_n_l) };
}

/**
 * When the tank can bear so many grams of animals, by what it processes: held to the lower end of each band.
 * @param {number} planned_g @param {any} headroom the answer of stock_headroom
 * @returns {"now" | "perhaps" | "in_7" | "in_14" | "later"}
 */
export function bears(planned_g, headroom) {
  if (headroom.fish_g_now.p10 >= planned_g) return "now";
  if (headroom.fish_g_in_7_days.p10 >= planned_g) return "in_7";
  if (headroom.fish_g_in_14_days.p10 >= planned_g) return "in_14";
  return headroom.fish_g_now.p50 >= planned_g ? "perhaps" : "later";
}

/** Of the plan, what is not in the tank yet. @param {any[]} planned @param {{species: string, count: number}[]} inside */
export const still_to_come = (planned, inside) =>
  planned
    .map((one) => ({ ...one, count: one.count - (inside.find(({ species }) => species === one.species)?.count ?? 0) }))
    .filter(({ count }) => count > 0);
