/** What the advice remembers of a tank's lists from one write to the next equals what it finds in all records anew. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { with_findings } from "../../pwa/advice/advised.js";
import { facts_of } from "../../pwa/advice/facts.js";
import { belief_input } from "../../pwa/advice/forecast/belief_input.js";
import { ask_of } from "../../pwa/advice/forecast/questions.js";
import { TESTED } from "../../pwa/advice/journal/test_order.js";
import { long_run } from "../../pwa/advice/life/long_run.js";
import { of_parameter } from "../../pwa/advice/of_parameter.js";
import { today } from "../../pwa/advice/today.js";
import { install } from "../../pwa/contracts.js";
import { HeldRecords } from "../../pwa/data/held_records.js";
import { as_facts, some, there } from "./fixtures.js";
import { seeded } from "./drawn_numbers.js";
import { shared_bundle } from "./shared_bundle.js";

install(shared_bundle());

/** @typedef {import("../../pwa/data/view.js").Folded} Folded */
/** @typedef {import("../../pwa/types/stores.js").Fields} Fields */

const NOW = Date.parse("2026-05-04T08:00:00.000Z");
const DAY = 24 * 3_600_000;
const TANKS = ["tank-0001", "tank-0002"];
const TANK = { name: "Reed", water_l: 100, source_water: "source-1", dechlorinator: "label-1" };
const LABEL = { name: "Drops", amount: 1, unit: "ml", per_l: 4, basis: "new_water" };
const CHLORAMINE = { disinfectant: "chloramine", disinfectant_mg_l: 1 };

/** A room of which records are put in one by one, and the same room made anew of all of them. */
function drawn_room() {
  const held = new HeldRecords();
  /** @type {Map<string, {kind: string, id: string, record: Folded}>} */ const all = new Map();
  let written = 0;
  /** @param {string} kind @param {string} id @param {Fields} fields @param {boolean} [gone] */
  const put = (kind, id, fields, gone = false) => {
    const stamp = `${String(++written).padStart(13, "0")}-00000-device-a`;
    const stamps = { at: all.get(id)?.record.stamps.at ?? stamp, supersedes: stamp };
    /** @type {Folded} */ const record = some({
      fields,
      stamps,
      deleted: gone ? stamp : null,
      restored: null,
      meta: {},
    });
    all.set(id, { kind, id, record });
    held.put(kind, id, record);
  };
  const anew = () => {
    const whole = new HeldRecords();
    for (const { kind, id, record } of all.values()) whole.put(kind, id, structuredClone(record));
    return whole;
  };
  return { held, all, put, anew };
}

/** @param {HeldRecords} held @param {boolean} copied lists that nothing was remembered of @param {number} now */
function answers_of(held, copied, now) {
  const as_given = (/** @type {any} */ list) => (copied ? structuredClone(list) : list);
  const room = some({
    all: (/** @type {string} */ kind) => as_given(held.shown(kind)),
    get: (/** @type {string} */ kind, /** @type {string} */ id) => as_given(held.one(kind, id)),
    of: (/** @type {string} */ kind, /** @type {string} */ id) => as_given(held.shown_of(kind, id)),
  });
  const facts = facts_of(/** @type {any} */ (room), there(/** @type {any} */ (held.one("tank", TANKS[0]))), now);
  const rule = today(facts);
  const asked = ask_of(facts, rule);
  const last = TESTED.map((parameter) =>
    copied
      ? facts.readings.findLast((one) => one.parameter === parameter)
      : of_parameter(facts.readings, parameter).at(-1),
  );
  return structuredClone({ facts, rule, asked, last, told: with_findings(facts, rule, rule), far: long_run(facts) });
}

/** One of the things that happen to a room. @param {ReturnType<typeof drawn_room>} room @param {() => number} chance */
function happen({ all, put }, chance) {
  const pick = (/** @type {any} */ list) => list[Math.floor(chance() * list.length)];
  const id = `record-${all.size}`;
  const kind = pick(["reading", "reading", "reading", "feeding", "water_change", "dose", "note", "stock_change"]);
  // Whole hours, so that some are of one moment; a few are years old, or lie in the future.
  const ago = chance() < 0.2 ? 3000 * DAY * chance() : chance() < 0.1 ? -2 * DAY * chance() : 20 * DAY * chance();
  const at = new Date(NOW - Math.round(ago / 3_600_000) * 3_600_000).toISOString();
  const known = [...all.values()].filter((one) => one.kind === kind);
  const changes = [...all.values()].filter((one) => one.kind === "water_change");
  const for_change = changes.length ? { water_change: pick(changes).id } : {};
  const more = {
    reading: { parameter: pick(TESTED), value: chance() < 0.05 ? -5 : Math.round(chance() * 90) / 10 },
    feeding: { feed_g: Math.round(chance() * 10) / 10 },
    water_change: {
      ...{ litres: 10, fraction: 0.1 },
      ...pick([{}, { from_tank: TANKS[1] }, { source_water: "source-1" }]),
    },
    dose: {
      what: "Drops",
      amount: 1 + Math.round(chance() * 9),
      unit: "ml",
      ...pick([{}, { label: "label-1", ...for_change }]),
    },
    note: { text: "Seen", quick: pick([["hiding"], ["well"]]) },
    stock_change: { species: "danio_rerio", change: pick(["arrival", "death"]), count: 1 + Math.floor(chance() * 5) },
  }[/** @type {"reading"} */ (kind)];
  const draw = chance();
  if (draw < 0.1 && known.length) {
    const one = pick(known);
    put(kind, one.id, one.record.fields, one.record.deleted === null);
  } else if (draw < 0.3) {
    pick([
      () => put("source_water", "source-1", { name: "Tap", ...CHLORAMINE, nitrate_mg_n_l: Math.round(chance() * 9) }),
      () => put("label", "label-1", { ...LABEL, binds_ammonia: chance() < 0.5 }),
      () =>
        put("tank", TANKS[0], {
          ...TANK,
          source_water: pick(["source-1", "source-2"]),
          dechlorinator: pick(["label-1", "label-2"]),
        }),
    ])();
  } else {
    const corrects = known.length && chance() < 0.3 ? { supersedes: pick(known).id } : {};
    put(kind, id, { tank: chance() < 0.8 ? TANKS[0] : TANKS[1], at, ...more, ...corrects });
  }
}

test("after any course of events every answer is that of records read anew", () => {
  for (let seed = 1; seed <= 12; seed++) {
    const chance = seeded(seed);
    const room = drawn_room();
    for (const id of TANKS) room.put("tank", id, TANK);
    room.put("source_water", "source-2", { name: "Rain", disinfectant: "none" });
    room.put("label", "label-2", { ...LABEL, binds_ammonia: true });
    for (let step = 0; step < 60; step++) {
      happen(room, chance);
      const now = NOW + Math.round(chance() * 3) * 3_600_000;
      assert.deepEqual(
        answers_of(room.held, false, now),
        answers_of(room.anew(), true, now),
        `seed ${seed}, step ${step}`,
      );
    }
  }
});

test("a list that nothing changed is asked about once: the questions hold the same lists", () => {
  const room = drawn_room();
  room.put("tank", TANKS[0], { name: "One", water_l: 100, started_at: "2026-01-01T00:00:00.000Z" });
  const at = new Date(NOW - DAY).toISOString();
  const records_now = () => {
    const of = (/** @type {string} */ kind, /** @type {string} */ id) => room.held.shown_of(kind, id);
    const all = (/** @type {string} */ kind) => room.held.shown(kind);
    const get = (/** @type {string} */ kind, /** @type {string} */ id) => room.held.one(kind, id);
    const held = /** @type {any} */ ({ of, all, get });
    const facts = facts_of(held, there(/** @type {any} */ (get("tank", TANKS[0]))), NOW);
    return ask_of(facts, today(facts)).records;
  };
  room.put("feeding", "meal-1", { tank: TANKS[0], at, feed_g: 0.2 });
  room.put("water_change", "change-1", { tank: TANKS[0], at, litres: 10, fraction: 0.1 });
  const before = records_now();
  room.put("reading", "reading-1", { tank: TANKS[0], at, parameter: "nitrite", value: 0.1 });
  const after = records_now();
  assert.equal(after.feedings, before.feedings);
  assert.equal(after.changes, before.changes);
  assert.deepEqual([before.readings.length, after.readings.length], [0, 1]);
});

test("what a change brought is read again where only the label, the doses or the tap are others", () => {
  const at = new Date(NOW - DAY).toISOString();
  const own = { id: "change-1", at, litres: 10, fraction: 0.1, source: { ...CHLORAMINE } };
  const changes = Object.freeze([some(own), some({ ...own, id: "change-2", source: null })]);
  /** @type {never[]} */ const none = [];
  Object.freeze(none);
  const brought = (/** @type {object} */ more) =>
    belief_input(
      as_facts({
        ...{ now: NOW, tank: { id: TANKS[0], water_l: 100, started_at: at }, source: null, label: null },
        ...{ readings: [], doses: none, feedings: [], changes: some(changes), ...more },
      }),
    ).records.changes.map(({ source }) => Number(source?.tan_mg_n_l) > 0);
  const label = { ...LABEL, binds_ammonia: true };
  const doses = Object.freeze([some({ id: "dose-1", at, water_change: "change-1", amount: 1, unit: "ml", label })]);
  for (const [more, wanted] of /** @type {const} */ ([
    [{ label }, [false, false]],
    [{ doses }, [false, false]],
    [{ source: CHLORAMINE }, [true, true]],
  ])) {
    assert.deepEqual(brought({}), [true, false]);
    assert.deepEqual(brought(more), wanted);
  }
});
