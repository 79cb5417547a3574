/** What a keeper pastes, types or scans to get into a room. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { Refused } from "../../pwa/data/api.js";
import { secret_of, way_in } from "../../pwa/data/way_in.js";

const SECRET = "qT3x-9_bDke0aPz71mVnR4sWc8uYh2Lf";

test("a link, also among the words of a message, a bare secret and a code are told apart", () => {
  for (const text of [
    `https://fish.example/join#${SECRET}`,
    `  https://fish.example:8340/join/#${SECRET}\n`,
    `Join Cellar: http://192.0.2.7:8340/join#${SECRET} until Friday`,
    SECRET,
    ` #${SECRET} `,
  ])
    assert.deepEqual(way_in(text), { secret: SECRET }, text);
  for (const text of ["K7QM-9TXR", " k7qm 9txr ", "k7qm9txr"]) assert.deepEqual(way_in(text), { code: "K7QM9TXR" });
  for (const text of [
    "",
    "   ",
    "K7QM-9TX",
    "K7QM-9TXRA",
    "https://fish.example/join",
    "https://fish.example/join#abc",
  ])
    assert.equal(way_in(text), null, text);
});

test("a code is exchanged for its link's secret; a secret needs no asking", async () => {
  /** @type {import("../../pwa/data/api.js").Outgoing[]} */ const asked = [];
  const phone = {
    send: async (/** @type {import("../../pwa/data/api.js").Outgoing} */ out) => {
      asked.push(out);
      return { status: 200, retry_after_ms: null, body: { secret: SECRET } };
    },
  };
  assert.equal(await secret_of(phone, { secret: "another-secret" }), "another-secret");
  assert.deepEqual(asked, []);
  assert.equal(await secret_of(phone, { code: "K7QM9TXR" }), SECRET);
  assert.deepEqual(asked, [{ method: "POST", path: "/api/v1/join/code", body: { code: "K7QM9TXR" } }]);
});

test("a wrong code is refused as the server refuses it", async () => {
  const answer = { status: 404, retry_after_ms: null, body: { type: "/problems/not-found", title: "No" } };
  await assert.rejects(secret_of({ send: async () => answer }, { code: "AAAAAAAA" }), Refused);
});
