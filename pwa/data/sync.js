/**
 * When to share: at once after a write, on load, on coming online or into view, and by timer. After failures the waits
 * grow.
 */
/** @import { Phone } from "./phone.js" */
/** @import { Keys, RoomCache } from "./room_cache.js" */
/** @import { Outcome } from "./share_once.js" */
import { MINUTE } from "../figures/durations.js";
import { LOCAL, refresh_me } from "./identity.js";
import { share_once } from "./share_once.js";

const IDLE_MS = 45_000;
const LONG_MS = 10 * MINUTE;
const FIRST_RETRY_MS = 2_000;
const LONGEST_RETRY_MS = 5 * MINUTE;
const ME_EVERY_MS = 15 * MINUTE;
/** Writes that follow each other closely travel together. */
const AFTER_WRITE_MS = 250;

/**
 * The wait before the next try: doubling, with jitter so that phones do not all come back at the same moment.
 * @param {number} failures in a row, at least 1 @param {number} chance from 0 to 1
 * @param {number | null} [at_least_ms] what the server asked for
 */
export function backoff_ms(failures, chance, at_least_ms = null) {
  const full = Math.min(LONGEST_RETRY_MS, FIRST_RETRY_MS * 2 ** Math.min(failures - 1, 20));
  return Math.max(at_least_ms ?? 0, full * (0.5 + 0.5 * chance));
}

/** @type {Set<Sharer>} */
const running = new Set();

/**
 * Keep a room shared until the returned function is called.
 * @param {Phone} phone @param {string} room_id
 * @param {RoomCache | null} cache what this tab shows of the room; null if the room is not on its screen
 */
export function start(phone, room_id, cache) {
  const sharer = new Sharer(phone, room_id, cache);
  const unheard = cache?.on_write(() => sharer.after_write());
  const stop_listening = listen(sharer);
  running.add(sharer);
  void sharer.now();
  return () => {
    sharer.stop();
    unheard?.();
    running.delete(sharer);
    stop_listening();
  };
}

/** Share every started room now; resolves when all have tried. */
export const now = () => Promise.all([...running].map((sharer) => sharer.now())).then(() => {});

/** One room that is kept shared. */
class Sharer {
  #stopped = false;
  #failures = 0;
  #asked_me = -Infinity;
  #wanted = false;
  /** @type {Promise<void> | null} */ #going = null;
  #cancel = () => {};

  /** @param {Phone} phone @param {string} room_id @param {RoomCache | null} cache */
  constructor(phone, room_id, cache) {
    this.phone = phone;
    this.room_id = room_id;
    this.cache = cache;
  }

  now() {
    this.#wanted = true;
    this.#going ??= this.#run().finally(() => (this.#going = null));
    return this.#going;
  }

  after_write() {
    if (this.#failures === 0) this.#at(AFTER_WRITE_MS);
  }

  stop() {
    this.#stopped = true;
    this.#cancel();
  }

  #at(/** @type {number} */ ms) {
    this.#cancel();
    if (!this.#stopped) this.#cancel = this.phone.later(ms, () => void this.now());
  }

  /** Records changed. A room that is not on the screen is only told to the other tabs. @param {Keys} keys */
  async #changed(keys) {
    if (this.cache) await this.cache.refresh(keys);
    else this.phone.tell({ room: this.room_id, keys });
  }

  async #run() {
    while (this.#wanted && !this.#stopped) {
      this.#wanted = false;
      if ((await this.#once()).wait !== "idle") break;
    }
  }

  async #once() {
    this.#cancel();
    /** @type {Outcome} */ let outcome = { problem: null, wait: "idle" };
    if (this.room_id === LOCAL) return outcome;
    try {
      outcome = await this.#share();
    } catch (failed) {
      // Storage failed, or `me` did; nothing is lost by trying again later.
      outcome = { problem: "unreachable", wait: "backoff" };
      console.warn("Sharing stopped for now:", failed);
    }
    this.#failures = outcome.wait === "backoff" ? this.#failures + 1 : 0;
    const waits = {
      idle: IDLE_MS,
      long: LONG_MS,
      backoff: backoff_ms(Math.max(1, this.#failures), this.phone.chance(), outcome.retry_after_ms),
    };
    this.#at(waits[outcome.wait]);
    return outcome;
  }

  /** @returns {Promise<Outcome>} */
  async #share() {
    const { phone, room_id } = this;
    const turn = await phone.alone(`limnary-sync-${room_id}`, () =>
      share_once(phone, room_id, (keys) => void this.#changed(keys)),
    );
    await this.#changed([]);
    if (!turn.held) return { problem: null, wait: "idle" };
    // A clock that was set back counts too.
    if (turn.result.problem !== null || Math.abs(phone.now() - this.#asked_me) <= ME_EVERY_MS) return turn.result;
    const reopened = await refresh_me(phone);
    this.#asked_me = phone.now();
    await this.#changed(reopened ? null : []);
    if (!reopened) return turn.result;
    this.#wanted = true;
    return { problem: null, wait: "idle" };
  }
}

/** Share when the page comes online or into view. @param {Sharer} sharer @returns {() => void} stop */
function listen(sharer) {
  if (typeof window === "undefined") return () => {};
  const online = () => void sharer.now();
  const visible = () => {
    if (document.visibilityState !== "visible") return;
    // Another tab may have died before it could tell that it had changed something.
    void sharer.cache?.reread();
    void sharer.now();
  };
  window.addEventListener("online", online);
  document.addEventListener("visibilitychange", visible);
  return () => {
    window.removeEventListener("online", online);
    document.removeEventListener("visibilitychange", visible);
  };
}
