/** The contracts that match some words, by the moment at which they are needed. */
import { plain } from "../figures/plain_text.js";

/** @import { Contract, Item, OutputItem } from "../types/contract.js" */

/** The moments in the order of a tank's life. */
export const MOMENTS = ["setting_up", "filling", "testing", "changing", "feeding_dosing", "stocking"];

/**
 * @param {Record<string, Contract | undefined>} contracts by name @param {string} words
 * @returns {{moment: string, entries: Contract[]}[]} the moments that have any
 */
export function shelf(contracts, words = "") {
  const wanted = plain(words).split(/\s+/).filter(Boolean);
  const found = Object.values(contracts)
    .filter((spec) => spec !== undefined)
    .map((spec) => ({ spec, rank: rank_of(spec, wanted) }))
    .filter(({ rank }) => rank > 0)
    .sort((a, b) => b.rank - a.rank || a.spec.title.localeCompare(b.spec.title));
  return MOMENTS.map((moment) => ({
    moment,
    entries: found.filter(({ spec }) => spec.moment === moment).map(({ spec }) => spec),
  })).filter(({ entries }) => entries.length);
}

/** 0 if a word is nowhere; a word in the title counts most. @param {Contract} spec @param {string[]} wanted */
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

/** The words on fields and on what is in them. @param {(Item | OutputItem)[]} fields @returns {string[]} */
const words_in = (fields) =>
  fields.flatMap((field) => [
    field.label ?? "",
    "help" in field && field.help ? field.help : "",
    ...(field.type === "choice" ? field.choices.map((choice) => choice.label) : []),
    ...(field.type === "object" ? words_in(field.fields) : []),
    ...(field.type === "list" ? words_in([field.item]) : []),
  ]);
