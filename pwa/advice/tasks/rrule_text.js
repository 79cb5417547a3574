/**
 * The parts of a recurrence rule (RFC 5545, 3.3.10) read from its text; the twin of parse_rule in
 * limnary/recurrence.py.
 */

const FREQUENCIES = ["DAILY", "WEEKLY", "MONTHLY", "YEARLY"];
export const WEEKDAYS = ["MO", "TU", "WE", "TH", "FR", "SA", "SU"];
/**
 * Parts that hold whole numbers: least, most, whether below zero counts from the end.
 * @type {Record<string, [number, number, boolean]>}
 */
export const NUMBERS = {
  BYMONTHDAY: [1, 31, true],
  BYMONTH: [1, 12, false],
  BYSETPOS: [1, 366, true],
  BYHOUR: [0, 23, false],
  BYMINUTE: [0, 59, false],
};
const MOST_INTERVAL = 1000;
const MOST_COUNT = 10_000;

/** A rule that is not read here. */
export class BadRule extends Error {}

/**
 * @typedef {{FREQ: string, INTERVAL: number, COUNT?: number, UNTIL?: string, WKST?: string, BYDAY?: [number, string][],
 * BYMONTHDAY?: number[], BYMONTH?: number[], BYSETPOS?: number[], BYHOUR?: number[], BYMINUTE?: number[], [name:
 * string]: any}} Rule
 */

/** @param {string} text @returns {Rule} @throws {BadRule} */
export function parse_rule(text) {
  /** @type {Map<string, string>} */ const given = new Map();
  for (const part of text.trim().toUpperCase().split(";")) {
    const at = part.indexOf("=");
    const name = part.slice(0, at);
    if (at < 0 || given.has(name)) throw new BadRule(`${part} is no part of a rule, or stands twice`);
    given.set(name, part.slice(at + 1));
  }
  const freq = given.get("FREQ") ?? "";
  if (!FREQUENCIES.includes(freq)) throw new BadRule("FREQ must be DAILY, WEEKLY, MONTHLY or YEARLY");
  /** @type {Rule} */ const rule = {
    FREQ: freq,
    INTERVAL: whole("INTERVAL", given.get("INTERVAL") ?? "1", 1, MOST_INTERVAL),
  };
  for (const [name, value] of given) if (name !== "FREQ" && name !== "INTERVAL") rule[name] = part_of(name, value);
  check(rule);
  return rule;
}

/** @param {string} name @param {string} value */
function part_of(name, value) {
  if (name === "COUNT") return whole(name, value, 1, MOST_COUNT);
  if (name === "UNTIL" && /^\d{8}(T\d{6}Z?)?$/.test(value)) return value;
  if (name === "WKST" && WEEKDAYS.includes(value)) return value;
  if (name === "BYDAY") return value.split(",").map(weekday);
  if (name in NUMBERS) return [...new Set(value.split(",").map((one) => numbered(name, one)))].sort((a, b) => a - b);
  throw new BadRule(`${name}=${value} is not read here`);
}

/** @param {string} name @param {string} text @param {number} least @param {number} most */
function whole(name, text, least, most) {
  if (/^\d{1,5}$/.test(text) && Number(text) >= least && Number(text) <= most) return Number(text);
  throw new BadRule(`${name} must be a whole number from ${least} to ${most}`);
}

/** @param {string} name @param {string} text */
function numbered(name, text) {
  const [least, most, from_end] = NUMBERS[name];
  const value = Math.abs(Number(text));
  if (/^[+-]?\d{1,3}$/.test(text) && value >= least && value <= most && (from_end || !text.startsWith("-")))
    return Number(text);
  throw new BadRule(`${name}=${text} is out of range`);
}

/** @param {string} text @returns {[number, string]} */
function weekday(text) {
  const hit = /^([+-]?\d{1,2})?(MO|TU|WE|TH|FR|SA|SU)$/.exec(text);
  if (hit && (hit[1] === undefined || (Math.abs(Number(hit[1])) >= 1 && Math.abs(Number(hit[1])) <= 53)))
    return [Number(hit[1] ?? 0), hit[2]];
  throw new BadRule(`BYDAY=${text} names no weekday`);
}

/** @param {Rule} rule */
function check(rule) {
  const freq = rule.FREQ;
  const nths = (rule.BYDAY ?? []).map(([nth]) => nth);
  const by_day = ["BYDAY", "BYMONTHDAY", "BYMONTH"].filter((name) => name in rule);
  const far = freq === "MONTHLY" || freq === "YEARLY";
  const wrong =
    ("COUNT" in rule && "UNTIL" in rule) ||
    (nths.some(Boolean) && (!nths.every(Boolean) || !far || "BYMONTHDAY" in rule)) ||
    ((freq === "MONTHLY" || "BYMONTH" in rule) && nths.some((nth) => Math.abs(nth) > 5)) ||
    (freq === "DAILY" && rule.INTERVAL > 1 && by_day.length > 0) ||
    (freq === "WEEKLY" && by_day.some((name) => name !== "BYDAY")) ||
    (freq === "MONTHLY" && "BYMONTH" in rule) ||
    ("BYSETPOS" in rule && (!far || by_day.length === 0));
  if (wrong) throw new BadRule("These parts do not go together here");
  if (rule.BYMONTH && rule.BYMONTHDAY) {
    const longest = Math.max(...rule.BYMONTH.map((month) => new Date(Date.UTC(2024, month, 0)).getUTCDate()));
    if (rule.BYMONTHDAY.every((day) => Math.abs(day) > longest)) throw new BadRule("Such a day never comes");
  }
}
