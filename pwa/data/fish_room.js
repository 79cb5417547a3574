/** The only door that the screens use: one fish room's records, as they are on this phone. */
/** @import { RecordKind } from "../types/records.js" */
/** @import { Fields, In, RecordKey } from "../types/stores.js" */
/** @import { View } from "../types/views.js" */
/** @import { Phone } from "./phone.js" */
/** @import { Change } from "./write.js" */
import { records } from "../contracts.js";
import { bring_again } from "./bring_back.js";
import { together } from "./database.js";
import { identity, join as join_by, make_room as make_by, refresh_me, wake } from "./identity.js";
import { mirror_name } from "./mirror.js";
import { again, discard, undiscard } from "./outbox.js";
import { this_phone } from "./phone.js";
import { drop_photo, keep_photos, photo_bytes, photos_again, ready_photo, refused_photos } from "./photos.js";
import { open_cache } from "./room_cache.js";
import { forget, last_room, list, remember } from "./room_list.js";
import { corrects, is_gone } from "./view.js";
import { WRITE_STORES, iso_of, may_write, queue } from "./write.js";

export { ArchiveBroken } from "./archive_broken.js";
export { NotSaved } from "./database.js";
export { LOCAL } from "./identity.js";

const WRITE_AND_PHOTOS = /** @type {const} */ ([...WRITE_STORES, "photos"]);

/** @typedef {ReturnType<FishRoom["sharing"]>} Sharing how far a room is shared */
/** @typedef {() => Promise<void>} Undo */
/** @typedef {{mirror: string, since: number, ops: string}} Place from what some records are known */

/**
 * Open a room; `local` before the first one is joined. `room` is for the screens, `cache` for sync.js.
 * @param {string} [room_id] the room used last, if left out
 * @param {Given} [given]
 * @param {{lazily?: boolean}} [how] lazily: of a large room, only what the Round needs is read; see `ready`
 */
export async function open_room(room_id, given = this_phone(), how = {}) {
  const phone = await given;
  await wake(phone);
  const cache = await open_cache(phone, room_id ?? (await last_room(phone)), how);
  return { room: new FishRoom(cache), cache };
}

export class FishRoom {
  #cache;

  /** @param {import("./room_cache.js").RoomCache} cache */
  constructor(cache) {
    this.#cache = cache;
    this.phone = cache.phone;
    this.id = cache.id;
  }

  /**
   * Every record of a kind that is shown. The same array until something changes.
   * @template {RecordKind} K @param {K} kind @returns {View<K>[]}
   */
  all(kind) {
    // `any`: the cache holds records of every kind alike; their fields were checked by their kind.
    return /** @type {any[]} */ (this.#cache.shown(kind));
  }

  /**
   * One record, null if none is shown.
   * @template {RecordKind} K @param {K} kind @param {string | undefined} id @returns {View<K> | null}
   */
  get(kind, id) {
    const record = /** @type {unknown} */ (id === undefined ? null : this.#cache.one(kind, id));
    return /** @type {View<K> | null} */ (record);
  }

  /** Whether a record is here, shown or hidden by a correction. @param {RecordKind} kind @param {string} id */
  holds(kind, id) {
    const record = this.#cache.folded(kind, id);
    return record !== undefined && !is_gone(record);
  }

  /**
   * The shown records of one tank, oldest first. The same frozen array until one of them changes.
   * @template {RecordKind} K @param {K} kind one whose records have a tank and a time @param {string} tank_id
   * @returns {readonly View<K>[]}
   */
  of(kind, tank_id) {
    const records = /** @type {unknown} */ (this.#cache.shown_of(kind, tank_id));
    return /** @type {readonly View<K>[]} */ (records);
  }

  /**
   * Whether all records of a tank are here, and of the tanks whose water went into it; without a tank: all of the room.
   * @param {string} [tank_id]
   */
  is_ready(tank_id) {
    return this.#cache.is_ready(tank_id);
  }

  /** Read them, where the room was opened lazily. @param {string} [tank_id] */
  ready(tank_id) {
    return this.#cache.ready(tank_id);
  }

  /**
   * From what the records of a tank are known: the place of the mirror, and the numbers of this phone's ops on them.
   * @param {string} tank_id @param {readonly RecordKind[]} kinds @returns {Place}
   */
  place(tank_id, kinds) {
    const { room, entries } = this.#cache.state;
    const own = entries.filter(({ op }) => {
      const tank = op.kind === "tank" ? op.id : this.#cache.folded(op.kind, op.id)?.fields.tank;
      return kinds.includes(/** @type {RecordKind} */ (op.kind)) && (tank ?? tank_id) === tank_id;
    });
    return { mirror: mirror_name(room), since: room?.since ?? 0, ops: own.map(({ n }) => n).join() };
  }

  /** The rows that came after a place; null where nobody can tell. @param {Pick<Place, "mirror" | "since">} place */
  rows_after({ mirror, since }) {
    return this.#cache.rows_after(mirror, since);
  }

  /**
   * What a record said before it was corrected, the latest first.
   * @template {RecordKind} K @param {K} kind @param {string} id @returns {View<K>[]}
   */
  earlier(kind, id) {
    // `any`, as in `all`.
    /** @type {any[]} */ const found = [];
    const seen = new Set([id]);
    let before = corrects(this.#cache.folded(kind, id));
    while (before && !seen.has(before)) {
      const record = this.#cache.folded(kind, before);
      if (!record) break;
      seen.add(before);
      found.push({ ...record.fields, id: before, kind, meta: record.meta });
      before = corrects(record);
    }
    return found;
  }

  /**
   * Save changes on this phone, and pictures with their records: all of them or none.
   * @param {Change[]} changes @param {import("./photos.js").Picture[]} [pictures]
   * @returns {Promise<string[]>} the ids, in the order given, those of pictures last
   * @throws {import("../contracts.js").InvalidInput} a field breaks its kind; nothing is written
   * @throws {import("./database.js").NotSaved} the phone has no room or its storage failed; nothing is written
   */
  async write(changes, pictures = []) {
    const ready = await Promise.all(pictures.map(ready_photo));
    if (ready.length === 0) {
      const [written, offset] = await this.phone.database.write(WRITE_STORES, (t) =>
        together([() => this.#queue(t, changes), () => t.device.get("offset")]),
      );
      await this.#cache.written(written, offset?.ms ?? 0);
      return written.map(({ id }) => id);
    }
    const all = [...changes, ...ready.map(({ change }) => change)];
    const records = await this.phone.database.write(WRITE_AND_PHOTOS, async (t) => {
      await keep_photos(t, this.id, ready);
      return this.#queue(t, all);
    });
    await this.#cache.saved(records);
    return records.map(({ id }) => id);
  }

  /**
   * Save a picture with its record.
   * @param {Blob} picture already shrunk @param {Fields} fields @returns {Promise<string>} the record's id
   */
  async add_photo(picture, fields) {
    const [id] = await this.write([], [{ picture, fields }]);
    return id;
  }

  /** The pictures that the server refused. */
  refused_photos() {
    return refused_photos(this.phone, this.id);
  }

  /** Delete a refused picture: its bytes and its records. @param {string} hash @returns {Promise<Undo>} */
  async discard_photo(hash) {
    await this.ready();
    const records = this.all("photo").filter(({ sha256 }) => sha256 === hash);
    const changes = (/** @type {"del" | "restore"} */ type) => records.map(({ id }) => ({ type, kind: "photo", id }));
    const dropped = await this.phone.database.write(WRITE_AND_PHOTOS, async (t) => {
      const photo = await drop_photo(t, this.id, hash);
      if (photo) await this.#queue(t, changes("del"));
      return photo;
    });
    const keys = records.map(({ id }) => ({ kind: "photo", id }));
    await this.#cache.saved(keys);
    return async () => {
      if (!dropped) return;
      await this.phone.database.write(WRITE_AND_PHOTOS, async (t) => {
        await t.photos.put(dropped);
        await this.#queue(t, changes("restore"));
      });
      await this.#cache.saved(keys);
    };
  }

  /** A picture's bytes, null if they are not here and cannot be fetched now. @param {string} hash */
  photo(hash) {
    return photo_bytes(this.phone, this.id, hash);
  }

  /** Call `listener` after anything here has changed. @param {() => void} listener @returns {() => void} stop */
  on_change(listener) {
    return this.#cache.on_change(listener);
  }

  /** Now by the server's clock as far as it is known, as a record's `at` is written. */
  now() {
    return iso_of(this.phone.now() + this.#cache.state.offset_ms);
  }

  /**
   * How far this phone is shared, in the states of the outbox. `not_back`: rows put aside after a restore that are not
   * compared or given back yet, of `put_aside`; `oldest`: when the first op that waits was written, null if none waits.
   */
  sharing() {
    const { entries, room, photos_waiting, photos_shared, photos_need_you, former, has_key } = this.#cache.state;
    const of_state = (/** @type {string} */ state) => entries.filter((entry) => entry.state === state);
    return {
      waiting: of_state("waiting").length,
      sending: of_state("sending").length,
      needs_you: of_state("needs you"),
      photos_waiting,
      photos_shared,
      photos_need_you,
      not_back: former - (room?.given ?? 0),
      put_aside: room?.aside ?? former,
      oldest: entries.reduce(earlier, /** @type {string | null} */ (null)),
      lastShared: room?.lastShared ?? null,
      joined: Boolean(room && !room.ended && has_key),
      problem: room?.problem ?? null,
    };
  }

  /** How many rows are here of how many, while the room is taken in for the first time; else null. */
  taking_in() {
    const { room } = this.#cache.state;
    return room?.total ? { count: Math.min(room.count, room.total), total: room.total } : null;
  }

  /** The records with changes that are not shared yet, refused ones left out. @returns {RecordKey[]} */
  unshared() {
    const waiting = this.#cache.state.entries.filter(({ state }) => state !== "needs you");
    return waiting.map(({ op }) => ({ kind: op.kind, id: op.id }));
  }

  /** The room's name and this keeper's role in it, null before joining. */
  about() {
    const { room } = this.#cache.state;
    return room && { id: this.id, name: room.name, role: room.role, ended: room.ended };
  }

  /** This phone's keeper, null before joining. */
  me() {
    return this.#cache.state.keeper;
  }

  /** A keeper's name, null if unknown. @param {string | null} keeper_id @returns {string | null} */
  name_of(keeper_id) {
    const { room, keeper } = this.#cache.state;
    if (keeper_id === null) return null;
    return room?.people[keeper_id] ?? (keeper?.id === keeper_id ? keeper.name : null);
  }

  /** Whether this keeper may write a kind; anyone may before joining. @param {string} kind */
  may(kind) {
    const { room } = this.#cache.state;
    return !room || may_write(room.role, kind);
  }

  /**
   * Everything of the room that is on this phone, as an open archive (a ZIP).
   * @param {import("./import_room.js").Progress} [told]
   */
  async export(told) {
    const { export_room } = await import("./archives.js");
    return export_room(this.phone, this.id, await this.readings(), told);
  }

  /** The readings that stand as CSV (RFC 4180), the same columns as the archive's `readings.csv`. */
  async readings() {
    const [{ readings_csv }] = await Promise.all([import("./archives.js"), this.ready()]);
    return readings_csv(this.all("reading"), this.all("tank"), (keeper_id) => this.name_of(keeper_id));
  }

  /** Every record that stands as tables, one a kind: CSV in a ZIP. */
  async tables() {
    const [{ tables_zip }] = await Promise.all([import("./archives.js"), this.ready()]);
    return tables_zip({
      kinds: records(),
      all: (kind) => this.all(/** @type {RecordKind} */ (kind)).map((one) => ({ ...one })),
      name_of: (keeper_id) => this.name_of(keeper_id),
    });
  }

  /** What only this phone has, as an open archive (a ZIP), to go on in another place. */
  async export_unshared() {
    const { export_unshared } = await import("./archives.js");
    return export_unshared(this.phone, this.id);
  }

  /** What the server refused, as an open archive (JSON lines). */
  async export_needs_you() {
    const { export_needs_you } = await import("./archives.js");
    return export_needs_you(this.phone, this.id);
  }

  /**
   * Take an archive in: what is not here, and what is newer than here.
   * @param {Blob} file @param {import("./import_room.js").Progress} [told]
   * @returns {Promise<import("./import_room.js").Imported>} how many were new
   * @throws {import("./archive.js").ArchiveBroken} nothing was taken in
   */
  async import(file, told) {
    const { import_room } = await import("./archives.js");
    const done = await import_room(this.phone, this.id, file, told);
    await this.#cache.saved([]);
    return done;
  }

  /** Send refused ops again: those named, or all, and pictures too. @param {string[]} [ops] */
  async try_again(ops) {
    await this.phone.database.write(["outbox", "photos", "former"], async (t) => {
      await again(t, this.id, (entry) => !ops || ops.includes(entry.op.op));
      if (ops) return;
      await photos_again(t, this.id, "needs you");
      await bring_again(t, this.id);
    });
    await this.#cache.saved([]);
  }

  /** Delete refused ops, and the ops that cannot go without them. @param {string[]} ops @returns {Promise<Undo>} */
  async discard(ops) {
    const gone = await this.phone.database.write(["outbox", "kept", "rows"], (t) => discard(t, this.id, ops));
    const keys = gone.map(({ op }) => ({ kind: op.kind, id: op.id }));
    await this.#cache.refresh(keys);
    return async () => {
      await this.phone.database.write(["outbox", "kept"], (t) => undiscard(t, gone));
      await this.#cache.refresh(keys);
    };
  }

  /** Ask the server for the rooms' names and this keeper's roles, and show them. */
  async refresh_role() {
    await refresh_me(this.phone);
    await this.#cache.refresh([]);
  }

  close() {
    this.#cache.close();
  }

  /** @param {In<"rows" | "outbox" | "kept" | "device">} t @param {Change[]} changes */
  #queue(t, changes) {
    return queue(t, this.phone, this.id, changes);
  }
}

/**
 * The earlier of a time and that of an op, unless the op was refused: that one waits for its keeper, not for a network.
 * @param {string | null} first @param {import("../types/stores.js").Entry} entry
 */
const earlier = (first, { at, state }) => (state === "needs you" || (first !== null && first <= at) ? first : at);

/** @typedef {Phone | Promise<Phone>} Given this browser's phone, unless a test brings another */

/** Remember the room to open next time. @param {string} room_id @param {Given} [given] */
export const use_room = async (room_id, given = this_phone()) => remember(await given, room_id);

/**
 * Every room of this phone with how far it is shared; `local` too where it holds something or is all there is.
 * @param {Given} [given]
 */
export const room_list = async (given = this_phone()) => list(await given);

/**
 * Delete a room that has ended from this phone, with everything of it.
 * @param {string} room_id
 * @param {Given} [given]
 */
export const forget_room = async (room_id, given = this_phone()) => forget(await given, room_id);

/** Who holds this phone. @param {Given} [given] */
export async function who(given = this_phone()) {
  const phone = await given;
  const { device, keeper, key } = (await identity(phone)) ?? (await wake(phone));
  return { device, keeper, signed_in: key !== null };
}

/**
 * Join a room by an invite's secret.
 * @param {{secret: string, keeper_name?: string, device_name: string}} how
 * @param {Given} [given]
 * @returns {Promise<string>} its id
 */
export async function join(how, given = this_phone()) {
  const phone = await given;
  await wake(phone);
  return join_by(phone, how);
}

/**
 * Make a room on the server, with this keeper as its owner.
 * @param {string} name
 * @param {Given} [given]
 * @returns {Promise<string>} its id
 */
export const make_room = async (name, given = this_phone()) => make_by(await given, name);
