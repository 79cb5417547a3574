/** Which calculation answers this? The contracts by the moment they are needed, narrowed by words. */
import { plain } from "../figures/plain_text.js";

/** The moments in the order a tank lives through them. */
export const MOMENTS = ["setting_up", "filling", "testing", "changing", "feeding_dosing", "stocking"];

/**
 * @param {Record<string, any>} contracts by name @param {string} words
 * @returns {{moment: string, entries: any[]}[]} moments that hold something, each entry a contract
 */
export function shelf(contracts, words = "") {
  const wanted = plain(words).split(/\s+/).filter(Boolean);
  const found = Object.values(contracts)
    .map((spec) => ({ spec, rank: rank_of(spec, wanted) }))
    .filter(({ rank }) => rank > 0)
    .sort((a, b) => b.rank - a.rank || a.spec.title.localeCompare(b.spec.title));
  return MOMENTS.map((moment) => ({
    moment,
    entries: found.filter(({ spec }) => spec.moment === moment).map(({ spec }) => spec),
  })).filter(({ entries }) => entries.length);
}

/** 0 if a word is nowhere; a word in the title weighs most. @param {any} spec @param {string[]} wanted */
function rank_of(spec, wanted) {
  const title = plain(spec.title);
  const purpose = plain(spec.purpose);
  const inside = plain(words_in([...spec.inputs, ...spec.outputs]).join(" "));
  let rank = 1;
  for (const word of wanted) {
    if (title.includes(word)) rank += 4;
    else if (purpose.includes(word)) rank += 2;
    else if (inside.includes(word)) rank += 1;
    else return 0;
  }
  return rank;
}

/** @param {any[]} fields @returns {string[]} */
function words_in(fields) {
  return fields.flatMap((field) => [
    field.label ?? "",
    field.help ?? "",
    ...(field.choices ?? []).map((/** @type {any} */ choice) => choice.label),
    ...words_in(field.fields ?? []),
    ...(field.item ? words_in([field.item]) : []),
  ]);
}
