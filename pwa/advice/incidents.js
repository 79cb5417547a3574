/**
 * When it goes wrong: what is seen or has happened in a tank, and at most six steps against it in order, with this
 * tank's own figures. The order and the steps are common practice; the figures come from the calculations. Pure.
 */
import { HOUR } from "../figures/durations.js";
import { InvalidInput, run } from "../contracts.js";
import { basis_of } from "./level.js";
import { bucket_litres, dose_for, most_at_once } from "./litres.js";
import { as_animals, has_length, stock_of } from "./life/stock.js";
import { heater_input, said_at } from "./setup/setting_up.js";
import { warmth_of } from "./warmth.js";

/** @import { Advised, Facts, LabelDose } from "../types/advice.js" */
/** @import { ClosedWaterInput } from "../types/calculations.js" */
/** @import { Tank, View } from "../types/views.js" */

/**
 * @typedef {keyof typeof STEPS} StepCode
 * @typedef {{steps: readonly StepCode[], tests: readonly View<"reading">["parameter"][], nots: readonly string[],
 * who: "vet" | "electrician" | "label" | null}} Incident
 * `nots`: what not to do, by code; `who`: whose matter it is beside those on the away sheet
 */

/** Codes go into records and do not change. @type {Record<string, Incident>} */
export const INCIDENTS = {
  gasping: {
    steps: ["air", "test", "change", "no_food", "look"],
    tests: ["total_ammonia", "nitrite", "temperature", "ph"],
    nots: ["medicine", "filter"],
    who: "vet",
  },
  deaths: {
    steps: ["take_dead", "air", "test", "change", "apart", "record_loss"],
    tests: ["total_ammonia", "nitrite", "temperature", "ph"],
    nots: ["medicine", "animals"],
    who: "vet",
  },
  ammonia: {
    steps: ["change", "ways", "no_food", "air", "test_again"],
    tests: ["total_ammonia", "nitrite", "ph"],
    nots: ["filter", "animals"],
    who: null,
  },
  chlorine: {
    steps: ["dose_whole", "air", "quiet", "test_ammonia"],
    tests: ["chlorine", "total_ammonia"],
    nots: ["raw", "all_water"],
    who: "vet",
  },
  hot: {
    steps: ["heater_out", "air", "cool", "temperature", "no_food"],
    tests: ["temperature", "total_ammonia"],
    nots: ["ice", "wet_plug"],
    who: "electrician",
  },
  cold: {
    steps: ["plugs", "warm", "temperature", "no_food", "new_heater"],
    tests: ["temperature"],
    nots: ["hot_water", "wet_plug"],
    who: "electrician",
  },
  power_cut: {
    steps: ["plugs", "hourly", "warm", "no_food", "filter_rinse", "test_ammonia"],
    tests: ["temperature", "total_ammonia"],
    nots: ["in_the_dark", "hot_water"],
    who: "electrician",
  },
  overfed: {
    steps: ["take_food", "change", "test", "no_food_days", "air"],
    tests: ["total_ammonia", "nitrite"],
    nots: ["filter", "animals"],
    who: null,
  },
  overdosed: {
    steps: ["read_label", "air", "change_twice", "test", "quiet"],
    tests: ["total_ammonia", "nitrite", "ph"],
    nots: ["counter_dose", "all_water"],
    who: "label",
  },
  leak: {
    steps: ["fuse", "save_fish", "save_water", "save_filter", "floor"],
    tests: ["temperature"],
    nots: ["wet_plug", "glue"],
    who: "electrician",
  },
  not_found: {
    steps: ["search_body", "test_daily", "change_if", "record_loss"],
    tests: ["total_ammonia", "nitrite"],
    nots: ["whole_bed", "animals"],
    who: null,
  },
};
/** A bucket that one person can carry, L (common practice). */
const BUCKET_L = 10;
/** A step that is tapped within this long of the last one belongs to the same incident (assumption). */
const SAME_MS = 48 * HOUR;

/**
 * The tank's own figures; null where its records do not say.
 * @typedef {object} Figures
 * @property {number} litres of the change that helps now
 * @property {LabelDose} dose for those litres
 * @property {LabelDose} whole the dose for all the water
 * @property {number} water_l
 * @property {number | null} celsius
 * @property {number | null} hours of oxygen if the water stands still
 * @property {number} bucket_l
 * @property {number | null} bucket_hours the same of a bucket with all the fish
 * @property {{c_hour: number, room_c: number} | null} cooling without a heater, at first
 * @property {number} left_percent after two such changes
 * @property {number | null} gram_mg_n_l ammonia of one gram of food that stays
 * @property {import("./level.js").Basis} basis in which the kit reads ammonia
 * @property {number} buckets
 * @property {boolean} hold the advice says that this water does not help
 * @property {Advised["instead"]} instead
 */

/** @param {Facts} facts @param {Advised} advice @returns {Figures} */
export function figures_of(facts, advice) {
  const { tank } = facts;
  const most_l = most_at_once(facts);
  const litres =
    (advice.act === "change" && advice.litres) || bucket_litres(most_l, tank.water_l, facts.water_unit, most_l);
  const left = run("dilution", { before_mg_l: 100, source_mg_l: 0, fractions: [litres, litres].map(share_of(tank)) });
  const bucket_l = Math.min(BUCKET_L, tank.water_l / 2);
  const celsius = warmth_of(facts)?.celsius ?? null;
  return {
    litres,
    dose: dose_for(facts, litres),
    whole: dose_for(facts, tank.water_l),
    water_l: tank.water_l,
    celsius,
    hours: oxygen_hours(facts, celsius, tank.water_l),
    bucket_l,
    bucket_hours: oxygen_hours(facts, celsius, bucket_l),
    cooling: cooling_of(tank, celsius),
    left_percent: left.after_mg_l,
    gram_mg_n_l: of_a_gram(tank),
    basis: basis_of(advice.levels.total_ammonia),
    buckets: Math.ceil(tank.water_l / BUCKET_L),
    hold: advice.act === "hold",
    instead: advice.instead,
  };
}

/** @param {Tank} tank */
const share_of = (tank) => (/** @type {number} */ litres) => Math.min(1, litres / tank.water_l);

/**
 * Hours until the oxygen of still water is used up, by `closed_water`; null without animals of known length.
 * @param {Facts} facts @param {number | null} celsius @param {number} water_l
 */
function oxygen_hours({ stock, own_species, now }, celsius, water_l) {
  const animals = as_animals(stock_of(stock, now).animals, own_species).filter(has_length);
  if (celsius === null || animals.length === 0) return null;
  return tried(() => {
    const known = ["species", "name", "count", "length_cm", "shape", "mass_a", "mass_b"];
    const input = {
      water_l,
      temperature_c: celsius,
      animals: animals.map((one) => Object.fromEntries(Object.entries(one).filter(([name]) => known.includes(name)))),
    };
    return run("closed_water", /** @type {ClosedWaterInput} */ (input)).hours_still ?? null;
  });
}

/** @param {Tank} tank @param {number | null} celsius */
function cooling_of(tank, celsius) {
  if (!tank.measures) return null;
  return tried(() => {
    const said = said_at(tank, "warmth");
    const warm = { ...heater_input(tank, said), ...(celsius === null ? {} : { temperature_c: celsius }) };
    const { cooling_c_hour } = run("heater_power", { ...warm, water_l: tank.water_l });
    return typeof cooling_c_hour !== "number" ? null : { c_hour: cooling_c_hour, room_c: said.room_c };
  });
}

/** @param {Tank} tank */
const of_a_gram = ({ water_l, protein_fraction }) =>
  tried(
    () =>
      run("starter_dose", { volume_l: water_l, feed_g_day: 1, ...(protein_fraction ? { protein_fraction } : {}) })
        .tan_mg_n_l,
  );

/** What a calculation answers; null where it refuses what is known of the tank. @template T @param {() => T} ask */
function tried(ask) {
  try {
    return ask();
  } catch (error) {
    if (error instanceof InvalidInput) return null;
    throw error;
  }
}

/**
 * @typedef {{form?: string, why?: string, to?: "test" | "change" | "loss" | "note" | "trace"}} Step `form` and `why`:
 * which of its texts says the step and its reason; `to`: the page where it is done
 */

/** Which form of a text a dose has. @param {LabelDose} dose */
const dosed = (dose) => (dose.amount === undefined ? undefined : "dose");
/** @type {(figures: Figures) => Step} */
const by_hours = ({ hours }) => ({ why: hours === null ? undefined : "hours" });
/** @type {(figures: Figures) => Step} */
const by_rate = ({ cooling }) => ({ why: cooling ? "rate" : undefined });
const plain = () => ({});
const to_test = () => ({ to: /** @type {const} */ ("test") });

/** Every step, and which of its texts these figures allow. */
const STEPS = /** @satisfies {Record<string, (figures: Figures) => Step | null>} */ ({
  air: by_hours,
  hourly: by_hours,
  test: to_test,
  change: ({ hold, dose }) =>
    hold ? { form: "hold" } : { form: dosed(dose), why: dose.missing ? "no_dose" : undefined, to: "change" },
  change_if: ({ dose }) => ({ form: dosed(dose), to: "change" }),
  change_twice: ({ dose }) => ({ form: dosed(dose), to: "change" }),
  ways: ({ instead = [] }) => (instead.length > 0 ? {} : null),
  no_food: plain,
  no_food_days: plain,
  look: () => ({ to: "note" }),
  take_dead: () => ({ to: "note" }),
  apart: () => ({ to: "trace" }),
  record_loss: () => ({ to: "loss" }),
  test_again: to_test,
  test_ammonia: to_test,
  test_daily: to_test,
  temperature: to_test,
  dose_whole: ({ whole }) => ({ form: dosed(whole) }),
  quiet: plain,
  heater_out: plain,
  cool: by_rate,
  plugs: plain,
  warm: by_rate,
  new_heater: plain,
  filter_rinse: plain,
  take_food: ({ gram_mg_n_l }) => ({ why: gram_mg_n_l === null ? undefined : "gram" }),
  read_label: plain,
  fuse: plain,
  save_fish: ({ bucket_hours }) => ({ why: bucket_hours === null ? undefined : "hours" }),
  save_water: plain,
  save_filter: plain,
  floor: plain,
  search_body: plain,
});

/**
 * The steps of an incident in order, those that this tank's figures allow.
 * @param {string} what @param {Figures} figures @returns {(Step & {code: StepCode})[]} at most six
 */
export const steps_of = (what, figures) =>
  INCIDENTS[what].steps.flatMap((code) => {
    const step = STEPS[code](figures);
    return step ? [{ ...step, code }] : [];
  });

/**
 * The incident of this kind that is still going on in a tank, by its notes: its entry, when it began, and the steps
 * done with their time.
 * @param {readonly View<"note">[]} notes of the tank, oldest first @param {string} what @param {number} now ms
 * @returns {{entry: string, began: string, done: Map<string, string>} | null}
 */
export function going_on(notes, what, now) {
  const own = notes.filter((one) => one.incident === what && one.entry);
  const last = own.at(-1);
  if (!last?.entry || now - Date.parse(last.at) > SAME_MS) return null;
  const together = own.filter(({ entry }) => entry === last.entry);
  const done = together.flatMap(({ step, at }) => (step ? [/** @type {[string, string]} */ ([step, at])] : []));
  return { entry: last.entry, began: together[0].at, done: new Map(done) };
}

/**
 * Whom to call: those on the sheet that was made last.
 * @param {readonly View<"away_sheet">[]} sheets @returns {NonNullable<View<"away_sheet">["calls"]>}
 */
export const calls_of = (sheets) =>
  [...sheets.filter(({ calls }) => calls?.length)].sort((a, b) => (a.from_at < b.from_at ? 1 : -1))[0]?.calls ?? [];
