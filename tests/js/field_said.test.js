/** A field is named by its short label and a time is known by its format, in every language the words are today's. */
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { label_of, value_said } from "../../pwa/advice/sharing/field_said.js";
import { check_fields, install, record_field, records, short_choice_label } from "../../pwa/contracts.js";
import { in_words } from "../../pwa/i18n/shared_texts.js";
import { shared_bundle } from "./shared_bundle.js";

const words = (/** @type {string} */ language) =>
  JSON.parse(readFileSync(new URL(`../../shared_schema/words/${language}.json`, import.meta.url), "utf8"));
const WORDS = {
  get: () => null,
  yes_no: String,
  figure: (/** @type {number} */ value) => String(value),
  time: (/** @type {string} */ at) => `at ${at}`,
};

test("a field whose label explains itself is named without the explanation", () => {
  const said = () => [
    label_of(record_field("away_sheet", "feed_every_days"), ""),
    label_of(record_field("planting", "species"), ""),
    label_of(record_field("tank", "measures"), ""),
    label_of(record_field("tank", "place"), ""),
    short_choice_label(record_field("reading", "parameter"), "total_ammonia"),
    short_choice_label(record_field("reading", "parameter"), "nitrite"),
  ];
  install(shared_bundle());
  assert.deepEqual(said(), [
    "Days from one meal to the next",
    "Plant",
    "Measurements",
    "Where it stands",
    "Ammonia",
    "Nitrite",
  ]);
  install(in_words(shared_bundle(), words("de")));
  const german = ["Tage von einer Fütterung zur nächsten", "Pflanze", "Maße", "Wo es steht", "Ammonium", "Nitrit"];
  assert.deepEqual(said(), german);
  install(in_words(shared_bundle(), words("fr")));
  const french = ["Jours d’un repas à l’autre", "Plante", "Mesures", "Où il se tient", "Ammonium", "Nitrites"];
  assert.deepEqual(said(), french);
});

test("a label that explains itself in brackets has a short one beside it", () => {
  install(shared_bundle());
  for (const { kind, fields } of Object.values(records()).flatMap((one) => one ?? []))
    for (const field of fields)
      assert.ok(!/[(;]/.test(field.short_label ?? field.label), `${kind}.${field.name} has no short_label`);
});

test("a time is said as a time, and only a real one is taken", () => {
  install(shared_bundle());
  const field = record_field("away_sheet", "from_at");
  assert.equal(value_said(field, "2026-05-04T07:30:00.000Z", WORDS), "at 2026-05-04T07:30:00.000Z");
  assert.equal(value_said(record_field("tank", "name"), "2026-05-04T07:30:00.000Z", WORDS), "2026-05-04T07:30:00.000Z");
  const [wrong] = check_fields([field], { from_at: "2026-02-30T07:30:00.000Z" }).errors;
  assert.match(wrong.message, /2026-/);
  assert.deepEqual(check_fields([field], { from_at: "2026-02-28T07:30:00.000Z" }).errors, []);
});
