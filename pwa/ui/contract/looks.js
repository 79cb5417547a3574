/** How a form looks: as a record's form on its own page, or as a calculation's on the Bench. */
import { html } from "../../vendor/preact.js";
import { TILES } from "../../bench/record_fields.js";
import { t } from "../../i18n/words.js";
import { Icon } from "../icon.js";
import { tap } from "../state/tap.js";

/** @typedef {import("../../types/contract.js").Choice} Choice */
/** @typedef {import("../../vendor/preact.js").VNode} VNode */
/**
 * @typedef {object} Row one entry of a list
 * @property {string} name "Water 1" @property {boolean} plain it is one value, not several fields
 * @property {boolean} named its list names its entries @property {number} index @property {unknown} children its fields
 * @property {unknown} wrong its error @property {() => void} on_remove
 */
/** @typedef {{label: string, on_add: () => void}} Adding `label` of the list */
/**
 * One object for each look: Preact keeps a button only as long as its component is the same.
 * @typedef {object} Look
 * @property {string} tiles class of a choice's tiles @property {number} most_tiles more choices are a list to open
 * @property {boolean} may_be_none an optional choice among tiles may be left "not given"
 * @property {boolean} unchosen a list to open always offers to choose nothing
 * @property {string} rows class of a list of entries @property {boolean} help_first help stands above an error
 * @property {boolean} bare a plain entry is an input without words of its own
 * @property {boolean} seldom fields that few need lie behind one tap
 * @property {string} choose the text of a list to open before anything is chosen, by its key
 * @property {(props: Row) => VNode} Row @property {(props: Adding) => VNode} Add
 */

/** @param {Row} props */
const RecordRow = ({ name, plain, children, wrong, on_remove }) => html`
  <div class="row apart">
    ${plain ? children : html`<div class="grow">${children}</div>`}
    <button class="quiet square" type="button" aria-label=${t("remove_named", { what: name })} onClick=${on_remove}>
      <${Icon} name="remove" size=${20} /></button>
  </div>
  ${wrong}`;

/** @param {Row} props */
const ContractRow = ({ name, plain, named, index, children, wrong, on_remove }) => html`
  <div class=${plain ? "entry-row plain" : "entry-row"} role="group" aria-label=${name}>
    ${!plain && html`<p class="row-name">${named ? name : index + 1}</p>`}
    <div class="entry-fields">${children}</div>
    <button type="button" class="quiet" onClick=${tap(on_remove)} aria-label=${t("bench.remove_row", { row: name })}>
      ${t("bench.remove")}</button>
    ${!plain && wrong}
  </div>`;

/** @param {Adding} props */
const RecordAdd = ({ on_add }) => html`
  <button class="quiet" type="button" onClick=${on_add}><${Icon} name="plus" size=${20} />${t("add_one")}</button>`;

/** @param {Adding} props */
const ContractAdd = ({ label, on_add }) => html`
  <button type="button" class="quiet add" onClick=${tap(on_add)} aria-label=${t("bench.add_row", { label })}>
    ${t("bench.add")}</button>`;

/** The form of a record. @type {Look} */
export const RECORD_LOOK = {
  tiles: "tiles two",
  most_tiles: TILES,
  may_be_none: false,
  unchosen: true,
  rows: "field",
  help_first: true,
  bare: true,
  seldom: false,
  choose: "choose",
  Row: RecordRow,
  Add: RecordAdd,
};

/** The form of a calculation. @type {Look} */
export const CONTRACT_LOOK = {
  tiles: "chips",
  most_tiles: 7,
  may_be_none: true,
  unchosen: false,
  rows: "field rows",
  help_first: false,
  bare: false,
  seldom: true,
  choose: "bench.choose",
  Row: ContractRow,
  Add: ContractAdd,
};
