/** The form of a calculation: what it shows, what it hands over, and that nothing typed is ever lost. */
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { answer_of, label_of } from "../../pwa/bench/answer.js";
import { add_row, put, remove_row } from "../../pwa/bench/draft.js";
import { form_of, payload_of, range_shown } from "../../pwa/bench/form.js";
import { parts_of, with_parts } from "../../pwa/bench/refusal_parts.js";
import { views_of } from "../../pwa/bench/record_fields.js";
import { contracts, install } from "../../pwa/contracts.js";
import { in_words } from "../../pwa/i18n/shared_texts.js";
import { some, there } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());
const marks = { decimal: ".", group: "," };

/** @typedef {import("../../pwa/types/contract.js").Contract} Contract */
/** @typedef {import("../../pwa/types/contract.js").Field} Field */
/** @typedef {import("../../pwa/types/contract.js").Item} Item */
/** @typedef {import("../../pwa/bench/draft.js").Node} Node */
/** @typedef {import("../../pwa/bench/draft.js").Path} Path */
/** @typedef {import("../../pwa/bench/draft.js").Draft} Draft */
/** @typedef {ReturnType<typeof form_of>} Form */
/** @typedef {import("../../pwa/types/contract.js").Named} Named */
/** @typedef {import("../../pwa/types/contract.js").NumberSpec & Named} NumberField */
/** @param {string} name @param {string} unit @param {Partial<NumberField>} [more] @returns {NumberField} */
const number = (name, unit, more = {}) => ({
  name,
  label: name.toUpperCase(),
  type: "number",
  unit,
  min: 0,
  max: 1000,
  ...more,
});
const WARMTH = number("warmth_c", "°C", { default: 25, max: 50 });
/** @type {import("../../pwa/types/contract.js").ListSpec & Named} */
const WATERS = {
  name: "waters",
  label: "Waters",
  type: "list",
  required: true,
  min_items: 1,
  max_items: 3,
  item: {
    type: "object",
    fields: [
      { name: "name", label: "Name", type: "text", min_length: 1, max_length: 9 },
      number("gh_dgh", "°dGH", { required: true }),
    ],
  },
};
/** A contract of no calculation that there is. @type {Contract & {rules: NonNullable<Contract["rules"]>}} */
const spec = some({
  name: /** @type {Contract["name"]} */ (/** @type {string} */ ("invented")),
  refusals: {},
  inputs: [
    {
      name: "shape",
      label: "Shape",
      type: "choice",
      required: true,
      choices: [
        { value: "box", label: "a box" },
        { value: "tube", label: "a tube" },
      ],
    },
    number("length_cm", "cm", { required: true, when: { shape: ["box"] } }),
    number("across_cm", "cm", { required: true, when: { shape: ["tube"] } }),
    number("altitude_m", "m"),
    number("pressure_kpa", "kPa"),
    number("feed_g", "g"),
    number("protein_fraction", "1", { max: 1 }),
    WARMTH,
    WATERS,
    {
      name: "parts",
      label: "Parts",
      type: "list",
      min_items: 0,
      max_items: 3,
      default: [],
      item: { type: "number", unit: "1", min: 0, max: 1 },
    },
  ],
  rules: [
    { rule: "exactly_one", fields: ["altitude_m", "feed_g"] },
    { rule: "together", fields: ["feed_g", "protein_fraction"] },
    { rule: "at_most_one", fields: ["pressure_kpa", "warmth_c"] },
  ],
});
/** The fields of a form, without its either-ors. @param {Form} form */
const fields_in = (form) => form.flatMap((one) => ("key" in one ? [one] : []));
const keys = (/** @type {Form} */ form) => fields_in(form).map((view) => view.key);
/** @param {Form} form @param {string} key */
const view = (form, key) => there(fields_in(form).find((one) => one.key === key));
const typed = (/** @type {string} */ text, /** @type {string} */ unit) => ({ text, unit });

/** The either-ors of a form. @param {Form} form */
const choices_in = (form) => form.flatMap((part) => ("choice" in part ? [part.choice] : []));
/** An outcome that is no answer yet. @param {import("../../pwa/bench/answer.js").Outcome} outcome */
function unanswered(outcome) {
  assert.ok("needed" in outcome);
  return outcome;
}

/** A draft typed step by step, as taps and keys make it. @param {[Path, Node][]} steps */
function fill(steps, inputs = spec.inputs, tank = {}) {
  return steps.reduce((draft, [path, node]) => put(inputs, draft, tank, path, node), /** @type {Draft} */ ({}));
}

test("a measure's help is that of the shape and side chosen, on every form", () => {
  const { volume } = contracts();
  const helps = (/** @type {Record<string, string>} */ typed) => {
    const on_bench = form_of(volume, { draft: { typed }, marks }).flatMap((view) => ("spec" in view ? [view] : []));
    const of_tank = views_of(volume.inputs, typed, { system: "metric", marks });
    const said = (/** @type {{spec: {help?: string, name?: string}}[]} */ views) =>
      Object.fromEntries(
        views
          .filter(({ spec }) => /^(length|width|height)_cm$/.test(spec.name ?? ""))
          .map(({ spec }) => [spec.name, spec.help]),
      );
    assert.deepEqual(said(of_tank), said(on_bench));
    return said(on_bench);
  };
  assert.deepEqual(helps({ shape: "cuboid" }), {
    length_cm: "Left to right.",
    width_cm: "Front to back.",
    height_cm: "From the inside bottom to the rim.",
  });
  assert.equal(
    helps({ shape: "quarter_round" }).length_cm,
    "One straight side, from the corner to where the curve begins.",
  );
  assert.equal(helps({ shape: "hexagon" }).width_cm, "From one pane to the pane opposite.");
  assert.equal(helps({ shape: "bowl" }).height_cm, "From the inside bottom up to its opening.");
  for (const shape of ["cuboid", "bowl"])
    assert.equal(helps({ shape, measures: "outside" }).height_cm, "From under the bottom glass to the rim.");
});

test("only the fields that matter beside a choice are shown and handed over; the others keep what was typed", () => {
  let draft = fill([
    [["shape"], "box"],
    [["length_cm"], typed("60", "cm")],
  ]);
  assert.ok(keys(form_of(spec, { draft, marks })).includes("length_cm"));
  assert.equal(payload_of(spec, { draft, marks }).length_cm, 60);
  draft = put(spec.inputs, draft, {}, ["shape"], "tube");
  assert.deepEqual(keys(form_of(spec, { draft, marks })).slice(0, 2), ["shape", "across_cm"]);
  assert.ok(!("length_cm" in payload_of(spec, { draft, marks })));
  draft = put(spec.inputs, draft, {}, ["shape"], "box");
  assert.equal(view(form_of(spec, { draft, marks }), "length_cm").value, "60");
});

test("an either-or offers its sides, takes fields that belong together along, and follows what was typed", () => {
  const bare = form_of(spec, { draft: {}, marks });
  const choice = choices_in(bare).find(({ key }) => key === "altitude_m|feed_g");
  assert.deepEqual(choice, {
    key: "altitude_m|feed_g",
    options: ["altitude_m", "feed_g"],
    chosen: "altitude_m",
    optional: false,
  });
  assert.ok(!keys(bare).includes("protein_fraction"));
  const fed = form_of(spec, { draft: { chosen: { "altitude_m|feed_g": "feed_g" } }, marks });
  assert.ok(
    keys(fed).includes("feed_g") && keys(fed).includes("protein_fraction") && !keys(fed).includes("altitude_m"),
  );
  const draft = fill([[["feed_g"], typed("2", "g")]]);
  assert.ok(keys(form_of(spec, { draft, marks })).includes("feed_g"));
  assert.deepEqual(
    [view(fed, "feed_g").optional, view(fed, "protein_fraction").optional],
    [false, false],
    "the chosen side is needed, whole",
  );
});

test("an either-or that may stay open starts open unless a figure is there", () => {
  /** @type {Contract} */
  const open = { ...spec, rules: [{ rule: "at_most_one", fields: ["altitude_m", "pressure_kpa"] }] };
  assert.equal(choices_in(form_of(open, { draft: {}, marks }))[0].chosen, null);
  const here = form_of(open, { draft: {}, tank: { pressure_kpa: 95 }, marks });
  assert.ok(keys(here).includes("pressure_kpa") && !keys(here).includes("altitude_m"));
  const none = { draft: { chosen: { "altitude_m|pressure_kpa": "" } }, tank: { pressure_kpa: 95 }, marks };
  assert.ok(!("pressure_kpa" in payload_of(open, none)));
});

test("switching units there and back gives the typed text, to the letter", () => {
  for (const text of ["12,50", "7.", "abc", "", "-3", "1e3", "  8 ", "0.1000"]) {
    const draft = fill([
      [["shape"], "box"],
      [["length_cm"], typed(text, "cm")],
    ]);
    const before = JSON.stringify(draft);
    for (const system of ["us", "imperial", "metric"]) form_of(spec, { draft, system, marks });
    assert.equal(JSON.stringify(draft), before);
    assert.equal(
      view(form_of(spec, { draft, system: "metric", marks }), "length_cm").value,
      text.trim() === "" ? "" : text,
    );
  }
});

test("a number typed in another unit reaches the calculation in the contract's, and reads back as typed", () => {
  const draft = fill([
    [["shape"], "box"],
    [["length_cm"], typed("23,5", "in")],
    [["warmth_c"], typed("77", "°F")],
  ]);
  const us = form_of(spec, { draft, system: "us", marks });
  assert.equal(view(us, "length_cm").value, "23,5");
  assert.equal(view(us, "length_cm").unit, "in");
  const metric = form_of({ ...spec, rules: [] }, { draft, system: "metric", marks });
  assert.equal(view(metric, "length_cm").value, "59.69");
  const handed = payload_of({ ...spec, rules: [] }, { draft, system: "us", marks });
  assert.equal(handed.length_cm, 59.69);
  assert.equal(handed.warmth_c, 25);
});

test("the tank's figures fill untouched fields, give way to what is typed, and come back when asked", () => {
  const tank = { length_cm: 80.5, shape: "box" };
  const form = form_of(spec, { draft: {}, tank, marks: { decimal: ",", group: "." } });
  assert.deepEqual([view(form, "length_cm").value, view(form, "length_cm").from], ["80,5", "tank"]);
  const over = (/** @type {string} */ text, /** @type {Node} */ node = typed(text, "cm"), path = ["length_cm"]) =>
    view(
      form_of(spec, { draft: fill([[path, node]], spec.inputs, tank), tank, marks: { decimal: ",", group: "." } }),
      path[0],
    ).own;
  assert.deepEqual(
    [over("70"), over("80,5"), over("", "tube", ["shape"])],
    ["80,5 cm", undefined, "a box"],
    "the tank's own stands beside what differs from it",
  );
  let draft = fill([[["length_cm"], typed("", "cm")]], spec.inputs, tank);
  assert.ok(!("length_cm" in payload_of(spec, { draft, tank, marks })), "emptied on purpose");
  draft = put(spec.inputs, draft, tank, ["length_cm"], undefined);
  assert.equal(payload_of(spec, { draft, tank, marks }).length_cm, 80.5);
});

test("a tank's list fills its rows, figures by the reader's marks", () => {
  const tank = {
    waters: [
      { name: "tap", gh_dgh: 9.5 },
      { name: "rain", gh_dgh: 0 },
    ],
  };
  const { rows } = view(form_of(spec, { draft: {}, tank, marks: { decimal: ",", group: "." } }), "waters");
  assert.deepEqual(
    rows?.map((row) => row.map(({ value }) => value)),
    [
      ["tap", "9,5"],
      ["rain", "0"],
    ],
  );
  assert.deepEqual(payload_of(spec, { draft: {}, tank, marks }).waters, tank.waters);
});

test("a tank's figure is no text: a point in it is never read as a thousand", () => {
  const german = { decimal: ",", group: "." };
  assert.equal(
    payload_of(spec, { draft: {}, tank: { shape: "box", length_cm: 1.125 }, marks: german }).length_cm,
    1.125,
  );
});

test("rows are added and taken away; what stands in the other rows stays", () => {
  let draft = put(spec.inputs, {}, {}, ["waters", 0, "gh_dgh"], typed("4,5", "°dGH"));
  draft = add_row(spec.inputs, draft, {}, ["waters"]);
  draft = put(spec.inputs, draft, {}, ["waters", 1, "name"], "rain");
  assert.deepEqual(payload_of(spec, { draft, marks }).waters, [{ gh_dgh: 4.5 }, { name: "rain" }]);
  draft = remove_row(spec.inputs, draft, {}, ["waters"], 0);
  assert.deepEqual(payload_of(spec, { draft, marks }).waters, [{ name: "rain" }]);
  const rows = view(form_of(spec, { draft, marks }), "waters").rows;
  assert.deepEqual(
    rows?.[0].map((one) => one.key),
    ["waters.0.name", "waters.0.gh_dgh"],
  );
});

test("a list of plain numbers: an empty row stays a row, so that its error finds it", () => {
  let draft = add_row(spec.inputs, {}, {}, ["parts"]);
  draft = add_row(spec.inputs, draft, {}, ["parts"]);
  draft = put(spec.inputs, draft, {}, ["parts", 1], typed("0.3", "1"));
  assert.deepEqual(payload_of(spec, { draft, marks }).parts, ["", 0.3]);
  assert.equal(view(form_of(spec, { draft, marks }), "parts").rows?.[1][0].aside, "30 %");
  assert.ok(!("parts" in payload_of(spec, { draft: {}, marks })), "untouched: the contract's own default holds");
});

test("empty fields are named as needed; wrong ones are refused in the API's words", () => {
  const real = contracts().free_ammonia;
  const draft = fill(
    [
      [["tan_mg_n_l"], typed("half", "mg N/L")],
      [["ph"], typed("15", "")],
    ],
    real.inputs,
  );
  const outcome = unanswered(answer_of(real, { draft, marks }));
  assert.deepEqual(outcome.needed, ["Water temperature"]);
  assert.deepEqual(outcome.wrong, [
    { field: "tan_mg_n_l", message: "must be a number", allowed: "a number from 0 to 1000 mg N/L" },
    { field: "ph", message: "must be from 0 to 14", allowed: "a number from 0 to 14" },
  ]);
});

test("a list that is needed and has no row left is named as needed", () => {
  const real = contracts().animal_mass;
  const draft = remove_row(real.inputs, {}, {}, ["animals"], 0);
  assert.deepEqual(draft.typed?.animals, []);
  assert.deepEqual(unanswered(answer_of(real, { draft, marks })).needed, [
    real.inputs.find(({ name }) => name === "animals")?.label,
  ]);
});

test("with every field good the answer is the calculation's, comma or point alike", () => {
  const real = contracts().free_ammonia;
  const of = (/** @type {string} */ tan, /** @type {string} */ ph) => {
    const outcome = answer_of(real, {
      draft: fill(
        [
          [["tan_mg_n_l"], typed(tan, "mg N/L")],
          [["ph"], typed(ph, "")],
          [["temperature_c"], typed("25", "°C")],
        ],
        real.inputs,
      ),
      marks,
    });
    assert.ok("answer" in outcome);
    return /** @type {import("../../pwa/types/contract.js").Answer<"free_ammonia">} */ (
      /** @type {unknown} */ (outcome.answer)
    );
  };
  assert.equal(of("0,5", "8,0").nh3_mg_n_l, of("0.5", "8").nh3_mg_n_l);
  assert.ok(Math.abs(of("1", "8").fraction - 0.05366) < 2e-4);
});

test("an either-or left empty asks for the side that is shown, and the words name labels", () => {
  const either = { ...contracts().free_ammonia, inputs: spec.inputs.slice(3, 7), rules: spec.rules.slice(0, 2) };
  const bundle = shared_bundle();
  install({ ...bundle, calc: { ...bundle.calc, free_ammonia: either } });
  assert.deepEqual(
    unanswered(answer_of(either, { draft: { chosen: { "altitude_m|feed_g": "feed_g" } }, marks })).needed,
    ["FEED_G"],
  );
  const half = fill([[["feed_g"], typed("1", "g")]], either.inputs);
  assert.deepEqual(unanswered(answer_of(either, { draft: half, marks })).needed, ["PROTEIN_FRACTION"]);
  install(shared_bundle());
});

test("in every language a broken rule is told from an empty field and read back as it was put together", () => {
  for (const language of ["de", "fr"]) {
    const bundle = in_words(
      shared_bundle(),
      JSON.parse(readFileSync(new URL(`../../shared_schema/words/${language}.json`, import.meta.url), "utf8")),
    );
    const either = { ...bundle.calc.free_ammonia, inputs: spec.inputs.slice(3, 7), rules: spec.rules.slice(0, 2) };
    install({ ...bundle, calc: { ...bundle.calc, free_ammonia: either } });
    const outcome = unanswered(answer_of(either, { draft: { chosen: { "altitude_m|feed_g": "feed_g" } }, marks }));
    assert.deepEqual([outcome.needed, outcome.wrong], [["FEED_G"], []], language);
    /** @type {[string, Record<string, string>][]} */
    const refusals = [
      ["together", { fields: "ph, kh_dkh" }],
      ["missing_when", { other: "shape", value: "tube" }],
    ];
    for (const [code, parts] of refusals) {
      assert.deepEqual({ ...parts_of(code, with_parts(code, parts)) }, parts);
      assert.equal(parts_of(code, "something else"), null);
    }
  }
  install(shared_bundle());
});

test("an error's field is read out with its row", () => {
  assert.equal(label_of(spec, "waters.1.gh_dgh"), "Waters 2: GH_DGH");
  assert.equal(label_of(spec, "parts.0"), "Parts 1");
  assert.equal(label_of(spec, "strange"), "strange");
  const named = { ...spec, inputs: [{ ...WATERS, item: { ...WATERS.item, label: "Water" } }] };
  assert.equal(label_of(named, "waters.0.name"), "Water 1: Name");
  assert.equal(label_of(named, "waters.0.name", { ...marks, colon: "\u00a0: " }), "Water 1\u00a0: Name");
});

test("what the label counts in is asked only where the dose goes by a label", () => {
  const asked = (/** @type {string} */ by) => {
    const views = form_of(contracts().bath_dose, { draft: { chosen: { "label_amount|wanted_g_l": by } }, marks });
    return views.flatMap((view) => ("key" in view ? [view.key] : [])).slice(0, 4);
  };
  assert.deepEqual(asked("label_amount"), ["water_l", "label_amount", "label_per_l", "label_unit"]);
  assert.deepEqual(asked("wanted_g_l"), ["water_l", "wanted_g_l", "days", "change_fraction"]);
});

test("a calculation's own refusal is said in full, but an untouched form is only asked", () => {
  const real = contracts().compatibility;
  assert.deepEqual(unanswered(answer_of(real, { draft: {}, marks })).wrong, []);
  assert.ok(unanswered(answer_of(real, { draft: {}, marks })).needed.length > 0);
  const touched = put(real.inputs, {}, {}, ["animals", 0, "count"], typed("3", ""));
  const { wrong } = unanswered(answer_of(real, { draft: touched, marks }));
  assert.ok(wrong.length > 0 && Object.values(real.refusals).some(({ message }) => message === wrong[0].message));
});

test("a range is said in the unit shown", () => {
  assert.equal(range_shown(WARMTH, "us", marks), "32 – 122 °F");
  assert.equal(range_shown(WARMTH, "metric", marks), "");
});

test("the first example of every contract, typed field by field, gives the calculation's own input back", () => {
  for (const real of Object.values(contracts()).map(there)) {
    const [{ input }] = real.examples;
    for (const system of ["metric", "us", "imperial"]) {
      const draft = {
        typed: Object.fromEntries(
          Object.entries(input).map(([name, value]) => [
            name,
            as_typed(there(real.inputs.find((f) => f.name === name)), value),
          ]),
        ),
      };
      const form = form_of(real, { draft, system, marks });
      assert.ok(form.length > 0);
      const payload = payload_of(real, { draft, system, marks });
      for (const name of Object.keys(payload)) assert.deepEqual(payload[name], input[name], `${real.name}.${name}`);
      assert.ok("answer" in answer_of(real, { draft, system, marks }), real.name);
    }
  }
});

/** A value as the texts that a keeper would type. @param {Item} field @param {unknown} value @returns {Node} */
function as_typed(field, value) {
  if (field.type === "number" || field.type === "integer") return typed(String(value), field.unit);
  if (field.type === "list") return /** @type {unknown[]} */ (value).map((entry) => as_typed(field.item, entry));
  if (field.type === "object")
    return Object.fromEntries(
      Object.entries(/** @type {object} */ (value)).map(([name, inner]) => [
        name,
        as_typed(there(field.fields.find((f) => f.name === name)), inner),
      ]),
    );
  return /** @type {string | boolean} */ (value);
}
