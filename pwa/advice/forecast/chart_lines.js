/**
 * What one chart and its table show of one parameter: readings with their kit's uncertainty, marks, limit, fan. Pure.
 */
import { HOUR } from "../../figures/durations.js";
import { interval } from "../../calc/kit_reading.js";
import { settings } from "../../calc/model_settings.js";
import { in_nitrogen } from "../../calc/tank_events.js";
import { is_watched } from "../level.js";

/** @import { AheadAnswer, Asked, Facts, Limit, Limits } from "../../types/advice.js" */

/**
 * @typedef {{at: number, value: number, low: number | null, high: number | null, doubted: boolean}} Dot low and high:
 * what the kit cannot tell apart; null: no bound
 * @typedef {{at: number, p10: number, p50: number, p90: number}} Fan
 * @typedef {{at: number, kind: "change" | "feeding", said: number}} Mark `said`: litres changed, grams fed
 * @typedef {{parameter: string, dots: Dot[], fan: Fan[], marks: Mark[], limit: Limit | null,
 * from: number, now: number, to: number}} Lines
 * @typedef {Lines & {line: number | null}} Drawn as it is drawn: in the unit shown, with the limit in it
 */

/**
 * @param {string} parameter
 * @param {Pick<Facts, "feedings" | "changes">} facts
 * @param {Asked} asked
 * @param {AheadAnswer | undefined} ahead the outlook's answer, if it is there
 * @param {Limits} limits
 * @param {number} days how far back
 * @returns {Lines}
 */
export function chart_lines(parameter, facts, asked, ahead, limits, days) {
  const { start, records } = asked;
  const ms = (/** @type {number} */ at_h) => start + at_h * HOUR;
  const now = ms(records.now_h);
  const from = Math.max(now - days * 24 * HOUR, Math.min(start, now - 2 * 24 * HOUR));
  const doubts = ahead?.doubts ?? [];
  const dots = records.readings
    .filter((one) => one.parameter === parameter && ms(one.at_h) >= from)
    .map((one) => ({
      at: ms(one.at_h),
      ...read(one),
      doubted: doubts.some((doubt) => doubt.parameter === parameter && doubt.at_h === one.at_h),
    }));
  const foreseen = is_watched(parameter) && (parameter !== "nitrate" || asked.nitrate_known);
  const fan = foreseen
    ? (ahead?.series ?? []).map((point) => ({ at: ms(point.at_h), ...point[`${parameter}_mg_n_l`] }))
    : [];
  const marks = [
    ...facts.feedings.map((one) => mark(one.at, "feeding", one.feed_g)),
    ...facts.changes.map((one) => mark(one.at, "change", one.litres)),
  ]
    .filter(({ at }) => at >= from && at <= now)
    .sort((a, b) => a.at - b.at);
  return {
    parameter,
    dots,
    fan,
    marks,
    limit: is_watched(parameter) ? limits[parameter] : null,
    from,
    now,
    to: fan.at(-1)?.at ?? now,
  };
}

/**
 * @param {string} at
 * @param {Mark["kind"]} kind
 * @param {number} said
 * @returns {Mark}
 */
const mark = (at, kind, said) => ({ at: Date.parse(at), kind, said });

/**
 * A reading as nitrogen, with the span that the kit's steps leave open; a meter leaves none.
 * @param {Asked["records"]["readings"][number]} reading
 */
function read(reading) {
  if (!is_watched(reading.parameter)) {
    const [low, high] = reading.steps?.length
      ? interval(reading.value, reading.steps, 0, 0)
      : [reading.value, reading.value];
    return { value: reading.value, low, high };
  }
  const { value, steps } = in_nitrogen(reading);
  const c = settings();
  const kind = reading.parameter === "nitrate" ? "nitrate" : "reading";
  const [low, high] = interval(value, steps, c[`${kind}_offset`], (c[`${kind}_sd`] * Math.sqrt(3)) / Math.PI);
  return { value, low: low === null ? null : Math.max(low, 0), high };
}

/**
 * The same lines in the unit that is shown.
 * @param {Lines} lines
 * @param {(value: number) => number} show
 * @returns {Drawn}
 */
export function lines_in(lines, show) {
  const of = (/** @type {number | null} */ value) => (value === null ? null : show(value));
  return {
    ...lines,
    dots: lines.dots.map((dot) => ({ ...dot, value: show(dot.value), low: of(dot.low), high: of(dot.high) })),
    fan: lines.fan.map(({ at, p10, p50, p90 }) => ({ at, p10: show(p10), p50: show(p50), p90: show(p90) })),
    line: lines.limit && show(lines.limit.mg_n_l),
  };
}

/**
 * The span of values to draw; for concentrations it starts at 0.
 * @param {Drawn} lines
 * @returns {[number, number]}
 */
export function span({ parameter, dots, fan, line }) {
  const all = [
    ...dots.flatMap(({ value, low, high }) => [value, low ?? value, high ?? value]),
    ...fan.flatMap(({ p10, p90 }) => [p10, p90]),
    ...(line === null ? [] : [line]),
  ];
  const most = Math.max(...all);
  if (is_watched(parameter)) return [0, most > 0 ? most * 1.12 : 1];
  const least = Math.min(...all);
  const margin = Math.max((most - least) * 0.2, 0.5);
  return [least - margin, most + margin];
}
