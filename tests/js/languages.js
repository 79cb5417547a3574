/**
 * What is translated and what is missing: read by the tests, and printed by `node
 * tests/js/languages.js [de|fr]`.
 */
import { argv } from "node:process";
import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { de } from "../../pwa/i18n/de.js";
import { de_later } from "../../pwa/i18n/de_later.js";
import { en } from "../../pwa/i18n/en.js";
import { en_later } from "../../pwa/i18n/en_later.js";
import { fr } from "../../pwa/i18n/fr.js";
import { fr_later } from "../../pwa/i18n/fr_later.js";
import { texts_of } from "../../pwa/i18n/shared_texts.js";
import { shared_bundle } from "./shared_bundle.js";

/** @type {Record<string, Catalogue>} */
export const CATALOGUES = { de: { ...de, ...de_later }, fr: { ...fr, ...fr_later } };
export const ENGLISH = { ...en, ...en_later };

/** The shared texts of a language, by their English. @param {string} language */
export const words = (language) =>
  JSON.parse(readFileSync(new URL(`../../shared_schema/words/${language}.json`, import.meta.url), "utf8"));
/** The parts in braces that a text holds. @param {string} text */
const parts_of = (text) => [...new Set([...text.matchAll(/\{(\w+)\}/g)].map((hit) => hit[1]))].sort().join();

/** What a language lacks and what is wrong in it, one line each. @param {string} language */
export function report(language) {
  return { ...screens(CATALOGUES[language], language), ...shared(words(language)) };
}

/** @typedef {Record<string, string | Record<string, string>>} Catalogue */
/** @param {Catalogue} catalogue @param {string} language @param {Catalogue} [english] */
export function screens(catalogue, language, english = ENGLISH) {
  const forms = new Intl.PluralRules(language).resolvedOptions().pluralCategories;
  const missing_keys = Object.keys(english).filter((key) => !Object.hasOwn(catalogue, key));
  const unused_keys = Object.keys(catalogue).filter((key) => !Object.hasOwn(english, key));
  const wrong_keys = Object.keys(catalogue)
    .filter((key) => Object.hasOwn(english, key))
    .flatMap((key) => {
      const [own, other] = [catalogue[key], english[key]];
      if ((typeof own === "string") !== (typeof other === "string"))
        return [`${key}: plural forms in one language only`];
      const texts = typeof own === "string" ? { other: own } : own;
      const lacking =
        typeof own === "string" ? [] : forms.filter((form) => !own[form]).map((form) => `${key}: no form for ${form}`);
      // A form holds the parts of the English form of its name or of "other"; "one tank" may say its number in a word.
      const wanted = (/** @type {string} */ form) =>
        (typeof other === "string" ? [other] : [other.other, other[form] ?? other.other]).map(parts_of);
      const holds = (/** @type {string} */ form, /** @type {string} */ text) =>
        wanted(form).includes(parts_of(text)) || (form === "one" && wanted(form).includes(parts_of(`${text}{count}`)));
      const parted = Object.entries(texts)
        .filter(([form, text]) => !holds(form, text))
        .map(([form]) => `${key}: other {parts} in ${form}`);
      return [
        ...lacking,
        ...parted,
        ...Object.values(texts)
          .filter((text) => !text.trim())
          .map(() => `${key}: empty`),
      ];
    });
  return { missing_keys, unused_keys, wrong_keys };
}

/** @param {Record<string, string>} own */
export function shared(own, english = texts_of(shared_bundle())) {
  const known = new Set(english);
  const missing_texts = english.filter((text) => !Object.hasOwn(own, text));
  const unused_texts = Object.keys(own).filter((text) => !known.has(text));
  const wrong_texts = Object.entries(own)
    .filter(([text]) => known.has(text))
    .flatMap(([text, said]) => {
      if (!said.trim()) return [`empty: ${text}`];
      return parts_of(text) === parts_of(said) ? [] : [`other {parts}: ${text}`];
    });
  return { missing_texts, unused_texts, wrong_texts };
}

if (argv[1] && import.meta.url === pathToFileURL(argv[1]).href) {
  for (const language of argv[2] ? [argv[2]] : Object.keys(CATALOGUES)) {
    for (const [what, lines] of Object.entries(report(language))) {
      console.log(`== ${language}: ${lines.length} ${what.replace("_", " ")}`);
      for (const line of lines) console.log(line);
    }
  }
}
