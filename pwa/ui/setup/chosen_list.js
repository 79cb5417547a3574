/** What was chosen at a step and how many of each; a kind whose count is 0 can be taken out. */
import { html } from "../../vendor/preact.js";
import { t } from "../../i18n/words.js";
import { Icon } from "../icon.js";
import { tap } from "../state/tap.js";
import { StepRow } from "../step_row.js";

const MOST = 500;

/**
 * @param {{chosen: {species: string, count: number}[], named: (species: string) => string,
 * about: (species: string) => string, on_count: (species: string, count: number) => void,
 * on_remove: (species: string) => void}} props
 */
export const ChosenList = ({ chosen, named, about, on_count, on_remove }) =>
  chosen.map(
    ({ species, count }) => html`
    <div class="chosen" key=${species}>
      <${StepRow} label=${named(species)} also=${about(species)} max=${MOST} value=${count}
        on_value=${(/** @type {number} */ value) => on_count(species, value)} />
      ${
        count === 0 &&
        html`<button class="quiet" type="button" onClick=${tap(() => on_remove(species))}><${Icon} name="remove"
          size=${20} />${t("remove_named", { what: named(species) })}</button>`
      }
    </div>`,
  );

/**
 * Kinds that fit, to be chosen by a tap.
 * @param {{kinds: string[], named: (species: string) => string, about: (species: string) => string,
 * on_pick: (species: string) => void}} props
 */
export const FittingList = ({ kinds, named, about, on_pick }) => html`
  <ul class="lines">${kinds.map(
    (species) => html`
    <li key=${species}><button class="line whole" type="button" onClick=${tap(() => on_pick(species))}><span
      class="grow">${named(species)}<br /><span class="soft small">${about(species)}</span></span><${Icon} name="plus"
      /></button></li>`,
  )}</ul>`;
