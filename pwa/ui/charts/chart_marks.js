/** Paints what a chart shows beside the fan: now, changes, feedings, the limit, and readings with their kit's span. */

/** @import { Drawn, Lines } from "../../advice/forecast/chart_lines.js" */
/** @import uPlot from "../../vendor/uplot.js" */
/** @typedef {(name: string) => string} Token */

const DOT = 5;

/**
 * Paint below the fan: changes as lines with a bucket, feedings as ticks, now as a line.
 * @param {uPlot} chart
 * @param {{marks: {at: number, kind: string}[], now: number, to: number}} lines
 * @param {Token} token
 */
export function paint_under(chart, { marks, now, to }, token) {
  const { ctx, bbox } = chart;
  const px = devicePixelRatio;
  const bottom = bbox.top + bbox.height;
  within(chart, () => {
    for (const { at, kind } of marks) {
      const x = chart.valToPos(at / 1000, "x", true);
      ctx.strokeStyle = ctx.fillStyle = token("--text-soft");
      if (kind === "feeding") line(ctx, x, bottom, x, bottom - 7 * px, 1.5 * px);
      else {
        line(ctx, x, bottom, x, bbox.top, px, [2 * px, 4 * px]);
        bucket(ctx, x, bbox.top, px);
      }
    }
    if (to > now) {
      ctx.strokeStyle = token("--text-soft");
      const x = chart.valToPos(now / 1000, "x", true);
      line(ctx, x, bbox.top, x, bottom, 1.5 * px);
    }
  });
}

/**
 * Paint above the fan: the limit, and the readings as dots.
 * @param {uPlot} chart @param {Drawn} lines @param {Token} token
 */
export function paint_over(chart, { dots, line: limit }, token) {
  const { ctx, bbox } = chart;
  const px = devicePixelRatio;
  within(chart, () => {
    if (limit !== null) {
      ctx.strokeStyle = token("--alarm");
      const y = chart.valToPos(limit, "y", true);
      line(ctx, bbox.left, y, bbox.left + bbox.width, y, 2 * px, [8 * px, 6 * px]);
    }
    for (const { at, value, low, high, doubted } of dots) {
      const x = chart.valToPos(at / 1000, "x", true);
      const y = chart.valToPos(value, "y", true);
      ctx.strokeStyle = ctx.fillStyle = token("--text");
      const from = low === null ? y : chart.valToPos(low, "y", true);
      const to = high === null ? bbox.top : chart.valToPos(high, "y", true);
      if (from !== to) line(ctx, x, from, x, to, 2 * px);
      ctx.beginPath();
      ctx.arc(x, y, DOT * px, 0, 2 * Math.PI);
      if (!doubted) ctx.fill();
      else {
        ctx.fillStyle = token("--ground");
        ctx.fill();
        ctx.lineWidth = 2 * px;
        ctx.stroke();
      }
    }
  });
}

/** @param {CanvasRenderingContext2D} ctx @param {number} x @param {number} top @param {number} px */
function bucket(ctx, x, top, px) {
  ctx.beginPath();
  ctx.moveTo(x - 6 * px, top);
  ctx.lineTo(x + 6 * px, top);
  ctx.lineTo(x + 4 * px, top + 9 * px);
  ctx.lineTo(x - 4 * px, top + 9 * px);
  ctx.fill();
}

/**
 * @param {CanvasRenderingContext2D} ctx
 * @param {number} x
 * @param {number} y
 * @param {number} to_x
 * @param {number} to_y
 * @param {number} width
 * @param {number[]} [dash]
 */
function line(ctx, x, y, to_x, to_y, width, dash = []) {
  ctx.beginPath();
  ctx.lineWidth = width;
  ctx.setLineDash(dash);
  ctx.moveTo(x, y);
  ctx.lineTo(to_x, to_y);
  ctx.stroke();
  ctx.setLineDash([]);
}

/**
 * Paint inside the plot only; the margin keeps dots at its edge whole.
 * @param {uPlot} chart @param {() => void} paint
 */
function within({ ctx, bbox }, paint) {
  ctx.save();
  ctx.beginPath();
  ctx.rect(
    bbox.left - 8 * devicePixelRatio,
    bbox.top - 6 * devicePixelRatio,
    bbox.width + 16 * devicePixelRatio,
    bbox.height + 12 * devicePixelRatio,
  );
  ctx.clip();
  paint();
  ctx.restore();
}
