/** Spans of time in milliseconds. A day on the calendar may be an hour shorter or longer. */
export const MINUTE = 60_000;
export const HOUR = 60 * MINUTE;
export const DAY = 24 * HOUR;
