/**
 * Everything that a tank's records say against calling it steady: one row a finding. Pure: no words. The worst finding
 * leads the sentence, the rest stand below it. To add one, add its row here, its figures to `Finding` in
 * types/advice.d.ts, and its words `find.CODE` and `find.CODE.why` to every catalogue.
 */
import { DAY, HOUR } from "../figures/durations.js";
import { table } from "../calc/tables.js";
import { in_degrees } from "./hardness.js";
import { borne } from "./life/bears.js";
import { night_of } from "./life/night.js";
import { stock_of } from "./life/stock.js";
import { bucket_litres, dose_for } from "./litres.js";
import { of_parameter } from "./of_parameter.js";

/** @import { Advice, Advised, Facts, Finding, FindingBase, FindingCode, FindingFigures } from "../types/advice.js" */
/** @import { Urgency } from "../types/advice.js" */
/** @import { Borne } from "./life/bears.js" */
/** @import { Reading } from "../types/views.js" */

/** @typedef {{facts: Facts, inhabited: boolean, water: Pick<Advice, "state" | "reasons">}} Known */
/** @template {FindingCode} C @typedef {FindingBase & FindingFigures[C]} Found */
/**
 * @template {FindingCode} [C=FindingCode]
 * @typedef {{code: C, source: string, find: (known: Known) => Found<C> | null}} Row `source`: a key of sources.json
 */

/** From the worst to the least. @type {readonly Urgency[]} */
export const URGENCIES = ["act now", "change today", "watch"];

/** A reading of temperature, chlorine or oxygen tells of the tank for this long; of pH and hardness, this long. */
const FRESH = 2 * DAY;
const FRESH_PH = 7 * DAY;
/** What was seen or happened counts for this long (assumptions). */
const SEEN = DAY;
const DEATHS = 3 * DAY;
/** Heat and cold beyond these are wrong for nearly every animal of such tanks (assumption). */
const ANY_ANIMAL_C = { low: 12, high: 32 };
/** Beyond these the water itself is wrong: bacteria nearly stop, or free ammonia rules (common practice). */
const ANY_ANIMAL_PH = { low: 5, high: 9 };
const PH_BORNE = 0.5;
/** The widest day-to-day steps that keepers let animals bear (common practice). */
const STEP_C = 3;
const STEP_PH = 0.5;
/** Where carbonate hardness is nearly gone, pH can fall within a day (common practice). */
const LAST_KH = 1;
/** Foreseen within so many days, it is said first (assumption). */
const KH_ENDS_DAYS = 5;
/** A change of more than this at once can shock the animals (common practice). */
const LARGEST_CHANGE = 0.55;
/** Twice the label is too much of a dechlorinator: it takes oxygen with it (assumption). */
const DOSE_TOO_LARGE = 2;

/** @typedef {{[C in FindingCode]: Row<C>}[FindingCode]} AnyRow */

/**
 * The rows, from the most pressing kind to the least: of two as urgent, the earlier leads.
 * @type {readonly AnyRow[]}
 */
const FINDINGS = [
  row("chlorine", "epa_1984_chlorine", chlorine),
  row("undosed", "keepers_practice", undosed),
  row("gasping", "keepers_practice", ({ facts, inhabited }) =>
    inhabited ? with_quarter(facts, seen(facts, "at_surface", "act now")) : null,
  ),
  row("oxygen_low", "epa_1986_oxygen", oxygen_low),
  row("hot", "keepers_practice", (known) => temperature_out(known, "high")),
  row("cold", "keepers_practice", (known) => temperature_out(known, "low")),
  row("water", "limnary_outlook", ({ water: { state } }) => (state === "steady" ? null : { urgency: state })),
  row("deaths", "keepers_practice", deaths),
  row("ph_low", "keepers_practice", (known) => ph_out(known, "low")),
  row("ph_high", "keepers_practice", (known) => ph_out(known, "high")),
  row("ph_jump", "keepers_practice", ({ facts, inhabited }) =>
    inhabited ? jump(facts, "ph", STEP_PH, 2 * STEP_PH) : null,
  ),
  row("temperature_jump", "keepers_practice", ({ facts, inhabited }) =>
    inhabited ? jump(facts, "temperature", STEP_C, 2 * STEP_C) : null,
  ),
  row("dawn", "epa_1986_oxygen", dawn),
  row("kh_gone", "keepers_practice", kh_gone),
  row("kh_ends", "limnary_outlook", kh_ends),
  row("overdosed", "keepers_practice", overdosed),
  row("large_change", "keepers_practice", large_change),
  row("hiding", "keepers_practice", ({ facts, inhabited }) => (inhabited ? seen(facts, "hiding", "watch") : null)),
  row("soft", "keepers_practice", (known) => hardness_out(known, "low")),
  row("hard", "keepers_practice", (known) => hardness_out(known, "high")),
];

/**
 * Every finding of a tank, the worst first.
 * @param {Facts} facts
 * @param {Pick<Advice, "state" | "reasons">} water what its ammonia, nitrite and nitrate want, and why
 * @returns {Finding[]}
 */
export function findings_of(facts, water) {
  const known = { facts, inhabited: inhabited(facts), water };
  const found = FINDINGS.flatMap(({ code, source, find }) => {
    const one = find(known);
    return one ? [/** @type {Finding} */ ({ ...one, code, source })] : [];
  });
  return [...found].sort((a, b) => URGENCIES.indexOf(a.urgency) - URGENCIES.indexOf(b.urgency));
}

/**
 * The state that the worst of them calls for.
 * @param {Finding[]} findings the worst first
 * @returns {Advice["state"]}
 */
export const state_of = (findings) => findings[0]?.urgency ?? "steady";

/**
 * Whether animals live here, as far as is known: by the stock list where one was ever kept, else by the grams of fish
 * or the food of the tank's record. Where nothing at all is known, animals are assumed.
 * @param {Facts} facts
 */
export function inhabited({ tank, stock, now, feedings }) {
  if (stock.length > 0) {
    const { animals, short } = stock_of(stock, now);
    // Losses of animals that nobody recorded say that there are others.
    return animals.length > 0 || short.length > 0;
  }
  if (tank.fish_g !== undefined) return tank.fish_g > 0;
  if (tank.feed_g_day === 0) return false;
  // A tank that was set up here records its animals from the first day.
  return tank.feed_g_day !== undefined || feedings.length > 0 || tank.setup_fill === undefined;
}

/** Whether animals may be invited at all: nothing is found. @param {Pick<Advised, "findings">} advice */
export const invites = ({ findings }) => findings.length === 0;

/**
 * @template {FindingCode} C
 * @param {C} code
 * @param {string} source
 * @param {(known: Known) => Found<C> | null} find
 * @returns {Row<C>}
 */
function row(code, source, find) {
  return { code, source, find };
}

/**
 * The newest reading of a parameter, if it is not older than `for_ms`.
 * @param {Facts} facts
 * @param {Reading["parameter"]} parameter
 * @param {number} for_ms
 */
function newest({ readings, now }, parameter, for_ms) {
  const last = of_parameter(readings, parameter).findLast((one) => time(one) <= now + HOUR);
  return last && now - time(last) <= for_ms ? last : null;
}

/**
 * Chlorine that a test shows is too much: its limit lies below what such a test can show.
 * @param {Known} known
 * @returns {Found<"chlorine"> | null}
 */
function chlorine({ facts }) {
  const read = newest(facts, "chlorine", SEEN);
  const limit = table("limits").limits.chlorine_mg_l.value;
  if (!read || read.value <= limit) return null;
  return { urgency: "act now", since: time(read), read: read.value, limit, dose: dose_for(facts, facts.tank.water_l) };
}

/**
 * New water that needs a dechlorinator, logged without a dose, though the tank has a label to dose by.
 * @param {Known} known
 * @returns {Found<"undosed"> | null}
 */
function undosed({ facts }) {
  const { changes, doses, label, now } = facts;
  if (!label) return null;
  const bare = changes.findLast(
    (change) =>
      now - time(change) <= SEEN &&
      !change.from_tank &&
      [facts.source, change.source].some((water) => water && water.disinfectant !== "none") &&
      change.source?.disinfectant !== "none" &&
      !doses.some(
        (dose) => dose.label && (dose.water_change === change.id || Math.abs(time(dose) - time(change)) <= 3 * HOUR),
      ),
  );
  if (!bare) return null;
  // A later dose by the label makes good for it.
  const later = doses.some((dose) => dose.label && time(dose) > time(bare));
  if (later) return null;
  return { urgency: "act now", since: time(bare), litres: bare.litres, dose: dose_for(facts, facts.tank.water_l) };
}

/**
 * What a note's tile says was seen within the last day, unless a later note says that all is well.
 * @param {Facts} facts
 * @param {string} tile
 * @param {Urgency} urgency
 */
function seen({ notes, now }, tile, urgency) {
  const told = notes.filter((one) => now - time(one) <= SEEN && time(one) <= now + HOUR);
  const last = told.findLast(({ quick }) => quick?.includes(tile));
  const well = told.findLast(({ quick }) => quick?.includes("well"));
  if (!last || (well && time(well) > time(last))) return null;
  return { urgency, since: time(last) };
}

/**
 * With a quarter of the water, the change that helps against what no test shows (common practice).
 * @template {object} T
 * @param {Facts} facts
 * @param {T | null} found
 */
function with_quarter({ tank, water_unit }, found) {
  return found && { ...found, litres: bucket_litres(tank.water_l / 4, tank.water_l, water_unit) };
}

/** @param {Known} known @returns {Found<"oxygen_low"> | null} */
function oxygen_low({ facts, inhabited: animals }) {
  const read = newest(facts, "oxygen", SEEN);
  if (!read || !animals) return null;
  const { warm_day_minimum: day, warm_mean: mean } = OXYGEN;
  if (read.value >= mean) return null;
  return { urgency: read.value < day ? "act now" : "watch", since: time(read), read: read.value, limit: mean };
}

/**
 * Oxygen of warm-water fish, mg/L: no less in any hour than the first, no less in a week's mean minimum than the second
 * (EPA 1986).
 */
const OXYGEN = { warm_day_minimum: 3, warm_mean: 4 };

/**
 * The night's oxygen: beyond doubt too low, or low in the usual case.
 * @param {Known} known
 * @returns {Found<"dawn"> | null}
 */
function dawn({ facts, inhabited: animals }) {
  const night = animals ? night_of(facts) : null;
  if (!night || night.dawn_mg_l >= OXYGEN.warm_mean) return null;
  const urgency = night.dawn_high_mg_l < OXYGEN.warm_mean ? "change today" : "watch";
  return { urgency, low: night.dawn_low_mg_l, high: night.dawn_high_mg_l, limit: OXYGEN.warm_mean };
}

/**
 * @param {Known} known
 * @param {"low" | "high"} end
 * @returns {Found<"hot" | "cold"> | null}
 */
function temperature_out({ facts, inhabited: animals }, end) {
  const read = newest(facts, "temperature", FRESH);
  if (!read || !animals) return null;
  const out = beyond(facts, "temperature_c", read.value, end, ANY_ANIMAL_C[end]);
  if (!out) return null;
  // One degree is a summer day, more is an emergency (assumption).
  return {
    urgency: out.by > 1 ? "act now" : "watch",
    since: time(read),
    read: read.value,
    limit: out.limit,
    who: out.who,
  };
}

/**
 * @param {Known} known
 * @param {"low" | "high"} end
 * @returns {Found<"ph_low" | "ph_high"> | null}
 */
function ph_out({ facts, inhabited: animals }, end) {
  const read = newest(facts, "ph", FRESH_PH);
  if (!read) return null;
  const any = ANY_ANIMAL_PH[end];
  const extreme = end === "low" ? any - read.value : read.value - any;
  const out = animals ? beyond(facts, "ph", read.value, end, any) : null;
  const found = { since: time(read), read: read.value };
  // Half a unit beyond any animal's bounds is acid or lye for all of them (assumption).
  if (extreme > 0)
    return { ...found, urgency: animals && extreme > 0.5 ? "act now" : "change today", limit: any, who: "" };
  // The ranges of the table are where animals thrive; they bear half a unit more, which a kit may be off (assumptions).
  if (!out || out.by <= PH_BORNE) return null;
  return { ...found, urgency: out.by > 3 * PH_BORNE ? "change today" : "watch", limit: out.limit, who: out.who };
}

/**
 * General hardness outside of what the animals bear: never urgent, worth knowing.
 * @param {Known} known
 * @param {"low" | "high"} end
 * @returns {Found<"soft" | "hard"> | null}
 */
function hardness_out({ facts, inhabited: animals }, end) {
  const read = newest(facts, "gh", 4 * FRESH_PH);
  const dgh = read ? in_degrees(read) : facts.tank.gh_dgh;
  if (dgh === undefined || !animals) return null;
  const theirs = borne(facts, "gh_dgh")[end];
  // A drop test counts whole degrees.
  if (!theirs || (end === "low" ? theirs.value - dgh : dgh - theirs.value) <= 1) return null;
  return { urgency: "watch", since: read ? time(read) : undefined, read: dgh, limit: theirs.value, who: theirs.who };
}

/**
 * By how much a figure passes what the animals here bear; any animal's bounds hold beside the table's.
 * @param {Facts} facts
 * @param {Borne} figure
 * @param {number} value
 * @param {"low" | "high"} end
 * @param {number} any
 * @returns {{limit: number, who: string, by: number} | null}
 */
function beyond(facts, figure, value, end, any) {
  const theirs = borne(facts, figure)[end];
  const limit = theirs?.value ?? any;
  const by = end === "high" ? value - limit : limit - value;
  return by > 0 ? { limit, who: theirs?.who ?? "", by } : null;
}

/**
 * A figure that moved too far within a day and a half.
 * @param {Facts} facts
 * @param {"ph" | "temperature"} parameter
 * @param {number} step
 * @param {number} at_once from here on it is an alarm
 * @returns {Found<"ph_jump" | "temperature_jump"> | null}
 */
function jump(facts, parameter, step, at_once) {
  const last = newest(facts, parameter, FRESH);
  if (!last) return null;
  const last_at = time(last);
  const before = of_parameter(facts.readings, parameter).filter(
    (one) => one.id !== last.id && within(last_at - time(one), 0, 1.5 * DAY),
  );
  const widest = [...before].sort((a, b) => Math.abs(last.value - b.value) - Math.abs(last.value - a.value))[0];
  const by = widest ? Math.abs(last.value - widest.value) : 0;
  // Floats: 7.4 - 6.9 is a hair over 0.5.
  if (!widest || by <= step + 1e-9) return null;
  return {
    urgency: by > at_once + 1e-9 ? "act now" : "watch",
    since: time(last),
    read: last.value,
    from: widest.value,
  };
}

/**
 * Deaths of the last days that are neither age nor a jump out of the tank.
 * @param {Known} known
 * @returns {Found<"deaths"> | null}
 */
function deaths({ facts }) {
  const lost = facts.stock.filter(
    ({ change, cause_code, ...one }) =>
      change === "death" && within(facts.now - time(one), -HOUR, DEATHS) && !NO_ALARM.includes(cause_code ?? ""),
  );
  const count = lost.reduce((sum, one) => sum + one.count, 0);
  if (count === 0) return null;
  return with_quarter(facts, {
    urgency: /** @type {Urgency} */ (count > 1 ? "act now" : "watch"),
    since: Math.min(...lost.map(time)),
    count,
  });
}

/** Deaths that the water did not cause. */
const NO_ALARM = ["age", "jumped"];

/** @param {Known} known @returns {Found<"kh_ends"> | null} */
function kh_ends({ facts, water }) {
  const foreseen = water.reasons.find(({ code }) => code === "kh_gone");
  if (foreseen?.code !== "kh_gone" || foreseen.count > KH_ENDS_DAYS || kh_gone({ facts })) return null;
  return { urgency: "watch", count: foreseen.count };
}

/** @param {Pick<Known, "facts">} known @returns {Found<"kh_gone"> | null} */
function kh_gone({ facts }) {
  const read = newest(facts, "kh", FRESH_PH);
  const dkh = read && in_degrees(read);
  if (!read || dkh === null || dkh === undefined || dkh > LAST_KH) return null;
  return { urgency: "watch", since: time(read), read: dkh };
}

/**
 * A dose by a label that is far more than the label says for its litres.
 * @param {Known} known
 * @returns {Found<"overdosed"> | null}
 */
function overdosed({ facts }) {
  const { doses, now, tank } = facts;
  const large = doses
    .filter(({ label, unit, ...one }) => label && unit === label.unit && within(now - time(one), -HOUR, SEEN))
    .map((dose) => ({ dose, times: dose.amount / usual_dose(dose, tank.water_l) }))
    .findLast(({ times }) => times > DOSE_TOO_LARGE);
  if (!large) return null;
  return { urgency: "watch", since: time(large.dose), times: large.times };
}

/**
 * What the label says for the litres of a dose.
 * @param {Facts["doses"][number]} dose
 * @param {number} water_l of the tank
 */
function usual_dose({ label, for_litres }, water_l) {
  if (!label) return Infinity;
  return (label.amount / label.per_l) * (label.basis === "whole_tank" ? water_l : (for_litres ?? water_l));
}

/** @param {Known} known @returns {Found<"large_change"> | null} */
function large_change({ facts, inhabited: animals }) {
  if (!animals) return null;
  const large = facts.changes.findLast((one) => within(facts.now - time(one), -HOUR, SEEN));
  if (!large || large.fraction <= LARGEST_CHANGE || first_filling(facts, large)) return null;
  return { urgency: "watch", since: time(large), fraction: large.fraction };
}

/** @param {Facts} facts @param {{at: string}} change */
const first_filling = ({ tank }, change) =>
  tank.started_at !== undefined && time(change) <= Date.parse(tank.started_at);

/** @param {{at: string}} record */
function time({ at }) {
  return Date.parse(at);
}
/** @param {number} span @param {number} from @param {number} to */
const within = (span, from, to) => span >= from && span <= to;
