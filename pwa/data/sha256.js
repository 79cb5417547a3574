/** SHA-256 (FIPS 180-4): the browser's own where there is one; plain http pages have none. */
import { bytesToHex, sha256 as hash } from "../vendor/sha256.js";

/**
 * At once, where nothing may be awaited: inside a transaction.
 * @param {Uint8Array} bytes @returns {string} 64 hexadecimal digits
 */
export const sha256_hex = (bytes) => bytesToHex(hash(bytes));

/** @param {ArrayBuffer} buffer @returns {Promise<string>} 64 hexadecimal digits */
export async function sha256(buffer) {
  const subtle = globalThis.crypto?.subtle;
  return subtle
    ? bytesToHex(new Uint8Array(await subtle.digest("SHA-256", buffer)))
    : sha256_hex(new Uint8Array(buffer));
}
