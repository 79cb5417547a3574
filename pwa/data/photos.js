/**
 * Photos: the record travels as any other, its bytes apart, by their hash. A photo that will not go blocks nothing.
 * An entry: {sha256, room, type, bytes, state: "waiting" | "shared" | "needs you", reason?}
 */
import { Refused, Unreachable, ask } from "./api.js";
import { sha256 } from "./sha256.js";

const UPLOAD_LIMIT_MS = 120_000;

/** @typedef {{picture: Blob, fields: Record<string, any>, id?: string}} Picture already shrunk; fields of its record, without hash, size and type */
/** @typedef {{hash: string, type: string, bytes: ArrayBuffer, change: import("./write.js").Change}} Ready */

/** A picture made ready to be kept: hashed, with the write of its record. @param {Picture} picture @returns {Promise<Ready>} */
export async function ready_photo({ picture, fields, id }) {
  const bytes = await picture.arrayBuffer();
  const hash = await sha256(bytes);
  const record = { ...fields, sha256: hash, media_type: picture.type, bytes: bytes.byteLength };
  return {
    hash,
    type: picture.type,
    bytes,
    change: { type: "put", kind: "photo", ...(id ? { id } : {}), fields: record },
  };
}

/** Keep the bytes of pictures that are not here yet (stores: photos). @param {any} t @param {string} room @param {Ready[]} pictures */
export async function keep_photos(t, room, pictures) {
  for (const { hash, type, bytes } of pictures) {
    if (!(await t.photos.getKey([room, hash])))
      await t.photos.put({ sha256: hash, room, type, bytes, state: "waiting" });
  }
}

/**
 * Send the waiting pictures, one at a time.
 * @param {import("./phone.js").Phone} phone @param {string} room @param {string} key
 */
export async function share_photos(phone, room, key) {
  const waiting = await phone.database.read(["photos"], (t) => t.photos.index("state").getAllKeys([room, "waiting"]));
  for (const its of waiting) {
    const photo = await phone.database.read(["photos"], (t) => t.photos.get(its));
    /** @type {Record<string, any>} */ let outcome = { state: "shared" };
    try {
      const bytes = new Blob([photo.bytes], { type: photo.type });
      await ask(phone, {
        method: "PUT",
        path: `/api/v1/rooms/${room}/blobs/${photo.sha256}`,
        key,
        bytes,
        timeout_ms: UPLOAD_LIMIT_MS,
      });
    } catch (failed) {
      if (failed instanceof Unreachable) return;
      if (!(failed instanceof Refused)) throw failed;
      if (failed.status === 401 || failed.status === 410 || failed.status === 429) return;
      outcome = { state: "needs you", reason: failed.problem.title ?? String(failed.status) };
    }
    await phone.database.write(["photos"], async (t) => t.photos.put({ ...(await t.photos.get(its)), ...outcome }));
  }
}

/**
 * A picture's bytes: from this phone, else fetched once and kept.
 * @param {import("./phone.js").Phone} phone @param {string} room @param {string} hash
 * @returns {Promise<Blob | null>} null if it is not here and cannot be had now
 */
export async function photo_bytes(phone, room, hash) {
  const held = await phone.database.read(["photos"], (t) => t.photos.get([room, hash]));
  if (held) return new Blob([held.bytes], { type: held.type });
  const { key } = (await phone.database.read(["device"], (t) => t.device.get("identity"))) ?? {};
  if (!key) return null;
  try {
    const picture = await ask(phone, {
      method: "GET",
      path: `/api/v1/rooms/${room}/blobs/${hash}`,
      key,
      timeout_ms: UPLOAD_LIMIT_MS,
      wants: "bytes",
    });
    const bytes = await picture.arrayBuffer();
    if ((await sha256(bytes)) !== hash) return null;
    await phone.database.write(["photos"], (t) =>
      t.photos.put({ sha256: hash, room, type: picture.type, bytes, state: "shared" }),
    );
    return picture;
  } catch (failed) {
    if (failed instanceof Unreachable || failed instanceof Refused) return null;
    throw failed;
  }
}

/** Let pictures of one state wait again: refused ones, or shared ones that a restored server may lack (stores: photos). @param {any} t @param {string} room @param {"shared" | "needs you"} state */
export async function photos_again(t, room, state) {
  for (const photo of await t.photos.index("state").getAll([room, state]))
    await t.photos.put({ ...photo, state: "waiting", reason: undefined });
}

/** The pictures the server refused, with its reason. @param {import("./phone.js").Phone} phone @param {string} room @returns {Promise<{sha256: string, reason: string}[]>} */
export async function refused_photos(phone, room) {
  const found = await phone.database.read(["photos"], (t) => t.photos.index("state").getAll([room, "needs you"]));
  return found.map((/** @type {any} */ { sha256: hash, reason = "" }) => ({ sha256: hash, reason }));
}

/** Let go of a refused picture's bytes (stores: photos). @param {any} t @param {string} room @param {string} hash @returns {Promise<any>} the entry, for the undo; null if it is not refused */
export async function drop_photo(t, room, hash) {
  const photo = await t.photos.get([room, hash]);
  if (photo?.state !== "needs you") return null;
  await t.photos.delete([room, hash]);
  return photo;
}
