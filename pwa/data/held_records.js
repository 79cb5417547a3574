/**
 * Records in memory, as they are shown: all of a kind, those of one tank, one. A change makes only those lists anew
 * that it touches. Pure; `show` of view.js says the same of a whole kind at once.
 */
/** @import { Kind } from "../types/contract.js" */
/** @import { Folded, FoldedById, Shown } from "./view.js" */
import { kind_of } from "../contracts.js";
import { corrects, hidden_by_corrections, view_of } from "./view.js";

export class HeldRecords {
  /** @type {Map<string, OfKind>} */ #kinds = new Map();

  /** @param {string} kind */
  #of(kind) {
    const held = this.#kinds.get(kind) ?? new OfKind(kind_of(kind));
    this.#kinds.set(kind, held);
    return held;
  }

  /** Hold a record, instead of what was held of it. @param {string} kind @param {string} id @param {Folded} record */
  put(kind, id, record) {
    this.#of(kind).put(id, record);
  }

  /** @param {string} kind @param {string} id */
  remove(kind, id) {
    this.#kinds.get(kind)?.put(id, null);
  }

  /** The shown records of a kind; the same array until one of them changes. @param {string} kind */
  shown(kind) {
    return this.#of(kind).shown();
  }

  /**
   * Those of one tank, oldest first; the same frozen array until one of them changes.
   * @param {string} kind of records with a tank and a time @param {string} tank_id
   */
  shown_of(kind, tank_id) {
    return this.#of(kind).shown_of(tank_id);
  }

  /** One shown record, null if there is none. @param {string} kind @param {string} id */
  one(kind, id) {
    return this.#of(kind).one(id);
  }

  /** One record as it is stored, shown or not. @param {string} kind @param {string} id */
  folded(kind, id) {
    return this.#kinds.get(kind)?.records.get(id);
  }
}

/** The records of one kind. */
class OfKind {
  /** @type {FoldedById} */ records = new Map();
  /** @type {Set<string>} ids that a standing correction hides */ #hidden = new Set();
  /** @type {Map<string, Set<string>>} the ids of its corrections, by the id that they correct */
  #corrections = new Map();
  /** @type {Map<unknown, Set<string>>} ids by tank */ #tanks = new Map();
  /** @type {Shown[] | null} */ #shown = null;
  /**
   * The list of each tank, and ids that were touched since it was made.
   * @type {Map<unknown, {list: readonly Shown[], touched: Set<string>}>}
   */
  #shown_of = new Map();

  /** @param {Kind} spec */
  constructor(spec) {
    this.spec = spec;
  }

  /** @param {string} id @param {Folded | null} record null: it is gone from the database */
  put(id, record) {
    const before = this.records.get(id);
    if (!before && !record) return;
    if (record) this.records.set(id, record);
    else this.records.delete(id);
    move(this.#tanks, id, tank_of(before), record ? tank_of(record) : undefined);
    move(this.#corrections, id, corrects(before), corrects(record ?? undefined));
    this.#touch(id, before);
    if (corrects(before) || corrects(record ?? undefined)) this.#settle(id, before);
  }

  shown() {
    this.#shown ??= this.#views(this.records.keys());
    return this.#shown;
  }

  /** @param {string} tank_id */
  shown_of(tank_id) {
    const held = this.#shown_of.get(tank_id);
    if (held?.touched.size === 0) return held.list;
    const ids = this.#tanks.get(tank_id) ?? new Set();
    const { list: before, touched } = held ?? { list: [], touched: ids };
    const others = before.filter(({ id }) => !touched.has(id));
    const own = this.#views([...touched].filter((id) => ids.has(id))).sort(this.#by_time);
    const list = Object.freeze(merged(others, own, this.#by_time));
    this.#shown_of.set(tank_id, { list, touched: new Set() });
    return list;
  }

  /** @param {string} id */
  one(id) {
    const record = this.records.get(id);
    return record && !this.#hidden.has(id) ? view_of(this.spec, id, record) : null;
  }

  /** By the time that they tell of, then in the order of writing. @param {Shown} a @param {Shown} b */
  #by_time = (a, b) =>
    compare(String(a.at), String(b.at)) || compare(this.#written(a), this.#written(b)) || compare(a.id, b.id);

  /** The stamp of a record's first writing. @param {Shown} view */
  #written = ({ id }) => this.records.get(id)?.stamps.at ?? "";

  /** @param {Iterable<string>} ids @returns {Shown[]} */
  #views(ids) {
    /** @type {Shown[]} */ const found = [];
    for (const id of ids) {
      const view = this.one(id);
      if (view) found.push(view);
    }
    return found;
  }

  /** A record may stand elsewhere in the lists in which it is or was. @param {string} id @param {Folded} [before] */
  #touch(id, before) {
    this.#shown = null;
    for (const record of [this.records.get(id), before]) this.#shown_of.get(tank_of(record))?.touched.add(id);
  }

  /**
   * What is hidden among a record, what it corrects and what corrects it, and so on.
   * @param {string} id @param {Folded} [before] what the record was: it may have corrected another
   */
  #settle(id, before) {
    /** @type {Set<string>} */ const family = new Set();
    const open = [id, corrects(before)];
    while (open.length) {
      const one = open.pop();
      if (one === undefined || family.has(one)) continue;
      family.add(one);
      open.push(corrects(this.records.get(one)), ...(this.#corrections.get(one) ?? []));
    }
    for (const one of family) {
      this.#hidden.delete(one);
      this.#touch(one);
    }
    const corrections_of = (/** @type {string} */ one) => this.#corrections.get(one) ?? [];
    for (const one of family)
      for (const hidden of hidden_by_corrections(one, this.records, corrections_of)) this.#hidden.add(hidden);
  }
}

/** @param {Folded | undefined} record */
const tank_of = (record) => record?.fields.tank ?? undefined;

/**
 * Move an id from one set to another.
 * @template Key @param {Map<Key, Set<string>>} sets @param {string} id @param {Key | undefined} from
 * @param {Key | undefined} to
 */
function move(sets, id, from, to) {
  if (from === to) return;
  if (from !== undefined) {
    const left = sets.get(from);
    left?.delete(id);
    if (!left?.size) sets.delete(from);
  }
  if (to === undefined) return;
  const there = sets.get(to);
  if (there) there.add(id);
  else sets.set(to, new Set([id]));
}

/**
 * Two sorted lists as one. What is new mostly comes last.
 * @template T @param {T[]} one @param {T[]} other @param {(a: T, b: T) => number} order
 */
function merged(one, other, order) {
  if (!one.length || !other.length || order(one[one.length - 1], other[0]) <= 0) return [...one, ...other];
  return [...one, ...other].sort(order);
}

/** @param {string} a @param {string} b */
const compare = (a, b) => (a < b ? -1 : a > b ? 1 : 0);
