/** What was caught is said in words; what is no refusal never shows its own message. */
import assert from "node:assert/strict";
import { mock, test } from "node:test";
import { Refused, Unreachable } from "../../pwa/data/api.js";
import { NotSaved } from "../../pwa/data/fish_room.js";
import { InvalidInput } from "../../pwa/contracts.js";
import { choose } from "../../pwa/i18n/words.js";
import { some } from "./fixtures.js";

globalThis.navigator ??= /** @type {any} */ ({ onLine: true, language: "en-GB" });
const { trouble_said } = await import("../../pwa/ui/words/trouble_said.js");

const RAW = "cannot read properties of nothing";
const refused = (/** @type {number} */ status) =>
  new Refused(/** @type {any} */ ({ status, body: { detail: "the server's own words" }, retry_after_ms: null }));

test("a refusal is said in its own words", async () => {
  await choose(["en-GB"]);
  const wrong = new InvalidInput([{ field: "amount", message: "is needed", allowed: "a number" }]);
  assert.equal(
    trouble_said(wrong, [some({ name: "amount", label: "Amount" })]),
    "Amount is needed. Allowed: a number.",
  );
  assert.match(trouble_said(new NotSaved("no-space", null)), /no room left/);
  assert.match(trouble_said(new Unreachable("no signal")), /no signal|server/i);
  assert.match(trouble_said(refused(403)), /role/);
  assert.equal(trouble_said(refused(422)), "the server's own words");
});

test("anything else is said plainly in the phone's language, and its message goes to the console", async () => {
  const logged = mock.method(console, "error", () => {});
  const fault = new TypeError(RAW);
  for (const [locale, words] of /** @type {const} */ ([
    ["en-GB", /^Something went wrong inside the app/],
    ["de-DE", /^In der App ist etwas schiefgegangen/],
    ["fr-FR", /^Quelque chose s’est mal passé/],
  ])) {
    await choose([locale]);
    const said = trouble_said(fault);
    assert.match(said, words);
    assert.ok(!said.includes(RAW), said);
    assert.equal(logged.mock.calls.at(-1)?.arguments[0], fault);
  }
});
