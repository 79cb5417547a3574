/** All tanks, those put away too, and the way to a new one. */
import { html } from "../vendor/preact.js";
import { walk } from "../advice/facts.js";
import { as_planned } from "../advice/setup/setting_up.js";
import { t } from "../i18n/words.js";
import { litres_said } from "../ui/words/figures.js";
import { Icon } from "../ui/icon.js";
import { live_room, room } from "../ui/state/live.js";
import { Page } from "../ui/page.js";
import { BeingSetUp, plans } from "../ui/setup/setup_lines.js";

export function Tanks() {
  const away = walk(live_room, { resting: true });
  const tanks = walk(live_room);
  return html`
    <${Page} title=${t("place.tanks")} place="tanks"
      act=${
        room.value.may("tank") &&
        html`<a class="main" href="/tanks/new"><${Icon} name="plus" />
        ${t(tanks.length ? "tank.new" : "tank.first")}</a>`
      }>
      ${
        tanks.length + away.length > 0 &&
        html`<p><a class="quiet tall" href="/search"><${Icon} name="search" />
        ${t("search.title")}</a></p>`
      }
      ${
        tanks.length > 0
          ? html`<${List} tanks=${tanks} />`
          : plans().length === 0 &&
            html`<p class="sentence">
        ${t("tanks.empty")}</p>`
      }
      <${BeingSetUp} />
      ${
        tanks.length > 0 &&
        html`<ul class="lines section"><li><a class="line" href="/timeline"><span><b>${t("history.all_tanks")}</b><br />
          <span class="soft small">${t("history.ways")}</span></span></a></li>
        ${
          room.value.may("reading") &&
          html`<li><a class="line" href="/grid"><span><b>${t("grid.title")}</b><br /><span class="soft small">
          ${t("grid.short")}</span></span></a></li>`
        }
        <li><a class="line" href="/labels"><span><b>${t("labels.title")}</b><br /><span class="soft small">
          ${t("labels.short")}</span></span></a></li></ul>`
      }
      ${
        away.length > 0 &&
        html`<section class="section"><h2>${t("tanks.away")}</h2><${List} tanks=${away} />
        </section>`
      }
    <//>`;
}

/** @param {{tanks: import("../types/views.js").Tank[]}} props */
const List = ({ tanks }) => html`
  <ul class="lines">${tanks.map(
    (tank) => html`
    <li key=${tank.id}><a class="line" href=${`/tank/${tank.id}`}>
      <span class="grow"><b>${tank.name}</b>${tank.place && html`<br /><span class="soft small">${tank.place}</span>`}
        </span>
      <span class="figures soft">${litres_said(as_planned(tank).water_l)}</span></a></li>`,
  )}</ul>`;
