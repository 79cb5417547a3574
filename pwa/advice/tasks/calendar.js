/**
 * The tasks as an iCalendar file (RFC 5545), written on the phone: the twin of limnary/calendar_file.py. Pure; the
 * caller passes how an RRULE is expanded.
 */
import { DAY } from "../../figures/durations.js";
import { wall_of, zone_or_utc } from "./local_time.js";
import { BadRrule, parse_rrule } from "./rrule_text.js";

const REACH = 12 * 366 * DAY;
/** Changes of the clocks are listed for this many years around now. */
const YEARS_BEFORE = 1;
const YEARS_AFTER = 12;
const MOST_OCTETS = 75;
/** The tasks of a room share one zone or two; of more than these, a task is written by its next dates in UTC. */
const MOST_ZONES = 8;
const DATES = 12;

/** @import { Done, Expand, Task } from "./tasks.js" */
/** @import { Rrule } from "./rrule_text.js" */
/** @typedef {(parts: Rrule, zone: string) => number} UntilOf */

/**
 * @param {{room_name: string, tasks: Task[], tanks: Map<string, string>, dones: readonly Done[], now: number}} what
 * `tanks`: names of those that are walked to
 * @param {Expand} expand
 * @param {UntilOf} until_of
 * @returns {string} with CRLF line ends
 */
export function calendar_file({ room_name, tasks, tanks, dones, now }, expand, until_of) {
  const shown = [...tasks.filter((task) => !task.over && (!task.tank || tanks.has(task.tank)))].sort((a, b) =>
    a.id < b.id ? -1 : 1,
  );
  const zones = most_named(shown.map(described_zone));
  const events = shown.flatMap((task) => {
    const zone = described_zone(task);
    const skipped = dones.flatMap(({ task: of, skipped: left_out, due_at }) =>
      of === task.id && left_out && due_at ? [Date.parse(due_at)] : [],
    );
    const more =
      zone && !zones.includes(zone) ? dates(task, skipped, now, expand) : moments(task, skipped, expand, until_of);
    return event(task, tanks, now, more);
  });
  const year = new Date(now).getUTCFullYear();
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Limnary//Tasks//EN",
    `X-WR-CALNAME:${text(room_name)}`,
    ...zones.sort().flatMap((zone) => clock(zone, year - YEARS_BEFORE, year + YEARS_AFTER)),
    ...events,
    "END:VCALENDAR",
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join("");
}

/**
 * The task's zone if the file must describe it; "" for UTC and for a zone that is not known here.
 * @param {Task} task
 */
function described_zone({ zone }) {
  const known = zone_or_utc(zone);
  return known === "UTC" ? "" : known;
}

/** The zones that most tasks name. @param {string[]} named */
function most_named(named) {
  /** @type {Map<string, number>} */ const counts = new Map();
  for (const zone of named) if (zone) counts.set(zone, (counts.get(zone) ?? 0) + 1);
  return [...counts]
    .sort(([, a], [, b]) => b - a)
    .slice(0, MOST_ZONES)
    .map(([zone]) => zone);
}

/** @param {Task} task @param {Map<string, string>} tanks @param {number} now @param {string[]} more when it is due */
const event = (task, tanks, now, more) => [
  "BEGIN:VEVENT",
  `UID:${task.id}@limnary`,
  `DTSTAMP:${utc(Date.parse(task.meta?.changed_at ?? "") || now)}`,
  `SUMMARY:${text(task.tank ? `${tanks.get(task.tank)}: ${task.title}` : task.title)}`,
  "DURATION:PT15M",
  "TRANSP:TRANSPARENT",
  ...more,
  "END:VEVENT",
];

/**
 * When a task is due, by its rule.
 * @param {Task} task
 * @param {number[]} skipped
 * @param {Expand} expand
 * @param {UntilOf} until_of
 */
function moments(task, skipped, expand, until_of) {
  const start = start_of(task);
  let zone = zone_or_utc(task.zone);
  /** @type {number | undefined} */ let first;
  /** @type {string[]} */ let rrule = [];
  try {
    // RFC 5545, 3.8.5.3: DTSTART counts as an occurrence, so it must be one of the RRULE's.
    first = expand(task, start, start + REACH, 1)[0];
    if (task.rule && first !== undefined) rrule = [`RRULE:${rrule_text(task.rule, zone, until_of)}`];
  } catch (error) {
    if (!(error instanceof BadRrule)) throw error;
    zone = "UTC";
  }
  const gone = skipped.sort((a, b) => a - b).map((at) => `EXDATE${moment(at, zone)}`);
  return [`DTSTART${moment(first ?? start, zone)}`, ...rrule, ...gone];
}

/**
 * The task's next dates in UTC, without a rule: the file does not describe its zone.
 * @param {Task} task
 * @param {number[]} skipped
 * @param {number} now
 * @param {Expand} expand
 */
function dates(task, skipped, now, expand) {
  const start = start_of(task);
  const since = Math.max(start, now - 7 * DAY);
  /** @type {number[]} */ let found = [];
  try {
    found = expand(task, since, since + REACH, DATES);
  } catch (error) {
    if (!(error instanceof BadRrule)) throw error;
  }
  const [first = start, ...more] = found.filter((at) => !skipped.includes(at));
  return [`DTSTART:${utc(first)}`, ...(more.length ? [`RDATE:${more.map(utc).join(",")}`] : [])];
}

/** @param {Task} task */
const start_of = ({ starts_at }) => Math.floor(Date.parse(starts_at) / 1000) * 1000;

/** @param {string} rrule @param {string} zone @param {UntilOf} until_of */
function rrule_text(rrule, zone, until_of) {
  const parts = parse_rrule(rrule);
  return Object.entries(parts)
    .filter(([name, value]) => name !== "INTERVAL" || value !== 1)
    .map(([name, value]) => {
      if (name === "UNTIL") return `UNTIL=${utc(until_of(parts, zone))}`;
      if (name === "BYDAY") return `BYDAY=${(parts.BYDAY ?? []).map(([nth, day]) => `${nth || ""}${day}`).join(",")}`;
      return `${name}=${value}`;
    })
    .join(";");
}

/**
 * A clock's changes in a span of years, each as an observance of its own (RFC 5545, 3.6.5).
 * @param {string} zone
 * @param {number} from
 * @param {number} to years
 */
function clock(zone, from, to) {
  const offset = (/** @type {number} */ ms) => (wall_of(ms, zone) - Math.floor(ms / 1000) * 1000) / 1000;
  const begin = Date.UTC(from, 0, 1);
  const lines = observance("STANDARD", begin + offset(begin) * 1000, offset(begin), offset(begin));
  for (let day = begin; day < Date.UTC(to, 0, 1); day += DAY) {
    const [before, after] = [offset(day), offset(day + DAY)];
    if (before === after) continue;
    const change = first_with(after, day, day + DAY, offset);
    lines.push(...observance(after > before ? "DAYLIGHT" : "STANDARD", change + before * 1000, before, after));
  }
  return ["BEGIN:VTIMEZONE", `TZID:${zone}`, ...lines, "END:VTIMEZONE"];
}

/**
 * The first second within a day that has this offset.
 * @param {number} wanted
 * @param {number} low
 * @param {number} high
 * @param {(ms: number) => number} offset
 */
function first_with(wanted, low, high, offset) {
  let [without, having] = [low, high];
  while (having - without > 1000) {
    const middle = Math.floor((without + having) / 2000) * 1000;
    if (offset(middle) === wanted) having = middle;
    else without = middle;
  }
  return having;
}

/** @param {string} kind @param {number} wall by the clock before @param {number} before s @param {number} after s */
const observance = (kind, wall, before, after) => [
  `BEGIN:${kind}`,
  `DTSTART:${plain(wall)}`,
  `TZOFFSETFROM:${signed(before)}`,
  `TZOFFSETTO:${signed(after)}`,
  `END:${kind}`,
];

/** @param {number} seconds */
function signed(seconds) {
  const [hours, minutes, rest] = [3600, 60, 1].map((size, place) =>
    String(Math.floor(Math.abs(seconds) / size) % (place ? 60 : 100)).padStart(2, "0"),
  );
  return `${seconds < 0 ? "-" : "+"}${hours}${minutes}${rest === "00" ? "" : rest}`;
}

/** @param {number} ms @param {string} zone */
const moment = (ms, zone) => (zone === "UTC" ? `:${utc(ms)}` : `;TZID=${zone}:${plain(wall_of(ms, zone))}`);
/** @param {number} ms */
const utc = (ms) => `${plain(ms)}Z`;
/** @param {number} ms */
const plain = (ms) => new Date(ms).toISOString().slice(0, 19).replace(/[-:]/g, "");

/** RFC 5545, 3.1: no control characters but the tab; a line break is escaped. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what it takes out
const CONTROLS = /[\x00-\x08\x0b-\x1f\x7f]/g;

/** RFC 5545, 3.3.11. @param {string} value */
const text = (value) =>
  value.replace(CONTROLS, "").replace(/\\/g, "\\\\").replace(/;/g, "\\;").replace(/,/g, "\\,").replace(/\r?\n/g, "\\n");

/** RFC 5545, 3.1: no line longer than 75 octets, never cut within a letter. @param {string} line */
function folded(line) {
  let out = "";
  let octets = 0;
  for (const letter of line) {
    const size = new TextEncoder().encode(letter).length;
    if (octets + size > MOST_OCTETS) {
      out += "\r\n ";
      octets = 1;
    }
    out += letter;
    octets += size;
  }
  return out;
}
