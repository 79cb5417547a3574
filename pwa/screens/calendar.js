/** The tasks in the keeper's own calendar: as a file made on this phone, or by a link to subscribe to. */
import { html, useEffect, useSignal } from "../vendor/preact.js";
import { calendar_file } from "../advice/tasks/calendar.js";
import { walk } from "../advice/facts.js";
import { calendar_since, close_calendar, make_calendar } from "../data/people.js";
import { t, when } from "../i18n/words.js";
import { Problem, use_ask } from "../ui/state/ask.js";
import { keep_file } from "../ui/keep_file.js";
import { all, live_room, now, room, sharing } from "../ui/state/live.js";
import { Page } from "../ui/page.js";
import { Qr } from "../ui/qr.js";
import { say } from "../ui/state/record.js";
import { tap } from "../ui/state/tap.js";
import { task_said } from "../ui/words/tile_words.js";

export function CalendarPage() {
  const keep = async () => {
    const { occurrences, until_of } = await import("../advice/tasks/recurrence.js");
    const tanks = new Map(walk(live_room).map((tank) => [tank.id, tank.name]));
    const name = room.value.about()?.name ?? t("room.title");
    const file = calendar_file(
      {
        room_name: name,
        tasks: all("task").map((task) => ({ ...task, title: task_said(task) })),
        tanks,
        dones: all("task_done"),
        now: now.value,
      },
      occurrences,
      until_of,
    );
    const kept = keep_file(new Blob([file], { type: "text/calendar" }), "tasks", "ics");
    say(t("archive.kept", { file: kept }));
  };
  return html`
    <${Page} title=${t("calendar.title")} up="/tasks">
      <p class="sentence">${t("calendar.why")}</p>
      <section class="section"><h2>${t("calendar.file")}</h2>
        <p class="soft">${t("calendar.file_why")}</p>
        <p><button class="quiet tall" type="button" onClick=${tap(() => void keep())}>${t("calendar.keep")}</button></p>
          </section>
      <section class="section"><h2>${t("calendar.subscribe")}</h2>
        ${sharing().joined ? html`<${Subscribe} />` : html`<p class="soft">${t("calendar.need_room")}</p>`}</section>
    <//>`;
}

function Subscribe() {
  const made = useSignal(/** @type {{link: string} | null} */ (null));
  const since = useSignal(/** @type {string | null} */ (null));
  const copied = useSignal(false);
  const { problem, busy, ask } = use_ask();
  useEffect(() => void ask(async () => void (since.value = await calendar_since(room.value))), []);
  const make = () =>
    ask(async () => {
      made.value = await make_calendar(room.value);
      copied.value = false;
    });
  const close = () =>
    ask(async () => {
      await close_calendar(room.value);
      made.value = since.value = null;
      say(t("calendar.closed"));
    });
  const link = made.value?.link;
  const copy = async () => {
    await navigator.clipboard.writeText(/** @type {string} */ (link));
    copied.value = true;
  };
  return html`
    <p class="soft">${t("calendar.subscribe_why")}</p>
    ${
      link
        ? html`<${Qr} text=${link} label=${t("calendar.qr")} />
          <p class="small link" aria-label=${t("calendar.link")}>${link}</p>
          ${
            Boolean(navigator.clipboard) &&
            html`<p><button class="quiet tall" type="button"
            onClick=${tap(() => void copy().catch(() => say(link)))}>
            ${t(copied.value ? "calendar.copied" : "calendar.copy")}</button></p>`
          }`
        : since.value && html`<p>${t("calendar.since", { when: when(since.value, now.value) })}</p>`
    }
    <${Problem} text=${problem.value} />
    <div class="row">
      ${
        !link &&
        html`<button class="quiet tall" type="button" disabled=${busy.value} onClick=${tap(() => void make())}>
        ${t(since.value ? "calendar.renew" : "calendar.make")}</button>`
      }
      ${
        (link || since.value) &&
        html`<button class="quiet tall" type="button" disabled=${busy.value}
        onClick=${tap(() => void close())}>${t("calendar.close")}</button>`
      }
    </div>`;
}
