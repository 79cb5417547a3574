/**
 * The language of this phone: the phone's own or the keeper's choice, saved, for the screens and the shared texts.
 */
import { effect, signal } from "../../vendor/preact.js";
import { marks_of, typed_form } from "../../figures/number_text.js";
import { install, install_calculations } from "../../contracts.js";
import { together } from "../../i18n/shared_parts.js";
import { in_words } from "../../i18n/shared_texts.js";
import { choose, chosen, language } from "../../i18n/words.js";
import { draft } from "./draft.js";
import { pause } from "./pause.js";

/** @import { Bundle } from "../../contracts.js" */

/**
 * A language of `LANGUAGES`, or "phone" for the phone's own.
 * @type {import("../../vendor/preact.js").Signal<string>}
 */
export const wanted_language = draft("language", () => "phone");
/** The locale in use; everything is drawn again when it changes. */
export const spoken = signal("");

/**
 * Where the parts of the shared texts are; without a build they are not in parts.
 * @type {Record<"first" | "rest", Record<string, string>> | null}
 */
const PARTS = typeof SHARED_PARTS === "undefined" ? null : JSON.parse(SHARED_PARTS);
/** Whether a page has asked for more than the Round needs. */
let all_wanted = PARTS === null;
/** One change of language follows the other. @type {Promise<void>} */
let speaking = Promise.resolve();

/** Speak the wanted language, and each one that is wanted later. */
export async function keep_language() {
  await speak(wanted_language.peek());
  let first = true;
  effect(() => {
    const wanted = wanted_language.value;
    if (!first) void speak(wanted).catch(console.error);
    first = false;
  });
}

/** All shared texts, not only those of the Round. Rejects if they cannot be had. */
export async function speak_of_all() {
  if (all_wanted) return speaking;
  all_wanted = true;
  return speak(wanted_language.peek()).catch((failed) => {
    all_wanted = false;
    throw failed;
  });
}

/** @param {string} wanted */
function speak(wanted) {
  speaking = speaking.catch(() => {}).then(() => speak_now(wanted));
  return speaking;
}

/** @param {string} wanted */
async function speak_now(wanted) {
  const calculations = all_wanted ? import("../../calc/index.js") : null;
  await choose(locales(wanted), { all: all_wanted });
  const shared = await shared_texts(language());
  if (calculations) install_calculations((await calculations).calculations);
  // To read the texts takes long.
  await pause();
  const locale = chosen();
  // Its number marks are asked for once a figure needs them: by then workers/locales.js has listed the locales.
  install(shared, (value) => typed_form(value, { ...marks_of(locale), group: "" }));
  document.documentElement.lang = chosen();
  spoken.value = chosen();
}

/**
 * The shared texts in a language; where they cannot be had, in English, which is better than nothing.
 * @param {string} of
 * @returns {Promise<Bundle>}
 */
const shared_texts = (of) => (of === "en" ? texts_in("en") : texts_in(of).catch(() => texts_in("en")));

/** @param {string} of @returns {Promise<Bundle>} */
async function texts_in(of) {
  if (PARTS === null) {
    const [english, words] = await Promise.all([
      fetched("/shared.json"),
      of === "en" ? {} : fetched(`/words/${of}.json`),
    ]);
    return in_words(english, words);
  }
  const first = fetched(PARTS.first[of]);
  return all_wanted ? together(await first, await fetched(PARTS.rest[of])) : first;
}

/** Files that were fetched, by address. @type {Map<string, Promise<unknown>>} */
const files = new Map();

/** @template T @param {string} address @returns {Promise<T>} */
function fetched(address) {
  const asked = files.get(address) ?? fetch_json(address);
  files.set(address, asked);
  asked.catch(() => files.delete(address));
  return /** @type {Promise<T>} */ (asked);
}

/** @param {string} address */
async function fetch_json(address) {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return answer.json();
}

/** The phone's own locales, or only those of the wanted language: "de-AT" before "de". @param {string} wanted */
function locales(wanted) {
  if (wanted === "phone") return navigator.languages;
  return [...navigator.languages.filter((one) => one.split("-")[0] === wanted), wanted];
}
