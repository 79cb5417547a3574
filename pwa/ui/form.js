/** A form drawn from field specifications (a contract's inputs or a record kind's fields). What is typed is kept as typed. */
import { html, useState } from "../vendor/preact.js";
import { shownNumber, valueOf } from "../bench/draft.js";
import { marksOf, typedForm } from "../bench/number_text.js";
import { unitIn, unitLabel } from "../bench/units.js";
import { chosen, t } from "../i18n/words.js";
import { Icon } from "./icon.js";
import { measures } from "./measures.js";
import { wrong_said } from "./refusal_said.js";

/** @typedef {{field: string, message: string, allowed: string}} FieldError */
/** @typedef {Record<string, any>} Raw texts as typed (with the unit where it is not the field’s own), choices and ticks as chosen, lists of them */

/** Whether a field matters beside what is chosen. @param {any} spec @param {any[]} specs @param {Raw} raw */
export function matters(spec, specs, raw) {
  return Object.entries(spec.when ?? {}).every(([other, wanted]) => {
    const value = raw[other] ?? specs.find((one) => one.name === other)?.default;
    return /** @type {any} */ (wanted).includes(value);
  });
}

/** What the form says, ready to be checked: empty fields left out, numbers with comma or point. @param {any[]} specs @param {Raw} raw */
export function payload_of(specs, raw) {
  const said = specs
    .filter((spec) => matters(spec, specs, raw))
    .map((spec) => [spec.name, value_of(spec, raw[spec.name])]);
  return Object.fromEntries(said.filter(([, value]) => value !== undefined));
}

/** @param {any} spec @param {any} typed @returns {any} */
function value_of(spec, typed) {
  if (typed === undefined || typed === null || typed === "") return undefined;
  if (is_figure(spec)) return valueOf(spec, node_of(spec, typed), marks());
  if (spec.type === "list") {
    const list = typed
      .map((/** @type {any} */ one) => value_of(spec.item, one))
      .filter((/** @type {any} */ one) => one !== undefined);
    return list.length ? list : undefined;
  }
  if (spec.type === "object") return spec.open ? typed : payload_of(spec.fields, typed);
  return typeof typed === "string" ? typed.trim() || undefined : typed;
}

/** @param {any} spec */
const is_figure = (spec) => spec.type === "number" || spec.type === "integer";
/** @param {any} spec */
const own_unit = (spec) => spec.unit ?? "";
/** A figure keeps its text and the unit it was typed in; a text alone is in the field's own. @param {any} spec @param {any} typed */
const node_of = (spec, typed) => (typeof typed === "object" ? typed : { text: String(typed), unit: own_unit(spec) });
/** How the language of the words writes numbers. */
const marks = () => marksOf(chosen());

/** A record's or example's values as the form would hold them typed. @param {any[]} specs @param {Record<string, any>} values */
export const raw_of = (specs, values) =>
  Object.fromEntries(
    specs
      .filter((spec) => values[spec.name] !== undefined)
      .map((spec) => [spec.name, typed_of(spec, values[spec.name])]),
  );

/** @param {any} spec @param {any} value @returns {any} */
function typed_of(spec, value) {
  if (is_figure(spec)) return typedForm(value, marks());
  if (spec.type === "list") return value.map((/** @type {any} */ one) => typed_of(spec.item, one));
  return spec.type === "object" && !spec.open ? raw_of(spec.fields, value) : value;
}

/**
 * @param {{specs: any[], all?: any[], raw: Raw, onRaw: (raw: Raw) => void, errors: FieldError[], tried?: boolean, path?: string}} props
 * `all`: every field of the form, where only some are drawn; `tried`: errors of untouched fields are shown too
 */
export function Fields({ specs, all = specs, raw, onRaw, errors, tried = false, path = "" }) {
  const [left, setLeft] = useState(/** @type {Record<string, boolean>} */ ({}));
  return specs
    .filter((spec) => matters(spec, all, raw))
    .map((spec) => {
      const at = path + spec.name;
      const shown = tried || left[spec.name];
      const wrong = shown ? errors.filter((one) => one.field === at || one.field.startsWith(`${at}.`)) : [];
      const set = (/** @type {any} */ value) => onRaw({ ...raw, [spec.name]: value });
      return html`<${Field} key=${at} spec=${spec} at=${at} value=${raw[spec.name]} onValue=${set} wrong=${wrong} errors=${errors} tried=${tried}
        onLeave=${() => setLeft((before) => ({ ...before, [spec.name]: true }))} />`;
    });
}

/** @param {any} props */
function Field({ spec, at, value, onValue, wrong, errors, tried, onLeave }) {
  const Control = CONTROLS[control_of(spec)];
  const id = `field-${at}`;
  const mine = wrong.filter((/** @type {FieldError} */ one) => one.field === at);
  const described = [spec.help && `${id}-help`, mine.length && `${id}-wrong`].filter(Boolean).join(" ") || undefined;
  return html`
    <div class="field">
      <${Control} ...${{ spec, at, id, value, onValue, errors, tried, onLeave, described, invalid: mine.length > 0 }} />
      ${spec.help && html`<p class="help" id=${`${id}-help`}>${spec.help}</p>`}
      <div id=${`${id}-wrong`} aria-live="polite">${mine.map((/** @type {FieldError} */ one) => html`<${Wrong} spec=${spec} error=${one} />`)}</div>
    </div>`;
}

/** The same words as the API, beside the field. @param {{spec?: any, error: FieldError}} props */
export const Wrong = ({ spec, error }) => html`
  <p class="wrong"><${Icon} name="needs" size=${20} /><span>${spec?.label ?? error.field} ${wrong_said(spec, error)}</span></p>`;

/** @param {any} spec */
function control_of(spec) {
  if (spec.type === "choice") return spec.choices.length <= 6 ? "tiles" : "select";
  if (spec.type === "list") return spec.item.type === "object" ? "rows" : "chips";
  if (spec.type === "number" || spec.type === "integer") return "figure";
  if (spec.type === "boolean") return "tick";
  if (spec.name.endsWith("_at")) return "day";
  return spec.max_length > 300 ? "words" : "line";
}

/** @param {{spec: any, id: string, unit?: string}} props */
const Label = ({ spec, id, unit = unitLabel(own_unit(spec)) }) =>
  html`<label for=${id}>${spec.label} ${unit && html`<span class="unit">${unit}</span>`}</label>`;

/** @type {Record<string, (props: any) => any>} */
const CONTROLS = {
  figure: ({ spec, id, value, onValue, onLeave, described, invalid }) => {
    const shown = shownNumber(node_of(spec, value ?? ""), unitIn(spec, measures.value), marks());
    const usual =
      spec.default === undefined
        ? ""
        : shownNumber({ value: spec.default, unit: own_unit(spec) }, shown.unit, marks()).text;
    const say = (/** @type {string} */ text) =>
      onValue(text === "" || shown.unit === own_unit(spec) ? text : { text, unit: shown.unit });
    return html`
      <${Label} spec=${spec} unit=${unitLabel(shown.unit)} id=${id} />
      <input id=${id} type="text" inputmode="decimal" autocomplete="off" value=${shown.text} placeholder=${usual}
        aria-describedby=${described} aria-invalid=${invalid} onInput=${(/** @type {any} */ e) => say(e.target.value)} onBlur=${onLeave} />`;
  },

  line: ({ spec, id, value, onValue, onLeave, described, invalid }) => html`
    <${Label} spec=${spec} id=${id} />
    <input id=${id} type="text" autocomplete="off" value=${value ?? ""} aria-describedby=${described} aria-invalid=${invalid}
      onInput=${(/** @type {any} */ e) => onValue(e.target.value)} onBlur=${onLeave} />`,

  day: ({ spec, id, value, onValue, onLeave, described, invalid }) => html`
    <${Label} spec=${spec} id=${id} />
    <input id=${id} type="date" value=${value?.slice(0, 10) ?? ""} aria-describedby=${described} aria-invalid=${invalid}
      onInput=${(/** @type {any} */ e) => onValue(e.target.value && `${e.target.value}T12:00:00.000Z`)} onBlur=${onLeave} />`,

  words: ({ spec, id, value, onValue, onLeave, described }) => html`
    <${Label} spec=${spec} id=${id} />
    <textarea id=${id} rows="3" aria-describedby=${described} onInput=${(/** @type {any} */ e) => onValue(e.target.value)} onBlur=${onLeave} value=${value ?? ""}></textarea>`,

  tick: ({ spec, id, value, onValue, onLeave }) => html`
    <label class="check" for=${id}><input id=${id} type="checkbox" checked=${Boolean(value)}
      onChange=${(/** @type {any} */ e) => (onValue(e.target.checked), onLeave())} />${spec.label}</label>`,

  tiles: ({ spec, at, value, onValue, onLeave }) => html`
    <fieldset><legend class="label">${spec.label}</legend>
      <div class="tiles two">${spec.choices.map(
        (/** @type {any} */ choice) => html`
        <label><input class="unseen" type="radio" name=${at} value=${choice.value} checked=${(value ?? spec.default) === choice.value}
          onChange=${() => (onValue(choice.value), onLeave())} />${choice.label}</label>`,
      )}</div>
    </fieldset>`,

  select: ({ spec, id, value, onValue, onLeave, described }) => html`
    <${Label} spec=${spec} id=${id} />
    <select id=${id} aria-describedby=${described} onChange=${(/** @type {any} */ e) => (onValue(e.target.value || undefined), onLeave())}>
      <option value="" selected=${value === undefined}>${t("choose")}</option>
      ${spec.choices.map((/** @type {any} */ choice) => html`<option value=${choice.value} selected=${value === choice.value}>${choice.label}</option>`)}
    </select>`,

  chips: ({ spec, at, value = [], onValue, errors, tried }) => html`
    <fieldset><legend class="label">${spec.label}</legend>
      ${value.map(
        (/** @type {any} */ one, /** @type {number} */ i) => html`
        <div class="row apart" key=${i}>
          <input id=${`field-${at}.${i}`} class="grow" type="text" inputmode="decimal" autocomplete="off" aria-label=${`${spec.label} ${i + 1}`} value=${one}
            onInput=${(/** @type {any} */ e) => onValue(value.with(i, e.target.value))} />
          <${Remove} what=${`${spec.label} ${i + 1}`} onRemove=${() => onValue(value.toSpliced(i, 1))} />
        </div>
        ${tried && errors.filter((/** @type {FieldError} */ e) => e.field === `${at}.${i}`).map((/** @type {FieldError} */ e) => html`<${Wrong} spec=${spec} error=${e} />`)}`,
      )}
      ${value.length < spec.max_items && html`<button class="quiet" type="button" onClick=${() => add(onValue, value, "", at)}><${Icon} name="plus" size=${20} />${t("add_one")}</button>`}
    </fieldset>`,

  rows: ({ spec, at, value = [], onValue, errors, tried }) => html`
    <fieldset><legend class="label">${spec.label}</legend>
      ${value.map(
        (/** @type {any} */ one, /** @type {number} */ i) => html`
        <div class="row apart" key=${i}>
          <div class="grow"><${Fields} specs=${spec.item.fields} raw=${one} onRaw=${(/** @type {Raw} */ raw) => onValue(value.with(i, raw))} errors=${errors} tried=${tried} path=${`${at}.${i}.`} /></div>
          <${Remove} what=${`${spec.label} ${i + 1}`} onRemove=${() => onValue(value.toSpliced(i, 1))} />
        </div>`,
      )}
      ${value.length < spec.max_items && html`<button class="quiet" type="button" onClick=${() => add(onValue, value, {}, at)}><${Icon} name="plus" size=${20} />${t("add_one")}</button>`}
    </fieldset>`,
};

/** One more entry, ready to be typed. @param {(value: any[]) => void} onValue @param {any[]} value @param {any} empty @param {string} at */
function add(onValue, value, empty, at) {
  onValue([...value, empty]);
  requestAnimationFrame(() => document.querySelector(`[id^="field-${at}.${value.length}"]`)?.focus());
}

/** @param {{what: string, onRemove: () => void}} props */
const Remove = ({ what, onRemove }) => html`
  <button class="quiet square" type="button" aria-label=${t("remove_named", { what })} onClick=${onRemove}><${Icon} name="remove" size=${20} /></button>`;
