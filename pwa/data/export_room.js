/** A room out of the phone: the server's rows as it said them (before a restore too, where it lacks them), and every op that no row confirms yet. */
import { ENDINGS, FORMAT, LINES, READINGS, VERSION } from "./archive.js";
import { of_room } from "./database.js";
import { corrected_now, iso_of } from "./write.js";
import { zip } from "./zip.js";

/**
 * All of a room that is on this phone, pictures included.
 * @param {import("./phone.js").Phone} phone @param {string} room @param {string} readings as CSV
 * @returns {Promise<Blob>} a ZIP
 */
export async function export_room(phone, room, readings) {
  const { lines, photos } = await phone.database.read(
    ["rows", "former", "outbox", "kept", "rooms", "device", "photos"],
    async (t) => {
      const held = await t.rooms.get(room);
      const mirror = (await t.rows.getAll(of_room(room))).map((/** @type {any} */ { room: _room, ...row }) => row);
      const rows = [...mirror, ...(await t.former.getAll(of_room(room))).map((/** @type {any} */ { row }) => row)];
      const kept = (await t.kept.index("room").getAll(room)).filter(
        (/** @type {any} */ entry) => entry.seq > (held?.settled ?? 0),
      );
      const entries = [...kept, ...(await t.outbox.index("room").getAll(room))];
      const head = {
        format: FORMAT,
        version: VERSION,
        room: { id: room, name: held?.name ?? "" },
        people: held?.people ?? {},
        exported_at: iso_of(await corrected_now(t, phone)),
        rows: rows.length,
      };
      return { lines: [head, ...rows, ...entries.map(as_line)], photos: await t.photos.getAll(of_room(room)) };
    },
  );
  const pictures = photos.map((/** @type {any} */ { sha256: hash, type, bytes }) => ({
    name: `photos/${hash}.${ENDINGS[type] ?? "bin"}`,
    bytes: new Uint8Array(bytes),
  }));
  const table = { name: READINGS, bytes: new TextEncoder().encode(readings) };
  return zip([{ name: LINES, bytes: json_lines(lines) }, table, ...pictures]);
}

/**
 * What the server refused, for the keeper to look at or to take elsewhere.
 * @param {import("./phone.js").Phone} phone @param {string} room
 * @returns {Promise<Blob>} JSON lines, an archive without rows
 */
export async function export_needs_you(phone, room) {
  const lines = await phone.database.read(["outbox", "rooms", "device"], async (t) => {
    const held = await t.rooms.get(room);
    const entries = (await t.outbox.index("room").getAll(room)).filter(
      (/** @type {any} */ entry) => entry.state === "needs you",
    );
    const head = {
      format: FORMAT,
      version: VERSION,
      room: { id: room, name: held?.name ?? "" },
      people: {},
      exported_at: iso_of(await corrected_now(t, phone)),
      rows: 0,
    };
    return [head, ...entries.map(as_line)];
  });
  return new Blob([json_lines(lines)], { type: "application/x-ndjson" });
}

/** An op as a line. @param {any} entry */
const as_line = ({ op, by, at, state = "shared", reason, errors }) => ({ op, by, at, state, reason, errors });

/** @param {any[]} lines @returns {Uint8Array<ArrayBuffer>} */
const json_lines = (lines) => new TextEncoder().encode(lines.map((line) => `${JSON.stringify(line)}\n`).join(""));
