/** When it goes wrong: what is seen or has happened in a tank. Without a tank, the tank is asked for first. */
import { html } from "../vendor/preact.js";
import { INCIDENT_CODES } from "../advice/incident_codes.js";
import { walk } from "../advice/facts.js";
import { t } from "../i18n/words.js";
import { get, live_room } from "../ui/state/live.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { incident_named } from "../ui/words/tile_words.js";

/** @param {{id?: string, what?: string}} props */
export function Incidents({ id, what }) {
  if (!id) return html`<${WhichTank} what=${what && INCIDENT_CODES.includes(what) ? what : null} />`;
  const tank = get("tank", id);
  if (!tank) return html`<${Missing} up="/" />`;
  return html`
    <${Page} title=${t("incident.title")} up=${`/tank/${id}`} place="round">
      <p class="soft">${tank.name}</p>
      <p class="sentence">${t("incident.which")}</p>
      <ul class="lines">${INCIDENT_CODES.map(
        (code) => html`
        <li key=${code}><a class="line" href=${`/tank/${id}/incident/${code}`}><b>${incident_named(code)}</b></a></li>`,
      )}</ul>
      <p class="caution small">${t("incident.people_first")}</p>
    <//>`;
}

/** @param {{what: string | null}} props */
const WhichTank = ({ what }) => html`
  <${Page} title=${what ? incident_named(what) : t("incident.title")} up="/tanks" place="tanks">
    <p class="sentence">${t("incident.which_tank")}</p>
    <ul class="lines">${walk(live_room).map(
      ({ id, name, place }) => html`
      <li key=${id}><a class="line" href=${what ? `/tank/${id}/incident/${what}` : `/tank/${id}/incidents`}><span><b>
        ${name}</b>${place && html`<br /><span class="soft small">${place}</span>`}</span></a></li>`,
    )}</ul>
    <p class="caution small">${t("incident.people_first")}</p>
  <//>`;
