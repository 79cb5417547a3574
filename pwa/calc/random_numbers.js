/** Seeded random numbers, the same in both languages: Threefry-2x32-20 and Box-Muller. Source: the Python twin. */

const PARITY = 0x1bd11bda;

/**
 * The two 32-bit words of Threefry-2x32, 20 rounds, of the counters from `low` on, as many as `first` holds. The
 * rounds are written out, for a loop over them takes four times as long.
 * @param {number} key_1 @param {number} key_2 @param {number} low @param {number} high
 * @param {Uint32Array} first @param {Uint32Array} second
 */
export function threefry(key_1, key_2, low, high, first, second) {
  const key_3 = PARITY ^ key_1 ^ key_2;
  for (let i = 0; i < first.length; i += 1) {
    let a = (low + i + key_1) | 0;
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
    first[i] = a + key_3;
    second[i] = b + key_1 + 5;
  }
}

/** One word of 32 bits as a number inside (0, 1). @param {number} word */
const open_unit = (word) => (word + 0.5) / 4294967296;

// Cosine and sine of 0 to 4 quarters of a turn.
const ALONG = Float64Array.of(1, 0, -1, 0, 1);
const ACROSS = Float64Array.of(0, 1, 0, -1, 0);
// Reused: each set of words is read before the next is made.
let [words_1, words_2] = [new Uint32Array(1), new Uint32Array(1)];

/**
 * Fills `out` (of even length) with standard normal draws from the counters at `position`.
 * @param {number} seed @param {number} position @param {Float64Array} out
 */
export function normals(seed, position, out) {
  if (words_1.length < out.length / 2) [words_1, words_2] = [0, 1].map(() => new Uint32Array(out.length / 2));
  const [first, second] = [words_1, words_2].map((words) => words.subarray(0, out.length / 2));
  threefry(seed, 0, position, 0, first, second);
  for (let i = 0; i < first.length; i += 1) {
    const radius = Math.sqrt(-2 * Math.log(open_unit(first[i])));
    // Of the angle only what lies beyond the nearest quarter turn needs a sine; its cosine follows from that.
    const turns = open_unit(second[i]);
    const quarters = (4 * turns + 0.5) | 0;
    const sine = Math.sin(2 * Math.PI * (turns - quarters / 4));
    const cosine = Math.sqrt(1 - sine * sine);
    out[2 * i] = radius * (ALONG[quarters] * cosine - ACROSS[quarters] * sine);
    out[2 * i + 1] = radius * (ALONG[quarters] * sine + ACROSS[quarters] * cosine);
  }
  return out;
}

/** One draw in (0, 1) from the counter at `position`. @param {number} seed @param {number} position */
export function uniform(seed, position) {
  const word = new Uint32Array(1);
  threefry(seed, 0, position, 0, word, new Uint32Array(1));
  return open_unit(word[0]);
}
