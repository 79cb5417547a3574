/** The script of /check and /trust is plain ES5, so that an old browser can run it and say that it is too old. */
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { parse } from "acorn";

for (const name of ["check.js", "worker.js"])
  test(`${name} is ES5`, () => {
    const source = readFileSync(new URL(`../../server/limnary/pages/${name}`, import.meta.url), "utf8");
    assert.doesNotThrow(() => parse(source, { ecmaVersion: 5 }));
  });
