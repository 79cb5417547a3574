/** A round of many tanks: its groups by place, and finding one of them by name or number. Pure. */
import { plain } from "../figures/plain_text.js";

/** @import { Tank } from "../types/views.js" */

/** From here on the Round shows steady tanks by one line each (assumption: more no longer fit a look). */
export const MANY = 12;
/** How many found tanks are shown. */
const FOUND = 12;

/** @typedef {{place: string, tanks: Tank[]}} Group `place` is "" for tanks of which none is recorded */

/**
 * The tanks of each place, in the order of the walk.
 * @param {readonly Tank[]} tanks in walking order
 * @returns {Group[]} those without a place last
 */
export function by_place(tanks) {
  /** @type {Map<string, Tank[]>} */ const groups = new Map();
  for (const tank of tanks) {
    const place = tank.place?.trim() ?? "";
    if (!groups.get(place)?.push(tank)) groups.set(place, [tank]);
  }
  return [...[...groups].map(([place, own]) => ({ place, tanks: own }))].sort(
    (a, b) => Number(a.place === "") - Number(b.place === ""),
  );
}

/**
 * Tanks by name or by their number in the walk; a number found exactly comes first, then names that begin so.
 * @param {readonly Tank[]} tanks in walking order @param {string} words
 * @returns {{tank: Tank, number: number}[]}
 */
export function find_tanks(tanks, words) {
  const wanted = plain(words).trim();
  if (!wanted) return [];
  const rank = (/** @type {Tank} */ tank, /** @type {number} */ number) => {
    const name = plain(tank.name);
    if (String(number) === wanted) return 3;
    return name.startsWith(wanted) ? 2 : name.includes(wanted) ? 1 : 0;
  };
  return [...tanks.map((tank, i) => ({ tank, number: i + 1, rank: rank(tank, i + 1) })).filter((one) => one.rank > 0)]
    .sort((a, b) => b.rank - a.rank || a.number - b.number)
    .slice(0, FOUND)
    .map(({ tank, number }) => ({ tank, number }));
}
