/**
 * Setting up, who shall live in it: the planned animals, what the tank can bear of them, and whether they suit each
 * other and the water.
 */
import { html, useMemo } from "../../vendor/preact.js";
import { asked } from "../../advice/setup/setting_up.js";
import { limit_input, maturity_of, suggested, together_input, unweighed } from "../../advice/setup/setting_up_life.js";
import { marks_of } from "../../figures/number_text.js";
import { result_rows } from "../../bench/result.js";
import { table } from "../../calc/tables.js";
import { cautions_of, choice_label, entry_field, entry_fields, output_of } from "../../contracts.js";
import { chosen, number, short, t } from "../../i18n/words.js";
import { measured, temperature_said } from "../words/figures.js";
import { Calculated } from "../contract/calculated.js";
import { Icon } from "../icon.js";
import { KindPicker } from "../kind_picker.js";
import { all, get, now } from "../state/live.js";
import { measures } from "../state/measures.js";
import { Next, SetupStep, use_step } from "./setup_step.js";
import { StepRow } from "../step_row.js";
import { tap } from "../state/tap.js";

/** So many suggestions are shown at once. */
const SHOWN = 8;

/** @param {string} of @param {number} value @param {number} places */
const water_said = (of, value, places) => (of === "temperature" ? temperature_said(value) : number(value, places));

/** @param {{tank: any}} props */
export function StockStep({ tank }) {
  const { raw, set, save, problem } = use_step(tank, "stock");
  /** @type {{species: string, count: number, length_cm?: number}[]} */ const list =
    raw.list ?? tank.planned_stock ?? [];
  const stock = list.filter(({ count }) => count > 0);
  const put = (/** @type {string} */ species, /** @type {number} */ count) =>
    set({
      list: list.some((one) => one.species === species)
        ? list.map((one) => (one.species === species ? { ...one, count } : one))
        : [...list, { species, count }],
    });
  const own = all("own_species");
  const unknown = unweighed(stock, own);
  const source = get("source_water", tank.source_water);
  const young = asked("stocking_limit", limit_input(tank, stock, maturity_of(tank, now.value), own));
  const grown = asked("stocking_limit", limit_input(tank, stock, "mature", own));
  const fitting = useMemo(() => suggested(tank, source, stock, own), [tank, source, own, JSON.stringify(stock)]).slice(
    0,
    SHOWN,
  );
  const together = asked("compatibility", together_input(tank, source, stock, own));
  return html`
    <${SetupStep} step="stock" name=${tank.name} up=${`/tank/${tank.id}`} problem=${problem}
      skip=${() => void save("skipped")}
      act=${html`<${Next} onClick=${() => void save("done", { planned_stock: stock })} />`}>
      <p>${t("setup.stock_why")}</p>
      ${list.map(
        ({ species, count }) => html`
        <div class="chosen" key=${species}>
          <${StepRow} label=${animal_name(species)} also=${about(species)} max=${500} value=${count}
            on_value=${(/** @type {number} */ value) => put(species, value)} />
          ${
            count === 0 &&
            html`<button class="quiet" type="button"
            onClick=${tap(() => set({ list: list.filter((one) => one.species !== species) }))}><${Icon} name="remove"
            size=${20} />${t("remove_named", { what: animal_name(species) })}</button>`
          }
        </div>`,
      )}
      ${
        fitting.length > 0 &&
        html`<section class="section"><h2>${t("setup.animals_fit")}</h2>
        <p class="soft small">${t("setup.animals_order")}</p>
        <ul class="lines">${fitting.map(
          ({ key, row }) => html`
          <li key=${key}><button class="line whole" type="button" onClick=${tap(() => put(key, row.group_min))}><span
            class="grow">${animal_name(key)}<br /><span class="soft small">${about(key)}</span></span><${Icon}
            name="plus" /></button></li>`,
        )}</ul></section>`
      }
      <section class="section"><h2>${t("setup.animal_other")}</h2>
        <${KindPicker} rows="species" near=${own.map(({ name }) => name)} value=""
          then=${`/tank/${tank.id}/setup/stock`}
          on_pick=${(/** @type {string} */ key) => put(key, table("species").rows[key]?.group_min ?? 1)} /></section>
      ${unknown.length > 0 && html`<p class="caution">${t("setup.unweighed", { who: unknown.join(", ") })}</p>`}
      ${
        young.answer &&
        grown.answer &&
        html`
        <p class="sentence">
          ${t(tank.started_at ? "setup.bears_today" : "setup.bears_plan", {
            planned: whole(young.answer.present_g),
            now: whole(young.answer.limit_g),
            later: whole(grown.answer.limit_g),
          })}
          ${" "}${t(
            grown.answer.present_g > grown.answer.limit_g
              ? "setup.bears_too_many"
              : young.answer.present_g > young.answer.limit_g
                ? "setup.bears_later"
                : "setup.bears_small_lots",
          )}</p>
        ${young.answer.notes
          .concat(grown.answer.notes)
          .filter(
            (/** @type {string} */ note, /** @type {number} */ i, /** @type {string[]} */ all) =>
              all.indexOf(note) === i,
          )
          .map((/** @type {string} */ note) => html`<p class="soft small" key=${note}>${note}</p>`)}
        <details class="more"><summary>${t("setup.bears_grown")}</summary><${Calculated} name="stocking_limit"
          found=${grown} show=${["limit_g", "binding", "more", "nitrogen_g", "oxygen_g", "room_g"]} cautions=${[]} />
          </details>
        <${Together} answer=${together.answer} />
        <${Calculated} name="compatibility" found=${together} show=${[]} cautions=${[]} />
        ${[...cautions_of("stocking_limit"), ...cautions_of("compatibility")].map(
          (text) => html`<p class="caution small" key=${text}>${text}</p>`,
        )}`
      }
    <//>`;
}

/** The water that suits all: output, unit in its name, decimals. */
const WATER = /** @type {[string, string, number][]} */ ([
  ["temperature", "_c", 0],
  ["ph", "", 1],
  ["gh", "_dgh", 0],
]);

/** The verdict, and each finding in the contract's words. @param {{answer: any}} props */
function Together({ answer }) {
  if (!answer) return null;
  const verdict = output_of("compatibility", "verdict");
  const findings = output_of("compatibility", "findings");
  return html`
    <section class="section"><h2>${verdict.label}: ${choice_label(verdict, answer.verdict)}</h2>
      <p>${WATER.flatMap(([of, unit, places]) =>
        answer[`${of}_low${unit}`] === undefined
          ? []
          : [
              t(`setup.water_${of}`, {
                low: water_said(of, answer[`${of}_low${unit}`], places),
                high: water_said(of, answer[`${of}_high${unit}`], places),
              }),
            ],
      ).join("\u00a0· ")}</p>
      <ul class="why">${answer.findings.map(
        (/** @type {any} */ one, /** @type {number} */ i) => html`<li key=${i}>
        ${finding_said(one, choice_label(entry_field(findings, "kind"), one.kind))}</li>`,
      )}</ul>
    </section>`;
}

/**
 * Who, what, and the figures that speak of it.
 * @param {any} found
 * @param {string} what
 */
function finding_said(found, what) {
  const who = [found.a, found.b].filter(Boolean).join(" – ");
  const outputs = entry_fields(output_of("compatibility", "findings")).filter(({ type }) => type !== "text");
  const rows = result_rows({ outputs }, found, {
    system: measures.value,
    marks: marks_of(chosen()),
  });
  const figures = rows
    .filter(({ name }) => name.endsWith("_low") || name.endsWith("_high"))
    .map(({ label, text, unit }) => `${label}: ${[text, unit].filter(Boolean).join("\u00a0")}`)
    .join("; ");
  return figures ? t("setup.finding_figures", { who, what, figures }) : t("setup.finding", { who, what });
}

/** @param {string} species */
export const animal_name = (species) => table("species").rows[species]?.name ?? species;

/** @param {string} species */
function about(species) {
  const row = table("species").rows[species];
  if (!row) return "";
  const [low, high] = row.temperature_c;
  return t("setup.animal_about", {
    length: measured(row.length_cm, "cm", 1),
    group: row.group_min,
    low: temperature_said(low),
    high: temperature_said(high),
  });
}

const whole = (/** @type {number} */ grams) => `${short(grams, grams < 10 ? 1 : 0)}\u00a0g`;
