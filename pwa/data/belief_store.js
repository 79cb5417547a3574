/**
 * The beliefs on this phone, each as of its tank's last record, and the last advice of each tank. They have a database
 * of their own: all of them can be calculated again from the records, so they are never shared, and losing them costs a
 * second.
 */
/** @import { Store } from "../vendor/idb.js" */
import { settings } from "../calc/model_settings.js";
import { openDB } from "../vendor/idb.js";
import { Link } from "./link.js";

/** Raise this whenever the calculation changes in a way that its constants do not show. */
const MODEL = 7;
/** More tanks than a fish room has; the ones that were not looked at for longest are deleted. */
const MOST = 60;

/** @import { Kept } from "../calc/tank_events.js" */
/** @typedef {{tank_id: string, kept: Kept, model: string, used: number}} Belief */
/** @import { LastAdvice } from "../types/advice.js" */
/** @typedef {{beliefs: Store<Belief, string, "used">, advice: Store<LastAdvice, string>}} Stores */

/** @param {string} [name] */
export function belief_store(name = "limnary-beliefs") {
  /** @type {Link<Stores>} */
  const link = new Link(() =>
    openDB(name, 2, {
      upgrade(db, from) {
        if (from < 1) db.createObjectStore("beliefs", { keyPath: "tank_id" }).createIndex("used", "used");
        if (from < 2) db.createObjectStore("advice", { keyPath: "tank_id" });
      },
      terminated() {
        link.db = null;
      },
    }),
  );
  const NAMES = /** @type {const} */ (["beliefs"]);

  return {
    /**
     * The stored belief of a tank, if it is of this model and these constants.
     * @param {string} tank_id
     * @returns {Promise<Kept | undefined>}
     */
    async load(tank_id) {
      const found = await link.run(NAMES, "readonly", ({ beliefs }) => beliefs.get(tank_id));
      return found?.model === model() ? found.kept : undefined;
    },
    /** @param {string} tank_id @param {Kept} kept @param {number} [now] ms @returns {Promise<void>} */
    save: (tank_id, kept, now = Date.now()) =>
      link.run(NAMES, "readwrite", async ({ beliefs }) => {
        await beliefs.put({ tank_id, kept, model: model(), used: now });
        const too_many = (await beliefs.count()) - MOST;
        if (too_many > 0)
          for (const old of await beliefs.index("used").getAllKeys(null, too_many)) await beliefs.delete(old);
      }),
    /** The last advice of every tank. @returns {Promise<LastAdvice[]>} */
    last_advice: () => link.run(["advice"], "readonly", ({ advice }) => advice.getAll()),
    /** @param {LastAdvice[]} all @returns {Promise<void>} */
    keep_advice: (all) =>
      link.run(["advice"], "readwrite", async ({ advice }) => {
        await Promise.all(all.map((one) => advice.put(one)));
      }),
    /**
     * Delete the beliefs and the advice of all other tanks: this phone stores nothing of tanks that it may no longer
     * see.
     * @param {string[]} tank_ids @returns {Promise<void>}
     */
    keep_only: (tank_ids) =>
      link.run(["beliefs", "advice"], "readwrite", async (t) => {
        for (const store of [t.beliefs, t.advice])
          for (const held of await store.getAllKeys()) if (!tank_ids.includes(held)) await store.delete(held);
      }),
    close: () => link.close(),
  };
}

/** What a stored belief must have been made with. */
const model = () => JSON.stringify([MODEL, settings()]);
