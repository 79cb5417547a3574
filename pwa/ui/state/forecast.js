/** A tank's advice as the screens ask for it: by its forecast once that is there, by the rule until then. */
import { HOUR } from "../../figures/durations.js";
import { effect, signal } from "../../vendor/preact.js";
import { belief_store } from "../../data/belief_store.js";
import { facts_of } from "../../advice/facts.js";
import { forecasts } from "../../advice/forecast/answers.js";
import { advised } from "../../advice/advised.js";
import { ask_of } from "../../advice/forecast/questions.js";
import { today } from "../../advice/today.js";
import { all, live_room, now } from "./live.js";
import { shown_in } from "./measures.js";
import { outlook_worker } from "../../workers/start.js";

/** @import { Advised, Asked, Facts, Question, Rule } from "../../types/advice.js" */
/** @import { RecordKind } from "../../types/records.js" */
/** @import { Tank } from "../../types/views.js" */

/**
 * The kinds that an advice is made from; a room answers the same array until one of a kind changes.
 * @type {readonly RecordKind[]}
 */
const MADE_OF = [
  "tank",
  "reading",
  "water_change",
  "dose",
  "feeding",
  "source_water",
  "label",
  "stock_change",
  "note",
  "own_species",
];

const answers = signal(0);
const { load, save, keep_only } = belief_store();
const board = forecasts({ ask: outlook_worker(), load, save, changed: () => (answers.value += 1) });

/** From now on, store beliefs of the open room's tanks only. */
export function keep_to_this_room() {
  let before = "";
  effect(() => {
    const tanks = all("tank").map(({ id }) => id);
    if (tanks.join() !== before) void keep_only(tanks).catch(() => undefined);
    before = tanks.join();
  });
}

/** @typedef {{facts: Facts, rule: Rule, asked: Asked, made_of: unknown[]}} Gathered */
/** @type {Map<string, Gathered>} */
const gathered = new Map();

/** @param {Tank} tank @returns {{facts: Facts, advice: Advised}} */
export function advice_for(tank) {
  const { facts, rule, asked } = gather(tank);
  return { facts, advice: advised(facts, rule, asked, told(tank.id, asked.questions)) };
}

/** The same with what lies further ahead. @param {Tank} tank */
export function outlook_for(tank) {
  const { facts, rule, asked } = gather(tank);
  const forecast = told(tank.id, [...asked.questions, ...asked.further]);
  return { facts, asked, forecast, advice: advised(facts, rule, asked, forecast) };
}

/** @param {string} tank_id @param {Question[]} questions */
function told(tank_id, questions) {
  void answers.value;
  return board.of(tank_id, questions);
}

/**
 * Facts, rule and questions, made again only when a record changed or ten minutes passed.
 * @param {Tank} tank
 * @returns {Gathered}
 */
function gather(tank) {
  const { unit } = shown_in("L");
  const made_of = [tank, unit, Math.floor(now.value / (HOUR / 6)), ...MADE_OF.map((kind) => all(kind))];
  const before = gathered.get(tank.id);
  if (before && made_of.every((one, i) => one === before.made_of[i])) return before;
  const facts = { ...facts_of(live_room, tank, now.value), water_unit: unit };
  const rule = today(facts);
  const after = { facts, rule, asked: ask_of(facts, rule), made_of };
  gathered.set(tank.id, after);
  return after;
}
