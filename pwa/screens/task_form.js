/** Setting up a task by tiles and steps: what, where, how often, which days, what time; said back in words. */
import { html, useSignal } from "../vendor/preact.js";
import { walk } from "../advice/facts.js";
import { LAST_DAY, fields_of, first_form, form_of } from "../advice/tasks/task_form.js";
import { WEEKDAYS } from "../advice/tasks/rrule_text.js";
import { InvalidInput, records } from "../contracts.js";
import { date_said, t, time_of_day, weekday_name } from "../i18n/words.js";
import { changed_fields } from "../ui/state/changed_fields.js";
import { forget, use_draft, use_opened } from "../ui/state/draft.js";
import { Icon } from "../ui/icon.js";
import { get, live_room, now, room } from "../ui/state/live.js";
import { Meanwhile } from "../ui/meanwhile.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { new_id, record } from "../ui/state/record.js";
import { refusal_said } from "../ui/words/refusal_said.js";
import { go } from "../ui/state/router.js";
import { form_said, rule_said } from "../ui/words/rrule_said.js";
import { Stepper } from "../ui/stepper.js";
import { tap } from "../ui/state/tap.js";
import { zone_here } from "../ui/tasks_due.js";
import { TASKS, code_of, task_named, task_said } from "../ui/words/tile_words.js";

const DAY = 86_400_000;
const OFTEN = ["once", "daily", "days", "weekdays", "monthly"];
const TIMES = [420, 480, 720, 1020, 1080, 1200];
const STEP_MINUTES = 15;
/** Fields of the record that the form shows. */
const SHOWN = ["title", "tank", "starts_at", "rule"];

/** @param {{id?: string, query: URLSearchParams}} props */
export function TaskForm({ id, query }) {
  const held = id ? get("task", id) : null;
  const tank = query.get("tank") ?? "";
  const name = id ? `task.${id}` : `task.new.${tank}`;
  const zone = held?.zone || (held ? "UTC" : zone_here());
  const opened = use_opened(name, held);
  const kept = use_draft(name, () =>
    held
      ? { ...form_of(held), title: task_said(held), tank: held.tank ?? "", own_words: true }
      : { ...first_form(now.value, zone), title: "", tank, own_words: false },
  );
  const problem = useSignal("");
  if (id && !held) return html`<${Missing} up="/tasks" />`;
  const form = kept.value;
  const set = (/** @type {any} */ more) => ((problem.value = ""), (kept.value = { ...form, ...more }));
  const up = id ? `/task/${id}` : form.tank ? `/tank/${form.tank}/tasks` : "/tasks";

  const save = async () => {
    const title = form.title.trim();
    if (!title) return void (problem.value = t("task_form.need_title"));
    if (form.often === "weekdays" && form.weekdays.length === 0)
      return void (problem.value = t("task_form.need_weekday"));
    const { rule, ...when } = fields_of(form, zone);
    // A title that was not touched stays as it is written, in whatever language its tile was picked.
    const code = code_of(TASKS, task_named, title);
    const named =
      opened && title === task_said(opened)
        ? { title: opened.title }
        : { title, ...(code ? { from_tile: { code, words: title } } : {}) };
    const all = { ...named, tank: form.tank || null, rule: rule ?? null, ...when };
    const fields = form.often === "own" ? { ...all, rule: held?.rule ?? null } : all;
    const changed = held
      ? changed_fields(opened, fields)
      : Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== null));
    try {
      if (
        Object.keys(changed).length &&
        !(await record(
          [{ type: "put", kind: "task", id: id ?? new_id(), fields: changed }],
          t("saved.task", { title }),
        ))
      )
        return;
      forget(name);
      go(up, { replace: true });
    } catch (failed) {
      problem.value =
        failed instanceof InvalidInput
          ? refusal_said(failed, records().task.fields)
          : /** @type {Error} */ (failed).message;
    }
  };

  return html`
    <${Page} title=${t(id ? "task_form.edit" : "task_form.new")} up=${up} news=${html`<${Meanwhile} opened=${opened}
      held=${held} names=${SHOWN} said=${{ rule: rule_said }} />`}
      act=${
        room.value.may("task") &&
        html`<button class="main" type="button" onClick=${tap(() => void save())}>
        ${t("task_form.save")}</button>`
      }>
      <${What} form=${form} set=${set} />
      <${Choice} label=${t("task_form.where")} name="tank" chosen=${form.tank}
        on_choose=${(/** @type {string} */ to) => set({ tank: to })}
        choices=${[...walk(live_room).map((one) => [one.id, one.name]), ["", t("tasks.room")]]} />
      <${Choice} label=${t("task_form.often")} name="often" chosen=${form.often}
        on_choose=${(/** @type {string} */ to) => set({ often: to })}
        choices=${[...OFTEN, ...(held && form_of(held).often === "own" ? ["own"] : [])].map((one) => [
          one,
          t(`task_form.often.${one}`),
        ])} />
      <${Days} form=${form} set=${set} />
      <${Choice} label=${t("task_form.time")} name="time" chosen=${form.minutes}
        on_choose=${(/** @type {number} */ to) => set({ minutes: to })} three
        choices=${TIMES.map((one) => [one, time_of_day(one)])} />
      <${Stepper} label=${t("task_form.other_time")} said=${time_of_day(form.minutes)}
        on_step=${(/** @type {number} */ way) => set({ minutes: (form.minutes + way * STEP_MINUTES + 1440) % 1440 })} />
      <p class="sentence" role="status">${form_said(form, held?.rule)}</p>
      ${problem.value && html`<p class="wrong" role="alert"><${Icon} name="needs" /><span>${problem.value}</span></p>`}
    <//>`;
}

/** @param {{form: any, set: (more: any) => void}} props */
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
        <button type="button" class="wide" aria-pressed=${own} onClick=${tap(() => set({ own_words: true }))}>
          ${t("task_form.own_words")}</button>
      </div></fieldset>
    ${
      own &&
      html`<div class="field"><label for="task-title">${t("task_form.title")}</label>
      <input id="task-title" type="text" autocomplete="off" maxlength="120" value=${form.title}
        onInput=${(/** @type {any} */ e) => set({ title: e.target.value, own_words: true })} /></div>`
    }`;
}

/** What each way of repeating asks beside it. @param {{form: any, set: (more: any) => void}} props */
function Days({ form, set }) {
  const first_day = html`<${Stepper} label=${t("task_form.first_day")} said=${date_said(form.day)}
    on_step=${(/** @type {number} */ way) => set({ day: form.day + way * DAY })} />`;
  if (form.often === "once") return first_day;
  if (form.often === "days")
    return html`
    <${Stepper} label=${t("task_form.every")} said=${t("task_form.every_said", { count: form.every })}
      can=${{ less: form.every > 2, more: form.every < 90 }}
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
    form.weekdays.includes(day)
      ? form.weekdays.filter((/** @type {string} */ one) => one !== day)
      : [...form.weekdays, day];
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
 * @param {{label: string, name: string, chosen: any, choices: [any, any][], three?: boolean, on_choose: (to: any) =>
 * void}} props
 */
const Choice = ({ label, name, chosen, choices, three, on_choose }) => html`
  <fieldset class="field"><legend class="label">${label}</legend>
    <div class=${three ? "tiles" : "tiles two"}>${choices.map(
      ([value, said]) => html`
      <label key=${value}><input class="unseen" type="radio" name=${name} value=${value} checked=${value === chosen}
        onChange=${() => on_choose(value)} />${said}</label>`,
    )}</div>
  </fieldset>`;
