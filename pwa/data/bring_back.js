/**
 * After the server was restored from a backup, this phone gives back what it held before and the server now lacks,
 * whoever wrote it. At a new epoch the rows of the mirror are put aside in `former`. Once the pull has reached the
 * end, each is compared with the server's row, given back if it holds more, and deleted once the server has it.
 */
/** @import { FormerRow, In, Row } from "../types/stores.js" */
import { of_room } from "./database.js";
import { may_write } from "./write.js";

/** At most this many rows, and about this many characters, in one request. */
const MOST_ROWS = 500;
const MOST_CHARACTERS = 500_000;

/**
 * Put the rows of the mirror aside.
 * @param {In<"rows" | "former">} t @param {string} room_id @param {string} epoch the one that ended
 */
export async function put_aside(t, room_id, epoch) {
  const rows = await t.rows.getAll(of_room(room_id));
  await Promise.all(
    rows.map(async ({ room: _room, ...row }) =>
      t.former.put({ room: room_id, kind: row.kind, id: row.id, epoch, row }),
    ),
  );
}

/**
 * Whether a former row holds anything that the server's row lacks: a later stamp, or an earlier place of a
 * write that the server moved back. Pure.
 * @param {Row | undefined} here the server's row @param {Row} former
 */
export function holds_more(here, former) {
  if (!here) return true;
  const known = here.moved ?? {};
  const heard = Object.entries(former.moved ?? {});
  if (heard.some(([written, taken]) => taken < (known[written] ?? written))) return true;
  const places = { ...Object.fromEntries(heard.map(([written, taken]) => [taken, known[written]])), ...known };
  const later = (/** @type {string | null} */ stamp, /** @type {string | null | undefined} */ than) =>
    stamp && (places[stamp] ?? stamp) > (than ?? "");
  if (later(former.deleted, here.deleted) || later(former.restored, here.restored)) return true;
  return Object.entries(former.stamps).some(([name, stamp]) => later(stamp, here.stamps[name]));
}

/**
 * The next rows to give back; rows that the server has by now are deleted here.
 * Rows of a kind that this keeper may not write wait: someone else may bring them, or the role may change.
 * @param {In<"rooms" | "rows" | "former">} t @param {string} room_id
 * @param {Set<string>} tried refs that this round has sent already
 */
export async function take_back(t, room_id, tried) {
  const held = await t.rooms.get(room_id);
  /** @type {{ref: string, row: Row}[]} */ const batch = [];
  let size = 0;
  for (const entry of await t.former.getAll(of_room(room_id))) {
    if (!holds_more(await t.rows.get([room_id, entry.kind, entry.id]), entry.row)) {
      await t.former.delete(key_of(entry));
      continue;
    }
    if (entry.refused || tried.has(ref_of(entry)) || !may_write(held?.role ?? null, entry.kind)) continue;
    size += JSON.stringify(entry.row).length;
    if (batch.length >= MOST_ROWS || (batch.length && size > MOST_CHARACTERS)) break;
    batch.push({ ref: ref_of(entry), row: entry.row });
  }
  return { epoch: held?.epoch, people: held?.people ?? {}, batch };
}

/** @typedef {{epoch: string, results: {ref: string, status: string, reason?: string}[]}} BackAnswer */

/**
 * Apply the answers. Rows that the role forbids wait; rows that the server finds invalid are marked.
 * @param {In<"rooms" | "former">} t @param {string} room_id @param {BackAnswer} answer
 * @returns {Promise<number>} how many rows the server took
 */
export async function brought_back(t, room_id, answer) {
  if ((await t.rooms.get(room_id))?.epoch !== answer.epoch) return 0;
  const results = new Map(answer.results.map((result) => [result.ref, result]));
  let taken = 0;
  for (const entry of await t.former.getAll(of_room(room_id))) {
    const result = results.get(ref_of(entry));
    if (result?.status === "ok") {
      await t.former.delete(key_of(entry));
      taken++;
    } else if (result?.status === "invalid") await t.former.put({ ...entry, refused: result.reason ?? "invalid" });
  }
  return taken;
}

/** Let refused rows be given back once more. @param {In<"former">} t @param {string} room_id */
export async function bring_again(t, room_id) {
  for (const { refused, ...entry } of await t.former.getAll(of_room(room_id))) if (refused) await t.former.put(entry);
}

/** @param {FormerRow} entry */
const ref_of = ({ epoch, kind, id }) => `${epoch} ${kind} ${id}`;
/** @param {FormerRow} entry */
const key_of = ({ room, kind, id, epoch }) => [room, kind, id, epoch];
