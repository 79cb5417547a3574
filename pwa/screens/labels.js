/**
 * Labels to print and stick on a tank: a QR code that opens the tank's page, name and litres; of one tank or of all.
 */
import { html } from "../vendor/preact.js";
import { walk } from "../advice/facts.js";
import { as_planned } from "../advice/setup/setting_up.js";
import { t } from "../i18n/words.js";
import { litres_said } from "../ui/words/figures.js";
import { get, live_room } from "../ui/state/live.js";
import { Missing } from "../ui/missing.js";
import { print_or_keep } from "../ui/state/print_or_keep.js";
import { Page } from "../ui/page.js";
import { Qr } from "../ui/qr.js";
import { tap } from "../ui/state/tap.js";

/** @param {{id?: string}} props `id` of a tank; without it the labels of all tanks in the round */
export function Labels({ id }) {
  const tank_here = id ? get("tank", id) : null;
  if (id && !tank_here) return html`<${Missing} up="/" />`;
  const tanks = tank_here ? [tank_here] : walk(live_room);
  return html`
    <${Page} title=${t(tank_here ? "labels.title_one" : "labels.title")} up=${tank_here ? `/tank/${id}` : "/tanks"}
      act=${
        tanks.length > 0 &&
        html`<button class="main" type="button"
          onClick=${tap(() => void print_or_keep("limnary-labels"))}>${t("away.print")}
        </button>`
      }>
      <p class="soft not-printed">${t(tanks.length ? "labels.why" : "tanks.empty")}</p>
      <ul class="labels">${tanks.map(
        (tank) => html`
        <li key=${tank.id}><${Qr} text=${`${location.origin}/tank/${tank.id}`}
          label=${t("labels.qr", { tank: tank.name })} />
          <b>${tank.name}</b><span>${litres_said(as_planned(tank).water_l)}</span></li>`,
      )}</ul>
    <//>`;
}
