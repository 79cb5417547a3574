/** The one sentence of a tank and its reasons, put into words: the only place that renders an advice. */
import { DAY, HOUR, MINUTE } from "../../figures/durations.js";
import { html } from "../../vendor/preact.js";
import { choice_label, output_of } from "../../contracts.js";
import { en } from "../../i18n/en.js";
import { clock, named, number, short, t, weekday, when } from "../../i18n/words.js";
import { chance_said } from "./chance.js";
import {
  dose_said,
  grams_said,
  level_figure,
  level_said,
  litres_said,
  parameter_name,
  temperature_said,
} from "./figures.js";
import { found_said } from "./findings_said.js";
import { StateShape } from "../icon.js";
import { basis_of, last_test } from "../../advice/level.js";

/** @import { Advice, Advised, Besides, Filled, Instead, LeftOut, Reason, ReasonCode } from "../../types/advice.js" */

const QUARTER_MS = 15 * MINUTE;

/**
 * What to do now, in one sentence: the worst of what was found.
 * @param {Advised} advice
 * @param {number} now
 * @returns {string}
 */
export function sentence(advice, now) {
  const [lead] = advice.findings;
  return lead && lead.code !== "water" ? found_said(lead, now).what : water_said(advice, now);
}

/**
 * What the water wants, in one sentence.
 * @param {Advice} advice
 * @param {number} now
 * @returns {string}
 */
export function water_said(advice, now) {
  const { act, litres = 0, dose, by, doubt, unhurried } = advice;
  if (act === "test") return t(last_test(advice.levels) === -Infinity ? "say.test_first" : "say.test");
  if (act === "nothing")
    return t(advice.state === "steady" ? "say.nothing" : "say.leave", { when: next_test(advice, now) });
  if (act === "hold") return t("say.hold");
  if (act === "retest" && doubt)
    return t("say.retest", {
      parameter: t(`name.${doubt.parameter}`),
      read: level_said(doubt.parameter, doubt.value_mg_n_l, basis_of(advice.levels[doubt.parameter])),
    });
  if (act === "confirm") return t("say.confirm", { by: by_time(by, now) });
  const parts = { litres: litres_said(litres), by: unhurried ? t("say.this_week") : by_time(by, now) };
  if (dose?.amount === undefined) return t("say.change", parts);
  return t("say.change_with", { ...parts, dose: dose_said(dose), label: dose.label.name });
}

/**
 * What goes with it: a second step, what else to do, or what must still be recorded.
 * @param {Advice} advice
 * @param {number} now
 */
function further(advice, now) {
  const { act, dose, again, next_test_hours, test_due, from, litres, second, unhurried, besides = [] } = advice;
  if (act === "hold" && unhurried) return t("say.hold_unhurried");
  const ways = (advice.instead ?? []).map(instead_said);
  if (act === "hold" && ways.length > 0) return ways.join(" ");
  if (act === "hold" && !from) return t("say.hold_further", { hours: next_test_hours });
  const instead = litres && change_instead(advice);
  const then = second ? second_said(second, now) : "";
  const missing = litres && dose?.missing && t(`say.missing_${dose.missing}`);
  if (act !== "change")
    return [instead, instead && missing, ...ways, ...besides.map(besides_said)].filter(Boolean).join(" ");
  const test = again ? t("say.again", { hours: next_test_hours }) : test_due ? t("say.test_too") : "";
  return [then, missing, ...ways, test, ...besides.map(besides_said)].filter(Boolean).join(" ");
}

/** The changes after the first. @param {NonNullable<Advice["second"]>} second @param {number} now */
function second_said({ at, litres, count, every_h }, now) {
  if (count === 2) return t("say.second", { litres: litres_said(litres), when: until_said(at, now) });
  return t("say.several", { litres: litres_said(litres), hours: short(every_h, 0), count });
}

/**
 * The change to make if no test can be made, or if the second test reads the same.
 * @param {Advice} advice
 */
function change_instead({ act, litres = 0, dose }) {
  const parts = {
    litres: litres_said(litres),
    dose: dose?.amount === undefined ? "" : dose_said(dose),
    label: dose?.label?.name,
  };
  if (act === "retest") return t(parts.dose ? "say.if_same_with" : "say.if_same", parts);
  return t(parts.dose ? "say.or_change_with" : "say.or_change", parts);
}

/** What `change_plan` advises besides, in its contract's words. @param {Besides} code */
const besides_said = (code) => choice_label(output_of("change_plan", "advice"), code);

/** @param {Instead} way */
const instead_said = ({ code, salt_g = 0 }) => t(`instead.${code}`, { salt: grams_said(salt_g) });

/**
 * The sentence with what goes with it; `brief` leaves out why, and only counts what was found besides.
 * @param {{advice: Advised, now: number, brief?: boolean}} props
 */
export const Sentence = ({ advice, now, brief = false }) => {
  const [lead, ...others] = advice.findings;
  const by_water = !lead || lead.code === "water";
  const more = by_water ? further(advice, now) : brief ? "" : found_said(lead, now).why;
  return html`<p class="sentence">${sentence(advice, now)}</p>${more && html`<p class="further">${more}</p>`}${
    brief && others.length > 0 && html`<p class="further soft">${t("find.more", { count: others.length })}</p>`
  }`;
};

/** What was found besides the first, in order. @param {{advice: Advised, now: number}} props */
export const AlsoFound = ({ advice, now }) => {
  const others = advice.findings.slice(1);
  if (others.length === 0) return null;
  return html`<h2 class="also-found">${t("find.also")}</h2><ul class="why">${others.map((one) => {
    const { what, why } =
      one.code === "water" ? { what: water_said(advice, now), why: further(advice, now) } : found_said(one, now);
    return html`<li key=${one.code}><b>${what}</b> ${why}</li>`;
  })}</ul>`;
};

/** The weekday if it is far ahead, else the time to the quarter hour. @param {number} at @param {number} now */
const until_said = (at, now) =>
  at - now > 1.5 * DAY ? weekday(at, now) : when(Math.ceil(at / QUARTER_MS) * QUARTER_MS, now);

/** A time rounded down to the quarter hour. @param {number | undefined} by @param {number} now */
function by_time(by, now) {
  if (by === undefined) return t("say.today");
  const at = by - (by % QUARTER_MS);
  return at <= now ? t("say.now") : t("say.by", { time: same_day(at, now) ? clock(at) : when(at, now) });
}

/** When the next test is due, in words. @param {Advice} advice @param {number} now */
function next_test(advice, now) {
  const due = Math.max(now, last_test(advice.levels) + advice.next_test_hours * HOUR);
  return advice.next_test_hours > 24 ? weekday(due, now) : when(Math.ceil(due / QUARTER_MS) * QUARTER_MS, now);
}

/** The state, and its age where a newer forecast is being worked out. @param {{advice: Advice, now: number}} props */
export const State = ({ advice, now }) => html`
  <span class=${`state ${advice.state.replace(" ", "-")}`}><${StateShape} state=${advice.state} />
    ${t(`state.${advice.state}`)}</span>${
      advice.as_of !== undefined &&
      html` <span class="soft small">${t("say.as_of", { when: when(advice.as_of, now) })}</span>`
    }`;

/**
 * How the rule came to its levels: left out in the moments before the forecast replaces it.
 * @type {ReasonCode[]}
 */
const CAME_BY = ["rise_known", "rise_none", "rise_doubling", "rise_unknown", "carried"];

/** @param {{advice: Advice, now: number}} props */
export const Why = ({ advice, now }) => {
  const working = advice.reasons.some(({ code }) => code === "rule_working");
  const said = advice.reasons.filter(({ code }) => !working || !CAME_BY.includes(code));
  return html`<ul class="why">${said.map(
    (one) => html`<li key=${one.code + ("parameter" in one ? one.parameter : "")}>${reason(one, now, advice)}
    </li>`,
  )}</ul>`;
};

/** Reasons about pH: a plain number, and a text that may begin with its small letter. @type {ReasonCode[]} */
const OF_PH = ["source_ph", "usual_ph", "assumed_ph"];

/**
 * A reason in words; its levels as the kit of this tank reads them.
 * @param {Reason} given
 * @param {number} now
 * @param {Pick<Advice, "levels">} [advice]
 * @returns {string}
 */
export function reason(given, now, advice) {
  const said = Object.fromEntries(
    Object.entries(given).map(([name, value]) => [name, FORMS[name]?.(value, given, now, advice) ?? value]),
  );
  /** Each code has its text: tsc refuses one that the English catalogue lacks. @type {keyof typeof en} */
  const key = `why.${given.code}`;
  const text = t(key, said);
  return OF_PH.includes(given.code) ? text : text[0].toLocaleUpperCase() + text.slice(1);
}

/** @typedef {Pick<Advice, "levels"> | undefined} Of */
/**
 * How a reason says a level of its parameter; freed ammonia has none of its own.
 * @param {typeof level_said} said
 */
const level_by =
  (said) =>
  (/** @type {number} */ value, /** @type {Reason} */ given, /** @type {number} */ _, /** @type {Of} */ of) => {
    const parameter = "parameter" in given ? given.parameter : "total_ammonia";
    return said(parameter, value, basis_of(of?.levels[parameter]));
  };
const as_read = level_by(level_said);

/** @param {Filled} one */
function filled_said({ code, value }) {
  /** @type {keyof typeof en} */ const key = `filled.${code}`;
  return t(key, { value: code === "temperature_c" ? temperature_said(value ?? 0) : short(value ?? 0, 1) });
}

/**
 * How each figure of a reason is said.
 * @type {Record<string, (value: any, given: Reason, now: number, of: Of) => string>} any: what a figure is depends on
 * its name
 */
const FORMS = {
  parameter: (value) => t(`name.${value}`),
  now: as_read,
  limit: as_read,
  expected: as_read,
  source: as_read,
  freed: as_read,
  low: level_by(level_figure),
  high: as_read,
  read: as_read,
  chance: chance_said,
  until: (value, _, now) => until_said(value, now),
  filled: (/** @type {Filled[]} */ listed) => listed.map(filled_said).join(", "),
  // The text around it ends with the full stop.
  first: (/** @type {LeftOut} */ { at, message, allowed, parameter }, _, now) =>
    named(
      when(at, now),
      `${parameter ? `${parameter_name(parameter)} ` : ""}${message}. ${t("allowed", { allowed }).replace(/\.$/, "")}`,
    ),
  rise: as_read,
  by: (value) => t(`limit.${value}`),
  days: (value) => (value === 1 ? t("until.tomorrow") : t("until.days", { count: value })),
  at: (value, _, now) => (value ? when(value, now) : ""),
  value: (value, { code }) => (OF_PH.includes(code) ? number(value, 1) : temperature_said(value)),
};

/** @param {number} a @param {number} b */
const same_day = (a, b) => new Date(a).toDateString() === new Date(b).toDateString();
