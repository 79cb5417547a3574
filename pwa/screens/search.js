/** Search by words through all that this phone holds of the room, without signal. */
import { html, useMemo } from "../vendor/preact.js";
import { INCIDENT_CODES } from "../advice/incident_codes.js";
import { find, findable } from "../advice/journal/find.js";
import { shelf } from "../bench/search.js";
import { contracts } from "../contracts.js";
import { t } from "../i18n/words.js";
import { use_draft } from "../ui/state/draft.js";
import { with_text } from "../ui/state/field_text.js";
import { all_of_kind, live_room, now } from "../ui/state/live.js";
import { Page } from "../ui/page.js";
import { incident_named, note_said, task_said } from "../ui/words/tile_words.js";

/** The kinds that can be found. */
const MADE_OF = [
  "tank",
  "stock_change",
  "planting",
  "note",
  "task",
  "label",
  "source_water",
  "test_kit",
  "own_species",
  "own_plant",
];
const said = () => ({
  note: note_said,
  task: task_said,
  incidents: INCIDENT_CODES.map((code) => ({
    code,
    name: incident_named(code),
    words: `${t("incident.title")} ${t(`incident.words.${code}`)}`,
  })),
});
/** How many of a group are shown; more words narrow them. */
const MOST = 12;
const LONGEST = 140;

export function Search() {
  const words = use_draft("search", () => "");
  const entries = useMemo(() => findable(live_room, contracts(), now.peek(), said()), MADE_OF.map(all_of_kind));
  const shelved = (/** @type {string} */ asked) => shelf(contracts(), asked).flatMap(({ entries: found }) => found);
  const groups = find(entries, words.value, shelved);
  const count = groups.reduce((sum, { found }) => sum + found.length, 0);
  return html`
    <${Page} title=${t("search.title")} up="/tanks">
      <div class="field"><label for="search">${t("search.words")}</label>
        <input id="search" type="search" autocomplete="off" enterkeyhint="search" value=${words.value}
          onInput=${with_text((text) => (words.value = text))} /></div>
      <p class="soft" role="status">${
        words.value.trim() === ""
          ? t("search.why")
          : count
            ? t("search.found", { count })
            : t("search.nothing", { words: words.value.trim() })
      }</p>
      ${groups.map(
        ({ kind, found }) => html`
        <section class="section" key=${kind}><h2>${t(`search.group_${kind}`)}</h2>
          <ul class="lines">${found.slice(0, MOST).map(
            ({ path, title, also }) => html`
            <li key=${path + title}><a class="line" href=${path}><span class="grow"><b>${cut(title)}</b>
              ${also && html`<br /><span class="soft small">${also}</span>`}</span></a></li>`,
          )}</ul>
          ${
            found.length > MOST &&
            html`<p class="soft small">${t("life.more_rows", { count: found.length - MOST })}
            </p>`
          }
        </section>`,
      )}
    <//>`;
}

/** @param {string} text */
const cut = (text) => (text.length > LONGEST ? `${text.slice(0, LONGEST).trimEnd()} …` : text);
