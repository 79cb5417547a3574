/** Asking the belief: resumed answers equal fresh ones, one question a tank at a time, failures said and retried. */
import "fake-indexeddb/auto";
import assert from "node:assert/strict";
import { test } from "node:test";
import { belief_store } from "../../pwa/data/belief_store.js";
import { belief_worker } from "../../pwa/workers/asking.js";
import { forecasts } from "../../pwa/advice/forecast/answers.js";
import { ask_of } from "../../pwa/advice/forecast/questions.js";
import { today } from "../../pwa/advice/today.js";
import { install } from "../../pwa/contracts.js";
import { as_facts, some, there, view } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";
import { a_worker } from "./worker_here.js";

const shared = shared_bundle();
install(shared);

const HOUR = 3_600_000;
const START = Date.parse("2026-03-02T07:00:00.000Z");
const DAYS = 20;
const at = (/** @type {number} */ hours) => new Date(START + hours * HOUR).toISOString();
const STEPS = [0, 0.1, 0.25, 0.5, 1, 2.5];
const TAP = view("source_water", { id: "tap-water-1", disinfectant: "none", nitrate_mg_n_l: 2 });

/** @typedef {import("../../pwa/types/advice.js").Facts} Facts */
/** @typedef {import("./fixtures.js").Some<Pick<Facts, "readings" | "changes" | "feedings" | "doses">>} Records */
/**
 * A tank's facts after so many days of a test each morning, a change every third day, food each evening.
 * @param {number} days @param {(records: Required<Records>) => Records} [alter]
 */
function diary(days, alter = (records) => records) {
  const test = (/** @type {number} */ day) =>
    /** @type {const} */ ([
      { parameter: "total_ammonia", value: STEPS[day < 8 ? 2 : 1] },
      { parameter: "nitrite", value: STEPS[Math.min(4, Math.floor(day / 4))] },
      { parameter: "ph", value: 7.2 + 0.1 * (day % 3) },
    ]).map((one) =>
      view("reading", {
        id: `reading-${day}-${one.parameter}`,
        at: at(day * 24 + 2),
        basis: "ion",
        ...(one.parameter === "ph" ? {} : { steps: STEPS }),
        ...one,
      }),
    );
  /** @template T @param {(day: number) => T[]} make */
  const days_of = (make) => Array.from({ length: days }, (_, day) => make(day)).flat();
  const records = alter({
    readings: days_of(test),
    changes: days_of((day) =>
      day % 3 === 2 ? [{ id: `change-${day}`, at: at(day * 24 + 3), litres: 25, fraction: 0.25, source: TAP }] : [],
    ),
    feedings: days_of((day) => [{ id: `feeding-${day}`, at: at(day * 24 + 12), feed_g: 0.2 }]),
    doses: [],
  });
  const tank = view("tank", {
    id: "tank-one-1",
    water_l: 100,
    started_at: at(0),
    temperature_c: 24,
    ph: 7.3,
    feed_g_day: 0.2,
    planting: "light",
    seeded: "none",
  });
  return as_facts({ now: START + (days * 24 - 6) * HOUR, tank, source: TAP, label: null, ...records });
}

/** @typedef {Parameters<typeof forecasts>[0]} How */
/** @type {Pick<How, "load" | "save">} */
const nothing_stored = { load: async () => undefined, save: async () => {} };
const asked_of = (/** @type {Facts} */ facts) => ask_of(facts, today(facts));
const questions_of = (/** @type {Facts} */ facts) => {
  const { questions, further } = asked_of(facts);
  return [...questions, ...further];
};

/**
 * Wait for every answer.
 * @param {ReturnType<typeof forecasts>} board @param {() => Promise<unknown>} changes @param {Facts} facts
 */
async function settled(board, changes, facts) {
  for (;;) {
    const now = board.of(facts.tank.id, questions_of(facts));
    if (now.state !== "working") return now;
    await changes();
  }
}

/** @param {How["ask"]} ask @param {Pick<How, "load" | "save">} [store] */
function phone(ask, store = nothing_stored) {
  let wake = () => {};
  const board = forecasts({ ask, load: store.load, save: store.save, changed: () => wake() });
  const changes = () => new Promise((done) => (wake = () => done(null)));
  return { board, answers: (/** @type {Facts} */ facts) => settled(board, changes, facts) };
}
const asker = async () => {
  const worker = await a_worker();
  return { worker, ask: belief_worker({ start: () => worker, shared: async () => shared }) };
};

test("answers resumed from the stored belief equal those worked out from the start", async () => {
  const store = belief_store("resume");
  const first = await asker();
  await phone(first.ask, store).answers(diary(DAYS));

  const again = await asker();
  const resumed = await phone(again.ask, store).answers(diary(DAYS + 1));
  assert.ok(again.worker.posts[1].kept, "a new worker is given the stored belief");
  assert.ok(
    again.worker.posts.slice(2).every((post) => !post.kept),
    "and only once",
  );
  const fresh = await phone((await asker()).ask).answers(diary(DAYS + 1));
  assert.equal(resumed.state, "ready");
  assert.deepEqual(resumed.answers, fresh.answers);
  await store.close();
});

test("an older record that is altered, removed or arrives late makes the belief start over", async () => {
  const store = belief_store("altered");
  const held = phone((await asker()).ask, store);
  const before = await held.answers(diary(DAYS));
  /** @type {NonNullable<Parameters<typeof diary>[1]>[]} */
  const alterations = [
    (records) => ({
      ...records,
      readings: records.readings.map((one) => (one.id === "reading-15-nitrite" ? { ...one, value: 0 } : one)),
    }),
    (records) => ({ ...records, changes: records.changes.slice(1) }),
    (records) => ({
      ...records,
      changes: [...records.changes, { id: "late", at: at(30), litres: 50, fraction: 0.5, source: TAP }],
    }),
  ];
  for (const alter of alterations) {
    const after = await held.answers(diary(DAYS, alter));
    const fresh = await phone((await asker()).ask).answers(diary(DAYS, alter));
    assert.deepEqual(after.answers, fresh.answers);
    assert.notDeepEqual(after.answers, before.answers);
  }
  await store.close();
});

test("an hour later the old answer stands until the new one is there; a new record drops it at once", async () => {
  const { board, answers } = phone((await asker()).ask);
  const facts = diary(DAYS);
  const before = await answers(facts);
  const later = { ...facts, now: facts.now + HOUR };
  assert.deepEqual(board.of(facts.tank.id, questions_of(later)), before);
  const changed = diary(DAYS, (records) => ({
    ...records,
    changes: [...records.changes, { id: "now", at: at(DAYS * 24 - 7), litres: 50, fraction: 0.5, source: TAP }],
  }));
  assert.equal(board.of(facts.tank.id, questions_of(changed)).state, "working");
  assert.deepEqual(board.of(facts.tank.id, questions_of(changed)).answers, {});
});

test("one question of a tank is worked on at a time, whatever else is asked, and the last records win", async () => {
  let under_way = 0;
  let most = 0;
  /** @type {number[]} how many readings each question has */ const asked = [];
  /** @type {How["ask"]} */
  const ask = async ({ input }) => {
    const count = there(input.readings).length;
    most = Math.max(most, ++under_way);
    asked.push(count);
    await new Promise((done) => setTimeout(done, 5));
    under_way -= 1;
    return { answer: { of: count } };
  };
  const { board, answers } = phone(ask);
  for (const days of [5, 6, 7, 8]) board.of("tank-one-1", questions_of(diary(days)));
  const last = await answers(diary(8));
  assert.equal(most, 1);
  for (const one of Object.values(last.answers)) assert.deepEqual(one, { of: 8 * 3 });
  assert.deepEqual([...new Set(asked)], [15, 24], "what was asked in between is skipped");
});

/** @typedef {{shared?: unknown, ask?: unknown}} Post */
/** The part of a worker that asking.js uses. @param {(post: Post) => void} postMessage what it does when told */
function some_worker(postMessage) {
  const worker = {
    /** @type {((event: {data: object}) => void) | null} */ onmessage: null,
    /** @type {((event: {message: string}) => void) | null} */ onerror: null,
    over: false,
    terminate() {
      worker.over = true;
    },
    postMessage,
  };
  return worker;
}
/** @param {ReturnType<typeof some_worker>} worker */
const as_worker = (worker) => /** @type {Worker} */ (/** @type {unknown} */ (worker));

test("a worker that fails or never answers is reported, ended, and started again for the next record", async () => {
  let mood = "silent";
  /** @type {{over: boolean}[]} */ const made = [];
  const start = () => {
    const worker = some_worker(({ shared: bundle, ask }) => {
      if (bundle || mood === "silent") return;
      setTimeout(() =>
        mood === "broken"
          ? worker.onerror?.({ message: "out of memory" })
          : worker.onmessage?.({ data: { ask, answer: { ask } } }),
      );
    });
    made.push(worker);
    return as_worker(worker);
  };
  const { answers } = phone(belief_worker({ start, shared: async () => shared, patience_ms: 20 }));
  const silent = await answers(diary(4));
  assert.deepEqual([silent.state, silent.problem, made[0].over], ["failed", "The forecast took too long.", true]);
  mood = "broken";
  const broken = await answers(diary(5));
  assert.deepEqual([broken.state, broken.problem], ["failed", "out of memory"]);
  mood = "well";
  assert.equal((await answers(diary(6))).state, "ready");
  assert.ok(made.slice(0, -1).every((worker) => worker.over) && !there(made.at(-1)).over);
});

test("a worker that could not start is started again at the next question", async () => {
  let tries = 0;
  const ask = belief_worker({
    start: worker,
    shared: async () => (tries++ ? shared : Promise.reject(new Error("no signal"))),
  });
  await assert.rejects(ask(some({})), /no signal/);
  assert.equal((await ask(some({}))).answer, 1);

  /** One that answers 1 to everything. */
  function worker() {
    const made = some_worker(({ ask: question }) => {
      if (question) setTimeout(() => made.onmessage?.({ data: { ask: question, answer: 1 } }));
    });
    return as_worker(made);
  }
});

test("sixty beliefs are kept, those not looked at for longest go first", async () => {
  const store = belief_store("many");
  for (let tank = 0; tank <= 60; tank++)
    await store.save(`tank-${tank}`, some({ tank: `${tank}` }), 1000 + (tank === 0 ? 500 : tank));
  const kept = await Promise.all([0, 1, 2, 60].map(async (tank) => Boolean(await store.load(`tank-${tank}`))));
  assert.deepEqual(kept, [true, false, true, true]);
  await store.close();
});

test("what the contract refuses is told in its words", async () => {
  const facts = diary(3);
  const { questions } = asked_of(facts);
  const spoilt = questions.map((one) => ({ ...one, input: { ...one.input, risk: 2, horizon_h: 1 } }));
  const { ask } = await asker();
  const { answer, errors } = await ask({ tank_id: "tank-one-1", ...spoilt[0] });
  assert.equal(answer, undefined);
  assert.match(
    there(errors)
      .map((one) => one.field)
      .join(),
    /risk/,
  );
});

test("a stored belief of other constants is not resumed", async () => {
  const store = belief_store("constants");
  await store.save("tank-one-1", some({ tank: "one", applied: [], belief: {} }));
  assert.ok(await store.load("tank-one-1"));
  const other = structuredClone(shared);
  other.tables.constants.groups.belief_walk.values.walk_capacity.value *= 2;
  install(other);
  assert.equal(await store.load("tank-one-1"), undefined);
  install(shared);
  assert.ok(await store.load("tank-one-1"));
  await store.close();
});

test("beliefs of tanks that this phone no longer holds are deleted", async () => {
  const store = belief_store("rooms");
  for (const tank of ["tank-one-1", "tank-two-2"]) await store.save(tank, some({ tank, applied: [], belief: {} }));
  await store.keep_only(["tank-two-2"]);
  assert.deepEqual([Boolean(await store.load("tank-one-1")), Boolean(await store.load("tank-two-2"))], [false, true]);
  await store.close();
});
