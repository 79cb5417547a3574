/**
 * One task: how often in words, whether it is due, done or skipped by one tap, now or earlier, and what was done so
 * far.
 */
import { html } from "../vendor/preact.js";
import { t, when } from "../i18n/words.js";
import { Icon } from "../ui/icon.js";
import { all, get, now, room } from "../ui/state/live.js";
import { Missing } from "../ui/missing.js";
import { Moment, no_moment } from "../ui/moment.js";
import { Page } from "../ui/page.js";
import { forget, use_draft } from "../ui/state/draft.js";
import { record } from "../ui/state/record.js";
import { rule_said } from "../ui/words/rrule_said.js";
import { tap } from "../ui/state/tap.js";
import { close_task, standing_here } from "../ui/tasks_due.js";
import { task_said } from "../ui/words/tile_words.js";

const SHOWN = 20;

/** @typedef {import("../types/views.js").View<"task">} TaskRecord */

/** @param {{id: string}} props */
export function Task({ id }) {
  const task = get("task", id);
  const name = `task.${id}.done`;
  const draft = use_draft(name, () => /** @type {{when?: string}} */ ({}));
  if (!task) return html`<${Missing} up="/tasks" />`;
  const stands = standing_here(task);
  const tank = task.tank ? get("tank", task.tank) : null;
  const may_close = room.value.may("task_done") && stands && !task.over && !stands.unread;
  const at = stands?.due[0] ?? stands?.next ?? null;
  const { when: happened } = draft.value;
  const close = async (/** @type {boolean} */ skipped) => {
    if (!(await close_task(task, at, { skipped, when: happened }))) return;
    draft.value = {};
    forget(name);
  };
  return html`
    <${Page} title=${task_said(task)} up=${tank ? `/tank/${tank.id}/tasks` : "/tasks"} aside=${html`<span></span>`}
      act=${
        may_close &&
        at !== null &&
        html`
        <button class="quiet tall" type="button" disabled=${no_moment(happened)} onClick=${tap(() => void close(true))}>
          ${t("task.skip")}</button>
        <button class="main" type="button" disabled=${no_moment(happened)} onClick=${tap(() => void close(false))}>
          <${Icon} name="done" />
          ${t(stands.due.length ? "task.done" : "task.done_early")}</button>`
      }>
      <p class="soft">${tank?.name ?? t("tasks.room")}</p>
      <p class="sentence">${rule_said(task)}</p>
      ${
        stands?.unread &&
        html`<p class="wrong"><${Icon} name="needs" size=${20} /><span>
        ${t("task.unread", { rule: task.rule })}</span></p>`
      }
      ${stands && !task.over && !stands.unread && html`<p>${stands_said(stands)}</p>`}
      ${task.note && html`<p>${task.note}</p>`}
      ${
        may_close &&
        html`<${Moment} at=${happened}
          on_at=${(/** @type {string | undefined} */ moment) => (draft.value = { when: moment })} />`
      }
      <p class="caution small">${t("task.hands")}</p>
      <${SoFar} task=${task} />
      ${
        room.value.may("task") &&
        html`
        <ul class="lines section">
          <li><a class="line" href=${`/task/${id}/edit`}>${t("task.edit")}</a></li>
          <li><button class="line whole" type="button" onClick=${tap(() => void end(task))}><span>
            ${t(task.over ? "task.resume" : "task.end")}${
              !task.over &&
              html`<br /><span class="soft small">
            ${t("task.end_why")}</span>`
            }</span></button></li>
        </ul>`
      }
    <//>`;
}

/** @param {import("../advice/tasks/tasks.js").Standing} stands */
function stands_said({ due, overdue, next }) {
  if (due.length > 0) return overdue ? t("task.since", { when: when(due[0], now.value) }) : when(due[0], now.value);
  return next === null ? t("task.no_next") : t("task.next", { when: when(next, now.value) });
}

/** @param {TaskRecord} task */
const end = (task) =>
  record(
    [{ type: "put", kind: "task", id: task.id, fields: { over: !task.over } }],
    t(task.over ? "saved.task_resumed" : "saved.task_ended", { title: task_said(task) }),
  );

/** @param {{task: TaskRecord}} props */
function SoFar({ task }) {
  const dones = [...all("task_done").filter((one) => one.task === task.id)].sort((a, b) => (a.at < b.at ? 1 : -1));
  if (dones.length === 0) return html`<p class="soft">${t("task.never")}</p>`;
  const remove = (/** @type {string} */ done, /** @type {string} */ what) =>
    record([{ type: "del", kind: "task_done", id: done }], t("saved.removed", { what }));
  return html`
    <section class="section"><h2>${t("task.history")}</h2>
      <ul class="lines">${dones.slice(0, SHOWN).map((one) => {
        const what = t(one.skipped ? "task.was_skipped" : "task.was_done");
        const who = room.value.name_of(one.meta.made_by);
        return html`<li key=${one.id}><div class="line"><span class="grow">${what} <span class="soft">
          ${[when(one.at, now.value), who].filter(Boolean).join("\u00a0· ")}</span></span>
          ${
            room.value.may("task_done") &&
            html`<button class="quiet square" type="button"
            aria-label=${t("remove_named", { what: `${what}, ${when(one.at, now.value)}` })}
            onClick=${tap(() => void remove(one.id, what))}><${Icon} name="remove" size=${20} /></button>`
          }</div></li>`;
      })}</ul></section>`;
}
