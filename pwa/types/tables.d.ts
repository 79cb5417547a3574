/** The form of shared_schema/tables/NAME.json, as far as the phone reads it. */

type Range = [number, number];
/** [low, usual, high] */
type Triple = [number, number, number];

/** Body shape of an animal: mass in grams is a times length in cm to the power b. */
export interface Shape {
  label: string;
  a: number;
  b: number;
  depth_per_length: number;
}
export interface SpeciesRow {
  name: string;
  kind: "fish" | "shrimp" | "crayfish" | "snail";
  /** Fish only. */
  family?: string;
  length_cm: number;
  shape: string;
  a: number;
  b: number;
  temperature_c: Range;
  ph: Range;
  gh_dgh: Range;
  social: string;
  group_min: number;
  level: string;
  temperament: string;
  mouth: string;
  traits: string[];
}
export interface PlantRow {
  name: string;
  form: "rosette" | "stem" | "epiphyte" | "moss" | "floating" | "free";
  growth: string;
  position: string;
  light: "low" | "medium" | "high";
  uptake: string;
  temperature_c: Range;
}
export interface SaltRow {
  label: string;
  formula: string;
  g_mol: number;
  /** How many of each ion one formula unit gives. */
  gives: Record<string, number>;
  slow?: boolean;
}
export interface Ion {
  label: string;
  g_mol: number;
  hardness: number;
  charges: number;
}
export interface Limit {
  value: number;
  unit: string;
  label: string;
  source: string;
  provenance: string;
  note: string;
}
/** Nitrite that one step of chloride allows: mean of 30 days and maximum, mg N/L. */
export interface NitriteStep {
  mean_mg_n_l: number;
  maximum_mg_n_l: number;
}
/** One of tank_classes: what a keeper can say in a word, as figures. */
interface Classes<Figures> {
  classes: Record<string, { label: string } & Figures>;
}
export interface Unit {
  quantity: string;
  times: number;
  over?: number;
  shift?: number;
  label?: string;
}

export interface Tables {
  constants: {
    groups: Record<
      string,
      { source: string; provenance: string; note?: string; values: Record<string, { value: number; unit: string }> }
    >;
  };
  hardness_scales: { scales: Record<string, { label: string; mmol_l: number; unit: string; definition: string }> };
  limits: {
    limits: Record<string, Limit>;
    nitrite_by_chloride: {
      unknown_chloride_mg_l: number;
      steps: ({ chloride_to_mg_l: number } & NitriteStep)[];
      above: NitriteStep;
    };
  };
  plants: {
    rows: Record<string, PlantRow>;
    /** What the words of a row stand for: a range, or one figure. */
    classes: {
      growth: Record<"slow" | "medium" | "fast", Range>;
      light: Record<"low" | "medium" | "high", Range>;
      uptake: Record<"low" | "medium" | "high", number>;
    };
  };
  salts: { ions: Record<string, Ion>; rows: Record<string, SaltRow> };
  sources: { sources: Record<string, { title: string; provenance: string }> };
  species: {
    rows: Record<string, SpeciesRow>;
    shapes: Record<string, Shape>;
    invertebrates: Record<string, Shape>;
    families: Record<string, Record<string, unknown>>;
  };
  tank_classes: {
    filter: Classes<{ exchange: Triple }>;
    cover: Classes<{ exchange: Triple }>;
    planting: Classes<{ dry_g_m2: Triple }>;
    evening: Classes<{ percent: Triple }>;
    substrate: Classes<{ oxygen_g_m2_day: Triple }>;
    maturity: Classes<{ from_days: number; nitrified_mg_n_m2_day: Triple }>;
  };
  units: {
    systems: { key: string; label: string }[];
    /** By the contract's unit: the unit of a system, where it is another. */
    shown: Record<string, Record<string, string>>;
    by_field: Record<string, Record<string, string>>;
    units: Record<string, Unit>;
    in_words: Record<string, { label: string }>;
  };
}
export type TableName = keyof Tables;
