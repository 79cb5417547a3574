/** Setting a tank up from the empty glass: its steps, and the calculations' input at each step. Pure. */
import { DAY } from "../../figures/durations.js";
import { constants, table } from "../../calc/tables.js";
import { InvalidInput, field_named, fitting, kind_of, run } from "../../contracts.js";

/** @import { FieldError } from "../../contracts.js" */
/** @import { Answer, CalculationName, Calculations, Field } from "../../types/contract.js" */
/** @import { FilledWeightInput, HeaterPowerInput, LightDoseInput } from "../../types/calculations.js" */
/** @import { SubstrateInput, VolumeInput } from "../../types/calculations.js" */
/** @import { Material, OldSetup, Said, Step, StepHeld, StepState } from "../../types/setup.js" */
/** @import { Tank } from "../../types/views.js" */

/** In this order; a keeper may skip a step and return to it. @type {readonly Step[]} */
export const STEPS = ["glass", "place", "substrate", "hardscape", "warmth", "plants", "stock", "fill", "first_fish"];
/**
 * What a step shows at first (assumptions about a usual home).
 * @type {Said}
 */
const FIRST = {
  glass: {},
  place: {},
  substrate: {
    bed: "capped",
    nutrient: "garden_soil",
    nutrient_front_cm: 1.5,
    nutrient_back_cm: 2.5,
    cap: "sand",
    cap_front_cm: 3,
    cap_back_cm: 4,
    support_bags: 0,
  },
  hardscape: {},
  warmth: { temperature_c: 24, room_c: 17, cover: "lid", light: "medium", hours: 8, filter: "sponge" },
  plants: { planting: "dense", list: [] },
  stock: {},
  fill: { plants_in: true },
  first_fish: {},
};
export const HARDSCAPE = /** @type {const} */ (["stone", "lava", "wood"]);
/** Sold by weight; the rest by the litre (common practice). @type {Material[]} */
const BY_WEIGHT = ["sand", "gravel"];
/** A tank's page speaks of its first animals until this age (assumption: eight weeks). */
export const YOUNG_MS = 56 * DAY;

/**
 * The field of the tank that holds a step. Each step has its own, so that both count where two keepers plan different
 * steps.
 * @template {Step} S
 * @param {S} step
 * @returns {`setup_${S}`}
 */
export const field_of = (step) => `setup_${step}`;

/** @typedef {Omit<Tank, "id" | "kind" | "meta">} Plan a tank's record, or what will be written of one */

/** The measures, which every tank that is set up here has. @param {Plan} tank */
export const measures_of = (tank) => /** @type {VolumeInput} */ (/** @type {unknown} */ (tank.measures));

/** @param {Field[]} fields @param {string} name of an object @returns {Field[]} */
const fields_in = (fields, name) => {
  const found = field_named(fields, name);
  return found.type === "object" ? found.fields : [];
};

/**
 * What the record holds of a step; if nothing, what an older app wrote of it into the one field `setup`. What was
 * recorded before it was checked and does not fit is left out.
 * @template {Step} S
 * @param {Plan} tank
 * @param {S} step
 * @returns {StepHeld<S>}
 */
export function step_of(tank, step) {
  const held = /** @type {StepHeld<S> | undefined} */ (tank[field_of(step)]);
  const old = /** @type {OldSetup | undefined} */ (tank.setup);
  const old_said = /** @type {Partial<Said[S]> | undefined} */ (old?.[step]);
  const { state, said } = held ?? { state: old?.steps?.[step], said: old_said };
  if (!said) return { state };
  return { state, said: fitting(fields_in(fields_in(kind_of("tank").fields, field_of(step)), "said"), said) };
}

/** Whether it began as an empty glass in this app, not in the form for a running tank. @param {Plan} tank */
export const set_up_here = (tank) => Boolean(tank.setup) || STEPS.some((step) => tank[field_of(step)]);

/** Whether a tank was started in the last eight weeks. @param {Pick<Plan, "started_at">} tank @param {number} now ms */
export const is_young = ({ started_at }, now) => Boolean(started_at && now - Date.parse(started_at) < YOUNG_MS);

/** Whether a tank is still a plan: being set up, and never filled. @param {Plan} tank */
export const planned = (tank) => set_up_here(tank) && !tank.started_at;

/** @param {Plan} tank @param {Step} step */
export const done = (tank, step) => step_of(tank, step).state === "done";

/** @param {Plan} tank @returns {{name: Step, state: StepState | "open"}[]} */
export const steps_of = (tank) =>
  STEPS.map((name) => ({
    name,
    state: name === "glass" || (name === "fill" && tank.started_at) ? "done" : (step_of(tank, name).state ?? "open"),
  }));

/** The first step that waits; null when none does. @param {Plan} tank */
export const next_step = (tank) => steps_of(tank).find(({ state }) => state === "open")?.name ?? null;
/** @param {Step} step @returns {Step | null} */
export const after = (step) => STEPS[STEPS.indexOf(step) + 1] ?? null;

/**
 * What was said at a step; what was not said is as at first.
 * @template {Step} S
 * @param {Plan} tank
 * @param {S} step
 * @returns {Said[S]}
 */
export const said_at = (tank, step) => ({ ...FIRST[step], ...step_of(tank, step).said });

/**
 * Figures typed as texts become numbers, empty ones are left out.
 * @template {object} R
 * @param {R} raw what a form holds
 * @returns {R}
 */
export const figures_of = (raw) =>
  /** @type {R} */ (
    Object.fromEntries(
      Object.entries(raw)
        .filter(([, value]) => value !== "" && value !== undefined && value !== null)
        .map(([name, value]) => [name, typeof value === "string" && /^\d+\.?\d*$/.test(value) ? Number(value) : value]),
    )
  );

/**
 * An answer, or what is wrong with the question.
 * @template {CalculationName} K
 * @param {K} name
 * @param {Calculations[K]["input"] | null} payload null: nothing to ask
 * @returns {{payload: object, answer?: Answer<K>, errors: FieldError[]}}
 */
export function asked(name, payload) {
  if (!payload) return { payload: {}, errors: [] };
  try {
    return { payload, answer: run(name, payload), errors: [] };
  } catch (error) {
    if (!(error instanceof InvalidInput)) throw error;
    return { payload, errors: error.errors };
  }
}

/**
 * The depth from front to back, outside or inside as measured.
 * @type {Record<VolumeInput["shape"], (m: Record<keyof VolumeInput, number>) => number>}
 */
const DEPTH = {
  cuboid: (m) => m.width_cm,
  bow_front: (m) => m.width_cm + m.bow_cm,
  cylinder: (m) => m.diameter_cm,
  half_round: (m) => m.diameter_cm / 2,
  quarter_round: (m) => m.length_cm,
  hexagon: (m) => m.width_cm,
  bowl: (m) => m.diameter_cm,
};

/**
 * The floor inside as a rectangle. For other shapes than a cuboid it has the same area and the same depth.
 * @param {VolumeInput} measures
 */
export function floor_of(measures) {
  const { surface_cm2, inside_height_cm, filled_to_cm } = run("volume", bare(measures));
  const glass_cm = measures.measures === "outside" ? (2 * (measures.glass_mm ?? 0)) / 10 : 0;
  // `volume` refuses a shape that lacks one of its measures.
  const sides = /** @type {Record<keyof VolumeInput, number>} */ (/** @type {unknown} */ (measures));
  const width_cm = DEPTH[measures.shape](sides) - glass_cm;
  return { length_cm: surface_cm2 / width_cm, width_cm, area_cm2: surface_cm2, inside_height_cm, filled_to_cm };
}

/** The glass alone. @param {VolumeInput} measures @returns {VolumeInput} */
export const bare = ({
  substrate_l: _s,
  substrate_porosity: _p,
  hardscape_kg: _h,
  hardscape_density_kg_l: _d,
  metered_l: _m,
  ...glass
}) => glass;

/**
 * @param {VolumeInput} measures
 * @param {Said["substrate"]} said
 * @returns {SubstrateInput | null} null for bare glass
 */
export function substrate_input(measures, said) {
  if (said.bed === "bare") return null;
  const { length_cm, width_cm } = floor_of(measures);
  /** @param {"nutrient" | "cap" | "plain"} role @param {"nutrient" | "cap"} of */
  const layer = (role, of) => ({
    role,
    material: said[of],
    front_cm: said[`${of}_front_cm`],
    back_cm: said[`${of}_back_cm`],
    ...(said[`${of}_pack`] ? { [pack_unit(said[of]) === "kg" ? "pack_kg" : "pack_l"]: said[`${of}_pack`] } : {}),
  });
  const layers = said.bed === "capped" ? [layer("nutrient", "nutrient"), layer("cap", "cap")] : [layer("plain", "cap")];
  return {
    length_cm,
    width_cm,
    layers,
    ...(said.support_bags ? { support_bags: said.support_bags, support_bag_l: said.support_bag_l ?? 2 } : {}),
  };
}

/** What a shop bag of it is sold by. @param {Material} material @returns {"kg" | "L"} */
export const pack_unit = (material) => (BY_WEIGHT.includes(material) ? "kg" : "L");

/**
 * Stone, lava and wood together: their mass, the litres they displace, and the density of both.
 * @param {Partial<Said["hardscape"]>} said
 */
export function hardscape_of(said) {
  const density = constants("hardscape_densities");
  const kg = HARDSCAPE.reduce((sum, kind) => sum + (said[`${kind}_kg`] ?? 0), 0);
  const litres = HARDSCAPE.reduce((sum, kind) => sum + (said[`${kind}_kg`] ?? 0) / density[kind], 0);
  return { kg, litres, density_kg_l: kg ? kg / litres : density.stone };
}

/** The planned bed; undefined for none. @param {Plan} tank */
const bed_of = (tank) =>
  done(tank, "substrate")
    ? asked("substrate", substrate_input(measures_of(tank), said_at(tank, "substrate"))).answer
    : undefined;

/** The planned stone and wood. @param {Plan} tank */
const stones_of = (tank) => hardscape_of(done(tank, "hardscape") ? said_at(tank, "hardscape") : {});

/**
 * The measures without those that come from a step of the plan. Steps of the older form wrote into the measures, so of
 * that form only the glass stays.
 * @param {Plan} tank
 * @param {VolumeInput} [measures]
 * @returns {VolumeInput}
 */
export function unplanned(tank, measures = measures_of(tank)) {
  if (tank.setup) return bare(measures);
  const { substrate_l, substrate_porosity, hardscape_kg, hardscape_density_kg_l } = measures;
  return {
    ...bare(measures),
    ...(done(tank, "substrate") ? {} : defined({ substrate_l, substrate_porosity })),
    ...(done(tank, "hardscape") ? {} : defined({ hardscape_kg, hardscape_density_kg_l })),
    ...defined({ metered_l: measures.metered_l }),
  };
}

/**
 * The measures with all that the plan puts into the glass.
 * @param {Plan} tank
 * @param {number} [metered_l]
 * @returns {VolumeInput}
 */
export function volume_input(tank, metered_l) {
  const substrate = bed_of(tank);
  const stones = stones_of(tank);
  return {
    ...unplanned(tank),
    ...(substrate ? { substrate_l: substrate.litres } : {}),
    ...(stones.kg ? { hardscape_kg: stones.kg, hardscape_density_kg_l: stones.density_kg_l } : {}),
    ...(metered_l ? { metered_l } : {}),
  };
}

/**
 * A plan's record with the litres that its steps leave for water. They are never written before the first filling,
 * because a step made on another phone would not be in them.
 * @template {Plan} T
 * @param {T} tank
 */
export function as_planned(tank) {
  if (!planned(tank)) return tank;
  const { payload, answer } = asked("volume", volume_input(tank));
  return answer ? { ...tank, measures: payload, water_l: answer.water_l, gross_l: answer.gross_l } : tank;
}

/**
 * The input of the filled weight. Other shapes than a box are given by their empty weight.
 * @param {Plan} tank
 * @param {Said["place"]} place
 * @returns {FilledWeightInput}
 */
export function weight_input(tank, place) {
  const m = measures_of(tank);
  const substrate = bed_of(tank);
  const stones = stones_of(tank);
  const glass_mm = m.glass_mm ?? place.glass_mm;
  const box = m.shape === "cuboid";
  return {
    ...(box
      ? defined({
          length_cm: m.length_cm,
          width_cm: m.width_cm,
          height_cm: m.height_cm,
          measures: m.measures ?? "inside",
          glass_mm,
          fill_height_cm: m.fill_height_cm,
        })
      : { ...defined({ tank_kg: place.tank_kg }), water_l: tank.water_l }),
    ...defined({
      footprint_length_cm: place.footprint_length_cm,
      footprint_width_cm: place.footprint_width_cm,
      stand_kg: place.stand_kg,
      equipment_kg: place.equipment_kg,
    }),
    ...(substrate ? { substrate_kg: substrate.kg } : {}),
    ...(stones.kg ? { hardscape_kg: stones.kg, hardscape_density_kg_l: stones.density_kg_l } : {}),
    ...(tank.temperature_c === undefined ? {} : { temperature_c: tank.temperature_c }),
  };
}

/** The open share of the surface: a lid leaves a slit for cables (assumption). */
const OPEN = { open: 1, lid: 0.05 };

/** @param {Plan} tank @param {Said["warmth"]} said @returns {HeaterPowerInput} */
export function heater_input(tank, said) {
  const measures = measures_of(tank);
  const { length_cm, width_cm, filled_to_cm } = floor_of(measures);
  const glass_mm = measures.glass_mm ?? said_at(tank, "place").glass_mm;
  return {
    length_cm,
    width_cm,
    height_cm: filled_to_cm,
    temperature_c: said.temperature_c,
    room_c: said.room_c,
    open_fraction: OPEN[said.cover],
    water_l: tank.water_l,
    ...(glass_mm ? { glass_mm } : {}),
  };
}

/**
 * The lamp's light as measured, else the middle of its band.
 * @param {Pick<Said["warmth"], "ppfd_umol_m2_s" | "light" | "hours">} said
 * @returns {LightDoseInput}
 */
export function light_input(said) {
  const [low, high] = table("plants").classes.light[said.light];
  return { ppfd_umol_m2_s: said.ppfd_umol_m2_s ?? (low + high) / 2, hours: said.hours };
}

/**
 * @template {object} V
 * @param {V} values
 * @returns {Partial<V>}
 */
const defined = (values) =>
  /** @type {Partial<V>} */ (Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)));
