/** What a keeper reads: the answer in any unit system, its working, its words for the journal, and how it is found. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { plain_result } from "../../pwa/bench/result_note.js";
import { result_rows } from "../../pwa/bench/result.js";
import { MOMENTS, shelf } from "../../pwa/bench/search.js";
import { pick_rows, rows_with } from "../../pwa/bench/table_rows.js";
import { fitting, tank_figures } from "../../pwa/bench/tank_figures.js";
import { working_steps } from "../../pwa/bench/working.js";
import { contracts, install, run, run_named } from "../../pwa/contracts.js";
import { as_facts, some, there, view } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());
const english = { decimal: ".", group: "," };
const german = { decimal: ",", group: "." };

/** A contract of no calculation that there is. @type {import("../../pwa/types/contract.js").Contract} */
const spec = some({
  title: "Invented",
  inputs: [],
  notes: {},
  working: [],
  outputs: [
    { name: "water_l", label: "Water", type: "number", unit: "L", decimals: 1 },
    { name: "warmth_c", label: "Warmth", type: "number", unit: "°C", decimals: 1 },
    { name: "binding", label: "Binding", type: "choice", choices: [{ value: "oxygen", label: "oxygen at dawn" }] },
    { name: "safe", label: "Met", type: "boolean" },
    { name: "litres", label: "Of each", type: "list", item: { type: "number", unit: "L", decimals: 1 } },
    {
      name: "plan",
      label: "Plan",
      type: "list",
      item: {
        type: "object",
        fields: [
          { name: "day", label: "day", type: "integer", unit: "", decimals: 0 },
          { name: "l", label: "take", type: "number", unit: "L", decimals: 0 },
        ],
      },
    },
    {
      name: "reached",
      label: "Reached",
      type: "object",
      fields: [{ name: "gh_dgh", label: "GH", type: "number", unit: "°dGH", decimals: 1 }],
    },
    { name: "missing", label: "Missing", type: "number", unit: "L", decimals: 1, optional: true },
    { name: "between", label: "On the way", type: "number", unit: "L", decimals: 1, working: true },
  ],
});
const answer = {
  water_l: 12345.75,
  warmth_c: -0.04,
  binding: "oxygen",
  safe: true,
  litres: [1, 2.25],
  plan: [
    { day: 1, l: 30 },
    { day: 2, l: 20 },
  ],
  reached: { gh_dgh: 6 },
  missing: null,
  between: 3,
  notes: [],
};
/** @typedef {ReturnType<typeof result_rows>[number]} Row */
/** @typedef {string | Said[]} Said */
/** A row as one text, or the rows within it. @param {Row} row @returns {Said} */
const say = (row) => (row.rows ? row.rows.map((entry) => entry.map(say)) : [row.label, row.text, row.unit].join("|"));

test("rows: figures rounded by the contract, words for choices, nested answers, nothing for what is missing", () => {
  assert.deepEqual(result_rows(spec, answer, { marks: english }).map(say), [
    "Water|12,345.8|L",
    "Warmth|0.0|°C",
    "Binding|oxygen at dawn|",
    "Met|yes|",
    [["|1.0|L"], ["|2.3|L"]],
    [
      ["day|1|", "take|30|L"],
      ["day|2|", "take|20|L"],
    ],
    [["GH|6.0|°dGH"]],
  ]);
});

test("rows in another system and language: converted once, three digits or whole, with the reader's comma", () => {
  const [water, warmth] = result_rows(spec, answer, { system: "us", marks: german });
  assert.deepEqual([water.text, water.unit], ["3.261", "US gal"]);
  assert.deepEqual([warmth.text, warmth.unit], ["31,9", "°F"]);
  const [small] = result_rows(spec, { water_l: 73.1 }, { system: "us", marks: english });
  assert.equal(small.text, "19.3");
});

test("a finding's figures are said by what was found, in its unit; what has no word stays away", () => {
  const real = contracts().compatibility;
  const payload = {
    animals: [
      { species: "Pterophyllum scalare", count: 2 },
      { species: "Corydoras paleatus", count: 3 },
    ],
    temperature_c: 18,
  };
  const findings = result_rows(real, run("compatibility", payload), { system: "us", marks: english }).find(
    ({ name }) => name === "findings",
  );
  const said = Object.fromEntries(there(findings?.rows).map((entry) => [entry[0].text, entry.slice(2).map(say)]));
  // 18 °C is 64.4 °F.
  assert.deepEqual(said["the tank's temperature is outside its range"].slice(0, 1), ["Who|angelfish|"]);
  assert.deepEqual(
    said["the tank's temperature is outside its range"].slice(1).map((one) => String(one).split("|")[0]),
    ["It wants, from", "up to", "The tank has"],
  );
  assert.equal(said["the tank's temperature is outside its range"].at(-1), "The tank has|64.4|°F");
  assert.deepEqual(said["its group is too small"], ["Who|peppered corydoras|", "Kept|3|", "Needed at least|6|"]);
});

test("chances inside an answer are said in per cent too", () => {
  /** @type {typeof spec} */
  const real = {
    ...spec,
    outputs: [
      {
        name: "pass_chance",
        label: "Chance",
        type: "object",
        fields: [{ name: "nitrite", label: "nitrite", type: "number", unit: "1", decimals: 2 }],
      },
    ],
  };
  const [chance] = result_rows(real, { pass_chance: { nitrite: 0.03 } }, { marks: english });
  assert.equal(chance.rows?.[0][0].aside, "3\u00a0%");
});

/** One step of an example's working. @param {string} name @param {RegExp} step @param {string} system */
function worked(name, step, system) {
  const real = there(Object.values(contracts()).find((one) => one?.name === name));
  for (const { input } of real.examples)
    for (const said of working_steps(real, input, run_named(name, input), { marks: english, system }))
      if (step.test(said)) return said.replaceAll("\u00a0", " ");
  throw new Error(`${name} has no such step`);
}

test("the working puts the figures into the contract's sentences, in the reader's marks", () => {
  const real = contracts().free_ammonia;
  const payload = { tan_mg_n_l: 0.5, ph: 7.8, temperature_c: 25 };
  const steps = working_steps(real, payload, run("free_ammonia", payload), { marks: german });
  assert.equal(steps.length, real.working.length);
  assert.equal(steps[2], "free ammonia = 0,5 × 0,0345 = 0,0173\u00a0mg N/L");
  assert.ok(steps[0].includes("(25 + 273.15)"));
});

// NIST SP 811: 1 US gal is 3.785 L, 1 lb 0.4536 kg, 1 ft² 0.0929 m²; a temperature is (t/°F - 32) / 1.8 in °C.
test("in US units a formula holds with the factor of each figure, a sum or a ratio as it is", () => {
  assert.match(worked("free_ammonia", /pKa/, "us"), /2729\.92 \/ \(\(77 °F − 32\) \/ 1\.8 \+ 273\.15\)/);
  assert.equal(
    worked("filled_weight", /^pressure/, "us"),
    "pressure = (392.0 lb × 0.4536) × 9.80665 / 1000 / (4.306 ft² × 0.0929) = 4.36; 4.36 / 0.04788 = 91.0 lb/ft²",
  );
  const fed = { feed_g_day: 1, protein_fraction: 0.42, volume_l: 100, kh_dkh: 3 };
  const use = contracts().alkalinity_use;
  const [nitrified] = working_steps(use, fed, run("alkalinity_use", fed), { marks: english, system: "us" });
  assert.match(nitrified, /^1 g × 0\.42 protein × 0\.092 × 1000 \/ \(26\.42\u00a0US gal × 3\.785\) = 0\.386/);
  assert.match(worked("filled_weight", /^total/, "us"), /^total = 65\.5 \+ 326\.5 .* = 392\.0 lb$/);
  assert.equal(worked("dechlorinator_dose", /^label/, "us"), "label: 5 × 8.45 / 10.57 = 4.00");
  assert.match(worked("starter_dose", /^nitrogen/, "us"), /2\.00 mg N\/L × \(26\.42 US gal × 3\.785\) = 200\.0 mg N$/);
  assert.match(worked("nutrient_routine", /^grams/, "us"), /US gal × 3\.785\)/);
});

test("a fixed quantity in a step is said in the units shown", () => {
  assert.match(worked("stocking_limit", /^room/, "metric"), /^room: 30 cm² for each 1 cm .* over 8 cm;/);
  assert.match(worked("stocking_limit", /^room/, "us"), /^room: 4\.65 in² for each 0\.3937 in .* over 3\.15 in;/);
  assert.match(worked("acclimation", /^floating/, "us"), /for each 1\.8 °F between/);
});

test("a figure that bears the name of an input is the answer's", () => {
  assert.match(worked("water_blend", /times the volume/, "metric"), /: 15\.00; 25\.00 L$/);
});

test("in US units no working holds metric ones, but for published pairs in centimetres", () => {
  const metric = /(?:^|[\s(])(?:L|ml\/L|mm|cm|cm²|m²|kg|°C|kPa)(?![\p{L}/²])/u;
  for (const real of Object.values(contracts()).map(there))
    for (const { input } of real.examples)
      for (const step of working_steps(real, input, run_named(real.name, input), { marks: english, system: "us" }))
        if (real.name !== "animal_mass") assert.doesNotMatch(step.replaceAll("\u00a0", " "), metric, real.name);
});

test("a step about a field that plays no part is left out", () => {
  const real = { ...contracts().free_ammonia, working: ["{nh3_mg_n_l} is told", "{tan_mg_n_l} of {gone} is not"] };
  const payload = { tan_mg_n_l: 1, ph: 7, temperature_c: 25 };
  const steps = working_steps(real, payload, { ...run("free_ammonia", payload), gone: null }, { marks: english });
  assert.deepEqual(steps, ["0.0056 is told"]);
});

test("lists and groups in a step are said entry by entry, rounded as the contract says", () => {
  /** @type {import("../../pwa/types/contract.js").Output[]} */
  const outputs = [
    { name: "each", label: "Each", type: "list", item: { type: "number", unit: "L", decimals: 1 } },
    {
      name: "both",
      label: "Both",
      type: "object",
      fields: [
        { name: "cold", label: "cold", type: "number", unit: "L", decimals: 1 },
        { name: "hot", label: "hot", type: "number", unit: "L", decimals: 1 },
      ],
    },
  ];
  const real = { ...contracts().free_ammonia, outputs, working: ["{each} and {both}"] };
  const payload = { tan_mg_n_l: 1, ph: 7, temperature_c: 25 };
  assert.deepEqual(
    working_steps(real, payload, { each: [1, 2.25], both: { cold: 3, hot: null } }, { marks: english }),
    ["1.0; 2.3 and cold 3.0"],
  );
});

test("every contract's example has its working, whole, with no bracket left", () => {
  for (const real of Object.values(contracts()).map(there)) {
    for (const { input } of real.examples) {
      const out = run_named(real.name, input);
      const steps = working_steps(real, input, out, { marks: english });
      assert.ok(real.working.length === 0 || steps.length > 0, `${real.name}: no step is left`);
      for (const step of steps) assert.doesNotMatch(step, /[{}]|undefined|NaN|\[object/, real.name);
      for (const system of ["metric", "us", "imperial"]) {
        const text = plain_result(real, input, out, { system, marks: english });
        assert.ok(text.startsWith(real.title));
        assert.doesNotMatch(text, /undefined|NaN|\[object/, `${real.name} in ${system}`);
      }
    }
  }
});

test("the words for the journal hold the answer and what it came from", () => {
  const payload = { tan_mg_n_l: 1, ph: 8, temperature_c: 25 };
  const text = plain_result(contracts().free_ammonia, payload, run_named("free_ammonia", payload), {
    marks: english,
    from: "Worked out from",
  });
  assert.match(text, /^Free ammonia\n/);
  assert.match(text, /\nFree ammonia, as nitrogen: 0\.0537 mg N\/L\n/);
  assert.match(text, /\nWorked out from:\nTotal ammonia, as nitrogen: 1 mg N\/L\npH: 8\nWater temperature: 25 °C$/);
});

test("search: every word must be found; accents, case and small figures do not matter", () => {
  /** @typedef {import("../../pwa/types/contract.js").Contract} Contract */
  /**
   * @param {string} name @param {string} title @param {Contract["moment"]} moment
   * @param {import("./fixtures.js").Some<Contract>} [more]
   * @returns {Contract}
   */
  const made = (name, title, moment, more = {}) =>
    some({
      name: /** @type {Contract["name"]} */ (name),
      title,
      moment,
      purpose: "",
      inputs: [],
      outputs: [],
      ...more,
    });
  const all = {
    gas: made("gas", "Carbon dioxide", "testing", { outputs: [{ label: "CO₂ in the water" }] }),
    load: made("load", "Nitrogen load", "feeding_dosing", { purpose: "Ammonia from a day's feed." }),
    kit: made("kit", "A kit's reading", "testing", {
      purpose: "Ammonia by the colour.",
      inputs: [{ label: "Colour", help: "Between two steps" }],
    }),
    free: made("free", "Free ammonia", "testing"),
  };
  const names = (/** @type {string} */ words) =>
    shelf(all, words).flatMap(({ entries }) => entries.map(({ name }) => name));
  assert.deepEqual(names(""), ["kit", "gas", "free", "load"], "by title");
  assert.deepEqual(names("steps"), ["kit"]);
  assert.deepEqual(names("co2"), ["gas"]);
  assert.deepEqual(names("AMMONIA"), ["free", "kit", "load"], "a word in the title weighs more");
  assert.deepEqual(names("ammonia fééd"), ["load"]);
  assert.deepEqual(names("heron"), []);
  assert.deepEqual(
    shelf(contracts())
      .flatMap(({ entries }) => entries.map(({ name }) => name))
      .sort(),
    Object.keys(contracts()).sort(),
  );
  for (const one of Object.values(contracts())) assert.ok(MOMENTS.includes(there(one).moment));
});

test("a pick from a table is found by any of its names", () => {
  for (const name of /** @type {const} */ (["species", "plants"])) {
    const rows = pick_rows(name);
    assert.ok(rows.length > 50 && rows.every((row) => row.key && row.name && row.also === row.key));
    assert.deepEqual(
      rows.map((row) => row.name),
      rows.map((row) => row.name).sort((a, b) => a.localeCompare(b)),
    );
    assert.ok(rows_with(rows, rows[7].name).some((row) => row.key === rows[7].key));
    assert.ok(rows_with(rows, rows[7].key.toUpperCase()).some((row) => row.key === rows[7].key));
    assert.deepEqual(rows_with(rows, "no such thing"), []);
  }
  assert.deepEqual(
    pick_rows("species", [{ name: "Grey loach" }]).filter(({ key }) => key === "Grey loach"),
    [{ key: "Grey loach", name: "Grey loach", also: "" }],
    "no second name where it is the first",
  );
});

/** @typedef {import("./fixtures.js").Facts} Facts */
/** @satisfies {import("./fixtures.js").Some<Facts["tank"]>} */
const tank = {
  name: "Window",
  water_l: 96,
  temperature_c: 24,
  ph: 7.2,
  measures: { shape: "cuboid", length_cm: 80 },
  feed_g_day: 0.4,
};

/** @typedef {import("./fixtures.js").Some<Facts["readings"][number]>} SomeReading */
/** A tank's facts with nothing recorded but what is said. @param {import("./fixtures.js").Some<Facts>} more */
const facts = (more) =>
  as_facts({
    now: 0,
    tank,
    readings: [],
    changes: [],
    doses: [],
    feedings: [],
    stock: [],
    own_species: [],
    source: null,
    label: null,
    ...more,
  });

test("a tank's figures: the newest reading before the usual figure, nitrogen in mg N/L", () => {
  /** @type {SomeReading[]} */
  const readings = [
    { parameter: "ph", value: 7.4, at: "2026-05-01" },
    { parameter: "ph", value: 7.6, at: "2026-05-02" },
    { parameter: "total_ammonia", value: 0.5, basis: "ion", at: "2026-05-02" },
    { parameter: "nitrate", value: 5, basis: "n", at: "2026-05-02" },
  ];
  const figures = tank_figures(facts({ readings, label: { unit: "ml", amount: 5, per_l: 40, basis: "new_water" } }));
  assert.deepEqual(
    [
      figures.ph,
      figures.temperature_c,
      figures.volume_l,
      Number(figures.tan_mg_n_l).toFixed(3),
      figures.nitrate_mg_n_l,
      figures.length_cm,
      figures.label_per_l,
      "nitrite_mg_n_l" in figures,
    ],
    [7.6, 24, 96, "0.388", 5, 80, 40, false],
  );
});

test("measured hardness fills the calculations that ask for it, in degrees", () => {
  /** @type {SomeReading[]} */
  const readings = [
    { parameter: "kh", value: 6, at: "2026-05-01" },
    { parameter: "kh", value: 71.4, unit: "mg/L CaCO₃", at: "2026-05-03" },
    { parameter: "gh", value: 8, unit: "°dGH", at: "2026-05-02" },
    { parameter: "ph", value: 7, at: "2026-05-02" },
  ];
  const figures = tank_figures(facts({ tank: { ...tank, kh_dkh: 9, gh_dgh: 12 }, readings }));
  const input = fitting(contracts().carbon_dioxide.inputs, figures);
  // 17.85 mg/L as CaCO3 are 1 °dH (molar masses of IUPAC); the aquarists' rule 3 x KH x 10^(7 - pH) is common practice.
  assert.ok(Math.abs(run_named("carbon_dioxide", input).rule_mg_l - 3 * 4) < 0.01);
  assert.deepEqual([Number(input.kh_dkh).toFixed(2), figures.gh_dgh], ["4.00", 8]);
  assert.deepEqual(
    tank_figures(
      facts({
        tank: { ...tank, kh_dkh: 9 },
        readings: [{ parameter: "kh", value: 2, unit: "spoons", at: "2026-05-04" }],
      }),
    ).kh_dkh,
    9,
    "a scale nobody knows says nothing",
  );
});

/** @typedef {import("../../pwa/types/contract.js").Field} Field */
/** @typedef {import("../../pwa/types/calculations.js").ChangePlanInput} ChangePlanInput */
/**
 * The figures that the forecast takes, by their types.
 * @param {Record<string, unknown>} figures
 * @returns {Pick<ChangePlanInput, "now_h" | "tank" | "readings" | "source">}
 */
const as_history = (figures) => /** @type {ReturnType<typeof as_history>} */ (figures);

test("a tank's history comes in hours since its start, oldest first, with the new water of each change", () => {
  const at = (/** @type {number} */ day) => `2026-05-0${day}T12:00:00.000Z`;
  const told = facts({
    tank: { ...tank, started_at: at(2), seeded: "starter" },
    now: Date.parse(at(5)),
    readings: [
      { at: at(3), parameter: "ph", value: 7 },
      { at: at(3), parameter: "oxygen", value: 8 },
      { at: at(4), parameter: "nitrite", value: 0.25, basis: "ion", steps: [0, 0.25] },
    ],
    changes: [{ at: at(4), litres: 30, fraction: 0.3, source: { nitrate_mg_n_l: 2 } }],
    doses: [
      { at: at(3), what: "label", amount: 2, unit: "ml" },
      { at: at(3), tan_mg_n_l: 1.5 },
    ],
    feedings: [{ at: at(1), feed_g: 0.2 }],
  });
  const figures = as_history(tank_figures(told));
  assert.deepEqual([figures.now_h, figures.tank.seeded, figures.tank.volume_l], [96, "starter", 96]);
  assert.deepEqual(
    figures.readings?.map(({ at_h, parameter }) => [at_h, parameter]),
    [
      [48, "ph"],
      [72, "nitrite"],
    ],
  );
  /** @type {Field[]} */
  const inputs = some([
    {
      name: "readings",
      type: "list",
      min_items: 0,
      max_items: 9,
      item: {
        type: "object",
        fields: [
          { name: "at_h", type: "number", required: true },
          { name: "parameter", type: "choice", required: true, choices: [{ value: "nitrite" }, { value: "ph" }] },
        ],
      },
    },
    {
      name: "doses",
      type: "list",
      min_items: 0,
      max_items: 9,
      item: {
        type: "object",
        fields: [
          { name: "at_h", type: "number", required: true },
          { name: "tan_mg_n_l", type: "number", required: true },
        ],
      },
    },
    {
      name: "changes",
      type: "list",
      min_items: 0,
      max_items: 9,
      item: {
        type: "object",
        fields: [
          { name: "fraction", type: "number" },
          { name: "source", type: "object", fields: [{ name: "nitrate_mg_n_l", type: "number" }] },
        ],
      },
    },
  ]);
  assert.deepEqual(fitting(inputs, figures), {
    readings: [
      { at_h: 48, parameter: "ph" },
      { at_h: 72, parameter: "nitrite" },
    ],
    doses: [{ at_h: 48, tan_mg_n_l: 1.5 }],
    changes: [{ fraction: 0.3, source: { nitrate_mg_n_l: 2 } }],
  });
  // Chloramine's freed ammonia counts as it does in the tank's own sentence: 1.5 mg/L as Cl2 holds 0.296 of nitrogen.
  const source = view("source_water", { disinfectant: "chloramine", disinfectant_mg_l: 1.5 });
  const chloramine = as_history(tank_figures({ ...told, source }));
  assert.equal(chloramine.source?.tan_mg_n_l?.toFixed(3), "0.296");
});

test("a tank's surface comes from its measures; an animal not in the table goes by its own name", () => {
  const measures = /** @type {const} */ ({ shape: "cuboid", length_cm: 80, width_cm: 35, height_cm: 40 });
  const cuboid = { ...tank, measures };
  /** @type {import("./fixtures.js").Some<Facts["stock"][number]>[]} */
  const changes = [
    { species: "my own snail", count: 3, change: "arrival", at: "1" },
    { species: "Paracheirodon innesi", count: 9, change: "arrival", at: "1" },
  ];
  const figures = tank_figures(facts({ tank: cuboid, stock: changes }));
  assert.equal(figures.surface_cm2, 2800);
  assert.deepEqual(figures.animals, [
    { name: "my own snail", count: 3 },
    { species: "Paracheirodon innesi", count: 9 },
  ]);
  assert.ok(!("surface_cm2" in tank_figures(facts({}))));
});

test("a form takes only the figures that it has fields for and that it would accept in kind", () => {
  /** @type {Field[]} */
  const inputs = some([
    { name: "volume_l", type: "number" },
    { name: "basis", type: "choice", choices: [{ value: "ion" }] },
    { name: "now_mg_n_l", type: "number", from_tank: "tan_mg_n_l" },
    { name: "tan_mg_n_l", type: "number", from_tank: false },
    {
      name: "sources",
      type: "list",
      min_items: 1,
      max_items: 2,
      item: { type: "object", fields: [{ name: "name", type: "text" }] },
    },
  ]);
  const figures = {
    volume_l: 96,
    basis: "whole_tank",
    tan_mg_n_l: 1,
    ph: 7,
    sources: [{ name: "tap", gh_dgh: 9 }, { name: "rain" }, { name: "third" }],
  };
  assert.deepEqual(fitting(inputs, figures), {
    volume_l: 96,
    now_mg_n_l: 1,
    sources: [{ name: "tap" }, { name: "rain" }],
  });
});
