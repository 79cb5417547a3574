/** Who holds this phone: its key, its keeper, its rooms. Before the first room is joined, everything is in `local`. */
/** @import { In, Keeper, Role } from "../types/stores.js" */
import { Refused, ask } from "./api.js";
import { rebuild } from "./clock.js";
import { MIRROR_STORES, joined_room, new_epoch } from "./mirror.js";
import { again } from "./outbox.js";
import { uuid7 } from "./uuid7.js";

/** @typedef {import("./phone.js").Phone} Phone */
/**
 * @typedef {{
 *   device: string, keeper: Keeper, key?: string,
 *   room: {id: string, name: string}, role: Role, epoch: string,
 * }} Welcome what the server answers to a join
 */

export const LOCAL = "local";

const ENTER_STORES = /** @type {const} */ (["device", ...MIRROR_STORES]);

/** The phone's own entry, made on the first start; the clock is rebuilt if it is missing. @param {Phone} phone */
export function wake(phone) {
  return phone.database.write(["device", "outbox", "kept", "rows", "former"], async (t) => {
    const held = (await t.device.get("identity")) ?? {
      name: /** @type {const} */ ("identity"),
      device: uuid7(phone.now(), phone.random),
      key: null,
      keeper: null,
    };
    await t.device.put(held);
    await rebuild(t);
    return held;
  });
}

/** Who holds this phone; undefined before `wake`. @param {Phone} phone */
export const identity = (phone) => phone.database.read(["device"], (t) => t.device.get("identity"));

/** The rooms this phone knows, ended ones too. @param {Phone} phone */
export const rooms = (phone) => phone.database.read(["rooms"], (t) => t.rooms.getAll());

/**
 * Join a room by an invite's secret. What was written in `local` moves into the first real room.
 * The phone makes its own key and stores it before it asks. So after a lost answer the same call with the
 * same secret gets the same answer, and the invite is not wasted.
 * @param {Phone} phone
 * @param {{secret: string, keeper_name?: string, device_name: string}} who
 * @returns {Promise<string>} the room's id
 */
export async function join(phone, { secret, keeper_name, device_name }) {
  const held = await identity(phone);
  const body = { secret, device_name: device_name, ...(keeper_name ? { keeper_name: keeper_name } : {}) };
  /** @param {{key?: string, body: object}} request @returns {Promise<Welcome>} */
  const asking = (request) => ask(phone, { method: "POST", path: "/api/v1/join", ...request });
  let key = held?.key ?? null;
  let answer = key ? await joined_by_key(asking, key, body) : null;
  if (!answer) {
    key = await new_key(phone, secret);
    const named = held?.keeper ? { keeper_name: held.keeper.name } : {};
    answer = await asking({ body: { ...named, ...body, device_key: key } });
  }
  const { device, keeper, room, role, epoch } = answer;
  const its_key = answer.key ?? key;
  await phone.database.write(ENTER_STORES, async (t) => {
    await t.device.put({ name: "identity", device, keeper, key: its_key });
    await t.device.delete("joining");
    await enter(t, room, role, epoch, keeper);
  });
  return room.id;
}

/**
 * Join as the phone that the server knows by this key. Null if the key was revoked: such a phone joins as a new
 * one, under the keeper's former name.
 * @param {(request: {key: string, body: object}) => Promise<Welcome>} asking @param {string} key @param {object} body
 */
async function joined_by_key(asking, key, body) {
  try {
    return await asking({ key, body });
  } catch (failed) {
    if (failed instanceof Refused && failed.status === 401) return null;
    throw failed;
  }
}

/**
 * A key of 256 random bits for this secret; the same key if the secret is used again.
 * @param {Phone} phone @param {string} secret
 */
function new_key(phone, secret) {
  return phone.database.write(["device"], async (t) => {
    const begun = await t.device.get("joining");
    if (begun?.secret === secret) return begun.key;
    const bytes = String.fromCharCode(...phone.random(32));
    const key = btoa(bytes).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
    await t.device.put({ name: "joining", secret, key });
    return key;
  });
}

/**
 * Make a room on the server, with this keeper as its owner.
 * @param {Phone} phone @param {string} name @returns {Promise<string>} its id
 */
export async function make_room(phone, name) {
  const held = await identity(phone);
  const made = await ask(phone, { method: "POST", path: "/api/v1/rooms", key: held?.key ?? undefined, body: { name } });
  await phone.database.write(ENTER_STORES, (t) =>
    enter(t, { id: made.id, name: made.name }, made.role, made.epoch, held?.keeper ?? null),
  );
  return made.id;
}

/**
 * Enter a room in the database: as a new one, or again.
 * @param {In<"device" | "rooms" | "rows" | "former" | "outbox" | "kept" | "photos">} t
 * @param {{id: string, name: string}} room @param {Role} role @param {string} epoch @param {Keeper | null} keeper
 */
async function enter(t, room, role, epoch, keeper) {
  const before = await t.rooms.get(room.id);
  const others = (await t.rooms.getAll()).filter(({ id, ended }) => id !== LOCAL && !ended);
  await t.rooms.put(
    before ? { ...before, ...room, role, ended: false, problem: null } : joined_room(room, role, epoch),
  );
  // Joined again: the cursor holds if the epoch is the same; if the server was restored meanwhile, it starts from 0.
  await new_epoch(t, room.id, epoch);
  if (!others.length) {
    for (const entry of await t.outbox.index("room").getAll(LOCAL)) {
      await t.outbox.put({ ...entry, room: room.id, by: entry.by ?? keeper?.id ?? null });
    }
    for (const photo of await t.photos.index("state").getAll([LOCAL, "waiting"])) {
      await t.photos.put({ ...photo, room: room.id });
      await t.photos.delete([LOCAL, photo.sha256]);
    }
  }
  await again(t, room.id, (entry) => entry.reason === "membership-ended");
}

/**
 * Ask the server who this phone's keeper is, and store names and roles. A room that had ended for this keeper and
 * is open again (its server was restored, or the keeper was invited again on another phone) goes on as after
 * joining; a room that the keeper joined on another phone comes to this one too.
 * @param {Phone} phone
 * @returns {Promise<boolean>} whether a room is open again
 */
export async function refresh_me(phone) {
  const held = await identity(phone);
  if (!held?.key) return false;
  /** @type {{keeper: Keeper, rooms: {id: string, name: string, role: Role, epoch: string}[]}} */
  const me = await ask(phone, { method: "GET", path: "/api/v1/me", key: held.key });
  return phone.database.write(ENTER_STORES, async (t) => {
    const before = (await t.device.get("identity")) ?? held;
    await t.device.put({ ...before, keeper: me.keeper });
    let reopened = false;
    for (const { id, name, role, epoch } of me.rooms) {
      const room = await t.rooms.get(id);
      if (room?.ended) await enter(t, { id, name }, role, epoch, me.keeper);
      else if (room) await t.rooms.put({ ...room, name, role });
      else await t.rooms.put(joined_room({ id, name }, role, epoch));
      reopened ||= Boolean(room?.ended);
    }
    return reopened;
  });
}
