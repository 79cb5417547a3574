/** How many animals a tank can carry: by nitrogen, by oxygen at dawn, and by space. */
import { mixture, resolve } from "./animals.js";
import { DOUBTS, HIGH, LOW, USUAL, breathing_mg_h, others_at_dawn_mg_h, still_night } from "./oxygen_night.js";
import { NITROGEN_DOUBTS, nitrogen_room } from "./stock_nitrogen.js";
import { long_enough, surface_asked_cm2 } from "./stock_room.js";
import { constants } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/** @typedef {{g: number, mg_h: number, cm2: number, fits: boolean}} Asked */

/**
 * Three limits in grams of grown animals, mixed as listed, and how many more of each animal fit. Equations, units,
 * sources: the Python twin.
 * @param {Input<"stocking_limit">} input
 * @returns {Outputs<"stocking_limit">}
 */
export function stocking_limit({
  animals,
  water_l,
  surface_cm2,
  length_cm,
  temperature_c,
  altitude_m = 0,
  dark_hours = 14,
  planting = "medium",
  floating_cover = 0,
  substrate = "sand",
  filter = "none",
  cover = "lid",
  maturity = "mature",
  capacity_mg_n_day,
  feed_share_day = 0.012,
  feed_g_day,
  protein_fraction = 0.42,
  change_fraction = 0.3,
  every_days = 7,
  nitrate_ceiling_mg_n_l = 10,
  source_nitrate_mg_n_l = 1,
  least_mg_l = 4,
}) {
  const stock = resolve(animals);
  const present_g = stock.reduce((sum, one) => sum + one.count * one.adult_g, 0);
  const share = feed_g_day !== undefined && present_g > 0 ? feed_g_day / present_g : feed_share_day;
  const nitrogen = {
    protein_g: share * protein_fraction,
    bottom_m2: surface_cm2 / 10000,
    planting,
    floating_cover,
    maturity,
    capacity_mg_n_day,
    changed_mg_n_day: ((nitrate_ceiling_mg_n_l - source_nitrate_mg_n_l) * change_fraction * water_l) / every_days,
  };
  const tank = {
    water_l,
    surface_cm2,
    temperature_c,
    altitude_m,
    dark_hours,
    evening_percent: 100,
    planting,
    floating_cover,
    substrate,
    filter,
    cover,
  };
  const usual = nitrogen_room(nitrogen);
  // Oxygen for the oxidation of a gram's ammonia, in addition to the gram's own breathing.
  const oxidising_mg_h_g = (usual.tan_mg_n_g_day / 24) * constants("ebeling_2006").oxygen_per_n;
  const each = stock.map((one) => asks_of(one, temperature_c, length_cm));
  const lot = lot_of(mixture(stock), each);
  const spare_mg_h = others_at_dawn_mg_h(still_night(tank), least_mg_l);
  const oxygen_g_in = (/** @type {string} */ doubt = "", place = USUAL) =>
    oxygen_g_of(tank, lot, oxidising_mg_h_g, least_mg_l, doubt, place);
  const nitrogen_g = usual.limit_g;
  const oxygen_g = oxygen_g_in();
  const [nitrogen_low_g, nitrogen_high_g] = band(
    nitrogen_g,
    NITROGEN_DOUBTS.flatMap((doubt) => [LOW, HIGH].map((place) => nitrogen_room(nitrogen, doubt, place).limit_g)),
  );
  const [oxygen_low_g, oxygen_high_g] = band(
    oxygen_g,
    DOUBTS.flatMap((doubt) => [LOW, HIGH].map((place) => oxygen_g_in(doubt, place))),
  );
  const room_g = lot.cm2 > 0 ? (lot.fits ? (surface_cm2 / lot.cm2) * lot.g : 0) : null;
  /** @type {["nitrogen" | "oxygen" | "room", number][]} */
  const limits = [
    ["nitrogen", nitrogen_g],
    ["oxygen", oxygen_g],
  ];
  if (room_g !== null) limits.push(["room", room_g]);
  const [binding, limit_g] = limits.reduce((least, one) => (one[1] < least[1] ? one : least));
  const used = lot_of(
    stock.map((one) => one.count),
    each,
  );
  const free = {
    g: nitrogen_g - present_g,
    mg_h: spare_mg_h - used.mg_h - present_g * oxidising_mg_h_g,
    cm2: surface_cm2 - used.cm2,
  };
  const practice = constants("room_practice");
  const found = {
    over_limit: present_g > limit_g,
    no_oxygen_to_spare: spare_mg_h <= 0,
    tank_too_short: !each.every((asks) => asks.fits),
    not_mature: capacity_mg_n_day === undefined && maturity !== "mature",
    source_at_ceiling: nitrogen.changed_mg_n_day <= 0,
    group_small: stock.some((one) => one.row && one.count > 0 && one.count < one.row.group_min),
  };
  return {
    present_g,
    limit_g,
    more_g: Math.max(0, limit_g - present_g),
    binding,
    nitrogen_g,
    nitrogen_low_g,
    nitrogen_high_g,
    nitrogen_by: usual.by,
    oxygen_g,
    oxygen_low_g,
    oxygen_high_g,
    room_g,
    room_low_g: room_g === null ? null : room_g / practice.low_factor,
    room_high_g: room_g === null ? null : room_g * practice.high_factor,
    more: stock.map((one, index) => more_of(one, each[index], free, oxidising_mg_h_g)),
    feed_g_day: share * present_g,
    tan_mg_n_g_day: usual.tan_mg_n_g_day,
    nitrate_mg_n_g_day: usual.nitrate_mg_n_g_day,
    processed_mg_n_day: usual.capacity,
    plants_mg_n_day: usual.plants,
    changed_mg_n_day: nitrogen.changed_mg_n_day,
    spare_oxygen_mg_h: spare_mg_h,
    used_oxygen_mg_h: used.mg_h + present_g * oxidising_mg_h_g,
    used_surface_cm2: used.cm2,
    notes: Object.entries(found).flatMap(([code, holds]) => (holds ? [code] : [])),
  };
}

/**
 * What one grown animal needs of the tank.
 * @param {import("./animals.js").Resolved} one
 * @param {number} temperature_c
 * @param {number} length_cm
 * @returns {Asked}
 */
function asks_of(one, temperature_c, length_cm) {
  return {
    g: one.adult_g,
    mg_h: breathing_mg_h(one.adult_g, temperature_c),
    cm2: surface_asked_cm2(one),
    fits: long_enough(one, length_cm),
  };
}

/**
 * What these numbers of each animal need together; they fit if every one of them fits.
 * @param {number[]} counts
 * @param {Asked[]} each
 * @returns {Asked}
 */
function lot_of(counts, each) {
  const total = (/** @type {"g" | "mg_h" | "cm2"} */ what) =>
    each.reduce((sum, asks, index) => sum + counts[index] * asks[what], 0);
  return {
    g: total("g"),
    mg_h: total("mg_h"),
    cm2: total("cm2"),
    fits: each.every((asks, index) => asks.fits || counts[index] <= 0),
  };
}

/**
 * Grams of the lot whose breathing and whose ammonia's oxidation leave oxygen at the limit at dawn.
 * @param {import("./oxygen_night.js").Tank} tank
 * @param {Asked} lot
 * @param {number} oxidising_mg_h_g
 * @param {number} least_mg_l
 * @param {string} doubt @param {number} place
 */
function oxygen_g_of(tank, lot, oxidising_mg_h_g, least_mg_l, doubt, place) {
  const breath = constants("animal_breathing");
  const rate = [breath.night_low, breath.night_usual, breath.night_high];
  const breathing = lot.mg_h * rate[doubt === "animals" ? place : USUAL];
  const spare = others_at_dawn_mg_h(still_night(tank, doubt, place), least_mg_l);
  return (Math.max(0, spare) / (breathing + lot.g * oxidising_mg_h_g)) * lot.g;
}

/**
 * Low and high: the root of the summed squares of the deviations, each doubtful figure varied alone.
 * @param {number} usual
 * @param {number[]} others
 */
function band(usual, others) {
  const squares = (/** @type {number[]} */ offs) => Math.sqrt(offs.reduce((sum, off) => sum + off ** 2, 0));
  const offs = others.map((other) => other - usual);
  return [Math.max(0, usual - squares(offs.filter((off) => off < 0))), usual + squares(offs.filter((off) => off > 0))];
}

/**
 * How many more of one animal fit by each limit, if only these are added.
 * @param {import("./animals.js").Resolved} one
 * @param {Asked} asks
 * @param {{g: number, mg_h: number, cm2: number}} free
 * @param {number} oxidising_mg_h_g
 */
function more_of(one, asks, free, oxidising_mg_h_g) {
  const nitrogen = whole(free.g / asks.g);
  const oxygen = whole(free.mg_h / (asks.mg_h + asks.g * oxidising_mg_h_g));
  const room = asks.cm2 <= 0 ? null : asks.fits ? whole(free.cm2 / asks.cm2) : 0;
  return {
    name: one.name,
    count: one.count,
    more: Math.min(nitrogen, oxygen, room ?? Infinity),
    nitrogen,
    oxygen,
    room,
    each_g: one.adult_g,
    adult_cm: one.adult_cm,
    long_enough: asks.fits,
  };
}

/** Whole animals that still fit, never fewer than none. @param {number} number */
const whole = (number) => Math.max(0, Math.floor(number + 1e-9));
