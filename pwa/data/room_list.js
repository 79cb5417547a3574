/** The rooms of this phone: how far each is shared, which one opens next, and how one that has ended is deleted. */
/** @import { Role } from "../types/stores.js" */
/** @import { Phone } from "./phone.js" */
import { of_room } from "./database.js";
import { LOCAL, rooms } from "./identity.js";

/**
 * @typedef {{
 *   id: string, name: string | null, role: Role | null, ended: boolean, problem: string | null,
 *   lastShared: string | null, unshared: number, needs_you: number, photos_unshared: number,
 * }} Listed
 */

/**
 * Every room, sorted by name, ended ones last; `local`, without a name, where it holds something or is all there is.
 * @param {Phone} phone @returns {Promise<Listed[]>}
 */
export function list(phone) {
  return phone.database.read(["rooms", "outbox", "photos"], async (t) => {
    const known = await t.rooms.getAll();
    const open = known.some((room) => !room.ended);
    const local = { id: LOCAL, name: null, role: null, ended: false, problem: null, lastShared: null };
    /** @type {Listed[]} */ const found = [];
    for (const { id, name, role, ended, problem, lastShared } of [...known, local]) {
      const entries = await t.outbox.index("room").getAll(id);
      if (id === LOCAL && open && !entries.length) continue;
      const needs_you = entries.filter((entry) => entry.state === "needs you").length;
      const photos_unshared =
        (await t.photos.index("state").count([id, "waiting"])) +
        (await t.photos.index("state").count([id, "needs you"]));
      const unshared = entries.length - needs_you;
      found.push({ id, name, role, ended, problem, lastShared, unshared, needs_you, photos_unshared });
    }
    return found.sort((a, b) => Number(a.ended) - Number(b.ended) || (a.name ?? "").localeCompare(b.name ?? ""));
  });
}

/**
 * The id of the room to open: the one used last, else any open one, else `local`.
 * @param {Phone} phone
 */
export async function last_room(phone) {
  const known = await rooms(phone);
  const used = await phone.database.read(["device"], (t) => t.device.get("last-room"));
  // A room that has ended opens too if it was used last: its page says so, and shows what was not shared.
  const open = known.filter((room) => !room.ended);
  if (used?.id === LOCAL && !open.length) return LOCAL;
  return (known.find((room) => room.id === used?.id) ?? open[0])?.id ?? LOCAL;
}

/** Remember the room to open next time. @param {Phone} phone @param {string} room_id */
export async function remember(phone, room_id) {
  await phone.database.write(["device"], (t) => t.device.put({ name: "last-room", id: room_id }));
}

/**
 * Delete a room from this phone with everything of it. Only one that has ended: an open one would come back.
 * @param {Phone} phone @param {string} room_id @throws {RangeError} the room has not ended
 */
export function forget(phone, room_id) {
  return phone.database.write(["rooms", "rows", "former", "outbox", "kept", "photos", "device"], async (t) => {
    if (!(await t.rooms.get(room_id))?.ended)
      throw new RangeError("Only a room that has ended can be taken off this phone");
    await t.rows.delete(of_room(room_id));
    await t.former.delete(of_room(room_id));
    for (const { n } of await t.outbox.index("room").getAll(room_id)) await t.outbox.delete(n);
    for (const { op } of await t.kept.index("room").getAll(room_id)) await t.kept.delete(op.op);
    await t.photos.delete(of_room(room_id));
    await t.rooms.delete(room_id);
    if ((await t.device.get("last-room"))?.id === room_id) await t.device.delete("last-room");
  });
}
