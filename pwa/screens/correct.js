/** A correction: what was written down wrongly is set anew; the record before stays behind it. */
import { html, useSignal } from "../vendor/preact.js";
import { CORRECTED, correction, timeline } from "../advice/timeline.js";
import { InvalidInput, records } from "../contracts.js";
import { short, t, when } from "../i18n/words.js";
import { forget, useDraft } from "../ui/draft.js";
import { event_name, record_lines } from "../ui/event_said.js";
import { parameter_name, read_as } from "../ui/figures.js";
import { Wrong } from "../ui/form.js";
import { Keypad } from "../ui/keypad.js";
import { get, now, room } from "../ui/live.js";
import { shown_in } from "../ui/measures.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { new_id, record } from "../ui/record.js";
import { go } from "../ui/router.js";
import { tap } from "../ui/tap.js";
import { note_said } from "../ui/tile_words.js";

/** @type {Record<string, (one: any) => string>} */
const UNIT = { reading: (one) => one.unit ?? "", water_change: () => "L", dose: (one) => t(`unit.${one.unit}`), feeding: () => "g" };

/** @param {{kind: string, id: string}} props */
export function Correct({ kind, id }) {
  const name = `correct.${kind}.${id}`;
  const kept = useDraft(name, () => /** @type {{of: string, typed: string | null, keyed_in?: string}} */ ({ of: id, typed: null }));
  const wrong = useSignal(/** @type {any[]} */ ([]));
  const event = kind in CORRECTED && room.value.may(kind) && get(kind, id) ? timeline(room.value).find(({ records: all }) => all.some((one) => one.id === id)) : null;
  if (!event) return html`<${Missing} up="/" />`;

  const same = event.records.filter((one) => one.kind === kind);
  const one = same.find((each) => each.id === kept.value.of) ?? same[0];
  const { typed } = kept.value;
  const set = (/** @type {string | null} */ text) => ((wrong.value = []), (kept.value = { ...kept.value, typed: text, keyed_in: kind === "note" ? undefined : shown_in(UNIT[kind](one)).unit }));
  const said = kind === "note" ? (typed ?? note_said(one)) : typed;
  const in_steps = kind === "reading" && (one.steps ?? []).length > 0;
  const value = kind === "note" ? said.trim() : in_steps ? Number(said) : Number(shown_in(UNIT[kind](one)).hold(Number(said), kept.value.keyed_in).toPrecision(12));
  const ready = said !== null && said !== "" && value !== (kind === "note" ? note_said(one) : one[CORRECTED[kind]]);
  const up = event.tank ? `/tank/${event.tank}/history` : "/timeline";
  const spec = records()[kind].fields.find((/** @type {any} */ field) => field.name === CORRECTED[kind]);

  const save = async () => {
    try {
      if (!(await record(correction(room.value, one, value, new_id), t("correct.saved", { what: event_name(event) })))) return;
      forget(name);
      go(up, { replace: true });
    } catch (failed) {
      if (!(failed instanceof InvalidInput)) throw failed;
      wrong.value = failed.errors;
    }
  };
  return html`
    <${Page} title=${t("correct.title")} up=${up} aside=${html`<span class="soft">${event_name(event)}</span>`}
      act=${html`<button class="main" type="button" disabled=${!ready} onClick=${tap(() => void save())}>${t("correct.save")}</button>`}>
      <p class="soft">${t("correct.stands", { said: record_lines(one).join("\u00a0· "), when: when(one.at, now.value) })}</p>
      ${same.length > 1 && html`<div class="tiles two short" role="group" aria-label=${t("correct.which")}>
        ${same.map((each) => html`<button key=${each.id} type="button" aria-pressed=${each === one} onClick=${tap(() => (kept.value = { of: each.id, typed: null }))}>${record_lines(each).join(" ")}</button>`)}</div>`}
      ${wrong.value.map((error) => html`<${Wrong} key=${error.field} error=${error} spec=${error.field === spec.name ? spec : undefined} />`)}
      <section class="section"><h2>${kind === "reading" ? `${parameter_name(one.parameter)} ${read_as(one.parameter, one.basis)}`.trim() : spec.label}</h2>
        <${Value} kind=${kind} one=${one} said=${said} keyed_in=${kept.value.keyed_in} spec=${spec} onSay=${set} /></section>
      <p class="soft small">${t("correct.kept")}</p>
    <//>`;
}

/** @param {{kind: string, one: any, said: string | null, keyed_in?: string, spec: any, onSay: (text: string) => void}} props */
function Value({ kind, one, said, keyed_in, spec, onSay }) {
  if (kind === "note") {
    return html`<div class="field"><textarea aria-label=${spec.label} rows="5" maxlength=${spec.max_length} value=${said} onInput=${(/** @type {any} */ e) => onSay(e.target.value)}></textarea></div>`;
  }
  const steps = kind === "reading" ? (one.steps ?? []) : [];
  if (steps.length === 0) {
    const { label, text } = shown_in(UNIT[kind](one));
    return html`<${Keypad} label=${spec.label} unit=${label} value=${text(said, keyed_in)} onValue=${onSay} />`;
  }
  return html`<div class="tiles steps" role="group" aria-label=${spec.label}>
    ${steps.map((/** @type {number} */ step) => html`<button type="button" key=${step} aria-pressed=${said === null ? one.value === step : Number(said) === step} onClick=${tap(() => onSay(String(step)))}>${short(step)}</button>`)}</div>`;
}
