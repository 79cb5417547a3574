/**
 * A room's archive into the phone. Rows become ops with the archive's own stamps. The ids of these ops follow from what
 * they say, so that taking the same archive in twice has one effect.
 */
/** @import { Entry, Fields, In, Op, Row } from "../types/stores.js" */
/** @import { ArchiveRow } from "./archive.js" */
import { kind_of } from "../contracts.js";
import { read_archive, whole } from "./archive.js";
import { see, stamps_of_row } from "./clock.js";
import { sha256_hex } from "./sha256.js";
import { corrected_now, iso_of, may_write } from "./write.js";

/** @typedef {{records: number, ops: number, photos: number}} Imported how many were new */
/** @typedef {(count: number, total: number) => void} Progress how many of how many are done */
/** So many steps are told as one. */
const TOLD_AFTER = 100;

/**
 * Take an archive in: a ZIP or its bare `room.jsonl`. Where a record is here already, the newer one stays. Rows
 * of kinds that this keeper may not write are left out: the server would refuse them.
 * It is all or nothing: interrupted, it has taken nothing in.
 * @param {import("./phone.js").Phone} phone @param {string} room_id @param {Blob} file
 * @param {Progress} [told] records, ops and pictures that were looked at
 * @returns {Promise<Imported>}
 * @throws {import("./archive.js").ArchiveBroken}
 */
export async function import_room(phone, room_id, file, told = () => {}) {
  const { rows, lines, photos } = await read_archive(new Uint8Array(await file.arrayBuffer()));
  const total = rows.length + lines.length + photos.length;
  let count = 0;
  const step = () => {
    count++;
    if (count % TOLD_AFTER === 0 || count === total) told(count, total);
  };
  return phone.database.write(["rows", "outbox", "kept", "device", "photos", "rooms"], async (t) => {
    const room = await t.rooms.get(room_id);
    const by = (await t.device.get("identity"))?.keeper?.id ?? null;
    const at = iso_of(await corrected_now(t, phone));
    const done = { records: 0, ops: 0, photos: 0 };
    for (const row of rows) {
      step();
      if (room && !may_write(room.role, row.kind)) continue;
      const here = await t.rows.get([room_id, row.kind, row.id]);
      const ops = ops_of(row, kind_of(row.kind).schema, here);
      let added = 0;
      for (const op of ops)
        added += await add(t, { room: room_id, state: "waiting", by, at, creates: !here && op === ops[0], op });
      done.records += added > 0 ? 1 : 0;
    }
    for (const { op, by: written_by, at: written_at } of lines) {
      step();
      const creates =
        op.type === "put" && !(await t.rows.getKey([room_id, op.kind, op.id])) && whole(kind_of(op.kind), op.fields);
      const entry = { room: room_id, by: written_by ?? null, at: written_at ?? at, creates, op };
      done.ops += await add(t, { ...entry, state: "waiting" });
    }
    for (const { hash, type, bytes } of photos) {
      step();
      if (await t.photos.get([room_id, hash])) continue;
      await t.photos.put({ sha256: hash, room: room_id, type, bytes: bytes.buffer, state: "waiting" });
      done.photos++;
    }
    await see(t, [...rows.flatMap(stamps_of_row), ...lines.map(({ op }) => op.stamp)]);
    return done;
  });
}

/**
 * Queue an op unless it is known.
 * @param {In<"outbox" | "kept">} t @param {Omit<Entry, "n">} entry @returns {Promise<number>} how many were added
 */
async function add(t, entry) {
  if ((await t.outbox.index("op").getKey(entry.op.op)) || (await t.kept.getKey(entry.op.op))) return 0;
  await t.outbox.add(entry);
  return 1;
}

/**
 * The ops that make a row: first one with every field, by the earliest stamp; then one for each later stamp; then its
 * deletion and restoration. Where the row is here already, only what is later than it.
 * @param {ArchiveRow} row @param {number} schema @param {Row | undefined} here
 */
function ops_of(row, schema, here) {
  const names = Object.keys(row.fields);
  const stamps = [...new Set(Object.values(row.stamps))].sort();
  /** @type {Op[]} */ const ops = [];
  for (const stamp of stamps) {
    const first = !here && stamp === stamps[0];
    // A new record has no emptied fields; those are emptied by their own later stamp.
    const changed = first
      ? names.filter((name) => row.fields[name] !== null)
      : names.filter((name) => row.stamps[name] === stamp && stamp > (here?.stamps[name] ?? ""));
    const fields = Object.fromEntries(changed.map((name) => [name, row.fields[name]]));
    if (changed.length) ops.push(made(row, "put", fields, stamp, schema));
  }
  if (row.deleted && row.deleted > (here?.deleted ?? "")) ops.push(made(row, "del", {}, row.deleted, schema));
  if (row.restored && row.restored > (here?.restored ?? "")) ops.push(made(row, "restore", {}, row.restored, schema));
  return row.moved ? ops.map((op) => ({ ...op, moved: row.moved })) : ops;
}

/**
 * An op whose id follows from what it says.
 * @param {ArchiveRow} row @param {Op["type"]} type @param {Fields} fields @param {string} stamp @param {number} schema
 * @returns {Op}
 */
function made({ kind, id }, type, fields, stamp, schema) {
  const content = JSON.stringify([kind, id, type, stamp, Object.entries(fields).sort()]);
  const op = `in-${sha256_hex(new TextEncoder().encode(content)).slice(0, 40)}`;
  return { op, kind, id, type, fields, stamp, schema };
}
