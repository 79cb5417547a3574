/** What was found in a tank, put into words: what to do, and what was seen. */
import { table } from "../../calc/tables.js";
import { en } from "../../i18n/en.js";
import { number, short, t, when } from "../../i18n/words.js";
import { dose_said, litres_said, temperature_said } from "./figures.js";

/** @import { Finding } from "../../types/advice.js" */

/**
 * @param {Exclude<Finding, {code: "water"}>} finding sentence.js says what the water wants
 * @param {number} now
 * @returns {{what: string, why: string}}
 */
export function found_said(finding, now) {
  const { code, source } = finding;
  const parts = parts_of(finding, now);
  const dosed = "dose" in finding && finding.dose.amount !== undefined;
  /** @type {keyof typeof en} */ const key = dosed ? `find.${/** @type {"undosed"} */ (code)}_dose` : `find.${code}`;
  /** @type {keyof typeof en} */ const why = `find.${/** @type {"hot"} */ (code)}.why`;
  const { provenance } = table("sources").sources[source];
  return {
    what: t(key, parts),
    // A name may begin the sentence.
    why: t("find.provenance", { why: capital(t(why, parts)), provenance: t(`bench.provenance.${provenance}`) }),
  };
}

/** The figures of a finding, each said as what it is. @param {Finding} finding @param {number} now */
function parts_of(finding, now) {
  const unit = UNITS[finding.code] ?? ((/** @type {number} */ value) => short(value, 1));
  /** @type {Record<string, string | number>} */ const parts = {};
  for (const [name, value] of Object.entries(finding)) {
    if (["read", "from", "limit", "low", "high"].includes(name)) parts[name] = unit(value);
    else if (name === "since") parts.since = when(value, now);
    else if (name === "litres") parts.litres = litres_said(value);
    else if (name === "count") parts.count = value;
    else if (name === "times") parts.times = number(value, 0);
    else if (name === "fraction") parts.percent = `${number(100 * value, 0)}\u00a0%`;
    else if (name === "who") parts.who = value || t("find.any_animal");
    else if (name === "dose" && value.amount !== undefined)
      Object.assign(parts, { dose: dose_said(value), label: value.label.name });
  }
  return parts;
}

const mg_l = (/** @type {number} */ value) => `${short(value, 3)}\u00a0mg/L`;
const degrees = (/** @type {number} */ value) => `${short(value, 1)}\u00a0°d`;
const of_ph = (/** @type {number} */ value) => number(value, 1);

/** What the figures of a finding are. @type {Partial<Record<Finding["code"], (value: number) => string>>} */
const UNITS = {
  chlorine: mg_l,
  oxygen_low: mg_l,
  dawn: (value) => `${number(value, 1)}\u00a0mg/L`,
  hot: temperature_said,
  cold: temperature_said,
  temperature_jump: temperature_said,
  ph_low: of_ph,
  ph_high: of_ph,
  ph_jump: of_ph,
  kh_gone: degrees,
  soft: degrees,
  hard: degrees,
};

/** @param {string} text */
const capital = (text) => text[0].toLocaleUpperCase() + text.slice(1);
