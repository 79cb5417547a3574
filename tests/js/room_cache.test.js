/** A room's records in memory: what is read again, in which order, and what other tabs are told. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { make_room } from "../../pwa/data/fish_room.js";
import { RoomCache, open_cache } from "../../pwa/data/room_cache.js";
import { share_once } from "../../pwa/data/share_once.js";
import { start } from "../../pwa/data/sync.js";
import { there } from "./fixtures.js";
import { TANK, WELCOME, joined_phone, page, pushed, row, scripted } from "./test_phone.js";

const ROOM = WELCOME.room.id;
const TANK_KEY = { kind: "tank", id: "tank-0001" };

/** A joined phone whose mirror holds some tanks. @param {string[]} ids */
async function with_tanks(...ids) {
  const rows = ids.map((id, at) => row(at + 1, "tank", id, TANK));
  const server = scripted({ pull: (request) => page(request, request.path.includes("since=0") ? rows : []) });
  const joined = await joined_phone(server);
  await joined.share();
  return { ...joined, server };
}

/**
 * Change a row of the mirror without telling anyone.
 * @param {import("./test_phone.js").TestPhone} phone @param {string} id @param {string} name
 */
const rename = (phone, id, name) =>
  phone.database.write(["rows"], async (t) => {
    const held = there(await t.rows.get([ROOM, "tank", id]));
    await t.rows.put({ ...held, fields: { ...held.fields, name } });
  });

const names = (/** @type {RoomCache} */ cache) => cache.shown("tank").map(({ name }) => name);

test("only what is named, or came after the last reading, is read again; null reads all", async () => {
  const { phone, cache } = await with_tanks("tank-0001", "tank-0002");
  for (const id of ["tank-0001", "tank-0002"]) await rename(phone, id, "Renamed");
  await cache.refresh([TANK_KEY]);
  assert.deepEqual(names(cache), ["Renamed", TANK.name]);
  await cache.refresh(null);
  assert.deepEqual(names(cache), ["Renamed", "Renamed"]);
});

test("what is written here is shown as it was written: nothing is read again", async () => {
  const { phone, room } = await with_tanks("tank-0001");
  const real = phone.database.read;
  let reads = 0;
  phone.database.read = (stores, work) => {
    reads += 1;
    return real(stores, work);
  };
  const fields = { tank: "tank-0001", at: "2026-05-04T07:00:00.000Z", parameter: "nitrite", value: 0.5 };
  const [id] = await room.write([{ type: "put", kind: "reading", fields }]);
  await room.write([{ type: "put", kind: "tank", id: "tank-0001", fields: { name: "Renamed" } }]);
  assert.equal(room.get("reading", id)?.meta.state, "waiting");
  assert.equal(room.get("tank", "tank-0001")?.name, "Renamed");
  assert.equal(room.sharing().waiting, 2);
  await room.write([{ type: "del", kind: "reading", id }]);
  assert.equal(reads, 0);
  const full = await open_cache(phone, ROOM);
  for (const kind of /** @type {const} */ (["tank", "reading"])) assert.deepEqual(room.all(kind), full.shown(kind));
  assert.deepEqual(room.sharing().waiting, full.state.entries.length);
});

test("a record that is gone from the database is gone from the screen", async () => {
  const { phone, cache } = await with_tanks("tank-0001");
  await phone.database.write(["rows"], (t) => t.rows.clear());
  assert.equal(names(cache).length, 1, "nobody was told");
  await cache.refresh([TANK_KEY]);
  assert.deepEqual(names(cache), []);
});

test("a read that began earlier and takes longer does not replace a later one", async () => {
  const { phone, cache } = await with_tanks("tank-0001");
  const real = phone.database.read;
  let slow = true;
  let read_rows = () => {};
  const has_read = new Promise((resolve) => (read_rows = () => resolve(null)));
  phone.database.read = async (stores, work) => {
    const result = real(stores, work);
    if (!slow || !(/** @type {readonly string[]} */ (stores).includes("rows"))) return result;
    slow = false;
    await result;
    read_rows();
    for (let turn = 0; turn < 100; turn++) await new Promise((resolve) => setImmediate(resolve));
    return result;
  };
  const first = cache.refresh(null);
  await has_read;
  await rename(phone, "tank-0001", "Later");
  await cache.refresh([TANK_KEY]);
  await first;
  assert.deepEqual(names(cache), ["Later"]);
});

test("what is told by another tab is read here, and not told once more", async () => {
  const { phone, cache } = await with_tanks("tank-0001");
  /** @type {import("../../pwa/data/phone.js").Message[]} */ const told = [];
  phone.tell = (message) => told.push(message);
  await rename(phone, "tank-0001", "From the other tab");
  let changes = 0;
  cache.on_change(() => changes++);
  phone.heard({ room: "another-room", keys: null });
  phone.heard({ room: ROOM, keys: [TANK_KEY] });
  await cache.reread([]);
  assert.deepEqual([names(cache), told], [["From the other tab"], []]);
  assert.equal(changes, 2, "what was told, and our own reading; nothing of another room");
  cache.close();
  phone.heard({ room: ROOM, keys: null });
  await cache.refresh([TANK_KEY]);
  assert.deepEqual(told, [{ room: ROOM, keys: [TANK_KEY] }], "a refresh of this tab is told");
});

test("a cache that was not opened holds nothing; one of a room without records shows none", async () => {
  const { phone } = await with_tanks("tank-0001");
  assert.deepEqual(new RoomCache(phone, ROOM).shown("tank"), []);
  assert.deepEqual((await open_cache(phone, "local")).shown("tank"), []);
  assert.throws(() => new RoomCache(phone, ROOM).shown("boat"), /no record kind named boat/);
});

test("a batch is reported once, when it is answered; a page without rows is not reported", async () => {
  const { phone, room } = await with_tanks();
  const ids = await room.write([1, 2].map(() => ({ type: "put", kind: "tank", fields: TANK })));
  /** @type {(import("../../pwa/types/stores.js").RecordKey[] | null)[]} */ const told = [];
  await share_once(phone, ROOM, (keys) => void told.push(keys));
  assert.deepEqual([...told], [ids.map((id) => ({ kind: "tank", id }))]);
  await share_once(phone, ROOM, (keys) => void told.push(keys));
  assert.equal(told.length, 1);
});

test("a push that takes long is shown as sending, and as shared once it is answered", async () => {
  const { phone, room, cache, share, server } = await with_tanks();
  const timers = new Set();
  phone.later = (ms, work) => {
    const timer = { ms, work };
    timers.add(timer);
    return () => timers.delete(timer);
  };
  const [tank] = await room.write([{ type: "put", kind: "tank", fields: TANK }]);
  /** @type {unknown[]} */ const seen = [];
  server.handlers.push = async (request) => {
    seen.push(there(room.get("tank", tank)).meta.state);
    const shown = new Promise((resolve) => cache.on_change(() => resolve(undefined)));
    const [{ ms, work }] = timers;
    assert.ok(ms <= 2000, "sending is shown before the keeper wonders");
    work();
    await shown;
    seen.push(there(room.get("tank", tank)).meta.state, room.sharing().sending);
    return server.usual.push(request);
  };
  await share();
  assert.deepEqual(seen, ["waiting", "sending", 1]);
  assert.deepEqual([there(room.get("tank", tank)).meta.state, room.sharing().sending], ["shared", 0]);
  assert.equal(timers.size, 0, "the timer is stopped by the answer");
});

test("after a push that failed, what was shown as sending waits again", async () => {
  const { phone, room, share, server } = await with_tanks();
  const [tank] = await room.write([{ type: "put", kind: "tank", fields: TANK }]);
  phone.later = (_ms, work) => {
    work();
    return () => {};
  };
  server.handlers.push = () => ({ status: 503, body: null });
  await share();
  assert.deepEqual([there(room.get("tank", tank)).meta.state, room.sharing().sending], ["waiting", 0]);
});

test("of a room that is not on the screen, other tabs are told", async () => {
  const { phone, room, server } = await with_tanks();
  server.handlers.rooms = () => ({
    status: 201,
    body: { id: "room-2", name: "Attic", role: "owner", epoch: "epoch-2" },
  });
  server.handlers.push = ({ body }) =>
    pushed(
      body.ops.map(({ op, stamp }) => ({ op, status: "ok", stamp, seq: 1 })),
      { epoch: body.epoch },
    );
  await make_room("Attic", phone);
  const [tank] = await room.write([{ type: "put", kind: "tank", fields: TANK }]);
  /** @type {import("../../pwa/data/phone.js").Message[]} */ const told = [];
  const answered = new Promise((resolve) => {
    phone.tell = (message) => {
      told.push(message);
      if (message.keys?.length === 0) resolve(null);
    };
  });
  const stop = start(phone, ROOM, null);
  await answered;
  stop();
  assert.deepEqual(told[0], { room: ROOM, keys: [{ kind: "tank", id: tank }] });
});

test("a mirror that lost rows and was filled again meanwhile is read anew, though its cursor went on", async () => {
  const rows = [1, 2, 3].map((seq) => row(seq, "tank", `tank-000${seq}`, TANK));
  let there_are = 2;
  const server = scripted({
    pull: (request) => {
      const [, since] = /since=(\d+)/.exec(request.path) ?? [];
      return page(request, rows.slice(Number(since), there_are));
    },
  });
  const { phone, cache, share } = await joined_phone(server);
  await share();
  await phone.database.write(["rows"], (t) => t.rows.delete([ROOM, "tank", "tank-0001"]));
  await cache.reread([TANK_KEY]);
  assert.equal(names(cache).length, 1, "one row was lost under it");
  there_are = 3;
  // Another tab shares: this one hears of it only when all is done.
  await share_once(phone, ROOM, () => {});
  await cache.reread();
  assert.equal(names(cache).length, 3);
});
