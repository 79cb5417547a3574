/**
 * What the away sheet says of one tank: food, tests, what to change if a test reads too high, the tasks of those days.
 * Pure.
 */
import { DAY, HOUR } from "../figures/durations.js";
import { basis_of, last_test } from "./level.js";
import { bucket_litres, dose_for, most_at_once } from "./litres.js";
import { open_between } from "./tasks/tasks.js";

/** @import { Advice, Facts } from "../types/advice.js" */
/** @import { View } from "../types/views.js" */
/** @import { Done, Expand, Task } from "./tasks/tasks.js" */

/**
 * @param {{facts: Facts, advice: Advice, meal: import("./journal/feeding.js").Meal}} about the tank
 * @param {{from: number, to: number, feed_every_days: number}} span
 * @param {readonly Task[]} tasks this tank's
 * @param {readonly Done[]} dones
 * @param {Expand} expand
 */
export function away_tank({ facts, advice, meal }, span, tasks, dones, expand) {
  const { tank } = facts;
  const every_days = Math.max(1, Math.round(advice.usual_test_hours / 24));
  // When a test reads over a limit, a helper changes the most at once.
  const most_l = most_at_once(facts);
  const litres = bucket_litres(most_l, tank.water_l, facts.water_unit, most_l);
  return {
    tank,
    feed: span.feed_every_days > 0 ? { feed_g: meal.feed_g, food: meal.food, every_days: span.feed_every_days } : null,
    test: { every_days, first: first_test(facts.now, advice, span.from) },
    change: { litres, dose: dose_for(facts, litres) },
    bases: { total_ammonia: basis_of(advice.levels.total_ammonia), nitrite: basis_of(advice.levels.nitrite) },
    limits: { total_ammonia: advice.limits.total_ammonia.mg_n_l, nitrite: advice.limits.nitrite.mg_n_l },
    tasks: tasks_within(tasks, dones, span, expand),
  };
}

/**
 * The tasks that fall due within the span, with their days.
 * @template {Task} T
 * @param {readonly T[]} tasks
 * @param {readonly Done[]} dones
 * @param {{from: number, to: number}} span
 * @param {Expand} expand
 * @returns {{task: T, days: number[]}[]}
 */
export const tasks_within = (tasks, dones, { from, to }, expand) =>
  tasks
    .map((task) => ({ task, days: open_between(task, dones, from, to, expand) }))
    .filter(({ days }) => days.length > 0);

/**
 * When the next test falls due, but not before the sheet begins.
 * @param {number} now
 * @param {Advice} advice
 * @param {number} from
 */
const first_test = (now, { test_due, levels, next_test_hours }, from) =>
  Math.max(test_due ? now : last_test(levels) + next_test_hours * HOUR, from);

/**
 * The sheet in force: of those that are not over, the one that begins first.
 * @param {readonly View<"away_sheet">[]} sheets
 * @param {number} now
 */
export const sheet_now = (sheets, now) =>
  [...sheets.filter(({ to_at }) => Date.parse(to_at) >= now)].sort((a, b) => (a.from_at < b.from_at ? -1 : 1))[0] ??
  null;

/**
 * Whether the Round shows it: from two days before it begins, so that keeper and helper can read it together.
 * @param {View<"away_sheet"> | null} sheet
 * @param {number} now
 */
export const in_round = (sheet, now) => sheet !== null && Date.parse(sheet.from_at) - 2 * DAY <= now;
