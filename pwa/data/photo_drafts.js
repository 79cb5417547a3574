/**
 * Pictures that are taken but not saved yet, by the draft they belong to: like typed words, they outlive a reload and a
 * flat battery. They have a database of their own, because they are no records and never leave the phone.
 */
/** @import { Connection, Store } from "../vendor/idb.js" */
import { openDB } from "../vendor/idb.js";

/** @typedef {{picture: Blob, width: number, height: number}} Picture */
/** @typedef {Picture & {id: number}} Taken */
/** @typedef {{draft: string, bytes: ArrayBuffer, type: string, width: number, height: number}} Unnumbered */
/** @typedef {Unnumbered & {id: number}} Stored */
/** @typedef {{pictures: Store<Stored, number, "draft", Unnumbered>}} Stores */

/** @param {string} [name] */
export function photo_drafts(name = "limnary-drafts") {
  /** @type {Promise<Connection<Stores>> | null} */ let opened = null;
  const database = () =>
    (opened ??= openDB(name, 1, {
      upgrade(db) {
        db.createObjectStore("pictures", { keyPath: "id", autoIncrement: true }).createIndex("draft", "draft");
      },
      terminated() {
        opened = null;
      },
    }));
  const begin = async (/** @type {IDBTransactionMode} */ mode) => {
    const transaction = (await database()).transaction(["pictures"], mode);
    return { pictures: transaction.objectStore("pictures"), done: transaction.done };
  };

  return {
    /** @param {string} draft @returns {Promise<Taken[]>} in the order they were taken */
    async list(draft) {
      const { pictures } = await begin("readonly");
      const stored = await pictures.index("draft").getAll(draft);
      return stored.map(({ id, bytes, type, width, height }) => ({
        id,
        picture: new Blob([bytes], { type }),
        width,
        height,
      }));
    },
    /** @param {string} draft @param {Picture} taken @returns {Promise<number>} its id */
    async add(draft, { picture, width, height }) {
      const bytes = await picture.arrayBuffer();
      const { pictures, done } = await begin("readwrite");
      const id = await pictures.add({ draft, bytes, type: picture.type, width, height });
      await done;
      return id;
    },
    /** Delete one. @param {number} id @returns {Promise<() => Promise<void>>} the undo */
    async remove(id) {
      const { pictures, done } = await begin("readwrite");
      const stored = await pictures.get(id);
      await pictures.delete(id);
      await done;
      return async () => {
        const again = await begin("readwrite");
        if (stored) await again.pictures.put(stored);
        await again.done;
      };
    },
    /** Delete all of a draft: they were saved, or thrown away. @param {string} draft */
    async forget(draft) {
      const { pictures, done } = await begin("readwrite");
      for (const id of await pictures.index("draft").getAllKeys(draft)) await pictures.delete(id);
      await done;
    },
    async close() {
      (await opened)?.close();
      opened = null;
    },
  };
}
