/** What one keeper picks from tiles is read by another in the other's language; what was typed stands as typed. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { in_words } from "../../pwa/i18n/shared_texts.js";
import { choose, t } from "../../pwa/i18n/words.js";
import { install, record_field } from "../../pwa/contracts.js";
import {
  AMMONIA,
  AMOUNTS,
  CAUSES,
  QUICK,
  TASKS,
  amount_named,
  amount_said,
  ammonia_named,
  cause_named,
  cause_said,
  code_of,
  dosed_said,
  note_said,
  quick_named,
  task_named,
  task_said,
} from "../../pwa/ui/words/tile_words.js";
import { words } from "./languages.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());

/** @type {[string[], (code: string) => string][]} */
const FAMILIES = [
  [CAUSES, cause_named],
  [AMOUNTS, amount_named],
  [QUICK, quick_named],
  [AMMONIA, ammonia_named],
  [TASKS, task_named],
];

test("what is written in one language is said in the other, and found again as its tile", async () => {
  await choose(["de"]);
  const death = { cause: cause_named("age"), cause_code: code_of(CAUSES, cause_named, "Alter") };
  const planted = { amount: amount_named("handful"), amount_code: "handful" };
  const filled = { amount: t("setup.portions_in", { count: 3 }), portions: 3 };
  const note = {
    text: `${quick_named("pearling")}\n${quick_named("young")}\nDrei Stück\nNeue Blätter`,
    quick: ["pearling", "young"],
  };
  assert.deepEqual(
    [death.cause, cause_said(death), amount_said(planted), amount_said(filled)],
    ["Alter", "Alter", "eine Handvoll", "3 Portionen"],
  );
  await choose(["en-GB"]);
  assert.deepEqual(
    [cause_said(death), amount_said(planted), amount_said(filled)],
    ["old age", "a handful", "3 portions"],
  );
  assert.equal(
    note_said(note),
    "Plants pearling\nEggs or young seen\nDrei Stück\nNeue Blätter",
    "only the tiles' own lines",
  );
  await choose(["fr"]);
  assert.deepEqual([cause_said(death), note_said(note).split("\n")[0]], ["vieillesse", "Les plantes perlent"]);
  assert.equal(code_of(CAUSES, cause_named, "Alter"), undefined, "typed words of another language are words");
});

test("what was typed, old records and codes of a later app stand as written", async () => {
  await choose(["de"]);
  assert.deepEqual(
    [
      cause_said({ cause: "old age" }),
      cause_said({ cause: "a cat", cause_code: "pets" }),
      cause_said({ cause: "x", cause_code: "toString" }),
      cause_said({}),
    ],
    ["old age", "a cat", "x", ""],
  );
  assert.deepEqual(
    [
      amount_said({ amount: "two pots" }),
      amount_said({ amount: "a wagon", amount_code: "wagon" }),
      note_said({ text: "All is well\nthere" }),
    ],
    ["two pots", "a wagon", "All is well\nthere"],
  );
  assert.equal(note_said({ text: "short", quick: ["glowing", "well"] }), "short");
  assert.equal(dosed_said({ what: "Tap safe" }), "Tap safe");
});

test("a task's title follows its tile as long as nobody typed another", async () => {
  await choose(["de"]);
  const task = { title: task_named("glass"), from_tile: { code: "glass", words: "Scheiben putzen" } };
  await choose(["en-GB"]);
  assert.deepEqual(
    [task_said(task), task_said({ ...task, title: "Scheiben putzen, vorn" }), task_said({ title: "Scheiben putzen" })],
    ["Wipe the glass", "Scheiben putzen, vorn", "Scheiben putzen"],
  );
});

test("ammonia and salts by their names in this language", async () => {
  await choose(["de"]);
  install(in_words(shared_bundle(), words("de")));
  assert.equal(dosed_said({ what: "household ammonia", what_code: "household_ammonia" }), "Salmiakgeist");
  assert.equal(
    dosed_said({ what: "potassium nitrate", what_code: "potassium_nitrate" }),
    words("de")["potassium nitrate"],
  );
  install(shared_bundle());
});

test("every tile's words are its own, and fit their records", async () => {
  const code = new RegExp(`^(?:${record_field("stock_change", "cause_code").pattern})$`);
  for (const language of ["en-GB", "de", "fr"]) {
    await choose([language]);
    for (const [codes, named] of FAMILIES)
      for (const one of codes)
        assert.ok(code.test(one) && code_of(codes, named, named(one)) === one, `${language} ${one}`);
  }
  assert.ok(QUICK.length <= record_field("note", "quick").max_items);
});
