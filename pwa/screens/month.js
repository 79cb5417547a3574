/** One tank's month, to print: readings by day, changes, doses, meals and whatever else happened. */
import { html, useMemo } from "../vendor/preact.js";
import { month_named, month_of, month_span } from "../advice/journal/month.js";
import { day_of_month, month_said, t } from "../i18n/words.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { all_of_kind, get, now, room } from "../ui/state/live.js";
import { GROUP_OF } from "../advice/journal/timeline.js";
import { print_or_keep } from "../ui/state/print_or_keep.js";
import { tap } from "../ui/state/tap.js";
import { event_lines } from "../ui/words/event_said.js";
import { figure, grams_said, litres_said, parameter_short_name } from "../ui/words/figures.js";

/** @import { Month } from "../advice/journal/month.js" */
/** @import { Recorded } from "../advice/journal/timeline.js" */

/** @param {{id: string, query: URLSearchParams}} props `query`: `at`, a month as "2026-05" */
export function MonthPage({ id, query }) {
  const tank = get("tank", id);
  const { year, month } = month_named(query.get("at"), now.value);
  const span = month_span(year, month);
  const made_of = Object.keys(GROUP_OF).map(all_of_kind);
  const told = useMemo(() => month_of(room.value, id, span), [id, span.from, ...made_of]);
  if (!tank) return html`<${Missing} up="/" />`;
  const said = month_said(span.from);
  const nothing = told.tested.length + told.done.length === 0;
  return html`
    <${Page} title=${said} up=${`/tank/${id}/history`} aside=${html`<span class="soft">${tank.name}</span>`}
      act=${
        !nothing &&
        html`<button class="main" type="button"
        onClick=${tap(() => void print_or_keep(`limnary-${of_month(span.from)}`))}>${t("away.print")}</button>`
      }>
      <nav class="row not-printed" aria-label=${t("month.other")}>
        <${Other} id=${id} at=${+new Date(year, month - 1, 1)} />
        ${span.to <= now.value && html`<${Other} id=${id} at=${span.to} />`}</nav>
      ${nothing ? html`<p class="sentence">${t("month.none")}</p>` : html`<${Told} told=${told} />`}
    <//>`;
}

/** "2026-05". @param {number} at */
function of_month(at) {
  const day = new Date(at);
  return `${day.getFullYear()}-${String(day.getMonth() + 1).padStart(2, "0")}`;
}

/** @param {{id: string, at: number}} props */
const Other = ({ id, at }) =>
  html`<a class="quiet" href=${`/tank/${id}/month?at=${of_month(at)}`}>${month_said(at)}</a>`;

/** @param {{told: Month}} props */
function Told({ told: { parameters, tested, done, totals } }) {
  const sums = [
    totals.tests > 0 && t("month.tests", { count: totals.tests }),
    totals.changes > 0 && t("month.changes", { count: totals.changes, litres: litres_said(totals.litres) }),
    totals.meals > 0 && t("month.meals", { count: totals.meals, amount: grams_said(totals.feed_g) }),
    totals.doses > 0 && t("month.doses", { count: totals.doses }),
  ].filter(Boolean);
  const units = Object.fromEntries(parameters.map((parameter) => [parameter, unit_of(tested, parameter)]));
  return html`
    <div class="wide month">
      ${sums.length > 0 && html`<p>${sums.join("\u00a0· ")}</p>`}
      ${
        tested.length > 0 &&
        html`<section class="section"><h2 id="month-readings">${t("month.readings")}</h2>
        <div class="scrolled" role="region" aria-labelledby="month-readings" tabindex="0">
          <table class="measured by-day">
          <thead><tr><th scope="col">${t("month.day")}</th>${parameters.map(
            (parameter) =>
              html`<th key=${parameter} scope="col">${parameter_short_name(parameter)}${
                units[parameter] && html`<br /><span class="soft small">${units[parameter]}</span>`
              }</th>`,
          )}</tr></thead>
          <tbody>${tested.map(
            ({ day, figures }) =>
              html`<tr key=${day}><th scope="row">${day_of_month(day)}</th>${parameters.map(
                (parameter) =>
                  html`<td key=${parameter}>${(figures[parameter] ?? [])
                    .map((one) => cell_said(one, units[parameter]))
                    .join(", ")}</td>`,
              )}</tr>`,
          )}</tbody></table></div></section>`
      }
      ${
        done.length > 0 &&
        html`<section class="section"><h2>${t("month.done")}</h2>
        <dl class="days">${done.map(
          ({ day, events }) =>
            html`<div key=${day}><dt>${day_of_month(day)}</dt><dd>${events
              .flatMap(event_lines)
              .filter(Boolean)
              .join("\u00a0· ")}</dd></div>`,
        )}</dl></section>`
      }
    </div>`;
}

/**
 * The unit that all figures of a parameter share; empty where they differ.
 * @param {Month["tested"]} tested @param {string} parameter
 */
function unit_of(tested, parameter) {
  const units = new Set(tested.flatMap(({ figures }) => (figures[parameter] ?? []).map((one) => said(one).unit)));
  return units.size === 1 ? [...units][0] : "";
}

/** @param {Recorded} one @param {string} shared the unit in the heading */
function cell_said(one, shared) {
  const { value, unit } = said(one);
  return unit === shared ? value : `${value} ${unit}`;
}

/** @param {Recorded} one a reading */
const said = (one) => figure(/** @type {import("../types/views.js").Reading} */ (/** @type {unknown} */ (one)));
