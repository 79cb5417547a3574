/** The walk through the tanks: which one needs something now, and which one comes next. Pure. */
import { HOUR } from "../figures/durations.js";

/** @import { Advised, Facts } from "../types/advice.js" */

/** After a change or a test this recent, the same walk asks for no other (assumption). */
const JUST_MS = 3 * HOUR;

/**
 * Whether a tank needs a test, a change or one of today's tasks now, or something urgent was found in it. What was just
 * done first takes effect.
 * @param {Pick<Advised, "act" | "test_due" | "findings">} advice
 * @param {number} tasks_due
 * @param {Pick<Facts, "now" | "readings" | "changes">} facts
 */
export function wants({ act, test_due, findings }, tasks_due, { now, readings, changes }) {
  if (tasks_due > 0 || act === "retest") return true;
  const tested = Date.parse(readings.at(-1)?.at ?? "") || -Infinity;
  const changed = Date.parse(changes.at(-1)?.at ?? "") || -Infinity;
  if (act === "change") return changed < tested || now - changed > JUST_MS;
  const pressing = findings.some(({ code, urgency }) => code !== "water" && urgency !== "watch");
  return (test_due || act === "test" || pressing) && now - Math.max(tested, changed) > JUST_MS;
}

/**
 * The next tank in walking order that needs something, starting after `id` and wrapping around; null if there is none,
 * or while `id` itself still needs something.
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
