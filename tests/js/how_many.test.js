/** How many more animals: one answer, the least of five limits, and no invitation while anything is open. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { fits_in_days, how_many, open_of, unsuited } from "../../pwa/advice/life/how_many.js";
import { fitting, tank_figures } from "../../pwa/bench/tank_figures.js";
import { contracts, install, run } from "../../pwa/contracts.js";
import { as_facts, some, there, view } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());

const NOW = Date.parse("2026-06-01T12:00:00.000Z");
const DAY = 86_400_000;
const at = (/** @type {number} */ days) => new Date(NOW - days * DAY).toISOString();
const EMBER = "Hyphessobrycon amandae";
const HARLEQUIN = "Trigonostigma heteromorpha";
const SNAIL = "Planorbella duryi";
const TANK = {
  water_l: 96,
  surface_cm2: 2400,
  inside_length_cm: 80,
  temperature_c: 25,
  filter: "internal",
  planting: "medium",
};
/** @typedef {import("../../pwa/advice/life/how_many.js").Asking} Asking */
/** @param {Partial<Asking>} [asking] */
const answer_to = ({ figures = TANK, present = [], wanted = [], own = [], ...more } = {}) =>
  how_many({ figures, present, wanted, own, ...more });
/** The answer where no figure is missing. @param {Partial<Asking>} [asking] */
function told_of(asking) {
  const told = there(answer_to(asking));
  assert.ok(told.missing === undefined, String(told.missing));
  return told;
}
const lives = (/** @type {string} */ species, /** @type {number} */ count) => ({ species, count });
/**
 * Headroom that leaves so many grams of fish by the low end, now, in a week and in two.
 * @param {number[]} grams
 * @returns {NonNullable<Asking["headroom"]>}
 */
const headroom = (...grams) => {
  const share = 0.012;
  const [now, week, weeks] = grams.map((one) => ({ p10: one * share, p50: one * share, p90: one * share }));
  return some({
    feed_g_day_now: now,
    feed_g_day_in_7_days: week ?? now,
    feed_g_day_in_14_days: weeks ?? week ?? now,
    feed_g_day_expected: 0,
  });
};

test("each limit binds in turn, and the kind says which", () => {
  const of = (/** @type {Partial<Asking>} */ asking, species = HARLEQUIN) => {
    const kind = there(told_of(asking).kinds.find((one) => one.species === species));
    return [kind.more, kind.by];
  };
  const present = [lives(HARLEQUIN, 10)];
  assert.deepEqual(of({ present }), [7, "room"]);
  assert.deepEqual(of({ present, headroom: headroom(2) }), [2, "nitrogen"], "2 g of fish of 0.86 g each");
  assert.deepEqual(of({ present, headroom: headroom(0) }), [0, "nitrogen"]);
  const still = { ...TANK, filter: "none", planting: "light", temperature_c: 27 };
  assert.equal(of({ present: [lives(SNAIL, 5)], figures: still }, SNAIL)[1], "oxygen");
  assert.deepEqual(of({ present: [lives("Ancistrus cirrhosus", 1)] }, "Ancistrus cirrhosus"), [0, "company"]);
  assert.deepEqual(of({ present, figures: { ...TANK, ph: 8.2 } }), [0, "water"]);
  assert.deepEqual(
    of({ present, figures: { ...TANK, source_gh_dgh: 20 } }),
    [0, "water"],
    "the tap's water counts too",
  );
  assert.deepEqual(
    of(
      {
        present: [lives(EMBER, 10)],
        wanted: [lives("Pterophyllum scalare", 2)],
        figures: { ...TANK, inside_length_cm: 100 },
      },
      EMBER,
    ),
    [0, "company"],
    "no more prey where a hunter is wanted",
  );
});

test("the sum's own nitrogen counts beside the forecast's, and one kind that may come is enough to invite", () => {
  const present = [lives(HARLEQUIN, 8)];
  const poor = told_of({
    present,
    figures: { ...TANK, planting: "none", capacity_mg_n_day: 4 },
    headroom: headroom(50),
  });
  assert.deepEqual([poor.kinds[0].by, poor.kinds[0].more], ["nitrogen", 2], "4 / 0.46368 g less those that are in it");
  const two = told_of({
    present: [lives(HARLEQUIN, 10), lives("Ancistrus cirrhosus", 1)],
    figures: { ...TANK, surface_cm2: 4000 },
  });
  assert.deepEqual([two.kinds.map(({ more }) => there(more) > 0), two.invites], [[true, false], true]);
  assert.equal(answer_to({ present: [lives(SNAIL, 0)] }), null, "what is gone does not live here");
  const over = told_of({ present: [lives(HARLEQUIN, 20), lives(SNAIL, 3)] });
  assert.deepEqual(
    over.kinds.map(({ by }) => by),
    ["room", "room"],
  );
});

test("of a new kind a whole group may come, or none; a planned fish counts as grown", () => {
  const wanted = [{ species: HARLEQUIN, count: 8, length_cm: 1.5 }];
  const kind = (/** @type {Partial<Asking>} */ asking = {}) => told_of({ wanted, ...asking }).kinds[0];
  assert.deepEqual([kind().more, kind().come], [17, 8]);
  assert.deepEqual(
    [kind({ headroom: headroom(6.8) }).come, kind({ headroom: headroom(6.9) }).come],
    [0, 8],
    "eight of 0.86 g, or none",
  );
  assert.equal(kind({ present: [lives(HARLEQUIN, 10)] }).come, 7, "a group that is there may be filled up");
});

test("a tank over its limit, or one that nobody can judge, invites no animals", () => {
  const over = told_of({ present: [lives(HARLEQUIN, 20), lives(SNAIL, 3)] });
  assert.deepEqual([over.over, over.invites, over.kinds.map(({ more }) => more)], [true, false, [0, 0]]);
  const lidded = { ...TANK, water_l: 45, surface_cm2: 1350, inside_length_cm: 45, planting: "dense", filter: "none" };
  const unsure = told_of({ figures: lidded, present: [lives(EMBER, 10)] });
  assert.deepEqual(
    [unsure.kinds[0].more, unsure.kinds[0].by, unsure.limit_g, unsure.invites, unsure.open.map(({ code }) => code)],
    [null, "cannot_tell", null, false, ["look_at_dawn"]],
  );
  const measured = told_of({ figures: { ...lidded, dawn_oxygen_mg_l: 6 }, present: [lives(EMBER, 10)] });
  assert.deepEqual([measured.invites, measured.open], [true, []], "oxygen read at dawn settles it");
});

test("a young tank is told apart from one that is full for good, and who finds it too short is named", () => {
  const figures = { ...TANK, maturity: "new", plants_age_days: 3 };
  const young = told_of({ figures, present: [lives(HARLEQUIN, 10)] });
  assert.deepEqual([young.over, young.young, young.binds], [true, true, "nitrogen"]);
  const full = told_of({ figures: { ...TANK, maturity: "mature" }, present: [lives(HARLEQUIN, 20)] });
  assert.deepEqual([full.over, full.young, full.too_long], [true, false, []]);
  const crowded = told_of({ figures: { ...figures, capacity_mg_n_day: 500 }, present: [lives(HARLEQUIN, 20)] });
  assert.deepEqual([crowded.binds, crowded.young], ["room", false]);
  const long = told_of({
    present: [lives(HARLEQUIN, 8), lives("Devario aequipinnatus", 6)],
    figures: { ...TANK, inside_length_cm: 59 },
  });
  assert.deepEqual(long.too_long, ["giant danio"]);
});

test("no animals are invited where the water or the company harms those that live there", () => {
  const codes = (/** @type {Partial<Asking>} */ asking) => told_of(asking).open.map(({ code }) => code);
  const hot = told_of({ present: [lives(HARLEQUIN, 5)], figures: { ...TANK, temperature_c: 33 } });
  assert.deepEqual([hot.open.map(({ code }) => code), hot.invites], [["water"], false]);
  const hunter = [lives("Pterophyllum scalare", 1), lives(EMBER, 10)];
  assert.deepEqual(codes({ present: hunter }), ["company"]);
  assert.deepEqual(
    codes({ present: [lives(EMBER, 10)], wanted: [hunter[0]] }),
    [],
    "what is only wanted harms nobody yet",
  );
});

test("whether all that are wanted fit: by every limit", () => {
  const whole = (/** @type {Partial<Asking>} */ asking) => {
    const { fits, by, count } = there(told_of(asking).whole);
    return [fits, by, count];
  };
  const wanted = [lives(HARLEQUIN, 10), lives("Corydoras panda", 6)];
  const large = { ...TANK, surface_cm2: 4000, water_l: 160, inside_length_cm: 100, temperature_c: 24 };
  assert.deepEqual(whole({ wanted, figures: large }), [true, "room", 16]);
  assert.deepEqual(whole({ wanted }), [true, "room", 16], "2250 of 2400 cm²");
  assert.deepEqual(whole({ wanted, present: [lives(EMBER, 10)] }), [false, "room", 16]);
  assert.deepEqual(whole({ wanted, figures: large, headroom: headroom(10) })[0], false);
  assert.deepEqual(whole({ wanted, figures: large, headroom: headroom(10) })[1], "nitrogen");
  assert.deepEqual(whole({ wanted, figures: { ...large, source_ph: 8.2 } }), [false, "water", 16]);
  assert.deepEqual(whole({ wanted: [lives("Ancistrus cirrhosus", 2)], figures: large }), [false, "company", 2]);
  assert.equal(told_of({ present: [lives(EMBER, 10)] }).whole, null);
  assert.deepEqual(
    [fits_in_days(5, headroom(1, 5, 9)), fits_in_days(6, headroom(1, 5, 9)), fits_in_days(9.5, headroom(1, 5, 9))],
    [7, 14, null],
  );
});

test("the forecast's headroom lowers the grams, never raises them", () => {
  const present = [lives(HARLEQUIN, 10)];
  const free = told_of({ present });
  const tight = told_of({ present, headroom: headroom(3) });
  const wide = told_of({ present, headroom: headroom(300) });
  assert.deepEqual([free.binds, tight.binds, wide.binds], ["room", "nitrogen", "room"]);
  assert.ok(Math.abs(there(tight.limit_g) - tight.present_g - 3) < 1e-9);
  assert.equal(wide.limit_g, free.limit_g);
});

/** @typedef {import("../../pwa/types/advice.js").Quick} Quick */
/** @typedef {import("./fixtures.js").View<"reading">} Reading */
const steady = { state: "steady", findings: [] };
const reading = (/** @type {Quick} */ parameter, /** @type {number} */ days, value = 0) =>
  view("reading", { tank: "t", at: at(days), parameter, value, basis: "n" });
const asked_of = (more = {}) =>
  some({
    advice: steady,
    facts: { now: NOW, readings: [reading("total_ammonia", 2), reading("nitrite", 2.9)] },
    forecast: { state: "ready", answers: { headroom: headroom(9) } },
    ...more,
  });

test("open: anything found, tests older than three days or none, a forecast still on its way", () => {
  const codes = (more = {}) => open_of(asked_of(more)).map(({ code }) => code);
  assert.deepEqual(codes(), []);
  for (const state of ["watch", "change today", "act now"])
    assert.deepEqual(codes({ advice: { state, findings: [{ code: "water" }] } }), ["state"]);
  const read = (/** @type {Reading[]} */ ...readings) => ({ facts: { now: NOW, readings } });
  assert.deepEqual(open_of(asked_of(read())), [{ code: "untested", parameters: ["total_ammonia", "nitrite"] }]);
  assert.deepEqual(open_of(asked_of(read(reading("total_ammonia", 3.1), reading("nitrite", 1)))), [
    { code: "untested", parameters: ["total_ammonia"] },
  ]);
  assert.deepEqual(
    codes(read(reading("total_ammonia", 3), reading("nitrite", 3))),
    [],
    "three days to the hour still do",
  );
  assert.deepEqual(
    codes(read(reading("total_ammonia", 1), reading("nitrite", 9), reading("nitrite", 1))),
    [],
    "the last one counts",
  );
  assert.deepEqual(codes({ forecast: { state: "working", answers: {} } }), ["working"]);
  assert.deepEqual(
    codes({ forecast: { state: "failed", answers: {} } }),
    [],
    "without a forecast the sum stands alone",
  );
});

test("while anything is open nothing is invited, whatever the tank carries", () => {
  const present = [lives(HARLEQUIN, 10)];
  assert.equal(told_of({ present }).invites, true);
  for (const one of /** @type {const} */ ([
    { code: "not_filled" },
    { code: "working" },
    { code: "state", state: "watch" },
  ]))
    assert.equal(told_of({ present, open: [one] }).invites, false, one.code);
});

test("a tank of which a figure is lacking says which; animals of no known length are named", () => {
  const { temperature_c: _, ...cold } = TANK;
  assert.deepEqual(answer_to({ figures: cold, present: [lives(HARLEQUIN, 10)] }), {
    missing: ["Water temperature"],
    left_out: [],
  });
  assert.equal(answer_to({ present: [lives("stray", 2)] }), null);
  assert.deepEqual(told_of({ present: [lives(HARLEQUIN, 10), lives("stray", 2)] }).left_out, ["stray"]);
  assert.deepEqual(
    told_of({ figures: { ...TANK, planting: "a newer word", altitude_m: 1e9 }, present: [lives(HARLEQUIN, 10)] })
      .kinds[0].more,
    7,
    "what a field does not take counts as not known",
  );
});

test("before it is chosen a kind is compared with the tank's water and the tap's", () => {
  const kinds = (/** @type {Asking["figures"]} */ figures) => unsuited(figures, EMBER, []).map(({ kind }) => kind);
  assert.deepEqual(kinds({ ...TANK, source_ph: 7.6, source_gh_dgh: 14 }), ["source_ph", "source_hardness"]);
  assert.deepEqual(kinds({ ...TANK, temperature_c: 20 }), ["tank_temperature"]);
  assert.deepEqual(kinds(TANK), []);
  assert.deepEqual(unsuited(TANK, "stray", []), []);
});

/**
 * A filled tank's facts.
 * @param {[string, number][]} stock kinds with how many arrived @param {Reading[]} [readings]
 */
const facts_with = (stock, readings = []) =>
  as_facts({
    now: NOW,
    tank: {
      id: "t",
      water_l: 96,
      temperature_c: 25,
      planting: "medium",
      filter: "internal",
      started_at: at(200),
      measures: { shape: "cuboid", measures: "inside", length_cm: 80, width_cm: 30, height_cm: 45 },
    },
    readings,
    changes: [],
    doses: [],
    feedings: [],
    stock: stock.map(([species, count], i) =>
      view("stock_change", { id: `c${i}`, tank: "t", at: at(100 - i), change: "arrival", species, count }),
    ),
    own_species: [],
    source: { disinfectant: "none", ph: 7.2, gh_dgh: 8 },
    label: null,
  });

test("the Bench's forms, the calculations and the tank's page give one answer for one tank", () => {
  for (const stock of /** @type {[string, number][][]} */ ([
    [[HARLEQUIN, 10]],
    [
      [HARLEQUIN, 8],
      ["Corydoras panda", 6],
      [SNAIL, 4],
    ],
    [["Ancistrus cirrhosus", 1]],
    [[HARLEQUIN, 30]],
  ])) {
    const figures = tank_figures(facts_with(stock));
    const told = told_of({ figures, present: stock.map(([species, count]) => lives(species, count)) });
    const limit = run("stocking_limit", some(fitting(contracts().stocking_limit.inputs, figures)));
    const company = run("compatibility", some(fitting(contracts().compatibility.inputs, figures)));
    assert.deepEqual(told.stocking.answer, limit);
    assert.deepEqual(told.company.answer, company);
    const barred = company.findings.some(({ severity }) => severity === "bar");
    if (!barred)
      assert.deepEqual(
        told.kinds.map(({ more }) => more),
        limit.more.map(({ more }) => more),
      );
  }
});

test("a plan counted as living animals is over its limit exactly where it does not fit", () => {
  for (const count of [4, 8, 12, 16, 20, 40])
    for (const [species, other] of [
      [HARLEQUIN, EMBER],
      ["Corydoras panda", HARLEQUIN],
    ]) {
      const wanted = [lives(species, count), lives(other, 10)];
      const plan = told_of({ wanted });
      const lived = told_of({ present: wanted });
      assert.equal(there(plan.whole).fits, !lived.over && !lived.open.length, `${count} ${species}`);
    }
});

test("no tank over its limit invites animals, and doubling the animals never lowers the findings", () => {
  const rank = { together: 0, with_care: 1, not_together: 2 };
  const kinds = [
    HARLEQUIN,
    EMBER,
    "Ancistrus cirrhosus",
    "Trichogaster chuna",
    "Corydoras panda",
    SNAIL,
    "Betta splendens",
  ];
  for (const [i, species] of kinds.entries())
    for (const count of [1, 2, 5, 9, 14]) {
      const present = [lives(species, count), lives(kinds[(i + 2) % kinds.length], 3)];
      const doubled = present.map((one) => lives(one.species, 2 * one.count));
      const [once, twice] = [told_of({ present }), told_of({ present: doubled })];
      for (const told of [once, twice])
        if (told.over || told.open.length)
          assert.ok(!told.invites && (!told.over || told.kinds.every(({ more }) => more === 0)), `${species} ${count}`);
      // Too few of a group is the only finding that more animals put right.
      /** @typedef {Pick<typeof once, "company">} Answered */
      const grave = (/** @type {Answered} */ { company }) =>
        company.answer.findings.filter(({ kind }) => kind !== "group_small");
      assert.ok(grave(twice).length >= grave(once).length, `${species} ${count}`);
      const bars = (/** @type {Answered} */ { company }) =>
        company.answer.findings.filter(({ severity }) => severity === "bar").length;
      assert.ok(bars(twice) >= bars(once));
      assert.ok(!once.over || twice.over, `${species} ${count}: over stays over`);
      if (bars(once)) assert.equal(rank[twice.company.answer.verdict], 2);
      once.kinds.forEach(({ more }, at_kind) => {
        const after = twice.kinds[at_kind].more;
        if (more !== null && after !== null) assert.ok(after <= more, `${species} ${count}: fewer more`);
      });
    }
});

test("oxygen counts as read at dawn only where it was, lately, and nobody came since", () => {
  const local = (/** @type {number} */ hour, /** @type {number} */ days) => {
    const when = new Date(NOW - days * DAY);
    when.setHours(hour, 0, 0, 0);
    return when.toISOString();
  };
  const oxygen = (/** @type {number} */ hour, /** @type {number} */ days, value = 5) =>
    view("reading", { tank: "t", at: local(hour, days), parameter: "oxygen", value });
  const read = (/** @type {Reading[]} */ ...readings) =>
    tank_figures(facts_with([[HARLEQUIN, 10]], readings)).dawn_oxygen_mg_l;
  assert.deepEqual(
    [
      read(oxygen(6, 2)),
      read(oxygen(3, 2)),
      read(oxygen(9, 2)),
      read(oxygen(6, 31)),
      read(oxygen(6, 5, 4), oxygen(20, 1, 8)),
    ],
    [5, undefined, undefined, undefined, 4],
  );
  const facts = facts_with([[HARLEQUIN, 10]], [oxygen(6, 5)]);
  const came = (/** @type {import("./fixtures.js").View<"stock_change">["change"]} */ change) => ({
    ...facts,
    stock: [...facts.stock, view("stock_change", { tank: "t", at: at(1), change, species: EMBER, count: 3 })],
  });
  assert.deepEqual(
    /** @type {const} */ (["arrival", "death", "removal", "move_out", "birth"]).map(
      (change) => tank_figures(came(change)).dawn_oxygen_mg_l,
    ),
    [undefined, 5, 5, 5, undefined],
  );
});
