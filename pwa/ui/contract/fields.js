/**
 * Draws the fields of any form, of a record or of a calculation, from their views: one control for each kind of field,
 * with its help, its unit and its error.
 */
import { html, useRef, useState } from "../../vendor/preact.js";
import { t } from "../../i18n/words.js";
import { Icon } from "../icon.js";
import { tap } from "../state/tap.js";
import { TablePicker } from "./table_picker.js";
import { with_text, with_tick } from "../state/field_text.js";

/** @typedef {import("../../bench/form.js").FieldView} FieldView */
/** @typedef {import("../../bench/form.js").ChoiceView} ChoiceView */
/** @typedef {import("../../types/contract.js").Choice} Choice */
/** @typedef {(string | number)[]} Path */
/**
 * @typedef {object} Hands what a form does with what is typed
 * @property {(path: Path, node: import("../../bench/draft.js").Node | undefined) => void} edit
 * @property {(path: Path) => void} add one more entry of a list
 * @property {(path: Path, index: number) => void} remove an entry of a list
 * @property {(key: string, name: string) => void} [choose] a side of an either-or
 * @property {(key: string) => void} [leave] the keeper is done with a field
 * @property {Map<string, string>} errors in words, by the field's key
 * @property {import("./looks.js").Look} look
 */
/** @typedef {{view: FieldView, hands: Hands}} FieldProps */

/** The id of a field's control. @param {string} key */
export const id_of = (key) => `f-${key.replaceAll(".", "-")}`;

/**
 * Fields in order. Those that few need lie behind one tap: open if one of them was typed or is wrong, drawn only once
 * open, for a tank's history is long.
 * @param {{views: (FieldView | ChoiceView)[], hands: Hands}} props
 */
export const FormFields = ({ views, hands }) => {
  const [drawn, draw] = useState(false);
  const open = useRef(false);
  const seldom = views.filter((view) => "spec" in view && hands.look.seldom && view.spec.seldom);
  const usual = views.filter((view) => !seldom.includes(view));
  open.current ||= seldom.some(
    (view) => "spec" in view && (view.from === "typed" || has_error(hands.errors, view.key)),
  );
  return html`
    ${usual.map((view) => one_of(view, hands))}
    ${
      seldom.length > 0 &&
      html`
      <details class="more" open=${open.current}
        onToggle=${(/** @type {{currentTarget: HTMLDetailsElement}} */ { currentTarget }) => draw(currentTarget.open)}>
        <summary>${t("bench.seldom")}</summary>
        ${(drawn || open.current) && seldom.map((view) => one_of(view, hands))}
      </details>`
    }`;
};

/** An error of the field or of anything in it. @param {Map<string, string>} errors @param {string} key */
const has_error = (errors, key) => [...errors.keys()].some((at) => at === key || at.startsWith(`${key}.`));

/** @param {FieldView | ChoiceView} view @param {Hands} hands */
const one_of = (view, hands) =>
  "choice" in view
    ? html`<${EitherOr} key=${view.choice.key} view=${view} hands=${hands} />`
    : html`<${KINDS[view.kind]} key=${view.key} view=${view} hands=${hands} />`;

/** The error of one field, next to it. @param {{errors: Map<string, string>, at: string}} props */
export const Wrong = ({ errors, at }) => html`
  <div id=${`${id_of(at)}-wrong`} aria-live="polite">${errors.has(at) && html`<${WrongWords} text=${errors.get(at)} />`}
  </div>`;

/** @param {{text: string}} props */
export const WrongWords = ({ text }) =>
  html`<p class="wrong"><${Icon} name="needs" size=${20} /><span>${text}</span></p>`;

/** @param {{view: FieldView}} props */
const Help = ({ view }) =>
  view.spec.help && html`<p class="help" id=${`${id_of(view.key)}-help`}>${view.spec.help}</p>`;

/** What stands under a control: its error, where its figure comes from, its help. @param {FieldProps} props */
export const Under = ({ view, hands }) => html`
  ${hands.look.help_first && html`<${Help} view=${view} />`}
  <${Wrong} errors=${hands.errors} at=${view.key} />
  ${view.aside && html`<p class="help">${view.aside}</p>`}
  ${view.ambiguous && html`<p class="help">${t("bench.ambiguous", { typed: view.value })}</p>`}
  ${view.from === "tank" && html`<p class="help">${t("bench.from_tank")}</p>`}
  ${
    view.own !== undefined &&
    html`<button type="button" class="quiet own" onClick=${tap(() => hands.edit(view.path, undefined))}>
      ${t("bench.use_own", { figure: view.own })}</button>`
  }
  ${!hands.look.help_first && html`<${Help} view=${view} />`}`;

/** The help and the error that a screen reader reads with the control. @param {FieldProps} props */
const described = ({ view, hands }) => ({
  "aria-describedby":
    [view.spec.help && `${id_of(view.key)}-help`, hands.errors.has(view.key) && `${id_of(view.key)}-wrong`]
      .filter(Boolean)
      .join(" ") || undefined,
});

/** The words of a field: its name, its unit, and that it may be left out. @param {{view: FieldView}} props */
export const Words = ({ view }) => {
  const beside = [view.unit?.replaceAll(" ", "\u00a0"), view.optional && t("bench.optional")].filter(Boolean);
  return html`${view.label}${beside.length > 0 && html` <span class="unit">${beside.join("\u00a0· ")}</span>`}`;
};

/** @param {{view: FieldView}} props */
const Label = ({ view }) => html`<label for=${id_of(view.key)}><${Words} view=${view} /></label>`;

/** Attributes by kind, most of them for the phone's keyboard. @type {Record<string, (view: FieldView) => object>} */
const KEYBOARD = {
  number: ({ spec, usual }) => ({
    inputmode: spec.min < 0 ? "text" : "decimal",
    enterkeyhint: "next",
    placeholder: usual,
  }),
  day: () => ({ type: "date" }),
  text: () => ({}),
};
/** A day as a record holds it: its noon in UTC. @param {string} day */
const noon = (day) => day && `${day}T12:00:00.000Z`;

/**
 * The input alone. In a list it can stand without a label; `name` then tells screen readers what it is.
 * @param {FieldProps & {name?: string}} props
 */
const Input = ({ view, hands, name }) => {
  const kind = view.kind === "integer" ? "number" : view.kind;
  const node = (/** @type {string} */ text) =>
    kind === "number" ? { text, unit: view.typed_in } : kind === "day" ? noon(text) : text;
  return html`
    <input id=${id_of(view.key)} class=${name ? "grow" : undefined} autocomplete="off" aria-label=${name}
      ...${KEYBOARD[kind](view)} value=${kind === "day" ? view.value.slice(0, 10) : view.value}
      aria-invalid=${hands.errors.has(view.key) ? "true" : undefined} ...${described({ view, hands })}
      onInput=${with_text((text) => hands.edit(view.path, node(text)))}
      onBlur=${() => hands.leave?.(view.key)} />`;
};

/** A figure, a line or a day. @param {FieldProps} props */
const InputField = (props) => html`
  <div class="field"><${Label} ...${props} /><${Input} ...${props} /><${Under} ...${props} /></div>`;

/** Several lines. @param {FieldProps} props */
const WordsField = (props) => {
  const { view, hands } = props;
  return html`
    <div class="field"><${Label} view=${view} />
      <textarea id=${id_of(view.key)} rows="3" ...${described(props)} value=${view.value}
        onInput=${with_text((text) => hands.edit(view.path, text))}
        onBlur=${() => hands.leave?.(view.key)}></textarea>
      <${Under} ...${props} />
    </div>`;
};

/** @param {FieldProps} props */
const TickField = (props) => {
  const { view, hands } = props;
  const tick = with_tick((ticked) => {
    hands.edit(view.path, ticked);
    hands.leave?.(view.key);
  });
  return html`
    <div class="field">
      <label class="check" for=${id_of(view.key)}><input id=${id_of(view.key)} type="checkbox"
        checked=${Boolean(view.value)} ...${described(props)} onChange=${tick} />${view.label}</label>
      <${Under} ...${props} />
    </div>`;
};

/** @param {FieldProps} props */
const ChoiceField = (props) => {
  const { view, hands } = props;
  const { look } = hands;
  const none = look.may_be_none && !view.spec.required && !("default" in view.spec);
  /** @type {Choice[]} */
  const choices = none ? [...view.spec.choices, { value: "", label: t("bench.not_said") }] : view.spec.choices;
  const pick = (/** @type {string} */ value) => {
    hands.edit(view.path, value);
    hands.leave?.(view.key);
  };
  if (choices.length > look.most_tiles) return html`<${ListField} ...${props} choices=${choices} pick=${pick} />`;
  return html`<${TileField} ...${props} choices=${choices} value=${view.value} pick=${pick} />`;
};

/** @param {FieldProps} props */
const TruthField = (props) => {
  const { view, hands } = props;
  const choices = [
    { value: "true", label: t("bench.yes") },
    { value: "false", label: t("bench.no") },
    ...(view.optional ? [{ value: "", label: t("bench.not_said") }] : []),
  ];
  return html`<${TileField} view=${{ ...view, optional: false }} hands=${hands} choices=${choices}
    value=${String(view.value)}
    pick=${(/** @type {string} */ value) => hands.edit(view.path, value === "" ? "" : value === "true")} />`;
};

/** One of a few, each behind one tap. @param {FieldProps & Picking} props */
const TileField = ({ choices, value, pick, ...props }) => html`
  <fieldset class="field" ...${described(props)}>
    <legend><${Words} view=${{ ...props.view, unit: undefined }} /></legend>
    <${Tiles} look=${props.hands.look} name=${id_of(props.view.key)} choices=${choices} value=${value} pick=${pick} />
    <${Under} ...${props} />
  </fieldset>`;

/** @typedef {{choices: Choice[], value?: string, pick: (value: string) => void}} Picking */

/** @param {Picking & {look: import("./looks.js").Look, name: string}} props */
const Tiles = ({ look, name, choices, value, pick }) => html`
  <div class=${look.tiles}>
    ${choices.map(
      (choice) => html`
      <label key=${choice.value}><input class="unseen" type="radio" name=${name} value=${choice.value}
        checked=${choice.value === value} onChange=${() => pick(choice.value)} />${choice.label}</label>`,
    )}
  </div>`;

/** One of many, in a list to open. @param {FieldProps & Picking} props */
const ListField = ({ choices, pick, ...props }) => {
  const { view, hands } = props;
  const unchosen = !choices.some(({ value }) => value === view.value);
  return html`
    <div class="field"><${Label} view=${view} />
      <select id=${id_of(view.key)} ...${described(props)}
        onChange=${with_text(pick)}>
        ${
          (unchosen || hands.look.unchosen) &&
          html`<option value="" selected=${unchosen}>${t(hands.look.choose)}
          </option>`
        }
        ${choices.map(
          ({ value, label }) => html`<option value=${value} selected=${value === view.value}>${label}</option>`,
        )}
      </select>
      <${Under} ...${props} />
    </div>`;
};

/** @param {{view: ChoiceView, hands: Hands}} props */
const EitherOr = ({ view: { choice, labels }, hands }) => {
  const choices = choice.options.map((value, index) => ({ value, label: labels[index] }));
  if (choice.optional) choices.push({ value: "", label: t("bench.neither") });
  return html`
    <fieldset class="field">
      <legend>${t("bench.one_of")}</legend>
      <${Tiles} look=${hands.look} name=${id_of(choice.key.replaceAll("|", "-or-"))} choices=${choices}
        value=${choice.chosen ?? ""} pick=${(/** @type {string} */ value) => hands.choose?.(choice.key, value)} />
    </fieldset>`;
};

/** Fields that belong together. @param {FieldProps} props */
const Group = ({ view, hands }) => html`
  <fieldset class="field group" id=${id_of(view.key)}>
    <legend><${Words} view=${view} /></legend>
    ${view.spec.help && html`<p class="help">${view.spec.help}</p>`}
    <${FormFields} views=${view.fields ?? []} hands=${hands} />
    <${Wrong} errors=${hands.errors} at=${view.key} />
  </fieldset>`;

/** A list of entries to add and take away. @param {FieldProps} props */
const Rows = ({ view, hands }) => {
  const { Row, Add, ...look } = hands.look;
  const rows = view.rows ?? [];
  const { item } = view.spec;
  const plain = item.type !== "object";
  const name = (/** @type {number} */ index) => t("bench.row", { label: item.label || view.label, at: index + 1 });
  const fields_of = (/** @type {FieldView[]} */ views, /** @type {number} */ index) => {
    if (!plain) return html`<${FormFields} views=${views} hands=${hands} />`;
    if (look.bare) return html`<${Input} view=${views[0]} hands=${hands} name=${name(index)} />`;
    const label = item.label ? name(index) : String(index + 1);
    return html`<${FormFields} views=${views.map((field) => ({ ...field, label }))} hands=${hands} />`;
  };
  return html`
    <fieldset class=${look.rows} id=${id_of(view.key)}>
      <legend><${Words} view=${view} /></legend>
      ${view.from === "tank" && html`<p class="help">${t("bench.from_tank")}</p>`}
      ${view.spec.help && html`<p class="help">${view.spec.help}</p>`}
      ${rows.map(
        (views, index) => html`
        <${Row} key=${index} name=${name(index)} plain=${plain} named=${Boolean(item.label)} index=${index}
          on_remove=${() => hands.remove(view.path, index)}
          wrong=${html`<${Wrong} errors=${hands.errors} at=${`${view.key}.${index}`} />`}>
          ${fields_of(views, index)}<//>`,
      )}
      ${rows.length < view.spec.max_items && html`<${Add} label=${view.label} on_add=${() => hands.add(view.path)} />`}
      <${Wrong} errors=${hands.errors} at=${view.key} />
    </fieldset>`;
};

/** @type {Record<string, (props: FieldProps) => import("../../vendor/preact.js").VNode>} */
const KINDS = {
  number: InputField,
  integer: InputField,
  text: InputField,
  day: InputField,
  words: WordsField,
  tick: TickField,
  choice: ChoiceField,
  boolean: TruthField,
  table: TablePicker,
  object: Group,
  list: Rows,
};
