/**
 * What a tank can bear of the animals that are in it, and who gets on with whom, in the words of those calculations.
 */
import { html } from "../vendor/preact.js";
import { of_tank } from "../advice/of_tank.js";
import { animals_for, as_animals, has_length, stock_of } from "../advice/life/stock.js";
import { value_text } from "../bench/result.js";
import { marks_of } from "../figures/number_text.js";
import { fitting } from "../bench/tank_figures.js";
import {
  InvalidInput,
  caution,
  contract_of,
  contracts,
  entry_field,
  find_field,
  output_of,
  run_named,
} from "../contracts.js";
import { chosen, short, t } from "../i18n/words.js";
import { figures_of } from "./contract/bench_tank.js";
import { grams_said } from "./words/figures.js";
import { Icon } from "./icon.js";
import { KnownFrom } from "./contract/known_from.js";
import { all, now, room } from "./state/live.js";

/** @param {{tank: any}} props */
export function Bears({ tank }) {
  const asked = ask("stocking_limit", tank);
  if (!asked) return null;
  const { input, answer, missing, left_out } = asked;
  return html`
    <section class="section"><h2>${t("stock.bears")}</h2>
      ${
        missing.length > 0 &&
        html`<p>${t("stock.bears_missing", { what: missing.join(", ") })}</p>
        ${
          room.value.may("tank") &&
          html`<p><a class="quiet" href=${`/tank/${tank.id}/edit`}>${t("tank.edit")}</a>
          </p>`
        }`
      }
      ${
        answer &&
        html`
        <p class="sentence">
          ${t(answer.present_g > answer.limit_g ? "stock.bears_over" : "stock.bears_room", {
            present: about_g(answer.present_g),
            limit: about_g(answer.limit_g),
          })}</p>
        <p>${t("stock.bears_by", { by: said("stocking_limit", "binding", answer.binding) })} ${t("stock.bears_band", {
          low: about_g(answer.nitrogen_low_g),
          high: about_g(answer.nitrogen_high_g),
        })}</p>
        ${answer.notes.map((/** @type {string} */ note) => html`<p class="caution small" key=${note}>${note}</p>`)}
        <table class="measured"><caption class="soft small">${t("stock.more_of_each")}</caption><tbody>
          ${answer.more.map(
            (/** @type {any} */ one) => html`<tr key=${one.name}><th scope="row">${one.name}</th><td>
            ${short(one.more, 0)}</td></tr>`,
          )}</tbody></table>
        <${LeftOut} names=${left_out} />
        <p class="soft small">${caution("stocking_limit", "welfare")}</p>
        <${KnownFrom} name="stocking_limit" input=${input} answer=${answer} />`
      }
    </section>`;
}

/** @param {{tank: any}} props */
export function Together({ tank }) {
  const asked = ask("compatibility", tank);
  if (!asked?.answer) return null;
  const { input, answer, left_out } = asked;
  return html`
    <section class="section"><h2>${contracts().compatibility.title}</h2>
      <p class="sentence">${said("compatibility", "verdict", answer.verdict)}</p>
      <ul class="lines">${answer.findings.map(
        (/** @type {any} */ one) => html`
        <li class="line" key=${[one.kind, one.a, one.b].join()}><span><b>${one.a}${one.b && html` · ${one.b}`}</b><br />
          ${finding("kind", one.kind)}
          <br /><span class="soft small row tight"><${Icon} name=${one.severity === "bar" ? "needs" : "note"} size=${16}
            />${finding("severity", one.severity)}</span></span></li>`,
      )}</ul>
      ${answer.notes.map((/** @type {string} */ note) => html`<p class="caution small" key=${note}>${note}</p>`)}
      <${LeftOut} names=${left_out} />
      <${KnownFrom} name="compatibility" input=${input} answer=${answer} />
    </section>`;
}

/** @param {{names: string[]}} props */
const LeftOut = ({ names }) =>
  names.length > 0 && html`<p class="soft small">${t("stock.left_out", { names: names.join(", ") })}</p>`;

/**
 * A calculation about the animals that are in the tank, by its own figures.
 * @param {import("../advice/life/stock.js").Weighing} name
 * @param {any} tank
 * @returns {{input: any, answer: any, missing: string[], left_out: string[]} | null} `missing`: labels of figures that
 * the tank lacks
 */
function ask(name, tank) {
  const { animals } = stock_of(of_tank(all("stock_change"), tank.id), now.value);
  const entries = as_animals(animals, all("own_species"));
  const known = entries.filter(has_length);
  const spec = contract_of(name);
  if (known.length === 0) return null;
  const input = {
    ...fitting(
      spec.inputs.filter((one) => one.name !== "animals"),
      figures_of(tank.id),
    ),
    animals: animals_for(name, known),
  };
  const left_out = entries.filter((one) => !has_length(one)).map((one) => one.name ?? one.species);
  try {
    return { input, answer: run_named(name, input), missing: [], left_out };
  } catch (no) {
    if (!(no instanceof InvalidInput)) throw no;
    const label = (/** @type {string} */ field) => find_field(spec.inputs, field.split(".")[0])?.label ?? field;
    return { input, answer: null, missing: [...new Set(no.errors.map(({ field }) => label(field)))], left_out };
  }
}

/** Grams of animals to two figures: no sum of them is surer. @param {number} grams */
export const about_g = (grams) => grams_said(Number(grams.toPrecision(2)));
/**
 * A choice among a contract's answers in its own words.
 * @param {string} name
 * @param {string} output
 * @param {any} value
 */
const said = (name, output, value) =>
  value_text(find_field(contract_of(name).outputs, output), value, { marks: marks_of(chosen()) });
/** @param {string} field @param {any} value */
const finding = (field, value) => value_text(entry_field(output_of("compatibility", "findings"), field), value);
