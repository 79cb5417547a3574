/**
 * After the server was restored from a backup: what this phone held of it before and it now lacks goes back,
 * whoever wrote it. At a new epoch the mirror's rows are put aside as `former`; once the pull has reached the
 * end they are compared with what the server says now, given back where they hold more, and let go of.
 * Entries of `former`: {room, kind, id, epoch, row, refused?}; `epoch` is the one that ended.
 */
import { of_room } from "./database.js";
import { records } from "../contracts.js";

/** At most this many rows, and about this many characters, in one request. */
const MOST_ROWS = 500;
const MOST_CHARACTERS = 500_000;

/** Put the mirror's rows aside (stores: rows, former). @param {any} t @param {string} room @param {string} epoch that has ended */
export async function put_aside(t, room, epoch) {
  const rows = await t.rows.getAll(of_room(room));
  await Promise.all(
    rows.map(async (/** @type {any} */ { room: _room, ...row }) =>
      t.former.put({ room, kind: row.kind, id: row.id, epoch, row }),
    ),
  );
}

/**
 * Whether a former row holds anything that the server's row lacks: a later stamp, or an earlier place of a
 * write that the server moved back. Pure.
 * @param {any | undefined} here the server's row @param {any} former
 */
export function holds_more(here, former) {
  if (!here) return true;
  const known = here.moved ?? {};
  const heard = Object.entries(former.moved ?? {});
  if (heard.some(([written, taken]) => taken < (known[written] ?? written))) return true;
  const places = { ...Object.fromEntries(heard.map(([written, taken]) => [taken, known[written]])), ...known };
  const later = (/** @type {string | null} */ stamp, /** @type {string | null | undefined} */ its) =>
    stamp && (places[stamp] ?? stamp) > (its ?? "");
  if (later(former.deleted, here.deleted) || later(former.restored, here.restored)) return true;
  return Object.entries(former.stamps).some(([name, stamp]) => later(/** @type {string} */ (stamp), here.stamps[name]));
}

/**
 * The next rows to give back; those that the server has by now are let go of (stores: rooms, rows, former).
 * Rows of a kind that this keeper may not write wait: someone else may bring them, or the role may change.
 * @param {any} t @param {string} room @param {Set<string>} tried refs that this round has sent already
 */
export async function take_back(t, room, tried) {
  const held = await t.rooms.get(room);
  const batch = [];
  let size = 0;
  for (const entry of await t.former.getAll(of_room(room))) {
    if (!holds_more(await t.rows.get([room, entry.kind, entry.id]), entry.row)) {
      await t.former.delete(key_of(entry));
      continue;
    }
    if (entry.refused || tried.has(ref_of(entry)) || !records()[entry.kind]?.written_by.includes(held.role)) continue;
    size += JSON.stringify(entry.row).length;
    if (batch.length >= MOST_ROWS || (batch.length && size > MOST_CHARACTERS)) break;
    batch.push({ ref: ref_of(entry), row: entry.row });
  }
  return { epoch: held.epoch, people: held.people ?? {}, batch };
}

/**
 * Apply the answers (stores: rooms, former). What the role forbids waits; what the server finds invalid is marked.
 * @param {any} t @param {string} room @param {any} answer @returns {Promise<number>} how many rows the server took
 */
export async function brought_back(t, room, answer) {
  if ((await t.rooms.get(room))?.epoch !== answer.epoch) return 0;
  const results = new Map(answer.results.map((/** @type {any} */ one) => [one.ref, one]));
  let taken = 0;
  for (const entry of await t.former.getAll(of_room(room))) {
    const result = results.get(ref_of(entry));
    if (result?.status === "ok") {
      await t.former.delete(key_of(entry));
      taken++;
    } else if (result?.status === "invalid") await t.former.put({ ...entry, refused: result.reason ?? "invalid" });
  }
  return taken;
}

/** Let refused rows be given back once more (stores: former). @param {any} t @param {string} room */
export async function bring_again(t, room) {
  for (const { refused, ...entry } of await t.former.getAll(of_room(room))) if (refused) await t.former.put(entry);
}

/** @param {any} entry */
const ref_of = ({ epoch, kind, id }) => `${epoch} ${kind} ${id}`;
/** @param {any} entry */
const key_of = ({ room, kind, id, epoch }) => [room, kind, id, epoch];
