/**
 * The outbox: ops of this phone that the server has not acknowledged yet. Its law is one table.
 * The functions below run inside a transaction of their caller; the type of `t` names the stores they use.
 */
/** @import { Entry, In, KeptEntry, Op, RecordKey } from "../types/stores.js" */
/** @import { FieldError } from "../contracts.js" */
import { latest, rebuild, see } from "./clock.js";
import { taken_as } from "./moved.js";

export const STATES = /** @type {const} */ ({
  waiting: { send: "sending" },
  sending: { send: "sending", acknowledge: "shared", refuse: "needs you", unanswered: "waiting" },
  "needs you": { again: "waiting", discard: "discarded" },
  // A discarded op has left the outbox; only its undo brings it back.
  discarded: { undo: "needs you" },
  // A shared op has left the outbox for `kept`; only a server restored from a backup sends it back.
  shared: { restored: "waiting" },
});

/**
 * @template {keyof typeof STATES} State @template {string & keyof (typeof STATES)[State]} Event
 * @param {State} state @param {Event} event @returns {(typeof STATES)[State][Event]}
 */
export function next(state, event) {
  const to = STATES[state]?.[event];
  if (!to) throw new RangeError(`An op that is ${state} cannot ${event}`);
  return to;
}

/** At most this many ops, and about this many characters, in one push. */
export const MOST_OPS = 500;
const MOST_CHARACTERS = 500_000;

/**
 * The next ops to send, in the order of writing, marked as sending.
 * An op on a record that is neither among the server's rows nor created by an op that goes before it is
 * held back: after a restore its creator may not have sent it again yet, or our own creation was refused.
 * @param {In<"outbox" | "kept" | "rows">} t @param {string} room_id @param {number} most
 */
export async function take_batch(t, room_id, most) {
  const entries = await t.outbox.index("room").getAll(room_id);
  const creating = entries.filter((entry) => entry.creates && entry.state !== "needs you");
  const ours = new Set(creating.map((entry) => record_of(entry.op)));
  /** @type {Entry[]} */ const batch = [];
  let size = 0;
  for (const entry of entries) {
    if (entry.state === "needs you") continue;
    if (!entry.creates && !ours.has(record_of(entry.op)) && !(await known(t, room_id, entry.op))) continue;
    size += JSON.stringify(entry.op).length;
    if (batch.length >= most || (batch.length && size > MOST_CHARACTERS)) break;
    batch.push({ ...entry, state: next(entry.state, "send") });
  }
  await Promise.all(batch.map(async (entry) => t.outbox.put(entry)));
  return batch;
}

/**
 * Whether the server knows the record of an op.
 * @param {In<"kept" | "rows">} t @param {string} room_id @param {Op} op
 */
async function known(t, room_id, op) {
  if (await t.rows.getKey([room_id, op.kind, op.id])) return true;
  const kept = await t.kept.index("record").getAll([room_id, op.kind, op.id]);
  return kept.some((entry) => entry.creates);
}

/**
 * @typedef {{op: string, status: string, stamp?: string, seq?: number, reason?: string, errors?: FieldError[]}} Result
 */

/**
 * Apply the answers to a push.
 * Only answers to ops that are here count, so an answer that comes twice has one effect.
 * @param {In<"outbox" | "kept" | "device" | "rows" | "former">} t @param {string} room_id
 * @param {Result[]} results @param {string} sharedAt ISO time; stored under this name
 * @returns {Promise<Op[]>} the ops that were settled
 */
export async function acknowledge(t, room_id, results, sharedAt) {
  const settled = [];
  let moved_back = false;
  for (const result of results) {
    const entry = await t.outbox.index("op").get(result.op);
    if (!entry || entry.room !== room_id || entry.state === "needs you") continue;
    if (result.status === "ok") {
      next("sending", "acknowledge");
      const stamp = result.stamp ?? entry.op.stamp;
      moved_back ||= stamp < entry.op.stamp;
      await t.outbox.delete(entry.n);
      await t.kept.put({ ...entry, state: undefined, op: taken_as(entry.op, stamp), seq: result.seq ?? 0, sharedAt });
    } else if (result.status === "forbidden" || result.status === "invalid") {
      await t.outbox.put({
        ...entry,
        state: next("sending", "refuse"),
        reason: result.reason ?? result.status,
        errors: result.errors ?? [],
      });
    } else continue;
    settled.push(entry.op);
  }
  if (moved_back) await rebuild(t, { forget: true });
  else await see(t, [latest(results.map((result) => result.stamp))]);
  return settled;
}

/** Let ops that got no answer wait again. @param {In<"outbox">} t @param {Entry[]} batch */
export async function unanswered(t, batch) {
  for (const { n } of batch) {
    const entry = await t.outbox.get(n);
    if (entry?.state === "sending") await t.outbox.put({ ...entry, state: next("sending", "unanswered") });
  }
}

/**
 * Let everything that was being sent wait again: that sending was cut off.
 * @param {In<"outbox">} t @param {string} room_id
 */
export const unsent = async (t, room_id) => unanswered(t, await t.outbox.index("room").getAll(room_id));

/**
 * Mark one op that the server will not take as it is.
 * @param {In<"outbox">} t @param {number} n @param {string} reason @param {FieldError[]} errors
 */
export async function refuse(t, n, reason, errors) {
  const entry = await t.outbox.get(n);
  if (entry?.state === "sending") await t.outbox.put({ ...entry, state: next("sending", "refuse"), reason, errors });
}

/**
 * Mark everything that is not shared yet as needing its keeper: the membership has ended.
 * @param {In<"outbox">} t @param {string} room_id @param {string} reason
 */
export async function refuse_all(t, room_id, reason) {
  for (const entry of await t.outbox.index("room").getAll(room_id)) {
    if (entry.state === "needs you") continue;
    const sending = next(entry.state, "send");
    await t.outbox.put({ ...entry, state: next(sending, "refuse"), reason, errors: [] });
  }
}

/**
 * Let refused ops wait again.
 * @param {In<"outbox">} t @param {string} room_id @param {(entry: Entry) => boolean} which
 */
export async function again(t, room_id, which) {
  for (const entry of await t.outbox.index("room").getAll(room_id)) {
    if (entry.state !== "needs you" || !which(entry)) continue;
    await t.outbox.put({ ...entry, state: next("needs you", "again"), reason: undefined, errors: undefined });
  }
}

/**
 * Delete refused ops, at their keeper's wish. With the op that was to create a record go the ops that change
 * the record: without it they could never be sent.
 * @param {In<"outbox" | "kept" | "rows">} t @param {string} room_id @param {string[]} ops
 * @returns {Promise<Entry[]>} the deleted entries, for the undo
 */
export async function discard(t, room_id, ops) {
  const entries = await t.outbox.index("room").getAll(room_id);
  const chosen = entries.filter((entry) => entry.state === "needs you" && ops.includes(entry.op.op));
  const never = new Set();
  for (const { creates, op } of chosen) if (creates && !(await known(t, room_id, op))) never.add(record_of(op));
  const gone = entries.filter(
    (entry) => chosen.includes(entry) || (never.has(record_of(entry.op)) && entry.state !== "sending"),
  );
  for (const entry of gone) {
    if (entry.state === "needs you" && chosen.includes(entry)) next(entry.state, "discard");
    await t.outbox.delete(entry.n);
  }
  return gone;
}

/**
 * Undo a discard: the entries are in the outbox again, as they were.
 * @param {In<"outbox" | "kept">} t @param {Entry[]} entries
 */
export async function undiscard(t, entries) {
  for (const entry of entries) {
    if ((await t.outbox.index("op").getKey(entry.op.op)) || (await t.kept.getKey(entry.op.op))) continue;
    await t.outbox.put(entry);
  }
}

/**
 * The server was restored: the ops it had acknowledged wait again, each in its old place.
 * @param {In<"outbox" | "kept">} t @param {string} room_id
 */
export async function requeue_kept(t, room_id) {
  for (const entry of await t.kept.index("room").getAll(room_id)) {
    const { seq: _seq, sharedAt: _sharedAt, ...rest } = entry;
    await t.outbox.put({ ...rest, state: next("shared", "restored") });
    await t.kept.delete(entry.op.op);
  }
}

/** Acknowledged ops are kept this long; a server restored from an older backup gets nothing back from them. */
export const KEPT_DAYS = 120;

/** Delete ops that were acknowledged long ago. @param {In<"kept">} t @param {string} before ISO time */
export async function trim_kept(t, before) {
  let cursor = await t.kept.index("sharedAt").openCursor(IDBKeyRange.upperBound(before));
  for (; cursor; cursor = await cursor.continue()) await cursor.delete();
}

/** @param {RecordKey} op */
const record_of = (op) => `${op.kind}/${op.id}`;
