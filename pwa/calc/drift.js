/**
 * Plain forecasts beside the belief's equations: the drift (the water stays as it last read, but for doses and changes)
 * and the past (it reads as this tank has read before). Method, units, sources: the Python twin.
 */
import { share_below } from "./kit_reading.js";

/** @typedef {import("./kinetics.js").Settings} Settings */
/**
 * @typedef {{level: number, offset: number, at_h: number, weight: number, past: number[], past_weight: number,
 *   doubted: boolean}} Drift mg N/L, h
 */
/** @typedef {{value: number, low: number | null, high: number | null, offset: number}} Read */
/** @typedef {"tan" | "nitrite"} Plain the parameters that have plain forecasts */

/**
 * What drift and past count before any forecast was tested.
 * @param {Settings} c @param {Plain} name @param {boolean} input_known @returns {[number, number]}
 */
export const priors = (c, name, input_known) =>
  input_known ? [c[`drift_${name}`], c[`past_${name}`]] : [c[`drift_${name}_unknown`], 0];

/**
 * The drift and the past from this reading on.
 * @param {Settings} c
 * @param {Drift | undefined} drift
 * @param {[number, number]} prior from `priors`
 * @param {number} at_h
 * @param {Read} reading
 * @param {number} equations_chance the chance that the equations gave the interval
 * @returns {Drift}
 */
export function after_reading(c, drift, prior, at_h, reading, equations_chance) {
  let [weight, past_weight] = prior;
  let doubted = false;
  if (drift) {
    const chance = chance_of([drift.level], Math.sqrt(spread(c, drift, at_h) ** 2 + c.reading_sd ** 2), reading);
    const past_chance = chance_of(drift.past, Math.SQRT2 * c.reading_sd, reading);
    [weight, past_weight] = reweighed(c, drift, chance, past_chance, equations_chance);
    doubted = Math.max(chance, equations_chance, past_weight > 0 ? past_chance : 0) < c.doubt_chance;
  }
  const past = [...(drift?.past ?? []), reading.value].slice(-c.past_readings);
  return { level: reading.value, offset: reading.offset, at_h, weight, past, past_weight, doubted };
}

/**
 * The chance of a reading in that interval where each of `levels` is as likely; `sd` of its logarithm.
 * @param {number[]} levels
 * @param {number} sd
 * @param {Read} reading
 */
function chance_of(levels, sd, { low, high, offset }) {
  const values = Float64Array.from(levels);
  const below_high = share_below(values, high, offset, scale_of(sd), 1);
  const below_low = share_below(values, low, offset, scale_of(sd), 0);
  return below_high.reduce((sum, below, i) => sum + below - below_low[i], 0) / values.length;
}

/**
 * The weights of drift and past after a reading that all three forecasts gave these chances.
 * @param {Settings} c
 * @param {Drift} drift
 * @param {number} chance
 * @param {number} past_chance
 * @param {number} equations_chance
 */
function reweighed(c, drift, chance, past_chance, equations_chance) {
  const counts = (/** @type {number} */ weight, /** @type {number} */ given) =>
    Math.max(weight, 0) ** c.forgetting * ((1 - c.outlier) * given + c.outlier * c.outlier_spread);
  const mine = counts(drift.weight, chance);
  const past = counts(drift.past_weight, past_chance);
  const total = mine + past + counts(1 - drift.weight - drift.past_weight, equations_chance);
  return [mine / total, past / total];
}

/** @param {Settings} c @param {Drift} drift @param {number} at_h */
const spread = (c, drift, at_h) => Math.sqrt(c.reading_sd ** 2 + (c.walk_drift ** 2 * (at_h - drift.at_h)) / 24);

/** @param {number} sd */
const scale_of = (sd) => (sd * Math.sqrt(3)) / Math.PI;

/**
 * What drift and past count at `at_h`.
 * @param {Settings} c
 * @param {Drift} drift
 * @param {number} at_h
 */
function weights_at(c, drift, at_h) {
  const faded = 0.5 ** (Math.max(at_h - drift.at_h - c.drift_stands_h, 0) / 24);
  return [(drift.doubted ? 0.5 : 1) * drift.weight * faded, drift.past_weight * faded];
}

/**
 * Evenly likely levels of the water at `at_h` by the drift, mg N/L, rising.
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
 * The band of equally weighted draws, drifting levels and past readings together.
 * @param {Settings} c
 * @param {Float64Array} values the draws of the equations, mg N/L
 * @param {Drift} drift
 * @param {number} at_h
 * @returns {import("./bands.js").Band}
 */
export function mixed_band(c, values, drift, at_h) {
  const [drift_weight, past_weight] = weights_at(c, drift, at_h);
  const draws = values.slice().sort();
  const each = (1 - drift_weight - past_weight) / draws.length;
  const levels = levels_at(c, drift, at_h);
  /** @type {[number, number][]} value and weight */
  const others = [];
  for (const level of levels) others.push([level, drift_weight / levels.length]);
  for (const value of drift.past) others.push([value, past_weight / drift.past.length]);
  others.sort((one, other) => one[0] - other[0]);
  others.push([Infinity, 0]);
  const points = [0, 0, 0];
  const marks = [0.1, 0.5, 0.9, Infinity];
  for (let i = 0, j = 0, mark = 0, sum = 0; mark < points.length; ) {
    const [value, weight] = draws[i] <= others[j][0] ? [draws[i++], each] : others[j++];
    sum += weight;
    for (; sum >= marks[mark] - 1e-9; mark += 1) points[mark] = value;
  }
  const [p10, p50, p90] = points;
  return { p10, p50, p90 };
}
