/** The view of records: the server's row with this phone's ops folded in, and which of several corrections is shown. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { fold, show } from "../../pwa/data/view.js";
import { some } from "./fixtures.js";
import { row } from "./test_phone.js";

const stamp = (/** @type {number} */ ms, device = "a") => `${1770000000000 + ms}-00000-${device}`;
/** @type {import("./fixtures.js").Some<import("../../pwa/types/contract.js").Kind>} */
const SPEC = { kind: "reading", fields: [] };
/**
 * @param {string} id @param {number} ms @param {string} [supersedes] @param {object} [more]
 * @returns {[string, ReturnType<typeof fold>]}
 */
const made = (id, ms, supersedes, more = {}) => [
  id,
  {
    ...fold({ ...row(1, "reading", id, { value: ms, ...(supersedes ? { supersedes } : {}) }, stamp(ms)), ...more }, []),
  },
];
const seen = (/** @type {ReturnType<typeof made>[]} */ ...records) =>
  show(some(SPEC), new Map(records)).map(({ id }) => id);

test("of two corrections of one reading, made offline on two phones, the later is shown, in either order", () => {
  const both = [made("first", 1), made("ada", 2, "first"), made("bo", 3, "first")];
  assert.deepEqual([seen(...both), seen(...both.toReversed())], [["bo"], ["bo"]]);
  assert.deepEqual(
    seen(...both.slice(0, 2), made("bo", 3, "first", { deleted: stamp(4) })),
    ["ada"],
    "the later taken out, the earlier stands",
  );
  assert.deepEqual(
    seen(made("ada", 2, "first"), made("bo", 2, "first")),
    ["bo"],
    "of the same moment always the same one",
  );
});

test("a cycle of corrections, which no phone writes, does not loop for ever", () => {
  assert.deepEqual(seen(made("a", 1, "b"), made("b", 2, "a")), []);
  assert.deepEqual(seen(made("a", 1, "b", { deleted: stamp(5) }), made("b", 2, "a")), ["b"]);
  assert.deepEqual(seen(made("self", 1, "self")), ["self"]);
});

test("a record's last author is the author of the latest op, here or on the server", () => {
  const server = {
    ...row(1, "tank", "tank-0001", { name: "Sill" }, stamp(1)),
    changed_by: "keeper-b",
    changed_at: new Date(1770000000000 + 500).toISOString(),
  };
  /** @typedef {Parameters<typeof fold>[1][number]} Entry */
  /** @param {number} ms @param {string} by @returns {Entry} */
  const op = (ms, by) =>
    some({
      op: { type: "put", fields: { name: by }, stamp: stamp(ms) },
      by,
      at: `at ${ms}`,
      state: "waiting",
    });
  const by = (/** @type {Entry[]} */ ...entries) => fold(server, entries).meta.changed_by;
  assert.deepEqual(
    [
      by(),
      by(op(400, "ada")),
      by(op(600, "ada")),
      by(op(700, "cy"), op(600, "ada")),
      by(op(600, "ada"), op(700, "cy")),
    ],
    ["keeper-b", "keeper-b", "ada", "cy", "cy"],
  );
});
