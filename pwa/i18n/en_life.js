/** English: animals and plants, moves, what tanks shared, and the search. */

/** @type {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const en_life = {
  "kind.own_species": "Own animal",
  "kind.own_plant": "Own plant",
  "kind.shared_tool": "Shared tool",
};
