/**
 * The belief about one tank: a weighted cloud of draws, moved by the model and corrected by readings.
 * A plain object, so that it can be stored and sent. Method, units, sources: the Python twin.
 */
import * as acidity from "./acidity.js";
import { after_reading, priors } from "./drift.js";
import * as k from "./kinetics.js";
import { blur, interval, share_below } from "./kit_reading.js";
import { normals, uniform } from "./random_numbers.js";

/** @typedef {import("./kinetics.js").Settings} Settings */
/** @typedef {import("./tank_events.js").Tank} Tank */
/** @typedef {import("./drift.js").Drift} Drift */
/** @typedef {"total_ammonia" | "nitrite" | "nitrate"} Nitrogen what a reading of nitrogen measures */
/** @typedef {{tan_mg_n_l?: number, nitrite_mg_n_l?: number, nitrate_mg_n_l?: number, kh_dkh?: number}} Source */
/**
 * @typedef {{at_h: number, parameter: Nitrogen, value_mg_n_l: number, expected_p10_mg_n_l: number, expected_p90_mg_n_l:
 * number}} Doubt
 */
/**
 * @typedef {{cloud: Float64Array[], weight: Float64Array, seed: number, position: number, at_h: number, base: number,
 *   sd_input: number, temperature_c: number, ph: number, kh_dkh: number | undefined,
 *   input_known: boolean, meal_n: number, fed_until_h: number, readings: number, doubts: Doubt[], begun_h: number,
 *   fresh: number[], drifts: Record<number, Drift>}} Belief
 */

/** @type {Record<Nitrogen, number>} */
const ROW_OF = { total_ammonia: k.TAN, nitrite: k.NITRITE, nitrate: k.NITRATE };
// Hardness can be used up, so its logarithm needs a floor.
const HARDNESS = [k.KH, k.SOURCE_KH];
const JITTERED = [
  ...[k.CAPACITY_1, k.CAPACITY_2, k.INPUT, k.UPTAKE, k.GROWTH_1, k.GROWTH_2, k.HALF_1, k.HALF_2, k.DECAY],
  ...[k.TOLERANCE, ...HARDNESS, k.CO2],
];
/** @type {Record<number, number>} */
const CAPACITY_OF = { [k.TAN]: k.CAPACITY_1, [k.NITRITE]: k.CAPACITY_2 };
/** @type {Record<number, import("./drift.js").Plain>} The parameters that have plain forecasts. */
const PLAIN = { [k.TAN]: "tan", [k.NITRITE]: "nitrite" };
/** @type {[number, string][]} */
const WALKS = [
  [k.CAPACITY_1, "walk_capacity"],
  [k.CAPACITY_2, "walk_capacity"],
  [k.INPUT, "walk_input"],
  [k.UPTAKE, "walk_uptake"],
  [k.TAN, "walk_nitrogen"],
  [k.NITRITE, "walk_nitrogen"],
  [k.KH, "walk_kh"],
  [k.CO2, "walk_co2"],
];
// One buffer for all draws: each set is used before the next is drawn.
let luck = new Float64Array(0);

/** An independent copy. @param {Belief} belief @returns {Belief} */
export const copy = (belief) => ({
  ...belief,
  cloud: belief.cloud.map((row) => row.slice()),
  weight: belief.weight.slice(),
  doubts: [...belief.doubts],
  fresh: [...belief.fresh],
  drifts: Object.fromEntries(Object.entries(belief.drifts).map(([row, drift]) => [row, { ...drift }])),
});

/** New standard normal draws, `rows` for each draw, in one buffer. @param {Belief} belief @param {number} rows */
export function draw(belief, rows) {
  const count = rows * belief.weight.length;
  if (luck.length < count) luck = new Float64Array(count);
  normals(belief.seed, belief.position, luck.subarray(0, count));
  belief.position += count / 2;
  return luck;
}

/**
 * [expected mg N/L/day from the feed, spread of its logarithm].
 * @param {Settings} c
 * @param {Tank} tank
 * @returns {[number, number]}
 */
export function nominal_input(c, tank) {
  const feed = tank.feed_g_day ?? (tank.fish_g === undefined ? undefined : c.feed_of_fish * tank.fish_g);
  if (feed === undefined) return [c.unknown_input, c.sd_unknown_input];
  const protein = tank.protein_fraction ?? c.protein_fraction;
  return [Math.max((feed * protein * c.tan_per_protein * 1000) / tank.volume_l, c.least_input), c.sd_input];
}

/**
 * The belief before any reading.
 * @param {Settings} c
 * @param {Tank} tank
 * @param {number} seed
 * @param {number} at_h
 * @returns {Belief}
 */
export function prior(c, tank, seed, at_h) {
  const n = c.draws;
  const [base, sd_input] = nominal_input(c, tank);
  const { seeded, planting } = tank;
  const start = seeded === "mature_media" ? c.mature_share * base : c[`capacity_${seeded}`];
  /** @type {Belief} */
  const belief = {
    cloud: [],
    weight: new Float64Array(n).fill(1 / n),
    seed,
    position: 0,
    at_h,
    base,
    sd_input,
    temperature_c: tank.temperature_c,
    ph: tank.ph,
    kh_dkh: tank.kh_dkh,
    input_known: tank.feed_g_day !== undefined || tank.fish_g !== undefined,
    meal_n: 0,
    fed_until_h: -1,
    readings: 0,
    doubts: [],
    begun_h: at_h,
    fresh: Object.values(ROW_OF),
    drifts: {},
  };
  const centres = [
    [c.start_tan, c.sd_start],
    [c.start_nitrite, c.sd_start],
    [c.start_nitrate, c.sd_start],
    [start, c[`sd_capacity_${seeded}`]],
    [start, c[`sd_capacity_${seeded}`]],
    [1, sd_input],
    [c[`uptake_${planting}`], c.sd_uptake],
    [c.growth_1, c.sd_growth],
    [c.growth_2, c.sd_growth],
    [c.half_1, c.sd_half],
    [c.half_2, c.sd_half],
    [c.decay, c.sd_decay],
    [1, 0],
    [1, c.sd_appetite],
  ];
  const noise = draw(belief, k.ROWS);
  belief.cloud = centres.map(([centre, sd], row) => {
    const out = new Float64Array(n);
    for (let i = 0; i < n; i += 1) out[i] = centre * Math.exp(sd * noise[row * n + i]);
    return out;
  });
  const luck_of_tolerance = noise.slice(k.TOLERANCE * n, (k.TOLERANCE + 1) * n);
  belief.cloud[k.TOLERANCE] = luck_of_tolerance.map((one) => Math.exp(c.sd_tolerance * one));
  acidity.begin(c, belief, noise);
  return belief;
}

/**
 * Moves the belief to `until_h` in place; `seen(belief, hours)` is called after every step.
 * @param {Settings} c
 * @param {Belief} belief
 * @param {number} until_h
 * @param {(belief: Belief, hours: number) => void} [seen]
 */
export function advance(c, belief, until_h, seen) {
  while (belief.at_h < until_h - 1e-9) {
    const water = acidity.water_of(c, belief);
    const walk_at = next_walk_h(c, belief.at_h);
    const stop = Math.min(walk_at, until_h);
    const steps = Math.max(1, Math.ceil((stop - belief.at_h) / c.step_h - 1e-9));
    const start = belief.at_h;
    const hours = (stop - start) / steps;
    const days = hours / 24;
    const kept = Math.exp(-c.meal_rate * days);
    for (let i = 0; i < steps; i += 1) {
      const base = start + i * hours < belief.fed_until_h ? 0 : belief.base;
      const released = belief.meal_n * (1 - kept);
      belief.meal_n *= kept;
      k.step(belief.cloud, days, base, released, water, c);
      belief.at_h = start + (i + 1) * hours;
      if (seen) seen(belief, hours);
    }
    belief.at_h = stop;
    // Rounding can leave `stop` slightly before `walk_at`. That counts as reached: the next step looks beyond it.
    if (next_walk_h(c, stop) > walk_at) wander(c, belief);
    acidity.settle(belief);
  }
}

/** @param {Settings} c @param {number} at_h */
const next_walk_h = (c, at_h) => (Math.floor(at_h / c.walk_h + 1e-9) + 1) * c.walk_h;

/** @param {Settings} c @param {Belief} belief */
function wander(c, belief) {
  const n = belief.weight.length;
  const root = Math.sqrt(c.walk_h / 24);
  const noise = draw(belief, WALKS.length + 1);
  for (let walk = 0, at = 0; walk < WALKS.length; walk += 1) {
    const [row, name] = WALKS[walk];
    const values = belief.cloud[row];
    const sd = c[name] * root;
    for (let i = 0; i < n; i += 1, at += 1) values[i] *= Math.exp(sd * noise[at]);
  }
  const appetite = belief.cloud[k.APPETITE];
  const { sd_appetite } = c;
  for (let i = 0, at = WALKS.length * n; i < n; i += 1, at += 1) appetite[i] = Math.exp(sd_appetite * noise[at]);
}

/**
 * What the changes of the week before `now_h` come to as a steady exchange, 1/day.
 * @param {{at_h: number, fraction: number}[]} changes @param {number} now_h
 */
export function daily_change(changes, now_h) {
  let exchanged = 0;
  for (const { at_h, fraction } of changes) {
    if (now_h - 168 <= at_h && at_h <= now_h) exchanged -= Math.log(1 - Math.min(fraction, 0.99));
  }
  return exchanged / 7;
}

/**
 * A copy with every `every`th draw, all of equal weight, to look far ahead with.
 * @param {Belief} belief @param {number} every @returns {Belief}
 */
export function thinned(belief, every) {
  const n = belief.weight.length / every;
  const chosen = Int32Array.from({ length: n }, (_, i) => i * every);
  const cloud = belief.cloud.map((row) => pick(row, chosen));
  return { ...copy(belief), cloud, weight: new Float64Array(n).fill(1 / n) };
}

/**
 * Replaces `fraction` of the water by source water with its own nitrogen and hardness; exact, without a time step.
 * @param {Belief} belief
 * @param {number} fraction
 * @param {Source} source
 */
export function change_water(belief, fraction, source) {
  belief.fresh = [];
  const { tan_mg_n_l = 0, nitrite_mg_n_l = 0, nitrate_mg_n_l = 0 } = source;
  [tan_mg_n_l, nitrite_mg_n_l, nitrate_mg_n_l].forEach((mg_n_l, row) => {
    const values = belief.cloud[row];
    const brought = fraction * mg_n_l;
    for (let i = 0; i < values.length; i += 1) values[i] = values[i] * (1 - fraction) + brought;
    const drift = belief.drifts[row];
    if (drift) drift.level = drift.level * (1 - fraction) + brought;
  });
  const [kh, source_kh] = [belief.cloud[k.KH], belief.cloud[k.SOURCE_KH]];
  // Where the tank's hardness is not known, its draws only stand for enough of it.
  const told = belief.kh_dkh === undefined ? undefined : source.kh_dkh;
  for (let i = 0; i < kh.length; i += 1) kh[i] = kh[i] * (1 - fraction) + fraction * (told ?? source_kh[i]);
  acidity.settle(belief);
}

/**
 * Adds a dose, mg N/L, as exact as keepers measure it; as ammonia water it brings alkalinity, too.
 * @param {Settings} c @param {Belief} belief @param {number} tan_mg_n_l
 */
export function add_ammonia(c, belief, tan_mg_n_l) {
  const [tan, kh, alkali] = [belief.cloud[k.TAN], belief.cloud[k.KH], belief.cloud[k.ALKALI]];
  const noise = draw(belief, 1);
  const per_mg_n = k.dkh_per_mg_n();
  for (let i = 0; i < tan.length; i += 1) {
    const given = tan_mg_n_l * Math.exp(c.sd_dose * noise[i]);
    tan[i] += given;
    kh[i] += per_mg_n * given * alkali[i];
  }
  acidity.settle(belief);
  belief.fresh = belief.fresh.filter((row) => row !== k.TAN);
  const drift = belief.drifts[k.TAN];
  if (drift) drift.level += tan_mg_n_l;
}

/**
 * Weights the draws by one reading, mg N/L; records a doubt when it does not fit.
 * @param {Settings} c
 * @param {Belief} belief
 * @param {Nitrogen} parameter
 * @param {number} value
 * @param {number[] | undefined} steps
 */
export function observe(c, belief, parameter, value, steps) {
  const row = ROW_OF[parameter];
  const kind = parameter === "nitrate" ? "nitrate" : "reading";
  const offset = blur(steps, c[`${kind}_offset`]);
  const scale = (c[`${kind}_sd`] * Math.sqrt(3)) / Math.PI;
  const [low, high] = interval(value, steps, offset, scale);
  const first = begin_at(c, belief, row, value, offset, scale);
  let below_high = share_below(belief.cloud[row], high, offset, scale, 1);
  let below_low = share_below(belief.cloud[row], low, offset, scale, 0);
  let at_most = 0;
  let at_least = 0;
  let equations_chance = 0;
  for (let i = 0; i < below_high.length; i += 1) {
    at_most += belief.weight[i] * below_high[i];
    at_least += belief.weight[i] * (1 - below_low[i]);
    equations_chance += belief.weight[i] * (below_high[i] - below_low[i]);
  }
  belief.readings += 1;
  if (row in PLAIN) {
    const prior = priors(c, PLAIN[row], belief.input_known);
    const reading = { value, low, high, offset };
    belief.drifts[row] = after_reading(c, belief.drifts[row], prior, belief.at_h, reading, equations_chance);
  }
  if (!first && Math.min(at_most, at_least) < c.doubt_chance) {
    const [p10, p90] = weighted_quantiles(belief.cloud[row], belief.weight, [0.1, 0.9]);
    const again = belief.doubts.some((doubt) => agrees(c, belief, doubt, parameter, low, high));
    belief.doubts.push({
      at_h: belief.at_h,
      parameter,
      value_mg_n_l: value,
      expected_p10_mg_n_l: p10,
      expected_p90_mg_n_l: p90,
    });
    suppose_event(c, belief, row, { value, offset, scale, again });
    below_high = share_below(belief.cloud[row], high, offset, scale, 1);
    below_low = share_below(belief.cloud[row], low, offset, scale, 0);
  }
  const { weight } = belief;
  let total = 0;
  for (let i = 0; i < weight.length; i += 1) {
    weight[i] *= (1 - c.outlier) * (below_high[i] - below_low[i]) + c.outlier * c.outlier_spread;
    total += weight[i];
  }
  let squares = 0;
  for (let i = 0; i < weight.length; i += 1) {
    weight[i] /= total;
    squares += weight[i] * weight[i];
  }
  if (1 / squares < 0.5 * weight.length) resample(c, belief);
}

/**
 * Whether an earlier doubted reading of the last days lies between `low` and `high` as well.
 * @param {Settings} c
 * @param {Belief} belief
 * @param {Doubt} doubt
 * @param {Nitrogen} parameter
 * @param {number | null} low
 * @param {number | null} high
 */
const agrees = (c, belief, doubt, parameter, low, high) =>
  belief.at_h - doubt.at_h <= c.doubt_stands_h &&
  doubt.parameter === parameter &&
  (low === null || doubt.value_mg_n_l >= low) &&
  (high === null || doubt.value_mg_n_l <= high);

/**
 * Lets some draws start anew from the reading, with bacteria as unsure as a new tank's.
 * @param {Settings} c
 * @param {Belief} belief
 * @param {number} row
 * @param {{value: number, offset: number, scale: number, again: boolean}} reading `again`: it repeats a doubted one
 */
function suppose_event(c, belief, row, { value, offset, scale, again }) {
  resample(c, belief);
  const n = belief.weight.length;
  const [every, chance] = again ? [2, c.repeat_chance] : [c.event_every, c.event_chance];
  redraw(belief, row, 0, every, value, offset, scale);
  /** @type {[number, number][]} */
  const unsure = row in CAPACITY_OF ? [[CAPACITY_OF[row], c.sd_event_capacity]] : [];
  if (row === k.TAN) unsure.push([k.INPUT, belief.sd_input]);
  for (const [of, sd] of unsure) {
    const noise = draw(belief, 1);
    const values = belief.cloud[of];
    for (let i = 0; i < n; i += every) values[i] *= Math.exp(sd * noise[i]);
  }
  belief.weight.fill((1 - chance) / (n - n / every));
  for (let i = 0; i < n; i += every) belief.weight[i] = chance / (n / every);
}

/**
 * True for a first reading of `row` soon after the start; half of the draws then start from that reading.
 * @param {Settings} c
 * @param {Belief} belief
 * @param {number} row
 * @param {number} value
 * @param {number} offset
 * @param {number} scale
 */
function begin_at(c, belief, row, value, offset, scale) {
  if (!belief.fresh.includes(row)) return false;
  belief.fresh = belief.fresh.filter((one) => one !== row);
  if (belief.at_h - belief.begun_h > c.first_reading_h) return false;
  redraw(belief, row, 1, 2, value, offset, scale);
  return true;
}

/**
 * Replaces every `every`th draw of `row`, from `start` on, by the reading `value`, spread by the kit's error.
 * @param {Belief} belief
 * @param {number} row
 * @param {number} start
 * @param {number} every
 * @param {number} value
 * @param {number} offset
 * @param {number} scale
 */
function redraw(belief, row, start, every, value, offset, scale) {
  const noise = draw(belief, 1);
  const values = belief.cloud[row];
  for (let i = start; i < values.length; i += every) {
    const redrawn = (value + offset) * Math.exp(((scale * Math.PI) / Math.sqrt(3)) * noise[i]) - offset;
    values[i] = Math.max(redrawn, 1e-4);
  }
}

/**
 * Resamples the cloud by weight, then moves each draw's unknowns a little towards a partner's.
 * @param {Settings} c
 * @param {Belief} belief
 */
export function resample(c, belief) {
  const chosen = systematic(belief);
  const n = chosen.length;
  belief.position += 1;
  belief.cloud = belief.cloud.map((row) => pick(row, chosen));
  belief.weight.fill(1 / n);
  const width = c.jitter;
  const keep = Math.sqrt(1 - width * width);
  const partner = partners(belief);
  const off = new Float64Array(n);
  for (const row of JITTERED) {
    const values = belief.cloud[row];
    const least = HARDNESS.includes(row) ? acidity.LEAST_KH : 0;
    let mean = 0;
    for (let i = 0; i < n; i += 1) {
      values[i] = Math.log(Math.max(values[i], least));
      mean += values[i];
    }
    mean /= n;
    for (let i = 0; i < n; i += 1) off[i] = values[i] - mean;
    for (let i = 0; i < n; i += 1) values[i] = Math.exp(mean + keep * off[i] + width * off[partner[i]]);
  }
  acidity.settle(belief);
}

/**
 * Another draw for each draw, at random, as indices: an odd stride visits each of 2^m draws once.
 * @param {Belief} belief
 */
function partners(belief) {
  const n = belief.weight.length;
  const stride = 2 * Math.floor((uniform(belief.seed, belief.position) * n) / 2) + 1;
  const start = Math.floor(uniform(belief.seed, belief.position + 1) * n);
  belief.position += 2;
  return Int32Array.from({ length: n }, (_, i) => (stride * i + start) % n);
}

/** @param {Float64Array} row @param {Int32Array} chosen */
export function pick(row, chosen) {
  const out = new Float64Array(chosen.length);
  for (let i = 0; i < out.length; i += 1) out[i] = row[chosen[i]];
  return out;
}

/** The draws that stand for the weighted cloud with equal weights, as indices, in order. @param {Belief} belief */
export function systematic(belief) {
  const n = belief.weight.length;
  const total = new Float64Array(n);
  let sum = 0;
  for (let i = 0; i < n; i += 1) total[i] = sum += belief.weight[i];
  const start = uniform(belief.seed, belief.position);
  const chosen = new Int32Array(n);
  for (let i = 0, j = 0; i < n; i += 1) {
    const mark = ((i + start) / n) * sum;
    while (j < n - 1 && total[j] < mark) j += 1;
    chosen[i] = j;
  }
  return chosen;
}

/**
 * The smallest of `values` whose cumulated weight reaches each share.
 * @param {Float64Array} values
 * @param {Float64Array} weight
 * @param {number[]} shares
 */
export function weighted_quantiles(values, weight, shares) {
  const order = Array.from(values.keys()).sort((i, j) => values[i] - values[j]);
  const total = order.reduce((sum, i) => sum + weight[i], 0);
  return shares.map((share) => {
    let sum = 0;
    return values[order.find((i) => (sum += weight[i]) >= share * total) ?? order[order.length - 1]];
  });
}
