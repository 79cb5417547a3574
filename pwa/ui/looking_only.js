/** A page that writes, opened by who may only look. */
import { html } from "../vendor/preact.js";
import { t } from "../i18n/words.js";
import { Page } from "./page.js";

/** @param {{title: string, up: string}} props */
export const LookingOnly = ({ title, up }) => html`
  <${Page} title=${title} up=${up}><p class="sentence">${t("looking_only")}</p><//>`;
