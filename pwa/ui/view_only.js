/** What a viewer sees instead of a form. */
import { html } from "../vendor/preact.js";
import { t } from "../i18n/words.js";
import { Page } from "./page.js";

/** @param {{title: string, up: string, why?: string}} props `why`: a text's key, where one may write other things */
export const LookingOnly = ({ title, up, why = "looking_only" }) => html`
  <${Page} title=${title} up=${up}><p class="sentence">${t(why)}</p><//>`;
