/**
 * How many more animals a tank bears, kind by kind: the one answer that every screen shows. It is the least of
 * nitrogen, oxygen, room, company and water; nothing is invited while anything is open. Pure.
 */
import { DAY } from "../../figures/durations.js";
import { table } from "../../calc/tables.js";
import { check_fields, contract_of, find_field } from "../../contracts.js";
import { invites } from "../findings.js";
import { headroom_by_week } from "../forecast/readiness.js";
import { QUICK } from "../level.js";
import { of_parameter } from "../of_parameter.js";
import { asked } from "../setup/setting_up.js";
import { animals_for, as_animals, has_length, mass_of, most_kinds } from "./stock.js";

/** @import { Advised, Answers, Facts, Forecast, Quick } from "../../types/advice.js" */
/** @import { CompatibilityInput, StockingLimitInput } from "../../types/calculations.js" */
/** @import { Answer } from "../../types/contract.js" */
/** @import { View } from "../../types/views.js" */
/** @import { Animal, Counted } from "./stock.js" */

/**
 * @typedef {"nitrogen" | "oxygen" | "room" | "company" | "water" | "cannot_tell"} By
 * @typedef {{species: string, name: string, count: number, wanted: number, more: number | null, come: number, by: By}}
 * Kind
 * one kind: how many live here, are wanted and fit more if only these are added; `more` null: nobody can tell; `come`:
 * how many of the wanted may come now; `by`: what limits it
 * @typedef {{code: "not_filled" | "working" | "look_at_dawn" | "company" | "water"}
 *   | {code: "state", state: Advised["state"]}
 *   | {code: "untested", parameters: Quick[]}} Open what forbids any invitation now
 * @typedef {{fits: boolean, by: By, count: number, found: ReturnType<typeof asked<"stocking_limit">>}} Whole whether
 * all that are wanted fit beside all that live here, and the stocking limit of all of them
 * @typedef {Record<string, unknown>} Figures a tank's own, by the names that the contracts share
 * @typedef {{figures: Figures, present: readonly Counted[], wanted?: readonly Counted[],
 *   own: readonly View<"own_species">[], headroom?: Answers["headroom"], open?: readonly Open[]}} Asking
 * @typedef {{input: StockingLimitInput, answer: Answer<"stocking_limit">}} Stocking
 * @typedef {{input: CompatibilityInput, answer: Answer<"compatibility">}} Company
 * @typedef {{kinds: Kind[], over: boolean, young: boolean, too_long: string[], binds: By, present_g: number,
 *   limit_g: number | null, whole: Whole | null,
 *   open: Open[], invites: boolean, stocking: Stocking, company: Company, left_out: string[],
 *   missing?: undefined}} Told
 * `young`: what binds will grow with the tank; `too_long`: names of those for which the tank is too short
 * @typedef {{missing: string[], left_out: string[]}} Lacking the labels of figures that the tank lacks
 * @typedef {{species: string, count: number, wanted: number, animal: Animal}} Listed
 */

/** A test older than this does not stand for the water into which animals shall come (assumption). */
const TESTED_DAYS = 3;
const OF_WATER = ["tank_temperature", "tank_ph", "tank_hardness", "source_ph", "source_hardness"];

/**
 * @param {Asking} asking
 * @returns {Told | Lacking | null} null: of no animal is the length known
 */
export function how_many({ figures, present, wanted = [], own, headroom, open = [] }) {
  const listed = listed_of(present, wanted, own);
  const known = listed.filter(({ animal }) => has_length(animal)).slice(0, most_kinds("stocking_limit"));
  const left_out = listed.filter((one) => !known.includes(one)).map(({ species }) => species);
  if (known.length === 0) return null;
  const stocking = asked(
    "stocking_limit",
    input_for("stocking_limit", figures, known, ({ count }) => count),
  );
  const company = asked("compatibility", input_for("compatibility", figures, known, with_wanted));
  if (!stocking.answer || !company.answer) {
    const inputs = contract_of(stocking.answer ? "compatibility" : "stocking_limit").inputs;
    const errors = [...stocking.errors, ...company.errors];
    const labels = errors.map(({ field }) => find_field(inputs, field.split(".")[0])?.label ?? field);
    return { missing: [...new Set(labels)], left_out };
  }
  const sums = { answer: stocking.answer, spare_g: spare_g(headroom) };
  const over = is_over(stocking.answer);
  const barred = bars_of(company.answer);
  const kinds = known.map((one, i) => kind_of(one, sums.answer.more[i], sums, barred));
  const all_open = [...open, ...open_here(kinds, barred), ...(binds_of(sums) === "cannot_tell" ? [LOOK] : [])];
  const { present_g, limit_g } = stocking.answer;
  return {
    kinds,
    over,
    young: binds_of(sums) === "nitrogen" && ["new", "starting"].includes(String(figures.maturity)),
    too_long: sums.answer.more.filter(({ long_enough }) => !long_enough).map(({ name }) => name),
    binds: binds_of(sums),
    present_g,
    limit_g: limit_g === null || limit_g === undefined ? null : Math.min(limit_g, present_g + sums.spare_g),
    whole: whole_of(known, kinds, figures, own, sums.spare_g),
    open: all_open,
    invites: all_open.length === 0 && !over && kinds.some(({ more }) => more !== null && more > 0),
    stocking: /** @type {Stocking} */ ({ input: stocking.payload, answer: stocking.answer }),
    company: /** @type {Company} */ ({ input: company.payload, answer: company.answer }),
    left_out,
  };
}

const LOOK = /** @type {const} */ ({ code: "look_at_dawn" });

/**
 * What forbids any invitation to a filled tank: what the tank's advice asks for, and tests not made.
 * @param {{advice: Pick<Advised, "state" | "findings">, facts: Pick<Facts, "now" | "readings">,
 *   forecast: Forecast}} of_tank
 * @returns {Open[]}
 */
export function open_of({ advice, facts, forecast }) {
  const untested = QUICK.filter((parameter) => {
    const last = of_parameter(facts.readings, parameter).at(-1);
    return !last || facts.now - Date.parse(last.at) > TESTED_DAYS * DAY;
  });
  /** @type {(Open | false)[]} */
  const open = [
    !invites(advice) && { code: "state", state: advice.state },
    untested.length > 0 && { code: "untested", parameters: untested },
    forecast.state === "working" && !forecast.answers.headroom && { code: "working" },
  ];
  return open.filter((one) => one !== false);
}

/**
 * Every kind once: how many live here and how many more are wanted. Those that are wanted count as grown.
 * @param {readonly Counted[]} present @param {readonly Counted[]} wanted @param {Asking["own"]} own
 * @returns {Listed[]}
 */
function listed_of(present, wanted, own) {
  const here = present.filter(({ count }) => count > 0);
  const coming = wanted.filter(({ count }) => count > 0);
  const new_kinds = coming.filter(({ species }) => !here.some((one) => one.species === species));
  const grown = new_kinds.map((one) => (grows(one.species, own) ? { ...one, length_cm: undefined } : one));
  const all = [...here, ...grown];
  return as_animals(all, own).map((animal, i) => ({
    species: all[i].species,
    count: i < here.length ? all[i].count : 0,
    wanted: coming.find(({ species }) => species === all[i].species)?.count ?? 0,
    animal,
  }));
}

/** Whether it is known how long a kind grows. @param {string} species @param {Asking["own"]} own */
const grows = (species, own) =>
  Object.hasOwn(table("species").rows, species) || own.some((one) => one.name === species && one.length_cm);

/** @param {Listed} one */
const with_wanted = ({ count, wanted }) => count + wanted;

/**
 * @template {"stocking_limit" | "compatibility"} K
 * @param {K} name
 * @param {Figures} figures
 * @param {Listed[]} listed
 * @param {(one: Listed) => number} counted
 */
function input_for(name, figures, listed, counted) {
  const animals = animals_for(
    name,
    listed.map((one) => ({ ...one.animal, count: counted(one) })),
  );
  const fields = contract_of(name).inputs.filter((field) => field.name !== "animals");
  const taken = fields.flatMap((field) => {
    const value = figures[String(field.from_tank ?? field.name)];
    // A figure that the field does not take counts as not known; one that is needed is refused in its own words.
    const fits = field.required || check_fields([field], { [field.name]: value }).errors.length === 0;
    return value !== undefined && fits ? [[field.name, value]] : [];
  });
  return /** @type {import("../../types/contract.js").Calculations[K]["input"]} */ (
    /** @type {unknown} */ ({ ...Object.fromEntries(taken), animals })
  );
}

/** @typedef {{answer: Answer<"stocking_limit">, spare_g: number}} Sums */

/** Grams more that the tank's own readings promise, by the low end; no bound where there is no forecast. */
const spare_g = (/** @type {Asking["headroom"]} */ headroom) =>
  headroom ? headroom_by_week(headroom)[0].more_fish_g.p10 : Infinity;

/** @param {Answer<"stocking_limit">} answer */
const is_over = ({ present_g, limit_g }) => limit_g !== null && limit_g !== undefined && present_g > limit_g;

/** @param {Sums} sums @returns {By} */
const binds_of = ({ answer, spare_g }) =>
  typeof answer.limit_g === "number" && answer.present_g + spare_g < answer.limit_g ? "nitrogen" : answer.binding;

/**
 * The names of those that must not be kept so: for the water, and for their company.
 * @param {Answer<"compatibility">} answer
 */
function bars_of({ findings }) {
  const bars = findings.filter(({ severity }) => severity === "bar");
  return {
    water: bars.filter(({ kind }) => OF_WATER.includes(kind)).map(({ a }) => a),
    company: bars.filter(({ kind }) => !OF_WATER.includes(kind)).map(({ a, b }) => (b ? [a, b] : [a])),
  };
}

/** @typedef {ReturnType<typeof bars_of>} Bars */

/**
 * @param {Listed} one
 * @param {Answer<"stocking_limit">["more"][number]} fits
 * @param {Sums} sums
 * @param {Bars} bars
 * @returns {Kind}
 */
function kind_of({ species, count, wanted }, fits, { answer, spare_g }, bars) {
  const barred = bars.company.some((names) => names.includes(fits.name));
  /** @type {[By, number][]} what is most definite comes first where two are alike */
  const limits = [
    ["water", bars.water.includes(fits.name) ? 0 : Infinity],
    ["company", barred ? 0 : (fits.company ?? Infinity)],
    ["room", fits.room ?? Infinity],
    ["oxygen", fits.oxygen ?? Infinity],
    ["nitrogen", Math.min(fits.nitrogen, Math.floor(spare_g / fits.each_g))],
  ];
  const [least_by, least] = limits.reduce((a, b) => (b[1] < a[1] ? b : a));
  const group = table("species").rows[species]?.group_min ?? 1;
  const none = least === 0 || fits.more === 0 || (count === 0 && least < group);
  const unknown = !none && typeof fits.more !== "number";
  const more = none ? 0 : unknown ? null : Math.min(least, Number(fits.more));
  const by = unknown ? "cannot_tell" : is_over(answer) && least > 0 ? answer.binding : least_by;
  return { species, name: fits.name, count, wanted, more, come: Math.min(wanted, more ?? 0), by };
}

/**
 * What stands against those that live here already: nobody joins them before that is put right.
 * @param {Kind[]} kinds
 * @param {Bars} bars
 * @returns {Open[]}
 */
function open_here(kinds, bars) {
  const here = kinds.filter(({ count }) => count > 0).map(({ name }) => name);
  /** @type {Open[]} */ const open = [];
  if (bars.water.some((name) => here.includes(name))) open.push({ code: "water" });
  if (bars.company.some((names) => names.every((name) => here.includes(name)))) open.push({ code: "company" });
  return open;
}

/**
 * Whether all that are wanted fit beside all that live here; null if none is wanted.
 * @param {Listed[]} listed @param {Kind[]} kinds @param {Figures} figures @param {Asking["own"]} own
 * @param {number} spare_g
 * @returns {Whole | null}
 */
function whole_of(listed, kinds, figures, own, spare_g) {
  const coming = listed.filter(({ wanted }) => wanted > 0);
  if (coming.length === 0) return null;
  const count = coming.reduce((sum, { wanted }) => sum + wanted, 0);
  const found = asked("stocking_limit", input_for("stocking_limit", figures, listed, with_wanted));
  const not = (/** @type {By} */ by) => ({ fits: false, by, count, found });
  const { answer } = found;
  const too_many = kinds.find(({ wanted, by, more }) => wanted > (more ?? 0) && (by === "water" || by === "company"));
  if (too_many) return not(too_many.by);
  if (!answer) return not("room");
  if (is_over(answer) || answer.binding === "cannot_tell") return not(answer.binding);
  const grams = mass_of(
    coming.map(({ species, wanted, animal }) => ({ species, count: wanted, length_cm: animal.length_cm })),
    own,
  )?.total_g;
  if (grams !== undefined && grams > spare_g) return not("nitrogen");
  return { fits: true, by: answer.binding, count, found };
}

/**
 * In how many days so many grams more would fit by the tank's own readings, by the low end; null if not within two
 * weeks.
 * @param {number} grams
 * @param {NonNullable<Asking["headroom"]>} headroom
 */
export const fits_in_days = (grams, headroom) =>
  headroom_by_week(headroom).find(({ more_fish_g }) => more_fish_g.p10 >= grams)?.days ?? null;

/**
 * What of the tank's water and of the new water does not suit one kind, before it is chosen.
 * @param {Figures} figures @param {string} species @param {Asking["own"]} own
 */
export function unsuited(figures, species, own) {
  const [animal] = as_animals([{ species, count: 0 }], own);
  const listed = [{ species, count: 0, wanted: 0, animal }];
  const { answer } = asked("compatibility", input_for("compatibility", figures, listed, with_wanted));
  return answer?.findings.filter(({ kind }) => OF_WATER.includes(kind)) ?? [];
}
