/** The walk of the round: which tank wants something now, and which one comes next. Pure. */
import { HOUR } from "../figures/durations.js";

/** @import { Advice, Facts } from "../types/advice.js" */

/** Water that was changed, or tested, this lately is not asked for again on the same walk (assumption). */
const JUST_MS = 3 * HOUR;

/**
 * Whether a tank asks for hands now: a test, a change, or a task of today. What was just done waits for its effect,
 * whatever comes later today.
 * @param {Pick<Advice, "act" | "test_due">} advice
 * @param {number} tasks_due
 * @param {Pick<Facts, "now" | "readings" | "changes">} facts
 */
export function wants({ act, test_due }, tasks_due, { now, readings, changes }) {
  if (tasks_due > 0 || act === "retest") return true;
  const tested = Date.parse(readings.at(-1)?.at ?? "") || -Infinity;
  const changed = Date.parse(changes.at(-1)?.at ?? "") || -Infinity;
  if (act === "change") return changed < tested || now - changed > JUST_MS;
  return (test_due || act === "test") && now - Math.max(tested, changed) > JUST_MS;
}

/**
 * The next in walking order that wants something, from the one after `id` on and round again; null if none does, or
 * while `id` itself still wants something.
 * @template {{id: string}} T
 * @param {T[]} tanks in walking order
 * @param {string} id
 * @param {(tank: T) => boolean} wanting
 * @returns {T | null}
 */
export function next_stop(tanks, id, wanting) {
  const here = tanks.findIndex((tank) => tank.id === id);
  if (here < 0 || wanting(tanks[here])) return null;
  return [...tanks.slice(here + 1), ...tanks.slice(0, here)].find(wanting) ?? null;
}
