/**
 * When a task falls due: recurrence rules (RFC 5545, 3.3.10), expanded in the local time of the task's own zone.
 * Pure; the server's twin is limnary/recurrence.py.
 */
import { DAY } from "../../figures/durations.js";
import { RRule, Weekday } from "../../vendor/rrule.js";
import { instant_of, wall_of } from "./local_time.js";
import { BadRrule, NUMBERS, WEEKDAYS, parse_rrule } from "./rrule_text.js";

const FOREVER = 1e14;

/**
 * Instants from `from` to `to`, both included, oldest first, at most `most`. Without an RRULE the task falls due once,
 * at its start; with one, the start counts only if the RRULE includes it.
 * @param {{rule?: string | null, starts_at: string, zone?: string | null}} task
 * @param {number} from ms
 * @param {number} to ms
 * @returns {number[]} ms
 * @throws {BadRrule} the rule or the time zone cannot be read here
 */
export function occurrences({ rule, starts_at, zone }, from, to, most = 1000) {
  const start = Math.floor(Date.parse(starts_at) / 1000) * 1000;
  // An instant: no zone is needed.
  if (!rule) return from <= start && start <= to ? [start] : [];
  const where = zone_of(zone);
  const parts = parse_rrule(rule);
  const last = Math.min(to, until_of(parts, where));
  /** @type {Set<number>} */ const found = new Set();
  for (const wall of walls(parts, wall_of(start, where), from - DAY, last + DAY)) {
    const at = instant_of(wall, where);
    if (at >= from && at <= last) found.add(at);
    if (found.size > most) break;
  }
  return [...found].sort((a, b) => a - b).slice(0, most);
}

/** @import { Rrule } from "./rrule_text.js" */

/** @param {string | null | undefined} zone */
function zone_of(zone) {
  try {
    wall_of(0, zone || "UTC");
    return zone || "UTC";
  } catch {
    throw new BadRrule(`${zone} is no time zone known here`);
  }
}

/**
 * Wall times. Around a change of the clocks, instants may swap their order by an hour, never by a day.
 * @param {Rrule} parts
 * @param {number} start
 * @param {number} after
 * @param {number} before
 */
function walls(parts, start, after, before) {
  const begin = Math.max(after, -1e13);
  const numbers = Object.fromEntries(
    Object.keys(NUMBERS).flatMap((name) => {
      const values = parts[/** @type {keyof typeof NUMBERS} */ (name)];
      return values ? [[name.toLowerCase(), values]] : [];
    }),
  );
  const rrule = new RRule(
    {
      freq: RRule[parts.FREQ],
      dtstart: new Date(nearer(parts, start, begin)),
      interval: parts.INTERVAL,
      count: parts.COUNT ?? null,
      wkst: WEEKDAYS.indexOf(parts.WKST ?? "MO"),
      ...(parts.BYDAY
        ? { byweekday: parts.BYDAY.map(([nth, day]) => new Weekday(WEEKDAYS.indexOf(day), nth || undefined)) }
        : {}),
      ...numbers,
    },
    true,
  );
  return rrule.between(new Date(begin), new Date(Math.min(before, FOREVER)), true).map(Number);
}

/**
 * A later start that gives the same times from `after` on: the library counts up from the start, day by day. Only days
 * and weeks are counted in steps that all have one length; months and years are few.
 * @param {Rrule} parts
 * @param {number} start
 * @param {number} after
 */
function nearer({ FREQ, INTERVAL, COUNT }, start, after) {
  const days = FREQ === "DAILY" ? 1 : FREQ === "WEEKLY" ? 7 : 0;
  if (!days || COUNT !== undefined) return start;
  const step = days * INTERVAL * DAY;
  return start + Math.max(0, Math.floor((after - start) / step)) * step;
}

/**
 * The last instant of an RRULE's UNTIL; a date counts to its end.
 * @param {Rrule} parts
 * @param {string} zone
 */
export function until_of({ UNTIL }, zone) {
  if (UNTIL === undefined) return FOREVER;
  const [year, month, day, hour, minute, second] = [
    [0, 4],
    [4, 6],
    [6, 8],
    [9, 11],
    [11, 13],
    [13, 15],
  ].map(([a, b]) => Number(UNTIL.slice(a, b) || 0));
  const wall = Date.UTC(year, month - 1, day, hour, minute, second);
  const said = new Date(wall);
  if (
    said.getUTCDate() !== day ||
    said.getUTCMonth() !== month - 1 ||
    said.getUTCHours() !== hour ||
    said.getUTCMinutes() !== minute ||
    said.getUTCSeconds() !== second
  )
    throw new BadRrule(`UNTIL=${UNTIL} is no date`);
  if (UNTIL.length === 8) return instant_of(wall + DAY, zone) - 1;
  return UNTIL.endsWith("Z") ? wall : instant_of(wall, zone);
}
