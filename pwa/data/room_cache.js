/**
 * One room's records in memory, and what changes of them. fish_room.js shows them to the screens, sync.js keeps them
 * shared.
 *
 * A large room is not read at once. First come the kinds that stay few, and all corrections, because a correction may
 * hide a record of any tank; then, tank by tank, everything else, a tank whose page is open first. What is held of a
 * tank is all of it or nothing, but for single records that changed.
 *
 * Each reading begins where the last one ended: rows by their place in the server's log, ops by their number in the
 * outbox. So a notice only has to say that something changed, and one that was lost is made good by the next.
 */
/** @import { Entry, In, KeptEntry, Keeper, MirrorRow, RecordKey, RoomEntry } from "../types/stores.js" */
import { records } from "../contracts.js";
import { of_room, together } from "./database.js";
import { HeldRecords } from "./held_records.js";
import { mirror_name } from "./mirror.js";
import { fold } from "./view.js";

/** A room of so many rows or fewer is read at once: that takes no longer than its first part. */
const AT_ONCE = 1000;
/** Listeners are told once after so many tanks that nobody waits for. */
const TELL_AFTER = 6;

/** @typedef {RecordKey[] | null} Keys records that changed, null for all */
/**
 * @typedef {{
 *   room: RoomEntry | null, entries: Entry[], former: number, photos_waiting: number, photos_shared: number,
 *   photos_need_you: number,
 *   keeper: Keeper | null, has_key: boolean, offset_ms: number,
 * }} State what the phone knows of a room besides its records
 * @typedef {Map<string, (Entry | KeptEntry)[]>} Local ops that no row confirms yet, by record
 */

const STORES = /** @type {const} */ (["rows", "outbox", "kept", "rooms", "photos", "device", "former"]);
/** @typedef {In<typeof STORES[number]>} T */

/**
 * Open a room in memory.
 * @param {import("./phone.js").Phone} phone @param {string} room_id
 * @param {{lazily?: boolean}} [how] lazily: of a large room only the first part; `ready` reads the rest
 */
export async function open_cache(phone, room_id, { lazily = false } = {}) {
  const cache = new RoomCache(phone, room_id);
  await cache.open(lazily);
  return cache;
}

export class RoomCache {
  #held = new HeldRecords();
  /** @type {State} */
  state = {
    room: null,
    entries: [],
    former: 0,
    photos_waiting: 0,
    photos_shared: 0,
    photos_need_you: 0,
    keeper: null,
    has_key: false,
    offset_ms: 0,
  };
  /** Whether every record is held. */
  #whole = false;
  /** @type {Set<string>} tanks whose records are held */ #tanks = new Set();
  /** @type {Promise<void> | null} */ #reading_rest = null;
  /** @type {Map<string, Promise<void>>} tanks that are asked for */ #asked = new Map();
  /** @type {Set<() => void>} */ #listeners = new Set();
  /** @type {Set<() => void>} */ #writers = new Set();
  // Reads follow one another, so that an older one never replaces a newer.
  /** @type {Promise<void>} */ #reading = Promise.resolve();
  /** How many of them are not done. */ #going = 0;
  /** @type {Promise<void> | null} a read of everything that has not begun */ #reading_all = null;
  #closed = false;
  #unhear = () => {};

  /** @param {import("./phone.js").Phone} phone @param {string} id */
  constructor(phone, id) {
    this.phone = phone;
    this.id = id;
  }

  /** @param {boolean} [lazily] */
  async open(lazily = false) {
    this.#unhear = this.phone.hear((message) => {
      if (message.room === this.id) void this.reread(message.keys);
    });
    await this.#read(async (t) => {
      if (lazily && (await t.rows.count(of_room(this.id))) > AT_ONCE) await this.#read_first(t);
      else await this.#read_all(t);
    });
  }

  close() {
    this.#closed = true;
    this.#unhear();
    this.#listeners.clear();
  }

  /** The records of a kind as they are shown; the same array until something changes. @param {string} kind */
  shown(kind) {
    return this.#held.shown(kind);
  }

  /**
   * Those of one tank, oldest first; the same array until something changes.
   * @param {string} kind @param {string} id
   */
  shown_of(kind, id) {
    return this.#held.shown_of(kind, id);
  }

  /** One record as it is shown, or null. @param {string} kind @param {string} id */
  one(kind, id) {
    return this.#held.one(kind, id);
  }

  /** One record as it is stored, shown or not. @param {string} kind @param {string} id */
  folded(kind, id) {
    return this.#held.folded(kind, id);
  }

  /**
   * Whether everything is held that is shown of a tank: its records, and those of tanks whose water went into it.
   * Without a tank: of the whole room.
   * @param {string} [tank_id]
   */
  is_ready(tank_id) {
    if (this.#whole || tank_id === undefined) return this.#whole;
    return [tank_id, ...this.#sources(tank_id)].every((id) => !this.#lacks(id));
  }

  /**
   * Read what is shown of a tank, or of the whole room, unless it is held already.
   * @param {string} [tank_id] @returns {Promise<void>}
   */
  async ready(tank_id) {
    if (this.is_ready(tank_id)) return;
    if (tank_id === undefined) {
      this.#reading_rest ??= this.#read_rest().finally(() => (this.#reading_rest = null));
      return this.#reading_rest;
    }
    const asked =
      this.#asked.get(tank_id) ??
      this.#after(() => this.#read_tank(tank_id))
        .then(() => this.#tell())
        .finally(() => this.#asked.delete(tank_id));
    this.#asked.set(tank_id, asked);
    return asked;
  }

  /**
   * The rows that came after a place of this room's mirror; null where the mirror was begun anew since, or too many
   * came.
   * @param {string} mirror its name @param {number} place
   */
  async rows_after(mirror, place) {
    return this.#read(async (t) => {
      const room = await t.rooms.get(this.id);
      const after = IDBKeyRange.bound([this.id, place], [this.id, []], true);
      if (
        !room ||
        mirror_name(room) !== mirror ||
        room.since < place ||
        (await t.rows.index("seq").count(after)) > AT_ONCE
      )
        return null;
      return t.rows.index("seq").getAll(after);
    });
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

  /**
   * A write was saved: show it as it was written, without reading it again.
   * @param {import("./write.js").Standing[]} written the records of its changes
   * @param {number} offset_ms to the server's clock
   */
  async written(written, offset_ms) {
    // A reading that goes on may know more already; and another tank's water may have gone into one that is held.
    if (this.#going > 0 || written.some(({ kind }) => kind === "water_change")) return this.saved(written);
    this.#hold(written);
    this.state = { ...this.state, offset_ms };
    this.#tell();
    this.phone.tell({ room: this.id, keys: keys_of(written) });
    this.#wrote();
  }

  /** @param {import("./write.js").Standing[]} written */
  #hold(written) {
    const place = settled(this.state.room);
    const known = new Set(this.state.entries.map(({ n }) => n));
    /** @type {Entry[]} */ const fresh = [];
    for (const { kind, id, row, entries } of new Set(written)) {
      const local = entries.filter((entry) => entry.state !== undefined || entry.seq > place);
      this.#held.put(kind, id, fold(row, local));
      for (const entry of local) if (entry.state !== undefined && !known.has(entry.n)) fresh.push(entry);
    }
    this.state = { ...this.state, entries: [...this.state.entries, ...fresh] };
  }

  /** A write was saved: a read that fails afterwards must not be reported as a failed write. @param {Keys} keys */
  async saved(keys) {
    await this.refresh(keys && keys_of(keys)).catch((failed) => console.warn("Saved, but not yet shown:", failed));
    this.#wrote();
  }

  #wrote() {
    this.phone.keep?.();
    for (const listener of this.#writers) listener();
  }

  /**
   * Read what changed since the last reading, and the named records in any case, without telling the other tabs.
   * @param {Keys} [keys] null: everything
   */
  reread(keys = []) {
    if (this.#reading_all) return this.#reading_all;
    const all = keys === null;
    const mine = this.#after(async () => {
      if (all) this.#reading_all = null;
      await this.#read((t) => (all ? this.#read_all(t) : this.#catch_up(t, keys)));
      this.#tell();
    });
    if (all) this.#reading_all = mine;
    return mine;
  }

  /** Do `work` after all reading that was asked for before. @param {() => Promise<void>} work */
  #after(work) {
    this.#going += 1;
    this.#reading = this.#reading
      .catch(() => {})
      .then(work)
      .finally(() => (this.#going -= 1));
    return this.#reading;
  }

  #tell() {
    for (const listener of this.#listeners) listener();
  }

  /** @template Result @param {(t: T) => Promise<Result>} work */
  #read(work) {
    return this.phone.database.read(STORES, work);
  }

  /** Everything at once. @param {T} t */
  async #read_all(t) {
    const state = await state_of(t, this.id);
    const local = await local_of(t, this.id, state);
    const rows = await t.rows.getAll(of_room(this.id));
    const held = new HeldRecords();
    const unseen = new Set(local.keys());
    for (const row of rows) {
      const name = name_of(row);
      unseen.delete(name);
      held.put(row.kind, row.id, fold(row, local.get(name) ?? []));
    }
    for (const name of unseen) {
      const entries = local.get(name) ?? [];
      held.put(entries[0].op.kind, entries[0].op.id, fold(undefined, entries));
    }
    this.#held = held;
    this.state = state;
    this.#whole = true;
  }

  /** The kinds that stay few, all corrections, and what this phone has not shared. @param {T} t */
  async #read_first(t) {
    const state = await state_of(t, this.id);
    const local = await local_of(t, this.id, state);
    const few = Object.keys(records()).filter((kind) => !by_tank(kind));
    const rows = await Promise.all([
      ...few.map((kind) => t.rows.getAll(of_kind(this.id, kind))),
      t.rows.index("corrects").getAll(of_room(this.id)),
    ]);
    this.#put(rows.flat(), local);
    await this.#put_named(
      t,
      [...local.values()].map(([{ op }]) => op),
      local,
    );
    this.state = state;
  }

  /** @param {string} tank_id */
  async #read_tank(tank_id) {
    if (this.is_ready(tank_id)) return;
    await this.#read_tanks([tank_id]);
    await this.#read_tanks(this.#sources(tank_id));
  }

  /** @param {string[]} tank_ids */
  async #read_tanks(tank_ids) {
    if (!tank_ids.some((id) => this.#lacks(id))) return;
    await this.#read(async (t) => {
      const local = await local_of(t, this.id, { room: (await t.rooms.get(this.id)) ?? null });
      await this.#put_tanks(t, tank_ids, local);
    });
  }

  /** @param {T} t @param {string[]} tank_ids @param {Local} local */
  async #put_tanks(t, tank_ids, local) {
    for (const id of tank_ids.filter((one) => this.#lacks(one))) {
      this.#put(await t.rows.index("tank").getAll([this.id, id]), local);
      this.#tanks.add(id);
    }
  }

  /** @param {string} tank_id */
  #lacks(tank_id) {
    return !this.#whole && !this.#tanks.has(tank_id);
  }

  /** The tanks whose water went into this one. @param {string} tank_id */
  #sources(tank_id) {
    return this.shown_of("water_change", tank_id).flatMap(({ from_tank }) => (from_tank ? [String(from_tank)] : []));
  }

  /** Tank by tank, then what belongs to no tank. */
  async #read_rest() {
    const step = (/** @type {() => Promise<void>} */ work) =>
      this.#after(async () => {
        if (!this.#closed && !this.#whole) await work();
      });
    /** @type {string[]} */ let tanks = [];
    await step(async () => {
      tanks = await this.#read((t) => tanks_of(t, this.id));
    });
    for (const [at, id] of tanks.entries()) {
      await step(() => this.#read_tank(id));
      if ((at + 1) % TELL_AFTER === 0) this.#tell();
    }
    await step(async () => {
      await this.#read(async (t) => {
        const local = await local_of(t, this.id, { room: (await t.rooms.get(this.id)) ?? null });
        for (const kind of Object.keys(records()).filter(may_lack_tank))
          this.#put(await t.rows.getAll(of_kind(this.id, kind)), local);
      });
      this.#whole = true;
    });
    this.#tell();
  }

  /**
   * What changed since the last reading: rows that came after it, ops that came or went or were confirmed, and the
   * named records in any case. Where the mirror was begun anew, everything.
   * @param {T} t @param {RecordKey[]} keys
   */
  async #catch_up(t, keys) {
    const state = await state_of(t, this.id);
    const [before, now] = [this.state.room, state.room];
    // Between two readings the cursor may have gone back and then past its old place: the mirror's name tells.
    const begun_anew =
      mirror_name(before) !== mirror_name(now) || before?.ended !== now?.ended || since(now) < since(before);
    if (begun_anew) return this.#read_all(t);
    const [rows, confirmed, local] = await together([
      () => t.rows.index("seq").getAll(IDBKeyRange.bound([this.id, since(before)], [this.id, []], true)),
      () => this.#confirmed(t, settled(before), settled(now)),
      () => local_of(t, this.id, state),
    ]);
    const named = [...keys, ...unlike(this.state.entries, state.entries), ...confirmed];
    if (rows.length || named.length) {
      this.#put(rows, local);
      const there = new Set(rows.map(name_of));
      await this.#put_named(
        t,
        named.filter((key) => !there.has(name_of(key))),
        local,
      );
      // Water of another tank may have gone into one that is held.
      for (const id of [...this.#tanks]) await this.#put_tanks(t, this.#sources(id), local);
    }
    this.state = state;
  }

  /** The records whose ops were confirmed between two places. @param {T} t @param {number} from @param {number} to */
  async #confirmed(t, from, to) {
    if (to <= from) return [];
    const kept = await t.kept.index("seq").getAll(IDBKeyRange.bound([this.id, from], [this.id, to], true));
    return kept.map(({ op }) => op);
  }

  /**
   * Hold rows with their ops; one that is held already as it is stays.
   * @param {MirrorRow[]} rows @param {Local} local
   */
  #put(rows, local) {
    for (const row of rows) {
      const entries = local.get(name_of(row)) ?? [];
      const held = this.folded(row.kind, row.id);
      if (held?.seq === row.seq && held.ops === 0 && entries.length === 0) continue;
      this.#held.put(row.kind, row.id, fold(row, entries));
    }
  }

  /** Hold records as they are in the database. @param {T} t @param {RecordKey[]} keys @param {Local} local */
  async #put_named(t, keys, local) {
    const named = new Map(keys.map((key) => [name_of(key), key]));
    await Promise.all(
      [...named].map(async ([name, { kind, id }]) => {
        const row = await t.rows.get([this.id, kind, id]);
        const entries = local.get(name) ?? [];
        if (row || entries.length) this.#held.put(kind, id, fold(row, entries));
        else this.#held.remove(kind, id);
      }),
    );
  }
}

/** @param {T} t @param {string} id @returns {Promise<State>} */
async function state_of(t, id) {
  const [room, entries, offset, photos_waiting, photos_shared, photos_need_you, former, identity] = await together([
    () => t.rooms.get(id),
    () => t.outbox.index("room").getAll(id),
    () => t.device.get("offset"),
    () => t.photos.index("state").count([id, "waiting"]),
    () => t.photos.index("state").count([id, "shared"]),
    () => t.photos.index("state").count([id, "needs you"]),
    () => t.former.count(of_room(id)),
    () => t.device.get("identity"),
  ]);
  const { keeper = null, key = null } = identity ?? {};
  const offset_ms = offset?.ms ?? 0;
  const has_key = Boolean(key);
  const photos = { photos_waiting, photos_shared, photos_need_you };
  return { room: room ?? null, entries, former, ...photos, keeper, has_key, offset_ms };
}

/**
 * The ops of a room that no row confirms yet, those that were acknowledged first.
 * @param {In<"outbox" | "kept">} t @param {string} id @param {{room: RoomEntry | null, entries?: Entry[]}} state
 * @returns {Promise<Local>}
 */
async function local_of(t, id, { room, entries }) {
  const kept = await t.kept.index("seq").getAll(IDBKeyRange.bound([id, settled(room)], [id, []], true));
  /** @type {Local} */ const local = new Map();
  for (const entry of [...kept, ...(entries ?? (await t.outbox.index("room").getAll(id)))]) {
    const name = name_of(entry.op);
    const others = local.get(name);
    if (others) others.push(entry);
    else local.set(name, [entry]);
  }
  return local;
}

/** The ids of all tanks that rows name, known or not. @param {In<"rows">} t @param {string} id */
async function tanks_of(t, id) {
  /** @type {string[]} */ const found = [];
  let cursor = await t.rows.index("tank").openKeyCursor(of_room(id), "nextunique");
  for (; cursor; cursor = await cursor.continue()) found.push(/** @type {[string, string]} */ (cursor.key)[1]);
  return found;
}

/** The records whose ops are not the same in two states of the outbox. @param {Entry[]} before @param {Entry[]} now */
function unlike(before, now) {
  const of = (/** @type {Entry[]} */ entries) =>
    new Map(entries.map((entry) => [`${entry.n} ${entry.state} ${entry.op.stamp}`, entry.op]));
  const [then, here] = [of(before), of(now)];
  return [...then, ...here].filter(([name]) => !(then.has(name) && here.has(name))).map(([, op]) => op);
}

/** Which records these are, and no more of them. @param {RecordKey[]} keys @returns {RecordKey[]} */
const keys_of = (keys) => keys.map(({ kind, id }) => ({ kind, id }));
/** @param {RecordKey} key */
const name_of = ({ kind, id }) => `${kind}/${id}`;
/** @param {RoomEntry | null} room */
const since = (room) => room?.since ?? 0;
/**
 * Up to which row the mirror confirms acknowledged ops. In a room that has ended all of them belong to the others now:
 * only what was not shared is still seen.
 * @param {RoomEntry | null} room
 */
const settled = (room) => (room?.ended ? Infinity : (room?.settled ?? 0));

/** All rows of a kind. @param {string} room_id @param {string} kind */
const of_kind = (room_id, kind) => IDBKeyRange.bound([room_id, kind], [room_id, kind, []]);
/** @param {string} kind @param {string} name */
const field = (kind, name) => records()[kind]?.fields.find((one) => one.name === name);
/** What happened in tanks: these kinds grow with the years. @param {string} kind */
const by_tank = (kind) => Boolean(records()[kind]?.event && field(kind, "tank"));
/** @param {string} kind */
const may_lack_tank = (kind) => by_tank(kind) && !field(kind, "tank")?.required;
