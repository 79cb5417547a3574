/**
 * The answer of a calculation inside a screen: the figures asked for, notes, cautions, and its sources behind one tap.
 */
import { html } from "../../vendor/preact.js";
import { label_of } from "../../bench/answer.js";
import { marks_of } from "../../figures/number_text.js";
import { result_rows } from "../../bench/result.js";
import { working_steps } from "../../bench/working.js";
import { table } from "../../calc/tables.js";
import { cautions_of, contract_of, find_field } from "../../contracts.js";
import { chosen, t } from "../../i18n/words.js";
import { AnswerFigures, Sources, Working } from "./answer_block.js";
import { Icon } from "../icon.js";
import { measures } from "../state/measures.js";
import { wrong_said } from "../words/refusal_said.js";

/** @typedef {import("../../contracts.js").CalculationName} CalculationName */
/** @typedef {import("../../contracts.js").Calculations} Calculations */
/** @typedef {ReturnType<typeof import("../../advice/setup/setting_up.js").asked>} Asked */

/**
 * @template {CalculationName} K
 * @param {{name: K, found: Asked, show: string[],
 *   cautions?: Calculations[K]["caution"][]}} props
 * `found`: what asked() gave; `show`: its outputs in this order, the first one large; `cautions`: the codes of those to
 * show, all if left out
 */
export function Calculated({ name, found, show, cautions }) {
  const spec = contract_of(name);
  const system = measures.value;
  const manner = { system, marks: marks_of(chosen()), yes: t("bench.yes"), no: t("bench.no") };
  const rows = found.answer ? result_rows(spec, found.answer, manner) : [];
  const wanted = show.flatMap((output) => rows.filter((row) => row.name === output));
  return html`
    <section class="section answer" aria-label=${spec.title}>
      ${
        found.answer
          ? html`<${AnswerFigures} rows=${wanted} notes=${found.answer.notes} />`
          : found.errors.map(
              (one) =>
                html`<p class="wrong" key=${one.field}><${Icon} name="needs" size=${20} /><span>
                  ${label_of(spec, one.field, manner.marks)} ${wrong_said(
                    find_field(spec.inputs, one.field),
                    one,
                  )}</span></p>`,
            )
      }
      ${cautions_of(name, cautions).map(
        (text) => html`<p class="caution small" key=${text}>
        ${text}</p>`,
      )}
      ${found.answer && html`<${Working} steps=${working_steps(spec, found.payload, found.answer, manner)} />`}
      <${Sources} spec=${spec}
        sources=${spec.sources.map((/** @type {string} */ key) => ({ key, ...table("sources").sources[key] }))} />
    </section>`;
}
