/**
 * The beliefs on this phone, each at its tank's last record. A database of its own: all of it can be made again
 * from the records, so it is never shared, and losing it costs a second.
 */
import { settings } from "../calc/kinetics.js";
import { openDB } from "../vendor/idb.js";

/** Raised whenever the calculation changes in a way that its constants do not show. */
const MODEL = 3;
/** More tanks than a fish room has; the ones not looked at for longest go first. */
const MOST = 60;

/** @param {string} [name] */
export function belief_store(name = "limnary-beliefs") {
  /** @type {Promise<any> | null} */ let opened = null;
  const database = () =>
    (opened ??= openDB(name, 1, {
      upgrade(db) {
        db.createObjectStore("beliefs", { keyPath: "tank_id" }).createIndex("used", "used");
      },
      terminated() {
        opened = null;
      },
    }));

  return {
    /** The belief kept of a tank, if it is of this model and these constants. @param {string} tank_id @returns {Promise<any>} */
    async load(tank_id) {
      const found = await (await database()).get("beliefs", tank_id);
      return found?.model === model() ? found.kept : undefined;
    },
    /** @param {string} tank_id @param {any} kept @param {number} [now] ms */
    async save(tank_id, kept, now = Date.now()) {
      const transaction = (await database()).transaction("beliefs", "readwrite");
      const beliefs = transaction.store;
      await beliefs.put({ tank_id, kept, model: model(), used: now });
      const too_many = (await beliefs.count()) - MOST;
      if (too_many > 0)
        for (const old of await beliefs.index("used").getAllKeys(null, too_many)) await beliefs.delete(old);
      await transaction.done;
    },
    /** Let go of the beliefs of all other tanks: what this phone may no longer hold, it does not keep. @param {string[]} tank_ids */
    async keep_only(tank_ids) {
      const transaction = (await database()).transaction("beliefs", "readwrite");
      for (const held of await transaction.store.getAllKeys())
        if (!tank_ids.includes(held)) await transaction.store.delete(held);
      await transaction.done;
    },
    async close() {
      (await opened)?.close();
      opened = null;
    },
  };
}

/** What a stored belief must have been made with. */
const model = () => JSON.stringify([MODEL, settings()]);
