/**
 * What lives and grows in a tank: a ledger that never goes below zero, masses by length, own animals, and what the
 * forecast takes of it.
 */
import assert from "node:assert/strict";
import { test } from "node:test";
import { belief_input } from "../../pwa/advice/forecast/belief_input.js";
import { facts_of } from "../../pwa/advice/facts.js";
import { plants_of } from "../../pwa/advice/life/plants.js";
import {
  animals_for,
  as_animals,
  mass_of,
  other_half,
  recent_kinds,
  stock_g,
  stock_of,
} from "../../pwa/advice/life/stock.js";
import { tank_water } from "../../pwa/advice/tank_water.js";
import { tank_figures } from "../../pwa/bench/tank_figures.js";
import { check, contracts, install, run } from "../../pwa/contracts.js";
import { as_facts, records_of, there, view } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());

const NOW = Date.parse("2026-06-01T12:00:00.000Z");
const at = (/** @type {number} */ day) => new Date(NOW - (60 - day) * 86_400_000).toISOString();
let made = 0;
/**
 * @typedef {import("./fixtures.js").View<"stock_change">} StockChange
 * @param {number} day @param {StockChange["change"]} what @param {string} species @param {number} count
 * @param {Partial<StockChange>} [more]
 */
const change = (day, what, species, count, more = {}) =>
  view("stock_change", {
    id: `change-${made++}`,
    tank: "tank-aaa",
    at: at(day),
    change: what,
    species,
    count,
    ...more,
  });
const DANIO = "Danio rerio";

test("arrivals and births less deaths and moves, with the latest length and the last month's births and deaths", () => {
  const changes = [
    change(0, "arrival", DANIO, 8, { length_cm: 2 }),
    change(10, "death", DANIO, 1),
    change(45, "birth", DANIO, 5),
    change(50, "death", DANIO, 2, { length_cm: 3 }),
    change(55, "move_out", DANIO, 3, { other_tank: "tank-bbb" }),
    change(20, "arrival", "b", 2),
    change(21, "removal", "b", 2),
  ];
  const { animals, gone, short } = stock_of(changes, NOW);
  assert.deepEqual(
    animals.map(({ moves, ...one }) => one),
    [{ species: DANIO, count: 7, since: at(0), length_cm: 3, born: 5, died: 2 }],
  );
  assert.deepEqual([animals[0].moves.length, gone.map((one) => one.species), short], [1, ["b"], []]);
  const births = [change(0, "arrival", DANIO, 2), change(29, "birth", DANIO, 1), change(30, "birth", DANIO, 4)];
  assert.equal(stock_of(births, NOW).animals[0].born, 4, "thirty days, no more");
  assert.deepEqual(
    stock_of(changes.toReversed(), NOW),
    stock_of(changes, NOW),
    "the order in which records come does not matter",
  );
});

test("a death of more than were known is kept and said; the count stays at zero, later arrivals count in full", () => {
  const death = change(5, "death", DANIO, 9);
  const { animals, short } = stock_of([change(0, "arrival", DANIO, 8), death, change(6, "arrival", DANIO, 4)], NOW);
  assert.deepEqual([animals[0].count, animals[0].since], [4, at(6)]);
  assert.deepEqual(short, [{ change: death, missing: 1 }]);
  assert.deepEqual(
    stock_of([change(1, "death", "x", 2)], NOW).short.map((one) => one.missing),
    [2],
  );
});

test("of an arrival and a departure at the same moment the arrival counts first", () => {
  assert.deepEqual(stock_of([change(3, "move_out", DANIO, 6), change(3, "arrival", DANIO, 6)], NOW).short, []);
});

test("the two records of a move find each other", () => {
  const out = change(3, "move_out", DANIO, 2, { other_tank: "tank-bbb" });
  const come = { ...change(3, "move_in", DANIO, 2, { other_tank: "tank-aaa" }), tank: "tank-bbb" };
  const stranger = { ...come, id: "other", species: "x" };
  assert.deepEqual(
    [
      other_half(out, [stranger, out, come]),
      other_half(come, [come, out]),
      other_half(change(3, "death", DANIO, 1), [out]),
    ],
    [come, out, null],
  );
});

test("masses are those of FishBase's length-weight pair, quoted for the neon tetra: 0.01202 × 3^3.08 g each", () => {
  const mass = mass_of(
    [
      { species: "Paracheirodon innesi", count: 8, length_cm: 3 },
      { species: "blue wonder", count: 2 },
    ],
    [],
  );
  assert.ok(Math.abs(there(mass).total_g - 8 * 0.01202 * 3 ** 3.08) < 1e-9);
  assert.deepEqual([mass?.unknown, mass?.measured], [["blue wonder"], true]);
  assert.equal(mass_of([{ species: "blue wonder", count: 2 }], []), null);
  assert.equal(
    mass_of([{ species: DANIO, count: 2, length_cm: 150 }], [])?.measured,
    false,
    "a length that no calculation takes is no length",
  );
});

test("a keeper's own animal goes into every calculation that takes animals, with the columns that are known", () => {
  const own = [
    view("own_species", {
      id: "own-1",
      name: "Grey loach",
      length_cm: 6,
      shape: "eel",
      temperature_low_c: 18,
      temperature_high_c: 23,
      group_min: 5,
      note: "from the club",
    }),
  ];
  const entries = as_animals(
    [
      { species: "Grey loach", count: 3 },
      { species: DANIO, count: 6, length_cm: 3 },
    ],
    own,
  );
  assert.deepEqual(entries[0], {
    name: "Grey loach",
    count: 3,
    length_cm: 6,
    shape: "eel",
    temperature_low_c: 18,
    temperature_high_c: 23,
    group_min: 5,
  });
  assert.ok(run("animal_mass", { animals: animals_for("animal_mass", entries) }).total_g > 0);
  const { findings } = run("compatibility", { animals: animals_for("compatibility", entries), temperature_c: 26 });
  assert.ok(findings.some((one) => one.kind === "tank_temperature" && one.a === "Grey loach"));
  const room = { water_l: 100, surface_cm2: 4000, length_cm: 100, temperature_c: 22 };
  assert.equal(run("stocking_limit", { ...room, animals: animals_for("stocking_limit", entries) }).more.length, 2);
  assert.deepEqual(
    tank_figures({
      tank: view("tank", { id: "tank-aaa", water_l: 80 }),
      readings: [],
      changes: [],
      doses: [],
      feedings: [],
      stock: [change(1, "arrival", "Grey loach", 3)],
      notes: [],
      own_species: own,
      source: null,
      label: null,
      now: NOW,
    }).animals,
    [entries[0]],
  );
});

test("grams come from the list only where it says lengths and leaves none out", () => {
  const measured = [change(0, "arrival", DANIO, 6, { length_cm: 3 })];
  assert.ok(there(stock_g(measured, [], NOW)) > 0);
  assert.equal(stock_g([change(0, "arrival", DANIO, 6)], [], NOW), undefined);
  assert.equal(stock_g([...measured, change(1, "arrival", "blue wonder", 1)], [], NOW), undefined);
});

test("the forecast prefers weighed animals to the tank's own figure, and says so where they stand for the food", () => {
  const tank = view("tank", {
    id: "tank-aaa",
    water_l: 84,
    started_at: at(0),
    temperature_c: 24,
    ph: 7.4,
    planting: "dense",
    seeded: "starter",
    fish_g: 50,
  });
  const facts = as_facts({
    now: NOW,
    tank,
    readings: [],
    changes: [],
    doses: [],
    feedings: [],
    source: null,
    label: null,
  });
  const stock = [change(0, "arrival", DANIO, 6, { length_cm: 3 })];
  const grams = stock_g(stock, [], NOW);
  const known = belief_input({ ...facts, stock, own_species: [] });
  assert.deepEqual([known.records.tank.fish_g, known.filled], [grams, [{ code: "feed_of_stock", value: grams }]]);
  assert.ok(check(contracts().outlook, known.records));
  assert.deepEqual(belief_input({ ...facts, tank: { ...tank, feed_g_day: 0.3 }, stock }).filled, []);
  const bare = belief_input({ ...facts, stock: [change(0, "arrival", DANIO, 6)] });
  assert.deepEqual([bare.records.tank.fish_g, bare.filled], [50, [{ code: "feed_of_fish" }]]);
});

test("water from another tank brings what that tank's last test before the change read", () => {
  const reading = (/** @type {number} */ day, /** @type {number} */ value) =>
    view("reading", { id: `r-${day}`, tank: "tank-bbb", at: at(day), parameter: "nitrate", value, basis: "n" });
  const room = records_of({
    reading: [reading(1, 4), reading(5, 9), reading(20, 30)],
    water_change: [{ id: "w", tank: "tank-aaa", at: at(10), litres: 8, fraction: 0.1, from_tank: "tank-bbb" }],
  });
  assert.deepEqual(facts_of(room, view("tank", { id: "tank-aaa", water_l: 80 }), NOW).changes[0].source, {
    disinfectant: "none",
    nitrate_mg_n_l: 9,
  });
});

test("plants: what grows, since when, what was put in, trimmed last; gone only when all of it went", () => {
  /**
   * @param {number} day @param {import("../../pwa/types/records.js").PlantingFields["change"]} what
   * @param {string} species @param {string} [amount]
   */
  const did = (day, what, species, amount) =>
    view("planting", {
      id: `p-${made++}`,
      tank: "tank-aaa",
      at: at(day),
      change: what,
      species,
      ...(amount ? { amount } : {}),
    });
  const { growing, gone } = plants_of([
    did(1, "plant", "moss", "a handful"),
    did(3, "trim", "moss"),
    did(9, "trim", "moss"),
    did(5, "remove", "moss", "half"),
    did(1, "plant", "fern"),
    did(2, "move_out", "fern"),
    did(4, "trim", "stems"),
    did(1, "plant", "lily", "2"),
    did(2, "remove", "lily"),
    did(6, "plant", "lily", "1"),
    did(1, "plant", "cress", "3 stems"),
    did(2, "remove", "cress", "1 stem"),
    did(4, "plant", "cress"),
    did(8, "plant", "cress", "a pot"),
    did(7, "move_out", "rush"),
    did(7, "move_in", "rush"),
  ]);
  const said = growing.map(({ amounts, ...one }) => ({ ...one, amounts: amounts.map(({ amount }) => amount) }));
  assert.deepEqual(said, [
    { species: "moss", since: at(1), amounts: ["a handful"], last_trim: at(9) },
    { species: "lily", since: at(6), amounts: ["1"] },
    { species: "cress", since: at(1), amounts: ["3 stems", "a pot"] },
    { species: "stems", since: at(4), amounts: [], last_trim: at(4) },
  ]);
  assert.deepEqual(
    gone.map((one) => one.species),
    ["fern", "rush"],
    "what came and went at the same moment went last",
  );
  const half = plants_of([did(1, "plant", "moss"), { ...did(2, "remove", "moss"), amount_code: "half" }]);
  assert.equal(half.growing.length, 1, "an amount told by its code alone is not all of it");
});

test("kinds written down last come first, each once", () => {
  assert.deepEqual(
    recent_kinds(
      [
        change(1, "arrival", "a", 1),
        change(2, "arrival", "b", 1),
        change(3, "death", "a", 1),
        change(0, "arrival", "c", 1),
      ],
      2,
    ),
    ["a", "b"],
  );
});

test("animals that the calculation refuses are left out and named; the forecast goes on without their mass", () => {
  const own = [view("own_species", { name: "Half a law", length_cm: 3, shape: "deep", mass_a: 0.02 })];
  for (const [species, count] of /** @type {[string, number][]} */ ([
    [DANIO, 10_001],
    ["Half a law", 2],
    ["a very long name ".repeat(5).slice(0, 80), 1],
  ])) {
    const changes = [
      change(0, "arrival", DANIO === species ? "Paracheirodon innesi" : DANIO, 4, { length_cm: 2 }),
      change(1, "arrival", species, count, { length_cm: 2 }),
    ];
    const mass = mass_of(stock_of(changes, NOW).animals, own);
    assert.deepEqual([mass?.unknown, mass?.answer.each.length], [[species], 1]);
    assert.equal(stock_g(changes, own, NOW), undefined);
    const facts = as_facts({
      now: NOW,
      tank: { id: "tank-aaa", water_l: 100 },
      readings: [],
      changes: [],
      doses: [],
      feedings: [],
      stock: changes,
      own_species: own,
      source: null,
      label: null,
    });
    assert.ok(check(contracts().outlook, belief_input(facts).records));
  }
});

test("water from a tank whose last test is impossible brings what the last possible one read", () => {
  const read = (/** @type {number} */ day, /** @type {number} */ value) =>
    view("reading", { tank: "tank-bbb", at: at(day), parameter: "nitrate", value, basis: "n" });
  assert.equal(
    tank_water([read(1, 12), read(2, -5), read(3, 100_000)], { from_tank: "tank-bbb", at: at(4) }).nitrate_mg_n_l,
    12,
  );
});
