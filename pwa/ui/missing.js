/** The page of a link to something that this phone does not hold. */
import { html } from "../vendor/preact.js";
import { t } from "../i18n/words.js";
import { Page } from "./page.js";

/** @param {{up: string, why?: string}} props `why`: a text's key, where more is known than that it is not here */
export const Missing = ({ up, why = "missing.why" }) => html`
  <${Page} title=${t("missing.title")} place="round" up=${up} act=${html`<a class="main" href=${up}>${t("missing.back")}
    </a>`}>
    <p class="sentence">${t(why)}</p>
  <//>`;
