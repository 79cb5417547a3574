/** The shared texts in two parts: together they are the whole, and the first is enough for every sentence. */
import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { test } from "node:test";
import { install } from "../../pwa/contracts.js";
import { first_of, rest_of, together } from "../../pwa/i18n/shared_parts.js";
import { shared_bundle } from "./shared_bundle.js";
import { SITUATIONS, TABLE, table_of, told } from "./situations.js";

const whole = shared_bundle();

test("both parts together are the whole", () => {
  assert.deepEqual(together(first_of(whole), rest_of(whole)), whole);
});

test("the first part has each answer's field that the Round's words name", () => {
  install(first_of(whole));
  const words = new URL("../../pwa/ui/words/", import.meta.url);
  const named = readdirSync(words).flatMap((file) => [
    ...readFileSync(new URL(file, words), "utf8").matchAll(/output_of\("(\w+)", "(\w+)"\)/g),
  ]);
  assert.ok(named.length > 0);
  for (const [, name, field] of named) {
    const of = (/** @type {typeof whole} */ bundle) => bundle.calc[name].outputs.find((one) => one.name === field);
    assert.deepEqual(of(first_of(whole)), of(whole), `${name}.${field}`);
  }
});

test("the first part says in every situation what the whole says", () => {
  install(first_of(whole));
  const rows = SITUATIONS.map(([name, facts, state, lead]) => ({ name, facts, state, lead, advice: told(facts) }));
  assert.equal(table_of(rows), readFileSync(TABLE, "utf-8"));
});
