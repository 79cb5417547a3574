/** Setting a tank up from the empty glass: its steps, and what each step asks of the calculations. Pure. */
import { DAY } from "../../figures/durations.js";
import { constants, table } from "../../calc/tables.js";
import { InvalidInput, run, run_named } from "../../contracts.js";

/** In this order, though each may be skipped and come back to. */
export const STEPS = ["glass", "place", "substrate", "hardscape", "warmth", "plants", "stock", "fill", "first_fish"];
/**
 * What stands at a step before anything is said (assumptions of a usual room, to be changed).
 * @type {Record<string, any>}
 */
export const FIRST = {
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
const HARDSCAPE = ["stone", "lava", "wood"];
/** Sold by weight; the rest by the litre (common practice). */
const BY_WEIGHT = ["sand", "gravel"];
/** Younger than this a tank's first animals are still spoken of (assumption: eight weeks). */
export const YOUNG_MS = 56 * DAY;

/**
 * The field of the tank that holds a step: one a step, so that two keepers who plan different steps both keep what they
 * said.
 * @param {string} step
 */
export const field_of = (step) => `setup_${step}`;

/**
 * What the record holds of a step; where nothing, what an older app wrote of it into the one field `setup`.
 * @param {any} tank @param {string} step @returns {{state?: "done" | "skipped", said?: Record<string, any>}}
 */
export const step_of = (tank, step) =>
  tank[field_of(step)] ?? { state: tank.setup?.steps?.[step], said: tank.setup?.[step] };

/** Whether it began as an empty glass here, rather than in the form for a tank that runs. @param {any} tank */
export const set_up_here = (tank) => Boolean(tank.setup) || STEPS.some((step) => tank[field_of(step)]);

/** Whether a tank is still a plan: being set up, and never filled. @param {any} tank */
export const planned = (tank) => set_up_here(tank) && !tank.started_at;

/** @param {any} tank @param {string} step */
export const done = (tank, step) => step_of(tank, step).state === "done";

/** @param {any} tank @returns {{name: string, state: "done" | "skipped" | "open"}[]} */
export const steps_of = (tank) =>
  STEPS.map((name) => ({
    name,
    state: name === "glass" || (name === "fill" && tank.started_at) ? "done" : (step_of(tank, name).state ?? "open"),
  }));

/** The first step that waits; null when none does. @param {any} tank */
export const next_step = (tank) => steps_of(tank).find(({ state }) => state === "open")?.name ?? null;
/** @param {string} step */
export const after = (step) => STEPS[STEPS.indexOf(step) + 1] ?? null;

/** What was said at a step, over what stands there at first. @param {any} tank @param {string} step */
export const said_at = (tank, step) => ({ ...FIRST[step], ...step_of(tank, step).said });

/**
 * Figures typed as texts become numbers, empty ones are left out.
 * @param {Record<string, any>} raw
 * @returns {Record<string, any>}
 */
export const figures_of = (raw) =>
  Object.fromEntries(
    Object.entries(raw)
      .filter(([, value]) => value !== "" && value !== undefined && value !== null)
      .map(([name, value]) => [name, typeof value === "string" && /^\d+\.?\d*$/.test(value) ? Number(value) : value]),
  );

/**
 * An answer, or what is wrong with the question.
 * @param {string} name
 * @param {any} payload
 * @returns {{payload: any, answer?: any, errors: any[]}}
 */
export function asked(name, payload) {
  if (!payload) return { payload: {}, errors: [] };
  try {
    return { payload, answer: run_named(name, payload), errors: [] };
  } catch (no) {
    if (!(no instanceof InvalidInput)) throw no;
    return { payload, errors: no.errors };
  }
}

/** From front to back, on the outside or inside as measured. @type {Record<string, (m: any) => number>} */
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
 * The floor inside, as a rectangle: a cuboid's own, for any other shape the one of the same area and the same depth
 * from front to back.
 * @param {any} measures the input of `volume`
 * @returns {{length_cm: number, width_cm: number, area_cm2: number, inside_height_cm: number, filled_to_cm: number}}
 */
export function floor_of(measures) {
  const { surface_cm2, inside_height_cm, filled_to_cm } = run("volume", bare(measures));
  const glass = measures.measures === "outside" ? (2 * measures.glass_mm) / 10 : 0;
  const width_cm = DEPTH[measures.shape](measures) - glass;
  return { length_cm: surface_cm2 / width_cm, width_cm, area_cm2: surface_cm2, inside_height_cm, filled_to_cm };
}

/** The glass alone. @param {any} measures */
export const bare = ({
  substrate_l: _s,
  substrate_porosity: _p,
  hardscape_kg: _h,
  hardscape_density_kg_l: _d,
  metered_l: _m,
  ...glass
}) => glass;

/**
 * @param {any} measures
 * @param {any} said at the substrate's step
 * @returns {any} the input of `substrate`, null for bare glass
 */
export function substrate_input(measures, said) {
  if (said.bed === "bare") return null;
  const { length_cm, width_cm } = floor_of(measures);
  const layer = (/** @type {string} */ role, /** @type {string} */ of) => ({
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

/** What a shop bag of it is sold by. @param {string} material @returns {"kg" | "L"} */
export const pack_unit = (material) => (BY_WEIGHT.includes(material) ? "kg" : "L");

/**
 * Stone, lava and wood together: their mass, what they push out, and the density that both make.
 * @param {any} said at the hardscape's step
 */
export function hardscape_of(said) {
  const density = constants("hardscape_densities");
  const kg = HARDSCAPE.reduce((sum, kind) => sum + (said[`${kind}_kg`] ?? 0), 0);
  const litres = HARDSCAPE.reduce((sum, kind) => sum + (said[`${kind}_kg`] ?? 0) / density[kind], 0);
  return { kg, litres, density_kg_l: kg ? kg / litres : density.stone };
}

/** The planned bed; null for none. @param {any} tank */
const bed_of = (tank) =>
  done(tank, "substrate")
    ? asked("substrate", substrate_input(tank.measures, said_at(tank, "substrate"))).answer
    : null;

/** The planned stone and wood. @param {any} tank */
const stones_of = (tank) => hardscape_of(done(tank, "hardscape") ? said_at(tank, "hardscape") : {});

/**
 * Of these measures, those that no step of the plan says: of the older form, whose steps wrote into them, the glass
 * alone.
 * @param {any} tank
 * @param {any} [measures]
 */
export function unplanned(tank, measures = tank.measures) {
  if (tank.setup) return bare(measures);
  const { substrate_l, substrate_porosity, hardscape_kg, hardscape_density_kg_l } = measures;
  return {
    ...bare(measures),
    ...(done(tank, "substrate") ? {} : defined({ substrate_l, substrate_porosity })),
    ...(done(tank, "hardscape") ? {} : defined({ hardscape_kg, hardscape_density_kg_l })),
    ...defined({ metered_l: measures.metered_l }),
  };
}

/** The measures with all that the plan puts into the glass. @param {any} tank @param {number} [metered_l] */
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
 * A plan's record with the litres that its steps leave for water. They are never written before the first filling:
 * a step that came from another phone would not be in them.
 * @param {any} tank
 */
export function as_planned(tank) {
  if (!planned(tank)) return tank;
  const { payload, answer } = asked("volume", volume_input(tank));
  return answer ? { ...tank, measures: payload, water_l: answer.water_l, gross_l: answer.gross_l } : tank;
}

/**
 * What all of it weighs, filled. Shapes other than a box are given by their empty weight.
 * @param {any} tank
 * @param {any} place said at the place's step
 */
export function weight_input(tank, place) {
  const m = tank.measures;
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

/** How much of the surface lies open: a lid leaves a slit for cables (assumption). */
const OPEN = /** @type {Record<string, number>} */ ({ open: 1, lid: 0.05 });

/** @param {any} tank @param {any} said at the warmth's step */
export function heater_input(tank, said) {
  const { length_cm, width_cm, filled_to_cm } = floor_of(tank.measures);
  const glass_mm = tank.measures.glass_mm ?? said_at(tank, "place").glass_mm;
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

/** The lamp's light as measured, else the middle of its band. @param {any} said at the warmth's step */
export function light_input(said) {
  const [low, high] = table("plants").classes.light[said.light];
  return { ppfd_umol_m2_s: said.ppfd_umol_m2_s ?? (low + high) / 2, hours: said.hours };
}

/** @param {Record<string, any>} values */
const defined = (values) => Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));
