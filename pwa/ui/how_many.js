/** How many more animals a tank bears, in words: the one answer of `advice/life/how_many.js` on every screen. */
import { html } from "../vendor/preact.js";
import { how_many, open_of } from "../advice/life/how_many.js";
import { stock_of } from "../advice/life/stock.js";
import { of_tank } from "../advice/of_tank.js";
import { planned } from "../advice/setup/setting_up.js";
import { caution } from "../contracts.js";
import { short, t } from "../i18n/words.js";
import { figures_of } from "./contract/bench_tank.js";
import { KnownFrom } from "./contract/known_from.js";
import { outlook_for } from "./state/forecast.js";
import { all, now, room } from "./state/live.js";
import { grams_said, parameter_name } from "./words/figures.js";
import { sentence } from "./words/sentence.js";

/** @import { Advised } from "../types/advice.js" */
/** @import { Tank } from "../types/views.js" */
/** @import { By, Kind, Open, Told } from "../advice/life/how_many.js" */
/** @import { Counted } from "../advice/life/stock.js" */

/** The animals that live in a tank, by its records. @param {string} id */
export const inside_of = (id) => stock_of(of_tank(all("stock_change"), id), now.value).animals;

/**
 * The answer for a tank and the animals wanted for it, with the advice that it goes by.
 * @param {Tank} tank
 * @param {readonly Counted[]} [wanted]
 */
export function answer_for(tank, wanted = []) {
  const asking = { figures: figures_of(tank.id), present: inside_of(tank.id), wanted, own: all("own_species") };
  if (planned(tank)) return { told: how_many({ ...asking, open: [{ code: "not_filled" }] }), headroom: undefined };
  const { facts, forecast, advice } = outlook_for(tank);
  const { headroom } = forecast.answers;
  return { told: how_many({ ...asking, headroom, open: open_of({ advice, facts, forecast }) }), headroom, advice };
}

/** The section of a tank's page that says how many more of its animals may come. @param {{tank: Tank}} props */
export function HowMany({ tank }) {
  const { told, advice } = answer_for(tank);
  if (!told) return null;
  return html`
    <section class="section"><h2>${t("many.title")}</h2>
      ${
        told.missing
          ? html`<${Lacking} tank=${tank} missing=${told.missing} />`
          : html`<${Shown} told=${told} advice=${advice} />`
      }
      <${LeftOut} names=${told.left_out} />
    </section>`;
}

/** @param {{tank: Tank, missing: string[]}} props */
export const Lacking = ({ tank, missing }) => html`
  <p>${t("stock.bears_missing", { what: missing.join(", ") })}</p>
  ${room.value.may("tank") && html`<p><a class="quiet" href=${`/tank/${tank.id}/edit`}>${t("tank.edit")}</a></p>`}`;

/** @param {{told: Told, advice?: Advised}} props */
const Shown = ({ told, advice }) => html`
  <${Verdict} told=${told} advice=${advice} />
  ${told.invites && html`<${MoreOfEach} kinds=${told.kinds} />`}
  <p class="soft small">${weighed(told)}</p>
  ${told.stocking.answer.notes.map(
    (/** @type {string} */ note) => html`<p class="caution small" key=${note}>${note}</p>`,
  )}
  <p class="soft small">${caution("stocking_limit", "welfare")}</p>
  <${KnownFrom} name="stocking_limit" input=${told.stocking.input} answer=${told.stocking.answer} />`;

/**
 * Whether more may come, and if not, why.
 * @param {{told: Told, advice?: Advised}} props
 */
export const Verdict = ({ told, advice }) => html`
  <p class="sentence">${verdict(told)}</p>
  ${told.too_long.length > 0 && html`<p>${t("many.too_long", { names: told.too_long.join(", ") })}</p>`}
  <${Reasons} open=${told.open} advice=${advice} />`;

/** @param {Told} told */
function verdict({ over, young, open, invites, binds, kinds }) {
  if (over && young) return t("many.over_young");
  if (over) return t("many.over", { by: by_said(binds) });
  if (open.length > 0) return t("many.none_now");
  if (invites) return t("many.room");
  return t("many.full", { by: by_said(kinds[0].by) });
}

/** What is open, one line each. @param {{open: readonly Open[], advice?: Advised}} props */
export const Reasons = ({ open, advice }) =>
  open.length > 0 &&
  html`<ul class="why">${open.map((one) => html`<li key=${one.code}>${open_said(one, advice)}</li>`)}</ul>`;

/** @param {Open} one @param {Advised} [advice] */
function open_said(one, advice) {
  if (one.code === "state" && advice) return t("many.open_state", { what: sentence(advice, now.value) });
  if (one.code === "untested") return t("many.open_untested", { what: one.parameters.map(parameter_name).join(", ") });
  return t(`many.open_${one.code}`);
}

/** What limits it, in a word. @param {By} by */
export const by_said = (by) => t(`many.by_${by}`);

/** @param {{kinds: Kind[]}} props */
const MoreOfEach = ({ kinds }) => html`
  <table class="measured"><tbody>${kinds.map(
    ({ species, name, more, by }) => html`<tr key=${species}><th scope="row">${name}<span class="also">
      ${t("many.limited_by", { by: by_said(by) })}</span></th><td>${more === null ? "?" : short(more, 0)}</td></tr>`,
  )}</tbody></table>`;

/** Room and company are no weights: only what nitrogen or oxygen limits is said in grams. @param {Told} told */
const weighed = ({ present_g, limit_g, binds }) =>
  limit_g === null || !["nitrogen", "oxygen"].includes(binds)
    ? t("many.grams_unknown", { present: about_g(present_g) })
    : t("many.grams", { present: about_g(present_g), limit: about_g(limit_g) });

/** @param {{names: string[]}} props */
export const LeftOut = ({ names }) =>
  names.length > 0 && html`<p class="soft small">${t("stock.left_out", { names: names.join(", ") })}</p>`;

/** Grams of animals to two digits: no sum of them is more certain. @param {number} grams */
export const about_g = (grams) => grams_said(Number(grams.toPrecision(2)));
