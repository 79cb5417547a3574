/**
 * One tank's outlook: charts of past readings and likely ones, when the tank will be ready, how much more it could
 * carry.
 */
import { html, useMemo, useSignal } from "../vendor/preact.js";
import { chart_lines } from "../advice/forecast/chart_lines.js";
import { headroom_by_week, ready } from "../advice/forecast/readiness.js";
import { reasons_above } from "../advice/forecast/reasons_above.js";
import { basis_of, is_watched } from "../advice/level.js";
import { t } from "../i18n/words.js";
import { outlook_for } from "../ui/state/forecast.js";
import { get, now } from "../ui/state/live.js";
import { Missing } from "../ui/missing.js";
import { Cautions, Key, Processes, Ready } from "../ui/charts/outlook_parts.js";
import { HowMany } from "../ui/how_many.js";
import { Page } from "../ui/page.js";
import { CHANCE_OF, Parameter } from "../ui/charts/parameter.js";
import { Sentence, State, Why } from "../ui/words/sentence.js";
import { tap } from "../ui/state/tap.js";

const DRAWN = ["total_ammonia", "nitrite", "nitrate", "ph", "temperature"];
/** How many weeks back a chart reaches. */
const WEEKS = [2, 6];
/** @param {{id: string}} props */
export function Outlook({ id }) {
  const tank = get("tank", id);
  return tank ? html`<${Drawn} tank=${tank} />` : html`<${Missing} up="/" />`;
}

/** @param {{tank: import("../types/views.js").Tank}} props */
function Drawn({ tank }) {
  const weeks = useSignal(WEEKS[0]);
  const as_table = useSignal(false);
  const { facts, asked, forecast, advice } = outlook_for(tank);
  const { ahead, next, headroom } = forecast.answers;
  // The parameter most likely to pass its limit comes first.
  const chance = (/** @type {string} */ parameter) => next?.pass_chance[CHANCE_OF[parameter]] ?? -1;
  const lines = useMemo(
    () =>
      [...DRAWN]
        .sort((a, b) => chance(b) - chance(a))
        .map((parameter) => chart_lines(parameter, facts, asked, ahead, advice.limits, 7 * weeks.value))
        .filter(({ dots, fan }) => dots.length + fan.length > 0),
    [asked, ahead, next, weeks.value],
  );
  return html`
    <${Page} title=${t("outlook.title")} up=${`/tank/${tank.id}`} place="round"
      aside=${html`<span class="soft">${tank.name}</span>`}>
      <section aria-label=${t("tank.now")}>
        <${State} advice=${advice} now=${now.value} />
        <${Sentence} advice=${advice} now=${now.value} />
        <${Why} advice=${{ ...advice, reasons: reasons_above(advice) }} now=${now.value} />
      </section>
      <div class="row outlook-how" role="group" aria-label=${t("outlook.how")}>
        ${WEEKS.map(
          (count) => html`<button key=${count} class="quiet" type="button"
          aria-pressed=${weeks.value === count} onClick=${tap(() => (weeks.value = count))}>
          ${t("outlook.weeks", { count })}</button>`,
        )}
        <button class="quiet" type="button" aria-pressed=${as_table.value}
          onClick=${tap(() => (as_table.value = !as_table.value))}>${t("outlook.as_table")}</button>
      </div>
      <div class="wide side-by-side">${lines.map(
        (of_one) => html`<${Parameter} key=${of_one.parameter} lines=${of_one} next=${next} as_table=${as_table.value}
        basis=${basis_of(is_watched(of_one.parameter) ? advice.levels[of_one.parameter] : undefined)}
        now=${now.value} />`,
      )}</div>
      ${!as_table.value && html`<${Key} doubted=${lines.some(({ dots }) => dots.some((dot) => dot.doubted))} />`}
      ${ahead && html`<${Ready} ready=${ready(ahead.settled_h, asked.records.now_h, asked.start)} />`}
      <${HowMany} tank=${tank} />
      ${headroom && html`<${Processes} weeks=${headroom_by_week(headroom)} expected=${headroom.feed_g_day_expected} />`}
      <${Cautions} />
    <//>`;
}
