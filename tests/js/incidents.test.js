/** When it goes wrong: at most six steps, with the tank's own figures, and the notes of one incident in one entry. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { INCIDENT_CODES } from "../../pwa/advice/incident_codes.js";
import { INCIDENTS, calls_of, figures_of, going_on, steps_of } from "../../pwa/advice/incidents.js";
import { timeline } from "../../pwa/advice/journal/timeline.js";
import { with_findings } from "../../pwa/advice/advised.js";
import { today } from "../../pwa/advice/today.js";
import { install, run } from "../../pwa/contracts.js";
import { choose } from "../../pwa/i18n/words.js";
import { records_of, there, view } from "./fixtures.js";
import { shared_bundle } from "./shared_bundle.js";
import { NOW, ago, facts, read } from "./tank_facts.js";

globalThis.navigator ??= /** @type {any} */ ({ language: "en-GB", onLine: true });
const { is_incident } = await import("../../pwa/ui/words/event_said.js");
const { step_said } = await import("../../pwa/ui/words/incident_said.js");
install(shared_bundle());

const MEASURES = /** @type {const} */ ({
  shape: "cuboid",
  length_cm: 80,
  width_cm: 35,
  height_cm: 40,
  fill_height_cm: 36,
});
const DANIOS = view("stock_change", {
  ...{ id: "stock-0001", at: ago(900), species: "Danio rerio", change: "arrival", count: 10, length_cm: 3.5 },
});
/** @param {Parameters<typeof facts>[1]} [more] */
const known = (more = {}) =>
  facts([read("temperature", 25)], {
    tank: { id: "tank-one-1", water_l: 100, measures: MEASURES },
    stock: [DANIOS],
    own_species: [],
    notes: [],
    ...more,
  });
/** @param {ReturnType<typeof known>} of */
const figures = (of) => figures_of(of, with_findings(of, today(of), today(of)));

test("the codes of records and the steps against them go together, at most six each", () => {
  assert.deepEqual(Object.keys(INCIDENTS), INCIDENT_CODES);
  for (const what of INCIDENT_CODES) {
    const steps = steps_of(what, figures(known()));
    assert.ok(steps.length >= 3 && steps.length <= 6, what);
    assert.ok(INCIDENTS[what].nots.length > 0 && INCIDENTS[what].tests.length > 0, what);
  }
});

test("where hands go in or water comes out, electricity is the first step", () => {
  const first = (/** @type {string} */ what) => steps_of(what, figures(known()))[0].code;
  assert.deepEqual(["leak", "cold", "power_cut", "hot"].map(first), ["fuse", "plugs", "plugs", "heater_out"]);
});

test("the figures are those of the calculations for this tank", () => {
  const got = figures(known());
  const animals = [{ species: "Danio rerio", count: 10, length_cm: 3.5 }];
  assert.equal(got.hours, run("closed_water", { water_l: 100, temperature_c: 25, animals }).hours_still);
  assert.equal(got.bucket_hours, run("closed_water", { water_l: 10, temperature_c: 25, animals }).hours_still);
  assert.deepEqual([got.litres, got.dose.amount, got.whole.amount], [50, 10, 20]);
  assert.equal(got.left_percent, 25, "half of half");
  assert.equal(got.buckets, 10);
  const warm = { length_cm: 80, width_cm: 35, height_cm: 36, temperature_c: 25, room_c: 17, water_l: 100 };
  const rate = there(run("heater_power", { ...warm, open_fraction: 0.05 }).cooling_c_hour);
  assert.deepEqual(got.cooling, { c_hour: rate, room_c: 17 });
});

test("what the records do not say is left out, not guessed", () => {
  const bare = known({ tank: { id: "tank-one-1", water_l: 100 }, stock: [], label: null });
  const got = figures(bare);
  assert.deepEqual([got.hours, got.cooling, got.whole.amount], [null, null, undefined]);
  const [air] = steps_of("gasping", got);
  const [dose] = steps_of("chlorine", got);
  assert.deepEqual([air.why, dose.form], [undefined, undefined]);
});

test("every step has words in every language, without an empty part", async () => {
  const bare = known({ tank: { id: "tank-one-1", water_l: 100 }, stock: [], label: null });
  for (const language of ["en-GB", "de-DE", "fr-FR"]) {
    await choose([language]);
    for (const of of [known(), bare])
      for (const what of INCIDENT_CODES)
        for (const step of steps_of(what, figures(of))) {
          const said = step_said(what, step, figures(of));
          assert.match(said.what, /\S/);
          assert.doesNotMatch(
            `${said.what} ${said.why}`,
            /\{|\}|undefined|null| {2}| [.,;]/,
            `${language} ${what} ${step.code}`,
          );
        }
  }
  await choose(["en-GB"]);
});

test("the taps of one incident are one entry in the history; the next one begins after two days", () => {
  const note = (/** @type {string} */ id, /** @type {number} */ hours, /** @type {object} */ more) =>
    view("note", { id, kind: "note", tank: "tank-one-1", at: ago(hours), text: id, entry: "entry-01", ...more });
  const notes = [
    note("note-0001", 3, { incident: "power_cut" }),
    note("note-0002", 2, { incident: "power_cut", step: "plugs" }),
  ];
  const open = there(going_on(notes, "power_cut", NOW));
  assert.deepEqual([open.entry, open.began, [...open.done]], ["entry-01", ago(3), [["plugs", ago(2)]]]);
  assert.equal(going_on(notes, "leak", NOW), null);
  assert.equal(going_on(notes, "power_cut", NOW + 48 * 3_600_000), null);
  const [event, ...others] = timeline({ ...records_of({ note: notes }), earlier: () => [] });
  assert.equal(others.length, 0);
  assert.deepEqual(
    event.records.map(({ id }) => id),
    ["note-0001", "note-0002"],
  );
  assert.ok(is_incident(event.records));
});

test("those to call are on the sheet that was made last", () => {
  const sheet = (/** @type {string} */ id, /** @type {string} */ from_at, /** @type {string} */ who) =>
    view("away_sheet", { id, from_at, to_at: from_at, calls: who ? [{ who, phone: "1" }] : [] });
  const sheets = [sheet("a", "2026-01-01", "Aino"), sheet("b", "2026-03-01", "Bo"), sheet("c", "2026-04-01", "")];
  assert.deepEqual(calls_of(sheets), [{ who: "Bo", phone: "1" }]);
  assert.deepEqual(calls_of([]), []);
});
