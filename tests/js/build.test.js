/** The built shell: it is what the sources make, and it is small enough for a phone with little signal. */
import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { test } from "node:test";
import { brotliCompressSync, brotliDecompressSync } from "node:zlib";
import { build, is_packed } from "../build.js";

const BUILT = new URL("../../pwa/built/", import.meta.url);
const PWA = new URL("../../pwa/", import.meta.url);
const FIRST_PAGE = { files: 12, bytes: 150_000 };
const STORED = { files: 60, bytes: 450_000 };

const files = await build();
/** @param {string} url */
const content = (url) => files.get(url.replace("/built/", "")) ?? readFileSync(new URL(`.${url}`, PWA));
/** @type {Map<string, number>} */ const sizes = new Map();
/** Bytes as they travel to a phone over HTTPS: those the build has packed beforehand. @param {string[]} urls */
const packed = (urls) =>
  urls.reduce((sum, url) => {
    if (!sizes.has(url)) sizes.set(url, (beforehand(url) ?? brotliCompressSync(content(url))).length);
    return sum + (sizes.get(url) ?? 0);
  }, 0);
/** What the first test finds to be a built file, packed. @param {string} url */
function beforehand(url) {
  const name = url.replace("/built/", "");
  return files.has(name) && is_packed(name) ? readFileSync(new URL(`${name}.br`, BUILT)) : null;
}

/** The list of files in the worker, whose names the build has left without quotes. @param {string} worker */
function listed(worker) {
  const [, text] = /=(\[\{url:"\/index.*?\}\])[,;]/.exec(worker) ?? ["", "[]"];
  /** @type {{url: string, revision: string | null, language?: string}[]} */
  const list = JSON.parse(text.replace(/(?<=[{,])(url|revision|language):/g, '"$1":'));
  return list;
}

test("the build that is kept is the build of these sources (else: node tests/build.js)", () => {
  const packed = [...files.keys()].filter(is_packed);
  assert.deepEqual(readdirSync(BUILT).sort(), [...files.keys(), ...packed.map((name) => `${name}.br`)].sort());
  for (const [name, text] of files) assert.ok(readFileSync(new URL(name, BUILT), "utf8") === text, name);
  for (const name of packed)
    assert.equal(brotliDecompressSync(readFileSync(new URL(`${name}.br`, BUILT))).toString(), files.get(name), name);
});

test(`the first page is at most ${FIRST_PAGE.files} requests and ${FIRST_PAGE.bytes} bytes, packed`, () => {
  const page = content("/built/cover.en.html").toString();
  const asked = [...page.matchAll(/<link rel="([^"]+)"[^>]* href="([^"]+)"|<script[^>]* src="([^"]+)"/g)]
    .filter(([, rel]) => rel !== "apple-touch-icon")
    .map(([, , href, src]) => href ?? src);
  const started = [
    ...content("/oldest.js")
      .toString()
      .matchAll(/new Worker\("([^"]+)"\)/g),
  ].map(([, url]) => url);
  assert.equal(started.length, 1);
  const all = ["/built/cover.en.html", ...asked, ...started];
  assert.ok(asked.some((url) => /shared-first-en/.test(url)) && asked.some((url) => /\/app-/.test(url)));
  assert.ok(all.length <= FIRST_PAGE.files, `${all.length} requests`);
  assert.ok(packed(all) <= FIRST_PAGE.bytes, `${packed(all)} bytes`);
});

test("a first visit shows a cover in its language, without a script; the page that is stored has none", () => {
  const covers = (/** @type {string} */ page) => [...page.matchAll(/<p class="cover" lang="(\w+)">[^<]{60,}<\/p>/g)];
  for (const language of ["en", "de", "fr"]) {
    const first = content(`/built/cover.${language}.html`).toString();
    assert.deepEqual(
      covers(first).map(([, of]) => of),
      [language],
    );
    assert.ok(!/class="cover"[^>]*hidden/.test(first));
    const stored = content(`/built/index.${language}.html`).toString();
    assert.ok(!stored.includes('class="cover"'));
    assert.equal(first.replace(/^.*class="cover".*\n/gm, ""), stored);
  }
});

test("the first page asks for its style before its scripts", () => {
  const page = content("/built/cover.en.html").toString();
  const scripts = [...page.matchAll(/<(?:link rel="(?:modulepreload|preload)"|script type="module")[^>]*>/g)];
  assert.ok(scripts.length > 3);
  for (const [tag] of scripts) assert.match(tag, /fetchpriority="low"/);
});

test("each script of the page is run after those that it imports, for itself", () => {
  const page = content("/built/index.de.html").toString();
  const scripts = [...page.matchAll(/<script type="module" src="\/built\/([^"]+)"/g)].map(([, name]) => name);
  assert.equal(scripts.length, 3);
  for (const [at, name] of scripts.entries())
    for (const [, other] of content(`/built/${name}`)
      .toString()
      .matchAll(/(?:from|import)"\.\/([^"]+)"/g))
      assert.ok(scripts.indexOf(other) < at && scripts.includes(other), `${name} is run before ${other}`);
});

test("no script of the first page is most of it: each holds the phone up while it is run", () => {
  const page = content("/built/index.en.html").toString();
  const scripts = [...page.matchAll(/<script type="module" src="(\/built\/[^"]+)"/g)].map(
    ([, url]) => content(url).length,
  );
  const whole = scripts.reduce((sum, one) => sum + one);
  for (const one of scripts) assert.ok(one < 0.6 * whole, `${one} of ${whole} bytes`);
});

test("the worker stores what the first script starts", () => {
  assert.ok(listed(files.get("sw.js") ?? "").some(({ url }) => url === "/workers/locales.js"));
});

test("the page asks ahead for all that the app imports before it runs", () => {
  const page = content("/built/index.en.html").toString();
  const imported = (/** @type {string} */ url) =>
    [
      ...content(url)
        .toString()
        .matchAll(/(?:from|import)"\.\/([^"]+)"/g),
    ].map(([, name]) => `/built/${name}`);
  const [, app] = /src="(\/built\/app-[^"]+)"/.exec(page) ?? [];
  const found = new Set([app]);
  for (const url of found) for (const other of imported(url)) found.add(other);
  assert.ok(found.size > 2);
  for (const url of found) assert.ok(page.includes(`"${url}"`), url);
});

test(`the worker stores at most ${STORED.files} files and ${STORED.bytes} bytes, packed, in each language`, () => {
  const list = listed(files.get("sw.js") ?? "");
  assert.ok(list.length > 20);
  for (const own of ["en", "de", "fr"]) {
    const stored = list
      .filter(({ language }) => !language || language === own)
      .map(({ url }) => (url === "/index.html" ? `/built/index.${own}.html` : url));
    assert.ok(stored.length <= STORED.files, `${stored.length} files`);
    assert.ok(packed(stored) <= STORED.bytes, `${own}: ${packed(stored)} bytes`);
  }
});
