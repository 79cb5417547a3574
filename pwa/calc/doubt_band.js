/** How far an answer may lie below and above the usual, when each uncertain figure is varied alone. */

/**
 * Low and high: the deviations of `others` from `usual`, combined as the root of their squares; never negative.
 * @param {number} usual
 * @param {number[]} others
 * @returns {[number, number]}
 */
export function doubt_band(usual, others) {
  const offs = others.map((other) => other - usual);
  const below = Math.sqrt(offs.filter((off) => off < 0).reduce((sum, off) => sum + off ** 2, 0));
  const above = Math.sqrt(offs.filter((off) => off > 0).reduce((sum, off) => sum + off ** 2, 0));
  return [Math.max(0, usual - below), usual + above];
}
