/**
 * The chart of a trend: readings joined by a line, sums as bars, changes as marks. It is drawn once it scrolls into
 * view.
 */
import { html, useEffect, useRef } from "../../vendor/preact.js";
import { span } from "../../advice/journal/trends.js";
import { paint_under } from "./chart_marks.js";
import { axes, plot, token } from "./plot.js";

/** @import uPlot from "../../vendor/uplot.js" */

const HALF_DAY = 43_200_000;

/** @param {{trend: import("../../advice/journal/trends.js").Trend}} props in the units of this phone */
export function TrendChart({ trend }) {
  const place = useRef(/** @type {HTMLElement | null} */ (null));
  useEffect(() => {
    const box = /** @type {HTMLElement} */ (place.current);
    let away = () => {};
    const seen = new IntersectionObserver(
      (entries) => {
        if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
        seen.disconnect();
        away = draw(box, trend);
      },
      { rootMargin: "200px" },
    );
    seen.observe(box);
    return () => {
      seen.disconnect();
      away();
    };
  }, [trend]);
  return html`<div class="chart" ref=${place} aria-hidden="true"></div>`;
}

/** @param {HTMLElement} place @param {import("../../advice/journal/trends.js").Trend} trend */
function draw(place, trend) {
  const { points, bars, step, marks, from, to } = trend;
  const changes = {
    marks: marks.map((at) => ({ at, kind: "change" })),
    now: to,
    to,
  };
  // A bar stands in the middle of the time that it sums.
  const data = [points.map(({ at }) => (at + step / 2) / 1000), points.map(({ value }) => value)];
  return plot(
    place,
    (uPlot) => ({
      scales: {
        x: { time: true, range: [from / 1000, (to + Math.max(step / 2, HALF_DAY)) / 1000] },
        y: { range: span(trend) },
      },
      series: [
        {},
        bars
          ? {
              stroke: () => token("--action"),
              fill: () => token("--fan"),
              width: 1.5,
              points: { show: false },
              paths: uPlot.paths.bars({ size: [0.7, 40] }),
            }
          : {
              stroke: () => token("--action"),
              width: 2,
              points: { show: true, size: 7, width: 1, fill: () => token("--action") },
            },
      ],
      axes: axes(),
      hooks: { drawAxes: [(/** @type {uPlot} */ chart) => paint_under(chart, changes, token)] },
    }),
    data,
  );
}
