/** The shared texts in two parts: together they are the whole, and the first is enough for every sentence. */
import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { test } from "node:test";
import { install } from "../../pwa/contracts.js";
import { LATER, first_of, rest_of, together } from "../../pwa/i18n/shared_parts.js";
import { shared_bundle } from "./shared_bundle.js";
import { SITUATIONS, TABLE, table_of, told } from "./situations.js";
import { heads_of, modules, nodes, tree_of } from "./source_of.js";

const whole = shared_bundle();

test("both parts together are the whole, but for what kinds and tables are for, which no page says", () => {
  const quiet = (/** @type {object} */ of) =>
    Object.fromEntries(Object.entries(of).map(([name, one]) => [name, { ...one, purpose: "" }]));
  const said = { ...whole, records: quiet(whole.records), tables: quiet(whole.tables) };
  assert.deepEqual(together(first_of(whole), rest_of(whole)), said);
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

test("nothing that the Round fetches names a calculation whose contract comes later", () => {
  const fetched = new Set(["app.js", "places/round.js", ...modules().filter((path) => path.startsWith("workers/"))]);
  for (const path of fetched) for (const other of heads_of(path)) fetched.add(other);
  assert.ok(fetched.size > 100);
  for (const name of LATER) assert.ok(whole.calc[name], name);
  const own = [...fetched].filter((path) => !/^(calc|i18n|vendor)\//.test(path));
  for (const path of own)
    for (const { node, held } of nodes(tree_of(path))) {
      const said = node.type === "Literal" ? node.value : held === "property" ? node.name : null;
      assert.ok(!LATER.includes(said), `${path} names ${said}`);
    }
});

test("the first part says in every situation what the whole says", () => {
  install(first_of(whole));
  const rows = SITUATIONS.map(([name, facts, state, lead]) => ({ name, facts, state, lead, advice: told(facts) }));
  assert.equal(table_of(rows), readFileSync(TABLE, "utf-8"));
});
