/**
 * Contracts on the phone: check an input by shared_schema/calc/NAME.json and answer.
 * The server's twin is server/limnary/contracts.py: same stages, same words, same order of errors.
 */
import { calculations } from "./calc/index.js";
import { Refusal } from "./calc/refusal.js";
import { install as installTables, table } from "./calc/tables.js";

/** @typedef {{field: string, message: string, allowed: string}} FieldError */
/**
 * @typedef {{calc: Record<string, any>, tables: Record<string, any>, messages: Record<string, string>, records:
 * Record<string, any>}} Bundle
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
let bundle = { calc: {}, tables: {}, messages: {}, records: {} };

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

/** The bundle in force, for a worker that answers in the same words. */
export const installed = () => bundle;

/** Every contract by name. */
export const contracts = () => bundle.calc;

/** Every record kind by name. */
export const records = () => bundle.records;

/**
 * Check, calculate, answer outputs with cautions, notes and sources, as the API does.
 * @param {string} name @param {unknown} payload
 * @param {(values: any) => Record<string, any>} [calculate] another way to the same outputs (the outlook, gone on with)
 * @returns {Record<string, any>}
 * @throws {InvalidInput} naming each field and what is allowed
 */
export function run(name, payload, calculate = calculations[name]) {
  const spec = bundle.calc[name];
  if (!Object.hasOwn(bundle.calc, name)) throw new RangeError(`There is no calculation named ${name}`);
  const values = check(spec, payload);
  let outputs;
  try {
    outputs = { ...calculate(values) };
  } catch (no) {
    if (!(no instanceof Refusal)) throw no;
    const words = spec.refusals[no.code];
    throw new InvalidInput([{ ...words, field: no.field ?? words.field }]);
  }
  const notes = (outputs.notes ?? []).map((/** @type {string} */ code) => spec.notes[code]);
  const known = table("sources").sources;
  return {
    ...outputs,
    cautions: spec.cautions,
    notes,
    sources: spec.sources.map((/** @type {string} */ key) => ({ key, ...known[key] })),
  };
}

/** The payload with defaults, or InvalidInput. @param {any} spec @param {unknown} payload */
export function check(spec, payload) {
  if (!is_object(payload))
    throw new InvalidInput([{ field: "", message: words("not_body"), allowed: words("allowed_body") }]);
  const { values, errors } = check_fields(spec.inputs, /** @type {any} */ (payload));
  if (errors.length) throw new InvalidInput(errors);
  const between = [...missing_when(spec.inputs, values), ...broken_rules(spec, values)];
  if (between.length) throw new InvalidInput(between);
  return values;
}

/**
 * Stage 1: each field by its own specification; known fields in the contract's order, then strange ones.
 * @param {any[]} inputs @param {Record<string, any>} payload
 */
export function check_fields(inputs, payload) {
  /** @type {Record<string, any>} */ const values = {};
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
  for (const name of Object.keys(payload).sort()) {
    if (!names.includes(name)) errors.push({ field: name, message: words("unknown"), allowed: names.join(", ") });
  }
  return { values, errors };
}

/** @param {any} spec @param {any} value @param {string} path @returns {{value?: any, errors: FieldError[]}} */
function check_value(spec, value, path) {
  if (value === null) return bad(path, words("null"), spec);
  return CHECKS[spec.type](spec, value, path);
}

/** @type {Record<string, (spec: any, value: any, path: string) => {value?: any, errors: FieldError[]}>} */
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
    if (spec.pattern && !new RegExp(`^(?:${spec.pattern})$`, "u").test(value)) {
      return bad(path, words("not_pattern", { example: spec.example }), spec);
    }
    return ok(value);
  },
  choice(spec, value, path) {
    const options = spec.choices.map((/** @type {any} */ c) => c.value);
    return options.includes(value) ? ok(value) : bad(path, words("not_choice", { choices: options.join(", ") }), spec);
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
    if (spec.open) return ok(value);
    const { values, errors } = check_fields(spec.fields, value);
    return errors.length ? { errors: errors.map((e) => ({ ...e, field: `${path}.${e.field}` })) } : ok(values);
  },
};

/** @param {any} spec @param {number} value @param {string} path */
function within(spec, value, path) {
  if (!Number.isFinite(value)) return bad(path, words("not_finite"), spec);
  // A zero below zero is zero: no answer says -0.
  if (value >= spec.min && value <= spec.max) return ok(value + 0);
  return bad(path, words("out_of_range", { min: spec.min, max: spec.max, unit: unit(spec) }), spec);
}

/** Stage 2a: fields needed only beside a certain choice. @param {any[]} inputs @param {Record<string, any>} values */
function missing_when(inputs, values) {
  return inputs
    .filter((spec) => spec.required && spec.when && !(spec.name in values))
    .filter((spec) =>
      Object.entries(spec.when).every(([other, wanted]) => /** @type {any} */ (wanted).includes(values[other])),
    )
    .map((spec) => {
      const other = Object.keys(spec.when)[0];
      return problem(spec.name, words("missing_when", { other, value: values[other] }), spec);
    });
}

/** Stage 2b: rules between fields. @param {any} spec @param {Record<string, any>} values @returns {FieldError[]} */
function broken_rules(spec, values) {
  /** @type {FieldError[]} */ const errors = [];
  for (const { rule, fields } of spec.rules ?? []) {
    const given = fields.filter((/** @type {string} */ name) => name in values).length;
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

/** What a field takes, in words. @param {any} spec @returns {string} */
export function allowed(spec) {
  switch (spec.type) {
    case "number":
    case "integer":
      return words(`allowed_${spec.type}`, { min: spec.min, max: spec.max, unit: unit(spec) });
    case "choice":
      return spec.choices.map((/** @type {any} */ c) => c.value).join(", ");
    case "list":
      return words("allowed_list", { min: spec.min_items, max: spec.max_items });
    case "object":
      return words("allowed_object", { fields: spec.fields.map((/** @type {any} */ f) => f.name).join(", ") });
    case "text":
      return words("allowed_text", { min: spec.min_length ?? 0, max: spec.max_length });
    default:
      return words("allowed_boolean");
  }
}

/** @param {string} code @param {Record<string, any>} [parts] */
function words(code, parts = {}) {
  return bundle.messages[code].replace(/\{(\w+)\}/g, (_, name) =>
    typeof parts[name] === "number" ? figure(parts[name]) : String(parts[name]),
  );
}

/** @param {string} field @param {string} message @param {any} spec @returns {FieldError} */
const problem = (field, message, spec) => ({ field, message, allowed: allowed(spec) });
/** @param {string} path @param {string} message @param {any} spec */
const bad = (path, message, spec) => ({ errors: [problem(path, message, spec)] });
/** @param {any} value @returns {{value: any, errors: FieldError[]}} */
const ok = (value) => ({ value, errors: [] });
/** @param {any} spec */
const unit = (spec) => (spec.unit && spec.unit !== "1" ? ` ${spec.unit}` : "");
/** @param {unknown} value */
const is_object = (value) => typeof value === "object" && value !== null && !Array.isArray(value);
