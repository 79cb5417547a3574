/**
 * Tests of many tanks by keyboard: a row a tank, a cell a figure. Tab and the arrows move, Enter saves the row and goes
 * to the next one.
 */
import { html, useSignal } from "../vendor/preact.js";
import { TESTED } from "../advice/journal/test_order.js";
import { figure_spec, no_figure } from "../advice/readable.js";
import { walk } from "../advice/facts.js";
import { marks_of, read_number } from "../figures/number_text.js";
import { allowed } from "../contracts.js";
import { chosen, named, t } from "../i18n/words.js";
import { kit_for, reading_of } from "../ui/kits.js";
import { use_draft } from "../ui/state/draft.js";
import { with_text } from "../ui/state/field_text.js";
import { live_room, room } from "../ui/state/live.js";
import { shown_in } from "../ui/state/measures.js";
import { Page } from "../ui/page.js";
import { new_id, record } from "../ui/state/record.js";
import { tap } from "../ui/state/tap.js";
import { LookingOnly } from "../ui/view_only.js";
import { parameter_name, parameter_short_name } from "../ui/words/figures.js";

/** @import { Tank } from "../types/views.js" */
/** @typedef {Record<string, Record<string, string>>} Typed by tank and parameter */

const COLUMNS = [...TESTED, "kh"];

export function Grid() {
  const typed = use_draft("grid", () => /** @type {Typed} */ ({}));
  const tanks = walk(live_room);
  if (!room.value.may("reading")) return html`<${LookingOnly} title=${t("grid.title")} up="/tanks" />`;
  const set = (/** @type {string} */ id, /** @type {Record<string, string>} */ row) =>
    (typed.value = { ...typed.value, [id]: row });
  return html`
    <${Page} title=${t("grid.title")} up="/tanks" place="tanks" aside=${html`<span></span>`}>
      <p class="soft">${t("grid.why")}</p>
      <div class="wide grid-rows">${tanks.map(
        (tank) => html`<${Row} key=${tank.id} tank=${tank} typed=${typed.value[tank.id] ?? {}}
        on_typed=${(/** @type {Record<string, string>} */ row) => set(tank.id, row)} />`,
      )}</div>
    <//>`;
}

/** @param {{tank: Tank, typed: Record<string, string>, on_typed: (row: Record<string, string>) => void}} props */
function Row({ tank, typed, on_typed }) {
  const problem = useSignal("");
  const filled = COLUMNS.filter((parameter) => typed[parameter]?.trim());
  const save = async () => {
    const read = filled.map((parameter) => figure_typed(parameter, typed[parameter]));
    problem.value = read.flatMap((one) => ("wrong" in one ? [one.wrong] : [])).join(" ");
    if (problem.value || read.length === 0) return false;
    const shared = { tank: tank.id, at: room.value.now(), test: new_id() };
    const writes = read.map((one) => ({
      type: /** @type {const} */ ("put"),
      kind: "reading",
      id: new_id(),
      fields: { ...("reading" in one ? one.reading : {}), ...shared },
    }));
    if (!(await record(writes, t("saved.readings", { count: writes.length })))) return false;
    on_typed({});
    return true;
  };
  const on_key = async (/** @type {KeyboardEvent & {currentTarget: HTMLInputElement}} */ event) => {
    const { key, currentTarget: cell } = event;
    if (key === "Enter") {
      event.preventDefault();
      if (await save()) beside(cell, 1, -Infinity)?.focus();
    }
    const step = STEPS[key];
    if (!step || (step.across && cell.value && cell.selectionStart !== (step.across > 0 ? cell.value.length : 0)))
      return;
    event.preventDefault();
    beside(cell, step.down, step.across)?.focus();
  };
  return html`
    <section class="grid-row" aria-label=${tank.name}><h2>${tank.name}</h2>
      <div class="field grid-cells">${COLUMNS.map(
        (parameter) => html`<label key=${parameter}><span class="small">${parameter_short_name(parameter)}</span>
        <input inputmode="decimal" autocomplete="off" value=${typed[parameter] ?? ""}
          onInput=${with_text((text) => on_typed({ ...typed, [parameter]: text }))} onKeyDown=${on_key} /></label>`,
      )}<button class="quiet" type="button" disabled=${filled.length === 0} aria-label=${t("grid.save_named", {
        what: tank.name,
      })} onClick=${tap(() => void save())}>${t("grid.save")}</button></div>
      ${problem.value && html`<p class="wrong" role="alert">${problem.value}</p>`}
    </section>`;
}

/** Where a key leads: rows down, cells across. @type {Record<string, {down: number, across: number} | undefined>} */
const STEPS = {
  ArrowDown: { down: 1, across: 0 },
  ArrowUp: { down: -1, across: 0 },
  ArrowRight: { down: 0, across: 1 },
  ArrowLeft: { down: 0, across: -1 },
};

/** The cell so many rows and cells away; `-Infinity`: the row's first. @param {HTMLInputElement} cell */
function beside(cell, down = 0, across = 0) {
  const rows = [...document.querySelectorAll(".grid-row")];
  const own = cell.closest(".grid-row");
  const cells = (/** @type {Element | undefined | null} */ row) => [...(row?.querySelectorAll("input") ?? [])];
  const at = cells(own).indexOf(cell);
  return cells(rows[rows.indexOf(/** @type {Element} */ (own)) + down])[across === -Infinity ? 0 : at + across];
}

/**
 * A typed figure as a reading, or what is wrong with it and what is allowed.
 * @param {string} parameter @param {string} text
 */
function figure_typed(parameter, text) {
  const kit = kit_for(parameter);
  const read = read_number(text, marks_of(chosen()));
  const { hold } = shown_in(parameter === "temperature" ? "°C" : "");
  const value = "value" in read ? hold(read.value) : null;
  const spec = figure_spec({ parameter, unit: kit.unit }, parameter_name(parameter));
  if (value === null || no_figure(spec, value))
    return { wrong: named(parameter_name(parameter), t("allowed", { allowed: allowed(spec) })) };
  return { reading: reading_of(kit, value) };
}
