/**
 * One seed: four phones of three keepers, one server, and everything that can come between them.
 * Every choice comes from the seed and is made only when nothing is running, so a seed can be repeated exactly.
 * Every fifth seed is a storm: clocks jump ahead, all edit the same name, answers get lost, the server is often
 * restored.
 */
import { IDBFactory } from "fake-indexeddb";
import { seeded } from "../js/drawn_numbers.js";
import { Invariants } from "./invariants.js";
import { Membership } from "./membership.js";
import { invite, join_now } from "./membership_acts.js";
import { Network } from "./network.js";
import { Tab } from "./tab.js";
import { act, heal } from "./walk.js";

const START = Date.UTC(2026, 4, 4, 7, 30);
const DAY = 86_400_000;

/**
 * One phone of a keeper, with the state that the story gives it.
 * @typedef {{
 *   name: string, database_name: string, chance: () => number, tabs: Set<Tab>, offline: boolean, skew: number,
 *   locks: Map<string, Tab>, has_locks: boolean, now: () => number,
 *   shown: import("../../pwa/types/stores.js").Row[], seen?: Map<string, Record<string, unknown>>, found: number,
 *   saved?: number, joining?: boolean, joined?: boolean, key?: string, device?: string, keeper?: string,
 * }} SimulatedPhone
 * `shown`: rows that it showed when the server was restored. `seen`: the records that it showed when it wrote.
 * `found`: how many of the ops that it then stored. `saved`: how many it said it had saved.
 * `joining`: the server crashed during its join.
 */

export class World {
  /**
   * @param {import("./core.js").Core} core @param {import("./server.js").Server} server @param {number} seed
   * @param {{trace?: boolean}} [how]
   */
  constructor(core, server, seed, { trace = false } = {}) {
    this.core = core;
    this.server = server;
    this.seed = seed;
    this.trace = trace;
    /** @type {SimulatedPhone[]} */ this.phones = [];
    this.room = "";
    this.chance = seeded(seed);
    this.storm = seed % 5 === 0;
    this.now = START;
    this.load = { running: 0 };
    this.network = new Network(core);
    this.membership = new Membership();
    /** @type {Membership | null} */ this.backup = null;
    this.values = 0;
    /** @type {Record<string, number>} */ this.counts = {};
    this.invariants = new Invariants(this);
  }

  /** Run the seed; throws Violation. @param {number} steps */
  async run(steps) {
    globalThis.indexedDB = new IDBFactory();
    await this.begin();
    for (let step = 0; step < steps; step++) {
      this.now += 1 + this.below(this.chance() < 0.05 ? 6 * 3_600_000 : 20_000);
      await act(this);
      await this.settle();
      await this.invariants.after_step(step % 8 === 7);
    }
    await heal(this);
    await this.invariants.at_end();
  }

  /** Close all tabs, so that many seeds fit into one process. */
  close() {
    for (const phone of this.phones) {
      for (const tab of [...phone.tabs]) tab.die();
    }
  }

  /** @param {number} most @returns {number} a whole number from 0, below `most` */
  below(most) {
    return Math.floor(this.chance() * most);
  }

  /** @template One @param {readonly One[]} list */
  pick(list) {
    return list[this.below(list.length)];
  }

  skew() {
    return (
      this.pick([0, 0, 1, -1, 20, -20]) * (1 + this.below(3000)) + this.pick([0, 0, 0, 1, -1]) * this.below(4 * DAY)
    );
  }

  /** @param {string} what @param {unknown[]} words */
  note(what, ...words) {
    if (this.trace) console.error(this.seed, new Date(this.now).toISOString(), what, ...words);
    this.count(what);
  }

  /** @param {string} what */
  count(what) {
    this.counts[what] = (this.counts[what] ?? 0) + 1;
  }

  /** Wait until every transaction has ended and everything that follows from it has run. */
  async settle() {
    for (let calm = 0, turns = 0; calm < 3; calm = this.load.running ? 0 : calm + 1) {
      await new Promise((resolve) => setImmediate(resolve));
      this.hold(turns++ < 100_000, "a transaction never ended");
    }
  }

  async begin() {
    const { room, secret } = await this.server.ask("new", { seed: this.seed, now: this.now });
    this.room = room;
    this.phones = ["ada", "ada-2", "ben", "cleo"].map((name, at) => this.make_phone(name, at));
    const [ada, second, ben, cleo] = this.phones;
    for (const phone of this.phones) await this.open_tab(phone);
    await join_now(this, ada, secret);
    await this.join_by_invite(second, { keeper: ada.keeper });
    await this.join_by_invite(ben, { role: "keeper" });
    await this.join_by_invite(cleo, { role: "helper" });
  }

  /** @param {SimulatedPhone} phone @param {{role: string} | {keeper: string | undefined}} how */
  async join_by_invite(phone, how) {
    const { secret } = await invite(this, how);
    if (!secret) throw new Error(`the server refused to invite ${phone.name}`);
    await join_now(this, phone, secret);
  }

  /** @param {string} name @param {number} at @returns {SimulatedPhone} */
  make_phone(name, at) {
    const chance = seeded(this.seed * 7 + at);
    /** @type {SimulatedPhone} */
    const phone = {
      name,
      chance,
      database_name: name,
      tabs: new Set(),
      locks: new Map(),
      offline: false,
      shown: [],
      found: 0,
      skew: this.skew(),
      has_locks: this.chance() < 0.7,
      now: () => Math.max(0, this.now + phone.skew),
    };
    return phone;
  }

  /**
   * Open a tab on the phone's room, or on `local` before it has joined. The tab may die while it opens.
   * @param {SimulatedPhone} phone @param {number} [die_after]
   */
  async open_tab(phone, die_after = Infinity) {
    this.load.running++;
    const real = await this.core.open_database({ name: phone.database_name });
    this.load.running--;
    const tab = new Tab(phone, this.core, this.network, this.load, real);
    tab.die_at = tab.steps + die_after;
    phone.tabs.add(tab);
    tab
      .enter(phone.joined ? this.room : "local")
      .catch((failed) => this.invariants.broken(`opening failed: ${failed.stack}`));
    await this.settle();
    if (!tab.room) tab.die();
    return tab;
  }

  /** @param {unknown} truth @param {string} words */
  hold(truth, words) {
    if (!truth) this.invariants.broken(words);
  }

  /** @param {SimulatedPhone} phone */
  reopen(phone) {
    phone.joined = true;
    for (const tab of [...phone.tabs]) tab.die();
  }
}
