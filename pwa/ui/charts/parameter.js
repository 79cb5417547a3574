/**
 * One parameter of the outlook in the units of this phone: its chance in words, its chart, and the figures as a table.
 */
import { html, useMemo } from "../../vendor/preact.js";
import { lines_in } from "../../advice/forecast/chart_lines.js";
import { as_read, is_watched } from "../../advice/level.js";
import { number, short, t, when } from "../../i18n/words.js";
import { chance_said } from "../words/chance.js";
import { Chart } from "./chart.js";
import { level_said, level_unit, litres_said, nitrogen, parameter_name } from "../words/figures.js";
import { measures, shown_in } from "../state/measures.js";

/** @import { Basis } from "../../advice/level.js" */
/** @import { Drawn, Lines } from "../../advice/forecast/chart_lines.js" */
/** @import { Watched } from "../../types/advice.js" */

/**
 * The name under which the outlook gives the chance of a parameter.
 * @type {Record<string, "nh3" | "nitrite" | "nitrate">}
 */
export const CHANCE_OF = { total_ammonia: "nh3", nitrite: "nitrite", nitrate: "nitrate" };
/** How many points of the fan the table lists. */
const POINTS = 6;

/**
 * @param {{lines: Lines, basis: Basis, next: import("../../types/advice.js").AheadAnswer | undefined,
 * as_table: boolean, now: number}} props `basis`: how this tank's kit reads; `next`: the outlook until the next test,
 * if it is there
 */
export function Parameter({ lines: held, basis, next, as_table, now }) {
  const { parameter } = held;
  const unit = unit_of(parameter, basis);
  const lines = useMemo(() => lines_in(held, show_of(parameter, basis)), [held, basis, measures.value]);
  const id = `of-${parameter}`;
  return html`
    <section class="parameter" aria-labelledby=${id}>
      <h2 id=${id}>${parameter_name(parameter)} <span class="unit">${unit}</span></h2>
      ${
        next &&
        parameter in CHANCE_OF &&
        html`<${Chance} lines=${held} basis=${basis}
        chance=${next.pass_chance[CHANCE_OF[parameter]]}
          standing=${next.now[`${/** @type {Watched} */ (parameter)}_mg_n_l`]} />`
      }
      ${!as_table && html`<${Chart} lines=${lines} />`}
      <div class=${as_table ? "" : "unseen"}><${Table} lines=${lines} unit=${unit} now=${now} /></div>
    </section>`;
}

/** @param {{lines: Lines, basis: Basis, chance: number, standing: {p10: number, p50: number, p90: number}}} props */
function Chance({ lines, basis, chance, standing }) {
  const { parameter, limit, fan } = lines;
  if (!limit || fan.length === 0) return null;
  const last = fan.at(-1);
  const wide = last && last.p90 - last.p10 > limit.mg_n_l;
  const parts = { chance: chance_said(chance) };
  const perhaps = standing.p50 > limit.mg_n_l ? t("outlook.perhaps_over", parts) : t("outlook.chance", parts);
  const said = standing.p10 > limit.mg_n_l ? t("outlook.over") : perhaps;
  return html`
    <p class="chance">${said[0].toLocaleUpperCase() + said.slice(1)}</p>
    <p class="soft small">
      ${t("outlook.limit", {
        limit: level_said(parameter, limit.mg_n_l, basis),
        by: t(`limit.${limit.by}`),
      })} ${wide && t("outlook.wide")}</p>`;
}

/** @param {{lines: Drawn, unit: string, now: number}} props */
function Table({ lines, unit, now }) {
  const { parameter, fan, dots, marks } = lines;
  const said = (/** @type {number} */ value) => figure_said(parameter, value);
  const every = Math.max(1, Math.round((fan.length - 1) / POINTS));
  const so_far = [
    ...[
      ...dots.map((dot) => ({
        at: dot.at,
        what: t(dot.doubted ? "outlook.read_doubted" : "outlook.read"),
        value: said(dot.value),
        span: span_said(dot, said),
      })),
      ...marks
        .filter(({ kind }) => kind === "change")
        .map(({ at, said: litres }) => ({
          at,
          what: t("history.changed", { litres: litres_said(litres) }),
          value: "",
          span: "",
        })),
    ],
  ].sort((a, b) => b.at - a.at);
  const meals = marks.filter(({ kind }) => kind === "feeding");
  return html`
    ${
      meals.length > 0 &&
      html`<p class="soft small">${t("outlook.fed", {
        count: meals.length,
        grams: short(
          meals.reduce((sum, { said: grams }) => sum + grams, 0),
          1,
        ),
      })}</p>`
    }
    <table class="measured outlook-table">
      <caption class="unseen">${parameter_name(parameter)} ${unit}</caption>
      ${
        fan.length > 0 &&
        html`
        <tbody><tr><th scope="rowgroup" colspan="2">${t("outlook.likely")}</th></tr>
          ${fan
            .filter((_, i) => i % every === 0)
            .map(
              ({ at, p10, p50, p90 }) => html`
            <tr key=${at}><th scope="row">${when(at, now)}</th><td>${said(p50)} <span class="also">
              ${t("outlook.between", { low: said(p10), high: said(p90) })}</span></td></tr>`,
            )}
        </tbody>`
      }
      <tbody><tr><th scope="rowgroup" colspan="2">${t("outlook.so_far")}</th></tr>
        ${so_far.map(
          ({ at, what, value, span }, i) => html`
          <tr key=${`${at}-${i}`}><th scope="row">${when(at, now)}<span class="also">${what}</span></th><td>${value}
            ${span && html` <span class="also">${span}</span>`}</td></tr>`,
        )}
      </tbody>
    </table>`;
}

/**
 * The span of values that the kit cannot tell apart.
 * @param {import("../../advice/forecast/chart_lines.js").Dot} dot
 * @param {(value: number) => string} said
 */
function span_said({ low, high }, said) {
  if (low === high) return "";
  if (low === null) return t("outlook.up_to", { high: said(/** @type {number} */ (high)) });
  return high === null
    ? t("outlook.from", { low: said(low) })
    : t("outlook.between", { low: said(low), high: said(high) });
}

/** @param {string} parameter @param {number} value */
const figure_said = (parameter, value) => (is_watched(parameter) ? nitrogen(value) : number(value, 1));

/** @param {string} parameter @param {Basis} basis */
const unit_of = (parameter, basis) =>
  is_watched(parameter) ? level_unit(parameter, basis) : parameter === "temperature" ? shown_in("°C").label : "";

/** Turns a figure of the lines into that of the unit. @param {string} parameter @param {Basis} basis */
const show_of = (parameter, basis) =>
  is_watched(parameter)
    ? as_read(parameter, basis)
    : parameter === "temperature"
      ? shown_in("°C").show
      : (/** @type {number} */ value) => value;
