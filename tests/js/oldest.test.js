/**
 * The built shell at the level of the oldest browsers: iOS 16.0, Chrome 105, Firefox 115. Checked are the syntax and
 * the names of later APIs and CSS (versions from memory). It cannot see a name that is put together at run time, a
 * method that is called through another name, or an API that is there but behaves otherwise.
 */
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { parse } from "acorn";
import { OLDEST, build } from "../build.js";

/** @typedef {{type: string, [part: string]: any}} Node any: acorn's nodes, read by their type */

const files = await build();
const scripts = [...files].filter(([name]) => name.endsWith(".js"));
const styles = [...files].filter(([name]) => name.endsWith(".css"));
const OLDEST_SCRIPT = readFileSync(new URL("../../pwa/oldest.js", import.meta.url), "utf8");

/** Methods and properties that came later. */
const LATER = [
  ...["toSorted", "toReversed", "toSpliced", "groupBy", "fromAsync", "withResolvers", "isWellFormed", "toWellFormed"],
  ...["symmetricDifference", "isSubsetOf", "isSupersetOf", "isDisjointFrom", "transferToFixedLength"],
  ...["startViewTransition", "showPopover", "togglePopover", "checkVisibility", "requestIdleCallback", "canParse"],
  ...["OffscreenCanvas", "URLPattern", "DurationFormat", "Segmenter", "scheduler", "navigation", "setHTMLUnsafe"],
];
/** Later ones that are asked for before they are used; a screen goes on without them. */
const ASKED_FOR = ["CompressionStream", "DecompressionStream", "wakeLock", "BarcodeDetector"];
const LATER_CSS = [/:has\(/, /\bcolor-mix\(/, /light-dark\(/, /\bsubgrid\b/, /@starting-style/, /@scope\b/];
/** Rules that only place things better where `:has()` is known (Firefox from 121 on). */
const ONLY_PLACES = [
  /^\.act:has\(>:nth-child\(3\)\) \.(main|even)$/,
  /^\.step-row:has\(\.also\)(>\.grow|>output)?$/,
  /^\.page:has\(\.wide\)$/,
  /^\.picture\.large:has\(img\)$/,
  /^\.pictures\.small li:has\(\.absent\)$/,
  /^@supports selector\(:has\(\*\)\)$/,
];

/** Every node below one. @param {Node} node @param {(node: Node) => void} see */
function walk(node, see) {
  see(node);
  for (const part of Object.values(node).flat()) if (typeof part?.type === "string") walk(part, see);
}

/** What a script says that older browsers do not know. @param {string} code */
function later_in(code) {
  /** @type {Set<string>} */ const found = new Set();
  const words = (/** @type {unknown} */ text) => typeof text === "string" && /\(\?<[=!]/.test(text);
  walk(
    /** @type {Node} */ (/** @type {unknown} */ (parse(code, { ecmaVersion: "latest", sourceType: "module" }))),
    (node) => {
      if (node.type === "StaticBlock") found.add("a static block");
      if (node.type === "ImportAttribute") found.add("an import attribute");
      if (node.regex?.flags.includes("v")) found.add(`the flag v of ${node.raw}`);
      if (node.regex ? words(node.regex.pattern) : words(node.value)) found.add(`a look behind: ${node.raw}`);
      const name = node.type === "Identifier" ? node.name : "";
      if (LATER.includes(name)) found.add(name);
      // `with` is also a name of other libraries' methods; of an array it takes two.
      if (node.type === "CallExpression" && node.callee.property?.name === "with" && node.arguments.length === 2)
        found.add("with");
    },
  );
  return [...found];
}

/** The selectors of the later CSS in a stylesheet. @param {string} css */
const later_css_in = (css) =>
  [...css.matchAll(/(?:^|[{};])([^{};]+)\{([^{}]*)/g)]
    .flatMap(([, selectors, body]) => [...selectors.split(","), body])
    .filter((part) => LATER_CSS.some((one) => one.test(part)))
    .filter((part) => !ONLY_PLACES.some((one) => one.test(part.trim())));

test("no built script says what the oldest browsers do not know", () => {
  assert.ok(scripts.length > 20);
  for (const [name, code] of scripts) assert.deepEqual(later_in(code), [], name);
});

test("what may be missing is asked for: at most as often as it was looked at", () => {
  const used = scripts.flatMap(([, code]) => [...code.matchAll(new RegExp(`\\b(${ASKED_FOR.join("|")})\\b`, "g"))]);
  const counts = Object.fromEntries(ASKED_FOR.map((name) => [name, used.filter(([, one]) => one === name).length]));
  assert.deepEqual(counts, { CompressionStream: 2, DecompressionStream: 2, wakeLock: 1, BarcodeDetector: 1 });
});

test("no built stylesheet chooses or paints by what they do not know", () => {
  assert.ok(styles.length > 0);
  for (const [name, css] of styles) {
    assert.deepEqual(later_css_in(css), [], name);
    assert.ok(
      /\.page\{min-height:calc\(100vh .*@supports \(min-height: ?100dvh\)\{\.page\{min-height:calc\(100dvh /s.test(css),
    );
    assert.equal(css.match(/dvh/g)?.length, 2);
  }
});

test("the checks find what they look for", () => {
  for (const code of [
    "x.toSorted()",
    "x?.toReversed()",
    "x.with(1, 2)",
    "/(?<=a)b/",
    'new RegExp("(?<!a)b")',
    "class A { static { 1; } }",
    "/[a--b]/v",
    "Object.groupBy(x, f)",
  ])
    assert.equal(later_in(code).length, 1, code);
  for (const css of [".a:has(.b){color:red}", ".tiles label:has(:checked){color:red}"])
    assert.ok(later_css_in(css).length, css);
  assert.deepEqual(later_css_in(".act:has(>:nth-child(3)) .main{color:red}"), []);
});

test("the first script is one that any browser reads, comes before the app's, and names the same versions", () => {
  parse(OLDEST_SCRIPT, { ecmaVersion: 5, sourceType: "script" });
  for (const language of ["en", "de", "fr"]) {
    const page = files.get(`index.${language}.html`) ?? "";
    assert.ok(page.indexOf("/oldest.js") > 0 && page.indexOf("/oldest.js") < page.indexOf('type="module"'));
  }
  const index = readFileSync(new URL("../../pwa/index.html", import.meta.url), "utf8");
  const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
  assert.deepEqual(OLDEST, ["ios16.0", "chrome105", "firefox115"]);
  for (const text of [OLDEST_SCRIPT, index, readme])
    assert.match(text, /iOS 16\.0, Chrome 105(,| and| or) Firefox 115/);
});
