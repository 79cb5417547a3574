/**
 * Picks an animal or a plant: from tiles of those at hand, from the whole table by words, or by the keeper's own word.
 */
import { html, useSignal } from "../vendor/preact.js";
import { name_of } from "../advice/life/stock.js";
import { pick_rows, rows_with } from "../bench/table_rows.js";
import { t } from "../i18n/words.js";
import { Icon } from "./icon.js";
import { all_of_kind, room } from "./state/live.js";
import { tap } from "./state/tap.js";
import { with_text } from "./state/field_text.js";

/** How many rows are drawn at once; the words narrow the list. */
const MOST = 30;
/**
 * The record kind that holds the keeper's own rows of a table.
 * @type {{species: "own_species", plants: "own_plant"}}
 */
const OWN_KIND = { species: "own_species", plants: "own_plant" };
/** @typedef {import("./state/live.js").SomeRecord & {name: string}} OwnRow */
/** @type {OwnRow[]} */
const NONE = [];

/** The keeper's own rows of a table; none where the table has no such kind. @param {string} table */
export function own_rows(table) {
  if (table !== "species" && table !== "plants") return NONE;
  return /** @type {OwnRow[]} */ (all_of_kind(OWN_KIND[table]));
}

/**
 * @param {{rows: "species" | "plants", near: string[], value: string, then: string, on_pick: (key: string) => void,
 * warned?: (key: string) => string}} props `near`: kinds that have a tile; `then`: the page to come back to; `warned`:
 * what speaks against a kind before it is picked
 */
export function KindPicker({ rows, near, value, then, on_pick, warned = () => "" }) {
  const open = useSignal(false);
  const words = useSignal("");
  const tiles = value && !near.includes(value) ? [value, ...near] : near;
  const own = OWN_KIND[rows];
  const found = open.value ? rows_with(pick_rows(rows, own_rows(rows)), words.value) : [];
  const typed = words.value.trim();
  const pick = (/** @type {string} */ key) => {
    on_pick(key);
    open.value = false;
    words.value = "";
  };
  return html`
    <div class="tiles two" role="group" aria-label=${t(`life.which_${rows}`)}>
      ${tiles.map(
        (key) => html`<button type="button" key=${key} aria-pressed=${key === value}
        onClick=${tap(() => pick(key))}><b>${name_of(rows, key)}</b><${Warned} text=${warned(key)} /></button>`,
      )}
      <button type="button" aria-expanded=${open.value} onClick=${tap(() => (open.value = !open.value))}><${Icon}
        name="search" />${t(tiles.length ? `life.other_${rows}` : `life.find_${rows}`)}</button>
    </div>
    ${
      open.value &&
      html`
      <div class="drawer kinds">
        <div class="field"><label for=${`find-${rows}`}>${t("life.words")}</label>
          <input id=${`find-${rows}`} type="search" autocomplete="off" maxlength="80" value=${words.value}
            onInput=${with_text((text) => (words.value = text))} /></div>
        <ul class="lines">${found.slice(0, MOST).map(
          (row) => html`
          <li key=${row.key}><button type="button" class="line" onClick=${tap(() => pick(row.key))}><span>${row.name}
            ${row.also && html`<br /><em class="soft small">${row.also}</em>`}<${Warned}
            text=${warned(row.key)} /></span></button></li>`,
        )}</ul>
        <p class="soft small" role="status">
          ${
            found.length > MOST
              ? t("life.more_rows", { count: found.length - MOST })
              : found.length === 0
                ? t("life.no_row")
                : ""
          }</p>
        ${
          typed &&
          !found.some((row) => row.key === typed) &&
          html`
          <div class="stack">
            <button class="quiet" type="button" onClick=${tap(() => pick(typed))}>${t("life.as_typed", { word: typed })}
              </button>
            ${
              room.value.may(own) &&
              html`<a class="quiet"
              href=${`/room/${own}/new?name=${encodeURIComponent(typed)}&then=${encodeURIComponent(then)}`}
              onClick=${() => pick(typed)}>${t("life.set_down", { word: typed })}</a>`
            }
          </div>`
        }
      </div>`
    }`;
}

/** @param {{text: string}} props */
const Warned = ({ text }) => text && html`<br /><span class="soft small">${text}</span>`;
