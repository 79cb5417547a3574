/** One tank of the round: its state, its one sentence, its tasks of today, and what to do about it. */
import { html } from "../vendor/preact.js";
import { t } from "../i18n/words.js";
import { advice_at_once } from "./state/forecast.js";
import { now, room } from "./state/live.js";
import { is_last_word, use_held_height } from "./held_height.js";
import { Sentence, State, sentence } from "./words/sentence.js";
import { DueTasks } from "./tasks_due.js";

/**
 * @param {{tank: import("../types/views.js").Tank, place: number, short?: boolean}} props `short`: the sentence alone,
 * where there are many
 */
export function Stop({ tank, place, short = false }) {
  const advice = advice_at_once(tank)?.advice;
  const changing = advice?.act === "change";
  const room_taken = use_held_height(
    `${short ? "many" : "round"} ${tank.id}`,
    advice !== undefined && is_last_word(advice),
  );
  return html`
    <li class="entry">
      <span class="in-margin" aria-hidden="true">${place}</span>
      <div>
        <h2><a class="tank-name" href=${`/tank/${tank.id}`}>${tank.name}</a></h2>
        <div class="room-taken" ref=${room_taken}>
          ${
            advice &&
            html`<${State} advice=${advice} now=${now.value} />
          ${
            short
              ? html`<p class="sentence">${sentence(advice, now.value)}</p>`
              : html`<${Sentence} advice=${advice} now=${now.value} brief />`
          }`
          }
        </div>
        <${DueTasks} tank=${tank.id} label=${t("tasks.of", { tank: tank.name })} />
        <div class="row">
          ${
            room.value.may("reading") &&
            html`<a class=${
              changing || (advice?.act === "nothing" && !advice.test_due) ? "quiet tall" : "main grow"
            } href=${`/tank/${tank.id}/test`}>${t("test.do")}</a>`
          }
          ${
            changing &&
            room.value.may("water_change") &&
            html`<a class="main grow" href=${`/tank/${tank.id}/change`}>
            ${t("change.do")}</a>`
          }
        </div>
      </div>
    </li>`;
}
