/** The form of shared_schema/calc/NAME.json and shared_schema/records/KIND.json; contract.schema.json says the same. */
import type { Calculations, CalculationName } from "./calculations.js";
import type { RecordFields, RecordKind } from "./records.js";

export interface Choice {
  value: string;
  label: string;
  short_label?: string;
}

export interface NumberSpec {
  type: "number" | "integer";
  unit: string;
  min: number;
  max: number;
  typical?: number[];
}
export interface BooleanSpec {
  type: "boolean";
}
export interface TextSpec {
  type: "text";
  min_length?: number;
  max_length: number;
  /** Whole-value pattern, with an example. */
  pattern?: string;
  /** The kind of text, whose pattern formats.json holds. */
  format?: "date-time";
  example?: string;
  /** The text picks a key of this table. */
  table?: string;
  /** The record kind whose id this is. */
  refers_to?: RecordKind;
}
export interface ChoiceSpec {
  type: "choice";
  choices: Choice[];
}
export interface ListSpec {
  type: "list";
  item: Item;
  min_items: number;
  max_items: number;
}
export interface ObjectSpec {
  type: "object";
  fields: Field[];
  /** It may hold other fields than these, within bounds. */
  open?: boolean;
}
export type Spec = NumberSpec | BooleanSpec | TextSpec | ChoiceSpec | ListSpec | ObjectSpec;

/** What a field has beside what its type asks for. */
export interface Named {
  name: string;
  label: string;
  /** The label without its explanation, where a text names the field. */
  short_label?: string;
  help?: string;
  /** Other words of help, by a named field and what it holds; the last that fits is shown. */
  help_by?: Record<string, Record<string, string>>;
  required?: boolean;
  default?: unknown;
  /** Relevant, and needed if required, only while each named field holds one of these values. */
  when?: Record<string, string[]>;
  beside?: string;
  /** Few need it: a form asks for it behind one tap. */
  seldom?: boolean;
  /** The tank's figure that fills the field, where it is not the one of the same name; false: none does. */
  from_tank?: string | boolean;
}

/** One field of an input or a record. */
export type Field = Spec & Named;
/** What a list holds: a field whose name and label may be left out. */
export type Item = Spec & Partial<Named>;

/** One choice of an answer. */
export interface AnswerChoice extends Choice {
  /** In a list: the labels of the entry's other fields where this is chosen; figures without one are not shown. */
  said?: Record<string, string>;
  /** The unit of those figures. */
  unit?: string;
}
export type OutputSpec =
  | { type: "number" | "integer"; unit: string; decimals?: number }
  | { type: "boolean" | "text" }
  | { type: "choice"; choices: AnswerChoice[] }
  | { type: "list"; item: OutputItem }
  | { type: "object"; fields: Output[] };
export interface OutputNamed {
  name: string;
  label: string;
  /** May be missing. */
  optional?: boolean;
  /** A figure on the way, shown only in the working. */
  working?: boolean;
}
/** One figure of an answer. */
export type Output = OutputSpec & OutputNamed;
export type OutputItem = OutputSpec & Partial<OutputNamed>;

export interface Words {
  field: string;
  message: string;
  allowed: string;
}

/** One calculation as shared_schema/calc/NAME.json tells it. */
export interface Contract {
  name: CalculationName;
  title: string;
  purpose: string;
  moment: "setting_up" | "filling" | "testing" | "changing" | "feeding_dosing" | "stocking";
  inputs: Field[];
  outputs: Output[];
  rules?: { rule: "exactly_one" | "at_most_one" | "together"; fields: string[] }[];
  /** Steps in words; {field} stands for an input's or output's value. */
  working: string[];
  uncertainty: string;
  cautions: { code: string; text: string }[];
  /** By the code that the calculation answers. */
  notes?: Record<string, string>;
  /** By the code of the refusal. */
  refusals: Record<string, Words>;
  sources: string[];
  outside: string[];
  examples: Example[];
}
export interface Example {
  id: string;
  why: string;
  source?: string;
  input: Record<string, unknown>;
}

/** One record kind as shared_schema/records/KIND.json tells it. */
export interface Kind {
  kind: RecordKind;
  title: string;
  purpose: string;
  schema: number;
  event: boolean;
  written_by: ("owner" | "keeper" | "helper")[];
  fields: Field[];
}

/** Every contract by name; of a name known only at run time there may be none. */
export type Contracts = { [K in CalculationName]: Contract } & { [name: string]: Contract | undefined };
/** Every record kind by name; of a name known only at run time there may be none. */
export type Kinds = { [K in RecordKind]: Kind } & { [kind: string]: Kind | undefined };

/** A field by the type of its value. */
export type SpecOf<V> = [V] extends [number]
  ? NumberSpec
  : [V] extends [boolean]
    ? BooleanSpec
    : [V] extends [string]
      ? string extends V
        ? TextSpec
        : ChoiceSpec
      : [V] extends [(infer E)[]]
        ? Omit<ListSpec, "item"> & { item: SpecOf<E> & Partial<Named> }
        : ObjectSpec;
/** An input by its name. */
export type InputOf<K extends CalculationName, N extends keyof Calculations[K]["input"]> = Named &
  SpecOf<NonNullable<Calculations[K]["input"][N]>>;
/** A field of a record by its name. */
export type RecordFieldOf<K extends RecordKind, N extends keyof RecordFields[K]> = Named &
  SpecOf<NonNullable<RecordFields[K][N]>>;

/** A source as tables/sources.json names it. */
export interface Source {
  key: string;
  title: string;
  provenance: string;
  [more: string]: unknown;
}

export interface Said {
  cautions: string[];
  notes: string[];
  sources: Source[];
}
/** What a calculation takes: its contract's input once it is checked, where usual values may still be left out. */
export type Input<K extends CalculationName> = {
  [N in keyof Calculations[K]["input"]]: N extends keyof Calculations[K]["values"]
    ? Calculations[K]["values"][N]
    : never;
};
/** What a calculation gives: the outputs of its contract, and the codes of its notes. */
export type Outputs<K extends CalculationName> = Calculations[K]["answer"] & { notes?: string[] };
/** What `run` answers: the outputs, and what is said with them. */
export type Answer<K extends CalculationName> = Calculations[K]["answer"] & Said;
export type { CalculationName, Calculations, RecordFields, RecordKind };
