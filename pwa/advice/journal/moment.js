/**
 * When something happened that is recorded later: the moments offered, as a field holds them, and those that cannot
 * be. Pure.
 */
import { HOUR, MINUTE } from "../../figures/durations.js";

/** Each of these has a tile; any other moment is typed as day and time. */
const HOURS_AGO = [1, 3, 6, 12, 24];
/** Nobody recorded a tank on a phone before it, so a year that lacks a digit is refused (assumption). */
const FIRST = Date.UTC(2000, 0, 1);

/** @param {number} now ms @returns {string[]} times as records hold them, on the minute */
export const moments_offered = (now) =>
  HOURS_AGO.map((hours) => new Date(Math.floor((now - hours * HOUR) / MINUTE) * MINUTE).toISOString());

/** As a field of day and time shows it: "2026-11-25T08:05", by this phone's clock. @param {string} at */
export function field_text(at) {
  const time = new Date(at);
  const two = (/** @type {number} */ part) => String(part).padStart(2, "0");
  return `${String(time.getFullYear()).padStart(4, "0")}-${two(time.getMonth() + 1)}-${two(time.getDate())}T${two(
    time.getHours(),
  )}:${two(time.getMinutes())}`;
}

/**
 * The field's moment as records hold it.
 * @param {string} text
 * @returns {string | undefined} undefined while it says no moment
 */
export function moment_in(text) {
  const ms = /^\d{4}-\d\d-\d\dT\d\d:\d\d/.test(text) ? Date.parse(text) : NaN;
  return Number.isNaN(ms) ? undefined : new Date(ms).toISOString();
}

/** The day of a moment by this phone's clock, as a field of days holds it: "2026-11-25". @param {number} at */
export const date_text = (at) => field_text(new Date(at).toISOString()).slice(0, 10);

/**
 * The midnight that ends a day here, in ms.
 * @param {string} text "2026-05-04"
 * @returns {number | null} null where it says no day
 */
export function day_end(text) {
  const parts = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text);
  if (!parts) return null;
  const [year, month, day] = parts.slice(1).map(Number);
  const begin = new Date(year, month - 1, day);
  const end = +new Date(year, month - 1, day + 1);
  // 31 April would be read as 1 May.
  return end > FIRST && begin.getMonth() === month - 1 && begin.getDate() === day ? end : null;
}

/** Whether a moment lies in the future or before this century. @param {string | undefined} at @param {number} now ms */
export const cannot_be = (at, now) => at !== undefined && !(Date.parse(at) >= FIRST && Date.parse(at) < now + MINUTE);

/** A time shifted as far as another one was. @param {string} at @param {string} from @param {string} to */
export const shifted = (at, from, to) => new Date(Date.parse(at) + Date.parse(to) - Date.parse(from)).toISOString();
