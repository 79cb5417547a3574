/** The form of a record: drawn from its kind's fields (or a contract's inputs); what is typed is kept as typed. */
import { html, useState } from "../../vendor/preact.js";
import * as form from "../../bench/record_fields.js";
import { marks_of } from "../../figures/number_text.js";
import { chosen } from "../../i18n/words.js";
import { measures } from "../state/measures.js";
import { wrong_said } from "../words/refusal_said.js";
import { FormFields, WrongWords, id_of } from "./fields.js";
import { RECORD_LOOK } from "./looks.js";

export { matters } from "../../bench/record_fields.js";

/** @typedef {import("../../contracts.js").FieldError} FieldError */
/** @typedef {import("../../types/contract.js").Field} Field */
/** @typedef {form.Raw} Raw */

/** How the language of the words writes numbers. */
const marks = () => marks_of(chosen());

/** What the form says, ready to be checked. @param {Field[]} specs @param {Raw} raw */
export const payload_of = (specs, raw) => form.payload_of(specs, raw, marks());

/**
 * The values of a record as the form holds them typed.
 * @param {Field[]} specs @param {Record<string, any>} values `any`, because a record of a known kind has no index
 */
export const raw_of = (specs, values) => form.raw_of(specs, values, marks());

/**
 * @param {{specs: Field[], all?: Field[], raw: Raw, on_raw: (raw: Raw) => void, errors: FieldError[], tried?: boolean}}
 * props `all`: every field of the form, where only some are drawn; `tried`: errors of untouched fields are shown too
 */
export function Fields({ specs, all = specs, raw, on_raw, errors, tried = false }) {
  const [left, set_left] = useState(/** @type {Record<string, boolean>} */ ({}));
  const manner = { all, system: measures.value, marks: marks() };
  const shown = errors.filter(({ field }) => tried || left[field]);
  /** @type {import("./fields.js").Hands} */
  const hands = {
    look: RECORD_LOOK,
    errors: new Map(
      shown.map((error) => [error.field, wrong_words(form.spec_at(specs, error.field.split(".")), error)]),
    ),
    edit: (path, node) => on_raw(form.put(specs, raw, path, node)),
    remove: (path, index) => on_raw(form.remove_row(specs, raw, path, index)),
    add: (path) => {
      on_raw(form.add_row(specs, raw, path));
      focus_last(path);
    },
    leave: (key) => set_left((before) => ({ ...before, [key]: true })),
  };
  return html`<${FormFields} views=${form.views_of(specs, raw, manner)} hands=${hands} />`;
}

/** A new entry is ready to be typed. @param {(string | number)[]} path of its list */
function focus_last(path) {
  requestAnimationFrame(() => {
    const list = document.getElementById(id_of(path.join(".")));
    /** @type {NodeListOf<HTMLElement> | undefined} */
    const rows = list?.querySelectorAll(":scope > .row");
    /** @type {HTMLElement | null | undefined} */ (rows?.item(rows.length - 1)?.querySelector("[id]"))?.focus();
  });
}

/** @param {{label?: string} | undefined} spec @param {FieldError} error */
const wrong_words = (spec, error) => `${spec?.label ?? error.field} ${wrong_said(spec, error)}`;

/**
 * The same words as the API, for an error that stands on its own.
 * @param {{spec?: {label?: string}, error: FieldError}} props
 */
export const Wrong = ({ spec, error }) => html`<${WrongWords} text=${wrong_words(spec, error)} />`;
