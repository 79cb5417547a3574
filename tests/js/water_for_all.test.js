/** The water that suits all animals of a plan: a property in which they part is left out, never said as zero. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { install, run } from "../../pwa/contracts.js";
import { choose } from "../../pwa/i18n/words.js";
import { shared_bundle } from "./shared_bundle.js";

globalThis.navigator ??= /** @type {any} */ ({ language: "en-GB", onLine: true });
globalThis.localStorage ??= /** @type {any} */ ({ getItem: () => null, setItem: () => {} });
globalThis.location ??= /** @type {any} */ ({ pathname: "/", search: "", href: "http://localhost/" });
const { water_for_all } = await import("../../pwa/ui/setup/setup_stock.js");
install(shared_bundle());

test("animals whose waters do not meet have no water in common, and none is said", async () => {
  await choose(["en-GB"]);
  const own = (/** @type {string} */ name, /** @type {number} */ low, /** @type {number} */ high) => ({
    name,
    count: 6,
    length_cm: 4,
    temperature_low_c: low,
    temperature_high_c: high,
  });
  const warm = own("warm", 25, 29);
  const apart = run("compatibility", { animals: [warm, own("cool", 14, 20)] });
  assert.equal(apart.temperature_low_c, null);
  assert.equal(water_for_all(apart), "");
  const met = run("compatibility", { animals: [warm, own("mild", 22, 26)] });
  assert.equal(water_for_all(met), "25\u00a0°C to 26\u00a0°C for all");
});
