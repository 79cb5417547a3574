/** Writes a notebook's records, each under an id that follows from its content, and takes the whole import back. */
import { InvalidInput, records } from "../contracts.js";
import { id_by_content } from "../data/notebook_file.js";
import { t } from "../i18n/words.js";
import { draft } from "./state/draft.js";
import { get, room } from "./state/live.js";
import { offer, say } from "./state/record.js";

/** @import { Made } from "../advice/notebook.js" */
/** @typedef {{kind: string, id: string}} Key */

/** The records that are not here yet, each once. @param {Made[]} made @returns {(Made & {id: string})[]} */
export function new_records(made) {
  const by_id = new Map(made.map((one) => [one.id ?? id_by_content(one.kind, one.fields), one]));
  return [...by_id].flatMap(([id, one]) => (room.value.holds(one.kind, id) ? [] : [{ ...one, id }]));
}
/** The id of a tank that an import makes. @param {{name: string, water_l: number}} tank */
export const new_tank_id = (tank) => id_by_content("tank", tank);
/** What the last import wrote, until it is taken back. */
export const last_import = draft("notebook.last", () => /** @type {Key[] | null} */ (null));

/**
 * All of it in one transaction, or nothing.
 * @param {{id: string, name: string, water_l: number}[]} tanks to be made
 * @param {(Made & {id: string})[]} entries
 */
export async function write_notebook(tanks, entries) {
  const writes = [
    ...tanks.map(({ id, ...fields }) => ({ kind: "tank", id, fields })),
    ...entries.map(({ kind, id, fields }) => ({ kind, id, fields })),
  ];
  await put_or_restore(writes);
  last_import.value = writes.map(({ kind, id }) => ({ kind, id }));
  offer(t("notebook.brought", { count: entries.length }), take_back);
}

/**
 * A record that was taken back before is restored: an entry's id is never written twice.
 * @param {{kind: string, id: string, fields: Record<string, unknown>}[]} writes
 */
async function put_or_restore(writes) {
  // A put would not bring back a tank; a restore of a tank that never was fails at once, and all become puts.
  /** @type {("put" | "restore")[]} */ const types = writes.map(({ kind }) => (kind === "tank" ? "restore" : "put"));
  let reached = -1;
  for (;;) {
    try {
      await room.value.write(
        writes.map(({ kind, id, fields }, i) =>
          types[i] === "put" ? { type: "put", kind, id, fields } : { type: "restore", kind, id },
        ),
      );
      return;
    } catch (error) {
      const index = error instanceof InvalidInput ? /** @type {{index?: number}} */ (error).index : undefined;
      if (index === undefined || index <= reached) throw error;
      reached = index;
      // What was taken back was taken back together: the writes that follow are most likely alike.
      const other = types[index] === "put" ? "restore" : "put";
      types.fill(other, index);
    }
  }
}

/** Take the last import back, as a whole. */
export async function take_back() {
  const last = last_import.value;
  if (!last) return;
  const brought = new Set(last.map(({ id }) => id));
  // Records go before their tanks; a tank about which something else is recorded stays.
  const there = [...last]
    .reverse()
    .filter(({ kind, id }) => get(/** @type {"reading"} */ (kind), id) && (kind !== "tank" || !is_used(id, brought)));
  await room.value.write(there.map(({ kind, id }) => ({ type: "del", kind, id })));
  last_import.value = null;
  say(t("notebook.taken_back", { count: there.length }));
}

/** Whether any record but those brought is about a tank. @param {string} tank @param {Set<string>} brought ids */
const is_used = (tank, brought) =>
  Object.keys(records()).some((kind) =>
    room.value
      .all(/** @type {import("../types/records.js").RecordKind} */ (kind))
      .some((one) => !brought.has(one.id) && Object.values(one).flat().includes(tank)),
  );
