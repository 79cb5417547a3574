/** The phone's core under test, from a folder: the product's own, or a copy with a bug planted in it. */
import "fake-indexeddb/auto";
import { pathToFileURL } from "node:url";
import { shared_bundle } from "../js/shared_bundle.js";

/**
 * @typedef {{
 *   Unreachable: typeof import("../../pwa/data/api.js").Unreachable,
 *   open_database: typeof import("../../pwa/data/database.js").open_database,
 *   open_room: typeof import("../../pwa/data/fish_room.js").open_room,
 *   join: typeof import("../../pwa/data/fish_room.js").join,
 *   start: typeof import("../../pwa/data/sync.js").start,
 *   written_by: () => Record<string, string[]>,
 * }} Core
 */

/** @param {string} pwa the folder that holds contracts.js and data/ @returns {Promise<Core>} */
export async function load_core(pwa) {
  /** @param {string} path */
  const load = (path) => import(pathToFileURL(`${pwa}/${path}`).href);
  const [contracts, api, database, room, sync] = await Promise.all(
    ["contracts.js", "data/api.js", "data/database.js", "data/fish_room.js", "data/sync.js"].map(load),
  );
  contracts.install(shared_bundle());
  return {
    Unreachable: api.Unreachable,
    open_database: database.open_database,
    open_room: room.open_room,
    join: room.join,
    start: sync.start,
    written_by: () =>
      Object.fromEntries(
        /** @type {import("../../pwa/types/contract.js").Kind[]} */ (Object.values(contracts.records())).map(
          ({ kind, written_by }) => [kind, written_by],
        ),
      ),
  };
}
