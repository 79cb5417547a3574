/**
 * A room out of the phone: the server's rows as it sent them (those from before a restore too, where it lacks them),
 * and every op that no row confirms yet.
 */
/** @import { Entry, KeptEntry, In, PhotoEntry, RoomEntry } from "../types/stores.js" */
/** @import { Phone } from "./phone.js" */
import { ENDINGS, FORMAT, LINES, READINGS, VERSION } from "./archive.js";
import { of_room } from "./database.js";
import { corrected_now, iso_of } from "./write.js";
import { zip } from "./zip.js";

/**
 * Everything of a room that is on this phone, pictures included.
 * @param {Phone} phone @param {string} room_id @param {string} readings as CSV
 * @param {import("./import_room.js").Progress} [told] lines and pictures that are in the copy
 * @returns {Promise<Blob>} a ZIP
 */
export async function export_room(phone, room_id, readings, told = () => {}) {
  const { lines, photos } = await phone.database.read(
    ["rows", "former", "outbox", "kept", "rooms", "device", "photos"],
    async (t) => {
      const held = await t.rooms.get(room_id);
      const mirror = (await t.rows.getAll(of_room(room_id))).map(({ room: _room, ...row }) => row);
      const rows = [...mirror, ...(await t.former.getAll(of_room(room_id))).map(({ row }) => row)];
      const kept = (await t.kept.index("room").getAll(room_id)).filter(({ seq }) => seq > (held?.settled ?? 0));
      const entries = [...kept, ...(await t.outbox.index("room").getAll(room_id))];
      const head = await head_of(t, phone, room_id, held, rows.length);
      return {
        lines: [{ ...head, people: held?.people ?? {} }, ...rows, ...entries.map(as_line)],
        photos: await t.photos.getAll(of_room(room_id)),
      };
    },
  );
  const table = { name: READINGS, bytes: new TextEncoder().encode(readings) };
  const total = lines.length + photos.length;
  /** @type {string[]} */ const texts = [];
  for (let at = 0; at < lines.length; at += LINES_AT_ONCE) {
    texts.push(as_text(lines.slice(at, at + LINES_AT_ONCE)));
    await drawn(Math.min(at + LINES_AT_ONCE, lines.length), total, told);
  }
  const files = [{ name: LINES, bytes: new TextEncoder().encode(texts.join("")) }, table, ...photos.map(as_file)];
  const pack = zip(files);
  told(total, total);
  return pack;
}

/**
 * What only this phone has, to go on elsewhere: ops that are not acknowledged, pictures that are not shared, and rows
 * that a restored server lacks. Record and op ids stay, so that nothing is there twice if this phone shares it as well.
 * @param {Phone} phone @param {string} room_id @returns {Promise<Blob>} a ZIP
 */
export async function export_unshared(phone, room_id) {
  const { lines, photos } = await phone.database.read(["former", "outbox", "rooms", "device", "photos"], async (t) => {
    const held = await t.rooms.get(room_id);
    const rows = (await t.former.getAll(of_room(room_id))).map(({ row }) => row);
    const entries = await t.outbox.index("room").getAll(room_id);
    const head = await head_of(t, phone, room_id, held, rows.length);
    const photos = await t.photos.getAll(of_room(room_id));
    return {
      lines: [{ ...head, people: held?.people ?? {} }, ...rows, ...entries.map(as_line)],
      photos: photos.filter(({ state }) => state !== "shared"),
    };
  });
  return zip([{ name: LINES, bytes: json_lines(lines) }, ...photos.map(as_file)]);
}

/**
 * What the server refused, for the keeper to look at or to take elsewhere.
 * @param {Phone} phone @param {string} room_id
 * @returns {Promise<Blob>} JSON lines, an archive without rows
 */
export async function export_needs_you(phone, room_id) {
  const lines = await phone.database.read(["outbox", "rooms", "device"], async (t) => {
    const held = await t.rooms.get(room_id);
    const entries = (await t.outbox.index("room").getAll(room_id)).filter(({ state }) => state === "needs you");
    return [await head_of(t, phone, room_id, held, 0), ...entries.map(as_line)];
  });
  return new Blob([json_lines(lines)], { type: "application/x-ndjson" });
}

/**
 * The archive's first line.
 * @param {In<"device">} t @param {Phone} phone @param {string} room_id @param {RoomEntry | undefined} held
 * @param {number} rows
 */
const head_of = async (t, phone, room_id, held, rows) => ({
  format: FORMAT,
  version: VERSION,
  room: { id: room_id, name: held?.name ?? "" },
  people: {},
  exported_at: iso_of(await corrected_now(t, phone)),
  rows,
});

/** A picture as a file. @param {PhotoEntry} photo */
const as_file = ({ sha256: hash, type, bytes }) => ({
  name: `photos/${hash}.${ENDINGS[type] ?? "bin"}`,
  bytes: new Uint8Array(bytes),
});

/** An op as a line. @param {Entry | KeptEntry} entry */
const as_line = (entry) => {
  const { op, by, at } = entry;
  if (!entry.state) return { op, by, at, state: "shared" };
  return { op, by, at, state: entry.state, reason: entry.reason, errors: entry.errors };
};

/** So many lines are written before the screen may be drawn again. */
const LINES_AT_ONCE = 2000;

/**
 * Tell, and let the screen be drawn.
 * @param {number} count @param {number} total @param {import("./import_room.js").Progress} told
 */
async function drawn(count, total, told) {
  told(count, total);
  await new Promise((done) => setTimeout(done));
}

/** @param {object[]} lines */
const as_text = (lines) => lines.map((line) => `${JSON.stringify(line)}\n`).join("");
/** @param {object[]} lines @returns {Uint8Array<ArrayBuffer>} */
const json_lines = (lines) => new TextEncoder().encode(as_text(lines));
