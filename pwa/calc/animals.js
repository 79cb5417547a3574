/** A keeper's list of animals as lengths and masses: rows of the species table, or the keeper's own figures. */
import { Refusal } from "./refusal.js";
import { table } from "./tables.js";

/** @typedef {import("../types/tables.js").SpeciesRow} SpeciesRow */
/**
 * @typedef {{species?: string, name?: string, count: number, length_cm?: number, shape?: string, mass_a?: number,
 * mass_b?: number}} Animal
 */
/**
 * @typedef {{name: string, kind: string, shape: string, row: SpeciesRow | null, count: number, length_cm: number,
 * mass_g: number, adult_cm: number, adult_g: number}} Resolved
 */

/**
 * Each animal with its length and mass. Equation, refusals and sources: the Python twin.
 * @param {Animal[]} animals @returns {Resolved[]}
 */
export const resolve = (animals) => animals.map((animal, index) => one(index, animal));

/**
 * How many of each animal make one more lot: the counts, or one of each if all are zero.
 * @param {Resolved[]} animals
 */
export function mixture(animals) {
  const counts = animals.map((animal) => animal.count);
  return counts.some((count) => count > 0) ? counts : counts.map(() => 1);
}

/** @param {number} index @param {Animal} animal @returns {Resolved} */
function one(index, animal) {
  const species = table("species");
  const row = Object.hasOwn(species.rows, animal.species ?? "") ? species.rows[animal.species ?? ""] : null;
  if ("mass_a" in animal !== "mass_b" in animal) throw new Refusal("mass_pair", `animals.${index}.mass_a`);
  if (!row && !("length_cm" in animal)) throw new Refusal("length_needed", `animals.${index}.length_cm`);
  let kind, shape, law;
  if (!row) {
    shape = animal.shape ?? "fusiform";
    kind = shape in species.invertebrates ? shape : "fish";
    law = kind !== "fish" ? species.invertebrates[shape] : species.shapes[shape];
  } else {
    kind = row.kind;
    law = row;
    shape = kind === "fish" ? row.shape : kind === "snail" ? "snail" : "shrimp";
  }
  const a = animal.mass_a ?? law.a;
  const b = animal.mass_b ?? law.b;
  const length = animal.length_cm ?? Number(row?.length_cm);
  const adult = row ? Math.max(length, row.length_cm) : length;
  return {
    name: animal.name || (row ? row.name : (animal.species ?? "own animal")),
    kind,
    shape,
    row,
    count: animal.count,
    length_cm: length,
    mass_g: a * length ** b,
    adult_cm: adult,
    adult_g: a * adult ** b,
  };
}
