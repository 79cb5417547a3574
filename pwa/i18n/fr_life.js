/** French of en_life.js. */

/** @type {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const fr_life = {
  "kind.own_species": "Animal à toi",
  "kind.own_plant": "Plante à toi",
  "kind.shared_tool": "Outil partagé",
};
