/**
 * The hybrid logical clock: a new stamp is never earlier than any stamp this phone has given or seen.
 * Kulkarni et al. 2014, "Logical physical clocks". The last stamp is in the database, so that two tabs
 * never give the same one. If it is missing, it is rebuilt from all stamps that are stored.
 */
/** @import { In, Row } from "../types/stores.js" */

const MOST_IN_A_MILLISECOND = 99999;

/** @param {number} ms @param {number} counter @param {string} device */
export const stamp_of = (ms, counter, device) =>
  `${String(ms).padStart(13, "0")}-${String(counter).padStart(5, "0")}-${device}`;

/** Milliseconds of a stamp. @param {string} stamp */
export const ms_of = (stamp) => Number(stamp.slice(0, 13));

/**
 * The stamp that follows `last` at this time. Stamps compare as text.
 * @param {string | null} last @param {number} now_ms corrected by the offset to the server's clock
 * @param {string} device
 */
export function following(last, now_ms, device) {
  const now = Math.max(0, Math.floor(now_ms));
  if (last === null || now > ms_of(last)) return stamp_of(now, 0, device);
  const counter = Number(last.slice(14, 19)) + 1;
  return counter > MOST_IN_A_MILLISECOND
    ? stamp_of(ms_of(last) + 1, 0, device)
    : stamp_of(ms_of(last), counter, device);
}

/** The greatest of some stamps, null if there is none. @param {(string | null | undefined)[]} stamps */
export function latest(stamps) {
  /** @type {string | null} */ let most = null;
  for (const stamp of stamps) if (stamp && (most === null || stamp > most)) most = stamp;
  return most;
}

/**
 * Every stamp of a row. An archive may leave out `stamps`.
 * @param {Pick<Row, "deleted" | "restored"> & Partial<Pick<Row, "stamps">>} row @returns {(string | null)[]}
 */
export const stamps_of_row = (row) => [...Object.values(row.stamps ?? {}), row.deleted, row.restored];

/**
 * Give stamps to new writes, inside their transaction.
 * @param {In<"device">} t @param {number} now_ms corrected @param {string} device @param {number} count
 * @returns {Promise<string[]>} increasing
 */
export async function take(t, now_ms, device, count) {
  let last = (await t.device.get("clock"))?.last ?? null;
  const stamps = [];
  for (let made = 0; made < count; made++) {
    last = following(last, now_ms, device);
    stamps.push(last);
  }
  await t.device.put({ name: "clock", last });
  return stamps;
}

/**
 * Move the clock past stamps that came from elsewhere.
 * @param {In<"device">} t @param {(string | null)[]} stamps
 */
export async function see(t, stamps) {
  const last = (await t.device.get("clock"))?.last ?? null;
  const most = latest([last, ...stamps]);
  if (most !== last) await t.device.put({ name: "clock", last: most });
}

/**
 * The clock as it is stored, or rebuilt from all stored stamps if there is none. The stored clock is trusted: it
 * moves in the same transaction that brings a stamp into the database.
 * `forget`: ignore the stored clock, because the server has just moved a stamp back from the future.
 * @param {In<"device" | "outbox" | "kept" | "rows" | "former">} t @param {{forget?: boolean}} [how]
 */
export async function rebuild(t, { forget = false } = {}) {
  const stored = (await t.device.get("clock"))?.last ?? null;
  if (stored && !forget) return stored;
  const waiting = stamp_at((await t.outbox.index("stamp").openKeyCursor(null, "prev"))?.key);
  const kept = stamp_at((await t.kept.index("stamp").openKeyCursor(null, "prev"))?.key);
  const former = (await t.former.getAll()).map(({ row }) => row);
  const told = latest([kept, ...[...(await t.rows.getAll()), ...former].flatMap(stamps_of_row)]);
  // Writes from the future still wait: stepping back now would give the stamps between them a second time.
  if (stored && waiting > (told ?? "")) return stored;
  const last = latest([waiting, told]);
  await t.device.put({ name: "clock", last });
  return last;
}

/** The stamp that is a key of an index of stamps, "" if there is none. @param {IDBValidKey | undefined} key */
const stamp_at = (key) => (typeof key === "string" ? key : "");
