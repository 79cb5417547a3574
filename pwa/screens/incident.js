/**
 * One thing that goes wrong in a tank: at most six steps in order with this tank's own figures, each recorded by a tap,
 * what not to do, and whom to call. Works without signal.
 */
import { html } from "../vendor/preact.js";
import { TILE_OF } from "../advice/incident_codes.js";
import { INCIDENTS, calls_of, figures_of, going_on, steps_of } from "../advice/incidents.js";
import { t, when } from "../i18n/words.js";
import { Icon } from "../ui/icon.js";
import { all, get, now, of, room } from "../ui/state/live.js";
import { advice_for } from "../ui/state/forecast.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { new_id, record } from "../ui/state/record.js";
import { tap } from "../ui/state/tap.js";
import { step_said } from "../ui/words/incident_said.js";
import { incident_named } from "../ui/words/tile_words.js";

/** @import { Figures, Step, StepCode } from "../advice/incidents.js" */
/** @import { Write } from "../ui/state/record.js" */

/** The page where a step is done. @type {Record<NonNullable<Step["to"]>, string>} */
const WAYS = { test: "test", change: "change", loss: "stock/new?change=death", note: "note", trace: "" };

/** @param {{id: string, what: string}} props */
export function Incident({ id, what }) {
  const tank = get("tank", id);
  if (!tank || !Object.hasOwn(INCIDENTS, what)) return html`<${Missing} up="/" />`;
  const { facts, advice } = advice_for(tank);
  const figures = figures_of(facts, advice);
  const open = going_on(of("note", id), what, now.value);
  const may = room.value.may("note");
  const { nots, who } = INCIDENTS[what];
  const begin = () => void record(begun(id, what, null).writes, said(tank.name, incident_named(what)));
  return html`
    <${Page} title=${incident_named(what)} up=${`/tank/${id}/incidents`} place="round"
      aside=${html`<span></span>`}
      act=${
        may && !open && html`<button class="main" type="button" onClick=${tap(begin)}>${t("incident.record")}</button>`
      }>
      <p class="soft">${tank.name}</p>
      ${
        open &&
        html`<p class="soft" role="status">${t("incident.since", { when: when(open.began, now.value) })} <a
          class="quiet" href=${`/tank/${id}/history`}>${t("history.title")}</a></p>`
      }
      <ol class="lines steps">${steps_of(what, figures).map(
        (step) => html`<${OneStep} key=${step.code} tank=${tank} what=${what} step=${step} figures=${figures}
          done=${open?.done.get(step.code)} entry=${open?.entry ?? null} />`,
      )}</ol>
      <section class="section"><h2>${t("incident.nots")}</h2>
        <ul class="why">${nots.map((code) => html`<li key=${code}>${t(`incident.not.${code}`)}</li>`)}</ul></section>
      <${Calls} who=${who} />
      <p class="section"><a class="quiet" href=${`/trace?tank=${id}&days=30`}>${t("trace.way")}</a></p>
      <p class="soft small">${t("incident.provenance")}</p>
    <//>`;
}

/** @param {string} tank @param {string} what */
const said = (tank, what) => t("incident.saved", { tank, what });

/**
 * The notes that a tap writes: what went wrong, unless it is recorded already, and the step.
 * @param {string} tank @param {string} what @param {string | null} entry of the incident that is going on
 * @param {{code: string, text: string}} [step]
 * @returns {{writes: Write[]}}
 */
function begun(tank, what, entry, step) {
  const shared = { tank, at: room.value.now(), entry: entry ?? new_id(), incident: what };
  const tile = TILE_OF[what];
  const first = { text: incident_named(what), ...(tile ? { quick: [tile] } : {}) };
  const put = (/** @type {Record<string, unknown>} */ fields) => ({
    type: /** @type {const} */ ("put"),
    kind: "note",
    id: new_id(),
    fields: { ...shared, ...fields },
  });
  return {
    writes: [...(entry ? [] : [put(first)]), ...(step ? [put({ text: step.text, step: step.code })] : [])],
  };
}

/**
 * @param {{tank: import("../types/views.js").Tank, what: string, step: Step & {code: StepCode}, figures: Figures,
 * done: string | undefined, entry: string | null}} props
 */
function OneStep({ tank, what, step, figures, done, entry }) {
  const words = step_said(what, step, figures);
  const way = step.to && (step.to === "trace" ? `/trace?tank=${tank.id}&days=30` : `/tank/${tank.id}/${WAYS[step.to]}`);
  const dose = step.code === "dose_whole" && step.form === "dose" ? figures.whole : null;
  const log = () => {
    const { writes } = begun(tank.id, what, entry, { code: step.code, text: words.what });
    const all_writes = dose?.label ? [...writes, dose_write(tank, dose, figures.water_l)] : writes;
    void record(all_writes, said(tank.name, words.what));
  };
  return html`
    <li class="line step">
      <div class="grow"><p><b>${words.what}</b></p><p class="soft small">${words.why}</p>
        <div class="row">
          ${
            done
              ? html`<span class="row tight"><${Icon} name="done" size=${20} />${t("incident.done_at", {
                  when: when(done, now.value),
                })}</span>`
              : room.value.may("note") &&
                html`<button class="quiet" type="button" aria-label=${t("incident.did_named", { what: words.what })}
                  onClick=${tap(log)}>${t("incident.did")}</button>`
          }
          ${way && html`<a class="quiet" href=${way}>${t(`incident.way.${step.to}`)}</a>`}
        </div></div>
    </li>`;
}

/**
 * The whole tank's dose, so that what counts doses knows of it.
 * @param {{id: string}} tank @param {Figures["whole"]} dose @param {number} for_litres
 * @returns {Write}
 */
function dose_write(tank, { label, amount, unit }, for_litres) {
  const fields = { tank: tank.id, at: room.value.now(), label: label?.id, what: label?.name, amount, unit, for_litres };
  return { type: "put", kind: "dose", id: new_id(), fields };
}

/** @param {{who: import("../advice/incidents.js").Incident["who"]}} props */
function Calls({ who }) {
  const calls = calls_of(all("away_sheet"));
  return html`
    <section class="section"><h2>${t("incident.calls")}</h2>
      ${
        calls.length > 0
          ? html`<ul class="calls">${calls.map(
              ({ who: name, phone }) => html`<li key=${phone}><span>${name}</span> <a class="quiet"
              href=${`tel:${phone.replace(/[^+\d]/g, "")}`}>${phone}</a></li>`,
            )}</ul>`
          : html`<p>${t("incident.no_calls")} <a class="quiet" href="/away/edit">${t("away.new")}</a></p>`
      }
      ${who && html`<p>${t(`incident.who.${who}`)}</p>`}
    </section>`;
}
