/**
 * Least-squares shares of a mixture: each share from 0 to its cap, all shares adding up to 1.
 * The solver tries every face of that polytope (each water absent, at its cap, or free), so the answer is exact.
 * Both languages take the same steps: only + - x / and comparisons, in the same order.
 */

const ABSENT = 0;
const FREE = 1;
const CAPPED = 2;
const SLACK = 1e-9;

/**
 * Shares with the least sum over k of (rows[k] . shares - wanted[k])^2; null if the caps sum to less than 1.
 * Among equally good answers the fewest waters, then the first.
 * @param {number[][]} rows one list for each property, a value for each water
 * @param {number[]} wanted @param {number[]} caps @returns {number[] | null}
 */
export function best_shares(rows, wanted, caps) {
  /** @type {number[] | null} */ let best = null;
  let best_miss = 0;
  let best_used = 0;
  for (const states of faces(caps.length)) {
    const shares = on_face(rows, wanted, caps, states);
    if (!shares) continue;
    let miss = 0;
    rows.forEach((row, k) => {
      let off = -wanted[k];
      row.forEach((value, i) => (off += value * shares[i]));
      miss += off * off;
    });
    const used = shares.filter((share) => share > 0).length;
    if (!best || miss < best_miss - SLACK || (miss <= best_miss + SLACK && used < best_used)) {
      [best, best_miss, best_used] = [shares, miss, used];
    }
  }
  return best;
}

/** All states of `count` waters; the last changes fastest. @param {number} count @returns {Generator<number[]>} */
function* faces(count) {
  if (count === 0) yield [];
  else for (const first of [ABSENT, FREE, CAPPED]) for (const others of faces(count - 1)) yield [first, ...others];
}

/**
 * The best shares of one face, or null if they leave the polytope or are not unique.
 * @param {number[][]} rows @param {number[]} wanted @param {number[]} caps @param {number[]} states
 */
function on_face(rows, wanted, caps, states) {
  const free = states.flatMap((state, i) => (state === FREE ? [i] : []));
  if (free.length === 0 || free.length > rows.length + 1) return null;
  const shares = states.map((state, i) => (state === CAPPED ? caps[i] : 0));
  let rest = 1;
  for (const share of shares) rest -= share;
  const others = free.slice(0, -1);
  const last = free[free.length - 1];
  // The last free water takes what the others leave: an ordinary least-squares problem in the others.
  const slopes = rows.map((row) => others.map((i) => row[i] - row[last]));
  const goals = rows.map((row, k) => {
    let fixed = row[last] * rest;
    row.forEach((value, i) => (fixed += value * shares[i]));
    return wanted[k] - fixed;
  });
  const found = least_squares(slopes, goals, others.length);
  if (!found) return null;
  others.forEach((i, at) => {
    shares[i] = found[at];
    rest -= found[at];
  });
  shares[last] = rest;
  for (const i of free) {
    if (shares[i] < -SLACK || shares[i] > caps[i] + SLACK) return null;
    shares[i] = Math.min(caps[i], Math.max(0, shares[i]));
    if (shares[i] < SLACK) shares[i] = 0;
  }
  return shares;
}

/**
 * Solve the normal equations by elimination with pivots; null if the solution is not unique.
 * @param {number[][]} slopes @param {number[]} goals @param {number} size
 */
function least_squares(slopes, goals, size) {
  /** @type {number[][]} */ const matrix = [];
  for (let a = 0; a < size; a++) {
    const line = [];
    for (let b = 0; b < size; b++) {
      let total = 0;
      for (const slope of slopes) total += slope[a] * slope[b];
      line.push(total);
    }
    let total = 0;
    slopes.forEach((slope, k) => (total += slope[a] * goals[k]));
    matrix.push([...line, total]);
  }
  const largest = Math.max(0, ...matrix.map((line, a) => line[a]));
  for (let column = 0; column < size; column++) {
    let pivot = column;
    for (let line = column + 1; line < size; line++) {
      if (Math.abs(matrix[line][column]) > Math.abs(matrix[pivot][column])) pivot = line;
    }
    if (Math.abs(matrix[pivot][column]) <= SLACK * largest) return null;
    [matrix[column], matrix[pivot]] = [matrix[pivot], matrix[column]];
    for (let line = column + 1; line < size; line++) {
      const factor = matrix[line][column] / matrix[column][column];
      for (let k = column; k <= size; k++) matrix[line][k] -= factor * matrix[column][k];
    }
  }
  const found = new Array(size).fill(0);
  for (let line = size - 1; line >= 0; line--) {
    let total = matrix[line][size];
    for (let k = line + 1; k < size; k++) total -= matrix[line][k] * found[k];
    found[line] = total / matrix[line][line];
  }
  return found;
}
