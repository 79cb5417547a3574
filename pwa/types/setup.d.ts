/** What is planned while a tank is set up, step by step, as the tank's record holds it. */
import type { LightDoseInput, SubstrateInput } from "./calculations.js";
import type { TankFields } from "./records.js";

export type Step =
  | "glass"
  | "place"
  | "substrate"
  | "hardscape"
  | "warmth"
  | "plants"
  | "stock"
  | "fill"
  | "first_fish";
export type StepState = "done" | "skipped";
export type Material = SubstrateInput["layers"][number]["material"];
export type Planting = NonNullable<TankFields["planting"]>;
export type Light = "low" | "medium" | "high";

/** What is said at each step. */
export interface Said {
  glass: Record<string, never>;
  place: {
    glass_mm?: number;
    tank_kg?: number;
    stand_kg?: number;
    equipment_kg?: number;
    footprint_length_cm?: number;
    footprint_width_cm?: number;
  };
  substrate: {
    bed: "bare" | "plain" | "capped";
    nutrient: Material;
    nutrient_front_cm: number;
    nutrient_back_cm: number;
    /** A shop bag of it, in kg or litres. */
    nutrient_pack?: number;
    cap: Material;
    cap_front_cm: number;
    cap_back_cm: number;
    cap_pack?: number;
    support_bags: number;
    support_bag_l?: number;
  };
  hardscape: { stone_kg?: number; lava_kg?: number; wood_kg?: number };
  warmth: {
    temperature_c: number;
    /** The coldest air around it; °C. */
    room_c: number;
    cover: "open" | "lid";
    light: Light;
    ppfd_umol_m2_s?: number;
    hours: LightDoseInput["hours"];
    filter: NonNullable<TankFields["filter"]>;
  };
  plants: { planting: Planting; list: { species: string; portions: number }[] };
  stock: { list?: Planned[] };
  fill: { plants_in: boolean; metered_l?: number };
  first_fish: { household?: boolean; ammonia_percent?: number };
}

/** Animals planned for a tank. */
export type Planned = NonNullable<TankFields["planned_stock"]>[number];

/** How far one step is, and what was said at it. */
export interface StepHeld<S extends Step = Step> {
  state?: StepState;
  said?: Partial<Said[S]>;
}
/** The older form, which held all steps in one field. */
export type OldSetup = { steps?: Partial<Record<Step, StepState>> } & { [S in Step]?: Partial<Said[S]> };
