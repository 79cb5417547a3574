/** What a link names but this phone does not hold. */
import { html } from "../vendor/preact.js";
import { t } from "../i18n/words.js";
import { Page } from "./page.js";

/** @param {{up: string}} props */
export const Missing = ({ up }) => html`
  <${Page} title=${t("missing.title")} place="round" up=${up} act=${html`<a class="main" href=${up}>${t("missing.back")}</a>`}>
    <p class="sentence">${t("missing.why")}</p>
  <//>`;
