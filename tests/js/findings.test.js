/** Each finding at either side of its bounds: what it takes to be found, and how urgent it is. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { findings_of, inhabited, invites, state_of } from "../../pwa/advice/findings.js";
import { as_facts, there, view } from "./fixtures.js";
import { NOW, ago, read, tank } from "./situations.js";

/** @typedef {import("./fixtures.js").Some<import("./fixtures.js").Facts>} SomeFacts */
/** @typedef {ReturnType<typeof read>} Reading */

/** @type {Parameters<typeof findings_of>[1]} */
const STEADY = { state: "steady", reasons: [] };
/** The urgency of one finding, null where it is not found. @param {string} code */
const urgency_of = (code, /** @type {Reading[]} */ readings, /** @type {SomeFacts} */ more = {}) =>
  findings_of(tank(readings, more), STEADY).find((one) => one.code === code)?.urgency ?? null;
const of_c = (/** @type {string} */ code, /** @type {number} */ celsius, hours = 1) =>
  urgency_of(code, [read("temperature", celsius, hours)]);
const of_ph = (/** @type {string} */ code, /** @type {number} */ ph, hours = 1) =>
  urgency_of(code, [read("ph", ph, hours)]);
const UNKNOWN = { stock: [] };
const NOBODY = { stock: [], tank: { ...there(tank([]).tank), feed_g_day: 0 } };
const animal = (/** @type {string} */ change, /** @type {number} */ count, /** @type {number} */ hours, more = {}) =>
  view("stock_change", {
    id: `${change}-${count}-${hours}`,
    at: ago(hours),
    change: /** @type {"death"} */ (change),
    species: "Hyphessobrycon amandae",
    count,
    ...more,
  });

test("heat: past the least range of the animals here it is watched, a degree past it is for now", () => {
  // Ember tetras: 23 to 29 °C by the table.
  assert.deepEqual(
    [of_c("hot", 29), of_c("hot", 29.1), of_c("hot", 30), of_c("hot", 30.1)],
    [null, "watch", "watch", "act now"],
  );
  assert.deepEqual(
    [of_c("cold", 23), of_c("cold", 22.9), of_c("cold", 22), of_c("cold", 21.9)],
    [null, "watch", "watch", "act now"],
  );
  assert.deepEqual([of_c("hot", 35, -1), of_c("hot", 35, -1.1)], ["act now", null], "by a clock that runs ahead");
  assert.deepEqual([of_c("hot", 35, 48), of_c("hot", 35, 48.1)], ["act now", null], "a reading of two days ago");
});

test("heat and cold of animals that nobody named, and where none live", () => {
  const hot = (/** @type {number} */ celsius, /** @type {SomeFacts} */ more) =>
    urgency_of("hot", [read("temperature", celsius)], more);
  assert.deepEqual([hot(32, UNKNOWN), hot(32.1, UNKNOWN), hot(33.1, UNKNOWN)], [null, "watch", "act now"]);
  assert.equal(hot(35, NOBODY), null);
  assert.equal(urgency_of("cold", [read("temperature", 11.9)], UNKNOWN), "watch");
});

test("pH: half a unit past the range is borne; one and a half is for today; any animal's bounds for now", () => {
  // Ember tetras: pH 5 to 7 by the table.
  assert.deepEqual(
    [of_ph("ph_high", 7.5), of_ph("ph_high", 7.6), of_ph("ph_high", 8.5), of_ph("ph_high", 8.6)],
    [null, "watch", "watch", "change today"],
  );
  assert.deepEqual(
    [of_ph("ph_high", 9.1), of_ph("ph_high", 9.5), of_ph("ph_high", 9.6)],
    ["change today", "change today", "act now"],
  );
  assert.deepEqual(
    [of_ph("ph_low", 5), of_ph("ph_low", 4.9), of_ph("ph_low", 4.5), of_ph("ph_low", 4.4)],
    [null, "change today", "change today", "act now"],
  );
  assert.equal(urgency_of("ph_low", [read("ph", 4.2)], NOBODY), "change today", "the bacteria stop too");
  assert.deepEqual([of_ph("ph_high", 9.6, 168), of_ph("ph_high", 9.6, 168.1)], ["act now", null]);
});

test("a jump of pH or temperature within a day and a half, by the widest step", () => {
  const ph = (/** @type {[number, number][]} */ ...read_at) =>
    urgency_of(
      "ph_jump",
      read_at.map(([value, hours]) => read("ph", value, hours)),
    );
  assert.deepEqual(
    [ph([6.9, 25], [7.4, 1]), ph([6.8, 25], [7.4, 1]), ph([6.4, 25], [7.4, 1]), ph([6.3, 25], [7.4, 1])],
    [null, "watch", "watch", "act now"],
  );
  assert.deepEqual([ph([6.3, 37], [7.4, 1]), ph([6.3, 37.1], [7.4, 1])], ["act now", null]);
  assert.equal(ph([6.3, 30], [7.3, 20], [7.4, 1]), "act now", "not the last step alone");
  const celsius = (/** @type {number} */ from, /** @type {number} */ to) =>
    urgency_of("temperature_jump", [read("temperature", from, 20), read("temperature", to, 1)]);
  assert.deepEqual([celsius(22, 25), celsius(22, 25.1), celsius(22, 28.1)], [null, "watch", "act now"]);
  assert.equal(urgency_of("ph_jump", [read("ph", 6, 20), read("ph", 7.4)], NOBODY), null);
  assert.equal(ph([8.6, 30], [7.6, 20], [7.4, 1]), "act now", "downwards too");
});

test("deaths of three days: one is watched, two are for now; age and a jump out of the tank do not count", () => {
  const here = animal("arrival", 12, 4000);
  const deaths = (/** @type {ReturnType<typeof animal>[]} */ ...lost) =>
    urgency_of("deaths", [], { stock: [here, ...lost] });
  assert.deepEqual(
    [deaths(), deaths(animal("death", 1, 5)), deaths(animal("death", 2, 5))],
    [null, "watch", "act now"],
  );
  assert.equal(deaths(animal("death", 1, 5), animal("death", 1, 50)), "act now", "one and one");
  assert.deepEqual([deaths(animal("death", 2, 72)), deaths(animal("death", 2, 72.1))], ["act now", null]);
  assert.equal(deaths(animal("death", 3, 5, { cause_code: "age" })), null);
  assert.equal(deaths(animal("death", 3, 5, { cause_code: "jumped" })), null);
  assert.equal(deaths(animal("removal", 3, 5)), null);
});

test("signs in notes count for a day, or until a note says that all is well", () => {
  const note = (/** @type {string} */ tile, /** @type {number} */ hours) =>
    view("note", { id: `${tile}-${hours}`, at: ago(hours), text: tile, quick: [tile] });
  const gasping = (/** @type {ReturnType<typeof note>[]} */ ...notes) => urgency_of("gasping", [], { notes });
  assert.deepEqual([gasping(note("at_surface", 24)), gasping(note("at_surface", 24.1))], ["act now", null]);
  assert.equal(gasping(note("at_surface", 5), note("well", 4)), null);
  assert.equal(gasping(note("well", 5), note("at_surface", 4)), "act now");
  assert.equal(gasping(note("cloudy", 1)), null);
  assert.deepEqual(
    [gasping(note("at_surface", -1)), gasping(note("at_surface", -1.1))],
    ["act now", null],
    "a fast clock",
  );
  assert.equal(urgency_of("gasping", [], { notes: [note("at_surface", 1)], ...NOBODY }), null);
  assert.equal(urgency_of("hiding", [], { notes: [note("hiding", 1)] }), "watch");
  assert.equal(urgency_of("hiding", [], { notes: [note("hiding", 1)], ...NOBODY }), null);
});

test("oxygen, chlorine and carbonate hardness as read", () => {
  const of = (
    /** @type {string} */ code,
    /** @type {"oxygen" | "chlorine" | "kh"} */ name,
    /** @type {number} */ value,
  ) => urgency_of(code, [read(name, value)]);
  assert.deepEqual([of("oxygen_low", "oxygen", 4), of("oxygen_low", "oxygen", 3.9)], [null, "watch"]);
  assert.deepEqual([of("oxygen_low", "oxygen", 3), of("oxygen_low", "oxygen", 2.9)], ["watch", "act now"]);
  assert.deepEqual([of("chlorine", "chlorine", 0.011), of("chlorine", "chlorine", 0.012)], [null, "act now"]);
  assert.deepEqual([of("kh_gone", "kh", 1), of("kh_gone", "kh", 1.1)], ["watch", null]);
});

test("hardness that is foreseen to be used up within five days, unless a test says so already", () => {
  const foreseen = (/** @type {number} */ count, /** @type {Reading[]} */ readings = []) =>
    findings_of(tank(readings), { state: "steady", reasons: [{ code: "kh_gone", count }] }).map(({ code }) => code);
  assert.deepEqual([foreseen(5), foreseen(6)], [["kh_ends"], []]);
  assert.deepEqual(foreseen(2, [read("kh", 0.8)]), ["kh_gone"]);
});

test("general hardness a degree past the range of the animals here, by a reading or the tank's own figure", () => {
  // Ember tetras: up to 12 °dGH by the table.
  const high = there(findings_of(tank([read("gh", 30)]), STEADY).find((one) => one.code === "hard"));
  const limit = "limit" in high ? high.limit : 0;
  const hard = (/** @type {number} */ dgh) => urgency_of("hard", [read("gh", dgh)]);
  assert.deepEqual([hard(limit + 1), hard(limit + 1.1)], [null, "watch"]);
  assert.equal(urgency_of("hard", [], { tank: { ...tank([]).tank, gh_dgh: 30 } }), "watch");
  assert.equal(
    urgency_of("soft", [read("gh", 2)], { stock: [animal("arrival", 3, 900, { species: "Poecilia reticulata" })] }),
    "watch",
  );
});

const SOURCE = there(tank([]).source);
const poured = (hours = 3, more = {}) => ({
  id: "change-one",
  at: ago(hours),
  litres: 30,
  fraction: 0.3,
  source: SOURCE,
  ...more,
});
const bottle = (amount = 3.75, more = {}) => ({
  id: "dose-one",
  at: ago(3),
  what: "Bottle",
  amount,
  unit: /** @type {const} */ ("ml"),
  for_litres: 30,
  label: there(tank([]).label),
  ...more,
});

test("a change without its dose: within a day, of water that needs one, where the tank has a label", () => {
  const undosed = (/** @type {SomeFacts} */ more) => urgency_of("undosed", [], more);
  assert.equal(undosed({ changes: [poured()] }), "act now");
  assert.deepEqual([undosed({ changes: [poured(24)] }), undosed({ changes: [poured(24.1)] })], ["act now", null]);
  assert.equal(undosed({ changes: [poured()], doses: [bottle(3.75, { at: ago(5.9) })] }), null, "dosed beforehand");
  assert.equal(
    undosed({ changes: [poured()], doses: [bottle(3.75, { at: ago(6.1) })] }),
    "act now",
    "for another water",
  );
  assert.equal(undosed({ changes: [poured()], doses: [bottle(3.75, { at: ago(0.5) })] }), null, "made good for");
  assert.equal(undosed({ changes: [poured()], label: null }), null);
  assert.equal(undosed({ changes: [poured(3, { source: { ...SOURCE, disinfectant: "none" } })] }), null);
  assert.equal(undosed({ changes: [poured(3, { from_tank: "tank-two" })] }), null);
  const found = findings_of(tank([], { changes: [poured()] }), STEADY)[0];
  assert.equal("dose" in found ? found.dose.amount : 0, 12.5, "for the whole tank");
});

test("a dose of more than twice the label's, and a change of more than half", () => {
  const over = (/** @type {number} */ amount) =>
    urgency_of("overdosed", [], { changes: [poured()], doses: [bottle(amount)] });
  assert.deepEqual([over(7.5), over(7.6)], [null, "watch"]);
  const found = findings_of(tank([], { changes: [poured()], doses: [bottle(15)] }), STEADY)[0];
  assert.equal("times" in found ? found.times : 0, 4);
  const whole = { ...there(tank([]).label), basis: /** @type {const} */ ("whole_tank") };
  assert.equal(urgency_of("overdosed", [], { doses: [bottle(25, { label: whole })] }), null, "for all 100 L");
  assert.equal(
    urgency_of("overdosed", [], { doses: [bottle(26, { for_litres: undefined })] }),
    "watch",
    "for all of it",
  );
  const large = (/** @type {number} */ fraction) =>
    urgency_of("large_change", [], { changes: [poured(3, { fraction })], doses: [bottle()] });
  assert.deepEqual([large(0.55), large(0.56)], [null, "watch"]);
  const large_at = (/** @type {number} */ hours) =>
    urgency_of("large_change", [], { changes: [poured(hours, { fraction: 0.7 })] });
  assert.deepEqual([large_at(-1), large_at(-1.1), large_at(24), large_at(24.1)], ["watch", null, "watch", null]);
  assert.equal(
    urgency_of("large_change", [], {
      changes: [poured(3, { fraction: 1 })],
      tank: { ...tank([]).tank, started_at: ago(2) },
    }),
    null,
    "the first filling",
  );
});

test("whether animals live here, by what is recorded", () => {
  const lives = (/** @type {SomeFacts} */ more) =>
    inhabited(as_facts({ now: NOW, tank: {}, stock: [], feedings: [], ...more }));
  assert.equal(lives({}), true, "nothing is known");
  assert.equal(lives({ tank: { setup_fill: { state: "done" } } }), false, "set up here, and no animal recorded");
  assert.equal(lives({ tank: { setup_fill: { state: "done" } }, feedings: [{ feed_g: 0.1 }] }), true, "but it is fed");
  assert.equal(lives({ tank: { feed_g_day: 0 } }), false);
  assert.equal(lives({ tank: { feed_g_day: 0.1 } }), true);
  assert.deepEqual([lives({ tank: { fish_g: 0 } }), lives({ tank: { fish_g: 1 } })], [false, true]);
  assert.equal(lives({ stock: [animal("arrival", 2, 100), animal("death", 2, 50)] }), false, "all died");
  assert.equal(lives({ stock: [animal("death", 2, 50)] }), true, "others were never recorded");
});

test("the worst leads, and only a tank without findings invites animals", () => {
  const found = findings_of(tank([read("gh", 30), read("temperature", 33), read("ph", 7.6)]), {
    state: "change today",
    reasons: [],
  });
  assert.deepEqual(
    found.map(({ code, urgency }) => [code, urgency]),
    [
      ["hot", "act now"],
      ["water", "change today"],
      ["ph_high", "watch"],
      ["hard", "watch"],
    ],
  );
  assert.deepEqual([state_of(found), state_of([])], ["act now", "steady"]);
  assert.deepEqual([invites({ findings: found }), invites({ findings: [] })], [false, true]);
});
