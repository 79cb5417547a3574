/** The words of the screens: every text that code asks for exists, plural forms and separators follow the language. */
import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { test } from "node:test";
import { ENGLISH as en } from "./languages.js";
import { ago, choose, minutes, number, separator, short, t, within_sentence } from "../../pwa/i18n/words.js";
import { shared_bundle } from "./shared_bundle.js";

const pwa = new URL("../../pwa/", import.meta.url);
const sources = [
  "app.js",
  "routes.js",
  ...["screens", "ui"].flatMap((folder) =>
    readdirSync(new URL(folder, pwa), { recursive: true })
      .filter((file) => String(file).endsWith(".js"))
      .map((file) => `${folder}/${file}`),
  ),
].map((path) => [path, readFileSync(new URL(path, pwa), "utf8")]);

test("every text named in the code is in the catalogue", () => {
  for (const [path, code] of sources) {
    const named = [
      ...code.matchAll(/\bt\("([^"]+)"/g),
      ...code.matchAll(/\bt\([^()"`]*\? "([^"]+)" : "([^"]+)"/g),
    ].flatMap((hit) => hit.slice(1));
    for (const key of named) assert.ok(key in en, `${path} asks for ${key}`);
  }
});

test("every kind of record has a name, for the page of what was refused", () => {
  for (const kind of Object.keys(shared_bundle().records)) assert.ok(`kind.${kind}` in en, kind);
});

test("every text is asked for somewhere, by its name or by its family", () => {
  const all = sources.map(([, code]) => code).join("\n");
  for (const key of Object.keys(en)) {
    const stems = [...key.matchAll(/[._]/g)].map((mark) => `\`${key.slice(0, mark.index + 1)}$`);
    assert.ok(all.includes(`"${key}"`) || stems.some((stem) => all.includes(stem)), `${key} is never asked for`);
  }
});

test("plural forms and separators by language", async () => {
  await choose(["en-GB"]);
  assert.equal(t("saved.readings", { count: 1 }), "1 reading saved on this phone");
  assert.equal(t("saved.readings", { count: 2 }), "2 readings saved on this phone");
  assert.deepEqual([separator(), number(1234.5, 1), short(0.25)], [".", "1,234.5", "0.25"]);
  assert.equal(number(0.125, 2), "0.13", "halves go away from zero");
  assert.equal(minutes(305), "5:05");
});

test("how long ago, in whole steps that have passed", async () => {
  await choose(["en-GB"]);
  const now = Date.parse("2026-05-04T08:00:00.000Z");
  const said = (/** @type {string} */ iso) => ago(iso, now);
  assert.deepEqual(
    [
      "2026-05-04T08:00:30.000Z",
      "2026-05-04T07:59:00.000Z",
      "2026-05-04T07:55:00.000Z",
      "2026-05-04T06:01:00.000Z",
      "2026-05-01T07:00:00.000Z",
    ].map(said),
    ["now", "now", "5 minutes ago", "1 hour ago", "3 days ago"],
  );
});

test("a text that is not there is an error, not an empty label", () =>
  assert.throws(() => t("no.such.text"), RangeError));

test("a parameter is written small within a sentence, but German nouns keep their capital", async () => {
  const said = () => ["Nitrite", "Carbonate hardness", "pH", "KH"].map(within_sentence);
  await choose(["en"]);
  assert.deepEqual(said(), ["nitrite", "carbonate hardness", "pH", "KH"]);
  await choose(["de-AT"]);
  assert.deepEqual(said(), ["Nitrite", "Carbonate hardness", "pH", "KH"]);
  await choose(["en"]);
});
