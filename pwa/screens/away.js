/**
 * The away sheet: what a helper feeds, tests, changes and does while the keeper is away, and whom to call; prints on
 * one page.
 */
import { html } from "../vendor/preact.js";
import { away_tank, sheet_now, tasks_within } from "../advice/away.js";
import { walk } from "../advice/facts.js";
import { usual_meal } from "../advice/journal/feeding.js";
import { listed, t } from "../i18n/words.js";
import { dose_said, grams_said, level_said, litres_said, read_as } from "../ui/words/figures.js";
import { advice_for } from "../ui/state/forecast.js";
import { Icon, StateShape } from "../ui/icon.js";
import { all, live_room, now, room } from "../ui/state/live.js";
import { print_or_keep } from "../ui/state/print_or_keep.js";
import { Page } from "../ui/page.js";
import { record } from "../ui/state/record.js";
import { rule_said } from "../ui/words/rrule_said.js";
import { day_said } from "../ui/words/span_said.js";
import { tap } from "../ui/state/tap.js";
import { rule_reader, tasks_here } from "../ui/tasks_due.js";
import { task_said } from "../ui/words/tile_words.js";

/** A task that is due on more days than this shows its rule instead of the days. */
const DAYS_SAID = 3;
const STATES = /** @type {const} */ (["steady", "watch", "change today", "act now"]);
const CAUTIONS = ["food", "power", "water", "hands", "vet"];

export function Away() {
  const sheet = sheet_now(all("away_sheet"), now.value);
  const may = room.value.may("away_sheet");
  if (!sheet)
    return html`
    <${Page} title=${t("away.title")} up="/room" act=${
      may &&
      html`<a class="main" href="/away/edit"><${Icon}
      name="plus" />${t("away.new")}</a>`
    }>
      <p class="sentence">${t("away.none")}</p><p class="soft">${t("away.none_more")}</p>
    <//>`;
  const remove = () =>
    record([{ type: "del", kind: "away_sheet", id: sheet.id }], t("saved.removed", { what: t("away.title") }));
  return html`
    <${Page} title=${t("away.title")} up="/room"
      act=${html`${may && html`<a class="quiet tall" href="/away/edit">${t("edit")}</a>`}<button class="main"
        type="button" onClick=${tap(() => void print_or_keep("limnary-away-sheet"))}>${t("away.print")}</button>`}>
      <${Sheet} sheet=${sheet} />
      ${
        may &&
        html`<p class="section not-printed"><button class="quiet" type="button"
        onClick=${tap(() => void remove())}>${t("away.remove")}</button></p>`
      }
    <//>`;
}

/** @param {{sheet: import("../types/views.js").View<"away_sheet">}} props */
function Sheet({ sheet }) {
  const expand = rule_reader();
  const { calls = [] } = sheet;
  const span = { from: Date.parse(sheet.from_at), to: Date.parse(sheet.to_at), feed_every_days: sheet.feed_every_days };
  const dones = all("task_done");
  const tanks = walk(live_room).filter((tank) => sheet.tanks.includes(tank.id));
  const none = () => [];
  const rooms = tasks_within(tasks_here(null), dones, span, expand ?? none);
  return html`
    <div class="away">
      <p class="sentence">${t("away.span", { from: day_said(span.from), to: day_said(span.to) })}</p>
      ${
        calls.length > 0 &&
        html`
        <section><h2>${t("away.calls")}</h2>
          <ul class="calls">${calls.map(
            ({ who, phone }) => html`<li key=${phone}><span>${who}
            </span> <a class="quiet" href=${`tel:${phone.replace(/[^+\d]/g, "")}`}>${phone}</a></li>`,
          )}</ul>
            </section>`
      }
      ${sheet.note && html`<section><h2>${t("away.note")}</h2><p>${sheet.note}</p></section>`}
      <div class="away-tanks">${tanks.map((tank) => {
        const { facts, advice } = advice_for(tank);
        return html`<${OneTank} key=${tank.id}
          said=${away_tank(
            { facts, advice, meal: usual_meal(tank, facts.feedings) },
            span,
            tasks_here(tank.id),
            dones,
            expand ?? none,
          )} />`;
      })}</div>
      ${rooms.length > 0 && html`<section><h2>${t("tasks.room")}</h2><${TaskLines} tasks=${rooms} /></section>`}
      <section><h2>${t("away.states")}</h2>
        <ul class="away-states">
          ${STATES.map(
            (state) => html`<li key=${state}><b class="state"><${StateShape} state=${state} size=${16} />
          ${t(`state.${state}`)}</b> ${t(`away.do.${state}`)}</li>`,
          )}</ul></section>
      <section><h2>${t("away.mind")}</h2><ul class="why">
        ${CAUTIONS.map((caution) => html`<li key=${caution}>${t(`away.mind.${caution}`)}</li>`)}</ul></section>
    </div>`;
}

/** @param {{said: ReturnType<typeof away_tank>}} props */
function OneTank({ said: { tank, feed, test, change, limits, bases, tasks } }) {
  const dose = change.dose.amount === undefined ? "" : dose_said(change.dose);
  const fed = feed && { amount: grams_said(feed.feed_g), food: feed.food ?? "", count: feed.every_days };
  const limit = (/** @type {"total_ammonia" | "nitrite"} */ name) =>
    `${level_said(name, limits[name], bases[name])} ${read_as(name, bases[name])}`;
  return html`
    <article><h2>${tank.name} <span class="soft small">
      ${[litres_said(tank.water_l), tank.place].filter(Boolean).join("\u00a0· ")}</span></h2>
      <dl>
        <dt>${t("away.feed")}</dt><dd>${
          fed ? t(feed.food ? "away.feed_food" : "away.feed_plain", fed) : t("away.feed_none")
        }</dd>
        <dt>${t("away.test")}</dt><dd>${t("away.test_every", { count: test.every_days, first: day_said(test.first) })}
          </dd>
        <dt>${t("away.change")}</dt><dd>
          ${t(dose ? "away.change_dose" : "away.change_plain", {
            litres: litres_said(change.litres),
            dose,
            label: change.dose.label?.name ?? "",
            ammonia: limit("total_ammonia"),
            nitrite: limit("nitrite"),
          })}
          ${change.dose.missing && html` <b>${t("away.dose_unknown")}</b>`}</dd>
        ${tasks.length > 0 && html`<dt>${t("tasks.title")}</dt><dd><${TaskLines} tasks=${tasks} /></dd>`}
      </dl></article>`;
}

/** @param {{tasks: ReturnType<typeof away_tank>["tasks"]}} props */
const TaskLines = ({ tasks }) => html`
  <ul>${tasks.map(
    ({ task, days }) => html`<li key=${task.id}><b>${task_said(task)}</b> <span>
    ${days.length > DAYS_SAID ? rule_said(task) : listed(days.map(day_said))}</span></li>`,
  )}</ul>`;
