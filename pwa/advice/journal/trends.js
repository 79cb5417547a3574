/** A tank's figures over weeks: what was read, what was fed a day, how much water was changed a week. Pure. */
import { DAY } from "../../figures/durations.js";
import { in_nitrogen } from "../../calc/tank_events.js";
import { HARDNESS, in_degrees } from "../hardness.js";
import { is_watched } from "../level.js";

/** @import { Facts } from "../../types/advice.js" */
/** @import { Reading } from "../../types/views.js" */

/** The spans offered, in days. */
export const SPANS = [7, 30, 90, 365];
/** What has a trend, in the order shown, with the unit of its points. @type {Record<string, string>} */
export const TRENDS = {
  total_ammonia: "mg N/L",
  nitrite: "mg N/L",
  nitrate: "mg N/L",
  ph: "",
  ...HARDNESS,
  temperature: "°C",
  feed: "g",
  changed: "L",
};

/**
 * @typedef {{at: number, value: number}} Point `at`: ms; of a day its midnight, of a week the midnight of its Monday
 * @typedef {{what: string, unit: string, points: Point[], bars: boolean, step: number, marks: number[], from: number,
 * to: number}} Trend
 * `bars`: sums over `step` ms, not readings; `marks`: when water was changed
 */

/**
 * @param {string} what of TRENDS
 * @param {Pick<Facts, "now" | "readings" | "changes" | "feedings">} facts
 * @param {number} days
 * @returns {Trend} oldest first
 */
export function trend(what, facts, days) {
  const to = facts.now;
  const from = new Date(to - (days - 1) * DAY).setHours(0, 0, 0, 0);
  const within = (/** @type {{at: string}} */ one) => Date.parse(one.at) >= from && Date.parse(one.at) <= to;
  const changes = facts.changes.filter(within);
  const shared = {
    what,
    unit: TRENDS[what],
    from,
    to,
    marks: what === "changed" ? [] : changes.map(({ at }) => Date.parse(at)),
  };
  if (what === "feed") {
    // A day without a record is not known to be a fast, so it gets no point.
    const fed = facts.feedings.filter(within).map((one) => ({ at: midnight(Date.parse(one.at)), value: one.feed_g }));
    return { ...shared, points: sums(fed), bars: true, step: DAY };
  }
  if (what === "changed") {
    const poured = changes.map((one) => ({ at: monday(Date.parse(one.at)), value: one.litres }));
    return { ...shared, points: poured.length ? every_week(sums(poured), monday(to)) : [], bars: true, step: 7 * DAY };
  }
  const points = facts.readings
    .filter((one) => one.parameter === what && within(one))
    .flatMap((one) => {
      const value = value_of(one);
      return value === undefined ? [] : [{ at: Date.parse(one.at), value }];
    });
  return { ...shared, points, bars: false, step: 0 };
}

/** @param {Reading} reading @returns {number | undefined} in the unit that its trend is held in */
function value_of(reading) {
  if (is_watched(reading.parameter)) return in_nitrogen(reading).value;
  return reading.parameter in HARDNESS ? in_degrees(reading) : reading.value;
}

/**
 * What a trend says in figures; null if it says nothing.
 * @param {Trend} trend
 * @returns {{count: number, last: Point, low: number, high: number, mean: number} | null}
 */
export function in_brief({ points }) {
  if (points.length === 0) return null;
  const values = points.map(({ value }) => value);
  return {
    count: points.length,
    last: points[points.length - 1],
    low: Math.min(...values),
    high: Math.max(...values),
    mean: values.reduce((sum, value) => sum + value, 0) / values.length,
  };
}

/** The span of values to draw; for amounts it starts at 0. @param {Trend} trend @returns {[number, number]} */
export function span({ what, points }) {
  const values = points.map(({ value }) => value);
  const most = Math.max(...values);
  if (what !== "ph" && what !== "temperature") return [0, most > 0 ? most * 1.12 : 1];
  const least = Math.min(...values);
  const margin = Math.max((most - least) * 0.2, 0.5);
  return [least - margin, most + margin];
}

/** @param {Point[]} points in order of time @returns {Point[]} one of each time, summed */
function sums(points) {
  /** @type {Point[]} */ const all = [];
  for (const { at, value } of points) {
    const last = all.at(-1);
    if (last?.at === at) last.value += value;
    else all.push({ at, value });
  }
  return all;
}

/**
 * A week without a recorded change counts as 0.
 * @param {Point[]} weeks
 * @param {number} last
 * @returns {Point[]}
 */
function every_week(weeks, last) {
  /** @type {Point[]} */ const all = [];
  for (let at = weeks[0].at; at <= last; at = next_week(at))
    all.push(weeks.find((week) => week.at === at) ?? { at, value: 0 });
  return all;
}

/** @param {number} at */
const midnight = (at) => new Date(at).setHours(0, 0, 0, 0);

/** The Monday that the week of ISO 8601 begins with. @param {number} at */
function monday(at) {
  const day = new Date(at);
  day.setDate(day.getDate() - ((day.getDay() + 6) % 7));
  return day.setHours(0, 0, 0, 0);
}

/** Seven days on by the calendar, through a change of the clocks too. @param {number} at */
function next_week(at) {
  const day = new Date(at);
  return day.setDate(day.getDate() + 7);
}
