/**
 * A form that records: once, whole or not at all; what is typed stays until then, and each refusal is said in words.
 */
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { InvalidInput } from "../../pwa/contracts.js";
import { NotSaved } from "../../pwa/data/fish_room.js";
import { choose, t } from "../../pwa/i18n/words.js";
import { signal } from "../../pwa/vendor/preact.js";

/** @type {Map<string, string>} what the phone's storage holds */
const stored = new Map();
const visited = /** @type {string[]} */ ([]);
const browser = {
  navigator: { onLine: true, language: "en-GB" },
  location: { pathname: "/tank/1/note", search: "", hash: "" },
  history: { state: null, replaceState: (/** @type {unknown} */ _, __ = "", to = "") => visited.push(to) },
  localStorage: {
    getItem: (/** @type {string} */ name) => stored.get(name) ?? null,
    setItem: (/** @type {string} */ name, /** @type {string} */ text) => stored.set(name, text),
    removeItem: (/** @type {string} */ name) => stored.delete(name),
  },
};
for (const [name, value] of Object.entries(browser))
  Object.defineProperty(globalThis, name, { value, configurable: true, writable: true });
await choose(["en-GB"]);
const { form_draft } = await import("../../pwa/ui/state/draft.js");
const { room } = await import("../../pwa/ui/state/live.js");
const { close_note, just_done } = await import("../../pwa/ui/state/record.js");
const { record_form } = await import("../../pwa/ui/state/record_form.js");

const KEPT = "limnary.draft.note.1";
/** @type {unknown[][]} */ let written = [];
/** @type {() => Promise<void>} */ let phone;

beforeEach(() => {
  written = [];
  visited.length = 0;
  stored.clear();
  close_note();
  phone = async () => {};
  room.value = /** @type {typeof room.value} */ (
    /** @type {unknown} */ ({
      get: () => null,
      write: async (/** @type {unknown[]} */ writes) => {
        await phone();
        written.push(writes);
      },
    })
  );
});

/** A form with something typed, and what one tap on its button does. */
function typed() {
  const form = record_form("note.1", {
    draft: form_draft("note.1", () => ({ text: "" })),
    errors: signal(/** @type {import("../../pwa/contracts.js").FieldError[]} */ ([])),
    problem: signal(""),
    tried: signal(false),
  });
  form.set({ text: "clear water" });
  const { text } = form.draft.value;
  /** @type {import("../../pwa/ui/state/record_form.js").Entry} */
  const entry = { writes: [{ type: "put", kind: "note", id: "n1", fields: { text } }], said: "saved", to: "/tank/1" };
  return { form, entry };
}

test("a form records once however often it is tapped, forgets its draft, offers the undo and goes on", async () => {
  const { form, entry } = typed();
  assert.ok(stored.has(KEPT));
  await Promise.all([form.save(() => entry), form.save(() => entry), form.save(() => entry)]);
  assert.deepEqual(written, [entry.writes]);
  assert.equal(stored.has(KEPT), false);
  assert.equal(just_done.value?.said, "saved");
  assert.ok(just_done.value?.undo);
  assert.deepEqual(visited, ["/tank/1"]);
});

test("a refused field is said by its name, and nothing typed is lost", async () => {
  const { form, entry } = typed();
  const error = { field: "text", message: "is too long", allowed: "at most 5,000 characters" };
  phone = async () => Promise.reject(new InvalidInput([error]));
  await form.save(() => entry);
  assert.deepEqual([form.errors.value, form.problem.value], [[error], ""]);
  assert.deepEqual([form.draft.value.text, stored.has(KEPT), visited], ["clear water", true, []]);
  form.set({ text: "clear" });
  assert.deepEqual(form.errors.value, [], "typing on takes the refusal away");
});

test("a phone that takes nothing says so in its note, and nothing typed is lost", async () => {
  const { form, entry } = typed();
  phone = async () => Promise.reject(new NotSaved("no-space", null));
  await form.save(() => entry);
  assert.equal(just_done.value?.said, t("not_saved.no-space"));
  assert.deepEqual([form.draft.value.text, stored.has(KEPT), visited], ["clear water", true, []]);
});

test("a fault of the app is told in plain words, not by its message, and nothing typed is lost", async (on) => {
  on.mock.method(console, "error", () => {});
  const { form } = typed();
  await form.save(() => {
    throw new TypeError("fields is undefined");
  });
  assert.equal(form.problem.value, t("trouble.unexpected"));
  assert.deepEqual([form.draft.value.text, stored.has(KEPT), visited], ["clear water", true, []]);
});

test("a form that changed nothing records nothing and goes on", async () => {
  const { form, entry } = typed();
  await form.save(() => ({ ...entry, writes: [] }));
  assert.deepEqual([written, just_done.value, visited], [[], null, ["/tank/1"]]);
});
