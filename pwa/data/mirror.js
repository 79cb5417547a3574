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
 * string>, total?: number}} Page
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
  const held = await followed(t, room_id, page);
  if (!held) return false;
  const { total: _total, ...rest } = await with_rows(t, held, page);
  await t.rooms.put({
    ...rest,
    ...(page.more && held.settled === 0 && page.total ? { total: page.total } : {}),
    since: page.next,
    settled: page.more ? held.settled : page.next,
  });
  return true;
}

/**
 * Hold rows that lie ahead of the cursor. The cursor stays: they are pulled once more in their turn, as they are then.
 * @param {In<"rooms" | "rows" | "device">} t @param {string} room_id @param {Page} page
 */
export async function apply_ahead(t, room_id, page) {
  const held = await followed(t, room_id, page);
  if (held) await t.rooms.put(await with_rows(t, held, page));
}

/**
 * The room's entry, if this page was asked for where the mirror ends now; else undefined.
 * @param {In<"rooms" | "rows">} t @param {string} room_id @param {Page} page
 */
async function followed(t, room_id, page) {
  const held = await t.rooms.get(room_id);
  if (!held || held.ended || page.epoch !== held.epoch || page.since !== held.since) return undefined;
  // Rows were lost under us: going on would hide the gap from mend_mirror.
  return held.count === (await t.rows.count(of_room(room_id))) ? held : undefined;
}

/**
 * The room's entry with the rows of a page.
 * @param {In<"rows" | "device">} t @param {RoomEntry} held @param {Page} page @returns {Promise<RoomEntry>}
 */
async function with_rows(t, held, page) {
  await Promise.all(page.rows.map(async (row) => t.rows.put({ ...row, room: held.id })));
  await see(t, page.rows.flatMap(stamps_of_row));
  const count = await t.rows.count(of_room(held.id));
  return { ...held, count, people: { ...held.people, ...page.people } };
}

/**
 * Delete the server's rows; the next pull starts from the first.
 * @param {In<"rooms" | "rows">} t @param {string} room_id @param {Partial<RoomEntry>} [changes] to the room's entry
 */
async function drop_mirror(t, room_id, changes = {}) {
  const held = await t.rooms.get(room_id);
  if (!held) return;
  await t.rows.delete(of_room(room_id));
  const { total: _total, ...rest } = held;
  await t.rooms.put({ ...rest, ...changes, since: 0, settled: 0, count: 0, begun: (held.begun ?? 0) + 1 });
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
  await drop_mirror(t, room_id, { epoch, aside: await t.former.count(of_room(room_id)), given: 0 });
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
  if (held && held.count !== count)
    await t.rooms.put({ ...held, since: 0, settled: 0, count, begun: (held.begun ?? 0) + 1 });
}

/** What tells one filling of a room's mirror from the next. @param {RoomEntry | null} room */
export const mirror_name = (room) => (room ? `${room.epoch} ${room.begun ?? 0}` : "");
