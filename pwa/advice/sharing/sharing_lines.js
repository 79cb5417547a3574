/** How far this phone's records are shared, line by line, in the states of the outbox. Pure. */
import { DAY, MINUTE } from "../../figures/durations.js";

/**
 * @param {{waiting: number, sending: number, needs_you: unknown[], photos_waiting: number, photos_need_you: number,
 * not_back: number, joined: boolean}} state of a room
 * @returns {{line: string, count?: number}[]} never "all" while anything is left
 */
export function sharing_lines({ waiting, sending, needs_you, photos_waiting, photos_need_you, not_back, joined }) {
  const lines = [
    { line: "waiting_long", count: waiting },
    { line: "sending_long", count: sending },
    { line: "photos_waiting", count: photos_waiting },
    { line: "needs_you_long", count: needs_you.length },
    { line: "photos_need_you", count: photos_need_you },
    { line: "not_back", count: not_back },
  ].filter(({ count }) => count > 0);
  if (!joined) return [{ line: "only_here" }, ...lines.filter(({ line }) => line.includes("need"))];
  return lines.length ? lines : [{ line: "all_long" }];
}

/** What is not shared within this many days is worth a word (assumption: some browsers clear a page after seven). */
const OLD_DAYS = 5;

/**
 * Whether what is not shared yet waits too long.
 * @param {string | null} oldest when the first of it was written, null if all is shared
 * @param {number} now ms
 */
export const waits_too_long = (oldest, now) => oldest !== null && now - Date.parse(oldest) > OLD_DAYS * DAY;

/** Two clocks that differ by more than this (ms) show it in days and times. */
const CLOCKS_APART = 5 * MINUTE;

/**
 * Whether this phone's clock differs from the server's, by which records are written.
 * @param {number} here ms
 * @param {number} there ms
 */
export const clocks_differ = (here, there) => Math.abs(here - there) > CLOCKS_APART;
