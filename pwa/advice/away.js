/**
 * What the away sheet says of one tank: food, tests, what to change if a test reads too high, the tasks of those days.
 * Pure.
 */
import { HOUR } from "./level.js";
import { bucket_litres, dose_for } from "./litres.js";
import { open_between } from "./tasks/tasks.js";

const DAY = 24 * HOUR;
/** A test that reads over a limit while nobody knows the tank: half, the most at once (common practice). */
const HALF = 0.5;

/**
 * @param {{facts: any, advice: import("./today.js").Advice, meal: import("./journal/feeding.js").Meal}} about the tank
 * @param {{from: number, to: number, feed_every_days: number}} span
 * @param {any[]} tasks this tank's @param {any[]} dones @param {import("./tasks/tasks.js").Expand} expand
 */
export function away_tank({ facts, advice, meal }, span, tasks, dones, expand) {
  const { tank } = facts;
  const every_days = Math.max(1, Math.round(advice.usual_test_hours / 24));
  const litres = bucket_litres(HALF * tank.water_l, tank.water_l, facts.water_unit);
  return {
    tank,
    feed: span.feed_every_days > 0 ? { feed_g: meal.feed_g, food: meal.food, every_days: span.feed_every_days } : null,
    test: { every_days, first: first_test(facts, advice, span.from) },
    change: { litres, dose: dose_for(facts, litres) },
    limits: { total_ammonia: advice.limits.total_ammonia.mg_n_l, nitrite: advice.limits.nitrite.mg_n_l },
    tasks: tasks_within(tasks, dones, span, expand),
  };
}

/**
 * Tasks with their days within the span.
 * @param {any[]} tasks
 * @param {any[]} dones
 * @param {{from: number, to: number}} span
 * @param {import("./tasks/tasks.js").Expand} expand
 * @returns {{task: any, days: number[]}[]}
 */
export const tasks_within = (tasks, dones, { from, to }, expand) =>
  tasks
    .map((task) => ({ task, days: open_between(task, dones, from, to, expand) }))
    .filter(({ days }) => days.length > 0);

/**
 * When the next test falls due, but not before the sheet begins.
 * @param {any} facts
 * @param {import("./today.js").Advice} advice
 * @param {number} from
 */
function first_test({ readings, now }, advice, from) {
  const last = Date.parse(
    readings.findLast((/** @type {any} */ one) => ["total_ammonia", "nitrite"].includes(one.parameter))?.at ?? "",
  );
  const due = advice.test_due || Number.isNaN(last) ? now : last + advice.next_test_hours * HOUR;
  return Math.max(due, from);
}

/**
 * The sheet that is in force: of those not over yet, the one that begins first.
 * @param {any[]} sheets
 * @param {number} now
 */
export const sheet_now = (sheets, now) =>
  sheets.filter(({ to_at }) => Date.parse(to_at) >= now).toSorted((a, b) => (a.from_at < b.from_at ? -1 : 1))[0] ??
  null;

/**
 * Whether it is shown in the round: from two days before it begins, so that helper and keeper go through it together.
 * @param {any} sheet
 * @param {number} now
 */
export const in_round = (sheet, now) => sheet !== null && Date.parse(sheet.from_at) - 2 * DAY <= now;
