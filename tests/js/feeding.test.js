/** Meals: what is usual, the foods a room knows, what a meal becomes, and the steps of the stepper. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { becomes, feed_step, foods, ration_of, to_feed, usual_meal } from "../../pwa/advice/journal/feeding.js";
import { nice_step, stepped } from "../../pwa/advice/journal/steps.js";
import { install } from "../../pwa/contracts.js";
import { as_facts, near, there, view } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());

/** @typedef {import("./fixtures.js").Some<import("../../pwa/types/views.js").View<"feeding">>} SomeMeal */

/** @param {number} day of May @param {number} feed_g @param {SomeMeal} [more] */
const meal = (day, feed_g, more = {}) => view("feeding", { at: `2026-05-0${day}T07:00:00.000Z`, feed_g, ...more });

test("the usual meal is the middle of the last five, fasts left out, with the food of last time", () => {
  const meals = [
    meal(1, 9),
    meal(2, 0.3),
    meal(3, 0),
    meal(4, 0.3),
    meal(5, 0.4),
    meal(6, 2),
    meal(7, 0.35, { food: "flakes", protein_fraction: 0.44 }),
  ];
  assert.deepEqual(usual_meal(view("tank", { feed_g_day: 5 }), meals), {
    feed_g: 0.35,
    from: "meals",
    food: "flakes",
    protein_fraction: 0.44,
  });
});

test("without meals the tank's own figure is usual, without that a pinch", () => {
  assert.deepEqual(usual_meal(view("tank", { feed_g_day: 0.5, protein_fraction: 0.4 }), [meal(1, 0)]), {
    feed_g: 0.5,
    from: "tank",
    protein_fraction: 0.4,
  });
  assert.deepEqual(usual_meal(view("tank", {}), []), { feed_g: 0.1, from: "pinch" });
});

test("foods by their last meal, each once, with the protein share of that meal", () => {
  const fed = [
    meal(3, 1, { food: "pellets" }),
    meal(1, 1, { food: "flakes", protein_fraction: 0.4 }),
    meal(5, 1, { food: "flakes", protein_fraction: 0.42 }),
    meal(6, 1),
  ];
  assert.deepEqual(foods(fed), [{ food: "flakes", protein_fraction: 0.42 }, { food: "pellets" }]);
  assert.deepEqual(
    foods(["a", "b", "c", "d", "e"].map((food, i) => meal(i + 1, 1, { food }))).map(({ food }) => food),
    ["e", "d", "c", "b"],
    "four have their tile",
  );
});

test("a meal becomes what the nitrogen calculation says: 0.092 g N per gram of protein (Timmons and Ebeling)", () => {
  const { answer, assumed } = becomes(view("tank", { water_l: 50 }), 0.5, 0.4);
  assert.equal(assumed, false);
  assert.ok(Math.abs(answer.tan_mg_n_day - 0.5 * 0.4 * 92) < 1e-9);
  assert.ok(Math.abs(answer.tan_mg_n_l_day - (0.5 * 0.4 * 92) / 50) < 1e-9);
  assert.equal(becomes(view("tank", { water_l: 50 }), 0.5, undefined).assumed, true);
});

test("steps are one, two or five of a power of ten", () => {
  assert.deepEqual(
    [0.003, 0.01, 0.011, 0.03, 0.05, 0.7, 1, 30].map(nice_step),
    [0.005, 0.01, 0.02, 0.05, 0.05, 1, 1, 50],
  );
  assert.deepEqual([0.05, 0.3, 0.8, 12].map(feed_step), [0.01, 0.05, 0.1, 2]);
});

test("a step lands on whole steps and stays within bounds", () => {
  assert.deepEqual(
    [
      stepped(0.3, 0.05, 1, 0.01, 10),
      stepped(0.33, 0.05, -1, 0.01, 10),
      stepped(0.05, 0.05, -1, 0.01, 10),
      stepped(9.99, 0.05, 1, 0.01, 10),
      stepped(10, 0.05, 1, 0.01, 10),
    ],
    [0.35, 0.3, 0.01, 10, 10],
  );
});

test("feeding all at once takes the tanks with a usual meal, none today and nothing amiss", () => {
  const now = new Date(2026, 4, 7, 12).getTime();
  const at = (/** @type {number} */ day) => new Date(2026, 4, day, 8).toISOString();
  /**
   * @param {string} name @param {import("../../pwa/types/advice.js").Advice["act"]} act @param {SomeMeal[]} feedings
   */
  const stop = (name, act, ...feedings) => ({
    tank: view("tank", { name }),
    advice: { act },
    feedings: feedings.map((one) => view("feeding", one)),
  });
  const meals = to_feed(
    [
      stop("hungry", "nothing", { at: at(6), feed_g: 0.3, food: "flakes" }),
      stop("due a test", "test", { at: at(5), feed_g: 0.2 }),
      stop("fed", "nothing", { at: at(6), feed_g: 0.3 }, { at: at(7), feed_g: 0.3 }),
      stop("fasting", "nothing", { at: at(6), feed_g: 0.3 }, { at: at(7), feed_g: 0 }),
      stop("never fed", "nothing"),
      .../** @type {const} */ (["change", "hold", "confirm", "retest"]).map((act) =>
        stop(act, act, { at: at(6), feed_g: 0.3 }),
      ),
    ],
    now,
  );
  assert.deepEqual(
    meals.map(({ tank, meal }) => [tank.name, meal.feed_g, meal.food]),
    [
      ["hungry", 0.3, "flakes"],
      ["due a test", 0.2, undefined],
    ],
  );
});

test("a tank whose meals nobody recorded is offered what its animals take", () => {
  const ten = view("stock_change", {
    change: "arrival",
    species: "Paracheirodon innesi",
    count: 10,
    at: "2026-05-01T07:00:00.000Z",
  });
  const warm = view("reading", { parameter: "temperature", value: 24, at: "2026-05-02T07:00:00.000Z" });
  const facts = as_facts({
    ...{
      now: Date.parse("2026-05-07T07:00:00.000Z"),
      tank: { water_l: 60 },
      stock: [ten],
      readings: [warm],
      own_species: [],
    },
    ...{ changes: [], doses: [], feedings: [], notes: [], source: null, label: null },
  });
  const { input, answer } = there(ration_of(facts));
  assert.equal(input.temperature_c, 24);
  // The example of the calculation itself: ten such fish at 24 °C.
  near(answer.usual_g_day, 0.13, 0.01);
  assert.deepEqual(usual_meal(view("tank", {}), [], answer.usual_g_day), { feed_g: 0.13, from: "animals" });
  assert.equal(usual_meal(view("tank", { feed_g_day: 0.5 }), [], answer.usual_g_day).from, "tank");
  assert.equal(ration_of({ ...facts, stock: [] }), null);
  const unknown = view("stock_change", {
    change: "arrival",
    species: "a fish of no table",
    count: 1,
    at: "2026-05-01T07:00:00.000Z",
  });
  assert.equal(ration_of({ ...facts, stock: [ten, unknown] }), null);
});
