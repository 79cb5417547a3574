/** The open archive of a room: its form, and reading one that came from anywhere. DEVELOPERS.md describes it. */
import { check_fields } from "../contracts.js";
import { sha256 } from "./sha256.js";
import { is_zip, unzip } from "./zip.js";

export const FORMAT = "limnary-room";
export const VERSION = 1;
export const LINES = "room.jsonl";
export const READINGS = "readings.csv";
export const ENDINGS = /** @type {Record<string, string>} */ ({
  "image/jpeg": "jpg",
  "image/png": "png",
  "image/webp": "webp",
});
const TYPES = Object.fromEntries(Object.entries(ENDINGS).map(([type, ending]) => [ending, type]));
const ID = /^[A-Za-z0-9_-]{8,64}$/;
const STAMP = /^[0-9]{13}-[0-9]{5}-[A-Za-z0-9_-]{1,64}$/;
const MOST_WRONG = 20;

/** The archive is not whole; nothing of it was taken in. `lines` says what is wrong where. */
export class ArchiveBroken extends Error {
  /** @param {string[]} lines */
  constructor(lines) {
    const said = lines.slice(0, MOST_WRONG);
    super(`This is not a whole room archive, and nothing of it was taken in: ${said.join("; ")}`);
    this.lines = said;
  }
}

/**
 * Read and check an archive whole.
 * @param {Record<string, any>} kinds shared_schema/records @param {Uint8Array<ArrayBuffer>} bytes a ZIP, or its bare `room.jsonl`
 * @returns {Promise<{rows: any[], lines: any[], photos: {hash: string, type: string, bytes: Uint8Array<ArrayBuffer>}[]}>}
 * @throws {ArchiveBroken}
 */
export async function read_archive(kinds, bytes) {
  /** @type {Map<string, Uint8Array<ArrayBuffer>>} */ let files;
  try {
    files = is_zip(bytes) ? await unzip(bytes) : new Map([[LINES, bytes]]);
  } catch (broken) {
    throw new ArchiveBroken([/** @type {Error} */ (broken).message]);
  }
  const text = new TextDecoder().decode(files.get(LINES) ?? new Uint8Array());
  /** @type {string[]} */ const wrong = [];
  const objects = text
    .split("\n")
    .map((line, at) => parsed(line, at + 1, wrong))
    .filter((one) => one !== null);
  const head = objects.shift()?.value;
  if (head?.format !== FORMAT || head?.version !== VERSION)
    throw new ArchiveBroken([`its first line must say "format": "${FORMAT}", "version": ${VERSION}`]);
  const lines = objects.filter(({ value }) => typeof value.op === "object" && value.op !== null);
  const rows = objects.filter((one) => !lines.includes(one));
  for (const { value, at } of rows) wrong.push(...row_faults(kinds, value).map((fault) => `line ${at}: ${fault}`));
  for (const { value, at } of lines) wrong.push(...op_faults(kinds, value.op).map((fault) => `line ${at}: ${fault}`));
  if (rows.length !== (head.rows ?? rows.length))
    wrong.push(`${head.rows} rows are announced, ${rows.length} are here`);
  const photos = [];
  for (const [name, content] of files) {
    const [, hash, ending] = /^photos\/([0-9a-f]{64})\.([a-z]+)$/.exec(name) ?? [];
    if (!hash) continue;
    if ((await sha256(content.buffer)) !== hash) wrong.push(`${name} is not the picture its name says`);
    photos.push({ hash, type: TYPES[ending] ?? "application/octet-stream", bytes: content });
  }
  if (wrong.length) throw new ArchiveBroken(wrong);
  return { rows: rows.map(({ value }) => value), lines: lines.map(({ value }) => value), photos };
}

/** @param {string} line @param {number} at @param {string[]} wrong @returns {{value: any, at: number} | null} */
function parsed(line, at, wrong) {
  if (!line.trim()) return null;
  try {
    const value = JSON.parse(line);
    if (typeof value === "object" && value !== null && !Array.isArray(value)) return { value, at };
  } catch {
    // Said below.
  }
  wrong.push(`line ${at} is no JSON object`);
  return null;
}

/** @param {Record<string, any>} kinds @param {any} row @returns {string[]} */
function row_faults(kinds, row) {
  const faults = record_faults(kinds, row);
  if (faults.length) return faults;
  const { fields, stamps } = row;
  const objects = [fields, stamps].every((one) => typeof one === "object" && one !== null);
  if (!objects || JSON.stringify(Object.keys(fields).sort()) !== JSON.stringify(Object.keys(stamps).sort()))
    return ["fields and stamps must be objects of the same names"];
  const every = [...Object.values(stamps), row.deleted, row.restored].filter(
    (stamp) => stamp !== null && stamp !== undefined,
  );
  if (!every.every((stamp) => STAMP.test(String(stamp)))) return ["a stamp must look like 1767225600000-00000-phone"];
  return Object.keys(fields).length ? field_faults(kinds[row.kind], fields, true) : [];
}

/** @param {Record<string, any>} kinds @param {any} op @returns {string[]} */
function op_faults(kinds, op) {
  const faults = record_faults(kinds, op);
  if (faults.length) return faults;
  if (!ID.test(op.op) || !STAMP.test(op.stamp) || !["put", "del", "restore"].includes(op.type))
    return ["op, stamp or type is not one"];
  return op.type === "put" ? field_faults(kinds[op.kind], op.fields ?? {}, false) : [];
}

/** @param {Record<string, any>} kinds @param {any} record @returns {string[]} */
function record_faults(kinds, record) {
  if (!Object.hasOwn(kinds, record.kind)) return [`kind must be one of ${Object.keys(kinds).join(", ")}`];
  return typeof record.id === "string" && ID.test(record.id) ? [] : ["id must be 8 to 64 letters, digits, - or _"];
}

/** @param {any} spec @param {Record<string, any>} fields @param {boolean} all whether required ones must be there */
function field_faults(spec, fields, all) {
  const given = Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== null));
  const { errors } = check_fields(spec.fields, given);
  return errors
    .filter(({ field }) => all || field in fields || field.includes("."))
    .map(({ field, message }) => `${field} ${message}`);
}

/** Whether the fields alone make a whole record. @param {any} spec @param {Record<string, any>} fields */
export const whole = (spec, fields) =>
  check_fields(spec.fields, Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== null))).errors
    .length === 0;
