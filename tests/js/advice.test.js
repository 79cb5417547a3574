/**
 * What a tank wants today: the advice must be the calculations' own figures, careful where little is known, and say
 * what it assumed.
 */
import assert from "node:assert/strict";
import { test } from "node:test";
import { level } from "../../pwa/advice/level.js";
import { bucket_litres } from "../../pwa/advice/litres.js";
import { today } from "../../pwa/advice/today.js";
import { answered, install, run } from "../../pwa/contracts.js";
import { near, reasons_of, there, view } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";
import { LABEL, NOW, TAP, ago, codes, facts, read } from "./tank_facts.js";

install(shared_bundle());

test("a tank without readings asks for a test and says which are missing", () => {
  const advice = today(facts([]));
  assert.deepEqual([advice.state, advice.act], ["watch", "test"]);
  assert.deepEqual(
    reasons_of(advice, "no_reading").map(({ parameter }) => parameter),
    ["total_ammonia", "nitrite"],
  );
});

test("a test is due where one of the two was never made, and half a day after its hour where both were", () => {
  assert.deepEqual(
    /** @type {const} */ (["total_ammonia", "nitrite"]).map((parameter) => today(facts([read(parameter, 0)])).act),
    ["test", "test"],
  );
  const last = (/** @type {number} */ hours) =>
    today(facts([read("total_ammonia", 0, hours), read("nitrite", 0, hours)])).test_due;
  assert.deepEqual([last(36), last(37)], [false, true]);
});

test("nothing measurable: steady, nothing to do", () => {
  const advice = today(facts([read("total_ammonia", 0), read("nitrite", 0), read("ph", 7.2), read("temperature", 25)]));
  assert.deepEqual([advice.state, advice.act, advice.dose], ["steady", "nothing", undefined]);
});

test("litres and millilitres are what dilution and dechlorinator_dose answer", () => {
  // Ammonia rose from 0.25 to 0.45 mg N/L in a day: 0.65 expected tomorrow.
  const readings = [
    read("total_ammonia", 0.25, 24),
    read("total_ammonia", 0.45),
    read("nitrite", 0, 24),
    read("nitrite", 0),
    read("ph", 7.8),
    read("temperature", 25),
  ];
  const advice = today(facts(readings));
  const limits = run("ammonia_limits", { ph: 7.8, temperature_c: 25 });
  const limit = Math.min(limits.eifac_tan_mg_n_l, limits.chronic_tan_mg_n_l);
  const answer = run("dilution", { before_mg_l: 0.45, source_mg_l: 0, target_mg_l: limit - 0.2 });
  const fraction_needed = answered(answer, "fraction_needed");
  assert.deepEqual([advice.state, advice.act], ["change today", "change"]);
  near(advice.exact_litres, fraction_needed * 100);
  assert.equal(advice.litres, Math.ceil(fraction_needed * 100));
  const { label_dose_ml } = run("dechlorinator_dose", {
    change_l: advice.litres,
    tank_l: 100,
    label_ml: 2,
    label_per_l: 10,
  });
  assert.equal(advice.dose?.amount, label_dose_ml);
  near(advice.dose?.amount, (2 * advice.litres) / 10);
  // By when: before the limit is passed at that rise.
  near(advice.by, NOW + ((limit - 0.45) / 0.2) * 24 * 3_600_000);
});

test("the change asked for holds the worst under its limit until the next test; one bucket less would not", () => {
  const readings = [
    read("total_ammonia", 0.3, 24),
    read("total_ammonia", 0.5),
    read("nitrite", 0.02, 24),
    read("nitrite", 0.07),
    read("ph", 7.6),
    read("temperature", 24),
  ];
  const advice = today(facts(readings));
  assert.equal(advice.act, "change");
  const tomorrow = (/** @type {number} */ litres) =>
    Math.max(
      ...[advice.levels.total_ammonia, advice.levels.nitrite].map(
        (one) =>
          (run("dilution", { before_mg_l: there(one.now_mg_n_l), fractions: [litres / 100] }).after_mg_l +
            one.rise_mg_n_l_day) /
          one.limit_mg_n_l,
      ),
    );
  assert.ok(tomorrow(there(advice.litres)) <= 1);
  if (there(advice.litres) > 1) assert.ok(tomorrow(there(advice.exact_litres) - 1) > 1);
});

test("a rise is corrected for the change between two readings", () => {
  // 0.40, half changed to 0.20, and 0.35 a day later: it rose 0.15, not fell 0.05.
  const one = level(
    "total_ammonia",
    facts([read("total_ammonia", 0.4, 24), read("total_ammonia", 0.35)], {
      changes: [{ at: ago(23), litres: 50, fraction: 0.5, source: TAP }],
    }),
  );
  near(one.rise_mg_n_l_day, 0.15);
  assert.equal(one.rise_from, "readings");
});

test("a rise is that of the last three days, or of two readings further apart, not of hours or of weeks", () => {
  const rise = (/** @type {[number, number][]} */ ...pairs) =>
    level("total_ammonia", facts(pairs.map(([hours, value]) => read("total_ammonia", value, hours)))).rise_mg_n_l_day;
  near(rise([96, 0], [24, 0.3], [0, 0.4]), 0.1);
  near(rise([72, 0.1], [24, 0.3], [0, 0.4]), 0.1);
  near(rise([10 * 24, 0.1], [0, 0.6]), 0.05);
  near(rise([15 * 24, 0.1], [0, 0.6]), 0.6);
  near(rise([3, 0.1], [0, 0.6]), 0.6);
  near(rise([24, 0.5], [3, 0.1], [0, 0.6]), 0.1);
});

test("one reading alone allows for as much again, and says so", () => {
  const advice = today(
    facts([read("total_ammonia", 0.4), read("nitrite", 0), read("ph", 7.8), read("temperature", 25)]),
  );
  near(advice.levels.total_ammonia.rise_mg_n_l_day, 0.4);
  assert.ok(codes(advice).includes("rise_doubling"));
});

test("ion and nitrogen are told apart: 0.5 as NH4 is 0.39 as N", () => {
  // IUPAC atomic weights: 14.007 / 18.039 = 0.7765.
  const advice = today(facts([read("total_ammonia", 0.5, 0, "ion"), read("nitrite", 0.25, 0, "ion")]));
  near(advice.levels.total_ammonia.read_mg_n_l, 0.5 * 0.7765, 1e-4);
  near(advice.levels.nitrite.read_mg_n_l, 0.25 * 0.30447, 1e-4);
});

test("chloramine's freed ammonia counts against the change, unless the label binds it", () => {
  const readings = [
    read("total_ammonia", 0.3, 24),
    read("total_ammonia", 0.45),
    read("nitrite", 0),
    read("ph", 7.8),
    read("temperature", 25),
  ];
  const source = view("source_water", { id: "tap-water-2", disinfectant: "chloramine", disinfectant_mg_l: 1 });
  const plain = today(facts(readings));
  const freed = today(facts(readings, { source }));
  const bound = today(facts(readings, { source, label: { ...LABEL, binds_ammonia: true } }));
  near(freed.levels.total_ammonia.source_mg_n_l, 0.19756, 1e-4);
  assert.ok(there(freed.exact_litres) > there(plain.exact_litres));
  near(bound.exact_litres, plain.exact_litres);
  assert.ok(codes(freed).includes("freed") && codes(bound).includes("freed_bound"));
  const unknown = today(facts(readings, { source: { id: "tap-water-3", disinfectant: "chloramine" } }));
  assert.ok(codes(unknown).includes("freed_unknown"));
});

test("when no single change is enough: half is asked for, said not to be enough, and tested earlier", () => {
  const advice = today(
    facts([
      read("total_ammonia", 0.4, 24),
      read("total_ammonia", 2.4),
      read("nitrite", 0),
      read("ph", 8),
      read("temperature", 26),
    ]),
  );
  assert.deepEqual(
    [advice.state, advice.act, advice.again, advice.litres, advice.next_test_hours],
    ["act now", "change", true, 50, 12],
  );
  assert.equal(advice.by, NOW);
});

test("new water that holds as much as the tank is not used for a change", () => {
  const source = view("source_water", { id: "tap-water-4", disinfectant: "none", nitrate_mg_n_l: 25 });
  const advice = today(
    facts([read("total_ammonia", 0), read("nitrite", 0), read("nitrate", 20), read("ph", 7), read("temperature", 25)], {
      source,
    }),
  );
  assert.equal(advice.act, "hold");
  assert.ok(codes(advice).includes("source_worse"));
  const same = today(
    facts([read("total_ammonia", 0), read("nitrite", 0), read("nitrate", 25), read("ph", 7), read("temperature", 25)], {
      source,
    }),
  );
  assert.deepEqual([same.act, codes(same).includes("source_worse")], ["hold", true], "as much is no better");
});

test("a change for nitrate that would bring ammonia over its limit is held back", () => {
  const source = view("source_water", { id: "tap-water-5", disinfectant: "chloramine", disinfectant_mg_l: 4 });
  const readings = [
    read("total_ammonia", 0),
    read("nitrite", 0),
    read("nitrate", 19, 24),
    read("nitrate", 19),
    read("ph", 8.6),
    read("temperature", 26),
  ];
  const held = today(facts(readings, { source }));
  assert.equal(held.act, "hold");
  assert.ok(codes(held).includes("brings_over"));
  assert.equal(today(facts(readings, { source, label: { ...LABEL, binds_ammonia: true } })).act, "change");
});

test("a change for nitrate alone has no hour and is at most a third", () => {
  const advice = today(
    facts([
      read("total_ammonia", 0),
      read("nitrite", 0),
      read("nitrate", 15, 24),
      read("nitrate", 15),
      read("ph", 7),
      read("temperature", 25),
    ]),
  );
  assert.deepEqual([advice.state, advice.act, advice.by, advice.litres], ["change today", "change", undefined, 33]);
  assert.ok(codes(advice).includes("rise_none"));
});

test("right after the change it asks for a test, not for more water", () => {
  const readings = [
    read("total_ammonia", 0.25, 25),
    read("total_ammonia", 0.5, 1),
    read("nitrite", 0, 1),
    read("ph", 7.8),
    read("temperature", 25),
  ];
  const half = { at: ago(0.5), litres: 20, fraction: 0.2, source: TAP };
  const advice = today(facts(readings, { changes: [half] }));
  assert.equal(advice.act, "confirm");
  assert.ok(codes(advice).includes("carried"));
  // Half a day after the change, as long as nothing passes its limit before.
  assert.equal(advice.by, Date.parse(half.at) + 12 * 3_600_000);
  const close = today(facts(readings, { changes: [{ ...half, litres: 5, fraction: 0.05 }] }));
  near(
    close.by,
    NOW +
      ((close.levels.total_ammonia.limit_mg_n_l - there(close.levels.total_ammonia.now_mg_n_l)) /
        close.levels.total_ammonia.rise_mg_n_l_day) *
        24 *
        3_600_000,
  );
  assert.ok(there(close.by) < there(advice.by));
});

test("no recent pH or temperature: the usual ones, else careful ones, and it says which", () => {
  const ammonia = [read("total_ammonia", 0.4), read("nitrite", 0)];
  const assumed = today(facts(ammonia));
  assert.deepEqual(
    assumed.reasons.flatMap((reason) => ("value" in reason ? [[reason.code, reason.value]] : [])),
    [
      ["assumed_ph", 8],
      ["assumed_temperature_c", 26],
    ],
  );
  const usual = today(facts(ammonia, { tank: { id: "tank-one-1", water_l: 100, ph: 6.8, temperature_c: 24 } }));
  assert.ok(codes(usual).includes("usual_ph") && codes(usual).includes("usual_temperature_c"));
  assert.ok(usual.limits.total_ammonia.mg_n_l > assumed.limits.total_ammonia.mg_n_l);
  const stray = today(facts([...ammonia, view("reading", { parameter: "ph", value: 70, at: ago(1) })]));
  assert.equal(stray.limits.ph.from, "assumed");
  assert.equal(today(facts(ammonia, { tank: { id: "tank-one-1", water_l: 100, ph: 70 } })).limits.ph.from, "assumed");
  assert.equal(
    today(facts([...ammonia, read("ph", 6.8, 24), read("ph", 7.4, 2)])).limits.ph.value,
    7.4,
    "the last one read",
  );
  assert.deepEqual(
    [7 * 24, 7 * 24 + 1].map((hours) => today(facts([...ammonia, read("ph", 7.4, hours)])).limits.ph.from),
    ["reading", "assumed"],
  );
});

test("the ammonia limit is the lower of EPA 2013 chronic and EIFAC", () => {
  // EPA-822-R-13-001: 1.0 mg/L at pH 7.5 and 25 °C, two figures; EIFAC's 0.025 mg/L NH3 is 0.383 mg N/L at pH 8.0, 25
  // °C.
  const at = (/** @type {number} */ ph) =>
    today(facts([read("total_ammonia", 0.1), read("nitrite", 0), read("ph", ph), read("temperature", 25)])).limits
      .total_ammonia;
  assert.deepEqual([at(7.5).by, Number(at(7.5).mg_n_l.toPrecision(2))], ["chronic", 1.0]);
  assert.equal(at(8).by, "eifac");
  near(at(8).mg_n_l, 0.383, 0.002);
});

test("ammonia above what the water limits name for that means act now", () => {
  const at = (/** @type {number} */ ph, /** @type {number} */ share) => {
    const water = [read("nitrite", 0), read("ph", ph), read("temperature", 25)];
    const value = share * today(facts(water)).limits.act_at.total_ammonia;
    return today(facts([read("total_ammonia", value, 24), read("total_ammonia", value), ...water])).state;
  };
  for (const ph of [6, 7.5, 8.5]) assert.deepEqual([at(ph, 0.95), at(ph, 1.05)], ["change today", "act now"], `${ph}`);
});

test("a settled tank is tested weekly, a young one daily; an old reading is not relied on", () => {
  const weekly = [0, 7, 14, 21].flatMap((days) => [
    read("total_ammonia", 0, days * 24 + 24),
    read("nitrite", 0, days * 24 + 24),
  ]);
  assert.deepEqual([today(facts(weekly)).next_test_hours, today(facts(weekly)).state], [168, "steady"]);
  const tests = (/** @type {number[]} */ ...days) =>
    days.flatMap((day) => [read("total_ammonia", 0, day * 24), read("nitrite", 0, day * 24)]);
  const hours = (/** @type {number[]} */ ...days) =>
    today(facts(tests(/** @type {number[]} */ ...days))).next_test_hours;
  assert.deepEqual([hours(0, 12), hours(0, 4, 9), hours(0, 4, 10)], [24, 24, 168], "three low tests over ten days");
  assert.equal(
    today(facts([...tests(0, 4, 12), read("nitrite", 0.5, 5 * 24)])).next_test_hours,
    24,
    "one that was high lies between",
  );
  const young = [read("total_ammonia", 0.1, 90), read("nitrite", 0.02, 90)];
  const advice = today(facts(young));
  assert.deepEqual([advice.act, codes(advice).filter((code) => code === "too_old").length], ["test", 2]);
});

test("a missing figure is asked for, not guessed", () => {
  const readings = [read("total_ammonia", 0.5), read("nitrite", 0), read("ph", 7.8), read("temperature", 25)];
  assert.equal(today(facts(readings, { source: null })).dose?.missing, "source");
  assert.equal(today(facts(readings, { label: null })).dose?.missing, "label");
  assert.deepEqual(today(facts(readings, { source: { id: "rain-barrel", disinfectant: "none" }, label: null })).dose, {
    needed: false,
  });
});

test("litres are rounded up to what a bucket can do, never past the most that may be changed", () => {
  assert.deepEqual(
    [
      bucket_litres(3.2, 20),
      bucket_litres(20.2, 100),
      bucket_litres(40, 100),
      bucket_litres(101, 400),
      bucket_litres(9.9, 9.7),
      bucket_litres(18.2, 36.7, "L", 18.35),
      bucket_litres(0.3, 20, "L", 0.4),
    ],
    [3.5, 21, 40, 105, 9.7, 18, 0.4],
  );
  const gallon = 3.785411784; // NIST SP 811
  near(bucket_litres(10.1, 100, "US gal"), 2.75 * gallon);
  near(bucket_litres(3.2, 20, "US gal"), gallon);
  near(bucket_litres(40, 400, "UK gal"), 9 * 4.54609);
  near(bucket_litres(40, 400, "US gal"), 11 * gallon);
  assert.deepEqual(
    [bucket_litres(10.2, 29), bucket_litres(10.2, 30), bucket_litres(101.2, 299), bucket_litres(101.2, 300)],
    [10.5, 11, 102, 105],
  );
  assert.equal(bucket_litres(99.9, 100, "US gal"), 100, "all of it, not a gallon more");
});

test("a level over its limit only by float rounding asks for no change; no change has zero litres", () => {
  const nitrite = (
    /** @type {number} */ before,
    /** @type {number} */ now,
    /** @type {number} */ hours,
    /** @type {number} */ since,
  ) =>
    today(
      facts([
        read("nitrite", before, hours + since),
        read("nitrite", now, since),
        read("total_ammonia", 0),
        read("ph", 7),
        read("temperature", 25),
      ]),
    );
  // 0.05 and a day later 0.07 mg N/L, read 12 hours ago: tomorrow 0.1, the limit, but for the last digit.
  for (const [before, now, hours, since] of [
    [0.05, 0.07, 24, 12],
    [0.03, 0.07, 48, 12],
    [0.04, 0.07, 36, 12],
    [0.055, 0.07, 12, 0],
    [0.05, 0.075, 24, 0],
  ]) {
    const { act, litres } = nitrite(before, now, hours, since);
    assert.deepEqual([act, litres], ["nothing", undefined], `${before} ${now}`);
  }
  const more = nitrite(0.05, 0.07001, 24, 12);
  assert.deepEqual([more.act, more.litres], ["change", 1]);
});

test("an impossible reading gives no advice and stops no other", () => {
  for (const value of [-5, -0.01, 10_001, 100_000]) {
    const advice = today(facts([read("total_ammonia", value), read("nitrite", value), read("nitrate", value)]));
    assert.deepEqual(
      [advice.act, Object.values(advice.levels).map((one) => one.now_mg_n_l)],
      ["test", [null, null, null]],
      String(value),
    );
  }
  const earlier = today(facts([read("nitrite", 0.4, 20), read("nitrite", -1), read("total_ammonia", 0)]));
  assert.equal(earlier.act, "change", "the last that can be one stands");
});
