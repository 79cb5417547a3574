/**
 * The mirror: what the server said, and how far. A room's entry holds the cursor:
 * {id, name, role, epoch, since, settled, count, people, ended, problem, lastShared}.
 *   `since` the last row applied; `settled` the last row of a pull that reached the end; `count` the rows held.
 * Law: rows and cursor move in one transaction, and only from the very place the answer was asked for.
 * The functions run inside a transaction of their caller and name the stores they need.
 */
import { putAside } from "./bring_back.js";
import { see, stampsOfRow } from "./clock.js";
import { ofRoom } from "./database.js";
import { refuseAll, requeueKept, unsent } from "./outbox.js";
import { photosAgain } from "./photos.js";
import { records } from "../contracts.js";

/** The stores of `newEpoch`. */
export const MIRROR_STORES = ["rooms", "rows", "former", "outbox", "kept", "photos"];

/** A room that has just been joined. @param {{id: string, name: string}} room @param {string} role @param {string} epoch */
export const joinedRoom = (room, role, epoch) => ({
  people: {},
  lastShared: null,
  ...room,
  role,
  epoch,
  since: 0,
  settled: 0,
  count: 0,
  ended: false,
  problem: null,
});

/**
 * Apply one pulled page, or nothing if it is not the page that follows (stores: rooms, rows, device).
 * @param {any} t @param {string} room @param {any} page
 * @returns {Promise<{keys: any[]} | null>} the records it touched
 */
export async function applyPage(t, room, page) {
  const held = await t.rooms.get(room);
  if (!held || held.ended || page.epoch !== held.epoch || page.since !== held.since) return null;
  // Rows were lost under us: to go on would hide the gap from mendMirror.
  if (held.count !== (await t.rows.count(ofRoom(room)))) return null;
  await Promise.all(page.rows.map(async (/** @type {any} */ row) => t.rows.put({ ...row, room })));
  await see(t, page.rows.flatMap(stampsOfRow));
  await t.rooms.put({
    ...held,
    since: page.next,
    settled: page.more ? held.settled : page.next,
    count: await t.rows.count(ofRoom(room)),
    people: { ...held.people, ...page.people },
  });
  return { keys: page.rows.map((/** @type {any} */ row) => ({ kind: row.kind, id: row.id })) };
}

/** Forget the server's rows; the next pull starts from the first (stores: rooms, rows). @param {any} t @param {string} room @param {any} [changes] */
async function dropMirror(t, room, changes = {}) {
  const held = await t.rooms.get(room);
  if (!held) return;
  await t.rows.delete(ofRoom(room));
  await t.rooms.put({ ...held, ...changes, since: 0, settled: 0, count: 0 });
}

/** The server was restored from a backup (stores: MIRROR_STORES). @param {any} t @param {string} room @param {string} epoch */
export async function newEpoch(t, room, epoch) {
  const held = await t.rooms.get(room);
  if (!held || held.epoch === epoch) return;
  await putAside(t, room, held.epoch);
  await dropMirror(t, room, { epoch });
  await unsent(t, room);
  await requeueKept(t, room);
  if (records().photo.written_by.includes(held.role)) await photosAgain(t, room, "shared");
}

/** The membership has ended: the mirror goes, what was not shared stays and can be exported (stores: rooms, rows, former, outbox). @param {any} t @param {string} room */
export async function endMembership(t, room) {
  await dropMirror(t, room, { ended: true, role: null, problem: "ended" });
  await t.former.delete(ofRoom(room));
  await refuseAll(t, room, "membership-ended");
}

/** Rows that vanished under us (storage cleared in part) are pulled again; those that are left stay (stores: rooms, rows). @param {any} t @param {string} room */
export async function mendMirror(t, room) {
  const held = await t.rooms.get(room);
  const count = await t.rows.count(ofRoom(room));
  if (held && held.count !== count) await t.rooms.put({ ...held, since: 0, settled: 0, count });
}
