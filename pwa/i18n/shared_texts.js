/**
 * Which fields of /shared.json a keeper reads, and the same bundle in another language, keyed by the English text.
 * Names, values and keys are never touched: a calculation answers alike in every language.
 */

/** @typedef {(english: string) => string} Say */
/**
 * @typedef {Record<string, any>} Part a part of the bundle in whatever form its schema gives it: any, because only its
 * texts are read here and all else is copied as it is
 */

/** Fields of a contract or a record kind that are words, wherever they stand in inputs, outputs and choices. */
const OF_FIELD = ["label", "short_label", "help"];
/** Tables of which a keeper reads names or labels. @type {Record<string, "name" | "label">} */
const TABLES = {
  species: "name",
  plants: "name",
  salts: "label",
  hardness_scales: "label",
  tank_classes: "label",
  units: "label",
};

/** Sources that are no citation. */
const OURS = ["common practice", "assumption"];

/**
 * @template {{calc: Part, records: Part, tables: Part, messages: Part}} B
 * @param {B} bundle
 * @param {Say} say
 * @returns {B} a copy whose texts are said by `say`
 */
export function said_by(bundle, say) {
  const { calc, records, tables, messages } = bundle;
  return {
    ...bundle,
    calc: each(calc, (one) => contract(one, say)),
    records: each(records, (one) => kind(one, say)),
    tables: with_tables(tables, say),
    messages: each(messages, say),
  };
}

/** Every text of the bundle, once, in its order. @param {Parameters<typeof said_by>[0]} bundle @returns {string[]} */
export function texts_of(bundle) {
  /** @type {Set<string>} */ const texts = new Set();
  said_by(bundle, (english) => {
    texts.add(english);
    return english;
  });
  return [...texts];
}

/**
 * The bundle with what `words` holds; the rest stays English.
 * @template {Parameters<typeof said_by>[0]} B
 * @param {B} bundle
 * @param {Record<string, string>} words
 */
export const in_words = (bundle, words) =>
  said_by(bundle, (english) => (Object.hasOwn(words, english) ? words[english] : english));

/** @param {Part} spec @param {Say} say */
function contract(spec, say) {
  return {
    ...spec,
    title: say(spec.title),
    purpose: say(spec.purpose),
    inputs: fields(spec.inputs, say),
    outputs: fields(spec.outputs, say),
    working: (spec.working ?? []).map(say),
    uncertainty: say(spec.uncertainty),
    cautions: spec.cautions.map((/** @type {Part} */ one) => ({ ...one, text: say(one.text) })),
    ...(spec.notes ? { notes: each(spec.notes, say) } : {}),
    ...(spec.refusals
      ? { refusals: each(spec.refusals, (one) => ({ ...one, message: say(one.message), allowed: say(one.allowed) })) }
      : {}),
  };
}

/** @param {Part} spec @param {Say} say */
const kind = (spec, say) => ({ ...spec, title: say(spec.title), fields: fields(spec.fields, say) });

/** @param {Part[]} specs @param {Say} say @returns {Part[]} */
const fields = (specs, say) => specs.map((spec) => field(spec, say));

/** @param {Part} spec @param {Say} say @returns {Part} */
function field(spec, say) {
  const made = { ...spec };
  for (const name of OF_FIELD) if (made[name]) made[name] = say(made[name]);
  if (made.help_by) made.help_by = each(made.help_by, (/** @type {Part} */ by) => each(by, say));
  if (made.choices)
    made.choices = made.choices.map((/** @type {Part} */ one) => ({
      ...one,
      label: say(one.label),
      ...(one.short_label ? { short_label: say(one.short_label) } : {}),
      ...(one.said ? { said: each(one.said, say) } : {}),
    }));
  if (made.fields) made.fields = fields(made.fields, say);
  if (made.item) made.item = field(made.item, say);
  return made;
}

/** @param {Part} tables @param {Say} say */
function with_tables(tables, say) {
  const made = each(tables, (table, name) => (name in TABLES ? named(table, TABLES[name], say) : table));
  // A citation stands in its own language; practice and assumptions are sentences of ours.
  const sources = each(tables.sources.sources, (one) =>
    OURS.includes(one.provenance) ? { ...one, title: say(one.title) } : one,
  );
  return { ...made, sources: { ...tables.sources, sources } };
}

/**
 * Every `key` that holds a text, at any depth.
 * @param {unknown} value
 * @param {string} key
 * @param {Say} say
 * @returns {unknown}
 */
function named(value, key, say) {
  if (Array.isArray(value)) return value.map((one) => named(one, key, say));
  if (typeof value !== "object" || value === null) return value;
  return each(value, (one, name) => (name === key && typeof one === "string" ? say(one) : named(one, key, say)));
}

/** @param {Part} of @param {(one: Part[string], name: string) => unknown} make @returns {Part} */
const each = (of, make) => Object.fromEntries(Object.entries(of).map(([name, one]) => [name, make(one, name)]));
