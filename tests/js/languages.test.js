/** Every language holds every text, with the same {parts} and all its plural forms; nothing in it is unused. */
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { tokenizer } from "acorn";
import { in_words, said_by, texts_of } from "../../pwa/i18n/shared_texts.js";
import { choose, named, number, separator, short, t } from "../../pwa/i18n/words.js";
import { hand_written } from "../house.js";
import { CATALOGUES, ENGLISH, report, screens, shared, words } from "./languages.js";
import { shared_bundle } from "./shared_bundle.js";

for (const language of Object.keys(CATALOGUES)) {
  test(`${language}: every text is there, whole, and none is unused (node tests/js/languages.js ${language})`, () => {
    assert.deepEqual(Object.values(report(language)).flat(), []);
  });
}

/** What no text says, by language; pwa/i18n/README.md says what to write instead. @type {Record<string, RegExp>} */
const LEFT_OUT = {
  en: new RegExp(
    "\\bshall\\b|\\bset down\\b|\\banew\\b|\\bbegun\\b|\\bwhoever\\b|\\b(is|are) told\\b|\\d times in \\d" +
      "|\\b(it|that|this) is no\\b(?! longer)|, for (no|nobody|none)\\b",
    "i",
  ),
  de: /\d von \d+ Mal\b|\bdein\w* Telefon|\bdieses Telefon/i,
  // An ordinary space before a colon may end a line.
  fr: /\d fois sur \d|\S [:;?!](?=\s|$)/,
};

test("no text holds a word that we leave out", () => {
  const texts = { en: texts_of(shared_bundle()), de: Object.values(words("de")), fr: Object.values(words("fr")) };
  const held = Object.entries({ en: ENGLISH, ...CATALOGUES }).flatMap(([language, catalogue]) =>
    [
      ...Object.values(catalogue).flatMap((text) => (typeof text === "string" ? [text] : Object.values(text))),
      ...texts[/** @type {"en"} */ (language)],
    ]
      .filter((text) => LEFT_OUT[language].test(text))
      .map((text) => `${language}: ${text}`),
  );
  assert.deepEqual(held, []);
});

/** Units that a text itself sets behind a {part}; a figure that was formatted brings its own. */
const UNIT = /\{(\w+)\}[\s\u00a0\u202f]*(°C|°F|°d|L|kg|g|ml|mg|cm²|cm|mm|W|h|%)(?![\p{L}\d’'])/gu;
/** @param {string | Record<string, string>} text */
const units_of = (text) =>
  [
    ...new Set(
      (typeof text === "string" ? [text] : Object.values(text)).flatMap((form) =>
        [...form.matchAll(UNIT)].map(([, part, unit]) => `${part} ${unit}`),
      ),
    ),
  ].sort();

/** Pieces of text that are a colon and a space, or begin with one behind a ${part}. @param {string} code */
function colons(code) {
  /** @type {(import("acorn").Token & {value?: unknown})[]} */
  const tokens = [...tokenizer(code, { ecmaVersion: "latest", sourceType: "module" })];
  const label_at = (/** @type {number} */ at) => tokens[at]?.type.label;
  return tokens.filter(({ value }, at) => {
    const text = String(value ?? "");
    if (label_at(at) === "string") return /^\s*:\s+$/.test(text);
    const behind = label_at(at) === "template" && label_at(at - 1) === "}";
    return behind && (/^:\s/.test(text) || (text === ":" && label_at(at + 1) === "`"));
  });
}

/** Files that join by a colon what no keeper reads in another language than English, or a file's own format. */
const ENGLISH_OR_FORMAT = ["pwa/advice/tasks/calendar.js", "pwa/data/archive.js", "pwa/ui/state/language.js"];

test("code joins no words by a colon of its own: French sets a space before it", () => {
  const joins = hand_written()
    .filter((path) => path.startsWith("pwa/") && path.endsWith(".js"))
    .filter((path) => colons(readFileSync(new URL(`../../${path}`, import.meta.url), "utf8")).length > 0);
  assert.deepEqual(joins, [...ENGLISH_OR_FORMAT, "pwa/figures/number_text.js"].sort());
});

test("a name, a colon and a text are joined as the language does it", async () => {
  await choose(["fr-FR"]);
  assert.equal(named("Le bac", "Eau"), "Le bac\u00a0: Eau");
  for (const own of ["de-DE", "en-GB"]) {
    await choose([own]);
    assert.equal(named("Becken", "Wasser"), "Becken: Wasser");
  }
});

test("no figure gets its unit twice: every language sets the units that the English text sets", () => {
  const screens_of = Object.entries(CATALOGUES).flatMap(([language, catalogue]) =>
    Object.entries(catalogue).map(([key, text]) => [
      `${language} ${key}`,
      /** @type {Record<string, unknown>} */ (ENGLISH)[key],
      text,
    ]),
  );
  const shared_of = Object.keys(CATALOGUES).flatMap((language) =>
    Object.entries(words(language)).map(([english, text]) => [`${language} ${english}`, english, text]),
  );
  for (const [name, english, text] of /** @type {[string, string, string][]} */ ([...screens_of, ...shared_of]))
    assert.deepEqual(units_of(text), units_of(english), name);
});

test("a lost part, a lost plural form, an unused key and an empty text are found", () => {
  const english = { a: "{x} of {y}", b: { one: "1 tank", other: "{count} tanks" }, c: "c" };
  const wrong = { a: "{x}", b: { other: "{count} Becken" }, d: "d" };
  assert.deepEqual(screens(wrong, "de", english), {
    missing_keys: ["c"],
    unused_keys: ["d"],
    wrong_keys: ["a: other {parts} in other", "b: no form for one"],
  });
  assert.deepEqual(shared({ "{a} b": "b", c: " ", d: "d" }, ["{a} b", "c", "e"]), {
    missing_texts: ["e"],
    unused_texts: ["d"],
    wrong_texts: ["other {parts}: {a} b", "empty: c"],
  });
});

test("a translated bundle keeps its names, values and figures", () => {
  const bundle = shared_bundle();
  const shouted = said_by(bundle, (text) => text.toUpperCase());
  const { free_ammonia } = shouted.calc;
  assert.equal(free_ammonia.inputs[0].name, bundle.calc.free_ammonia.inputs[0].name);
  assert.equal(free_ammonia.inputs[0].label, bundle.calc.free_ammonia.inputs[0].label.toUpperCase());
  assert.deepEqual(free_ammonia.examples, bundle.calc.free_ammonia.examples);
  assert.deepEqual(shouted.tables.constants, bundle.tables.constants);
  assert.deepEqual(
    said_by(bundle, (text) => text),
    bundle,
  );
  assert.deepEqual(texts_of(in_words(bundle, { "is needed": "fehlt" })).includes("fehlt"), true);
});

test("no two animals share a name in any language: compatibility tells them apart by it", () => {
  for (const language of Object.keys(CATALOGUES)) {
    const { rows } = in_words(shared_bundle(), words(language)).tables.species;
    const names = Object.values(rows).map((row) => row.name);
    assert.deepEqual(
      names.filter((name, i) => names.indexOf(name) !== i),
      [],
      language,
    );
  }
});

test("German writes a comma, and a text it lacks stands in English with English plurals", async () => {
  await choose(["de-DE", "en"]);
  assert.deepEqual([separator(), number(1234.5, 1), short(0.25)], [",", "1.234,5", "0,25"]);
  await choose(["sv", "fr-FR"]);
  assert.equal(number(1234.5, 1), "1\u202f234,5");
  await choose(["en-GB"]);
  assert.equal(t("undo"), "Undo");
});
