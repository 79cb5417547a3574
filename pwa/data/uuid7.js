/** Ids: UUID version 7 (RFC 9562, section 5.7), 48 bits of milliseconds, then random bits. */

/**
 * @param {number} now_ms milliseconds since 1970, UTC
 * @param {(count: number) => Uint8Array} random gives `count` random bytes
 * @returns {string} 36 characters, lower case
 */
export function uuid7(now_ms, random) {
  const bytes = new Uint8Array(16);
  bytes.set(random(10), 6);
  let rest = Math.max(0, Math.floor(now_ms));
  for (let place = 5; place >= 0; place--) {
    bytes[place] = rest % 256;
    rest = Math.floor(rest / 256);
  }
  bytes[6] = 0x70 | (bytes[6] & 0x0f);
  bytes[8] = 0x80 | (bytes[8] & 0x3f);
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}
