/**
 * One round of sharing a room: push what waits, pull what is new, until both are done or something stands in the way.
 * Whatever happens, an op is in the outbox until an answer of the current epoch has settled it.
 */
import { Refused, Unreachable, ask } from "./api.js";
import { brought_back, take_back } from "./bring_back.js";
import { MIRROR_STORES, apply_page, end_membership, mend_mirror, new_epoch } from "./mirror.js";
import {
  KEPT_DAYS,
  MOST_OPS,
  acknowledge,
  refuse,
  refuse_all,
  take_batch,
  trim_kept,
  unanswered,
  unsent,
} from "./outbox.js";
import { share_photos } from "./photos.js";
import { iso_of } from "./write.js";

const PAGE = 1000;
const EVERYTHING = ["rooms", "rows", "former", "outbox", "kept", "device"];

/**
 * What stands in the way, by status: `problem` is shown, `wait` says when to try again.
 * @type {Record<number, {problem: string, wait: "backoff" | "long"}>}
 */
const IN_THE_WAY = {
  401: { problem: "signed-out", wait: "long" },
  403: { problem: "not-allowed", wait: "long" },
  404: { problem: "not-allowed", wait: "long" },
  410: { problem: "ended", wait: "long" },
  426: { problem: "upgrade", wait: "long" },
  429: { problem: "too-often", wait: "backoff" },
};

/** @typedef {{problem: string | null, wait: "idle" | "backoff" | "long", retry_after_ms?: number | null}} Outcome */

/**
 * @param {import("./phone.js").Phone} phone
 * @param {string} room
 * @param {(keys: {kind: string, id: string}[] | null) => void} changed told of records that changed, null for all
 * @returns {Promise<Outcome>}
 */
export async function round(phone, room, changed) {
  const key = await begin(phone, room);
  if (!key) return { problem: null, wait: "long" };
  /** @type {Outcome} */ let outcome;
  try {
    // After a pull, ops that were held back for want of their record may be ready: once more then.
    let more = true;
    while (more) {
      await push_all(phone, room, key, changed);
      await pull_all(phone, room, key, changed);
      const back = await bring_all_back(phone, room, key, changed);
      more = back || (await some_ready(phone, room));
    }
    await share_photos(phone, room, key);
    outcome = { problem: null, wait: "idle" };
  } catch (failed) {
    outcome = await in_the_way(phone, room, failed);
    if (outcome.problem === "ended") changed(null);
  }
  await note(phone, room, outcome);
  return outcome;
}

/** The key to use, null if there is nobody to share with. A round cut off earlier is put in order first. @param {any} phone @param {string} room */
function begin(phone, room) {
  return phone.database.write(EVERYTHING, async (/** @type {any} */ t) => {
    const identity = await t.device.get("identity");
    const held = await t.rooms.get(room);
    if (held?.ended) await refuse_all(t, room, "membership-ended");
    if (!held || held.ended || !identity?.key) return null;
    await mend_mirror(t, room);
    await unsent(t, room);
    await trim_kept(t, iso_of(phone.now() - KEPT_DAYS * 86_400_000));
    return identity.key;
  });
}

/** @param {any} phone @param {string} room @param {string} key @param {(keys: any[] | null) => void} changed */
async function push_all(phone, room, key, changed) {
  let most = MOST_OPS;
  for (;;) {
    const { epoch, batch } = await phone.database.write(
      ["rooms", "outbox", "kept", "rows"],
      async (/** @type {any} */ t) => ({
        epoch: (await t.rooms.get(room))?.epoch,
        batch: await take_batch(t, room, most),
      }),
    );
    if (!batch.length) return;
    const keys = batch.map((/** @type {any} */ entry) => ({ kind: entry.op.kind, id: entry.op.id }));
    changed(keys);
    try {
      const ops = batch.map((/** @type {any} */ entry) => entry.op);
      const answer = await timed(
        phone,
        { method: "POST", path: `/api/v1/rooms/${room}/push`, key, body: { epoch, ops } },
        is_push_answer,
      );
      const settled = await phone.database.write(EVERYTHING, async (/** @type {any} */ t) => {
        // An answer of an older epoch speaks of a server that is no more.
        if ((await t.rooms.get(room))?.epoch !== answer.epoch || answer.epoch !== epoch) return [];
        const done = await acknowledge(t, room, answer.results, iso_of(phone.now()));
        await unanswered(t, batch);
        return done;
      });
      if (!settled.length) throw new Unreachable("The server settled none of what was sent");
    } catch (failed) {
      if (failed instanceof Refused && (failed.status === 413 || failed.status === 422 || failed.status === 400)) {
        // One op in it is at fault: look for it in ever smaller batches, so that it holds up no other.
        if (batch.length === 1)
          await phone.database.write(["outbox"], (/** @type {any} */ t) =>
            refuse(t, batch[0].n, reason_of(failed), failed.errors),
          );
        else most = Math.ceil(batch.length / 2);
        await phone.database.write(["outbox"], (/** @type {any} */ t) => unanswered(t, batch));
      } else if (failed instanceof Refused && failed.status === 409) {
        await restored(phone, room, failed, changed);
      } else {
        await phone.database.write(["outbox"], (/** @type {any} */ t) => unanswered(t, batch));
        changed(keys);
        throw failed;
      }
    }
    changed(keys);
  }
}

/** @param {Refused} failed */
const reason_of = (failed) => (failed.status === 413 ? "too-large" : "invalid");

/** @param {any} phone @param {string} room @param {string} key @param {(keys: any[] | null) => void} changed */
async function pull_all(phone, room, key, changed) {
  for (;;) {
    const held = await phone.database.read(["rooms"], (/** @type {any} */ t) => t.rooms.get(room));
    if (!held || held.ended) return;
    const path = `/api/v1/rooms/${room}/pull?epoch=${encodeURIComponent(held.epoch)}&since=${held.since}&limit=${PAGE}`;
    try {
      const page = await timed(phone, { method: "GET", path, key }, is_page);
      const applied = await phone.database.write(["rooms", "rows", "device"], (/** @type {any} */ t) =>
        apply_page(t, room, page),
      );
      if (!applied) throw new Unreachable("The page that came is not the one that was asked for");
      changed(applied.keys);
      if (!page.more) return;
    } catch (failed) {
      if (!(failed instanceof Refused && failed.status === 409)) throw failed;
      await restored(phone, room, failed, changed);
    }
  }
}

/**
 * Give a restored server what it lacks of the rows that were here before.
 * @param {any} phone @param {string} room @param {string} key @param {(keys: null) => void} changed
 * @returns {Promise<boolean>} whether there is more to pull now
 */
async function bring_all_back(phone, room, key, changed) {
  /** @type {Set<string>} */ const tried = new Set();
  let taken = 0;
  for (;;) {
    const { epoch, people, batch } = await phone.database.write(["rooms", "rows", "former"], (/** @type {any} */ t) =>
      take_back(t, room, tried),
    );
    if (!batch.length) return taken > 0;
    for (const { ref } of batch) tried.add(ref);
    try {
      const answer = await timed(
        phone,
        { method: "POST", path: `/api/v1/rooms/${room}/bring-back`, key, body: { epoch, rows: batch, people } },
        is_back,
      );
      taken += await phone.database.write(["rooms", "former"], (/** @type {any} */ t) => brought_back(t, room, answer));
    } catch (failed) {
      if (!(failed instanceof Refused && failed.status === 409)) throw failed;
      await restored(phone, room, failed, changed);
      return true;
    }
  }
}

/** 409: the server was restored; everything starts from its new epoch. @param {any} phone @param {string} room @param {Refused} failed @param {(keys: null) => void} changed */
async function restored(phone, room, failed, changed) {
  const { epoch } = failed.problem;
  const before = (await phone.database.read(["rooms"], (/** @type {any} */ t) => t.rooms.get(room)))?.epoch;
  if (typeof epoch !== "string" || epoch === before) throw new Unreachable("The server names no new epoch");
  await phone.database.write(MIRROR_STORES, (/** @type {any} */ t) => new_epoch(t, room, epoch));
  changed(null);
}

/** Whether an op could be sent now. @param {any} phone @param {string} room */
function some_ready(phone, room) {
  return phone.database.write(["outbox", "kept", "rows"], async (/** @type {any} */ t) => {
    const batch = await take_batch(t, room, 1);
    await unanswered(t, batch);
    return batch.length > 0;
  });
}

/** Ask, check the shape, and learn the offset to the server's clock from the time in the answer. @param {any} phone @param {any} out @param {(body: any) => boolean} fits */
async function timed(phone, out, fits) {
  const before = phone.now();
  const body = await ask(phone, out);
  if (!fits(body)) throw new Unreachable("The answer is not one this app knows");
  const after = phone.now();
  const server = Date.parse(body.server_time);
  // A clock that jumped meanwhile tells nothing.
  if (Number.isFinite(server) && after >= before && after - before < 60_000) {
    const ms = Math.round(server - (before + after) / 2);
    await phone.database.write(["device"], (/** @type {any} */ t) => t.device.put({ name: "offset", ms }));
  }
  return body;
}

/** @param {any} body */
const is_push_answer = (body) =>
  typeof body?.epoch === "string" &&
  Array.isArray(body.results) &&
  body.results.every((/** @type {any} */ one) => typeof one?.op === "string");
/** @param {any} body */
const is_back = (body) =>
  typeof body?.epoch === "string" &&
  Array.isArray(body.results) &&
  body.results.every((/** @type {any} */ one) => typeof one?.ref === "string");
/** @param {any} body */
const is_page = (body) =>
  typeof body?.epoch === "string" &&
  Number.isInteger(body.since) &&
  Number.isInteger(body.next) &&
  Array.isArray(body.rows) &&
  (!body.more || body.next > body.since);

/** @param {any} phone @param {string} room @param {unknown} failed @returns {Promise<Outcome>} */
async function in_the_way(phone, room, failed) {
  if (failed instanceof Unreachable) {
    const problem = failed.status === 507 ? "server-full" : failed.status ? "server-failed" : "unreachable";
    return { problem, wait: "backoff", retry_after_ms: failed.retry_after_ms };
  }
  if (!(failed instanceof Refused)) throw failed;
  if (failed.status === 410)
    await phone.database.write(["rooms", "rows", "former", "outbox"], (/** @type {any} */ t) =>
      end_membership(t, room),
    );
  const { problem, wait } = IN_THE_WAY[failed.status] ?? { problem: "refused", wait: "backoff" };
  return { problem, wait, retry_after_ms: failed.retry_after_ms };
}

/** @param {any} phone @param {string} room @param {Outcome} outcome */
function note(phone, room, { problem }) {
  return phone.database.write(["rooms"], async (/** @type {any} */ t) => {
    const held = await t.rooms.get(room);
    if (held)
      await t.rooms.put({ ...held, problem, lastShared: problem === null ? iso_of(phone.now()) : held.lastShared });
  });
}
