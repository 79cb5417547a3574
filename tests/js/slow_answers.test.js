/** Slow calculations while the keeper types: only the newest input is answered, alike with a worker and without. */
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { belief_worker } from "../../pwa/workers/asking.js";
import { answer_of, checked_of, found_of, refused_of } from "../../pwa/bench/answer.js";
import { node_of } from "../../pwa/bench/draft.js";
import { away_or_here, newest } from "../../pwa/bench/slow_answers.js";
import { contracts, install, installed } from "../../pwa/contracts.js";
import { in_words } from "../../pwa/i18n/shared_texts.js";
import { there } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";
import { a_worker } from "./worker_here.js";

install(shared_bundle());

const SLOW = ["outlook", "change_plan", "stock_headroom", "oxygen_night", "water_blend"];
const question = (/** @type {string} */ key) => ({ key, name: "outlook", input: { key } });
const turn = () => new Promise((done) => setTimeout(done));
const marks = { decimal: ".", group: "," };
/**
 * A form filled with this input, as one types it.
 * @param {import("../../pwa/types/contract.js").Contract} spec @param {Record<string, unknown>} input
 */
const typed = (spec, input) => ({
  marks,
  draft: {
    typed: Object.fromEntries(
      spec.inputs.filter(({ name }) => name in input).map((field) => [field.name, node_of(field, input[field.name])]),
    ),
  },
});

/** @param {import("../../pwa/bench/slow_answers.js").Found} found */
function answer_in(found) {
  assert.ok("answer" in found);
  return found.answer;
}

/** A board whose answers come when the test lets them. */
function by_hand() {
  /** @type {{key: string, settle: (answer: string) => Promise<unknown>}[]} */ const asked = [];
  /** @type {[string, string][]} */ const told = [];
  const board = newest({
    ask: (one) =>
      /** @type {Promise<{answer: string}>} */
      new Promise((settle) =>
        asked.push({
          key: one.key,
          settle: (answer) => {
            settle({ answer });
            return turn();
          },
        }),
      ),
    told: (one, found) => void told.push([one.key, found.answer]),
  });
  return { board, asked, told, keys: () => asked.map(({ key }) => key) };
}

test("one question at a time; what was typed in between is skipped, and a late answer to it is not told", async () => {
  const { board, asked, told, keys } = by_hand();
  for (const key of ["2", "24", "24.5"]) board.want(question(key));
  assert.deepEqual(keys(), ["2"]);
  await asked[0].settle("of 2");
  assert.deepEqual([keys(), told], [["2", "24.5"], []]);
  await asked[1].settle("of 24.5");
  assert.deepEqual(told, [["24.5", "of 24.5"]]);
});

test("an input typed back to the one under way is asked for once, and its answer counts", async () => {
  const { board, asked, told, keys } = by_hand();
  for (const key of ["5", "50", "5"]) board.want(question(key));
  await asked[0].settle("of 5");
  assert.deepEqual([keys(), told], [["5"], [["5", "of 5"]]]);
});

test("nothing is told of a form that was emptied or left, and the next question is answered", async () => {
  const { board, asked, told } = by_hand();
  board.want(question("5"));
  board.drop();
  await asked[0].settle("of 5");
  assert.deepEqual(told, []);
  board.want(question("6"));
  await asked[1].settle("of 6");
  assert.deepEqual(told, [["6", "of 6"]]);
});

test("a question that breaks does not silence those after it", async () => {
  /** @type {string[]} */ const told = [];
  const board = newest({
    ask: async ({ key }) => (key === "bad" ? Promise.reject(new Error("broke")) : { answer: key }),
    told: (_, found) => void told.push(found.answer),
  });
  const broken = board.want(question("bad"));
  void board.want(question("typed meanwhile"));
  await assert.rejects(broken, /broke/);
  await turn();
  await board.want(question("typed later"));
  assert.deepEqual(told, ["typed meanwhile", "typed later"]);
});

/** An answer that can be told from others. @param {string} said */
const answer_saying = (said) => ({ answer: { said, cautions: [], notes: [], sources: [] } });

const real = async () => {
  const worker = await a_worker();
  /** @type {Worker[]} */ const made = [];
  const ask = belief_worker({
    start: () => {
      made.push(worker);
      return worker;
    },
    shared: async () => installed(),
  });
  return { made, worker, ...away_or_here({ worker: ask, here: () => assert.fail("the worker is there") }) };
};

test("the worker answers each slow calculation as this thread does", async () => {
  const { ask } = await real();
  for (const name of SLOW) {
    const [{ input }] = there(contracts()[name]).examples;
    assert.deepEqual(await ask({ key: "", name, input }), found_of(name, input), name);
  }
});

test("what the worker refuses is said on the form in the same words as without it, in every language", async () => {
  const { ask, worker } = await real();
  const words = (/** @type {string} */ language) =>
    JSON.parse(readFileSync(new URL(`../../shared_schema/words/${language}.json`, import.meta.url), "utf8"));
  for (const bundle of [
    shared_bundle(),
    in_words(shared_bundle(), words("de")),
    in_words(shared_bundle(), words("fr")),
  ]) {
    install(bundle);
    const spec = contracts().outlook;
    const [{ input }] = spec.examples;
    const filling = typed(spec, {
      ...input,
      readings: [{ at_h: Number(input.now_h) + 1, parameter: "nitrite", value: 0.5, basis: "n" }],
    });
    const { payload } = checked_of(spec, filling);
    const found = await ask({ key: "", name: "outlook", input: payload });
    assert.ok("errors" in found);
    const outcome = refused_of(spec, filling, payload, found.errors);
    assert.equal(outcome.wrong[0].message, spec.refusals.reading_after_now.message);
    assert.deepEqual(outcome, answer_of(spec, filling));
  }
  assert.equal(worker.posts.filter(({ shared }) => shared).length, 3, "told each language once");
  install(shared_bundle());
});

test("an input that can be refused before calculating is refused at once, without the worker", () => {
  for (const name of SLOW) {
    const spec = there(contracts()[name]);
    assert.deepEqual(checked_of(spec, { draft: {}, marks }), answer_of(spec, { draft: {}, marks }), name);
  }
});

test("where the worker cannot start this thread answers, and it is not tried again", async () => {
  let tried = 0;
  const { ask, holds_up } = away_or_here({
    worker: async () => Promise.reject(new Error(`no worker ${(tried += 1)}`)),
    here: answer_saying,
  });
  assert.equal(holds_up(), false);
  assert.deepEqual(
    [await ask(question("1")), await ask(question("2")), tried, holds_up()],
    [answer_saying("outlook"), answer_saying("outlook"), 1, true],
  );
});

test("a worker that once answered and then failed is asked again", async () => {
  let well = true;
  const { ask, holds_up } = away_or_here({
    worker: async () => (well ? answer_saying("away") : Promise.reject(new Error("out of memory"))),
    here: () => answer_saying("here"),
  });
  const found = [await ask(question("1"))];
  well = false;
  found.push(await ask(question("2")));
  well = true;
  found.push(await ask(question("3")));
  assert.deepEqual([found.map((one) => answer_in(one).said), holds_up()], [["away", "here", "away"], false]);
});
