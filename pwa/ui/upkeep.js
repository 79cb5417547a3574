/** The server's daily backups, for the owners of the room: the last good one, and what of them failed. */
import { html, useEffect, useSignal } from "../vendor/preact.js";
import { upkeep } from "../data/people.js";
import { t, when } from "../i18n/words.js";
import { Icon } from "./icon.js";
import { use_ask } from "./state/ask.js";
import { now, online, room } from "./state/live.js";

/** Nothing is shown until the server has answered: an older one knows no such question. */
export function Upkeep() {
  const found = useSignal(/** @type {import("../data/people.js").Upkeep | null} */ (null));
  const { ask } = use_ask();
  useEffect(() => void ask(async () => (found.value = await upkeep(room.value))), [online.value, room.value]);
  if (!found.value) return null;
  const { automatic, last_good_at, faults } = found.value.backups;
  return html`
    <section class="section" aria-label=${t("upkeep.title")}>
      <h2>${t("upkeep.title")}</h2>
      ${faults.map(
        (fault) => html`
      <p class="wrong" key=${fault}><${Icon} name="needs" size=${20} /><span>${fault_said(fault)}</span></p>`,
      )}
      ${faults.length > 0 && html`<p>${t("upkeep.tell")}</p>`}
      <p class="soft">${
        !automatic
          ? t("upkeep.off")
          : last_good_at
            ? t("upkeep.last", { when: when(last_good_at, now.value) })
            : t("upkeep.none_yet")
      }</p>
    </section>`;
}

const SAID = new Set([
  "data-damaged",
  "disk-full",
  "folder",
  "not-whole",
  "backup-damaged",
  "missing",
  "too-large",
  "late",
]);

/** A newer server may know faults that this app has no words for. @param {string} fault */
const fault_said = (fault) => t(`upkeep.${SAID.has(fault) ? fault : "failed"}`);
