/** German of en_display.js. */

/** @type {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const de_display = {
  "display.title": "Sprache und Einheiten",
  "display.short": "Sprache, Liter oder Gallonen, °C oder °F",
  "display.language": "Sprache",
  "display.as_phone": "Wie dieses Handy",
  "display.units": "Einheiten",
  "display.metric": "Liter, Zentimeter, °C",
  "display.us": "US-Gallonen, Zoll, °F",
  "display.imperial": "Britische Gallonen, Zoll, °F",
  "display.sample": "So sieht es aus",
  "display.sample_said": "Wechsle {litres} bei {temperature}.",
  "display.kept":
    "Das gilt nur für dieses Handy. Aufgezeichnet werden Liter und °C, darum können Handys mit anderen Einheiten denselben Raum teilen.",
  "display.kept_units":
    "Gramm und Milliliter bleiben überall, wie sie auf Waagen und Spritzen stehen. Härte bleibt in deutschen Graden, °dKH und °dGH, wie Tests sie angeben.",
};
