/** Picks a row of a shared table (species, plants, salts ...) by words, without the server. */
import { html, useMemo, useRef, useState } from "../../vendor/preact.js";
import { node_of } from "../../bench/draft.js";
import { pick_rows, rows_with } from "../../bench/table_rows.js";
import { t } from "../../i18n/words.js";
import { Wrong, Words, id_of } from "./fields.js";
import { own_rows } from "../kind_picker.js";
import { tap } from "../state/tap.js";
import { with_text } from "../state/field_text.js";

/** How many rows are drawn at once; the words narrow the list. */
const MOST = 40;

/** @param {import("./fields.js").FieldProps} props */
export const TablePicker = ({ view, hands }) => {
  const { edit, errors } = hands;
  const own = own_rows(view.spec.table);
  const rows = useMemo(() => pick_rows(view.spec.table, own), [view.spec.table, own]);
  const [open, set_open] = useState(false);
  const button = useRef(/** @type {HTMLButtonElement | null} */ (null));
  const chosen = rows.find((row) => row.key === view.value);
  const pick = (/** @type {string} */ key) => {
    edit(view.path, key);
    // A keeper's own animal fills the fields beside it, as a row of the table would.
    const columns = own.find(({ name }) => name === key);
    for (const field of (columns && view.beside) ?? [])
      if (columns?.[field.name] !== undefined && field.name !== "name")
        edit([...view.path.slice(0, -1), field.name], node_of(field, columns[field.name]));
    set_open(false);
    button.current?.focus();
  };
  const id = id_of(view.key);
  return html`
    <div class="field picker">
      <span class="label" id="${id}-label"><${Words} view=${view} /></span>
      <button type="button" class="picked" id=${id} ref=${button} aria-expanded=${open ? "true" : "false"}
        aria-labelledby="${id}-label ${id}"
        onClick=${tap(() => set_open(!open))}>
        <${Row} row=${chosen ?? { name: view.value || t("bench.choose"), also: "" }} />
      </button>
      ${open && html`<${Drawer} view=${view} rows=${rows} pick=${pick} />`}
      ${view.spec.help && html`<p class="help">${view.spec.help}</p>`}
      <${Wrong} errors=${errors} at=${view.key} />
    </div>`;
};

/** @typedef {ReturnType<typeof pick_rows>} Rows */

/**
 * The rows that match the words, to pick from.
 * @param {{view: import("../../bench/form.js").FieldView, rows: Rows, pick: (key: string) => void}} props
 */
const Drawer = ({ view, rows, pick }) => {
  const [words, set_words] = useState("");
  const found = rows_with(rows, words);
  const id = `${id_of(view.key)}-search`;
  return html`
    <div class="drawer">
      <label class="label" for=${id}>${t("bench.find_row")}</label>
      <input id=${id} type="search" autocomplete="off" value=${words}
        onInput=${with_text(set_words)} />
      <ul class="lines" aria-label=${view.label}>
        ${found.slice(0, MOST).map(
          (row) => html`<li key=${row.key}><button type="button" class="line"
          onClick=${tap(() => pick(row.key))}><${Row} row=${row} /></button></li>`,
        )}
      </ul>
      <p class="help" role="status">${
        found.length === 0
          ? t("bench.no_row")
          : found.length > MOST
            ? t("bench.more_rows", { count: found.length - MOST })
            : ""
      }</p>
      ${
        view.optional &&
        view.value &&
        html`<button type="button" class="quiet" onClick=${tap(() => pick(""))}>
        ${t("bench.take_none")}</button>`
      }
    </div>`;
};

/** @param {{row: {name: string, also: string}}} props */
const Row = ({ row }) => html`<span>${row.name}${row.also && html` <em class="soft small">${row.also}</em>`}</span>`;
