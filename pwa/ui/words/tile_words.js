/**
 * Words that were picked from tiles. A record holds the words as its keeper read them and the code of the tile, by
 * which another phone says them in its own language. Without a code that is known here the words stand as written.
 */
import { INCIDENT_CODES } from "../../advice/incident_codes.js";
import { table } from "../../calc/tables.js";
import { t } from "../../i18n/words.js";

/** Common causes of a death; a keeper can also write another. */
export const CAUSES = ["not_known", "age", "illness", "water", "bullied", "jumped", "temperature", "arrival"];
/** Common amounts of plants. */
export const AMOUNTS = ["one_pot", "some_pots", "stems", "handful", "portion", "half"];
/** What keepers note most often. */
export const QUICK = [
  "well",
  "pearling",
  "new_leaves",
  "holes",
  "glass_algae",
  "thread_algae",
  "cloudy",
  "film",
  "at_surface",
  "hiding",
  "young",
  "filter_slow",
];

/** Common tasks. */
export const TASKS = ["feed", "change", "trim", "glass", "top_up", "sponge", "heater", "fertilise"];
/** Ammonia that feeds a tank without animals. */
export const AMMONIA = ["ammonium_chloride", "household_ammonia"];

/** @param {string} code */
export const cause_named = (code) => t(`stock.cause_${code}`);
/** @param {string} code */
export const amount_named = (code) => t(`plants.amount_${code}`);
/** @param {string} code */
export const quick_named = (code) => t(`quick.${code}`);
/** @param {string} code */
export const incident_named = (code) => t(`incident.name.${code}`);
/** @param {string} code */
export const task_named = (code) => t(`task_form.common.${code}`);
/** @param {string} code */
export const ammonia_named = (code) => t(`dosing.${code}`);

/**
 * The code of the tile that says these words, undefined if none does.
 * @param {string[]} codes
 * @param {(code: string) => string} named
 * @param {string} words
 */
export const code_of = (codes, named, words) => codes.find((code) => named(code) === words);

/** @param {{cause?: string, cause_code?: string}} death */
export const cause_said = ({ cause = "", cause_code }) => said(CAUSES, cause_named, cause_code) ?? cause;

/** @param {{amount?: string, amount_code?: string, portions?: number}} planting */
export const amount_said = ({ amount = "", amount_code, portions }) =>
  said(AMOUNTS, amount_named, amount_code) ?? (portions ? t("setup.portions_in", { count: portions }) : amount);

/**
 * The words of a note: its first lines come from the tiles, those of an incident from what went wrong.
 * @param {{text: string, quick?: string[], incident?: string, step?: string}} note
 */
export const note_said = ({ text, quick = [], incident, step }) =>
  text
    .split("\n")
    .map((line, i) => {
      if (i > 0 || !incident || step) return said(QUICK, quick_named, quick[i]) ?? line;
      return said(INCIDENT_CODES, incident_named, incident) ?? line;
    })
    .join("\n");

/** What was dosed; ammonia and salts in the words of this phone. @param {{what: string, what_code?: string}} dose */
export const dosed_said = ({ what, what_code = "" }) =>
  said(AMMONIA, ammonia_named, what_code) ??
  (Object.hasOwn(table("salts").rows, what_code) ? table("salts").rows[what_code].label : what);

/**
 * The title of a task; one that was retyped after its tile was picked stands as typed.
 * @param {{title: string, from_tile?: {code: string, words: string}}} task
 */
export const task_said = ({ title, from_tile }) =>
  (from_tile?.words === title ? said(TASKS, task_named, from_tile.code) : undefined) ?? title;

/** @param {string[]} codes @param {(code: string) => string} named @param {string | undefined} code */
const said = (codes, named, code) => (code !== undefined && codes.includes(code) ? named(code) : undefined);
