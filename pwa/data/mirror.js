/**
 * The mirror: what the server sent, and up to which row. A room's entry (RoomEntry) holds the cursor.
 * Law: rows and cursor move in one transaction, and only from the place that the answer was asked for.
 * The functions run inside a transaction of their caller; the type of `t` names the stores they use.
 */
/** @import { In, Role, RoomEntry, Row } from "../types/stores.js" */
import { put_aside } from "./bring_back.js";
import { see, stamps_of_row } from "./clock.js";
import { of_room } from "./database.js";
import { refuse_all, requeue_kept, unsent } from "./outbox.js";
import { photos_again } from "./photos.js";
import { may_write } from "./write.js";

/** The stores of `new_epoch`. */
export const MIRROR_STORES = /** @type {const} */ (["rooms", "rows", "former", "outbox", "kept", "photos"]);

/**
 * @typedef {{epoch: string, since: number, next: number, more?: boolean, rows: Row[], people?: Record<string,
 * string>}} Page
 */

/**
 * The entry of a room that has just been joined.
 * @param {{id: string, name: string}} room @param {Role} role @param {string} epoch @returns {RoomEntry}
 */
export const joined_room = (room, role, epoch) => ({
  people: {},
  // This name is stored on phones; it stays as it is.
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
 * Apply one pulled page, or nothing if it is not the page that follows.
 * @param {In<"rooms" | "rows" | "device">} t @param {string} room_id @param {Page} page
 * @returns {Promise<boolean>} whether it was applied
 */
export async function apply_page(t, room_id, page) {
  const held = await t.rooms.get(room_id);
  if (!held || held.ended || page.epoch !== held.epoch || page.since !== held.since) return false;
  // Rows were lost under us: going on would hide the gap from mend_mirror.
  if (held.count !== (await t.rows.count(of_room(room_id)))) return false;
  await Promise.all(page.rows.map(async (row) => t.rows.put({ ...row, room: room_id })));
  await see(t, page.rows.flatMap(stamps_of_row));
  await t.rooms.put({
    ...held,
    since: page.next,
    settled: page.more ? held.settled : page.next,
    count: await t.rows.count(of_room(room_id)),
    people: { ...held.people, ...page.people },
  });
  return true;
}

/**
 * Delete the server's rows; the next pull starts from the first.
 * @param {In<"rooms" | "rows">} t @param {string} room_id @param {Partial<RoomEntry>} [changes] to the room's entry
 */
async function drop_mirror(t, room_id, changes = {}) {
  const held = await t.rooms.get(room_id);
  if (!held) return;
  await t.rows.delete(of_room(room_id));
  await t.rooms.put({ ...held, ...changes, since: 0, settled: 0, count: 0 });
}

/**
 * Begin again with a server that was restored from a backup.
 * @param {In<"rooms" | "rows" | "former" | "outbox" | "kept" | "photos">} t @param {string} room_id
 * @param {string} epoch
 */
export async function new_epoch(t, room_id, epoch) {
  const held = await t.rooms.get(room_id);
  if (!held || held.epoch === epoch) return;
  await put_aside(t, room_id, held.epoch);
  await drop_mirror(t, room_id, { epoch });
  await unsent(t, room_id);
  await requeue_kept(t, room_id);
  if (may_write(held.role, "photo")) await photos_again(t, room_id, "shared");
}

/**
 * The membership has ended: delete the mirror; what was not shared stays and can be exported.
 * @param {In<"rooms" | "rows" | "former" | "outbox">} t @param {string} room_id
 */
export async function end_membership(t, room_id) {
  await drop_mirror(t, room_id, { ended: true, role: null, problem: "ended" });
  await t.former.delete(of_room(room_id));
  await refuse_all(t, room_id, "membership-ended");
}

/**
 * Pull all rows again where some vanished under us (the browser cleared a part of the storage); the rest stays.
 * @param {In<"rooms" | "rows">} t @param {string} room_id
 */
export async function mend_mirror(t, room_id) {
  const held = await t.rooms.get(room_id);
  const count = await t.rows.count(of_room(room_id));
  if (held && held.count !== count) await t.rooms.put({ ...held, since: 0, settled: 0, count });
}
