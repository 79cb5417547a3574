/**
 * What is said of a tank's water while a new forecast is worked out: the last one, with its age, so that nobody acts on
 * litres that change a moment later. Pure.
 */
/** @import { Advice, Rule } from "../types/advice.js" */

/** From the least to the most pressing. @type {readonly Advice["state"][]} */
const PRESSING = ["steady", "watch", "change today", "act now"];

/**
 * @typedef {{told: Advice, at: number, changed: "nothing" | "tests" | "water"}} Last
 * `told`: the last forecast's advice; `at`: when it was made, ms; `changed`: what differs in the records since.
 * "water": the tank itself, its changes or its doses; "tests": ammonia, nitrite or nitrate.
 */

/**
 * The last forecast stands while nothing that it rests on has changed. A new test may ask for more than it: then the
 * more careful of the two stands. After a change of water, its litres are spent: then the rule stands.
 * @param {Advice} rule why it stands is among its reasons
 * @param {Pick<Rule, "test_due">} now
 * @param {Last | null} last
 * @returns {Advice}
 */
export function meanwhile(rule, { test_due }, last) {
  if (!last || last.changed === "water") return rule;
  const stands = { ...last.told, test_due, as_of: last.at };
  // The time of the next test came since.
  if (test_due && stands.act === "nothing") return rule;
  return last.changed === "tests" && more_careful(rule, stands) ? rule : stands;
}

/** Whether one advice asks for more than another. @param {Advice} one @param {Advice} other */
function more_careful(one, other) {
  const by = PRESSING.indexOf(one.state) - PRESSING.indexOf(other.state);
  return by > 0 || (by === 0 && (one.litres ?? 0) > (other.litres ?? 0));
}
