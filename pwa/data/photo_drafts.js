/**
 * Pictures that are taken but not saved yet, by the draft they belong to: like typed words, they outlive a reload and a
 * flat battery. They have a database of their own, because they are no records and never leave the phone.
 */
/** @import { Store } from "../vendor/idb.js" */
import { openDB } from "../vendor/idb.js";
import { Link } from "./link.js";

/** @typedef {{picture: Blob, width: number, height: number}} Picture */
/** @typedef {Picture & {id: number}} Taken */
/** @typedef {{draft: string, bytes: ArrayBuffer, type: string, width: number, height: number}} Unnumbered */
/** @typedef {Unnumbered & {id: number}} Stored */
/** @typedef {{pictures: Store<Stored, number, "draft", Unnumbered>}} Stores */

/** @param {string} [name] */
export function photo_drafts(name = "limnary-drafts") {
  /** @type {Link<Stores>} */
  const link = new Link(() =>
    openDB(name, 1, {
      upgrade(db) {
        db.createObjectStore("pictures", { keyPath: "id", autoIncrement: true }).createIndex("draft", "draft");
      },
      terminated() {
        link.db = null;
      },
    }),
  );
  const NAMES = /** @type {const} */ (["pictures"]);

  return {
    /** @param {string} draft @returns {Promise<Taken[]>} in the order they were taken */
    async list(draft) {
      const stored = await link.run(NAMES, "readonly", ({ pictures }) => pictures.index("draft").getAll(draft));
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
      return link.run(NAMES, "readwrite", ({ pictures }) =>
        pictures.add({ draft, bytes, type: picture.type, width, height }),
      );
    },
    /** Delete one. @param {number} id @returns {Promise<() => Promise<void>>} the undo */
    async remove(id) {
      const stored = await link.run(NAMES, "readwrite", async ({ pictures }) => {
        const held = await pictures.get(id);
        await pictures.delete(id);
        return held;
      });
      return async () => {
        if (stored) await link.run(NAMES, "readwrite", ({ pictures }) => pictures.put(stored));
      };
    },
    /** Delete all of a draft: they were saved, or thrown away. @param {string} draft @returns {Promise<void>} */
    forget: (draft) =>
      link.run(NAMES, "readwrite", async ({ pictures }) => {
        for (const id of await pictures.index("draft").getAllKeys(draft)) await pictures.delete(id);
      }),
    close: () => link.close(),
  };
}
