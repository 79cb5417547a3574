/**
 * What every form that records has in common: its draft, what stands in the way, recording it once, and the page after.
 */
import { html, useSignal } from "../../vendor/preact.js";
import { InvalidInput, find_field, kind_of } from "../../contracts.js";
import { Failed } from "../life_entry.js";
import { LookingOnly } from "../view_only.js";
import { Missing } from "../missing.js";
import { Wrong } from "../contract/form.js";
import { trouble_said } from "../words/trouble_said.js";
import { forget, use_draft, use_opened } from "./draft.js";
import { room } from "./live.js";
import { record } from "./record.js";
import { go } from "./router.js";

/** @typedef {import("../../contracts.js").FieldError} FieldError */
/**
 * @template T
 * @typedef {import("../../vendor/preact.js").Signal<T>} Signal
 */
/**
 * What one tap on the form's button records; with no writes and no pictures the form is left as it is.
 * @typedef {object} Entry
 * @property {import("./record.js").Write[]} writes saved together or not at all
 * @property {string} said what the note with the undo says
 * @property {string} to the page after
 * @property {import("./record.js").Picture[]} [pictures] saved in the same transaction
 * @property {() => Promise<unknown>} [after] work that follows once it is recorded
 */

/**
 * The state of one form, for a component's top, before any early return. What is typed stays in `draft` until it is
 * recorded, whatever goes wrong.
 * @template {object} D what is typed
 * @template [R=undefined] the record that the form changes
 * @param {{name: string, first: () => D, held?: R}} form `name` of the draft, `first` what stands in a new one, `held`
 * the record as it is now
 */
export function use_record_form({ name, first, held }) {
  const opened = use_opened(name, held);
  const draft = use_draft(name, first);
  const errors = useSignal(/** @type {FieldError[]} */ ([]));
  const problem = useSignal("");
  const tried = useSignal(false);
  return {
    /** The record as it was when the draft began: see use_opened. */
    opened: /** @type {R} */ (opened),
    ...record_form(name, { draft, errors, problem, tried }),
  };
}

/**
 * The same over signals that are there already.
 * @template {object} D
 * @param {string} name of the draft
 * @param {{draft: Signal<D>, errors: Signal<FieldError[]>, problem: Signal<string>, tried: Signal<boolean>}} state
 * `draft` what is typed, `errors` by field of the last attempt, `problem` what else stands in the way in words, `tried`
 * whether the button was tapped: from then on untouched fields show their errors
 */
export function record_form(name, { draft, errors, problem, tried }) {
  const clear = () => {
    errors.value = [];
    problem.value = "";
  };
  return {
    draft,
    errors,
    problem,
    tried,
    /** Type these fields. @param {Partial<D>} fields */
    set: (fields) => {
      clear();
      draft.value = { ...draft.value, ...fields };
    },
    /** Say why nothing is recorded yet. @param {string} words */
    refuse: (words) => {
      problem.value = words;
    },
    /**
     * Record once, however often it is tapped, then forget the draft and go on.
     * @param {() => Entry} entry may throw InvalidInput
     */
    save: async (entry) => {
      tried.value = true;
      clear();
      try {
        const { writes, said, to, pictures = [], after } = entry();
        if (writes.length + pictures.length > 0 && !(await record(writes, said, pictures))) return;
        forget(name);
        await after?.();
        go(to, { replace: true });
      } catch (error) {
        if (error instanceof InvalidInput) errors.value = error.errors;
        else problem.value = trouble_said(error);
      }
    },
  };
}

/** @typedef {Pick<ReturnType<typeof use_record_form>, "errors" | "problem">} Refusals */

/**
 * What stands in the way, above the form: the problem, and errors of fields that say none themselves.
 * @param {{form: Refusals, kind: string, beside?: string[]}} props `beside`: fields that show their own errors
 */
export const Refused = ({ form, kind, beside = [] }) => html`
  <${Failed} text=${form.problem.value} />
  ${form.errors.value
    .filter(({ field }) => !beside.includes(field.split(".")[0]))
    .map(
      (error) =>
        html`<${Wrong} key=${error.field} spec=${find_field(kind_of(kind).fields, error.field)} error=${error} />`,
    )}`;

/**
 * The page in place of a form of a tank: the tank is not on this phone, or this keeper may only look. Null if the form
 * may open.
 * @param {{id: string} | null} tank
 * @param {import("../../types/records.js").RecordKind} kind that the form records
 * @param {string} title
 */
export function closed_form(tank, kind, title) {
  if (!tank) return html`<${Missing} up="/" />`;
  return room.value.may(kind) ? null : html`<${LookingOnly} title=${title} up=${`/tank/${tank.id}`} />`;
}
