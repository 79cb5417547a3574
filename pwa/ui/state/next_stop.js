/** The next tank of the round that wants something. */
import { walk } from "../../advice/facts.js";
import { next_stop, wants } from "../../advice/next_stop.js";
import { advice_at_once } from "./forecast.js";
import { live_room } from "./live.js";
import { due_here } from "../tasks_due.js";

/** @import { Tank } from "../../types/views.js" */
/** @param {string} id the tank on the screen @returns {Tank | null} the next one's record, or null */
export const next_tank = (id) => next_stop(walk(live_room), id, wanting);

/** Whether a tank needs something now, as far as is known. @param {Tank} tank */
export function wanting(tank) {
  const known = advice_at_once(tank);
  return known !== null && wants(known.advice, due_here(tank.id).length, known.facts);
}
