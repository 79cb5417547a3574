/**
 * Where a task stands today: due, overdue, done or skipped, and when it comes next.
 * Pure. How a recurrence rule is expanded is given (recurrence.js), so that a page without tasks loads no reader.
 */
import { DAY } from "../../figures/durations.js";
import { day_of } from "./local_time.js";
import { BadRrule } from "./rrule_text.js";

/** How many days to look back and ahead; most rules answer within the first span. */
const REACHES = [40, 400, 4000];

/** @import { View } from "../../types/views.js" */

/**
 * @typedef {View<"task">} Task
 * @typedef {View<"task_done">} Done
 * @typedef {(task: Task, from: number, to: number, most?: number) => number[]} Expand
 * @typedef {{due: number[], overdue: boolean, next: number | null, last: Done | null, unread: boolean}} Standing
 * `due`: what is open, oldest first: today's, or one of an earlier day (`overdue`); `unread`: its rule cannot be read
 * here
 */

/**
 * One task on the day of `now` in `zone`. Of the occurrences missed on earlier days only the latest is due, and only
 * until the next comes: nobody feeds for five days at once.
 * @param {Task} task
 * @param {readonly Done[]} dones of any task
 * @param {number} now ms
 * @param {string} zone the phone's
 * @param {Expand} expand
 * @returns {Standing}
 */
export function standing(task, dones, now, zone, expand) {
  const own = [...dones.filter((one) => one.task === task.id)].sort((a, b) => (a.at < b.at ? -1 : 1));
  const last = own.at(-1) ?? null;
  const none = { due: [], overdue: false, next: null, last, unread: false };
  if (task.over) return none;
  const today = day_of(now, zone);
  const closed = closed_until(own, zone);
  try {
    const next = following(task, Math.max(today.to, closed) + 1, expand);
    return { ...open_today(task, closed, today, expand), next, last, unread: false };
  } catch (error) {
    if (!(error instanceof BadRrule)) throw error;
    return { ...none, unread: true };
  }
}

/** Up to when a task's occurrences are done or skipped. @param {readonly Done[]} own @param {string} zone */
const closed_until = (own, zone) =>
  Math.max(-Infinity, ...own.map((one) => (one.due_at ? Date.parse(one.due_at) : day_of(Date.parse(one.at), zone).to)));

/**
 * @param {Task} task @param {number} closed @param {{from: number, to: number}} today @param {Expand} expand
 * @returns {Pick<Standing, "due" | "overdue">}
 */
function open_today(task, closed, today, expand) {
  if (closed >= today.to) return { due: [], overdue: false };
  const todays = expand(task, today.from, today.to);
  if (todays.length > 0) return { due: todays.filter((at) => at > closed), overdue: false };
  const missed = latest(task, closed + 1, today.from - 1, expand);
  return missed === null ? { due: [], overdue: false } : { due: [missed], overdue: true };
}

/** With more answers than this, all are forgotten. */
const MOST_REMEMBERED = 2000;

/**
 * The same expansion with remembered answers: pages are drawn far more often than a day or a task changes.
 * @param {Expand} expand
 * @returns {Expand}
 */
export function remembering(expand) {
  /** @type {Map<string, number[]>} */ const known = new Map();
  return (task, from, to, most) => {
    const key = [task.starts_at, task.rule, task.zone, from, to, most].join("|");
    const held = known.get(key);
    if (held) return held;
    const found = expand(task, from, to, most);
    if (known.size >= MOST_REMEMBERED) known.clear();
    known.set(key, found);
    return found;
  };
}

/**
 * What is open of one task. When it comes next is left out: the first page does not say it, and it costs most.
 * @param {Task} task @param {readonly Done[]} dones @param {number} now @param {string} zone @param {Expand} expand
 */
function open_now(task, dones, now, zone, expand) {
  const none = { due: [], overdue: false };
  if (task.over) return none;
  const own = dones.filter((one) => one.task === task.id);
  try {
    return open_today(task, closed_until(own, zone), day_of(now, zone), expand);
  } catch (error) {
    if (!(error instanceof BadRrule)) throw error;
    return none;
  }
}

/**
 * What is due today, the oldest first.
 * @param {readonly Task[]} tasks
 * @param {readonly Done[]} dones
 * @param {number} now
 * @param {string} zone
 * @param {Expand} expand
 */
export const due_now = (tasks, dones, now, zone, expand) =>
  [
    ...tasks.flatMap((task) => {
      const { due, overdue } = open_now(task, dones, now, zone, expand);
      return due.map((at) => ({ task, at, overdue }));
    }),
  ].sort((a, b) => a.at - b.at || a.task.title.localeCompare(b.task.title));

/**
 * The days ahead, tomorrow first, each with what falls due and is not done yet; empty days are left out.
 * @param {readonly Task[]} tasks
 * @param {readonly Done[]} dones
 * @param {number} now
 * @param {string} zone
 * @param {number} days
 * @param {Expand} expand
 * @returns {{day: number, items: {task: Task, at: number}[]}[]} `day`: its midnight
 */
export function days_ahead(tasks, dones, now, zone, days, expand) {
  /** @type {Map<number, {task: Task, at: number}[]>} */ const found = new Map();
  const from = day_of(now, zone).to + 1;
  for (const task of tasks) {
    for (const at of open_between(task, dones, from, from + days * DAY - 1, expand)) {
      const day = day_of(at, zone).from;
      found.set(day, [...(found.get(day) ?? []), { task, at }]);
    }
  }
  return [...found]
    .sort(([a], [b]) => a - b)
    .map(([day, items]) => ({ day, items: items.sort((a, b) => a.at - b.at) }));
}

/**
 * The occurrences within a span that are neither done nor skipped.
 * @param {Task} task
 * @param {readonly Done[]} dones
 * @param {number} from
 * @param {number} to
 * @param {Expand} expand
 * @returns {number[]}
 */
export function open_between(task, dones, from, to, expand) {
  if (task.over) return [];
  const closed = Math.max(
    -Infinity,
    ...dones.flatMap((one) => (one.task === task.id && one.due_at ? [Date.parse(one.due_at)] : [])),
  );
  try {
    return expand(task, from, to).filter((at) => at > closed);
  } catch (error) {
    if (!(error instanceof BadRrule)) throw error;
    return [];
  }
}

/** @param {Task} task @param {number} from @param {number} to @param {Expand} expand @returns {number | null} */
function latest(task, from, to, expand) {
  const first = Math.max(from, Date.parse(task.starts_at) - 1000);
  for (const days of REACHES) {
    if (first > to) return null;
    const at = expand(task, Math.max(first, to - days * DAY), to, 5000).at(-1);
    if (at !== undefined) return at;
    if (to - days * DAY <= first) return null;
  }
  return null;
}

/** @param {Task} task @param {number} from @param {Expand} expand @returns {number | null} */
function following(task, from, expand) {
  for (const days of REACHES) {
    const at = expand(task, from, from + days * DAY, 1)[0];
    if (at !== undefined) return at;
  }
  return null;
}
