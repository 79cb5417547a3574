/** Who is in a room, on the server: asked for when it is looked at, never stored as if it were still true. */
/** @import { Role } from "../types/stores.js" */
import { Refused, ask } from "./api.js";
import { identity } from "./identity.js";

/** @typedef {{phone: import("./phone.js").Phone, id: string}} Room the opened fish room */
/** @typedef {{id: string, name: string, last_seen: string | null}} Device */
/** @typedef {{id: string, name: string, role: Role, devices: Device[]}} Person */
/**
 * @typedef {{
 *   id: string, role: Role, keeper: string | null, made_by: string, made_at: string, expires_at: string,
 * }} OpenInvite
 */
/** @typedef {{backups: {automatic: boolean, last_good_at: string | null, kept: number, faults: string[]}}} Upkeep */
/** @typedef {{id: string, link: string, role: Role, keeper: string | null, expires_at: string}} Invite */

/** @param {Room} room @returns {Promise<Person[]>} */
export const people = async (room) => (await call(room, "GET", "/people")).people;

/**
 * A single-use link: for one more keeper, or for one more phone of the member `keeper`.
 * @param {Room} room @param {{role?: string, hours?: number, keeper?: string}} how @returns {Promise<Invite>}
 */
export const invite = (room, how) => call(room, "POST", "/invites", how);

/**
 * A short code to type instead of a link, open for ten minutes at most.
 * @param {Room} room @param {{id: string, link: string}} made @returns {Promise<{code: string, expires_at: string}>}
 */
export const short_code = (room, { id, link }) =>
  call(room, "POST", `/invites/${id}/code`, { secret: link.slice(link.indexOf("#") + 1) });

/** Links that still open the room, without their secrets. @param {Room} room @returns {Promise<OpenInvite[]>} */
export const open_invites = async (room) => (await call(room, "GET", "/invites")).invites;

/** Close a link before it is used. @param {Room} room @param {string} id */
export const withdraw = (room, id) => call(room, "DELETE", `/invites/${id}`);

/** @param {Room} room @param {string} name */
export const rename = (room, name) => call(room, "PATCH", "", { name });

/** @param {Room} room @param {string} keeper_id @param {string} role */
export const set_role = (room, keeper_id, role) => call(room, "PATCH", `/people/${keeper_id}`, { role });

/**
 * Make another keeper the owner and step back to keeper: in this order, so that the room always has an owner.
 * @param {Room} room @param {string} to_id @param {string} from_id the owner until now
 */
export async function hand_over(room, to_id, from_id) {
  await set_role(room, to_id, "owner");
  await set_role(room, from_id, "keeper");
}

/**
 * End a keeper's membership, or one's own. It is no error if it has ended already.
 * @param {Room} room @param {string} keeper_id
 */
export async function leave(room, keeper_id) {
  try {
    await call(room, "DELETE", `/people/${keeper_id}`);
  } catch (failed) {
    if (!(failed instanceof Refused && failed.status === 410)) throw failed;
  }
}

/**
 * Since when this keeper has a calendar link, null if there is none.
 * @param {Room} room @returns {Promise<string | null>}
 */
export const calendar_since = async (room) => (await call(room, "GET", "/calendar")).made_at;

/**
 * Create this keeper's calendar link; any earlier link stops working.
 * @param {Room} room @returns {Promise<{link: string, made_at: string}>}
 */
export const make_calendar = (room) => call(room, "POST", "/calendar");

/** Close this keeper's calendar link. @param {Room} room */
export const close_calendar = (room) => call(room, "DELETE", "/calendar");

/**
 * What the server does by itself: its daily backups, and what is wrong with them. Only for owners.
 * @param {Room} room @returns {Promise<Upkeep>}
 */
export const upkeep = (room) => call(room, "GET", "/upkeep");

/** Shut out a lost or sold phone. @param {Room} room @param {string} device_id */
export const revoke = (room, device_id) => send(room, "DELETE", `/api/v1/devices/${device_id}`);

/** @param {Room} room @param {string} method @param {string} rest of the path @param {unknown} [body] */
const call = (room, method, rest, body) => send(room, method, `/api/v1/rooms/${room.id}${rest}`, body);

/** @param {Room} room @param {string} method @param {string} path @param {unknown} [body] */
async function send({ phone }, method, path, body) {
  const held = await identity(phone);
  return ask(phone, { method, path, key: held?.key ?? undefined, body });
}
