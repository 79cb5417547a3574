/** Tanks that are being set up: the next step of each, and the overview of one tank's steps. */
import { html } from "../../vendor/preact.js";
import { as_planned, next_step, planned, steps_of } from "../../advice/setup/setting_up.js";
import { t } from "../../i18n/words.js";
import { litres_said } from "../words/figures.js";
import { all, room } from "../state/live.js";
import { Page } from "../page.js";

/** @import { Tank } from "../../types/views.js" */
/** All tanks that are being set up. */
export const plans = () =>
  all("tank")
    .filter((tank) => planned(tank) && !tank.resting)
    .map(as_planned);

/** @param {{book?: boolean}} props `book`: beside a margin rule */
export const BeingSetUp = ({ book = false }) => {
  const tanks = plans();
  return (
    tanks.length > 0 &&
    html`
    <section class=${book ? "entry" : "section"} aria-label=${t("setup.plans")}>
      ${book && html`<span class="in-margin" aria-hidden="true"></span>`}<div><h2>${t("setup.plans")}</h2>
      <ul class="lines">${tanks.map(
        (tank) => html`<li key=${tank.id}><a class="line" href=${`/tank/${tank.id}`}>
        <span class="grow"><b>${tank.name}</b><br /><span class="soft small">${next_said(tank)}</span></span><span
          class="figures soft">${litres_said(tank.water_l)}</span></a></li>`,
      )}</ul>
    </div></section>`
  );
};

/** @param {Tank} tank */
const next_said = (tank) => t("setup.next_is", { step: t(`setup.step.${next_step(tank) ?? "fill"}`) });

/** The steps of setting one tank up, which are done, and the link to the next. @param {{tank: Tank}} props */
export function SetupOverview({ tank }) {
  const may = room.value.may("tank");
  const on = next_step(tank) ?? (planned(tank) ? "fill" : null);
  const open = (/** @type {string} */ name) => may && (planned(tank) || name === "stock" || name === "first_fish");
  return html`
    <${Page} title=${tank.name} up=${planned(tank) ? "/tanks" : `/tank/${tank.id}`} place="tanks"
      aside=${html`<span class="figures soft">${litres_said(tank.water_l)}</span>`}
      act=${may && on && html`<a class="main" href=${`/tank/${tank.id}/setup/${on}`}>${t(`setup.step.${on}`)}</a>`}>
      <p class="sentence">${t(planned(tank) ? (may ? "setup.is_plan" : "setup.is_plan_seen") : "setup.is_filled")}</p>
      <ol class="lines">${steps_of(tank).map(({ name, state }, i) => {
        const what = html`<span class="grow">${i + 1}. ${t(`setup.step.${name}`)}</span><span class="soft small">
          ${t(`setup.state_${state}`)}</span>`;
        return html`<li key=${name}>${
          open(name)
            ? html`<a class="line" href=${`/tank/${tank.id}/setup/${name}`}>${what}
          </a>`
            : html`<span class="line">${what}</span>`
        }</li>`;
      })}</ol>
      <ul class="lines section"><li><a class="line" href=${`/tank/${tank.id}/buy`}>${t("buy.title")}</a></li>
        ${may && planned(tank) && html`<li><a class="line" href=${`/tank/${tank.id}/edit`}>${t("tank.edit")}</a></li>`}
          </ul>
    <//>`;
}
