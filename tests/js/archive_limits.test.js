/** Archives that are too large or damaged: refused in plain words, with bounded memory, and nothing taken in. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { deflateRawSync } from "node:zlib";
import { ArchiveBroken, open_room } from "../../pwa/data/fish_room.js";
import { read_archive } from "../../pwa/data/archive.js";
import { crc32, zip } from "../../pwa/data/zip.js";
import { seeded } from "./drawn_numbers.js";
import { there } from "./fixtures.js";
import { TANK, reading, row, stored, test_phone } from "./test_phone.js";

/** The bytes of numbers, the lowest first. @param {number[][]} numbers each with its width in bytes */
const bytes_of = (...numbers) =>
  numbers.flatMap(([value, width]) => Array.from({ length: width }, (_, at) => Math.floor(value / 256 ** at) % 256));

/**
 * A ZIP with files deflated, as the server writes them; `size` and `count` may say something untrue.
 * @param {{name: string, content?: Uint8Array, packed?: Uint8Array, size?: number}[]} files
 * @param {{count?: number}} [more]
 */
function deflated(files, { count = files.length } = {}) {
  /** @type {Uint8Array[]} */ const parts = [];
  /** @type {number[]} */ const directory = [];
  let offset = 0;
  for (const file of files) {
    const { name, content } = file;
    const packed = file.packed ?? deflateRawSync(there(content));
    const size = file.size ?? there(content).length;
    const encoded = new TextEncoder().encode(name);
    const crc = content ? crc32(content) : 0;
    const common = [
      [20, 2],
      [0, 2],
      [8, 2],
      [0, 4],
      [crc, 4],
      [packed.length, 4],
      [size, 4],
      [encoded.length, 2],
      [0, 2],
    ];
    const local = [...bytes_of([0x04034b50, 4], ...common), ...encoded];
    const listed = bytes_of([0x02014b50, 4], [20, 2], ...common, [0, 2], [0, 2], [0, 2], [0, 4], [offset, 4]);
    parts.push(Uint8Array.from(local), packed);
    directory.push(...listed, ...encoded);
    offset += local.length + packed.length;
  }
  const end = bytes_of([0x06054b50, 4], [0, 4], [count, 2], [count, 2], [directory.length, 4], [offset, 4], [0, 2]);
  return new Uint8Array(Buffer.concat([...parts, Uint8Array.from([...directory, ...end])]));
}

const HEAD = {
  format: "limnary-room",
  version: 1,
  room: { id: "room-9", name: "Porch" },
  people: {},
  exported_at: "2026-05-04T07:30:00.000Z",
};
const OP = {
  op: "op-000001",
  kind: "reading",
  id: "reading-1",
  type: "put",
  fields: reading("tank-0001", 0.5, { at: "2026-05-04T07:30:00.000Z" }),
  stamp: "1767225600000-00000-phone",
  schema: 1,
};
const LINES = [
  { ...HEAD, rows: 2 },
  row(4, "tank", "tank-0001", TANK),
  { ...row(5, "note", "note-0001", { text: "New roots", at: "2026-05-04T07:00:00.000Z" }), deleted: OP.stamp },
  { op: OP, by: "keeper-b", at: "2026-05-04T07:30:00.000Z", state: "waiting" },
];
const text_of = (/** @type {unknown[]} */ lines) =>
  new TextEncoder().encode(lines.map((line) => `${JSON.stringify(line)}\n`).join(""));
const archive = (lines = LINES) => deflated([{ name: "room.jsonl", content: text_of(lines) }]);

/** Read `bytes`, counting what is inflated. @param {Parameters<typeof read_archive>[0]} bytes */
async function counted(bytes) {
  const real = globalThis.DecompressionStream;
  let inflated = 0;
  globalThis.DecompressionStream = class {
    constructor(/** @type {CompressionFormat} */ form) {
      const stream = new real(form);
      const counter = new TransformStream({
        transform(chunk, controller) {
          inflated += chunk.length;
          controller.enqueue(chunk);
        },
      });
      this.writable = stream.writable;
      this.readable = stream.readable.pipeThrough(counter);
    }
  };
  try {
    return {
      failed: await read_archive(bytes).then(
        () => null,
        (error) => error,
      ),
      inflated,
    };
  } finally {
    globalThis.DecompressionStream = real;
  }
}

test("the archive that the other tests alter is whole", async () => {
  const { rows, lines } = await read_archive(archive());
  assert.deepEqual([rows.length, lines.length], [2, 1]);
});

test("a ZIP that says it unpacks to 300 MB is refused before it is inflated, with the limit in words", async () => {
  const packed = deflateRawSync(new Uint8Array(300_000_000), { level: 9 });
  assert.ok(packed.length < 300_000, `${packed.length} bytes`);
  const bomb = deflated([{ name: "room.jsonl", packed, size: 300_000_000 }]);
  const { failed, inflated } = await counted(bomb);
  assert.ok(failed instanceof ArchiveBroken, failed);
  assert.match(failed.message, /128 MB beyond its own size/);
  assert.equal(inflated, 0);
  // The same bytes with a false, small size: inflating stops soon after that size.
  const lying = deflated([{ name: "room.jsonl", packed, size: 100_000 }]);
  const second = await counted(lying);
  assert.ok(second.failed instanceof ArchiveBroken, second.failed);
  assert.match(second.failed.message, /room\.jsonl is damaged/);
  assert.ok(second.inflated < 10_000_000, `${second.inflated} bytes were inflated`);
});

test("many files that each unpack to little count together, and so does their number", async () => {
  const packed = deflateRawSync(new Uint8Array(10_000_000), { level: 9 });
  const many = Array.from({ length: 14 }, (_, at) => ({ name: `photos/${at}`, packed, size: 10_000_000 }));
  const { failed, inflated } = await counted(deflated(many));
  assert.ok(failed instanceof ArchiveBroken, failed);
  assert.match(failed.message, /128 MB/);
  assert.equal(inflated, 0);
  await assert.rejects(
    read_archive(deflated([{ name: "room.jsonl", content: text_of(LINES) }], { count: 20_001 })),
    (error) => error instanceof ArchiveBroken && /20001 files, and no more than 20000/.test(error.message),
  );
});

/**
 * What came of reading `bytes`; anything but an archive or ArchiveBroken fails the test.
 * @param {Parameters<typeof read_archive>[0]} bytes @param {string} what
 * @returns {Promise<"read" | "refused">}
 */
async function outcome(bytes, what) {
  try {
    await read_archive(bytes);
    return "read";
  } catch (error) {
    assert.ok(error instanceof ArchiveBroken, `${what}: ${/** @type {Error} */ (error).stack}`);
    return "refused";
  }
}

test("an archive with bytes changed, cut or added is read or refused, and nothing else comes out", async () => {
  const chance = seeded(2026);
  const below = (/** @type {number} */ most) => Math.floor(chance() * most);
  const good = archive();
  const counts = { read: 0, refused: 0 };
  for (let time = 0; time < 3000; time++) {
    let bad = good.slice();
    for (let changes = 1 + below(4); changes > 0; changes--) {
      const at = below(bad.length);
      const kind = below(4);
      if (kind === 0) bad[at] = below(256);
      else if (kind === 1) bad[at] ^= 1 << below(8);
      else if (kind === 2) bad = bad.slice(0, at);
      else bad = Uint8Array.from([...bad.slice(0, at), below(256), ...bad.slice(at)]);
      if (!bad.length) break;
    }
    counts[await outcome(bad, `time ${time}`)]++;
  }
  assert.ok(counts.refused > 1000, JSON.stringify(counts));
});

/** Anything that JSON can say. @param {() => number} chance */
const junk = (chance) =>
  [
    null,
    true,
    -1,
    1e308,
    "",
    "tank-0001",
    OP.stamp,
    [],
    {},
    [OP.stamp],
    { toString: 1, valueOf: null },
    { __proto__: null, a: { b: [{}] } },
    JSON.parse('{"__proto__": {"fields": 1}}'),
  ][Math.floor(chance() * 13)];

/** Put junk in one drawn place of a value. @param {unknown} value @param {() => number} chance @returns {unknown} */
function spoiled(value, chance) {
  if (typeof value !== "object" || value === null || chance() < 0.15) return junk(chance);
  const parts = /** @type {Record<string, unknown>} */ (value);
  const names = Object.keys(parts);
  if (!names.length) return junk(chance);
  const name = names[Math.floor(chance() * names.length)];
  if (chance() < 0.15) {
    const { [name]: _gone, ...rest } = parts;
    return rest;
  }
  return { ...parts, [name]: spoiled(parts[name], chance) };
}

test("lines with junk in any place are refused, or taken in so that the room still opens", async () => {
  const chance = seeded(1951);
  const counts = { read: 0, refused: 0 };
  for (let time = 0; time < 2000; time++) {
    const at = Math.floor(chance() * LINES.length);
    const lines = LINES.map((line, index) => (index === at ? spoiled(line, chance) : line));
    const bytes = text_of(lines);
    const came = await outcome(bytes, JSON.stringify(lines[at]));
    counts[came]++;
    if (came === "refused" || time % 20) continue;
    const phone = await test_phone();
    const { room } = await open_room("local", phone);
    await room.import(new Blob([bytes]));
    const { room: again } = await open_room("local", phone);
    for (const kind of /** @type {const} */ (["tank", "reading", "note"])) again.all(kind);
  }
  assert.ok(counts.refused > 500 && counts.read > 100, JSON.stringify(counts));
});

test("an op without fields is refused: it would keep the room from opening", async () => {
  const phone = await test_phone();
  const { room } = await open_room("local", phone);
  for (const fields of [undefined, null, "text", 5, []]) {
    const lines = [{ ...HEAD, rows: 0 }, { op: { ...OP, fields } }];
    await assert.rejects(room.import(new Blob([text_of(lines)])), ArchiveBroken, String(fields));
  }
  assert.deepEqual(await stored(phone, "outbox"), []);
});

test("a ZIP of more files than its format can count is refused, not written with some of them unseen", () => {
  const empty = new Uint8Array();
  const files = (/** @type {number} */ count) =>
    Array.from({ length: count }, (_, i) => ({ name: `${i}`, bytes: empty }));
  assert.ok(zip(files(65_535)).size > 0);
  assert.throws(() => zip(files(65_536)), /at most 65535 files, and this one would hold 65536/);
});

test("where the browser cannot inflate, an archive is read all the same, and a bomb is refused", async () => {
  const { DecompressionStream: own } = globalThis;
  Reflect.deleteProperty(globalThis, "DecompressionStream");
  try {
    assert.equal((await read_archive(archive())).rows.length, 2);
    const packed = deflateRawSync(new Uint8Array(4_000_000), { level: 9 });
    for (const size of [100_000, 4_000_001]) {
      const lying = deflated([{ name: "room.jsonl", packed, size }]);
      await assert.rejects(read_archive(lying), /room\.jsonl is damaged/);
    }
    await assert.rejects(read_archive(deflated([{ name: "room.jsonl", packed: packed.slice(0, 50), size: 100 }])));
  } finally {
    globalThis.DecompressionStream = own;
  }
});
