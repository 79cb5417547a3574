/** The steps against an incident in words, with this tank's own figures. */
import { listed, short, t, within_sentence } from "../../i18n/words.js";
import { INCIDENTS } from "../../advice/incidents.js";
import { shown_in } from "../state/measures.js";
import { dose_said, grams_said, level_said, litres_said, parameter_short_name, temperature_said } from "./figures.js";

/** @import { Figures, Step, StepCode } from "../../advice/incidents.js" */

/**
 * What to do, and why.
 * @param {string} what the incident @param {Step & {code: StepCode}} step @param {Figures} figures
 * @returns {{what: string, why: string}}
 */
export function step_said(what, { code, form, why }, figures) {
  const parts = parts_of(what, code, figures);
  return {
    what: t(`incident.do.${code}${form ? `_${form}` : ""}`, parts),
    why: t(`incident.why.${code}${why ? `_${why}` : ""}`, parts),
  };
}

/** @param {string} what @param {StepCode} code @param {Figures} figures */
function parts_of(what, code, figures) {
  const dose = code === "dose_whole" ? figures.whole : figures.dose;
  const { cooling, celsius, instead = [] } = figures;
  return {
    tests: listed(INCIDENTS[what].tests.map((one) => within_sentence(parameter_short_name(one)))),
    litres: litres_said(code === "dose_whole" || code === "save_water" ? figures.water_l : figures.litres),
    dose: dose.amount === undefined ? "" : dose_said(dose),
    label: dose.label?.name ?? "",
    temperature: celsius === null ? "" : temperature_said(celsius),
    hours: hours_said(code === "save_fish" ? figures.bucket_hours : figures.hours),
    bucket: litres_said(figures.bucket_l),
    count: figures.buckets,
    percent: `${short(figures.left_percent, 0)}\u00a0%`,
    rate: cooling ? warmth_said(cooling.c_hour, 1) : "",
    room: cooling ? temperature_said(cooling.room_c) : "",
    slow: warmth_said(1, 0),
    level: figures.gram_mg_n_l === null ? "" : level_said("total_ammonia", figures.gram_mg_n_l, figures.basis),
    ways: instead.map(({ code: way, salt_g = 0 }) => t(`instead.${way}`, { salt: grams_said(salt_g) })).join(" "),
  };
}

/** Beyond two days nobody counts hours: the calculation stops there, too. */
const MANY_HOURS = 48;

/** @param {number | null} hours */
function hours_said(hours) {
  if (hours === null) return "";
  if (hours > MANY_HOURS) return t("incident.more_than_two_days");
  return t("incident.hours", { count: hours < 3 ? Math.round(2 * hours) / 2 : Math.floor(hours) });
}

/** A step of warmth, in the degrees of this phone. @param {number} kelvin @param {number} decimals */
function warmth_said(kelvin, decimals) {
  const { show, label } = shown_in("°C");
  return `${short(show(kelvin) - show(0), decimals)}\u00a0${label}`;
}
