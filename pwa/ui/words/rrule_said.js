/** How often a task repeats, in words. */
import { zone_or_utc } from "../../advice/tasks/local_time.js";
import { LAST_DAY, form_of } from "../../advice/tasks/task_form.js";
import { WEEKDAYS } from "../../advice/tasks/rrule_text.js";
import { date_said, listed, t, time_of_day, weekday_name } from "../../i18n/words.js";
import { zone_here } from "../tasks_due.js";

/** @param {import("../../advice/tasks/task_form.js").Form} form @param {string} [rule] */
export function form_said(form, rule = "") {
  const parts = { time: time_of_day(form.minutes), day: date_said(form.day) };
  if (form.often === "own") return t("task.said_own", { rule });
  if (form.often === "days") return t("task.said_days", { ...parts, count: form.every });
  if (form.often === "monthly")
    return form.month_day === LAST_DAY
      ? t("task.said_last_day", parts)
      : t("task.said_monthly", { ...parts, count: form.month_day });
  if (form.often !== "weekdays") return t(`task.said_${form.often}`, parts);
  const days = WEEKDAYS.flatMap((day, place) => (form.weekdays.includes(day) ? [weekday_name(place)] : []));
  return days.length === 7 ? t("task.said_daily", parts) : t("task.said_weekdays", { ...parts, days: listed(days) });
}

/** @param {import("../../advice/tasks/tasks.js").Task} task */
export function rule_said(task) {
  const said = form_said(form_of(task), task.rule);
  const zone = zone_or_utc(task.zone);
  return zone === zone_here() ? said : `${said} ${t("task.zone", { zone })}`;
}
