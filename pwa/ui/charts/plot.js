/** What every chart shares: uPlot, fetched with the first chart; size, axes of days and figures, colours by meaning. */
import { chosen, short } from "../../i18n/words.js";

/** @import uPlot from "../../vendor/uplot.js" */

const HEIGHT = 220;
const FONT = "15px system-ui, -apple-system, Roboto, sans-serif";
const DAY_S = 86_400;

/**
 * Draw a chart into `place`; call the answer to remove it.
 * @param {HTMLElement} place
 * @param {(library: typeof uPlot) => Record<string, unknown>} options uPlot's own, without size
 * @param {(number | null)[][]} data
 */
export function plot(place, options, data) {
  const left = new AbortController();
  void import("../../vendor/uplot.js").then(({ default: Plot }) => {
    if (left.signal.aborted) return;
    const bare = {
      width: place.clientWidth,
      height: HEIGHT,
      padding: [10, 12, 0, 0],
      cursor: { show: false },
      legend: { show: false },
      select: { show: false },
    };
    const chart = new Plot({ ...bare, ...options(Plot) }, data, place);
    const fit = new ResizeObserver(() => chart.setSize({ width: place.clientWidth, height: HEIGHT }));
    fit.observe(place);
    matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => chart.redraw(), {
      signal: left.signal,
    });
    left.signal.addEventListener("abort", () => {
      fit.disconnect();
      chart.destroy();
    });
  });
  return () => left.abort();
}

/** The two axes: days below, figures at the left. */
export function axes() {
  const quiet = {
    stroke: () => token("--text-soft"),
    font: FONT,
    grid: { stroke: () => token("--rule"), width: 1 },
    ticks: { show: false },
  };
  return [
    {
      ...quiet,
      size: 37,
      gap: 8,
      space: 64,
      splits: days_between,
      values: (/** @type {uPlot} */ _, /** @type {number[]} */ splits) => splits.map(day),
    },
    {
      ...quiet,
      size: 50,
      space: 36,
      values: (/** @type {uPlot} */ _, /** @type {number[]} */ splits) => splits.map((one) => short(one, 3)),
    },
  ];
}

/**
 * The midnights to mark, as many as fit.
 * @param {uPlot} chart @param {number} _ @param {number} from @param {number} to
 */
function days_between(chart, _, from, to) {
  const most = Math.max(2, Math.floor(chart.width / 72));
  const every = Math.ceil((to - from) / DAY_S / most);
  const first = new Date(from * 1000).setHours(24, 0, 0, 0);
  const days = [];
  for (
    let at = new Date(first);
    at.getTime() / 1000 <= to - 0.06 * (to - from);
    at = new Date(at.setDate(at.getDate() + every))
  )
    days.push(at.getTime() / 1000);
  return days;
}

/** "3 Aug". @param {number} seconds */
const day = (seconds) =>
  new Intl.DateTimeFormat(chosen(), { day: "numeric", month: "short" }).format(new Date(seconds * 1000));

/** The colour of a meaning in the light or dark scheme, whichever is in force. @param {string} name */
export const token = (name) => getComputedStyle(document.documentElement).getPropertyValue(name).trim();
