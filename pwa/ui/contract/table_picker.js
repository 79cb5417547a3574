/** A pick from a shared table (species, plants, salts ...), searched on the phone itself. */
import { html, useMemo, useRef, useState } from "../../vendor/preact.js";
import { node_of } from "../../bench/draft.js";
import { pick_rows, rows_with } from "../../bench/table_rows.js";
import { t } from "../../i18n/words.js";
import { id_of, Wrong } from "./contract_fields.js";
import { own_rows } from "../kind_picker.js";
import { tap } from "../state/tap.js";

/** Rows drawn at once; the words narrow the rest. */
const MOST = 40;
/** @param {import("./contract_fields.js").FieldProps} props */
export const TablePicker = ({ view, edit, errors }) => {
  const own = own_rows(view.spec.table);
  const rows = useMemo(() => pick_rows(view.spec.table, own), [view.spec.table, own]);
  const [open, set_open] = useState(false);
  const [words, set_words] = useState("");
  const button = useRef(/** @type {HTMLButtonElement | null} */ (null));
  const chosen = rows.find((row) => row.key === view.value);
  const found = open ? rows_with(rows, words) : [];
  const pick = (/** @type {string} */ key) => {
    edit(view.path, key);
    // A keeper's own animal brings the columns that the table would have.
    const columns = own.find(({ name }) => name === key);
    for (const field of (columns && view.beside) ?? [])
      if (columns?.[field.name] !== undefined && field.name !== "name")
        edit([...view.path.slice(0, -1), field.name], node_of(field, columns[field.name]));
    set_open(false);
    set_words("");
    button.current?.focus();
  };
  const id = id_of(view.key);
  return html`
    <div class="field picker">
      <span class="label" id="${id}-label">${view.label}${
        view.optional &&
        html` <span class="unit">
        ${t("bench.optional")}</span>`
      }</span>
      <button type="button" class="picked" id=${id} ref=${button} aria-expanded=${open ? "true" : "false"}
        aria-labelledby="${id}-label ${id}"
        onClick=${tap(() => set_open(!open))}>
        <${Row} row=${chosen ?? { name: view.value || t("bench.choose"), also: "" }} />
      </button>
      ${
        open &&
        html`
        <div class="drawer">
          <label class="label" for="${id}-search">${t("bench.find_row")}</label>
          <input id="${id}-search" type="search" autocomplete="off" value=${words}
            onInput=${(/** @type {any} */ e) => set_words(e.target.value)} />
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
        </div>`
      }
      ${view.spec.help && html`<p class="help">${view.spec.help}</p>`}
      <${Wrong} errors=${errors} at=${view.key} />
    </div>`;
};

/** @param {{row: {name: string, also: string}}} props */
const Row = ({ row }) => html`<span>${row.name}${row.also && html` <em class="soft small">${row.also}</em>`}</span>`;
