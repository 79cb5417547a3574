/** Who holds this phone: its key, its keeper, the rooms it is in. Before the first room, everything is in `local`. */
import { Refused, ask } from "./api.js";
import { rebuild } from "./clock.js";
import { MIRROR_STORES, joined_room, new_epoch } from "./mirror.js";
import { again } from "./outbox.js";
import { uuid7 } from "./uuid7.js";

export const LOCAL = "local";

/** The phone's own entry, made on the first start; the clock is rebuilt from what is stored. @param {import("./phone.js").Phone} phone */
export function wake(phone) {
  return phone.database.write(["device", "outbox", "kept", "rows", "former"], async (t) => {
    const identity = (await t.device.get("identity")) ?? {
      name: "identity",
      device: uuid7(phone.now(), phone.random),
      key: null,
      keeper: null,
    };
    await t.device.put(identity);
    await rebuild(t);
    return identity;
  });
}

/** @param {import("./phone.js").Phone} phone @returns {Promise<{device: string, key: string | null, keeper: {id: string, name: string} | null}>} */
export const identity = (phone) => phone.database.read(["device"], (t) => t.device.get("identity"));

/** The rooms this phone knows, ended ones too while ops of theirs are here. @param {import("./phone.js").Phone} phone @returns {Promise<any[]>} */
export const rooms = (phone) => phone.database.read(["rooms"], (t) => t.rooms.getAll());

/**
 * Join a room by an invite's secret. What was written in `local` moves into the first real room.
 * The phone makes its own key and keeps it before it asks, so that after a lost answer the same call
 * with the same secret gets the same answer and the invite is not wasted.
 * @param {import("./phone.js").Phone} phone
 * @param {{secret: string, keeper_name?: string, device_name: string}} who
 * @returns {Promise<string>} the room's id
 */
export async function join(phone, { secret, keeper_name, device_name }) {
  const held = await identity(phone);
  const body = { secret, device_name: device_name, ...(keeper_name ? { keeper_name: keeper_name } : {}) };
  const asking = (/** @type {any} */ more) => ask(phone, { method: "POST", path: "/api/v1/join", ...more });
  let key = held.key;
  let answer;
  try {
    if (!key) throw null;
    answer = await asking({ key, body });
  } catch (failed) {
    // A key that was revoked opens nothing any more: come in as a new phone, under the name one had.
    if (failed && !(failed instanceof Refused && failed.status === 401)) throw failed;
    key = await new_key(phone, secret);
    const named = held.keeper ? { keeper_name: held.keeper.name } : {};
    answer = await asking({ body: { ...named, ...body, device_key: key } });
  }
  await phone.database.write(["device", ...MIRROR_STORES], async (t) => {
    const before = await t.device.get("identity");
    const { device, keeper } = answer;
    await t.device.put({ ...before, device, keeper, key: answer.key ?? key });
    await t.device.delete("joining");
    await enter(t, answer.room, answer.role, answer.epoch, keeper);
  });
  return answer.room.id;
}

/** A key of 256 random bits for this secret, the same one if it is asked again. @param {import("./phone.js").Phone} phone @param {string} secret */
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

/** Make a room of one's own. @param {import("./phone.js").Phone} phone @param {string} name @returns {Promise<string>} */
export async function make_room(phone, name) {
  const held = await identity(phone);
  const made = await ask(phone, { method: "POST", path: "/api/v1/rooms", key: held.key ?? undefined, body: { name } });
  await phone.database.write(["device", ...MIRROR_STORES], (t) =>
    enter(t, { id: made.id, name: made.name }, made.role, made.epoch, held.keeper),
  );
  return made.id;
}

/** @param {any} t @param {{id: string, name: string}} room @param {string} role @param {string} epoch @param {any} keeper */
async function enter(t, room, role, epoch, keeper) {
  const before = await t.rooms.get(room.id);
  const others = (await t.rooms.getAll()).filter((/** @type {any} */ one) => one.id !== LOCAL && !one.ended);
  await t.rooms.put(
    before ? { ...before, ...room, role, ended: false, problem: null } : joined_room(room, role, epoch),
  );
  // Joined again: the cursor still holds if the epoch does; if the server was restored meanwhile, it starts anew.
  await new_epoch(t, room.id, epoch);
  if (!others.length) {
    for (const entry of await t.outbox.index("room").getAll(LOCAL)) {
      await t.outbox.put({ ...entry, room: room.id, by: entry.by ?? keeper.id });
    }
    for (const photo of await t.photos.index("state").getAll([LOCAL, "waiting"])) {
      await t.photos.put({ ...photo, room: room.id });
      await t.photos.delete([LOCAL, photo.sha256]);
    }
  }
  await again(t, room.id, (entry) => entry.reason === "membership-ended");
}

/**
 * Ask the server who we are, and take over names and roles. A room that had ended for us and is open
 * again (its server was restored, or this keeper was let in on another phone) goes on as after joining;
 * a room this keeper joined on another phone comes to this one too.
 * @param {import("./phone.js").Phone} phone
 * @returns {Promise<boolean>} whether a room is open again
 */
export async function refresh_me(phone) {
  const held = await identity(phone);
  if (!held?.key) return false;
  const me = await ask(phone, { method: "GET", path: "/api/v1/me", key: held.key });
  return phone.database.write(["device", ...MIRROR_STORES], async (t) => {
    const before = await t.device.get("identity");
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
