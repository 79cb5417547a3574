/**
 * A form is half typed when another keeper changes the same record: saving it writes only the fields that were typed.
 */
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { there } from "./fixtures.js";

/** @type {Map<string, string>} */ const kept = new Map();
globalThis.localStorage = {
  getItem: (name) => kept.get(name) ?? null,
  setItem: (name, text) => void kept.set(name, text),
  removeItem: (name) => void kept.delete(name),
  clear: () => kept.clear(),
  key: (at) => [...kept.keys()][at] ?? null,
  get length() {
    return kept.size;
  },
};
const { draft, forget, form_draft, opened_draft } = await import("../../pwa/ui/state/draft.js");
const { changed_fields, changed_meanwhile } = await import("../../pwa/ui/state/changed_fields.js");

beforeEach(() => kept.clear());

test("a value that the form only showed is not written, even if the record says something else now", () => {
  const opened = { name: "Reed bank", place: "hall", note: "by the window" };
  const now = { ...opened, place: "study" };
  const form = { name: "Reed shore", place: "hall", note: null };
  assert.deepEqual(changed_fields(opened, form), { name: "Reed shore", note: null });
  assert.deepEqual(changed_fields(null, now), now, "a new record is written whole");
});

test("the order of names within a value is no change, and neither is an empty field that stays empty", () => {
  assert.deepEqual(changed_fields({ measures: { a: 1, b: 2 } }, { measures: { b: 2, a: 1 }, note: null }), {});
});

test("what another keeper changed since the form was opened is named, among the fields that the form shows", () => {
  const opened = { name: "Reed bank", measures: { a: 1, b: 2 }, note: "by the window", ph: 7 };
  const now = { name: "Reed bank", measures: { b: 2, a: 1 }, place: "study", ph: 7.4, resting: true };
  assert.deepEqual(changed_meanwhile(opened, now, ["name", "measures", "place", "note", "ph"]), [
    "place",
    "note",
    "ph",
  ]);
  assert.deepEqual(changed_meanwhile(opened, opened, Object.keys(opened)), []);
});

test("the record as it was opened is kept with the draft, and goes with it", () => {
  draft("tank.x", () => ({ name: "typed" }));
  draft("tank.x.opened", () => ({ name: "Reed bank" }));
  assert.equal(kept.size, 2);
  assert.deepEqual(draft("tank.x.opened", () => ({ name: "later" })).value, { name: "Reed bank" });
  forget("tank.x");
  assert.equal(kept.size, 0);
  assert.deepEqual(draft("tank.x.opened", () => ({ name: "later" })).value, { name: "later" });
});

test("a form in which nothing was typed opens with its record as it stands now", () => {
  form_draft("away.new", () => ({ from: 1 }));
  assert.deepEqual(opened_draft("task.y", { title: "old" }).value, { title: "old" });
  assert.equal(kept.has("limnary.draft.away.new"), false, "nothing was typed");
  assert.deepEqual(form_draft("away.new", () => ({ from: 30 })).value, { from: 30 });
  assert.deepEqual(opened_draft("task.y", { title: "new" }).value, { title: "new" });
});

test("a form in which something was typed opens as it was left, with the record as it was opened", () => {
  opened_draft("task.z", { title: "old" });
  form_draft("task.z", () => ({ title: "old" })).value = { title: "typed" };
  assert.deepEqual(form_draft("task.z", () => ({ title: "new" })).value, { title: "typed" });
  assert.deepEqual(opened_draft("task.z", { title: "new" }).value, { title: "old" });
  assert.deepEqual(JSON.parse(there(kept.get("limnary.draft.task.z"))), { title: "typed" });
  forget("task.z");
  assert.deepEqual(form_draft("task.z", () => ({ title: "new" })).value, { title: "new" });
});

test("a draft that was read is written only once it changes, also back to what it was", () => {
  const set = localStorage.setItem;
  /** @type {string[]} */ const written = [];
  localStorage.setItem = (_, value) => void written.push(value);
  kept.set("limnary.draft.choice", '"phone"');
  const choice = draft("choice", () => "none");
  assert.equal(choice.value, "phone");
  assert.deepEqual(written, []);
  choice.value = "de";
  choice.value = "phone";
  assert.deepEqual(written, ['"de"', '"phone"']);
  localStorage.setItem = set;
});

test("where the storage is off, typed text lasts as long as the page", () => {
  const set = localStorage.setItem;
  localStorage.setItem = () => {
    throw new Error("off");
  };
  form_draft("note.q", () => ({ text: "" })).value = { text: "typed" };
  assert.deepEqual(form_draft("note.q", () => ({ text: "" })).value, { text: "typed" });
  localStorage.setItem = set;
});
