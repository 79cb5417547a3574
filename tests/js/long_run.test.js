/** The long run: what it says is what a tank comes to that goes on like this, day by day. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { long_run, rise_by_tests, routine_of } from "../../pwa/advice/life/long_run.js";
import { install } from "../../pwa/contracts.js";
import { as_facts, near, there } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());

const DAY = 86_400_000;
const NOW = Date.parse("2026-06-01T12:00:00.000Z");
const at = (/** @type {number} */ days) => new Date(NOW - days * DAY).toISOString();
const WATER_L = 80;
/** @param {number} days @param {number} mg_n_l @param {object} [more] */
const nitrate = (days, mg_n_l, more = {}) => ({
  parameter: /** @type {const} */ ("nitrate"),
  ...{ at: at(days), value: mg_n_l, basis: /** @type {const} */ ("n") },
  ...more,
});

/**
 * A tank lived day by day: nitrate rises by `rise`, and every `every` days `fraction` of it is changed.
 * @param {{rise: number, fraction: number, every: number, source?: number, days?: number, start?: number}} how
 */
function lived({ rise, fraction, every, source = 0, days = 84, start = 5 }) {
  const changes = [];
  const readings = [];
  let level = start;
  for (let day = 0; day <= days; day++) {
    if (day > 0) level += rise;
    if (day % 14 === 0) readings.push(nitrate(days - day, level));
    if (day > 0 && day % every === 0 && day < days) {
      changes.push({ at: at(days - day - 0.001), fraction, source: { nitrate_mg_n_l: source } });
      level = level * (1 - fraction) + source * fraction;
    }
  }
  return { changes, readings };
}

/** @param {object} more */
const facts = (more) =>
  as_facts({
    now: NOW,
    tank: { id: "tank-0001", name: "Fern pool", water_l: WATER_L, started_at: at(400) },
    ...{ readings: [], changes: [], doses: [], feedings: [], stock: [], notes: [], own_species: [] },
    ...{ source: null, label: null },
    ...more,
  });

test("the rise is found again from tests and changes", () => {
  for (const rise of [0.2, 1.3]) {
    const found = there(rise_by_tests(facts(lived({ rise, fraction: 0.3, every: 7, source: 2 }))));
    near(found.usual, rise, 1e-3);
    assert.ok(found.low < rise && found.high > rise);
  }
});

test("too few tests, over too few days, tell no rise; the top of a chart tells none either", () => {
  const tests = [nitrate(60, 5), nitrate(30, 8)];
  assert.equal(rise_by_tests(facts({ readings: tests })), null);
  assert.equal(rise_by_tests(facts({ readings: [nitrate(20, 5), nitrate(10, 6), nitrate(0, 7)] })), null);
  const top = nitrate(0, 20, { steps: [0, 5, 10, 20] });
  assert.equal(rise_by_tests(facts({ readings: [...tests, top] })), null);
  assert.ok(rise_by_tests(facts({ readings: [...tests, nitrate(0, 11)] })));
});

test("the routine is the mean of the last four weeks", () => {
  const { changes } = lived({ rise: 1, fraction: 0.25, every: 7 });
  const routine = there(routine_of(facts({ changes })));
  near(routine.fraction, 0.25);
  near(routine.litres, 20);
  assert.equal(routine.every_days, 28 / routine.count);
  assert.equal(routine_of(facts({ changes: changes.map((one) => ({ ...one, at: at(40) })) })), null);
});

test("nitrate settles where the same tank stands after two years", () => {
  const how = { rise: 0.6, fraction: 0.25, every: 7, source: 1.5 };
  const source = { nitrate_mg_n_l: 1.5 };
  const { nitrate: found } = long_run(facts({ ...lived(how), source }));
  const { readings } = lived({ ...how, days: 728 });
  // Its last test falls just before a change.
  const settled = there(readings.at(-1)).value;
  near(there(there(found).settles_mg_n_l).usual, settled, 0.02);
  assert.ok(settled > 10, "over the limit");
});

test("the least that is named holds the limit in that tank, and a tenth less does not", () => {
  const source = { nitrate_mg_n_l: 1.5 };
  const { nitrate: found } = long_run(
    facts({ ...lived({ rise: 0.6, fraction: 0.25, every: 7, source: 1.5 }), source }),
  );
  const { least, limit_mg_n_l } = there(found);
  const { litres, every_days } = there(least);
  const highest = (/** @type {number} */ share) => {
    const how = { rise: 0.6, fraction: (litres * share) / WATER_L, every: every_days, source: 1.5, days: 728 };
    return Math.max(
      ...lived(how)
        .readings.slice(-3)
        .map(({ value }) => value),
    );
  };
  assert.ok(highest(1) <= limit_mg_n_l);
  assert.ok(highest(0.9) > limit_mg_n_l);
});

test("without changes the days to the limit are said, from the food at most", () => {
  const { routine, nitrate: found } = long_run(
    facts({ tank: { id: "t", name: "T", water_l: 100, started_at: at(100), feed_g_day: 0.5, protein_fraction: 0.4 } }),
  );
  assert.equal(routine, null);
  assert.equal(there(found).from, "food");
  // 0.5 g x 0.4 x 0.092 (timmons_ebeling) in 100 L are 0.184 mg N/L a day; the limit is 10.
  near(there(found).days_to_limit, 10 / 0.184, 1e-9);
  assert.equal(there(found).rise_mg_n_l_day.low, 0);
});

test("new water over the limit is named, and no routine with it", () => {
  const found = long_run(
    facts({ ...lived({ rise: 0.6, fraction: 0.25, every: 7 }), source: { nitrate_mg_n_l: 11 } }),
  ).nitrate;
  assert.equal(there(found).source_over, true);
  assert.equal(there(found).least, null);
});

test("carbonate hardness runs out with what is nitrified, and holds with enough new water", () => {
  const kh = { parameter: /** @type {const} */ ("kh"), at: at(3), value: 4 };
  const tank = { rise: 0.5, fraction: 0.1, every: 14 };
  const { readings, changes } = lived(tank);
  const alone = there(long_run(facts({ readings: [...readings, kh], changes })).kh);
  // 2 mol of acid a mol of nitrogen: 0.5 mg N/L use 0.2 °d a day (7.14 mg CaCO3 a mg N, 17.85 mg CaCO3/L a degree).
  near(alone.falls_dkh_week, (0.5 * 7.14 * 7) / 17.85, 0.005);
  near(there(alone.days_to_floor), 3 / ((0.5 * 7.14) / 17.85), 0.01);
  assert.equal(alone.source_known, false);
  const fed = long_run(facts({ readings: [...readings, kh], changes, source: { kh_dkh: 8 } })).kh;
  assert.ok(there(there(fed).days_to_floor) > there(alone.days_to_floor));
  const { litres, every_days } = there(there(fed).least);
  near(litres / WATER_L, (((0.5 * 7.14) / 17.85) * every_days) / 7, 0.05);
});
