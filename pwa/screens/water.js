/** Which source water and which dechlorinator a tank uses. */
import { html } from "../vendor/preact.js";
import { t } from "../i18n/words.js";
import { get } from "../ui/state/live.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { WaterPick } from "../ui/water_pick.js";

/** @param {{id: string}} props */
export function Water({ id }) {
  const tank = get("tank", id);
  if (!tank) return html`<${Missing} up="/tanks" />`;
  return html`
    <${Page} title=${t("water.short")} up=${`/tank/${id}`} aside=${html`<span class="soft">${tank.name}</span>`}>
      <${WaterPick} tank=${tank} here=${`/tank/${id}/water`} />
    <//>`;
}
