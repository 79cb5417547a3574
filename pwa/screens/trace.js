/**
 * The trace: which tanks shared water, plants, animals or tools with one tank, before and after, as a graph in time and
 * in words.
 */
import { html } from "../vendor/preact.js";
import { walk } from "../advice/facts.js";
import { shared_between, trace } from "../advice/life/trace.js";
import { caution } from "../contracts.js";
import { t, when } from "../i18n/words.js";
import { Icon } from "../ui/icon.js";
import { tank_name } from "../ui/life_entry.js";
import { all, get, live_room, now, room } from "../ui/state/live.js";
import { Page } from "../ui/page.js";
import { go } from "../ui/state/router.js";
import { tap } from "../ui/state/tap.js";
import { TraceGraph } from "../ui/charts/trace_graph.js";
import { ICON_OF, shared_said } from "../ui/words/trace_said.js";

const DAYS = [7, 14, 30, 90];

/** @param {{query: URLSearchParams}} props `tank`: whose trace; `days`: how far back */
export function Trace({ query }) {
  const tanks = [...walk(live_room), ...walk(live_room, { resting: true })];
  const tank = get("tank", query.get("tank") ?? undefined);
  const days = DAYS.find((one) => String(one) === query.get("days")) ?? 30;
  const path = (/** @type {string} */ id, /** @type {number} */ count) => `/trace?tank=${id}&days=${count}`;
  const may = room.value.may("shared_tool");
  return html`
    <${Page} title=${t("trace.title")} up=${tank ? `/tank/${tank.id}` : "/tanks"}
      aside=${tank && html`<span class="soft">${tank.name}</span>`}
      act=${
        tank &&
        may &&
        html`<a class="main" href=${`/tank/${tank.id}/tool`}><${Icon} name="plus" />
        ${t("tool.write")}</a>`
      }>
      ${
        tank
          ? html`
          <div class="tiles four" role="group" aria-label=${t("trace.days")}>
            ${DAYS.map(
              (count) => html`<button type="button" key=${count} aria-pressed=${count === days}
              onClick=${tap(() => go(path(tank.id, count), { replace: true }))}>${t("trace.last_days", { count })}
              </button>`,
            )}
          </div>
          <${Traced} tank=${tank} days=${days} />`
          : html`
          <p>${t("trace.which")}</p>
          <ul class="lines">${tanks.map(
            (one) => html`<li key=${one.id}><a class="line" href=${path(one.id, days)}><b>
            ${one.name}</b></a></li>`,
          )}</ul>`
      }
    <//>`;
}

/** @param {{tank: import("../types/views.js").Tank, days: number}} props */
function Traced({ tank, days }) {
  const shared = shared_between({
    water_changes: all("water_change"),
    plantings: all("planting"),
    stock_changes: all("stock_change"),
    shared_tools: all("shared_tool"),
  });
  const { to, from } = trace(tank.id, shared, { now: now.value, days });
  const parts = { tank: tank.name, count: days };
  if (to.length + from.length === 0)
    return html`<p class="sentence section">${t("trace.nothing", parts)}</p><${Further} />`;
  return html`
    <p class="sentence section">${
      to.length ? t("trace.exposed", { ...parts, count: to.length }) : t("trace.none_exposed", parts)
    }
      ${" "}${from.length ? t("trace.came_from", { ...parts, count: from.length }) : t("trace.came_from_none", parts)}
        </p>
    <${TraceGraph} tank=${tank.id} to=${to} from=${from} />
    <${Told} title=${t("trace.to")} met=${to} />
    <${Told} title=${t("trace.from")} met=${from} />
    <${Further} />`;
}

/** @param {{title: string, met: import("../advice/life/trace.js").Met[]}} props */
const Told = ({ title, met }) =>
  met.length > 0 &&
  html`
  <section class="section">
    <table class="measured told"><caption><h2>${title}</h2></caption>
      <tbody>${met.map(
        (one) => html`
        <tr key=${one.tank}><th scope="row"><a class="tank-name" href=${`/tank/${one.tank}`}>${tank_name(one.tank)}</a>
          <span class="also">${t(one.steps === 1 ? "trace.direct" : "trace.further")}</span></th>
          <td><ul>${one.by.map(
            (link) => html`
            <li key=${link.id + link.from}><span class="row tight"><${Icon} name=${ICON_OF[link.way]} size=${18} />
              <span>${shared_said(link)}</span></span>
              <span class="also">${when(link.at, now.value)}</span></li>`,
          )}</ul></td></tr>`,
      )}</tbody></table>
  </section>`;

const Further = () => html`
  <div class="section">
    <p class="soft small">${t("trace.how")}</p>
    <p class="caution small">${t("stock.caution_vet")}</p>
    <p class="caution small">${t("trace.caution_tools")}</p>
    <p class="caution small">${caution("compatibility", "quarantine")}</p>
  </div>`;
