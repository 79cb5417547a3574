/** What must hold, whatever happened. Each check says in its Violation what was broken. */
import assert from "node:assert/strict";

const AHEAD_MS = 60_000;
const REGISTERS = /** @type {const} */ (["deleted", "restored"]);

/** @typedef {import("./world.js").World} World */
/** @typedef {import("./world.js").SimulatedPhone} SimulatedPhone */
/** @typedef {import("../../pwa/types/stores.js").Row} Row */
/** @typedef {import("../../pwa/types/stores.js").Op} Op */
/** @typedef {import("../../pwa/types/records.js").RecordKind} RecordKind */
/** @typedef {import("../../pwa/data/database.js").Database} Database */
/** @typedef {import("../../pwa/types/stores.js").Fields} Fields */
/**
 * An op as the server holds it. `fields` of a row that was brought back is that row.
 * @typedef {{op: string, kind: string, id: string, stamp: string, keeper: string}
 *   & ({type: "put" | "del" | "restore", fields: Fields} | {type: "row", fields: Row})} ServerOp
 */
/** What lies in the room's file on the server: do_dump of server_process.py. */
/** @typedef {{epoch: string, seq: number, records: Row[], ops: ServerOp[]}} Dump */
/** What lies on a phone. @typedef {Awaited<ReturnType<Invariants["read"]>>} Held */
/** What a fold makes of a record. @typedef {Pick<Row, "fields" | "stamps" | "deleted" | "restored">} Folded */

export class Violation extends Error {}

export class Invariants {
  /** @param {World} world */
  constructor(world) {
    this.world = world;
    // Every op that any phone ever stored, by id: {phone, op, seen: {field: the value shown when it was written}}.
    /** @type {Map<string, {phone: SimulatedPhone, op: Op, seen: Record<string, unknown>}>} */ this.ops = new Map();
    /** @type {Map<SimulatedPhone, Database>} */ this.stores = new Map();
    /** @type {Violation | null} the first that was found */ this.failed = null;
  }

  /** @param {string} words @returns {never} */
  broken(words) {
    this.failed ??= new Violation(words);
    throw this.failed;
  }

  /** @param {unknown} truth @param {string} words @returns {asserts truth} */
  hold(truth, words) {
    if (!truth) this.broken(words);
  }

  /** @param {unknown} one @param {unknown} other @param {string} words */
  same(one, other, words) {
    try {
      assert.deepEqual(other, one);
    } catch (difference) {
      this.broken(`${words}: ${/** @type {Error} */ (difference).message}`);
    }
  }

  // Membership: the server lets in all members, and nobody else.

  /**
   * `joining`: the server crashed during a join of this phone, so the join may be stored or not.
   * @param {import("./network.js").Outgoing} request @param {import("./network.js").Answer} answer
   * @param {boolean | undefined} joining
   */
  answered(request, { status, body }, joining) {
    if (!/\/(push|pull|bring-back)(\?|$)/.test(request.path)) return;
    const refusal = this.world.membership.refusal(request.key);
    const may_be_in = joining && (status === 200 || status === 409);
    if (refusal !== null)
      return this.hold(
        status === refusal || may_be_in,
        `push or pull without membership was answered ${status}, not ${refusal}`,
      );
    this.hold(
      status === 200 || status === 409,
      `a member's ${request.path} was answered ${status}: ${JSON.stringify(body)}`,
    );
  }

  // Writing: what was reported as saved is stored, and its stamp is later than what its author saw.

  /**
   * @param {SimulatedPhone} phone @param {import("../../pwa/data/fish_room.js").FishRoom} room
   * @param {import("../../pwa/data/write.js").Change[]} changes
   */
  before_write(phone, room, changes) {
    phone.seen = new Map(
      changes.flatMap(({ kind, id }) => (id ? [[id, { ...room.get(/** @type {RecordKind} */ (kind), id) }]] : [])),
    );
    phone.found = 0;
  }

  /** @param {SimulatedPhone} phone @param {number} count */
  async saved(phone, count) {
    phone.saved = count;
  }

  /** @param {SimulatedPhone} phone */
  async read(phone) {
    const tab = await this.reader(phone);
    return tab.read(["outbox", "kept", "rows", "former", "rooms", "device"], async (t) => ({
      former: await t.former.getAll(),
      outbox: await t.outbox.getAll(),
      kept: await t.kept.getAll(),
      rows: await t.rows.getAll(),
      room: await t.rooms.get(this.world.room),
      identity: await t.device.get("identity"),
    }));
  }

  /** A connection of the test's own, beside the tabs. @param {SimulatedPhone} phone @returns {Promise<Database>} */
  async reader(phone) {
    const open = this.stores.get(phone) ?? (await this.world.core.open_database({ name: phone.database_name }));
    this.stores.set(phone, open);
    return open;
  }

  /** A phone is lost for good. @param {SimulatedPhone} phone */
  gone(phone) {
    this.stores.get(phone)?.close();
    this.stores.delete(phone);
  }

  /** @param {SimulatedPhone} phone */
  async harvest(phone) {
    const { outbox } = await this.read(phone);
    for (const { op } of outbox) {
      if (this.ops.has(op.op)) continue;
      const seen = phone.seen?.get(op.id) ?? {};
      this.ops.set(op.op, { phone, op, seen });
      phone.found++;
    }
    if (phone.saved !== undefined)
      this.hold(
        phone.found === phone.saved,
        `${phone.saved} records were said to be saved on ${phone.name}, ${phone.found} are stored`,
      );
    phone.saved = undefined;
    phone.seen = undefined;
  }

  // After steps.

  /** @param {boolean} deep whether to look at all that is stored */
  async after_step(deep) {
    if (this.failed) throw this.failed;
    if (deep) await this.everywhere(await this.world.server.ask("dump"), false);
  }

  async at_end() {
    if (this.failed) throw this.failed;
    const server = await this.world.server.ask("dump");
    await this.everywhere(server, true);
    await this.converged(server);
    await this.held_as_stored();
    await this.brought_back(server);
    this.edits_beat_what_was_seen(server);
  }

  /** @param {Dump} server @param {boolean} at_end */
  async everywhere(server, at_end) {
    this.last_writer_wins(server);
    this.no_stamp_ahead(server);
    const on_server = new Set(server.ops.map(({ op }) => op));
    for (const phone of this.world.phones) {
      const held = await this.read(phone);
      this.nothing_lost(phone, held, on_server, at_end);
      this.cursor_passes_nothing(phone, held, server);
      this.only_what_is_ours(phone, held);
    }
  }

  /**
   * Every op is on the server, in the outbox ("needs you" too), or kept for a server that is restored.
   * @param {SimulatedPhone} phone @param {Held} held @param {Set<string>} on_server @param {boolean} at_end
   */
  nothing_lost(phone, { outbox, kept, room, identity }, on_server, at_end) {
    const waiting = new Set(outbox.map(({ op }) => op.op));
    const spare = new Set(kept.map(({ op }) => op.op));
    const settled = at_end && room && !room.ended && this.world.membership.may_share(identity?.key);
    for (const [id, logged] of this.ops) {
      if (logged.phone !== phone || on_server.has(id) || waiting.has(id)) continue;
      this.hold(!settled && spare.has(id), `${phone.name} lost ${JSON.stringify(logged.op)}`);
    }
  }

  /**
   * No rows stay after the membership. No op here breaks its kind, so only a role or the membership's end refuses it.
   * @param {SimulatedPhone} phone @param {Held} held
   */
  only_what_is_ours(phone, { outbox, rows, former, room }) {
    this.hold(!room?.ended || !(rows.length || former.length), `${phone.name} keeps rows of a room it is no longer in`);
    for (const { state, reason, op } of outbox) {
      this.hold(
        state !== "needs you" || reason === "role" || reason === "membership-ended",
        `${phone.name}: refused as ${reason}: ${JSON.stringify(op)}`,
      );
    }
  }

  /**
   * Up to the cursor, the mirror holds every row as the server does.
   * @param {SimulatedPhone} phone @param {Held} held @param {Dump} server
   */
  cursor_passes_nothing(phone, { rows, room }, server) {
    if (!room || room.epoch !== server.epoch || room.ended) return;
    // Evicted rows are pulled again when the phone next shares; until then there is a gap.
    if (room.count !== rows.length) return;
    const mirror = new Map(rows.map((row) => [row.id, row]));
    for (const record of server.records) {
      if (record.seq > room.since) continue;
      const row = mirror.get(record.id);
      this.hold(
        row?.seq === record.seq,
        `${phone.name}'s cursor ${room.since} has passed row ${record.seq}, which it holds as ${row?.seq}`,
      );
    }
  }

  /**
   * An independent fold of all ops and rows that the server took: field by field, the later stamp wins.
   * @param {Dump} server
   */
  last_writer_wins({ records, ops }) {
    /** @type {Map<string, Folded>} */ const oracle = new Map();
    for (const one of ops) {
      const { op, id, type, stamp } = one;
      /** @type {Folded} */
      const record = oracle.get(id) ?? { fields: {}, stamps: {}, deleted: null, restored: null };
      oracle.set(id, record);
      if (one.type === "row") {
        const row = one.fields;
        for (const [name, stamp_of_field] of Object.entries(row.stamps)) {
          if (record.stamps[name] > stamp_of_field) continue;
          record.stamps[name] = stamp_of_field;
          record.fields[name] = row.fields[name];
        }
        for (const register of REGISTERS)
          if ((row[register] ?? "") > (record[register] ?? "")) record[register] = row[register];
        continue;
      }
      const fields = this.ops.get(op)?.op.fields ?? one.fields;
      if (type === "del" && !((record.deleted ?? "") >= stamp)) record.deleted = stamp;
      if (type === "restore" && !((record.restored ?? "") >= stamp)) record.restored = stamp;
      for (const [name, value] of Object.entries(type === "put" ? fields : {})) {
        if (record.stamps[name] > stamp) continue;
        record.stamps[name] = stamp;
        record.fields[name] = value;
      }
    }
    const got = new Map(
      records.map(({ id, fields, stamps, deleted, restored }) => [id, { fields, stamps, deleted, restored }]),
    );
    this.hold(got.size === oracle.size, "records without an op, or ops without a record");
    for (const [id, record] of oracle)
      this.same(record, got.get(id), `record ${id} is not what last writer wins makes it`);
  }

  /** @param {Dump} server */
  no_stamp_ahead({ records }) {
    const ceiling = this.world.now + AHEAD_MS;
    for (const { id, stamps, deleted, restored } of records) {
      for (const stamp of [...Object.values(stamps), deleted, restored]) {
        this.hold(
          !stamp || Number(stamp.slice(0, 13)) <= ceiling,
          `record ${id} holds ${stamp}, ahead of the server's time`,
        );
      }
    }
  }

  /** An edit's stamp is later than the stamp of the value that its author saw. @param {Dump} server */
  edits_beat_what_was_seen({ ops }) {
    const stamps = new Map(ops.map(({ op, stamp }) => [op, stamp]));
    const writer = new Map();
    for (const [id, { op }] of this.ops)
      for (const [name, value] of Object.entries(op.fields)) writer.set(`${op.id} ${name} ${value}`, id);
    for (const [id, { op, seen }] of this.ops) {
      for (const name of Object.keys(op.fields)) {
        const before = writer.get(`${op.id} ${name} ${seen[name]}`);
        if (!before || before === id) continue;
        const [stamp, seen_stamp] = [stamps.get(id), stamps.get(before)];
        if (!stamp || !seen_stamp) continue;
        this.hold(stamp > seen_stamp, `${JSON.stringify(op)} lost to what its author had seen (${seen_stamp})`);
      }
    }
  }

  /** The server is restored: what each phone's mirror holds now must come back, if that phone can give it back. */
  async restored() {
    for (const phone of this.world.phones) {
      const { rows, former } = await this.read(phone);
      for (const row of [...rows, ...former.map((entry) => entry.row)]) phone.shown.push(row);
    }
  }

  /**
   * A phone lost rows, or its membership ended: only what it still holds must come back.
   * @param {SimulatedPhone} phone
   */
  async forgot(phone) {
    const { former } = await this.read(phone);
    phone.shown = former.map((entry) => entry.row);
  }

  /**
   * What phones showed when the server was restored is back, or a later edit of it, whoever wrote it.
   * @param {Dump} server
   */
  async brought_back({ records }) {
    const written = this.world.core.written_by();
    const { membership } = this.world;
    const found = new Map(records.map((record) => [record.id, record]));
    for (const phone of this.world.phones) {
      const { identity, former } = await this.read(phone);
      const role = membership.may_share(identity?.key) ? membership.roles.get(phone.keeper ?? "") : null;
      const may_write = (/** @type {string} */ kind) => Boolean(role) && written[kind].includes(String(role));
      for (const row of phone.shown) {
        if (!may_write(row.kind)) continue;
        this.world.count("shown row back");
        const record = found.get(row.id);
        this.hold(record, `${phone.name} had shown ${JSON.stringify(row)}, and it did not come back`);
        const place = (/** @type {string} */ stamp) => place_of(stamp, row.moved ?? {}, record.moved ?? {});
        for (const [name, stamp] of Object.entries(row.stamps)) {
          this.hold(
            record.stamps[name] >= place(stamp),
            `${phone.name} had shown ${name} of ${stamp}, and ${JSON.stringify(record)} came back`,
          );
        }
        for (const register of REGISTERS) {
          const known = row[register];
          this.hold(
            !known || (record[register] ?? "") >= place(known),
            `${phone.name} knew of ${register} ${known}, and ${JSON.stringify(record)} came back`,
          );
        }
      }
      const left = former.filter(({ kind }) => may_write(kind));
      this.hold(!left.length, `${phone.name} still puts aside ${JSON.stringify(left)}`);
    }
  }

  /** All members have the same rows as the server, and their screens show the same. @param {Dump} server */
  async converged(server) {
    const rows = server.records.map((record) => JSON.stringify(in_order(record))).sort();
    /** @type {string[] | null} */ let shown = null;
    const known = new Set(server.records.map(({ id }) => id));
    for (const phone of this.world.phones) {
      const held = await this.read(phone);
      if (!this.world.membership.may_share(held.identity?.key)) continue;
      const open = held.outbox.filter(
        ({ state, op, creates }) => state !== "needs you" && (creates || known.has(op.id)),
      );
      this.hold(!open.length, `${phone.name} still holds back ${JSON.stringify(open)}`);
      const mirror = held.rows.map(({ room: _room, ...row }) => JSON.stringify(in_order(row))).sort();
      this.same(rows, mirror, `${phone.name}'s mirror is not the server's`);
      if (held.outbox.length) continue;
      for (const tab of phone.tabs) {
        const { room } = tab;
        this.hold(room, `a tab of ${phone.name} shows no room`);
        const view = /** @type {RecordKind[]} */ (["tank", "reading"])
          .flatMap((kind) => room.all(kind).map((one) => JSON.stringify({ ...one, meta: null })))
          .sort();
        shown ??= view;
        this.same(shown, view, `${phone.name} shows something else`);
        this.same([], room.sharing().needs_you, `${phone.name} asks for nothing`);
      }
    }
  }

  /** What each tab holds in memory is what a full read of the phone gives, every kind and every state of sharing. */
  async held_as_stored() {
    for (const phone of this.world.phones)
      for (const tab of phone.tabs) {
        if (!tab.room || !tab.cache) continue;
        await tab.cache.reread();
        const { room: full } = await this.world.core.open_room(tab.room.id, tab.surroundings);
        const lines = (/** @type {import("../../pwa/data/fish_room.js").FishRoom} */ room) =>
          /** @type {RecordKind[]} */ (Object.keys(this.world.core.written_by()))
            .flatMap((kind) => room.all(kind).map((one) => JSON.stringify(one)))
            .sort();
        this.same(lines(full), lines(tab.room), `a tab of ${phone.name} holds something else than is stored`);
        full.close();
        this.world.count("held as stored");
      }
  }

  /** Differs when anything stored on a phone does, except the time it last shared. */
  async fingerprint() {
    const phones = [];
    for (const phone of this.world.phones) {
      const { outbox, rows, former, room } = await this.read(phone);
      phones.push([
        former.length,
        outbox.map(({ state, op }) => [state, op.op]),
        rows.length,
        room?.since,
        room?.epoch,
        room?.ended,
        room?.problem,
      ]);
    }
    return JSON.stringify(phones);
  }
}

/**
 * The stamp that `known` gives to a stamp of a row whose moved stamps are `moved`.
 * @param {string} stamp @param {import("../../pwa/types/stores.js").Moved} moved
 * @param {import("../../pwa/types/stores.js").Moved} known
 */
function place_of(stamp, moved, known) {
  const written = Object.keys(moved).find((name) => moved[name] === stamp) ?? stamp;
  return known[written] ?? stamp;
}

/** The row with its members sorted by name, so that rows compare as text. @param {object} row */
const in_order = (row) => Object.fromEntries(Object.entries(row).sort(([a], [b]) => (a < b ? -1 : 1)));
