/** Bench: the calculations by the moment they are needed. */
import { html, useSignal } from "../vendor/preact.js";
import { shelf } from "../bench/search.js";
import { contracts } from "../contracts.js";
import { t } from "../i18n/words.js";
import { Page } from "../ui/page.js";

export function Bench() {
  const words = useSignal("");
  const found = shelf(contracts(), words.value);
  return html`
    <${Page} title=${t("place.bench")} place="bench">
      <div class="field"><label for="search">${t("bench.search")}</label>
        <input id="search" type="search" autocomplete="off" value=${words.value} onInput=${(/** @type {any} */ e) => (words.value = e.target.value)} /></div>
      ${found.length === 0 && html`<p class="sentence">${t("bench.none")}</p>`}
      ${found.map(({ moment, entries }) => html`
        <section class="section" key=${moment}><h2>${t(`moment.${moment}`)}</h2>
          <ul class="lines">${entries.map((spec) => html`
            <li key=${spec.name}><a class="line" href=${`/bench/${spec.name}`}><span><b>${spec.title}</b><br /><span class="soft small">${spec.purpose}</span></span></a></li>`)}</ul>
        </section>`)}
    <//>`;
}
