/**
 * A connection to a database of this phone on which no wait lasts for ever.
 * WebKit lets a transaction of a page that is hidden in the back/forward cache, or of a suspended app, block every
 * other reader (WebKit pull requests 67039 and 74082). So the connection is closed when the page hides and opened when
 * it shows again, and no transaction begins in between. Where a transaction still does not start, the connection is
 * closed and opened anew, once; then the caller is told.
 */
/** @import { Connection, Transaction } from "../vendor/idb.js" */

/** The phone's storage did not answer in time. `begun`: the work had begun, so that part of it may be saved. */
export class Stuck extends Error {
  /** @param {boolean} begun */
  constructor(begun) {
    super(
      "This phone's storage does not answer. Close other tabs and windows of the app, then close the app and open it " +
        "again. What you typed stays.",
    );
    this.begun = begun;
  }
}

/**
 * A read of many years takes seconds on a slow phone, and another tab's write may come first (assumption: beyond
 * these limits nothing more comes).
 */
const LIMITS = { open_ms: 10_000, start_ms: 8_000, work_ms: 90_000 };

/** What tells that the page hides and shows: the window; nothing in a worker or in Node. */
const WINDOW = typeof window === "undefined" ? null : window;

/** @typedef {{abort(): void}} Stoppable */
/**
 * @template {Stoppable} T
 * @typedef {{transaction: T, mode: IDBTransactionMode, hidden: boolean}} Running
 */

/** @template Stores */
export class Link {
  /** @type {Connection<Stores> | null} */ db = null;
  /** Whether a person has to act before the connection opens. */ patient = false;
  /** @type {Promise<Connection<Stores>> | null} */ #opening = null;
  /** @type {Set<Running<Stoppable>>} */ #running = new Set();
  #shown = Promise.resolve();
  #show = () => {};
  #hides = false;

  /**
   * @param {() => Promise<Connection<Stores>>} open
   * @param {{page?: Pick<EventTarget, "addEventListener"> | null, limits?: typeof LIMITS}} [how]
   */
  constructor(open, { page = WINDOW, limits = LIMITS } = {}) {
    this.open = open;
    this.limits = limits;
    page?.addEventListener("pagehide", () => this.#hide());
    page?.addEventListener("pageshow", () => this.#show());
  }

  /**
   * The connection, opened if it is not open. While an older tab must be closed by hand (`patient`) there is no limit.
   * @returns {Promise<Connection<Stores>>}
   */
  async connect() {
    if (this.db) return this.db;
    this.#opening ??= this.#opened();
    try {
      return await within(this.#opening, this.limits.open_ms, false, () => this.patient);
    } catch (failed) {
      this.#opening = null;
      throw failed;
    }
  }

  /** @returns {Promise<Connection<Stores>>} */
  #opened() {
    /** @type {Promise<Connection<Stores>>} */
    const mine = this.open().then((opened) => {
      this.patient = false;
      // It came too late, or the page has hidden meanwhile.
      if (this.#opening !== mine || this.#hides) opened.close();
      else this.db = opened;
      if (this.#opening === mine) this.#opening = null;
      return opened;
    });
    return mine;
  }

  /** Close the connection; the next transaction opens it anew. */
  close() {
    this.db?.close();
    this.db = null;
  }

  /**
   * Run `work` in one transaction, and wait until it is done.
   * @template {keyof Stores & string} Name @template Result
   * @param {readonly Name[]} names @param {IDBTransactionMode} mode
   * @param {(stores: Pick<Stores, Name>) => Result | Promise<Result>} work @returns {Promise<Result>}
   * @throws {Stuck} the storage does not answer
   */
  async run(names, mode, work) {
    for (let fresh = false; ; fresh = true) {
      await this.#shown;
      const running = await this.#begun(names, mode).catch((failed) => {
        if (fresh || !(failed instanceof Stuck)) throw failed;
        return null; // open the connection anew, once
      });
      if (running === null) continue;
      try {
        return await this.#carried_out(running, names, work);
      } catch (failed) {
        // The page hid in the middle of a read: it is read once more when the page shows.
        if (!(running.hidden && mode === "readonly")) throw failed;
      } finally {
        this.#running.delete(running);
      }
    }
  }

  /**
   * A transaction that has started: one small request was answered.
   * @template {keyof Stores & string} Name
   * @param {readonly Name[]} names @param {IDBTransactionMode} mode
   * @returns {Promise<Running<Transaction<Pick<Stores, Name>>>>}
   */
  async #begun(names, mode) {
    const transaction = await this.#transaction(names, mode);
    transaction.done.catch(() => {});
    const running = { transaction, mode, hidden: false };
    this.#running.add(running);
    try {
      const store = /** @type {{getKey(key: number): Promise<unknown>}} */ (
        /** @type {unknown} */ (transaction.objectStore(names[0]))
      );
      await within(store.getKey(0), this.limits.start_ms, false);
      return running;
    } catch (failed) {
      this.#running.delete(running);
      stop(transaction);
      if (running.hidden) return this.#shown.then(() => this.#begun(names, mode));
      if (failed instanceof Stuck) this.close();
      throw failed;
    }
  }

  /**
   * @template {keyof Stores & string} Name
   * @param {readonly Name[]} names @param {IDBTransactionMode} mode @returns {Promise<Transaction<Pick<Stores, Name>>>}
   */
  async #transaction(names, mode) {
    const how = mode === "readwrite" ? /** @type {const} */ ({ durability: "strict" }) : {};
    const db = await this.connect();
    if (this.#hides) return this.#shown.then(() => this.#transaction(names, mode));
    try {
      return db.transaction(names, mode, how);
    } catch (failed) {
      // Some engines drop a connection in the background.
      if (/** @type {{name?: string}} */ (failed).name !== "InvalidStateError") throw failed;
      this.db = null;
      return (await this.connect()).transaction(names, mode, how);
    }
  }

  /**
   * @template {keyof Stores & string} Name @template Result
   * @param {Running<Transaction<Pick<Stores, Name>>>} running @param {readonly Name[]} names
   * @param {(stores: Pick<Stores, Name>) => Result | Promise<Result>} work @returns {Promise<Result>}
   */
  async #carried_out({ transaction }, names, work) {
    /** @type {any} `any`, because fromEntries does not keep which names it was given */
    const stores = Object.fromEntries(names.map((each) => [each, transaction.objectStore(each)]));
    try {
      const result = await within(Promise.resolve(work(stores)), this.limits.work_ms, true);
      await within(transaction.done, this.limits.work_ms, true);
      return result;
    } catch (failed) {
      const stopped = stop(transaction);
      if (failed instanceof Stuck) {
        this.close();
        throw new Stuck(!stopped);
      }
      await within(
        transaction.done.catch(() => {}),
        this.limits.start_ms,
        false,
      ).catch(() => {});
      throw Object.assign(new Failed(failed), { cause: transaction.error });
    }
  }

  /** The page hides: nothing of it may stay open. */
  #hide() {
    if (this.#hides) return;
    this.#hides = true;
    this.#shown = new Promise((resolve) => {
      this.#show = () => {
        this.#hides = false;
        this.#show = () => {};
        resolve();
      };
    });
    for (const running of this.#running) {
      running.hidden = true;
      stop(running.transaction);
    }
    this.close();
  }
}

/** The work or its transaction failed: `failed` is what it threw, `cause` why the transaction aborted by itself. */
export class Failed extends Error {
  /** @param {unknown} failed */
  constructor(failed) {
    super("A transaction failed");
    this.failed = failed;
  }
}

/** Abort a transaction, unless it has ended. @param {Stoppable} transaction @returns {boolean} aborted now */
function stop(transaction) {
  try {
    transaction.abort();
    return true;
  } catch {
    return false;
  }
}

/**
 * @template Result
 * @param {Promise<Result>} waiting @param {number} ms @param {boolean} begun
 * @param {() => boolean} [patient] whether to wait on at the end of the time
 * @returns {Promise<Result>}
 * @throws {Stuck}
 */
function within(waiting, ms, begun, patient = () => false) {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => patient() || reject(new Stuck(begun)), ms);
    waiting.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}
