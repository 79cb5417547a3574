/** Seeded random numbers, the same in both languages: Threefry-2x32-20 and Box-Muller. Source: the Python twin. */

const PARITY = 0x1bd11bda;
const word = new Int32Array(2);

/**
 * The two 32-bit words of Threefry-2x32, 20 rounds, of one counter, in an array that the next call overwrites.
 * @param {number} key_1 @param {number} key_2 @param {number} low @param {number} high
 */
export function threefry(key_1, key_2, low, high) {
  const key_3 = PARITY ^ key_1 ^ key_2;
  let a = (low + key_1) | 0;
  let b = (high + key_2) | 0;
  a = (a + b) | 0;
  b = ((b << 13) | (b >>> 19)) ^ a;
  a = (a + b) | 0;
  b = ((b << 15) | (b >>> 17)) ^ a;
  a = (a + b) | 0;
  b = ((b << 26) | (b >>> 6)) ^ a;
  a = (a + b) | 0;
  b = ((b << 6) | (b >>> 26)) ^ a;
  a = (a + key_2) | 0;
  b = (b + key_3 + 1) | 0;
  a = (a + b) | 0;
  b = ((b << 17) | (b >>> 15)) ^ a;
  a = (a + b) | 0;
  b = ((b << 29) | (b >>> 3)) ^ a;
  a = (a + b) | 0;
  b = ((b << 16) | (b >>> 16)) ^ a;
  a = (a + b) | 0;
  b = ((b << 24) | (b >>> 8)) ^ a;
  a = (a + key_3) | 0;
  b = (b + key_1 + 2) | 0;
  a = (a + b) | 0;
  b = ((b << 13) | (b >>> 19)) ^ a;
  a = (a + b) | 0;
  b = ((b << 15) | (b >>> 17)) ^ a;
  a = (a + b) | 0;
  b = ((b << 26) | (b >>> 6)) ^ a;
  a = (a + b) | 0;
  b = ((b << 6) | (b >>> 26)) ^ a;
  a = (a + key_1) | 0;
  b = (b + key_2 + 3) | 0;
  a = (a + b) | 0;
  b = ((b << 17) | (b >>> 15)) ^ a;
  a = (a + b) | 0;
  b = ((b << 29) | (b >>> 3)) ^ a;
  a = (a + b) | 0;
  b = ((b << 16) | (b >>> 16)) ^ a;
  a = (a + b) | 0;
  b = ((b << 24) | (b >>> 8)) ^ a;
  a = (a + key_2) | 0;
  b = (b + key_3 + 4) | 0;
  a = (a + b) | 0;
  b = ((b << 13) | (b >>> 19)) ^ a;
  a = (a + b) | 0;
  b = ((b << 15) | (b >>> 17)) ^ a;
  a = (a + b) | 0;
  b = ((b << 26) | (b >>> 6)) ^ a;
  a = (a + b) | 0;
  b = ((b << 6) | (b >>> 26)) ^ a;
  word[0] = (a + key_3) | 0;
  word[1] = (b + key_1 + 5) | 0;
  return word;
}

/** One word of 32 bits as a number inside (0, 1). @param {number} bits */
const open_unit = (bits) => ((bits >>> 0) + 0.5) / 4294967296;

/**
 * Fills `out` (of even length) with standard normal draws from the counters at `position`.
 * @param {number} seed @param {number} position @param {Float64Array} out
 */
export function normals(seed, position, out) {
  for (let i = 0; i < out.length; i += 2, position += 1) {
    const pair = threefry(seed, 0, position, 0);
    const radius = Math.sqrt(-2 * Math.log(open_unit(pair[0])));
    const angle = 2 * Math.PI * open_unit(pair[1]);
    out[i] = radius * Math.cos(angle);
    out[i + 1] = radius * Math.sin(angle);
  }
  return out;
}

/** One draw in (0, 1) from the counter at `position`. @param {number} seed @param {number} position */
export const uniform = (seed, position) => open_unit(threefry(seed, 0, position, 0)[0]);
