/** Bench: every calculation, grouped by the moment at which it is needed, found by words. */
import { html, useState } from "../vendor/preact.js";
import { shelf } from "../bench/search.js";
import { contracts } from "../contracts.js";
import { t } from "../i18n/words.js";
import { draft } from "../ui/state/draft.js";
import { with_text } from "../ui/state/field_text.js";
import { Page } from "../ui/page.js";

/** Names of the calculations opened last, newest first. @type {import("../vendor/preact.js").Signal<string[]>} */
const opened = draft("bench.opened", () => []);

export const Bench = () => {
  const [words, set_words] = useState("");
  const shelves = shelf(contracts(), words);
  const last = words ? [] : opened.value.map((name) => contracts()[name]).filter(Boolean);
  return html`
    <${Page} title=${t("bench.title")} place="bench">
      <div class="field search">
        <label for="bench-search">${t("bench.search")}</label>
        <input id="bench-search" type="search" autocomplete="off" enterkeyhint="search" value=${words}
          onInput=${with_text(set_words)} />
      </div>
      <p class="unseen" role="status">
        ${words && t("bench.found", { count: shelves.reduce((sum, { entries }) => sum + entries.length, 0) })}</p>
      ${last.length > 0 && html`<${Shelf} title=${t("bench.last")} entries=${last} />`}
      ${shelves.map(
        ({ moment, entries }) => html`<${Shelf} key=${moment} title=${t(`bench.moment.${moment}`)}
        entries=${entries} />`,
      )}
      ${shelves.length === 0 && html`<p>${t("bench.nothing", { words })}</p>`}
    </${Page}>`;
};

/** @param {{title: string, entries: import("../types/contract.js").Contract[]}} props */
const Shelf = ({ title, entries }) => html`
  <section class="section">
    <h2>${title}</h2>
    <ul class="lines">
      ${entries.map(
        (spec) => html`
        <li key=${spec.name}><a class="line" href="/bench/${spec.name}"><span><strong>${spec.title}</strong><span
          class="soft small purpose">${spec.purpose}</span></span></a></li>`,
      )}
    </ul>
  </section>`;
