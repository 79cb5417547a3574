/**
 * The mirror: what the server said, and how far. A room's entry holds the cursor:
 * {id, name, role, epoch, since, settled, count, people, ended, problem, lastShared}.
 *   `since` the last row applied; `settled` the last row of a pull that reached the end; `count` the rows held.
 * Law: rows and cursor move in one transaction, and only from the very place the answer was asked for.
 * The functions run inside a transaction of their caller and name the stores they need.
 */
import { put_aside } from "./bring_back.js";
import { see, stamps_of_row } from "./clock.js";
import { of_room } from "./database.js";
import { refuse_all, requeue_kept, unsent } from "./outbox.js";
import { photos_again } from "./photos.js";
import { records } from "../contracts.js";

/** The stores of `new_epoch`. */
export const MIRROR_STORES = ["rooms", "rows", "former", "outbox", "kept", "photos"];

/** A room that has just been joined. @param {{id: string, name: string}} room @param {string} role @param {string} epoch */
export const joined_room = (room, role, epoch) => ({
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
export async function apply_page(t, room, page) {
  const held = await t.rooms.get(room);
  if (!held || held.ended || page.epoch !== held.epoch || page.since !== held.since) return null;
  // Rows were lost under us: to go on would hide the gap from mend_mirror.
  if (held.count !== (await t.rows.count(of_room(room)))) return null;
  await Promise.all(page.rows.map(async (/** @type {any} */ row) => t.rows.put({ ...row, room })));
  await see(t, page.rows.flatMap(stamps_of_row));
  await t.rooms.put({
    ...held,
    since: page.next,
    settled: page.more ? held.settled : page.next,
    count: await t.rows.count(of_room(room)),
    people: { ...held.people, ...page.people },
  });
  return { keys: page.rows.map((/** @type {any} */ row) => ({ kind: row.kind, id: row.id })) };
}

/** Forget the server's rows; the next pull starts from the first (stores: rooms, rows). @param {any} t @param {string} room @param {any} [changes] */
async function drop_mirror(t, room, changes = {}) {
  const held = await t.rooms.get(room);
  if (!held) return;
  await t.rows.delete(of_room(room));
  await t.rooms.put({ ...held, ...changes, since: 0, settled: 0, count: 0 });
}

/** The server was restored from a backup (stores: MIRROR_STORES). @param {any} t @param {string} room @param {string} epoch */
export async function new_epoch(t, room, epoch) {
  const held = await t.rooms.get(room);
  if (!held || held.epoch === epoch) return;
  await put_aside(t, room, held.epoch);
  await drop_mirror(t, room, { epoch });
  await unsent(t, room);
  await requeue_kept(t, room);
  if (records().photo.written_by.includes(held.role)) await photos_again(t, room, "shared");
}

/** The membership has ended: the mirror goes, what was not shared stays and can be exported (stores: rooms, rows, former, outbox). @param {any} t @param {string} room */
export async function end_membership(t, room) {
  await drop_mirror(t, room, { ended: true, role: null, problem: "ended" });
  await t.former.delete(of_room(room));
  await refuse_all(t, room, "membership-ended");
}

/** Rows that vanished under us (storage cleared in part) are pulled again; those that are left stay (stores: rooms, rows). @param {any} t @param {string} room */
export async function mend_mirror(t, room) {
  const held = await t.rooms.get(room);
  const count = await t.rows.count(of_room(room));
  if (held && held.count !== count) await t.rooms.put({ ...held, since: 0, settled: 0, count });
}
