/** Tasks of one tank or of the room: due today, in the days ahead, and all of them. */
import { html } from "../vendor/preact.js";
import { days_ahead } from "../advice/tasks/tasks.js";
import { clock, day_named, t, when } from "../i18n/words.js";
import { Icon } from "../ui/icon.js";
import { all, get, now, room } from "../ui/state/live.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { rule_said } from "../ui/words/rrule_said.js";
import { DueTask, due_here, rule_reader, standing_here, tasks_here, zone_here } from "../ui/tasks_due.js";
import { task_said } from "../ui/words/tile_words.js";

const AHEAD_DAYS = 7;

/** @typedef {ReturnType<typeof tasks_here>[number]} Task */

/** @param {{id?: string}} props `id` of a tank; without it the tasks of all */
export function Tasks({ id }) {
  const tank = id ? get("tank", id) : null;
  if (id && !tank) return html`<${Missing} up="/" />`;
  const tasks = tasks_here(id);
  const add =
    room.value.may("task") &&
    html`<a class="main" href=${id ? `/task/new?tank=${id}` : "/task/new"}><${Icon} name="plus" />${t("tasks.new")}
      </a>`;
  return html`
    <${Page} title=${t("tasks.title")} place=${id ? undefined : "round"} up=${id ? `/tank/${id}` : "/"} act=${add}
      aside=${html`<span class="soft">${tank?.name ?? ""}</span>`}>
      ${
        tasks.length === 0 &&
        html`<p class="sentence">${t("tasks.empty")}</p><p class="soft">${t("tasks.empty_more")}
        </p>`
      }
      ${
        tasks.length > 0 &&
        html`
        <${Today} id=${id} />
        <${Ahead} tasks=${tasks} named=${!id} />
        <section class="section"><h2>${t("tasks.all")}</h2>
          <ul class="lines">
            ${[...tasks].sort(by_title).map((task) => html`<${One} key=${task.id} task=${task} named=${!id} />`)}</ul>
            </section>`
      }
      ${
        !id &&
        html`<p class="section"><a class="quiet" href="/calendar"><${Icon} name="clock" size=${20} />
        ${t("calendar.title")}</a></p>`
      }
    <//>`;
}

/** @param {Task} a @param {Task} b */
const by_title = (a, b) =>
  Number(Boolean(a.over)) - Number(Boolean(b.over)) || task_said(a).localeCompare(task_said(b));

/** @param {{id?: string}} props */
function Today({ id }) {
  const due = due_here(id);
  return html`
    <section><h2>${t("tasks.today")}</h2>
      ${
        due.length > 0
          ? html`<ul class="lines tasks">
            ${due.map((one) => html`<${DueTask} key=${`${one.task.id}.${one.at}`} ...${one} named=${!id} />`)}</ul>`
          : html`<p class="soft">${t("tasks.none_today")}</p>`
      }</section>`;
}

/** @param {{tasks: Task[], named: boolean}} props */
function Ahead({ tasks, named }) {
  const expand = rule_reader();
  const days = expand ? days_ahead(tasks, all("task_done"), now.value, zone_here(), AHEAD_DAYS, expand) : [];
  return days.map(
    (one) => html`
    <section class="section" key=${one.day}><h2>${day_named(one.day, now.value)}</h2>
      <ul class="lines">${one.items.map(
        ({ task, at }) => html`
        <li key=${task.id + at}><a class="line" href=${`/task/${task.id}`}><span class="grow">${task_said(task)}<span
          class="soft small"> ${[clock(at), named && tank_of(task)].filter(Boolean).join("\u00a0· ")}</span></span></a>
          </li>`,
      )}</ul></section>`,
  );
}

/** @param {{task: Task, named: boolean}} props */
function One({ task, named }) {
  const stands = standing_here(task);
  const next = task.over
    ? t("tasks.ended")
    : stands?.next
      ? t("task.next", { when: when(stands.next, now.value) })
      : "";
  return html`<li><a class="line" href=${`/task/${task.id}`}><span class="grow"><b>${task_said(task)}</b>
    ${named && html` <span class="soft">${tank_of(task)}</span>`}<br />
    <span class="soft small">${[rule_said(task), next].filter(Boolean).join(" ")}</span></span></a></li>`;
}

/** @param {{tank?: string}} task */
const tank_of = (task) => (task.tank ? (get("tank", task.tank)?.name ?? "") : t("tasks.room"));
