/** German of en_life.js. */

/** @type {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const de_life = {
  "kind.own_species": "Eigenes Tier",
  "kind.own_plant": "Eigene Pflanze",
  "kind.shared_tool": "Gemeinsames Werkzeug",
};
