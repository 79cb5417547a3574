/** Words of the Bench: every key that code asks for is in the catalogue, and labels name no units. */
import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { test } from "node:test";
import { MOMENTS } from "../../pwa/bench/search.js";
import { en } from "../../pwa/i18n/en.js";
import { shared_bundle } from "./shared_bundle.js";

const PROVENANCE = ["published", "common practice", "from memory", "assumption"];
const bundle = shared_bundle();
const pwa = new URL("../../pwa/", import.meta.url);
const sources = ["screens", "ui"].flatMap((folder) =>
  readdirSync(new URL(`${folder}/`, pwa), { recursive: true })
    .filter((file) => String(file).endsWith(".js"))
    .map((file) => readFileSync(new URL(`${folder}/${file}`, pwa), "utf8")),
);

test("every text of the Bench that code asks for is in the catalogue, and no other", () => {
  const spoken = new Set(
    sources.flatMap((text) => [...text.matchAll(/\Wt\("(bench\.[\w.]+)"/g)].map((found) => found[1])),
  );
  for (const moment of MOMENTS) spoken.add(`bench.moment.${moment}`);
  for (const { key } of bundle.tables.units.systems) spoken.add(`bench.system.${key}`);
  for (const provenance of PROVENANCE) spoken.add(`bench.provenance.${provenance}`);
  assert.deepEqual(
    [...spoken].sort(),
    Object.keys(en)
      .filter((key) => key.startsWith("bench."))
      .sort(),
  );
});

test("a label names no unit that another system replaces", () => {
  /** @typedef {{label?: string, unit?: string, fields?: AnyField[], item?: AnyField}} AnyField */
  /** @param {AnyField[]} fields of an input or of an answer @returns {string[]} */
  const labels = (fields) =>
    fields.flatMap((field) => [
      ...(field.unit !== undefined && field.unit in bundle.tables.units.shown ? [field.label ?? ""] : []),
      ...labels(field.fields ?? []),
      ...(field.item ? labels([field.item]) : []),
    ]);
  for (const spec of Object.values(bundle.calc)) {
    for (const label of labels([...spec.inputs, ...spec.outputs])) {
      assert.doesNotMatch(label, /\b(litres?|kilograms?|grams?|centimetres?|metres?|celsius)\b/i, spec.name);
    }
  }
});
