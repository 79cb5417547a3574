/** A dose for a group of tanks: one label, each tank's own amount for all its water, recorded by one tap. */
import { html, useSignal } from "../vendor/preact.js";
import { label_dose } from "../advice/journal/dosing.js";
import { walk } from "../advice/facts.js";
import { InvalidInput } from "../contracts.js";
import { t } from "../i18n/words.js";
import { all, live_room, room } from "../ui/state/live.js";
import { Page } from "../ui/page.js";
import { new_id, record } from "../ui/state/record.js";
import { go } from "../ui/state/router.js";
import { tap } from "../ui/state/tap.js";
import { LookingOnly } from "../ui/view_only.js";
import { dose_said, litres_said } from "../ui/words/figures.js";

/** @import { Label } from "../types/advice.js" */
/** @import { Tank } from "../types/views.js" */

/** @param {{place: string}} props */
export function DoseGroup({ place }) {
  const picked = useSignal("");
  const left_out = useSignal(/** @type {string[]} */ ([]));
  if (!room.value.may("dose")) return html`<${LookingOnly} title=${t("group_dose.title")} up="/" />`;
  const tanks = walk(live_room).filter((tank) => (tank.place?.trim() ?? "") === place);
  const labels = all("label").filter(({ basis }) => basis === "whole_tank");
  const label = labels.find(({ id }) => id === picked.value) ?? (labels.length === 1 ? labels[0] : null);
  const doses = label ? tanks.flatMap((tank) => dose_of(tank, label)) : [];
  const dosed = doses.filter(({ tank }) => !left_out.value.includes(tank.id));
  const switch_one = (/** @type {string} */ id) =>
    (left_out.value = left_out.value.includes(id)
      ? left_out.value.filter((other) => other !== id)
      : [...left_out.value, id]);
  return html`
    <${Page} title=${t("group_dose.title")} up="/"
      aside=${html`<span class="soft">${place || t("many.no_place")}</span>`}
      act=${
        label &&
        html`<button class="main" type="button" disabled=${dosed.length === 0}
        onClick=${tap(() => void log(label, dosed))}>${t("group_dose.log", { count: dosed.length })}</button>`
      }>
      ${
        labels.length === 0
          ? html`<p class="sentence">${t("group_dose.none")}</p>
          <p><a class="quiet" href="/room/label/new">${t("water.new_label")}</a></p>`
          : html`<section class="section"><h2>${t("group_dose.which")}</h2><div class="tiles two short">${labels.map(
              (one) => html`<button key=${one.id} type="button" aria-pressed=${one.id === label?.id}
              onClick=${tap(() => (picked.value = one.id))}>${one.name}</button>`,
            )}</div></section>`
      }
      ${
        label &&
        html`<section class="section"><h2>${t("group_dose.tanks")}</h2><div class="tiles two short">${doses.map(
          ({ tank, amount, unit }) => html`<button key=${tank.id} type="button"
          aria-pressed=${!left_out.value.includes(tank.id)}
          onClick=${tap(() => switch_one(tank.id))}><b>${tank.name}</b>
          <span class="soft small">${dose_said({ amount, unit })} · ${litres_said(tank.water_l)}</span></button>`,
        )}</div></section>
        <p class="caution small">${t("dosing.label_first")}</p>`
      }
    <//>`;
}

/** @param {Tank} tank @param {Label} label */
function dose_of(tank, label) {
  try {
    return [{ tank, ...label_dose(label, tank.water_l) }];
  } catch (error) {
    if (error instanceof InvalidInput) return [];
    throw error;
  }
}

/** @param {Label} label @param {{tank: Tank, amount: number, unit: string}[]} dosed */
async function log(label, dosed) {
  const at = room.value.now();
  const writes = dosed.map(({ tank: { id: tank, water_l: for_litres }, amount, unit }) => ({
    type: /** @type {const} */ ("put"),
    kind: "dose",
    id: new_id(),
    fields: { tank, at, label: label.id, what: label.name, amount, unit, for_litres },
  }));
  if (await record(writes, t("group_dose.saved", { count: writes.length, label: label.name })))
    go("/", { replace: true });
}
