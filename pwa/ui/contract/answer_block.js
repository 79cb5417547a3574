/** The answer of a calculation: its figures, cautions, working and sources. */
import { html } from "../../vendor/preact.js";
import { t } from "../../i18n/words.js";
import { Icon } from "../icon.js";

/** @import { VNode } from "../../vendor/preact.js" */
/** @typedef {import("../../bench/result.js").ResultRow} ResultRow */

/**
 * The figures, the first one large, and the calculation's notes.
 * @param {{rows: ResultRow[], notes: string[]}} props
 */
export const AnswerFigures = ({ rows, notes }) => {
  const [first, ...rest] = rows;
  return html`
    ${
      first &&
      !first.rows &&
      html`<p class="answer-main"><span class="soft">${first.label}</span><${Figure}
      row=${first} /></p>`
    }
    <dl class="answer-rest">${(first?.rows ? rows : rest).map((row) => html`<${Line} key=${row.name} row=${row} />`)}
      </dl>
    ${notes.map((note) => html`<p class="answer-note">${note}</p>`)}`;
};

/** @param {{row: ResultRow}} props */
const Figure = ({ row }) => {
  const beside = row.unit || row.aside;
  return html`<span class="figure ${/^[\d−]/.test(row.text) ? "" : "words"}">${row.text}
    ${beside && html` <span class="unit">${beside.replaceAll(" ", "\u00a0")}</span>`}</span>`;
};

/** A longer list opens by a tap. */
const MANY = 6;

/** @param {{row: ResultRow}} props @returns {VNode | null} */
const Line = ({ row }) => {
  if (!row.rows) return html`<div><dt>${row.label}</dt><dd><${Figure} row=${row} /></dd></div>`;
  if (row.rows.length === 0) return null;
  const several = row.rows.length > 1;
  const entries = html`<ol>
    ${row.rows.map(
      (entry, index) => html`<li><${Entry} entry=${entry} number=${several ? String(index + 1) : ""} />
    </li>`,
    )}</ol>`;
  return html`
    <div class="many"><dt>${row.label}</dt>
      <dd>${
        row.rows.length > MANY
          ? html`<details class="more"><summary>
        ${t("bench.entries", { count: row.rows.length })}</summary>${entries}</details>`
          : entries
      }</dd>
    </div>`;
};

/**
 * One entry of a list: its name, then its figures.
 * @param {{entry: ResultRow[], number: string}} props
 * @returns {VNode}
 */
const Entry = ({ entry, number }) => {
  const [head, ...rest] = entry;
  const named = head && !head.rows && !head.unit && !/^[\d−]/.test(head.text);
  if (named && rest.length === 1 && !rest[0].rows)
    return html`<p class="entry-line"><${Figure} row=${head} /><${Figure} row=${rest[0]} /></p>`;
  return html`
    ${named && html`<p class="entry-name"><${Figure} row=${head} /></p>`}
    ${(named ? rest : entry).map((row, index) =>
      row.rows
        ? html`<${Beside} row=${row} />`
        : html`<p class="entry-line"><span class="soft">${!named && index === 0 && !row.label ? number : row.label}
          </span><${Figure} row=${row} /></p>`,
    )}`;
};

/**
 * Figures of one thing side by side, each above its label: a band and its middle.
 * @param {{row: ResultRow}} props
 * @returns {VNode}
 */
const Beside = ({ row }) => html`
  <p class="soft beside-of">${row.label}</p>
  ${row.rows?.map(
    (entry) => html`
    <div class="beside">
      ${entry.map((one) =>
        one.rows
          ? html`<div><${Beside} row=${one} /></div>`
          : html`<div><${Figure} row=${one} />
      <span class="soft small">${one.label}</span></div>`,
      )}</div>`,
  )}`;

/** The cautions, always shown. @param {{cautions: string[]}} props */
export const Cautions = ({ cautions }) =>
  cautions.map((text) => html`<p class="caution"><${Icon} name="needs" size=${20} /><span>${text}</span></p>`);

/** The working, behind one tap. @param {{steps: string[]}} props */
export const Working = ({ steps }) =>
  steps.length > 0 &&
  html`
    <details class="more">
      <summary>${t("bench.working")}</summary>
      <ol class="steps">${steps.map((step) => html`<li>${step}</li>`)}</ol>
    </details>`;

/**
 * How uncertain the answer is and where it comes from, behind one tap.
 * @param {{spec: {uncertainty: string}, sources: {key: string, title: string, provenance: string}[]}} props
 */
export const Sources = ({ spec, sources }) => html`
  <details class="more">
    <summary>${t("bench.sources")}</summary>
    <p>${spec.uncertainty}</p>
    <ul class="sources">
      ${sources.map(
        (source) => html`<li key=${source.key}>${source.title} <span
      class="soft">· ${t(`bench.provenance.${source.provenance}`)}</span></li>`,
      )}</ul>
  </details>`;
