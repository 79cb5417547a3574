/**
 * What the keeper sees: the server's row, with this phone's ops folded in field by field, the later stamp winning.
 * Pure. Deleted, superseded and incomplete records are left out.
 */
import { ms_of } from "./clock.js";

const LOUDEST = ["needs you", "sending", "waiting", "shared"];

/**
 * One record from its row and its ops (any order).
 * @param {any | undefined} row @param {any[]} entries of the outbox and of kept
 */
export function fold(row, entries) {
  /** @type {Record<string, any>} */ const fields = { ...row?.fields };
  /** @type {Record<string, string>} */ const stamps = { ...row?.stamps };
  let deleted = row?.deleted ?? null;
  let restored = row?.restored ?? null;
  let { made_by = null, made_at = null, changed_by = null, changed_at = null } = row ?? {};
  const brought = row?.brought_by ? { brought_by: row.brought_by, brought_at: row.brought_at } : {};
  let state = "shared";
  let first = null;
  let last = null;
  for (const { op, by, at, state: its = "shared" } of entries) {
    if (op.type === "del") deleted = later(deleted, op.stamp);
    else if (op.type === "restore") restored = later(restored, op.stamp);
    else {
      for (const [name, value] of Object.entries(op.fields)) {
        if (stamps[name] !== undefined && stamps[name] > op.stamp) continue;
        stamps[name] = op.stamp;
        fields[name] = value;
      }
    }
    if (LOUDEST.indexOf(its) < LOUDEST.indexOf(state)) state = its;
    if (!first || op.stamp < first.stamp) first = { stamp: op.stamp, by, at };
    if (!last || op.stamp > last.stamp) last = { stamp: op.stamp, by, at };
  }
  if (!row && first) [made_by, made_at] = [first.by, first.at];
  if (last && (!changed_at || ms_of(last.stamp) >= Date.parse(changed_at)))
    [changed_by, changed_at] = [last.by, last.at];
  return { fields, stamps, deleted, restored, meta: { state, made_by, made_at, changed_by, changed_at, ...brought } };
}

/** @param {string | null} a @param {string} b */
const later = (a, b) => (a === null || b > a ? b : a);

/** @param {ReturnType<typeof fold>} record */
const is_gone = ({ deleted, restored }) => deleted !== null && deleted > (restored ?? "");

/**
 * The records of one kind that a screen shows, in no promised order.
 * @param {any} spec shared_schema/records/KIND.json @param {Map<string, ReturnType<typeof fold>>} records by id
 */
export function show(spec, records) {
  const hidden = superseded(records);
  const required = spec.fields
    .filter((/** @type {any} */ field) => field.required && !field.when)
    .map((/** @type {any} */ field) => field.name);
  const shown = [];
  for (const [id, record] of records) {
    if (hidden.has(id)) continue;
    let view = views.get(record);
    if (view === undefined) views.set(record, (view = plain(spec.kind, required, id, record)));
    if (view) shown.push(view);
  }
  return shown;
}

/** A folded record is never altered, so that its view is made once, however often others of its kind change. @type {WeakMap<ReturnType<typeof fold>, any>} */
const views = new WeakMap();

/** A plain view, null if the record is gone or not whole. @param {string} kind @param {string[]} required @param {string} id @param {ReturnType<typeof fold>} record */
function plain(kind, required, id, record) {
  if (is_gone(record)) return null;
  /** @type {Record<string, any>} */ const fields = {};
  for (const [name, value] of Object.entries(record.fields)) if (value !== null) fields[name] = value;
  return required.every((name) => name in fields) ? { ...fields, id, kind, meta: record.meta } : null;
}

/**
 * Ids that a standing correction hides. A correction stands while it is not deleted, or while a later
 * correction of itself stands. Of two corrections of one record (two phones, no signal) the later holds.
 * @param {Map<string, ReturnType<typeof fold>>} records
 */
function superseded(records) {
  /** @type {Map<string, string[]>} */ const corrections = new Map();
  for (const [id, { fields }] of records) {
    if (fields.supersedes) corrections.set(fields.supersedes, [...(corrections.get(fields.supersedes) ?? []), id]);
  }
  /** @param {string} id @param {Set<string>} seen @returns {boolean} */
  function stands(id, seen) {
    if (seen.has(id)) return false;
    seen.add(id);
    const record = records.get(id);
    return Boolean(record && !is_gone(record)) || (corrections.get(id) ?? []).some((by) => stands(by, seen));
  }
  const hidden = new Set();
  for (const [of, by] of corrections) {
    const standing = by.filter((id) => id !== of && stands(id, new Set([of])));
    if (!standing.length) continue;
    hidden.add(of);
    standing.sort((a, b) => (made_order(records.get(a), a) < made_order(records.get(b), b) ? -1 : 1));
    for (const id of standing.slice(0, -1)) hidden.add(id);
  }
  return hidden;
}

/** @param {any} record @param {string} id */
const made_order = (record, id) => `${record?.stamps.supersedes ?? ""} ${id}`;
