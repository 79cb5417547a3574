/** Generated from shared_schema by tests/types/generate.js: change the schema, then run it. */

/**
 * Input of acclimation: How to bring newcomers from the water they came in to the tank's: how long to float, how much
 * to drip or swap, and when.
 */
export interface AcclimationInput {
  /** Water they came in; L */
  bag_l: number;
  /** Its temperature; °C */
  bag_temperature_c: number;
  /** The tank's temperature; °C */
  tank_temperature_c: number;
  /** pH they came in */
  bag_ph?: number;
  /** The tank's pH */
  tank_ph?: number;
  /** General hardness they came in; °dGH */
  bag_gh_dgh?: number;
  /** The tank's general hardness; °dGH */
  tank_gh_dgh?: number;
  /** How */
  method?: "drip" | "steps";
  /** The vessel holds (left out: large enough); L */
  vessel_l?: number;
  /** Time closed up; h */
  hours_in_bag?: number;
}

/** The same once it is checked: usual values filled in. */
export interface AcclimationValues {
  /** Water they came in; L */
  bag_l: number;
  /** Its temperature; °C */
  bag_temperature_c: number;
  /** The tank's temperature; °C */
  tank_temperature_c: number;
  /** pH they came in */
  bag_ph?: number;
  /** The tank's pH */
  tank_ph?: number;
  /** General hardness they came in; °dGH */
  bag_gh_dgh?: number;
  /** The tank's general hardness; °dGH */
  tank_gh_dgh?: number;
  /** How */
  method: "drip" | "steps";
  /** The vessel holds (left out: large enough); L */
  vessel_l?: number;
  /** Time closed up; h */
  hours_in_bag: number;
}

/** What acclimation answers. */
export interface AcclimationAnswer {
  /** First float the closed bag; min */
  float_minutes: number;
  /** Then mix over; min */
  mix_minutes: number;
  /** Altogether; min */
  total_minutes: number;
  /** Tank water used; L */
  tank_water_l: number;
  /** Most water in the vessel; L */
  vessel_at_most_l: number;
  /** Share of their old water at the end */
  bag_share_left: number;
  /** The mixing, step by step */
  plan: ({
    /** After; min */
    minute: number;
    /** pour off first; L */
    pour_off_l: number;
    /** tank water in; L */
    add_l: number;
    /** that is; ml/min */
    ml_minute?: number | null;
    /** drops a second, while they can be counted; 1/s */
    drops_s?: number | null;
    /** pH then, about */
    ph?: number | null;
    /** hardness then; °dGH */
    gh_dgh?: number | null;
  })[];
}

/**
 * Input of alkalinity_use: How fast the bacteria use up carbonate hardness, when it runs out, and the change that holds
 * it.
 */
export interface AlkalinityUseInput {
  /** Carbonate hardness now; °dKH */
  kh_dkh: number;
  /** Ammonia turned to nitrate a day, as nitrogen; mg N/L/day */
  nitrogen_mg_n_l_day?: number;
  /** Food a day; g/day */
  feed_g_day?: number;
  /** Protein in the food, as a fraction */
  protein_fraction?: number;
  /** Water in the tank; L */
  volume_l?: number;
  /** It should not fall below; °dKH */
  floor_kh_dkh?: number;
  /** Each change, as a share of the water; 1 */
  change_fraction?: number;
  /** A change every; days */
  every_days?: number;
  /** The new water's carbonate hardness; °dKH */
  source_kh_dkh?: number;
}

/** The same once it is checked: usual values filled in. */
export interface AlkalinityUseValues {
  /** Carbonate hardness now; °dKH */
  kh_dkh: number;
  /** Ammonia turned to nitrate a day, as nitrogen; mg N/L/day */
  nitrogen_mg_n_l_day?: number;
  /** Food a day; g/day */
  feed_g_day?: number;
  /** Protein in the food, as a fraction */
  protein_fraction?: number;
  /** Water in the tank; L */
  volume_l?: number;
  /** It should not fall below; °dKH */
  floor_kh_dkh: number;
  /** Each change, as a share of the water; 1 */
  change_fraction?: number;
  /** A change every; days */
  every_days?: number;
  /** The new water's carbonate hardness; °dKH */
  source_kh_dkh?: number;
}

/** What alkalinity_use answers. */
export interface AlkalinityUseAnswer {
  /** Used up a day; °dKH/day */
  kh_dkh_per_day: number;
  /** Down to the floor in; days */
  days_to_floor?: number | null;
  /** With the routine it settles, just before a change, at; °dKH */
  steady_kh_dkh?: number | null;
  /** Least share, as often, that holds the floor; 1 */
  fraction_needed?: number | null;
  /** Nitrogen turned to nitrate; mg N/L/day */
  nitrified_mg_n_l_day: number;
}

/** Input of ammonia_limits: How much total ammonia this pH and temperature allow, for an hour and for weeks. */
export interface AmmoniaLimitsInput {
  /** pH */
  ph: number;
  /** Water temperature; °C */
  temperature_c: number;
}

/** The same once it is checked: usual values filled in. */
export interface AmmoniaLimitsValues {
  /** pH */
  ph: number;
  /** Water temperature; °C */
  temperature_c: number;
}

/** What ammonia_limits answers. */
export interface AmmoniaLimitsAnswer {
  /** For weeks (30-day mean), as nitrogen; mg N/L */
  chronic_tan_mg_n_l: number;
  /** For one hour, as nitrogen; mg N/L */
  acute_tan_mg_n_l: number;
  /** For one hour, with salmon or trout, as nitrogen; mg N/L */
  acute_salmonid_tan_mg_n_l: number;
  /** Total ammonia at which free ammonia reaches 0.025 mg/L, as nitrogen; mg N/L */
  eifac_tan_mg_n_l: number;
  /** Share that is free ammonia; 1 */
  fraction: number;
}

/** Input of animal_mass: How much the animals weigh by their length, and what that mass eats in a day. */
export interface AnimalMassInput {
  /** Animals */
  animals: ({
    /** Species */
    species?: string;
    /** Your own name for it */
    name?: string;
    /** How many */
    count?: number;
    /** Length, tip to tip; cm */
    length_cm?: number;
    /** Build, for one of your own */
    shape?: "fusiform" | "deep" | "elongated" | "eel" | "shrimp" | "snail";
    /** Its own length-weight factor a */
    mass_a?: number;
    /** Its own length-weight exponent b */
    mass_b?: number;
  })[];
  /** Food a day, dry, as a share of their mass */
  feed_share_day?: number;
}

/** The same once it is checked: usual values filled in. */
export interface AnimalMassValues {
  /** Animals */
  animals: ({
    /** Species */
    species?: string;
    /** Your own name for it */
    name?: string;
    /** How many */
    count: number;
    /** Length, tip to tip; cm */
    length_cm?: number;
    /** Build, for one of your own */
    shape?: "fusiform" | "deep" | "elongated" | "eel" | "shrimp" | "snail";
    /** Its own length-weight factor a */
    mass_a?: number;
    /** Its own length-weight exponent b */
    mass_b?: number;
  })[];
  /** Food a day, dry, as a share of their mass */
  feed_share_day: number;
}

/** What animal_mass answers. */
export interface AnimalMassAnswer {
  /** All together; g */
  total_g: number;
  /** Dry food a day; g/day */
  feed_g_day: number;
  /** One by one */
  each: {
    /** Animal */
    name: string;
    /** How many */
    count: number;
    /** Length; cm */
    length_cm: number;
    /** Each; g */
    each_g: number;
    /** Together; g */
    total_g: number;
  }[];
}

/**
 * Input of bath_dose: The dose on the water that is really there, what to dose again after each change, and how it
 * leaves again.
 */
export interface BathDoseInput {
  /** Water that is really there; L */
  water_l: number;
  /** By the label: this much */
  label_amount?: number;
  /** for this much water; L */
  label_per_l?: number;
  /** The label counts in */
  label_unit?: "ml" | "g";
  /** Salt or another powder wanted; g/L */
  wanted_g_l?: number;
  /** Days it lasts; days */
  days: number;
  /** Each change, as a share of the water; 1 */
  change_fraction?: number;
  /** A change every; days */
  every_days?: number;
}

/** The same once it is checked: usual values filled in. */
export interface BathDoseValues {
  /** Water that is really there; L */
  water_l: number;
  /** By the label: this much */
  label_amount?: number;
  /** for this much water; L */
  label_per_l?: number;
  /** The label counts in */
  label_unit: "ml" | "g";
  /** Salt or another powder wanted; g/L */
  wanted_g_l?: number;
  /** Days it lasts; days */
  days: number;
  /** Each change, as a share of the water; 1 */
  change_fraction?: number;
  /** A change every; days */
  every_days?: number;
}

/** What bath_dose answers. */
export interface BathDoseAnswer {
  /** First dose; ml */
  dose_ml?: number | null;
  /** First dose; g */
  dose_g?: number | null;
  /** Again after each change; ml */
  again_ml?: number | null;
  /** Again after each change; g */
  again_g?: number | null;
  /** Changes during it */
  changes?: number | null;
  /** Needed in all; ml */
  total_ml?: number | null;
  /** Needed in all; g */
  total_g?: number | null;
  /** Such changes afterwards until a twentieth is left */
  changes_to_clear?: number | null;
}

/**
 * Input of carbon_dioxide: How much carbon dioxide is dissolved at this pH and carbonate hardness, and how far the
 * usual rule is off.
 */
export interface CarbonDioxideInput {
  /** pH */
  ph: number;
  /** Carbonate hardness; °dKH */
  kh_dkh: number;
  /** Water temperature; °C */
  temperature_c: number;
  /** General hardness; °dGH */
  gh_dgh?: number;
}

/** The same once it is checked: usual values filled in. */
export interface CarbonDioxideValues {
  /** pH */
  ph: number;
  /** Carbonate hardness; °dKH */
  kh_dkh: number;
  /** Water temperature; °C */
  temperature_c: number;
  /** General hardness; °dGH */
  gh_dgh: number;
}

/** What carbon_dioxide answers. */
export interface CarbonDioxideAnswer {
  /** Carbon dioxide; mg/L */
  co2_mg_l: number;
  /** The usual rule, 3 × KH × 10^(7 − pH), says; mg/L */
  rule_mg_l: number;
  /** The rule is off by; % */
  rule_off_percent: number;
  /** Bicarbonate; mmol/L */
  bicarbonate_mmol_l: number;
}

/**
 * Input of change_plan: The smallest change that keeps the chance of passing ammonia's or nitrite's limit before the
 * next test under your risk.
 */
export interface ChangePlanInput {
  /** The tank */
  tank: {
    /** Water in the tank; L */
    volume_l: number;
    /** Water temperature; °C */
    temperature_c: number;
    /** pH */
    ph: number;
    /** Carbonate hardness; °dKH */
    kh_dkh?: number;
    /** Chloride; mg/L */
    chloride_mg_l?: number;
    /** Food a day; g/day */
    feed_g_day?: number;
    /** Protein in the food, as a fraction */
    protein_fraction?: number;
    /** Fish, all together; g */
    fish_g?: number;
    /** Planting */
    planting?: "none" | "light" | "medium" | "dense";
    /** How it was started */
    seeded?: "none" | "starter" | "mature_media";
  };
  /** Now, counted from the tank's start; h */
  now_h: number;
  /** Readings */
  readings?: ({
    /** When, counted from the tank's start; h */
    at_h: number;
    /** What was tested */
    parameter: "total_ammonia" | "nitrite" | "nitrate" | "ph" | "temperature" | "kh";
    /** Reading */
    value: number;
    /** Counted as */
    basis?: "ion" | "n";
    /** The kit's own steps */
    steps?: number[];
  })[];
  /** Water changes */
  changes?: {
    /** When, counted from the tank's start; later than now = planned; h */
    at_h: number;
    /** Share of the water changed */
    fraction: number;
    /** The new water */
    source?: {
      /** Total ammonia in it, as nitrogen; mg N/L */
      tan_mg_n_l?: number;
      /** Nitrite in it, as nitrogen; mg N/L */
      nitrite_mg_n_l?: number;
      /** Nitrate in it, as nitrogen; mg N/L */
      nitrate_mg_n_l?: number;
      /** Its carbonate hardness; °dKH */
      kh_dkh?: number;
    };
  }[];
  /** Ammonia added */
  doses?: {
    /** When, counted from the tank's start; later than now = planned; h */
    at_h: number;
    /** What it adds, as nitrogen; mg N/L */
    tan_mg_n_l: number;
  }[];
  /** Feedings */
  feedings?: {
    /** When, counted from the tank's start; later than now = planned; h */
    at_h: number;
    /** Food; g */
    feed_g: number;
    /** Protein in it, as a fraction */
    protein_fraction?: number;
  }[];
  /** The new water */
  source?: {
    /** Total ammonia in it, as nitrogen; mg N/L */
    tan_mg_n_l?: number;
    /** Nitrite in it, as nitrogen; mg N/L */
    nitrite_mg_n_l?: number;
    /** Nitrate in it, as nitrogen; mg N/L */
    nitrate_mg_n_l?: number;
    /** pH of it */
    ph?: number;
    /** Carbonate hardness of it; °dKH */
    kh_dkh?: number;
    /** Temperature of it; °C */
    temperature_c?: number;
  };
  /** Limits to keep */
  limits?: {
    /** Free ammonia, as nitrogen; mg N/L */
    nh3_mg_n_l?: number;
    /** Nitrite, as nitrogen; mg N/L */
    nitrite_mg_n_l?: number;
    /** Nitrate, as nitrogen; mg N/L */
    nitrate_mg_n_l?: number;
  };
  /** Risk of passing a limit that you accept */
  risk?: number;
  /** Time to the next test; h */
  next_test_h?: number;
  /** Most you would change at once */
  max_fraction?: number;
  /** Seed of the draws */
  seed?: number;
}

/** The same once it is checked: usual values filled in. */
export interface ChangePlanValues {
  /** The tank */
  tank: {
    /** Water in the tank; L */
    volume_l: number;
    /** Water temperature; °C */
    temperature_c: number;
    /** pH */
    ph: number;
    /** Carbonate hardness; °dKH */
    kh_dkh?: number;
    /** Chloride; mg/L */
    chloride_mg_l?: number;
    /** Food a day; g/day */
    feed_g_day?: number;
    /** Protein in the food, as a fraction */
    protein_fraction?: number;
    /** Fish, all together; g */
    fish_g?: number;
    /** Planting */
    planting: "none" | "light" | "medium" | "dense";
    /** How it was started */
    seeded: "none" | "starter" | "mature_media";
  };
  /** Now, counted from the tank's start; h */
  now_h: number;
  /** Readings */
  readings: ({
    /** When, counted from the tank's start; h */
    at_h: number;
    /** What was tested */
    parameter: "total_ammonia" | "nitrite" | "nitrate" | "ph" | "temperature" | "kh";
    /** Reading */
    value: number;
    /** Counted as */
    basis: "ion" | "n";
    /** The kit's own steps */
    steps?: number[];
  })[];
  /** Water changes */
  changes: {
    /** When, counted from the tank's start; later than now = planned; h */
    at_h: number;
    /** Share of the water changed */
    fraction: number;
    /** The new water */
    source?: {
      /** Total ammonia in it, as nitrogen; mg N/L */
      tan_mg_n_l: number;
      /** Nitrite in it, as nitrogen; mg N/L */
      nitrite_mg_n_l: number;
      /** Nitrate in it, as nitrogen; mg N/L */
      nitrate_mg_n_l: number;
      /** Its carbonate hardness; °dKH */
      kh_dkh?: number;
    };
  }[];
  /** Ammonia added */
  doses: {
    /** When, counted from the tank's start; later than now = planned; h */
    at_h: number;
    /** What it adds, as nitrogen; mg N/L */
    tan_mg_n_l: number;
  }[];
  /** Feedings */
  feedings: {
    /** When, counted from the tank's start; later than now = planned; h */
    at_h: number;
    /** Food; g */
    feed_g: number;
    /** Protein in it, as a fraction */
    protein_fraction?: number;
  }[];
  /** The new water */
  source?: {
    /** Total ammonia in it, as nitrogen; mg N/L */
    tan_mg_n_l: number;
    /** Nitrite in it, as nitrogen; mg N/L */
    nitrite_mg_n_l: number;
    /** Nitrate in it, as nitrogen; mg N/L */
    nitrate_mg_n_l: number;
    /** pH of it */
    ph?: number;
    /** Carbonate hardness of it; °dKH */
    kh_dkh?: number;
    /** Temperature of it; °C */
    temperature_c?: number;
  };
  /** Limits to keep */
  limits?: {
    /** Free ammonia, as nitrogen; mg N/L */
    nh3_mg_n_l?: number;
    /** Nitrite, as nitrogen; mg N/L */
    nitrite_mg_n_l?: number;
    /** Nitrate, as nitrogen; mg N/L */
    nitrate_mg_n_l?: number;
  };
  /** Risk of passing a limit that you accept */
  risk: number;
  /** Time to the next test; h */
  next_test_h: number;
  /** Most you would change at once */
  max_fraction: number;
  /** Seed of the draws */
  seed: number;
}

/** What change_plan answers. */
export interface ChangePlanAnswer {
  /** Change now; L */
  litres: number;
  /** Of the water in the tank; 1 */
  fraction: number;
  /** Chance of passing ammonia's or nitrite's limit, after it; 1 */
  pass_chance: number;
  /** Chance without a change; 1 */
  pass_chance_without: number;
  /** Enough, with the usual food */
  enough: boolean;
  /** Several changes until the next test */
  several?: {
    /** How many; 1 */
    count: number;
    /** Each; 1 */
    fraction_each: number;
    /** One every; h */
    every_h: number;
    /** Chance of passing a limit after the last; 1 */
    pass_chance: number;
  } | null;
  /** What in the new water is the reason */
  cause?: "total_ammonia" | "nitrite" | "ph" | null;
  /** And besides */
  advice: ("no_change" | "feed_half" | "several_changes" | "feed_nothing" | "feed_less" | "test_at_half_time" | "test_sooner" | "nitrate_slowly" | "source_is_the_cause" | "source_over_limit")[];
  /** Highest before the next test */
  peak: {
    /** Free ammonia, as nitrogen */
    nh3_mg_n_l: {
      /** one in ten below; mg N/L */
      p10: number;
      /** middle; mg N/L */
      p50: number;
      /** one in ten above; mg N/L */
      p90: number;
    };
    /** Nitrite, as nitrogen */
    nitrite_mg_n_l: {
      /** one in ten below; mg N/L */
      p10: number;
      /** middle; mg N/L */
      p50: number;
      /** one in ten above; mg N/L */
      p90: number;
    };
    /** Nitrate, as nitrogen */
    nitrate_mg_n_l: {
      /** one in ten below; mg N/L */
      p10: number;
      /** middle; mg N/L */
      p50: number;
      /** one in ten above; mg N/L */
      p90: number;
    };
  };
  /** Readings that do not fit */
  doubts: ({
    /** When; h */
    at_h: number;
    /** What */
    parameter: "total_ammonia" | "nitrite" | "nitrate";
    /** It read, as nitrogen; mg N/L */
    value_mg_n_l: number;
    /** Expected from; mg N/L */
    expected_p10_mg_n_l: number;
    /** to; mg N/L */
    expected_p90_mg_n_l: number;
  })[];
}

/**
 * Input of closed_water: How long the oxygen of a bag, box or covered tank without power lasts, and what the water is
 * like then.
 */
export interface ClosedWaterInput {
  /** Water in it; L */
  water_l: number;
  /** Air or oxygen above it; L */
  air_l?: number;
  /** Above the water there is */
  filling?: "air" | "oxygen";
  /** Water temperature; °C */
  temperature_c: number;
  /** Animals */
  animals: ({
    /** Species */
    species?: string;
    /** Your own name for it */
    name?: string;
    /** How many */
    count?: number;
    /** Length, tip to tip; cm */
    length_cm?: number;
    /** Build, for one of your own */
    shape?: "fusiform" | "deep" | "elongated" | "eel" | "shrimp" | "snail";
    /** Its own length-weight factor a */
    mass_a?: number;
    /** Its own length-weight exponent b */
    mass_b?: number;
  })[];
  /** Oxygen at the start, of saturation with air; % */
  start_percent?: number;
  /** Oxygen not to fall below; mg/L */
  least_mg_l?: number;
  /** pH */
  ph?: number;
  /** Carbonate hardness; °dKH */
  kh_dkh?: number;
  /** Total ammonia at the start, as nitrogen; mg N/L */
  tan_mg_n_l?: number;
}

/** The same once it is checked: usual values filled in. */
export interface ClosedWaterValues {
  /** Water in it; L */
  water_l: number;
  /** Air or oxygen above it; L */
  air_l: number;
  /** Above the water there is */
  filling: "air" | "oxygen";
  /** Water temperature; °C */
  temperature_c: number;
  /** Animals */
  animals: ({
    /** Species */
    species?: string;
    /** Your own name for it */
    name?: string;
    /** How many */
    count: number;
    /** Length, tip to tip; cm */
    length_cm?: number;
    /** Build, for one of your own */
    shape?: "fusiform" | "deep" | "elongated" | "eel" | "shrimp" | "snail";
    /** Its own length-weight factor a */
    mass_a?: number;
    /** Its own length-weight exponent b */
    mass_b?: number;
  })[];
  /** Oxygen at the start, of saturation with air; % */
  start_percent: number;
  /** Oxygen not to fall below; mg/L */
  least_mg_l: number;
  /** pH */
  ph?: number;
  /** Carbonate hardness; °dKH */
  kh_dkh?: number;
  /** Total ammonia at the start, as nitrogen; mg N/L */
  tan_mg_n_l: number;
}

/** What closed_water answers. */
export interface ClosedWaterAnswer {
  /** Lasts, carried or stirred; h */
  hours?: number | null;
  /** With frightened animals; h */
  hours_low?: number | null;
  /** Standing still, by the oxygen in the water alone; h */
  hours_still?: number | null;
  /** Carbon dioxide at the end, or after two days; mg/L */
  co2_then_mg_l?: number | null;
  /** pH then */
  ph_then?: number | null;
  /** Total ammonia then, as nitrogen; mg N/L */
  tan_then_mg_n_l?: number | null;
  /** Free ammonia then, as nitrogen; mg N/L */
  nh3_then_mg_n_l?: number | null;
  /** Oxygen that can be used; mg */
  oxygen_mg: number;
  /** Animals together; g */
  animals_g: number;
  /** They breathe; mg/h */
  animals_mg_h: number;
}

/** Input of compatibility: What stands against keeping these animals in one tank, and the water that suits them all. */
export interface CompatibilityInput {
  /** Animals */
  animals: ({
    /** Species */
    species?: string;
    /** Your own name for it */
    name?: string;
    /** How many */
    count?: number;
    /** Length, tip to tip; cm */
    length_cm?: number;
    /** Build, for one of your own */
    shape?: "fusiform" | "deep" | "elongated" | "eel" | "shrimp" | "snail";
    /** Its own length-weight factor a */
    mass_a?: number;
    /** Its own length-weight exponent b */
    mass_b?: number;
    /** Its coolest water; °C */
    temperature_low_c?: number;
    /** Its warmest water; °C */
    temperature_high_c?: number;
    /** Its lowest pH */
    ph_low?: number;
    /** Its highest pH */
    ph_high?: number;
    /** Its softest water; °dGH */
    gh_low_dgh?: number;
    /** Its hardest water; °dGH */
    gh_high_dgh?: number;
    /** Smallest group it should live in */
    group_min?: number;
    /** What it eats of its tankmates */
    mouth?: "grazer" | "picker" | "opportunist" | "predator";
    /** Temperament */
    temperament?: "peaceful" | "restless" | "territorial" | "aggressive";
  })[];
  /** The tank's temperature; °C */
  temperature_c?: number;
  /** The tank's pH */
  ph?: number;
  /** The tank's general hardness; °dGH */
  gh_dgh?: number;
  /** pH of the new water */
  source_ph?: number;
  /** General hardness of the new water; °dGH */
  source_gh_dgh?: number;
  /** Planting */
  planting?: "none" | "light" | "medium" | "dense";
  /** Surface */
  cover?: "open" | "lid";
}

/** The same once it is checked: usual values filled in. */
export interface CompatibilityValues {
  /** Animals */
  animals: ({
    /** Species */
    species?: string;
    /** Your own name for it */
    name?: string;
    /** How many */
    count: number;
    /** Length, tip to tip; cm */
    length_cm?: number;
    /** Build, for one of your own */
    shape?: "fusiform" | "deep" | "elongated" | "eel" | "shrimp" | "snail";
    /** Its own length-weight factor a */
    mass_a?: number;
    /** Its own length-weight exponent b */
    mass_b?: number;
    /** Its coolest water; °C */
    temperature_low_c?: number;
    /** Its warmest water; °C */
    temperature_high_c?: number;
    /** Its lowest pH */
    ph_low?: number;
    /** Its highest pH */
    ph_high?: number;
    /** Its softest water; °dGH */
    gh_low_dgh?: number;
    /** Its hardest water; °dGH */
    gh_high_dgh?: number;
    /** Smallest group it should live in */
    group_min?: number;
    /** What it eats of its tankmates */
    mouth?: "grazer" | "picker" | "opportunist" | "predator";
    /** Temperament */
    temperament?: "peaceful" | "restless" | "territorial" | "aggressive";
  })[];
  /** The tank's temperature; °C */
  temperature_c?: number;
  /** The tank's pH */
  ph?: number;
  /** The tank's general hardness; °dGH */
  gh_dgh?: number;
  /** pH of the new water */
  source_ph?: number;
  /** General hardness of the new water; °dGH */
  source_gh_dgh?: number;
  /** Planting */
  planting: "none" | "light" | "medium" | "dense";
  /** Surface */
  cover: "open" | "lid";
}

/** What compatibility answers. */
export interface CompatibilityAnswer {
  /** Together */
  verdict: "together" | "with_care" | "not_together";
  /** Water for all, from; °C */
  temperature_low_c?: number | null;
  /** to; °C */
  temperature_high_c?: number | null;
  /** pH for all, from */
  ph_low?: number | null;
  /** to */
  ph_high?: number | null;
  /** Hardness for all, from; °dGH */
  gh_low_dgh?: number | null;
  /** to; °dGH */
  gh_high_dgh?: number | null;
  /** Findings */
  findings: ({
    /** What */
    kind: "tank_temperature" | "tank_ph" | "tank_hardness" | "source_ph" | "source_hardness" | "temperature_apart" | "ph_apart" | "hardness_apart" | "eaten" | "may_be_eaten" | "attacks" | "guards_ground" | "young_eaten" | "eats_snails" | "nips_fins" | "rivals" | "bullies" | "better_alone" | "too_many_rivals" | "group_small" | "may_cross" | "eats_plants" | "digs" | "jumps" | "not_known";
    /** How serious */
    severity: "bar" | "care" | "unknown";
    /** Who */
    a: string;
    /** Beside */
    b: string;
    /** Figure */
    a_low?: number | null;
    /** and */
    a_high?: number | null;
    /** Against */
    b_low?: number | null;
    /** and */
    b_high?: number | null;
  })[];
}

/**
 * Input of dechlorinator_dose: How much dechlorinator this change needs by its label, and what chloramine leaves
 * behind.
 */
export interface DechlorinatorDoseInput {
  /** New water; L */
  change_l: number;
  /** Water in the tank; L */
  tank_l?: number;
  /** The label doses for */
  basis?: "new_water" | "whole_tank";
  /** The label says: millilitres (or grams of a powder); ml */
  label_ml?: number;
  /** for this much water; L */
  label_per_l?: number;
  /** In the tap water */
  disinfectant?: "chlorine" | "chloramine";
  /** How much of it, as Cl₂; mg/L */
  disinfectant_mg_l?: number;
}

/** The same once it is checked: usual values filled in. */
export interface DechlorinatorDoseValues {
  /** New water; L */
  change_l: number;
  /** Water in the tank; L */
  tank_l?: number;
  /** The label doses for */
  basis: "new_water" | "whole_tank";
  /** The label says: millilitres (or grams of a powder); ml */
  label_ml?: number;
  /** for this much water; L */
  label_per_l?: number;
  /** In the tap water */
  disinfectant?: "chlorine" | "chloramine";
  /** How much of it, as Cl₂; mg/L */
  disinfectant_mg_l?: number;
}

/** What dechlorinator_dose answers. */
export interface DechlorinatorDoseAnswer {
  /** Dose by the label (ml, or g of a powder); ml */
  label_dose_ml?: number | null;
  /** Sodium thiosulfate pentahydrate, field ratio; mg */
  thiosulfate_pentahydrate_mg?: number | null;
  /** Sodium thiosulfate pentahydrate, enough in any case; mg */
  thiosulfate_pentahydrate_safe_mg?: number | null;
  /** Or ascorbic acid; mg */
  ascorbic_acid_mg?: number | null;
  /** Ammonia freed in the new water, at least, as nitrogen; mg N/L */
  freed_ammonia_mg_n_l?: number | null;
  /** The same once mixed in the tank; mg N/L */
  freed_ammonia_in_tank_mg_n_l?: number | null;
  /** Water the label's dose is for; L */
  treated_l: number;
}

/** Input of dilution: What is left after one or several partial changes, and how large a change a target needs. */
export interface DilutionInput {
  /** In the tank now; mg/L */
  before_mg_l: number;
  /** In the new water; mg/L */
  source_mg_l?: number;
  /** Changes one after another, as shares of the water in the tank */
  fractions?: number[];
  /** Wanted; mg/L */
  target_mg_l?: number;
  /** Rises each day by; mg/L/day */
  load_mg_l_day?: number;
  /** A change every; days */
  every_days?: number;
  /** Each time, of the water; 1 */
  routine_fraction?: number;
}

/** The same once it is checked: usual values filled in. */
export interface DilutionValues {
  /** In the tank now; mg/L */
  before_mg_l: number;
  /** In the new water; mg/L */
  source_mg_l: number;
  /** Changes one after another, as shares of the water in the tank */
  fractions: number[];
  /** Wanted; mg/L */
  target_mg_l?: number;
  /** Rises each day by; mg/L/day */
  load_mg_l_day?: number;
  /** A change every; days */
  every_days?: number;
  /** Each time, of the water; 1 */
  routine_fraction?: number;
}

/** What dilution answers. */
export interface DilutionAnswer {
  /** After the changes; mg/L */
  after_mg_l: number;
  /** Change that reaches what is wanted, as a share of the water; 1 */
  fraction_needed?: number | null;
  /** With the routine it settles, just before a change, at; mg/L */
  settles_before_mg_l?: number | null;
  /** and just after a change at; mg/L */
  settles_after_mg_l?: number | null;
  /** Nineteen twentieths of the way there takes; days */
  settles_in_days?: number | null;
  /** After each change in turn */
  after_each_mg_l?: number[] | null;
}

/**
 * Input of evaporation: How much water a tank loses to the air in a day, the heat it takes, and what topping up leaves
 * behind.
 */
export interface EvaporationInput {
  /** Water surface: length; cm */
  length_cm?: number;
  /** Water surface: width; cm */
  width_cm?: number;
  /** Water surface; cm² */
  surface_cm2?: number;
  /** Water temperature; °C */
  temperature_c: number;
  /** Room temperature; °C */
  room_c: number;
  /** Relative humidity of the room; % */
  humidity_percent?: number;
  /** Draught over the surface; m/s */
  air_speed_m_s?: number;
  /** Share of the surface that is open */
  open_fraction?: number;
  /** Water in the tank; L */
  water_l?: number;
  /** General hardness of the water you top up with; °dGH */
  source_gh_dgh?: number;
}

/** The same once it is checked: usual values filled in. */
export interface EvaporationValues {
  /** Water surface: length; cm */
  length_cm?: number;
  /** Water surface: width; cm */
  width_cm?: number;
  /** Water surface; cm² */
  surface_cm2?: number;
  /** Water temperature; °C */
  temperature_c: number;
  /** Room temperature; °C */
  room_c: number;
  /** Relative humidity of the room; % */
  humidity_percent: number;
  /** Draught over the surface; m/s */
  air_speed_m_s: number;
  /** Share of the surface that is open */
  open_fraction: number;
  /** Water in the tank; L */
  water_l?: number;
  /** General hardness of the water you top up with; °dGH */
  source_gh_dgh?: number;
}

/** What evaporation answers. */
export interface EvaporationAnswer {
  /** Evaporates a day; L/day */
  litres_day: number;
  /** To top up a week; L/week */
  litres_week: number;
  /** The water line falls a day; mm/day */
  drop_mm_day: number;
  /** Heat it takes from the water; W */
  heat_w: number;
  /** Hardness gained in 30 days by topping up alone; °dGH */
  gh_rise_dgh_month?: number | null;
  /** Vapour pressure, water less room; kPa */
  pressure_gap_kpa: number;
  /** Open surface; m² */
  open_m2: number;
}

/** Input of feed_ration: How many grams of food these animals need a day at this temperature. */
export interface FeedRationInput {
  /** Water temperature; °C */
  temperature_c: number;
  /** Animals */
  animals: ({
    /** Species */
    species?: string;
    /** Your own name for it */
    name?: string;
    /** How many */
    count?: number;
    /** Length, tip to tip; cm */
    length_cm?: number;
    /** Build, for one of your own */
    shape?: "fusiform" | "deep" | "elongated" | "eel" | "shrimp" | "snail";
    /** Its own length-weight factor a */
    mass_a?: number;
    /** Its own length-weight exponent b */
    mass_b?: number;
  })[];
  /** Dry part of the food; 1 */
  food_dry_fraction?: number;
  /** Fed now; g/day */
  feed_g_day?: number;
}

/** The same once it is checked: usual values filled in. */
export interface FeedRationValues {
  /** Water temperature; °C */
  temperature_c: number;
  /** Animals */
  animals: ({
    /** Species */
    species?: string;
    /** Your own name for it */
    name?: string;
    /** How many */
    count: number;
    /** Length, tip to tip; cm */
    length_cm?: number;
    /** Build, for one of your own */
    shape?: "fusiform" | "deep" | "elongated" | "eel" | "shrimp" | "snail";
    /** Its own length-weight factor a */
    mass_a?: number;
    /** Its own length-weight exponent b */
    mass_b?: number;
  })[];
  /** Dry part of the food; 1 */
  food_dry_fraction: number;
  /** Fed now; g/day */
  feed_g_day?: number;
}

/** What feed_ration answers. */
export interface FeedRationAnswer {
  /** Usual for grown, active animals; g/day */
  usual_g_day: number;
  /** Bare upkeep; g/day */
  upkeep_g_day: number;
  /** Most, for young ones that grow; g/day */
  most_g_day: number;
  /** The usual amount, of their mass; % */
  usual_percent?: number | null;
  /** Animals together; g */
  animals_g: number;
  /** They breathe; mg O₂/day */
  oxygen_mg_day: number;
}

/**
 * Input of filled_weight: What the filled tank weighs with all that is in, on and under it, and how hard it presses on
 * the floor.
 */
export interface FilledWeightInput {
  /** Length; cm */
  length_cm?: number;
  /** Width, front to back; cm */
  width_cm?: number;
  /** Height; cm */
  height_cm?: number;
  /** Measured */
  measures?: "outside" | "inside";
  /** Thickness of the glass; mm */
  glass_mm?: number;
  /** Bottom pane, if thicker; mm */
  base_glass_mm?: number;
  /** Weight of the empty tank; kg */
  tank_kg?: number;
  /** Water depth from the inside bottom (left out: to the rim); cm */
  fill_height_cm?: number;
  /** Water in it, measured; L */
  water_l?: number;
  /** Water temperature; °C */
  temperature_c?: number;
  /** Substrate, dry; kg */
  substrate_kg?: number;
  /** Stones and wood; kg */
  hardscape_kg?: number;
  /** Their density; kg/L */
  hardscape_density_kg_l?: number;
  /** Lid, lamp, filter and the rest; kg */
  equipment_kg?: number;
  /** Stand or cupboard, with what is in it; kg */
  stand_kg?: number;
  /** Length of what stands on the floor; cm */
  footprint_length_cm?: number;
  /** Width of what stands on the floor; cm */
  footprint_width_cm?: number;
}

/** The same once it is checked: usual values filled in. */
export interface FilledWeightValues {
  /** Length; cm */
  length_cm?: number;
  /** Width, front to back; cm */
  width_cm?: number;
  /** Height; cm */
  height_cm?: number;
  /** Measured */
  measures: "outside" | "inside";
  /** Thickness of the glass; mm */
  glass_mm?: number;
  /** Bottom pane, if thicker; mm */
  base_glass_mm?: number;
  /** Weight of the empty tank; kg */
  tank_kg?: number;
  /** Water depth from the inside bottom (left out: to the rim); cm */
  fill_height_cm?: number;
  /** Water in it, measured; L */
  water_l?: number;
  /** Water temperature; °C */
  temperature_c: number;
  /** Substrate, dry; kg */
  substrate_kg: number;
  /** Stones and wood; kg */
  hardscape_kg: number;
  /** Their density; kg/L */
  hardscape_density_kg_l: number;
  /** Lid, lamp, filter and the rest; kg */
  equipment_kg: number;
  /** Stand or cupboard, with what is in it; kg */
  stand_kg: number;
  /** Length of what stands on the floor; cm */
  footprint_length_cm?: number;
  /** Width of what stands on the floor; cm */
  footprint_width_cm?: number;
}

/** What filled_weight answers. */
export interface FilledWeightAnswer {
  /** All of it, filled; kg */
  total_kg: number;
  /** On the floor under it, on average; kPa */
  footprint_kpa: number;
  /** What floors of dwellings are commonly designed for, at least; kPa */
  dwelling_kpa: number;
  /** On each of four feet, if they share it equally; kg */
  foot_kg: number;
  /** The empty tank, to be lifted; kg */
  empty_tank_kg: number;
  /** Water; kg */
  water_kg: number;
  /** Density of the water; kg/m³ */
  density_kg_m3: number;
  /** Footprint; m² */
  footprint_m2: number;
}

/** Input of free_ammonia: How much of the total ammonia is the toxic, un-ionised form at this pH and temperature. */
export interface FreeAmmoniaInput {
  /** Total ammonia, as nitrogen; mg N/L */
  tan_mg_n_l: number;
  /** pH */
  ph: number;
  /** Water temperature; °C */
  temperature_c: number;
  /** Ionic strength (0 = on the safe side); mol/L */
  ionic_strength_mol_l?: number;
}

/** The same once it is checked: usual values filled in. */
export interface FreeAmmoniaValues {
  /** Total ammonia, as nitrogen; mg N/L */
  tan_mg_n_l: number;
  /** pH */
  ph: number;
  /** Water temperature; °C */
  temperature_c: number;
  /** Ionic strength (0 = on the safe side); mol/L */
  ionic_strength_mol_l: number;
}

/** What free_ammonia answers. */
export interface FreeAmmoniaAnswer {
  /** Share that is free ammonia; 1 */
  fraction: number;
  /** Free ammonia, as nitrogen; mg N/L */
  nh3_mg_n_l: number;
  /** Free ammonia, as NH₃; mg/L */
  nh3_mg_l: number;
  /** pKa in this water; 1 */
  pka: number;
}

/** Input of hardness_units: One hardness or alkalinity on every scale that kits and water reports use. */
export interface HardnessUnitsInput {
  /** Reading */
  value: number;
  /** On the scale */
  unit: "dh" | "ppm_caco3" | "mmol_l" | "meq_l" | "fh" | "clark" | "gpg" | "ca_mg_l" | "mg_mg_l" | "hco3_mg_l";
}

/** The same once it is checked: usual values filled in. */
export interface HardnessUnitsValues {
  /** Reading */
  value: number;
  /** On the scale */
  unit: "dh" | "ppm_caco3" | "mmol_l" | "meq_l" | "fh" | "clark" | "gpg" | "ca_mg_l" | "mg_mg_l" | "hco3_mg_l";
}

/** What hardness_units answers. */
export interface HardnessUnitsAnswer {
  /** German degrees; °dH */
  dh: number;
  /** As CaCO₃; mg/L */
  ppm_caco3: number;
  /** Of calcium and magnesium; mmol/L */
  mmol_l: number;
  /** As charges; meq/L */
  meq_l: number;
  /** French degrees; °fH */
  fh: number;
  /** English degrees; °Clark */
  clark: number;
  /** Grains per US gallon; gpg */
  gpg: number;
}

/** Input of heater_power: How many watts keep the tank warm in the coldest hour of its room. */
export interface HeaterPowerInput {
  /** Length; cm */
  length_cm: number;
  /** Width, front to back; cm */
  width_cm: number;
  /** Height of the water; cm */
  height_cm: number;
  /** Thickness of the glass; mm */
  glass_mm?: number;
  /** Water temperature wanted; °C */
  temperature_c: number;
  /** Room at its coldest; °C */
  room_c: number;
  /** Relative humidity of the room; % */
  humidity_percent?: number;
  /** Share of the surface that is open */
  open_fraction?: number;
  /** Reserve */
  reserve?: number;
  /** Water in the tank; L */
  water_l?: number;
}

/** The same once it is checked: usual values filled in. */
export interface HeaterPowerValues {
  /** Length; cm */
  length_cm: number;
  /** Width, front to back; cm */
  width_cm: number;
  /** Height of the water; cm */
  height_cm: number;
  /** Thickness of the glass; mm */
  glass_mm: number;
  /** Water temperature wanted; °C */
  temperature_c: number;
  /** Room at its coldest; °C */
  room_c: number;
  /** Relative humidity of the room; % */
  humidity_percent: number;
  /** Share of the surface that is open */
  open_fraction: number;
  /** Reserve */
  reserve: number;
  /** Water in the tank; L */
  water_l?: number;
}

/** What heater_power answers. */
export interface HeaterPowerAnswer {
  /** Heater, at least; W */
  heater_w: number;
  /** Heat lost at that temperature; W */
  loss_w: number;
  /** With this heater it warms, near the end; °C/hour */
  warming_c_hour?: number | null;
  /** Without power it cools, at first; °C/hour */
  cooling_c_hour?: number | null;
  /** Through sides and bottom; W */
  glass_loss_w: number;
  /** From the top, without evaporation; W */
  top_loss_w: number;
  /** By evaporation; W */
  evaporation_w: number;
  /** Heat through a side pane; W/m²/K */
  side_w_m2_k: number;
}

/**
 * Input of ionic_strength: The ionic strength of a water from its conductivity or dissolved solids, for a closer figure
 * of free ammonia.
 */
export interface IonicStrengthInput {
  /** Conductivity at 25 °C; µS/cm */
  conductivity_us_cm?: number;
  /** or dissolved solids; mg/L */
  tds_mg_l?: number;
}

/** The same once it is checked: usual values filled in. */
export interface IonicStrengthValues {
  /** Conductivity at 25 °C; µS/cm */
  conductivity_us_cm?: number;
  /** or dissolved solids; mg/L */
  tds_mg_l?: number;
}

/** What ionic_strength answers. */
export interface IonicStrengthAnswer {
  /** Ionic strength; mol/L */
  ionic_strength_mol_l: number;
}

/** Input of light_dose: How much light the plants get in a day, or how many hours reach the amount wanted. */
export interface LightDoseInput {
  /** Light where the plants grow (PPFD); µmol/m²/s */
  ppfd_umol_m2_s: number;
  /** Lighting time a day; h */
  hours: number;
  /** Of these, each dawn and dusk takes; min */
  ramp_minutes?: number;
  /** Light wanted in a day; mol/m²/day */
  wanted_mol_m2_day?: number;
}

/** The same once it is checked: usual values filled in. */
export interface LightDoseValues {
  /** Light where the plants grow (PPFD); µmol/m²/s */
  ppfd_umol_m2_s: number;
  /** Lighting time a day; h */
  hours: number;
  /** Of these, each dawn and dusk takes; min */
  ramp_minutes: number;
  /** Light wanted in a day; mol/m²/day */
  wanted_mol_m2_day?: number;
}

/** What light_dose answers. */
export interface LightDoseAnswer {
  /** Light in a day (daily light integral); mol/m²/day */
  dli_mol_m2_day: number;
  /** Hours at full light that this equals; h */
  full_hours: number;
  /** How strong this light is */
  band: "low" | "medium" | "high";
  /** Hours a day for the light wanted; h */
  hours_needed?: number | null;
}

/**
 * Input of nitrite_risk: How dangerous this nitrite is at the water's chloride, and how much salt would shield the
 * fish.
 */
export interface NitriteRiskInput {
  /** Nitrite, as nitrogen; mg N/L */
  nitrite_mg_n_l: number;
  /** Chloride; mg/L */
  chloride_mg_l?: number;
  /** Water in the tank; L */
  volume_l?: number;
}

/** The same once it is checked: usual values filled in. */
export interface NitriteRiskValues {
  /** Nitrite, as nitrogen; mg N/L */
  nitrite_mg_n_l: number;
  /** Chloride; mg/L */
  chloride_mg_l: number;
  /** Water in the tank; L */
  volume_l?: number;
}

/** What nitrite_risk answers. */
export interface NitriteRiskAnswer {
  /** This nitrite is */
  risk: "below_both" | "between" | "above_both";
  /** Mean for weeks (30 days), as nitrogen; mg N/L */
  mean_limit_mg_n_l: number;
  /** Maximum at any time, as nitrogen; mg N/L */
  maximum_limit_mg_n_l: number;
  /** The reading as NO₂; mg/L */
  nitrite_mg_l: number;
  /** Chloride for each NO₂, by mass (10 shields); 1 */
  chloride_per_nitrite?: number | null;
  /** Chloride missing to ten times the nitrite; mg/L */
  chloride_to_add_mg_l: number;
  /** That is sodium chloride; mg/L */
  salt_mg_l: number;
  /** For the whole tank; g */
  salt_g?: number | null;
}

/** Input of nitrogen_load: How much ammonia a day's food becomes, and what its oxidation takes from the water. */
export interface NitrogenLoadInput {
  /** Food a day; g/day */
  feed_g_day: number;
  /** Protein in the food, as a fraction */
  protein_fraction: number;
  /** Water in the tank; L */
  volume_l: number;
  /** Share left uneaten */
  uneaten_fraction?: number;
}

/** The same once it is checked: usual values filled in. */
export interface NitrogenLoadValues {
  /** Food a day; g/day */
  feed_g_day: number;
  /** Protein in the food, as a fraction */
  protein_fraction: number;
  /** Water in the tank; L */
  volume_l: number;
  /** Share left uneaten */
  uneaten_fraction: number;
}

/** What nitrogen_load answers. */
export interface NitrogenLoadAnswer {
  /** Ammonia a day, as nitrogen; mg N/day */
  tan_mg_n_day: number;
  /** Rise a day if nothing took it up; mg N/L/day */
  tan_mg_n_l_day: number;
  /** Nitrate a day once all of it is oxidised; mg NO₃/L/day */
  nitrate_mg_l_day: number;
  /** Carbonate hardness used up a day; °dKH/day */
  kh_drop_dkh_day: number;
  /** Oxygen the nitrifiers take a day; mg O₂/day */
  oxygen_mg_day: number;
}

/**
 * Input of nitrogen_units: The same reading as nitrogen and as the ion: what the kit shows against what a limit is
 * written in.
 */
export interface NitrogenUnitsInput {
  /** Reading; mg/L */
  value: number;
  /** Of */
  species: "nh3" | "nh4" | "no2" | "no3";
  /** Given as */
  basis: "ion" | "n";
}

/** The same once it is checked: usual values filled in. */
export interface NitrogenUnitsValues {
  /** Reading; mg/L */
  value: number;
  /** Of */
  species: "nh3" | "nh4" | "no2" | "no3";
  /** Given as */
  basis: "ion" | "n";
}

/** What nitrogen_units answers. */
export interface NitrogenUnitsAnswer {
  /** As nitrogen; mg N/L */
  as_n_mg_l: number;
  /** As the ion; mg/L */
  as_ion_mg_l: number;
  /** Mass of the ion for each mass of nitrogen; 1 */
  ion_per_n: number;
}

/**
 * Input of nutrient_routine: What salts or a bottle of your own give a week, what piles up, and the dose for a target.
 */
export interface NutrientRoutineInput {
  /** Water that is really there; L */
  water_l: number;
  /** Salts */
  salts: ({
    /** Salt */
    salt: "calcium_carbonate" | "calcium_chloride" | "calcium_chloride_dihydrate" | "calcium_nitrate_tetrahydrate" | "gypsum" | "magnesium_chloride_hexahydrate" | "magnesium_nitrate_hexahydrate" | "magnesium_sulfate_heptahydrate" | "potassium_bicarbonate" | "potassium_carbonate" | "potassium_dihydrogen_phosphate" | "potassium_nitrate" | "potassium_sulfate" | "sodium_bicarbonate" | "sodium_carbonate" | "sodium_chloride";
    /** Grams of it; g */
    g: number;
  })[];
  /** Dissolved in a bottle of; ml */
  stock_ml?: number;
  /** of which one dose is; ml */
  dose_ml?: number;
  /** Doses a week */
  doses_per_week?: number;
  /** Each change, as a share of the water; 1 */
  change_fraction?: number;
  /** A change every; days */
  every_days?: number;
  /** Plants take, of what is dosed; 1 */
  uptake_fraction?: number;
  /** Wanted each week, of */
  target_ion?: "ca" | "mg" | "na" | "k" | "cl" | "so4" | "no3" | "po4";
  /** how much in each litre; mg/L */
  target_mg_l_week?: number;
}

/** The same once it is checked: usual values filled in. */
export interface NutrientRoutineValues {
  /** Water that is really there; L */
  water_l: number;
  /** Salts */
  salts: ({
    /** Salt */
    salt: "calcium_carbonate" | "calcium_chloride" | "calcium_chloride_dihydrate" | "calcium_nitrate_tetrahydrate" | "gypsum" | "magnesium_chloride_hexahydrate" | "magnesium_nitrate_hexahydrate" | "magnesium_sulfate_heptahydrate" | "potassium_bicarbonate" | "potassium_carbonate" | "potassium_dihydrogen_phosphate" | "potassium_nitrate" | "potassium_sulfate" | "sodium_bicarbonate" | "sodium_carbonate" | "sodium_chloride";
    /** Grams of it; g */
    g: number;
  })[];
  /** Dissolved in a bottle of; ml */
  stock_ml?: number;
  /** of which one dose is; ml */
  dose_ml?: number;
  /** Doses a week */
  doses_per_week: number;
  /** Each change, as a share of the water; 1 */
  change_fraction?: number;
  /** A change every; days */
  every_days?: number;
  /** Plants take, of what is dosed; 1 */
  uptake_fraction: number;
  /** Wanted each week, of */
  target_ion?: "ca" | "mg" | "na" | "k" | "cl" | "so4" | "no3" | "po4";
  /** how much in each litre; mg/L */
  target_mg_l_week?: number;
}

/** What nutrient_routine answers. */
export interface NutrientRoutineAnswer {
  /** Each litre gains a week */
  week: {
    /** general hardness; °dGH */
    gh_dgh: number;
    /** carbonate hardness; °dKH */
    kh_dkh: number;
    /** calcium; mg/L */
    ca_mg_l?: number | null;
    /** magnesium; mg/L */
    mg_mg_l?: number | null;
    /** sodium; mg/L */
    na_mg_l?: number | null;
    /** potassium; mg/L */
    k_mg_l?: number | null;
    /** chloride; mg/L */
    cl_mg_l?: number | null;
    /** sulfate; mg/L */
    so4_mg_l?: number | null;
    /** bicarbonate; mg/L */
    hco3_mg_l?: number | null;
    /** carbonate; mg/L */
    co3_mg_l?: number | null;
    /** nitrate; mg/L */
    no3_mg_l?: number | null;
    /** phosphate; mg/L */
    po4_mg_l?: number | null;
  };
  /** With the changes it piles up, just before one, to */
  settles?: {
    /** general hardness; °dGH */
    gh_dgh: number;
    /** carbonate hardness; °dKH */
    kh_dkh: number;
    /** calcium; mg/L */
    ca_mg_l?: number | null;
    /** magnesium; mg/L */
    mg_mg_l?: number | null;
    /** sodium; mg/L */
    na_mg_l?: number | null;
    /** potassium; mg/L */
    k_mg_l?: number | null;
    /** chloride; mg/L */
    cl_mg_l?: number | null;
    /** sulfate; mg/L */
    so4_mg_l?: number | null;
    /** bicarbonate; mg/L */
    hco3_mg_l?: number | null;
    /** carbonate; mg/L */
    co3_mg_l?: number | null;
    /** nitrate; mg/L */
    no3_mg_l?: number | null;
    /** phosphate; mg/L */
    po4_mg_l?: number | null;
  } | null;
  /** Doses needed for the target; 1 */
  dose_factor?: number | null;
}

/**
 * Input of outlook: What this tank's ammonia, nitrite and nitrate will do before the next test, and when it will
 * process its load.
 */
export interface OutlookInput {
  /** The tank */
  tank: {
    /** Water in the tank; L */
    volume_l: number;
    /** Water temperature; °C */
    temperature_c: number;
    /** pH */
    ph: number;
    /** Carbonate hardness; °dKH */
    kh_dkh?: number;
    /** Chloride; mg/L */
    chloride_mg_l?: number;
    /** Food a day; g/day */
    feed_g_day?: number;
    /** Protein in the food, as a fraction */
    protein_fraction?: number;
    /** Fish, all together; g */
    fish_g?: number;
    /** Planting */
    planting?: "none" | "light" | "medium" | "dense";
    /** How it was started */
    seeded?: "none" | "starter" | "mature_media";
  };
  /** Now, counted from the tank's start; h */
  now_h: number;
  /** Readings */
  readings?: ({
    /** When, counted from the tank's start; h */
    at_h: number;
    /** What was tested */
    parameter: "total_ammonia" | "nitrite" | "nitrate" | "ph" | "temperature" | "kh";
    /** Reading */
    value: number;
    /** Counted as */
    basis?: "ion" | "n";
    /** The kit's own steps */
    steps?: number[];
  })[];
  /** Water changes */
  changes?: {
    /** When, counted from the tank's start; later than now = planned; h */
    at_h: number;
    /** Share of the water changed */
    fraction: number;
    /** The new water */
    source?: {
      /** Total ammonia in it, as nitrogen; mg N/L */
      tan_mg_n_l?: number;
      /** Nitrite in it, as nitrogen; mg N/L */
      nitrite_mg_n_l?: number;
      /** Nitrate in it, as nitrogen; mg N/L */
      nitrate_mg_n_l?: number;
      /** Its carbonate hardness; °dKH */
      kh_dkh?: number;
    };
  }[];
  /** Ammonia added */
  doses?: {
    /** When, counted from the tank's start; later than now = planned; h */
    at_h: number;
    /** What it adds, as nitrogen; mg N/L */
    tan_mg_n_l: number;
  }[];
  /** Feedings */
  feedings?: {
    /** When, counted from the tank's start; later than now = planned; h */
    at_h: number;
    /** Food; g */
    feed_g: number;
    /** Protein in it, as a fraction */
    protein_fraction?: number;
  }[];
  /** How far to look; h */
  horizon_h?: number;
  /** Food a day that is planned; g/day */
  planned_feed_g_day?: number;
  /** Limits to keep */
  limits?: {
    /** Free ammonia, as nitrogen; mg N/L */
    nh3_mg_n_l?: number;
    /** Nitrite, as nitrogen; mg N/L */
    nitrite_mg_n_l?: number;
    /** Nitrate, as nitrogen; mg N/L */
    nitrate_mg_n_l?: number;
  };
  /** Seed of the draws */
  seed?: number;
}

/** The same once it is checked: usual values filled in. */
export interface OutlookValues {
  /** The tank */
  tank: {
    /** Water in the tank; L */
    volume_l: number;
    /** Water temperature; °C */
    temperature_c: number;
    /** pH */
    ph: number;
    /** Carbonate hardness; °dKH */
    kh_dkh?: number;
    /** Chloride; mg/L */
    chloride_mg_l?: number;
    /** Food a day; g/day */
    feed_g_day?: number;
    /** Protein in the food, as a fraction */
    protein_fraction?: number;
    /** Fish, all together; g */
    fish_g?: number;
    /** Planting */
    planting: "none" | "light" | "medium" | "dense";
    /** How it was started */
    seeded: "none" | "starter" | "mature_media";
  };
  /** Now, counted from the tank's start; h */
  now_h: number;
  /** Readings */
  readings: ({
    /** When, counted from the tank's start; h */
    at_h: number;
    /** What was tested */
    parameter: "total_ammonia" | "nitrite" | "nitrate" | "ph" | "temperature" | "kh";
    /** Reading */
    value: number;
    /** Counted as */
    basis: "ion" | "n";
    /** The kit's own steps */
    steps?: number[];
  })[];
  /** Water changes */
  changes: {
    /** When, counted from the tank's start; later than now = planned; h */
    at_h: number;
    /** Share of the water changed */
    fraction: number;
    /** The new water */
    source?: {
      /** Total ammonia in it, as nitrogen; mg N/L */
      tan_mg_n_l: number;
      /** Nitrite in it, as nitrogen; mg N/L */
      nitrite_mg_n_l: number;
      /** Nitrate in it, as nitrogen; mg N/L */
      nitrate_mg_n_l: number;
      /** Its carbonate hardness; °dKH */
      kh_dkh?: number;
    };
  }[];
  /** Ammonia added */
  doses: {
    /** When, counted from the tank's start; later than now = planned; h */
    at_h: number;
    /** What it adds, as nitrogen; mg N/L */
    tan_mg_n_l: number;
  }[];
  /** Feedings */
  feedings: {
    /** When, counted from the tank's start; later than now = planned; h */
    at_h: number;
    /** Food; g */
    feed_g: number;
    /** Protein in it, as a fraction */
    protein_fraction?: number;
  }[];
  /** How far to look; h */
  horizon_h: number;
  /** Food a day that is planned; g/day */
  planned_feed_g_day?: number;
  /** Limits to keep */
  limits?: {
    /** Free ammonia, as nitrogen; mg N/L */
    nh3_mg_n_l?: number;
    /** Nitrite, as nitrogen; mg N/L */
    nitrite_mg_n_l?: number;
    /** Nitrate, as nitrogen; mg N/L */
    nitrate_mg_n_l?: number;
  };
  /** Seed of the draws */
  seed: number;
}

/** What outlook answers. */
export interface OutlookAnswer {
  /** Now */
  now: {
    /** Total ammonia, as nitrogen */
    total_ammonia_mg_n_l: {
      /** one in ten below; mg N/L */
      p10: number;
      /** middle; mg N/L */
      p50: number;
      /** one in ten above; mg N/L */
      p90: number;
    };
    /** Nitrite, as nitrogen */
    nitrite_mg_n_l: {
      /** one in ten below; mg N/L */
      p10: number;
      /** middle; mg N/L */
      p50: number;
      /** one in ten above; mg N/L */
      p90: number;
    };
    /** Nitrate, as nitrogen */
    nitrate_mg_n_l: {
      /** one in ten below; mg N/L */
      p10: number;
      /** middle; mg N/L */
      p50: number;
      /** one in ten above; mg N/L */
      p90: number;
    };
    /** Free ammonia, as nitrogen */
    nh3_mg_n_l: {
      /** one in ten below; mg N/L */
      p10: number;
      /** middle; mg N/L */
      p50: number;
      /** one in ten above; mg N/L */
      p90: number;
    };
  };
  /** Chance of passing each limit in that time */
  pass_chance: {
    /** free ammonia; 1 */
    nh3: number;
    /** nitrite; 1 */
    nitrite: number;
    /** nitrate; 1 */
    nitrate: number;
  };
  /** When it will likely process its load, counted from the tank's start */
  settled_h?: {
    /** one in ten below; h */
    p10: number;
    /** middle; h */
    p50?: number | null;
    /** one in ten above; h */
    p90?: number | null;
  } | null;
  /** When carbonate hardness falls to 1 °dKH, counted from the tank's start */
  kh_gone_h?: {
    /** one in ten below; h */
    p10: number;
    /** middle; h */
    p50: number;
    /** one in ten above; h */
    p90?: number | null;
  } | null;
  /** What it processes now, with ammonia and nitrite under their limits */
  capacity_mg_n_day: {
    /** one in ten below; mg N/day */
    p10: number;
    /** middle; mg N/day */
    p50: number;
    /** one in ten above; mg N/day */
    p90: number;
  };
  /** Readings that do not fit */
  doubts: ({
    /** When; h */
    at_h: number;
    /** What */
    parameter: "total_ammonia" | "nitrite" | "nitrate";
    /** It read, as nitrogen; mg N/L */
    value_mg_n_l: number;
    /** Expected from; mg N/L */
    expected_p10_mg_n_l: number;
    /** to; mg N/L */
    expected_p90_mg_n_l: number;
  })[];
  /** From now on */
  series: {
    /** When; h */
    at_h: number;
    /** Total ammonia, as nitrogen */
    total_ammonia_mg_n_l: {
      /** one in ten below; mg N/L */
      p10: number;
      /** middle; mg N/L */
      p50: number;
      /** one in ten above; mg N/L */
      p90: number;
    };
    /** Nitrite, as nitrogen */
    nitrite_mg_n_l: {
      /** one in ten below; mg N/L */
      p10: number;
      /** middle; mg N/L */
      p50: number;
      /** one in ten above; mg N/L */
      p90: number;
    };
    /** Nitrate, as nitrogen */
    nitrate_mg_n_l: {
      /** one in ten below; mg N/L */
      p10: number;
      /** middle; mg N/L */
      p50: number;
      /** one in ten above; mg N/L */
      p90: number;
    };
    /** Free ammonia, as nitrogen */
    nh3_mg_n_l: {
      /** one in ten below; mg N/L */
      p10: number;
      /** middle; mg N/L */
      p50: number;
      /** one in ten above; mg N/L */
      p90: number;
    };
  }[];
}

/** Input of oxygen_night: How much oxygen is left at the end of the night in a still, planted, stocked tank. */
export interface OxygenNightInput {
  /** Water in the tank; L */
  water_l: number;
  /** Water surface; cm² */
  surface_cm2: number;
  /** Water temperature; °C */
  temperature_c: number;
  /** Animals */
  animals?: ({
    /** Species */
    species?: string;
    /** Your own name for it */
    name?: string;
    /** How many */
    count?: number;
    /** Length, tip to tip; cm */
    length_cm?: number;
    /** Build, for one of your own */
    shape?: "fusiform" | "deep" | "elongated" | "eel" | "shrimp" | "snail";
    /** Its own length-weight factor a */
    mass_a?: number;
    /** Its own length-weight exponent b */
    mass_b?: number;
  })[];
  /** Height above the sea; m */
  altitude_m?: number;
  /** Time without light; h */
  dark_hours?: number;
  /** Oxygen at lights out, share of saturation; % */
  evening_percent?: number;
  /** Planting */
  planting?: "none" | "light" | "medium" | "dense";
  /** Share of the surface under floating plants */
  floating_cover?: number;
  /** Bottom */
  substrate?: "bare" | "sand" | "soil";
  /** What moves the water at night */
  filter?: "none" | "sponge" | "internal" | "external";
  /** Surface */
  cover?: "open" | "lid";
  /** Ammonia the filter bacteria oxidise a day, as nitrogen; mg N/day */
  nitrified_mg_n_day?: number;
  /** Oxygen to keep until dawn; mg/L */
  least_mg_l?: number;
}

/** The same once it is checked: usual values filled in. */
export interface OxygenNightValues {
  /** Water in the tank; L */
  water_l: number;
  /** Water surface; cm² */
  surface_cm2: number;
  /** Water temperature; °C */
  temperature_c: number;
  /** Animals */
  animals: ({
    /** Species */
    species?: string;
    /** Your own name for it */
    name?: string;
    /** How many */
    count: number;
    /** Length, tip to tip; cm */
    length_cm?: number;
    /** Build, for one of your own */
    shape?: "fusiform" | "deep" | "elongated" | "eel" | "shrimp" | "snail";
    /** Its own length-weight factor a */
    mass_a?: number;
    /** Its own length-weight exponent b */
    mass_b?: number;
  })[];
  /** Height above the sea; m */
  altitude_m: number;
  /** Time without light; h */
  dark_hours: number;
  /** Oxygen at lights out, share of saturation; % */
  evening_percent?: number;
  /** Planting */
  planting: "none" | "light" | "medium" | "dense";
  /** Share of the surface under floating plants */
  floating_cover: number;
  /** Bottom */
  substrate: "bare" | "sand" | "soil";
  /** What moves the water at night */
  filter: "none" | "sponge" | "internal" | "external";
  /** Surface */
  cover: "open" | "lid";
  /** Ammonia the filter bacteria oxidise a day, as nitrogen; mg N/day */
  nitrified_mg_n_day: number;
  /** Oxygen to keep until dawn; mg/L */
  least_mg_l: number;
}

/** What oxygen_night answers. */
export interface OxygenNightAnswer {
  /** Oxygen at dawn; mg/L */
  dawn_mg_l: number;
  /** It may be as low as; mg/L */
  dawn_low_mg_l: number;
  /** or as high as; mg/L */
  dawn_high_mg_l: number;
  /** Share of saturation at dawn; % */
  dawn_percent: number;
  /** Lowest of the night; mg/L */
  lowest_mg_l: number;
  /** Hours after lights out until the limit is passed; h */
  hours_to_limit?: number | null;
  /** Saturation; mg/L */
  saturation_mg_l: number;
  /** At lights out; mg/L */
  evening_mg_l: number;
  /** Exchange through the surface; cm/h */
  exchange_cm_h: number;
  /** Animals; g */
  animals_g: number;
  /** Animals breathe; mg/h */
  animals_mg_h: number;
  /** Plants breathe; mg/h */
  plants_mg_h: number;
  /** The bottom takes; mg/h */
  substrate_mg_h: number;
  /** Filter bacteria take; mg/h */
  bacteria_mg_h: number;
}

/** Input of oxygen_saturation: How much oxygen the water holds when it is in balance with the air. */
export interface OxygenSaturationInput {
  /** Water temperature; °C */
  temperature_c: number;
  /** Altitude; m */
  altitude_m?: number;
  /** Air pressure at this place; kPa */
  pressure_kpa?: number;
  /** Oxygen measured; mg/L */
  oxygen_mg_l?: number;
}

/** The same once it is checked: usual values filled in. */
export interface OxygenSaturationValues {
  /** Water temperature; °C */
  temperature_c: number;
  /** Altitude; m */
  altitude_m?: number;
  /** Air pressure at this place; kPa */
  pressure_kpa?: number;
  /** Oxygen measured; mg/L */
  oxygen_mg_l?: number;
}

/** What oxygen_saturation answers. */
export interface OxygenSaturationAnswer {
  /** Oxygen at saturation; mg/L */
  saturation_mg_l: number;
  /** The measured oxygen is; % of that */
  saturation_percent?: number | null;
  /** Air pressure; kPa */
  air_pressure_kpa: number;
}

/** Input of salt_dose: How many grams of a salt raise the hardness or one ion by so much, and what else it brings. */
export interface SaltDoseInput {
  /** Water; L */
  volume_l: number;
  /** Salt */
  salt: "calcium_carbonate" | "calcium_chloride" | "calcium_chloride_dihydrate" | "calcium_nitrate_tetrahydrate" | "gypsum" | "magnesium_chloride_hexahydrate" | "magnesium_nitrate_hexahydrate" | "magnesium_sulfate_heptahydrate" | "potassium_bicarbonate" | "potassium_carbonate" | "potassium_dihydrogen_phosphate" | "potassium_nitrate" | "potassium_sulfate" | "sodium_bicarbonate" | "sodium_carbonate" | "sodium_chloride";
  /** Raise */
  raise: {
    /** General hardness by; °dGH */
    gh_dgh?: number;
    /** or carbonate hardness by; °dKH */
    kh_dkh?: number;
    /** or this ion */
    ion?: "ca" | "mg" | "na" | "k" | "cl" | "so4" | "no3" | "po4";
    /** by; mg/L */
    mg_l?: number;
  };
}

/** The same once it is checked: usual values filled in. */
export interface SaltDoseValues {
  /** Water; L */
  volume_l: number;
  /** Salt */
  salt: "calcium_carbonate" | "calcium_chloride" | "calcium_chloride_dihydrate" | "calcium_nitrate_tetrahydrate" | "gypsum" | "magnesium_chloride_hexahydrate" | "magnesium_nitrate_hexahydrate" | "magnesium_sulfate_heptahydrate" | "potassium_bicarbonate" | "potassium_carbonate" | "potassium_dihydrogen_phosphate" | "potassium_nitrate" | "potassium_sulfate" | "sodium_bicarbonate" | "sodium_carbonate" | "sodium_chloride";
  /** Raise */
  raise: {
    /** General hardness by; °dGH */
    gh_dgh?: number;
    /** or carbonate hardness by; °dKH */
    kh_dkh?: number;
    /** or this ion */
    ion?: "ca" | "mg" | "na" | "k" | "cl" | "so4" | "no3" | "po4";
    /** by; mg/L */
    mg_l?: number;
  };
}

/** What salt_dose answers. */
export interface SaltDoseAnswer {
  /** Salt; g */
  grams: number;
  /** Each litre gains */
  adds: {
    /** general hardness; °dGH */
    gh_dgh: number;
    /** carbonate hardness; °dKH */
    kh_dkh: number;
    /** calcium; mg/L */
    ca_mg_l?: number | null;
    /** magnesium; mg/L */
    mg_mg_l?: number | null;
    /** sodium; mg/L */
    na_mg_l?: number | null;
    /** potassium; mg/L */
    k_mg_l?: number | null;
    /** chloride; mg/L */
    cl_mg_l?: number | null;
    /** sulfate; mg/L */
    so4_mg_l?: number | null;
    /** bicarbonate; mg/L */
    hco3_mg_l?: number | null;
    /** carbonate; mg/L */
    co3_mg_l?: number | null;
    /** nitrate; mg/L */
    no3_mg_l?: number | null;
    /** phosphate; mg/L */
    po4_mg_l?: number | null;
  };
}

/**
 * Input of starter_dose: How much ammonium chloride or household ammonia feeds the bacteria as the planned fish will.
 */
export interface StarterDoseInput {
  /** Water in the tank; L */
  volume_l: number;
  /** Ammonia wanted, as nitrogen; mg N/L */
  tan_mg_n_l?: number;
  /** Food a day that the planned fish will get; g/day */
  feed_g_day?: number;
  /** Protein in that food, as a fraction */
  protein_fraction?: number;
  /** Household ammonia, per cent by mass; % */
  ammonia_percent?: number;
  /** Its density (left out: from the strength); kg/L */
  ammonia_density_kg_l?: number;
}

/** The same once it is checked: usual values filled in. */
export interface StarterDoseValues {
  /** Water in the tank; L */
  volume_l: number;
  /** Ammonia wanted, as nitrogen; mg N/L */
  tan_mg_n_l?: number;
  /** Food a day that the planned fish will get; g/day */
  feed_g_day?: number;
  /** Protein in that food, as a fraction */
  protein_fraction?: number;
  /** Household ammonia, per cent by mass; % */
  ammonia_percent?: number;
  /** Its density (left out: from the strength); kg/L */
  ammonia_density_kg_l?: number;
}

/** What starter_dose answers. */
export interface StarterDoseAnswer {
  /** Ammonium chloride; g */
  ammonium_chloride_g: number;
  /** Or household ammonia; ml */
  household_ammonia_ml?: number | null;
  /** Ammonia after the dose, as nitrogen; mg N/L */
  tan_mg_n_l: number;
  /** Nitrogen in the dose; mg N */
  tan_mg_n: number;
  /** Density used; kg/L */
  density_kg_l?: number | null;
}

/**
 * Input of steady_routine: Where nitrate, hardness or a salt settles under feeding, dosing, changes and topping up, and
 * the change that holds it.
 */
export interface SteadyRoutineInput {
  /** Added a day; mg/L/day */
  add_mg_l_day: number;
  /** Each change, as a share of the water; 1 */
  change_fraction: number;
  /** A change every; days */
  every_days: number;
  /** In the new water; mg/L */
  source_mg_l?: number;
  /** Evaporates a day, as a share of the water; 1 */
  evaporation_fraction_day?: number;
  /** In the water that replaces it; mg/L */
  top_up_mg_l?: number;
  /** It should not rise above; mg/L */
  ceiling_mg_l?: number;
}

/** The same once it is checked: usual values filled in. */
export interface SteadyRoutineValues {
  /** Added a day; mg/L/day */
  add_mg_l_day: number;
  /** Each change, as a share of the water; 1 */
  change_fraction: number;
  /** A change every; days */
  every_days: number;
  /** In the new water; mg/L */
  source_mg_l: number;
  /** Evaporates a day, as a share of the water; 1 */
  evaporation_fraction_day: number;
  /** In the water that replaces it; mg/L */
  top_up_mg_l: number;
  /** It should not rise above; mg/L */
  ceiling_mg_l?: number;
}

/** What steady_routine answers. */
export interface SteadyRoutineAnswer {
  /** It settles, just before a change, at; mg/L */
  before_change_mg_l: number;
  /** and just after a change at; mg/L */
  after_change_mg_l: number;
  /** Nineteen twentieths of the way there takes; days */
  days_to_settle: number;
  /** Least share, as often, that stays below; 1 */
  fraction_needed?: number | null;
  /** Or, with this share, a change at least every; days */
  every_days_needed?: number | null;
  /** It rises a day by; mg/L/day */
  rise_mg_l_day: number;
}

/**
 * Input of stock_headroom: How much food a day, and so how many grams of fish, this tank can process now and in one and
 * two weeks.
 */
export interface StockHeadroomInput {
  /** The tank */
  tank: {
    /** Water in the tank; L */
    volume_l: number;
    /** Water temperature; °C */
    temperature_c: number;
    /** pH */
    ph: number;
    /** Carbonate hardness; °dKH */
    kh_dkh?: number;
    /** Chloride; mg/L */
    chloride_mg_l?: number;
    /** Food a day; g/day */
    feed_g_day?: number;
    /** Protein in the food, as a fraction */
    protein_fraction?: number;
    /** Fish, all together; g */
    fish_g?: number;
    /** Planting */
    planting?: "none" | "light" | "medium" | "dense";
    /** How it was started */
    seeded?: "none" | "starter" | "mature_media";
  };
  /** Now, counted from the tank's start; h */
  now_h: number;
  /** Readings */
  readings?: ({
    /** When, counted from the tank's start; h */
    at_h: number;
    /** What was tested */
    parameter: "total_ammonia" | "nitrite" | "nitrate" | "ph" | "temperature" | "kh";
    /** Reading */
    value: number;
    /** Counted as */
    basis?: "ion" | "n";
    /** The kit's own steps */
    steps?: number[];
  })[];
  /** Water changes */
  changes?: {
    /** When, counted from the tank's start; later than now = planned; h */
    at_h: number;
    /** Share of the water changed */
    fraction: number;
    /** The new water */
    source?: {
      /** Total ammonia in it, as nitrogen; mg N/L */
      tan_mg_n_l?: number;
      /** Nitrite in it, as nitrogen; mg N/L */
      nitrite_mg_n_l?: number;
      /** Nitrate in it, as nitrogen; mg N/L */
      nitrate_mg_n_l?: number;
      /** Its carbonate hardness; °dKH */
      kh_dkh?: number;
    };
  }[];
  /** Ammonia added */
  doses?: {
    /** When, counted from the tank's start; later than now = planned; h */
    at_h: number;
    /** What it adds, as nitrogen; mg N/L */
    tan_mg_n_l: number;
  }[];
  /** Feedings */
  feedings?: {
    /** When, counted from the tank's start; later than now = planned; h */
    at_h: number;
    /** Food; g */
    feed_g: number;
    /** Protein in it, as a fraction */
    protein_fraction?: number;
  }[];
  /** Food a day, as a share of the fish's mass; 1/day */
  feed_share_of_mass?: number;
  /** Seed of the draws */
  seed?: number;
}

/** The same once it is checked: usual values filled in. */
export interface StockHeadroomValues {
  /** The tank */
  tank: {
    /** Water in the tank; L */
    volume_l: number;
    /** Water temperature; °C */
    temperature_c: number;
    /** pH */
    ph: number;
    /** Carbonate hardness; °dKH */
    kh_dkh?: number;
    /** Chloride; mg/L */
    chloride_mg_l?: number;
    /** Food a day; g/day */
    feed_g_day?: number;
    /** Protein in the food, as a fraction */
    protein_fraction?: number;
    /** Fish, all together; g */
    fish_g?: number;
    /** Planting */
    planting: "none" | "light" | "medium" | "dense";
    /** How it was started */
    seeded: "none" | "starter" | "mature_media";
  };
  /** Now, counted from the tank's start; h */
  now_h: number;
  /** Readings */
  readings: ({
    /** When, counted from the tank's start; h */
    at_h: number;
    /** What was tested */
    parameter: "total_ammonia" | "nitrite" | "nitrate" | "ph" | "temperature" | "kh";
    /** Reading */
    value: number;
    /** Counted as */
    basis: "ion" | "n";
    /** The kit's own steps */
    steps?: number[];
  })[];
  /** Water changes */
  changes: {
    /** When, counted from the tank's start; later than now = planned; h */
    at_h: number;
    /** Share of the water changed */
    fraction: number;
    /** The new water */
    source?: {
      /** Total ammonia in it, as nitrogen; mg N/L */
      tan_mg_n_l: number;
      /** Nitrite in it, as nitrogen; mg N/L */
      nitrite_mg_n_l: number;
      /** Nitrate in it, as nitrogen; mg N/L */
      nitrate_mg_n_l: number;
      /** Its carbonate hardness; °dKH */
      kh_dkh?: number;
    };
  }[];
  /** Ammonia added */
  doses: {
    /** When, counted from the tank's start; later than now = planned; h */
    at_h: number;
    /** What it adds, as nitrogen; mg N/L */
    tan_mg_n_l: number;
  }[];
  /** Feedings */
  feedings: {
    /** When, counted from the tank's start; later than now = planned; h */
    at_h: number;
    /** Food; g */
    feed_g: number;
    /** Protein in it, as a fraction */
    protein_fraction?: number;
  }[];
  /** Food a day, as a share of the fish's mass; 1/day */
  feed_share_of_mass?: number;
  /** Seed of the draws */
  seed: number;
}

/** What stock_headroom answers. */
export interface StockHeadroomAnswer {
  /** Food a day it processes now */
  feed_g_day_now: {
    /** one in ten below; g/day */
    p10: number;
    /** middle; g/day */
    p50: number;
    /** one in ten above; g/day */
    p90: number;
  };
  /** Fish it processes now */
  fish_g_now: {
    /** one in ten below; g */
    p10: number;
    /** middle; g */
    p50: number;
    /** one in ten above; g */
    p90: number;
  };
  /** Food a day in a week */
  feed_g_day_in_7_days: {
    /** one in ten below; g/day */
    p10: number;
    /** middle; g/day */
    p50: number;
    /** one in ten above; g/day */
    p90: number;
  };
  /** Fish in a week */
  fish_g_in_7_days: {
    /** one in ten below; g */
    p10: number;
    /** middle; g */
    p50: number;
    /** one in ten above; g */
    p90: number;
  };
  /** Food a day in two weeks */
  feed_g_day_in_14_days: {
    /** one in ten below; g/day */
    p10: number;
    /** middle; g/day */
    p50: number;
    /** one in ten above; g/day */
    p90: number;
  };
  /** Fish in two weeks */
  fish_g_in_14_days: {
    /** one in ten below; g */
    p10: number;
    /** middle; g */
    p50: number;
    /** one in ten above; g */
    p90: number;
  };
  /** Food a day used so far; g/day */
  feed_g_day_expected: number;
  /** Readings that do not fit */
  doubts: ({
    /** When; h */
    at_h: number;
    /** What */
    parameter: "total_ammonia" | "nitrite" | "nitrate";
    /** It read, as nitrogen; mg N/L */
    value_mg_n_l: number;
    /** Expected from; mg N/L */
    expected_p10_mg_n_l: number;
    /** to; mg N/L */
    expected_p90_mg_n_l: number;
  })[];
}

/**
 * Input of stocking_limit: How much life this tank carries by nitrogen, oxygen and room, and how many more of each
 * animal.
 */
export interface StockingLimitInput {
  /** Animals, as they will be when grown */
  animals: ({
    /** Species */
    species?: string;
    /** Your own name for it */
    name?: string;
    /** How many */
    count?: number;
    /** Length, tip to tip; cm */
    length_cm?: number;
    /** Build, for one of your own */
    shape?: "fusiform" | "deep" | "elongated" | "eel" | "shrimp" | "snail";
    /** Its own length-weight factor a */
    mass_a?: number;
    /** Its own length-weight exponent b */
    mass_b?: number;
    /** Temperament */
    temperament?: "peaceful" | "restless" | "territorial" | "aggressive";
  })[];
  /** Water in the tank; L */
  water_l: number;
  /** Water surface; cm² */
  surface_cm2: number;
  /** Length of the tank, inside; cm */
  length_cm: number;
  /** Water temperature; °C */
  temperature_c: number;
  /** How old it is, running */
  maturity?: "new" | "starting" | "mature";
  /** Time since it was planted; days */
  plants_age_days?: number;
  /** Ammonia its bacteria process a day, as nitrogen, where known; mg N/day */
  capacity_mg_n_day?: number;
  /** Planting */
  planting?: "none" | "light" | "medium" | "dense";
  /** Share of the surface under floating plants */
  floating_cover?: number;
  /** Share of the water changed each time */
  change_fraction?: number;
  /** A change every; days */
  every_days?: number;
  /** Nitrate to stay under, as nitrogen; mg N/L */
  nitrate_ceiling_mg_n_l?: number;
  /** Nitrate of the new water, as nitrogen; mg N/L */
  source_nitrate_mg_n_l?: number;
  /** Food a day, dry, as a share of the animals' mass */
  feed_share_day?: number;
  /** or grams of dry food a day, if you weigh it; g/day */
  feed_g_day?: number;
  /** Protein in the food, as a fraction */
  protein_fraction?: number;
  /** Time without light; h */
  dark_hours?: number;
  /** Bottom */
  substrate?: "bare" | "sand" | "soil";
  /** What moves the water at night */
  filter?: "none" | "sponge" | "internal" | "external";
  /** Surface */
  cover?: "open" | "lid";
  /** Height above the sea; m */
  altitude_m?: number;
  /** Oxygen to keep until dawn; mg/L */
  least_mg_l?: number;
  /** Oxygen read before the lights went on, with these animals in it; mg/L */
  dawn_oxygen_mg_l?: number;
}

/** The same once it is checked: usual values filled in. */
export interface StockingLimitValues {
  /** Animals, as they will be when grown */
  animals: ({
    /** Species */
    species?: string;
    /** Your own name for it */
    name?: string;
    /** How many */
    count: number;
    /** Length, tip to tip; cm */
    length_cm?: number;
    /** Build, for one of your own */
    shape?: "fusiform" | "deep" | "elongated" | "eel" | "shrimp" | "snail";
    /** Its own length-weight factor a */
    mass_a?: number;
    /** Its own length-weight exponent b */
    mass_b?: number;
    /** Temperament */
    temperament?: "peaceful" | "restless" | "territorial" | "aggressive";
  })[];
  /** Water in the tank; L */
  water_l: number;
  /** Water surface; cm² */
  surface_cm2: number;
  /** Length of the tank, inside; cm */
  length_cm: number;
  /** Water temperature; °C */
  temperature_c: number;
  /** How old it is, running */
  maturity: "new" | "starting" | "mature";
  /** Time since it was planted; days */
  plants_age_days?: number;
  /** Ammonia its bacteria process a day, as nitrogen, where known; mg N/day */
  capacity_mg_n_day?: number;
  /** Planting */
  planting: "none" | "light" | "medium" | "dense";
  /** Share of the surface under floating plants */
  floating_cover: number;
  /** Share of the water changed each time */
  change_fraction: number;
  /** A change every; days */
  every_days: number;
  /** Nitrate to stay under, as nitrogen; mg N/L */
  nitrate_ceiling_mg_n_l: number;
  /** Nitrate of the new water, as nitrogen; mg N/L */
  source_nitrate_mg_n_l: number;
  /** Food a day, dry, as a share of the animals' mass */
  feed_share_day: number;
  /** or grams of dry food a day, if you weigh it; g/day */
  feed_g_day?: number;
  /** Protein in the food, as a fraction */
  protein_fraction: number;
  /** Time without light; h */
  dark_hours: number;
  /** Bottom */
  substrate: "bare" | "sand" | "soil";
  /** What moves the water at night */
  filter: "none" | "sponge" | "internal" | "external";
  /** Surface */
  cover: "open" | "lid";
  /** Height above the sea; m */
  altitude_m: number;
  /** Oxygen to keep until dawn; mg/L */
  least_mg_l: number;
  /** Oxygen read before the lights went on, with these animals in it; mg/L */
  dawn_oxygen_mg_l?: number;
}

/** What stocking_limit answers. */
export interface StockingLimitAnswer {
  /** What limits it first */
  binding: "nitrogen" | "oxygen" | "room" | "cannot_tell";
  /** How many more, if only these are added */
  more: ({
    /** Animal */
    name: string;
    /** How many more */
    more?: number | null;
    /** Now */
    count: number;
    /** by nitrogen */
    nitrogen: number;
    /** by oxygen */
    oxygen?: number | null;
    /** by room */
    room?: number | null;
    /** by its own company */
    company?: number | null;
    /** Grown, each; g */
    each_g: number;
    /** Grown length; cm */
    adult_cm: number;
    /** Tank long enough for it */
    long_enough: boolean;
  })[];
  /** Grown animals it carries, mixed as listed; g */
  limit_g?: number | null;
  /** In it now, once grown; g */
  present_g: number;
  /** Still to spare; g */
  more_g?: number | null;
  /** By nitrogen; g */
  nitrogen_g: number;
  /** as little as; g */
  nitrogen_low_g: number;
  /** as much as; g */
  nitrogen_high_g: number;
  /** What of nitrogen */
  nitrogen_by: "processing" | "nitrate";
  /** By oxygen at dawn; g */
  oxygen_g: number;
  /** as little as; g */
  oxygen_low_g: number;
  /** as much as; g */
  oxygen_high_g: number;
  /** By room; g */
  room_g?: number | null;
  /** as little as; g */
  room_low_g?: number | null;
  /** as much as; g */
  room_high_g?: number | null;
  /** Food a day; g/day */
  feed_g_day: number;
  /** Ammonia from a gram of animals; mg N/g/day */
  tan_mg_n_g_day: number;
  /** Nitrate from a gram of animals; mg N/g/day */
  nitrate_mg_n_g_day: number;
  /** Bacteria process; mg N/day */
  processed_mg_n_day: number;
  /** Share of the plants' uptake that counts */
  plants_share: number;
  /** Plants take up; mg N/day */
  plants_mg_n_day: number;
  /** Changes carry out at the ceiling; mg N/day */
  changed_mg_n_day: number;
  /** Oxygen the night can spare for animals; mg/h */
  spare_oxygen_mg_h: number;
  /** Oxygen the animals take; mg/h */
  used_oxygen_mg_h: number;
  /** Surface the fish ask for; cm² */
  used_surface_cm2: number;
}

/**
 * Input of substrate: How much of each layer to buy for a bed that may rise to the back, capped and built up with
 * filled bags.
 */
export interface SubstrateInput {
  /** Length inside; cm */
  length_cm: number;
  /** Width inside, front to back; cm */
  width_cm: number;
  /** Layers, the lowest first */
  layers: ({
    /** What it is for */
    role?: "plain" | "nutrient" | "cap";
    /** Material */
    material: "sand" | "gravel" | "garden_soil" | "potting_soil" | "baked_clay" | "lava" | "other";
    /** Depth at the front; cm */
    front_cm: number;
    /** Depth at the back; cm */
    back_cm: number;
    /** Density, dry and poured (left out: usual for the material); kg/L */
    density_kg_l?: number;
    /** One bag in the shop holds; L */
    pack_l?: number;
    /** or weighs; kg */
    pack_kg?: number;
  })[];
  /** Mesh bags under the slope, to hold it up */
  support_bags?: number;
  /** One mesh bag holds, when full; L */
  support_bag_l?: number;
  /** Filled to this share */
  support_fill?: number;
}

/** The same once it is checked: usual values filled in. */
export interface SubstrateValues {
  /** Length inside; cm */
  length_cm: number;
  /** Width inside, front to back; cm */
  width_cm: number;
  /** Layers, the lowest first */
  layers: ({
    /** What it is for */
    role: "plain" | "nutrient" | "cap";
    /** Material */
    material: "sand" | "gravel" | "garden_soil" | "potting_soil" | "baked_clay" | "lava" | "other";
    /** Depth at the front; cm */
    front_cm: number;
    /** Depth at the back; cm */
    back_cm: number;
    /** Density, dry and poured (left out: usual for the material); kg/L */
    density_kg_l?: number;
    /** One bag in the shop holds; L */
    pack_l?: number;
    /** or weighs; kg */
    pack_kg?: number;
  })[];
  /** Mesh bags under the slope, to hold it up */
  support_bags: number;
  /** One mesh bag holds, when full; L */
  support_bag_l?: number;
  /** Filled to this share */
  support_fill: number;
}

/** What substrate answers. */
export interface SubstrateAnswer {
  /** All layers; L */
  litres: number;
  /** All layers, dry; kg */
  kg: number;
  /** Each layer */
  layers: ({
    /** Volume; L */
    litres: number;
    /** Weight, dry; kg */
    kg: number;
    /** Bags to buy */
    packs?: number | null;
  })[];
  /** Filling of the mesh bags; L */
  support_l: number;
  /** Bed at the front; cm */
  front_cm: number;
  /** Bed at the back; cm */
  back_cm: number;
  /** Slope of the surface; ° */
  slope_deg: number;
  /** Cap over the nutrient layer, front; cm */
  cap_front_cm?: number | null;
  /** Cap over the nutrient layer, back; cm */
  cap_back_cm?: number | null;
}

/**
 * Input of toxicant_limits: How much copper, salt and chlorine this hardness allows for fish, and for shrimp and
 * snails.
 */
export interface ToxicantLimitsInput {
  /** General hardness; °dGH */
  gh_dgh?: number;
  /** Total hardness, as CaCO₃; mg/L */
  hardness_mg_caco3_l?: number;
  /** Copper found; µg/L */
  copper_ug_l?: number;
  /** Chloride found; mg/L */
  chloride_mg_l?: number;
  /** Chlorine or chloramine found, as Cl₂; µg/L */
  chlorine_ug_l?: number;
}

/** The same once it is checked: usual values filled in. */
export interface ToxicantLimitsValues {
  /** General hardness; °dGH */
  gh_dgh?: number;
  /** Total hardness, as CaCO₃; mg/L */
  hardness_mg_caco3_l?: number;
  /** Copper found; µg/L */
  copper_ug_l?: number;
  /** Chloride found; mg/L */
  chloride_mg_l?: number;
  /** Chlorine or chloramine found, as Cl₂; µg/L */
  chlorine_ug_l?: number;
}

/** What toxicant_limits answers. */
export interface ToxicantLimitsAnswer {
  /** Copper for days, dissolved; µg/L */
  copper_acute_ug_l: number;
  /** Copper for weeks, dissolved; µg/L */
  copper_chronic_ug_l: number;
  /** Copper for weeks, in all: with shrimp and snails; µg/L */
  copper_ccme_ug_l: number;
  /** Chloride for days; mg/L */
  chloride_acute_mg_l: number;
  /** Chloride for weeks; mg/L */
  chloride_chronic_mg_l: number;
  /** Chlorine for an hour; µg/L */
  chlorine_acute_ug_l: number;
  /** Chlorine for days; µg/L */
  chlorine_chronic_ug_l: number;
  /** Chlorine with shrimp and snails; µg/L */
  chlorine_ccme_ug_l: number;
  /** Hardness used, as CaCO₃; mg/L */
  hardness_mg_l: number;
}

/** Input of volume: How many litres the tank holds to the rim, and how much water is really in it. */
export interface VolumeInput {
  /** Shape */
  shape: "cuboid" | "bow_front" | "cylinder" | "half_round" | "quarter_round" | "hexagon" | "bowl";
  /** Measured */
  measures?: "inside" | "outside";
  /** Length; cm */
  length_cm?: number;
  /** Width; cm */
  width_cm?: number;
  /** Diameter; cm */
  diameter_cm?: number;
  /** Depth of the bow; cm */
  bow_cm?: number;
  /** Height; cm */
  height_cm: number;
  /** Thickness of the glass; mm */
  glass_mm?: number;
  /** Water stands this high; cm */
  fill_height_cm?: number;
  /** Substrate, as it comes from the bag; L */
  substrate_l?: number;
  /** Share of the substrate that is pores; 1 */
  substrate_porosity?: number;
  /** Stone and sunken wood; kg */
  hardscape_kg?: number;
  /** Density of it; kg/L */
  hardscape_density_kg_l?: number;
  /** Water really filled in, if counted; L */
  metered_l?: number;
}

/** The same once it is checked: usual values filled in. */
export interface VolumeValues {
  /** Shape */
  shape: "cuboid" | "bow_front" | "cylinder" | "half_round" | "quarter_round" | "hexagon" | "bowl";
  /** Measured */
  measures: "inside" | "outside";
  /** Length; cm */
  length_cm?: number;
  /** Width; cm */
  width_cm?: number;
  /** Diameter; cm */
  diameter_cm?: number;
  /** Depth of the bow; cm */
  bow_cm?: number;
  /** Height; cm */
  height_cm: number;
  /** Thickness of the glass; mm */
  glass_mm?: number;
  /** Water stands this high; cm */
  fill_height_cm?: number;
  /** Substrate, as it comes from the bag; L */
  substrate_l: number;
  /** Share of the substrate that is pores; 1 */
  substrate_porosity: number;
  /** Stone and sunken wood; kg */
  hardscape_kg: number;
  /** Density of it; kg/L */
  hardscape_density_kg_l: number;
  /** Water really filled in, if counted; L */
  metered_l?: number;
}

/** What volume answers. */
export interface VolumeAnswer {
  /** Water in it; L */
  water_l: number;
  /** To the rim, empty; L */
  gross_l: number;
  /** Water surface; cm² */
  surface_cm2: number;
  /** Inside height; cm */
  inside_height_cm: number;
  /** Filled to; cm */
  filled_to_cm: number;
  /** Up to the water line, with all that is in it; L */
  filled_l: number;
  /** Taken up by grains and hardscape; L */
  displaced_l: number;
}

/**
 * Input of water_after_change: What a water change does to pH, hardness, warmth and free ammonia, at once and a day
 * later.
 */
export interface WaterAfterChangeInput {
  /** The tank's pH */
  ph: number;
  /** The tank's carbonate hardness; °dKH */
  kh_dkh: number;
  /** The tank's temperature; °C */
  temperature_c: number;
  /** The tank's total ammonia, as nitrogen; mg N/L */
  tan_mg_n_l: number;
  /** The new water's pH */
  source_ph: number;
  /** The new water's carbonate hardness; °dKH */
  source_kh_dkh: number;
  /** The new water's temperature; °C */
  source_temperature_c: number;
  /** The new water's total ammonia, as nitrogen; mg N/L */
  source_tan_mg_n_l?: number;
  /** Changed, as a share of the water; 1 */
  fraction: number;
}

/** The same once it is checked: usual values filled in. */
export interface WaterAfterChangeValues {
  /** The tank's pH */
  ph: number;
  /** The tank's carbonate hardness; °dKH */
  kh_dkh: number;
  /** The tank's temperature; °C */
  temperature_c: number;
  /** The tank's total ammonia, as nitrogen; mg N/L */
  tan_mg_n_l: number;
  /** The new water's pH */
  source_ph: number;
  /** The new water's carbonate hardness; °dKH */
  source_kh_dkh: number;
  /** The new water's temperature; °C */
  source_temperature_c: number;
  /** The new water's total ammonia, as nitrogen; mg N/L */
  source_tan_mg_n_l: number;
  /** Changed, as a share of the water; 1 */
  fraction: number;
}

/** What water_after_change answers. */
export interface WaterAfterChangeAnswer {
  /** pH at once */
  ph: number;
  /** pH once gases and warmth have settled */
  ph_settled: number;
  /** Carbonate hardness; °dKH */
  kh_dkh: number;
  /** Temperature at once; °C */
  temperature_c: number;
  /** Total ammonia, as nitrogen; mg N/L */
  tan_mg_n_l: number;
  /** Free ammonia before, as nitrogen; mg N/L */
  nh3_before_mg_n_l: number;
  /** Free ammonia at once, as nitrogen; mg N/L */
  nh3_mg_n_l: number;
  /** Free ammonia once settled, as nitrogen; mg N/L */
  nh3_settled_mg_n_l: number;
}

/** Input of water_blend: How much of each water to mix for a wanted hardness and temperature. */
export interface WaterBlendInput {
  /** Waters */
  sources: {
    /** Name */
    name?: string;
    /** General hardness; °dGH */
    gh_dgh?: number;
    /** Carbonate hardness; °dKH */
    kh_dkh?: number;
    /** Temperature; °C */
    temperature_c?: number;
    /** There is only so much of it; L */
    litres?: number;
  }[];
  /** Wanted */
  target: {
    /** General hardness; °dGH */
    gh_dgh?: number;
    /** Carbonate hardness; °dKH */
    kh_dkh?: number;
    /** Temperature; °C */
    temperature_c?: number;
  };
  /** To make; L */
  litres: number;
}

/** The same once it is checked: usual values filled in. */
export interface WaterBlendValues {
  /** Waters */
  sources: {
    /** Name */
    name?: string;
    /** General hardness; °dGH */
    gh_dgh?: number;
    /** Carbonate hardness; °dKH */
    kh_dkh?: number;
    /** Temperature; °C */
    temperature_c?: number;
    /** There is only so much of it; L */
    litres?: number;
  }[];
  /** Wanted */
  target: {
    /** General hardness; °dGH */
    gh_dgh?: number;
    /** Carbonate hardness; °dKH */
    kh_dkh?: number;
    /** Temperature; °C */
    temperature_c?: number;
  };
  /** To make; L */
  litres: number;
}

/** What water_blend answers. */
export interface WaterBlendAnswer {
  /** Pour together */
  pour: {
    /**  */
    name: string;
    /** L */
    litres: number;
  }[];
  /** The mixture has */
  reached: {
    /** general hardness; °dGH */
    gh_dgh?: number | null;
    /** carbonate hardness; °dKH */
    kh_dkh?: number | null;
    /** temperature; °C */
    temperature_c?: number | null;
  };
  /** Of each water in order */
  litres: number[];
}

/**
 * Input of water_limits: How much ammonia, nitrite and nitrate this water may hold, and from where on to act at once.
 */
export interface WaterLimitsInput {
  /** pH */
  ph: number;
  /** Water temperature; °C */
  temperature_c: number;
  /** Chloride; mg/L */
  chloride_mg_l?: number;
}

/** The same once it is checked: usual values filled in. */
export interface WaterLimitsValues {
  /** pH */
  ph: number;
  /** Water temperature; °C */
  temperature_c: number;
  /** Chloride; mg/L */
  chloride_mg_l?: number;
}

/** What water_limits answers. */
export interface WaterLimitsAnswer {
  /** Total ammonia, at most, as nitrogen; mg N/L */
  tan_mg_n_l: number;
  /** That limit comes from */
  tan_by: "eifac" | "chronic";
  /** Total ammonia from which to act at once, as nitrogen; mg N/L */
  tan_act_mg_n_l: number;
  /** Nitrite, at most over weeks, as nitrogen; mg N/L */
  nitrite_mg_n_l: number;
  /** Nitrite from which to act at once, as nitrogen; mg N/L */
  nitrite_act_mg_n_l: number;
  /** Nitrate, at most over weeks, as nitrogen; mg N/L */
  nitrate_mg_n_l: number;
  /** Free ammonia at the limit of total ammonia, as nitrogen; mg N/L */
  nh3_mg_n_l: number;
}

/** Input, answer and caution codes of each calculation. */
export interface Calculations {
  acclimation: {
    input: AcclimationInput;
    values: AcclimationValues;
    answer: AcclimationAnswer;
    caution: "gasping" | "cover" | "bag_water" | "electricity" | "release";
  };
  alkalinity_use: {
    input: AlkalinityUseInput;
    values: AlkalinityUseValues;
    answer: AlkalinityUseAnswer;
    caution: "kh_floor" | "acid_tank";
  };
  ammonia_limits: {
    input: AmmoniaLimitsInput;
    values: AmmoniaLimitsValues;
    answer: AmmoniaLimitsAnswer;
    caution: "not_aims" | "gasping";
  };
  animal_mass: {
    input: AnimalMassInput;
    values: AnimalMassValues;
    answer: AnimalMassAnswer;
    caution: "leftovers";
  };
  bath_dose: {
    input: BathDoseInput;
    values: BathDoseValues;
    answer: BathDoseAnswer;
    caution: "vet_first" | "label_over_all" | "hospital_tank" | "hands_and_drain" | "salt_bath";
  };
  carbon_dioxide: {
    input: CarbonDioxideInput;
    values: CarbonDioxideValues;
    answer: CarbonDioxideAnswer;
    caution: "gasping" | "gas_bottle";
  };
  change_plan: {
    input: ChangePlanInput;
    values: ChangePlanValues;
    answer: ChangePlanAnswer;
    caution: "forecast" | "new_water" | "gasping";
  };
  closed_water: {
    input: ClosedWaterInput;
    values: ClosedWaterValues;
    answer: ClosedWaterAnswer;
    caution: "plan_half" | "before_closing" | "opening" | "power_cut" | "oxygen_gas";
  };
  compatibility: {
    input: CompatibilityInput;
    values: CompatibilityValues;
    answer: CompatibilityAnswer;
    caution: "quarantine" | "release" | "grown";
  };
  dechlorinator_dose: {
    input: DechlorinatorDoseInput;
    values: DechlorinatorDoseValues;
    answer: DechlorinatorDoseAnswer;
    caution: "label_first" | "no_mixing" | "freed_ammonia" | "no_airing" | "plain_chemicals" | "gasping";
  };
  dilution: {
    input: DilutionInput;
    values: DilutionValues;
    answer: DilutionAnswer;
    caution: "new_water" | "electricity";
  };
  evaporation: {
    input: EvaporationInput;
    values: EvaporationValues;
    answer: EvaporationAnswer;
    caution: "electricity" | "top_up" | "damp";
  };
  feed_ration: {
    input: FeedRationInput;
    values: FeedRationValues;
    answer: FeedRationAnswer;
    caution: "eaten_in_minutes" | "less_when_ill";
  };
  filled_weight: {
    input: FilledWeightInput;
    values: FilledWeightValues;
    answer: FilledWeightAnswer;
    caution: "floor" | "stand" | "lifting";
  };
  free_ammonia: {
    input: FreeAmmoniaInput;
    values: FreeAmmoniaValues;
    answer: FreeAmmoniaAnswer;
    caution: never;
  };
  hardness_units: {
    input: HardnessUnitsInput;
    values: HardnessUnitsValues;
    answer: HardnessUnitsAnswer;
    caution: never;
  };
  heater_power: {
    input: HeaterPowerInput;
    values: HeaterPowerValues;
    answer: HeaterPowerAnswer;
    caution: "electricity" | "stuck_heater" | "slow_change";
  };
  ionic_strength: {
    input: IonicStrengthInput;
    values: IonicStrengthValues;
    answer: IonicStrengthAnswer;
    caution: never;
  };
  light_dose: {
    input: LightDoseInput;
    values: LightDoseValues;
    answer: LightDoseAnswer;
    caution: "electricity" | "eyes";
  };
  nitrite_risk: {
    input: NitriteRiskInput;
    values: NitriteRiskValues;
    answer: NitriteRiskAnswer;
    caution: "change_first" | "salt" | "gasping";
  };
  nitrogen_load: {
    input: NitrogenLoadInput;
    values: NitrogenLoadValues;
    answer: NitrogenLoadAnswer;
    caution: "feed_less" | "leftovers";
  };
  nitrogen_units: {
    input: NitrogenUnitsInput;
    values: NitrogenUnitsValues;
    answer: NitrogenUnitsAnswer;
    caution: never;
  };
  nutrient_routine: {
    input: NutrientRoutineInput;
    values: NutrientRoutineValues;
    answer: NutrientRoutineAnswer;
    caution: "dissolve_apart" | "grade" | "little_in_low_tech" | "bottle";
  };
  outlook: {
    input: OutlookInput;
    values: OutlookValues;
    answer: OutlookAnswer;
    caution: "forecast";
  };
  oxygen_night: {
    input: OxygenNightInput;
    values: OxygenNightValues;
    answer: OxygenNightAnswer;
    caution: "gasping" | "electricity" | "gas_and_medicines";
  };
  oxygen_saturation: {
    input: OxygenSaturationInput;
    values: OxygenSaturationValues;
    answer: OxygenSaturationAnswer;
    caution: "heat";
  };
  salt_dose: {
    input: SaltDoseInput;
    values: SaltDoseValues;
    answer: SaltDoseAnswer;
    caution: "dissolve_apart" | "ph_and_ammonia" | "burns" | "grade";
  };
  starter_dose: {
    input: StarterDoseInput;
    values: StarterDoseValues;
    answer: StarterDoseAnswer;
    caution: "no_animals" | "burns" | "no_mixing";
  };
  steady_routine: {
    input: SteadyRoutineInput;
    values: SteadyRoutineValues;
    answer: SteadyRoutineAnswer;
    caution: "slowly" | "top_up_pure";
  };
  stock_headroom: {
    input: StockHeadroomInput;
    values: StockHeadroomValues;
    answer: StockHeadroomAnswer;
    caution: "few_at_a_time" | "forecast" | "release";
  };
  stocking_limit: {
    input: StockingLimitInput;
    values: StockingLimitValues;
    answer: StockingLimitAnswer;
    caution: "small_lots" | "welfare" | "quarantine_and_release";
  };
  substrate: {
    input: SubstrateInput;
    values: SubstrateValues;
    answer: SubstrateAnswer;
    caution: "dust" | "rich_soil" | "lifting";
  };
  toxicant_limits: {
    input: ToxicantLimitsInput;
    values: ToxicantLimitsValues;
    answer: ToxicantLimitsAnswer;
    caution: "shrimp_and_snails" | "any_chlorine" | "gasping";
  };
  volume: {
    input: VolumeInput;
    values: VolumeValues;
    answer: VolumeAnswer;
    caution: "floor" | "moving";
  };
  water_after_change: {
    input: WaterAfterChangeInput;
    values: WaterAfterChangeValues;
    answer: WaterAfterChangeAnswer;
    caution: "acid_tank" | "in_steps";
  };
  water_blend: {
    input: WaterBlendInput;
    values: WaterBlendValues;
    answer: WaterBlendAnswer;
    caution: "hot_water" | "in_steps" | "pure_water";
  };
  water_limits: {
    input: WaterLimitsInput;
    values: WaterLimitsValues;
    answer: WaterLimitsAnswer;
    caution: "not_aims" | "gasping" | "soft_water";
  };
}
export type CalculationName = keyof Calculations;
