/** Generated from shared_schema by tests/types/generate.js: change the schema, then run it. */

/** Fields that no record kind describes. */
export type Open = { [name: string]: unknown };

/**
 * Who looks after which tanks from when to when, how often to feed, and whom to call; the rest of the sheet comes from
 * the tanks' own records.
 */
export interface AwaySheetFields {
  /** From */
  from_at: string;
  /** Until */
  to_at: string;
  /** Tanks */
  tanks: string[];
  /** Days from one meal to the next; 0 for no food; day */
  feed_every_days: number;
  /** Whom to call */
  calls?: {
    /** Who */
    who: string;
    /** Telephone */
    phone: string;
  }[];
  /** In your own words */
  note?: string;
}

/** Something added to the water by a label or a calculation. */
export interface DoseFields {
  /** Tank */
  tank: string;
  /** When */
  at: string;
  /** Label */
  label?: string;
  /** What */
  what: string;
  /** What, where it is a salt or ammonia worked out here */
  what_code?: string;
  /** Amount */
  amount: number;
  /** Unit */
  unit: "ml" | "g" | "mg" | "drops";
  /** For this much water; L */
  for_litres?: number;
  /** Ammonia it adds, as nitrogen; mg N/L */
  tan_mg_n_l?: number;
  /** With this change */
  water_change?: string;
  /** Corrects */
  supersedes?: string;
  /** Note */
  note?: string;
}

/** Food given. */
export interface FeedingFields {
  /** Tank */
  tank: string;
  /** When */
  at: string;
  /** Feed; g */
  feed_g: number;
  /** Protein, as a fraction; 1 */
  protein_fraction?: number;
  /** Food */
  food?: string;
  /** Corrects */
  supersedes?: string;
  /** Note */
  note?: string;
}

/** A product's dose line, typed by the keeper from the bottle. */
export interface LabelFields {
  /** Name */
  name: string;
  /** For */
  use: "dechlorinator" | "fertiliser" | "salt" | "other";
  /** The label says */
  amount: number;
  /** Unit */
  unit: "ml" | "g" | "drops";
  /** for this much water; L */
  per_l: number;
  /** of */
  basis: "new_water" | "whole_tank";
  /** Says that it binds ammonia */
  binds_ammonia?: boolean;
  /** Note */
  note?: string;
}

/** Words about a tank or the room. */
export interface NoteFields {
  /** Tank */
  tank?: string;
  /** When */
  at: string;
  /** Text */
  text: string;
  /** The tiles whose words are the first lines */
  quick?: string[];
  /** Entry it belongs to (a note and its photos share it) */
  entry?: string;
  /** What went wrong, by its code (the notes of one incident share their entry) */
  incident?: string;
  /** The step against it that was done, by its code */
  step?: string;
  /** Corrects */
  supersedes?: string;
}

/** A plant that the plants table does not hold, as its keeper knows it; the columns are those of that table. */
export interface OwnPlantFields {
  /** Name */
  name: string;
  /** How it grows */
  form?: "rosette" | "stem" | "epiphyte" | "moss" | "floating" | "free";
  /** Growth */
  growth?: "slow" | "medium" | "fast";
  /** Where it stands */
  position?: "foreground" | "midground" | "background" | "hardscape" | "floating";
  /** The least light it thrives in */
  light?: "low" | "medium" | "high";
  /** How much it takes up */
  uptake?: "low" | "medium" | "high";
  /** Its coolest water; °C */
  temperature_low_c?: number;
  /** Its warmest water; °C */
  temperature_high_c?: number;
  /** Note */
  note?: string;
}

/**
 * A kind of animal that the species table does not hold, as its keeper knows it; the columns are those that
 * calculations accept.
 */
export interface OwnSpeciesFields {
  /** Name */
  name: string;
  /** Length when grown, tip to tip; cm */
  length_cm: number;
  /** Build */
  shape: "fusiform" | "deep" | "elongated" | "eel" | "shrimp" | "snail";
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
  /** Note */
  note?: string;
}

/** A picture; its bytes travel apart, by their hash. */
export interface PhotoFields {
  /** Tank */
  tank?: string;
  /** When */
  at: string;
  /** Hash of the bytes */
  sha256: string;
  /** Type */
  media_type: "image/jpeg" | "image/webp" | "image/png";
  /** Width; px */
  width?: number;
  /** Height; px */
  height?: number;
  /** Size; B */
  bytes?: number;
  /** Caption */
  caption?: string;
  /** Entry it belongs to (a note and its photos share it) */
  entry?: string;
  /** Corrects */
  supersedes?: string;
}

/** Plants set, trimmed, removed or moved. */
export interface PlantingFields {
  /** Tank */
  tank: string;
  /** When */
  at: string;
  /** What was done */
  change: "plant" | "trim" | "remove" | "move_in" | "move_out";
  /** Plant (key of the plants table, or the keeper's own) */
  species: string;
  /** How much (stems, pots, handfuls) */
  amount?: string;
  /** How much, by the tile it was picked from */
  amount_code?: string;
  /** How much, in portions */
  portions?: number;
  /** From or to tank */
  other_tank?: string;
  /** Corrects */
  supersedes?: string;
  /** Note */
  note?: string;
}

/** One measured figure of one tank at one time. Insert-only: a correction supersedes. */
export interface ReadingFields {
  /** Tank */
  tank: string;
  /** When */
  at: string;
  /** What was measured */
  parameter: "total_ammonia" | "nitrite" | "nitrate" | "ph" | "temperature" | "kh" | "gh" | "chlorine" | "oxygen" | "phosphate" | "conductivity";
  /** Value */
  value: number;
  /** Reads */
  basis?: "ion" | "n";
  /** Unit */
  unit?: string;
  /** The kit's own steps, in order */
  steps?: number[];
  /** Kit */
  kit?: string;
  /** Test this reading belongs to (readings taken together share it) */
  test?: string;
  /** Corrects */
  supersedes?: string;
  /** Note */
  note?: string;
}

/** One net, bucket or piece of equipment that was wet in two tanks. */
export interface SharedToolFields {
  /** Tank */
  tank: string;
  /** When */
  at: string;
  /** What */
  tool: "net" | "bucket" | "hose" | "scissors" | "cleaner" | "hands" | "filter" | "hardscape" | "other";
  /** The other tank */
  other_tank: string;
  /** Where it was first */
  order?: "here" | "there" | "both";
  /** Corrects */
  supersedes?: string;
  /** Note */
  note?: string;
}

/** What a tap, a barrel or a bottle gives. */
export interface SourceWaterFields {
  /** Name */
  name: string;
  /** Disinfectant */
  disinfectant: "none" | "chlorine" | "chloramine";
  /** How much of it, as Cl₂; mg/L */
  disinfectant_mg_l?: number;
  /** Total ammonia, as nitrogen; mg N/L */
  tan_mg_n_l?: number;
  /** Nitrite, as nitrogen; mg N/L */
  nitrite_mg_n_l?: number;
  /** Nitrate, as nitrogen; mg N/L */
  nitrate_mg_n_l?: number;
  /** pH */
  ph?: number;
  /** Carbonate hardness; °dKH */
  kh_dkh?: number;
  /** General hardness; °dGH */
  gh_dgh?: number;
  /** Chloride; mg/L */
  chloride_mg_l?: number;
  /** Temperature; °C */
  temperature_c?: number;
  /** Note */
  note?: string;
}

/** Animals that arrived, were born, died, left or moved. */
export interface StockChangeFields {
  /** Tank */
  tank: string;
  /** When */
  at: string;
  /** What happened */
  change: "arrival" | "birth" | "death" | "removal" | "move_in" | "move_out";
  /** Species (key of the species table, or the keeper's own) */
  species: string;
  /** How many */
  count: number;
  /** Length; cm */
  length_cm?: number;
  /** Cause, as far as known */
  cause?: string;
  /** Cause, by the tile it was picked from */
  cause_code?: string;
  /** From or to tank */
  other_tank?: string;
  /** Corrects */
  supersedes?: string;
  /** Note */
  note?: string;
}

/** One tank of the fish room: its measures, water and usual figures. */
export interface TankFields {
  /** Name */
  name: string;
  /** Where it stands */
  place?: string;
  /** Place in the walk */
  walk_order?: number;
  /** Measures (the input of the volume calculation) */
  measures?: Open & {
    /** Shape */
    shape?: "cuboid" | "bow_front" | "cylinder" | "half_round" | "quarter_round" | "hexagon" | "bowl";
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
    height_cm?: number;
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
  };
  /** Water in it; L */
  water_l: number;
  /** Gross volume; L */
  gross_l?: number;
  /** First filled */
  started_at?: string;
  /** Planting */
  planting?: "none" | "light" | "medium" | "dense";
  /** Filter */
  filter?: "none" | "sponge" | "internal" | "external";
  /** What started it */
  seeded?: "none" | "starter" | "mature_media";
  /** Usual temperature; °C */
  temperature_c?: number;
  /** Usual pH */
  ph?: number;
  /** Usual carbonate hardness; °dKH */
  kh_dkh?: number;
  /** Usual general hardness; °dGH */
  gh_dgh?: number;
  /** Feed a day; g/day */
  feed_g_day?: number;
  /** Protein in the feed, as a fraction; 1 */
  protein_fraction?: number;
  /** Fish in it; g */
  fish_g?: number;
  /** Source water */
  source_water?: string;
  /** Dechlorinator label */
  dechlorinator?: string;
  /** Animals planned for it */
  planned_stock?: {
    /** Species (key of the species table, or the keeper's own) */
    species: string;
    /** How many */
    count: number;
    /** Length when they come; cm */
    length_cm?: number;
  }[];
  /** How it is being set up, in one field (an older form: still read, no longer written) */
  setup?: Open & {
    /** How far it is */
    steps?: Open & {
      /** Setting up: the glass */
      glass?: "done" | "skipped";
      /** Setting up: where it stands */
      place?: "done" | "skipped";
      /** Setting up: the bed */
      substrate?: "done" | "skipped";
      /** Setting up: stone and wood */
      hardscape?: "done" | "skipped";
      /** Setting up: warmth and light */
      warmth?: "done" | "skipped";
      /** Setting up: the plants */
      plants?: "done" | "skipped";
      /** Setting up: the animals planned */
      stock?: "done" | "skipped";
      /** Setting up: the first filling */
      fill?: "done" | "skipped";
      /** Setting up: the first animals */
      first_fish?: "done" | "skipped";
    };
    /** Setting up: the glass */
    glass?: Open;
    /** Setting up: where it stands */
    place?: Open & {
      /** Thickness of the glass; mm */
      glass_mm?: number;
      /** Weight of the empty tank; kg */
      tank_kg?: number;
      /** Stand or cupboard, with what is in it; kg */
      stand_kg?: number;
      /** Lid, lamp, filter and the rest; kg */
      equipment_kg?: number;
      /** Length of what stands on the floor; cm */
      footprint_length_cm?: number;
      /** Width of what stands on the floor; cm */
      footprint_width_cm?: number;
    };
    /** Setting up: the bed */
    substrate?: Open & {
      /** Bed */
      bed?: "bare" | "plain" | "capped";
      /** Food for roots: material */
      nutrient?: "sand" | "gravel" | "garden_soil" | "potting_soil" | "baked_clay" | "lava" | "other";
      /** Food for roots: depth at the front; cm */
      nutrient_front_cm?: number;
      /** Food for roots: depth at the back; cm */
      nutrient_back_cm?: number;
      /** Food for roots: one bag in the shop holds, in kilograms or litres */
      nutrient_pack?: number;
      /** Cap, or a plain bed: material */
      cap?: "sand" | "gravel" | "garden_soil" | "potting_soil" | "baked_clay" | "lava" | "other";
      /** Cap, or a plain bed: depth at the front; cm */
      cap_front_cm?: number;
      /** Cap, or a plain bed: depth at the back; cm */
      cap_back_cm?: number;
      /** Cap, or a plain bed: one bag in the shop holds, in kilograms or litres */
      cap_pack?: number;
      /** Mesh bags under the slope, to hold it up */
      support_bags?: number;
      /** One mesh bag holds, when full; L */
      support_bag_l?: number;
    };
    /** Setting up: stone and wood */
    hardscape?: Open & {
      /** Stone; kg */
      stone_kg?: number;
      /** Lava rock; kg */
      lava_kg?: number;
      /** Soaked wood; kg */
      wood_kg?: number;
    };
    /** Setting up: warmth and light */
    warmth?: Open & {
      /** Water temperature wanted; °C */
      temperature_c?: number;
      /** Room at its coldest; °C */
      room_c?: number;
      /** Cover */
      cover?: "open" | "lid";
      /** Light */
      light?: "low" | "medium" | "high";
      /** Light where the plants grow (PPFD); µmol/m²/s */
      ppfd_umol_m2_s?: number;
      /** Lighting time a day; h */
      hours?: number;
      /** Filter */
      filter?: "none" | "sponge" | "internal" | "external";
    };
    /** Setting up: the plants */
    plants?: Open & {
      /** Planting */
      planting?: "none" | "light" | "medium" | "dense";
      /** Plants */
      list?: (Open & {
        /** Plant (key of the plants table, or the keeper's own) */
        species: string;
        /** Portions */
        portions: number;
      })[];
    };
    /** Setting up: the animals planned */
    stock?: Open & {
      /** Animals planned for it */
      list?: (Open & {
        /** Species (key of the species table, or the keeper's own) */
        species: string;
        /** How many */
        count: number;
        /** Length when they come; cm */
        length_cm?: number;
      })[];
    };
    /** Setting up: the first filling */
    fill?: Open & {
      /** The plants are in */
      plants_in?: boolean;
      /** Water really filled in, if counted; L */
      metered_l?: number;
    };
    /** Setting up: the first animals */
    first_fish?: Open & {
      /** Household ammonia, per cent by mass; % */
      ammonia_percent?: number;
      /** How many */
      counts?: Open;
      /** Length when they come */
      lengths?: Open;
    };
  };
  /** Setting up: the glass */
  setup_glass?: {
    /** How far it is */
    state: "done" | "skipped";
    /** What was said at it */
    said?: Open;
  };
  /** Setting up: where it stands */
  setup_place?: {
    /** How far it is */
    state: "done" | "skipped";
    /** What was said at it */
    said?: Open & {
      /** Thickness of the glass; mm */
      glass_mm?: number;
      /** Weight of the empty tank; kg */
      tank_kg?: number;
      /** Stand or cupboard, with what is in it; kg */
      stand_kg?: number;
      /** Lid, lamp, filter and the rest; kg */
      equipment_kg?: number;
      /** Length of what stands on the floor; cm */
      footprint_length_cm?: number;
      /** Width of what stands on the floor; cm */
      footprint_width_cm?: number;
    };
  };
  /** Setting up: the bed */
  setup_substrate?: {
    /** How far it is */
    state: "done" | "skipped";
    /** What was said at it */
    said?: Open & {
      /** Bed */
      bed?: "bare" | "plain" | "capped";
      /** Food for roots: material */
      nutrient?: "sand" | "gravel" | "garden_soil" | "potting_soil" | "baked_clay" | "lava" | "other";
      /** Food for roots: depth at the front; cm */
      nutrient_front_cm?: number;
      /** Food for roots: depth at the back; cm */
      nutrient_back_cm?: number;
      /** Food for roots: one bag in the shop holds, in kilograms or litres */
      nutrient_pack?: number;
      /** Cap, or a plain bed: material */
      cap?: "sand" | "gravel" | "garden_soil" | "potting_soil" | "baked_clay" | "lava" | "other";
      /** Cap, or a plain bed: depth at the front; cm */
      cap_front_cm?: number;
      /** Cap, or a plain bed: depth at the back; cm */
      cap_back_cm?: number;
      /** Cap, or a plain bed: one bag in the shop holds, in kilograms or litres */
      cap_pack?: number;
      /** Mesh bags under the slope, to hold it up */
      support_bags?: number;
      /** One mesh bag holds, when full; L */
      support_bag_l?: number;
    };
  };
  /** Setting up: stone and wood */
  setup_hardscape?: {
    /** How far it is */
    state: "done" | "skipped";
    /** What was said at it */
    said?: Open & {
      /** Stone; kg */
      stone_kg?: number;
      /** Lava rock; kg */
      lava_kg?: number;
      /** Soaked wood; kg */
      wood_kg?: number;
    };
  };
  /** Setting up: warmth and light */
  setup_warmth?: {
    /** How far it is */
    state: "done" | "skipped";
    /** What was said at it */
    said?: Open & {
      /** Water temperature wanted; °C */
      temperature_c?: number;
      /** Room at its coldest; °C */
      room_c?: number;
      /** Cover */
      cover?: "open" | "lid";
      /** Light */
      light?: "low" | "medium" | "high";
      /** Light where the plants grow (PPFD); µmol/m²/s */
      ppfd_umol_m2_s?: number;
      /** Lighting time a day; h */
      hours?: number;
      /** Filter */
      filter?: "none" | "sponge" | "internal" | "external";
    };
  };
  /** Setting up: the plants */
  setup_plants?: {
    /** How far it is */
    state: "done" | "skipped";
    /** What was said at it */
    said?: Open & {
      /** Planting */
      planting?: "none" | "light" | "medium" | "dense";
      /** Plants */
      list?: (Open & {
        /** Plant (key of the plants table, or the keeper's own) */
        species: string;
        /** Portions */
        portions: number;
      })[];
    };
  };
  /** Setting up: the animals planned */
  setup_stock?: {
    /** How far it is */
    state: "done" | "skipped";
    /** What was said at it */
    said?: Open & {
      /** Animals planned for it */
      list?: (Open & {
        /** Species (key of the species table, or the keeper's own) */
        species: string;
        /** How many */
        count: number;
        /** Length when they come; cm */
        length_cm?: number;
      })[];
    };
  };
  /** Setting up: the first filling */
  setup_fill?: {
    /** How far it is */
    state: "done" | "skipped";
    /** What was said at it */
    said?: Open & {
      /** The plants are in */
      plants_in?: boolean;
      /** Water really filled in, if counted; L */
      metered_l?: number;
    };
  };
  /** Setting up: the first animals */
  setup_first_fish?: {
    /** How far it is */
    state: "done" | "skipped";
    /** What was said at it */
    said?: Open & {
      /** Household ammonia, per cent by mass; % */
      ammonia_percent?: number;
      /** How many */
      counts?: Open;
      /** Length when they come */
      lengths?: Open;
    };
  };
  /** Put away (kept, not in the round) */
  resting?: boolean;
  /** Note */
  note?: string;
}

/** Something to do, once or again and again (RFC 5545 rule). */
export interface TaskFields {
  /** Task */
  title: string;
  /** The tile its title was picked from; it holds as long as the title says these words */
  from_tile?: {
    /** Tile */
    code: string;
    /** Its words */
    words: string;
  };
  /** Tank */
  tank?: string;
  /** From */
  starts_at: string;
  /** Repeats (RFC 5545 RRULE) */
  rule?: string;
  /** Time zone of its clock (IANA) */
  zone?: string;
  /** Ended */
  over?: boolean;
  /** Note */
  note?: string;
}

/** A task done at a time. */
export interface TaskDoneFields {
  /** Task */
  task: string;
  /** When */
  at: string;
  /** The occurrence it was for */
  due_at?: string;
  /** Left out this once */
  skipped?: boolean;
  /** Corrects */
  supersedes?: string;
  /** Note */
  note?: string;
}

/** How one kit reads one parameter: its own steps, basis and timers, typed by the keeper. */
export interface TestKitFields {
  /** Name */
  name: string;
  /** Measures */
  parameter: "total_ammonia" | "nitrite" | "nitrate" | "ph" | "temperature" | "kh" | "gh" | "chlorine" | "oxygen" | "phosphate" | "conductivity";
  /** Read off */
  entry: "steps" | "keypad";
  /** Reads */
  basis?: "ion" | "n";
  /** Unit */
  unit?: string;
  /** One drop stands for */
  per_drop?: number;
  /** Its steps, in order */
  steps?: number[];
  /** Its timed steps, in order */
  timers?: {
    /** What to do */
    what: string;
    /** For; s */
    seconds: number;
  }[];
  /** No longer used */
  retired?: boolean;
  /** Note */
  note?: string;
}

/** Litres taken out and replaced. */
export interface WaterChangeFields {
  /** Tank */
  tank: string;
  /** When */
  at: string;
  /** Litres changed; L */
  litres: number;
  /** Share of the tank's water; 1 */
  fraction: number;
  /** Source water */
  source_water?: string;
  /** Out of tank */
  from_tank?: string;
  /** Temperature of the new water; °C */
  temperature_c?: number;
  /** Corrects */
  supersedes?: string;
  /** Note */
  note?: string;
}

/** The fields of each record kind. */
export interface RecordFields {
  away_sheet: AwaySheetFields;
  dose: DoseFields;
  feeding: FeedingFields;
  label: LabelFields;
  note: NoteFields;
  own_plant: OwnPlantFields;
  own_species: OwnSpeciesFields;
  photo: PhotoFields;
  planting: PlantingFields;
  reading: ReadingFields;
  shared_tool: SharedToolFields;
  source_water: SourceWaterFields;
  stock_change: StockChangeFields;
  tank: TankFields;
  task: TaskFields;
  task_done: TaskDoneFields;
  test_kit: TestKitFields;
  water_change: WaterChangeFields;
}
export type RecordKind = keyof RecordFields;
