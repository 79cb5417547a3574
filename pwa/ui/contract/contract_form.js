/** The form of one calculation, drawn from its view. */
import { html } from "../../vendor/preact.js";
import { FormFields } from "./fields.js";
import { CONTRACT_LOOK } from "./looks.js";

/** @typedef {import("../../bench/form.js").FieldView | import("../../bench/form.js").ChoiceView} View */

/** @param {{form: View[]} & Omit<import("./fields.js").Hands, "look" | "leave">} props */
export const ContractForm = ({ form, ...hands }) => html`
  <form class="contract" autocomplete="off" onSubmit=${(/** @type {Event} */ event) => event.preventDefault()}>
    <${FormFields} views=${form} hands=${{ ...hands, look: CONTRACT_LOOK }} />
  </form>`;
