/** Who is in a room, on the server: asked for when looked at, never kept as if it were still true. */
import { ask } from "./api.js";
import { identity, refreshMe } from "./identity.js";

/** @typedef {{inner: {phone: import("./phone.js").Phone, id: string}}} Room */
/** @typedef {{id: string, name: string, role: string, devices: {id: string, name: string, last_seen: string | null}[]}} Person */

/** @param {Room} room @returns {Promise<Person[]>} */
export const people = async (room) => (await call(room, "GET", "/people")).people;

/** A single-use link for one more keeper. @param {Room} room @param {string} role @returns {Promise<{link: string, role: string, expires_at: string}>} */
export const invite = (room, role) => call(room, "POST", "/invites", { role });

/** @param {Room} room @param {string} name */
export const rename = (room, name) => call(room, "PATCH", "", { name });

/** Take a keeper out of the room, or oneself. @param {Room} room @param {string} keeper */
export const leave = (room, keeper) => call(room, "DELETE", `/people/${keeper}`);

/** Shut out a lost or sold phone. @param {Room} room @param {string} device */
export const revoke = (room, device) => send(room, "DELETE", `/api/v1/devices/${device}`);

/** Take over the room's name and one's role as the server has them now. @param {Room & {inner: {refreshState: () => Promise<void>}}} room */
export async function refresh_me({ inner }) {
  await refreshMe(inner.phone);
  await inner.refreshState();
}

/** @param {Room} room @param {string} method @param {string} rest @param {unknown} [body] */
const call = (room, method, rest, body) => send(room, method, `/api/v1/rooms/${room.inner.id}${rest}`, body);

/** @param {Room} room @param {string} method @param {string} path @param {unknown} [body] */
async function send({ inner: { phone } }, method, path, body) {
  const held = await identity(phone);
  return ask(phone, { method, path, key: held.key ?? undefined, body });
}
