/**
 * What is slow, off the main thread: a module Web Worker that answers outlook, change_plan and stock_headroom, for
 * which it keeps the belief of each tank at its last record and goes on from there when only records were added;
 * any other calculation it answers as it is.
 *
 * In: {shared} first, and again when it changed: the bundle of /shared.json in the language spoken
 *      {ask, tank_id, name, input, kept?}  `kept`: what an earlier answer carried, from storage
 * Out: {ask, tank_id, answer, kept?}       `kept` only when it changed: store it, a structured clone is enough
 *   or {ask, tank_id, errors}              in the API's own words
 */
import { InvalidInput, install, run_named } from "../contracts.js";
import { plan_of } from "../calc/change_plan.js";
import { settings } from "../calc/kinetics.js";
import { outlook_of } from "../calc/outlook.js";
import { headroom_of } from "../calc/stock_headroom.js";
import { believed } from "../calc/tank_events.js";

/** @typedef {import("../calc/tank_events.js").Kept} Kept */

/** @type {Record<string, (c: any, belief: any, plans: any[], input: any) => any>} */
const ANSWERS = { outlook: outlook_of, change_plan: plan_of, stock_headroom: headroom_of };
/** @type {Map<string, Kept>} */
const tanks = new Map();

/** @param {{ask: number, tank_id: string, name: string, input: unknown, kept?: Kept}} question */
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
  } catch (no) {
    if (!(no instanceof InvalidInput)) throw no;
    return { ask, tank_id, errors: no.errors };
  }
}

self.addEventListener("message", ({ data }) => {
  if (data.shared) install(data.shared);
  else self.postMessage(answer(data));
});
