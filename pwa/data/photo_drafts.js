/**
 * Pictures taken but not saved yet, by the draft they belong to: they outlive a reload and a flat battery as typed
 * words do. A database of its own, for nothing in it is a record, and it never leaves the phone.
 */
import { openDB } from "../vendor/idb.js";

/** @typedef {{id: number, picture: Blob, width: number, height: number}} Taken */

/** @param {string} [name] */
export function photo_drafts(name = "limnary-drafts") {
  /** @type {Promise<any> | null} */ let opened = null;
  const database = () =>
    (opened ??= openDB(name, 1, {
      upgrade(db) {
        db.createObjectStore("pictures", { keyPath: "id", autoIncrement: true }).createIndex("draft", "draft");
      },
      terminated() {
        opened = null;
      },
    }));

  return {
    /** @param {string} draft @returns {Promise<Taken[]>} in the order they were taken */
    async list(draft) {
      const kept = await (await database()).getAllFromIndex("pictures", "draft", draft);
      return kept.map((/** @type {any} */ { id, bytes, type, width, height }) => ({
        id,
        picture: new Blob([bytes], { type }),
        width,
        height,
      }));
    },
    /** @param {string} draft @param {{picture: Blob, width: number, height: number}} taken @returns {Promise<number>} its id */
    async add(draft, { picture, width, height }) {
      const bytes = await picture.arrayBuffer();
      return (await database()).add("pictures", { draft, bytes, type: picture.type, width, height });
    },
    /** Take one away. @param {number} id @returns {Promise<() => Promise<void>>} the undo */
    async remove(id) {
      const kept = await (await database()).get("pictures", id);
      await (await database()).delete("pictures", id);
      return async () => void (kept && (await (await database()).put("pictures", kept)));
    },
    /** They were saved, or thrown away. @param {string} draft */
    async forget(draft) {
      const transaction = (await database()).transaction("pictures", "readwrite");
      for (const id of await transaction.store.index("draft").getAllKeys(draft)) await transaction.store.delete(id);
      await transaction.done;
    },
    async close() {
      (await opened)?.close();
      opened = null;
    },
  };
}
