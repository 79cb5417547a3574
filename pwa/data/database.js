/**
 * The phone's database: its stores, its migrations, and two ways in. Each `write` is one transaction.
 * Inside a transaction only its own stores may be awaited: anything else would let it close half done.
 */
import { openDB } from "../vendor/idb.js";

/** @typedef {Record<string, any>} Stores */
/** @typedef {(stores: Stores) => any} Work */

/** Nothing was saved; `reason` is "no-space" or "storage". */
export class NotSaved extends Error {
  /** @param {"no-space" | "storage"} reason @param {unknown} cause */
  constructor(reason, cause) {
    super(
      reason === "no-space"
        ? "This phone has no room left, so this was not saved. Free some space, then save it again."
        : "This phone's storage did not take this, so it was not saved. Try again; if it stays so, close the app and open it again.",
      { cause },
    );
    this.reason = reason;
  }
}

/** One function a version, in order; a published one never changes. @type {((db: any, transaction: any) => void)[]} */
export const MIGRATIONS = [
  function first_stores(db) {
    // The mirror: rows as the server said them, with their room.
    db.createObjectStore("rows", { keyPath: ["room", "kind", "id"] });
    // Ops that the server has not acknowledged; `n` is the order in which they were written.
    const outbox = db.createObjectStore("outbox", { keyPath: "n", autoIncrement: true });
    outbox.createIndex("room", "room");
    outbox.createIndex("record", ["room", "op.kind", "op.id"]);
    outbox.createIndex("op", "op.op", { unique: true });
    outbox.createIndex("stamp", "op.stamp");
    // Ops that it has: sent once more if the server is restored from an older backup.
    const kept = db.createObjectStore("kept", { keyPath: "op.op" });
    kept.createIndex("room", "room");
    kept.createIndex("record", ["room", "op.kind", "op.id"]);
    kept.createIndex("seq", ["room", "seq"]);
    kept.createIndex("stamp", "op.stamp");
    db.createObjectStore("rooms", { keyPath: "id" });
    // `identity`, `clock` and `offset`.
    db.createObjectStore("device", { keyPath: "name" });
  },
  function photos_and_ages(db, transaction) {
    const photos = db.createObjectStore("photos", { keyPath: ["room", "sha256"] });
    photos.createIndex("state", ["room", "state"]);
    transaction.objectStore("kept").createIndex("sharedAt", "sharedAt");
  },
  function rows_of_before_a_restore(db) {
    db.createObjectStore("former", { keyPath: ["room", "kind", "id", "epoch"] });
  },
];

/**
 * Open the database, migrating an older one.
 * @param {{name?: string, on_blocked?: () => void, on_outdated?: () => void}} [how]
 *   on_blocked: another tab holds an older version open; ask the person to close it.
 *   on_outdated: a newer version of the app wants the database; this tab let go of it and must be reloaded.
 */
export async function open_database({ name = "limnary", on_blocked = () => {}, on_outdated = () => {} } = {}) {
  /** @type {any} */ let db = null;

  async function connect() {
    const opened = await openDB(name, MIGRATIONS.length, {
      upgrade(fresh, from, to, transaction) {
        for (const migrate of MIGRATIONS.slice(from, to ?? undefined)) migrate(fresh, transaction);
      },
      blocked: on_blocked,
      blocking() {
        opened.close();
        on_outdated();
      },
      terminated() {
        db = null;
      },
    });
    db = opened;
  }

  /** A connection can be lost under us (some engines drop it in the background): connect anew, once. */
  async function begin(/** @type {string[]} */ stores, /** @type {IDBTransactionMode} */ mode) {
    if (!db) await connect();
    try {
      return db.transaction(stores, mode, mode === "readwrite" ? { durability: "strict" } : {});
    } catch (lost) {
      if (/** @type {any} */ (lost)?.name !== "InvalidStateError") throw lost;
      await connect();
      return db.transaction(stores, mode);
    }
  }

  /** @param {string[]} names @param {IDBTransactionMode} mode @param {Work} work */
  async function within(names, mode, work) {
    const transaction = await begin(names, mode);
    const done = transaction.done;
    done.catch(() => {});
    const stores = Object.fromEntries(names.map((each) => [each, transaction.objectStore(each)]));
    let result;
    try {
      result = await work(stores);
    } catch (failed) {
      try {
        transaction.abort();
      } catch {
        // It has already aborted by itself.
      }
      await done.catch(() => {});
      throw storage_error(failed, transaction.error);
    }
    try {
      await done;
    } catch (failed) {
      throw storage_error(failed, transaction.error);
    }
    return result;
  }

  await connect();
  return {
    /** @param {string[]} names @param {Work} work @returns {Promise<any>} */
    read: (names, work) => within(names, "readonly", work),
    /** One transaction: all of `work` is saved when this resolves, or none of it. @param {string[]} names @param {Work} work @returns {Promise<any>} */
    write: (names, work) => within(names, "readwrite", work),
    close: () => db?.close(),
  };
}

/** @typedef {Awaited<ReturnType<typeof open_database>>} Database */

/** @param {any} failed @param {any} behind why the transaction aborted, if it did by itself */
function storage_error(failed, behind) {
  const names = [failed?.name, behind?.name];
  if (names.includes("QuotaExceededError")) return new NotSaved("no-space", failed);
  if (names.some((name) => ["AbortError", "UnknownError", "DataError", "InvalidStateError"].includes(name))) {
    return new NotSaved("storage", failed);
  }
  return failed;
}

/** All keys of one room in a store whose key begins with the room. @param {string} room */
export const of_room = (room) => IDBKeyRange.bound([room], [room, []]);
