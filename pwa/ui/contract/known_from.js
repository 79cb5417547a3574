/** Where a figure comes from: its working, its uncertainty, its sources, behind one tap each. */
import { html } from "../../vendor/preact.js";
import { working_steps } from "../../bench/working.js";
import { table } from "../../calc/tables.js";
import { contract_of } from "../../contracts.js";
import { t } from "../../i18n/words.js";
import { measures } from "../state/measures.js";
import { Sources, Working } from "./answer_block.js";

/** @param {{name: string, input: object, answer: object}} props of a calculation that was run */
export function KnownFrom({ name, input, answer }) {
  const spec = contract_of(name);
  const manner = { system: measures.value, yes: t("bench.yes"), no: t("bench.no") };
  const sources = spec.sources.map((/** @type {string} */ key) => ({ key, ...table("sources").sources[key] }));
  return html`
    <${Working} steps=${working_steps(spec, input, answer, manner)} />
    <${Sources} spec=${spec} sources=${sources} />`;
}
