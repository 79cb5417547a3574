/**
 * Photos: the record travels as any other, its bytes apart, by their hash. A photo that cannot be sent holds up
 * nothing else.
 */
/** @import { Fields, In, PhotoEntry } from "../types/stores.js" */
/** @import { Phone } from "./phone.js" */
import { Refused, Unreachable, ask } from "./api.js";
import { sha256 } from "./sha256.js";

const UPLOAD_LIMIT_MS = 120_000;
/** After these no further picture is sent now: signed out, membership ended, too often. */
const STOP_AT = [401, 410, 429];

/**
 * A picture, already shrunk; `fields` of its record, without hash, size and type.
 * @typedef {{picture: Blob, fields: Fields, id?: string}} Picture
 */
/** @typedef {{hash: string, type: string, bytes: ArrayBuffer, change: import("./write.js").Change}} Ready */

/** Hash a picture and make the write of its record. @param {Picture} picture @returns {Promise<Ready>} */
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

/**
 * Store the bytes of pictures that are not here yet.
 * @param {In<"photos">} t @param {string} room_id @param {Ready[]} pictures
 */
export async function keep_photos(t, room_id, pictures) {
  for (const { hash, type, bytes } of pictures) {
    if (!(await t.photos.getKey([room_id, hash])))
      await t.photos.put({ sha256: hash, room: room_id, type, bytes, state: "waiting" });
  }
}

/**
 * Send the waiting pictures, one at a time.
 * @param {Phone} phone @param {string} room_id @param {string} key @param {() => void} [told] after each
 */
export async function share_photos(phone, room_id, key, told = () => {}) {
  const waiting = await phone.database.read(["photos"], (t) =>
    t.photos.index("state").getAllKeys([room_id, "waiting"]),
  );
  for (const photo_key of waiting) {
    const photo = await phone.database.read(["photos"], (t) => t.photos.get(photo_key));
    if (!photo) continue;
    /** @type {Partial<PhotoEntry>} */ let outcome = { state: "shared" };
    try {
      await ask(phone, {
        method: "PUT",
        path: `/api/v1/rooms/${room_id}/blobs/${photo.sha256}`,
        key,
        bytes: new Blob([photo.bytes], { type: photo.type }),
        timeout_ms: UPLOAD_LIMIT_MS,
      });
    } catch (failed) {
      if (failed instanceof Unreachable) return;
      if (!(failed instanceof Refused)) throw failed;
      if (STOP_AT.includes(failed.status)) return;
      outcome = { state: "needs you", reason: failed.problem.title ?? String(failed.status) };
    }
    await phone.database.write(["photos"], async (t) => {
      const held = await t.photos.get(photo_key);
      if (held) await t.photos.put({ ...held, ...outcome });
    });
    told();
  }
}

/**
 * A picture's bytes: from this phone, else fetched once and stored.
 * @param {Phone} phone @param {string} room_id @param {string} hash
 * @returns {Promise<Blob | null>} null if it is not here and cannot be fetched now
 */
export async function photo_bytes(phone, room_id, hash) {
  const held = await phone.database.read(["photos"], (t) => t.photos.get([room_id, hash]));
  if (held) return new Blob([held.bytes], { type: held.type });
  const { key } = (await phone.database.read(["device"], (t) => t.device.get("identity"))) ?? {};
  if (!key) return null;
  try {
    /** @type {Blob} */
    const picture = await ask(phone, {
      method: "GET",
      path: `/api/v1/rooms/${room_id}/blobs/${hash}`,
      key,
      timeout_ms: UPLOAD_LIMIT_MS,
      wants: "bytes",
    });
    const bytes = await picture.arrayBuffer();
    if ((await sha256(bytes)) !== hash) return null;
    await phone.database.write(["photos"], (t) =>
      t.photos.put({ sha256: hash, room: room_id, type: picture.type, bytes, state: "shared" }),
    );
    return picture;
  } catch (failed) {
    if (failed instanceof Unreachable || failed instanceof Refused) return null;
    throw failed;
  }
}

/**
 * Let pictures of one state wait again: refused ones, or shared ones that a restored server may lack.
 * @param {In<"photos">} t @param {string} room_id @param {"shared" | "needs you"} state
 */
export async function photos_again(t, room_id, state) {
  for (const photo of await t.photos.index("state").getAll([room_id, state]))
    await t.photos.put({ ...photo, state: "waiting", reason: undefined });
}

/** The pictures that the server refused, with its reason. @param {Phone} phone @param {string} room_id */
export async function refused_photos(phone, room_id) {
  const found = await phone.database.read(["photos"], (t) => t.photos.index("state").getAll([room_id, "needs you"]));
  return found.map(({ sha256: hash, reason = "" }) => ({ sha256: hash, reason }));
}

/**
 * Delete a refused picture's bytes.
 * @param {In<"photos">} t @param {string} room_id @param {string} hash
 * @returns {Promise<PhotoEntry | null>} the entry, for the undo; null if it is not refused
 */
export async function drop_photo(t, room_id, hash) {
  const photo = await t.photos.get([room_id, hash]);
  if (photo?.state !== "needs you") return null;
  await t.photos.delete([room_id, hash]);
  return photo;
}
