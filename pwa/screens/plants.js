/** The plants of one tank: what grows here, since when, when it was trimmed last, and what was recorded. */
import { html } from "../vendor/preact.js";
import { of_tank } from "../advice/of_tank.js";
import { plants_of } from "../advice/life/plants.js";
import { name_of } from "../advice/life/stock.js";
import { caution } from "../contracts.js";
import { t, when } from "../i18n/words.js";
import { Icon } from "../ui/icon.js";
import { LifeLog } from "../ui/life_log.js";
import { all, get, now, room } from "../ui/state/live.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { amount_said } from "../ui/words/tile_words.js";

/** @param {{id: string}} props */
export function Plants({ id }) {
  const tank = get("tank", id);
  if (!tank) return html`<${Missing} up="/" />`;
  const plantings = of_tank(all("planting"), id);
  const { growing } = plants_of(plantings);
  const may = room.value.may("planting");
  return html`
    <${Page} title=${t("plants.title")} up=${`/tank/${id}`} aside=${html`<span class="soft">${tank.name}</span>`}
      act=${
        may &&
        html`<a class="main" href=${`/tank/${id}/plants/new`}><${Icon} name="plus" />${t("plants.write")}
        </a>`
      }>
      ${
        growing.length === 0 &&
        html`<p class="sentence">${t(plantings.length ? "plants.none_left" : "plants.none_yet")}
        </p>`
      }
      <ul class="lines">${growing.map(
        (one) => html`<li key=${one.species}><${Plant} tank=${id} one=${one} may=${may} />
        </li>`,
      )}</ul>
      <p class="caution small">${caution("compatibility", "release")}</p>
      <${LifeLog} tank=${id} kind="planting" />
      <nav class="section" aria-label=${t("life.further")}><ul class="lines">
        <li><a class="line" href=${`/trace?tank=${id}&days=30`}>${t("trace.way")}</a></li>
        <li><a class="line" href=${`/tank/${id}/stock`}>${t("stock.title")}</a></li>
      </ul></nav>
    <//>`;
}

/**
 * One kind: a tap records something about it.
 * @param {{tank: string, one: import("../advice/life/plants.js").Growing, may: boolean}} props
 */
function Plant({ tank, one, may }) {
  const said = [
    one.amounts.map(amount_said).join(", "),
    t("life.since", { when: when(one.since, now.value) }),
    one.last_trim && t("plants.trimmed_last", { when: when(one.last_trim, now.value) }),
  ].filter(Boolean);
  const inside = html`<span class="grow"><b>${name_of("plants", one.species)}</b><br /><span class="soft small">
    ${said.join("\u00a0· ")}</span></span>`;
  return may
    ? html`<a class="line" href=${`/tank/${tank}/plants/new?species=${encodeURIComponent(one.species)}`}>${inside}</a>`
    : html`<div class="line">${inside}</div>`;
}
