/** The rooms of this phone beside one another: how far each is shared, and how one that has ended goes. */
import { of_room } from "./database.js";

const LOCAL = "local";

/** @typedef {{id: string, name: string | null, role: string | null, ended: boolean, problem: string | null, lastShared: string | null, unshared: number, needs_you: number, photos_unshared: number}} Listed */

/** @param {import("./phone.js").Phone} phone @returns {Promise<Listed[]>} by name, those that have ended last; `local` without a name */
export function list(phone) {
  return phone.database.read(["rooms", "outbox", "photos"], async (t) => {
    const rooms = await t.rooms.getAll();
    const open = rooms.some((/** @type {any} */ room) => !room.ended);
    const local = { id: LOCAL, name: null, role: null, ended: false, problem: null, lastShared: null };
    const found = [];
    for (const { id, name, role, ended, problem, lastShared } of [...rooms, local]) {
      const entries = await t.outbox.index("room").getAll(id);
      if (id === LOCAL && open && !entries.length) continue;
      const needs_you = entries.filter((/** @type {any} */ entry) => entry.state === "needs you").length;
      const photos_unshared =
        (await t.photos.index("state").count([id, "waiting"])) +
        (await t.photos.index("state").count([id, "needs you"]));
      found.push({
        id,
        name,
        role,
        ended,
        problem,
        lastShared,
        unshared: entries.length - needs_you,
        needs_you,
        photos_unshared,
      });
    }
    return found.sort((a, b) => Number(a.ended) - Number(b.ended) || (a.name ?? "").localeCompare(b.name ?? ""));
  });
}

/**
 * Take a room off this phone with all that is left of it. Only one that has ended: an open one would only come back.
 * @param {import("./phone.js").Phone} phone @param {string} id @throws {RangeError} the room has not ended
 */
export function forget(phone, id) {
  return phone.database.write(["rooms", "rows", "former", "outbox", "kept", "photos", "device"], async (t) => {
    if (!(await t.rooms.get(id))?.ended) throw new RangeError("Only a room that has ended can be taken off this phone");
    await t.rows.delete(of_room(id));
    await t.former.delete(of_room(id));
    for (const { n } of await t.outbox.index("room").getAll(id)) await t.outbox.delete(n);
    for (const { op } of await t.kept.index("room").getAll(id)) await t.kept.delete(op.op);
    await t.photos.delete(of_room(id));
    await t.rooms.delete(id);
    if ((await t.device.get("last-room"))?.id === id) await t.device.delete("last-room");
  });
}
