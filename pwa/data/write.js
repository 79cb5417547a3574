/** Writing: check what the keeper recorded, then queue all of it in one transaction, or none of it. */
/** @import { Field, FieldError } from "../contracts.js" */
/** @import { Kind } from "../types/contract.js" */
/** @import { Entry, Fields, In, KeptEntry, Role } from "../types/stores.js" */
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

/** @typedef {Awaited<ReturnType<typeof standing>>} Standing */

/**
 * Queue changes. What they need is read at once, and what they change is stored at once: each wait for the storage
 * takes a way to the browser and back.
 * @param {In<"rows" | "outbox" | "kept" | "device">} t @param {Phone} phone @param {string} room_id
 * @param {Change[]} changes
 * @returns {Promise<Standing[]>} the records as they are now, in the order of the changes
 * @throws {InvalidInput} with `index` of the change; then nothing is queued
 */
export async function queue(t, phone, room_id, changes) {
  const [now, identity, there] = await together([
    () => corrected_now(t, phone),
    () => t.device.get("identity"),
    () => all_standing(t, room_id, changes),
  ]);
  // The browser has cleared the storage under the open page.
  if (!identity) throw new NotSaved("storage");
  const stamps = await take(t, now, identity.device, changes.length);
  /** @type {{entry: Omit<Entry, "n">, record: Standing}[]} */ const made = [];
  for (const [index, change] of changes.entries()) {
    try {
      const id = change.id ?? uuid7(now, phone.random);
      const record = there.get(name_of(change.kind, id)) ?? unknown(change.kind, id);
      const { creates, op } = checked(phone, { ...change, id }, record, now, stamps[index]);
      const by = identity.keeper?.id ?? null;
      made.push({ entry: { room: room_id, state: "waiting", by, at: iso_of(now), creates, op }, record });
      there.set(name_of(op.kind, id), record);
      if (op.type === "put") add_names(record, op.fields);
    } catch (failed) {
      if (failed instanceof InvalidInput) Object.assign(failed, { index });
      throw failed;
    }
  }
  const numbers = await together(
    made.map(
      ({ entry }) =>
        () =>
          t.outbox.add(entry),
    ),
  );
  for (const [index, { entry, record }] of made.entries())
    record.entries.push(/** @type {Entry} */ ({ ...entry, n: numbers[index] }));
  return made.map(({ record }) => record);
}

/**
 * The op of one change.
 * @param {Phone} phone @param {Change & {id: string}} change @param {Standing} record that it changes
 * @param {number} now @param {string} stamp
 */
function checked(phone, change, { exists, names, row }, now, stamp) {
  const known = Object.keys(records());
  if (!known.includes(change.kind)) throw invalid("kind", "is not known here", known.join(", "));
  const spec = kind_of(change.kind);
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
      id: change.id,
      type: change.type,
      fields,
      stamp,
      schema: spec.schema,
      ...moved_in(row),
    },
  };
}

/**
 * The records that changes name, by kind and id.
 * @param {In<"rows" | "outbox" | "kept">} t @param {string} room_id @param {Change[]} changes
 * @returns {Promise<Map<string, Standing>>}
 */
async function all_standing(t, room_id, changes) {
  const named = changes.flatMap(({ kind, id }) =>
    id !== undefined && Object.hasOwn(records(), kind) ? { kind, id } : [],
  );
  const found = await Promise.all(named.map(({ kind, id }) => standing(t, room_id, kind, id)));
  return new Map(found.map((record) => [name_of(record.kind, record.id), record]));
}

/**
 * Whether a record is there already, the names of its fields, its row, and its ops.
 * @param {In<"rows" | "outbox" | "kept">} t @param {string} room_id @param {string} kind @param {string} id
 */
async function standing(t, room_id, kind, id) {
  const key = [room_id, kind, id];
  const [row, waiting, shared] = await together([
    () => t.rows.get(key),
    () => t.outbox.index("record").getAll(key),
    () => t.kept.index("record").getAll(key),
  ]);
  /** @type {(Entry | KeptEntry)[]} */ const entries = [...shared, ...waiting];
  const record = { kind, id, row, entries, exists: Boolean(row), names: new Set(Object.keys(row?.fields ?? {})) };
  for (const { op } of entries) if (op.type === "put") add_names(record, op.fields);
  return record;
}

/** A record that nobody has written yet. @param {string} kind @param {string} id @returns {Standing} */
const unknown = (kind, id) => ({ kind, id, row: undefined, entries: [], exists: false, names: new Set() });

/** @param {Pick<Standing, "exists" | "names">} record @param {Fields} fields that are put into it */
function add_names(record, fields) {
  record.exists = true;
  for (const name of Object.keys(fields)) record.names.add(name);
}

/** @param {string} kind @param {string} id */
const name_of = (kind, id) => `${kind}/${id}`;

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
