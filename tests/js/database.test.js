/** The phone's storage when it fails: full, lost, held by an older tab, of an older version, cut off halfway. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { openDB } from "../../pwa/vendor/idb.js";
import { MIGRATIONS, NotSaved, open_database } from "../../pwa/data/database.js";
import { join, open_room } from "../../pwa/data/fish_room.js";
import { joined_room } from "../../pwa/data/mirror.js";
import { share_once } from "../../pwa/data/share_once.js";
import { install } from "../../pwa/contracts.js";
import { shared_bundle } from "./shared_bundle.js";
import { there } from "./fixtures.js";
import { TANK, WELCOME, reading, row, scripted, share, stored, test_phone } from "./test_phone.js";

let made = 0;
const fresh = () => `database-${++made}`;

test("a write that is cut off at any request leaves nothing behind", async () => {
  const phone = await test_phone();
  const { room } = await open_room("local", phone);
  const before = await stored(phone, "outbox", "device");
  const real = phone.database.write;
  let cut = 0;
  for (let survived = false; !survived; cut++) {
    phone.database.write = (names, work) => real(names, (stores) => work(cutting(stores, cut)));
    const writing = room.write(
      [1, 2, 3].map((value) => ({ type: "put", kind: "reading", fields: reading("tank-0001", value) })),
    );
    survived = await writing.then(
      () => true,
      () => false,
    );
    if (!survived) assert.deepEqual(await stored(phone, "outbox", "device"), before, `cut at request ${cut}`);
  }
  assert.ok(cut > 7, `only ${cut} requests`);
  assert.equal((await stored(phone, "outbox")).length, 3);
});

/**
 * Stores whose request number `cut`, and every later one, fails.
 * @template {object} Names @param {Names} stores @param {number} cut @returns {Names}
 */
function cutting(stores, cut) {
  let count = 0;
  /** @param {object} target a store or an index @returns {object} */
  const watch = (target) =>
    new Proxy(target, {
      get(_, name) {
        const value = Reflect.get(target, name);
        if (typeof value !== "function") return value;
        return (/** @type {unknown[]} */ ...given) => {
          if (name === "index") return watch(value.apply(target, given));
          if (count++ >= cut) throw new Error("cut off");
          return value.apply(target, given);
        };
      },
    });
  const watched = Object.entries(stores).map(([name, store]) => [name, watch(store)]);
  return /** @type {Names} */ (Object.fromEntries(watched));
}

test("a full phone says so in plain words, and nothing is half saved", async () => {
  const phone = await test_phone();
  const { room } = await open_room("local", phone);
  const real = phone.database.write;
  phone.database.write = (names, work) =>
    real(names, async (stores) => {
      await work(stores);
      throw new DOMException("full", "QuotaExceededError");
    });
  await assert.rejects(room.write([{ type: "put", kind: "tank", fields: TANK }]), (error) => {
    assert.ok(error instanceof NotSaved);
    assert.equal(error.reason, "no-space");
    assert.match(error.message, /no room left.*not saved/);
    return true;
  });
  phone.database.write = real;
  assert.deepEqual(await stored(phone, "outbox"), []);
  assert.equal(room.all("tank").length, 0);
});

test("a transaction that the browser aborts is not reported as saved", async () => {
  const database = await open_database({ name: fresh() });
  const writing = database.write(["device"], async (t) => {
    await t.device.put({ name: "clock", last: null });
    /** @type {any} the store itself, which knows its transaction */ (t.device).transaction.abort();
  });
  await assert.rejects(writing, (error) => error instanceof NotSaved && error.reason === "storage");
  assert.deepEqual(await database.read(["device"], (t) => t.device.getAll()), []);
});

test("a connection that was lost in the background is opened again", async () => {
  const name = fresh();
  const phone = await test_phone({ name });
  const { room } = await open_room("local", phone);
  phone.database.close();
  await room.write([{ type: "put", kind: "tank", fields: TANK }]);
  assert.equal(room.all("tank").length, 1);
});

test("an upgrade that an older tab blocks is reported, and goes on when that tab closes its connection", async () => {
  const name = fresh();
  // An older app that does not listen for newer versions.
  const older = await openDB(name, 1, { upgrade: (db, _from, _to, transaction) => MIGRATIONS[0](db, transaction) });
  let told = () => {};
  const blocked = new Promise((resolve) => (told = () => resolve(undefined)));
  const opening = open_database({ name, on_blocked: told });
  await blocked;
  older.close();
  const database = await opening;
  assert.deepEqual(await database.read(["photos"], (t) => t.photos.getAll()), []);
});

test("a tab closes its connection when a newer app needs the database, and says that it must be reloaded", async () => {
  const name = fresh();
  let outdated = false;
  await open_database({ name, on_outdated: () => (outdated = true) });
  const newer = await openDB(name, MIGRATIONS.length + 1, { upgrade() {} });
  assert.ok(outdated);
  newer.close();
});

test("a database of the first version, with ops not yet shared, loses none of them and shares them all", async () => {
  const name = fresh();
  const older = await openDB(name, 1, { upgrade: (db, _from, _to, transaction) => MIGRATIONS[0](db, transaction) });
  const op = (
    /** @type {number} */ at,
    /** @type {string} */ kind,
    /** @type {string} */ id,
    /** @type {object} */ fields,
  ) => ({
    op: `op-${at}`,
    kind,
    id,
    type: "put",
    fields,
    stamp: `1770000000000-0000${at}-old`,
    schema: 1,
  });
  const writing = older.transaction(["outbox", "device"], "readwrite");
  writing.objectStore("device").put({ name: "identity", device: "old", key: null, keeper: null });
  const waiting = [
    op(1, "tank", "tank-0001", TANK),
    op(2, "reading", "reading-01", reading("tank-0001", 0.5, { at: "2026-02-02T02:40:00.000Z" })),
    op(3, "tank", "tank-0001", { water_l: 40 }),
  ];
  for (const [at, each] of waiting.entries()) {
    writing
      .objectStore("outbox")
      .put({ room: "local", state: "waiting", by: null, at: "2026-02-02T02:40:00.000Z", creates: at < 2, op: each });
  }
  await writing.done;
  older.close();

  const server = scripted();
  const phone = await test_phone({ name, send: server.send });
  const { room: local } = await open_room("local", phone);
  assert.equal(local.get("tank", "tank-0001")?.water_l, 40);
  assert.equal(local.all("reading").length, 1);
  await join({ secret: "s", keeper_name: "Ada", device_name: "phone" }, phone);
  const { cache } = await open_room(WELCOME.room.id, phone);
  await share(cache);
  const { ops } = there(server.sent.find((one) => one.what === "push")).body;
  assert.deepEqual(ops, waiting);
  assert.deepEqual(await stored(phone, "outbox"), []);
});

test("a database without the indexes of rows keeps every record and op, and answers by tank", async () => {
  const name = fresh();
  const older = await openDB(name, 3, {
    upgrade: (db, _from, _to, transaction) => MIGRATIONS.slice(0, 3).forEach((migrate) => migrate(db, transaction)),
  });
  const names = /** @type {const} */ (["rows", "outbox", "kept", "rooms", "device", "former"]);
  const rows = [1, 2, 3].map((n) => ({
    ...row(
      n,
      "reading",
      `reading-0${n}`,
      reading(n < 3 ? "tank-0001" : "tank-0002", n, { at: `2026-05-0${n}T07:00:00Z` }),
    ),
    room: WELCOME.room.id,
  }));
  const op = (/** @type {number} */ n, /** @type {string} */ id) => ({
    op: { op: `op-${n}`, kind: "tank", id, type: "put", fields: TANK, stamp: `177000000000${n}-00000-old`, schema: 1 },
    ...{ room: WELCOME.room.id, by: null, at: "2026-05-03T07:00:00.000Z", creates: true, n },
  });
  const { key, keeper, device } = WELCOME;
  const put = {
    rows,
    outbox: [{ ...op(1, "tank-0001"), state: "waiting" }],
    kept: [{ ...op(2, "tank-0002"), seq: 9, sharedAt: "2026-05-03T07:00:00.000Z" }],
    rooms: [{ ...joined_room(WELCOME.room, "owner", "epoch-1"), since: 3, settled: 3, count: 3 }],
    device: [{ name: "identity", key, keeper, device }],
    former: [{ room: WELCOME.room.id, kind: "note", id: "note-0001", epoch: "epoch-0", row: rows[0] }],
  };
  const writing = older.transaction(names, "readwrite");
  for (const store of names) for (const one of put[store]) writing.objectStore(store).put(one);
  await writing.done;
  older.close();

  const phone = await test_phone({ name });
  assert.deepEqual(await stored(phone, ...names), put);
  const { room } = await open_room(WELCOME.room.id, phone);
  assert.deepEqual(
    ["tank-0001", "tank-0002"].map((tank) => room.of("reading", tank).map(({ value }) => value)),
    [[1, 2], [3]],
  );
  assert.deepEqual([room.all("tank").length, room.sharing().waiting], [2, 1]);
  const by_tank = await phone.database.read(["rows"], (t) => t.rows.index("tank").count([room.id, "tank-0001"]));
  assert.equal(by_tank, 2);
});

test("ops written before a kind gained a field go out unchanged; new ones carry the new schema", async () => {
  const server = scripted();
  const phone = await test_phone({ send: server.send });
  const { room: local } = await open_room("local", phone);
  await local.write([{ type: "put", kind: "tank", fields: TANK }]);
  const [{ op: old }] = await stored(phone, "outbox");

  const newer = structuredClone(shared_bundle());
  newer.records.tank.schema = 2;
  newer.records.tank.fields.push({
    name: "window_m",
    label: "From the window",
    type: "number",
    unit: "m",
    min: 0,
    max: 100,
  });
  install(newer);
  try {
    const { room } = await open_room("local", phone);
    assert.equal(room.all("tank").length, 1);
    await room.write([{ type: "put", kind: "tank", id: old.id, fields: { window_m: 2 } }]);
    await join({ secret: "s", keeper_name: "Ada", device_name: "phone" }, phone);
    await share_once(phone, WELCOME.room.id, () => {});
    const { ops } = there(server.sent.find((one) => one.what === "push")).body;
    assert.deepEqual(ops[0], old);
    assert.deepEqual(
      ops.map((op) => op.schema),
      [1, 2],
    );
    assert.deepEqual(await stored(phone, "outbox"), []);
  } finally {
    install(shared_bundle());
  }
});
