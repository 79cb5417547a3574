/** A year looked back on: of one tank, and of the room. It prints. */
import { html, useMemo } from "../vendor/preact.js";
import { facts_of, walk } from "../advice/facts.js";
import { basis_of } from "../advice/level.js";
import { counted_together, year_named, year_of, year_span } from "../advice/journal/year.js";
import { short, short_date, t } from "../i18n/words.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { all_of_kind, get, live_room, now } from "../ui/state/live.js";
import { print_or_keep } from "../ui/state/print_or_keep.js";
import { tap } from "../ui/state/tap.js";
import { figure, grams_said, level_said, litres_said } from "../ui/words/figures.js";
import { parameter_name, parameter_short_name, read_as } from "../ui/words/figures.js";

/** @import { Counts, Year } from "../advice/journal/year.js" */
/** @import { Reading } from "../types/views.js" */

const KINDS = ["reading", "water_change", "dose", "feeding", "stock_change", "source_water", "label"];

/** @param {{id: string, query: URLSearchParams}} props `query`: `at`, a year */
export function YearPage({ id, query }) {
  const tank = get("tank", id);
  const year = year_named(query.get("at"), now.value);
  const told = useMemo(
    () => tank && year_of(facts_of(live_room, tank, now.value), year_span(year)),
    [tank, year, ...KINDS.map(all_of_kind)],
  );
  if (!tank || !told) return html`<${Missing} up="/" />`;
  return html`
    <${Frame} year=${year} path=${`/tank/${id}/year`} up=${`/tank/${id}/history`} of=${tank.name}>
      ${
        is_empty(told.counts)
          ? html`<p class="sentence">${t("year.none")}</p>`
          : html`<div class="year">
      <section class="section"><h2>${t("year.kept")}</h2><${Kept} told=${told} /></section>
      <${Done} counts=${told.counts} refills=${told.counts.refills} />
      <${Animals} counts=${told.counts} />
      <${LowAndHigh} extremes=${told.extremes} /></div>`
      }
    <//>`;
}

/** @param {{query: URLSearchParams}} props */
export function RoomYear({ query }) {
  const year = year_named(query.get("at"), now.value);
  const tanks = [...walk(live_room), ...walk(live_room, { resting: true })];
  const each = useMemo(
    () => tanks.map((tank) => ({ tank, ...year_of(facts_of(live_room, tank, now.value), year_span(year)) })),
    [year, all_of_kind("tank"), ...KINDS.map(all_of_kind)],
  );
  const kept = each.filter(({ counts }) => !is_empty(counts));
  const together = counted_together(kept.map(({ counts }) => counts));
  return html`
    <${Frame} year=${year} path="/year" up="/timeline" of=${t("history.all_tanks")}>
      ${
        kept.length === 0
          ? html`<p class="sentence">${t("year.none")}</p>`
          : html`<div class="year"><${Done} counts=${together} /><${Animals} counts=${together} />
      <section class="section"><h2>${t("place.tanks")}</h2><ul class="lines">${kept.map(
        ({ tank, counts, over }) => html`<li key=${tank.id}><a class="line" href=${`/tank/${tank.id}/year?at=${year}`}>
          <span><b>${tank.name}</b><br /><span class="soft small">${in_one_line(counts, over)}</span></span></a></li>`,
      )}</ul></section></div>`
      }
    <//>`;
}

/** @param {Omit<Counts, "refills">} counts */
const is_empty = (counts) => Object.values(counts).every((count) => count === 0);

/** @param {Counts} counts @param {number} over */
const in_one_line = (counts, over) =>
  [
    t("month.tests", { count: counts.tests }),
    over > 0 && t("year.over", { count: over }),
    t("month.changes", { count: counts.changes, litres: litres_said(counts.litres) }),
    counts.deaths > 0 && t("year.died", { count: counts.deaths }),
  ]
    .filter(Boolean)
    .join("\u00a0· ");

/** @param {{year: number, path: string, up: string, of: string, children?: unknown}} props */
const Frame = ({ year, path, up, of, children }) => html`
  <${Page} title=${t("year.of", { year: String(year) })} up=${up} aside=${html`<span class="soft">${of}</span>`}
    act=${html`<button class="main" type="button" onClick=${tap(() => void print_or_keep(`limnary-${year}`))}>
      ${t("away.print")}</button>`}>
    <nav class="row not-printed" aria-label=${t("year.other")}>
      <a class="quiet" href=${`${path}?at=${year - 1}`}>${year - 1}</a>
      ${
        year < new Date(now.value).getFullYear() &&
        html`<a class="quiet" href=${`${path}?at=${year + 1}`}>${year + 1}</a>`
      }</nav>
    ${children}
  <//>`;

/** How the tests kept to the limits: the longest good time, the worst reading. @param {{told: Year}} props */
const Kept = ({ told: { counts, over, best, worst } }) => html`
  <p class="sentence">${over > 0 ? t("year.over_of", { count: over, total: counts.tests }) : t("year.over_none")}</p>
  ${
    best &&
    best.tests > 1 &&
    html`<p>${t("year.best", {
      ...{ from: short_date(best.from), to: short_date(best.to), tests: short(best.tests, 0) },
      count: best.days,
    })}</p>`
  }
  ${
    worst &&
    html`<p>${t("year.worst", {
      what: reading_said(worst.reading),
      day: short_date(worst.reading.at),
      limit: limit_said(worst),
    })}</p>`
  }`;

/** @param {NonNullable<Year["worst"]>} worst */
function limit_said({ reading, limit_mg_n_l }) {
  const basis = basis_of({ reading });
  return `${level_said(reading.parameter, limit_mg_n_l, basis)} ${read_as(reading.parameter, basis)}`;
}

/** @param {Reading} reading */
function reading_said(reading) {
  const { value, unit } = figure(reading);
  return `${parameter_name(reading.parameter)} ${value} ${unit}`.trim();
}

/** @param {{counts: Omit<Counts, "refills">, refills?: number}} props */
const Done = ({ counts, refills }) => html`
  <${Rows} title=${t("month.done")} rows=${[
    [
      t("year.changes"),
      short(counts.changes, 0),
      [litres_said(counts.litres), refills && t("year.refills", { times: short(refills, 1) })],
    ],
    [t("year.tests"), short(counts.tests, 0), [t("year.readings", { count: counts.readings })]],
    [t("year.meals"), short(counts.meals, 0), [grams_said(counts.feed_g)]],
    [t("year.doses"), short(counts.doses, 0), []],
  ]} />`;

/** @param {{counts: Omit<Counts, "refills">}} props */
const Animals = ({ counts }) => html`
  <${Rows} title=${t("year.animals")} rows=${
    /** @type {const} */ (["arrivals", "births", "deaths", "removals"]).map((what) => [
      t(`year.${what}`),
      short(counts[what], 0),
      [],
    ])
  } />`;

/** @param {{title: string, rows: [string, string, (string | number | undefined | false)[]][]}} props */
const Rows = ({ title, rows }) => html`
  <section class="section"><h2>${title}</h2><table class="measured"><caption class="unseen">${title}</caption>
    <tbody>${rows.map(
      ([name, count, more]) =>
        html`<tr key=${name}><th scope="row">${name}</th><td>${count}${more
          .filter(Boolean)
          .map((each) => html`<span class="also" key=${each}>${each}</span>`)}</td></tr>`,
    )}</tbody></table></section>`;

/** @param {{extremes: Year["extremes"]}} props */
const LowAndHigh = ({ extremes }) =>
  extremes.length > 0 &&
  html`
  <section class="section"><h2>${t("year.low_high")}</h2><table class="measured"><caption class="unseen">
    ${t("year.low_high")}</caption>
    <thead><tr><td></td><th scope="col">${t("year.low")}</th><th scope="col">${t("year.high")}</th></tr></thead>
    <tbody>${extremes.map(({ parameter, low, high }) => {
      const [lowest, highest] = [figure(low), figure(high)];
      const alike = lowest.unit === highest.unit;
      const cell = (/** @type {ReturnType<typeof figure>} */ { value, unit }, /** @type {Reading} */ one) =>
        html`<td>${value} ${!alike && unit}<span class="also">${short_date(one.at)}</span></td>`;
      return html`<tr key=${parameter}><th scope="row">${parameter_short_name(parameter)}${
        alike && lowest.unit && html`<br /><span class="soft small">${lowest.unit}</span>`
      }</th>${cell(lowest, low)}${cell(highest, high)}</tr>`;
    })}</tbody></table></section>`;
