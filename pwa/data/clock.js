/**
 * The hybrid logical clock: a stamp is never earlier than any stamp this phone has made or seen.
 * Kulkarni et al. 2014, "Logical physical clocks". The last stamp lives in the database, so that
 * two tabs never give the same one; should it be missing, it is rebuilt from all the stamps that are stored.
 */

const MOST_IN_A_MILLISECOND = 99999;

/** @param {number} ms @param {number} counter @param {string} device */
export const stamp_of = (ms, counter, device) =>
  `${String(ms).padStart(13, "0")}-${String(counter).padStart(5, "0")}-${device}`;

/** Milliseconds of a stamp. @param {string} stamp */
export const ms_of = (stamp) => Number(stamp.slice(0, 13));

/**
 * The stamp that follows `last` at this time. Stamps compare as text.
 * @param {string | null} last @param {number} now_ms corrected by the offset to the server @param {string} device
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
  let most = null;
  for (const stamp of stamps) if (stamp && (most === null || stamp > most)) most = stamp;
  return most;
}

/** Every stamp of a row of the mirror. @param {any} row @returns {(string | null)[]} */
export const stamps_of_row = (row) => [...Object.values(row.stamps ?? {}), row.deleted, row.restored];

/**
 * Take stamps for new writes, inside their transaction (stores: device).
 * @param {any} t @param {number} now_ms corrected @param {string} device @param {number} count
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

/** Fold in stamps seen from elsewhere (stores: device). @param {any} t @param {(string | null)[]} stamps */
export async function see(t, stamps) {
  const last = (await t.device.get("clock"))?.last ?? null;
  const most = latest([last, ...stamps]);
  if (most !== last) await t.device.put({ name: "clock", last: most });
}

/**
 * The clock as it is stored, or rebuilt from everything stored if there is none (stores: device, outbox, kept,
 * rows, former). The stored one is trusted: it moves in the very transaction that brings a stamp into the database.
 * `forget`: it counts for nothing, because the server has just moved back a stamp that lay in the future.
 * @param {any} t @param {{forget?: boolean}} [how]
 */
export async function rebuild(t, { forget = false } = {}) {
  const stored = (await t.device.get("clock"))?.last ?? null;
  if (stored && !forget) return stored;
  const waiting = (await t.outbox.index("stamp").openKeyCursor(null, "prev"))?.key;
  const kept = (await t.kept.index("stamp").openKeyCursor(null, "prev"))?.key;
  const former = (await t.former.getAll()).map((/** @type {any} */ { row }) => row);
  const told = latest([kept, ...[...(await t.rows.getAll()), ...former].flatMap(stamps_of_row)]);
  // Writes from the future still wait: to step back now would give stamps between them a second time.
  if (stored && waiting > (told ?? "")) return stored;
  const last = latest([waiting, told]);
  await t.device.put({ name: "clock", last });
  return last;
}
