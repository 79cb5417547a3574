/** How far this phone is shared, line by line, in the true words of the outbox. Pure. */

/**
 * @param {{waiting: number, sending: number, needs_you: any[], photos_waiting: number, photos_need_you: number,
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

/** So far two clocks may part before it shows in days and times (ms). */
const CLOCKS_APART = 5 * 60_000;

/**
 * Whether this phone's clock and the server's, by which records are written, say different things.
 * @param {number} here ms
 * @param {number} there ms
 */
export const clocks_differ = (here, there) => Math.abs(here - there) > CLOCKS_APART;
