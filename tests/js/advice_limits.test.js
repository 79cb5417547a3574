/** Where the advice turns: each hour, level and share from both sides. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { WATCHED, brought, freed_ammonia, last_test, level, possible } from "../../pwa/advice/level.js";
import { assumed_for, limits_at } from "../../pwa/advice/limits.js";
import {
  bucket_step,
  dose_for,
  dose_input,
  in_small_steps,
  litres_refused,
  litres_spec,
  most_at_once,
} from "../../pwa/advice/litres.js";
import { today } from "../../pwa/advice/today.js";
import { ready, headroom_by_week } from "../../pwa/advice/forecast/readiness.js";
import { next_stop, wants } from "../../pwa/advice/next_stop.js";
import { install, run } from "../../pwa/contracts.js";
import { near, some, view } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";
import { HOUR, LABEL, NOW, TAP, ago, codes, facts, read } from "./tank_facts.js";

install(shared_bundle());

/** @typedef {import("./fixtures.js").Facts} Facts */
/** @typedef {import("./tank_facts.js").Parameter} Parameter */
/** @typedef {import("./tank_facts.js").SomeFacts} SomeFacts */
/** @typedef {import("../../pwa/types/views.js").Reading} Reading */

const WATER = [read("ph", 7), read("temperature", 25)];
/** Where ammonia stands by readings so many hours ago. @param {[number, number][]} pairs @param {SomeFacts} [more] */
const ammonia = (pairs, more) =>
  level(
    "total_ammonia",
    facts(
      pairs.map(([hours, value]) => read("total_ammonia", value, hours)),
      more,
    ),
  );
/** A change of so many litres out of 100. @param {number} hours @param {number} fraction */
const change = (hours, fraction) => ({ at: ago(hours), litres: fraction * 100, fraction, source: TAP });

test("readings that fall project no further fall: the level stays as read", () => {
  const one = ammonia([
    [36, 0.5],
    [12, 0.3],
  ]);
  assert.deepEqual([one.rise_mg_n_l_day, one.now_mg_n_l, one.rise_from], [0, 0.3, "readings"]);
  const advice = today(facts([read("nitrite", 0.2, 24), read("nitrite", 0.12), read("total_ammonia", 0), ...WATER]));
  near(advice.exact_litres, 100 * (1 - 0.1 / 0.12));
});

test("a reading stands for three days, and a rise runs on from it", () => {
  assert.equal(
    ammonia([[73, 0.2]], { changes: [change(1, 0.5)] }).changed_since,
    false,
    "of a level that nobody knows",
  );
  assert.deepEqual([ammonia([[72, 0.2]]).now_mg_n_l, ammonia([[72.1, 0.2]]).now_mg_n_l], [0.2, null]);
  near(
    ammonia([
      [36, 0.1],
      [12, 0.3],
    ]).now_mg_n_l,
    0.4,
  );
});

test("an impossible reading between two others does not count for the rise", () => {
  const [first, last] = /** @type {[number, number][]} */ ([
    [48, 0.1],
    [0, 0.3],
  ]);
  assert.deepEqual(ammonia([first, [24, -5], last]), ammonia([first, last]));
});

test("a rise takes two readings at least four hours and at most two weeks apart", () => {
  near(
    ammonia([
      [14 * 24, 0],
      [0, 0.7],
    ]).rise_mg_n_l_day,
    0.05,
  );
  assert.equal(
    ammonia([
      [14 * 24 + 1, 0],
      [0, 0.7],
    ]).rise_from,
    "doubling",
  );
  near(
    ammonia([
      [4, 0.1],
      [0, 0.2],
    ]).rise_mg_n_l_day,
    0.6,
  );
  assert.equal(
    ammonia([
      [3.9, 0.1],
      [0, 0.2],
    ]).rise_from,
    "doubling",
  );
  near(
    ammonia([
      [72, 0.1],
      [36, 0.2],
      [0, 0.7],
    ]).rise_mg_n_l_day,
    0.2,
  );
  near(
    ammonia([
      [73, 0.1],
      [36, 0.2],
      [0, 0.35],
    ]).rise_mg_n_l_day,
    0.1,
  );
});

test("a single nitrate reading, or a single one of no ammonia, gives no rise", () => {
  const nitrate = level("nitrate", facts([read("nitrate", 8)]));
  assert.deepEqual([nitrate.rise_mg_n_l_day, nitrate.rise_from], [0, "nothing"]);
  const none = ammonia([[1, 0]]);
  assert.deepEqual([none.rise_mg_n_l_day, none.rise_from], [0, "nothing"]);
  assert.equal(ammonia([[1, 0.05]]).rise_from, "doubling");
});

test("a change at the very hour of the reading came before it, one at this hour counts", () => {
  const at = (/** @type {number} */ hours) => ammonia([[6, 0.4]], { changes: [change(hours, 0.5)] });
  assert.deepEqual([at(6).now_mg_n_l, at(6).changed_since], [0.4, false]);
  assert.deepEqual([at(5.9).now_mg_n_l, at(5.9).changed_since], [0.2, true]);
  assert.deepEqual([at(0).now_mg_n_l, at(0).changed_since], [0.2, true]);
  assert.equal(at(-1).changed_since, false, "planned for later");
});

test("a reading at this hour counts, a later one does not yet", () => {
  assert.deepEqual([ammonia([[0, 0.3]]).now_mg_n_l, ammonia([[-0.1, 0.3]]).reading], [0.3, null]);
});

test("a figure from zero to ten thousand is possible, no other is", () => {
  assert.deepEqual(
    [0, 10_000, -0.001, 10_001].map((value) => possible({ value })),
    [true, true, false, false],
  );
});

test("new water brings what it holds; chloramine brings ammonia unless the label binds it or is not known", () => {
  /** @type {import("../../pwa/types/advice.js").Source} */
  const source = {
    tan_mg_n_l: 0.1,
    nitrite_mg_n_l: 0.02,
    nitrate_mg_n_l: 4,
    disinfectant: "chloramine",
    disinfectant_mg_l: 1,
  };
  assert.deepEqual([brought(source, "nitrite"), brought(source, "nitrate")], [0.02, 4]);
  near(brought(source, "total_ammonia", null), 0.29756);
  near(brought(source, "total_ammonia", LABEL), 0.29756);
  assert.equal(brought(source, "total_ammonia", { ...LABEL, binds_ammonia: true }), 0.1);
  assert.equal(brought({ ...source, disinfectant_mg_l: undefined }, "total_ammonia", null), 0.1);
  for (const unknown of [view("source_water", {}), null])
    assert.deepEqual(
      WATCHED.map((name) => brought(unknown, name, null)),
      [0, 0, 0],
    );
  assert.deepEqual([freed_ammonia(null), freed_ammonia({ disinfectant: "chlorine", disinfectant_mg_l: 1 })], [0, 0]);
  assert.equal(freed_ammonia({ disinfectant: "chloramine" }), null);
});

test("the last test is the later of the two, and never where neither was made", () => {
  /** @param {{at: string} | null} first @param {{at: string} | null} second */
  const tests = (first, second) => last_test(some({ total_ammonia: { reading: first }, nitrite: { reading: second } }));
  assert.equal(tests({ at: ago(5) }, { at: ago(2) }), NOW - 2 * HOUR);
  assert.equal(tests({ at: ago(5) }, null), NOW - 5 * HOUR);
  assert.equal(tests(null, null), -Infinity);
});

test("half a limit is steady, more is watched; a limit itself needs no change, more does", () => {
  const at = (/** @type {number} */ value) =>
    today(facts([read("nitrite", value, 24), read("nitrite", value), read("total_ammonia", 0), ...WATER]));
  assert.deepEqual(
    [0.05, 0.0525].map((value) => at(value).state),
    ["steady", "watch"],
  );
  assert.deepEqual(
    [0.1, 0.105].map((value) => at(value).act),
    ["nothing", "change"],
  );
  assert.deepEqual(
    [0.05, 0.1, 0.105].map((value) => codes(at(value))[0]),
    ["under", "under", "over"],
  );
});

test("nitrite at 0.3 mg N/L can wait for the evening, above it cannot", () => {
  const at = (/** @type {number} */ value) =>
    today(facts([read("nitrite", value, 24), read("nitrite", value), read("total_ammonia", 0), ...WATER]));
  assert.deepEqual(
    [0.3, 0.31].map((value) => at(value).state),
    ["change today", "act now"],
  );
  assert.equal(at(0.3).by, NOW, "over its limit already");
  const rising = today(facts([read("nitrite", 0.02, 24), read("nitrite", 0.08), read("total_ammonia", 0), ...WATER]));
  near(rising.by, NOW + 8 * HOUR);
  assert.deepEqual([codes(rising)[0], codes(rising)[1]], ["will_pass", "rise_known"]);
});

test("ammonia's limit to act on tonight is that of the water limits, nitrate has none", () => {
  const limits = limits_at(facts([read("ph", 8), read("temperature", 25)]));
  near(limits.act_at.total_ammonia, 2 * limits.total_ammonia.mg_n_l);
  const neutral = limits_at(facts([read("ph", 7), read("temperature", 25)]));
  near(neutral.act_at.total_ammonia, run("water_limits", { ph: 7, temperature_c: 25 }).tan_act_mg_n_l);
  assert.ok(neutral.act_at.total_ammonia > 5 * neutral.total_ammonia.mg_n_l);
  assert.deepEqual([limits.act_at.nitrite, limits.act_at.nitrate], [0.3, Infinity]);
});

test("nitrite is limited by the source water's chloride, as by 8 to 10 mg/L where it is not recorded", () => {
  const nitrite = (/** @type {Facts["source"]} */ source) => {
    const { nitrite: keep, act_at } = limits_at(facts(WATER, { source }));
    return [keep.mg_n_l, act_at.nitrite];
  };
  assert.deepEqual(nitrite({ ...TAP, chloride_mg_l: 2 }), [0.02, 0.06]);
  assert.deepEqual(nitrite({ ...TAP, chloride_mg_l: 0 }), [0.02, 0.06]);
  assert.deepEqual(nitrite({ ...TAP, chloride_mg_l: 30 }), [0.2, 0.6]);
  assert.deepEqual(
    [nitrite(TAP), nitrite(null)],
    [
      [0.1, 0.3],
      [0.1, 0.3],
    ],
  );
});

test("pH and temperature stand from the least to the most that the limits take", () => {
  const { inputs } = shared_bundle().calc.water_limits;
  for (const [parameter, field] of /** @type {const} */ ([
    ["ph", "ph"],
    ["temperature", "temperature_c"],
  ])) {
    const spec = inputs.find(({ name }) => name === field);
    assert.ok(spec?.type === "number");
    const { min, max } = spec;
    for (const value of [min, max]) {
      assert.equal(limits_at(facts([read(parameter, value)]))[field].from, "reading", `${parameter} ${value}`);
      assert.equal(limits_at(facts([], { tank: { water_l: 100, [field]: value } }))[field].from, "usual");
    }
    for (const value of [min - 0.1, max + 0.1]) {
      assert.equal(limits_at(facts([read(parameter, value)]))[field].from, "assumed", `${parameter} ${value}`);
      assert.equal(limits_at(facts([], { tank: { water_l: 100, [field]: value } }))[field].from, "assumed");
    }
  }
  const { ph, temperature_c } = limits_at(facts([]));
  assert.deepEqual([ph.value, temperature_c.value], [8, 26]);
});

test("assumptions are said only of ammonia", () => {
  const limits = limits_at(facts([read("ph", 7)], { tank: { water_l: 100, temperature_c: 24 } }));
  assert.deepEqual(assumed_for(limits, "total_ammonia"), [{ code: "usual_temperature_c", value: 24 }]);
  assert.deepEqual([assumed_for(limits, "nitrite"), assumed_for(limits, undefined)], [[], []]);
});

test("half the water is one change, more than half is said to be not enough", () => {
  const at = (/** @type {number} */ value) =>
    today(facts([read("nitrite", value, 24), read("nitrite", value), read("total_ammonia", 0), ...WATER]));
  const half = at(0.2);
  assert.deepEqual([half.again, half.litres, half.next_test_hours], [false, 50, 24]);
  const more = at(0.21);
  assert.deepEqual([more.again, more.litres, more.next_test_hours], [true, 50, 12]);
});

test("no change holds a rise as large as the margin that the new water leaves", () => {
  const source = { ...TAP, nitrite_mg_n_l: 0.04 };
  const at = (/** @type {number} */ before, /** @type {number} */ now) =>
    today(facts([read("nitrite", before, 24), read("nitrite", now), read("total_ammonia", 0), ...WATER], { source }));
  assert.deepEqual([at(0, 0.065).again, at(0.005, 0.055).again], [true, false]);
});

test("a change that was enough is watched: until twelve hours after it, or at once when that is past", () => {
  const at = (/** @type {number} */ hours, /** @type {number} */ fraction) =>
    today(
      facts(
        [read("nitrite", 0.04, hours + 30), read("nitrite", 0.12, hours + 6), read("total_ammonia", 0, 1), ...WATER],
        {
          changes: [change(hours, fraction)],
        },
      ),
    );
  const soon = at(2, 0.9);
  assert.deepEqual([soon.act, soon.state, soon.by], ["confirm", "watch", NOW + 10 * HOUR]);
  near(at(2, 0.5).by, NOW + 4 * HOUR);
  assert.deepEqual([at(14, 0.9).act, at(12, 0.8).act], ["test", "test"]);
});

test("a tank is settled by three low tests of both; one over a quarter of the limit restarts the count", () => {
  const tests = (/** @type {number} */ nitrite, days = [0, 5, 10]) =>
    days.flatMap((day) => [read("total_ammonia", 0, day * 24), read("nitrite", nitrite, day * 24)]);
  const hours = (/** @type {Reading[]} */ readings) => today(facts([...readings, ...WATER])).usual_test_hours;
  assert.deepEqual([hours(tests(0.025)), hours(tests(0.026))], [168, 24]);
  assert.deepEqual([hours(tests(0, [0, 5, 60])), hours(tests(0, [0, 5, 61]))], [168, 24]);
  assert.equal(hours([0, 5, 10].map((day) => read("nitrite", 0, day * 24))), 24, "of both");
});

test("nitrate is judged by a reading of the last eight days, ammonia of a settled tank too", () => {
  const nitrate = (/** @type {number} */ hours) =>
    today(facts([read("nitrate", 8, hours), ...WATER])).levels.nitrate.now_mg_n_l;
  assert.deepEqual([nitrate(192), nitrate(193)], [8, null]);
  const old = [6, 11, 17].flatMap((day) => [read("total_ammonia", 0, day * 24), read("nitrite", 0, day * 24)]);
  assert.equal(today(facts(old)).levels.nitrite.now_mg_n_l, 0);
});

test("the steps of a bucket turn at 30 and at 300 litres of tank", () => {
  assert.deepEqual(
    [29.9, 30, 299, 300].map((water_l) => bucket_step(water_l)),
    [0.5, 1, 1, 5],
  );
  near(bucket_step(29.9, "US gal"), 0.946352946);
  near(bucket_step(29.9, "UK gal"), 1.1365225);
  near(bucket_step(30, "UK gal"), 1.1365225);
  near(bucket_step(30, "US gal"), 0.946352946);
  near(bucket_step(300, "US gal"), 3.785411784);
  near(bucket_step(300, "UK gal"), 4.54609);
});

test("a change may take all of the tank and no more", () => {
  const tank = { water_l: 90 };
  assert.equal(litres_refused(tank, 90), null);
  assert.equal(litres_refused(tank, 90.1)?.field, "change_l");
  assert.deepEqual([litres_spec(tank, "Water").max, litres_spec(tank, "Water").label], [90, "Water"]);
});

test("the question to the dechlorinator names the disinfectant only where its strength is known", () => {
  const asked = (/** @type {import("../../pwa/types/advice.js").Source | null} */ source) =>
    dose_input({ water_l: 90 }, source, LABEL, 30);
  const plain = { change_l: 30, tank_l: 90, basis: "new_water", label_ml: 2, label_per_l: 10 };
  assert.deepEqual(asked(null), plain);
  assert.deepEqual(asked(TAP), plain);
  assert.deepEqual(asked({ disinfectant: "none", disinfectant_mg_l: 1 }), plain);
  assert.deepEqual(asked({ ...TAP, disinfectant_mg_l: 0.5 }), {
    ...plain,
    disinfectant: "chlorine",
    disinfectant_mg_l: 0.5,
  });
  const dose = dose_for({ tank: { water_l: 90 }, source: TAP, label: LABEL }, 30);
  assert.deepEqual([dose.needed, dose.amount, dose.unit], [true, 6, "ml"]);
});

test("the round: what was tested or changed three hours ago is asked for again, sooner is not", () => {
  /**
   * @param {import("../../pwa/types/advice.js").Advice["act"]} act
   * @param {number | null} tested hours ago @param {number | null} changed hours ago @param {boolean} [test_due]
   */
  const at = (act, tested, changed, test_due = false) => {
    const readings = tested === null ? [] : [read("nitrite", 0, tested)];
    const changes = changed === null ? [] : [change(changed, 0.3)];
    return wants({ act, test_due, findings: [] }, 0, facts(readings, { changes }));
  };
  assert.deepEqual([at("test", 3, null), at("test", 3.1, null), at("test", null, null)], [false, true, true]);
  assert.deepEqual([at("test", 9, 3), at("test", 9, 3.1)], [false, true]);
  assert.deepEqual([at("nothing", 9, 9, true), at("nothing", 9, 9), at("confirm", 9, 9)], [true, false, false]);
  assert.deepEqual([at("change", 9, 3), at("change", 9, 3.1), at("change", 2, 2.5)], [false, true, true]);
  assert.deepEqual([at("change", 2, 2), at("change", null, 2), at("change", 2, null)], [false, false, true]);
  assert.equal(at("retest", 0, 0), true);
  assert.equal(
    wants({ act: "nothing", test_due: false, findings: [] }, 1, { now: NOW, readings: [], changes: [] }),
    true,
  );
});

test("ready: each end of the band before, at and after this hour", () => {
  /** @param {number} p10 @param {number | null} p50 @param {number | null} p90 */
  const of = (p10, p50, p90) => ready({ p10, p50, p90 }, 100, NOW);
  /** @param {ReturnType<typeof ready>} ready */
  const hours = ({ code, from, likely, to }) => [code, ...[from, likely, to].map((at) => at && (at - NOW) / HOUR)];
  assert.deepEqual(hours(of(101, 150, 200)), ["between", 101, 150, 200]);
  assert.deepEqual(hours(of(100, 150, 200)), ["soon", undefined, 150, 200]);
  assert.deepEqual(hours(of(90, 101, 200)), ["soon", undefined, 101, 200]);
  assert.deepEqual(hours(of(90, 100, 200)), ["likely", undefined, undefined, 200]);
  assert.deepEqual(hours(of(90, 95, 101)), ["likely", undefined, undefined, 101]);
  assert.deepEqual(hours(of(90, 95, 100)), ["now", undefined, undefined, undefined]);
  assert.deepEqual(hours(of(90, 101, null)), ["even", undefined, 101, undefined]);
  assert.deepEqual(hours(of(90, 100, null)), ["even_now", undefined, undefined, undefined]);
  assert.deepEqual(hours(of(101, null, null)), ["not_before", 101, undefined, undefined]);
  assert.deepEqual(hours(of(100, null, null)), ["not_in_sight", undefined, undefined, undefined]);
  assert.equal(ready(null, 100, NOW).code, "not_in_sight");
  assert.deepEqual(
    [ready({ p10: 101 }, 100, NOW).code, ready({ p10: 90, p50: 101 }, 100, NOW).code],
    ["not_before", "even"],
  );
});

test("room for fish is what the food beyond today's feeds, never less than none", () => {
  const headroom = run("stock_headroom", {
    tank: { volume_l: 90, temperature_c: 24, ph: 7.4, planting: "light", seeded: "mature_media", feed_g_day: 0.1 },
    now_h: 30,
    readings: [
      { at_h: 24, parameter: "total_ammonia", value: 0 },
      { at_h: 24, parameter: "nitrite", value: 0 },
    ],
  });
  const found = headroom_by_week(headroom);
  assert.deepEqual(
    found.map(({ days }) => days),
    [0, 7, 14],
  );
  const share = shared_bundle().tables.constants.groups.belief_prior.values.feed_of_fish.value;
  near(found[2].more_fish_g.p90, (headroom.feed_g_day_in_14_days.p90 - headroom.feed_g_day_expected) / share);
  near(found[0].more_fish_g.p90, Math.max(0, (headroom.feed_g_day_now.p90 - headroom.feed_g_day_expected) / share));
  assert.ok(headroom.feed_g_day_now.p10 < headroom.feed_g_day_expected);
  assert.ok(headroom.feed_g_day_now.p90 > headroom.feed_g_day_expected);
  assert.equal(found[0].more_fish_g.p10, 0);
});

test("the change is not said to bring a level over its limit that is over it already", () => {
  const both = [read("nitrite", 0.5, 24), read("nitrite", 0.5), read("total_ammonia", 3, 24), read("total_ammonia", 3)];
  const advice = today(facts([...both, ...WATER]));
  assert.deepEqual([advice.act, advice.again, codes(advice).includes("brings_over")], ["change", true, false]);
});

test("where the change brings ammonia over its limit, the pH that was assumed for that is said", () => {
  const source = { ...TAP, disinfectant: /** @type {const} */ ("chloramine"), disinfectant_mg_l: 8 };
  const assumed = (/** @type {Reading[]} */ readings) =>
    codes(today(facts(readings, { source }))).filter((code) => /brings|assumed/.test(code));
  const said = ["brings_over", "assumed_ph", "assumed_temperature_c"];
  const clean = read("total_ammonia", 0);
  assert.deepEqual(assumed([clean, read("nitrite", 0), read("nitrate", 19, 24), read("nitrate", 19)]), said);
  assert.deepEqual(assumed([clean, read("nitrite", 0.3, 24), read("nitrite", 0.3)]), said);
});

test("one poison over its limit makes the change urgent, whatever the other does", () => {
  const nitrite = [read("nitrite", 0.02, 24), read("nitrite", 0.08)];
  const at = (/** @type {number} */ ammonia) =>
    today(facts([...nitrite, read("total_ammonia", ammonia, 24), read("total_ammonia", ammonia), ...WATER])).by;
  const limit = limits_at(facts(WATER)).total_ammonia.mg_n_l;
  near(at(0), NOW + 8 * HOUR);
  assert.equal(at(1.1 * limit), NOW);
});

test("only of nitrate it is said that no rise is known", () => {
  const said = (/** @type {Parameter} */ parameter, /** @type {number} */ value) =>
    codes(today(facts([read(parameter, value), ...WATER]))).filter((code) => code.startsWith("rise_"));
  assert.deepEqual(
    [said("nitrate", 5), said("nitrite", 0.02), said("nitrite", 0)],
    [["rise_unknown"], ["rise_doubling"], []],
  );
});

test("the round goes on with the next tank and starts over after the last; to none where none wants anything", () => {
  const tanks = ["a", "b", "c"].map((id) => ({ id }));
  /** @param {string} id @param {string[]} wanting */
  const next = (id, ...wanting) => next_stop(tanks, id, (tank) => wanting.includes(tank.id));
  assert.deepEqual([next("a", "b", "c")?.id, next("b", "a")?.id, next("c", "b")?.id], ["b", "a", "b"]);
  assert.deepEqual([next("a"), next("a", "a", "b"), next("x", "b")], [null, null, null]);
});

test("a tank whose pH nobody knows is nearest to its new water, where that is known", () => {
  const limits = (/** @type {number | undefined} */ ph, more = {}) =>
    limits_at(facts([], { source: { ...TAP, ph }, ...more })).ph;
  assert.deepEqual(limits(7.6), { value: 7.6, from: "source" });
  assert.deepEqual(limits(undefined), { value: 8, from: "assumed" });
  assert.deepEqual(limits(11), { value: 8, from: "assumed" });
  assert.deepEqual(limits(7.6, { tank: { id: "tank-one-1", water_l: 100, ph: 6.8 } }), { value: 6.8, from: "usual" });
  const said = today(facts([read("total_ammonia", 0), read("nitrite", 0)], { source: { ...TAP, ph: 7.6 } }));
  assert.deepEqual(
    codes(said).filter((code) => code.endsWith("_ph")),
    ["source_ph"],
  );
});

test("with new water that brings ammonia a change is at most a quarter, unless ammonia cannot wait", () => {
  const limit = run("water_limits", { ph: 7, temperature_c: 25 });
  const of = (/** @type {number} */ brings, /** @type {number | null} */ stands, label = LABEL) => {
    const source = { ...TAP, tan_mg_n_l: brings };
    const known = facts([...(stands === null ? [] : [read("total_ammonia", stands)]), read("nitrite", 0.5), ...WATER]);
    return in_small_steps({ source, label }, today({ ...known, source }));
  };
  const quarter = limit.tan_mg_n_l / 4;
  assert.deepEqual([of(quarter, 0), of(quarter + 0.001, 0), of(quarter + 0.001, null)], [false, true, false]);
  assert.deepEqual([of(1, limit.tan_act_mg_n_l), of(1, limit.tan_act_mg_n_l + 0.001)], [true, false]);
  const most = (how = {}) => most_at_once(facts([]), how);
  assert.deepEqual([most({ in_small_steps: true }), most(), most({ unhurried: true })], [25, 50, (1 / 3) * 100]);
});

test("the fish can still swim above the bed after a change", () => {
  // 100 x 50 cm of surface, 20 cm deep, 5 cm of bed with 40 % of pores: 70 L above and 10 L in it, 80 L of water.
  const measures = /** @type {const} */ ({
    shape: "cuboid",
    measures: "inside",
    length_cm: 100,
    width_cm: 50,
    height_cm: 25,
    fill_height_cm: 19,
    substrate_l: 25,
    substrate_porosity: 0.4,
  });
  const most = (/** @type {number} */ water_l, length_cm = 3) =>
    most_at_once(
      facts([], {
        tank: { id: "tank-flat", water_l, measures },
        stock: [{ id: "a", change: "arrival", at: ago(5), species: "x", count: 1, length_cm }],
      }),
    );
  assert.equal(most(80), 40, "six centimetres, 30 L, stay");
  assert.equal(most(60), 20, "half would leave four centimetres");
  assert.equal(most(80, 9), 25, "a longer fish needs its own length");
  assert.equal(most(39), 19.5, "a tank as flat as that says nothing");
});
