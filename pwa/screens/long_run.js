/** One tank's long run: where nitrate and carbonate hardness settle if all goes on so, and the least that holds. */
import { html } from "../vendor/preact.js";
import { facts_of } from "../advice/facts.js";
import { basis_of } from "../advice/level.js";
import { long_run } from "../advice/life/long_run.js";
import { of_parameter } from "../advice/of_parameter.js";
import { caution } from "../contracts.js";
import { short, t } from "../i18n/words.js";
import { live_room, now, room, get } from "../ui/state/live.js";
import { level_said, litres_said } from "../ui/words/figures.js";
import { FAR_DAYS, nitrate_said } from "../ui/words/long_run_said.js";
import { KnownFrom } from "../ui/contract/known_from.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";

/** @import { Hardness, Least, LongRun, Routine } from "../advice/life/long_run.js" */

/** @param {{id: string}} props */
export function LongRunPage({ id }) {
  const tank = get("tank", id);
  if (!tank) return html`<${Missing} up="/" />`;
  const facts = facts_of(live_room, tank, now.value);
  const found = long_run(facts);
  const last = of_parameter(facts.readings, "nitrate").at(-1);
  const basis = basis_of(last && { reading: last });
  return html`
    <${Page} title=${t("long_run.title")} up=${`/tank/${id}`} place="round"
      aside=${html`<span class="soft">${tank.name}</span>`}>
      <section class="section" aria-label=${t("long_run.title")}>
        <${NitrateSaid} id=${id} found=${found} basis=${basis} />
      </section>
      <section class="section"><h2>${t("long_run.kh")}</h2><${KhSaid} id=${id} found=${found} /></section>
    <//>`;
}

/** @param {{id: string, found: LongRun, basis: import("../advice/level.js").Basis}} props */
function NitrateSaid({ id, found, basis }) {
  const { nitrate, routine, young } = found;
  const over = nitrate?.settles_mg_n_l && nitrate.settles_mg_n_l.high > nitrate.limit_mg_n_l;
  return html`
    <p class="sentence">${nitrate_said(found, basis)}</p>
    <p>${routine_said(found)}</p>
    ${
      nitrate &&
      !young &&
      html`
      <${LeastSaid} id=${id} least=${nitrate.least} routine=${routine} />
      <p class="soft small">${
        nitrate.from === "food"
          ? t("long_run.from_food")
          : t("long_run.from_readings", { rise: level_said("nitrate", nitrate.rise_mg_n_l_day.usual * 7, basis) })
      }</p>
      ${over && html`<p class="caution small">${caution("steady_routine", "slowly")}</p>`}
      ${nitrate.worked && html`<${KnownFrom} name="steady_routine" ...${nitrate.worked} />`}`
    }`;
}

/** @param {LongRun} found */
const routine_said = ({ routine, young }) =>
  routine
    ? t("long_run.routine", {
        count: routine.count,
        litres: litres_said(routine.litres),
        days: short(routine.every_days, routine.every_days < 10 ? 1 : 0),
      })
    : young
      ? ""
      : t("long_run.no_routine");

/**
 * The smallest routine that holds, made into a task by one tap.
 * @param {{id: string, least: Least | null, routine: Routine | null}} props
 */
function LeastSaid({ id, least, routine }) {
  if (!least) return null;
  const { litres, every_days } = least;
  const done = routine && routine.litres / routine.every_days >= litres / every_days;
  return html`
    <p>${t(done ? "long_run.least_held" : "long_run.least", { litres: litres_said(litres), count: every_days })}</p>
    ${
      room.value.may("task") &&
      html`<p><a class="quiet" href=${`/task/new?tank=${id}&every=${every_days}&title=${encodeURIComponent(
        t("long_run.task", { litres: litres_said(litres) }),
      )}`}>${t("long_run.make_task")}</a></p>`
    }`;
}

/** @param {{id: string, found: LongRun}} props */
function KhSaid({ id, found: { kh, nitrate, routine } }) {
  if (!kh) return html`<p>${t(nitrate ? "long_run.kh_unknown" : "long_run.kh_no_load")}</p>`;
  const fall = short(kh.falls_dkh_week, kh.falls_dkh_week < 1 ? 2 : 1);
  return html`
    <p class="sentence">${kh_said(kh)}</p>
    <p>${t("long_run.kh_falls", { fall, now: short(kh.now_dkh, 1) })}</p>
    ${!kh.source_known && html`<p class="soft small">${t("long_run.kh_no_source")}</p>`}
    ${
      kh.days_to_floor !== null &&
      html`<${LeastSaid} id=${id} least=${kh.least} routine=${routine} />
      <p class="caution small">${caution("alkalinity_use", "kh_floor")}</p>`
    }
    <${KnownFrom} name="alkalinity_use" ...${kh.worked} />`;
}

/** @param {Hardness} kh */
function kh_said({ days_to_floor, steady_dkh }) {
  if (days_to_floor !== null && days_to_floor <= FAR_DAYS)
    return t("long_run.kh_gone", { count: Math.round(days_to_floor) });
  return steady_dkh === null ? t("long_run.kh_far") : t("long_run.kh_settles", { level: short(steady_dkh, 1) });
}
