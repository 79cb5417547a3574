/** Wall time and instants: what a clock in an IANA time zone shows, and the instant of that. Pure. */
import { DAY } from "../../figures/durations.js";

/** @type {Map<string, Intl.DateTimeFormat>} */
const formats = new Map();

/** @param {string} zone @returns {Intl.DateTimeFormat} @throws {RangeError} no such zone here */
function format_of(zone) {
  const held = formats.get(zone);
  if (held) return held;
  const made = new Intl.DateTimeFormat("en-US-u-ca-gregory-nu-latn", {
    timeZone: zone,
    hourCycle: "h23",
    year: "numeric",
    month: "numeric",
    day: "numeric",
    hour: "numeric",
    minute: "numeric",
    second: "numeric",
  });
  formats.set(zone, made);
  return made;
}

/**
 * The zone itself if this phone knows it, else UTC: a newer phone may name zones that this one lacks.
 * @param {string | null | undefined} zone
 */
export function zone_or_utc(zone) {
  try {
    format_of(zone || "UTC");
    return zone || "UTC";
  } catch {
    return "UTC";
  }
}

/** The wall time at an instant, written as if it were UTC, whole seconds. @param {number} ms @param {string} zone */
export function wall_of(ms, zone) {
  const parts = Object.fromEntries(
    format_of(zone)
      .formatToParts(ms)
      .map(({ type, value }) => [type, Number(value)]),
  );
  return Date.UTC(parts.year, parts.month - 1, parts.day, parts.hour, parts.minute, parts.second);
}

/**
 * The instant of a wall time. RFC 5545, 3.3.5: a time that comes twice is the first one; one that is skipped
 * is read with the offset before.
 * @param {number} wall as `wall_of` writes it @param {string} zone
 */
export function instant_of(wall, zone) {
  const with_offset_at = (/** @type {number} */ ms) => wall - (wall_of(ms, zone) - Math.floor(ms / 1000) * 1000);
  const before = with_offset_at(wall - DAY);
  const after = with_offset_at(wall + DAY);
  const shows_it = (/** @type {number} */ ms) => wall_of(ms, zone) === wall;
  return !shows_it(before) && shows_it(after) ? after : before;
}

/** Midnight before an instant and the last millisecond before the next one. @param {number} ms @param {string} zone */
export function day_of(ms, zone) {
  const midnight = Math.floor(wall_of(ms, zone) / DAY) * DAY;
  return { from: instant_of(midnight, zone), to: instant_of(midnight + DAY, zone) - 1 };
}
