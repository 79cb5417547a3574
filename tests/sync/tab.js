/**
 * One tab of one phone: the real data core on a database that can die at any await.
 * A death is like a closed or crashed page: the open transaction aborts, and nothing after it ever runs.
 */

const never = () => new Promise(() => {});

export class Tab {
  /**
   * @param {any} phone the phone it belongs to (world.js) @param {any} core the modules under test
   * @param {any} network where requests are parked @param {{running: number}} load counts open transactions
   */
  constructor(phone, core, network, load) {
    Object.assign(this, { owner: phone, core, network, load });
    this.dead = false;
    this.steps = 0;
    this.die_at = Infinity;
    this.timers = new Set();
    this.listeners = new Set();
  }

  async open() {
    this.real = await this.core.open_database({ name: this.owner.database_name });
    this.surroundings = {
      database: {
        read: (names, work) => this.transact(this.real.read, names, work),
        write: (names, work) => this.transact(this.real.write, names, work),
        close: () => this.real.close(),
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
      later: (ms, work) => {
        const timer = { ms, work };
        this.timers.add(timer);
        return () => this.timers.delete(timer);
      },
    };
    return this;
  }

  /** Open the room and keep it shared, as app.js does. */
  async enter(id) {
    const { room, cache } = await this.core.open_room(id, this.surroundings);
    Object.assign(this, { room, cache });
    this.stop = this.core.start(this.surroundings, room.id, cache);
  }

  /** Called before and after every await of the core. */
  step() {
    this.steps++;
    if (this.steps >= this.die_at) this.die();
    return this.dead;
  }

  async transact(real, names, work) {
    if (this.step()) return never();
    this.load.running++;
    let result;
    try {
      result = await real(names, (stores) => work(this.watched(stores)));
    } catch (failed) {
      if (!this.dead) throw failed;
    } finally {
      this.load.running--;
    }
    return this.step() ? never() : result;
  }

  /** Stores at whose every request the tab may die. */
  watched(stores) {
    const watch = (target) =>
      new Proxy(target, {
        get: (_, name) => {
          const value = target[name];
          if (typeof value !== "function") return value;
          return (...given) => {
            if (name === "index") return watch(value.apply(target, given));
            if (this.step()) throw new Error("The page is gone");
            return value.apply(target, given);
          };
        },
      });
    return Object.fromEntries(Object.entries(stores).map(([name, store]) => [name, watch(store)]));
  }

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
