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

export class World {
  constructor(core, server, seed, { trace = false } = {}) {
    Object.assign(this, { core, server, seed, trace });
    this.chance = seeded(seed);
    this.storm = seed % 5 === 0;
    this.now = START;
    this.load = { running: 0 };
    this.network = new Network(core);
    this.membership = new Membership();
    this.backup = null;
    this.values = 0;
    this.counts = {};
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
    for (const phone of this.phones ?? []) {
      for (const tab of [...phone.tabs]) tab.die();
    }
  }

  below(most) {
    return Math.floor(this.chance() * most);
  }

  pick(list) {
    return list[this.below(list.length)];
  }

  skew() {
    return (
      this.pick([0, 0, 1, -1, 20, -20]) * (1 + this.below(3000)) + this.pick([0, 0, 0, 1, -1]) * this.below(4 * DAY)
    );
  }

  note(...words) {
    if (this.trace) console.error(this.seed, new Date(this.now).toISOString(), ...words);
    this.count(words[0]);
  }

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
    await join_now(this, second, (await invite(this, { keeper: ada.keeper })).secret);
    await join_now(this, ben, (await invite(this, { role: "keeper" })).secret);
    await join_now(this, cleo, (await invite(this, { role: "helper" })).secret);
  }

  make_phone(name, at) {
    const chance = seeded(this.seed * 7 + at);
    const phone = {
      name,
      chance,
      database_name: name,
      tabs: new Set(),
      locks: new Map(),
      offline: false,
      shown: [],
      skew: this.skew(),
    };
    phone.has_locks = this.chance() < 0.7;
    phone.now = () => Math.max(0, this.now + phone.skew);
    return phone;
  }

  /** Open a tab on the phone's room, or on `local` before it has joined. The tab may die while it opens. */
  async open_tab(phone, die_after = Infinity) {
    const tab = new Tab(phone, this.core, this.network, this.load);
    this.load.running++;
    await tab.open();
    this.load.running--;
    tab.die_at = tab.steps + die_after;
    phone.tabs.add(tab);
    tab
      .enter(phone.joined ? this.room : "local")
      .catch((failed) => this.invariants.broken(`opening failed: ${failed.stack}`));
    await this.settle();
    if (!tab.room) tab.die();
    return tab;
  }

  hold(truth, words) {
    this.invariants.hold(truth, words);
  }

  reopen(phone) {
    phone.joined = true;
    for (const tab of [...phone.tabs]) tab.die();
  }
}
