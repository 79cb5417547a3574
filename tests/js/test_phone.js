/** A phone for Node: the real data core on fake-indexeddb; the test holds its clock, randomness and transport. */
import "fake-indexeddb/auto";
import { install } from "../../pwa/contracts.js";
import { open_database } from "../../pwa/data/database.js";
import { join, open_room } from "../../pwa/data/fish_room.js";
import { share_once } from "../../pwa/data/share_once.js";
import { seeded } from "./drawn_numbers.js";
import { there } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());

let made = 0;

/** @typedef {import("../../pwa/data/phone.js").Phone} Phone */
/** @typedef {import("../../pwa/data/api.js").Outgoing} Outgoing */
/** @typedef {import("../../pwa/types/stores.js").Op} Op */
/** @typedef {import("../../pwa/types/stores.js").Stores} Stores */
/** @typedef {import("../../pwa/types/stores.js").StoreName} StoreName */
/**
 * The body of a push, of a bring-back and of a join: each handler reads what its own request holds.
 * @typedef {{epoch: string, ops: Op[], device_key: string, keeper_name?: string,
 *   rows: {ref: string, row: Row}[], people: Record<string, string>}} Body
 */
/** A request with the last word of its path. @typedef {Omit<Outgoing, "body"> & {what: string, body: Body}} Sent */
/** `body`: `any`, because many answers are wrong on purpose. */
/** @typedef {{status?: number, body?: any, retry_after_ms?: number | null}} Reply */
/** @typedef {import("../../pwa/types/stores.js").Row} Row */
/** @typedef {Record<string, (request: Sent) => Reply | Promise<Reply>>} Handlers */
/** @typedef {import("../../pwa/data/phone.js").Message} Message */
/** @typedef {import("../../pwa/types/records.js").ReadingFields} ReadingFields */
/**
 * A phone of which the test sets the clock and the other tabs.
 * @typedef {Phone & {name: string, clock: number, others: Pick<TestPhone, "heard">[],
 * heard: (message: Message) => void}} TestPhone
 */

/**
 * Phones made with the same `name` share a database, as two tabs do.
 * @param {{name?: string, seed?: number, send?: Phone["send"], database?: Phone["database"]}} [how]
 * @returns {Promise<TestPhone>}
 */
export async function test_phone({ name = `test-${++made}`, seed = made, send, database } = {}) {
  const chance = seeded(seed);
  const held = new Set();
  /** @type {Set<(message: Message) => void>} */ const listeners = new Set();
  /** @type {TestPhone} */
  const phone = {
    name,
    clock: Date.UTC(2026, 4, 4, 7, 30),
    database: database ?? (await open_database({ name })),
    now: () => phone.clock,
    random: (count) => Uint8Array.from({ length: count }, () => Math.floor(chance() * 256)),
    chance,
    send: send ?? (async () => Promise.reject(new Error("no transport"))),
    async alone(lock, work) {
      if (held.has(lock)) return { held: false };
      held.add(lock);
      try {
        return { held: true, result: await work() };
      } finally {
        held.delete(lock);
      }
    },
    tell: (message) => phone.others.forEach((other) => other.heard(message)),
    others: [],
    heard: (message) => listeners.forEach((listener) => listener(message)),
    hear(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    later: () => () => {},
  };
  return phone;
}

/** @template {StoreName} Name @typedef {Awaited<ReturnType<Stores[Name]["getAll"]>>} Held what a store holds */
/**
 * Everything in one store, or in several by their names.
 * @template {[StoreName, ...StoreName[]]} Names
 * @param {{database: Phone["database"]}} phone @param {Names} names
 * @returns {Promise<Names extends [infer One extends StoreName] ? Held<One> : {[Name in Names[number]]: Held<Name>}>}
 */
export const stored = (phone, ...names) =>
  phone.database.read(names, async (t) => {
    /** @type {Record<string, unknown[]>} */ const all = {};
    for (const name of names) all[name] = await t[name].getAll();
    return /** @type {any} the type depends on how many names there are */ (names.length === 1 ? all[names[0]] : all);
  });

/**
 * The entry of this name in the device store.
 * @template {keyof import("../../pwa/types/stores.js").DeviceEntries} Name
 * @param {{database: Phone["database"]}} phone @param {Name} name
 */
export const device_entry = async (phone, name) =>
  there(await phone.database.read(["device"], (t) => t.device.get(name)));

export const TANK = { name: "Moss corner", water_l: 54.2 };
/** @param {string} tank @param {number} [value] @param {Partial<ReadingFields>} [more] */
export const reading = (tank, value = 0.5, more = {}) => ({ tank, parameter: "total_ammonia", value, ...more });

/** What a scripted server answers to a join. */
export const WELCOME = {
  key: "k".repeat(43),
  device: "device-a",
  keeper: { id: "keeper-a", name: "Ada" },
  room: { id: "room-1", name: "Cellar" },
  role: "owner",
  epoch: "epoch-1",
};

/**
 * A transport that answers from a script: handlers by the last word of the path (join, me, push, pull, blobs).
 * A handler gets the request and returns `{status?, body}`. By default every pushed op is ok, and a pull brings nothing
 * new. `sent` lists the requests.
 * @param {Handlers} [handlers]
 */
export function scripted(handlers = {}) {
  /** @type {Sent[]} */ const sent = [];
  let seq = 1000;
  /** @type {Handlers} */
  const usual = {
    join: () => ({ status: 201, body: WELCOME }),
    me: () => ({
      body: {
        keeper: WELCOME.keeper,
        device: WELCOME.device,
        rooms: [{ ...WELCOME.room, role: "owner", epoch: "epoch-1" }],
      },
    }),
    push: ({ body }) =>
      pushed(
        body.ops.map((op) => ({ op: op.op, status: "ok", stamp: op.stamp, seq: ++seq })),
        { epoch: body.epoch },
      ),
    pull: (request) => page(request, []),
    "bring-back": ({ body }) => ({
      body: {
        epoch: body.epoch,
        server_time: "2026-05-04T07:30:00.000Z",
        results: body.rows.map(({ ref }) => ({ ref, status: "ok" })),
      },
    }),
    blobs: () => ({ status: 201, body: null }),
  };
  const send = async (/** @type {Outgoing} */ request) => {
    const what = request.path.includes("/blobs/") ? "blobs" : (request.path.split("?")[0].split("/").at(-1) ?? "");
    const asked = /** @type {Sent} */ ({ what, ...request });
    sent.push(asked);
    const handler = handlers[what] ?? usual[what];
    const { status = 200, body = null, retry_after_ms = null } = await handler(asked);
    return { status, body, retry_after_ms };
  };
  return { send, sent, handlers, usual };
}

/** The answer to a push. @param {object[]} results @param {object} [more] */
export const pushed = (results, more = {}) => ({
  body: { epoch: "epoch-1", server_time: "2026-05-04T07:30:00.000Z", results, ...more },
});

/**
 * A page of rows for a pull, from where it asked unless `more` says otherwise.
 * @param {Pick<Outgoing, "path">} request @param {(Row | {seq: number, [field: string]: unknown})[]} rows
 * @param {object} [more]
 */
export function page(request, rows, more = {}) {
  const query = new URLSearchParams(request.path.split("?")[1]);
  const since = Number(query.get("since"));
  const next = rows.at(-1)?.seq ?? since;
  const body = {
    epoch: query.get("epoch"),
    since,
    rows,
    next,
    more: false,
    server_time: "2026-05-04T07:30:00.000Z",
    people: {},
  };
  return { body: { ...body, ...more } };
}

/**
 * A row as the server sends it.
 * @param {number} seq @param {string} kind @param {string} id @param {Row["fields"]} fields @param {string} [stamp]
 * @returns {Row}
 */
export function row(
  seq,
  kind,
  id,
  fields,
  stamp = `${String(Date.UTC(2026, 4, 4, 7)).padStart(13, "0")}-00000-device-b`,
) {
  const stamps = Object.fromEntries(Object.keys(fields).map((name) => [name, stamp]));
  const made = {
    made_by: "keeper-b",
    made_at: "2026-05-04T07:00:00.000Z",
    changed_by: "keeper-b",
    changed_at: "2026-05-04T07:00:00.000Z",
  };
  return { seq, kind, id, fields, stamps, deleted: null, restored: null, ...made };
}

/**
 * Share an opened room once, as sync.js does, and show how it went.
 * @param {import("../../pwa/data/room_cache.js").RoomCache} cache
 */
export async function share(cache) {
  const outcome = await share_once(cache.phone, cache.id, (keys) => void cache.refresh(keys));
  await cache.refresh([]);
  return outcome;
}

/**
 * A phone that has joined the server's room; `share` shares it once.
 * @param {{send: Phone["send"]}} server @param {Parameters<typeof test_phone>[0]} [how]
 */
export async function joined_phone(server, how = {}) {
  const phone = await test_phone({ send: server.send, ...how });
  await join({ secret: "s", keeper_name: "Ada", device_name: "phone" }, phone);
  const { room, cache } = await open_room(WELCOME.room.id, phone);
  return { phone, room, cache, share: () => share(cache) };
}
