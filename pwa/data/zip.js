/**
 * ZIP archives (PKWARE APPNOTE 6.3.3, sections 4.3.7, 4.3.12, 4.3.16): written uncompressed, read stored or deflated.
 */

const LOCAL_HEADER = 0x04034b50;
const CENTRAL_HEADER = 0x02014b50;
const END_OF_DIRECTORY = 0x06054b50;
const END_LENGTH = 22;
const LONGEST_COMMENT = 0xffff;
const STORED = 0;
const DEFLATED = 8;
const UTF8_NAMES = 0x0800;
// 1980-01-01, the format's first day: the same content gives the same archive.
const DATE = 0x0021;

/**
 * A ZIP is refused if it unpacks to more than its own size and this many bytes, or holds more files than this.
 * Pictures are stored as they are, so what is beyond the ZIP's own size is text: this allows about 300,000 records.
 * Without a limit, a ZIP of some kilobytes can fill the phone's memory.
 */
const MOST_MORE_BYTES = 128_000_000;
const MOST_FILES = 20_000;
/** The format counts files in 16 bits: with more, a reader would find only some of them. */
const MOST_WRITTEN = 0xffff;
/** Deflate shrinks by 1,032 at most (zlib): a slice of this many bytes inflates to 4 MB at most. */
const SLICE_BYTES = 4096;

/** @typedef {Uint8Array<ArrayBuffer>} Bytes */
/** @typedef {{name: string, method: number, crc: number, packed: number, size: number, local: number}} Listed */

const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? 0xedb88320 ^ (rest >>> 1) : rest >>> 1;
  return rest;
});

/** CRC-32 as ISO 3309 and ZIP use it. @param {Uint8Array} bytes */
export function crc32(bytes) {
  let crc = 0xffffffff;
  for (const byte of bytes) crc = TABLE[(crc ^ byte) & 0xff] ^ (crc >>> 8);
  return (crc ^ 0xffffffff) >>> 0;
}

/**
 * @param {{name: string, bytes: Bytes}[]} files @returns {Blob}
 * @throws {RangeError} there are more files than a ZIP can count
 */
export function zip(files) {
  if (files.length > MOST_WRITTEN)
    throw new RangeError(`A ZIP holds at most ${MOST_WRITTEN} files, and this one would hold ${files.length}`);
  const parts = [];
  const directory = [];
  let offset = 0;
  for (const { name, bytes } of files) {
    const encoded = new TextEncoder().encode(name);
    // version needed, flags, method, time, date, CRC, sizes, name length, extra length: alike in both headers.
    const shared = [
      [20, 2],
      [UTF8_NAMES, 2],
      [STORED, 2],
      [0, 2],
      [DATE, 2],
      [crc32(bytes), 4],
      [bytes.length, 4],
      [bytes.length, 4],
      [encoded.length, 2],
      [0, 2],
    ];
    const local = [packed([[LOCAL_HEADER, 4], ...shared]), encoded, bytes];
    parts.push(...local);
    directory.push(
      packed([[CENTRAL_HEADER, 4], [20, 2], ...shared, [0, 2], [0, 2], [0, 2], [0, 4], [offset, 4]]),
      encoded,
    );
    offset += local.reduce((sum, part) => sum + part.length, 0);
  }
  const size = directory.reduce((sum, part) => sum + part.length, 0);
  const end = packed([
    [END_OF_DIRECTORY, 4],
    [0, 2],
    [0, 2],
    [files.length, 2],
    [files.length, 2],
    [size, 4],
    [offset, 4],
    [0, 2],
  ]);
  return new Blob([...parts, ...directory, end], { type: "application/zip" });
}

/** Numbers with their widths in bytes, little-endian. @param {number[][]} fields */
function packed(fields) {
  const bytes = new Uint8Array(fields.reduce((sum, [, width]) => sum + width, 0));
  let at = 0;
  for (const [value, width] of fields)
    for (let shift = 0; shift < width; shift++) bytes[at++] = value / 2 ** (8 * shift);
  return bytes;
}

/** Whether these are the first bytes of a ZIP. @param {Uint8Array} bytes */
export const is_zip = (bytes) =>
  bytes.length >= END_LENGTH && new DataView(bytes.buffer, bytes.byteOffset).getUint32(0, true) === LOCAL_HEADER;

/**
 * Every file of a ZIP, by name.
 * @param {Bytes} bytes
 * @returns {Promise<Map<string, Bytes>>}
 * @throws {RangeError} it is cut off, damaged, too large, or packed in another way
 */
export async function unzip(bytes) {
  const listed = directory_of(bytes);
  const total = listed.reduce((sum, { size }) => sum + size, 0);
  if (total > bytes.length + MOST_MORE_BYTES)
    throw new RangeError(
      `The ZIP unpacks to more than ${MOST_MORE_BYTES / 1e6} MB beyond its own size, and no more than that is taken in`,
    );
  /** @type {Map<string, Bytes>} */ const found = new Map();
  for (const file of listed) found.set(file.name, await unpacked(bytes, file));
  return found;
}

/** What the ZIP's directory lists. @param {Bytes} bytes @returns {Listed[]} */
function directory_of(bytes) {
  const { u16, u32 } = numbers(bytes);
  let end = bytes.length - END_LENGTH;
  const first = Math.max(0, end - LONGEST_COMMENT);
  while (end >= first && u32(end) !== END_OF_DIRECTORY) end--;
  if (end < first) throw new RangeError("The ZIP is cut off");
  const count = u16(end + 10);
  if (count > MOST_FILES)
    throw new RangeError(`The ZIP holds ${count} files, and no more than ${MOST_FILES} are taken in`);
  /** @type {Listed[]} */ const listed = [];
  let at = u32(end + 16);
  for (let left = count; left > 0; left--) {
    if (u32(at) !== CENTRAL_HEADER) throw new RangeError("The ZIP's directory is damaged");
    const [name_length, extra, comment] = [u16(at + 28), u16(at + 30), u16(at + 32)];
    listed.push({
      name: new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + name_length)),
      method: u16(at + 10),
      crc: u32(at + 16),
      packed: u32(at + 20),
      size: u32(at + 24),
      local: u32(at + 42),
    });
    at += 46 + name_length + extra + comment;
  }
  return listed;
}

/** Readers of little-endian numbers. @param {Bytes} bytes */
function numbers(bytes) {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const within = (/** @type {number} */ at, /** @type {number} */ width) => {
    if (at + width > bytes.length) throw new RangeError("The ZIP is cut off");
    return at;
  };
  return {
    u16: (/** @type {number} */ at) => view.getUint16(within(at, 2), true),
    u32: (/** @type {number} */ at) => view.getUint32(within(at, 4), true),
  };
}

/** The content of one file. @param {Bytes} bytes of the ZIP @param {Listed} file @returns {Promise<Bytes>} */
async function unpacked(bytes, { name, method, crc, packed: length, size, local }) {
  const { u16 } = numbers(bytes);
  const start = local + 30 + u16(local + 26) + u16(local + 28);
  if (method !== STORED && method !== DEFLATED)
    throw new RangeError(`${name} is packed in a way that is not known here`);
  const part = bytes.slice(start, start + length);
  const content = method === STORED ? part : await inflated(part, size);
  if (content?.length !== size || crc32(content) !== crc) throw new RangeError(`${name} is damaged in this ZIP`);
  return content;
}

/**
 * Inflate to exactly `size` bytes; null if they are more or fewer, or damaged. It stops at `size`, and the memory it
 * takes is bounded: engines may inflate a whole chunk at once, so the chunks are small.
 * @param {Bytes} bytes @param {number} size @returns {Promise<Bytes | null>}
 */
async function inflated(bytes, size) {
  if (!inflates()) return inflated_by_hand(bytes, size);
  const reader = in_slices(bytes).pipeThrough(new DecompressionStream("deflate-raw")).getReader();
  const content = new Uint8Array(size);
  let filled = 0;
  try {
    for (let read = await reader.read(); !read.done; read = await reader.read()) {
      if (filled + read.value.length > size) return null;
      content.set(read.value, filled);
      filled += read.value.length;
    }
    return filled === size ? content : null;
  } catch {
    return null;
  } finally {
    // A stream that has failed cannot be cancelled; it needs it no more.
    void reader.cancel().catch(() => {});
  }
}

/** Whether the browser inflates by itself; before iOS 16.4 none does. */
function inflates() {
  try {
    return Boolean(new DecompressionStream("deflate-raw"));
  } catch {
    return false;
  }
}

/** @param {Bytes} bytes @param {number} size @returns {Promise<Bytes | null>} */
async function inflated_by_hand(bytes, size) {
  const { inflateSync } = await import("../vendor/inflate.js");
  try {
    return inflateSync(bytes, { out: new Uint8Array(size) });
  } catch {
    return null;
  }
}

/** @param {Bytes} bytes @returns {ReadableStream<Bytes>} */
function in_slices(bytes) {
  let at = 0;
  return new ReadableStream({
    pull(controller) {
      if (at >= bytes.length) return controller.close();
      controller.enqueue(bytes.slice(at, at + SLICE_BYTES));
      at += SLICE_BYTES;
    },
  });
}
