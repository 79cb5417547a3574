/** Doses: by the label for so much water, of a salt worked out on the Bench, of ammonia for a tank without animals. */
import assert from "node:assert/strict";
import { test } from "node:test";
import {
  animals_known,
  label_dose,
  labels_by_use,
  litres_for,
  starter,
  wanted_tan,
} from "../../pwa/advice/journal/dosing.js";
import { salt_of } from "../../pwa/bench/worked_out_salt.js";
import { marks_of } from "../../pwa/figures/number_text.js";
import { InvalidInput, install } from "../../pwa/contracts.js";
import { some, there, view } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());

const TANK = view("tank", { water_l: 100 });
const LABEL = view("label", {
  id: "label-01",
  name: "Brown bottle",
  amount: 1,
  unit: "ml",
  per_l: 40,
  basis: "whole_tank",
});
/** Within 0.01 %. @param {number} got @param {number} wanted */
const near = (got, wanted) => assert.ok(Math.abs(got - wanted) <= 1e-4 * wanted, `${got} is not ${wanted}`);

test("a label's dose is its own line times the water", () => {
  assert.deepEqual(label_dose(LABEL, 100), { amount: 2.5, unit: "ml" });
  assert.deepEqual(label_dose({ ...LABEL, unit: "drops", amount: 1, per_l: 30 }, 100), { amount: 3, unit: "drops" });
  assert.deepEqual(
    label_dose({ ...LABEL, unit: "drops", per_l: 500 }, 10),
    { amount: 1, unit: "drops" },
    "no half drops",
  );
  assert.throws(() => label_dose(LABEL, 0), InvalidInput);
});

test("a whole-tank label is dosed for the tank, a label for new water for the last change's litres", () => {
  assert.equal(litres_for(TANK, LABEL, [view("water_change", { litres: 30 })]), 100);
  assert.equal(
    litres_for(
      TANK,
      { ...LABEL, basis: "new_water" },
      [20, 30].map((litres) => view("water_change", { litres })),
    ),
    30,
  );
  assert.equal(litres_for(TANK, { ...LABEL, basis: "new_water" }, []), 25);
});

test("labels used last in the tank come first", () => {
  const labels = [
    view("label", { id: "a", name: "A" }),
    view("label", { id: "b", name: "B" }),
    view("label", { id: "c", name: "C" }),
  ];
  assert.deepEqual(
    labels_by_use(labels, some([{ label: labels[1] }, { label: null }, { label: labels[2] }])).map(({ id }) => id),
    ["c", "b", "a"],
  );
});

test("the last salt is worked out again for this tank: one degree in 100 L takes 3.07 g of gypsum", () => {
  const typed = { volume_l: { text: "7", unit: "L" }, salt: "gypsum", raise: { gh_dgh: { text: "1", unit: "°dGH" } } };
  const manner = { system: "metric", marks: marks_of("en") };
  const salt = salt_of(TANK, { typed }, manner);
  near(there(salt).amount, 3.07);
  assert.equal(salt?.unit, "g");
  assert.match(salt?.what, /gypsum/);
  assert.equal(salt_of(TANK, {}, manner), null);
  assert.equal(salt_of(TANK, { typed: { salt: "gypsum" } }, manner), null, "half a form is no dose");
});

test("ammonia as the contract's own example: 2 mg N/L in 100 L", () => {
  const salt = starter(TANK, 2);
  near(salt.amount, 0.76377);
  assert.deepEqual([salt.unit, salt.tan_mg_n_l], ["g", 2]);
  const bottle = starter(TANK, 2, 9.5);
  assert.equal(bottle.unit, "ml");
  assert.ok(bottle.amount > 2.6 && bottle.amount < 2.75);
});

test("the wanted ammonia is the load of a day's food, else 1 mg N/L", () => {
  near(wanted_tan({ ...TANK, feed_g_day: 1, protein_fraction: 0.45 }), 0.414);
  assert.equal(wanted_tan(TANK), 1);
  // The tank's own food counts before what planned animals would eat.
  near(
    wanted_tan({
      ...TANK,
      feed_g_day: 1,
      protein_fraction: 0.45,
      planned_stock: [{ species: "Pterophyllum scalare", count: 40 }],
    }),
    0.414,
  );
});

test("animals that came and have not left are in the tank", () => {
  const came = view("stock_change", { change: "arrival", count: 6 });
  assert.equal(animals_known([came]), true);
  assert.equal(
    animals_known([
      came,
      view("stock_change", { change: "death", count: 2 }),
      view("stock_change", { change: "move_out", count: 4 }),
    ]),
    false,
  );
  assert.equal(animals_known([]), false);
});
