/**
 * One tab of one phone: the real data core on a database that can die at any await.
 * A death is like a closed or crashed page: the open transaction aborts, and nothing after it ever runs.
 */

/** @typedef {import("../../pwa/data/phone.js").Phone} Phone */
/** @typedef {import("../../pwa/data/phone.js").Message} Message */
/** @typedef {import("../../pwa/data/database.js").Database} Database */
/** @typedef {import("../../pwa/data/fish_room.js").FishRoom} FishRoom */
/** @typedef {import("../../pwa/data/room_cache.js").RoomCache} RoomCache */

/** @returns {Promise<never>} */
const never = () => new Promise(() => {});

export class Tab {
  /** @type {FishRoom | undefined} until `enter` has opened it */ room;
  /** @type {RoomCache | undefined} */ cache;
  /** @type {(() => void) | undefined} */ stop;
  /** It may not have heard what a tab that died had changed. */
  stale = false;
  dead = false;
  /** How many awaits of the core have begun or ended here. */
  steps = 0;
  die_at = Infinity;
  /** @type {Set<{ms: number, work: () => void}>} */ timers = new Set();
  /** @type {Set<(message: Message) => void>} */ listeners = new Set();

  /**
   * @param {import("./world.js").SimulatedPhone} phone the phone it belongs to
   * @param {import("./core.js").Core} core the modules under test
   * @param {import("./network.js").Network} network where requests are parked
   * @param {{running: number}} load counts open transactions
   * @param {Database} real the phone's database
   */
  constructor(phone, core, network, load, real) {
    this.owner = phone;
    this.core = core;
    this.network = network;
    this.load = load;
    this.real = real;
    /** @type {Phone} what the core takes from this phone */
    this.surroundings = {
      database: {
        read: (names, work) => this.transact(real.read, names, work),
        write: (names, work) => this.transact(real.write, names, work),
        close: () => real.close(),
      },
      now: () => this.owner.now(),
      random: (count) => Uint8Array.from({ length: count }, () => Math.floor(this.owner.chance() * 256)),
      chance: this.owner.chance,
      send: (request) => this.send(request),
      alone: (name, work) => this.alone(name, work),
      tell: (message) =>
        this.owner.tabs.forEach(
          (other) => other !== this && other.listeners.forEach((hear) => hear(structuredClone(message))),
        ),
      hear: (listener) => {
        this.listeners.add(listener);
        return () => this.listeners.delete(listener);
      },
      // Several pages, so that some come ahead of their turn.
      page_rows: 4,
      later: (ms, work) => {
        const timer = { ms, work };
        this.timers.add(timer);
        return () => this.timers.delete(timer);
      },
    };
  }

  /** Open the room and keep it shared, as app.js does. */
  async enter(/** @type {string} */ id) {
    const { room, cache } = await this.core.open_room(id, this.surroundings);
    this.room = room;
    this.cache = cache;
    this.stop = this.core.start(this.surroundings, room.id, cache);
  }

  /** Called before and after every await of the core. */
  step() {
    this.steps++;
    if (this.steps >= this.die_at) this.die();
    return this.dead;
  }

  /**
   * @template {import("../../pwa/types/stores.js").StoreName} Name @template Result
   * @param {Database["read"]} real @param {readonly Name[]} names
   * @param {(t: import("../../pwa/types/stores.js").In<Name>) => Result | Promise<Result>} work
   * @returns {Promise<Result>}
   */
  async transact(real, names, work) {
    if (this.step()) return never();
    this.load.running++;
    /** @type {any} the result, once the transaction has ended well */ let result;
    try {
      result = await real(names, (stores) => work(this.watched(stores)));
    } catch (failed) {
      if (!this.dead) throw failed;
    } finally {
      this.load.running--;
    }
    return this.step() ? never() : result;
  }

  /**
   * Stores at each of whose requests the tab may die.
   * @template {object} Names @param {Names} stores @returns {Names}
   */
  watched(stores) {
    const watch = (/** @type {any} any store or index: each method is watched alike */ target) =>
      new Proxy(target, {
        get: (_, name) => {
          const value = target[name];
          if (typeof value !== "function") return value;
          return (/** @type {unknown[]} */ ...given) => {
            if (name === "index") return watch(value.apply(target, given));
            if (this.step()) throw new Error("The page is gone");
            return value.apply(target, given);
          };
        },
      });
    const watched = Object.entries(stores).map(([name, store]) => [name, watch(store)]);
    return /** @type {Names} */ (Object.fromEntries(watched));
  }

  /** @param {import("./network.js").Outgoing} request */
  async send(request) {
    if (this.step()) return never();
    const parked = this.network.park(this, structuredClone(request));
    try {
      const answer = await parked;
      return this.step() ? never() : answer;
    } catch (failed) {
      if (this.step()) return never();
      throw failed;
    }
  }

  /**
   * @template Result
   * @param {string} name @param {() => Promise<Result>} work
   * @returns {Promise<import("../../pwa/data/phone.js").Alone<Result>>}
   */
  async alone(name, work) {
    const { locks } = this.owner;
    if (!this.owner.has_locks) return { held: true, result: await work() };
    if (locks.get(name)?.dead === false) return { held: false };
    locks.set(name, this);
    try {
      return { held: true, result: await work() };
    } finally {
      locks.delete(name);
    }
  }

  /** Let the timer that is due first fire. */
  fire() {
    const [first] = [...this.timers].sort((a, b) => a.ms - b.ms);
    if (!first) return false;
    this.timers.delete(first);
    first.work();
    return true;
  }

  die() {
    if (this.dead) return;
    this.dead = true;
    this.stop?.();
    this.timers.clear();
    this.listeners.clear();
    this.owner.tabs.delete(this);
    // It may not have told what it changed last; its sister tabs read again when they come into view.
    for (const sister of this.owner.tabs) sister.stale = true;
  }
}
