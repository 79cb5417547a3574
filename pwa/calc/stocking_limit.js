/** How many animals a tank can carry: by nitrogen, by oxygen at dawn, and by space. */
import { mixture, resolve } from "./animals.js";
import { breathing_mg_h } from "./oxygen_night.js";
import { nitrogen_limit, plants_share } from "./stock_nitrogen.js";
import { measured_limit, oxygen_limit } from "./stock_oxygen.js";
import { company_more, long_enough, room_limit, surface_asked_cm2 } from "./stock_room.js";
import { constants, table } from "./tables.js";
import { TOLERANCE } from "./tolerance.js";

/** @import { Input, Outputs } from "../types/contract.js" */
/** @import { Resolved } from "./animals.js" */
/** @import { Tank } from "./oxygen_night.js" */
/** @import { Given } from "./stock_nitrogen.js" */

/** @typedef {Outputs<"stocking_limit">} Answer */
/**
 * @typedef {{g: number, mg_h: number, cm2: number, fits: boolean, company: number | null, group: number}} Asked what
 * one grown animal needs, how many more of its kind it bears, and its smallest group
 * @typedef {ReturnType<typeof sums_of>} Sums
 */

// What a night is taken to be where nothing else is said.
const NIGHT = {
  altitude_m: 0,
  dark_hours: 14,
  planting: "medium",
  floating_cover: 0,
  substrate: "sand",
  filter: "none",
  cover: "lid",
};

/**
 * How many more of each animal fit, and three limits in grams of grown animals, mixed as listed. Equations, units,
 * sources: the Python twin.
 * @param {Input<"stocking_limit">} input
 * @returns {Answer}
 */
export function stocking_limit({
  animals,
  length_cm,
  maturity = "mature",
  plants_age_days,
  capacity_mg_n_day,
  feed_share_day = 0.012,
  feed_g_day,
  protein_fraction = 0.42,
  change_fraction = 0.3,
  every_days = 7,
  nitrate_ceiling_mg_n_l = 10,
  source_nitrate_mg_n_l = 1,
  least_mg_l = 4,
  dawn_oxygen_mg_l,
  ...night
}) {
  const stock = resolve(animals);
  const present_g = stock.reduce((sum, one) => sum + one.count * one.adult_g, 0);
  const share = feed_g_day !== undefined && present_g > 0 ? feed_g_day / present_g : feed_share_day;
  const tank = { ...NIGHT, ...night };
  const given = {
    protein_g: share * protein_fraction,
    bottom_m2: tank.surface_cm2 / 10000,
    planting: tank.planting,
    floating_cover: tank.floating_cover,
    plants_share: plants_share(plants_age_days ?? table("tank_classes").maturity.classes[maturity].from_days),
    maturity,
    capacity_mg_n_day,
    changed_mg_n_day: ((nitrate_ceiling_mg_n_l - source_nitrate_mg_n_l) * change_fraction * tank.water_l) / every_days,
  };
  const each = stock.map((one, i) => asks_of(one, animals[i], tank, length_cm));
  const sums = sums_of(stock, each, given, tank, least_mg_l, dawn_oxygen_mg_l);
  return {
    ...limits_said(sums),
    more: stock.map((one, i) => more_of(one, each[i], sums)),
    feed_g_day: share * present_g,
    tan_mg_n_g_day: sums.nitrogen.tan_mg_n_g_day,
    nitrate_mg_n_g_day: sums.nitrogen.nitrate_mg_n_g_day,
    processed_mg_n_day: sums.nitrogen.capacity,
    plants_share: given.plants_share,
    plants_mg_n_day: sums.nitrogen.plants,
    changed_mg_n_day: given.changed_mg_n_day,
    spare_oxygen_mg_h: sums.oxygen.spare_mg_h,
    used_oxygen_mg_h: sums.used_mg_h,
    used_surface_cm2: sums.used_cm2,
    notes: notes(stock, each, sums, given),
  };
}

/**
 * The three limits of the mixture, what the animals present use of each, and which limit binds.
 * @param {Resolved[]} stock @param {Asked[]} each @param {Given} given @param {Tank} tank @param {number} least_mg_l
 * @param {number} [dawn_mg_l]
 */
function sums_of(stock, each, given, tank, least_mg_l, dawn_mg_l) {
  const nitrogen = nitrogen_limit(given);
  // Oxygen that oxidises the ammonia of one gram of animals; their own respiration comes on top.
  const oxidising_mg_h_g = (nitrogen.tan_mg_n_g_day / 24) * constants("ebeling_2006").oxygen_per_n;
  const lot = lot_of(mixture(stock), each);
  const used = lot_of(
    stock.map((one) => one.count),
    each,
  );
  const used_mg_h = used.mg_h + used.g * oxidising_mg_h_g;
  const here = { g: used.g, mg_h: used_mg_h };
  const oxygen =
    dawn_mg_l === undefined
      ? oxygen_limit(tank, lot, oxidising_mg_h_g, least_mg_l)
      : measured_limit(tank, lot, oxidising_mg_h_g, least_mg_l, here, dawn_mg_l);
  const room = room_limit(tank.surface_cm2, lot);
  return {
    present_g: used.g,
    nitrogen,
    oxygen,
    oxygen_read: dawn_mg_l !== undefined,
    room,
    oxidising_mg_h_g,
    used_mg_h,
    used_cm2: used.cm2,
    free_g: nitrogen.limit_g - used.g,
    free_mg_h: oxygen.sure_mg_h - used_mg_h,
    free_cm2: tank.surface_cm2 - used.cm2,
    binding: binding(used.g, nitrogen.limit_g, oxygen, room.limit_g),
  };
}

/**
 * Which limit binds first; "cannot_tell" where oxygen's band leaves it open whether it is passed.
 * @param {number} present_g @param {number} nitrogen_g @param {{low_g: number, high_g: number}} oxygen
 * @param {number | null} room_g
 * @returns {Answer["binding"]}
 */
function binding(present_g, nitrogen_g, oxygen, room_g) {
  const least = room_g !== null && room_g < nitrogen_g ? "room" : "nitrogen";
  const least_g = Math.min(nitrogen_g, room_g ?? Infinity);
  if (oxygen.low_g <= present_g && present_g < oxygen.high_g) return least_g <= present_g ? least : "cannot_tell";
  return oxygen.low_g < least_g ? "oxygen" : least;
}

/** The limit that binds, in grams, by oxygen its low end; null where nobody can tell. @param {Sums} sums */
function limit_of(sums) {
  if (sums.binding === "cannot_tell") return null;
  return sums.binding === "oxygen" ? sums.oxygen.low_g : sums[sums.binding].limit_g;
}

/** The limits as the answer names them. @param {Sums} sums */
function limits_said(sums) {
  const { nitrogen, oxygen, room, present_g } = sums;
  const limit_g = limit_of(sums);
  return {
    binding: sums.binding,
    limit_g,
    present_g,
    more_g: limit_g === null ? null : Math.max(0, limit_g - present_g),
    nitrogen_g: nitrogen.limit_g,
    nitrogen_low_g: nitrogen.low_g,
    nitrogen_high_g: nitrogen.high_g,
    nitrogen_by: nitrogen.by,
    oxygen_g: oxygen.limit_g,
    oxygen_low_g: oxygen.low_g,
    oxygen_high_g: oxygen.high_g,
    room_g: room.limit_g,
    room_low_g: room.low_g,
    room_high_g: room.high_g,
  };
}

/**
 * What one grown animal needs of the tank, and how many more of its kind it bears.
 * @param {Resolved} one
 * @param {Input<"stocking_limit">["animals"][number]} animal
 * @param {Tank} tank
 * @param {number} length_cm
 * @returns {Asked}
 */
function asks_of(one, animal, tank, length_cm) {
  return {
    g: one.adult_g,
    mg_h: breathing_mg_h(one.adult_g, tank.temperature_c),
    cm2: surface_asked_cm2(one),
    fits: long_enough(one, length_cm),
    company: company_more(one, animal.temperament ?? one.row?.temperament ?? "peaceful"),
    group: one.row?.group_min ?? 1,
  };
}

/**
 * What these numbers of each animal need together; they fit if every one of them fits.
 * @param {number[]} counts
 * @param {Asked[]} each
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
 * How many more of one animal fit by each limit, if only these are added; null by what nobody can tell.
 * @param {Resolved} one
 * @param {Asked} asks
 * @param {Sums} sums
 * @returns {Answer["more"][number]}
 */
function more_of(one, asks, sums) {
  const cannot_tell = sums.binding === "cannot_tell";
  const nitrogen = whole(sums.free_g / asks.g);
  const oxygen = cannot_tell ? null : whole(sums.free_mg_h / (asks.mg_h + asks.g * sums.oxidising_mg_h_g));
  const room = asks.cm2 <= 0 ? null : asks.fits ? whole(sums.free_cm2 / asks.cm2) : 0;
  const limit_g = limit_of(sums);
  const over = limit_g !== null && sums.present_g > limit_g;
  const fit = over ? 0 : Math.min(nitrogen, oxygen ?? Infinity, room ?? Infinity, asks.company ?? Infinity);
  // A kind comes as a whole group or not at all.
  const more = one.count === 0 && fit < asks.group ? 0 : fit;
  return {
    name: one.name,
    more: cannot_tell && more > 0 ? null : more,
    count: one.count,
    nitrogen,
    oxygen,
    room,
    company: asks.company,
    each_g: one.adult_g,
    adult_cm: one.adult_cm,
    long_enough: asks.fits,
  };
}

/** Whole animals that still fit, never fewer than none. @param {number} number */
const whole = (number) => Math.max(0, Math.floor(number + TOLERANCE));

/**
 * @param {Resolved[]} stock @param {Asked[]} each @param {Sums} sums @param {Given} given
 */
function notes(stock, each, sums, given) {
  const { present_g, oxygen } = sums;
  const limit_g = limit_of(sums);
  const over = limit_g !== null && present_g > limit_g;
  const young = given.capacity_mg_n_day === undefined && given.maturity !== "mature";
  const found = {
    over_limit: over && !(young && sums.binding === "nitrogen"),
    over_while_young: over && young && sums.binding === "nitrogen",
    look_at_dawn: oxygen.low_g <= present_g && present_g < oxygen.high_g,
    no_oxygen_to_spare: oxygen.high_g <= 0 && !sums.oxygen_read,
    tank_too_short: !each.every((asks) => asks.fits),
    not_mature: young,
    plants_settling: given.plants_share < 1 && (given.planting !== "none" || given.floating_cover > 0),
    source_at_ceiling: given.changed_mg_n_day <= 0,
    // Where there are too many already, nobody is told to fill up a group.
    group_small: !over && stock.some((one, i) => one.count > 0 && one.count < each[i].group),
  };
  return Object.entries(found).flatMap(([code, holds]) => (holds ? [code] : []));
}
