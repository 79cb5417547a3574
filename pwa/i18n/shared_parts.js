/**
 * The shared texts in two parts. The Round runs on the first: what checks and calculates, and the words that it shows.
 * The rest is what forms, answers and sources show besides; every other page waits for it.
 */

/** @import { Bundle } from "../contracts.js" */
/** @import { Contract, Field, Item, Kind } from "../types/contract.js" */

/** @typedef {Pick<Bundle, "calc" | "records"> & {tables: Partial<Bundle["tables"]>}} Rest */

/** What a field shows and no calculation reads. */
const SHOWN = ["label", "short_label", "help"];

/** Calculations that the Round never runs: their contracts come with the rest. */
export const LATER = [
  ...["acclimation", "alkalinity_use", "ammonia_limits", "bath_dose", "carbon_dioxide", "closed_water", "evaporation"],
  ...["filled_weight", "hardness_units", "heater_power", "ionic_strength", "light_dose", "nitrite_risk"],
  ...["nutrient_routine", "oxygen_saturation", "salt_dose", "starter_dose", "steady_routine", "toxicant_limits"],
  "water_after_change",
];

/** @param {Bundle} bundle @returns {Bundle} enough of it for the Round */
export const first_of = (bundle) => ({
  ...bundle,
  calc: each(Object.fromEntries(Object.entries(bundle.calc).filter(([name]) => !LATER.includes(name))), bare_contract),
  records: each(bundle.records, bare_kind),
  tables: quiet_tables({
    ...bundle.tables,
    constants: { ...bundle.tables.constants, groups: each(bundle.tables.constants.groups, bare_group) },
    sources: {
      ...bundle.tables.sources,
      sources: each(bundle.tables.sources.sources, ({ provenance }) => ({ title: "", provenance })),
    },
  }),
});

/** @param {Bundle} bundle @returns {Rest} what `first_of` leaves out */
export const rest_of = ({ calc, records, tables: { constants, sources } }) => ({
  calc,
  records: each(Object.fromEntries(Object.entries(records).filter(([, { fields }]) => fields.some(is_open))), quiet),
  tables: quiet_tables({ constants, sources }),
});

/** @param {Bundle} first @param {Rest} rest @returns {Bundle} the whole again, but for each purpose */
export const together = (first, rest) => ({
  ...first,
  calc: rest.calc,
  records: { ...first.records, ...rest.records },
  tables: { ...first.tables, ...rest.tables },
});

/** @param {Contract} spec @returns {Contract} */
const bare_contract = ({ name, title, moment, inputs, outputs, rules, notes, refusals }) => ({
  ...{ name, title, moment, rules, notes, refusals },
  ...{ purpose: "", working: [], uncertainty: "", cautions: [], sources: [], outside: [], examples: [] },
  inputs: inputs.map(bare_field),
  // A sentence may say a choice of an answer by its label.
  outputs: outputs.filter((one) => "choices" in (one.type === "list" ? one.item : one)),
});

/** Whether it is or holds an open object, of which no form shows the fields. @param {Field} spec @returns {boolean} */
const is_open = (spec) => spec.type === "object" && (Boolean(spec.open) || spec.fields.some(is_open));

/** @param {Kind} kind @returns {Kind} */
const bare_kind = (kind) => ({ ...quiet(kind), fields: kind.fields.map(bare_inside) });

/** What a kind or a table is for is said to those who write to the API, on no page. @template T @param {T} one */
const quiet = (one) => ({ ...one, purpose: "" });

/** @template {Partial<Bundle["tables"]>} T @param {T} tables @returns {T} */
const quiet_tables = (tables) =>
  /** @type {T} */ (/** @type {unknown} */ (each(/** @type {Record<string, object>} */ (tables), quiet)));

/** Without what the fields of open objects show. @param {Field} spec @returns {Field} */
const bare_inside = (spec) =>
  is_open(spec) && spec.type === "object"
    ? { ...spec, fields: spec.fields.map(spec.open ? bare_field : bare_inside) }
    : spec;

/** @template {Field | Item} F @param {F} spec @returns {F} */
function bare_field(spec) {
  const bare = /** @type {F} */ (Object.fromEntries(Object.entries(spec).filter(([name]) => !SHOWN.includes(name))));
  if ("choices" in bare) bare.choices = bare.choices.map(({ value }) => ({ value, label: value }));
  if ("fields" in bare) bare.fields = bare.fields.map(bare_field);
  if ("item" in bare) bare.item = bare_field(bare.item);
  return bare;
}

/** @param {Bundle["tables"]["constants"]["groups"][string]} group */
const bare_group = ({ source, provenance, values }) => ({
  ...{ source, provenance },
  values: each(values, ({ value, unit }) => ({ value, unit })),
});

/** @template A, B @param {Record<string, A>} of @param {(one: A) => B} make @returns {Record<string, B>} */
const each = (of, make) => Object.fromEntries(Object.entries(of).map(([name, one]) => [name, make(one)]));
