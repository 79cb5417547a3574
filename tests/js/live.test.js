/** Screens tell times by the records' clock: a phone whose own clock is wrong shows a new record as just made. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { some } from "./fixtures.js";

globalThis.navigator ??= /** @type {any} */ ({ onLine: true });
const { now, show } = await import("../../pwa/ui/state/live.js");

test("now follows the room's clock when it opens and with each change", () => {
  /** @type {() => void} */ let changed = () => {};
  let at = "2026-05-04T08:00:00.000Z";
  show(
    some({
      now: () => at,
      on_change: (/** @type {() => void} */ listener) => {
        changed = listener;
        return () => {};
      },
    }),
  );
  assert.equal(new Date(now.value).toISOString(), at);
  at = "2026-05-06T08:00:01.000Z";
  changed();
  assert.equal(new Date(now.value).toISOString(), at);
});
