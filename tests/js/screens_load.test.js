/**
 * Every screen can be read, and finds in other modules what it takes from them: what no screen's story opens is checked
 * too.
 */
import assert from "node:assert/strict";
import { readdirSync } from "node:fs";
import { test } from "node:test";

const pwa = new URL("../../pwa/", import.meta.url);

test("every screen parses and links with all that it imports", async () => {
  const screens = readdirSync(new URL("screens", pwa)).map((file) => `screens/${file}`);
  for (const path of [...screens, "app.js"]) {
    const wrong = await import(new URL(path, pwa).href).then(
      () => null,
      (error) => error,
    );
    // Read and linked before anything runs; running ends here where a browser is asked for.
    assert.ok(!(wrong instanceof SyntaxError), `${path}: ${wrong?.message}`);
  }
});
