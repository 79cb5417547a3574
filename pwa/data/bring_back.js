/**
 * After the server was restored from a backup, this phone gives back what it held before and the server now lacks,
 * whoever wrote it. At a new epoch the rows of the mirror are put aside in `former`. Once the pull has reached the
 * end, each is compared with the server's row and given back if it holds more.
 * Law: a row stays aside until the mirror holds it. The server may be restored once more after it took a row and
 * before this phone pulled it; then the row is given back again.
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
 * The next rows to give back. The first call of a round deletes the rows that the mirror holds by now. Rows that the
 * server took in this epoch wait for the next pull.
 * Rows of a kind that this keeper may not write wait: someone else may bring them, or the role may change.
 * @param {In<"rooms" | "rows" | "former">} t @param {string} room_id
 * @param {Set<string>} tried refs that this round has sent already
 */
export async function take_back(t, room_id, tried) {
  const held = await t.rooms.get(room_id);
  /** @type {{ref: string, row: Row}[]} */ const batch = [];
  let size = 0;
  let given = 0;
  let full = false;
  for (const entry of await t.former.getAll(of_room(room_id))) {
    if (tried.has(ref_of(entry)) || (tried.size && entry.given === held?.epoch)) continue;
    if (full && tried.size) break;
    if (!holds_more(await t.rows.get([room_id, entry.kind, entry.id]), entry.row)) {
      await t.former.delete(key_of(entry));
      continue;
    }
    if (entry.given === held?.epoch) given++;
    else if (!full && !entry.refused && may_write(held?.role ?? null, entry.kind)) {
      size += JSON.stringify(entry.row).length;
      full = batch.length >= MOST_ROWS || (batch.length > 0 && size > MOST_CHARACTERS);
      if (!full) batch.push({ ref: ref_of(entry), row: entry.row });
    }
  }
  if (held && !tried.size && (held.given ?? 0) !== given) await t.rooms.put({ ...held, given });
  return { epoch: held?.epoch, people: held?.people ?? {}, batch };
}

/** @typedef {{epoch: string, results: {ref: string, status: string, reason?: string}[]}} BackAnswer */

/**
 * Apply the answers. Rows that the server took stay aside, marked with its epoch; rows that the role forbids wait; rows
 * that the server finds invalid are marked.
 * @param {In<"rooms" | "former">} t @param {string} room_id @param {BackAnswer} answer
 * @returns {Promise<number>} how many rows the server took
 */
export async function brought_back(t, room_id, answer) {
  const held = await t.rooms.get(room_id);
  if (held?.epoch !== answer.epoch) return 0;
  const results = new Map(answer.results.map((result) => [result.ref, result]));
  let taken = 0;
  for (const entry of await t.former.getAll(of_room(room_id))) {
    const result = results.get(ref_of(entry));
    if (result?.status === "ok" && entry.given !== answer.epoch) {
      await t.former.put({ ...entry, given: answer.epoch });
      taken++;
    } else if (result?.status === "invalid") await t.former.put({ ...entry, refused: result.reason ?? "invalid" });
  }
  if (taken) await t.rooms.put({ ...held, given: (held.given ?? 0) + taken });
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
