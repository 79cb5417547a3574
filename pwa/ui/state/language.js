/**
 * The language of this phone: the phone's own or the keeper's choice, saved, for the screens and /shared.json alike.
 */
import { effect, signal } from "../../vendor/preact.js";
import { marks_of, typed_form } from "../../figures/number_text.js";
import { install } from "../../contracts.js";
import { in_words } from "../../i18n/shared_texts.js";
import { choose, chosen, language } from "../../i18n/words.js";
import { draft } from "./draft.js";

/**
 * A language of `LANGUAGES`, or "phone" for the phone's own.
 * @type {import("../../vendor/preact.js").Signal<string>}
 */
export const wanted_language = draft("language", () => "phone");
/** The locale in use; everything is drawn again when it changes. */
export const spoken = signal("");

/** @type {import("../../contracts.js").Bundle | null} */
let english = null;

/** Speak the wanted language, and each one that is wanted later. */
export async function keep_language() {
  english = await (await fetch("/shared.json")).json();
  await speak(wanted_language.peek());
  let first = true;
  effect(() => {
    const wanted = wanted_language.value;
    if (!first) void speak(wanted);
    first = false;
  });
}

/** @param {string} wanted */
async function speak(wanted) {
  await choose(locales(wanted));
  if (english === null) return; // /shared.json is not read yet
  const shared = language() === "en" ? english : in_words(english, await shared_words(language()));
  if (wanted !== wanted_language.peek()) return;
  const marks = { ...marks_of(chosen()), group: "" };
  install(shared, (value) => typed_form(value, marks));
  document.documentElement.lang = chosen();
  spoken.value = chosen();
}

/** The phone's own locales, or only those of the wanted language: "de-AT" before "de". @param {string} wanted */
function locales(wanted) {
  if (wanted === "phone") return navigator.languages;
  return [...navigator.languages.filter((one) => one.split("-")[0] === wanted), wanted];
}

/**
 * The shared texts in a language; without them the contracts speak English, which is better than nothing.
 * @param {string} of
 * @returns {Promise<Record<string, string>>}
 */
async function shared_words(of) {
  try {
    const answer = await fetch(`/words/${of}.json`);
    return answer.ok ? await answer.json() : {};
  } catch {
    return {};
  }
}
