/**
 * A step of setting up a tank, the planned animals: the water they will live in, how many of them the tank bears, and
 * whether they suit each other and the water.
 */
import { html, useMemo } from "../../vendor/preact.js";
import { how_many, unsuited } from "../../advice/life/how_many.js";
import { matured } from "../../advice/life/stock_tank.js";
import { still_to_come, suggested, unweighed } from "../../advice/setup/setting_up_life.js";
import { marks_of } from "../../figures/number_text.js";
import { result_rows } from "../../bench/result.js";
import { table } from "../../calc/tables.js";
import { cautions_of, choice_label, entry_field, entry_fields, output_of } from "../../contracts.js";
import { chosen, named, number, t } from "../../i18n/words.js";
import { counted } from "../words/life_said.js";
import { measured, temperature_said } from "../words/figures.js";
import { figures_of } from "../contract/bench_tank.js";
import { Calculated } from "../contract/calculated.js";
import { Lacking, by_said, inside_of } from "../how_many.js";
import { KindPicker } from "../kind_picker.js";
import { SourcePick } from "../water_pick.js";
import { all, get } from "../state/live.js";
import { measures } from "../state/measures.js";
import { ChosenList, FittingList } from "./chosen_list.js";
import { FirstFishSaid } from "./setup_first_fish.js";
import { Next, SetupStep, use_step } from "./setup_step.js";

/** @import { Answer } from "../../types/contract.js" */
/** @import { Tank } from "../../types/views.js" */
/** @import { Figures, Told } from "../../advice/life/how_many.js" */
/** How many suggestions are shown. */
const SHOWN = 8;

/** @typedef {{species: string, count: number, length_cm?: number}} Planned */

/** @param {{tank: Tank}} props */
export function StockStep({ tank }) {
  const { raw, set, save, problem } = use_step(tank, "stock");
  /** @type {Planned[]} */ const list = raw.list ?? tank.planned_stock ?? [];
  const stock = list.filter(({ count }) => count > 0);
  const put = (/** @type {string} */ species, /** @type {number} */ count) =>
    set({
      list: list.some((one) => one.species === species)
        ? list.map((one) => (one.species === species ? { ...one, count } : one))
        : [...list, { species, count }],
    });
  const put_a_group = (/** @type {string} */ key) => put(key, table("species").rows[key]?.group_min ?? 1);
  const own = all("own_species");
  const unknown = unweighed(stock, own);
  const source = get("source_water", tank.source_water);
  const figures = useMemo(() => figures_of(tank.id), [tank, source]);
  const fitting = useMemo(() => suggested(figures, stock, own), [figures, own, JSON.stringify(stock)]);
  const warned = (/** @type {string} */ species) => {
    const found = unsuited(figures, species, own);
    return found.length > 0
      ? t("setup.not_for_water", { why: found.map(({ kind }) => kind_said(kind)).join("; ") })
      : "";
  };
  const about_here = (/** @type {string} */ species) => [about(species), warned(species)].filter(Boolean).join(". ");
  return html`
    <${SetupStep} step="stock" name=${tank.name} up=${`/tank/${tank.id}`} problem=${problem}
      skip=${() => void save("skipped")}
      act=${html`<${Next} onClick=${() => void save("done", { planned_stock: stock })} />`}>
      <p>${t("setup.stock_why")}</p>
      <${SourcePick} tank=${tank} here=${`/tank/${tank.id}/setup/stock`} />
      ${
        (source?.ph === undefined || source.gh_dgh === undefined) &&
        html`<p class="caution">${t("setup.water_unknown")}</p>`
      }
      <${ChosenList} chosen=${list} named=${animal_name} about=${about_here} on_count=${put}
        on_remove=${(/** @type {string} */ key) => set({ list: list.filter(({ species }) => species !== key) })} />
      ${
        fitting.length > 0 &&
        html`<section class="section"><h2>${t("setup.animals_fit")}</h2>
        <p class="soft small">${t("setup.animals_order")}</p>
        <${FittingList} kinds=${fitting.slice(0, SHOWN).map(({ key }) => key)} named=${animal_name} about=${about}
          on_pick=${put_a_group} /></section>`
      }
      <section class="section"><h2>${t("setup.animal_other")}</h2>
        <${KindPicker} rows="species" near=${own.map(({ name }) => name)} value=""
          then=${`/tank/${tank.id}/setup/stock`} on_pick=${put_a_group} warned=${warned} /></section>
      ${unknown.length > 0 && html`<p class="caution">${t("setup.unweighed", { who: unknown.join(", ") })}</p>`}
      <${Borne} tank=${tank} stock=${stock} figures=${figures} />
    <//>`;
}

/**
 * How many of the planned animals the tank bears newly filled and matured, and whether they suit each other. Of a tank
 * that is filled, how many may come now.
 * @param {{tank: Tank, stock: Planned[], figures: Figures}} props
 */
function Borne({ tank, stock, figures }) {
  const own = all("own_species");
  const present = inside_of(tank.id);
  const wanted = still_to_come(stock, present);
  const later = how_many({ figures: matured(figures), present, wanted, own });
  if (!later) return null;
  if (later.missing) return html`<${Lacking} tank=${tank} missing=${later.missing} />`;
  const found = later.whole?.found ?? { payload: later.stocking.input, answer: later.stocking.answer, errors: [] };
  const together = { payload: later.company.input, answer: later.company.answer, errors: [] };
  // The other cautions of stocking_limit say what those of compatibility say, too.
  const cautions = [...cautions_of("stocking_limit", ["small_lots", "welfare"]), ...cautions_of("compatibility")];
  return html`
    <p class="sentence">${matured_said(later)}</p>
    ${
      tank.started_at
        ? html`<${FirstFishSaid} tank=${{ ...tank, planned_stock: stock }} />`
        : html`<p>${new_said(how_many({ figures, present, wanted, own }))}</p>`
    }
    ${found.answer?.notes.map((note) => html`<p class="soft small" key=${note}>${note}</p>`)}
    <details class="more"><summary>${t("setup.bears_grown")}</summary><${Calculated} name="stocking_limit"
      found=${found} show=${["limit_g", "binding", "present_g", "nitrogen_g", "oxygen_g", "room_g"]} cautions=${[]} />
      </details>
    <${Together} answer=${together.answer} />
    <${Calculated} name="compatibility" found=${together} show=${[]} cautions=${[]} />
    ${cautions.map((text) => html`<p class="caution small" key=${text}>${text}</p>`)}`;
}

/** Whether all that are planned fit once the tank has matured. @param {Told} told */
function matured_said({ kinds, over, binds, whole }) {
  if (over) return t("many.over", { by: by_said(binds) });
  if (!whole) return t("setup.plan_all_in");
  if (whole.fits) return t("setup.plan_fits", { count: whole.count });
  const lacking = kinds.filter(({ come, wanted }) => come < wanted);
  const who = lacking.map(({ name, come, wanted }) => t("setup.plan_of", { come, wanted, name })).join("; ");
  return [t("setup.plan_not", { by: by_said(whole.by) }), who].filter(Boolean).join(" ");
}

/** Which of them the tank bears when it is new. @param {ReturnType<typeof how_many>} told */
function new_said(told) {
  if (!told || told.missing) return null;
  if (told.whole?.fits) return t("setup.plan_first_all");
  const some = told.kinds.filter(({ come }) => come > 0);
  const who = some.map(({ species, come }) => counted(species, come)).join("\u00a0· ");
  return some.length > 0 ? t("setup.plan_first", { who }) : t("setup.plan_wait");
}

/**
 * The water that suits all, in words; a property that no animal asks for, or in which they part, is left out.
 * @param {Answer<"compatibility">} answer
 */
export const water_for_all = (answer) =>
  [
    water_said("temperature", answer.temperature_low_c, answer.temperature_high_c, temperature_said),
    water_said("ph", answer.ph_low, answer.ph_high, (value) => number(value, 1)),
    water_said("gh", answer.gh_low_dgh, answer.gh_high_dgh, (value) => number(value, 0)),
  ]
    .filter(Boolean)
    .join("\u00a0· ");

/**
 * @param {string} of @param {number | null | undefined} low @param {number | null | undefined} high
 * @param {(value: number) => string} said
 */
const water_said = (of, low, high, said) =>
  typeof low === "number" && typeof high === "number" && t(`setup.water_${of}`, { low: said(low), high: said(high) });

/** The verdict, and each finding in the contract's words. @param {{answer?: Answer<"compatibility">}} props */
function Together({ answer }) {
  if (!answer) return null;
  const verdict = output_of("compatibility", "verdict");
  const findings = output_of("compatibility", "findings");
  return html`
    <section class="section"><h2>${named(verdict.label, choice_label(verdict, answer.verdict))}</h2>
      <p>${water_for_all(answer)}</p>
      <ul class="why">${answer.findings.map(
        (one, i) => html`<li key=${i}>
        ${finding_said(one, choice_label(entry_field(findings, "kind"), one.kind))}</li>`,
      )}</ul>
    </section>`;
}

/**
 * Whom a finding is about, what it says, and its figures.
 * @param {Answer<"compatibility">["findings"][number]} found
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
    .map(({ label, text, unit }) => named(label, [text, unit].filter(Boolean).join("\u00a0")))
    .join("; ");
  return figures ? t("setup.finding_figures", { who, what, figures }) : t("setup.finding", { who, what });
}

/** A finding in the contract's words. @param {string} kind */
const kind_said = (kind) => choice_label(entry_field(output_of("compatibility", "findings"), "kind"), kind);

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
