/** Every text, number and date that the screens show, by the language's catalogue and the locale's rules. */
import { DAY, MINUTE } from "../figures/durations.js";
import { marks_of, named as named_by } from "../figures/number_text.js";
import { display } from "../calc/rounding.js";
import { en as english } from "./en.js";

/** @typedef {string | Partial<Record<Intl.LDMLPluralRule, string>>} Entry */

/** The languages by their own names. */
export const LANGUAGES = /** @type {const} */ ({ en: "English", de: "Deutsch", fr: "Français" });
/** A phone loads only the catalogue it needs. @type {Record<string, () => Promise<Record<string, Entry>>>} */
const CATALOGUES = {
  en: async () => en,
  de: async () => (await import("./de.js")).de,
  fr: async () => (await import("./fr.js")).fr,
};
/** The texts of pages that are opened seldom: they come with the rest of the shared texts. @type {typeof CATALOGUES} */
const LATER = {
  en: async () => (await import("./en_later.js")).en_later,
  de: async () => (await import("./de_later.js")).de_later,
  fr: async () => (await import("./fr_later.js")).fr_later,
};
/** @type {Record<string, Entry>} */
const en = english;
/** English plural rules for a text that is not translated yet. */
const ENGLISH = new Intl.PluralRules("en");

let locale = "en";
/** @type {Record<string, Entry>} */
let catalogue = en;
let plurals = ENGLISH;

/**
 * Choose the language of the words and the locale of numbers and dates. Where the catalogue cannot be loaded, the words
 * are English.
 * @param {readonly string[]} wanted most wanted first
 * @param {{all?: boolean}} [how] `all`: the later texts too; rejects if they cannot be had
 */
export async function choose(wanted, { all = true } = {}) {
  const chosen = wanted.find((one) => language_of(one) in CATALOGUES) ?? "en";
  const language = language_of(chosen);
  const [words, later] = await Promise.all([
    CATALOGUES[language]().catch(() => en),
    all ? LATER[language]().catch(LATER.en) : {},
  ]);
  [locale, catalogue, plurals] = [chosen, { ...words, ...later }, new Intl.PluralRules(chosen)];
}

/** "de" of "de-AT". @param {string} tag */
const language_of = (tag) => tag.split("-")[0].toLowerCase();

/** The locale in force, as a BCP 47 tag. */
export const chosen = () => locale;
/** The language in force, as its tag alone. */
export const language = () => language_of(locale);

/**
 * Formats of the locale in force. Each is made once for its options: to make one takes many times what its use takes. A
 * phone may be carried into another time zone while the app is open.
 * @template {object} Options @template Made
 * @param {(options: Options) => Made} make @returns {(options: Options) => Made}
 */
function once(make) {
  /** @type {Map<string, Made>} */ const made = new Map();
  return (options) => {
    const name = `${locale} ${new Date().getTimezoneOffset()} ${JSON.stringify(options)}`;
    const format = made.get(name) ?? make(options);
    made.set(name, format);
    return format;
  };
}
const numbers = once((/** @type {Intl.NumberFormatOptions} */ options) => new Intl.NumberFormat(locale, options));
const dates = once((/** @type {Intl.DateTimeFormatOptions} */ options) => new Intl.DateTimeFormat(locale, options));
const spans = once(
  (/** @type {Intl.RelativeTimeFormatOptions} */ options) => new Intl.RelativeTimeFormat(locale, options),
);
const lists = once((/** @type {Intl.ListFormatOptions} */ options) => new Intl.ListFormat(locale, options));

/**
 * The text of `key` with its {parts} filled in; `count` picks the plural form.
 * @param {string} key @param {Record<string, unknown>} [parts] @returns {string}
 */
export function t(key, parts = {}) {
  const own = Object.hasOwn(catalogue, key);
  const entry = own ? catalogue[key] : en[key];
  if (entry === undefined) throw new RangeError(`no text for ${key}`);
  const text =
    typeof entry === "string"
      ? entry
      : (entry[(own ? plurals : ENGLISH).select(Number(parts.count))] ?? entry.other ?? "");
  return text.replace(/\{(\w+)\}/g, (_, name) => {
    const part = parts[name];
    return typeof part === "number" ? integer(part) : String(part);
  });
}

/**
 * `value` with exactly `decimals` places and the locale's separators.
 * @param {number} value
 * @param {number} decimals
 */
export function number(value, decimals) {
  const format = numbers({ minimumFractionDigits: decimals, maximumFractionDigits: decimals });
  return format.format(Number(display(value, decimals)));
}

/** With as few places as `value` needs, at most `most`. @param {number} value @param {number} [most] */
export function short(value, most = 3) {
  const format = numbers({ maximumFractionDigits: most });
  return format.format(Number(display(value, most)));
}

/** What stands behind its name: "Water: soft". @param {string} name @param {string} text */
export const named = (name, text) => named_by(name, text, marks_of(locale));

/** The decimal separator that the keypad shows. */
export const separator = () => marks_of(locale).decimal;

/** "14:30". @param {string | number} at */
export const clock = (at) => dates({ hour: "2-digit", minute: "2-digit" }).format(new Date(at));

/** "today 14:30", "yesterday 09:10", "Mon 3 Aug 07:00". @param {string | number} at @param {number} now */
export function when(at, now) {
  const days = Math.round((midnight(now) - midnight(Date.parse(new Date(at).toISOString()))) / DAY);
  if (days >= -1 && days <= 1) {
    const day = spans({ numeric: "auto" }).format(-days, "day");
    return `${day} ${clock(at)}`;
  }
  const far = Math.abs(days) > 300 ? { year: /** @type {const} */ ("numeric") } : {};
  const day = dates({ weekday: "short", day: "numeric", month: "short", ...far }).format(new Date(at));
  return `${day}, ${clock(at)}`;
}

/** "now", "5 minutes ago", "3 days ago": how long since. @param {string} at @param {number} now */
export function ago(at, now) {
  const seconds = Math.max(0, (now - Date.parse(at)) / 1000);
  if (seconds < 90) return spans({ numeric: "auto" }).format(0, "second");
  const [unit, size] =
    seconds < 3600
      ? [/** @type {const} */ ("minute"), 60]
      : seconds < 86_400
        ? [/** @type {const} */ ("hour"), 3600]
        : [/** @type {const} */ ("day"), 86_400];
  return spans({}).format(-Math.floor(seconds / size), unit);
}

/** "Wednesday 4 August", with its year where that is not the year of `now`. @param {number} at @param {number} [now] */
export function day(at, now = at) {
  const other = new Date(at).getFullYear() !== new Date(now).getFullYear();
  const year = other ? { year: /** @type {const} */ ("numeric") } : {};
  return dates({ weekday: "long", day: "numeric", month: "long", ...year }).format(new Date(at));
}

/** "November 2026" as a heading. @param {number} at */
export const month_said = (at) => capital(dates({ month: "long", year: "numeric" }).format(new Date(at)));

/** "Wed 25" of a day in a month that is named beside it. @param {number} at */
export const day_of_month = (at) => dates({ weekday: "short", day: "numeric" }).format(new Date(at));

/** "25 Nov". @param {string | number} at */
export const short_date = (at) => dates({ day: "numeric", month: "short" }).format(new Date(at));

/** "08:00" of minutes after midnight. @param {number} minutes */
export const time_of_day = (minutes) =>
  dates({ hour: "2-digit", minute: "2-digit", timeZone: "UTC" }).format(minutes * MINUTE);

/** "Monday", or "Mon", of 0 to 6 from Monday on. @param {number} place @param {"long" | "short"} [width] */
export const weekday_name = (place, width = "long") =>
  dates({ weekday: width, timeZone: "UTC" }).format(Date.UTC(2024, 0, 1 + place));

/** Languages that begin every noun with a capital. */
const CAPITAL_NOUNS = new Set(["de"]);

/** A noun that stands alone elsewhere, as it is written within a sentence: "nitrite" but "pH". @param {string} noun */
export const within_sentence = (noun) =>
  CAPITAL_NOUNS.has(language()) || !/^\p{Lu}(?!\p{Lu})/u.test(noun)
    ? noun
    : noun[0].toLocaleLowerCase(locale) + noun.slice(1);

/** "a, b and c". @param {string[]} words */
export const listed = (words) => lists({ type: "conjunction" }).format(words);

/** "Wed 25 Nov" of a date written as UTC. @param {number} day */
export const date_said = (day) =>
  dates({ weekday: "short", day: "numeric", month: "short", timeZone: "UTC" }).format(day);

/** "today", "tomorrow", "Friday". @param {number} at @param {number} now */
export function weekday(at, now) {
  const days = Math.round((midnight(at) - midnight(now)) / DAY);
  if (days <= 1) return spans({ numeric: "auto" }).format(days, "day");
  return dates({ weekday: "long" }).format(new Date(at));
}

/** "Today", "Yesterday", "Monday 23 November": a day as a heading. @param {number} at @param {number} now */
export function day_named(at, now) {
  const days = Math.round((midnight(now) - midnight(at)) / DAY);
  const far = Math.abs(days) > 300 ? { year: /** @type {const} */ ("numeric") } : {};
  const said =
    days === 0 || days === 1
      ? weekday(at, now)
      : dates({ weekday: "long", day: "numeric", month: "long", ...far }).format(new Date(at));
  return capital(said);
}

/** As it begins a heading. @param {string} said */
const capital = (said) => said[0].toLocaleUpperCase(locale) + said.slice(1);

/** "4:05" of a number of seconds. @param {number} seconds */
export function minutes(seconds) {
  const left = Math.max(0, Math.ceil(seconds));
  return `${Math.floor(left / 60)}:${String(left % 60).padStart(2, "0")}`;
}

/** @param {number} at */
const midnight = (at) => new Date(at).setHours(0, 0, 0, 0);
/** @param {number} value */
const integer = (value) => numbers({ maximumFractionDigits: 6 }).format(value);
