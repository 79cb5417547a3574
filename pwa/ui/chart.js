/** One chart of one parameter, drawn by uPlot on a canvas: it is for the eye alone, the same figures stand in its table. */
import { html, useEffect, useRef } from "../vendor/preact.js";
import { span } from "../advice/chart_lines.js";
import { chosen, short } from "../i18n/words.js";
import { paint_over, paint_under } from "./chart_marks.js";

const HEIGHT = 220;
const FONT = "15px system-ui, -apple-system, Roboto, sans-serif";
const DAY_S = 86_400;

/** @param {{lines: import("../advice/chart_lines.js").Lines}} props */
export function Chart({ lines }) {
  const place = useRef(/** @type {any} */ (null));
  useEffect(() => draw(place.current, lines), [lines]);
  return html`<div class="chart" ref=${place} aria-hidden="true"></div>`;
}

/** Draw into `place`; what is answered takes it away again. uPlot is fetched when first drawn with. @param {HTMLElement} place @param {import("../advice/chart_lines.js").Lines} lines */
function draw(place, lines) {
  const left = new AbortController();
  void import("../vendor/uplot.js").then(({ default: uPlot }) => {
    if (left.signal.aborted) return;
    const chart = new uPlot(options(lines, place.clientWidth), data(lines), place);
    const fit = new ResizeObserver(() => chart.setSize({ width: place.clientWidth, height: HEIGHT }));
    fit.observe(place);
    matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => chart.redraw(), { signal: left.signal });
    left.signal.addEventListener("abort", () => {
      fit.disconnect();
      chart.destroy();
    });
  });
  return () => left.abort();
}

/** Seconds, then one in ten below, the middle, one in ten above. @param {import("../advice/chart_lines.js").Lines} lines */
const data = ({ fan, from, now }) => {
  const points = fan.length ? fan : [{ at: now, p10: null, p50: null, p90: null }];
  const past = { at: from, p10: null, p50: null, p90: null };
  const all = [past, ...points];
  return [all.map(({ at }) => at / 1000), ...["p10", "p50", "p90"].map((point) => all.map((/** @type {any} */ one) => one[point]))];
};

/** @param {import("../advice/chart_lines.js").Lines} lines @param {number} width */
function options(lines, width) {
  const { from, now, to } = lines;
  const [low, high] = span(lines);
  const text = () => token("--text-soft");
  const rule = () => token("--rule");
  const quiet = { stroke: text, font: FONT, grid: { stroke: rule, width: 1 }, ticks: { show: false } };
  const edge = { stroke: "transparent", points: { show: false } };
  return {
    width,
    height: HEIGHT,
    padding: [10, 12, 0, 0],
    cursor: { show: false },
    legend: { show: false },
    select: { show: false },
    scales: { x: { time: true, range: [from / 1000, to / 1000 + (to > now ? 0 : DAY_S / 2)] }, y: { range: [low, high] } },
    series: [{}, edge, { stroke: () => token("--action"), width: 2.5, points: { show: false } }, edge],
    bands: [{ series: [3, 1], fill: () => token("--fan") }],
    axes: [
      { ...quiet, size: 34, space: 64, splits: days_between, values: (/** @type {any} */ _, /** @type {number[]} */ splits) => splits.map(day) },
      { ...quiet, size: 50, space: 36, values: (/** @type {any} */ _, /** @type {number[]} */ splits) => splits.map((one) => short(one, 3)) },
    ],
    hooks: { drawAxes: [(/** @type {any} */ chart) => paint_under(chart, lines, token)], draw: [(/** @type {any} */ chart) => paint_over(chart, lines, token)] },
  };
}

/** Midnights, as many as have room. @param {any} chart @param {number} _ @param {number} from @param {number} to */
function days_between(chart, _, from, to) {
  const most = Math.max(2, Math.floor(chart.width / 72));
  const every = Math.ceil((to - from) / DAY_S / most);
  const first = new Date(from * 1000).setHours(24, 0, 0, 0);
  const days = [];
  for (let at = new Date(first); at.getTime() / 1000 <= to - 0.06 * (to - from); at = new Date(at.setDate(at.getDate() + every))) days.push(at.getTime() / 1000);
  return days;
}

/** "3 Aug". @param {number} seconds */
const day = (seconds) => new Intl.DateTimeFormat(chosen(), { day: "numeric", month: "short" }).format(new Date(seconds * 1000));

/** A colour by its meaning, as light or dark has it now. @param {string} name */
const token = (name) => getComputedStyle(document.documentElement).getPropertyValue(name).trim();
