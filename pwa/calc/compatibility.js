/** Whether a list of species can share one tank: water, company, temperament, and whose mouth fits whom. */
import { resolve } from "./animals.js";
import { TOLERANCE } from "./tolerance.js";
import { Refusal } from "./refusal.js";
import { constants, table } from "./tables.js";

/** @import {Input, Outputs} from "../types/contract.js" */

/** @typedef {Outputs<"compatibility">} Answer */
/** @typedef {Answer["findings"][number]} Finding */
/** @typedef {Finding["kind"]} Kind */
/** @typedef {Input<"compatibility">["animals"][number]} Given an animal as it is given */
/** @typedef {"temperature" | "ph" | "hardness"} Property of the water */
/** @typedef {"temperature_low_c" | "ph_low" | "gh_low_dgh"} Low */
/** @typedef {"temperature_high_c" | "ph_high" | "gh_high_dgh"} High */
/** @typedef {[number, number]} Range */
/** @typedef {Record<Property, number | undefined>} Water what is known of it */
/**
 * @typedef {import("./animals.js").Resolved & Record<Property, Range | null> & {social: string, group_min: number,
 *   level: string, temperament: string, mouth: string, traits: string[], genus: string, family: string}} Kept
 *   a resolved animal with what it needs
 */

const PROPERTIES = /** @type {Property[]} */ (["temperature", "ph", "hardness"]);
// Each range: its key in the species table, the fields of the keeper's own animal.
/** @type {Record<Property, ["temperature_c" | "ph" | "gh_dgh", Low, High]>} */
const RANGES = {
  temperature: ["temperature_c", "temperature_low_c", "temperature_high_c"],
  ph: ["ph", "ph_low", "ph_high"],
  hardness: ["gh_dgh", "gh_low_dgh", "gh_high_dgh"],
};
const FIERCE = ["territorial", "aggressive"];
// The note for each kind of finding, worst first.
/** @type {Record<string, string>} */
const NOTE_OF = {
  tank_temperature: "tank_water",
  tank_ph: "tank_water",
  tank_hardness: "tank_water",
  source_ph: "source_water",
  source_hardness: "source_water",
  temperature_apart: "water_apart",
  ph_apart: "water_apart",
  hardness_apart: "water_apart",
  eaten: "someone_eaten",
  may_be_eaten: "someone_eaten",
  attacks: "someone_attacked",
  group_small: "groups_small",
  not_known: "not_known",
};

/**
 * Reasons against keeping these animals together, and the water that suits them all. Rules and sources: the Python
 * twin.
 * @param {Input<"compatibility">} input
 * @returns {Outputs<"compatibility">}
 */
export function compatibility({
  animals,
  temperature_c,
  ph,
  gh_dgh,
  source_ph,
  source_gh_dgh,
  planting = "medium",
  cover = "lid",
}) {
  const kept = resolve(animals).map((one, index) => needs(index, one, animals[index]));
  /** @type {Water} */ const tank = { temperature: temperature_c, ph, hardness: gh_dgh };
  /** @type {Water} */ const source = { temperature: undefined, ph: source_ph, hardness: source_gh_dgh };
  const findings = kept.flatMap((one) => [...water_of(one, tank, source), ...alone(one, planting, cover)]);
  kept.forEach((one, index) => {
    for (const other of kept.slice(index + 1)) {
      findings.push(...water_between(one, other), ...company(one, other), ...mouth(one, other), ...mouth(other, one));
    }
  });
  /** @type {Pick<Answer, Low | High>} */
  const windows = {};
  for (const name of PROPERTIES) {
    const [, low_field, high_field] = RANGES[name];
    const known = kept.flatMap((one) => (one[name] ? [one[name]] : []));
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

/**
 * A resolved animal with what it needs.
 * @param {number} index @param {import("./animals.js").Resolved} one @param {Given} animal @returns {Kept}
 */
function needs(index, one, animal) {
  /** @type {Partial<import("./animals.js").SpeciesRow>} */
  const row = one.row ?? {};
  const range = (/** @type {Property} */ name) => {
    const [column, low_field, high_field] = RANGES[name];
    const low = animal[low_field] ?? row[column]?.[0];
    const high = animal[high_field] ?? row[column]?.[1];
    if (low === undefined && high === undefined) return null;
    if (low === undefined) throw new Refusal("range_half", `animals.${index}.${low_field}`);
    if (high === undefined) throw new Refusal("range_half", `animals.${index}.${high_field}`);
    if (low > high) throw new Refusal("range_turned", `animals.${index}.${low_field}`);
    return /** @type {Range} */ ([low, high]);
  };
  return {
    ...one,
    temperature: range("temperature"),
    ph: range("ph"),
    hardness: range("hardness"),
    social: row.social ?? ((animal.group_min ?? 1) > 1 ? "gregarious" : "unknown"),
    group_min: animal.group_min ?? row.group_min ?? 1,
    level: row.level ?? "all",
    temperament: animal.temperament ?? row.temperament ?? "peaceful",
    mouth: animal.mouth ?? row.mouth ?? "picker",
    traits: row.traits ?? [],
    genus: one.row ? String(animal.species).split(" ")[0] : "",
    family: row.family ?? one.kind,
  };
}

/**
 * @param {Kind} kind
 * @param {Finding["severity"]} severity
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

/**
 * Findings where the tank's water, or the new water, lies outside what one animal wants.
 * @param {Kept} one @param {Water} tank @param {Water} source
 */
function water_of(one, tank, source) {
  /** @type {Finding[]} */ const found = [];
  for (const name of PROPERTIES) {
    const [range, here] = [one[name], tank[name]];
    const severity = outside(one, name, here);
    if (range && here !== undefined && severity)
      found.push(finding(`tank_${name}`, severity, one, null, [...range, here, here]));
  }
  for (const name of /** @type {("ph" | "hardness")[]} */ (["ph", "hardness"])) {
    const [range, here] = [one[name], source[name]];
    const severity = outside(one, name, here);
    if (!range || here === undefined || !severity) continue;
    // A tank that is known to hold the right water bears some of the wrong at a change.
    const suits = tank[name] !== undefined && !outside(one, name, tank[name]);
    found.push(finding(`source_${name}`, suits ? "care" : severity, one, null, [...range, here, here]));
  }
  return found;
}

/**
 * How serious it is that a figure lies outside the animal's range; null where it does not or is not known.
 * @param {Kept} one @param {Property} name @param {number | undefined} here
 * @returns {"bar" | "care" | null}
 */
function outside(one, name, here) {
  const range = one[name];
  if (!range || here === undefined) return null;
  const off = Math.max(range[0] - here, here - range[1]);
  if (off <= 0) return null;
  return off > constants("compatibility_margins")[name] + TOLERANCE ? "bar" : "care";
}

/**
 * @param {Kept} one @param {string} planting
 * @param {string} cover
 */
function alone(one, planting, cover) {
  /** @type {Finding[]} */ const found = [];
  if (!PROPERTIES.every((name) => one[name])) found.push(finding("not_known", "unknown", one));
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
    for (const trait of /** @type {("eats_plants" | "digs")[]} */ (["eats_plants", "digs"]))
      if (harms_plants(one, trait)) found.push(finding(trait, "care", one));
  }
  if (cover === "open" && one.traits.includes("jumps")) found.push(finding("jumps", "care", one));
  return found;
}

/** @param {Kept} one @param {string} trait */
const harms_plants = (one, trait) => one.traits.includes(trait) && (trait === "eats_plants" || one.kind === "fish");

/** @param {Kept} one @param {Kept} other */
function water_between(one, other) {
  /** @type {Finding[]} */ const found = [];
  const margins = constants("compatibility_margins");
  for (const name of PROPERTIES) {
    const [mine, theirs] = [one[name], other[name]];
    if (!mine || !theirs) continue;
    const gap = Math.max(mine[0] - theirs[1], theirs[0] - mine[1]);
    if (gap <= 0) continue;
    found.push(
      finding(`${name}_apart`, gap > margins[name] + TOLERANCE ? "bar" : "care", one, other, [...mine, ...theirs]),
    );
  }
  return found;
}

/** @param {Kept} one @param {Kept} other */
function company(one, other) {
  /** @type {Finding[]} */ const found = [];
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
    found.push(...attack(fierce, meek));
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
 * Findings if `fierce` attacks, bullies or drives away `meek`.
 * @param {Kept} fierce
 * @param {Kept} meek
 */
function attack(fierce, meek) {
  /** @type {Finding[]} */ const found = [];
  if (fierce.kind !== "fish" || !FIERCE.includes(fierce.temperament)) return found;
  const aggressive = fierce.temperament === "aggressive";
  const meek_fish = meek.kind === "fish" && !FIERCE.includes(meek.temperament);
  const small = meek.length_cm <= constants("company_practice").small_share * fierce.adult_cm + TOLERANCE;
  if (aggressive && (meek.kind === "shrimp" || (meek_fish && small))) {
    found.push(finding("attacks", small ? "bar" : "care", fierce, meek, [fierce.adult_cm, meek.length_cm]));
  } else if (aggressive && meek_fish) found.push(finding("bullies", "care", fierce, meek));
  // More than one of them breed, and then hold the bottom against all who live there.
  const breeds = fierce.social !== "solitary" && fierce.count !== 1 && ["bottom", "all"].includes(fierce.level);
  if (breeds && meek_fish && meek.level === "bottom") {
    found.push(finding("guards_ground", aggressive ? "bar" : "care", fierce, meek));
  }
  return found;
}

/**
 * Findings if `eater` may eat `eaten`, also where it eats only snails or the young of shrimp.
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
  // A fish of the bottom meets less of what swims above it.
  const usual = eater.level === "bottom" ? limits.length_usual : limits.length_usual_most;
  if (fits && ((hunts && ratio <= limits.length_any) || (takes && ratio <= usual))) {
    return [finding("eaten", "bar", eater, eaten, lengths)];
  }
  if (fits && ((hunts && ratio <= limits.length_largest) || (takes && ratio <= limits.length_any))) {
    return [finding("may_be_eaten", "care", eater, eaten, lengths)];
  }
  if (eater.kind === "crayfish") return claws(eater, eaten, ratio, lengths);
  if (eater.kind === "fish" && eater.mouth !== "grazer" && eaten.kind === "shrimp") {
    return [finding("young_eaten", "care", eater, eaten)];
  }
  return [];
}

/**
 * Claws reach what rests on the bottom whatever its length, and by night small fish that sleep near it.
 * @param {Kept} eater @param {Kept} eaten @param {number} ratio @param {number[]} lengths
 */
function claws(eater, eaten, ratio, lengths) {
  const rests = eaten.kind === "fish" && eaten.level === "bottom";
  if (rests && ratio <= 1 + TOLERANCE) return [finding("may_be_eaten", "bar", eater, eaten, lengths)];
  const near = eaten.kind === "fish" && ratio <= constants("company_practice").claws_share + TOLERANCE;
  if (eaten.kind === "shrimp" || rests || near) return [finding("may_be_eaten", "care", eater, eaten, lengths)];
  return [];
}
