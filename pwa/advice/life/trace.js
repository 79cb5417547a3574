/**
 * Which tanks shared water, plants, animals or tools, and which tank was exposed to which: forward in time only,
 * directly or through one other tank. Pure.
 */
import { DAY } from "../../figures/durations.js";

/** @import { View } from "../../types/views.js" */

/** @typedef {"water" | "plants" | "animals" | "tool"} Way */
/**
 * @typedef {{id: string, at: string, from: string, to: string, way: Way, what: string}} Shared `from`, `to`: tanks;
 * `what`: the species or the tool
 */
/**
 * @typedef {{tank: string, steps: 1 | 2, by: Shared[], at: string}} Met `by`: what reached it (or came from it) last,
 * oldest first; `at`: when it first could have (or last)
 */

/**
 * Each time that one tank's water reached another, oldest first; the two records of a move count once.
 * @param {{water_changes: View<"water_change">[], plantings: View<"planting">[], stock_changes: View<"stock_change">[],
 *   shared_tools: View<"shared_tool">[]}} records of the room
 * @returns {Shared[]}
 */
export function shared_between({ water_changes, plantings, stock_changes, shared_tools }) {
  const found = [
    ...water_changes.map((one) => link(one, one.from_tank, one.tank, "water", "")),
    ...plantings.map((one) => link_of_move(one, "plants")),
    ...stock_changes.map((one) => link_of_move(one, "animals")),
    ...shared_tools.flatMap((one) => [
      one.order === "there" ? null : link(one, one.tank, one.other_tank, "tool", one.tool),
      one.order === "here" ? null : link(one, one.other_tank, one.tank, "tool", one.tool),
    ]),
  ];
  /** @type {Map<string, Shared>} */ const once = new Map();
  for (const one of found) if (one) once.set([one.at, one.from, one.to, one.way, one.what].join(" "), one);
  return [...once.values()].sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : a.id < b.id ? -1 : 1));
}

/** @param {View<"planting" | "stock_change">} one @param {Way} way */
function link_of_move(one, way) {
  if (one.change === "move_in") return link(one, one.other_tank, one.tank, way, one.species);
  return one.change === "move_out" ? link(one, one.tank, one.other_tank, way, one.species) : null;
}

/**
 * @param {{id: string, at: string}} one
 * @param {string | undefined} from
 * @param {string | undefined} to
 * @param {Way} way
 * @param {string} what
 * @returns {Shared | null}
 */
const link = ({ id, at }, from, to, way, what) => (from && to && from !== to ? { id, at, from, to, way, what } : null);

/**
 * `to`: the tanks that something in this tank could have reached within the last days; `from`: those that it could
 * have come from. Of two links at the same moment the careful answer is given: the first passes on to the second.
 * @param {string} tank
 * @param {Shared[]} shared as `shared_between` gives it
 * @param {{now: number, days: number}} window `now` in ms
 * @returns {{to: Met[], from: Met[]}} nearest first, then in the order of time (`from`: the latest first)
 */
export function trace(tank, shared, { now, days }) {
  const start = new Date(now - days * DAY).toISOString();
  const within = shared.filter(({ at }) => at >= start);
  return {
    to: reached(tank, within, "from", "to", (first, then) => first.at <= then.at),
    // The same walk backwards, against the links and against time.
    from: reached(tank, [...within].reverse(), "to", "from", (first, then) => first.at >= then.at),
  };
}

/**
 * @param {string} tank
 * @param {Shared[]} shared in the order of the walk
 * @param {"from" | "to"} near
 * @param {"from" | "to"} far
 * @param {(first: Shared, then: Shared) => boolean} follows whether `then` comes after `first` on the walk
 */
function reached(tank, shared, near, far, follows) {
  /** @type {Map<string, Met>} */ const met = new Map();
  const meet = (/** @type {Shared} */ one, /** @type {1 | 2} */ steps) => {
    const before = met.get(one[far]);
    if (!before) met.set(one[far], { tank: one[far], steps, by: [one], at: one.at });
    else if (before.steps === steps) before.by.push(one);
  };
  const direct = shared.filter((one) => one[near] === tank);
  for (const one of direct) meet(one, 1);
  for (const then of shared) {
    if (then[near] === tank || then[far] === tank) continue;
    if (direct.some((first) => first[far] === then[near] && follows(first, then))) meet(then, 2);
  }
  return [...met.values()]
    .map((one) => ({ ...one, by: [...one.by].sort((a, b) => (a.at < b.at ? -1 : 1)) }))
    .sort((a, b) => a.steps - b.steps);
}
