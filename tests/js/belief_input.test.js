/** Records of one tank as the contracts' input: times, units, waters, what is missing and what cannot be taken. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { belief_input, limits_of } from "../../pwa/advice/forecast/belief_input.js";
import { limits_at } from "../../pwa/advice/limits.js";
import { check, contracts, install, run } from "../../pwa/contracts.js";
import { as_facts, there, view } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());

const START = Date.parse("2026-05-01T06:00:00.000Z");
const NOW = START + 100.5 * 3_600_000;
const at = (/** @type {number} */ hours) => new Date(START + hours * 3_600_000).toISOString();
const TANK = view("tank", {
  id: "tank-one-1",
  water_l: 84,
  started_at: at(0),
  temperature_c: 24,
  ph: 7.4,
  kh_dkh: 5,
  feed_g_day: 0.3,
  protein_fraction: 0.4,
  planting: "dense",
  seeded: "starter",
});
/** @param {import("./fixtures.js").Some<import("./fixtures.js").Facts>} [more] */
const facts = (more = {}) =>
  as_facts({
    now: NOW,
    tank: TANK,
    readings: [],
    changes: [],
    doses: [],
    feedings: [],
    source: null,
    label: null,
    ...more,
  });
/**
 * @typedef {import("./fixtures.js").View<"reading">} Reading
 * @param {number} hours @param {Reading["parameter"]} parameter @param {number} value
 * @param {import("./fixtures.js").Some<Reading>} [more]
 */
const reading = (hours, parameter, value, more = {}) => ({
  id: `reading-${hours}-${parameter}`,
  at: at(hours),
  parameter,
  value,
  ...more,
});

test("what it makes is what the three contracts take, to the field", () => {
  const steps = [0, 0.25, 0.5, 1];
  const known = belief_input(
    facts({
      readings: [
        reading(10, "total_ammonia", 0.5, { basis: "ion", steps, unit: "mg/L", kit: "kit-1" }),
        reading(10, "ph", 7.6),
        reading(12, "gh", 8),
      ],
      changes: [
        {
          id: "change-1",
          at: at(20),
          litres: 21,
          fraction: 0.25,
          source: { disinfectant: "none", nitrate_mg_n_l: 3, kh_dkh: 6 },
        },
      ],
      doses: [
        { id: "dose-1", at: at(21), what: "household ammonia", amount: 2, unit: "ml", tan_mg_n_l: 1.5 },
        { id: "dose-2", at: at(22), what: "plant food", amount: 2, unit: "ml" },
      ],
      feedings: [{ id: "feeding-1", at: at(23), feed_g: 0.2, protein_fraction: 0.45, food: "flakes" }],
    }),
  );
  const { id: _, started_at, water_l, ...usual } = TANK;
  assert.deepEqual(known.records, {
    tank: { volume_l: 84, ...usual },
    now_h: 100,
    readings: [
      { at_h: 10, parameter: "total_ammonia", value: 0.5, basis: "ion", steps },
      { at_h: 10, parameter: "ph", value: 7.6 },
    ],
    changes: [{ at_h: 20, fraction: 0.25, source: { tan_mg_n_l: 0, nitrite_mg_n_l: 0, nitrate_mg_n_l: 3, kh_dkh: 6 } }],
    doses: [{ at_h: 21, tan_mg_n_l: 1.5 }],
    feedings: [{ at_h: 23, feed_g: 0.2, protein_fraction: 0.45 }],
  });
  assert.deepEqual([known.start, known.filled, known.left_out], [START, [], []]);
  for (const name of ["outlook", "change_plan", "stock_headroom"])
    assert.ok(check(there(contracts()[name]), known.records));
});

test("chloramine frees ammonia into the new water unless the label of that change's own dose binds it", () => {
  const chloramine = view("source_water", {
    id: "tap-1",
    disinfectant: "chloramine",
    disinfectant_mg_l: 1.5,
    tan_mg_n_l: 0.1,
  });
  const binding = { id: "label-1", binds_ammonia: true };
  const change = (/** @type {string} */ id, /** @type {number} */ hours) => ({
    id,
    at: at(hours),
    litres: 21,
    fraction: 0.25,
    source: chloramine,
  });
  const { records } = belief_input(
    facts({
      changes: [change("change-1", 20), change("change-2", 40)],
      doses: [
        { id: "dose-1", at: at(40), what: "bottle", amount: 1, unit: "ml", water_change: "change-2", label: binding },
      ],
    }),
  );
  // Stoichiometry: NH2Cl holds 14.007 of nitrogen to 70.906 of Cl2 (IUPAC atomic weights).
  assert.ok(Math.abs(there(records.changes[0]?.source?.tan_mg_n_l) - (0.1 + (1.5 * 14.007) / 70.906)) < 1e-4);
  assert.equal(records.changes[1]?.source?.tan_mg_n_l, 0.1);
});

test("a change that names no water is taken as made with the tank's own", () => {
  const { records } = belief_input(
    facts({
      source: { id: "tap-2", disinfectant: "none", nitrate_mg_n_l: 5 },
      changes: [{ id: "change-1", at: at(20), litres: 21, fraction: 0.25, source: null }],
    }),
  );
  assert.equal(records.changes[0]?.source?.nitrate_mg_n_l, 5);
});

test("what is missing is filled and said: first readings before assumptions, the start from the first record", () => {
  const bare = { id: "tank-two-2", water_l: 60 };
  const known = belief_input(
    facts({ tank: bare, readings: [reading(30, "ph", 6.9), reading(30, "nitrite", 0.1, { basis: "n" })] }),
  );
  assert.deepEqual(known.records.tank, { volume_l: 60, temperature_c: 26, ph: 6.9 });
  assert.equal(known.start, START + 30 * 3_600_000);
  assert.deepEqual(
    known.records.readings.map((one) => [one.at_h, one.parameter]),
    [
      [0, "nitrite"],
      [0, "ph"],
    ],
  );
  assert.deepEqual(known.filled.map((one) => one.code).toSorted(), [
    "feed",
    "ph",
    "planting",
    "seeded",
    "start",
    "temperature_c",
  ]);
  assert.ok(check(contracts().outlook, known.records));
});

test("a record that the contract refuses is left out and named; the others still count", () => {
  const known = belief_input(
    facts({
      readings: [
        reading(10, "ph", 12.5),
        reading(10, "nitrite", -0.5),
        reading(11, "nitrite", 0.2),
        reading(12, "temperature", 75),
      ],
    }),
  );
  assert.deepEqual(
    known.records.readings.map((one) => one.at_h),
    [11],
  );
  assert.deepEqual(
    known.left_out.map((one) => one.id),
    ["reading-10-ph", "reading-10-nitrite", "reading-12-temperature"],
  );
  assert.match(known.left_out[0].allowed, /4 to 10/);
  assert.ok(run("outlook", { ...known.records, horizon_h: 3 }));
});

test("carbonate hardness counts from its first reading, in degrees, also for a tank without a figure", () => {
  // 1 °dH is 10 mg/L of CaO: 17.85 mg/L as CaCO3 by the molar masses 56.077 and 100.087 (IUPAC).
  const readings = [
    reading(10, "kh", 71.4, { unit: "mg/L CaCO₃" }),
    reading(40, "kh", 3, { unit: "°dKH" }),
    reading(50, "gh", 8),
  ];
  const { tank, readings: told } = belief_input(facts({ readings })).records;
  assert.equal(tank.kh_dkh, 5, "the tank's own usual figure comes first");
  assert.deepEqual(
    told.map((one) => [one.at_h, one.parameter, Number(one.value.toFixed(2))]),
    [
      [10, "kh", 4],
      [40, "kh", 3],
    ],
  );
  const { kh_dkh: _, ...bare } = TANK;
  const odd = belief_input(
    facts({ tank: bare, readings: [reading(5, "kh", 4, { unit: "spoons" }), reading(6, "kh", 75), ...readings] }),
  );
  assert.ok(Math.abs(there(odd.records.tank.kh_dkh) - 4) < 0.01);
  assert.deepEqual(
    [odd.records.readings.length, odd.left_out.map((one) => one.id)],
    [2, ["reading-5-kh", "reading-6-kh"]],
  );
  assert.match(odd.left_out[1].allowed, /0 to 60 °dKH/);
  const slowed = belief_input(facts({ tank: bare, readings: [reading(10, "kh", 0.2)] })).records;
  const capacity = (/** @type {typeof slowed} */ records) =>
    run("outlook", { ...records, horizon_h: 3 }).capacity_mg_n_day.p50;
  assert.ok(
    capacity(slowed) < capacity(belief_input(facts({ tank: bare })).records),
    "bacteria with little carbonate hardness do less",
  );
});

test("records older than the start move it; records far in the future are no past", () => {
  const known = belief_input(
    facts({ readings: [reading(-48, "nitrite", 0), reading(100.6, "nitrite", 0.3), reading(140, "nitrite", 1)] }),
  );
  assert.equal(known.start, START - 48 * 3_600_000);
  assert.equal(known.records.readings.length, 2);
  assert.equal(known.records.now_h, 148.6, "a reading a few minutes ahead of this phone's clock is now");
});

test("the order in which records come does not matter", () => {
  const readings = [
    reading(10, "temperature", 24.5),
    reading(10, "nitrite", 0.1),
    reading(10, "ph", 7),
    reading(10, "total_ammonia", 0.2),
    reading(4, "nitrite", 0),
  ];
  assert.deepEqual(
    belief_input(facts({ readings })).records,
    belief_input(facts({ readings: readings.toReversed() })).records,
  );
});

test("ammonia's limit as free ammonia is the same water as its limit as total ammonia", () => {
  const limits = limits_at(facts({ readings: [reading(99, "ph", 7.9), reading(99, "temperature", 26)] }));
  const { nh3_mg_n_l, nitrite_mg_n_l } = limits_of(limits);
  // EIFAC 1970: 0.025 mg NH3/L is 0.0206 mg N/L; at this pH it is the stricter of the two.
  assert.equal(limits.total_ammonia.by, "eifac");
  assert.ok(Math.abs(nh3_mg_n_l - 0.02056) < 5e-5);
  assert.equal(nitrite_mg_n_l, 0.1);
});

test("a tank that ran for long before its first record begins as a running one, shortly before it", () => {
  const old = { ...TANK, started_at: at(-400 * 24), seeded: undefined };
  const known = belief_input(facts({ tank: old, readings: [reading(30, "nitrate", 10, { basis: "n" })] }));
  assert.deepEqual(
    [known.start, known.records.tank.seeded, known.filled],
    [START + (30 - 14 * 24) * 3_600_000, "mature_media", []],
  );
  // Its first nitrate is believed, though nobody knows what was changed and fed before.
  const { p50, p90 } = run("outlook", { ...known.records, horizon_h: 3 }).now.nitrate_mg_n_l;
  assert.ok(p50 > 7 && p90 < 15, `${p50} to ${p90}`);
});

test("a record of a wrong year is left out and named; the forecast stands on the others", () => {
  const good = reading(10, "nitrite", 0.2);
  const known = belief_input(
    facts({ readings: [{ ...good, id: "reading-old", at: "1970-01-01T00:00:00.000Z" }, good] }),
  );
  assert.deepEqual([known.start, known.records.readings.length], [START, 1]);
  assert.deepEqual(
    known.left_out.map(({ id }) => id),
    ["reading-old"],
  );
  for (const tank of [
    { ...TANK, started_at: "1970-01-01T00:00:00.000Z" },
    { ...TANK, started_at: undefined },
  ]) {
    assert.ok(
      check(
        contracts().outlook,
        belief_input(facts({ tank, readings: [{ ...good, at: "1970-01-01T00:00:00.000Z" }, good] })).records,
      ),
    );
  }
});

test("a tank that ran for more than sixty days before its first record is a running one, for sixty it is not", () => {
  const DAY = 24 * 3_600_000;
  const of = (/** @type {number} */ days, hours = 0) =>
    belief_input(
      facts({
        tank: { ...TANK, started_at: new Date(START - days * DAY - hours * 3_600_000).toISOString() },
        readings: [reading(0, "nitrite", 0)],
      }),
    );
  assert.deepEqual([of(60).records.tank.seeded, of(60, 1).records.tank.seeded], ["starter", "mature_media"]);
  assert.deepEqual([of(60).start, of(60, 1).start], [START - 60 * DAY, START - 14 * DAY]);
});

test("a tank begins no earlier than the longest that the contracts take", () => {
  const now_h = contracts().outlook.inputs.find(({ name }) => name === "now_h");
  assert.ok(now_h?.type === "number");
  const most_h = now_h.max;
  const oldest = NOW + 3_600_000 - most_h * 3_600_000;
  const { start } = belief_input(
    facts({
      tank: { ...TANK, started_at: new Date(oldest - 240 * 3_600_000).toISOString() },
      readings: [{ ...reading(0, "nitrite", 0), at: new Date(oldest + 24 * 3_600_000).toISOString() }],
    }),
  );
  assert.equal(start, oldest);
});

test("two readings of one hour and one kind stand in the order of their ids, whichever was written first", () => {
  const two = [reading(5, "nitrite", 0.1, { id: "a" }), reading(5, "nitrite", 0.2, { id: "b" })];
  const values = (/** @type {typeof two} */ readings) =>
    belief_input(facts({ readings })).records.readings.map(({ value }) => value);
  assert.deepEqual(
    [values(two), values(two.toReversed())],
    [
      [0.1, 0.2],
      [0.1, 0.2],
    ],
  );
});

test("missing steps and protein shares are left out", () => {
  const { records } = belief_input(
    facts({
      readings: [reading(5, "nitrite", 0.1), reading(6, "nitrite", 0.1, { steps: [] })],
      feedings: [{ id: "feeding-1", at: at(7), feed_g: 0.5 }],
    }),
  );
  assert.deepEqual(records.readings.map(Object.keys), Array(2).fill(["at_h", "parameter", "value", "basis"]));
  assert.deepEqual(records.feedings.map(Object.keys), [["at_h", "feed_g"]]);
});

test("the belief starts from the new water's pH where nobody knows the tank's", () => {
  const ph = (/** @type {number | undefined} */ of_source) =>
    belief_input(
      facts({ tank: { ...TANK, ph: undefined }, readings: [], source: { disinfectant: "none", ph: of_source } }),
    ).records.tank.ph;
  assert.deepEqual([ph(7.6), ph(undefined), ph(3.5)], [7.6, 8, 8]);
});
