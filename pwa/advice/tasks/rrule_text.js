/** The parts of a recurrence rule (RFC 5545, 3.3.10) read from its text; the twin of parse_rule in recurrence.py. */

const FREQUENCIES = /** @type {const} */ (["DAILY", "WEEKLY", "MONTHLY", "YEARLY"]);
export const WEEKDAYS = ["MO", "TU", "WE", "TH", "FR", "SA", "SU"];
/**
 * Parts that hold whole numbers: least, most, whether a negative number counts from the end.
 */
export const NUMBERS = /** @type {const} */ ({
  BYMONTHDAY: [1, 31, true],
  BYMONTH: [1, 12, false],
  BYSETPOS: [1, 366, true],
  BYHOUR: [0, 23, false],
  BYMINUTE: [0, 59, false],
});
const MOST_INTERVAL = 1000;
const MOST_COUNT = 10_000;

/** A recurrence rule that this app does not read. */
export class BadRrule extends Error {}

/**
 * @typedef {keyof typeof NUMBERS} Numbers parts that hold whole numbers
 * @typedef {{FREQ: "DAILY" | "WEEKLY" | "MONTHLY" | "YEARLY", INTERVAL: number, COUNT?: number, UNTIL?: string,
 *   WKST?: string, BYDAY?: [number, string][]} & Partial<Record<Numbers, number[]>>} Rrule
 */

/** @param {string} name @returns {name is Numbers} */
const holds_numbers = (name) => name in NUMBERS;

/** @param {string} text @returns {Rrule} @throws {BadRrule} */
export function parse_rrule(text) {
  /** @type {Map<string, string>} */ const given = new Map();
  for (const part of text.trim().toUpperCase().split(";")) {
    const at = part.indexOf("=");
    const name = part.slice(0, at);
    if (at < 0 || given.has(name)) throw new BadRrule(`${part} is no part of a rule, or stands twice`);
    given.set(name, part.slice(at + 1));
  }
  const freq = FREQUENCIES.find((one) => one === given.get("FREQ"));
  if (!freq) throw new BadRrule("FREQ must be DAILY, WEEKLY, MONTHLY or YEARLY");
  /** @type {Rrule} */ const rrule = {
    FREQ: freq,
    INTERVAL: whole("INTERVAL", given.get("INTERVAL") ?? "1", 1, MOST_INTERVAL),
  };
  for (const [name, value] of given)
    if (name !== "FREQ" && name !== "INTERVAL") Object.assign(rrule, { [name]: part_of(name, value) });
  check(rrule);
  return rrule;
}

/** @param {string} name @param {string} value */
function part_of(name, value) {
  if (name === "COUNT") return whole(name, value, 1, MOST_COUNT);
  if (name === "UNTIL" && /^\d{8}(T\d{6}Z?)?$/.test(value)) return value;
  if (name === "WKST" && WEEKDAYS.includes(value)) return value;
  if (name === "BYDAY") return value.split(",").map(weekday);
  if (holds_numbers(name))
    return [...new Set(value.split(",").map((one) => numbered(name, one)))].sort((a, b) => a - b);
  throw new BadRrule(`${name}=${value} is not read here`);
}

/** @param {string} name @param {string} text @param {number} least @param {number} most */
function whole(name, text, least, most) {
  if (/^\d{1,5}$/.test(text) && Number(text) >= least && Number(text) <= most) return Number(text);
  throw new BadRrule(`${name} must be a whole number from ${least} to ${most}`);
}

/** @param {Numbers} name @param {string} text */
function numbered(name, text) {
  const [least, most, from_end] = NUMBERS[name];
  const value = Math.abs(Number(text));
  if (/^[+-]?\d{1,3}$/.test(text) && value >= least && value <= most && (from_end || !text.startsWith("-")))
    return Number(text);
  throw new BadRrule(`${name}=${text} is out of range`);
}

/** @param {string} text @returns {[number, string]} */
function weekday(text) {
  const hit = /^([+-]?\d{1,2})?(MO|TU|WE|TH|FR|SA|SU)$/.exec(text);
  if (hit && (hit[1] === undefined || (Math.abs(Number(hit[1])) >= 1 && Math.abs(Number(hit[1])) <= 53)))
    return [Number(hit[1] ?? 0), hit[2]];
  throw new BadRrule(`BYDAY=${text} names no weekday`);
}

/** @param {Rrule} rrule */
function check(rrule) {
  const freq = rrule.FREQ;
  const nths = (rrule.BYDAY ?? []).map(([nth]) => nth);
  const by_day = ["BYDAY", "BYMONTHDAY", "BYMONTH"].filter((name) => name in rrule);
  const far = freq === "MONTHLY" || freq === "YEARLY";
  const wrong =
    ("COUNT" in rrule && "UNTIL" in rrule) ||
    (nths.some(Boolean) && (!nths.every(Boolean) || !far || "BYMONTHDAY" in rrule)) ||
    ((freq === "MONTHLY" || "BYMONTH" in rrule) && nths.some((nth) => Math.abs(nth) > 5)) ||
    (freq === "DAILY" && rrule.INTERVAL > 1 && by_day.length > 0) ||
    (freq === "WEEKLY" && by_day.some((name) => name !== "BYDAY")) ||
    (freq === "MONTHLY" && "BYMONTH" in rrule) ||
    ("BYSETPOS" in rrule && (!far || by_day.length === 0));
  if (wrong) throw new BadRrule("These parts do not go together here");
  if (rrule.BYMONTH && rrule.BYMONTHDAY) {
    const longest = Math.max(...rrule.BYMONTH.map((month) => new Date(Date.UTC(2024, month, 0)).getUTCDate()));
    if (rrule.BYMONTHDAY.every((day) => Math.abs(day) > longest)) throw new BadRrule("Such a day never comes");
  }
}
