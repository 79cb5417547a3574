/** Whether a list of species can share one tank: water, company, temperament, and whose mouth fits whom. */
import { resolve } from "./animals.js";
import { TOLERANCE } from "./tolerance.js";
import { Refusal } from "./refusal.js";
import { constants, table } from "./tables.js";

/** @typedef {Record<string, any>} Kept a resolved animal with what it needs */
/** @typedef {Record<string, any>} Finding */

// Each range: its key in the species table, the fields of the keeper's own animal.
/** @type {Record<string, [string, string, string]>} */
const RANGES = {
  temperature: ["temperature_c", "temperature_low_c", "temperature_high_c"],
  ph: ["ph", "ph_low", "ph_high"],
  hardness: ["gh_dgh", "gh_low_dgh", "gh_high_dgh"],
};
const FIERCE = ["territorial", "aggressive"];
// The note that a kind of finding calls for, worst first.
/** @type {Record<string, string>} */
const NOTE_OF = {
  tank_temperature: "tank_water",
  tank_ph: "tank_water",
  tank_hardness: "tank_water",
  temperature_apart: "water_apart",
  ph_apart: "water_apart",
  hardness_apart: "water_apart",
  eaten: "someone_eaten",
  may_be_eaten: "someone_eaten",
  group_small: "groups_small",
  not_known: "not_known",
};

/**
 * What stands against keeping these animals together. Rules and sources: the Python twin.
 * @param {{animals: any[], temperature_c?: number, ph?: number, gh_dgh?: number, planting?: string, cover?: string}}
 * input
 */
export function compatibility({ animals, temperature_c, ph, gh_dgh, planting = "medium", cover = "lid" }) {
  const kept = resolve(animals).map((one, index) => needs(index, one, animals[index]));
  /** @type {Record<string, number | undefined>} */
  const tank = { temperature: temperature_c, ph, hardness: gh_dgh };
  const findings = kept.flatMap((one) => alone(one, tank, planting, cover));
  kept.forEach((one, index) => {
    for (const other of kept.slice(index + 1)) {
      findings.push(...water_between(one, other), ...company(one, other), ...mouth(one, other), ...mouth(other, one));
    }
  });
  /** @type {Record<string, number | null>} */
  const windows = {};
  for (const [name, [, low_field, high_field]] of Object.entries(RANGES)) {
    const known = kept.filter((one) => one[name]).map((one) => one[name]);
    const low = Math.max(...known.map((range) => range[0]));
    const high = Math.min(...known.map((range) => range[1]));
    const met = known.length > 0 && low <= high;
    windows[low_field] = met ? low : null;
    windows[high_field] = met ? high : null;
  }
  const severities = new Set(findings.map((found) => found.severity));
  const called = new Set(findings.map((found) => NOTE_OF[found.kind]));
  return {
    verdict: severities.has("bar") ? "not_together" : severities.size ? "with_care" : "together",
    ...windows,
    findings,
    notes: [...new Set(Object.values(NOTE_OF))].filter((note) => called.has(note)),
  };
}

/** A resolved animal with what it needs. @param {number} index @param {any} one @param {any} animal @returns {Kept} */
function needs(index, one, animal) {
  const row = one.row ?? {};
  /** @type {Record<string, [number, number] | null>} */
  const ranges = {};
  for (const [name, [column, low_field, high_field]] of Object.entries(RANGES)) {
    const given = row[column] ?? [null, null];
    const low = animal[low_field] ?? given[0];
    const high = animal[high_field] ?? given[1];
    if ((low === null) !== (high === null)) {
      throw new Refusal("range_half", `animals.${index}.${low === null ? low_field : high_field}`);
    }
    if (low !== null && low > high) throw new Refusal("range_turned", `animals.${index}.${low_field}`);
    ranges[name] = low === null ? null : [low, high];
  }
  return {
    ...one,
    ...ranges,
    social: row.social ?? ((animal.group_min ?? 1) > 1 ? "gregarious" : "unknown"),
    group_min: animal.group_min ?? row.group_min ?? 1,
    level: row.level ?? "all",
    temperament: animal.temperament ?? row.temperament ?? "peaceful",
    mouth: animal.mouth ?? row.mouth ?? "picker",
    traits: row.traits ?? [],
    genus: one.row ? animal.species.split(" ")[0] : "",
    family: row.family ?? one.kind,
  };
}

/**
 * @param {string} kind
 * @param {string} severity
 * @param {Kept} a
 * @param {Kept | null} [b]
 * @param {number[]} [ranges]
 * @returns {Finding}
 */
function finding(kind, severity, a, b = null, ranges = []) {
  const names = ["a_low", "a_high", "b_low", "b_high"];
  const figures = Object.fromEntries(ranges.map((figure, index) => [names[index], figure]));
  return { kind, severity, a: a.name, b: b ? b.name : "", ...figures };
}

/** @param {Kept} one @param {Record<string, number | undefined>} tank @param {string} planting @param {string} cover */
function alone(one, tank, planting, cover) {
  const found = [];
  const margins = constants("compatibility_margins");
  for (const [name, here] of Object.entries(tank)) {
    if (!one[name] || here === undefined) continue;
    const [low, high] = one[name];
    const off = Math.max(low - here, here - high);
    if (off > 0)
      found.push(
        finding(`tank_${name}`, off > margins[name] + TOLERANCE ? "bar" : "care", one, null, [low, high, here, here]),
      );
  }
  if (!Object.keys(RANGES).every((name) => one[name])) found.push(finding("not_known", "unknown", one));
  const few = one.count > 0 && one.count < one.group_min;
  if (few && ["shoal", "gregarious"].includes(one.social)) {
    found.push(finding("group_small", "care", one, null, [one.count, one.group_min]));
  }
  if (one.social === "solitary" && one.count > 1) {
    found.push(finding("better_alone", one.temperament === "aggressive" ? "bar" : "care", one, null, [one.count, 1]));
  }
  if (one.social === "pair" && one.count > 2 && FIERCE.includes(one.temperament)) {
    found.push(finding("too_many_rivals", "care", one, null, [one.count, 2]));
  }
  if (planting !== "none") {
    for (const trait of ["eats_plants", "digs"]) if (harms_plants(one, trait)) found.push(finding(trait, "care", one));
  }
  if (cover === "open" && one.traits.includes("jumps")) found.push(finding("jumps", "care", one));
  return found;
}

/** @param {Kept} one @param {string} trait */
const harms_plants = (one, trait) => one.traits.includes(trait) && (trait === "eats_plants" || one.kind === "fish");

/** @param {Kept} one @param {Kept} other */
function water_between(one, other) {
  const found = [];
  const margins = constants("compatibility_margins");
  for (const name of Object.keys(RANGES)) {
    if (!one[name] || !other[name]) continue;
    const gap = Math.max(one[name][0] - other[name][1], other[name][0] - one[name][1]);
    if (gap <= 0) continue;
    found.push(
      finding(`${name}_apart`, gap > margins[name] + TOLERANCE ? "bar" : "care", one, other, [
        ...one[name],
        ...other[name],
      ]),
    );
  }
  return found;
}

/** @param {Kept} one @param {Kept} other */
function company(one, other) {
  const found = [];
  const same_place = one.level === other.level || [one.level, other.level].includes("all");
  const both_fish = one.kind === "fish" && other.kind === "fish";
  if (both_fish && same_place && FIERCE.includes(one.temperament) && FIERCE.includes(other.temperament)) {
    const aggressive = [one.temperament, other.temperament].includes("aggressive");
    found.push(finding("rivals", aggressive ? "bar" : "care", one, other));
  }
  for (const [fierce, meek] of [
    [one, other],
    [other, one],
  ]) {
    if (both_fish && fierce.temperament === "aggressive" && !FIERCE.includes(meek.temperament)) {
      found.push(finding("bullies", "care", fierce, meek));
    }
    if (fierce.traits.includes("nips_fins") && meek.traits.includes("long_fins")) {
      found.push(finding("nips_fins", "bar", fierce, meek));
    }
  }
  const like = one.genus !== "" && one.genus === other.genus && one.name !== other.name;
  const shrimp = one.kind === "shrimp" && other.kind === "shrimp";
  if (like && (one.family === "Poeciliidae" || shrimp)) found.push(finding("may_cross", "care", one, other));
  return found;
}

/**
 * Whether `eater` swallows `eaten`; shrimp young and snails besides.
 * @param {Kept} eater
 * @param {Kept} eaten
 * @returns {Finding[]}
 */
function mouth(eater, eaten) {
  const limits = constants("prey_size");
  const lengths = [eater.adult_cm, eaten.length_cm];
  if (eater.traits.includes("eats_snails") && eaten.kind === "snail" && eaten.name !== eater.name) {
    return [finding("eats_snails", "bar", eater, eaten)];
  }
  const ratio = eaten.length_cm / eater.adult_cm;
  const { shapes, invertebrates } = table("species");
  const depth = eaten.length_cm * (shapes[eaten.shape] ?? invertebrates[eaten.shape]).depth_per_length;
  const fits = depth <= limits.depth_of_standard * limits.standard_per_total * eater.adult_cm;
  const hunts = eater.mouth === "predator";
  const takes = eater.mouth === "opportunist" && eater.kind === "fish";
  if (fits && ((hunts && ratio <= limits.length_any) || (takes && ratio <= limits.length_usual))) {
    return [finding("eaten", "bar", eater, eaten, lengths)];
  }
  if (fits && ((hunts && ratio <= limits.length_largest) || (takes && ratio <= limits.length_any))) {
    return [finding("may_be_eaten", "care", eater, eaten, lengths)];
  }
  // Claws reach what rests on the bottom, whatever its length.
  const in_reach = eaten.kind === "shrimp" || (eaten.kind === "fish" && eaten.level === "bottom");
  if (eater.kind === "crayfish" && in_reach) return [finding("may_be_eaten", "care", eater, eaten, lengths)];
  if (eater.kind === "fish" && eater.mouth !== "grazer" && eaten.kind === "shrimp") {
    return [finding("young_eaten", "care", eater, eaten)];
  }
  return [];
}
