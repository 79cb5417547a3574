/** Who is in a room, on the server: asked for when looked at, never kept as if it were still true. */
import { Refused, ask } from "./api.js";
import { identity, refresh_me } from "./identity.js";

/** @typedef {{inner: {phone: import("./phone.js").Phone, id: string}}} Room */
/** @typedef {{id: string, name: string, role: string, devices: {id: string, name: string, last_seen: string | null}[]}} Person */
/** @typedef {{id: string, role: string, keeper: string | null, made_by: string, made_at: string, expires_at: string}} OpenInvite */

/** @param {Room} room @returns {Promise<Person[]>} */
export const people = async (room) => (await call(room, "GET", "/people")).people;

/**
 * A single-use link: for one more keeper, or for one more phone of the member `keeper`.
 * @param {Room} room @param {{role?: string, hours?: number, keeper?: string}} how
 * @returns {Promise<{id: string, link: string, role: string, keeper: string | null, expires_at: string}>}
 */
export const invite = (room, how) => call(room, "POST", "/invites", how);

/** Links that still open the door, without their secrets. @param {Room} room @returns {Promise<OpenInvite[]>} */
export const open_invites = async (room) => (await call(room, "GET", "/invites")).invites;

/** Close a link before it is used. @param {Room} room @param {string} id */
export const withdraw = (room, id) => call(room, "DELETE", `/invites/${id}`);

/** @param {Room} room @param {string} name */
export const rename = (room, name) => call(room, "PATCH", "", { name });

/** @param {Room} room @param {string} keeper @param {string} role */
export const set_role = (room, keeper, role) => call(room, "PATCH", `/people/${keeper}`, { role });

/**
 * Make another the owner and step back to keeper: the other first, so that the room is never without one.
 * @param {Room} room @param {string} to @param {string} from oneself
 */
export async function hand_over(room, to, from) {
  await set_role(room, to, "owner");
  await set_role(room, from, "keeper");
}

/** Take a keeper out of the room, or oneself. One who is out already is out. @param {Room} room @param {string} keeper */
export async function leave(room, keeper) {
  try {
    await call(room, "DELETE", `/people/${keeper}`);
  } catch (failed) {
    if (!(failed instanceof Refused && failed.status === 410)) throw failed;
  }
}

/** Since when this keeper has a calendar link, null if there is none. @param {Room} room @returns {Promise<string | null>} */
export const calendar_since = async (room) => (await call(room, "GET", "/calendar")).made_at;

/** A calendar link of one's own, in place of the former. @param {Room} room @returns {Promise<{link: string, made_at: string}>} */
export const make_calendar = (room) => call(room, "POST", "/calendar");

/** Close one's own calendar link. @param {Room} room */
export const close_calendar = (room) => call(room, "DELETE", "/calendar");

/** Shut out a lost or sold phone. @param {Room} room @param {string} device */
export const revoke = (room, device) => send(room, "DELETE", `/api/v1/devices/${device}`);

/** Take over the room's name and one's role as the server has them now. @param {Room & {inner: {refresh_state: () => Promise<void>}}} room */
export async function refresh_role({ inner }) {
  await refresh_me(inner.phone);
  await inner.refresh_state();
}

/** @param {Room} room @param {string} method @param {string} rest @param {unknown} [body] */
const call = (room, method, rest, body) => send(room, method, `/api/v1/rooms/${room.inner.id}${rest}`, body);

/** @param {Room} room @param {string} method @param {string} path @param {unknown} [body] */
async function send({ inner: { phone } }, method, path, body) {
  const held = await identity(phone);
  return ask(phone, { method, path, key: held.key ?? undefined, body });
}
