/** One tank: what to do now and why, then its latest figures. */
import { html } from "../vendor/preact.js";
import { walk } from "../advice/facts.js";
import { as_planned, is_young, planned, set_up_here } from "../advice/setup/setting_up.js";
import { basis_of, is_watched } from "../advice/level.js";
import { named, t, when } from "../i18n/words.js";
import { figure, level_said, litres_said, parameter_name } from "../ui/words/figures.js";
import { advise_ahead, page_of } from "../ui/state/forecast.js";
import { Icon } from "../ui/icon.js";
import { counted } from "../ui/words/life_said.js";
import { nitrate_said } from "../ui/words/long_run_said.js";
import { get, live_room, now, room } from "../ui/state/live.js";
import { Missing } from "../ui/missing.js";
import { next_tank } from "../ui/state/next_stop.js";
import { Page } from "../ui/page.js";
import { is_last_word, use_held_height } from "../ui/held_height.js";
import { FirstFishSaid } from "../ui/setup/setup_first_fish.js";
import { SetupOverview } from "../ui/setup/setup_lines.js";
import { AlsoFound, Sentence, State, Why } from "../ui/words/sentence.js";
import { TankList } from "../ui/tank_list.js";
import { shown_of } from "../ui/tank_shown.js";
import { DueTasks, tasks_here } from "../ui/tasks_due.js";

/** What can be recorded at the tank: its icon, the record kind, the path of the page. */
const WRITE_DOWN = [
  ["feed", "feeding", "feed"],
  ["dose", "dose", "dose"],
  ["note", "note", "note"],
  ["stock", "stock_change", "stock/new"],
  ["plants", "planting", "plants/new"],
  ["tool", "shared_tool", "tool"],
];

/** @typedef {import("../types/views.js").Tank} Tank */
/** @typedef {import("../types/advice.js").Advised} Advice */
/** @typedef {import("../types/advice.js").Shown} Shown */

/** @param {{id: string}} props */
export function Tank({ id }) {
  const tank = get("tank", id);
  if (!tank) return html`<${Missing} up="/" why="labels.stranger" />`;
  if (planned(tank)) return html`<${SetupOverview} tank=${as_planned(tank)} />`;
  return html`<${Running} key=${id} tank=${tank} />`;
}

/** @param {{id: string}} props */
Tank.ahead = function* ({ id }) {
  const tank = walk(live_room).find((one) => one.id === id);
  if (!tank) return;
  yield* advise_ahead([tank]);
  // The primary button may lead to it.
  next_tank(id);
  yield;
  page_of(tank, shown_of);
  yield;
};

/** @param {{tank: Tank}} props */
function Running({ tank }) {
  const { id } = tank;
  const { advice, shown } = page_of(tank, shown_of);
  const room_taken = use_held_height(`tank ${id}`, is_last_word(advice));
  return html`
    <div class="desk"><${TankList} here=${id} />
    <${Page} title=${tank.name} up="/" place="round"
      aside=${html`<span class="figures soft">${litres_said(tank.water_l)}</span>`}
      act=${html`<${Actions} id=${id} advice=${advice} />`}>
      <section class="room-taken" ref=${room_taken} aria-label=${t("tank.now")}>
        <div class="row apart held"><div><${State} advice=${advice} now=${now.value} /></div>
          <a class="quiet" href=${`/tank/${id}/incidents`}>${t("incident.title")}</a></div>
        <${Sentence} advice=${advice} now=${now.value} />
        <${AlsoFound} advice=${advice} now=${now.value} />
        <${Why} advice=${advice} now=${now.value} />
      </section>
      <${DueTasks} tank=${id} label=${t("tasks.today")} />
      <${FirstFish} tank=${tank} animals=${shown.animals} />
      <${Latest} id=${id} latest=${shown.latest} advice=${advice} />
      <${WriteDown} id=${id} />
      <nav class="section" aria-label=${tank.name}>
        <ul class="lines">
          <li><a class="line" href=${`/tank/${id}/outlook`}>${t("outlook.title")}</a></li>
          <li><a class="line" href=${`/tank/${id}/long-run`}><span>${t("long_run.title")}<br /><span class="soft small">
            ${nitrate_said(shown.long_run, basis_of(advice.levels.nitrate))}</span></span></a></li>
          <li><a class="line" href=${`/tank/${id}/trends`}>${t("trends.title")}</a></li>
          <li><a class="line" href=${`/tank/${id}/stock`}><span>${t("stock.title")}<br /><span class="soft small">
            ${stock_said(shown)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${id}/plants`}>${t("plants.title")}</a></li>
          <li><a class="line" href=${`/tank/${id}/history`}>${t("history.title")}</a></li>
          <li><a class="line" href=${`/trace?tank=${id}&days=30`}>${t("trace.way")}</a></li>
          <li><a class="line" href=${`/tank/${id}/tasks`}><span>${t("tasks.title")}<br /><span class="soft small">
            ${tasks_said(id)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${id}/water`}><span>${t("water.title")}<br /><span class="soft small">
            ${water_said(tank)}</span></span></a></li>
          <li><a class="line" href=${`/tank/${id}/label`}>${t("labels.title_one")}</a></li>
          ${room.value.may("tank") && html`<li><a class="line" href=${`/tank/${id}/edit`}>${t("tank.edit")}</a></li>`}
        </ul>
      </nav>
    <//></div>`;
}

/**
 * The primary button is what the tank needs; once it needs nothing, the way to the next tank. Each button keeps its
 * place, whichever is primary.
 * @param {{id: string, advice: Advice}} props
 */
const Actions = ({ id, advice }) => {
  const next = next_tank(id);
  const main = next ? "next" : advice.act === "change" ? "change" : "test";
  const of = (/** @type {string} */ name) => (main === name ? "main even" : "quiet tall even");
  return html`
    ${room.value.may("reading") && html`<a class=${of("test")} href=${`/tank/${id}/test`}>${t("test.do")}</a>`}
    ${
      room.value.may("water_change") &&
      html`<a class=${of("change")} href=${`/tank/${id}/change`}>${t("change.do")}
      </a>`
    }
    ${next && html`<a class="main" href=${`/tank/${next.id}`}>${t("round.next", { tank: next.name })}</a>`}`;
};

/** @param {{id: string}} props */
function WriteDown({ id }) {
  const open = WRITE_DOWN.filter(([, kind]) => room.value.may(kind));
  return (
    open.length > 0 &&
    html`
    <nav class="section" aria-label=${t("write_down.title")}><h2>${t("write_down.title")}</h2>
      <div class="tiles">${open.map(
        ([name, , path]) => html`<a key=${name} href=${`/tank/${id}/${path}`}><${Icon}
        name=${name} size=${28} />${t(`write_down.${name}`)}</a>`,
      )}</div>
    </nav>`
  );
}

/**
 * When the planned animals may come; shown while the tank is young or holds no animals.
 * @param {{tank: Tank} & Pick<Shown, "animals">} props
 */
function FirstFish({ tank, animals }) {
  if (!set_up_here(tank) || !(is_young(tank, now.value) || animals.length === 0)) return null;
  return html`
    <section class="section"><h2>${t("first_fish.title")}</h2><${FirstFishSaid} tank=${tank} />
      <ul class="lines">${
        room.value.may("stock_change") &&
        html`<li><a class="line"
        href=${`/tank/${tank.id}/setup/first_fish`}>${t("first_fish.open")}</a></li>`
      }
        <li><a class="line" href=${`/tank/${tank.id}/setup`}>${t("setup.plans_of")}</a></li></ul>
    </section>`;
}

/**
 * The latest figures; a tap on a name tests that parameter alone.
 * @param {{id: string, advice: Advice} & Pick<Shown, "latest">} props
 */
function Latest({ id, latest, advice }) {
  if (latest.length === 0) return html`<p class="soft section">${t("tank.no_figures")}</p>`;
  const may_test = room.value.may("reading");
  const limits = new Map(Object.entries(advice.limits));
  // Never two ways of reading side by side: the other one is a tap away.
  const other_ways = latest.flatMap((reading) => {
    const { also } = figure(reading);
    return also && is_watched(reading.parameter) ? { name: parameter_name(reading.parameter), also } : [];
  });
  return html`
    <section class="section">
      <table class="measured">
        <caption><h2>${t("tank.figures")}</h2></caption>
        <tbody>${latest.map((reading) => {
          const { value, unit, also } = figure(reading);
          const mg_n_l = limits.get(reading.parameter)?.mg_n_l;
          const limit = mg_n_l && level_said(reading.parameter, mg_n_l, reading.basis ?? "ion");
          const said = html`${parameter_name(reading.parameter)}
            <span class="also">${when(reading.at, now.value)}</span>`;
          return html`<tr key=${reading.parameter}>
            <th scope="row">${
              may_test ? html`<a class="again" href=${`/tank/${id}/test?of=${reading.parameter}`}>${said}</a>` : said
            }</th>
            <td><span class="big">${value}</span> <span class="unit">${unit}</span>
              ${also && !is_watched(reading.parameter) && html`<span class="also">${also}</span>`}
              ${limit && html`<span class="also">${t("tank.limit", { limit })}</span>`}</td>
          </tr>`;
        })}</tbody>
      </table>
      ${
        other_ways.length > 0 &&
        html`<details class="more"><summary>${t("tank.other_way")}</summary>
          ${other_ways.map(
            ({ name, also }) => html`<p key=${name} class="soft small">${named(name, also)}</p>`,
          )}</details>`
      }
    </section>`;
}

/** @param {Shown} shown */
function stock_said({ animals }) {
  return animals.length ? animals.map((one) => counted(one.species, one.count)).join("\u00a0· ") : t("stock.none_yet");
}

/** @param {Tank} tank */
const water_said = ({ source_water, dechlorinator }) =>
  [
    get("source_water", source_water)?.name ?? t("water.none"),
    get("label", dechlorinator)?.name ?? t("label.none"),
  ].join("\u00a0· ");

/** @param {string} id */
function tasks_said(id) {
  const count = tasks_here(id).filter((task) => !task.over).length;
  return count ? t("tasks.count", { count }) : t("tasks.none");
}
