/**
 * What the keeper sees: the server's row with this phone's ops folded in, field by field, the later stamp winning.
 * Pure. Deleted, superseded and incomplete records are left out.
 */
/** @import { Kind } from "../types/contract.js" */
/** @import { Entry, Fields, KeptEntry, Row } from "../types/stores.js" */
import { ms_of } from "./clock.js";

const LOUDEST = ["needs you", "sending", "waiting", "shared"];

/** @typedef {ReturnType<typeof fold>} Folded */
/** @typedef {Map<string, Folded>} FoldedById */
/** @typedef {Fields & {id: string, kind: string, meta: Folded["meta"]}} Shown a record as it is shown */

/**
 * One record from its row and its ops (any order). `seq` and `ops`: the row's place, and how many ops are folded in.
 * @param {Row | undefined} row @param {(Entry | KeptEntry)[]} entries of the outbox and of `kept`
 */
export function fold(row, entries) {
  // A row without ops is held as it came, not copied.
  const own = entries.length > 0 || !row;
  /** @type {Fields} */ const fields = own ? { ...row?.fields } : row.fields;
  /** @type {Record<string, string>} */ const stamps = own ? { ...row?.stamps } : row.stamps;
  let deleted = row?.deleted ?? null;
  let restored = row?.restored ?? null;
  /** @type {string} */ let state = "shared";
  for (const { op, state: entry_state = "shared" } of entries) {
    if (op.type === "del") deleted = later(deleted, op.stamp);
    else if (op.type === "restore") restored = later(restored, op.stamp);
    else {
      for (const [name, value] of Object.entries(op.fields)) {
        if (stamps[name] !== undefined && stamps[name] > op.stamp) continue;
        stamps[name] = op.stamp;
        fields[name] = value;
      }
    }
    if (LOUDEST.indexOf(entry_state) < LOUDEST.indexOf(state)) state = entry_state;
  }
  const meta = { state, ...authors(row, entries) };
  return { fields, stamps, deleted, restored, meta, seq: row?.seq ?? 0, ops: entries.length };
}

/**
 * Who made and last changed a record, and when.
 * @param {Row | undefined} row @param {(Entry | KeptEntry)[]} entries
 */
function authors(row, entries) {
  let [made_by, made_at] = [row?.made_by ?? null, row?.made_at ?? null];
  let [changed_by, changed_at] = [row?.changed_by ?? null, row?.changed_at ?? null];
  let [first, last] = [entries[0], entries[0]];
  for (const entry of entries) {
    if (entry.op.stamp < first.op.stamp) first = entry;
    if (entry.op.stamp > last.op.stamp) last = entry;
  }
  if (!row && first) [made_by, made_at] = [first.by, first.at];
  if (last && (!changed_at || ms_of(last.op.stamp) >= Date.parse(changed_at)))
    [changed_by, changed_at] = [last.by, last.at];
  const brought = row?.brought_by ? { brought_by: row.brought_by, brought_at: row.brought_at } : {};
  return { made_by, made_at, changed_by, changed_at, ...brought };
}

/** @param {string | null} a @param {string} b */
const later = (a, b) => (a === null || b > a ? b : a);

/** @param {Folded} record */
export const is_gone = ({ deleted, restored }) => deleted !== null && deleted > (restored ?? "");

/**
 * The records of one kind that a screen shows, in no promised order.
 * @param {Kind} spec @param {FoldedById} records
 */
export function show(spec, records) {
  const hidden = superseded(records);
  /** @type {Shown[]} */ const shown = [];
  for (const [id, record] of records) {
    const view = hidden.has(id) ? null : view_of(spec, id, record);
    if (view) shown.push(view);
  }
  return shown;
}

/**
 * One record as a screen shows it where no correction hides it; null if it is deleted or incomplete.
 * @param {Kind} spec @param {string} id @param {Folded} record @returns {Shown | null}
 */
export function view_of(spec, id, record) {
  const known = views.get(record);
  if (known !== undefined) return known;
  const view = plain(spec.kind, required_of(spec), id, record);
  views.set(record, view);
  return view;
}

/** The fields without which no record of a kind is shown. @type {WeakMap<Kind, string[]>} */
const required = new WeakMap();

/** @param {Kind} spec */
function required_of(spec) {
  const names =
    required.get(spec) ?? spec.fields.filter((field) => field.required && !field.when).map((field) => field.name);
  required.set(spec, names);
  return names;
}

/**
 * Views by folded record. A folded record is never altered, so its view is made once, however often others of its
 * kind change.
 * @type {WeakMap<Folded, Shown | null>}
 */
const views = new WeakMap();

/**
 * @param {string} kind @param {string[]} required @param {string} id @param {Folded} record @returns {Shown | null}
 */
function plain(kind, required, id, record) {
  if (is_gone(record)) return null;
  /** @type {Fields} */ const fields = {};
  for (const name in record.fields) if (record.fields[name] !== null) fields[name] = record.fields[name];
  return required.every((name) => name in fields) ? { ...fields, id, kind, meta: record.meta } : null;
}

/** The id of the record that this one corrects. @param {Folded | undefined} record */
export const corrects = (record) => /** @type {string | undefined} */ (record?.fields.supersedes || undefined);

/** Ids that a standing correction hides. @param {FoldedById} records */
function superseded(records) {
  /** @type {Map<string, string[]>} */ const corrections = new Map();
  for (const [id, record] of records) {
    const corrected = corrects(record);
    if (corrected) corrections.set(corrected, [...(corrections.get(corrected) ?? []), id]);
  }
  const hidden = new Set();
  for (const corrected of corrections.keys())
    for (const id of hidden_by_corrections(corrected, records, (one) => corrections.get(one) ?? [])) hidden.add(id);
  return hidden;
}

/**
 * What the corrections of one record hide: the record, and all of them but one. A correction stands while it is not
 * deleted, or while a later correction of itself stands. Of two corrections of one record (two phones, no signal) the
 * later holds.
 * @param {string} corrected @param {FoldedById} records @param {(id: string) => Iterable<string>} corrections_of
 * @returns {string[]}
 */
export function hidden_by_corrections(corrected, records, corrections_of) {
  /** @param {string} id @param {Set<string>} seen @returns {boolean} */
  function stands(id, seen) {
    if (seen.has(id)) return false;
    seen.add(id);
    const record = records.get(id);
    return Boolean(record && !is_gone(record)) || [...corrections_of(id)].some((by) => stands(by, seen));
  }
  const standing = [...corrections_of(corrected)].filter((id) => id !== corrected && stands(id, new Set([corrected])));
  if (!standing.length) return [];
  standing.sort((a, b) => (made_order(records.get(a), a) < made_order(records.get(b), b) ? -1 : 1));
  return [corrected, ...standing.slice(0, -1)];
}

/** @param {Folded | undefined} record @param {string} id */
const made_order = (record, id) => `${record?.stamps.supersedes ?? ""} ${id}`;
