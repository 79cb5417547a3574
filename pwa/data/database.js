/**
 * The phone's database: its stores, its migrations, and two ways in. Each `write` is one transaction.
 * Inside a transaction, await only its own stores: any other wait lets it close half done.
 */
/** @import { In, StoreName, Stores } from "../types/stores.js" */
/** @import { Connection, UpgradeTransaction, Upgraded } from "../vendor/idb.js" */
import { openDB } from "../vendor/idb.js";

/** Nothing was saved; `reason` is "no-space" or "storage". */
export class NotSaved extends Error {
  /** @param {"no-space" | "storage"} reason @param {unknown} cause */
  constructor(reason, cause) {
    super(
      reason === "no-space"
        ? "This phone has no room left, so this was not saved. Free some space, then save it again."
        : "This phone's storage did not take this, so it was not saved. Try again; if it stays so, " +
            "close the app and open it again.",
      { cause },
    );
    this.reason = reason;
  }
}

/**
 * One function a version, in order; a published one never changes, and neither do the names it stores.
 * @type {((db: Upgraded, transaction: UpgradeTransaction) => void)[]}
 */
export const MIGRATIONS = [
  function first_stores(db) {
    // The mirror: the server's rows as they came, with their room.
    db.createObjectStore("rows", { keyPath: ["room", "kind", "id"] });
    // Ops that the server has not acknowledged; `n` is the order in which they were written.
    const outbox = db.createObjectStore("outbox", { keyPath: "n", autoIncrement: true });
    outbox.createIndex("room", "room");
    outbox.createIndex("record", ["room", "op.kind", "op.id"]);
    outbox.createIndex("op", "op.op", { unique: true });
    outbox.createIndex("stamp", "op.stamp");
    // Ops that it has acknowledged: they are sent again if the server is restored from an older backup.
    const kept = db.createObjectStore("kept", { keyPath: "op.op" });
    kept.createIndex("room", "room");
    kept.createIndex("record", ["room", "op.kind", "op.id"]);
    kept.createIndex("seq", ["room", "seq"]);
    kept.createIndex("stamp", "op.stamp");
    db.createObjectStore("rooms", { keyPath: "id" });
    // `identity`, `clock`, `offset`, `joining` and `last-room`.
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

/** @typedef {Awaited<ReturnType<typeof open_database>>} Database */
/** @typedef {{name: string, on_blocked: () => void, on_outdated: () => void}} How */

/**
 * Open the database, migrating an older one.
 * @param {Partial<How>} [how]
 *   on_blocked: another tab holds an older version open; ask the person to close it.
 *   on_outdated: a newer version of the app needs the database; this tab has closed it and must be reloaded.
 */
export async function open_database({ name = "limnary", on_blocked = () => {}, on_outdated = () => {} } = {}) {
  const link = new Link({ name, on_blocked, on_outdated });
  await link.connect();
  return {
    /**
     * @template {StoreName} Name @template Result
     * @param {readonly Name[]} names @param {(t: In<Name>) => Result | Promise<Result>} work @returns {Promise<Result>}
     */
    read: (names, work) => within(link, names, "readonly", work),
    /**
     * One transaction: all of `work` is saved when this resolves, or none of it.
     * @template {StoreName} Name @template Result
     * @param {readonly Name[]} names @param {(t: In<Name>) => Result | Promise<Result>} work @returns {Promise<Result>}
     */
    write: (names, work) => within(link, names, "readwrite", work),
    close: () => link.db?.close(),
  };
}

/** A connection that is made again where it was lost: some engines drop it in the background. */
class Link {
  /** @type {Connection<Stores> | null} */
  db = null;

  /** @param {How} how */
  constructor(how) {
    this.how = how;
  }

  async connect() {
    const { name, on_blocked, on_outdated } = this.how;
    /** @type {Connection<Stores>} */
    const opened = await openDB(name, MIGRATIONS.length, {
      upgrade(fresh, from, to, transaction) {
        for (const migrate of MIGRATIONS.slice(from, to ?? undefined)) migrate(fresh, transaction);
      },
      blocked: on_blocked,
      blocking() {
        opened.close();
        on_outdated();
      },
      terminated: () => {
        this.db = null;
      },
    });
    this.db = opened;
    return opened;
  }

  /**
   * Begin a transaction; connect again if there is no connection, once.
   * @template {StoreName} Name
   * @param {readonly Name[]} names @param {IDBTransactionMode} mode
   */
  async begin(names, mode) {
    const db = this.db ?? (await this.connect());
    try {
      return db.transaction(names, mode, mode === "readwrite" ? { durability: "strict" } : {});
    } catch (failed) {
      if (name_of(failed) !== "InvalidStateError") throw failed;
      return (await this.connect()).transaction(names, mode);
    }
  }
}

/**
 * Run `work` in one transaction, and wait until it is done.
 * @template {StoreName} Name @template Result
 * @param {Link} link @param {readonly Name[]} names @param {IDBTransactionMode} mode
 * @param {(t: In<Name>) => Result | Promise<Result>} work @returns {Promise<Result>}
 */
async function within(link, names, mode, work) {
  const transaction = await link.begin(names, mode);
  const done = transaction.done;
  done.catch(() => {});
  const stores = Object.fromEntries(names.map((each) => [each, transaction.objectStore(each)]));
  let result;
  try {
    // `any`: fromEntries does not keep which names it was given.
    result = await work(/** @type {any} */ (stores));
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

const NOT_TAKEN = ["AbortError", "UnknownError", "DataError", "InvalidStateError"];

/** @param {unknown} failed @param {unknown} cause why the transaction aborted, if it did so by itself */
function storage_error(failed, cause) {
  const names = [name_of(failed), name_of(cause)];
  if (names.includes("QuotaExceededError")) return new NotSaved("no-space", failed);
  return names.some((name) => NOT_TAKEN.includes(name)) ? new NotSaved("storage", failed) : failed;
}

/** The name of an error or DOMException, "" if it has none. @param {unknown} failed @returns {string} */
const name_of = (failed) => /** @type {{name?: string} | null} */ (failed)?.name ?? "";

/** All keys of one room in a store whose key begins with the room. @param {string} room_id */
export const of_room = (room_id) => IDBKeyRange.bound([room_id], [room_id, []]);
