/** One calculation: its form, the answer while the keeper types, kept in the tank's journal or copied. */
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
import { cautions_of, contracts, find_field } from "../contracts.js";
import { chosen, named, t } from "../i18n/words.js";
import { AnswerFigures, Cautions, Sources, Working } from "../ui/contract/answer_block.js";
import { use_outcome } from "../ui/contract/bench_outcome.js";
import { figures_of } from "../ui/contract/bench_tank.js";
import { ContractForm } from "../ui/contract/contract_form.js";
import { draft as kept_draft, use_draft } from "../ui/state/draft.js";
import { mark_all, with_text } from "../ui/state/field_text.js";
import { all, room } from "../ui/state/live.js";
import { measures } from "../ui/state/measures.js";
import { Page } from "../ui/page.js";
import { just_done, new_id, record, say } from "../ui/state/record.js";
import { tap } from "../ui/state/tap.js";

/**
 * The tank a calculation was last used for; "" for none.
 * @type {import("../vendor/preact.js").Signal<string | null>}
 */
const last_tank = kept_draft("bench.tank", () => null);
/** Names of the calculations opened last. @type {import("../vendor/preact.js").Signal<string[]>} */
const opened = kept_draft("bench.opened", () => []);

/** @param {{name: string}} props */
export const BenchSheet = ({ name }) => {
  const spec = contracts()[name];
  if (!Object.hasOwn(contracts(), name))
    return html`<${Page} title=${t("bench.title")} up="/bench" place="bench"><p>${t("bench.unknown", { name })}</p>
      </${Page}>`;
  return html`<${Sheet} key=${name} spec=${spec} />`;
};

/** @typedef {import("../types/contract.js").Contract} Contract */
/** @typedef {import("../types/views.js").Tank} Tank */
/** @typedef {import("../bench/answer.js").Outcome} Outcome */
/** @typedef {import("../bench/draft.js").Draft} Draft */
/** @typedef {import("../bench/result.js").ResultRow} Row */
/** @typedef {ReturnType<typeof use_outcome> & {spec: Contract, rows: Row[], words: () => string}} Answered */

/** @param {{spec: Contract}} props */
const Sheet = ({ spec }) => {
  const draft = use_draft(`bench.${spec.name}`, () => /** @type {Draft} */ ({}));
  const tanks = all("tank");
  const tank_id = tank_for(draft.value.tank, tanks);
  const figures = useMemo(() => computed(() => fitting(spec.inputs, figures_of(tank_id))), [spec, tank_id]);
  const marks = useMemo(reading_marks, []);
  useEffect(
    () => void (opened.value = [spec.name, ...opened.value.filter((name) => name !== spec.name)].slice(0, 3)),
    [spec.name],
  );

  const system = measures.value;
  const filling = { draft: draft.value, tank: figures.value, system, marks };
  const shown = use_outcome(spec, filling);
  const { outcome } = shown;
  const manner = { system, marks, yes: t("bench.yes"), no: t("bench.no"), from: t("bench.from_inputs") };
  const words = () => ("answer" in outcome ? plain_result(spec, outcome.payload, outcome.answer, manner) : "");
  const rows = "answer" in outcome ? result_rows(spec, outcome.answer, manner) : [];
  const answered = { ...shown, spec, rows, words };
  const hands = { errors: errors_of(spec, outcome, system, marks), ...hands_on(spec, draft, figures.value) };
  const here = tanks.find(({ id }) => id === tank_id);
  const answer = useRef(/** @type {HTMLElement | null} */ (null));
  const show = () => answer.current?.scrollIntoView();
  const { copy, by_hand } = use_copy(words, show);
  const choose_tank = (/** @type {string} */ id) => {
    last_tank.value = id;
    draft.value = { ...draft.value, tank: id };
  };

  return html`
    <${Page} title=${spec.title} up="/bench"
      act=${html`<${Act} ...${answered} tank=${here} copy=${copy} show=${show} />`}>
      <p class="soft sheet-purpose">${spec.purpose}</p>
      <div class="bench-for">
        ${tanks.length > 0 && html`<${ForTank} tanks=${tanks} id=${tank_id} pick=${choose_tank} />`}
        <${System} />
      </div>
      <${ContractForm} form=${form_of(spec, filling)} ...${hands} />
      <section class="section answer" ref=${answer} aria-label=${t("bench.answer")}>
        <h2>${t("bench.answer")}</h2>
        <${Answer} ...${answered} errors=${hands.errors} manner=${manner} />
        ${
          by_hand &&
          html`<textarea class="to-copy" readonly rows="6" aria-label=${t("bench.copy_by_hand")}
          onFocus=${mark_all}>${by_hand}</textarea>`
        }
        <div class="row">
          ${
            here &&
            "answer" in outcome &&
            html`<button type="button" class="quiet" disabled=${shown.waiting}
            onClick=${tap(() => void copy())}>${t("bench.copy")}</button>`
          }
          <${Empty} draft=${draft} />
        </div>
      </section>
    </${Page}>`;
};

/**
 * Copying the result. `by_hand` is the text to show where there is no clipboard, as without a secure connection.
 * @param {() => string} words
 * @param {() => void} show
 */
function use_copy(words, show) {
  const [by_hand, set_by_hand] = useState("");
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(words());
      say(t("bench.copied"));
    } catch {
      set_by_hand(words());
      show();
    }
  };
  return { copy, by_hand };
}

/**
 * What the fields of the form do to the draft.
 * @param {Contract} spec
 * @param {import("../vendor/preact.js").Signal<Draft>} draft
 * @param {Record<string, unknown>} tank its figures by field name
 */
function hands_on(spec, draft, tank) {
  const change = (/** @type {Draft} */ next) => (draft.value = next);
  return {
    edit: (/** @type {(string | number)[]} */ path, /** @type {import("../bench/draft.js").Node | undefined} */ node) =>
      change(put(spec.inputs, draft.value, tank, path, node)),
    add: (/** @type {(string | number)[]} */ path) => change(add_row(spec.inputs, draft.value, tank, path)),
    remove: (/** @type {(string | number)[]} */ path, /** @type {number} */ index) =>
      change(remove_row(spec.inputs, draft.value, tank, path, index)),
    choose: (/** @type {string} */ key, /** @type {string} */ option) =>
      change({ ...draft.value, chosen: { ...draft.value.chosen, [key]: option } }),
  };
}

/**
 * The answer with its cautions, working and sources. While the answer to what is typed now is on its way, the one
 * before keeps its place, unseen, so that nothing moves.
 * @param {Answered & {errors: Map<string, string>, manner: import("../bench/result.js").Manner}} props
 */
const Answer = ({ spec, outcome, waiting, rows, errors, manner }) => {
  const place = waiting ? "place-kept" : "";
  return html`
    ${
      "answer" in outcome
        ? html`<div class="in-one-place" aria-busy=${waiting}>
            ${waiting && html`<p class="soft meanwhile">${t("bench.working_on_it")}</p>`}
            <div class=${place}><${AnswerFigures} rows=${rows} notes=${outcome.answer.notes} /></div></div>`
        : html`<${NotYet} spec=${spec} outcome=${outcome} errors=${errors} />`
    }
    <${Cautions} cautions=${cautions_of(spec.name)} />
    ${
      "answer" in outcome &&
      html`<div class=${place}>
        <${Working} steps=${working_steps(spec, outcome.payload, outcome.answer, manner)} /></div>`
    }
    <${Sources} spec=${spec} sources=${spec.sources.map((key) => ({ key, ...table("sources").sources[key] }))} />`;
};

/**
 * Empties the form, with an undo; the tank stays.
 * @param {{draft: import("../vendor/preact.js").Signal<Draft>}} props
 */
const Empty = ({ draft }) => {
  const { typed = {}, chosen: picked, tank } = draft.value;
  if (Object.keys(typed).length === 0 && !picked) return null;
  const empty = () => {
    const before = draft.value;
    draft.value = { tank };
    just_done.value = { said: t("bench.emptied"), undo: async () => void (draft.value = before) };
  };
  return html`<button type="button" class="quiet" onClick=${tap(empty)}>${t("bench.empty")}</button>`;
};

/** At the thumb, a longer answer is only pointed to. */
const LONGEST_BRIEF = 40;

/** @param {string | null | undefined} asked @param {Tank[]} tanks */
function tank_for(asked, tanks) {
  const wanted = new URLSearchParams(location.search).get("tank") ?? asked ?? last_tank.value;
  if (wanted === "") return "";
  if (wanted && tanks.some(({ id }) => id === wanted)) return wanted;
  return tanks.length === 1 ? tanks[0].id : "";
}

/**
 * The number marks of the language of the words. Thousands are grouped only if the phone's own language uses the same
 * mark, so that a comma stays a decimal comma on a phone whose keypad has no point.
 */
function reading_marks() {
  const words = marks_of(chosen());
  return { ...words, group: marks_of(navigator.language).group === words.group ? words.group : "" };
}

/**
 * Errors by the field they stand beside, with the range in the unit shown.
 * @param {Contract} spec
 * @param {Outcome} outcome
 * @param {string} system
 * @param {import("../figures/number_text.js").Marks} marks
 */
function errors_of(spec, outcome, system, marks) {
  /** @type {Map<string, string>} */ const by = new Map();
  for (const error of "wrong" in outcome ? outcome.wrong : []) {
    const field = find_field(spec.inputs, error.field);
    const range =
      field && (field.type === "number" || field.type === "integer") ? range_shown(field, system, marks) : "";
    by.set(error.field, range ? t("bench.wrong_in", { message: error.message, range }) : error.message);
  }
  return by;
}

/** @param {{tanks: Tank[], id: string, pick: (id: string) => void}} props */
const ForTank = ({ tanks, id, pick }) => html`
  <div class="field">
    <label for="bench-tank">${t("bench.for_tank")}</label>
    <select id="bench-tank" onChange=${with_text(pick)}>
      <option value="" selected=${id === ""}>${t("bench.no_tank")}</option>
      ${tanks.map((tank) => html`<option value=${tank.id} selected=${tank.id === id}>${tank.name}</option>`)}
    </select>
  </div>`;

const System = () => html`
  <div class="field">
    <label for="bench-units">${t("bench.units")}</label>
    <select id="bench-units" onChange=${with_text((key) => (measures.value = key))}>
      ${systems().map(
        ({ key }) => html`<option value=${key} selected=${key === measures.value}>
        ${t(`bench.system.${key}`)}</option>`,
      )}
    </select>
  </div>`;

/**
 * Why there is no answer yet.
 * @param {{spec: Contract, outcome: import("../bench/answer.js").Refused, errors: Map<string, string>}} props
 */
const NotYet = ({ spec, outcome, errors }) => html`
  ${outcome.needed.length + outcome.wrong.length === 0 && html`<p>${t("bench.working_on_it")}</p>`}
  ${
    outcome.needed.length > 0 &&
    html`<p>${t("bench.needed")}</p><ul class="why">
    ${outcome.needed.map((label) => html`<li>${label}</li>`)}</ul>`
  }
  ${
    outcome.wrong.length > 0 &&
    html`
    <ul>${outcome.wrong.map(
      (error) => html`<li class="wrong">
      ${named(label_of(spec, error.field, marks_of(chosen())), errors.get(error.field) ?? "")}</li>`,
    )}</ul>`
  }`;

/**
 * At the thumb: the figure or what is missing, and the way to keep it: as a note of the tank, or copied.
 * @param {Answered & {tank: Tank | undefined, copy: () => Promise<void>, show: () => void}} props
 */
const Act = ({ spec, outcome, waiting, rows, words, tank, copy, show }) => {
  const done = "answer" in outcome && !waiting;
  const keep = (/** @type {Tank} */ { id, name }) =>
    record(
      [{ type: "put", kind: "note", id: new_id(), fields: { tank: id, at: room.value.now(), text: words() } }],
      t("bench.kept", { title: spec.title, tank: name }),
    );
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
        ? html`<button type="button" class="main bench-keep" disabled=${!done} onClick=${tap(() => void keep(tank))}
          aria-label=${t("bench.keep_for", { tank: tank.name })}>${t("bench.keep")}</button>`
        : html`<button type="button" class="main bench-keep" disabled=${!done} onClick=${tap(() => void copy())}>
          ${t("bench.copy")}</button>`
    }`;
};

/** @param {Outcome} outcome @param {Row[]} rows */
function brief(outcome, rows) {
  const clipped = (/** @type {string} */ text) => html`<span class="clipped">${text}</span>`;
  if ("answer" in outcome) {
    const [first] = rows;
    const said = first ? row_text(first) : "";
    if (!said || said.length > LONGEST_BRIEF) return t("bench.answer_below");
    const figure = first.unit
      ? html`${first.text} <span class="unit">${first.unit.replaceAll(" ", "\u00a0")}</span>`
      : said;
    return html`${clipped(first.label)}<strong class="clipped">${figure}</strong>`;
  }
  if (outcome.wrong.length) return t("bench.to_mend", { count: outcome.wrong.length });
  return clipped(t("bench.still_needed", { fields: outcome.needed.join(", ") }));
}
