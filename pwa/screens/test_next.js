/** The home screen's shortcut to a test: of the first tank that wants one, else of the first in the walk. */
import { html, useEffect } from "../vendor/preact.js";
import { walk } from "../advice/facts.js";
import { t } from "../i18n/words.js";
import { advice_at_once } from "../ui/state/forecast.js";
import { live_room } from "../ui/state/live.js";
import { Page } from "../ui/page.js";
import { go } from "../ui/state/router.js";

export function TestNext() {
  const tanks = walk(live_room);
  const next = tanks.find((tank) => advice_at_once(tank)?.advice.test_due) ?? tanks[0];
  useEffect(() => {
    if (next) go(`/tank/${next.id}/test`, { replace: true });
  }, [next?.id]);
  return html`<${Page} title=${t("test.do")} place="round">
    ${!next && html`<p class="sentence">${t("round.empty")}</p>`}
  <//>`;
}
