/** Screens find a caution by its code, never by its place in the contract; each code that they use exists. */
import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { test } from "node:test";
import { caution, cautions_of, install, run } from "../../pwa/contracts.js";
import { shared_bundle } from "./shared_bundle.js";

const PWA = new URL("../../pwa/", import.meta.url);
/**
 * Every use of a caution in the app's own code: [file, contract, code]; `any`, because they come from the code's text.
 * @returns {[string, any, any][]}
 */
function uses() {
  const files = readdirSync(PWA, { recursive: true, encoding: "utf8" }).filter(
    (name) => name.endsWith(".js") && !/^(vendor|built)/.test(name),
  );
  return files.flatMap((name) => {
    const code = readFileSync(new URL(name, PWA), "utf8");
    const one = [...code.matchAll(/caution\("(\w+)", "(\w+)"\)/g)].map(([, contract, asked]) => [contract, asked]);
    const many = [
      ...code.matchAll(/cautions_of\("(\w+)", \[([^\]]*)\]/g),
      ...code.matchAll(/\$\{Calculated\} name="(\w+)"[^/]*?cautions=\$\{\[([^\]]*)\]\}/g),
    ].flatMap(([, contract, list]) => [...list.matchAll(/"(\w+)"/g)].map(([, asked]) => [contract, asked]));
    return [...one, ...many].map(
      ([contract, asked]) => /** @type {ReturnType<typeof uses>[number]} */ ([name, contract, asked]),
    );
  });
}

test("each caution that the app asks for is in its contract", () => {
  install(shared_bundle());
  const found = uses();
  for (const [file, contract, code] of found) assert.doesNotThrow(() => caution(contract, code), file);
  const asked = new Set(found.map(([, contract, code]) => `${contract}.${code}`));
  for (const known of ["compatibility.release", "dechlorinator_dose.no_airing", "dechlorinator_dose.label_first"])
    assert.ok(asked.has(known), `${known} is not seen by this test`);
});

test("a caution keeps its words when its contract lists it in another place", () => {
  const bundle = shared_bundle();
  install(bundle);
  const before = uses().map(([, contract, code]) => caution(contract, code));
  for (const spec of Object.values(bundle.calc)) spec.cautions.reverse();
  const after = uses().map(([, contract, code]) => caution(contract, code));
  assert.deepEqual(after, before);
});

test("only contracts.js and the translation read the list of cautions", () => {
  const readers = readdirSync(PWA, { recursive: true, encoding: "utf8" }).filter(
    (name) => /^(?!built)[^.]+\.js$/.test(name) && /\.cautions\b/.test(readFileSync(new URL(name, PWA), "utf8")),
  );
  assert.deepEqual(readers.sort(), ["contracts.js", "i18n/shared_texts.js"]);
});

test("an unknown code is an error, and an answer carries the texts", () => {
  install(shared_bundle());
  // @ts-expect-error The contract has no such code.
  assert.throws(() => caution("volume", "gone"), RangeError);
  const { cautions } = run("dilution", { before_mg_l: 20, fractions: [0.5] });
  assert.deepEqual(cautions, cautions_of("dilution"));
  assert.deepEqual(cautions_of("volume"), [caution("volume", "floor"), caution("volume", "moving")]);
});
