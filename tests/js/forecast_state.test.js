/** A tank's advice as the screens ask for it, where a large room is not read at once. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { there } from "./fixtures.js";
import { WELCOME, joined_phone, page, row, scripted } from "./test_phone.js";
import { open_cache } from "../../pwa/data/room_cache.js";
import { FishRoom } from "../../pwa/data/fish_room.js";

Object.defineProperty(globalThis, "navigator", { value: { language: "en-GB", onLine: true } });
/** Waiting for such a worker must not keep the process running. */
const wait = globalThis.setTimeout;
Object.assign(globalThis, {
  setTimeout: (/** @type {() => void} */ work, /** @type {number} */ ms) => {
    const timer = wait(work, ms);
    if (ms > 1000) timer.unref();
    return timer;
  },
});
/** A worker that never answers: what the screens say until a forecast comes. */
Object.assign(globalThis, {
  Worker: class {
    postMessage() {}
    terminate() {}
  },
});

const { advice_at_once, advice_for, page_of, read_behind, read_last_advice, stands_on_last } = await import(
  "../../pwa/ui/state/forecast.js"
);
const { shown_of } = await import("../../pwa/ui/tank_shown.js");
const live = await import("../../pwa/ui/state/live.js");
const { belief_store } = await import("../../pwa/data/belief_store.js");

const ROOM = WELCOME.room.id;
const NOW = Date.UTC(2026, 4, 4, 7, 30);
const MANY = 1100;
const TANK = { name: "Moss corner", water_l: 54.2, temperature_c: 24, ph: 7.4, started_at: "2026-01-04T08:00:00.000Z" };
const day = (/** @type {number} */ days) => new Date(NOW - days * 86_400_000).toISOString();
const nitrite = (/** @type {string} */ tank, /** @type {number} */ value, /** @type {number} */ days) => ({
  tank,
  at: day(days),
  parameter: "nitrite",
  value,
  basis: "n",
  kit: "drops",
});

const ARRIVED = { species: "Corydoras", count: 6, change: "arrival" };

/** A large room of two tanks, all well, that this phone holds; more rows come with a pull after `bring`. */
async function large_room() {
  /** @type {import("./test_phone.js").Row[]} */ const rows = ["tank-0000", "tank-0001"].map((id, at) =>
    row(at + 1, "tank", id, TANK),
  );
  for (let at = 0; at < MANY; at++)
    rows.push(
      row(at + 3, "reading", `reading-${String(at).padStart(4, "0")}`, nitrite(`tank-000${at % 2}`, 0, 60 - at / 20)),
    );
  const server = scripted({
    pull: (request) => {
      const since = Number(new URLSearchParams(request.path.split("?")[1]).get("since"));
      return page(
        request,
        rows.filter(({ seq }) => seq > since),
      );
    },
  });
  const { phone, share } = await joined_phone(server);
  await share();
  return { phone, rows, share };
}

test("a tank that is not read yet keeps its last advice, until another keeper's reading of it comes", async () => {
  const { phone, rows, share } = await large_room();
  const whole = new FishRoom(await open_cache(phone, ROOM));
  live.show(whole);
  const at_first = live.all("tank").map((tank) => advice_for(tank).advice);
  assert.ok(at_first.every(({ act }) => act !== "change"));
  while ((await belief_store().last_advice()).length < 2) await new Promise((resolve) => setTimeout(resolve, 5));

  const cache = await open_cache(phone, ROOM, { lazily: true });
  const opened = new FishRoom(cache);
  await read_last_advice(opened);
  live.show(opened);
  const tank = there(opened.get("tank", "tank-0001"));
  const before = there(advice_at_once(tank));
  assert.equal(opened.is_ready("tank-0001"), false, "not read for this");
  assert.equal(before.advice.state, at_first[1].state);
  assert.equal(typeof before.advice.as_of, "number", "it says its age");

  rows.push(row(rows.length + 1, "reading", "reading-bad", nitrite("tank-0001", 4, 0)));
  await share();
  await cache.reread();
  assert.equal(advice_at_once(tank), null, "the old advice no longer holds");
  await opened.ready("tank-0001");
  const after = there(advice_at_once(tank));
  assert.equal(after.advice.act, "change");
  const other = there(advice_at_once(there(opened.get("tank", "tank-0000"))));
  assert.equal(other.advice.state, at_first[0].state, "the other tank's advice still holds");
  assert.equal(opened.is_ready("tank-0000"), false);
});

/** A large room that was looked at before, opened anew. */
async function opened_again() {
  const { phone, rows, share } = await large_room();
  const whole = new FishRoom(await open_cache(phone, ROOM));
  live.show(whole);
  const at_first = live.all("tank").map((tank) => page_of(tank, shown_of));
  while ((await belief_store().last_advice()).filter(({ shown }) => shown).length < 2)
    await new Promise((resolve) => setTimeout(resolve, 5));
  const cache = await open_cache(phone, ROOM, { lazily: true });
  const opened = new FishRoom(cache);
  await read_last_advice(opened);
  live.show(opened);
  return { cache, opened, rows, share, at_first };
}
/** It must not be asked: what was kept has to do. @returns {never} */
const unasked = () => assert.fail("worked out from records that are not read");
/** What is said of a page but for the age of its advice. @param {ReturnType<typeof page_of>} page */
const but_for_age = ({ advice: { as_of, ...advice }, shown }) => structuredClone({ advice, shown });

test("a tank's page stands on what was kept, then on its records, and both say the same", async () => {
  const { opened, at_first } = await opened_again();
  const tank = there(opened.get("tank", "tank-0001"));
  assert.equal(stands_on_last(tank.id), true);
  const kept = page_of(tank, unasked);
  assert.equal(opened.is_ready(tank.id), false, "not read for this");
  assert.equal(typeof kept.advice.as_of, "number", "it says its age");
  assert.deepEqual(but_for_age(kept), but_for_age(at_first[1]));
  assert.equal(kept.shown.latest.length, 1);
  await read_behind(tank.id);
  assert.equal(opened.is_ready(tank.id), true);
  const read = page_of(tank, shown_of);
  assert.equal(read.advice.as_of, undefined);
  assert.deepEqual(but_for_age(read), but_for_age(kept));
  assert.equal(stands_on_last(tank.id), false, "its records are there");
});

test("a tank's page does not stand on what was kept once a record of it came", async () => {
  const { cache, opened, rows, share } = await opened_again();
  rows.push(row(rows.length + 1, "stock_change", "stock-0001", { tank: "tank-0001", at: day(0), ...ARRIVED }));
  await share();
  await cache.reread();
  assert.equal(stands_on_last("tank-0001"), false);
  assert.equal(stands_on_last("tank-0000"), true, "the other tank's page does");
  await opened.ready("tank-0001");
  const { shown } = page_of(there(opened.get("tank", "tank-0001")), shown_of);
  assert.deepEqual(shown.animals, [{ species: ARRIVED.species, count: ARRIVED.count }]);
});

test("what is written while a tank's page stands is shown as soon as the records are read", async () => {
  const { opened } = await opened_again();
  const tank = there(opened.get("tank", "tank-0001"));
  assert.equal(stands_on_last(tank.id), true);
  const fields = { ...nitrite(tank.id, 4, 0), kit: "kit-0001" };
  await opened.write([{ type: "put", kind: "reading", id: "reading-mine", fields }]);
  assert.equal(opened.is_ready(tank.id), false);
  assert.equal(page_of(tank, unasked).shown.latest[0].value, 0, "half of the records would say too much or too little");
  await opened.ready(tank.id);
  const { advice, shown } = page_of(tank, shown_of);
  assert.deepEqual([advice.act, shown.latest[0].value], ["change", 4]);
});
