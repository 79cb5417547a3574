/** Two steps of setting up a tank: warmth and light with watts and hours, and plants with their kinds and portions. */
import { html } from "../../vendor/preact.js";
import { asked, heater_input, light_input, said_at } from "../../advice/setup/setting_up.js";
import { plants_for, portions_for } from "../../advice/setup/setting_up_life.js";
import { constants, table } from "../../calc/tables.js";
import { input_of, record_field } from "../../contracts.js";
import { number, short, t } from "../../i18n/words.js";
import { measured, temperature_said } from "../words/figures.js";
import { Calculated } from "../contract/calculated.js";
import { ChoiceTiles } from "../choice_tiles.js";
import { FigureRows } from "../figure_rows.js";
import { KindPicker } from "../kind_picker.js";
import { all } from "../state/live.js";
import { ChosenList, FittingList } from "./chosen_list.js";
import { Next, SetupStep, measures_of, use_step } from "./setup_step.js";
import { StepRow } from "../step_row.js";

/** @import { Tank } from "../../types/views.js" */
/** @param {{tank: Tank}} props */
export function WarmthStep({ tank }) {
  const { raw, said, set, save, problem } = use_step(tank, "warmth");
  const heat = asked("heater_power", heater_input(tank, said));
  const light = asked("light_dose", light_input(said));
  const filter = record_field("tank", "filter");
  const ppfd = input_of("light_dose", "ppfd_umol_m2_s");
  return html`
    <${SetupStep} step="warmth" name=${tank.name} up=${`/tank/${tank.id}`} problem=${problem}
      skip=${() => void save("skipped")}
      act=${html`<${Next} disabled=${heat.errors.length + light.errors.length > 0}
        onClick=${() => void save("done", { temperature_c: said.temperature_c, filter: said.filter })}>
        ${heat.answer ? t("setup.next_with", { figure: `${number(heat.answer.heater_w, 0)} W` }) : t("setup.next")}
        <//>`}>
      <section><h2>${t("setup.warmth")}</h2>
        <${StepRow} label=${t("setup.water_warm")} unit="°C" min=${10} max=${32} value=${Number(raw.temperature_c)}
          on_value=${(/** @type {number} */ temperature_c) => set({ temperature_c })} />
        <${StepRow} label=${t("setup.room_cold")} also=${t("setup.room_cold_why")} unit="°C" min=${-5} max=${35}
          value=${Number(raw.room_c)} on_value=${(/** @type {number} */ room_c) => set({ room_c })} />
        <${ChoiceTiles} label=${t("setup.cover")} name="cover"
          choices=${["lid", "open"].map((value) => ({ value, label: t(`setup.cover_${value}`) }))} value=${raw.cover}
          on_value=${(/** @type {string} */ cover) => set({ cover })} />
        <${Calculated} name="heater_power" found=${heat}
          show=${["heater_w", "loss_w", "warming_c_hour", "cooling_c_hour"]} />
      </section>
      <section class="section"><h2>${t("setup.light")}</h2>
        <${ChoiceTiles} label=${t("setup.light_band")} name="light"
          choices=${["low", "medium", "high"].map((value) => ({ value, label: t(`setup.light_${value}`) }))}
          value=${raw.light} on_value=${(/** @type {string} */ band) => set({ light: band, ppfd_umol_m2_s: "" })} />
        <${StepRow} label=${input_of("light_dose", "hours").label} unit="h" step=${0.5} max=${24}
          value=${Number(raw.hours)} on_value=${(/** @type {number} */ hours) => set({ hours })} />
        <${FigureRows} specs=${[{ ...ppfd, label: t("setup.light_measured") }]} raw=${raw} on_raw=${set}
          wrong=${light.errors} />
        ${
          said.ppfd_umol_m2_s === undefined &&
          html`<p class="soft small">
          ${t("setup.light_counted", { light: short(light_input(said).ppfd_umol_m2_s, 0) })}</p>`
        }
        <${Calculated} name="light_dose" found=${light} show=${["dli_mol_m2_day", "band"]} />
      </section>
      <section class="section"><h2>${t("setup.moves")}</h2>
        <p>${t("setup.moves_why")}</p>
        <${ChoiceTiles} label=${filter.label} name="filter" choices=${filter.choices} value=${raw.filter}
          on_value=${(/** @type {string} */ value) => set({ filter: value })} />
      </section>
    <//>`;
}

/** How many suggestions are shown. */
const SHOWN = 8;

/** @param {{tank: Tank}} props */
export function PlantsStep({ tank }) {
  const { raw, said, set, save, problem } = use_step(tank, "plants");
  const planting = record_field("tank", "planting");
  const practice = constants("planting_practice");
  const wanted = portions_for(measures_of(tank), raw.planting);
  const warmth = said_at(tank, "warmth");
  /** @type {{species: string, portions: number}[]} */ const list = raw.list;
  const have = list.reduce((sum, one) => sum + one.portions, 0);
  const put = (/** @type {string} */ species, /** @type {number} */ portions) =>
    set({
      list: list.some((one) => one.species === species)
        ? list.map((one) => (one.species === species ? { species, portions } : one))
        : [...list, { species, portions }],
    });
  const open = plants_for(warmth).filter(({ key }) => !list.some(({ species }) => species === key));
  return html`
    <${SetupStep} step="plants" name=${tank.name} up=${`/tank/${tank.id}`} problem=${problem}
      skip=${() => void save("skipped")}
      act=${html`<${Next} onClick=${() => void save("done", { planting: said.planting })}>
        ${have ? t("setup.next_portions", { count: have }) : t("setup.next")}<//>`}>
      <p>${t("setup.plants_why")}</p>
      <${ChoiceTiles} label=${planting.label} name="planting" choices=${planting.choices} value=${raw.planting}
        on_value=${(/** @type {string} */ value) => set({ planting: value })} />
      <p class="sentence">${t("setup.portions", { count: wanted })}</p>
      ${
        raw.planting !== "none" &&
        html`<details class="more"><summary>${t("bench.sources")}</summary>
        <p>${t("setup.portions_how", {
          percent: number(100 * practice[`cover_${raw.planting}`], 0),
          area: measured(practice.portion_cm2, "cm²", 0),
        })}</p>
        <p class="soft small">${table("constants").groups.planting_practice.note}</p>
        <p class="soft small">${t("bench.provenance.common practice")}</p></details>`
      }
      ${
        list.length > 0 &&
        html`<section class="section"><h2>${t("setup.plants_chosen", { have, wanted })}</h2>
        <${ChosenList} chosen=${list.map(({ species, portions }) => ({ species, count: portions }))} named=${plant_name}
          about=${about} on_count=${put}
          on_remove=${(/** @type {string} */ key) => set({ list: list.filter(({ species }) => species !== key) })} />
        </section>`
      }
      <section class="section"><h2>${t("setup.plants_fit")}</h2>
        <p class="soft small">${t("setup.plants_order")}</p>
        <${FittingList} kinds=${open.slice(0, SHOWN).map(({ key }) => key)} named=${plant_name} about=${about}
          on_pick=${(/** @type {string} */ key) => put(key, 1)} />
        <h3>${t("setup.plant_other")}</h3>
        <${KindPicker} rows="plants" near=${all("own_plant").map(({ name }) => name)} value=""
          then=${`/tank/${tank.id}/setup/plants`} on_pick=${(/** @type {string} */ key) => put(key, 1)} />
      </section>
    <//>`;
}

/** @param {string} species */
export const plant_name = (species) => table("plants").rows[species]?.name ?? species;

/** How a plant grows, where it stands, and the water it needs. @param {string} species */
function about(species) {
  const row = table("plants").rows[species];
  if (!row) return "";
  const [low, high] = row.temperature_c;
  return t("setup.plant_about", {
    growth: t(`setup.growth_${row.growth}`),
    position: t(`setup.position_${row.position}`),
    low: temperature_said(low),
    high: temperature_said(high),
    light: t(`setup.light_${row.light}`),
  });
}
