/** What the core takes from the phone it runs on: database, clock, randomness, transport, locks, other tabs. */
/** @import { RecordKey } from "../types/stores.js" */
import { fetch_send } from "./api.js";
import { open_database } from "./database.js";

/** @typedef {{room: string, keys: RecordKey[] | null}} Message tells other tabs which records changed, null for all */

/**
 * @typedef {{
 *   database: import("./database.js").Database,
 *   now: () => number,
 *   random: (count: number) => Uint8Array,
 *   chance: () => number,
 *   send: (request: import("./api.js").Outgoing) => Promise<import("./api.js").Incoming>,
 *   alone: <Result>(name: string, work: () => Promise<Result>) => Promise<Alone<Result>>,
 *   tell: (message: Message) => void,
 *   hear: (listener: (message: Message) => void) => () => void,
 *   later: (ms: number, work: () => void) => () => void,
 *   keep?: () => void,
 *   page_rows?: number,
 * }} Phone `page_rows`: how many rows to pull at once; a test asks for fewer
 */

/** @template Result @typedef {{held: true, result: Result} | {held: false}} Alone `held`: the lock was free */

/** @type {Promise<Phone> | null} */
let mine = null;

/**
 * This browser's phone, opened once.
 * @param {Partial<import("./database.js").How>} [how] see database.js
 */
export function this_phone(how) {
  mine ??= open_database(how).then(browser_phone, (failed) => {
    mine = null;
    throw failed;
  });
  return mine;
}

/** @param {import("./database.js").Database} database @returns {Phone} */
function browser_phone(database) {
  let asked_to_keep = false;
  const channel = typeof BroadcastChannel === "function" ? new BroadcastChannel("limnary-data") : null;
  return {
    database,
    now: () => Date.now(),
    random: (count) => crypto.getRandomValues(new Uint8Array(count)),
    chance: () => Math.random(),
    send: fetch_send,
    alone,
    tell: (message) => channel?.postMessage(message),
    hear(listener) {
      const heard = (/** @type {MessageEvent} */ event) => listener(event.data);
      channel?.addEventListener("message", heard);
      return () => channel?.removeEventListener("message", heard);
    },
    later(ms, work) {
      const timer = setTimeout(work, ms);
      return () => clearTimeout(timer);
    },
    // Once there is something to keep, ask the browser not to clear it when space runs short.
    keep() {
      if (!asked_to_keep) void navigator.storage?.persist?.().catch(() => {});
      asked_to_keep = true;
    },
  };
}

/**
 * Run `work` under a lock that one tab at a time holds; do not run it if another tab holds the lock. Where the
 * browser has no locks (plain http), two tabs may sync at once: the protocol allows that, it only costs traffic.
 * @template Result
 * @param {string} name @param {() => Promise<Result>} work @returns {Promise<Alone<Result>>}
 */
async function alone(name, work) {
  if (!navigator.locks) return { held: true, result: await work() };
  return navigator.locks.request(name, { ifAvailable: true }, async (lock) =>
    lock ? { held: true, result: await work() } : { held: false },
  );
}
