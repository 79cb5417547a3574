/** English: the words and units of this phone. */

/** @satisfies {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const en_display = {
  "display.title": "Words and units",
  "display.short": "Language, litres or gallons, °C or °F",
  "display.language": "Language",
  "display.as_phone": "As this phone",
  "display.units": "Units",
  "display.metric": "Litres, centimetres, °C",
  "display.us": "US gallons, inches, °F",
  "display.imperial": "Imperial gallons, inches, °F",
  "display.sample": "So it looks",
  "display.sample_said": "Change {litres} at {temperature}.",
  "display.kept":
    "This is for this phone alone. Records keep litres and °C, so phones with other units share one fish room.",
  "display.kept_units":
    "Grams and millilitres stay in every system, as scales and syringes are marked. Hardness stays in German degrees, °dKH and °dGH, as kits print it.",
};
