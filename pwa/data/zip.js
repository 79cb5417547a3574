/** ZIP archives (PKWARE APPNOTE 6.3.3, sections 4.3.7, 4.3.12, 4.3.16), written uncompressed, read stored or deflated. */

const LOCAL_HEADER = 0x04034b50;
const CENTRAL_HEADER = 0x02014b50;
const END_OF_DIRECTORY = 0x06054b50;
const STORED = 0;
const DEFLATED = 8;
const UTF8_NAMES = 0x0800;
// 1980-01-01, the format's first day: the same content gives the same archive.
const DATE = 0x0021;

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

/** @param {{name: string, bytes: Uint8Array<ArrayBuffer>}[]} files @returns {Blob} */
export function zip(files) {
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
  bytes.length > 21 && new DataView(bytes.buffer, bytes.byteOffset).getUint32(0, true) === LOCAL_HEADER;

/**
 * Every file of a ZIP, by name.
 * @param {Uint8Array<ArrayBuffer>} bytes
 * @returns {Promise<Map<string, Uint8Array<ArrayBuffer>>>}
 * @throws {RangeError} it is cut off, damaged, or packed in another way
 */
export async function unzip(bytes) {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let end = bytes.length - 22;
  while (end >= 0 && view.getUint32(end, true) !== END_OF_DIRECTORY) end--;
  if (end < 0) throw new RangeError("The ZIP is cut off");
  const found = new Map();
  let at = view.getUint32(end + 16, true);
  for (let left = view.getUint16(end + 10, true); left > 0; left--) {
    if (view.getUint32(at, true) !== CENTRAL_HEADER) throw new RangeError("The ZIP's directory is damaged");
    const [method, crc, size] = [
      view.getUint16(at + 10, true),
      view.getUint32(at + 16, true),
      view.getUint32(at + 20, true),
    ];
    const [name_length, extra, comment] = [28, 30, 32].map((place) => view.getUint16(at + place, true));
    const local = view.getUint32(at + 42, true);
    const name = new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + name_length));
    const start = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
    const content = await unpacked(bytes.slice(start, start + size), method, name);
    if (crc32(content) !== crc) throw new RangeError(`${name} is damaged in this ZIP`);
    found.set(name, content);
    at += 46 + name_length + extra + comment;
  }
  return found;
}

/** @param {Uint8Array<ArrayBuffer>} bytes @param {number} method @param {string} name @returns {Promise<Uint8Array<ArrayBuffer>>} */
async function unpacked(bytes, method, name) {
  if (method === STORED) return bytes;
  if (method !== DEFLATED) throw new RangeError(`${name} is packed in a way that is not known here`);
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  try {
    return new Uint8Array(await new Response(stream).arrayBuffer());
  } catch (broken) {
    throw new RangeError(`${name} is damaged in this ZIP`, { cause: broken });
  }
}
