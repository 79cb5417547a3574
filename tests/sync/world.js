/**
 * One seed: four phones of three keepers, one server, and everything that can come between them.
 * Every choice comes from the seed, and a choice is made only when nothing is running, so a seed runs again alike.
 * Every fifth seed is a storm: clocks leap ahead, all edit the same name, answers get lost, the server is often restored.
 */
import { IDBFactory } from "fake-indexeddb";
import { seeded } from "./core.js";
import { Invariants } from "./invariants.js";
import { Membership } from "./membership.js";
import { Network } from "./network.js";
import { Tab } from "./tab.js";

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
      await this.act();
      await this.settle();
      await this.invariants.afterStep(step % 8 === 7);
    }
    await this.heal();
    await this.invariants.atEnd();
  }

  /** Let go of everything, so that many seeds fit one process. */
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
    return this.pick([0, 0, 1, -1, 20, -20]) * (1 + this.below(3000)) + this.pick([0, 0, 0, 1, -1]) * this.below(4 * DAY);
  }

  note(...words) {
    if (this.trace) console.error(this.seed, new Date(this.now).toISOString(), ...words);
    this.count(words[0]);
  }

  count(what) {
    this.counts[what] = (this.counts[what] ?? 0) + 1;
  }

  /** Wait until every transaction has ended and what follows from it has run. */
  async settle() {
    for (let calm = 0, turns = 0; calm < 3; calm = this.load.running ? 0 : calm + 1) {
      await new Promise((resolve) => setImmediate(resolve));
      this.hold(turns++ < 100_000, "a transaction never ended");
    }
  }

  async begin() {
    const { room, secret } = await this.server.ask("new", { seed: this.seed, now: this.now });
    this.room = room;
    this.phones = ["ada", "ada-2", "ben", "cleo"].map((name, at) => this.makePhone(name, at));
    const [ada, second, ben, cleo] = this.phones;
    for (const phone of this.phones) await this.openTab(phone);
    await this.joinNow(ada, secret);
    await this.joinNow(second, (await this.invite({ keeper: ada.keeper })).secret);
    await this.joinNow(ben, (await this.invite({ role: "keeper" })).secret);
    await this.joinNow(cleo, (await this.invite({ role: "helper" })).secret);
  }

  makePhone(name, at) {
    const chance = seeded(this.seed * 7 + at);
    const phone = { name, chance, databaseName: name, tabs: new Set(), locks: new Map(), offline: false, shown: [], skew: this.skew() };
    phone.hasLocks = this.chance() < 0.7;
    phone.now = () => Math.max(0, this.now + phone.skew);
    return phone;
  }

  /** Open a tab on the phone's room, or on `local` before it has joined. It may die on the way. */
  async openTab(phone, dieAfter = Infinity) {
    const tab = new Tab(phone, this.core, this.network, this.load);
    this.load.running++;
    await tab.open();
    this.load.running--;
    tab.dieAt = tab.steps + dieAfter;
    phone.tabs.add(tab);
    tab.enter(phone.joined ? this.room : "local").catch((failed) => this.invariants.broken(`opening failed: ${failed.stack}`));
    await this.settle();
    if (!tab.room) tab.die();
    return tab;
  }

  // Membership: acts of the owner, done straight on the server.

  ask(request) {
    return this.server.ask("request", { request, now: this.now });
  }

  owner() {
    return [...this.membership.devices].find(([key, device]) => device.keeper === this.phones[0].keeper && this.membership.mayShare(key))?.[0];
  }

  async invite(how) {
    const key = this.owner() ?? this.phones[0].key;
    return (await this.ask({ method: "POST", path: `/api/v1/rooms/${this.room}/invites`, key, body: how })).body;
  }

  /** Join; an answer may be lost and the page may die, then the same secret is tried again. */
  async joinNow(phone, secret, fates = ["well"]) {
    for (let tries = 0; ; tries++) {
      const tab = [...phone.tabs][0] ?? (await this.openTab(phone));
      let ended = "not";
      this.core.join({ secret, keeperName: phone.name, deviceName: phone.name }, tab.surroundings).then(
        () => (ended = "joined"),
        (failed) => (ended = failed),
      );
      await this.settle();
      while (this.network.parked.length) await this.deliver(0, tries < 3 ? this.pick(fates) : "well");
      if (ended === "joined") break;
      this.hold(tab.dead || ended instanceof this.core.Unreachable, `joining failed: ${ended?.stack ?? ended}`);
    }
    this.reopen(phone);
    await this.openTab(phone);
  }

  hold(truth, words) {
    this.invariants.hold(truth, words);
  }

  reopen(phone) {
    phone.joined = true;
    for (const tab of [...phone.tabs]) tab.die();
  }

  async rejoin(phone) {
    const keeper = this.membership.roles.get(phone.keeper) ? { keeper: phone.keeper } : { role: phone.name.startsWith("cleo") ? "helper" : "keeper" };
    const { secret } = await this.invite(keeper);
    if (!secret) return;
    this.note("rejoin", phone.name);
    if (!phone.tabs.size) await this.openTab(phone);
    // A phone that was told that its membership is over has let go of the room: of a restored server too.
    if ((await this.invariants.read(phone)).room?.ended) await this.invariants.forgot(phone);
    await this.joinNow(phone, secret, ["well", "well", "lost answer", "server crash"]);
  }

  async revoke() {
    const phone = this.pick(this.phones.slice(1));
    const key = this.owner();
    if (!key || !phone.key) return;
    if (this.chance() < 0.5 && phone.keeper !== this.phones[0].keeper) {
      const { status } = await this.ask({ method: "DELETE", path: `/api/v1/rooms/${this.room}/people/${phone.keeper}`, key });
      this.note("end membership", phone.name, status);
      if (status !== 204) return;
      this.membership.roles.set(phone.keeper, null);
      for (const one of this.phones) if (one.keeper === phone.keeper) one.shown = [];
    } else {
      const { status } = await this.ask({ method: "DELETE", path: `/api/v1/devices/${phone.device}`, key });
      this.note("revoke device", phone.name, status);
      const device = this.membership.devices.get(phone.key);
      if (status === 204 && device) device.revoked = true;
    }
  }

  async changeRole() {
    const phone = this.pick(this.phones.slice(2));
    const role = this.pick(["keeper", "helper", "viewer"]);
    const key = this.owner();
    if (!key || !this.membership.roles.get(phone.keeper)) return;
    const { status } = await this.ask({ method: "PATCH", path: `/api/v1/rooms/${this.room}/people/${phone.keeper}`, key, body: { role } });
    this.note("role", phone.name, role, status);
    if (status === 200) this.membership.roles.set(phone.keeper, role);
  }

  // Backup, restore, crash, skew, eviction.

  async makeBackup() {
    this.note("backup");
    await this.server.ask("backup", { now: this.now });
    this.backup = this.membership.copy();
  }

  async restore() {
    if (!this.backup) return;
    this.note("restore");
    await this.invariants.restored();
    await this.server.ask("restore", { now: this.now });
    this.membership = this.backup.restoredOver(this.membership);
  }

  async evict() {
    const phone = this.pick(this.phones);
    const [tab] = phone.tabs;
    if (!tab) return;
    const whole = this.chance() < 0.5;
    this.note("evict", phone.name);
    await tab.real.write(["rows"], async (t) => {
      for (const key of await t.rows.getAllKeys()) if (whole || this.chance() < 0.5) await t.rows.delete(key);
    });
    await this.invariants.forgot(phone);
  }

  /** A phone falls into the water, with all that was on it. Its keeper comes back with a new one. */
  async losePhone() {
    const at = 1 + this.below(this.phones.length - 1);
    const lost = this.phones[at];
    this.note("lose phone", lost.name);
    for (const tab of [...lost.tabs]) tab.die();
    while (this.network.parked.length) await this.deliver(0, "lost request");
    await this.settle();
    this.invariants.gone(lost);
    const name = `${lost.name}-again`;
    this.phones[at] = this.makePhone(name, 10 * at + this.counts["lose phone"]);
    this.phones[at].keeper = lost.keeper;
    await this.openTab(this.phones[at]);
  }

  crashPhone() {
    const phone = this.pick(this.phones);
    const tab = this.pick([...phone.tabs]);
    if (!tab) return;
    this.note("arm crash", phone.name);
    tab.dieAt = tab.steps + 1 + this.below(40);
  }

  async openAnother() {
    const phone = this.pick(this.phones);
    if (phone.tabs.size >= 2) return;
    this.note("open tab", phone.name);
    await this.openTab(phone, this.chance() < 0.2 ? this.below(30) : Infinity);
  }

  // The network's fates.

  async deliver(at, fate) {
    const message = this.network.take(at);
    const { request, tab } = message;
    if (tab.owner.offline && fate !== "well") fate = "lost request";
    if (fate === "stale answer") {
      const stale = this.network.answered.filter((one) => one.phone === tab.owner && one.path.split("?")[0] === request.path.split("?")[0]);
      if (stale.length) {
        this.note(fate, tab.owner.name, request.path);
        this.network.answer(message, this.pick(stale));
        return this.settle();
      }
      fate = "well";
    }
    this.note(fate, tab.owner.name, request.method, request.path.slice(44), JSON.stringify(request.body ?? "").slice(0, 300));
    if (fate === "lost request") this.network.lose(message);
    else {
      const crash = fate === "server crash" ? { at: 1 + this.below(3), when: this.pick(["before", "after"]) } : null;
      const answer = await this.reach(tab.owner, request, crash);
      if (fate === "doubled") await this.twice(tab.owner, request);
      if (answer.died || fate === "lost answer") this.network.lose(message);
      else this.network.answer(message, answer);
    }
    return this.settle();
  }

  /** The request arrives at the server. */
  async reach(phone, asked, crash = null) {
    // Small pages, so that a pull takes several.
    const request = { ...asked, path: asked.path.replace("limit=1000", "limit=4") };
    const answer = await this.server.ask("request", { request, now: this.now, crash });
    if (!answer.died) this.invariants.answered(request, answer, phone.joining);
    if (request.path.endsWith("/join")) phone.joining = Boolean(answer.died);
    if (request.path.endsWith("/join") && answer.status === 201) {
      this.membership.joined({ key: answer.body.key, ...answer.body });
      Object.assign(phone, { key: answer.body.key ?? phone.key, device: answer.body.device, keeper: answer.body.keeper.id });
    }
    if (this.trace) console.error("   ->", answer.died ? "died" : answer.status, JSON.stringify(answer.body ?? null).slice(0, 400));
    return answer;
  }

  /** The same request once more, at once: it must change nothing. */
  async twice(phone, request) {
    const before = await this.server.ask("dump");
    await this.reach(phone, request);
    this.invariants.same(before, await this.server.ask("dump"), "a request that came twice");
  }

  async lateDouble() {
    if (!this.network.sent.length) return;
    const { request, phone } = this.pick(this.network.sent);
    if (request.path.endsWith("/join")) return;
    this.note("late double", phone.name, request.path.slice(44));
    await this.reach(phone, request);
  }

  fate() {
    const roll = this.chance();
    const lost = this.storm ? 0.28 : 0.16;
    for (const [fate, share] of [["lost request", 0.08], ["lost answer", lost], ["doubled", lost + 0.06], ["stale answer", lost + 0.11], ["server crash", lost + 0.18]]) {
      if (roll < share) return fate;
    }
    return "well";
  }

  // What the keepers do.

  async write(phone = this.pick(this.phones)) {
    const tab = this.pick([...phone.tabs]);
    if (!tab?.room) return;
    const changes = this.changes(tab.room);
    if (!changes.length) return;
    this.note("write", phone.name, JSON.stringify(changes));
    this.invariants.beforeWrite(phone, tab.room, changes);
    const writing = tab.room.write(changes).then(
      () => this.invariants.saved(phone, changes.length),
      // A second tab may have changed what this one saw; then nothing was saved and the person is told.
      (refused) => refused.errors ?? this.invariants.broken(`a write failed: ${refused.stack}`),
    );
    void writing;
    await this.settle();
    await this.invariants.harvest(phone);
  }

  changes(room) {
    const value = () => ++this.values;
    const tanks = room.all("tank");
    const readings = room.all("reading");
    const tank = tanks.length ? this.pick(tanks) : null;
    const roll = this.chance() * (this.storm ? 0.45 : 1);
    if (!tank || (tanks.length < 2 && roll < 0.15)) return [{ type: "put", kind: "tank", fields: { name: `T${value()}`, water_l: value(), place: `P${value()}` } }];
    if (roll < 0.4) {
      const fields = { name: `T${value()}`, water_l: value(), place: `P${value()}`, note: `N${value()}` };
      const names = this.storm ? ["name"] : Object.keys(fields).filter(() => this.chance() < 0.4);
      const changed = Object.fromEntries((names.length ? names : ["water_l"]).map((name) => [name, fields[name]]));
      if (this.chance() < 0.1) changed.place = null;
      return [{ type: "put", kind: "tank", id: tank.id, fields: changed }];
    }
    if (roll < 0.75) return [0, 1].map(() => ({ type: "put", kind: "reading", fields: { tank: tank.id, parameter: "nitrite", value: value() } }));
    if (!readings.length) return [];
    const reading = this.pick(readings);
    if (roll < 0.83) return [{ type: "put", kind: "reading", fields: { tank: tank.id, parameter: "nitrite", value: value(), supersedes: reading.id } }];
    if (roll < 0.95) return [{ type: this.chance() < 0.6 ? "del" : "restore", kind: "reading", id: reading.id }];
    return [{ type: this.chance() < 0.5 ? "del" : "restore", kind: "tank", id: tank.id }];
  }

  async fireTimer() {
    const tab = this.pick(this.phones.flatMap((phone) => [...phone.tabs]));
    if (tab?.fire()) this.note("timer", tab.owner.name);
  }

  async tryAgain() {
    const tab = this.pick(this.phones.flatMap((phone) => [...phone.tabs]));
    if (!tab?.room) return;
    this.note("try again", tab.owner.name);
    tab.room.tryAgain().catch((failed) => this.invariants.broken(`trying again failed: ${failed.stack}`));
  }

  async act() {
    const roll = this.chance();
    if (this.network.parked.length && roll < 0.5) return this.deliver(this.below(this.network.parked.length), this.fate());
    const acts = [
      [0.28, () => this.write()],
      [0.57, () => this.fireTimer()],
      [0.66, () => this.crashPhone()],
      [0.76, () => this.openAnother()],
      [0.79, () => this.evict()],
      [0.82, () => this.revoke()],
      [0.85, () => this.changeRole()],
      [0.88, () => this.makeBackup()],
      [0.9, () => this.restore()],
      [0.905, () => this.lateDouble()],
      [0.91, () => this.losePhone()],
      [0.92, () => this.tryAgain()],
      [0.96, () => this.jump()],
      [0.98, () => this.rejoinSomeone()],
      [1, () => this.partition()],
    ];
    if (this.storm && this.chance() < 0.3) return this.pick([() => this.leap(), () => this.makeBackup(), () => this.restore(), () => this.fireTimer(), () => this.write()])();
    const which = this.chance();
    return acts.find(([share]) => which < share)[1]();
  }

  /** A phone's clock is set anew, by seconds or by days. */
  jump() {
    const phone = this.pick(this.phones);
    phone.skew = this.skew();
    this.note("clock jump", phone.name, phone.skew);
  }

  /** A phone's clock leaps days ahead, and its keeper writes before the server has set it right. */
  async leap() {
    const phone = this.pick(this.phones);
    phone.skew += this.below(4 * DAY);
    this.note("leap", phone.name, phone.skew);
    await this.write(phone);
  }

  partition() {
    const phone = this.pick(this.phones);
    phone.offline = !phone.offline;
    this.note("partition", phone.name, phone.offline);
  }

  async rejoinSomeone() {
    const out = this.phones.filter((phone) => !this.membership.mayShare(phone.key));
    // Joining takes the network for itself, so what is under way is lost first.
    while (this.network.parked.length) await this.deliver(0, "lost request");
    if (out.length && this.owner()) await this.rejoin(this.pick(out));
  }

  /** Peace: everything works, half of those who lost their way in get it back, and all share until nothing moves. */
  async heal() {
    this.note("heal");
    for (const phone of this.phones) {
      phone.offline = false;
      for (const tab of phone.tabs) tab.dieAt = Infinity;
    }
    while (this.network.parked.length) await this.deliver(0, "lost request");
    for (const phone of this.phones) {
      if (!this.membership.mayShare(phone.key) && this.owner() && this.chance() < 0.6) await this.rejoin(phone);
      if (!phone.tabs.size) await this.openTab(phone);
      for (const tab of phone.tabs) if (tab.stale) void tab.room.inner.reread();
    }
    for (let round = 0, calm = 0; calm < 2; round++) {
      if (round > 40) return this.invariants.broken("sharing never comes to rest");
      this.now += 60_000;
      const before = await this.invariants.fingerprint();
      for (const phone of this.phones) {
        for (const tab of [...phone.tabs]) {
          tab.fire();
          await this.settle();
          while (this.network.parked.length) await this.deliver(0, "well");
        }
      }
      calm = before === (await this.invariants.fingerprint()) ? calm + 1 : 0;
    }
  }
}
