/**
 * A second, plain forecast beside the belief's equations: the water stays as it last read, but for doses and changes.
 * Method, units, sources: the Python twin.
 */
import { share_below } from "./kit_reading.js";

/** @typedef {import("./kinetics.js").Settings} Settings */
/** @typedef {{level: number, offset: number, at_h: number, weight: number, doubted: boolean}} Drift mg N/L, h */
/** @typedef {{value: number, low: number | null, high: number | null, offset: number}} Read */

/**
 * The drift from this reading on.
 * @param {Settings} c
 * @param {Drift | undefined} drift
 * @param {number} prior the weight before any forecast was tested
 * @param {number} at_h
 * @param {Read} reading
 * @param {number} equations_chance the chance that the equations gave the interval
 * @returns {Drift}
 */
export function after_reading(c, drift, prior, at_h, reading, equations_chance) {
  let weight = prior;
  let doubted = false;
  if (drift) {
    const chance = chance_of(c, drift, at_h, reading);
    weight = reweighed(c, drift.weight, chance, equations_chance);
    doubted = Math.max(chance, equations_chance) < c.doubt_chance;
  }
  return { level: reading.value, offset: reading.offset, at_h, weight, doubted };
}

/**
 * The chance of a reading in that interval.
 * @param {Settings} c
 * @param {Drift} drift
 * @param {number} at_h
 * @param {Read} reading
 */
function chance_of(c, drift, at_h, { low, high }) {
  const scale = scale_of(Math.sqrt(spread(c, drift, at_h) ** 2 + c.reading_sd ** 2));
  const level = Float64Array.of(drift.level);
  const [below_high] = share_below(level, high, drift.offset, scale, 1);
  const [below_low] = share_below(level, low, drift.offset, scale, 0);
  return below_high - below_low;
}

/**
 * The weight after a reading that both forecasts gave these chances.
 * @param {Settings} c
 * @param {number} weight
 * @param {number} chance
 * @param {number} equations_chance
 */
function reweighed(c, weight, chance, equations_chance) {
  const wrong = c.outlier * c.outlier_spread;
  const mine = weight ** c.forgetting * ((1 - c.outlier) * chance + wrong);
  const theirs = (1 - weight) ** c.forgetting * ((1 - c.outlier) * equations_chance + wrong);
  return mine / (mine + theirs);
}

/** @param {Settings} c @param {Drift} drift @param {number} at_h */
const spread = (c, drift, at_h) => Math.sqrt(c.reading_sd ** 2 + (c.walk_drift ** 2 * (at_h - drift.at_h)) / 24);

/** @param {number} sd */
const scale_of = (sd) => (sd * Math.sqrt(3)) / Math.PI;

/**
 * What the drift counts at `at_h`.
 * @param {Settings} c
 * @param {Drift} drift
 * @param {number} at_h
 */
const weight_at = (c, drift, at_h) =>
  (drift.doubted ? 0.5 : 1) * drift.weight * 0.5 ** (Math.max(at_h - drift.at_h - c.drift_stands_h, 0) / 24);

/**
 * Evenly likely levels of the water at `at_h`, mg N/L, rising.
 * @param {Settings} c
 * @param {Drift} drift
 * @param {number} at_h
 */
function levels_at(c, drift, at_h) {
  const scale = scale_of(spread(c, drift, at_h));
  return Float64Array.from({ length: c.drift_points }, (_, i) => {
    const share = (i + 0.5) / c.drift_points;
    return Math.max((drift.level + drift.offset) * (share / (1 - share)) ** scale - drift.offset, 0);
  });
}

/**
 * The band of equally weighted draws and of drifting levels together.
 * @param {Settings} c
 * @param {Float64Array} values the draws of the equations, mg N/L
 * @param {Drift} drift
 * @param {number} at_h
 * @returns {import("./bands.js").Band}
 */
export function mixed_band(c, values, drift, at_h) {
  const drift_weight = weight_at(c, drift, at_h);
  const levels = levels_at(c, drift, at_h);
  const draws = values.slice().sort();
  const of_draw = (1 / draws.length) * (1 - drift_weight);
  const of_level = drift_weight / levels.length;
  const count = draws.length + levels.length;
  const both = new Float64Array(count);
  const total = new Float64Array(count);
  for (let at = 0, i = 0, j = 0, sum = 0; at < count; at += 1) {
    const level = j < levels.length ? levels[j] : Infinity;
    const draw = i < draws.length && draws[i] <= level;
    both[at] = draw ? draws[i++] : level;
    if (!draw) j += 1;
    total[at] = sum += draw ? of_draw : of_level;
  }
  const point = (/** @type {number} */ share) => {
    const found = total.findIndex((sum) => sum >= share * total[count - 1] - 1e-9);
    return both[found];
  };
  return { p10: point(0.1), p50: point(0.5), p90: point(0.9) };
}
