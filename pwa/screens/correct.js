/** A correction: what was written down wrongly is set anew; the record before stays behind it. */
import { html, useSignal } from "../vendor/preact.js";
import { litres_refused, litres_spec } from "../advice/litres.js";
import { figure_spec, no_figure } from "../advice/readable.js";
import { CORRECTED, correction, timeline } from "../advice/journal/timeline.js";
import { InvalidInput, field_named, kind_of } from "../contracts.js";
import { short, t, when } from "../i18n/words.js";
import { forget, use_draft } from "../ui/state/draft.js";
import { event_name, record_lines } from "../ui/words/event_said.js";
import { parameter_name, read_as } from "../ui/words/figures.js";
import { Wrong } from "../ui/contract/form.js";
import { Keypad } from "../ui/keypad.js";
import { WrongTank } from "../ui/life_entry.js";
import { get, get_of_kind, now, room } from "../ui/state/live.js";
import { shown_in } from "../ui/state/measures.js";
import { Missing } from "../ui/missing.js";
import { Moment, no_moment } from "../ui/moment.js";
import { Page } from "../ui/page.js";
import { new_id, record } from "../ui/state/record.js";
import { go } from "../ui/state/router.js";
import { tap } from "../ui/state/tap.js";
import { note_said } from "../ui/words/tile_words.js";

/** @type {Record<string, (one: any) => string>} */
const UNIT = {
  reading: (one) => one.unit ?? "",
  water_change: () => "L",
  dose: (one) => t(`unit.${one.unit}`),
  feeding: () => "g",
};
/**
 * What is corrected in words, not in figures: what it says now, and whether it may say nothing.
 * @type {Record<string, {says: (one: any) => string, may_be_empty: boolean}>}
 */
const WORDS = {
  note: { says: note_said, may_be_empty: false },
  photo: { says: ({ caption = "" }) => caption, may_be_empty: true },
};

/** @param {{kind: string, id: string}} props */
export function Correct({ kind, id }) {
  const name = `correct.${kind}.${id}`;
  const kept = use_draft(
    name,
    () =>
      /** @type {{of: string, typed: string | null, keyed_in?: string, at?: string, tank: string}} */ ({
        of: id,
        typed: null,
        tank: "",
      }),
  );
  const wrong = useSignal(/** @type {any[]} */ ([]));
  const event =
    kind in CORRECTED && room.value.may(kind) && get_of_kind(kind, id)
      ? timeline(room.value).find(({ records: all }) => all.some((one) => one.id === id))
      : null;
  if (!event) return html`<${Missing} up="/" />`;

  const same = event.records.filter((one) => one.kind === kind);
  const one = same.find((each) => each.id === kept.value.of) ?? same[0];
  const { typed, at, tank } = kept.value;
  const set = (/** @type {any} */ more) => ((wrong.value = []), (kept.value = { ...kept.value, ...more }));
  const words = WORDS[kind];
  const type = (/** @type {string | null} */ text) =>
    set({ typed: text, keyed_in: words ? undefined : shown_in(UNIT[kind](one)).unit });
  const value = words ? worded(words, one, typed) : figured(kind, one, kept.value);
  const new_tank = get("tank", tank || one.tank);
  const refused = refusal_of(one, value, new_tank);
  const something = value !== undefined || tank !== "" || (at !== undefined && at !== event.at);
  const ready = something && !refused && !no_moment(at) && !(typed === "" && !words?.may_be_empty);
  const up = event.tank ? `/tank/${event.tank}/history` : "/timeline";
  const spec = field_named(kind_of(kind).fields, CORRECTED[kind]);

  const save = async () => {
    try {
      const writes = correction(room.value, event, { one, value, at, tank: tank || undefined }, new_id);
      if (!(await record(writes, t("correct.saved", { what: event_name(event) })))) return;
      forget(name);
      go(up, { replace: true });
    } catch (failed) {
      if (!(failed instanceof InvalidInput)) throw failed;
      wrong.value = failed.errors;
    }
  };
  return html`
    <${Page} title=${t("correct.title")} up=${up} aside=${html`<span class="soft">${event_name(event)}</span>`}
      act=${html`<button class="main" type="button" disabled=${!ready} onClick=${tap(() => void save())}>
        ${t("correct.save")}</button>`}>
      <p class="soft">
        ${t("correct.stands", {
          said: record_lines(one).join("\u00a0· ") || event_name(event),
          when: when(one.at, now.value),
        })}</p>
      ${
        same.length > 1 &&
        html`<div class="tiles two short" role="group" aria-label=${t("correct.which")}>
        ${same.map(
          (each, i) => html`<button key=${each.id} type="button" aria-pressed=${each === one}
          onClick=${tap(() => set({ of: each.id, typed: null }))}>
          ${record_lines(each).join(" ") || t("photo.numbered", { at: i + 1 })}</button>`,
        )}</div>`
      }
      ${wrong.value.map(
        (error) => html`<${Wrong} key=${error.field} error=${error}
        spec=${error.field === spec.name ? spec : undefined} />`,
      )}
      ${refused && html`<div role="alert"><${Wrong} ...${refused} /></div>`}
      <section class="section"><h2>
        ${
          kind === "reading"
            ? `${parameter_name(one.parameter)} ${read_as(one.parameter, one.basis)}`.trim()
            : spec.label
        }</h2>
        <${Value} kind=${kind} one=${one} said=${words ? (typed ?? words.says(one)) : typed}
          keyed_in=${kept.value.keyed_in} spec=${spec} on_say=${type} /></section>
      <${Moment} at=${at} was=${event.at} on_at=${(/** @type {string | undefined} */ moment) => set({ at: moment })} />
      ${
        event.tank &&
        html`<${WrongTank} was=${event.tank} tank=${tank} on_pick=${(/** @type {string} */ picked) =>
          set({ tank: picked })} />`
      }
      <p class="soft small">${t("correct.kept")}</p>
    <//>`;
}

/**
 * Why such a figure cannot be: more litres than the tank holds, a reading that is none.
 * @param {any} one
 * @param {any} value
 * @param {any} tank
 */
function refusal_of(one, value, tank) {
  const litres = one.kind === "water_change" && tank;
  const spec = litres
    ? litres_spec(tank, t("change.litres"))
    : one.kind === "reading"
      ? figure_spec(one, parameter_name(one.parameter))
      : null;
  const error = litres
    ? litres_refused(tank, Number(value ?? one.litres))
    : spec && value !== undefined && no_figure(spec, Number(value));
  return error ? { spec, error } : null;
}

/**
 * Other words than before, or nothing.
 * @param {{says: (one: any) => string}} words
 * @param {any} one
 * @param {string | null} typed
 */
function worded({ says }, one, typed) {
  const text = typed?.trim();
  return text === undefined || text === says(one).trim() ? undefined : text;
}

/**
 * Another figure than before in the record's own unit, or nothing.
 * @param {string} kind
 * @param {any} one
 * @param {{typed: string | null, keyed_in?: string}} kept
 */
function figured(kind, one, { typed, keyed_in }) {
  if (typed === null || typed === "") return undefined;
  const in_steps = kind === "reading" && (one.steps ?? []).length > 0;
  const value = in_steps
    ? Number(typed)
    : Number(shown_in(UNIT[kind](one)).hold(Number(typed), keyed_in).toPrecision(12));
  return value === one[CORRECTED[kind]] ? undefined : value;
}

/**
 * @param {{kind: string, one: any, said: string | null, keyed_in?: string, spec: any, on_say: (text: string) => void}}
 * props
 */
function Value({ kind, one, said, keyed_in, spec, on_say }) {
  if (kind in WORDS) {
    return html`<div class="field"><textarea aria-label=${spec.label} rows="5" maxlength=${spec.max_length}
      value=${said} onInput=${(/** @type {any} */ e) => on_say(e.target.value)}></textarea></div>`;
  }
  const steps = kind === "reading" ? (one.steps ?? []) : [];
  if (steps.length === 0) {
    const { label, text } = shown_in(UNIT[kind](one));
    return html`<${Keypad} label=${spec.label} unit=${label} value=${text(said, keyed_in)} on_value=${on_say} />`;
  }
  return html`<div class="tiles steps" role="group" aria-label=${spec.label}>
    ${steps.map(
      (/** @type {number} */ step) => html`<button type="button" key=${step}
      aria-pressed=${said === null ? one.value === step : Number(said) === step}
      onClick=${tap(() => on_say(String(step)))}>${short(step)}</button>`,
    )}</div>`;
}
