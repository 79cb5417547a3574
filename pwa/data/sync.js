/** When to share: at once after a write, on load, on coming online or into view, by timer; ever more patiently after failures. */
import { LOCAL, refresh_me } from "./identity.js";
import { round } from "./share_once.js";

const IDLE_MS = 45_000;
const LONG_MS = 10 * 60_000;
const FIRST_RETRY_MS = 2_000;
const LONGEST_RETRY_MS = 5 * 60_000;
const ME_EVERY_MS = 15 * 60_000;
/** Writes that follow each other closely travel together. */
const AFTER_WRITE_MS = 250;

/**
 * Wait before the try after `failures` in a row: doubling, with jitter so that phones do not come back together.
 * @param {number} failures at least 1 @param {number} chance from 0 to 1 @param {number | null} [at_least_ms] what the server asked for
 */
export function backoff_ms(failures, chance, at_least_ms = null) {
  const full = Math.min(LONGEST_RETRY_MS, FIRST_RETRY_MS * 2 ** Math.min(failures - 1, 20));
  return Math.max(at_least_ms ?? 0, full * (0.5 + 0.5 * chance));
}

/** @typedef {{inner: {phone: import("./phone.js").Phone, id: string, refresh: (keys: any[] | null) => any, refresh_state: () => Promise<void>, reread: () => Promise<void>, on_write: (heard: () => void) => () => void}}} Room */

/** @type {Map<Room, () => Promise<void>>} */
const running = new Map();

/**
 * Keep a room shared until the returned function is called.
 * @param {Room} room
 */
export function start(room) {
  const { phone, id } = room.inner;
  let stopped = false;
  let failures = 0;
  let asked_me = -Infinity;
  /** @type {() => void} */ let cancel = () => {};
  /** @type {Promise<void> | null} */ let going = null;
  let wanted = false;

  const at = (/** @type {number} */ ms) => {
    cancel();
    if (!stopped) cancel = phone.later(ms, () => void now());
  };

  function now() {
    wanted = true;
    going ??= run().finally(() => (going = null));
    return going;
  }

  async function run() {
    while (wanted && !stopped) {
      wanted = false;
      const outcome = await once();
      if (outcome.wait !== "idle") break;
    }
  }

  async function once() {
    cancel();
    /** @type {import("./share_once.js").Outcome} */ let outcome = { problem: null, wait: "idle" };
    if (id === LOCAL) return outcome;
    try {
      const turn = await phone.alone(`limnary-sync-${id}`, () => round(phone, id, room.inner.refresh));
      if (turn.held) outcome = turn.result;
      await room.inner.refresh_state();
      if (turn.held && outcome.problem === null && phone.now() - asked_me > ME_EVERY_MS) {
        const reopened = await refresh_me(phone);
        asked_me = phone.now();
        await room.inner.refresh(reopened ? null : []);
        if (reopened) {
          wanted = true;
          outcome = { problem: null, wait: "idle" };
        }
      }
    } catch (failed) {
      // Storage failed, or `me` did; nothing is lost by trying again later.
      outcome = { problem: "unreachable", wait: "backoff" };
      console.warn("Sharing stopped for now:", failed);
    }
    failures = outcome.wait === "backoff" ? failures + 1 : 0;
    const waits = {
      idle: IDLE_MS,
      long: LONG_MS,
      backoff: backoff_ms(Math.max(1, failures), phone.chance(), outcome.retry_after_ms),
    };
    at(waits[outcome.wait]);
    return outcome;
  }

  const unheard = room.inner.on_write(() => {
    if (failures === 0) at(AFTER_WRITE_MS);
  });
  const has_page = typeof window !== "undefined";
  const visible = () => {
    if (document.visibilityState !== "visible") return;
    // Another tab may have died before it could tell what it had changed.
    void room.inner.reread();
    void now();
  };
  const online = () => void now();
  if (has_page) {
    window.addEventListener("online", online);
    document.addEventListener("visibilitychange", visible);
  }
  running.set(room, now);
  void now();
  return () => {
    stopped = true;
    cancel();
    unheard();
    running.delete(room);
    if (has_page) {
      window.removeEventListener("online", online);
      document.removeEventListener("visibilitychange", visible);
    }
  };
}

/** Share every started room now; resolves when they have tried. */
export const now = () => Promise.all([...running.values()].map((go) => go())).then(() => {});
