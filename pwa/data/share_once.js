/**
 * Share a room once: push what waits, pull what is new, until both are done or something stands in the way.
 * Law: an op stays in the outbox until an answer of the current epoch has settled it.
 */
/** @import { FieldError } from "../contracts.js" */
/** @import { Entry, RecordKey } from "../types/stores.js" */
/** @import { Outgoing } from "./api.js" */
/** @import { BackAnswer } from "./bring_back.js" */
/** @import { Page } from "./mirror.js" */
/** @import { Result } from "./outbox.js" */
/** @import { Phone } from "./phone.js" */
import { DAY, MINUTE } from "../figures/durations.js";
import { Refused, Unreachable, ask } from "./api.js";
import { brought_back, take_back } from "./bring_back.js";
import { MIRROR_STORES, apply_ahead, apply_page, end_membership, mend_mirror, new_epoch } from "./mirror.js";
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
/** Of a room that is taken in for the first time, the Round needs this much first, in days. */
const AHEAD_DAYS = 30;
/** "Sending" is shown only where it takes this long: most batches change what is shown once, when they are answered. */
const SHOW_SENDING_MS = 1000;
/** How often what has been pulled so far is told while more comes. */
const TELL_MS = 2000;
const EVERYTHING = /** @type {const} */ (["rooms", "rows", "former", "outbox", "kept", "device"]);

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
/** @typedef {(keys: RecordKey[] | null) => void} Changed is told which records changed, null for all */
/** @typedef {{phone: Phone, room_id: string, key: string, changed: Changed}} Sharing one call of `share_once` */

/**
 * @param {Phone} phone @param {string} room_id @param {Changed} changed
 * @returns {Promise<Outcome>}
 */
export async function share_once(phone, room_id, changed) {
  const key = await begin(phone, room_id);
  if (!key) return { problem: null, wait: "long" };
  const sharing = { phone, room_id, key, changed };
  /** @type {Outcome} */ let outcome;
  try {
    // After a pull, ops that were held back for want of their record may be ready: then push again.
    let more = true;
    while (more) {
      await push_all(sharing);
      await pull_all(sharing);
      const back = await bring_all_back(sharing);
      more = back || (await some_ready(sharing));
    }
    await share_photos(phone, room_id, key, () => changed([]));
    outcome = { problem: null, wait: "idle" };
  } catch (failed) {
    outcome = await in_the_way(phone, room_id, failed);
    if (outcome.problem === "ended") changed(null);
  }
  await note(phone, room_id, outcome);
  return outcome;
}

/**
 * The key to use, null if there is nobody to share with. Sharing that was cut off earlier is put in order first.
 * @param {Phone} phone @param {string} room_id
 */
function begin(phone, room_id) {
  return phone.database.write(EVERYTHING, async (t) => {
    const identity = await t.device.get("identity");
    const held = await t.rooms.get(room_id);
    if (held?.ended) await refuse_all(t, room_id, "membership-ended");
    if (!held || held.ended || !identity?.key) return null;
    await mend_mirror(t, room_id);
    await unsent(t, room_id);
    await trim_kept(t, iso_of(phone.now() - KEPT_DAYS * DAY));
    return identity.key;
  });
}

/** @param {Sharing} sharing */
async function push_all(sharing) {
  const { phone, room_id, changed } = sharing;
  let most = MOST_OPS;
  for (;;) {
    const { epoch, batch } = await phone.database.write(["rooms", "outbox", "kept", "rows"], async (t) => ({
      epoch: (await t.rooms.get(room_id))?.epoch,
      batch: await take_batch(t, room_id, most),
    }));
    if (!batch.length) return;
    const keys = batch.map(({ op }) => ({ kind: op.kind, id: op.id }));
    const answered = phone.later(SHOW_SENDING_MS, () => changed(keys));
    try {
      await push(sharing, epoch, batch);
      changed(keys);
    } catch (failed) {
      if (failed instanceof Refused && failed.status === 409) await restored(sharing, failed);
      else {
        const at_fault = failed instanceof Refused && [400, 413, 422].includes(failed.status) ? failed : null;
        if (at_fault) most = await narrow_down(phone, batch, at_fault, most);
        await phone.database.write(["outbox"], (t) => unanswered(t, batch));
        changed(keys);
        if (!at_fault) throw failed;
      }
    } finally {
      answered();
    }
  }
}

/**
 * Push one batch, and settle what the answer settles.
 * @param {Sharing} sharing @param {string | undefined} epoch @param {Entry[]} batch
 */
async function push({ phone, room_id, key }, epoch, batch) {
  const request = {
    method: "POST",
    path: `/api/v1/rooms/${room_id}/push`,
    key,
    body: { epoch, ops: batch.map(({ op }) => op) },
  };
  const answer = await timed(phone, request, is_push_answer);
  const settled = await phone.database.write(EVERYTHING, async (t) => {
    // An answer of an older epoch comes from a server that has been restored since.
    if ((await t.rooms.get(room_id))?.epoch !== answer.epoch || answer.epoch !== epoch) return [];
    const done = await acknowledge(t, room_id, answer.results, iso_of(phone.now()));
    await unanswered(t, batch);
    return done;
  });
  if (!settled.length) throw new Unreachable("The server settled none of what was sent");
}

/**
 * The server refused a whole batch: one op in it is at fault. Look for it in ever smaller batches, so that it holds up
 * no other.
 * @param {Phone} phone @param {Entry[]} batch @param {Refused} failed @param {number} most
 * @returns {Promise<number>} at most how many ops to send next
 */
async function narrow_down(phone, batch, failed, most) {
  if (batch.length > 1) return Math.ceil(batch.length / 2);
  const reason = failed.status === 413 ? "too-large" : "invalid";
  await phone.database.write(["outbox"], (t) => refuse(t, batch[0].n, reason, failed.errors));
  return most;
}

/** @param {Sharing} sharing */
async function pull_all(sharing) {
  const pulled = { untold: false };
  try {
    await pull_pages(sharing, pulled);
  } finally {
    if (pulled.untold) sharing.changed([]);
  }
}

/**
 * Pull page after page. That rows came is told at most every `TELL_MS`: a room taken in for the first time has many
 * pages.
 * @param {Sharing} sharing @param {{untold: boolean}} pulled whether rows came that have not been told yet
 */
async function pull_pages(sharing, pulled) {
  const { phone, room_id, changed } = sharing;
  let told_ms = phone.now();
  /** @type {Asked | null} */ let next = null;
  for (;;) {
    const held = await phone.database.read(["rooms"], (t) => t.rooms.get(room_id));
    if (!held || held.ended) return;
    try {
      const on_its_way = /** @type {Asked | null} */ (next);
      const fits = on_its_way?.epoch === held.epoch && on_its_way.since === held.since;
      /** @type {Page} */ const page = await (fits ? on_its_way : ask_page(sharing, held)).answer;
      // Of a room that is taken in, the next page travels while this one is stored. The first is stored by itself.
      next = page.more && held.since > 0 ? ask_page(sharing, { epoch: page.epoch, since: page.next }) : null;
      const applied = await phone.database.write(["rooms", "rows", "device"], (t) => apply_page(t, room_id, page));
      if (!applied) throw new Unreachable("The page that came is not the one that was asked for");
      pulled.untold ||= page.rows.length > 0;
      if (!page.more) return;
      if (held.since === 0 && held.settled === 0) await pull_ahead(sharing, page);
      // A clock that was set back counts too.
      if (Math.abs(phone.now() - told_ms) < TELL_MS) continue;
      if (pulled.untold) changed([]);
      pulled.untold = false;
      told_ms = phone.now();
    } catch (failed) {
      if (!(failed instanceof Refused && failed.status === 409)) throw failed;
      await restored(sharing, failed);
    }
  }
}

/** @typedef {{epoch: string, since: number, answer: Promise<Page>}} Asked a page that is on its way */

/** Ask for the page from a place on. @param {Sharing} sharing @param {Omit<Asked, "answer">} from @returns {Asked} */
function ask_page({ phone, room_id, key }, { epoch, since }) {
  const query = `epoch=${encodeURIComponent(epoch)}&since=${since}&limit=${phone.page_rows ?? PAGE}`;
  const answer = timed(phone, { method: "GET", path: `/api/v1/rooms/${room_id}/pull?${query}`, key }, is_page);
  // Whoever waits for it is told; where nobody does any more, nothing is lost.
  answer.catch(() => {});
  return { epoch, since, answer };
}

/**
 * Of a room with more than a page, pull what the Round needs before the years, and tell of it at once. The pages that
 * follow hold it again, so nothing is lost where this fails.
 * @param {Sharing} sharing @param {Page} first the first page
 */
async function pull_ahead({ phone, room_id, key, changed }, { epoch, next }) {
  const query = `epoch=${encodeURIComponent(epoch)}&since=${next}&ahead_days=${AHEAD_DAYS}`;
  const path = `/api/v1/rooms/${room_id}/pull?${query}`;
  const page = await timed(phone, { method: "GET", path, key }, is_page);
  await phone.database.write(["rooms", "rows", "device"], (t) => apply_ahead(t, room_id, page));
  changed([]);
}

/**
 * Give a restored server what it lacks of the rows that were here before.
 * @param {Sharing} sharing @returns {Promise<boolean>} whether there is more to pull now
 */
async function bring_all_back(sharing) {
  const { phone, room_id, key } = sharing;
  /** @type {Set<string>} */ const tried = new Set();
  let taken = 0;
  for (;;) {
    const { epoch, people, batch } = await phone.database.write(["rooms", "rows", "former"], (t) =>
      take_back(t, room_id, tried),
    );
    if (!batch.length) return taken > 0;
    for (const { ref } of batch) tried.add(ref);
    try {
      const body = { epoch, rows: batch, people };
      const path = `/api/v1/rooms/${room_id}/bring-back`;
      const answer = await timed(phone, { method: "POST", path, key, body }, is_back);
      taken += await phone.database.write(["rooms", "former"], (t) => brought_back(t, room_id, answer));
      sharing.changed([]);
    } catch (failed) {
      if (!(failed instanceof Refused && failed.status === 409)) throw failed;
      await restored(sharing, failed);
      return true;
    }
  }
}

/**
 * 409: the server was restored; everything starts from its new epoch.
 * @param {Sharing} sharing @param {Refused} failed
 */
async function restored({ phone, room_id, changed }, failed) {
  const { epoch } = failed.problem;
  const before = (await phone.database.read(["rooms"], (t) => t.rooms.get(room_id)))?.epoch;
  if (typeof epoch !== "string" || epoch === before) throw new Unreachable("The server names no new epoch");
  await phone.database.write(MIRROR_STORES, (t) => new_epoch(t, room_id, epoch));
  changed(null);
}

/** Whether an op could be sent now. @param {Sharing} sharing */
function some_ready({ phone, room_id }) {
  return phone.database.write(["outbox", "kept", "rows"], async (t) => {
    const batch = await take_batch(t, room_id, 1);
    await unanswered(t, batch);
    return batch.length > 0;
  });
}

/**
 * Ask, check the shape, and learn the offset to the server's clock from the time in the answer.
 * @template Body
 * @param {Phone} phone @param {Outgoing} request
 * @param {(body: any) => body is Body} fits takes what is not checked yet
 */
async function timed(phone, request, fits) {
  const before = phone.now();
  const body = await ask(phone, request);
  const server = Date.parse(body?.server_time);
  if (!fits(body)) throw new Unreachable("The answer is not one this app knows");
  const after = phone.now();
  // A clock that jumped meanwhile tells nothing.
  if (Number.isFinite(server) && after >= before && after - before < MINUTE) {
    const ms = Math.round(server - (before + after) / 2);
    await phone.database.write(["device"], (t) => t.device.put({ name: "offset", ms }));
  }
  return body;
}

// `any`: each of these checks the shape of what came over the wire.
/** @param {any} body @returns {body is {epoch: string, results: Result[]}} */
const is_push_answer = (body) => is_results(body, "op");
/** @param {any} body @returns {body is BackAnswer} */
const is_back = (body) => is_results(body, "ref");
/** @param {any} body @returns {body is Page} */
const is_page = (body) =>
  typeof body?.epoch === "string" &&
  Number.isInteger(body.since) &&
  Number.isInteger(body.next) &&
  Array.isArray(body.rows) &&
  (!body.more || body.next > body.since);

/** @param {any} body @param {"op" | "ref"} name what each result is named by */
const is_results = (body, name) =>
  typeof body?.epoch === "string" &&
  Array.isArray(body.results) &&
  body.results.every((/** @type {any} */ result) => typeof result?.[name] === "string");

/** @param {Phone} phone @param {string} room_id @param {unknown} failed @returns {Promise<Outcome>} */
async function in_the_way(phone, room_id, failed) {
  if (failed instanceof Unreachable) {
    const problem = failed.status === 507 ? "server-full" : failed.status ? "server-failed" : "unreachable";
    return { problem, wait: "backoff", retry_after_ms: failed.retry_after_ms };
  }
  if (!(failed instanceof Refused)) throw failed;
  if (failed.status === 410)
    await phone.database.write(["rooms", "rows", "former", "outbox"], (t) => end_membership(t, room_id));
  const { problem, wait } = IN_THE_WAY[failed.status] ?? { problem: "refused", wait: "backoff" };
  return { problem, wait, retry_after_ms: failed.retry_after_ms };
}

/** Store how it went. @param {Phone} phone @param {string} room_id @param {Outcome} outcome */
function note(phone, room_id, { problem }) {
  return phone.database.write(["rooms"], async (t) => {
    const held = await t.rooms.get(room_id);
    const lastShared = problem === null ? iso_of(phone.now()) : held?.lastShared;
    if (held) await t.rooms.put({ ...held, problem, lastShared: lastShared ?? null });
  });
}
