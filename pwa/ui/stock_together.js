/** Which of a tank's animals get on, in the words of `compatibility`. */
import { html } from "../vendor/preact.js";
import { choice_label, contracts, entry_field, output_of } from "../contracts.js";
import { answer_for } from "./how_many.js";
import { KnownFrom } from "./contract/known_from.js";
import { Icon } from "./icon.js";

/** @param {{tank: import("../types/views.js").Tank}} props */
export function Together({ tank }) {
  const { told } = answer_for(tank);
  if (!told || told.missing) return null;
  const { input, answer } = told.company;
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
      <${KnownFrom} name="compatibility" input=${input} answer=${answer} />
    </section>`;
}
