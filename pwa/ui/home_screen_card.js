/** Below the Round of a phone's browser, until it is answered: why the app belongs on the home screen. */
import { html } from "../vendor/preact.js";
import { t } from "../i18n/words.js";
import { answered, is_installed, platform } from "./state/home_screen.js";
import { tap } from "./state/tap.js";

export function HomeScreenCard() {
  if (answered.value || is_installed() || platform() === "other") return null;
  const answer = () => (answered.value = true);
  return html`
    <section class="section beside-margin" aria-label=${t("install.title")}>
      <p>${t("install.why")}</p>
      <div class="row"><a class="quiet" href="/room/install" onClick=${answer}>${t("install.show")}</a>
        <button class="quiet" type="button" onClick=${tap(answer)}>${t("install.not_now")}</button></div>
    </section>`;
}
