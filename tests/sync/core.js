/** The phone's core under test, from a folder: the product's own, or a copy with a bug planted in it. */
import "fake-indexeddb/auto";
import { pathToFileURL } from "node:url";
import { sharedBundle } from "../js/shared_bundle.js";

/** @param {string} pwa the folder that holds contracts.js and data/ */
export async function loadCore(pwa) {
  const load = (path) => import(pathToFileURL(`${pwa}/${path}`).href);
  const [contracts, api, database, room, sync] = await Promise.all(
    ["contracts.js", "data/api.js", "data/database.js", "data/fish_room.js", "data/sync.js"].map(load),
  );
  contracts.install(sharedBundle());
  return {
    Unreachable: api.Unreachable,
    openDatabase: database.openDatabase,
    openRoom: room.openRoom,
    join: room.join,
    start: sync.start,
    writtenBy: () =>
      Object.fromEntries(Object.values(contracts.records()).map(({ kind, written_by }) => [kind, written_by])),
  };
}
