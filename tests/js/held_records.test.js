/** Records in memory say the same as a full read, whatever happened to them. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { kind_of } from "../../pwa/contracts.js";
import { HeldRecords } from "../../pwa/data/held_records.js";
import { show } from "../../pwa/data/view.js";
import { RoomCache, open_cache } from "../../pwa/data/room_cache.js";
import { seeded } from "./drawn_numbers.js";
import { TANK, WELCOME, joined_phone, page, row, scripted } from "./test_phone.js";

const ROOM = WELCOME.room.id;
const TANKS = ["tank-0001", "tank-0002", "tank-0003"];
const KINDS = /** @type {const} */ (["tank", "reading", "water_change", "note", "label"]);
const AT = "2026-05-04T07:00:00.000Z";
const LABEL = { name: "Clear", use: "dechlorinator", amount: 1, unit: "ml", per_l: 10, basis: "new_water" };

/** @typedef {import("../../pwa/types/stores.js").Row} Row */

const by_id = (/** @type {readonly {id: string}[]} */ views) => views.toSorted((a, b) => (a.id < b.id ? -1 : 1));

/** What a cache shows, list by list. @param {RoomCache} cache */
const seen = (cache) => ({
  all: KINDS.map((kind) => by_id(cache.shown(kind))),
  of: TANKS.map((tank) => KINDS.slice(1, 4).map((kind) => cache.shown_of(kind, tank))),
});

/**
 * The same lists by `show` of view.js over all records that are stored.
 * @param {RoomCache} full @param {string[]} ids
 */
function by_full_read(full, ids) {
  const of = (/** @type {string} */ kind) =>
    new Map(ids.flatMap((id) => (full.folded(kind, id) ? [[id, /** @type {any} */ (full.folded(kind, id))]] : [])));
  return KINDS.map((kind) => by_id(show(kind_of(kind), of(kind))));
}

/**
 * A server whose rows a test draws; the phone pulls them in pages of a few, and is told of each.
 * @param {() => number} chance @param {{clock: number}} time
 */
function drawn_server(chance, time) {
  /** @type {Map<string, Row>} */ const rows = new Map();
  const state = { epoch: "epoch-1", seq: 0 };
  /** @param {string} kind @param {string} id @param {object} fields @param {string} [stamp] */
  const put = (kind, id, fields, stamp) => {
    const before = rows.get(id);
    const made = row(++state.seq, kind, id, { ...before?.fields, ...fields }, stamp);
    rows.set(id, { ...made, deleted: before?.deleted ?? null, restored: before?.restored ?? null });
  };
  const server = scripted({
    pull: (request) => {
      const query = new URLSearchParams(request.path.split("?")[1]);
      if (query.get("epoch") !== state.epoch) return { status: 409, body: { epoch: state.epoch } };
      time.clock += 3000;
      const after = [...rows.values()].filter(({ seq }) => seq > Number(query.get("since")));
      const sorted = after.sort((a, b) => a.seq - b.seq);
      return page(request, sorted.slice(0, 7), { more: sorted.length > 7 });
    },
    push: ({ body }) => {
      if (body.epoch !== state.epoch) return { status: 409, body: { epoch: state.epoch } };
      const results = body.ops.map((op) => {
        if (op.type === "put") put(op.kind, op.id, op.fields, op.stamp);
        const held = rows.get(op.id);
        if (op.type !== "put" && held)
          rows.set(op.id, { ...held, seq: ++state.seq, [op.type === "del" ? "deleted" : "restored"]: op.stamp });
        return { op: op.op, status: chance() < 0.9 ? "ok" : "invalid", stamp: op.stamp, seq: state.seq };
      });
      return { body: { epoch: state.epoch, server_time: AT, results } };
    },
  });
  return { ...server, state, rows, put };
}

/**
 * One thing that may happen: a write, a correction, a removal, a pulled page, a discard, a restore of the server.
 * @param {any} on the clock, the room, the server, the ids so far, and what draws
 */
async function happen({ time, room, share, server, ids, chance, pick }) {
  const kind = pick(["reading", "reading", "water_change", "note", "label"]);
  const id = `${kind}-${String(ids.length).padStart(5, "0")}`;
  const tank = pick(TANKS);
  const known = ids.filter((/** @type {string} */ one) => one.startsWith(kind));
  const at = `2026-05-04T0${Math.floor(chance() * 7)}:00:00.000Z`;
  const fields = {
    reading: { tank, at, parameter: "nitrite", value: Math.round(chance() * 100) / 100 },
    water_change: { tank, at, litres: 10, fraction: 0.2, ...(chance() < 0.3 ? { from_tank: pick(TANKS) } : {}) },
    note: { ...(chance() < 0.5 ? { tank } : {}), at, text: "Seen" },
    label: LABEL,
  }[/** @type {"reading"} */ (kind)];
  const corrects = kind !== "label" && known.length && chance() < 0.4 ? { supersedes: pick(known) } : {};
  const draw = chance();
  if (draw < 0.35) {
    ids.push(id);
    await room.write([{ type: "put", kind, id, fields: { ...fields, ...corrects } }]);
  } else if (draw < 0.5 && known.length) {
    await room.write([{ type: pick(["del", "restore"]), kind, id: pick(known) }]).catch(() => {});
  } else if (draw < 0.7) {
    ids.push(id);
    server.put(kind, id, { ...fields, ...corrects });
  } else if (draw < 0.78 && server.rows.size) {
    const one = pick([...server.rows.values()]);
    const stamp = `${String(Date.UTC(2026, 4, 4, 8) + server.state.seq).padStart(13, "0")}-00000-device-b`;
    server.rows.set(one.id, { ...one, seq: ++server.state.seq, [pick(["deleted", "restored"])]: stamp });
  } else if (draw < 0.94) {
    time.clock += 1000;
    await share();
  } else if (draw < 0.97) {
    await room.discard(room.sharing().needs_you.map((/** @type {any} */ entry) => entry.op.op));
  } else {
    // A server that was restored lacks something, here for good.
    server.state.epoch = `epoch-${server.state.seq}-${ids.length}`;
    server.rows.delete(pick(ids.slice(TANKS.length)));
  }
}

test("what is held after any course of events equals what a full read gives, in lists too", async () => {
  for (let seed = 1; seed <= 25; seed++) {
    const chance = seeded(seed);
    const pick = (/** @type {any[]} */ list) => list[Math.floor(chance() * list.length)];
    const time = { clock: 0 };
    const server = drawn_server(chance, time);
    for (const id of TANKS) server.put("tank", id, TANK);
    const { phone, room, cache, share } = await joined_phone(server, { seed });
    const began = phone.clock;
    phone.now = () => began + time.clock;
    const other = await open_cache(phone, ROOM);
    /** @type {string[]} */ const ids = [...TANKS];
    await share();
    for (let step = 0; step < 40; step++) {
      await happen({ time, room, share, server, ids, chance, pick });
      const full = await open_cache(phone, ROOM);
      await cache.reread();
      if (step % 5 === 4) await other.reread();
      assert.deepEqual(seen(cache), seen(full), `seed ${seed}, step ${step}`);
      if (step % 5 === 4) assert.deepEqual(seen(other), seen(full), `the other tab, seed ${seed}, step ${step}`);
      assert.deepEqual(seen(full).all, by_full_read(full, ids), `lists, seed ${seed}, step ${step}`);
    }
  }
});

test("a large room is read tank by tank; each part says what a full read says of it", async () => {
  const server = drawn_server(seeded(5), { clock: 0 });
  for (const id of TANKS) server.put("tank", id, TANK);
  for (let at = 0; at < 1200; at++) {
    const tank = TANKS[at % 3];
    const minute = String(at % 60).padStart(2, "0");
    const fields = { tank, at: `2026-05-01T${String(Math.floor(at / 60)).padStart(2, "0")}:${minute}:00.000Z` };
    const corrects = at > 300 && at % 50 === 0 ? { supersedes: `reading-${at - 300}` } : {};
    server.put("reading", `reading-${at}`, { ...fields, parameter: "nitrite", value: 0.1, ...corrects });
    if (at % 100 === 0) server.put("note", `note-${at}`, { at: fields.at, text: "Of no tank" });
  }
  const moved = { tank: TANKS[1], at: AT, parameter: "nitrite", value: 0.2, supersedes: "reading-3" };
  server.put("reading", "reading-moved", moved);
  server.put("water_change", "change-1", { tank: TANKS[0], at: AT, litres: 5, fraction: 0.1, from_tank: TANKS[2] });
  const { phone, share, room } = await joined_phone(server);
  await share();
  await room.write([
    { type: "put", kind: "reading", id: "reading-own", fields: { tank: TANKS[1], at: AT, parameter: "ph", value: 7 } },
  ]);
  const full = await open_cache(phone, ROOM);
  const cache = await open_cache(phone, ROOM, { lazily: true });
  assert.deepEqual([cache.is_ready(), cache.is_ready(TANKS[0])], [false, false]);
  assert.deepEqual(by_id(cache.shown("tank")), by_id(full.shown("tank")), "the few kinds are there");
  await cache.ready(TANKS[0]);
  assert.ok(cache.is_ready(TANKS[0]) && cache.is_ready(TANKS[2]) && !cache.is_ready(TANKS[1]), "with its water's tank");
  for (const tank of [TANKS[0], TANKS[2]])
    assert.deepEqual(cache.shown_of("reading", tank), full.shown_of("reading", tank));
  const before = cache.shown_of("reading", TANKS[0]);
  const rest = cache.ready();
  await room.write([{ type: "del", kind: "reading", id: "reading-1" }]);
  await Promise.all([rest, cache.reread(), full.reread()]);
  assert.ok(cache.is_ready());
  assert.deepEqual(seen(cache), seen(full));
  assert.equal(cache.shown_of("reading", TANKS[0]), before, "a list that nothing changed stays the same array");
  assert.equal(cache.shown("note").length, 12);
});

test("records of one moment stand in the order in which they were written, whatever their ids", () => {
  const held = new HeldRecords();
  const put = (/** @type {string} */ id, /** @type {number} */ n) =>
    held.put(
      "reading",
      id,
      /** @type {any} */ ({
        fields: { tank: "one", at: AT, parameter: "ph", value: n },
        stamps: { at: `177000000000${n}-00000-a` },
        deleted: null,
        restored: null,
        meta: {},
      }),
    );
  put("b", 2);
  put("c", 1);
  put("a", 3);
  assert.deepEqual(
    held.shown_of("reading", "one").map(({ id }) => id),
    ["c", "b", "a"],
  );
});

test("one record changes one tank's list", () => {
  const held = new HeldRecords();
  const put = (/** @type {string} */ id, /** @type {string} */ tank, more = {}) =>
    held.put(
      "reading",
      id,
      /** @type {any} */ ({
        fields: { tank, at: AT, parameter: "ph", value: 7, ...more },
        stamps: { supersedes: `${id}` },
        deleted: null,
        restored: null,
        meta: {},
      }),
    );
  put("a", "one");
  put("b", "two");
  const [one, two] = ["one", "two"].map((tank) => held.shown_of("reading", tank));
  put("c", "two");
  assert.equal(held.shown_of("reading", "one"), one);
  assert.notEqual(held.shown_of("reading", "two"), two);
  put("d", "one", { supersedes: "b" });
  const shown = () => ["one", "two"].map((tank) => held.shown_of("reading", tank).map(({ id }) => id));
  assert.deepEqual(shown(), [["a", "d"], ["c"]], "a correction of another tank's record");
  held.remove("reading", "d");
  assert.deepEqual(shown(), [["a"], ["b", "c"]]);
});
