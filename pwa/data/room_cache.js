/**
 * One room's records in memory: read from the database, folded, and read again where they change.
 * fish_room.js shows them to the screens, sync.js keeps them shared.
 */
/** @import { Entry, In, KeptEntry, Keeper, MirrorRow, RecordKey, RoomEntry } from "../types/stores.js" */
/** @import { Folded, FoldedById, Shown } from "./view.js" */
import { kind_of } from "../contracts.js";
import { of_room } from "./database.js";
import { fold, show } from "./view.js";

/** If more records than this changed, everything is read again at once. */
const MANY = 60;

/** @typedef {RecordKey[] | null} Keys records that changed, null for all */
/**
 * @typedef {{
 *   room: RoomEntry | null, entries: Entry[], former: number, photos_waiting: number, photos_need_you: number,
 *   keeper: Keeper | null, has_key: boolean, offset_ms: number,
 * }} State what the phone knows of a room besides its records
 */

const RECORD_STORES = /** @type {const} */ (["rows", "outbox", "kept", "rooms"]);
const STATE_STORES = /** @type {const} */ (["rooms", "outbox", "photos", "device", "former"]);

/** Read a room into memory. @param {import("./phone.js").Phone} phone @param {string} room_id */
export async function open_cache(phone, room_id) {
  const cache = new RoomCache(phone, room_id);
  await cache.open();
  return cache;
}

export class RoomCache {
  /** @type {Map<string, FoldedById>} folded records by kind and id */
  #folded = new Map();
  /** @type {Map<string, Shown[]>} what `all` answered, until something changes */
  #shown = new Map();
  /** @type {State} */
  state = {
    room: null,
    entries: [],
    former: 0,
    photos_waiting: 0,
    photos_need_you: 0,
    keeper: null,
    has_key: false,
    offset_ms: 0,
  };
  /** @type {Set<() => void>} */ #listeners = new Set();
  /** @type {Set<() => void>} */ #writers = new Set();
  // Reads follow one another, so that an older one never replaces a newer.
  /** @type {Promise<void>} */ #reading = Promise.resolve();
  /** @type {Promise<void> | null} a read of everything that has not begun */ #reading_all = null;
  #unhear = () => {};

  /** @param {import("./phone.js").Phone} phone @param {string} id */
  constructor(phone, id) {
    this.phone = phone;
    this.id = id;
  }

  async open() {
    this.#unhear = this.phone.hear((message) => {
      if (message.room === this.id) void this.reread(message.keys);
    });
    await this.#read_all();
    await this.#read_state();
  }

  close() {
    this.#unhear();
    this.#listeners.clear();
  }

  /** The records of a kind as they are shown; the same array until something changes. @param {string} kind */
  shown(kind) {
    const held = this.#shown.get(kind) ?? show(kind_of(kind), this.#folded.get(kind) ?? new Map());
    this.#shown.set(kind, held);
    return held;
  }

  /** One record as it is stored, shown or not. @param {string} kind @param {string} id */
  folded(kind, id) {
    return this.#folded.get(kind)?.get(id);
  }

  /** Call `listener` after anything here has changed. @param {() => void} listener @returns {() => void} stop */
  on_change(listener) {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** Call `listener` after each write on this tab. @param {() => void} listener @returns {() => void} stop */
  on_write(listener) {
    this.#writers.add(listener);
    return () => this.#writers.delete(listener);
  }

  /** Records were changed on this tab: tell the other tabs, and read them again. @param {Keys} keys */
  refresh(keys) {
    this.phone.tell({ room: this.id, keys });
    return this.reread(keys);
  }

  /** A write was saved: a read that fails afterwards must not be reported as a failed write. @param {Keys} keys */
  async saved(keys) {
    await this.refresh(keys).catch((failed) => console.warn("Saved, but not yet shown:", failed));
    this.phone.keep?.();
    for (const listener of this.#writers) listener();
  }

  /** Read records again, without telling the other tabs. @param {Keys} [keys] */
  reread(keys = null) {
    if (this.#reading_all) return this.#reading_all;
    const all = keys === null || keys.length > MANY;
    const mine = this.#reading
      .catch(() => {})
      .then(async () => {
        if (all) {
          this.#reading_all = null;
          await this.#read_all();
        } else if (keys.length) await this.#read_some(keys);
        await this.#read_state();
        for (const listener of this.#listeners) listener();
      });
    if (all) this.#reading_all = mine;
    this.#reading = mine;
    return mine;
  }

  async #read_state() {
    const { id } = this;
    this.state = await this.phone.database.read(STATE_STORES, async (t) => {
      const room = (await t.rooms.get(id)) ?? null;
      const entries = await t.outbox.index("room").getAll(id);
      const offset_ms = (await t.device.get("offset"))?.ms ?? 0;
      const photos_waiting = await t.photos.index("state").count([id, "waiting"]);
      const photos_need_you = await t.photos.index("state").count([id, "needs you"]);
      const former = await t.former.count(of_room(id));
      const { keeper = null, key = null } = (await t.device.get("identity")) ?? {};
      return { room, entries, former, photos_waiting, photos_need_you, keeper, has_key: Boolean(key), offset_ms };
    });
  }

  async #read_all() {
    const { rows, entries } = await this.phone.database.read(RECORD_STORES, (t) => all_of(t, this.id));
    /** @type {Map<string, {key: RecordKey, row?: MirrorRow, entries: (Entry | KeptEntry)[]}>} */
    const parts = new Map();
    const part = (/** @type {RecordKey} */ { kind, id }) => {
      const name = `${kind}/${id}`;
      const found = parts.get(name) ?? { key: { kind, id }, entries: [] };
      parts.set(name, found);
      return found;
    };
    for (const row of rows) part(row).row = row;
    for (const entry of entries) part(entry.op).entries.push(entry);
    this.#folded = new Map();
    for (const { key, row, entries } of parts.values()) this.#keep(key, fold(row, entries));
    this.#shown.clear();
  }

  async #read_some(/** @type {RecordKey[]} */ keys) {
    await this.phone.database.read(RECORD_STORES, async (t) => {
      const confirmed = confirmed_to(await t.rooms.get(this.id));
      for (const { kind, id } of keys) {
        const key = [this.id, kind, id];
        const row = await t.rows.get(key);
        const kept = (await t.kept.index("record").getAll(key)).filter(({ seq }) => seq > confirmed);
        const entries = [...kept, ...(await t.outbox.index("record").getAll(key))];
        if (row || entries.length) this.#keep({ kind, id }, fold(row, entries));
        else this.#folded.get(kind)?.delete(id);
        this.#shown.delete(kind);
      }
    });
  }

  #keep(/** @type {RecordKey} */ { kind, id }, /** @type {Folded} */ record) {
    const of_kind = this.#folded.get(kind) ?? new Map();
    this.#folded.set(kind, of_kind.set(id, record));
  }
}

/**
 * All rows of a room, and all ops that no row confirms yet.
 * @param {In<"rows" | "outbox" | "kept" | "rooms">} t @param {string} room_id
 */
async function all_of(t, room_id) {
  const confirmed = confirmed_to(await t.rooms.get(room_id));
  const rows = await t.rows.getAll(of_room(room_id));
  const waiting = await t.outbox.index("room").getAll(room_id);
  const kept = await t.kept.index("seq").getAll(IDBKeyRange.bound([room_id, confirmed], [room_id, []], true));
  return { rows, entries: [...kept, ...waiting] };
}

/**
 * Up to which row the mirror confirms acknowledged ops. In a room that has ended all of them belong to the others
 * now: only what was not shared is still seen.
 * @param {RoomEntry | undefined} room
 */
const confirmed_to = (room) => (room?.ended ? Infinity : (room?.settled ?? 0));
