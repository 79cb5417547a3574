/** Writing: check what the keeper recorded, then queue all of it in one transaction, or none of it. */
import { InvalidInput, allowed, check_fields } from "../contracts.js";
import { take } from "./clock.js";
import { moved_in } from "./moved.js";
import { uuid7 } from "./uuid7.js";

/** @typedef {{type: "put" | "del" | "restore", kind: string, id?: string, fields?: Record<string, any>}} Change */

export const WRITE_STORES = ["rows", "outbox", "kept", "device"];

/** @param {number} ms @returns {string} YYYY-MM-DDTHH:MM:SS.mmmZ */
export const iso_of = (ms) => new Date(ms).toISOString();

/** Now by the server's clock, as far as this phone knows it (stores: device). @param {any} t @param {import("./phone.js").Phone} phone */
export async function corrected_now(t, phone) {
  return phone.now() + ((await t.device.get("offset"))?.ms ?? 0);
}

/**
 * Queue changes (stores: WRITE_STORES).
 * @param {any} t @param {import("./phone.js").Phone} phone @param {Record<string, any>} kinds shared_schema/records
 * @param {string} room @param {Change[]} changes
 * @returns {Promise<{kind: string, id: string}[]>} the records, in the order given
 * @throws {InvalidInput} with `index` of the change; nothing is queued then
 */
export async function queue(t, phone, kinds, room, changes) {
  const now = await corrected_now(t, phone);
  const identity = await t.device.get("identity");
  const stamps = await take(t, now, identity.device, changes.length);
  const records = [];
  for (const [index, change] of changes.entries()) {
    try {
      const op = await checked(t, phone, kinds, room, change, now, stamps[index]);
      await t.outbox.add({ room, state: "waiting", by: identity.keeper?.id ?? null, at: iso_of(now), ...op });
      records.push({ kind: op.op.kind, id: op.op.id });
    } catch (bad) {
      if (bad instanceof InvalidInput) Object.assign(bad, { index });
      throw bad;
    }
  }
  return records;
}

/** @param {any} t @param {any} phone @param {Record<string, any>} kinds @param {string} room @param {Change} change @param {number} now @param {string} stamp */
async function checked(t, phone, kinds, room, change, now, stamp) {
  const spec = Object.hasOwn(kinds, change.kind) ? kinds[change.kind] : null;
  if (!spec) throw invalid("kind", "is not known here", Object.keys(kinds).join(", "));
  const id = change.id ?? uuid7(now, phone.random);
  const { exists, names, row } = await standing(t, room, change.kind, id);
  let fields = {};
  if (change.type === "put") fields = checked_fields(spec, { ...change.fields }, exists, names, iso_of(now));
  else if (change.type !== "del" && change.type !== "restore")
    throw invalid("type", "is not known here", "put, del, restore");
  else if (!exists) throw invalid("id", "is not known here", `the id of a ${spec.title.toLowerCase()}`);
  return {
    creates: !exists,
    op: {
      op: uuid7(now, phone.random),
      kind: change.kind,
      id,
      type: change.type,
      fields,
      stamp,
      schema: spec.schema,
      ...moved_in(row),
    },
  };
}

/** Whether a record is there already, and the fields it has. @param {any} t @param {string} room @param {string} kind @param {string} id */
async function standing(t, room, kind, id) {
  const key = [room, kind, id];
  const row = await t.rows.get(key);
  const entries = [...(await t.outbox.index("record").getAll(key)), ...(await t.kept.index("record").getAll(key))];
  const puts = entries.filter((entry) => entry.op.type === "put");
  const names = new Set([...Object.keys(row?.fields ?? {}), ...puts.flatMap((entry) => Object.keys(entry.op.fields))]);
  return { exists: Boolean(row) || puts.length > 0, names, row };
}

/**
 * The fields as they will be sent. A change names only what changes; null empties an optional field.
 * @param {any} spec @param {Record<string, any>} given @param {boolean} exists @param {Set<string>} names @param {string} at
 */
function checked_fields(spec, given, exists, names, at) {
  const by_name = Object.fromEntries(spec.fields.map((/** @type {any} */ field) => [field.name, field]));
  if (exists && spec.event) {
    throw invalid("id", "is recorded already: a correction is a new record that supersedes it", "a new id");
  }
  if (!exists && by_name.at && given.at === undefined) given.at = at;
  /** @type {Record<string, any>} */ const emptied = {};
  /** @type {Record<string, any>} */ const filled = {};
  for (const [name, value] of Object.entries(given)) {
    if (value === undefined) continue;
    if (value === null && by_name[name] && !by_name[name].required) emptied[name] = null;
    else filled[name] = value;
  }
  const wanted = exists
    ? spec.fields.filter((/** @type {any} */ field) => field.name in filled || !names.has(field.name))
    : spec.fields;
  const { values, errors } = check_fields(wanted, filled);
  // Defaults fill a new record only: in a change they would overwrite what another keeper set.
  const kept = Object.fromEntries(Object.entries(values).filter(([name]) => !exists || name in filled));
  if (errors.length) throw new InvalidInput(errors.map((one) => worded(one, by_name, spec)));
  if (exists && !Object.keys({ ...kept, ...emptied }).length)
    throw invalid("fields", "is needed", "at least one field to change");
  return exists ? { ...kept, ...emptied } : kept;
}

/** A field refused as unknown names all the kind's fields, not only those of this change. @param {any} error @param {Record<string, any>} by_name @param {any} spec */
function worded(error, by_name, spec) {
  if (by_name[error.field]) return { ...error, allowed: allowed(by_name[error.field]) };
  const nested = error.field.includes(".") && by_name[error.field.split(".")[0]];
  return nested ? error : { ...error, allowed: spec.fields.map((/** @type {any} */ field) => field.name).join(", ") };
}

/** @param {string} field @param {string} message @param {string} allowed_words */
const invalid = (field, message, allowed_words) => new InvalidInput([{ field, message, allowed: allowed_words }]);
