/**
 * A room's archive into the phone. Rows become ops with the archive's own stamps, and with ids that follow
 * from what they say, so that taking the same archive in twice has one effect.
 */
import { read_archive, whole } from "./archive.js";
import { see, stamps_of_row } from "./clock.js";
import { sha256_plain } from "./sha256.js";
import { corrected_now, iso_of } from "./write.js";

/**
 * Take an archive in: a ZIP or its bare `room.jsonl`. Of a record that is here already only what is newer counts.
 * @param {import("./phone.js").Phone} phone @param {Record<string, any>} kinds @param {string} room @param {Blob} file
 * @returns {Promise<{records: number, ops: number, photos: number}>} what was new
 * @throws {import("./archive.js").ArchiveBroken}
 */
export async function import_room(phone, kinds, room, file) {
  const { rows, lines, photos } = await read_archive(kinds, new Uint8Array(await file.arrayBuffer()));
  return phone.database.write(["rows", "outbox", "kept", "device", "photos"], async (t) => {
    const identity = await t.device.get("identity");
    const at = iso_of(await corrected_now(t, phone));
    const done = { records: 0, ops: 0, photos: 0 };
    for (const row of rows) {
      const here = await t.rows.get([room, row.kind, row.id]);
      const ops = ops_of(row, kinds[row.kind].schema, here);
      let added = 0;
      for (const op of ops)
        added += await add(t, {
          room,
          state: "waiting",
          by: identity?.keeper?.id ?? null,
          at,
          creates: !here && op === ops[0],
          op,
        });
      done.records += added > 0 ? 1 : 0;
    }
    for (const { op, by, at: made_at } of lines) {
      const creates =
        op.type === "put" && !(await t.rows.getKey([room, op.kind, op.id])) && whole(kinds[op.kind], op.fields);
      done.ops += await add(t, { room, state: "waiting", by: by ?? null, at: made_at ?? at, creates, op });
    }
    for (const { hash, type, bytes } of photos) {
      if (await t.photos.get([room, hash])) continue;
      await t.photos.put({ sha256: hash, room, type, bytes: bytes.buffer, state: "waiting" });
      done.photos++;
    }
    await see(t, [...rows.flatMap(stamps_of_row), ...lines.map(({ op }) => op.stamp)]);
    return done;
  });
}

/** Queue an op unless it is known. @param {any} t @param {any} entry @returns {Promise<number>} how many were added */
async function add(t, entry) {
  if ((await t.outbox.index("op").getKey(entry.op.op)) || (await t.kept.getKey(entry.op.op))) return 0;
  await t.outbox.add(entry);
  return 1;
}

/**
 * The ops that make a row: first one with every field by the earliest stamp, then one for each later stamp,
 * then tombstone and its lifting. Beside a row that is here already, only what is later than it.
 * @param {any} row @param {number} schema @param {any} here
 */
function ops_of(row, schema, here) {
  const names = Object.keys(row.fields);
  const stamps = [...new Set(Object.values(row.stamps))].sort();
  const ops = [];
  for (const stamp of stamps) {
    const first = !here && stamp === stamps[0];
    // A new record has no emptied fields; those are emptied by their own later stamp.
    const its = first
      ? names.filter((name) => row.fields[name] !== null)
      : names.filter((name) => row.stamps[name] === stamp && stamp > (here?.stamps[name] ?? ""));
    if (its.length)
      ops.push(made(row, "put", Object.fromEntries(its.map((name) => [name, row.fields[name]])), stamp, schema));
  }
  if (row.deleted && row.deleted > (here?.deleted ?? "")) ops.push(made(row, "del", {}, row.deleted, schema));
  if (row.restored && row.restored > (here?.restored ?? "")) ops.push(made(row, "restore", {}, row.restored, schema));
  return row.moved ? ops.map((op) => ({ ...op, moved: row.moved })) : ops;
}

/** An op whose id follows from what it says. @param {any} row @param {string} type @param {any} fields @param {string} stamp @param {number} schema */
function made({ kind, id }, type, fields, stamp, schema) {
  const said = JSON.stringify([kind, id, type, stamp, Object.entries(fields).sort()]);
  return {
    op: `in-${sha256_plain(new TextEncoder().encode(said)).slice(0, 40)}`,
    kind,
    id,
    type,
    fields,
    stamp,
    schema,
  };
}
