/** One calculation: its form, its answer while one types, kept on the tank's journal or copied. */
import { computed, html, useEffect, useMemo, useRef, useState } from "../vendor/preact.js";
import { label_of } from "../bench/answer.js";
import { add_row, put, remove_row } from "../bench/draft.js";
import { form_of, range_shown } from "../bench/form.js";
import { plain_result, row_text } from "../bench/result_note.js";
import { marks_of } from "../figures/number_text.js";
import { result_rows } from "../bench/result.js";
import { fitting } from "../bench/tank_figures.js";
import { systems } from "../figures/units.js";
import { working_steps } from "../bench/working.js";
import { table } from "../calc/tables.js";
import { cautions_of, contracts } from "../contracts.js";
import { chosen, t } from "../i18n/words.js";
import { AnswerFigures, Cautions, Sources, Working } from "../ui/contract/answer_block.js";
import { use_outcome } from "../ui/contract/bench_outcome.js";
import { figures_of } from "../ui/contract/bench_tank.js";
import { ContractForm } from "../ui/contract/contract_form.js";
import { draft, use_draft } from "../ui/state/draft.js";
import { all, room } from "../ui/state/live.js";
import { measures } from "../ui/state/measures.js";
import { Page } from "../ui/page.js";
import { just_done, new_id, record, say } from "../ui/state/record.js";
import { tap } from "../ui/state/tap.js";

/**
 * The tank a calculation was last used for; "" for none.
 * @type {import("../vendor/preact.js").Signal<string | null>}
 */
const last_tank = draft("bench.tank", () => null);
/** Names of the calculations opened last. @type {import("../vendor/preact.js").Signal<string[]>} */
const opened = draft("bench.opened", () => []);

/** @param {{name: string}} props */
export const BenchSheet = ({ name }) => {
  const spec = contracts()[name];
  if (!Object.hasOwn(contracts(), name))
    return html`<${Page} title=${t("bench.title")} up="/bench" place="bench"><p>${t("bench.unknown", { name })}</p>
      </${Page}>`;
  return html`<${Sheet} key=${name} spec=${spec} />`;
};

/** @param {{spec: any}} props */
const Sheet = ({ spec }) => {
  const kept = use_draft(`bench.${spec.name}`, () => /** @type {import("../bench/draft.js").Draft} */ ({}));
  const tanks = all("tank");
  const tank_id = tank_for(kept.value.tank, tanks);
  const figures = useMemo(() => computed(() => fitting(spec.inputs, figures_of(tank_id))), [spec, tank_id]);
  const marks = useMemo(reading_marks, []);
  useEffect(
    () => void (opened.value = [spec.name, ...opened.value.filter((one) => one !== spec.name)].slice(0, 3)),
    [spec.name],
  );

  const tank = figures.value;
  const system = measures.value;
  const filling = { draft: kept.value, tank, system, marks };
  const form = form_of(spec, filling);
  const { outcome, waiting } = use_outcome(spec, filling);
  const manner = { system, marks, yes: t("bench.yes"), no: t("bench.no"), from: t("bench.from_inputs") };
  const rows = "answer" in outcome ? result_rows(spec, outcome.answer, manner) : [];
  const change = (/** @type {import("../bench/draft.js").Draft} */ next) => (kept.value = next);

  const hands = {
    errors: errors_of(spec, outcome, system, marks),
    edit: (/** @type {(string | number)[]} */ path, /** @type {any} */ node) =>
      change(put(spec.inputs, kept.value, tank, path, node)),
    add: (/** @type {(string | number)[]} */ path) => change(add_row(spec.inputs, kept.value, tank, path)),
    remove: (/** @type {(string | number)[]} */ path, /** @type {number} */ index) =>
      change(remove_row(spec.inputs, kept.value, tank, path, index)),
    choose: (/** @type {string} */ key, /** @type {string} */ option) =>
      change({ ...kept.value, chosen: { ...kept.value.chosen, [key]: option } }),
  };
  const choose_tank = (/** @type {string} */ id) => {
    last_tank.value = id;
    change({ ...kept.value, tank: id });
  };
  // An older answer keeps its place on the page, unseen, so that nothing moves until the one to what is typed now is
  // there.
  const place = waiting ? "place-kept" : "";
  const answer = useRef(/** @type {HTMLElement | null} */ (null));
  const words = () => ("answer" in outcome ? plain_result(spec, outcome.payload, outcome.answer, manner) : "");
  const empty = () => {
    const before = kept.value;
    change({ tank: before.tank });
    just_done.value = { said: t("bench.emptied"), undo: async () => void change(before) };
  };
  const changed = Boolean(kept.value.typed && Object.keys(kept.value.typed).length) || Boolean(kept.value.chosen);

  const [by_hand, set_by_hand] = useState("");
  const here = tanks.find((one) => one.id === tank_id);
  const keep = () => {
    const fields = { tank: tank_id, at: room.value.now(), text: words() };
    return record(
      [{ type: "put", kind: "note", id: new_id(), fields }],
      t("bench.kept", { title: spec.title, tank: here?.name ?? "" }),
    );
  };
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(words());
      say(t("bench.copied"));
    } catch {
      // No clipboard without a secure connection: then the words lie there to be taken.
      set_by_hand(words());
      answer.current?.scrollIntoView();
    }
  };

  const act = html`<${Act} outcome=${outcome} waiting=${waiting} rows=${rows} tank=${here} keep=${keep} copy=${copy}
    show=${() => answer.current?.scrollIntoView()} />`;
  return html`
    <${Page} title=${spec.title} up="/bench" act=${act}>
      <p class="soft sheet-purpose">${spec.purpose}</p>
      <div class="bench-for">
        ${tanks.length > 0 && html`<${ForTank} tanks=${tanks} id=${tank_id} pick=${choose_tank} />`}
        <${System} />
      </div>
      <${ContractForm} form=${form} ...${hands} />
      <section class="section answer" ref=${answer} aria-label=${t("bench.answer")}>
        <h2>${t("bench.answer")}</h2>
        ${
          "answer" in outcome
            ? html`<div class="in-one-place" aria-busy=${waiting}>${
                waiting &&
                html`<p class="soft meanwhile">
              ${t("bench.working_on_it")}</p>`
              }<div class=${place}><${AnswerFigures} rows=${rows}
              notes=${outcome.answer.notes} /></div></div>`
            : html`<${NotYet} spec=${spec} outcome=${outcome} errors=${hands.errors} />`
        }
        <${Cautions} cautions=${cautions_of(spec.name)} />
        ${
          "answer" in outcome &&
          html`<div class=${place}><${Working}
          steps=${working_steps(spec, outcome.payload, outcome.answer, manner)} other_units=${system !== "metric"} />
          </div>`
        }
        <${Sources} spec=${spec}
          sources=${spec.sources.map((/** @type {string} */ key) => ({ key, ...table("sources").sources[key] }))} />
        ${
          by_hand &&
          html`<textarea class="to-copy" readonly rows="6" aria-label=${t("bench.copy_by_hand")}
          onFocus=${(/** @type {any} */ e) => e.target.select()}>${by_hand}</textarea>`
        }
        <div class="row">
          ${
            here &&
            "answer" in outcome &&
            html`<button type="button" class="quiet" disabled=${waiting}
            onClick=${tap(() => void copy())}>${t("bench.copy")}</button>`
          }
          ${changed && html`<button type="button" class="quiet" onClick=${tap(empty)}>${t("bench.empty")}</button>`}
        </div>
      </section>
    </${Page}>`;
};

/** A longer answer is only pointed to at the thumb. */
const LONGEST_BRIEF = 40;

/** @param {string | null | undefined} asked @param {any[]} tanks */
function tank_for(asked, tanks) {
  const wanted = new URLSearchParams(location.search).get("tank") ?? asked ?? last_tank.value;
  if (wanted === "") return "";
  if (wanted && tanks.some((one) => one.id === wanted)) return wanted;
  return tanks.length === 1 ? tanks[0].id : "";
}

/**
 * Marks to show by the language of the words; a mark groups thousands only if the phone's own language agrees,
 * so that a comma stays a comma on a phone whose keypad has no point.
 */
function reading_marks() {
  const words = marks_of(chosen());
  return { ...words, group: marks_of(navigator.language).group === words.group ? words.group : "" };
}

/**
 * Errors by the field they stand beside, with the range in the unit shown.
 * @param {any} spec
 * @param {any} outcome
 * @param {string} system
 * @param {any} marks
 */
function errors_of(spec, outcome, system, marks) {
  /** @type {Map<string, string>} */ const by = new Map();
  for (const error of outcome.wrong ?? []) {
    const field = spec.inputs.find((/** @type {any} */ one) => one.name === error.field);
    const range =
      field && (field.type === "number" || field.type === "integer") ? range_shown(field, system, marks) : "";
    by.set(error.field, range ? t("bench.wrong_in", { message: error.message, range }) : error.message);
  }
  return by;
}

/** @param {{tanks: any[], id: string, pick: (id: string) => void}} props */
const ForTank = ({ tanks, id, pick }) => html`
  <div class="field">
    <label for="bench-tank">${t("bench.for_tank")}</label>
    <select id="bench-tank" onChange=${(/** @type {any} */ e) => pick(e.target.value)}>
      <option value="" selected=${id === ""}>${t("bench.no_tank")}</option>
      ${tanks.map((tank) => html`<option value=${tank.id} selected=${tank.id === id}>${tank.name}</option>`)}
    </select>
  </div>`;

const System = () => html`
  <div class="field">
    <label for="bench-units">${t("bench.units")}</label>
    <select id="bench-units" onChange=${(/** @type {any} */ e) => (measures.value = e.target.value)}>
      ${systems().map(
        ({ key }) => html`<option value=${key} selected=${key === measures.value}>
        ${t(`bench.system.${key}`)}</option>`,
      )}
    </select>
  </div>`;

/** Why there is no answer yet. @param {{spec: any, outcome: any, errors: Map<string, string>}} props */
const NotYet = ({ spec, outcome, errors }) => html`
  ${outcome.needed.length + outcome.wrong.length === 0 && html`<p>${t("bench.working_on_it")}</p>`}
  ${
    outcome.needed.length > 0 &&
    html`<p>${t("bench.needed")}</p><ul class="why">
    ${outcome.needed.map((/** @type {string} */ label) => html`<li>${label}</li>`)}</ul>`
  }
  ${
    outcome.wrong.length > 0 &&
    html`
    <ul>${outcome.wrong.map(
      (/** @type {any} */ error) => html`<li class="wrong">
      ${label_of(spec, error.field)}: ${errors.get(error.field)}</li>`,
    )}</ul>`
  }`;

/** At the thumb: the figure or what is missing, and the way to keep it. @param {any} props */
const Act = ({ outcome, waiting, rows, show, keep, copy, tank }) => {
  const done = "answer" in outcome && !waiting;
  return html`
    <button type="button" class="in-brief in-one-place" onClick=${show} aria-live="polite">
      ${waiting && html`<span class="meanwhile">${t("bench.working_on_it")}</span>`}
      ${
        (!waiting || "answer" in outcome) &&
        html`<span class=${waiting ? "place-kept" : ""}>${brief(outcome, rows)}
      </span>`
      }</button>
    ${
      tank
        ? html`<button type="button" class="main bench-keep" disabled=${!done} onClick=${tap(() => void keep())}
          aria-label=${t("bench.keep_for", { tank: tank.name })}>${t("bench.keep")}</button>`
        : html`<button type="button" class="main bench-keep" disabled=${!done} onClick=${tap(() => void copy())}>
          ${t("bench.copy")}</button>`
    }`;
};

/** @param {any} outcome @param {any[]} rows */
function brief(outcome, rows) {
  const clipped = (/** @type {string} */ text) => html`<span class="clipped">${text}</span>`;
  if ("answer" in outcome) {
    const said = rows.length ? row_text(rows[0]) : "";
    return said && said.length <= LONGEST_BRIEF
      ? html`${clipped(rows[0].label)}<strong class="clipped">${said}</strong>`
      : t("bench.answer_below");
  }
  if (outcome.wrong.length) return t("bench.to_mend", { count: outcome.wrong.length });
  return clipped(t("bench.still_needed", { fields: outcome.needed.join(", ") }));
}
