/**
 * The open archive of a room: its form, and reading one that came from anywhere. server/limnary/store/README.md
 * describes it.
 */
/** @import { Kind } from "../types/contract.js" */
/** @import { Fields, Op, RecordKey, Row } from "../types/stores.js" */
/** @import { Bytes } from "./zip.js" */
import { check_fields, kind_of, records } from "../contracts.js";
import { sha256 } from "./sha256.js";
import { ArchiveBroken } from "./archive_broken.js";
import { is_zip, unzip } from "./zip.js";

export { ArchiveBroken };

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

/** @typedef {RecordKey & Pick<Row, "fields" | "stamps" | "deleted" | "restored" | "moved">} ArchiveRow */
/** @typedef {{op: Op, by?: string | null, at?: string}} ArchiveLine */
/** @typedef {{hash: string, type: string, bytes: Bytes}} ArchivePhoto */
/** @typedef {Record<string, unknown>} Unchecked what a line says, before it is checked */
/** @typedef {{value: Unchecked, at: number}} Line with its number */

/**
 * Read an archive and check all of it.
 * @param {Bytes} bytes a ZIP, or its bare `room.jsonl`
 * @returns {Promise<{rows: ArchiveRow[], lines: ArchiveLine[], photos: ArchivePhoto[]}>}
 * @throws {ArchiveBroken}
 */
export async function read_archive(bytes) {
  const files = await files_of(bytes);
  const text = new TextDecoder().decode(files.get(LINES) ?? new Uint8Array());
  /** @type {string[]} */ const wrong = [];
  const [head, ...objects] = text.split("\n").flatMap((line, index) => parsed(line, index + 1, wrong));
  if (head?.value.format !== FORMAT || head.value.version !== VERSION)
    throw new ArchiveBroken([`its first line must say "format": "${FORMAT}", "version": ${VERSION}`]);
  /** @type {ArchiveRow[]} */ const rows = [];
  /** @type {ArchiveLine[]} */ const lines = [];
  for (const { value, at } of objects) {
    const faults = is_object(value.op) ? line_faults(value, value.op) : row_faults(value);
    wrong.push(...faults.map((fault) => `line ${at}: ${fault}`));
    // `any`: the faults were looked for just now, and all of it is thrown away if there is one.
    if (is_object(value.op)) lines.push(/** @type {ArchiveLine} */ (value));
    else rows.push(/** @type {any} */ (value));
  }
  const announced = head.value.rows ?? rows.length;
  if (rows.length !== announced) wrong.push(`${JSON.stringify(announced)} rows are announced, ${rows.length} are here`);
  const photos = await photos_of(files, wrong);
  if (wrong.length) throw new ArchiveBroken(wrong);
  return { rows, lines, photos };
}

/** @param {Bytes} bytes @returns {Promise<Map<string, Bytes>>} by name */
async function files_of(bytes) {
  if (!is_zip(bytes)) return new Map([[LINES, bytes]]);
  try {
    return await unzip(bytes);
  } catch (failed) {
    if (!(failed instanceof RangeError)) throw failed;
    throw new ArchiveBroken([failed.message]);
  }
}

/** @param {Map<string, Bytes>} files @param {string[]} wrong to complete */
async function photos_of(files, wrong) {
  /** @type {ArchivePhoto[]} */ const photos = [];
  for (const [name, content] of files) {
    const [, hash, ending] = /^photos\/([0-9a-f]{64})\.([a-z]+)$/.exec(name) ?? [];
    if (!hash) continue;
    if ((await sha256(content.buffer)) !== hash) wrong.push(`${name} is not the picture its name says`);
    photos.push({ hash, type: TYPES[ending] ?? "application/octet-stream", bytes: content });
  }
  return photos;
}

/**
 * The object on a line; none if the line is empty or wrong.
 * @param {string} line @param {number} at its number @param {string[]} wrong to complete @returns {Line[]}
 */
function parsed(line, at, wrong) {
  if (!line.trim()) return [];
  try {
    const value = JSON.parse(line);
    if (is_object(value)) return [{ value, at }];
  } catch {
    // Reported below.
  }
  wrong.push(`line ${at} is no JSON object`);
  return [];
}

/** @param {Unchecked} row @returns {string[]} */
function row_faults(row) {
  const faults = record_faults(row);
  if (faults.length) return faults;
  const { fields, stamps, deleted = null, restored = null } = row;
  const alike = is_object(fields) && is_object(stamps) && names_of(fields) === names_of(stamps);
  if (!alike) return ["fields and stamps must be objects of the same names"];
  const every = [...Object.values(stamps), ...[deleted, restored].filter((stamp) => stamp !== null)];
  if (!every.every(is_stamp)) return ["a stamp must look like 1767225600000-00000-phone"];
  if (!is_moved(row.moved)) return ["moved must be an object of stamps"];
  return Object.keys(fields).length ? field_faults(kind_of(String(row.kind)), fields, true) : [];
}

/** @param {Unchecked} line @param {Unchecked} op @returns {string[]} */
function line_faults(line, op) {
  const faults = record_faults(op);
  if (faults.length) return faults;
  const known = op.type === "put" || op.type === "del" || op.type === "restore";
  if (!is_id(op.op) || !is_stamp(op.stamp) || !known) return ["op, stamp or type is not one"];
  if (![line.by ?? "", line.at ?? ""].every((word) => typeof word === "string")) return ["by and at must be text"];
  if (!is_moved(op.moved)) return ["moved must be an object of stamps"];
  if (op.type !== "put") return [];
  return is_object(op.fields)
    ? field_faults(kind_of(String(op.kind)), op.fields, false)
    : ["fields must be an object of the fields that change"];
}

/** @param {Unchecked} record @returns {string[]} */
function record_faults({ kind, id }) {
  const known = Object.keys(records());
  if (typeof kind !== "string" || !known.includes(kind)) return [`kind must be one of ${known.join(", ")}`];
  return is_id(id) ? [] : ["id must be 8 to 64 letters, digits, - or _"];
}

/** @param {Kind} spec @param {Fields} fields @param {boolean} all whether required ones must be there */
function field_faults(spec, fields, all) {
  const { errors } = check_fields(spec.fields, filled(fields));
  return errors
    .filter(({ field }) => all || field in fields || field.includes("."))
    .map(({ field, message }) => `${field} ${message}`);
}

/** Whether the fields alone make a whole record. @param {Kind} spec @param {Fields} fields */
export const whole = (spec, fields) => check_fields(spec.fields, filled(fields)).errors.length === 0;

/** The fields that are not emptied. @param {Fields} fields */
const filled = (fields) => Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== null));

/** @param {unknown} value @returns {value is Unchecked} */
const is_object = (value) => typeof value === "object" && value !== null && !Array.isArray(value);
/** @param {unknown} value */
const is_id = (value) => typeof value === "string" && ID.test(value);
/** @param {unknown} value */
const is_stamp = (value) => typeof value === "string" && STAMP.test(value);
/** @param {unknown} value */
const is_moved = (value) => value === undefined || (is_object(value) && Object.values(value).every(is_stamp));
/** @param {Unchecked} object */
const names_of = (object) => JSON.stringify(Object.keys(object).sort());
