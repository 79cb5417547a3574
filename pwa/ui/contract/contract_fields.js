/**
 * The single fields of a form made from a contract: number, text, choice, yes or no; each with its help and its error.
 */
import { html } from "../../vendor/preact.js";
import { t } from "../../i18n/words.js";
import { Icon } from "../icon.js";
import { tap } from "../state/tap.js";

/** @typedef {import("../../bench/form.js").FieldView} FieldView */
/**
 * @typedef {{view: FieldView, edit: (path: (string | number)[], node: any) => void, errors: Map<string, string>}}
 * FieldProps
 */

/** More choices than this are a list to open instead of tiles. */
const TILES = 7;
const NONE = "";

export const id_of = (/** @type {string} */ key) => `f-${key.replaceAll(".", "-")}`;

/** The error of one field, next to it. @param {{errors: Map<string, string>, at: string}} props */
export const Wrong = ({ errors, at }) =>
  errors.has(at) &&
  html`<p class="wrong" id="${id_of(at)}-wrong"><${Icon} name="needs" size=${20} /><span>${errors.get(at)}</span></p>`;

/** What belongs under a field: its error, where its figure comes from, its help. @param {FieldProps} props */
const Under = ({ view, edit, errors }) => html`
  <${Wrong} errors=${errors} at=${view.key} />
  ${view.aside && html`<p class="help">${view.aside}</p>`}
  ${view.ambiguous && html`<p class="help">${t("bench.ambiguous", { typed: view.value })}</p>`}
  ${view.from === "tank" && html`<p class="help">${t("bench.from_tank")}</p>`}
  ${
    view.own !== undefined &&
    html`<button type="button" class="quiet own" onClick=${tap(() => edit(view.path, undefined))}>
      ${t("bench.use_own", { figure: view.own })}</button>`
  }
  ${view.spec.help && html`<p class="help" id="${id_of(view.key)}-help">${view.spec.help}</p>`}`;

/** @param {FieldView} view @param {Map<string, string>} errors */
const described_by = (view, errors) =>
  [view.spec.help && `${id_of(view.key)}-help`, errors.has(view.key) && `${id_of(view.key)}-wrong`]
    .filter(Boolean)
    .join(" ") || undefined;

/** The words beside a field: unit, and that it may be left out. @param {FieldView} view */
const beside = (view) =>
  [view.unit?.replaceAll(" ", "\u00a0"), view.optional && t("bench.optional")].filter(Boolean).join("\u00a0· ");

/** @param {FieldProps} props */
export const NumberField = (props) => {
  const { view, edit, errors } = props;
  return html`
    <div class="field">
      <label for=${id_of(view.key)}>${view.label}${beside(view) && html` <span class="unit">${beside(view)}</span>`}
        </label>
      <input id=${id_of(view.key)} inputmode=${view.spec.min < 0 ? "text" : "decimal"} autocomplete="off"
        enterkeyhint="next"
        value=${view.value} aria-invalid=${errors.has(view.key) ? "true" : undefined}
          aria-describedby=${described_by(view, errors)}
        onInput=${(/** @type {any} */ e) => edit(view.path, { text: e.target.value, unit: view.typed_in })} />
      <${Under} ...${props} />
    </div>`;
};

/** @param {FieldProps} props */
export const TextField = (props) => {
  const { view, edit, errors } = props;
  return html`
    <div class="field">
      <label for=${id_of(view.key)}>${view.label}${beside(view) && html` <span class="unit">${beside(view)}</span>`}
        </label>
      <input id=${id_of(view.key)} autocomplete="off" value=${view.value} aria-invalid=${
        errors.has(view.key) ? "true" : undefined
      }
        aria-describedby=${described_by(view, errors)}
          onInput=${(/** @type {any} */ e) => edit(view.path, e.target.value)} />
      <${Under} ...${props} />
    </div>`;
};

/** @param {FieldProps} props */
export const ChoiceField = (props) => {
  const { view, edit, errors } = props;
  const open = !view.spec.required && !("default" in view.spec);
  const choices = open ? [...view.spec.choices, { value: NONE, label: t("bench.not_said") }] : view.spec.choices;
  if (choices.length > TILES) return html`<${LongChoice} ...${props} choices=${choices} />`;
  return html`
    <fieldset class="field" aria-describedby=${described_by(view, errors)}>
      <legend>${view.label}${view.optional && html` <span class="unit">${t("bench.optional")}</span>`}</legend>
      <${Tiles} name=${id_of(view.key)} choices=${choices} value=${view.value}
        pick=${(/** @type {string} */ value) => edit(view.path, value)} />
      <${Under} ...${props} />
    </fieldset>`;
};

/** @param {FieldProps & {choices: {value: string, label: string}[]}} props */
const LongChoice = (props) => {
  const { view, edit, errors, choices } = props;
  return html`
    <div class="field">
      <label for=${id_of(view.key)}>${view.label}${
        view.optional &&
        html` <span class="unit">${t("bench.optional")}
        </span>`
      }</label>
      <select id=${id_of(view.key)} aria-describedby=${described_by(view, errors)}
        onChange=${(/** @type {any} */ e) => edit(view.path, e.target.value)}>
        ${
          !choices.some((one) => one.value === view.value) &&
          html`<option value="" selected>${t("bench.choose")}
          </option>`
        }
        ${choices.map(
          (one) => html`<option value=${one.value} selected=${one.value === view.value}>${one.label}
          </option>`,
        )}
      </select>
      <${Under} ...${props} />
    </div>`;
};

/**
 * One of several, a tap each.
 * @param {{name: string, choices: {value: string, label: string}[], value: any, pick: (value: string) => void}} props
 */
export const Tiles = ({ name, choices, value, pick }) => html`
  <div class="chips">
    ${choices.map(
      (one) => html`
      <label><input class="unseen" type="radio" name=${name} value=${one.value} checked=${one.value === value}
        onChange=${() => pick(one.value)} />${one.label}</label>`,
    )}
  </div>`;

/** @param {FieldProps} props */
export const TruthField = (props) => {
  const { view, edit } = props;
  const choices = [
    { value: "true", label: t("bench.yes") },
    { value: "false", label: t("bench.no") },
    ...(view.optional ? [{ value: NONE, label: t("bench.not_said") }] : []),
  ];
  return html`
    <fieldset class="field">
      <legend>${view.label}</legend>
      <${Tiles} name=${id_of(view.key)} choices=${choices} value=${String(view.value)}
        pick=${(/** @type {string} */ value) => edit(view.path, value === NONE ? "" : value === "true")} />
      <${Under} ...${props} />
    </fieldset>`;
};
