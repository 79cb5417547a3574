/** A room out of one phone and into another, and the ZIP it travels in. */
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join as path } from "node:path";
import { test } from "node:test";
import { ArchiveBroken, join, open_room } from "../../pwa/data/fish_room.js";
import { sha256 } from "../../pwa/data/sha256.js";
import { crc32, unzip, zip } from "../../pwa/data/zip.js";
import { there } from "./fixtures.js";
import { TANK, WELCOME, page, pushed, reading, row, scripted, share, stored, test_phone } from "./test_phone.js";

const PNG = new Blob([Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 1, 2, 3])], {
  type: "image/png",
});

async function filled() {
  const server = scripted({
    pull: (request) =>
      page(request, request.path.includes("since=0") ? [row(5, "tank", "tank-0001", TANK)] : [], {
        people: { "keeper-b": "Bo" },
      }),
  });
  const phone = await test_phone({ send: server.send });
  await join({ secret: "s", keeper_name: "Ada", device_name: "phone" }, phone);
  const { room, cache } = await open_room(WELCOME.room.id, phone);
  await share(cache);
  const [first] = await room.write([{ type: "put", kind: "reading", fields: reading("tank-0001", 0.5) }]);
  await room.write([{ type: "put", kind: "reading", fields: reading("tank-0001", 0.25, { supersedes: first }) }]);
  await room.write([{ type: "put", kind: "tank", id: "tank-0001", fields: { water_l: 50, place: "shelf" } }]);
  const [gone] = await room.write([{ type: "put", kind: "note", fields: { text: "Wrong tank" } }]);
  await room.write([{ type: "del", kind: "note", id: gone }]);
  await room.add_photo(PNG, { tank: "tank-0001" });
  return { phone, room, cache, server };
}

const seen = (/** @type {import("../../pwa/data/fish_room.js").FishRoom} */ room) =>
  /** @type {const} */ (["tank", "reading", "note", "photo"])
    .flatMap((kind) => room.all(kind).map((one) => ({ ...one, meta: null })))
    .sort((a, b) => (a.id < b.id ? -1 : 1));

test("what comes out of one phone shows the same on another, shared or not, pictures included", async () => {
  const { room } = await filled();
  const other = await test_phone();
  const { room: copy } = await open_room("local", other);
  const archive = await room.export();
  const files = await unzip(new Uint8Array(await archive.arrayBuffer()));
  const head = JSON.parse(new TextDecoder().decode(files.get("room.jsonl")).split("\n")[0]);
  assert.deepEqual([head.room, head.people["keeper-b"], head.rows], [{ id: "room-1", name: "Cellar" }, "Bo", 1]);
  assert.deepEqual(
    [...files.keys()].filter((name) => name.startsWith("photos/")),
    [`photos/${room.all("photo")[0].sha256}.png`],
  );
  await copy.import(archive);
  assert.deepEqual(seen(copy), seen(room));
  const { sha256: hash } = copy.all("photo")[0];
  assert.deepEqual(
    new Uint8Array(await there(await copy.photo(hash)).arrayBuffer()),
    new Uint8Array(await PNG.arrayBuffer()),
  );
});

test("taking the same archive in twice has one effect", async () => {
  const { room } = await filled();
  const other = await test_phone();
  const { room: copy } = await open_room("local", other);
  const archive = await room.export();
  const once = await copy.import(archive);
  assert.ok(once.records === 1 && once.ops === 6 && once.photos === 1, JSON.stringify(once));
  const before = await stored(other, "outbox", "photos");
  assert.deepEqual(await copy.import(archive), { records: 0, ops: 0, photos: 0 });
  assert.deepEqual(await stored(other, "outbox", "photos"), before);
});

test("what this phone has shared since its copy was made is not queued again by taking that copy in", async () => {
  const { phone, room, cache } = await filled();
  const archive = await room.export();
  await share(cache);
  assert.deepEqual([(await stored(phone, "outbox")).length, (await stored(phone, "kept")).length], [0, 6]);
  assert.deepEqual(await room.import(archive), { records: 0, ops: 0, photos: 0 });
  assert.deepEqual(await stored(phone, "outbox"), []);
});

test("how many of how many are told, to the end, while a copy is made and while it is taken in", async () => {
  const { room } = await filled();
  /** @type {[number, number][]} */ const making = [];
  const archive = await room.export((count, total) => making.push([count, total]));
  const { room: copy } = await open_room("local", await test_phone());
  /** @type {[number, number][]} */ const taking_in = [];
  await copy.import(archive, (count, total) => taking_in.push([count, total]));
  // A head, a row, six ops and a picture; the head is no record.
  assert.deepEqual(making.at(-1), [9, 9]);
  assert.deepEqual(taking_in, [[8, 8]]);
});

test("many records are told in steps", async () => {
  const { room: many } = await open_room("local", await test_phone());
  const notes = Array.from({ length: 250 }, (_, i) => ({ type: "put", kind: "note", fields: { text: `note ${i}` } }));
  await many.write(/** @type {import("../../pwa/data/write.js").Change[]} */ (notes));
  const archive = await many.export();
  const { room: copy } = await open_room("local", await test_phone());
  /** @type {number[]} */ const counts = [];
  await copy.import(archive, (count) => counts.push(count));
  assert.deepEqual(counts, [100, 200, 250]);
});

test("a new record's first op is complete, later stamps follow, and each field ends with its own", async () => {
  const stamp = (/** @type {number} */ ms) => `${ms}-00000-device-b`;
  const whole = {
    ...row(9, "tank", "tank-0009", { ...TANK, place: null, note: "later" }),
    deleted: stamp(1770000000007),
    restored: null,
  };
  Object.assign(whole.stamps, {
    name: stamp(1770000000001),
    water_l: stamp(1770000000001),
    place: stamp(1770000000003),
    note: stamp(1770000000005),
  });
  const head = {
    format: "limnary-room",
    version: 1,
    room: { id: "x", name: "X" },
    people: {},
    exported_at: "2026-05-04T07:30:00.000Z",
    rows: 1,
  };
  const phone = await test_phone();
  const { room } = await open_room("local", phone);
  await room.import(new Blob([[head, whole].map((line) => JSON.stringify(line)).join("\n")]));
  const ops = (await stored(phone, "outbox")).map(({ creates, op }) => [
    creates,
    op.type,
    op.stamp.slice(12, 13),
    op.fields,
  ]);
  assert.deepEqual(ops, [
    [true, "put", "1", { ...TANK, note: "later" }],
    [false, "put", "3", { place: null }],
    [false, "put", "5", { note: "later" }],
    [false, "del", "7", {}],
  ]);
  assert.equal(room.get("tank", "tank-0009"), null, "its tombstone came with it");
});

test("beside a row that is here, only what is newer is taken in", async () => {
  const { room, phone } = await filled();
  const later = "1999999999999-00000-device-c";
  const theirs = row(
    1,
    "tank",
    "tank-0001",
    { ...TANK, name: "Old name", place: "cellar" },
    "1000000000000-00000-device-c",
  );
  theirs.stamps.place = later;
  const head = { format: "limnary-room", version: 1, room: {}, people: {}, rows: 1 };
  const before = (await stored(phone, "outbox")).length;
  await room.import(new Blob([[head, theirs].map((line) => JSON.stringify(line)).join("\n")]));
  const added = (await stored(phone, "outbox")).slice(before);
  assert.deepEqual(
    added.map(({ op, by }) => [op.fields, op.stamp, by]),
    [[{ place: "cellar" }, later, "keeper-a"]],
    "brought in by this phone's keeper",
  );
  assert.equal(room.get("tank", "tank-0001")?.place, "cellar");
  await room.write([{ type: "put", kind: "tank", id: "tank-0001", fields: { place: "hall" } }]);
  assert.equal(room.get("tank", "tank-0001")?.place, "hall", "what is written after it counts as later");
});

test("a row that is here already, deleted and restored, brings nothing again", async () => {
  const stamp = (/** @type {number} */ ms) => `${ms}-00000-device-b`;
  const gone = { ...row(6, "tank", "tank-0002", TANK), deleted: stamp(1770000000007), restored: stamp(1770000000006) };
  const server = scripted({ pull: (request) => page(request, request.path.includes("since=0") ? [gone] : []) });
  const phone = await test_phone({ send: server.send });
  await join({ secret: "s", keeper_name: "Ada", device_name: "phone" }, phone);
  const { room, cache } = await open_room(WELCOME.room.id, phone);
  await share(cache);
  const head = { format: "limnary-room", version: 1, room: {}, people: {}, rows: 1 };
  const archive = new Blob([[head, gone].map((line) => JSON.stringify(line)).join("\n")]);
  assert.deepEqual(await room.import(archive), { records: 0, ops: 0, photos: 0 });
  assert.deepEqual(await stored(phone, "outbox"), []);
});

test("refused ops can be exported alone, with what was wrong", async () => {
  const { room, phone, cache, server } = await filled();
  server.handlers.push = ({ body }) =>
    pushed(body.ops.map((op) => ({ op: op.op, status: "forbidden", reason: "role" })));
  await share(cache);
  const lines = (await (await room.export_needs_you()).text())
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line));
  assert.deepEqual([lines[0].format, lines[0].room], ["limnary-room", { id: "room-1", name: "Cellar" }]);
  assert.equal(lines.length - 1, (await stored(phone, "outbox")).filter((entry) => entry.state === "needs you").length);
  assert.equal(lines[1].reason, "role");
  const { room: copy } = await open_room("local", await test_phone());
  await copy.import(await room.export_needs_you());
  assert.equal(copy.all("reading").length, 1);
});

/** An archive of one op. @param {object} changes @param {object} [beside] */
const of_op = (changes, beside = {}) => {
  const op = { op: "op-00001", kind: "tank", id: "tank-0001", type: "del", fields: {}, schema: 1 };
  const line = { op: { ...op, stamp: "1770000000000-00000-device-b", ...changes }, ...beside };
  return `{"format":"limnary-room","version":1,"rows":0}\n${JSON.stringify(line)}`;
};

for (const [why, text, says] of /** @type {[string, string, RegExp][]} */ ([
  ["is not an archive", "hello", /line 1 is no JSON object|first line/],
  ["is of another version", '{"format":"limnary-room","version":2}', /"version": 1/],
  ["is of another format", '{"format":"other","version":1}', /"format": "limnary-room"/],
  [
    "is cut off",
    `{"format":"limnary-room","version":1,"rows":2}\n${JSON.stringify(row(1, "tank", "tank-0001", TANK))}`,
    /2 rows are announced, 1 are here/,
  ],
  ["holds a broken line", '{"format":"limnary-room","version":1,"rows":0}\n{"kind":', /line 2 is no JSON object/],
  [
    "holds an unknown kind",
    `{"format":"limnary-room","version":1,"rows":1}\n${JSON.stringify(row(1, "boat", "boat-0001", {}))}`,
    /line 2: kind must be one of/,
  ],
  [
    "holds a wrong field",
    '{"format":"limnary-room","version":1,"rows":1}\n' +
      JSON.stringify(row(1, "tank", "tank-0001", { ...TANK, water_l: -1 })),
    /line 2: water_l must be from 0.1/,
  ],
  [
    "lacks a needed field",
    `{"format":"limnary-room","version":1,"rows":1}\n${JSON.stringify(row(1, "tank", "tank-0001", { name: "x" }))}`,
    /line 2: water_l is needed/,
  ],
  [
    "holds an op of no known type",
    '{"format":"limnary-room","version":1,"rows":0}\n' +
      JSON.stringify({
        op: {
          op: "op-00001",
          kind: "tank",
          id: "tank-0001",
          type: "swap",
          fields: {},
          stamp: "1770000000000-00000-device-b",
          schema: 1,
        },
      }),
    /line 2: op, stamp or type/,
  ],
  [
    "holds an op with a false stamp",
    '{"format":"limnary-room","version":1,"rows":0}\n' +
      JSON.stringify({
        op: { op: "op-00001", kind: "tank", id: "tank-0001", type: "del", fields: {}, stamp: "soon", schema: 1 },
      }),
    /line 2: op, stamp or type/,
  ],
  ["holds an op of a wrong field", of_op({ type: "put", fields: { water_l: -1 } }), /line 2: water_l must be from 0.1/],
  ["holds an op without an id of its own", of_op({ op: "x" }), /line 2: op, stamp or type/],
  ["holds an op with moved stamps that are none", of_op({ moved: { a: "soon" } }), /line 2: moved must be an object/],
  ["names an author that is no text", of_op({}, { by: 7 }), /line 2: by and at must be text/],
  [
    "holds moved stamps that are none",
    '{"format":"limnary-room","version":1,"rows":1}\n' +
      JSON.stringify({ ...row(1, "tank", "tank-0001", TANK), moved: 7 }),
    /line 2: moved must be an object/,
  ],
  [
    "holds a false stamp",
    `{"format":"limnary-room","version":1,"rows":1}\n${JSON.stringify(row(1, "tank", "tank-0001", TANK, "soon"))}`,
    /line 2: a stamp must look like/,
  ],
])) {
  test(`an archive that ${why} is refused whole, and says where`, async () => {
    const phone = await test_phone();
    const { room } = await open_room("local", phone);
    await assert.rejects(room.import(new Blob([text])), (error) => {
      assert.ok(error instanceof ArchiveBroken);
      assert.match(error.message, says);
      return true;
    });
    assert.deepEqual(await stored(phone, "outbox"), []);
  });
}

test("CRC-32: the check value for 123456789 that catalogues of CRCs print", () => {
  assert.equal(crc32(new TextEncoder().encode("123456789")), 0xcbf43926);
});

test("Python's zipfile reads our ZIP, and we read Python's deflated ZIP", async () => {
  const folder = mkdtempSync(path(tmpdir(), "limnary-zip-"));
  try {
    const files = [
      { name: "room.jsonl", bytes: new TextEncoder().encode('{"a":"ä✓"}\n') },
      { name: "photos/é.png", bytes: new Uint8Array(await PNG.arrayBuffer()) },
      { name: "empty", bytes: new Uint8Array() },
    ];
    const ours = path(folder, "ours.zip");
    const theirs = path(folder, "theirs.zip");
    writeFileSync(ours, new Uint8Array(await zip(files).arrayBuffer()));
    const script = `
import sys, zipfile
pack = zipfile.ZipFile(sys.argv[1])
assert pack.testzip() is None
with zipfile.ZipFile(sys.argv[2], "w", zipfile.ZIP_DEFLATED) as out:
    for name in pack.namelist():
        out.writestr(name, pack.read(name))
`;
    const done = spawnSync("python3", ["-c", script, ours, theirs], { encoding: "utf8" });
    assert.equal(done.status, 0, done.stderr);
    const back = await unzip(new Uint8Array(readFileSync(theirs)));
    assert.deepEqual(
      [...back.keys()],
      files.map(({ name }) => name),
    );
    for (const { name, bytes } of files) assert.deepEqual(back.get(name), bytes);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test("a damaged ZIP is refused, and so is a picture that does not match its name", async () => {
  const { room } = await open_room("local", await test_phone());
  const { room: source } = await filled();
  const bytes = new Uint8Array(await (await source.export()).arrayBuffer());
  const bent = bytes.slice();
  bent[60] ^= 1;
  await assert.rejects(room.import(new Blob([bent])), ArchiveBroken);
  await assert.rejects(room.import(new Blob([bytes.slice(0, -30)])), ArchiveBroken);
  const hash = await sha256(new Uint8Array([1]).buffer);
  const lines = new TextEncoder().encode('{"format":"limnary-room","version":1,"rows":0}\n');
  const lying = zip([
    { name: "room.jsonl", bytes: lines },
    { name: `photos/${hash}.png`, bytes: new Uint8Array([2]) },
  ]);
  await assert.rejects(room.import(lying), /not the picture its name says/);
});

/** What was pushed to a server, by the ids of the ops. @param {ReturnType<typeof scripted>} server */
const ops_pushed = (server) =>
  server.sent.flatMap(({ what, body }) => (what === "push" ? body.ops.map(({ op }) => op) : [])).sort();

test("what only one phone has goes on on another under the same ids, so that both may share it", async () => {
  const { room, cache, server } = await filled();
  const before = server.sent.length;
  const file = await room.export_unshared();
  assert.equal(server.sent.length, before, "it needs no network");
  const there_now = scripted({ pull: server.handlers.pull });
  const other = await test_phone({ send: there_now.send });
  await join({ secret: "t", keeper_name: "Ada", device_name: "installed" }, other);
  const { room: installed, cache: its } = await open_room(WELCOME.room.id, other);
  await share(its);
  assert.deepEqual(await installed.import(file), { records: 0, ops: 6, photos: 1 });
  assert.deepEqual(seen(installed), seen(room));
  await share(its);
  await share(cache);
  assert.deepEqual(ops_pushed(there_now), ops_pushed(server));
  assert.equal(new Set(ops_pushed(server)).size, 6);
  const shared = await room.export_unshared();
  assert.deepEqual([...(await unzip(new Uint8Array(await shared.arrayBuffer()))).keys()], ["room.jsonl"]);
  assert.deepEqual(await installed.import(shared), { records: 0, ops: 0, photos: 0 }, "nothing is left");
});

test("a phone that may not change tanks takes in what it may write and leaves the rest out", async () => {
  const { room } = await filled();
  const server = scripted({ join: () => ({ status: 201, body: { ...WELCOME, role: "helper" } }) });
  const other = await test_phone({ send: server.send });
  await join({ secret: "t", keeper_name: "Bo", device_name: "installed" }, other);
  const { room: helper } = await open_room(WELCOME.room.id, other);
  assert.equal((await helper.import(await room.export())).records, 0, "the tank's row");
  assert.deepEqual(
    (await stored(other, "outbox")).map(({ op }) => op.kind).sort(),
    ["note", "note", "photo", "reading", "reading", "tank"],
    "its own ops are all here, also the one that will be refused",
  );
});

test("how far a phone is shared says since when it is not", async () => {
  const { room, phone, cache } = await filled();
  assert.equal(room.sharing().oldest, "2026-05-04T07:30:00.000Z");
  phone.clock += 3_600_000;
  await room.write([{ type: "put", kind: "note", fields: { text: "Later" } }]);
  assert.equal(room.sharing().oldest, "2026-05-04T07:30:00.000Z");
  await share(cache);
  assert.equal(room.sharing().oldest, null);
});
