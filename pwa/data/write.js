/** Writing: check what the keeper recorded, then queue all of it in one transaction, or none of it. */
/** @import { Field, FieldError } from "../contracts.js" */
/** @import { Kind } from "../types/contract.js" */
/** @import { Fields, In, RecordKey, Role } from "../types/stores.js" */
import { InvalidInput, allowed, check_fields, kind_of, records } from "../contracts.js";
import { take } from "./clock.js";
import { NotSaved, together } from "./database.js";
import { moved_in } from "./moved.js";
import { uuid7 } from "./uuid7.js";

/** @typedef {{type: "put" | "del" | "restore", kind: string, id?: string, fields?: Fields}} Change */
/** @typedef {import("./phone.js").Phone} Phone */

/** The stores of `queue`. */
export const WRITE_STORES = /** @type {const} */ (["rows", "outbox", "kept", "device"]);

/** Whether a role may write records of a kind. @param {Role | null} role @param {string} kind */
export const may_write = (role, kind) =>
  role !== null && role !== "viewer" && Boolean(records()[kind]?.written_by.includes(role));

/** @param {number} ms @returns {string} YYYY-MM-DDTHH:MM:SS.mmmZ */
export const iso_of = (ms) => new Date(ms).toISOString();

/** Now by the server's clock, as far as this phone knows it, in ms. @param {In<"device">} t @param {Phone} phone */
export async function corrected_now(t, phone) {
  return phone.now() + ((await t.device.get("offset"))?.ms ?? 0);
}

/**
 * Queue changes.
 * @param {In<"rows" | "outbox" | "kept" | "device">} t @param {Phone} phone @param {string} room_id
 * @param {Change[]} changes
 * @returns {Promise<RecordKey[]>} the records, in the order given
 * @throws {InvalidInput} with `index` of the change; then nothing is queued
 */
export async function queue(t, phone, room_id, changes) {
  const [now, identity] = await together([() => corrected_now(t, phone), () => t.device.get("identity")]);
  // The browser has cleared the storage under the open page.
  if (!identity) throw new NotSaved("storage");
  const stamps = await take(t, now, identity.device, changes.length);
  const written = [];
  for (const [index, change] of changes.entries()) {
    try {
      const { creates, op } = await checked(t, phone, room_id, change, now, stamps[index]);
      const by = identity.keeper?.id ?? null;
      await t.outbox.add({ room: room_id, state: "waiting", by, at: iso_of(now), creates, op });
      written.push({ kind: op.kind, id: op.id });
    } catch (failed) {
      if (failed instanceof InvalidInput) Object.assign(failed, { index });
      throw failed;
    }
  }
  return written;
}

/**
 * The op of one change.
 * @param {In<"rows" | "outbox" | "kept">} t @param {Phone} phone @param {string} room_id @param {Change} change
 * @param {number} now @param {string} stamp
 */
async function checked(t, phone, room_id, change, now, stamp) {
  const known = Object.keys(records());
  if (!known.includes(change.kind)) throw invalid("kind", "is not known here", known.join(", "));
  const spec = kind_of(change.kind);
  const id = change.id ?? uuid7(now, phone.random);
  const { exists, names, row } = await standing(t, room_id, change.kind, id);
  /** @type {Fields} */ let fields = {};
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

/**
 * Whether a record is there already, the names of its fields, and its row.
 * @param {In<"rows" | "outbox" | "kept">} t @param {string} room_id @param {string} kind @param {string} id
 */
async function standing(t, room_id, kind, id) {
  const key = [room_id, kind, id];
  const [row, waiting, shared] = await together([
    () => t.rows.get(key),
    () => t.outbox.index("record").getAll(key),
    () => t.kept.index("record").getAll(key),
  ]);
  const puts = [...waiting, ...shared].filter((entry) => entry.op.type === "put");
  const names = new Set([...Object.keys(row?.fields ?? {}), ...puts.flatMap((entry) => Object.keys(entry.op.fields))]);
  return { exists: Boolean(row) || puts.length > 0, names, row };
}

/**
 * The fields as they will be sent. A change names only what changes; null empties an optional field.
 * @param {Kind} spec @param {Fields} given @param {boolean} exists @param {Set<string>} names that it has already
 * @param {string} at
 */
function checked_fields(spec, given, exists, names, at) {
  const by_name = Object.fromEntries(spec.fields.map((field) => [field.name, field]));
  if (exists && spec.event) {
    throw invalid("id", "is recorded already: a correction is a new record that supersedes it", "a new id");
  }
  if (!exists && by_name.at && given.at === undefined) given.at = at;
  /** @type {Fields} */ const emptied = {};
  /** @type {Fields} */ const filled = {};
  for (const [name, value] of Object.entries(given)) {
    if (value === undefined) continue;
    if (value === null && by_name[name] && !by_name[name].required) emptied[name] = null;
    else filled[name] = value;
  }
  const wanted = exists ? spec.fields.filter(({ name }) => name in filled || !names.has(name)) : spec.fields;
  const { values, errors } = check_fields(wanted, filled);
  // Defaults fill a new record only: in a change they would overwrite what another keeper set.
  const kept = Object.fromEntries(Object.entries(values).filter(([name]) => !exists || name in filled));
  if (errors.length) throw new InvalidInput(errors.map((error) => worded(error, by_name, spec)));
  if (exists && !Object.keys({ ...kept, ...emptied }).length)
    throw invalid("fields", "is needed", "at least one field to change");
  return exists ? { ...kept, ...emptied } : kept;
}

/**
 * An error whose `allowed` names all fields of the kind where a field is unknown, not only those of this change.
 * @param {FieldError} error @param {Record<string, Field>} by_name @param {Kind} spec @returns {FieldError}
 */
function worded(error, by_name, spec) {
  if (by_name[error.field]) return { ...error, allowed: allowed(by_name[error.field]) };
  const nested = error.field.includes(".") && by_name[error.field.split(".")[0]];
  return nested ? error : { ...error, allowed: spec.fields.map(({ name }) => name).join(", ") };
}

/** @param {string} field @param {string} message @param {string} allowed_words */
const invalid = (field, message, allowed_words) => new InvalidInput([{ field, message, allowed: allowed_words }]);
