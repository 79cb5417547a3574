/** One tank's month for paper: its readings by day, and what was done on which day. Pure. */
import { by_day, timeline } from "./timeline.js";
import { TRENDS } from "./trends.js";

/** @import { RecordsAndEarlier } from "../../types/views.js" */
/** @import { Event, Recorded } from "./timeline.js" */

/**
 * @typedef {object} Month
 * @property {string[]} parameters that were read, in the order of the trends
 * @property {{day: number, figures: Record<string, Recorded[]>}[]} tested days with readings, oldest first
 * @property {{day: number, events: Event[]}[]} done days with anything else, oldest first
 * @property {{tests: number, changes: number, litres: number, meals: number, feed_g: number, doses: number}} totals
 */

/** The first moment of a month and of the next one, here. @param {number} year @param {number} month 0 to 11 */
export const month_span = (year, month) => ({ from: +new Date(year, month, 1), to: +new Date(year, month + 1, 1) });

/**
 * The month that an address names, as "2026-05"; the present one where it names none that exists.
 * @param {string | null} said @param {number} now ms
 */
export function month_named(said, now) {
  const found = /^(\d{4})-(0[1-9]|1[0-2])$/.exec(said ?? "");
  const today = new Date(now);
  return found
    ? { year: Number(found[1]), month: Number(found[2]) - 1 }
    : { year: today.getFullYear(), month: today.getMonth() };
}

/**
 * @param {RecordsAndEarlier} room
 * @param {string} tank its id
 * @param {{from: number, to: number}} span ms
 * @returns {Month}
 */
export function month_of(room, tank, { from, to }) {
  const events = within(timeline(room, { tank }), from, to).reverse();
  const tests = events.filter(({ kind }) => kind === "reading");
  const tested = by_day(tests).map(({ day, events: own }) => ({
    day,
    figures: by_parameter(own.flatMap(({ records }) => records)),
  }));
  const records = events.flatMap((event) => event.records);
  const sum = (/** @type {string} */ kind, /** @type {string} */ field) =>
    records.reduce((total, one) => total + (one.kind === kind ? one[field] : 0), 0);
  const count = (/** @type {string} */ kind) => records.filter((one) => one.kind === kind).length;
  return {
    parameters: ordered(records.flatMap((one) => (one.kind === "reading" ? [one.parameter] : []))),
    tested,
    done: by_day(events.filter(({ kind }) => kind !== "reading")),
    totals: {
      ...{ tests: tests.length, changes: count("water_change"), litres: sum("water_change", "litres") },
      ...{ meals: count("feeding"), feed_g: sum("feeding", "feed_g"), doses: count("dose") },
    },
  };
}

/** @param {Recorded[]} readings */
function by_parameter(readings) {
  /** @type {Record<string, Recorded[]>} */ const figures = {};
  for (const one of readings) figures[one.parameter] = [...(figures[one.parameter] ?? []), one];
  return figures;
}

/** @param {Event[]} events @param {number} from @param {number} to */
const within = (events, from, to) => events.filter(({ at }) => Date.parse(at) >= from && Date.parse(at) < to);

/** Each parameter once: those with a trend first, in its order. @param {string[]} parameters */
function ordered(parameters) {
  const known = Object.keys(TRENDS);
  const place = (/** @type {string} */ one) => (known.includes(one) ? known.indexOf(one) : known.length);
  return [...new Set(parameters)].sort((a, b) => place(a) - place(b));
}
