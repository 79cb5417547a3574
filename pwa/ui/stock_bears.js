/** How many more of its animals a tank can bear, and which of them get on, in the words of those calculations. */
import { html } from "../vendor/preact.js";
import { of_tank } from "../advice/of_tank.js";
import { animals_for, as_animals, has_length, stock_of } from "../advice/life/stock.js";
import { fitting } from "../bench/tank_figures.js";
import {
  InvalidInput,
  caution,
  choice_label,
  contract_of,
  contracts,
  entry_field,
  find_field,
  output_of,
  run,
} from "../contracts.js";
import { short, t } from "../i18n/words.js";
import { figures_of } from "./contract/bench_tank.js";
import { grams_said } from "./words/figures.js";
import { Icon } from "./icon.js";
import { KnownFrom } from "./contract/known_from.js";
import { all, now, room } from "./state/live.js";

/** @import { Answer, Calculations } from "../types/contract.js" */
/** @import { Tank } from "../types/views.js" */
/** @param {{tank: Tank}} props */
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
        <p>${t("stock.bears_by", { by: choice_label(output_of("stocking_limit", "binding"), answer.binding) })} ${t(
          "stock.bears_band",
          {
            low: about_g(answer.nitrogen_low_g),
            high: about_g(answer.nitrogen_high_g),
          },
        )}</p>
        ${answer.notes.map((/** @type {string} */ note) => html`<p class="caution small" key=${note}>${note}</p>`)}
        <table class="measured"><caption class="soft small">${t("stock.more_of_each")}</caption><tbody>
          ${answer.more.map(
            ({ name, more }) => html`<tr key=${name}><th scope="row">${name}</th><td>
            ${short(more, 0)}</td></tr>`,
          )}</tbody></table>
        <${LeftOut} names=${left_out} />
        <p class="soft small">${caution("stocking_limit", "welfare")}</p>
        <${KnownFrom} name="stocking_limit" input=${input} answer=${answer} />`
      }
    </section>`;
}

/** @param {{tank: Tank}} props */
export function Together({ tank }) {
  const asked = ask("compatibility", tank);
  if (!asked?.answer) return null;
  const { input, answer, left_out } = asked;
  const findings = output_of("compatibility", "findings");
  return html`
    <section class="section"><h2>${contracts().compatibility.title}</h2>
      <p class="sentence">${choice_label(output_of("compatibility", "verdict"), answer.verdict)}</p>
      <ul class="lines">${answer.findings.map(
        (one) => html`
        <li class="line" key=${[one.kind, one.a, one.b].join()}><span><b>${one.a}${one.b && html` · ${one.b}`}</b><br />
          ${choice_label(entry_field(findings, "kind"), one.kind)}
          <br /><span class="soft small row tight"><${Icon} name=${one.severity === "bar" ? "needs" : "note"} size=${16}
            />${choice_label(entry_field(findings, "severity"), one.severity)}</span></span></li>`,
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
 * A calculation about the animals in the tank, with the tank's own figures; null if no animal's length is known.
 * @template {"stocking_limit" | "compatibility"} K
 * @param {K} name
 * @param {Tank} tank
 * @returns {{input: object, answer: Answer<K> | null, missing: string[], left_out: string[]} | null} `missing`: labels
 * of
 * figures that the tank lacks
 */
function ask(name, tank) {
  const { animals } = stock_of(of_tank(all("stock_change"), tank.id), now.value);
  const entries = as_animals(animals, all("own_species"));
  const known = entries.filter(has_length);
  const spec = contract_of(name);
  if (known.length === 0) return null;
  const input = /** @type {Calculations[K]["input"]} */ ({
    ...fitting(
      spec.inputs.filter((one) => one.name !== "animals"),
      figures_of(tank.id),
    ),
    animals: animals_for(name, known),
  });
  const left_out = entries.filter((one) => !has_length(one)).map((one) => one.name ?? one.species);
  try {
    return { input, answer: run(name, input), missing: [], left_out };
  } catch (error) {
    if (!(error instanceof InvalidInput)) throw error;
    const label = (/** @type {string} */ field) => find_field(spec.inputs, field.split(".")[0])?.label ?? field;
    return { input, answer: null, missing: [...new Set(error.errors.map(({ field }) => label(field)))], left_out };
  }
}

/** Grams of animals to two digits: no sum of them is more certain. @param {number} grams */
export const about_g = (grams) => grams_said(Number(grams.toPrecision(2)));
