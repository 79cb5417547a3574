/** French of en_display.js. */

/** @type {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const fr_display = {
  "display.title": "Langue et unités",
  "display.short": "Langue, litres ou gallons, °C ou °F",
  "display.language": "Langue",
  "display.as_phone": "Comme ce téléphone",
  "display.units": "Unités",
  "display.metric": "Litres, centimètres, °C",
  "display.us": "Gallons US, pouces, °F",
  "display.imperial": "Gallons impériaux, pouces, °F",
  "display.sample": "Voici l’aspect",
  "display.sample_said": "Change {litres} à {temperature}.",
  "display.kept":
    "Ceci vaut pour ce téléphone seul. Les entrées gardent litres et °C, des téléphones avec d’autres unités partagent donc une même salle.",
  "display.kept_units":
    "Grammes et millilitres restent dans chaque système, comme sont marquées balances et seringues. La dureté reste en degrés allemands, °dKH et °dGH, comme les kits l’impriment.",
};
