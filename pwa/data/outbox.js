/**
 * The outbox: ops this phone wrote that the server has not yet acknowledged. Its law is one table.
 *
 * An entry: {n, room, state, by, at, creates, op: {op, kind, id, type, fields, stamp, schema, moved?}, reason?, errors?}
 *   `n` the order of writing, `by` the keeper, `at` the time (corrected), `creates` true for a record's first op.
 * The functions below run inside a transaction of their caller and name the stores they need.
 */
import { latest, rebuild, see } from "./clock.js";
import { taken_as } from "./moved.js";

/** @type {Record<string, Record<string, string>>} */
export const STATES = {
  waiting: { send: "sending" },
  sending: { send: "sending", acknowledge: "shared", refuse: "needs you", unanswered: "waiting" },
  "needs you": { again: "waiting", discard: "discarded" },
  // A discarded op has left the outbox; only its undo brings it back.
  discarded: { undo: "needs you" },
  // A shared op has left the outbox for `kept`; only a server restored from a backup sends it back.
  shared: { restored: "waiting" },
};

/** @param {string} state @param {string} event */
export function next(state, event) {
  const to = STATES[state]?.[event];
  if (!to) throw new RangeError(`An op that is ${state} cannot ${event}`);
  return to;
}

/** At most this many ops, and about this many characters, in one push. */
export const MOST_OPS = 500;
const MOST_CHARACTERS = 500_000;

/**
 * The next ops to send, in the order of writing, marked as sending (stores: outbox, kept, rows).
 * An op on a record that is neither among the server's rows nor created by an op that goes before it is
 * held back: after a restore its creator may not have sent it again yet, or our own creation was refused.
 * @param {any} t @param {string} room @param {number} most
 */
export async function take_batch(t, room, most) {
  const entries = await t.outbox.index("room").getAll(room);
  const creating = entries.filter((/** @type {any} */ entry) => entry.creates && entry.state !== "needs you");
  const ours = new Set(creating.map((/** @type {any} */ entry) => record_of(entry.op)));
  const batch = [];
  let size = 0;
  for (const entry of entries) {
    if (entry.state === "needs you") continue;
    if (!entry.creates && !ours.has(record_of(entry.op)) && !(await known(t, room, entry.op))) continue;
    size += JSON.stringify(entry.op).length;
    if (batch.length >= most || (batch.length && size > MOST_CHARACTERS)) break;
    batch.push({ ...entry, state: next(entry.state, "send") });
  }
  await Promise.all(batch.map(async (entry) => t.outbox.put(entry)));
  return batch;
}

/** @param {any} t @param {string} room @param {any} op */
async function known(t, room, op) {
  if (await t.rows.getKey([room, op.kind, op.id])) return true;
  const kept = await t.kept.index("record").getAll([room, op.kind, op.id]);
  return kept.some((/** @type {any} */ entry) => entry.creates);
}

/**
 * Apply the answers to a push (stores: outbox, kept, device, rows, former).
 * Only answers to ops that are here count, so an answer that comes twice has one effect.
 * @param {any} t @param {string} room @param {any[]} results @param {string} sharedAt
 * @returns {Promise<any[]>} the ops that were settled
 */
export async function acknowledge(t, room, results, sharedAt) {
  const settled = [];
  let moved_back = false;
  for (const result of results) {
    const entry = await t.outbox.index("op").get(result.op);
    if (!entry || entry.room !== room || entry.state === "needs you") continue;
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

/** Ops that got no answer wait again (stores: outbox). @param {any} t @param {any[]} batch */
export async function unanswered(t, batch) {
  for (const { n } of batch) {
    const entry = await t.outbox.get(n);
    if (entry?.state === "sending") await t.outbox.put({ ...entry, state: next("sending", "unanswered") });
  }
}

/** Whatever was being sent waits again: that sending was cut off (stores: outbox). @param {any} t @param {string} room */
export const unsent = async (t, room) => unanswered(t, await t.outbox.index("room").getAll(room));

/** One op that the server will not take as it is (stores: outbox). @param {any} t @param {number} n @param {string} reason @param {any[]} errors */
export async function refuse(t, n, reason, errors) {
  const entry = await t.outbox.get(n);
  if (entry?.state === "sending") await t.outbox.put({ ...entry, state: next("sending", "refuse"), reason, errors });
}

/** Everything not yet shared needs its keeper: the membership has ended (stores: outbox). @param {any} t @param {string} room @param {string} reason */
export async function refuse_all(t, room, reason) {
  for (const entry of await t.outbox.index("room").getAll(room)) {
    if (entry.state === "needs you") continue;
    const sending = next(entry.state, "send");
    await t.outbox.put({ ...entry, state: next(sending, "refuse"), reason, errors: [] });
  }
}

/** Let refused ops wait again (stores: outbox). @param {any} t @param {string} room @param {(entry: any) => boolean} which */
export async function again(t, room, which) {
  for (const entry of await t.outbox.index("room").getAll(room)) {
    if (entry.state !== "needs you" || !which(entry)) continue;
    await t.outbox.put({ ...entry, state: next("needs you", "again"), reason: undefined, errors: undefined });
  }
}

/**
 * Let go of refused ops because their keeper says so (stores: outbox, kept, rows). With the op that was to
 * create a record go the ops that change it: without it they could never be sent.
 * @param {any} t @param {string} room @param {string[]} ops @returns {Promise<any[]>} the entries, for the undo
 */
export async function discard(t, room, ops) {
  const entries = await t.outbox.index("room").getAll(room);
  const chosen = entries.filter((/** @type {any} */ entry) => entry.state === "needs you" && ops.includes(entry.op.op));
  const never = new Set();
  for (const { creates, op } of chosen) if (creates && !(await known(t, room, op))) never.add(record_of(op));
  const gone = entries.filter(
    (/** @type {any} */ entry) =>
      chosen.includes(entry) || (never.has(record_of(entry.op)) && entry.state !== "sending"),
  );
  for (const entry of gone) {
    if (chosen.includes(entry)) next(entry.state, "discard");
    await t.outbox.delete(entry.n);
  }
  return gone;
}

/** Take a discard back: the entries stand again where they stood (stores: outbox, kept). @param {any} t @param {any[]} entries */
export async function undiscard(t, entries) {
  for (const entry of entries) {
    if ((await t.outbox.index("op").getKey(entry.op.op)) || (await t.kept.getKey(entry.op.op))) continue;
    await t.outbox.put(entry);
  }
}

/** The server was restored: what it had acknowledged waits once more, in its old place (stores: outbox, kept). @param {any} t @param {string} room */
export async function requeue_kept(t, room) {
  for (const entry of await t.kept.index("room").getAll(room)) {
    const { seq: _seq, sharedAt: _sharedAt, ...rest } = entry;
    await t.outbox.put({ ...rest, state: next("shared", "restored") });
    await t.kept.delete(entry.op.op);
  }
}

/** A backup older than this brings back nothing from the phones. */
export const KEPT_DAYS = 120;

/** Let go of ops that were acknowledged long ago (stores: kept). @param {any} t @param {string} before ISO time */
export async function trim_kept(t, before) {
  let cursor = await t.kept.index("sharedAt").openCursor(IDBKeyRange.upperBound(before));
  for (; cursor; cursor = await cursor.continue()) await cursor.delete();
}

/** @param {any} op */
const record_of = (op) => `${op.kind}/${op.id}`;
