/** Every situation has its state and its leading finding, and the table of sentences is up to date. */
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { URGENCIES, invites } from "../../pwa/advice/findings.js";
import { NOW, SITUATIONS, TABLE, also, table_of, told } from "./situations.js";

const rows = SITUATIONS.map(([name, facts, state, lead]) => ({ name, facts, state, lead, advice: told(facts) }));

test("each situation has its state and what leads its sentence", () => {
  for (const { name, advice, state, lead } of rows)
    assert.deepEqual([name, advice.state, advice.findings[0]?.code], [name, state, lead]);
});

test("the table of sentences is up to date (node tests/js/situations.js writes it)", () => {
  assert.equal(readFileSync(TABLE, "utf-8"), table_of(rows));
});

test("in every situation: the worst leads, at most half is changed, and only a steady tank invites animals", () => {
  for (const { name, facts, advice } of rows) {
    const order = advice.findings.map(({ urgency }) => URGENCIES.indexOf(urgency));
    assert.deepEqual(order, order.toSorted(), name);
    const steady = advice.state === "steady";
    assert.equal(advice.state, advice.findings[0]?.urgency ?? "steady", name);
    assert.equal(invites(advice), steady, name);
    assert.ok((advice.litres ?? 0) <= facts.tank.water_l / 2, name);
    assert.ok(!also(advice, NOW).includes("undefined"), name);
  }
});

test("no reading over its limit, and none that rises over three tests, leaves a tank with animals steady", () => {
  for (const { name, facts, advice } of rows) {
    if (advice.reasons.some(({ code }) => code === "no_animals")) continue;
    for (const parameter of /** @type {const} */ (["total_ammonia", "nitrite"])) {
      const { read_mg_n_l, limit_mg_n_l } = advice.levels[parameter];
      if ((read_mg_n_l ?? 0) > limit_mg_n_l) assert.notEqual(advice.state, "steady", name);
    }
    assert.ok(facts.readings.length > 0 || advice.act === "test", name);
  }
});
