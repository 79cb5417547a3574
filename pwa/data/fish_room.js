/** The only door the screens use: one fish room's records, as they stand on this phone. */
import { LOCAL, identity, join as joinBy, make_room as makeBy, rooms as knownRooms, wake } from "./identity.js";
import { bring_again } from "./bring_back.js";
import { again, discard, undiscard } from "./outbox.js";
import { of_room } from "./database.js";
import { export_needs_you, export_room } from "./export_room.js";
import { import_room } from "./import_room.js";
import { this_phone } from "./phone.js";
import { forget as forgetBy, list } from "./room_list.js";
import { drop_photo, keep_photos, photo_bytes, photos_again, ready_photo, refused_photos } from "./photos.js";
import { readings_csv } from "./readings_csv.js";
import { fold, show } from "./view.js";
import { WRITE_STORES, iso_of, queue } from "./write.js";
import { kind_of, records as recordKinds } from "../contracts.js";

export { ArchiveBroken } from "./archive.js";
export { NotSaved } from "./database.js";
export { LOCAL };

/** More changed records than this are read anew all at once. */
const MANY = 60;

/**
 * Open a room; `local` before the first one is joined.
 * @param {string} [room_id] the room used last, if left out
 * @param {import("./phone.js").Phone | Promise<import("./phone.js").Phone>} [given] this browser's phone, unless a test brings another
 */
export async function open_room(room_id, given = this_phone()) {
  const phone = await given;
  await wake(phone);
  const id = room_id ?? (await last_room(phone));
  /** @type {Map<string, Map<string, ReturnType<typeof fold>>>} folded records by kind and id */
  let folded = new Map();
  /** @type {Map<string, any[]>} what `all` answered, until something changes */
  const shown = new Map();
  /** @type {any} */ let state = {};
  let offset_ms = 0;
  /** @type {Set<() => void>} */ const listeners = new Set();
  /** @type {Set<() => void>} */ const writers = new Set();

  async function read_state() {
    await phone.database.read(["rooms", "outbox", "photos", "device", "former"], async (t) => {
      const room = (await t.rooms.get(id)) ?? null;
      const entries = await t.outbox.index("room").getAll(id);
      offset_ms = (await t.device.get("offset"))?.ms ?? 0;
      const photos_waiting = await t.photos.index("state").count([id, "waiting"]);
      const photos_need_you = await t.photos.index("state").count([id, "needs you"]);
      const former = await t.former.count(of_room(id));
      state = { room, entries, former, photos_waiting, photos_need_you, identity: await t.device.get("identity") };
    });
  }

  async function read_all() {
    const { rows, entries, kept } = await phone.database.read(["rows", "outbox", "kept", "rooms"], async (t) => {
      const confirmed = confirmed_to(await t.rooms.get(id));
      return {
        rows: await t.rows.getAll(of_room(id)),
        entries: await t.outbox.index("room").getAll(id),
        kept: await t.kept.index("seq").getAll(IDBKeyRange.bound([id, confirmed], [id, []], true)),
      };
    });
    /** @type {Map<string, {kind: string, id: string, row?: any, entries: any[]}>} */ const parts = new Map();
    const part = (/** @type {string} */ kind, /** @type {string} */ its) => {
      const key = `${kind}/${its}`;
      const found = parts.get(key) ?? { kind, id: its, entries: [] };
      parts.set(key, found);
      return found;
    };
    for (const row of rows) part(row.kind, row.id).row = row;
    for (const entry of [...kept, ...entries]) part(entry.op.kind, entry.op.id).entries.push(entry);
    folded = new Map();
    for (const one of parts.values()) keep(one.kind, one.id, fold(one.row, one.entries));
    shown.clear();
  }

  async function read_some(/** @type {{kind: string, id: string}[]} */ keys) {
    await phone.database.read(["rows", "outbox", "kept", "rooms"], async (t) => {
      const confirmed = confirmed_to(await t.rooms.get(id));
      for (const one of keys) {
        const key = [id, one.kind, one.id];
        const row = await t.rows.get(key);
        const kept = (await t.kept.index("record").getAll(key)).filter(
          (/** @type {any} */ entry) => entry.seq > confirmed,
        );
        const entries = [...kept, ...(await t.outbox.index("record").getAll(key))];
        if (row || entries.length) keep(one.kind, one.id, fold(row, entries));
        else folded.get(one.kind)?.delete(one.id);
        shown.delete(one.kind);
      }
    });
  }

  function keep(/** @type {string} */ kind, /** @type {string} */ its, /** @type {ReturnType<typeof fold>} */ record) {
    if (!folded.has(kind)) folded.set(kind, new Map());
    folded.get(kind)?.set(its, record);
  }

  // Readings of the database follow one another, so that an older one never lands on a newer.
  /** @type {Promise<void>} */ let reading = Promise.resolve();
  /** @type {Promise<void> | null} a reading of everything that has not begun */ let reading_all = null;
  function refresh_quietly(/** @type {{kind: string, id: string}[] | null} */ keys) {
    const all = keys === null || keys.length > MANY;
    if (reading_all) return reading_all;
    const mine = reading
      .catch(() => {})
      .then(async () => {
        if (all) {
          reading_all = null;
          await read_all();
        } else if (keys.length) await read_some(keys);
        await read_state();
        announce();
      });
    if (all) reading_all = mine;
    reading = mine;
    return mine;
  }

  function refresh(/** @type {{kind: string, id: string}[] | null} */ keys) {
    phone.tell({ room: id, keys });
    return refresh_quietly(keys);
  }

  /** What is saved is saved: a reading that fails afterwards must not be told as a failed write. */
  async function saved(/** @type {{kind: string, id: string}[] | null} */ keys) {
    await refresh(keys).catch((failed) => console.warn("Saved, but not yet shown:", failed));
    phone.keep?.();
    for (const heard of writers) heard();
  }

  const announce = () => listeners.forEach((listener) => listener());
  const unhear = phone.hear((message) => {
    if (message.room === id) void refresh_quietly(message.keys);
  });

  await read_all();
  await read_state();

  return {
    id,
    /** Every record of a kind that is to be seen. The same array until something changes. @param {string} kind @returns {any[]} */
    all(kind) {
      const spec = recordKinds()[kind];
      if (!spec) throw new RangeError(`There is no record kind named ${kind}`);
      if (!shown.has(kind)) shown.set(kind, show(spec, folded.get(kind) ?? new Map()));
      return /** @type {any[]} */ (shown.get(kind));
    },
    /** One record, null if there is none to be seen. @param {string} kind @param {string} its @returns {any} */
    get(kind, its) {
      return this.all(kind).find((one) => one.id === its) ?? null;
    },
    /** What a record said before it was corrected, the latest first. @param {string} kind @param {string} its @returns {any[]} */
    earlier(kind, its) {
      const found = [];
      const seen = new Set([its]);
      let before = folded.get(kind)?.get(its)?.fields.supersedes;
      while (before && !seen.has(before)) {
        const record = folded.get(kind)?.get(before);
        if (!record) break;
        seen.add(before);
        found.push({ ...record.fields, id: before, kind, meta: record.meta });
        before = record.fields.supersedes;
      }
      return found;
    },
    /**
     * Save changes on this phone, and pictures with their records, all or none; the ids, in the order given, pictures last.
     * @param {import("./write.js").Change[]} changes @param {import("./photos.js").Picture[]} [pictures] @returns {Promise<string[]>}
     * @throws {import("../contracts.js").InvalidInput} a field breaks its kind; nothing is written
     * @throws {import("./database.js").NotSaved} the phone has no room or its storage failed; nothing is written
     */
    async write(changes, pictures = []) {
      const ready = await Promise.all(pictures.map(ready_photo));
      const records = await phone.database.write(
        ready.length ? [...WRITE_STORES, "photos"] : WRITE_STORES,
        async (t) => {
          await keep_photos(t, id, ready);
          return queue(t, phone, recordKinds(), id, [...changes, ...ready.map(({ change }) => change)]);
        },
      );
      await saved(records);
      return records.map((/** @type {any} */ one) => one.id);
    },
    /**
     * Save a picture with its record. @param {Blob} picture already shrunk @param {Record<string, any>} fields
     * @returns {Promise<string>} the record's id
     */
    async add_photo(picture, fields) {
      const [its] = await this.write([], [{ picture, fields }]);
      return its;
    },
    /** The pictures that the server refused. @returns {Promise<{sha256: string, reason: string}[]>} */
    refused_photos: () => refused_photos(phone, id),
    /** Let go of a refused picture: its bytes and its records. @param {string} hash @returns {Promise<() => Promise<void>>} the undo */
    async discard_photo(hash) {
      const records = this.all("photo").filter((/** @type {any} */ one) => one.sha256 === hash);
      const change = (/** @type {"del" | "restore"} */ type) =>
        records.map((/** @type {any} */ one) => ({ type, kind: "photo", id: one.id }));
      const stores = [...WRITE_STORES, "photos"];
      let dropped = /** @type {any} */ (null);
      await phone.database.write(stores, async (t) => {
        dropped = await drop_photo(t, id, hash);
        if (dropped) await queue(t, phone, recordKinds(), id, change("del"));
      });
      await saved(records);
      return async () => {
        if (!dropped) return;
        await phone.database.write(stores, async (t) => {
          await t.photos.put(dropped);
          await queue(t, phone, recordKinds(), id, change("restore"));
        });
        await saved(records);
      };
    },
    /** A picture's bytes, null if they are not here and cannot be had now. @param {string} hash */
    photo: (hash) => photo_bytes(phone, id, hash),
    /** @param {() => void} listener called after anything here has changed @returns {() => void} stop */
    on_change(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    /** Now by the server's clock as far as it is known, as a record's `at` is written. */
    now: () => iso_of(phone.now() + offset_ms),
    /** How far this phone is shared: the true words of the outbox. */
    sharing() {
      const entries = state.entries;
      const count = (/** @type {string} */ its) =>
        entries.filter((/** @type {any} */ entry) => entry.state === its).length;
      return {
        waiting: count("waiting"),
        sending: count("sending"),
        needs_you: entries.filter((/** @type {any} */ entry) => entry.state === "needs you"),
        photos_waiting: state.photos_waiting,
        photos_need_you: state.photos_need_you,
        not_back: state.former,
        lastShared: state.room?.lastShared ?? null,
        joined: Boolean(state.room && !state.room.ended && state.identity?.key),
        problem: state.room?.problem ?? null,
      };
    },
    /** The records that ops here change and are not shared yet, refused ones left out. @returns {{kind: string, id: string}[]} */
    unshared: () =>
      state.entries
        .filter((/** @type {any} */ entry) => entry.state !== "needs you")
        .map((/** @type {any} */ { op }) => ({ kind: op.kind, id: op.id })),
    /** The room's name and this keeper's role, null before joining. */
    about: () => (state.room ? { id, name: state.room.name, role: state.room.role, ended: state.room.ended } : null),
    /** This phone's keeper, null before joining. @returns {{id: string, name: string} | null} */
    me: () => state.identity?.keeper ?? null,
    /** A keeper's name, null if unknown. @param {string | null} keeper @returns {string | null} */
    name_of(keeper) {
      if (keeper === null) return null;
      return (
        state.room?.people?.[keeper] ?? (state.identity?.keeper?.id === keeper ? state.identity.keeper.name : null)
      );
    },
    /** Whether this keeper may write a kind; anyone may before joining. @param {string} kind */
    may: (kind) => !state.room || kind_of(kind).written_by.includes(state.room.role),
    /** All of the room that is on this phone, as an open archive (a ZIP). @returns {Promise<Blob>} */
    export() {
      return export_room(phone, id, this.readings());
    },
    /** The readings that stand as CSV (RFC 4180), the same columns as the archive's `readings.csv`. @returns {string} */
    readings() {
      return readings_csv(this.all("reading"), this.all("tank"), this.name_of);
    },
    /** What the server refused, as an open archive (JSON lines). @returns {Promise<Blob>} */
    export_needs_you: () => export_needs_you(phone, id),
    /**
     * Take an archive in: what is not here, and what is newer than here.
     * @param {Blob} file @returns {Promise<{records: number, ops: number, photos: number}>} what was new
     * @throws {import("./archive.js").ArchiveBroken} nothing was taken in
     */
    async import(file) {
      const done = await import_room(phone, recordKinds(), id, file);
      await saved(null);
      return done;
    },
    /** Send refused ops again: those named, or all, and pictures too. @param {string[]} [ops] */
    async try_again(ops) {
      await phone.database.write(["outbox", "photos", "former"], async (t) => {
        await again(t, id, (entry) => !ops || ops.includes(entry.op.op));
        if (ops) return;
        await photos_again(t, id, "needs you");
        await bring_again(t, id);
      });
      await saved(null);
    },
    /** Let go of refused ops, and of what hangs on them. @param {string[]} ops @returns {Promise<() => Promise<void>>} the undo */
    async discard(ops) {
      const gone = await phone.database.write(["outbox", "kept", "rows"], (t) => discard(t, id, ops));
      const keys = gone.map((/** @type {any} */ { op }) => ({ kind: op.kind, id: op.id }));
      await refresh(keys);
      return async () => {
        await phone.database.write(["outbox", "kept"], (t) => undiscard(t, gone));
        await refresh(keys);
      };
    },
    close() {
      unhear();
      listeners.clear();
    },
    /** For sync.js and archive.js alone. */
    inner: {
      phone,
      id,
      refresh,
      async refresh_state() {
        await refresh([]);
      },
      /** Read everything anew, without telling other tabs. */
      reread: () => refresh_quietly(null),
      /** @param {() => void} heard @returns {() => void} */
      on_write(heard) {
        writers.add(heard);
        return () => writers.delete(heard);
      },
    },
  };
}

/**
 * Up to where the mirror speaks for the ops that were acknowledged. Of a room that has ended all of them
 * are the others' now: only what was not shared is still seen.
 * @param {{settled: number, ended: boolean} | undefined} room
 */
const confirmed_to = (room) => (room?.ended ? Infinity : (room?.settled ?? 0));

/** @param {import("./phone.js").Phone} phone */
async function last_room(phone) {
  const all = await knownRooms(phone);
  const used = await phone.database.read(["device"], (t) => t.device.get("last-room"));
  // One that has ended opens too if it was the last used: its page says so, and holds what was not shared.
  const open = all.filter((room) => !room.ended);
  if (used?.id === LOCAL && !open.length) return LOCAL;
  return (all.find((room) => room.id === used?.id) ?? open[0])?.id ?? LOCAL;
}

/** Remember the room to open next time. @param {string} id */
export async function use_room(id, given = this_phone()) {
  const phone = await given;
  await phone.database.write(["device"], (t) => t.device.put({ name: "last-room", id }));
}

/** The rooms this phone is or was in. */
export const rooms = async (given = this_phone()) => knownRooms(await given);

/** Every room of this phone with how far it is shared; `local` too where it holds something or is all there is. */
export const room_list = async (given = this_phone()) => list(await given);

/** Take a room that has ended off this phone, with all that is left of it. @param {string} id */
export const forget_room = async (id, given = this_phone()) => forgetBy(await given, id);

/** Who holds this phone. */
export const who = async (given = this_phone()) => {
  const { device, keeper, key } = await identity(await given);
  return { device, keeper, signed_in: key !== null };
};

/** Join a room by an invite's secret. @param {{secret: string, keeper_name?: string, device_name: string}} how @returns {Promise<string>} its id */
export async function join(how, given = this_phone()) {
  const phone = await given;
  await wake(phone);
  return joinBy(phone, how);
}

/** Make a room of one's own on the server. @param {string} name @returns {Promise<string>} its id */
export const make_room = async (name, given = this_phone()) => makeBy(await given, name);
