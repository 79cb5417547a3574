/** SHA-256 (FIPS 180-4) for pages without crypto.subtle, that is plain http; elsewhere the browser's own. */

/** Fractional parts of roots of the first primes, FIPS 180-4 sections 4.2.2 and 5.3.3. @param {number} count @param {number} root */
function fractions(count, root) {
  const found = [];
  for (let candidate = 2; found.length < count; candidate++) {
    let prime = true;
    for (let by = 2; by * by <= candidate; by++) prime &&= candidate % by !== 0;
    if (prime) found.push((candidate ** (1 / root) % 1) * 2 ** 32);
  }
  return Uint32Array.from(found, Math.floor);
}

const ROUND = fractions(64, 3);
const START = fractions(8, 2);

/** @param {number} word @param {number} by */
const turn = (word, by) => (word >>> by) | (word << (32 - by));

/** @param {Uint8Array} bytes @returns {string} 64 hexadecimal digits */
export function sha256_plain(bytes) {
  const padded = new Uint8Array((((bytes.length + 8) >> 6) << 6) + 64);
  padded.set(bytes);
  padded[bytes.length] = 0x80;
  const view = new DataView(padded.buffer);
  view.setUint32(padded.length - 8, Math.floor(bytes.length / 2 ** 29));
  view.setUint32(padded.length - 4, (bytes.length << 3) >>> 0);
  const hash = Uint32Array.from(START);
  const word = new Uint32Array(64);
  for (let block = 0; block < padded.length; block += 64) {
    for (let i = 0; i < 16; i++) word[i] = view.getUint32(block + 4 * i);
    for (let i = 16; i < 64; i++) {
      const [a, b] = [word[i - 15], word[i - 2]];
      word[i] =
        word[i - 16] + (turn(a, 7) ^ turn(a, 18) ^ (a >>> 3)) + word[i - 7] + (turn(b, 17) ^ turn(b, 19) ^ (b >>> 10));
    }
    let [a, b, c, d, e, f, g, h] = hash;
    for (let i = 0; i < 64; i++) {
      const one = (h + (turn(e, 6) ^ turn(e, 11) ^ turn(e, 25)) + ((e & f) ^ (~e & g)) + ROUND[i] + word[i]) | 0;
      const two = ((turn(a, 2) ^ turn(a, 13) ^ turn(a, 22)) + ((a & b) ^ (a & c) ^ (b & c))) | 0;
      [h, g, f, e, d, c, b, a] = [g, f, e, (d + one) | 0, c, b, a, (one + two) | 0];
    }
    [a, b, c, d, e, f, g, h].forEach((add, i) => (hash[i] += add));
  }
  return Array.from(hash, (part) => part.toString(16).padStart(8, "0")).join("");
}

/** @param {ArrayBuffer} buffer @returns {Promise<string>} */
export async function sha256(buffer) {
  const subtle = globalThis.crypto?.subtle;
  if (!subtle) return sha256_plain(new Uint8Array(buffer));
  return Array.from(new Uint8Array(await subtle.digest("SHA-256", buffer)), (byte) =>
    byte.toString(16).padStart(2, "0"),
  ).join("");
}
