/**
 * When a tank will process its load, and how much more it could, taken from the outlook's answers. Pure.
 */
import { HOUR } from "../../figures/durations.js";
import { settings } from "../../calc/model_settings.js";

/** @import { OutlookAnswer, StockHeadroomAnswer } from "../../types/calculations.js" */

/**
 * @typedef {{code: "now" | "likely" | "soon" | "between" | "even_now" | "even" | "not_before" | "not_in_sight", from?:
 * number, likely?: number, to?: number}} Ready times in ms
 * @typedef {{days: number, feed_g_day: {p10: number, p50: number, p90: number}, more_fish_g: {p10: number, p50: number,
 * p90: number}}} WeekHeadroom
 */

/**
 * @param {OutlookAnswer["settled_h"] | null} settled_h as the outlook answers it
 * @param {number} now_h
 * @param {number} start ms
 * @returns {Ready}
 */
export function ready(settled_h, now_h, start) {
  if (!settled_h) return { code: "not_in_sight" };
  const { p10 } = settled_h;
  const [p50, p90] = [settled_h.p50 ?? null, settled_h.p90 ?? null];
  const ms = (/** @type {number} */ at_h) => start + at_h * HOUR;
  // A wide band may begin now and have no end: then no date is named, and never one that has passed.
  if (p50 === null) return p10 <= now_h ? { code: "not_in_sight" } : { code: "not_before", from: ms(p10) };
  if (p90 === null) return p50 <= now_h ? { code: "even_now" } : { code: "even", likely: ms(p50) };
  if (p90 <= now_h) return { code: "now" };
  if (p50 <= now_h) return { code: "likely", to: ms(p90) };
  if (p10 <= now_h) return { code: "soon", likely: ms(p50), to: ms(p90) };
  return { code: "between", from: ms(p10), likely: ms(p50), to: ms(p90) };
}

/**
 * Food a day and fish beyond today's, now and in one and two weeks.
 * @param {StockHeadroomAnswer} headroom
 * @returns {WeekHeadroom[]}
 */
export function headroom_by_week(headroom) {
  const share = settings().feed_of_fish;
  const bands = [headroom.feed_g_day_now, headroom.feed_g_day_in_7_days, headroom.feed_g_day_in_14_days];
  return bands.map((feed_g_day, week) => {
    const more = (/** @type {"p10" | "p50" | "p90"} */ point) =>
      Math.max(0, (feed_g_day[point] - headroom.feed_g_day_expected) / share);
    return { days: 7 * week, feed_g_day, more_fish_g: { p10: more("p10"), p50: more("p50"), p90: more("p90") } };
  });
}
