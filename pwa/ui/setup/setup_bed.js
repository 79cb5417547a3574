/** Two steps of setting up a tank: the substrate, with food for roots under a cap, and the stones and wood. */
import { html } from "../../vendor/preact.js";
import {
  asked,
  field_of,
  hardscape_of,
  pack_unit,
  substrate_input,
  volume_input,
} from "../../advice/setup/setting_up.js";
import { constants } from "../../calc/tables.js";
import { field_named, input_of } from "../../contracts.js";
import { short, t } from "../../i18n/words.js";
import { litres_said, measured } from "../words/figures.js";
import { Calculated } from "../contract/calculated.js";
import { ChoiceTiles } from "../choice_tiles.js";
import { FigureRows } from "../figure_rows.js";
import { Next, SetupStep, measures_of, use_step } from "./setup_step.js";
import { StepRow } from "../step_row.js";

/** @import { Answer, ChoiceSpec, Named } from "../../types/contract.js" */
/** @import { Tank } from "../../types/views.js" */
/** @import { Raw } from "./setup_step.js" */
const BEDS = ["capped", "plain", "bare"];
/** The materials that are offered for each layer. @type {Record<string, string[]>} */
const OFFERED = {
  nutrient: ["garden_soil", "potting_soil", "baked_clay"],
  cap: ["sand", "gravel", "lava", "baked_clay"],
};

/** @param {{tank: Tank}} props */
export function SubstrateStep({ tank }) {
  const { raw, said, set, save, problem } = use_step(tank, "substrate");
  const found = asked("substrate", substrate_input(measures_of(tank), said));
  const layer = input_of("substrate", "layers").item;
  const material = field_named(layer.fields, "material");
  return html`
    <${SetupStep} step="substrate" name=${tank.name} up=${`/tank/${tank.id}`} problem=${problem}
      skip=${() => void save("skipped")}
      act=${html`<${Next} disabled=${found.errors.length > 0} onClick=${() => void save("done")}>
        ${found.answer ? t("setup.next_with", { figure: litres_said(found.answer.litres) }) : t("setup.next")}<//>`}>
      <${ChoiceTiles} label=${t("setup.bed")} name="bed"
        choices=${BEDS.map((value) => ({ value, label: t(`setup.bed_${value}`) }))} value=${raw.bed}
        on_value=${(/** @type {string} */ bed) => set({ bed })} />
      ${
        raw.bed === "capped" &&
        html`<${Layer} of="nutrient" title=${t("setup.layer_nutrient")} material=${material}
        raw=${raw} set=${set} layer=${found.answer?.layers[0]} />`
      }
      ${
        raw.bed !== "bare" &&
        html`
        <${Layer} of="cap" title=${t(raw.bed === "capped" ? "setup.layer_cap" : "setup.layer_plain")}
          material=${material} raw=${raw} set=${set} layer=${found.answer?.layers.at(-1)} />
        <details class="more" open=${raw.support_bags > 0}><summary>${t("setup.mesh")}</summary>
          <p class="soft small">${t("setup.mesh_why")}</p>
          <${StepRow} label=${t("setup.mesh_bags")} value=${Number(raw.support_bags)} max=${40}
            on_value=${(/** @type {number} */ support_bags) => set({ support_bags })} />
          <${StepRow} label=${t("setup.mesh_size")} unit="L" value=${Number(raw.support_bag_l ?? 2)} step=${0.5}
            min=${0.5} max=${20} on_value=${(/** @type {number} */ support_bag_l) => set({ support_bag_l })} />
        </details>
        <${Calculated} name="substrate" found=${found}
          show=${["litres", "kg", ...(raw.support_bags > 0 ? ["support_l"] : []), "front_cm", "back_cm", "slope_deg"]}
          />
        ${measures_of(tank).shape !== "cuboid" && html`<p class="soft small">${t("setup.as_rectangle")}</p>`}`
      }
    <//>`;
}

/**
 * @param {{of: "nutrient" | "cap", title: string, material: ChoiceSpec & Named, raw: Raw, set: (more: Raw) => void,
 * layer?: Answer<"substrate">["layers"][number]}}
 * props
 */
const Layer = ({ of, title, material, raw, set, layer }) => html`
  <section class="section"><h2>${title}</h2>
    <${ChoiceTiles} label=${material.label} name=${`${of}-material`}
      choices=${material.choices.filter((one) => OFFERED[of].includes(one.value))} value=${raw[of]}
      on_value=${(/** @type {string} */ value) => set({ [of]: value })} />
    <${StepRow} label=${t("setup.front")} unit="cm" step=${0.5} max=${20} value=${Number(raw[`${of}_front_cm`])}
      on_value=${(/** @type {number} */ value) => set({ [`${of}_front_cm`]: value })} />
    <${StepRow} label=${t("setup.back")} unit="cm" step=${0.5} max=${30} value=${Number(raw[`${of}_back_cm`])}
      on_value=${(/** @type {number} */ value) => set({ [`${of}_back_cm`]: value })} />
    <${FigureRows} specs=${[{ name: `${of}_pack`, label: t("setup.pack"), unit: pack_unit(raw[of]) }]} raw=${raw}
      on_raw=${set} />
    ${
      layer &&
      html`<p class="sentence">
      ${t(layer.packs === undefined ? "setup.layer_found" : "setup.layer_packs", {
        litres: litres_said(layer.litres),
        kg: measured(layer.kg, "kg", 1),
        count: layer.packs ?? 0,
      })}</p>`
    }
  </section>`;

const KINDS = ["stone", "lava", "wood"];

/** @param {{tank: Tank}} props */
export function HardscapeStep({ tank }) {
  const { raw, said, set, save, problem } = use_step(tank, "hardscape");
  const stones = hardscape_of(said);
  const density = constants("hardscape_densities");
  const found = asked("volume", volume_input({ ...tank, [field_of("hardscape")]: { state: "done", said } }));
  return html`
    <${SetupStep} step="hardscape" name=${tank.name} up=${`/tank/${tank.id}`} problem=${problem}
      skip=${() => void save("skipped")}
      act=${html`<${Next} onClick=${() => void save("done")} />`}>
      <p>${t("setup.hardscape_why")}</p>
      ${KINDS.map(
        (kind) => html`<${StepRow} key=${kind} label=${t(`setup.of_${kind}`)}
          also=${t("setup.density", { density: short(density[kind], 2) })} unit="kg" step=${0.5} max=${500}
          value=${Number(raw[`${kind}_kg`] ?? 0)}
        on_value=${(/** @type {number} */ kg) => set({ [`${kind}_kg`]: kg })} />`,
      )}
      <p class="sentence">
        ${t("setup.displaced", { litres: litres_said(stones.litres), kg: measured(stones.kg, "kg", 1) })}</p>
      <${Calculated} name="volume" found=${found} show=${["water_l", "gross_l"]} />
    <//>`;
}
