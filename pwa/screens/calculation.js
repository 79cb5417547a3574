/** One calculation of the bench: its form from the contract, its answer at once, its working and its sources. */
import { html, useSignal } from "../vendor/preact.js";
import { resultRows } from "../bench/result.js";
import { InvalidInput, contracts, run } from "../contracts.js";
import { chosen, t } from "../i18n/words.js";
import { marksOf } from "../bench/number_text.js";
import { useDraft } from "../ui/draft.js";
import { Fields, Wrong, payload_of } from "../ui/form.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { tap } from "../ui/tap.js";

/** @param {{name: string}} props */
export function Calculation({ name }) {
  const known = Object.hasOwn(contracts(), name);
  const kept = useDraft(`bench.${name}`, () => ({}));
  const tried = useSignal(false);
  if (!known) return html`<${Missing} up="/bench" />`;
  const spec = contracts()[name];
  const { answer, errors } = answered(spec, kept.value);
  const own = spec.inputs.map((/** @type {any} */ one) => one.name);
  return html`
    <${Page} title=${spec.title} up="/bench"
      act=${html`<button class="quiet tall" type="button" onClick=${tap(() => ((kept.value = {}), (tried.value = false)))}>${t("bench.clear")}</button>
        ${answer ? html`<a class="main" href="#answer" onClick=${(/** @type {Event} */ e) => { e.preventDefault(); document.getElementById("answer")?.scrollIntoView(); }}>${t("bench.answer")}</a>`
          : html`<button class="main" type="button" onClick=${tap(() => (tried.value = true))}>${t("bench.answer")}</button>`}`}>
      <p class="soft">${spec.purpose}</p>
      <${Fields} specs=${spec.inputs} raw=${kept.value} onRaw=${(/** @type {any} */ raw) => (kept.value = raw)} errors=${errors} tried=${tried.value} />
      ${tried.value && errors.filter((one) => !own.includes(one.field.split(".")[0])).map((one) => html`<${Wrong} error=${one} />`)}
      ${answer && html`<${Answer} spec=${spec} answer=${answer} />`}
      ${spec.cautions.map((/** @type {string} */ text) => html`<p class="caution small" key=${text}>${text}</p>`)}
    <//>`;
}

/** @param {{spec: any, answer: any}} props */
const Answer = ({ spec, answer }) => html`
  <section class="section" id="answer" aria-live="polite">
    <table class="measured"><caption><h2>${t("bench.answer")}</h2></caption><tbody>
      ${resultRows(spec, answer, { marks: marksOf(chosen()) }).map((row) => html`
        <tr key=${row.name}><th scope="row">${row.label}</th>
          <td>${row.rows ? row.rows.map((inner) => html`<div>${inner.map((one) => `${one.label} ${one.text} ${one.unit}`).join(", ")}</div>`) : html`<span class="big">${row.text}</span> ${row.unit}`}</td></tr>`)}
    </tbody></table>
    ${answer.notes.map((/** @type {string} */ note) => html`<p key=${note}>${note}</p>`)}
    <p class="soft small">${spec.uncertainty}</p>
    <details class="more"><summary>${t("bench.sources")}</summary><ul class="why small">${answer.sources.map((/** @type {any} */ one) => html`<li key=${one.key}>${one.title} (${one.provenance})</li>`)}</ul></details>
  </section>`;

/** @param {any} spec @param {any} raw @returns {{answer?: any, errors: any[]}} */
function answered(spec, raw) {
  try {
    return { answer: run(spec.name, payload_of(spec.inputs, raw)), errors: [] };
  } catch (no) {
    if (!(no instanceof InvalidInput)) throw no;
    return { errors: no.errors };
  }
}
