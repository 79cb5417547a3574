/**
 * A module Web Worker for slow calculations. For outlook, change_plan and stock_headroom it keeps the belief of each
 * tank at its last record, and continues from there while records are only added. It answers any other calculation
 * as well.
 *
 * In: {shared} first, and again when it changed: the bundle of /shared.json in the language spoken
 *      {ask, tank_id, name, input, kept?}  `input`: as JSON; `kept`: what an earlier answer carried, from storage
 * Out: {ask, tank_id, answer, kept?}       `kept` only when it changed: store it, a structured clone is enough
 *   or {ask, tank_id, errors}              in the API's own words
 */
import { InvalidInput, install, install_calculations, run_named } from "../contracts.js";
import { plan_of } from "../calc/change_plan.js";
import { calculations } from "../calc/index.js";
import { settings } from "../calc/model_settings.js";
import { outlook_of } from "../calc/outlook.js";
import { headroom_of } from "../calc/stock_headroom.js";
import { believed } from "../calc/tank_events.js";

/** @import { FieldError } from "../contracts.js" */
/** @import { Kept } from "../calc/tank_events.js" */

/**
 * @typedef {{tank_id: string, name: string, input: object, kept?: Kept}} Question
 * @typedef {{answer?: object, errors?: FieldError[], kept?: Kept}} Answered one of answer and errors
 */

/** @type {Record<string, (...known: Parameters<typeof outlook_of>) => object>} */
const ANSWERS = { outlook: outlook_of, change_plan: plan_of, stock_headroom: headroom_of };
/** @type {Map<string, Kept>} */
const tanks = new Map();

/** @param {Question & {ask: number}} question @returns {Answered & {ask: number, tank_id: string}} */
function answer({ ask, tank_id, name, input, kept }) {
  const before = tanks.get(tank_id) ?? kept;
  try {
    if (!Object.hasOwn(ANSWERS, name)) return { ask, tank_id, answer: run_named(name, input) };
    const found = run_named(name, input, (values) => {
      const c = settings();
      const now = believed(c, values, before);
      tanks.set(tank_id, now.kept);
      return ANSWERS[name](c, now.belief, now.plans, values);
    });
    const after = tanks.get(tank_id);
    return { ask, tank_id, answer: found, ...(after === before ? {} : { kept: after }) };
  } catch (error) {
    if (!(error instanceof InvalidInput)) throw error;
    return { ask, tank_id, errors: error.errors };
  }
}

install_calculations(calculations);
self.addEventListener("message", ({ data }) => {
  if (data.shared) install(data.shared);
  else self.postMessage(answer({ ...data, input: JSON.parse(data.input) }));
});
