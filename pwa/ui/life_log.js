/** The records of a tank's animals or plants, newest first; each can be corrected or taken out. */
import { html, useSignal } from "../vendor/preact.js";
import { of_tank } from "../advice/of_tank.js";
import { LIFE_PAGE, correct_path } from "../advice/life/life_writes.js";
import { t, when } from "../i18n/words.js";
import { Icon } from "./icon.js";
import { remove_life } from "./life_entry.js";
import { life_said } from "./words/life_said.js";
import { all, now, room } from "./state/live.js";
import { tap } from "./state/tap.js";

/** @import { View } from "../types/views.js" */

const PAGE = 8;

/** @param {{tank: string, kind: "stock_change" | "planting"}} props */
export function LifeLog({ tank, kind }) {
  const shown = useSignal(PAGE);
  const log = [...of_tank(all(kind), tank)].reverse();
  const may = room.value.may(kind);
  return (
    log.length > 0 &&
    html`
    <section class="section"><h2>${t("life.log")}</h2>
      <ol class="lines">${log.slice(0, shown.value).map((one) => {
        const named = { what: `${life_said(one)}, ${when(one.at, now.value)}` };
        return html`<li class="line logged" key=${one.id}>
          <div class="grow"><time class="soft small" datetime=${one.at}>${when(one.at, now.value)}</time><br />
            ${life_said(one)}${one.note && html`<br /><span class="soft small">${one.note}</span>`}
            ${
              one.change === "death" &&
              html`<br /><a class="quiet small" href=${`/trace?tank=${tank}&days=30`}>
              ${t("trace.who")}</a>`
            }</div>
          ${
            may &&
            html`
            <a class="quiet square plain" href=${correct_path(one, all(kind), `/tank/${tank}/${LIFE_PAGE[kind]}`)}
              aria-label=${t("life.correct_named", named)}><${Icon} name="note" size=${20} /></a>
            <button class="quiet square" type="button" aria-label=${t("remove_named", named)}
              onClick=${tap(() => void remove_life(one))}><${Icon} name="remove" size=${20} /></button>`
          }
        </li>`;
      })}</ol>
      ${
        log.length > shown.value &&
        html`<p class="center"><button class="quiet" type="button"
        onClick=${tap(() => (shown.value += PAGE))}>${t("history.more")}</button></p>`
      }
    </section>`
  );
}

/**
 * The entry that a form corrects; it stays on record behind the correction.
 * @param {{one: View<"stock_change"> | View<"planting"> | null}} props
 */
export const Stands = ({ one }) =>
  one &&
  html`<p class="soft">
    ${t("correct.stands", { said: life_said(one), when: when(one.at, now.value) })} ${t("correct.kept")}</p>`;
