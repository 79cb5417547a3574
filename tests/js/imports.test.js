/** The folders of pwa/, and which of them each may import: only those below it. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { globals_of, imports_of, modules } from "./source_of.js";

/** Folders from the bottom up; a library is named by its file. @type {Record<string, string[]>} */
const MAY_IMPORT = {
  calc: [],
  "contracts.js": ["calc"],
  figures: ["calc"],
  i18n: ["calc", "figures"],
  data: [
    "calc",
    "contracts.js",
    "figures",
    "vendor/idb.js",
    "vendor/inflate.js",
    "vendor/papaparse.js",
    "vendor/sha256.js",
  ],
  advice: ["calc", "contracts.js", "figures", "vendor/rrule.js"],
  workers: ["calc", "contracts.js"],
  bench: ["advice", "calc", "contracts.js", "figures"],
  ui: [
    ...["advice", "bench", "calc", "contracts.js", "data", "figures", "i18n", "workers"],
    ...["vendor/jsqr.js", "vendor/preact.js", "vendor/qrcode.js", "vendor/uplot.js"],
  ],
  screens: ["advice", "bench", "calc", "contracts.js", "data", "figures", "i18n", "ui", "vendor/preact.js"],
  places: ["screens"],
  "routes.js": ["places"],
  "oldest.js": [],
  "app.js": [
    "advice",
    "contracts.js",
    "data",
    "i18n",
    "routes.js",
    "ui",
    "vendor/preact.js",
    "vendor/workbox-window.js",
  ],
};
/** The folder a file lies in; a file beside them, or a library, stands for itself. */
const folder_of = (/** @type {string} */ path) => (path.startsWith("vendor/") ? path : path.split("/")[0]);

test("a folder imports only what its line of the table names", () => {
  for (const path of modules()) {
    const allowed = MAY_IMPORT[folder_of(path)];
    assert.ok(allowed, `${path} lies in a folder that the table does not name`);
    for (const other of imports_of(path)) {
      // One screen never imports another; in every other folder the files may import each other.
      if (folder_of(other) === folder_of(path) && folder_of(path) !== "screens") continue;
      assert.ok(allowed.includes(folder_of(other)), `${path} imports ${other}`);
    }
  }
});

test("the table names each folder after those that it imports", () => {
  const folders = Object.keys(MAY_IMPORT);
  for (const [folder, others] of Object.entries(MAY_IMPORT))
    for (const other of others)
      assert.ok(
        other.startsWith("vendor/") || folders.indexOf(other) < folders.indexOf(folder),
        `${folder} and ${other}`,
      );
});

/** What the folders of pure functions may use of the language itself. */
const OF_THE_LANGUAGE = [
  ...["Array", "BigInt", "Boolean", "Date", "Error", "Float64Array", "Infinity", "Int32Array", "Intl", "JSON", "Map"],
  ...["Math", "NaN", "Number", "Object", "RangeError", "RegExp", "Set", "String", "Uint8Array"],
  ...["Uint32Array", "WeakMap", "encodeURIComponent", "undefined", "TextEncoder"],
];

test("advice, bench and the calculations have no worker, storage, network or page", () => {
  for (const path of modules().filter((one) => ["advice", "bench", "calc", "figures"].includes(folder_of(one))))
    for (const name of globals_of(path)) assert.ok(OF_THE_LANGUAGE.includes(name), `${path} uses ${name}`);
});
