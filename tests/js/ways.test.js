/** Ways to help besides a change: salt against nitrite by the chloride there is, a binder, other water. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { chloride_of, salt_g } from "../../pwa/advice/chloride.js";
import { limits_at } from "../../pwa/advice/limits.js";
import { ways } from "../../pwa/advice/ways.js";
import { some, there } from "./fixtures.js";
import { ago, tank } from "./situations.js";

/** @typedef {import("./fixtures.js").Some<import("./fixtures.js").Facts>} SomeFacts */
/** @typedef {import("../../pwa/types/advice.js").Advice} Advice */

const near = (/** @type {number} */ got, /** @type {number} */ wanted) =>
  assert.ok(Math.abs(got - wanted) < 1e-6 * Math.max(1, wanted), `${got} is not ${wanted}`);
const salt = (/** @type {number} */ hours, amount = 2, more = {}) => ({
  id: `salt-${hours}`,
  at: ago(hours),
  what: "Salt",
  what_code: "sodium_chloride",
  amount,
  unit: /** @type {const} */ ("g"),
  label: null,
  ...more,
});
const poured = (/** @type {number} */ hours, fraction = 0.5) => ({
  id: `change-${hours}`,
  at: ago(hours),
  litres: 50,
  fraction,
});
const SOURCE = there(tank([]).source);
/** Chloride is 35.45 of 58.44 parts of salt (IUPAC's atomic weights): 2 g in 100 L. */
const ADDED = (2000 * 35.45) / 58.44 / 100;

test("chloride: the source's, or what salts added to it, thinned by each change", () => {
  assert.equal(chloride_of(tank([])), undefined);
  assert.equal(chloride_of(tank([], { source: { ...SOURCE, chloride_mg_l: 30 } })), 30);
  near(there(chloride_of(tank([], { doses: [salt(5)] }))), 9 + ADDED);
  near(there(chloride_of(tank([], { doses: [salt(5)], source: { ...SOURCE, chloride_mg_l: 2 } }))), 2 + ADDED);
  near(there(chloride_of(tank([], { doses: [salt(5)], changes: [poured(2)] }))), 9 + ADDED / 2);
  near(there(chloride_of(tank([], { doses: [salt(1)], changes: [poured(2)] }))), 9 + ADDED);
  assert.equal(chloride_of(tank([], { doses: [salt(5, 2, { what_code: "potassium_nitrate" })] })), undefined);
  assert.equal(
    chloride_of(tank([], { doses: [salt(5, 2, { unit: "ml" })] })),
    undefined,
    "a solution of unknown strength",
  );
  near(
    there(chloride_of(tank([], { doses: [salt(5, 2, { what_code: "calcium_chloride" })] }))),
    9 + (2000 * 2 * 35.45) / 110.978 / 100,
  );
});

test("a pinch of salt lifts the limit of nitrite to that of water rich in chloride", () => {
  assert.deepEqual([limits_at(tank([])).nitrite.mg_n_l, limits_at(tank([])).act_at.nitrite], [0.1, 0.3]);
  const salted = limits_at(tank([], { doses: [salt(2)] }));
  assert.deepEqual([salted.nitrite.mg_n_l, salted.act_at.nitrite], [0.2, 0.6]);
});

test("the salt that brings a tank to so much chloride", () => {
  near(salt_g(20, tank([])), (11 * 100 * 58.44) / 35.45 / 1000);
  assert.equal(salt_g(20, tank([], { source: { ...SOURCE, chloride_mg_l: 25 } })), 0);
});

/** @param {import("./fixtures.js").Some<Advice>} water @param {SomeFacts} [more] */
const codes = (water, more) => ways(tank([], more), some(water)).map(({ code }) => code);
const levels = (/** @type {number | null} */ now_mg_n_l) => ({
  levels: { nitrite: { now_mg_n_l } },
  limits: { nitrite: { mg_n_l: 0.1 } },
});

test("salt goes with a change where nitrite is near its limit and chloride is scarce", () => {
  const beside = (/** @type {number | null} */ nitrite, act = "change", more = {}) =>
    codes({ act: /** @type {"change"} */ (act), reasons: [], ...levels(nitrite) }, more);
  assert.deepEqual([beside(0.08), beside(0.081), beside(null)], [[], ["salt"], []]);
  assert.deepEqual([beside(0.5, "retest"), beside(0.5, "nothing"), beside(0.5, "test")], [["salt"], [], []]);
  assert.deepEqual(beside(0.2, "change", { source: { ...SOURCE, chloride_mg_l: 40 } }), []);
  const grams = ways(tank([]), some({ act: "change", reasons: [], ...levels(1) }))[0].salt_g;
  near(there(grams), ((10 * (46.005 / 14.007) - 9) * 100 * 58.44) / 35.45 / 1000);
  const most = ways(tank([]), some({ act: "change", reasons: [], ...levels(10) }))[0].salt_g;
  near(there(most), ((120 - 9) * 100 * 58.44) / 35.45 / 1000);
});

test("where the new water is the cause, other ways are named; for nitrate alone its own words stand", () => {
  const held = (/** @type {string} */ parameter, more = {}) =>
    codes(
      {
        act: "hold",
        reasons: [{ code: "source_worse", parameter: /** @type {"nitrite"} */ (parameter) }],
        ...levels(0),
      },
      more,
    );
  assert.deepEqual(held("total_ammonia"), ["bind", "feed_less", "other_water"]);
  assert.deepEqual(held("total_ammonia", { label: { ...there(tank([]).label), binds_ammonia: true } }), [
    "feed_less",
    "other_water",
  ]);
  assert.deepEqual(held("nitrite"), ["feed_less", "other_water"]);
  const changed = (more = {}) =>
    codes({ act: "change", besides: ["source_is_the_cause"], reasons: [], ...levels(0) }, more);
  assert.deepEqual(changed({ source: { ...SOURCE, tan_mg_n_l: 0.3 } }), ["bind"], "beside a small change too");
  assert.deepEqual(changed(), [], "of water without ammonia");
  assert.deepEqual(codes({ act: "hold", unhurried: true, reasons: [], ...levels(0) }), []);
});
