/**
 * A copy of the room that is being made or taken in: how far it is, whatever page the keeper looks at meanwhile. The
 * name of a copy that is being taken in is stored, so that the app can say after a reload that it did not end.
 */
import { signal } from "../../vendor/preact.js";
import { draft } from "./draft.js";

/** @typedef {"making" | "taking_in"} Work */

/** @typedef {{work: Work, count: number, total: number}} UnderWay */

/** @type {import("../../vendor/preact.js").Signal<UnderWay | null>} */
export const under_way = signal(null);

/** The name of the copy that is being taken in, or was when the app was closed. */
const begun = draft("taking_in", () => "");

/** The copy whose taking in did not come to its end, or "". */
export const interrupted = () => (under_way.value ? "" : begun.value);

/**
 * Do such a work, and show how far it is. A copy that could not be taken in has said why, so it counts as ended.
 * @template T @param {Work} work @param {(told: import("../../data/import_room.js").Progress) => Promise<T>} doing
 * @param {string} [file] the name of the copy that is taken in
 * @returns {Promise<T>}
 */
export async function copying(work, doing, file = "") {
  if (work === "taking_in") begun.value = file;
  under_way.value = { work, count: 0, total: 0 };
  try {
    return await doing((count, total) => (under_way.value = { work, count, total }));
  } finally {
    under_way.value = null;
    if (work === "taking_in") begun.value = "";
  }
}
