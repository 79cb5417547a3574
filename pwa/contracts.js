/**
 * Contracts on the phone: check an input by shared_schema/calc/NAME.json and answer.
 * The server's twin is server/limnary/contracts.py: same stages, same words, same order of errors.
 */
import { first_calculations } from "./calc/first.js";
import { Refusal } from "./calc/refusal.js";
import { install as installTables, table } from "./calc/tables.js";

/** @typedef {import("./types/contract.js").CalculationName} CalculationName */
/** @typedef {import("./types/contract.js").Calculations} Calculations */
/** @typedef {import("./types/contract.js").RecordFields} RecordFields */
/** @typedef {import("./types/contract.js").RecordKind} RecordKind */
/** @typedef {import("./types/contract.js").Contract} Contract */
/** @typedef {import("./types/contract.js").Contracts} Contracts */
/** @typedef {import("./types/contract.js").Kinds} Kinds */
/** @typedef {import("./types/contract.js").Field} Field */
/** @typedef {import("./types/contract.js").Item} Item */
/** @typedef {import("./types/contract.js").Output} Output */
/** @typedef {import("./types/contract.js").OutputItem} OutputItem */
/** @typedef {{field: string, message: string, allowed: string}} FieldError */
/** @typedef {Record<string, unknown>} Values field values by name */
/**
 * @typedef {{calc: Record<string, Contract>, tables: import("./types/tables.js").Tables,
 *   messages: Record<string, string>, records: Record<string, import("./types/contract.js").Kind>,
 *   formats: Record<string, {pattern: string}>}} Bundle
 */

/** The input breaks its contract; `errors` is never empty. */
export class InvalidInput extends Error {
  /** @param {FieldError[]} errors */
  constructor(errors) {
    super(errors.map((e) => `${e.field} ${e.message}`.trim()).join("; "));
    this.errors = errors;
  }
}

/** @type {Bundle} */
let bundle = {
  calc: {},
  tables: /** @type {import("./types/tables.js").Tables} */ ({}),
  messages: {},
  records: {},
  formats: {},
};

/**
 * How a number stands in a refusal; as the API writes it unless a screen says otherwise.
 * @type {(value: number) => string}
 */
let figure = String;

/**
 * Make contracts, tables and wording known.
 * @param {Bundle} shared what /shared.json serves, its texts in the keeper's language or in English
 * @param {(value: number) => string} [as_figure] how the keeper's language writes a number
 */
export function install(shared, as_figure = String) {
  bundle = shared;
  figure = as_figure;
  installTables(shared.tables);
}

/** @type {Partial<typeof import("./calc/index.js").calculations>} */
let calculations = first_calculations;

/**
 * Make more calculations known than the first page needs.
 * @param {typeof import("./calc/index.js").calculations} all
 */
export function install_calculations(all) {
  calculations = all;
}

/** The bundle in force, for a worker that answers in the same words. */
export const installed = () => bundle;

/** Every contract by name. */
export const contracts = () => /** @type {Contracts} */ (bundle.calc);

/** Every record kind by name. */
export const records = () => /** @type {Kinds} */ (bundle.records);

/**
 * The contract of a calculation whose name is only known at run time.
 * @param {string} name
 * @returns {Contract}
 * @throws {RangeError} if there is none
 */
export function contract_of(name) {
  if (!Object.hasOwn(bundle.calc, name)) throw new RangeError(`There is no calculation named ${name}`);
  return bundle.calc[name];
}

/**
 * The record kind whose name is only known at run time.
 * @param {string} kind
 * @throws {RangeError} if there is none
 */
export function kind_of(kind) {
  if (!Object.hasOwn(bundle.records, kind)) throw new RangeError(`There is no record kind named ${kind}`);
  return bundle.records[kind];
}

/**
 * A field by its name, undefined if there is none.
 * @template {{name?: string}} F
 * @param {F[]} fields
 * @param {string} name
 */
export const find_field = (fields, name) => fields.find((field) => field.name === name);

/**
 * A field by its name.
 * @template {{name?: string}} F
 * @param {F[]} fields
 * @param {string} name
 * @throws {RangeError} if there is none
 */
export function field_named(fields, name) {
  const field = find_field(fields, name);
  if (!field) throw new RangeError(`There is no field named ${name}`);
  return field;
}

/**
 * A field with the words of help that fit what other fields hold.
 * @template {Pick<import("./types/contract.js").Named, "help" | "help_by">} F
 * @param {F} field
 * @param {(name: string) => unknown} held what a field of this name holds now
 * @returns {F}
 */
export function with_help(field, held) {
  const fitting = Object.entries(field.help_by ?? {}).flatMap(([name, by]) => by[String(held(name))] ?? []);
  return fitting.length > 0 ? { ...field, help: fitting.at(-1) } : field;
}

/**
 * An input of a contract.
 * @template {CalculationName} K
 * @template {keyof Calculations[K]["input"] & string} N
 * @param {K} name
 * @param {N} field
 */
export const input_of = (name, field) =>
  /** @type {import("./types/contract.js").InputOf<K, N>} */ (
    /** @type {unknown} */ (field_named(contract_of(name).inputs, field))
  );

/**
 * An output of a contract.
 * @template {CalculationName} K
 * @param {K} name
 * @param {keyof Calculations[K]["answer"] & string} field
 */
export const output_of = (name, field) => field_named(contract_of(name).outputs, field);

/**
 * A field of a record kind.
 * @template {RecordKind} K
 * @template {keyof RecordFields[K] & string} N
 * @param {K} kind
 * @param {N} field
 */
export const record_field = (kind, field) =>
  /** @type {import("./types/contract.js").RecordFieldOf<K, N>} */ (
    /** @type {unknown} */ (field_named(kind_of(kind).fields, field))
  );

/**
 * The fields of a list's entries.
 * @template {Field | Output} F
 * @param {F} list
 * @returns {(F extends Field ? Field : Output)[]}
 * @throws {RangeError} if its entries have none
 */
export function entry_fields(list) {
  if (list.type !== "list" || list.item.type !== "object") throw new RangeError(`${list.name} lists no fields`);
  return /** @type {(F extends Field ? Field : Output)[]} */ (/** @type {unknown} */ (list.item.fields));
}

/**
 * One field of a list's entries.
 * @param {Field | Output} list
 * @param {string} name
 */
export const entry_field = (list, name) => field_named(entry_fields(list), name);

/** A field's label without its explanation. @param {Field} field */
export const short_label = ({ short_label, label }) => short_label ?? label;

/**
 * The label of a choice without its explanation.
 * @param {import("./types/contract.js").ChoiceSpec} spec
 * @param {string} value
 */
export function short_choice_label({ choices }, value) {
  const choice = choices.find((one) => one.value === value);
  return choice?.short_label ?? choice?.label ?? value;
}

/**
 * The label of a choice, the value itself where the field offers no such choice.
 * @param {Item | OutputItem | undefined} spec of a choice, or of a list of choices
 * @param {string} value
 * @returns {string}
 */
export function choice_label(spec, value) {
  if (spec?.type === "list") return choice_label(spec.item, value);
  const choices = spec?.type === "choice" ? spec.choices : [];
  return choices.find((choice) => choice.value === value)?.label ?? value;
}

/**
 * One caution of a contract, in words.
 * @template {CalculationName} K
 * @param {K} name
 * @param {Calculations[K]["caution"]} code
 * @returns {string}
 * @throws {RangeError} if the contract has none of that code
 */
export function caution(name, code) {
  const found = contract_of(name).cautions.find((one) => one.code === code);
  if (!found) throw new RangeError(`${name} has no caution ${code}`);
  return found.text;
}

/**
 * The cautions of a contract in words: those of `codes`, all if it is left out.
 * @template {CalculationName} K
 * @param {K} name
 * @param {Calculations[K]["caution"][]} [codes]
 */
export const cautions_of = (name, codes) =>
  codes ? codes.map((code) => caution(name, code)) : contract_of(name).cautions.map(({ text }) => text);

/**
 * A figure that the answer may lack, where the input asks for it.
 * @template {object} A
 * @template {keyof A & string} N
 * @param {A} answer
 * @param {N} name
 * @returns {NonNullable<A[N]>}
 * @throws {RangeError} if the answer lacks it
 */
export function answered(answer, name) {
  const value = answer[name];
  if (value === undefined || value === null) throw new RangeError(`The answer lacks ${name}`);
  return value;
}

/**
 * Check, calculate, answer outputs with cautions, notes and sources, as the API does.
 * @template {CalculationName} K
 * @param {K} name
 * @param {Calculations[K]["input"]} payload
 * @returns {import("./types/contract.js").Answer<K>}
 * @throws {InvalidInput} naming each field and what is allowed
 */
export const run = (name, payload) => /** @type {import("./types/contract.js").Answer<K>} */ (run_named(name, payload));

/**
 * The same for a calculation whose name, or an input whose form, is only known at run time.
 * @param {string} name @param {unknown} payload
 * @param {(values: any) => Record<string, any>} [calculate] another way to the same outputs, as a resumed outlook;
 *   `any` here and in the answer, because their types depend on the name
 * @returns {Record<string, any> & import("./types/contract.js").Said}
 * @throws {InvalidInput} naming each field and what is allowed
 * @throws {RangeError} if there is no such calculation
 */
export function run_named(
  name,
  payload,
  calculate = /** @type {Record<string, (values: any) => Record<string, any>>} */ (calculations)[name],
) {
  const spec = contract_of(name);
  const values = check(spec, payload);
  let outputs;
  try {
    outputs = { ...calculate(values) };
  } catch (no) {
    if (!(no instanceof Refusal)) throw no;
    const words = spec.refusals[no.code];
    throw new InvalidInput([{ ...words, field: no.field ?? words.field }]);
  }
  const notes = (outputs.notes ?? []).map((/** @type {string} */ code) => spec.notes?.[code]);
  const known = table("sources").sources;
  return {
    ...outputs,
    cautions: spec.cautions.map(({ text }) => text),
    notes,
    sources: spec.sources.map((key) => ({ key, ...known[key] })),
  };
}

/**
 * The payload with defaults, or InvalidInput.
 * @param {Contract} spec @param {unknown} payload @returns {Values}
 */
export function check(spec, payload) {
  if (!is_object(payload))
    throw new InvalidInput([{ field: "", message: words("not_body"), allowed: words("allowed_body") }]);
  const { values, errors } = check_fields(spec.inputs, payload);
  if (errors.length) throw new InvalidInput(errors);
  const between = [...missing_when(spec.inputs, values), ...broken_rules(spec, values)];
  if (between.length) throw new InvalidInput(between);
  return values;
}

// A form holds tabs and line breaks; the other control characters, and halves of a character, are no text to read.
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what it finds
const CONTROLS = /[\x00-\x08\x0b\x0c\x0e-\x1f\x7f\ud800-\udfff]/u;
/** What an open object (a tank's measures) may hold in all; the server's contracts.py has the same bounds. */
const OPEN = { depth: 6, entries: 500, characters: 8_000, number: 1e15 };

/**
 * Whether an open object holds only what every reader can bear: little, not deep, real text and real numbers.
 * @param {unknown} value
 */
function is_plain(value) {
  let [entries, characters] = [0, 0];
  /** @type {unknown[]} */ let level = [value];
  for (let depth = 0; depth <= OPEN.depth; depth++) {
    /** @type {unknown[]} */ const inner = [];
    for (const one of level) {
      const texts = typeof one === "string" ? [one] : is_object(one) ? Object.keys(one) : [];
      if (texts.some((text) => CONTROLS.test(text) || text === "__proto__")) return false;
      if (typeof one === "number" && !(Math.abs(one) <= OPEN.number)) return false;
      for (const text of texts) characters += [...text].length;
      if (Array.isArray(one)) inner.push(...one);
      else if (is_object(one)) inner.push(...Object.values(one));
    }
    entries += inner.length;
    if (entries > OPEN.entries || characters > OPEN.characters) return false;
    level = inner;
  }
  return level.length === 0;
}

/** An answer names so many errors at most, as the server's does. */
const MOST_ERRORS = 50;

/**
 * Stage 1: each field by its own specification; known fields in the contract's order, then strange ones.
 * @param {Field[]} inputs @param {Values} payload @param {boolean} [open] strange fields are no error
 */
export function check_fields(inputs, payload, open = false) {
  /** @type {Values} */ const values = {};
  /** @type {FieldError[]} */ const errors = [];
  for (const spec of inputs) {
    if (Object.hasOwn(payload, spec.name) && payload[spec.name] !== undefined) {
      const found = check_value(spec, payload[spec.name], spec.name);
      if (found.errors.length) errors.push(...found.errors);
      else values[spec.name] = found.value;
    } else if ("default" in spec) values[spec.name] = spec.default;
    else if (spec.required && !spec.when) errors.push(problem(spec.name, words("missing"), spec));
  }
  const names = inputs.map((spec) => spec.name);
  for (const name of open ? [] : Object.keys(payload).sort()) {
    if (!names.includes(name)) errors.push({ field: name, message: words("unknown"), allowed: names.join(", ") });
  }
  return { values, errors: errors.slice(0, MOST_ERRORS) };
}

/**
 * The entries of an open object that fit: of what was recorded before its fields were checked. Strange ones stay.
 * @template {object} T
 * @param {Field[]} inputs @param {T} held
 * @returns {Partial<T>}
 */
export const fitting = (inputs, held) =>
  /** @type {Partial<T>} */ (
    Object.fromEntries(
      Object.entries(held).filter(([name, value]) => {
        const spec = find_field(inputs, name);
        return !spec || check_value(spec, value, name).errors.length === 0;
      }),
    )
  );

/** @typedef {{value?: unknown, errors: FieldError[]}} Checked */

/** @param {Item} spec @param {unknown} value @param {string} path @returns {Checked} */
function check_value(spec, value, path) {
  if (value === null) return bad(path, words("null"), spec);
  const check_type = /** @type {(spec: Item, value: unknown, path: string) => Checked} */ (CHECKS[spec.type]);
  return check_type(spec, value, path);
}

/** @type {{[T in Item["type"]]: (spec: Extract<Item, {type: T}>, value: unknown, path: string) => Checked}} */
const CHECKS = {
  number(spec, value, path) {
    if (typeof value !== "number") return bad(path, words("not_number"), spec);
    return within(spec, value, path);
  },
  integer(spec, value, path) {
    if (typeof value !== "number") return bad(path, words("not_integer"), spec);
    if (Number.isFinite(value) && !Number.isInteger(value)) return bad(path, words("not_integer"), spec);
    return within(spec, value, path);
  },
  boolean(spec, value, path) {
    return typeof value === "boolean" ? ok(value) : bad(path, words("not_boolean"), spec);
  },
  text(spec, value, path) {
    if (typeof value !== "string") return bad(path, words("not_text"), spec);
    const shortest = spec.min_length ?? 0;
    const length = [...value].length;
    if (length < shortest || length > spec.max_length) {
      return bad(path, words("text_length", { min: shortest, max: spec.max_length }), spec);
    }
    if (CONTROLS.test(value)) return bad(path, words("control"), spec);
    const pattern = spec.format ? bundle.formats[spec.format].pattern : spec.pattern;
    if (pattern && !new RegExp(`^(?:${pattern})$`, "u").test(value)) {
      return bad(path, words("not_pattern", { example: spec.example }), spec);
    }
    return ok(value);
  },
  choice(spec, value, path) {
    const options = spec.choices.map((choice) => choice.value);
    return options.some((option) => option === value)
      ? ok(value)
      : bad(path, words("not_choice", { choices: options.join(", ") }), spec);
  },
  list(spec, value, path) {
    if (!Array.isArray(value)) return bad(path, words("not_list"), spec);
    if (value.length < spec.min_items || value.length > spec.max_items) {
      return bad(path, words("list_length", { min: spec.min_items, max: spec.max_items }), spec);
    }
    const found = value.map((entry, index) => check_value(spec.item, entry, `${path}.${index}`));
    const errors = found.flatMap((one) => one.errors);
    return errors.length ? { errors } : ok(found.map((one) => one.value));
  },
  object(spec, value, path) {
    if (!is_object(value)) return bad(path, words("not_object"), spec);
    // The fields come first: their errors say more than that of the whole.
    const { values, errors } = check_fields(spec.fields, value, spec.open);
    if (errors.length) return { errors: errors.map((e) => ({ ...e, field: `${path}.${e.field}` })) };
    if (!spec.open) return ok(values);
    return is_plain(value) ? ok(value) : bad(path, words("not_plain"), spec);
  },
};

/**
 * @param {import("./types/contract.js").NumberSpec} spec @param {number} value @param {string} path
 * @returns {Checked}
 */
function within(spec, value, path) {
  if (!Number.isFinite(value)) return bad(path, words("not_finite"), spec);
  // A zero below zero is zero: no answer says -0.
  if (value >= spec.min && value <= spec.max) return ok(value + 0);
  return bad(path, words("out_of_range", { min: spec.min, max: spec.max, unit: unit(spec) }), spec);
}

/** Stage 2a: fields needed only beside a certain choice. @param {Field[]} inputs @param {Values} values */
function missing_when(inputs, values) {
  return inputs.flatMap((spec) => {
    if (!spec.required || !spec.when || spec.name in values) return [];
    const beside = Object.entries(spec.when);
    if (!beside.every(([other, wanted]) => wanted.some((choice) => choice === values[other]))) return [];
    const [other] = beside[0];
    return [problem(spec.name, words("missing_when", { other, value: values[other] }), spec)];
  });
}

/** Stage 2b: rules between fields. @param {Contract} spec @param {Values} values @returns {FieldError[]} */
function broken_rules(spec, values) {
  /** @type {FieldError[]} */ const errors = [];
  for (const { rule, fields } of spec.rules ?? []) {
    const given = fields.filter((name) => name in values).length;
    /** @type {Record<string, boolean>} */
    const broken = {
      exactly_one: given !== 1,
      at_most_one: given > 1,
      together: given !== 0 && given !== fields.length,
    };
    if (broken[rule]) {
      const text = words(rule, { fields: fields.join(", ") });
      errors.push({ field: fields[0], message: text, allowed: text });
    }
  }
  return errors;
}

/** What a field takes, in words. @param {Item} spec @returns {string} */
export function allowed(spec) {
  switch (spec.type) {
    case "number":
    case "integer":
      return words(`allowed_${spec.type}`, { min: spec.min, max: spec.max, unit: unit(spec) });
    case "choice":
      return spec.choices.map((choice) => choice.value).join(", ");
    case "list":
      return words("allowed_list", { min: spec.min_items, max: spec.max_items });
    case "object":
      if (spec.open) return words("allowed_open", { entries: OPEN.entries, depth: OPEN.depth });
      return words("allowed_object", { fields: spec.fields.map((field) => field.name).join(", ") });
    case "text":
      return words("allowed_text", { min: spec.min_length ?? 0, max: spec.max_length });
    default:
      return words("allowed_boolean");
  }
}

/** @param {string} code @param {Values} [parts] */
function words(code, parts = {}) {
  return bundle.messages[code].replace(/\{(\w+)\}/g, (_, name) => {
    const part = parts[name];
    return typeof part === "number" ? figure(part) : String(part);
  });
}

/** @param {string} field @param {string} message @param {Item} spec @returns {FieldError} */
const problem = (field, message, spec) => ({ field, message, allowed: allowed(spec) });
/** @param {string} path @param {string} message @param {Item} spec */
const bad = (path, message, spec) => ({ errors: [problem(path, message, spec)] });
/** @param {unknown} value @returns {Checked} */
const ok = (value) => ({ value, errors: [] });
/** @param {import("./types/contract.js").NumberSpec} spec */
const unit = (spec) => (spec.unit && spec.unit !== "1" ? ` ${spec.unit}` : "");
/** @param {unknown} value @returns {value is Values} */
const is_object = (value) => typeof value === "object" && value !== null && !Array.isArray(value);
