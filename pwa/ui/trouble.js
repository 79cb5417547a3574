/** A bar above every page outside the Room place: what only the keeper can mend before this phone shares again. */
import { html } from "../vendor/preact.js";
import { t } from "../i18n/words.js";
import { Icon } from "./icon.js";
import { sharing } from "./state/live.js";

const WANTS_THE_KEEPER = ["signed-out", "ended", "upgrade"];

/** @param {{path: string}} props the page that is open */
export function Trouble({ path }) {
  const { problem } = sharing();
  if (!problem || !WANTS_THE_KEEPER.includes(problem) || path.startsWith("/room") || path === "/join") return null;
  return html`<a class="bar trouble" href="/room"><${Icon} name="needs" size=${20} /><span class="grow">
    ${t(`problem.${problem}`)}</span></a>`;
}
