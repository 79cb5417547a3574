/** A bar above every page outside the Room place: what only the keeper can mend before this phone shares again. */
import { html } from "../vendor/preact.js";
import { waits_too_long } from "../advice/sharing/sharing_lines.js";
import { t, when } from "../i18n/words.js";
import { Icon } from "./icon.js";
import { is_installed, kept } from "./state/home_screen.js";
import { now, sharing } from "./state/live.js";

const WANTS_THE_KEEPER = ["signed-out", "ended", "upgrade"];

/** @param {{path: string}} props the page that is open */
export function Trouble({ path }) {
  const { problem, oldest, joined } = sharing();
  if (path.startsWith("/room") || path === "/join") return null;
  if (problem && WANTS_THE_KEEPER.includes(problem)) return html`<${Bar} to="/room" text=${t(`problem.${problem}`)} />`;
  // A browser's page may be cleared; the app on the home screen, and a storage that is kept, are not.
  const at_risk = joined || !(kept.value || is_installed());
  if (!at_risk || !waits_too_long(oldest, now.value)) return null;
  const since = { when: when(/** @type {string} */ (oldest), now.value) };
  return joined
    ? html`<${Bar} to="/room" text=${t("nudge.waiting", since)} />`
    : html`<${Bar} to="/room/install" text=${t("nudge.only_here", since)} />`;
}

/** @param {{to: string, text: string}} props */
const Bar = ({ to, text }) => html`<a class="bar trouble" href=${to}><${Icon} name="needs" size=${20} /><span
  class="grow">${text}</span></a>`;
