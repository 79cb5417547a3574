/**
 * Tasks on the screens: which are due, and done by one tap. The reader of their rules is fetched once there is a task.
 */
import { computed, html, signal } from "../vendor/preact.js";
import { zone_or_utc } from "../advice/tasks/local_time.js";
import { due_now, remembering, standing } from "../advice/tasks/tasks.js";
import { clock, t, when } from "../i18n/words.js";
import { Icon } from "./icon.js";
import { all, get, now, room } from "./state/live.js";
import { step_by_step } from "./state/pause.js";
import { new_id, record } from "./state/record.js";
import { tap } from "./state/tap.js";
import { task_said } from "./words/tile_words.js";

/** @typedef {import("../types/views.js").View<"task">} Task */

/** @type {import("../vendor/preact.js").Signal<import("../advice/tasks/tasks.js").Expand | null>} */
const reader = signal(null);
let asked = false;

/** What expands the rules of tasks; null until it is fetched. */
export function rule_reader() {
  if (!asked) {
    asked = true;
    fetch_reader().catch((error) => {
      asked = false;
      console.warn("The reader of rules could not be fetched:", error);
    });
  }
  return reader.value;
}

async function fetch_reader() {
  const { occurrences } = await import("../advice/tasks/recurrence.js");
  const expand = remembering(occurrences);
  // What fails here fails again as the lists are drawn, and is told there.
  await step_by_step(expand_ahead(expand)).catch(console.warn);
  reader.value = expand;
}

/**
 * Look up what is due task by task, before all lists that wait for it are drawn at once: that would hold the phone up.
 * @param {import("../advice/tasks/tasks.js").Expand} expand
 */
function* expand_ahead(expand) {
  yield;
  for (const task of tasks_here()) {
    due_now([task], all("task_done"), now.value, zone_here(), expand);
    yield;
  }
}

/** Asked anew with each minute, not by each list: a browser takes milliseconds to answer. */
const zone_now = computed(() => {
  void now.value;
  return zone_or_utc(Intl.DateTimeFormat().resolvedOptions().timeZone);
});
/** This phone's time zone; UTC where the browser names none or one that it does not know itself. */
export const zone_here = () => zone_now.value;

/**
 * Tasks of tanks in the round and of the room.
 * @param {string | null} [tank] only this tank's, null: only the room's
 */
export const tasks_here = (tank) =>
  all("task").filter(
    (task) => (tank === undefined || (task.tank ?? null) === tank) && (!task.tank || in_round(get("tank", task.tank))),
  );

/** @param {import("../types/views.js").Tank | null} tank */
const in_round = (tank) => tank !== null && !tank.resting;

/** The tasks that are due today, of one tank or of all. @param {string | null} [tank] */
export function due_here(tank) {
  const tasks = tasks_here(tank);
  const expand = tasks.length > 0 ? rule_reader() : null;
  return expand ? due_now(tasks, all("task_done"), now.value, zone_here(), expand) : [];
}

/** Where one task stands; null until rules can be read. @param {Task} task */
export function standing_here(task) {
  const expand = rule_reader();
  return expand && standing(task, all("task_done"), now.value, zone_here(), expand);
}

/**
 * Record that a task was done, or left out.
 * @param {Task} task
 * @param {number | null} at the occurrence
 * @param {{skipped?: boolean, when?: string}} [how] `when`: the moment, if it was not just now
 */
export const close_task = (task, at, { skipped = false, when: happened } = {}) =>
  record(
    [
      {
        type: "put",
        kind: "task_done",
        id: new_id(),
        fields: {
          task: task.id,
          ...(at === null ? {} : { due_at: new Date(at).toISOString() }),
          ...(skipped ? { skipped } : {}),
          ...(happened ? { at: happened } : {}),
        },
      },
    ],
    t(skipped ? "saved.task_skipped" : "saved.task_done", { title: task_said(task) }),
  );

/**
 * One due task with its tap.
 * @param {{task: Task, at: number, overdue?: boolean, named?: boolean}} props `named`: its tank is said
 */
export const DueTask = ({ task, at, overdue = false, named = false }) => html`
  <li><div class="line due">
    <a class="grow" href=${`/task/${task.id}`}><b>${task_said(task)}</b>
      <span class="soft small">
        ${[
          overdue ? t("task.since", { when: when(at, now.value) }) : clock(at),
          named && task.tank && get("tank", task.tank)?.name,
        ]
          .filter(Boolean)
          .join("\u00a0· ")}</span></a>
    ${
      room.value.may("task_done") &&
      html`<button class="quiet" type="button"
      onClick=${tap(() => void close_task(task, at))}><${Icon} name="done" size=${20} />${t("task.done")}<span
      class="unseen"> ${task_said(task)}</span></button>`
    }
  </div></li>`;

/**
 * The due tasks of one tank, or of the room, as a list; nothing if none is due.
 * @param {{tank: string | null, label: string}} props
 */
export function DueTasks({ tank, label }) {
  const due = due_here(tank);
  return (
    due.length > 0 &&
    html`<ul class="lines tasks" aria-label=${label}>
      ${due.map((one) => html`<${DueTask} key=${`${one.task.id}.${one.at}`} ...${one} />`)}</ul>`
  );
}
