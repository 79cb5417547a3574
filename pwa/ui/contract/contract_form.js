/** The whole form of one calculation, drawn from its view: fields, either-ors, rows to add and take away. */
import { html, useRef, useState } from "../../vendor/preact.js";
import { t } from "../../i18n/words.js";
import { ChoiceField, id_of, NumberField, TextField, Tiles, TruthField, Wrong } from "./contract_fields.js";
import { TablePicker } from "./table_picker.js";
import { tap } from "../state/tap.js";

/** @typedef {import("../../bench/form.js").FieldView} FieldView */
/** @typedef {import("../../bench/form.js").ChoiceView} ChoiceView */
/**
 * @typedef {object} Hands
 * @property {(path: (string | number)[], node: any) => void} edit
 * @property {(path: (string | number)[]) => void} add
 * @property {(path: (string | number)[], index: number) => void} remove
 * @property {(key: string, name: string) => void} choose @property {Map<string, string>} errors
 */

/** @param {{form: (FieldView | ChoiceView)[]} & Hands} props */
export const ContractForm = ({ form, ...hands }) => html`
  <form class="contract" autocomplete="off" onSubmit=${(/** @type {Event} */ e) => e.preventDefault()}>
    <${Fields} views=${form} hands=${hands} />
  </form>`;

/**
 * Fields in order; those that few need lie behind one tap, drawn once opened (a tank's history is long), open if one
 * was typed or is wrong.
 * @param {{views: (FieldView | ChoiceView)[], hands: Hands}} props
 */
const Fields = ({ views, hands }) => {
  const seldom = /** @type {FieldView[]} */ (views.filter((view) => "spec" in view && view.spec.seldom));
  const usual = views.filter((view) => !seldom.includes(/** @type {any} */ (view)));
  const open = useRef(false);
  const [drawn, draw] = useState(false);
  open.current ||= seldom.some((view) => view.from === "typed" || has_error(hands.errors, view.key));
  return html`
    ${usual.map((view) =>
      "choice" in view
        ? html`<${EitherOr} key=${view.choice.key} view=${view} hands=${hands} />`
        : html`<${Field} key=${view.key} view=${view} hands=${hands} />`,
    )}
    ${
      seldom.length > 0 &&
      html`
      <details class="more" open=${open.current} onToggle=${(/** @type {any} */ e) => draw(e.target.open)}>
        <summary>${t("bench.seldom")}</summary>
        ${
          (drawn || open.current) &&
          seldom.map(
            (view) => html`<${Field} key=${view.key} view=${view} hands=${hands}
          />`,
          )
        }
      </details>`
    }`;
};

/** An error of the field or of anything in it. @param {Map<string, string>} errors @param {string} key */
const has_error = (errors, key) => [...errors.keys()].some((one) => one === key || one.startsWith(`${key}.`));

/** @type {Record<string, any>} */
const KINDS = {
  number: NumberField,
  integer: NumberField,
  text: TextField,
  choice: ChoiceField,
  boolean: TruthField,
  table: TablePicker,
};

/** @param {{view: FieldView, hands: Hands}} props */
const Field = ({ view, hands }) => {
  if (view.kind === "list") return html`<${Rows} view=${view} hands=${hands} />`;
  if (view.kind === "object") return html`<${Group} view=${view} hands=${hands} />`;
  return html`<${KINDS[view.kind]} view=${view} edit=${hands.edit} errors=${hands.errors} />`;
};

/** @param {{view: ChoiceView, hands: Hands}} props */
const EitherOr = ({ view: { choice, labels }, hands }) => {
  const choices = choice.options.map((value, index) => ({ value, label: labels[index] }));
  if (choice.optional) choices.push({ value: "", label: t("bench.neither") });
  return html`
    <fieldset class="field">
      <legend>${t("bench.one_of")}</legend>
      <${Tiles} name=${id_of(choice.key.replaceAll("|", "-or-"))} choices=${choices} value=${choice.chosen ?? ""}
        pick=${(/** @type {string} */ value) => hands.choose(choice.key, value)} />
    </fieldset>`;
};

/** @param {{view: FieldView, hands: Hands}} props */
const Group = ({ view, hands }) => html`
  <fieldset class="field group" id=${id_of(view.key)}>
    <legend>${view.label}${view.optional && html` <span class="unit">${t("bench.optional")}</span>`}</legend>
    ${view.spec.help && html`<p class="help">${view.spec.help}</p>`}
    <${Fields} views=${view.fields ?? []} hands=${hands} />
    <${Wrong} errors=${hands.errors} at=${view.key} />
  </fieldset>`;

/** @param {{view: FieldView, hands: Hands}} props */
const Rows = ({ view, hands }) => {
  const rows = view.rows ?? [];
  const plain = view.spec.item.type !== "object";
  const row = (/** @type {number} */ index) =>
    t("bench.row", { label: view.spec.item.label || view.label, at: index + 1 });
  return html`
    <fieldset class="field rows" id=${id_of(view.key)}>
      <legend>${view.label}${view.optional && html` <span class="unit">${t("bench.optional")}</span>`}</legend>
      ${view.from === "tank" && html`<p class="help">${t("bench.from_tank")}</p>`}
      ${view.spec.help && html`<p class="help">${view.spec.help}</p>`}
      ${rows.map(
        (fields, index) => html`
        <div key=${index} class=${plain ? "entry-row plain" : "entry-row"} role="group" aria-label=${row(index)}>
          ${!plain && html`<p class="row-name">${view.spec.item.label ? row(index) : index + 1}</p>`}
          <div class="entry-fields">
            <${Fields}
              views=${
                plain
                  ? fields.map((field) => ({ ...field, label: view.spec.item.label ? row(index) : String(index + 1) }))
                  : fields
              } hands=${hands} />
          </div>
          <button type="button" class="quiet" onClick=${tap(() => hands.remove(view.path, index))}
            aria-label=${t("bench.remove_row", { row: row(index) })}>${t("bench.remove")}</button>
          ${!plain && html`<${Wrong} errors=${hands.errors} at=${`${view.key}.${index}`} />`}
        </div>`,
      )}
      ${
        rows.length < view.spec.max_items &&
        html`
        <button type="button" class="quiet add" onClick=${tap(() => hands.add(view.path))}
          aria-label=${t("bench.add_row", { label: view.label })}>${t("bench.add")}</button>`
      }
      <${Wrong} errors=${hands.errors} at=${view.key} />
    </fieldset>`;
};
