/** A new task, or changes to one, by tiles and steps: what, where, how often, which days, what time; then in words. */
import { DAY } from "../figures/durations.js";
import { html } from "../vendor/preact.js";
import { walk } from "../advice/facts.js";
import { zone_or_utc } from "../advice/tasks/local_time.js";
import { LAST_DAY, fields_of, first_form, form_of } from "../advice/tasks/task_form.js";
import { WEEKDAYS } from "../advice/tasks/rrule_text.js";
import { date_said, t, time_of_day, weekday_name } from "../i18n/words.js";
import { changed_fields } from "../ui/state/changed_fields.js";
import { get, live_room, now, room } from "../ui/state/live.js";
import { with_text } from "../ui/state/field_text.js";
import { Meanwhile } from "../ui/meanwhile.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { new_id } from "../ui/state/record.js";
import { Refused, use_record_form } from "../ui/state/record_form.js";
import { form_said, rule_said } from "../ui/words/rrule_said.js";
import { Stepper } from "../ui/stepper.js";
import { tap } from "../ui/state/tap.js";
import { zone_here } from "../ui/tasks_due.js";
import { TASKS, code_of, task_named, task_said } from "../ui/words/tile_words.js";

const OFTEN = ["once", "daily", "days", "weekdays", "monthly"];
const TIMES = [420, 480, 720, 1020, 1080, 1200];
const STEP_MINUTES = 15;
const MOST_DAYS = 90;
/** Fields of the record that the form shows. */
const SHOWN = ["title", "tank", "starts_at", "rule"];

/** @param {{id?: string, query: URLSearchParams}} props */
export function TaskForm({ id, query }) {
  const held = id ? get("task", id) : null;
  const tank = query.get("tank") ?? "";
  const zone = held ? zone_or_utc(held.zone) : zone_here();
  const form = use_record_form({
    name: id ? `task.${id}` : `task.new.${tank}${query.get("title") ?? ""}`,
    held,
    first: () => first(held, query, zone),
  });
  if (id && !held) return html`<${Missing} up="/tasks" />`;
  const draft = form.draft.value;
  const set = form.set;
  const up = id ? `/task/${id}` : draft.tank ? `/tank/${draft.tank}/tasks` : "/tasks";
  const often = [...OFTEN, ...(held && form_of(held).often === "own" ? ["own"] : [])];

  const save = () => {
    const title = draft.title.trim();
    if (!title) return form.refuse(t("task_form.need_title"));
    if (draft.often === "weekdays" && draft.weekdays.length === 0) return form.refuse(t("task_form.need_weekday"));
    return form.save(() => {
      const changed = changed_task(draft, zone, held, form.opened);
      /** @type {import("../ui/state/record.js").Write[]} */
      const writes = Object.keys(changed).length
        ? [{ type: "put", kind: "task", id: id ?? new_id(), fields: changed }]
        : [];
      return { writes, said: t("saved.task", { title }), to: up };
    });
  };

  return html`
    <${Page} title=${t(id ? "task_form.edit" : "task_form.new")} up=${up} news=${html`<${Meanwhile}
      opened=${form.opened} held=${held} names=${SHOWN} said=${{ rule: rule_said }} />`}
      act=${
        room.value.may("task") &&
        html`<button class="main" type="button" onClick=${tap(() => void save())}>
        ${t("task_form.save")}</button>`
      }>
      <${What} form=${draft} set=${set} />
      <${Choice} label=${t("task_form.where")} name="tank" chosen=${draft.tank}
        on_choose=${(/** @type {string} */ to) => set({ tank: to })}
        choices=${[...walk(live_room).map((one) => [one.id, one.name]), ["", t("tasks.room")]]} />
      <${Choice} label=${t("task_form.often")} name="often" chosen=${draft.often}
        on_choose=${(/** @type {Draft["often"]} */ to) => set({ often: to })}
        choices=${often.map((key) => [key, t(`task_form.often.${key}`)])} />
      <${Days} form=${draft} set=${set} />
      <${Choice} label=${t("task_form.time")} name="time" chosen=${draft.minutes}
        on_choose=${(/** @type {number} */ to) => set({ minutes: to })} three
        choices=${TIMES.map((minutes) => [minutes, time_of_day(minutes)])} />
      <${Stepper} label=${t("task_form.other_time")} said=${time_of_day(draft.minutes)}
        on_step=${(/** @type {number} */ way) => set({ minutes: (draft.minutes + way * STEP_MINUTES + 1440) % 1440 })}
        />
      <p class="sentence" role="status">${form_said(draft, held?.rule)}</p>
      <${Refused} form=${form} kind="task" />
    <//>`;
}

/** @typedef {import("../advice/tasks/task_form.js").Form & {title: string, tank: string, own_words: boolean}} Draft */
/** @typedef {import("../types/views.js").View<"task">} Task */
/** @typedef {(fields: Partial<Draft>) => void} SetDraft */

/**
 * What the form opens with. A link may propose a new task: its `title`, and the days from one to the next as `every`.
 * @param {Task | null} held @param {URLSearchParams} query @param {string} zone @returns {Draft}
 */
function first(held, query, zone) {
  if (held) return { ...form_of(held), title: task_said(held), tank: held.tank ?? "", own_words: true };
  const title = query.get("title") ?? "";
  const every = Number(query.get("every") ?? 0);
  const proposed =
    every > 1 ? { often: /** @type {const} */ ("days"), every: Math.min(Math.round(every), MOST_DAYS) } : {};
  return { ...first_form(now.value, zone), ...proposed, title, tank: query.get("tank") ?? "", own_words: title !== "" };
}

/**
 * The fields that the form sets; of a task that is there, only what changed since the form was opened.
 * @param {Draft} draft
 * @param {string} zone
 * @param {Task | null} held
 * @param {Task | null} opened
 */
function changed_task(draft, zone, held, opened) {
  const title = draft.title.trim();
  const { rule, ...when } = fields_of(draft, zone);
  const code = code_of(TASKS, task_named, title);
  // A title that was not touched stays as it is written, in whatever language its tile was picked.
  const named =
    opened && title === task_said(opened)
      ? { title: opened.title }
      : { title, ...(code ? { from_tile: { code, words: title } } : {}) };
  const kept_rule = draft.often === "own" ? held?.rule : rule;
  const fields = { ...named, tank: draft.tank || null, rule: kept_rule ?? null, ...when };
  return held
    ? changed_fields(opened, fields)
    : Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== null));
}

/** @param {{form: Draft, set: SetDraft}} props */
function What({ form, set }) {
  const titles = TASKS.map(task_named);
  const own = form.own_words || (form.title !== "" && !titles.includes(form.title));
  return html`
    <fieldset class="field"><legend class="label">${t("task_form.what")}</legend>
      <div class="tiles two">
        ${titles.map(
          (title) => html`<button type="button" key=${title} aria-pressed=${form.title === title}
          onClick=${tap(() => set({ title, own_words: false }))}>${title}</button>`,
        )}
        <button type="button" class="across" aria-pressed=${own} onClick=${tap(() => set({ own_words: true }))}>
          ${t("task_form.own_words")}</button>
      </div></fieldset>
    ${
      own &&
      html`<div class="field"><label for="task-title">${t("task_form.title")}</label>
      <input id="task-title" type="text" autocomplete="off" maxlength="120" value=${form.title}
        onInput=${with_text((title) => set({ title, own_words: true }))} /></div>`
    }`;
}

/** What each way of repeating needs to know. @param {{form: Draft, set: SetDraft}} props */
function Days({ form, set }) {
  const first_day = html`<${Stepper} label=${t("task_form.first_day")} said=${date_said(form.day)}
    on_step=${(/** @type {number} */ way) => set({ day: form.day + way * DAY })} />`;
  if (form.often === "once") return first_day;
  if (form.often === "days")
    return html`
    <${Stepper} label=${t("task_form.every")} said=${t("task_form.every_said", { count: form.every })}
      can=${{ less: form.every > 2, more: form.every < MOST_DAYS }}
      on_step=${(/** @type {number} */ way) => set({ every: form.every + way })} />
    ${first_day}`;
  if (form.often === "monthly")
    return html`
    <${Stepper} label=${t("task_form.month_day")} said=${
      form.month_day === LAST_DAY ? t("task_form.last_day") : t("task_form.month_day_said", { count: form.month_day })
    }
      on_step=${(/** @type {number} */ way) =>
        set({ month_day: ((form.month_day + way + LAST_DAY - 1) % LAST_DAY) + 1 })} />`;
  if (form.often !== "weekdays") return null;
  const toggled = (/** @type {string} */ day) =>
    form.weekdays.includes(day) ? form.weekdays.filter((other) => other !== day) : [...form.weekdays, day];
  return html`
    <fieldset class="field"><legend class="label">${t("task_form.weekdays")}</legend>
      <div class="tiles four">${WEEKDAYS.map(
        (day, place) => html`
        <button type="button" key=${day} aria-pressed=${form.weekdays.includes(day)} aria-label=${weekday_name(place)}
          onClick=${tap(() => set({ weekdays: toggled(day) }))}>${weekday_name(place, "short")}</button>`,
      )}</div>
    </fieldset>`;
}

/**
 * One of several.
 * @template {string | number} T
 * @param {{label: string, name: string, chosen: T, choices: [T, string][], three?: boolean,
 * on_choose: (to: T) => void}} props
 */
const Choice = ({ label, name, chosen, choices, three, on_choose }) => html`
  <fieldset class="field"><legend class="label">${label}</legend>
    <div class=${three ? "tiles" : "tiles two"}>${choices.map(
      ([value, said]) => html`
      <label key=${value}><input class="unseen" type="radio" name=${name} value=${value} checked=${value === chosen}
        onChange=${() => on_choose(value)} />${said}</label>`,
    )}</div>
  </fieldset>`;
