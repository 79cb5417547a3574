/** The chart of one parameter, drawn by uPlot on a canvas. Screen readers skip it: its table holds the same figures. */
import { html, useEffect, useRef } from "../../vendor/preact.js";
import { span } from "../../advice/forecast/chart_lines.js";
import { paint_over, paint_under } from "./chart_marks.js";
import { axes, plot, token } from "./plot.js";

/** @import uPlot from "../../vendor/uplot.js" */

const DAY_S = 86_400;

/** @type {("p10" | "p50" | "p90")[]} */
const QUANTILES = ["p10", "p50", "p90"];

/** @param {{lines: import("../../advice/forecast/chart_lines.js").Drawn}} props */
export function Chart({ lines }) {
  const place = useRef(/** @type {HTMLElement | null} */ (null));
  useEffect(() => plot(/** @type {HTMLElement} */ (place.current), () => options(lines), data(lines)), [lines]);
  return html`<div class="chart" ref=${place} aria-hidden="true"></div>`;
}

/**
 * The columns that uPlot draws: time in seconds, then the 10 %, 50 % and 90 % quantiles.
 * @param {import("../../advice/forecast/chart_lines.js").Drawn} lines
 */
const data = ({ fan, from, now }) => {
  const points = fan.length ? fan : [{ at: now, p10: null, p50: null, p90: null }];
  const past = { at: from, p10: null, p50: null, p90: null };
  const all = [past, ...points];
  return [all.map(({ at }) => at / 1000), ...QUANTILES.map((quantile) => all.map((point) => point[quantile]))];
};

/** @param {import("../../advice/forecast/chart_lines.js").Drawn} lines */
function options(lines) {
  const { from, now, to } = lines;
  const [low, high] = span(lines);
  const edge = { stroke: "transparent", points: { show: false } };
  return {
    scales: {
      x: { time: true, range: [from / 1000, to / 1000 + (to > now ? 0 : DAY_S / 2)] },
      y: { range: [low, high] },
    },
    series: [{}, edge, { stroke: () => token("--action"), width: 2.5, points: { show: false } }, edge],
    bands: [{ series: [3, 1], fill: () => token("--fan") }],
    axes: axes(),
    hooks: {
      drawAxes: [(/** @type {uPlot} */ chart) => paint_under(chart, lines, token)],
      draw: [(/** @type {uPlot} */ chart) => paint_over(chart, lines, token)],
    },
  };
}
