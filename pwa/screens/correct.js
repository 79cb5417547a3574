/** A correction: a new record takes the place of a wrong one, which stays behind it. */
import { html } from "../vendor/preact.js";
import { litres_refused, litres_spec } from "../advice/litres.js";
import { figure_spec, no_figure } from "../advice/readable.js";
import { CORRECTED, correction, timeline } from "../advice/journal/timeline.js";
import { field_named, kind_of } from "../contracts.js";
import { short, t, when } from "../i18n/words.js";
import { event_name, record_lines } from "../ui/words/event_said.js";
import { parameter_name, read_as } from "../ui/words/figures.js";
import { Wrong } from "../ui/contract/form.js";
import { Keypad } from "../ui/keypad.js";
import { WrongTank } from "../ui/life_entry.js";
import { get, get_of_kind, now, room } from "../ui/state/live.js";
import { with_text } from "../ui/state/field_text.js";
import { shown_in } from "../ui/state/measures.js";
import { Missing } from "../ui/missing.js";
import { Moment, no_moment } from "../ui/moment.js";
import { Page } from "../ui/page.js";
import { new_id } from "../ui/state/record.js";
import { Refused, use_record_form } from "../ui/state/record_form.js";
import { tap } from "../ui/state/tap.js";
import { note_said } from "../ui/words/tile_words.js";

/** What the values of a kind are in. @type {Record<string, (record: Corrected) => string>} */
const UNIT = {
  reading: ({ unit = "" }) => unit,
  water_change: () => "L",
  dose: ({ unit }) => t(`unit.${unit}`),
  feeding: () => "g",
};
/**
 * What is corrected in words, not in figures: what it says now, and whether it may say nothing.
 * @type {Record<string, {says: (record: Corrected) => string, may_be_empty: boolean}>}
 */
const WORDS = {
  note: { says: ({ text, quick }) => note_said({ text, quick }), may_be_empty: false },
  photo: { says: ({ caption = "" }) => caption, may_be_empty: true },
};

/**
 * A record of one of the kinds that can be corrected; `any`, because its kind says which fields it has.
 * @typedef {{id: string, kind: string, at: string, tank?: string, [field: string]: any}} Corrected
 */
/** @typedef {{of: string, typed: string | null, keyed_in?: string, at?: string, tank: string}} Draft */
/** @typedef {import("../contracts.js").FieldError} FieldError */

/** @param {{kind: string, id: string}} props */
export function Correct({ kind, id }) {
  const name = `correct.${kind}.${id}`;
  const form = use_record_form({ name, first: () => /** @type {Draft} */ ({ of: id, typed: null, tank: "" }) });
  const event =
    kind in CORRECTED && room.value.may(kind) && get_of_kind(kind, id)
      ? timeline(room.value).find(({ records: all }) => all.some((record) => record.id === id))
      : null;
  if (!event) return html`<${Missing} up="/" />`;

  const same = event.records.filter((record) => record.kind === kind);
  const record = same.find((each) => each.id === form.draft.value.of) ?? same[0];
  const { typed, at, tank } = form.draft.value;
  const words = WORDS[kind];
  const value = words ? worded(words, record, typed) : figured(kind, record, form.draft.value);
  const refused = refusal_of(record, value, get("tank", tank || record.tank));
  const something = value !== undefined || tank !== "" || (at !== undefined && at !== event.at);
  const ready = something && !refused && !no_moment(at) && !(typed === "" && !words?.may_be_empty);
  const up = event.tank ? `/tank/${event.tank}/history` : "/timeline";
  const save = () =>
    form.save(() => ({
      writes: correction(room.value, event, { one: record, value, at, tank: tank || undefined }, new_id),
      said: t("correct.saved", { what: event_name(event) }),
      to: up,
    }));
  return html`
    <${Page} title=${t("correct.title")} up=${up} aside=${html`<span class="soft">${event_name(event)}</span>`}
      act=${html`<button class="main" type="button" disabled=${!ready} onClick=${tap(() => void save())}>
        ${t("correct.save")}</button>`}>
      <p class="soft">
        ${t("correct.stands", {
          said: record_lines(record).join("\u00a0· ") || event_name(event),
          when: when(record.at, now.value),
        })}</p>
      ${
        same.length > 1 &&
        html`<div class="tiles two short" role="group" aria-label=${t("correct.which")}>
        ${same.map(
          (each, i) => html`<button key=${each.id} type="button" aria-pressed=${each === record}
          onClick=${tap(() => form.set({ of: each.id, typed: null }))}>
          ${record_lines(each).join(" ") || t("photo.numbered", { at: i + 1 })}</button>`,
        )}</div>`
      }
      <${Refused} form=${form} kind=${kind} />
      ${refused && html`<div role="alert"><${Wrong} ...${refused} /></div>`}
      <${Corrects} kind=${kind} record=${record} form=${form} />
      <${Moment} at=${at} was=${event.at}
        on_at=${(/** @type {string | undefined} */ moment) => form.set({ at: moment })} />
      ${
        event.tank &&
        html`<${WrongTank} was=${event.tank} tank=${tank} on_pick=${(/** @type {string} */ picked) =>
          form.set({ tank: picked })} />`
      }
      <p class="soft small">${t("correct.kept")}</p>
    <//>`;
}

/**
 * Why such a figure cannot be: more litres than the tank holds, a reading that no water has.
 * @param {Corrected} record
 * @param {string | number | undefined} value
 * @param {import("../types/views.js").Tank | null} tank
 */
function refusal_of(record, value, tank) {
  if (record.kind === "water_change" && tank) {
    const error = litres_refused(tank, Number(value ?? record.litres));
    return error && { spec: litres_spec(tank, t("change.litres")), error };
  }
  if (record.kind !== "reading" || value === undefined) return null;
  const { parameter, unit } = record;
  const spec = figure_spec({ parameter, unit }, parameter_name(parameter));
  const error = no_figure(spec, Number(value));
  return error && { spec, error };
}

/**
 * Other words than before, or nothing.
 * @param {{says: (record: Corrected) => string}} words
 * @param {Corrected} record
 * @param {string | null} typed
 */
function worded({ says }, record, typed) {
  const text = typed?.trim();
  return text === undefined || text === says(record).trim() ? undefined : text;
}

/**
 * Another figure than before in the record's own unit, or nothing.
 * @param {string} kind
 * @param {Corrected} record
 * @param {Draft} draft
 */
function figured(kind, record, { typed, keyed_in }) {
  if (typed === null || typed === "") return undefined;
  const in_steps = kind === "reading" && (record.steps ?? []).length > 0;
  const value = in_steps
    ? Number(typed)
    : Number(shown_in(UNIT[kind](record)).hold(Number(typed), keyed_in).toPrecision(12));
  return value === record[CORRECTED[kind]] ? undefined : value;
}

/** @param {{kind: string, record: Corrected, form: ReturnType<typeof use_record_form<Draft>>}} props */
function Corrects({ kind, record, form }) {
  const { typed, keyed_in } = form.draft.value;
  const words = WORDS[kind];
  const spec = field_named(kind_of(kind).fields, CORRECTED[kind]);
  const type = (/** @type {string} */ text) =>
    form.set({ typed: text, keyed_in: words ? undefined : shown_in(UNIT[kind](record)).unit });
  const title =
    kind === "reading"
      ? `${parameter_name(record.parameter)} ${read_as(record.parameter, record.basis)}`.trim()
      : spec.label;
  return html`
    <section class="section"><h2>${title}</h2>
      <${Value} kind=${kind} record=${record} said=${words ? (typed ?? words.says(record)) : typed}
        keyed_in=${keyed_in} spec=${spec} on_say=${type} /></section>`;
}

/**
 * @param {{kind: string, record: Corrected, said: string | null, keyed_in?: string, spec: {label: string,
 * max_length: number}, on_say: (text: string) => void}} props
 */
function Value({ kind, record, said, keyed_in, spec, on_say }) {
  if (kind in WORDS) {
    return html`<div class="field"><textarea aria-label=${spec.label} rows="5" maxlength=${spec.max_length}
      value=${said} onInput=${with_text(on_say)}></textarea></div>`;
  }
  /** @type {number[]} */
  const steps = kind === "reading" ? (record.steps ?? []) : [];
  if (steps.length === 0) {
    const { label, text } = shown_in(UNIT[kind](record));
    return html`<${Keypad} label=${spec.label} unit=${label} value=${text(said, keyed_in)} on_value=${on_say} />`;
  }
  return html`<div class="tiles steps" role="group" aria-label=${spec.label}>
    ${steps.map(
      (step) => html`<button type="button" key=${step}
      aria-pressed=${said === null ? record.value === step : Number(said) === step}
      onClick=${tap(() => on_say(String(step)))}>${short(step)}</button>`,
    )}</div>`;
}
