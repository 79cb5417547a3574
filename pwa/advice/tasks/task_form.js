/**
 * A task as tiles instead of an RRULE (how often, which days, what time), and back into an RRULE (RFC 5545). Pure.
 */
import { DAY, MINUTE } from "../../figures/durations.js";
import { instant_of, wall_of, zone_or_utc } from "./local_time.js";
import { BadRrule, WEEKDAYS, parse_rrule } from "./rrule_text.js";

/** The tile after the days that every month has: the last day of the month. */
export const LAST_DAY = 29;

/**
 * @typedef {"once" | "daily" | "days" | "weekdays" | "monthly" | "own"} Often `own`: a rule that the tiles cannot say;
 * kept as it is
 * @typedef {{often: Often, every: number, weekdays: string[], month_day: number, day: number, minutes: number}} Form
 * `day`: midnight of the first day on the wall, as UTC ms; `minutes` after it; `month_day` LAST_DAY is the last
 */

/** A new task: every day from today at 08:00. @param {number} now @param {string} zone @returns {Form} */
export function first_form(now, zone) {
  const day = Math.floor(wall_of(now, zone) / DAY) * DAY;
  return { often: "daily", every: 2, weekdays: [weekday_of(day)], month_day: month_day_of(day), day, minutes: 480 };
}

/**
 * By the clock of the task's zone, of UTC if this phone does not know it.
 * @param {{starts_at: string, rule?: string, zone?: string}} task @returns {Form}
 */
export function form_of({ starts_at, rule, zone }) {
  const wall = wall_of(Date.parse(starts_at), zone_or_utc(zone));
  const day = Math.floor(wall / DAY) * DAY;
  const form = {
    every: 2,
    weekdays: [weekday_of(day)],
    month_day: month_day_of(day),
    day,
    minutes: (wall - day) / MINUTE,
  };
  return { ...form, ...said_by(rule) };
}

/** @param {string | undefined} text @returns {{often: Often} & Partial<Form>} */
function said_by(text) {
  if (!text) return { often: "once" };
  try {
    const { FREQ, INTERVAL, BYDAY, BYMONTHDAY, WKST: _, ...more } = parse_rrule(text);
    const alone = Object.keys(more).length === 0;
    if (alone && FREQ === "DAILY" && !BYDAY && !BYMONTHDAY)
      return INTERVAL === 1 ? { often: "daily" } : { often: "days", every: INTERVAL };
    if (alone && FREQ === "WEEKLY" && INTERVAL === 1)
      return { often: "weekdays", ...(BYDAY ? { weekdays: BYDAY.map(([, day]) => day) } : {}) };
    const on = BYMONTHDAY?.length === 1 ? BYMONTHDAY[0] : BYMONTHDAY ? null : undefined;
    if (
      alone &&
      FREQ === "MONTHLY" &&
      INTERVAL === 1 &&
      !BYDAY &&
      on !== null &&
      (on === undefined || on === -1 || (on > 0 && on < LAST_DAY))
    )
      return { often: "monthly", ...(on === undefined ? {} : { month_day: on === -1 ? LAST_DAY : on }) };
  } catch (error) {
    if (!(error instanceof BadRrule)) throw error;
  }
  return { often: "own" };
}

/**
 * The record's fields; `rule` null removes the RRULE. The form `own` leaves it as it is.
 * @param {Form} form @param {string} zone @returns {{starts_at: string, zone: string, rule?: string | null}}
 */
export function fields_of(form, zone) {
  const starts_at = new Date(instant_of(form.day + form.minutes * MINUTE, zone)).toISOString();
  const sorted = WEEKDAYS.filter((day) => form.weekdays.includes(day));
  const rrules = {
    once: null,
    daily: "FREQ=DAILY",
    days: `FREQ=DAILY;INTERVAL=${form.every}`,
    weekdays: `FREQ=WEEKLY;BYDAY=${sorted.join(",")}`,
    monthly: `FREQ=MONTHLY;BYMONTHDAY=${form.month_day === LAST_DAY ? -1 : form.month_day}`,
  };
  return form.often === "own" ? { starts_at, zone } : { starts_at, zone, rule: rrules[form.often] };
}

/** @param {number} day */
const weekday_of = (day) => WEEKDAYS[(new Date(day).getUTCDay() + 6) % 7];
/** @param {number} day */
const month_day_of = (day) => Math.min(new Date(day).getUTCDate(), LAST_DAY);
