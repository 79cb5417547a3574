/** A phone that cannot save says so in the keeper's language, and keeps the entry until it can be saved. */
import assert from "node:assert/strict";
import { afterEach, mock, test } from "node:test";
import { NotSaved } from "../../pwa/data/fish_room.js";
import { choose } from "../../pwa/i18n/words.js";
import { some } from "./fixtures.js";

globalThis.navigator ??= /** @type {any} */ ({ onLine: true, language: "en-GB" });
mock.timers.enable({ apis: ["setTimeout"] });
const { room } = await import("../../pwa/ui/state/live.js");
const { close_note, just_done, record, undo } = await import("../../pwa/ui/state/record.js");

const WRITE = /** @type {any} */ ({ type: "put", kind: "note", id: "note-0001", fields: { text: "clear" } });
const full = async () => Promise.reject(new NotSaved("no-space", null));
afterEach(close_note);

test("a full phone is said in the language of the words, and the form hears that nothing was recorded", async () => {
  await choose(["de-DE"]);
  room.value = some({ get: () => null, write: full });
  assert.equal(await record([WRITE], "saved"), false);
  assert.match(just_done.value?.said ?? "", /kein Platz mehr.*nicht gespeichert/);
  assert.equal(just_done.value?.undo, null);
  mock.timers.tick(60_000);
  assert.ok(just_done.value, "it stays until it is closed");
});

test("an undo that the phone could not store stays on offer", async () => {
  await choose(["en-GB"]);
  /** @type {unknown[]} */ const written = [];
  let broken = false;
  room.value = some({
    get: () => null,
    write: async (/** @type {unknown} */ writes) => (broken ? full() : [String(written.push(writes))]),
  });
  assert.equal(await record([WRITE], "saved"), true);
  broken = true;
  await undo();
  assert.match(just_done.value?.said ?? "", /not saved/);
  broken = false;
  await undo();
  assert.deepEqual(written.at(-1), [{ type: "del", kind: "note", id: "note-0001" }]);
  assert.equal(just_done.value, null);
});

test("an error that is not the storage's reaches the caller", async () => {
  room.value = some({ get: () => null, write: async () => Promise.reject(new RangeError("no such kind")) });
  await assert.rejects(record([WRITE], "saved"), RangeError);
  assert.equal(just_done.value, null);
});

test("an undo that fails by a fault of the app is said in plain words and stays on offer", async () => {
  mock.method(console, "error", () => {});
  let broken = false;
  room.value = some({
    get: () => null,
    write: async () => (broken ? Promise.reject(new RangeError("no such kind")) : []),
  });
  await record([WRITE], "saved");
  broken = true;
  await undo();
  assert.match(just_done.value?.said ?? "", /^Something went wrong inside the app/);
  assert.ok(just_done.value?.undo);
});

test("an undo is on offer for twelve seconds", async () => {
  room.value = /** @type {any} */ ({ get: () => null, write: async () => {} });
  assert.equal(await record([WRITE], "saved"), true);
  mock.timers.tick(11_999);
  assert.ok(just_done.value?.undo);
  mock.timers.tick(1);
  assert.equal(just_done.value, null);
});
