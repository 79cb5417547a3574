/**
 * Setting up from the empty glass: steps, what each asks of the calculations, what to buy, when the animals may come.
 */
import assert from "node:assert/strict";
import { test } from "node:test";
import { belief_input } from "../../pwa/advice/forecast/belief_input.js";
import { wanted_tan } from "../../pwa/advice/journal/dosing.js";
import { facts_of, last_place, walk } from "../../pwa/advice/facts.js";
import {
  STEPS,
  as_planned,
  asked,
  field_of,
  figures_of,
  floor_of,
  hardscape_of,
  next_step,
  planned,
  said_at,
  set_up_here,
  steps_of,
  substrate_input,
  unplanned,
  volume_input,
  weight_input,
} from "../../pwa/advice/setup/setting_up.js";
import { matured, stock_tank } from "../../pwa/advice/life/stock_tank.js";
import {
  planned_feed,
  plants_for,
  portions_for,
  starter,
  still_to_come,
  suggested,
  unweighed,
} from "../../pwa/advice/setup/setting_up_life.js";
import { to_buy, weight_of } from "../../pwa/advice/setup/shopping.js";
import { contracts, input_of, install, records, run } from "../../pwa/contracts.js";
import { records_of, some, there, view } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());

/** @typedef {import("../../pwa/types/calculations.js").VolumeInput} VolumeInput */
/** @typedef {import("../../pwa/types/views.js").Tank} Tank */
/** @typedef {import("../../pwa/types/setup.js").OldSetup} Setup */
/** @typedef {import("./fixtures.js").Some<Tank>} SomeTank */

/** @satisfies {VolumeInput} */
const GLASS = {
  shape: "cuboid",
  measures: "outside",
  length_cm: 101.6,
  width_cm: 41.6,
  height_cm: 50.8,
  glass_mm: 8,
  fill_height_cm: 45,
};
const NOW = Date.parse("2026-05-04T08:00:00.000Z");
/** @param {number | null | undefined} a @param {number} b @param {string} [what] */
const near = (a, b, what = "") =>
  assert.ok(Math.abs(there(a) - b) < 1e-6 * Math.max(1, Math.abs(b)), `${what} ${a} is not ${b}`);
const LONG = { id: "tank-plan-1", name: "Long tank", measures: GLASS, water_l: 180 };
/**
 * A plan as it is written: a field for each step, which holds how far the step is and what was said there.
 * @param {Setup} setup @param {SomeTank} [more]
 */
const tank_of = (setup, more = {}) =>
  view("tank", {
    ...LONG,
    setup_glass: { state: "done" },
    ...Object.fromEntries(
      STEPS.flatMap((step) => {
        const state = setup.steps?.[step];
        return state ? [[field_of(step), setup[step] ? { state, said: setup[step] } : { state }]] : [];
      }),
    ),
    ...more,
  });
/**
 * The same as an older app wrote it: all in one field, and the measures with what the steps put into the glass.
 * @param {Setup} setup
 */
const older = (setup) => view("tank", { ...LONG, measures: { ...volume_input(tank_of(setup)) }, setup: { ...setup } });

test("a tank is a plan until it is filled, and a plan is not in the walk", () => {
  const plan = tank_of({ steps: { place: "done", substrate: "skipped" } });
  assert.ok(planned(plan));
  assert.ok(!planned({ ...plan, started_at: "2026-05-01T08:00:00.000Z" }));
  assert.ok(
    !planned(view("tank", { id: "tank-quick-1", name: "Quick" })),
    "the quick form's tank needs no first filling",
  );
  const room = records_of({ tank: [plan, { id: "tank-quick-1", name: "Quick", walk_order: 4 }] });
  assert.deepEqual(
    walk(room).map(({ name }) => name),
    ["Quick"],
  );
  assert.equal(last_place(room), 5);
  assert.equal(next_step(plan), "hardscape");
  assert.deepEqual(
    steps_of(plan)
      .slice(0, 4)
      .map(({ state }) => state),
    ["done", "done", "skipped", "open"],
  );
});

test("what is said fits the tank's record", () => {
  const fields = records().tank.fields.filter(({ name }) => name === "planned_stock" || name.startsWith("setup"));
  assert.deepEqual(
    fields.map(({ name, type, required }) => [name, type, Boolean(required)]),
    [
      ["planned_stock", "list", false],
      ["setup", "object", false],
      ...STEPS.map((step) => [field_of(step), "object", false]),
    ],
  );
});

test("what was recorded of a step and does not fit is left out, whichever form it has", () => {
  /** Such as a hostile phone could write before the fields were checked; cast, because no type allows it. */
  const odd = /** @type {Setup} */ (
    /** @type {unknown} */ ({
      steps: { substrate: "done", plants: "done", warmth: "skipped" },
      substrate: { bed: "bare", cap: 7, nutrient_pack: "many", liner: "felt" },
      plants: { planting: "dense", list: null },
      warmth: { cover: {}, room_c: 12 },
    })
  );
  for (const plan of [tank_of(odd), older(odd)]) {
    assert.deepEqual(said_at(plan, "plants"), { planting: "dense", list: [] });
    assert.equal(said_at(plan, "warmth").cover, "lid");
    assert.equal(said_at(plan, "warmth").room_c, 12);
    const { bed, cap, nutrient_pack } = said_at(plan, "substrate");
    assert.deepEqual([bed, cap, nutrient_pack], ["bare", "sand", undefined]);
    assert.ok("liner" in said_at(plan, "substrate"), "what another version of the app says stays");
    assert.equal(next_step(plan), "place");
    assert.ok(Array.isArray(to_buy(plan, { kits: [], source: null, label: null })));
  }
});

test("typed figures become numbers, words stay words, empty fields are left out", () =>
  assert.deepEqual(figures_of({ a: "36.5", b: "", c: "lid", d: 4, e: undefined, f: "12.", g: true }), {
    a: 36.5,
    c: "lid",
    d: 4,
    f: 12,
    g: true,
  }));

test("the floor of a box is its inside; of any other shape a rectangle as large and as deep", () => {
  const box = floor_of(GLASS);
  near(box.length_cm, 100);
  near(box.width_cm, 40);
  const round = floor_of({ shape: "cylinder", measures: "inside", diameter_cm: 50, height_cm: 40 });
  near(round.length_cm * round.width_cm, Math.PI * 25 * 25, "the circle's area");
  /** @param {VolumeInput["shape"]} shape @param {Partial<VolumeInput>} more */
  const deep = (shape, more) => floor_of({ shape, measures: "inside", height_cm: 40, ...more }).width_cm;
  assert.deepEqual(
    [
      deep("bow_front", { length_cm: 70, width_cm: 45, bow_cm: 6 }),
      deep("half_round", { diameter_cm: 60 }),
      deep("quarter_round", { length_cm: 70 }),
    ],
    [51, 30, 70],
    "from front to back where it is deepest",
  );
  for (const shape of input_of("volume", "shape").choices.map(({ value }) => value)) {
    /** @type {Record<string, unknown>} */
    const glass = {
      shape,
      measures: "outside",
      length_cm: 70,
      width_cm: 45,
      diameter_cm: 60,
      bow_cm: 6,
      height_cm: 40,
      glass_mm: 6,
    };
    const wanted = contracts().volume.inputs.filter(
      (one) => one.name in glass && (!one.when?.shape || one.when.shape.includes(shape)),
    );
    const { length_cm, width_cm, area_cm2 } = floor_of(
      /** @type {VolumeInput} */ (
        /** @type {unknown} */ (Object.fromEntries(wanted.map(({ name }) => [name, glass[name]])))
      ),
    );
    assert.ok(width_cm > 20 && length_cm > 20, shape);
    near(length_cm * width_cm, area_cm2, shape);
  }
});

test("two layers by hand: 100 x 40 cm, 1 to 3 cm of potting soil under 3 to 5 cm of sand", () => {
  /** @type {import("../../pwa/types/setup.js").Said["substrate"]} */
  const said = {
    bed: "capped",
    nutrient: "potting_soil",
    nutrient_front_cm: 1,
    nutrient_back_cm: 3,
    nutrient_pack: 5,
    cap: "sand",
    cap_front_cm: 3,
    cap_back_cm: 5,
    cap_pack: 10,
    support_bags: 0,
  };
  const input = there(substrate_input(GLASS, said));
  const { layers, litres } = run("substrate", input);
  // 100 x 40 x 2 cm are 8 L, 100 x 40 x 4 cm are 16 L, of 1.6 kg each.
  [
    [layers[0].litres, 8],
    [layers[1].litres, 16],
    [layers[1].kg, 25.6],
    [litres, 24],
  ].forEach(([is, should]) => near(is, should));
  assert.deepEqual([layers[0].packs, layers[1].packs], [2, 3]);
  assert.equal(substrate_input(GLASS, { ...said, bed: "bare" }), null);
  assert.deepEqual(run("substrate", there(substrate_input(GLASS, { ...said, bed: "plain" }))).layers.length, 1);
});

test("stone and wood together displace the sum of what each does", () => {
  const { kg, litres, density_kg_l } = hardscape_of({ stone_kg: 5.2, wood_kg: 1.1 });
  near(kg, 6.3);
  near(litres, 2 + 1);
  near(density_kg_l, 2.1);
  assert.equal(hardscape_of({}).litres, 0);
});

test("water is what glass, bed and stones leave, and the weight is the sum of its parts", () => {
  /** @type {Setup} */
  const setup = {
    steps: { substrate: "done", hardscape: "done" },
    substrate: { bed: "plain", cap: "sand", cap_front_cm: 5, cap_back_cm: 5 },
    hardscape: { stone_kg: 5.2 },
  };
  const { water_l } = run("volume", volume_input(tank_of(setup)));
  // 100 x 40 x 45 cm, less the grains of 20 L of sand (6 parts in 10) and 2 L of stone.
  near(water_l, 180 - 0.6 * 20 - 2);
  assert.equal(run("volume", volume_input(tank_of(setup), 150)).water_l, 150, "counted litres win");
  const answer = run("filled_weight", weight_input(tank_of(setup, { water_l }), { stand_kg: 40, equipment_kg: 5 }));
  near(answer.total_kg, answer.empty_tank_kg + answer.water_kg + 32 + 5.2 + 40 + 5);
  const { measures: _, ...unsaid } = GLASS;
  assert.deepEqual(
    [GLASS, unsaid].map((measures) => weight_input(tank_of({}, { measures }), {}).measures),
    ["outside", "inside"],
    "as the volume takes them",
  );
  near(
    weight_of(
      tank_of(
        { ...setup, steps: { ...setup.steps, place: "done" }, place: { stand_kg: 40, equipment_kg: 5 } },
        { water_l },
      ),
    ),
    answer.total_kg,
  );
  assert.equal(
    weight_of(tank_of({}, { measures: { shape: "bowl", diameter_cm: 40, height_cm: 30 } })),
    null,
    "a bowl's empty weight is asked for, not guessed",
  );
});

test("a bed that fills the glass is refused in the calculation's words", () => {
  const found = asked(
    "volume",
    volume_input(
      tank_of({
        steps: { substrate: "done" },
        substrate: { bed: "plain", cap: "sand", cap_front_cm: 60, cap_back_cm: 60 },
      }),
    ),
  );
  assert.equal(found.errors[0].field, "substrate_l");
  assert.deepEqual(asked("substrate", null), { payload: {}, errors: [] });
});

test("portions cover seven tenths of a densely planted floor, a hundred square centimetres each", () => {
  assert.deepEqual(
    /** @type {const} */ (["dense", "medium", "light", "none"]).map((planting) => portions_for(GLASS, planting)),
    [28, 16, 6, 0],
  );
});

test("plants that fit come first when they are fast and need no ground", () => {
  const plants = plants_for({ temperature_c: 23, light: "medium" });
  assert.ok(plants.length > 30);
  for (const { key, row } of plants) {
    assert.ok(row.temperature_c[0] <= 23 && row.temperature_c[1] >= 23, key);
    assert.ok(row.light !== "high", key);
  }
  assert.ok(plants.slice(0, 8).every(({ row }) => row.growth === "fast" && ["free", "floating"].includes(row.form)));
  assert.ok(!plants_for({ temperature_c: 23, light: "low" }).some(({ row }) => row.light !== "low"));
});

test("the planned animals eat by the length they come with, and one that no table knows is named", () => {
  const stock = [
    { species: "Danio rerio", count: 8, length_cm: 2.5 },
    { species: "grey one", count: 1, length_cm: 6 },
  ];
  assert.deepEqual(unweighed([...stock, { species: "stray", count: 2 }], []), ["stray"]);
  // A danio of 2.5 cm weighs an eighth of one of 5 cm, and eats so much less.
  const feed = (/** @type {number} */ length_cm) =>
    planned_feed(some({ planned_stock: [{ species: "Danio rerio", count: 8, length_cm }] }), []);
  near(feed(2.5), feed(5) / 2 ** 3);
  assert.equal(planned_feed(some({}), []), 0);
  assert.deepEqual(still_to_come(stock, [{ species: "Danio rerio", count: 8 }]), [stock[1]]);
});

test("a plan of more animals than the calculation takes suggests none, and its step opens", () => {
  const tank = tank_of({ steps: {} });
  for (const stock of [
    [{ species: "Danio rerio", count: 10_001 }],
    [{ species: "a very long name ".repeat(5).slice(0, 80), count: 2, length_cm: 3 }],
  ]) {
    assert.deepEqual(suggested(figures_for(tank), stock), []);
    assert.ok(planned_feed({ ...tank, planned_stock: stock }, []) >= 0);
  }
});

/** A plan's figures as the Bench has them, with those of its new water. @param {Tank} tank */
const figures_for = (tank, more = {}) => ({ water_l: tank.water_l, ...stock_tank(tank, NOW), ...more });

test("animals are suggested that suit the water and the tap, fit the length and have room for a whole group", () => {
  const tank = tank_of({ steps: {} }, { temperature_c: 21, planting: "dense" });
  const tap = { source_ph: 7.5, source_gh_dgh: 10 };
  const fitting = suggested(figures_for(tank, tap), []);
  assert.ok(fitting.length > 5);
  const { inside_length_cm: length_cm, ...figures } = matured(figures_for(tank));
  for (const { key, row } of fitting) {
    const animals = [{ species: key, count: row.group_min }];
    const answer = run("compatibility", { animals, temperature_c: 21, ...tap });
    assert.deepEqual(
      answer.findings.filter(({ severity }) => severity === "bar"),
      [],
      `${key}: its water`,
    );
    const needed = { surface_cm2: there(figures.surface_cm2), temperature_c: there(figures.temperature_c) };
    const input = { ...figures, ...needed, length_cm: there(length_cm), animals };
    const { more_g, more } = run("stocking_limit", input);
    assert.ok(there(more_g) >= 0 && more[0].long_enough, `${key}: its room`);
  }
  const off_middle = fitting.map(
    ({
      row: {
        temperature_c: [low, high],
        length_cm,
      },
    }) => [Number((Math.abs(21 - (low + high) / 2) / (high - low)).toFixed(9)), length_cm],
  );
  assert.deepEqual(
    off_middle,
    off_middle.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]),
    "those in the middle of their range first, of those the smaller",
  );
  assert.ok(
    !suggested(figures_for(tank, tap), [{ species: fitting[0].key, count: 5 }]).some((one) => one === fitting[0]),
  );
});

test("no animal is suggested that the tap water or the planned company does not suit", () => {
  const tank = tank_of({ steps: {} }, { temperature_c: 24 });
  /** @param {object} tap @param {Parameters<typeof suggested>[1]} [stock] */
  const keys = (tap, stock = []) => suggested(figures_for(tank, tap), stock).map(({ key }) => key);
  const soft = keys({ source_ph: 6.5, source_gh_dgh: 5 });
  const hard = keys({ source_ph: 8.1, source_gh_dgh: 18 });
  assert.ok(soft.includes("Hyphessobrycon amandae") && !hard.includes("Hyphessobrycon amandae"));
  assert.ok(hard.some((key) => key.startsWith("Xiphophorus")) && !soft.some((key) => key.startsWith("Xiphophorus")));
  const beside = keys({ source_ph: 6.5, source_gh_dgh: 5 }, [{ species: "Pterophyllum scalare", count: 1 }]);
  assert.ok(
    soft.includes("Paracheirodon innesi") && !beside.includes("Paracheirodon innesi"),
    "no prey beside a hunter",
  );
  assert.ok(beside.includes("Corydoras aeneus"));
});

test("beside planned animals fewer kinds are suggested", () => {
  const tank = { ...tank_of({ steps: {} }, { temperature_c: 21 }), water_l: 60 };
  const alone = suggested(figures_for(tank), []);
  const full = [{ species: alone[0].key, count: alone[0].row.group_min }];
  const beside = suggested(figures_for(tank), full);
  assert.ok(beside.length > 0 && beside.length < alone.length - 1);
});

test("a tank matures by the weeks since it was filled, its plants by the days", () => {
  const filled = (/** @type {number} */ days) =>
    view("tank", { started_at: new Date(NOW - days * 86_400_000).toISOString() });
  assert.deepEqual(
    [filled(0), filled(13.9), filled(14), filled(41.9), filled(42)].map((tank) => stock_tank(tank, NOW)),
    [
      { maturity: "new", plants_age_days: 0 },
      { maturity: "new", plants_age_days: 13.9 },
      { maturity: "starting", plants_age_days: 14 },
      { maturity: "starting", plants_age_days: 41.9 },
      { maturity: "mature", plants_age_days: 42 },
    ],
  );
  assert.deepEqual(stock_tank(some({}), NOW), {}, "of a running tank nobody may know the age");
  assert.deepEqual(
    [matured(stock_tank(filled(3), NOW)).maturity, stock_tank(tank_of({}), NOW).maturity],
    ["mature", "new"],
  );
});

test("the plan gives what the record lacks, and the length is that inside the glass", () => {
  const tank = tank_of({
    steps: { substrate: "done", warmth: "done" },
    substrate: { bed: "capped" },
    warmth: { temperature_c: 22, cover: "open", filter: "none" },
  });
  const { temperature_c, cover, filter, substrate, planting, inside_length_cm, surface_cm2 } = stock_tank(tank, NOW);
  assert.deepEqual([temperature_c, cover, filter, substrate, planting], [22, "open", "none", "soil", "dense"]);
  near(inside_length_cm, 100);
  near(surface_cm2, 4000);
  assert.equal(stock_tank({ ...tank, temperature_c: 25 }, NOW).temperature_c, 25, "the record comes first");
  const open = stock_tank(tank_of({ steps: {} }), NOW);
  assert.deepEqual(
    [open.substrate, open.maturity, open.plants_age_days],
    ["sand", "new", 0],
    "nothing laid, nothing grown",
  );
  const unmeasured = view("tank", { measures: { shape: "cuboid", length_cm: 80 } });
  assert.deepEqual(stock_tank(unmeasured, NOW), {}, "a box needs three measures");
  assert.throws(
    () =>
      stock_tank(
        view("tank", {
          measures: {
            /** @returns {"cuboid"} */
            get shape() {
              throw new Error("broken");
            },
          },
        }),
        NOW,
      ),
    /broken/,
  );
  const ahead = view("tank", { started_at: new Date(NOW + 86_400_000).toISOString() });
  assert.equal(stock_tank(ahead, NOW).plants_age_days, 0, "a phone's clock may be behind");
});

test("the starting dose is a day of the planned food, or so many days' as scales and tests can show", () => {
  // 2 g of food, 42 % protein, 92 mg N of each gram of protein, in 100 L.
  const day = starter(100, 2, undefined);
  assert.equal(day.days, 1);
  near(run("starter_dose", day.input).tan_mg_n_l, (2 * 0.42 * 92) / 100);
  const little = starter(100, 0.1, 9.5);
  assert.deepEqual([little.days, run("starter_dose", little.input).tan_mg_n_l], [13, 0.5]);
  assert.ok(there(run("starter_dose", little.input).household_ammonia_ml) > 0);
  // Forty angelfish as grown: their own day's food is what the page of doses offers too.
  const tank = view("tank", { water_l: 100, planned_stock: [{ species: "Pterophyllum scalare", count: 40 }] });
  near(wanted_tan(tank), (planned_feed(tank, []) * 0.42 * 92) / 100);
  assert.ok(wanted_tan(tank) > 0.5);
});

test("the list to buy follows the steps that are done, and leaves out kits that are there", () => {
  /** @type {Setup} */
  const setup = {
    steps: { substrate: "done", hardscape: "done", warmth: "done", plants: "done" },
    substrate: {
      bed: "capped",
      nutrient: "garden_soil",
      nutrient_front_cm: 2,
      nutrient_back_cm: 2,
      nutrient_pack: 3,
      cap: "gravel",
      cap_front_cm: 3,
      cap_back_cm: 3,
      support_bags: 2,
    },
    hardscape: { lava_kg: 3 },
    plants: { planting: "dense", list: [{ species: "Ceratophyllum demersum", portions: 20 }] },
  };
  /** @type {Parameters<typeof to_buy>[1]} */
  const room = some({
    kits: [{ parameter: "nitrite" }, { parameter: "ph", retired: true }],
    source: { disinfectant: "chlorine" },
    label: { id: "label-1", name: "Bottle", amount: 5, unit: "ml", per_l: 40, basis: "new_water" },
  });
  const things = to_buy(tank_of(setup), room);
  assert.equal(new Set(things.map(({ key }) => key)).size, things.length, "ticks tell them apart");
  const of = (/** @type {string} */ code) => things.filter((one) => one.code === code);
  near(Number(of("layer_packs")[0].litres), (100 * 40 * 2) / 1000 - 2, "less what lies in the mesh bags");
  assert.deepEqual(
    [of("layer_packs")[0]].map(({ count, pack, pack_unit }) => [count, pack, pack_unit]),
    [[2, 3, "L"]],
  );
  assert.equal(of("layer")[0].material, "gravel");
  assert.deepEqual(
    [of("mesh")[0].count, of("hardscape")[0].kg, of("plant")[0].count, of("plants_more")[0].count],
    [2, 3, 20, 8],
  );
  assert.equal(Number(of("heater")[0].watts) % 5, 0);
  assert.ok(
    !to_buy(tank_of({ ...setup, substrate: { bed: "bare" } }), room).some(({ key }) => key.startsWith("bed.")),
    "nothing for bare glass",
  );
  const planted = (/** @type {number} */ portions) =>
    to_buy(
      tank_of({
        ...setup,
        warmth: { room_c: 30, temperature_c: 24 },
        plants: {
          planting: "dense",
          list: [
            { species: "Ceratophyllum demersum", portions },
            { species: "Vallisneria spiralis", portions: 0 },
          ],
        },
      }),
      room,
    );
  assert.deepEqual(
    planted(28)
      .filter(({ code }) => code.startsWith("plant") || code === "heater")
      .map(({ key }) => key),
    ["plant.Ceratophyllum demersum"],
    "no plants beyond what is wanted, none of none, no heater in a warm room",
  );
  assert.equal(of("filter")[0].filter, "sponge");
  near(Number(of("dechlorinator")[0].amount), (180 * 5) / 40);
  assert.deepEqual(
    of("test").map(({ parameter }) => parameter),
    ["total_ammonia", "nitrate", "ph", "kh", "gh"],
  );
  assert.deepEqual(
    to_buy(tank_of({}), { kits: [], source: null, label: null })
      .slice(0, 2)
      .map(({ code }) => code),
    ["dechlorinator_source", "test"],
  );
  assert.ok(
    !to_buy(tank_of({}), { kits: [], source: { disinfectant: "none" }, label: null }).some(
      ({ key }) => key === "dechlorinator",
    ),
  );
});

test("the belief counts no food while no animal lives in a tank set up here", () => {
  const tank = tank_of(
    { steps: {} },
    { started_at: "2026-05-03T08:00:00.000Z", temperature_c: 23, ph: 7, planting: "dense", seeded: "none" },
  );
  const arrival = view("stock_change", {
    id: "stock-1",
    tank: tank.id,
    at: "2026-05-03T09:00:00.000Z",
    change: "arrival",
    species: "Danio rerio",
    count: 6,
  });
  /** @param {(typeof arrival)[]} stock */
  const known = (stock, of = tank) => belief_input(facts_of(records_of({ stock_change: stock }), of, NOW));
  assert.equal(known([]).records.tank.feed_g_day, 0);
  assert.deepEqual(known([]).filled, [{ code: "no_animals" }]);
  assert.notEqual(known([arrival]).records.tank.feed_g_day, 0);
  assert.equal(known([], { ...tank, feed_g_day: 0.4 }).records.tank.feed_g_day, 0.4, "what the keeper says stands");
  const quick = { ...tank, setup_glass: undefined };
  assert.equal(known([], quick).records.tank.feed_g_day, undefined, "others need not keep a list of animals");
});

/** @satisfies {Setup} */
const WHOLE = {
  steps: { place: "skipped", substrate: "done", hardscape: "done", plants: "done" },
  substrate: { bed: "plain", cap: "sand", cap_front_cm: 5, cap_back_cm: 5 },
  hardscape: { stone_kg: 5.2 },
  plants: { planting: "light", list: [{ species: "Ceratophyllum demersum", portions: 6 }] },
};

test("a plan of the older form opens as the same plan, and gives the same litres, weight and things to buy", () => {
  const [new_form, old_form] = [tank_of(WHOLE), older(WHOLE)];
  assert.ok(planned(old_form) && set_up_here(old_form));
  assert.deepEqual(steps_of(old_form), steps_of(new_form));
  for (const step of STEPS) assert.deepEqual(said_at(old_form, step), said_at(new_form, step), step);
  // 100 x 40 x 45 cm, less the grains of 20 L of sand (6 parts in 10) and 2 L of stone.
  for (const tank of [new_form, old_form]) near(as_planned(tank).water_l, 180 - 0.6 * 20 - 2);
  assert.equal(weight_of(as_planned(old_form)), weight_of(as_planned(new_form)));
  const room = { kits: [], source: null, label: null };
  assert.deepEqual(to_buy(as_planned(old_form), room), to_buy(as_planned(new_form), room));
});

test("a step that a newer app wrote replaces that of the older form; the other steps stay", () => {
  /** @type {Tank} */
  const tank = {
    ...older(WHOLE),
    setup_hardscape: { state: "done", said: { lava_kg: 1.2 } },
    setup_place: { state: "done", said: { stand_kg: 40 } },
  };
  assert.deepEqual([said_at(tank, "hardscape"), said_at(tank, "substrate").cap_front_cm], [{ lava_kg: 1.2 }, 5]);
  assert.deepEqual(
    steps_of(tank)
      .map(({ state }) => state)
      .slice(0, 6),
    ["done", "done", "done", "done", "open", "done"],
  );
  /** @type {Tank} */
  const skipped = { ...older(WHOLE), setup_substrate: { state: "skipped", said: WHOLE.substrate } };
  near(as_planned(skipped).water_l, 180 - 2, "the older form's measures held the bed: it goes with its step");
});

test("the litres of a plan follow from its steps, whatever the record says; a filled tank keeps its own", () => {
  const plan = tank_of(WHOLE, { water_l: 180 });
  near(as_planned(plan).water_l, 166);
  assert.deepEqual(as_planned(as_planned(plan)), as_planned(plan));
  const filled = { ...plan, started_at: "2026-05-01T08:00:00.000Z", water_l: 150 };
  assert.equal(as_planned(filled), filled);
  const too_deep = tank_of({
    steps: { substrate: "done" },
    substrate: { bed: "plain", cap: "sand", cap_front_cm: 60, cap_back_cm: 60 },
  });
  assert.equal(
    as_planned(too_deep),
    too_deep,
    "two keepers' steps that no glass holds together: the record's own litres, and the first filling refuses them",
  );
});

test("measures that no step gives stay as a keeper typed them", () => {
  const by_hand = { ...GLASS, substrate_l: 10, metered_l: 160 };
  const plan = tank_of(
    { steps: { hardscape: "done" }, hardscape: { stone_kg: 5.2 } },
    { measures: { ...by_hand, hardscape_kg: 9 } },
  );
  assert.deepEqual(unplanned(plan), by_hand);
  assert.equal(as_planned(plan).water_l, 160);
  assert.deepEqual(
    unplanned(tank_of({ steps: { substrate: "done" }, substrate: WHOLE.substrate }, { measures: by_hand })),
    { ...GLASS, metered_l: 160 },
  );
});
