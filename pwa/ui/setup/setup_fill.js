/**
 * A step of setting up a tank, the first filling: the litres that go in, the dechlorinator for them, and the plants.
 */
import { html, useSignal } from "../../vendor/preact.js";
import { brought } from "../../advice/level.js";
import { dose_for, dose_input } from "../../advice/litres.js";
import { asked, said_at, volume_input } from "../../advice/setup/setting_up.js";
import { caution, input_of } from "../../contracts.js";
import { t } from "../../i18n/words.js";
import { Calculated } from "../contract/calculated.js";
import { FigureRows } from "../figure_rows.js";
import { dose_said, litres_said } from "../words/figures.js";
import { get, room } from "../state/live.js";
import { new_id } from "../state/record.js";
import { plant_name } from "./setup_plants.js";
import { Next, SetupStep, use_step } from "./setup_step.js";
import { WaterPick } from "../water_pick.js";
import { with_tick } from "../state/field_text.js";

/** @import { LabelDose } from "../../types/advice.js" */
/** @import { Tank } from "../../types/views.js" */
/** @import { Write } from "../state/record.js" */
/** @typedef {{species: string, portions: number}} Portions */

/** @param {{tank: Tank}} props */
export function FillStep({ tank }) {
  const { raw, said, set, save, problem } = use_step(tank, "fill");
  const busy = useSignal(false);
  const found = asked("volume", volume_input(tank, said.metered_l));
  const litres = found.answer?.water_l ?? 0;
  const source = get("source_water", tank.source_water);
  const label = get("label", tank.dechlorinator);
  const dose = litres ? dose_for({ tank: { ...tank, water_l: litres }, source, label }, litres) : null;
  /** @type {Portions[]} */ const listed = said_at(tank, "plants").list;
  const plants = listed.filter(({ portions }) => portions > 0);
  const metered = input_of("volume", "metered_l");
  const parts = { litres: whole(litres_said(litres)), dose: dose?.amount !== undefined ? whole(dose_said(dose)) : "" };

  const log = async () => {
    if (!found.answer) return;
    busy.value = true;
    const at = room.value.now();
    const freed = brought(source, "total_ammonia", label);
    const more = [
      ...dose_writes(tank, at, dose, litres, freed),
      ...(raw.plants_in ? planting_writes(tank, at, plants) : []),
    ];
    const { water_l, gross_l } = found.answer;
    await save(
      "done",
      { measures: found.payload, water_l, gross_l, started_at: at },
      { more, words: t("setup.filled", { tank: tank.name, ...parts }) },
    );
    busy.value = false;
  };
  return html`
    <${SetupStep} step="fill" name=${tank.name} up=${`/tank/${tank.id}`} problem=${problem}
      act=${html`<${Next} disabled=${!found.answer || busy.value} onClick=${() => void log()}>
        ${t(dose?.amount !== undefined ? "setup.log_fill_dose" : "setup.log_fill", parts)}<//>`}>
      <p class="caution">${caution("heater_power", "electricity")}</p>
      <p>${t("setup.fill_why")}</p>
      <${Calculated} name="volume" found=${found} show=${["water_l", "gross_l"]} />
      <${FigureRows} specs=${[metered]} raw=${raw} on_raw=${set} wrong=${found.errors} />
      ${
        plants.length > 0 &&
        html`
        <label class="check"><input type="checkbox" checked=${Boolean(raw.plants_in)}
          onChange=${with_tick((plants_in) => set({ plants_in }))} />
          ${t("setup.plants_in", { count: plants.length })}</label>
        <p class="soft small">${plants.map(({ species }) => plant_name(species)).join(", ")}</p>`
      }
      <${WaterPick} tank=${tank} here=${`/tank/${tank.id}/setup/fill`} />
      <${Dose} dose=${dose} payload=${
        dose?.amount === undefined ? null : dose_input({ water_l: litres }, source, dose.label, litres)
      } />
    <//>`;
}

/**
 * The record of the dechlorinator that goes in with the water, if any is known.
 * @param {Tank} tank @param {string} at @param {LabelDose | null} dose @param {number} litres
 * @param {number} freed ammonia that it frees from chloramine, mg N/L
 * @returns {Write[]}
 */
function dose_writes(tank, at, dose, litres, freed) {
  if (dose?.amount === undefined) return [];
  const { label, amount, unit } = dose;
  const fields = { tank: tank.id, at, label: label.id, what: label.name, amount, unit, for_litres: litres };
  return [{ type: "put", kind: "dose", id: new_id(), fields: freed > 0 ? { ...fields, tan_mg_n_l: freed } : fields }];
}

/**
 * The records of the planned plants.
 * @param {Tank} tank
 * @param {string} at
 * @param {Portions[]} plants
 * @returns {Write[]}
 */
const planting_writes = (tank, at, plants) =>
  plants.map(({ species, portions }) => ({
    type: "put",
    kind: "planting",
    id: new_id(),
    fields: {
      tank: tank.id,
      at,
      change: "plant",
      species,
      amount: t("setup.portions_in", { count: portions }),
      portions,
    },
  }));

/** A figure with its unit on the same line. @param {string} text */
const whole = (text) => text.replaceAll(" ", "\u00a0");

/** @param {{dose: LabelDose | null, payload: object | null}} props */
const Dose = ({ dose, payload }) => {
  if (!dose) return null;
  if (!dose.needed) return html`<p class="dose">${t("dose.none")}</p>`;
  if (dose.amount === undefined)
    return html`<p class="soft">${t(dose.missing === "source" ? "setup.dose_source" : "setup.dose_label")}</p>`;
  return html`
    <p class="dose"><span class="big">${dose_said(dose)}</span><br />${dose.label.name}<br /><span class="soft small">
      ${t(`dose.basis_${dose.label.basis}`)}</span></p>
    <${Calculated} name="dechlorinator_dose" found=${{ payload, answer: dose.answer, errors: [] }}
      show=${["freed_ammonia_mg_n_l"]} cautions=${["label_first", "no_mixing", "freed_ammonia", "no_airing"]} />`;
};
