/**
 * English: what was found in a tank, and what to do about it. `find.CODE` says what to do; `find.CODE.why` says what was
 * seen and why it matters.
 */

/** @satisfies {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const en_findings = {
  "find.also": "Also",
  "find.more": { one: "And one thing more.", other: "And {count} things more." },
  "find.provenance": "{why} ({provenance})",
  "find.any_animal": "nearly every animal of such tanks",

  "find.chlorine": "Chlorine is in the water: dose your dechlorinator for the whole tank now.",
  "find.chlorine_dose": "Chlorine is in the water: dose {dose} of {label} for the whole tank now.",
  "find.chlorine.why":
    "Read {since}: {read}. Over days {limit} already harms fish. Move the surface, and test again in ten minutes.",
  "find.undosed": "Was the new water treated? If not, dose your dechlorinator for the whole tank now.",
  "find.undosed_dose": "Was the new water treated? If not, dose {dose} of {label} for the whole tank now.",
  "find.undosed.why":
    "{litres} went in {since}, and no dose is recorded with it. Chlorine burns gills within hours. If it was dosed, record the dose.",
  "find.gasping": "Move the surface or let air bubble now: fish stand at the surface.",
  "find.gasping.why":
    "Seen {since}. Then test ammonia, nitrite and temperature. If you find no cause, change {litres} of treated water.",
  "find.oxygen_low": "Move the surface or let air bubble: oxygen is only {read}.",
  "find.oxygen_low.why": "Read {since}. Fish of warm water need {limit} or more. Feed nothing until it is back.",
  "find.hot": "Cool the water slowly: it is {read}.",
  "find.hot.why":
    "{who} bears {limit} at most. Switch the heater off, open the lid, move the surface, feed nothing. Cool by no more than a degree or two an hour.",
  "find.cold": "Warm the water slowly: it is {read}.",
  "find.cold.why":
    "{who} needs {limit} at least. Look at heater and plug with dry hands, cover the tank. Warm by no more than a degree or two an hour.",
  "find.deaths": {
    one: "An animal died: test ammonia, nitrite, pH and temperature today.",
    other: "{count} animals died in three days: test ammonia, nitrite, pH and temperature now.",
  },
  "find.deaths.why":
    "Take every dead animal out. If the tests show no cause, change {litres} of treated water, as warm as the tank. Bring in no animals. A vet who treats fish can find an illness.",
  "find.ph_low": "Test pH again: {read} is too low for {who}.",
  "find.ph_low.why":
    "{who} bears {limit} at least. If it reads the same, test carbonate hardness, and raise pH by no more than half a unit a day: while ammonia is in the water, a quick rise poisons.",
  "find.ph_high": "Test pH again: {read} is too high for {who}.",
  "find.ph_high.why":
    "{who} bears {limit} at most. If it reads the same, lower it by no more than half a unit a day, and test ammonia: it harms more at a high pH.",
  "find.ph_jump": "Test pH again: it went from {from} to {read}.",
  "find.ph_jump.why":
    "Read {since}. A jump harms by itself, so do not turn it back at once. Look for the cause: carbonate hardness used up, a new stone, a large change, added carbon dioxide.",
  "find.temperature_jump": "Check heater and room: the water went from {from} to {read}.",
  "find.temperature_jump.why":
    "Read {since}. A quick step weakens animals, even between temperatures that they bear. Go back slowly.",
  "find.dawn": "Move the surface tonight: oxygen at dawn may be {low} to {high}.",
  "find.dawn.why":
    "Fish of warm water need {limit}. This is calculated, not measured: look at the fish before the lights go on. If they stand at the surface, let air bubble at once.",
  "find.kh_gone": "Carbonate hardness is nearly used up: {read}. Test pH every day.",
  "find.kh_gone.why":
    "Below about 1 °d, pH can fall within a day, and the bacteria stop. Change small amounts, with water that holds more of it.",
  "find.kh_ends": {
    one: "Test carbonate hardness: it will be used up in about {count} day.",
    other: "Test carbonate hardness: it will be used up in about {count} days.",
  },
  "find.kh_ends.why":
    "This is a forecast. Without hardness pH falls, and the bacteria stall. Change small amounts, with water that holds more of it.",
  "find.overdosed": "Move the surface: {times} times the label’s dose is recorded.",
  "find.overdosed.why": "Recorded {since}. Dechlorinators take up oxygen. If the entry is wrong, correct it.",
  "find.large_change": "Watch the animals: {percent} of the water was changed at once.",
  "find.large_change.why": "Changed {since}. pH and temperature may have jumped: test both.",
  "find.hiding": "Fish hide or do not eat: test ammonia, nitrite, pH and temperature.",
  "find.hiding.why": "Noted {since}. Look for bullying and signs of illness too. A vet who treats fish can help.",
  "find.soft": "The water is soft for {who}: {read}.",
  "find.soft.why": "At home from {limit} general hardness on. Nothing is urgent; plan other water or other animals.",
  "find.hard": "The water is hard for {who}: {read}.",
  "find.hard.why": "At home up to {limit} general hardness. Nothing is urgent; plan other water or other animals.",

  "instead.bind": "Dose a product that binds ammonia, by its own label.",
  "instead.salt":
    "Against nitrite, {salt} of plain salt (sodium chloride without additives) in this tank, dissolved first.",
  "instead.feed_less": "Feed nothing today.",
  "instead.other_water": "Look for other water.",
};
