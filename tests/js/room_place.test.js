/**
 * The Room place without its screen: refusals in words, who may do what, what a call's failure means, true words of
 * sharing.
 */
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { records } from "../../pwa/contracts.js";
import { Refused, Unreachable } from "../../pwa/data/api.js";
import { open_room, join } from "../../pwa/data/fish_room.js";
import { en } from "../../pwa/i18n/en.js";
import { in_words } from "../../pwa/i18n/shared_texts.js";
import { label_of, value_said } from "../../pwa/advice/sharing/field_said.js";
import { REASONS, refusals } from "../../pwa/advice/sharing/needs_you.js";
import { ROLES, powers } from "../../pwa/advice/sharing/powers.js";
import { refusal } from "../../pwa/data/refusal.js";
import { clocks_differ, sharing_lines } from "../../pwa/advice/sharing/sharing_lines.js";
import { some, there } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";
import { TANK, WELCOME, page, pushed, row, scripted, share, test_phone } from "./test_phone.js";

const WORDS = {
  yes_no: String,
  figure: (/** @type {number} */ value, /** @type {string} */ unit) => `${value} ${unit}`.trim(),
  time: (/** @type {string} */ at) => `the moment ${at}`,
};

/** A helper's phone whose changes of the tank were refused. */
async function refused_phone() {
  const answer = (/** @type {import("./test_phone.js").Op} */ op) =>
    op.kind === "reading"
      ? { op: op.op, status: "ok", stamp: op.stamp, seq: 9 }
      : { op: op.op, status: "forbidden", reason: "role" };
  const server = scripted({
    join: () => ({ status: 201, body: { ...WELCOME, role: "helper" } }),
    pull: (request) => page(request, request.path.includes("since=0") ? [row(5, "tank", "tank-0001", TANK)] : []),
    push: ({ body }) => pushed(body.ops.map(answer)),
  });
  const phone = await test_phone({ send: server.send });
  const id = await join({ secret: "s", keeper_name: "Ada", device_name: "phone" }, phone);
  const { room, cache } = await open_room(id, phone);
  const share_now = () => share(cache);
  await share_now();
  return { phone, room, share: share_now, server };
}

const said = (/** @type {import("../../pwa/data/fish_room.js").FishRoom} */ room) =>
  refusals(room.sharing().needs_you, {
    kinds: records(),
    get: (kind, id) => room.get(/** @type {import("../../pwa/types/records.js").RecordKind} */ (kind), id),
    may: (kind) => room.may(kind),
    ...WORDS,
    held: [],
  });

test("a refused change says what it was, of which tank, and why", async () => {
  const { room, share } = await refused_phone();
  await room.write([
    {
      type: "put",
      kind: "tank",
      id: "tank-0001",
      fields: { name: "Fern corner", water_l: 50, planting: "dense", resting: true },
    },
  ]);
  await share();
  const [one] = said(room);
  assert.deepEqual(
    [one.kind, one.doing, one.name, one.why, one.may_now],
    ["tank", "change", "Fern corner", "role", false],
  );
  assert.deepEqual(one.said, [
    { label: "Name", value: "Fern corner" },
    { label: "Water in it", value: "50 L" },
    { label: "Planting", value: "dense" },
    { label: "Put away", value: "true" },
  ]);
  assert.equal(one.by, "keeper-a");
});

test("a refusal over fields names each by its label, in the server's words", () => {
  const op = {
    op: "op-00001",
    kind: "reading",
    id: "reading-1",
    type: "put",
    fields: { tank: "tank-1", parameter: "ph", value: 99999999, at: "2026-05-04T07:00:00.000Z" },
  };
  const errors = [{ field: "value", message: "must be from -5 to 100000", allowed: "a number" }];
  /** @type {Parameters<typeof refusals>[1]} */
  const room = some({
    kinds: records(),
    get: (/** @type {string} */ kind) => (kind === "tank" ? { name: "Reed pool" } : null),
    may: () => true,
    ...WORDS,
    held: [{ kind: "reading", id: "reading-1" }],
  });
  const [one] = refusals(
    [{ n: 1, op, by: null, at: "2026-05-05T07:00:00.000Z", creates: true, reason: "fields", errors }],
    room,
  );
  assert.deepEqual([one.doing, one.tank, one.at, one.follows], ["new", "Reed pool", "2026-05-04T07:00:00.000Z", 1]);
  assert.deepEqual(one.wrong, [{ label: "Value", message: "must be from -5 to 100000", allowed: "a number" }]);
  assert.deepEqual(one.said[0], { label: "What was measured", value: "pH" });
});

test("a field is said by what it holds, its label without what explains it", () => {
  const of = (/** @type {string} */ kind, /** @type {string} */ name) =>
    records()?.[kind]?.fields.find((field) => field.name === name);
  /** @type {Parameters<typeof value_said>[2]} */
  const words = some({
    ...WORDS,
    get: (/** @type {string} */ kind, /** @type {string} */ id) =>
      kind === "tank" && id === "tank-0001" ? { name: "Reed pool" } : null,
  });
  const said = (/** @type {string} */ kind, /** @type {string} */ name, /** @type {unknown} */ value) =>
    value_said(of(kind, name), value, words);
  assert.deepEqual(
    [
      said("tank", "water_l", 50),
      said("tank", "planting", "dense"),
      said("tank", "resting", true),
      said("task", "tank", "tank-0001"),
      said("task", "starts_at", "2026-05-04T07:00:00.000Z"),
      said("test_kit", "steps", [0, 0.5]),
      said("tank", "place", null),
    ],
    ["50 L", "dense", "true", "Reed pool", "the moment 2026-05-04T07:00:00.000Z", "0, 0.5", "–"],
  );
  assert.deepEqual(
    ["rule", "from_tile"].map((name) => label_of(of("task", name), name)),
    ["Repeats", "The tile its title was picked from"],
  );
  assert.equal(label_of(undefined, "strange"), "strange");
});

test("a refused step of a plan says how far it is in the keeper's own language", () => {
  const german = in_words(
    shared_bundle(),
    JSON.parse(readFileSync(new URL("../../shared_schema/words/de.json", import.meta.url), "utf8")),
  ).records;
  const op = {
    op: "op-00001",
    kind: "tank",
    id: "tank-1",
    type: "put",
    fields: { setup_substrate: { state: "skipped", said: { bed: "plain" } } },
  };
  const [one] = refusals([some({ n: 1, op, reason: "role" })], {
    kinds: german,
    get: () => null,
    may: () => false,
    ...WORDS,
  });
  assert.deepEqual(one.said, [{ label: "Einrichten: der Bodengrund", value: "ausgelassen" }]);
});

test("every reason and every code has its words; a strange reason is quoted", () => {
  for (const reason of [...REASONS, "other"]) assert.ok(`why_not.${reason}` in en, reason);
  const [one] = refusals(
    [some({ n: 1, op: { op: "o", kind: "note", id: "n", type: "del", fields: {} }, reason: "moonlight" })],
    { kinds: records(), get: () => null, may: () => true, ...WORDS },
  );
  assert.deepEqual([one.why, one.reason, one.doing], ["other", "moonlight", "remove"]);
  const codes = [
    "unreachable",
    "server-full",
    "server-failed",
    "signed-out",
    "not-allowed",
    "not-here",
    "conflict",
    "ended",
    "upgrade",
    "too-often",
    "last-owner",
    "invite-spent",
  ];
  for (const code of codes) assert.ok(`refusal.${code}` in en, code);
});

test("discarding an op also discards those that depend on it; its undo puts everything back in place", async () => {
  const { room, share } = await refused_phone();
  const [tank] = await room.write([{ type: "put", kind: "tank", fields: { name: "Sill", water_l: 20 } }]);
  await share();
  await room.write([{ type: "put", kind: "tank", id: tank, fields: { water_l: 21 } }]);
  await room.write([{ type: "put", kind: "tank", id: "tank-0001", fields: { water_l: 50 } }]);
  await share();
  const before = room.sharing();
  assert.deepEqual([before.needs_you.length, before.waiting], [2, 1], "the change of the refused tank is held back");
  const undo = await room.discard([before.needs_you[0].op.op]);
  assert.deepEqual([room.sharing().needs_you.length, room.sharing().waiting, room.get("tank", tank)], [1, 0, null]);
  assert.equal(room.get("tank", "tank-0001")?.water_l, 50, "the other refused change stays");
  await undo();
  assert.deepEqual(room.sharing(), before);
  assert.equal(room.get("tank", tank)?.water_l, 21);
  await undo();
  assert.equal(room.sharing().needs_you.length, 2, "twice undone is once undone");
});

test("the undo of a discard does not double what a kept file has brought back meanwhile", async () => {
  const { room, share } = await refused_phone();
  await room.write([{ type: "put", kind: "tank", id: "tank-0001", fields: { water_l: 50 } }]);
  await share();
  const kept = await room.export_needs_you();
  const undo = await room.discard([room.sharing().needs_you[0].op.op]);
  assert.equal((await room.import(kept)).ops, 1);
  await undo();
  assert.deepEqual([room.sharing().needs_you.length, room.sharing().waiting], [0, 1]);
});

test("only what was refused can be discarded", async () => {
  const { room } = await refused_phone();
  await room.write([{ type: "put", kind: "tank", fields: { name: "Sill", water_l: 20 } }]);
  const { op } = (await room.phone.database.read(["outbox"], (t) => t.outbox.getAll()))[0];
  await room.discard([op.op]);
  assert.equal(room.sharing().waiting, 1);
});

test("an owner may do all but leave the room without an owner; others change only their own membership", () => {
  const people = ROLES.map((role) => ({ id: role, role }));
  const can = (/** @type {string} */ who, /** @type {string} */ whom, all = people) => {
    const {
      self: _self,
      last_owner: _last,
      ...rest
    } = powers(there(all.find((one) => one.id === whom)), {
      people: all,
      me: who,
      role: all.find((one) => one.id === who)?.role,
    });
    return Object.entries(rest).flatMap(([power, has]) => (has ? [power] : []));
  };
  assert.deepEqual(can("owner", "helper"), ["change_role", "hand_over", "remove", "phones"]);
  assert.deepEqual(can("owner", "owner"), ["phones"], "the last owner neither leaves nor steps back");
  const two = [...people, { id: "second", role: "owner" }];
  assert.deepEqual(can("owner", "owner", two), ["change_role", "leave", "phones"]);
  assert.deepEqual(can("owner", "second", two), ["change_role", "remove", "phones"]);
  for (const role of ["keeper", "helper", "viewer"]) {
    assert.deepEqual(can(role, role), ["leave", "phones"]);
    assert.deepEqual(can(role, "owner"), []);
  }
});

test("what a failed call means", () => {
  const refused = (/** @type {number} */ status, /** @type {string} */ type) =>
    new Refused({ status, retry_after_ms: null, body: { type: `/problems/${type}`, title: "In the server's words" } });
  assert.deepEqual(refusal(new Unreachable("no")), { code: "unreachable" });
  assert.deepEqual(refusal(new Unreachable("no", { status: 507 })), { code: "server-full" });
  assert.deepEqual(refusal(new Unreachable("no", { status: 500 })), { code: "server-failed" });
  assert.deepEqual(refusal(refused(401, "key-revoked")), { code: "signed-out" });
  assert.deepEqual(
    [403, 404, 429].map((status) => refusal(refused(status, "x"))),
    [{ code: "not-allowed" }, { code: "not-here" }, { code: "too-often" }],
  );
  assert.deepEqual(refusal(refused(409, "last-owner")), { code: "last-owner" });
  assert.deepEqual(refusal(refused(410, "membership-ended")), { code: "ended" });
  assert.deepEqual(refusal(refused(422, "invalid")), { words: "In the server's words" });
  assert.throws(() => refusal(new TypeError("ours")), TypeError);
});

test("a room is not called shared while anything is left to share", () => {
  const none = {
    waiting: 0,
    sending: 0,
    needs_you: [],
    photos_waiting: 0,
    photos_need_you: 0,
    not_back: 0,
    joined: true,
  };
  const lines = (/** @type {object} */ more) => sharing_lines({ ...none, ...more }).map(({ line }) => line);
  assert.deepEqual(lines({}), ["all_long"]);
  for (const [left, line] of /** @type {[object, string][]} */ ([
    [{ waiting: 1 }, "waiting_long"],
    [{ sending: 1 }, "sending_long"],
    [{ needs_you: [{}] }, "needs_you_long"],
    [{ photos_waiting: 1 }, "photos_waiting"],
    [{ photos_need_you: 1 }, "photos_need_you"],
    [{ not_back: 1 }, "not_back"],
  ])) {
    assert.deepEqual(lines(left), [line]);
  }
  assert.deepEqual(lines({ joined: false, waiting: 3 }), ["only_here"]);
  for (const line of [
    "all_long",
    "only_here",
    "waiting_long",
    "sending_long",
    "needs_you_long",
    "photos_waiting",
    "photos_need_you",
    "not_back",
  ])
    assert.ok(`sharing.${line}` in en, line);
});

test("clocks that differ by minutes are reported, those a moment apart are not", () => {
  const there = Date.parse("2026-05-04T08:00:00.000Z");
  assert.deepEqual(
    [-172_800_000, -360_000, -60_000, 0, 60_000, 360_000].map((ms) => clocks_differ(there + ms, there)),
    [true, true, false, false, false, true],
  );
});
