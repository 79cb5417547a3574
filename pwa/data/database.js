/**
 * The phone's database: its stores, its migrations, and two ways in. Each `write` is one transaction.
 * Inside a transaction, await only its own stores: any other wait lets it close half done.
 */
/** @import { In, StoreName, Stores } from "../types/stores.js" */
/** @import { Connection, UpgradeTransaction, Upgraded } from "../vendor/idb.js" */
import { openDB } from "../vendor/idb.js";
import { Failed, Link, Stuck } from "./link.js";

/** @typedef {"no-space" | "storage" | "stuck"} Why */

const WORDS = {
  "no-space": "This phone has no room left, so this was not saved. Free some space, then save it again.",
  storage:
    "This phone's storage did not take this, so it was not saved. Try again; if it stays so, " +
    "close the app and open it again.",
  stuck:
    "This phone's storage does not answer. Close other tabs and windows of the app, then close the app and open it " +
    "again. What you typed stays.",
};

/** Nothing was saved. "stuck": the storage does not answer; where the work had begun, it may be saved after all. */
export class NotSaved extends Error {
  /** @param {Why} reason @param {unknown} [cause] */
  constructor(reason, cause) {
    super(WORDS[reason], { cause });
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
  function rows_by_tank_and_place(_db, transaction) {
    const rows = transaction.objectStore("rows");
    // What a page of one tank shows.
    rows.createIndex("tank", ["room", "fields.tank"]);
    // Corrections, few among many: they may hide a record of any tank.
    rows.createIndex("corrects", ["room", "fields.supersedes"]);
    // What changed since a place of the server's log.
    rows.createIndex("seq", ["room", "seq"]);
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
export async function open_database(
  { name = "limnary", on_blocked = () => {}, on_outdated = () => {} } = {},
  /** @type {ConstructorParameters<typeof Link<Stores>>[1]} */ link_how = {},
) {
  /** @type {Link<Stores>} */
  const link = new Link(async () => {
    /** @type {Connection<Stores>} */
    const opened = await openDB(name, MIGRATIONS.length, {
      upgrade(fresh, from, to, transaction) {
        for (const migrate of MIGRATIONS.slice(from, to ?? undefined)) migrate(fresh, transaction);
      },
      blocked() {
        link.patient = true;
        on_blocked();
      },
      blocking() {
        opened.close();
        on_outdated();
      },
      terminated: () => {
        link.db = null;
      },
    });
    return opened;
  }, link_how);
  await link.connect().catch(() => link.connect().catch(fail));
  return {
    /**
     * @template {StoreName} Name @template Result
     * @param {readonly Name[]} names @param {(t: In<Name>) => Result | Promise<Result>} work @returns {Promise<Result>}
     */
    read: (names, work) => link.run(names, "readonly", work).catch(fail),
    /**
     * One transaction: all of `work` is saved when this resolves, or none of it.
     * @template {StoreName} Name @template Result
     * @param {readonly Name[]} names @param {(t: In<Name>) => Result | Promise<Result>} work @returns {Promise<Result>}
     */
    write: (names, work) => link.run(names, "readwrite", work).catch(fail),
    close: () => link.db?.close(),
  };
}

const NOT_TAKEN = ["AbortError", "UnknownError", "DataError", "InvalidStateError"];

/** @param {unknown} thrown @returns {never} */
function fail(thrown) {
  if (thrown instanceof Stuck) throw new NotSaved("stuck", thrown);
  const failed = thrown instanceof Failed ? thrown.failed : thrown;
  const names = [name_of(failed), name_of(thrown instanceof Failed && thrown.cause)];
  if (names.includes("QuotaExceededError")) throw new NotSaved("no-space", failed);
  throw names.some((name) => NOT_TAKEN.includes(name)) ? new NotSaved("storage", failed) : failed;
}

/** The name of an error or DOMException, "" if it has none. @param {unknown} failed @returns {string} */
const name_of = (failed) => /** @type {{name?: string} | null} */ (failed)?.name ?? "";

/**
 * Ask a transaction for several things at once: each answer takes a way to the browser and back. Where one cannot be
 * asked for, the others are still waited for.
 * @template {readonly (() => unknown)[]} Works @param {readonly [...Works]} works
 * @returns {Promise<{-readonly [At in keyof Works]: Awaited<ReturnType<Works[At]>>}>}
 */
export const together = (works) =>
  /** @type {Promise<never>} a tuple, as its type says */ (
    /** @type {unknown} */ (Promise.all(works.map(async (work) => work())))
  );

/** All keys of one room in a store whose key begins with the room. @param {string} room_id */
export const of_room = (room_id) => IDBKeyRange.bound([room_id], [room_id, []]);
