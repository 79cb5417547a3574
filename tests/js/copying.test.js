/** A copy under way: how far it is, and that the app says after a reload which copy did not come to its end. */
import assert from "node:assert/strict";
import { test } from "node:test";

/** @type {Map<string, string>} */ const kept = new Map();
Object.defineProperty(globalThis, "localStorage", {
  value: {
    getItem: (/** @type {string} */ name) => kept.get(name) ?? null,
    setItem: (/** @type {string} */ name, /** @type {string} */ text) => void kept.set(name, text),
    removeItem: (/** @type {string} */ name) => void kept.delete(name),
  },
});
const { copying, interrupted, under_way } = await import("../../pwa/ui/state/copying.js");

test("while a copy is taken in, how far it is shows; at its end, even a bad one, nothing is left to say", async () => {
  /** @type {unknown[]} */ const seen = [];
  await copying(
    "taking_in",
    async (told) => {
      told(100, 250);
      seen.push(under_way.value, interrupted());
    },
    "room.zip",
  );
  assert.deepEqual(seen, [{ work: "taking_in", count: 100, total: 250 }, ""]);
  const bad = copying("taking_in", () => Promise.reject(new RangeError("damaged")), "room.zip");
  await assert.rejects(bad, RangeError);
  assert.deepEqual([under_way.value, interrupted()], [null, ""]);
});

test("a copy whose taking in was cut off by a reload is named afterwards; one that was being made is not", async () => {
  void copying("taking_in", () => new Promise(() => {}), "cellar.zip");
  assert.equal(kept.get("limnary.draft.taking_in"), '"cellar.zip"');
  under_way.value = null;
  assert.equal(interrupted(), "cellar.zip", "as after a reload: the draft is there, the work is not");
  await copying("making", async () => "done");
  assert.equal(interrupted(), "cellar.zip");
});
