/** Records in one transaction, once however often the button is tapped, and offers an undo instead of asking first. */
import { signal } from "../../vendor/preact.js";
import { NotSaved } from "../../data/fish_room.js";
import { uuid7 } from "../../data/uuid7.js";
import { trouble_said } from "../words/trouble_said.js";
import { get_of_kind, room } from "./live.js";

const UNDO_MS = 12_000;

/** @typedef {{type: "put" | "del" | "restore", kind: string, id: string, fields?: Record<string, unknown>}} Write */

/**
 * The note about what was just recorded, and how to take it back.
 * @type {import("../../vendor/preact.js").Signal<{said: string, undo: (() => Promise<unknown>) | null} | null>}
 */
export const just_done = signal(null);
/** @type {ReturnType<typeof setTimeout> | undefined} */
let fading;
let busy = false;

/** A new record's id. */
export const new_id = () => uuid7(Date.now(), (count) => crypto.getRandomValues(new Uint8Array(count)));

/**
 * @typedef {{picture: Blob, fields: Record<string, unknown>, id: string}} Picture shrunk already, with the fields and
 * id of its record
 */

/**
 * Write all of it or nothing, then offer the undo. A second call while the first still runs does nothing. If the
 * phone's storage fails, the note says so and stays, and what is typed can be saved again.
 * @param {Write[]} writes
 * @param {string} said what the note says
 * @param {Picture[]} [pictures] saved in the same transaction
 * @returns {Promise<boolean>} whether it was this call that recorded
 */
export async function record(writes, said, pictures = []) {
  if (busy) return false;
  busy = true;
  try {
    const undoing = [
      ...writes.map(inverse),
      ...pictures.map(({ id }) => ({ type: /** @type {const} */ ("del"), kind: "photo", id })),
    ];
    await room.value.write(writes, pictures);
    note(said, () => room.value.write(undoing));
    return true;
  } catch (error) {
    if (!(error instanceof NotSaved)) throw error;
    not_done(error, null);
    return false;
  } finally {
    busy = false;
  }
}

/** Say something that cannot be undone. @param {string} said */
export const say = (said) => note(said, null);

/**
 * Say what was done, with an undo that is more than a write.
 * @param {string} said
 * @param {() => Promise<unknown>} undoing
 */
export const offer = (said, undoing) => note(said, undoing);

/** Take back what was just done; if that fails, the undo stays on offer. */
export async function undo() {
  const done = just_done.value;
  just_done.value = null;
  try {
    await done?.undo?.();
  } catch (error) {
    not_done(error, done?.undo ?? null);
  }
}

export function close_note() {
  just_done.value = null;
}

/** @param {string} said @param {(() => Promise<unknown>) | null} undoing */
function note(said, undoing) {
  clearTimeout(fading);
  just_done.value = { said, undo: undoing };
  fading = setTimeout(close_note, UNDO_MS);
}

/**
 * Say why something was not done, until the keeper closes the note.
 * @param {unknown} caught
 * @param {(() => Promise<unknown>) | null} undoing
 */
function not_done(caught, undoing) {
  note(trouble_said(caught), undoing);
  clearTimeout(fading);
}

/** The write that takes a write back; call it before the write. @param {Write} write @returns {Write} */
function inverse({ type, kind, id, fields }) {
  if (type === "del") return { type: "restore", kind, id };
  if (type === "restore") return { type: "del", kind, id };
  const before = get_of_kind(kind, id);
  if (!before) return { type: "del", kind, id };
  return {
    type: "put",
    kind,
    id,
    fields: Object.fromEntries(Object.keys(fields ?? {}).map((name) => [name, before[name] ?? null])),
  };
}
