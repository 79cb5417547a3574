/**
 * Two steps of setting up a tank: the glass with its shape, measures and litres, and the place with what all of it
 * weighs.
 */
import { html, useSignal } from "../../vendor/preact.js";
import { last_place } from "../../advice/facts.js";
import { asked, bare, field_of, figures_of, volume_input, weight_input } from "../../advice/setup/setting_up.js";
import { contracts, find_field, input_of, records, run_named, with_help } from "../../contracts.js";
import { t } from "../../i18n/words.js";
import { Calculated } from "../contract/calculated.js";
import { changed_fields } from "../state/changed_fields.js";
import { ChoiceTiles } from "../choice_tiles.js";
import { measured } from "../words/figures.js";
import { forget, use_draft } from "../state/draft.js";
import { FigureRows } from "../figure_rows.js";
import { Fields, matters, payload_of } from "../contract/form.js";
import { all, live_room } from "../state/live.js";
import { new_id, record } from "../state/record.js";
import { trouble_said } from "../words/trouble_said.js";
import { go } from "../state/router.js";
import { Next, SetupStep, measures_of, next_path, use_step } from "./setup_step.js";

/** @import { Tank } from "../../types/views.js" */
/** @import { InvalidInput } from "../../contracts.js" */
/** @import { Write } from "../state/record.js" */
/** @import { Raw } from "./setup_step.js" */
const RULER = ["length_cm", "width_cm", "diameter_cm", "bow_cm", "height_cm", "glass_mm", "fill_height_cm"];

/** What a tank is called until the keeper names it. */
const first_name = () => t("setup.name_first", { count: all("tank").length + 1 });

/**
 * The first step makes the tank; a keeper who goes back to it measures the tank again.
 * @param {{tank: Tank | null}} props
 */
export function GlassStep({ tank }) {
  const draft_name = `setup.${tank?.id ?? "new"}.glass`;
  const kept = use_draft(draft_name, () => /** @type {Raw} */ ({}));
  const problem = useSignal("");
  const { inputs } = contracts().volume;
  /** @type {Raw} */ const raw = {
    measures: "outside",
    ...tank?.measures,
    name: tank?.name ?? first_name(),
    ...kept.value,
  };
  const set = (/** @type {Raw} */ more) => (kept.value = { ...kept.value, ...more });
  const of = (/** @type {string} */ name) => find_field(inputs, name);
  const sides = input_of("volume", "measures");
  const { name, ...typed } = raw;
  const glass = payload_of(
    inputs.filter((one) => ["shape", "measures", ...RULER].includes(one.name)),
    figures_of(typed),
  );
  const found = asked("volume", raw.shape ? glass : null);
  const missing = found.errors.filter(({ field }) => !(field in glass)).flatMap(({ field }) => of(field)?.label ?? []);

  const save = async () => {
    const id = tank?.id ?? new_id();
    try {
      const fields = glass_fields(tank, String(name).trim() || first_name(), glass);
      /** @type {Write[]} */ const writes = [{ type: "put", kind: "tank", id, fields }];
      const said = t("setup.saved", { step: t("setup.step.glass") });
      if (Object.keys(fields).length > 0 && !(await record(writes, said))) return;
      forget(draft_name);
      go(next_path(id, "glass"));
    } catch (error) {
      problem.value = trouble_said(error, [...inputs, ...records().tank.fields]);
    }
  };
  return html`
    <${SetupStep} step="glass" up=${tank ? `/tank/${tank.id}` : "/tanks/new"} problem=${problem.value}
      act=${html`<${Next} disabled=${!found.answer} onClick=${() => void save()} />`}>
      <${ChoiceTiles} label=${t("tank.shape")} name="shape" choices=${input_of("volume", "shape").choices}
        value=${raw.shape} icons
        on_value=${(/** @type {string} */ shape) => set({ shape })} />
      ${
        raw.shape &&
        html`
        <${ChoiceTiles} label=${sides.label} name="measures" choices=${sides.choices}
          value=${raw.measures} on_value=${(/** @type {string} */ measures) => set({ measures })} />
        <${FigureRows}
          specs=${inputs
            .filter((one) => RULER.includes(one.name) && matters(one, inputs, raw))
            .map((one) => with_help(one, (name) => raw[name]))}
          raw=${raw} on_raw=${set} wrong=${found.errors} />
        ${missing.length > 0 && html`<p class="soft">${t("bench.still_needed", { fields: missing.join(", ") })}</p>`}
        <${Calculated} name="volume" found=${found.answer ? found : { ...found, errors: [] }}
          show=${["gross_l", "water_l", "surface_cm2"]} cautions=${[]} />
        <${Fields} specs=${records().tank.fields.filter((one) => one.name === "name")}
          raw=${{ name }} on_raw=${set} errors=${[]} />`
      }
    <//>`;
}

/**
 * What this step changes in the tank's record.
 * @param {Tank | null} tank @param {string} name @param {Record<string, unknown>} glass its measures
 * @throws {InvalidInput} what is planned already does not fit the glass as it is measured now
 */
function glass_fields(tank, name, glass) {
  if (tank) run_named("volume", volume_input({ ...tank, measures: glass }));
  const { water_l, gross_l } = run_named("volume", glass);
  const measured = tank
    ? changed_fields({ measures: bare(measures_of(tank)) }, { measures: glass })
    : { measures: glass };
  return changed_fields(tank, {
    ...(tank ? {} : { walk_order: last_place(live_room) }),
    name,
    [field_of("glass")]: { state: "done" },
    ...(measured.measures ? { ...measured, water_l, gross_l } : {}),
  });
}

/** @typedef {import("../../types/calculations.js").FilledWeightInput} Weight */

/** @param {{tank: Tank}} props */
export function PlaceStep({ tank }) {
  const { raw, said, set, save, problem } = use_step(tank, "place");
  const { shape, glass_mm } = measures_of(tank);
  const box = shape === "cuboid";
  const asks = /** @type {(keyof Weight)[]} */ ([
    ...(box ? [] : ["tank_kg"]),
    ...(box && !glass_mm ? ["glass_mm"] : []),
    "stand_kg",
    "equipment_kg",
    "footprint_length_cm",
    "footprint_width_cm",
  ]);
  const needed = /** @type {(keyof Weight)[]} */ (
    box ? (glass_mm ? [] : ["glass_mm"]) : ["tank_kg", "footprint_length_cm", "footprint_width_cm"]
  ).filter((name) => said[name] === undefined);
  const found = needed.length > 0 ? { payload: {}, errors: [] } : asked("filled_weight", weight_input(tank, said));
  const of = (/** @type {keyof Weight} */ name) => input_of("filled_weight", name);
  return html`
    <${SetupStep} step="place" name=${tank.name} up=${`/tank/${tank.id}`} problem=${problem}
      skip=${() => void save("skipped")}
      act=${html`<${Next} onClick=${() => void save("done", said.place ? { place: String(raw.place).trim() } : {})}>
        ${found.answer ? t("setup.next_with", { figure: measured(found.answer.total_kg, "kg", 0) }) : t("setup.next")}
        <//>`}>
      <p>${t("setup.place_why")}</p>
      <${FigureRows} specs=${asks.map(of)} raw=${raw} on_raw=${set} wrong=${found.errors} />
      ${
        needed.length > 0 &&
        html`<p class="soft">
        ${t("bench.still_needed", { fields: needed.map((name) => of(name).label).join(", ") })}</p>`
      }
      <${Calculated} name="filled_weight" found=${found}
        show=${["total_kg", "footprint_kpa", "dwelling_kpa", "foot_kg", "empty_tank_kg"]} />
      <${Fields} specs=${records().tank.fields.filter((one) => one.name === "place")}
        raw=${{ place: raw.place ?? tank.place }} on_raw=${set} errors=${[]} />
    <//>`;
}
