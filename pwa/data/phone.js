/** What the core takes from the phone it runs on: database, clock, randomness, transport, locks, other tabs. */
import { fetchSend } from "./api.js";
import { openDatabase } from "./database.js";

/**
 * @typedef {{
 *   database: import("./database.js").Database,
 *   now: () => number,
 *   random: (count: number) => Uint8Array,
 *   chance: () => number,
 *   send: (request: import("./api.js").Outgoing) => Promise<import("./api.js").Incoming>,
 *   alone: (name: string, work: () => Promise<any>) => Promise<{held: boolean, result?: any}>,
 *   tell: (message: any) => void,
 *   hear: (listener: (message: any) => void) => () => void,
 *   later: (ms: number, work: () => void) => () => void,
 *   keep?: () => void,
 * }} Phone
 */

/** @type {Promise<Phone> | null} */
let mine = null;

/**
 * This browser's phone, opened once.
 * @param {{onBlocked?: () => void, onOutdated?: () => void}} [how] see database.js
 */
export function thisPhone(how) {
  mine ??= openDatabase(how).then(browserPhone, (failed) => {
    mine = null;
    throw failed;
  });
  return mine;
}

/** @param {import("./database.js").Database} database @returns {Phone} */
function browserPhone(database) {
  let askedToKeep = false;
  const channel = typeof BroadcastChannel === "function" ? new BroadcastChannel("limnary-data") : null;
  return {
    database,
    now: () => Date.now(),
    random: (count) => crypto.getRandomValues(new Uint8Array(count)),
    chance: () => Math.random(),
    send: fetchSend,
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
    // Ask the browser, once there is something to keep, not to clear it when space runs short.
    keep() {
      if (!askedToKeep) void navigator.storage?.persist?.().catch(() => {});
      askedToKeep = true;
    },
  };
}

/**
 * Run under a lock that one tab at a time holds; not at all if another holds it. Where the browser has
 * no locks (plain http), two tabs may sync at once: the protocol bears that, it only costs traffic.
 * @param {string} name @param {() => Promise<any>} work
 */
async function alone(name, work) {
  if (!navigator.locks) return { held: true, result: await work() };
  return navigator.locks.request(name, { ifAvailable: true }, async (lock) =>
    lock ? { held: true, result: await work() } : { held: false },
  );
}
