/**
 * The animals of one tank: which live here, what they weigh, what the tank can bear, which get on together, and what
 * was recorded.
 */
import { DAY } from "../figures/durations.js";
import { html } from "../vendor/preact.js";
import { of_tank } from "../advice/of_tank.js";
import { mass_of, name_of, stock_of } from "../advice/life/stock.js";
import { short, t, when } from "../i18n/words.js";
import { measured } from "../ui/words/figures.js";
import { HowMany, about_g } from "../ui/how_many.js";
import { Icon } from "../ui/icon.js";
import { KnownFrom } from "../ui/contract/known_from.js";
import { LifeLog } from "../ui/life_log.js";
import { all, get, now, room } from "../ui/state/live.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { Together } from "../ui/stock_together.js";

/** How long the page speaks of a death (assumption). */
const MOURNED = 14 * DAY;

/** @param {{id: string}} props */
export function Stock({ id }) {
  const tank = get("tank", id);
  if (!tank) return html`<${Missing} up="/" />`;
  const changes = of_tank(all("stock_change"), id);
  const { animals, short: lacking } = stock_of(changes, now.value);
  const death = [...changes.filter((one) => one.change === "death" && Date.parse(one.at) > now.value - MOURNED)].sort(
    (a, b) => (a.at < b.at ? 1 : -1),
  )[0];
  const may = room.value.may("stock_change");
  return html`
    <${Page} title=${t("stock.title")} up=${`/tank/${id}`} aside=${html`<span class="soft">${tank.name}</span>`}
      act=${
        may &&
        html`<a class="main" href=${`/tank/${id}/stock/new`}><${Icon} name="plus" />${t("stock.write")}
        </a>`
      }>
      ${
        animals.length === 0 &&
        html`<p class="sentence">${t(changes.length ? "stock.none_left" : "stock.none_yet")}
        </p>`
      }
      <ul class="lines">${animals.map(
        (one) => html`<li key=${one.species}><${Animals} tank=${id} one=${one} may=${may}
        /></li>`,
      )}</ul>
      ${lacking.map(
        ({ change, missing }) => html`<p class="caution small" key=${change.id}>
        ${t("stock.lacking", {
          count: missing,
          name: name_of("species", change.species),
          when: when(change.at, now.value),
        })}</p>`,
      )}
      ${
        death &&
        html`
        <section class="section"><h2>${t("stock.after_death")}</h2>
          <p>${t("stock.after_death_why", { name: name_of("species", death.species), when: when(death.at, now.value) })}
            </p>
          <div class="row"><a class="quiet" href=${`/trace?tank=${id}&days=30`}>${t("trace.who")}</a><a class="quiet"
            href=${`/tank/${id}/test`}>${t("stock.test_now")}</a></div>
        </section>`
      }
      ${
        animals.length > 0 &&
        html`
        <${Mass} animals=${animals} />
        <${HowMany} tank=${tank} />
        <${Together} tank=${tank} />`
      }
      <${LifeLog} tank=${id} kind="stock_change" />
      <nav class="section" aria-label=${t("life.further")}><ul class="lines">
        <li><a class="line" href=${`/trace?tank=${id}&days=30`}>${t("trace.way")}</a></li>
        <li><a class="line" href=${`/tank/${id}/plants`}>${t("plants.title")}</a></li>
      </ul></nav>
    <//>`;
}

/**
 * One kind: a tap records something about it.
 * @param {{tank: string, one: import("../advice/life/stock.js").Living, may: boolean}} props
 */
function Animals({ tank, one, may }) {
  const said = [
    one.length_cm !== undefined && measured(one.length_cm, "cm", 1),
    t("life.since", { when: when(one.since, now.value) }),
    one.born > 0 && t("stock.born", { count: one.born }),
    one.died > 0 && t("stock.died", { count: one.died }),
  ].filter(Boolean);
  const inside = html`<span class="grow"><b>${name_of("species", one.species)}</b><br /><span class="soft small">
    ${said.join("\u00a0· ")}</span></span><span class="found"><b>${short(one.count, 0)}</b></span>`;
  return may
    ? html`<a class="line" href=${`/tank/${tank}/stock/new?species=${encodeURIComponent(one.species)}`}>${inside}</a>`
    : html`<div class="line">${inside}</div>`;
}

/** @param {{animals: import("../advice/life/stock.js").Living[]}} props */
function Mass({ animals }) {
  const mass = mass_of(animals, all("own_species"));
  if (!mass) return html`<p class="soft section">${t("stock.no_mass")}</p>`;
  return html`
    <section class="section"><h2>${t("stock.mass")}</h2>
      <p>${t(mass.measured ? "stock.mass_is" : "stock.mass_grown", { grams: about_g(mass.total_g) })}
        ${mass.unknown.length > 0 && html` ${t("stock.mass_without", { names: mass.unknown.join(", ") })}`}</p>
      <${KnownFrom} name="animal_mass" input=${mass.input} answer=${mass.answer} />
    </section>`;
}
