/** What the advice takes and gives: the facts of one tank in, one thing to do with its reasons out. */
import type {
  ChangePlanAnswer,
  ChangePlanInput,
  DechlorinatorDoseAnswer,
  OutlookAnswer,
  OutlookInput,
  StockHeadroomInput,
} from "./calculations.js";
import type { Answer } from "./contract.js";
import type { LabelFields, SourceWaterFields } from "./records.js";
import type { Reading, Tank, View } from "./views.js";

/** Ammonia and nitrite harm within days. */
export type Quick = "total_ammonia" | "nitrite";
/** What a water change must hold down; nitrate harms over weeks. */
export type Watched = Quick | "nitrate";
export type Label = View<"label">;
/** Water as far as it is known: a recorded source water, or what another tank's last tests read. */
export type Source = Omit<SourceWaterFields, "name">;
/** A change with the water that went in. */
export type Change = View<"water_change"> & { source: Source | null };
/** A dose with the label it was measured by. */
export type Dose = Omit<View<"dose">, "label"> & { label: Label | null };

/** What is known of one tank, gathered by advice/facts.js; every list is oldest first. */
export interface Facts {
  /** ms */
  now: number;
  tank: Tank;
  readings: readonly Reading[];
  changes: readonly Change[];
  doses: readonly Dose[];
  feedings: readonly View<"feeding">[];
  stock: readonly View<"stock_change">[];
  notes: readonly View<"note">[];
  /** Those of the whole room. */
  own_species: readonly View<"own_species">[];
  source: View<"source_water"> | null;
  label: Label | null;
  /** The unit in which this phone shows water; litres if left out. */
  water_unit?: string;
}

/** A figure that a limit depends on, and where it comes from. */
export interface Figure {
  value: number;
  from: "reading" | "usual" | "source" | "assumed";
  at?: string;
}

export type LimitSource = "chronic" | "eifac" | "working";
export interface Limit {
  mg_n_l: number;
  by: LimitSource;
}
export interface Limits extends Record<Watched, Limit> {
  ph: Figure;
  temperature_c: Figure;
  /** Above it a change cannot wait, mg N/L. */
  act_at: Record<Watched, number>;
}

/** Where one of the three stands now by the rule. */
interface LevelBase {
  parameter: Watched;
  /** The last one, also where it is too old to go by. */
  reading: Reading | null;
  rise_mg_n_l_day: number;
  rise_from: "readings" | "doubling" | "nothing";
  /** Whether water was changed since the reading. */
  changed_since: boolean;
}
export interface UnknownLevel extends LevelBase {
  read_mg_n_l: null;
  now_mg_n_l: null;
}
export interface KnownLevel extends LevelBase {
  read_mg_n_l: number;
  now_mg_n_l: number;
}
export type Level = UnknownLevel | KnownLevel;

interface Beside {
  limit_mg_n_l: number;
  /** What the new water holds of it. */
  source_mg_n_l: number;
}
/** A known level beside its limit. */
export type KnownJudgement = KnownLevel &
  Beside & {
    /** At the next test. */
    expected_mg_n_l: number;
    /** What is expected, as a share of the limit. */
    share: number;
    by: LimitSource;
  };
export type Judgement = (UnknownLevel & Beside) | KnownJudgement;
/** A level beside its limit, as the rule or the forecast holds it. */
export interface Standing extends LevelBase, Beside {
  read_mg_n_l: number | null;
  now_mg_n_l: number | null;
}

/** What the belief is fed instead of what nobody wrote down. */
export interface Filled {
  code:
    | "start"
    | "planting"
    | "seeded"
    | "feed"
    | "feed_of_fish"
    | "feed_of_stock"
    | "no_animals"
    | "ph"
    | "temperature_c";
  value?: number;
}
/** A record that the calculation refuses. */
export interface LeftOut {
  list: BeliefList;
  id: string;
  at: string;
  parameter?: string;
  message: string;
  allowed: string;
}

/** Why, as a code and the figures of its text `why.CODE`; the three concentrations in mg N/L. */
export type Reason =
  | {
      code: "over" | "will_pass" | "under" | "rise_known" | "rise_none" | "rise_doubling" | "rise_unknown" | "carried";
      parameter: Watched;
      now: number;
      limit: number;
      by: LimitSource;
      expected: number;
      rise: number;
      days: number;
    }
  | { code: "no_reading" | "too_old"; parameter: Watched; at?: string }
  | { code: "kh_gone"; count: number }
  | { code: "freed" | "freed_bound"; freed: number }
  | { code: "freed_unknown" }
  | { code: "source_worse"; parameter: Watched; source: number }
  | { code: "brings_over"; parameter: Watched; expected: number; limit: number }
  | { code: "source_ph" | "usual_ph" | "assumed_ph" | "usual_temperature_c" | "assumed_temperature_c"; value: number }
  | {
      code: "chance" | "chance_without" | "stands_over" | "perhaps_over";
      parameter: Watched;
      chance: number;
      low: number;
      high: number;
      limit: number;
      by: LimitSource;
      /** ms */
      until: number;
    }
  | { code: "together" | "after" | "after_half_food" | "after_not_enough" | "after_several"; chance: number }
  | { code: "doubt"; parameter: Watched; read: number; low: number; high: number; at: number }
  | { code: "prior" | "few" | "forecast" | "rule" | "rule_working" | "reading_leads" | "no_animals" }
  | { code: "rule_failed"; problem?: string }
  | { code: "filled"; filled: Filled[] }
  | { code: "left_out"; count: number; first: LeftOut };
export type ReasonCode = Reason["code"];

/** The dechlorinator for so many litres; `missing` names what must be recorded first, for none of it is guessed. */
export type LabelDose =
  | { needed: boolean; missing?: "source" | "label"; amount?: undefined; unit?: undefined; label?: undefined }
  | {
      needed: true;
      missing?: undefined;
      amount: number;
      unit: LabelFields["unit"];
      label: Label;
      answer: DechlorinatorDoseAnswer;
    };

export type Doubt = OutlookAnswer["doubts"][number] & {
  /** ms */
  at: number;
};
export type Besides = ChangePlanAnswer["advice"][number];

export type Urgency = "act now" | "change today" | "watch";
interface Out {
  read: number;
  limit: number;
  /** Whose limit it is; empty where it is any animal's. */
  who: string;
}
interface Jump {
  read: number;
  from: number;
}
interface NoFigures {
  read?: undefined;
}
/** The figures of each finding, for its texts `find.CODE` and `find.CODE.why`. */
export interface FindingFigures {
  water: NoFigures;
  gasping: { litres: number };
  hiding: NoFigures;
  chlorine: { read: number; limit: number; dose: LabelDose };
  undosed: { litres: number; dose: LabelDose };
  oxygen_low: { read: number; limit: number };
  hot: Out;
  cold: Out;
  ph_low: Out;
  ph_high: Out;
  soft: Out;
  hard: Out;
  ph_jump: Jump;
  temperature_jump: Jump;
  deaths: { count: number; litres: number };
  dawn: { low: number; high: number; limit: number };
  kh_gone: { read: number };
  /** Days until it is used up. */
  kh_ends: { count: number };
  overdosed: { times: number };
  large_change: { fraction: number };
}
export type FindingCode = keyof FindingFigures;
export interface FindingBase {
  urgency: Urgency;
  /** ms */
  since?: number;
}
export type Finding = {
  [C in FindingCode]: FindingBase & FindingFigures[C] & { code: C; source: string };
}[FindingCode];
/** A way to help that is not a change with this water. */
export interface Instead {
  code: "bind" | "salt" | "feed_less" | "other_water";
  salt_g?: number;
}

/** What one tank wants today. */
export interface Advice {
  state: "steady" | "watch" | "change today" | "act now";
  act: "nothing" | "test" | "change" | "hold" | "confirm" | "retest";
  /** Absent where the rule decided. */
  from?: "forecast";
  /** ms; when it was made, where a newer one is still being worked out. */
  as_of?: number;
  /** What change_plan advises besides the change. */
  besides?: Besides[];
  /** The changes after the first: the next at `at`, `count` in all, one every `every_h`. */
  second?: { at: number; litres: number; count: number; every_h: number };
  /** The reading that does not fit; with act "retest". */
  doubt?: Doubt;
  /** Rounded to what a bucket can do; `fraction` is the share of the tank's water that these litres are. */
  litres?: number;
  exact_litres?: number;
  fraction?: number;
  dose?: LabelDose;
  /** ms; absent where any hour today will do. */
  by?: number;
  /** A second change is needed after the next test. */
  again: boolean;
  /** Only nitrate asks for the change. */
  unhurried: boolean;
  next_test_hours: number;
  /** The same without this advice's own haste. */
  usual_test_hours: number;
  test_due: boolean;
  levels: Record<Watched, Standing>;
  limits: Limits;
  reasons: Reason[];
  /** What helps besides the change, or instead of it; set by advised.js. */
  instead?: Instead[];
  /** Everything that keeps the tank from being steady, the worst first; set by advised.js. */
  findings?: Finding[];
}
/** With all findings: what the screens show. */
export interface Advised extends Advice {
  findings: Finding[];
}
/** The last advice of a tank, as the phone keeps it. */
export interface LastAdvice {
  tank_id: string;
  room: string;
  /** The version of this shape. */
  shape: number;
  /** ms */
  at: number;
  /** What its water wants, and everything that the screens showed. */
  told: Advice;
  advice: Advised;
  /** The unit in which its litres are whole. */
  unit: string;
  /** Digests: of the questions that were answered, of the tests, and of the tank, its changes and its doses. */
  asked: string;
  tests: string;
  water: string;
  /** From what its records were known (FishRoom.place). */
  place: { mirror: string; since: number; ops: string };
  /** The tanks whose water went into it. */
  from_tanks: string[];
  /** What the Round needs besides: the last reading, the last change, the last meals. */
  facts: Pick<Facts, "readings" | "changes" | "feedings">;
  /** What the tank's page needs besides; left out until it is worked out. */
  shown?: Shown;
}

/** What a tank's page shows of its records beside the advice. */
export interface Shown {
  /** The last reading of each parameter. */
  latest: readonly Reading[];
  animals: readonly { species: string; count: number }[];
  long_run: Pick<LongRun, "nitrate" | "young">;
}
/** The advice of today.js, which judges each level by its limit. */
export interface Rule extends Advice {
  levels: Record<Watched, Judgement>;
}

export type BeliefList = "readings" | "changes" | "doses" | "feedings";
/** A tank's records as outlook, change_plan and stock_headroom take them. */
export type BeliefRecords = Required<Pick<OutlookInput, "tank" | "now_h" | BeliefList>>;
export interface BeliefInput {
  records: BeliefRecords;
  /** ms from which the hours count: when the tank was first filled, as far as the records reach. */
  start: number;
  filled: Filled[];
  left_out: LeftOut[];
}

/** The limits as the contracts name them, mg N/L. */
export type BeliefLimits = Record<"nh3_mg_n_l" | "nitrite_mg_n_l" | "nitrate_mg_n_l", number>;
/** What the contracts call the three: ammonia is watched as free ammonia. */
export type Species = "nh3" | "nitrite" | "nitrate";

interface QuestionBase {
  /** Tells one question from another, all of `records` included. */
  exact: string;
  /** The same without `records`. */
  how: string;
  /** The same without the hour: the answer of an hour ago will do until the new one is there. */
  records: string;
}
export type Question = QuestionBase &
  (
    | { label: "plan"; name: "change_plan"; input: ChangePlanInput }
    | { label: "next" | "ahead"; name: "outlook"; input: OutlookInput }
    | { label: "headroom"; name: "stock_headroom"; input: StockHeadroomInput }
  );

/** What the belief is asked about one tank. */
export interface Asked extends BeliefInput {
  questions: Question[];
  /** What the outlook's page asks too. */
  further: Question[];
  limits: BeliefLimits;
  nitrate_known: boolean;
  /** The new water brings ammonia: only small changes help. */
  in_small_steps: boolean;
  /** Whole hours, as the belief is asked. */
  next_test_h: number;
  /** ms */
  next_test_at: number;
}

export type PlanAnswer = Answer<"change_plan">;
export type AheadAnswer = Answer<"outlook">;
export interface Answers {
  plan?: PlanAnswer;
  next?: AheadAnswer;
  ahead?: AheadAnswer;
  headroom?: Answer<"stock_headroom">;
}
/** The answers so far. */
export interface Forecast {
  state: "ready" | "working" | "failed";
  answers: Answers;
  problem?: string;
}
