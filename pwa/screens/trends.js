/**
 * A tank's trends: each figure over a week, a month, a season or a year, as a chart or a table, with the water changes.
 */
import { HOUR } from "../figures/durations.js";
import { html, useMemo, useSignal } from "../vendor/preact.js";
import { facts_of } from "../advice/facts.js";
import { as_read, basis_of, is_watched } from "../advice/level.js";
import { of_parameter } from "../advice/of_parameter.js";
import { SPANS, TRENDS, in_brief, trend } from "../advice/journal/trends.js";
import { convert, unit_in, unit_label } from "../figures/units.js";
import { day_named, number, short, t, when } from "../i18n/words.js";
import { level_unit, nitrogen, parameter_name } from "../ui/words/figures.js";
import { all_of_kind, get, live_room, now } from "../ui/state/live.js";
import { measures } from "../ui/state/measures.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { tap } from "../ui/state/tap.js";
import { TrendChart } from "../ui/charts/trend_chart.js";

/** How far back a trend reaches at first. */
const FIRST_DAYS = 30;
/** How many rows a table shows. */
const ROWS = 60;

/** @param {{id: string}} props */
export function Trends({ id }) {
  const tank = get("tank", id);
  const days = useSignal(FIRST_DAYS);
  const as_table = useSignal(false);
  const hour = Math.floor(now.value / HOUR);
  const trends = useMemo(() => {
    if (!tank) return [];
    const facts = facts_of(live_room, tank, now.value);
    return Object.keys(TRENDS)
      .map((what) => shown(trend(what, facts, days.value), facts))
      .filter(({ points }) => points.length > 0);
  }, [tank, days.value, hour, measures.value, ...["reading", "water_change", "feeding"].map(all_of_kind)]);
  if (!tank) return html`<${Missing} up="/" />`;
  return html`
    <${Page} title=${t("trends.title")} up=${`/tank/${id}`} aside=${html`<span class="soft">${tank.name}</span>`}>
      <div class="row chips" role="group" aria-label=${t("trends.how")}>
        ${SPANS.map(
          (count) => html`<button key=${count} class="quiet" type="button"
          aria-pressed=${days.value === count} onClick=${tap(() => (days.value = count))}>${t("trends.days", { count })}
          </button>`,
        )}
        <button class="quiet" type="button" aria-pressed=${as_table.value}
          onClick=${tap(() => (as_table.value = !as_table.value))}>${t("outlook.as_table")}</button>
      </div>
      ${trends.length === 0 && html`<p class="sentence section">${t("trends.none")}</p>`}
      <div class="wide side-by-side">${trends.map(
        (one) => html`<${One} key=${one.what} trend=${one} as_table=${as_table.value} />`,
      )}</div>
    <//>`;
}

/**
 * In the units of this phone; ammonia, nitrite and nitrate as the tank's kit reads them.
 * @param {import("../advice/journal/trends.js").Trend} trend
 * @param {Pick<import("../types/advice.js").Facts, "readings">} facts
 * @returns {import("../advice/journal/trends.js").Trend}
 */
function shown(trend, { readings }) {
  const { what, unit, points } = trend;
  if (is_watched(what)) {
    const basis = basis_of({ reading: of_parameter(readings, what).at(-1) ?? null });
    const show = as_read(what, basis);
    return {
      ...trend,
      unit: level_unit(what, basis),
      points: points.map(({ at, value }) => ({ at, value: show(value) })),
    };
  }
  const there = unit_in({ name: "", unit }, measures.value);
  return { ...trend, unit: there, points: points.map(({ at, value }) => ({ at, value: convert(value, unit, there) })) };
}

/** @param {{trend: import("../advice/journal/trends.js").Trend, as_table: boolean}} props */
function One({ trend, as_table }) {
  const { what, unit } = trend;
  const id = `trend-${what}`;
  const brief = in_brief(trend);
  if (!brief) return null;
  const said = (/** @type {number} */ value) => figure_said(what, value);
  const parts = {
    last: said(brief.last.value),
    when: when(brief.last.at, now.value),
    low: said(brief.low),
    high: said(brief.high),
    mean: said(brief.mean),
    count: brief.count,
  };
  return html`
    <section class="parameter" aria-labelledby=${id}>
      <h2 id=${id}>${name_of(what)} <span class="unit">${unit_label(unit)}</span></h2>
      <p class="soft">${t(trend.bars ? `trends.brief_${what}` : "trends.brief", parts)}</p>
      ${as_table ? html`<${Table} trend=${trend} said=${said} />` : html`<${TrendChart} trend=${trend} />`}
    </section>`;
}

/** @param {{trend: import("../advice/journal/trends.js").Trend, said: (value: number) => string}} props */
function Table({ trend: { what, unit, points, bars, marks }, said }) {
  const rows = [
    ...[
      ...points.map(({ at, value }) => ({
        at,
        label: bars ? day_named(at, now.value) : when(at, now.value),
        value: said(value),
      })),
      ...marks.map((at) => ({ at, label: when(at, now.value), value: t("trends.changed") })),
    ],
  ].sort((a, b) => b.at - a.at);
  return html`
    <table class="measured"><caption class="unseen">${name_of(what)} ${unit_label(unit)}</caption>
      <tbody>${rows.slice(0, ROWS).map(
        ({ at, label, value }, i) => html`<tr key=${`${at}-${i}`}><th scope="row">
        ${label}</th><td>${value}</td></tr>`,
      )}</tbody></table>
    ${rows.length > ROWS && html`<p class="soft small">${t("trends.rows", { count: ROWS, of: rows.length })}</p>`}`;
}

/** Figures that are no parameter of a test. @type {Record<string, () => string>} */
const NAMES = { feed: () => t("trends.feed"), changed: () => t("trends.water") };
/** @param {string} what */
const name_of = (what) => NAMES[what]?.() ?? parameter_name(what);
/** @param {string} what @param {number} value */
const figure_said = (what, value) =>
  is_watched(what) ? nitrogen(value) : what === "feed" ? short(value, 2) : number(value, 1);
