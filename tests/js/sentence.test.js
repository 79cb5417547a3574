/** Reasons in words: whole sentences, each figure with the name of what it measures. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { install } from "../../pwa/contracts.js";
import { choose } from "../../pwa/i18n/words.js";
import { some } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

globalThis.navigator ??= /** @type {any} */ ({ language: "en-GB", onLine: true });
const { reason } = await import("../../pwa/ui/words/sentence.js");
install(shared_bundle());
const NOW = Date.parse("2026-05-04T08:00:00.000Z");

test("a record that is not counted is named by what it measured, and the sentence ends once", async () => {
  /** @type {import("../../pwa/types/advice.js").LeftOut} */
  const first = some({
    at: "2026-05-04T06:00:00.000Z",
    parameter: "ph",
    message: "must be from 4 to 10",
    allowed: "a number from 4 to 10",
  });
  /** @type {[string, RegExp][]} */
  const ends = [
    ["en-GB", /: pH must be from 4 to 10\. Allowed: a number from 4 to 10\.$/],
    ["de-DE", /: pH .*[^.]\.$/],
    ["fr-FR", /pH .*[^.]\.$/],
  ];
  for (const [locale, end] of ends) {
    await choose([locale]);
    assert.match(reason({ code: "left_out", count: 1, first }, NOW), end, locale);
  }
});

test("a chance reads as a sentence at either end of the scale", async () => {
  await choose(["en-GB"]);
  assert.equal(
    reason({ code: "after_not_enough", chance: 0.99 }, NOW),
    "Even then, the chance of passing a limit before the next test is over 95\u00a0%.",
  );
  assert.equal(
    reason({ code: "after_not_enough", chance: 0.17 }, NOW),
    "Even then, the chance of passing a limit before the next test is about 1 in 6.",
  );
});
