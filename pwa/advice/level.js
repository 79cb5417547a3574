/** Where ammonia, nitrite and nitrate of one tank stand now, and how fast they rise, from its recent readings. */
import { DAY, HOUR } from "../figures/durations.js";
import { nitrogen_units } from "../calc/nitrogen_units.js";
import { answered, input_of, run } from "../contracts.js";
import { of_parameter } from "./of_parameter.js";

/**
 * @import { Change, Facts, Judgement, KnownJudgement, Label, Level, Quick, Source, Watched } from "../types/advice.js"
 */
/** @import { Reading } from "../types/views.js" */

/** The three that a water change lowers, with the ion that a kit reads. */
export const SPECIES = /** @type {const} */ ({ total_ammonia: "nh4", nitrite: "no2", nitrate: "no3" });
/** @type {readonly Watched[]} */
export const WATCHED = ["total_ammonia", "nitrite", "nitrate"];
/** What harms within days, and so is tested on a schedule. @type {readonly Quick[]} */
export const QUICK = ["total_ammonia", "nitrite"];

/** @param {string} parameter @returns {parameter is Watched} */
export const is_watched = (parameter) => Object.hasOwn(SPECIES, parameter);

/**
 * A reading counts for today for this long (assumption: in three days a low level at most doubles).
 */
const RECENT = 3 * DAY;
/**
 * The rise is taken over the readings of the last days, or over the last two if they are further apart. Readings within
 * hours differ by chance, readings weeks apart for other reasons (assumptions).
 */
const RISE_WINDOW = 3 * DAY;
const RISE_OLDEST = 14 * DAY;
const RISE_SHORTEST = 4 * HOUR;

/** What a figure of ammonia, nitrite or nitrate needs to be counted as nitrogen. */
/** @typedef {Pick<Reading, "parameter" | "value" | "basis">} Read */

/**
 * A reading of ammonia, nitrite or nitrate as mg/L of nitrogen.
 * @param {Read} reading
 * @returns {number}
 */
export function as_nitrogen({ parameter, value, basis }) {
  return both_ways(parameter, value, basis).as_n_mg_l;
}

/**
 * The same figure as nitrogen and as the ion, of any figure that a record may hold.
 * @param {string} parameter
 * @param {number} value
 * @param {string} [basis]
 */
export function both_ways(parameter, value, basis) {
  if (!is_watched(parameter)) throw new RangeError(`${parameter} holds no nitrogen`);
  return nitrogen_units({ value, species: SPECIES[parameter], basis: basis === "n" ? "n" : "ion" });
}

/** How a tank's figures of one parameter are read. @typedef {"ion" | "n"} Basis */

/**
 * How the kit used last in a tank reads, else as the ion, as most kits do.
 * @param {{reading: {basis?: Basis} | null} | undefined} level of the parameter
 * @returns {Basis}
 */
export const basis_of = (level) => level?.reading?.basis ?? "ion";

/**
 * Turns mg N/L into what the kit reads, for charts, where no figure is rounded.
 * @param {string} parameter @param {Basis} basis @returns {(mg_n_l: number) => number}
 */
export function as_read(parameter, basis) {
  const factor = basis === "n" ? 1 : both_ways(parameter, 1, "n").as_ion_mg_l;
  return (mg_n_l) => mg_n_l * factor;
}

/**
 * Whether the value is possible. A record may hold a negative value or more than any water has (a drifting meter,
 * another program); it stays recorded, but the advice ignores it.
 * @param {{value: number}} reading
 */
export function possible({ value }) {
  const { min, max } = input_of("nitrogen_units", "value");
  return value >= min && value <= max;
}

/**
 * Nitrogen in a source water, mg N/L; ammonia includes what chloramine frees, unless the dechlorinator binds it.
 * @param {Source | null | undefined} source
 * @param {Watched} parameter
 * @param {Pick<Label, "binds_ammonia"> | null} [label]
 */
export function brought(source, parameter, label) {
  if (!source) return 0;
  if (parameter === "nitrite") return source.nitrite_mg_n_l ?? 0;
  if (parameter === "nitrate") return source.nitrate_mg_n_l ?? 0;
  return (source.tan_mg_n_l ?? 0) + (label?.binds_ammonia ? 0 : (freed_ammonia(source) ?? 0));
}

/**
 * Ammonia that its chloramine frees in the new water, mg N/L; null if the amount of chloramine is not known.
 * @param {Source | null | undefined} source
 * @returns {number | null}
 */
export function freed_ammonia(source) {
  if (source?.disinfectant !== "chloramine") return 0;
  if (source.disinfectant_mg_l === undefined) return null;
  const { disinfectant, disinfectant_mg_l } = source;
  const answer = run("dechlorinator_dose", { change_l: 1, tank_l: 1, disinfectant, disinfectant_mg_l });
  return answered(answer, "freed_ammonia_mg_n_l");
}

/**
 * When ammonia or nitrite was last tested, in ms; -Infinity where neither ever was.
 * @param {Record<Quick, Pick<Level, "reading">>} levels
 */
export const last_test = (levels) =>
  Math.max(...QUICK.map((parameter) => Date.parse(levels[parameter].reading?.at ?? "") || -Infinity));

/** @param {Judgement} one @returns {one is KnownJudgement} */
export const is_known = (one) => one.now_mg_n_l !== null;

/**
 * One of the three now: the last reading, diluted by the changes since, plus the rise.
 * @param {Watched} parameter
 * @param {Pick<Facts, "now" | "readings" | "changes" | "label">} facts
 * @param {number} [recent] ms a reading stays good for
 * @returns {Level}
 */
export function level(parameter, facts, recent = RECENT) {
  const { now, label } = facts;
  const readings = of_parameter(facts.readings, parameter);
  const last = readings.findLast((one) => time(one) <= now && possible(one)) ?? null;
  if (!last || now - time(last) > recent) {
    return {
      parameter,
      reading: last,
      read_mg_n_l: null,
      now_mg_n_l: null,
      rise_mg_n_l_day: 0,
      rise_from: "nothing",
      changed_since: false,
    };
  }
  const read = as_nitrogen(last);
  const since = between(facts.changes, time(last), now);
  const carried = through(read, since, parameter, label);
  const known = rise(readings, last, facts.changes, parameter, label);
  // With one reading only, assume carefully that ammonia and nitrite double in a day.
  const guess = parameter === "nitrate" ? 0 : read;
  const per_day = known ?? guess;
  return {
    parameter,
    reading: last,
    read_mg_n_l: read,
    now_mg_n_l: carried + (known === null ? 0 : per_day * ((now - time(last)) / DAY)),
    rise_mg_n_l_day: per_day,
    rise_from: known !== null ? "readings" : guess > 0 ? "doubling" : "nothing",
    changed_since: since.length > 0,
  };
}

/**
 * The rise over the last days in mg N/L a day, corrected for changes; at least 0; null with one reading only.
 * @param {readonly Reading[]} readings oldest first
 * @param {Reading} last of them that counts
 * @param {readonly Change[]} changes
 * @param {Watched} parameter
 * @param {Label | null} label
 */
function rise(readings, last, changes, parameter, label) {
  let risen = 0;
  let days = 0;
  let later = last;
  // Of years of readings only the last ones are looked at.
  for (let at = readings.lastIndexOf(last) - 1; at >= 0; at--) {
    const earlier = readings[at];
    if (!possible(earlier)) continue;
    const span = time(last) - time(earlier);
    if (span > RISE_OLDEST || (span > RISE_WINDOW && days > 0)) break;
    if (time(later) - time(earlier) < RISE_SHORTEST) continue;
    const changed = between(changes, time(earlier), time(later));
    risen += as_nitrogen(later) - through(as_nitrogen(earlier), changed, parameter, label);
    days += (time(later) - time(earlier)) / DAY;
    later = earlier;
  }
  return days > 0 ? Math.max(0, risen / days) : null;
}

/**
 * A level after changes, each with its own water.
 * @param {number} before_mg_l
 * @param {readonly Change[]} changes
 * @param {Watched} parameter
 * @param {Label | null} label
 */
function through(before_mg_l, changes, parameter, label) {
  return changes.reduce(
    (mg_l, { fraction, source }) =>
      run("dilution", { before_mg_l: mg_l, source_mg_l: brought(source, parameter, label), fractions: [fraction] })
        .after_mg_l,
    before_mg_l,
  );
}

/** @param {readonly Change[]} changes @param {number} from @param {number} to */
const between = (changes, from, to) => changes.filter((change) => time(change) > from && time(change) <= to);
/** @param {{at: string}} event */
const time = ({ at }) => Date.parse(at);
