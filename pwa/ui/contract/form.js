/**
 * A form drawn from field specifications (a contract's inputs or a record kind's fields). What is typed is kept as
 * typed.
 */
import { html, useState } from "../../vendor/preact.js";
import { shown_number, value_of as typed_value_of } from "../../bench/draft.js";
import { marks_of, typed_form } from "../../figures/number_text.js";
import { unit_in, unit_label } from "../../figures/units.js";
import { chosen, t } from "../../i18n/words.js";
import { Icon } from "../icon.js";
import { measures } from "../state/measures.js";
import { wrong_said } from "../words/refusal_said.js";

/** @typedef {{field: string, message: string, allowed: string}} FieldError */
/**
 * @typedef {Record<string, any>} Raw texts as typed (with the unit where it is not the field’s own), choices and ticks
 * as chosen, lists of them
 */

/** Whether a field matters beside what is chosen. @param {any} spec @param {any[]} specs @param {Raw} raw */
export function matters(spec, specs, raw) {
  return Object.entries(spec.when ?? {}).every(([other, wanted]) => {
    const value = raw[other] ?? specs.find((one) => one.name === other)?.default;
    return /** @type {any} */ (wanted).includes(value);
  });
}

/**
 * What the form says, ready to be checked: empty fields left out, numbers with comma or point.
 * @param {any[]} specs
 * @param {Raw} raw
 */
export function payload_of(specs, raw) {
  const said = specs
    .filter((spec) => matters(spec, specs, raw))
    .map((spec) => [spec.name, value_of(spec, raw[spec.name])]);
  return Object.fromEntries(said.filter(([, value]) => value !== undefined));
}

/** @param {any} spec @param {any} typed @returns {any} */
function value_of(spec, typed) {
  if (typed === undefined || typed === null || typed === "") return undefined;
  if (is_figure(spec)) return typed_value_of(spec, node_of(spec, typed), marks());
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
/**
 * A figure keeps its text and the unit it was typed in; a text alone is in the field's own.
 * @param {any} spec
 * @param {any} typed
 */
const node_of = (spec, typed) => (typeof typed === "object" ? typed : { text: String(typed), unit: own_unit(spec) });
/** How the language of the words writes numbers. */
const marks = () => marks_of(chosen());

/**
 * A record's or example's values as the form would hold them typed.
 * @param {any[]} specs
 * @param {Record<string, any>} values
 */
export const raw_of = (specs, values) =>
  Object.fromEntries(
    specs
      .filter((spec) => values[spec.name] !== undefined)
      .map((spec) => [spec.name, typed_of(spec, values[spec.name])]),
  );

/** @param {any} spec @param {any} value @returns {any} */
function typed_of(spec, value) {
  if (is_figure(spec)) return typed_form(value, marks());
  if (spec.type === "list") return value.map((/** @type {any} */ one) => typed_of(spec.item, one));
  return spec.type === "object" && !spec.open ? raw_of(spec.fields, value) : value;
}

/**
 * @param {{specs: any[], all?: any[], raw: Raw, on_raw: (raw: Raw) => void, errors: FieldError[], tried?: boolean,
 * path?: string}} props
 * `all`: every field of the form, where only some are drawn; `tried`: errors of untouched fields are shown too
 */
export function Fields({ specs, all = specs, raw, on_raw, errors, tried = false, path = "" }) {
  const [left, set_left] = useState(/** @type {Record<string, boolean>} */ ({}));
  return specs
    .filter((spec) => matters(spec, all, raw))
    .map((spec) => {
      const at = path + spec.name;
      const shown = tried || left[spec.name];
      const wrong = shown ? errors.filter((one) => one.field === at || one.field.startsWith(`${at}.`)) : [];
      const set = (/** @type {any} */ value) => on_raw({ ...raw, [spec.name]: value });
      return html`<${Field} key=${at} spec=${spec} at=${at} value=${raw[spec.name]} on_value=${set} wrong=${wrong}
        errors=${errors} tried=${tried}
        on_leave=${() => set_left((before) => ({ ...before, [spec.name]: true }))} />`;
    });
}

/** @param {any} props */
function Field({ spec, at, value, on_value, wrong, errors, tried, on_leave }) {
  const Control = CONTROLS[control_of(spec)];
  const id = `field-${at}`;
  const mine = wrong.filter((/** @type {FieldError} */ one) => one.field === at);
  const described = [spec.help && `${id}-help`, mine.length && `${id}-wrong`].filter(Boolean).join(" ") || undefined;
  return html`
    <div class="field">
      <${Control} ...${{ spec, at, id, value, on_value, errors, tried, on_leave, described, invalid: mine.length > 0 }}
        />
      ${spec.help && html`<p class="help" id=${`${id}-help`}>${spec.help}</p>`}
      <div id=${`${id}-wrong`} aria-live="polite">
        ${mine.map((/** @type {FieldError} */ one) => html`<${Wrong} spec=${spec} error=${one} />`)}</div>
    </div>`;
}

/** The same words as the API, beside the field. @param {{spec?: any, error: FieldError}} props */
export const Wrong = ({ spec, error }) => html`
  <p class="wrong"><${Icon} name="needs" size=${20} /><span>${spec?.label ?? error.field} ${wrong_said(spec, error)}
    </span></p>`;

/** @param {any} spec */
function control_of(spec) {
  if (spec.type === "choice") return spec.choices.length <= 6 ? "tiles" : "select";
  if (spec.type === "list") return spec.item.type === "object" ? "rows" : "chips";
  if (spec.type === "number" || spec.type === "integer") return "figure";
  if (spec.type === "boolean") return "tick";
  if (spec.format === "date-time") return "day";
  return spec.max_length > 300 ? "words" : "line";
}

/** @param {{spec: any, id: string, unit?: string}} props */
const Label = ({ spec, id, unit = unit_label(own_unit(spec)) }) =>
  html`<label for=${id}>${spec.label} ${unit && html`<span class="unit">${unit}</span>`}</label>`;

/** @type {Record<string, (props: any) => any>} */
const CONTROLS = {
  figure: ({ spec, id, value, on_value, on_leave, described, invalid }) => {
    const shown = shown_number(node_of(spec, value ?? ""), unit_in(spec, measures.value), marks());
    const usual =
      spec.default === undefined
        ? ""
        : shown_number({ value: spec.default, unit: own_unit(spec) }, shown.unit, marks()).text;
    const say = (/** @type {string} */ text) =>
      on_value(text === "" || shown.unit === own_unit(spec) ? text : { text, unit: shown.unit });
    return html`
      <${Label} spec=${spec} unit=${unit_label(shown.unit)} id=${id} />
      <input id=${id} type="text" inputmode="decimal" autocomplete="off" value=${shown.text} placeholder=${usual}
        aria-describedby=${described} aria-invalid=${invalid} onInput=${(/** @type {any} */ e) => say(e.target.value)}
          onBlur=${on_leave} />`;
  },

  line: ({ spec, id, value, on_value, on_leave, described, invalid }) => html`
    <${Label} spec=${spec} id=${id} />
    <input id=${id} type="text" autocomplete="off" value=${value ?? ""} aria-describedby=${described}
      aria-invalid=${invalid}
      onInput=${(/** @type {any} */ e) => on_value(e.target.value)} onBlur=${on_leave} />`,

  day: ({ spec, id, value, on_value, on_leave, described, invalid }) => html`
    <${Label} spec=${spec} id=${id} />
    <input id=${id} type="date" value=${value?.slice(0, 10) ?? ""} aria-describedby=${described} aria-invalid=${invalid}
      onInput=${(/** @type {any} */ e) => on_value(e.target.value && `${e.target.value}T12:00:00.000Z`)}
        onBlur=${on_leave} />`,

  words: ({ spec, id, value, on_value, on_leave, described }) => html`
    <${Label} spec=${spec} id=${id} />
    <textarea id=${id} rows="3" aria-describedby=${described}
      onInput=${(/** @type {any} */ e) => on_value(e.target.value)} onBlur=${on_leave} value=${value ?? ""}>
      </textarea>`,

  tick: ({ spec, id, value, on_value, on_leave }) => html`
    <label class="check" for=${id}><input id=${id} type="checkbox" checked=${Boolean(value)}
      onChange=${(/** @type {any} */ e) => (on_value(e.target.checked), on_leave())} />${spec.label}</label>`,

  tiles: ({ spec, at, value, on_value, on_leave }) => html`
    <fieldset><legend class="label">${spec.label}</legend>
      <div class="tiles two">${spec.choices.map(
        (/** @type {any} */ choice) => html`
        <label><input class="unseen" type="radio" name=${at} value=${choice.value}
          checked=${(value ?? spec.default) === choice.value}
          onChange=${() => (on_value(choice.value), on_leave())} />${choice.label}</label>`,
      )}</div>
    </fieldset>`,

  select: ({ spec, id, value, on_value, on_leave, described }) => html`
    <${Label} spec=${spec} id=${id} />
    <select id=${id} aria-describedby=${described}
      onChange=${(/** @type {any} */ e) => (on_value(e.target.value || undefined), on_leave())}>
      <option value="" selected=${value === undefined}>${t("choose")}</option>
      ${spec.choices.map(
        (/** @type {any} */ choice) => html`<option value=${choice.value}
        selected=${value === choice.value}>${choice.label}</option>`,
      )}
    </select>`,

  chips: ({ spec, at, value = [], on_value, errors, tried }) => html`
    <fieldset><legend class="label">${spec.label}</legend>
      ${value.map(
        (/** @type {any} */ one, /** @type {number} */ i) => html`
        <div class="row apart" key=${i}>
          <input id=${`field-${at}.${i}`} class="grow" type="text" inputmode="decimal" autocomplete="off"
            aria-label=${`${spec.label} ${i + 1}`} value=${one}
            onInput=${(/** @type {any} */ e) => on_value(value.with(i, e.target.value))} />
          <${Remove} what=${`${spec.label} ${i + 1}`} on_remove=${() => on_value(value.toSpliced(i, 1))} />
        </div>
        ${
          tried &&
          errors
            .filter((/** @type {FieldError} */ e) => e.field === `${at}.${i}`)
            .map((/** @type {FieldError} */ e) => html`<${Wrong} spec=${spec} error=${e} />`)
        }`,
      )}
      ${
        value.length < spec.max_items &&
        html`<button class="quiet" type="button"
        onClick=${() => add(on_value, value, "", at)}><${Icon} name="plus" size=${20} />${t("add_one")}</button>`
      }
    </fieldset>`,

  rows: ({ spec, at, value = [], on_value, errors, tried }) => html`
    <fieldset><legend class="label">${spec.label}</legend>
      ${value.map(
        (/** @type {any} */ one, /** @type {number} */ i) => html`
        <div class="row apart" key=${i}>
          <div class="grow"><${Fields} specs=${spec.item.fields} raw=${one}
            on_raw=${(/** @type {Raw} */ raw) => on_value(value.with(i, raw))} errors=${errors} tried=${tried}
            path=${`${at}.${i}.`} /></div>
          <${Remove} what=${`${spec.label} ${i + 1}`} on_remove=${() => on_value(value.toSpliced(i, 1))} />
        </div>`,
      )}
      ${
        value.length < spec.max_items &&
        html`<button class="quiet" type="button"
        onClick=${() => add(on_value, value, {}, at)}><${Icon} name="plus" size=${20} />${t("add_one")}</button>`
      }
    </fieldset>`,
};

/**
 * One more entry, ready to be typed.
 * @param {(value: any[]) => void} on_value
 * @param {any[]} value
 * @param {any} empty
 * @param {string} at
 */
function add(on_value, value, empty, at) {
  on_value([...value, empty]);
  requestAnimationFrame(() =>
    /** @type {HTMLElement | null} */ (document.querySelector(`[id^="field-${at}.${value.length}"]`))?.focus(),
  );
}

/** @param {{what: string, on_remove: () => void}} props */
const Remove = ({ what, on_remove }) => html`
  <button class="quiet square" type="button" aria-label=${t("remove_named", { what })} onClick=${on_remove}><${Icon}
    name="remove" size=${20} /></button>`;
