/** A room out of the phone: the server's rows as it said them (before a restore too, where it lacks them), and every op that no row confirms yet. */
import { ENDINGS, FORMAT, LINES, READINGS, VERSION } from "./archive.js";
import { ofRoom } from "./database.js";
import { correctedNow, isoOf } from "./write.js";
import { zip } from "./zip.js";

/**
 * All of a room that is on this phone, pictures included.
 * @param {import("./phone.js").Phone} phone @param {string} room @param {string} readings as CSV
 * @returns {Promise<Blob>} a ZIP
 */
export async function exportRoom(phone, room, readings) {
  const { lines, photos } = await phone.database.read(
    ["rows", "former", "outbox", "kept", "rooms", "device", "photos"],
    async (t) => {
      const held = await t.rooms.get(room);
      const mirror = (await t.rows.getAll(ofRoom(room))).map((/** @type {any} */ { room: _room, ...row }) => row);
      const rows = [...mirror, ...(await t.former.getAll(ofRoom(room))).map((/** @type {any} */ { row }) => row)];
      const kept = (await t.kept.index("room").getAll(room)).filter(
        (/** @type {any} */ entry) => entry.seq > (held?.settled ?? 0),
      );
      const entries = [...kept, ...(await t.outbox.index("room").getAll(room))];
      const head = {
        format: FORMAT,
        version: VERSION,
        room: { id: room, name: held?.name ?? "" },
        people: held?.people ?? {},
        exported_at: isoOf(await correctedNow(t, phone)),
        rows: rows.length,
      };
      return { lines: [head, ...rows, ...entries.map(asLine)], photos: await t.photos.getAll(ofRoom(room)) };
    },
  );
  const pictures = photos.map((/** @type {any} */ { sha256: hash, type, bytes }) => ({
    name: `photos/${hash}.${ENDINGS[type] ?? "bin"}`,
    bytes: new Uint8Array(bytes),
  }));
  const table = { name: READINGS, bytes: new TextEncoder().encode(readings) };
  return zip([{ name: LINES, bytes: jsonLines(lines) }, table, ...pictures]);
}

/**
 * What the server refused, for the keeper to look at or to take elsewhere.
 * @param {import("./phone.js").Phone} phone @param {string} room
 * @returns {Promise<Blob>} JSON lines, an archive without rows
 */
export async function exportNeedsYou(phone, room) {
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
      exported_at: isoOf(await correctedNow(t, phone)),
      rows: 0,
    };
    return [head, ...entries.map(asLine)];
  });
  return new Blob([jsonLines(lines)], { type: "application/x-ndjson" });
}

/** An op as a line. @param {any} entry */
const asLine = ({ op, by, at, state = "shared", reason, errors }) => ({ op, by, at, state, reason, errors });

/** @param {any[]} lines @returns {Uint8Array<ArrayBuffer>} */
const jsonLines = (lines) => new TextEncoder().encode(lines.map((line) => `${JSON.stringify(line)}\n`).join(""));
