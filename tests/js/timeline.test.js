/** The timeline: what belongs together, in groups and days, corrected and taken out, on the real records of a phone. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { CORRECTED, GROUPS, by_day, correction, removal, timeline } from "../../pwa/advice/journal/timeline.js";
import { records } from "../../pwa/contracts.js";
import { open_room } from "../../pwa/data/fish_room.js";
import { TANK, test_phone } from "./test_phone.js";
import { some, there } from "./fixtures.js";

/** @param {number} day @param {number} hour */
const at = (day, hour) => `2026-05-${String(day).padStart(2, "0")}T${String(hour).padStart(2, "0")}:00:00.000Z`;
let made = 0;
const new_id = () => `made-${String(++made).padStart(4, "0")}`;

async function kept() {
  const { room } = await open_room("local", await test_phone());
  /** @param {string} kind @param {string} id @param {Record<string, unknown>} fields */
  const put = (kind, id, fields) => ({ type: /** @type {const} */ ("put"), kind, id, fields });
  const tank = "tank-0001";
  await room.write([
    put("tank", tank, TANK),
    put("tank", "tank-0002", TANK),
    put("task", "task-0001", { title: "Trim", tank, starts_at: at(1, 8) }),
    put("reading", "read-0001", { tank, at: at(2, 6), parameter: "total_ammonia", value: 0.5, test: "test-0001" }),
    put("reading", "read-0002", { tank, at: at(2, 6), parameter: "nitrite", value: 0.1, test: "test-0001" }),
    put("water_change", "chng-0001", { tank, at: at(2, 17), litres: 20, fraction: 0.2 }),
    put("dose", "dose-0001", { tank, at: at(2, 17), what: "Bottle", amount: 2, unit: "ml", water_change: "chng-0001" }),
    put("dose", "dose-0002", { tank, at: at(3, 17), what: "Food", amount: 1, unit: "ml" }),
    put("feeding", "feed-0001", { tank, at: at(3, 18), feed_g: 0.3 }),
    put("note", "note-0001", { tank, at: at(3, 19), text: "New roots", entry: "entr-0001" }),
    put("photo", "phot-0001", {
      tank,
      at: at(3, 19),
      sha256: "a".repeat(64),
      media_type: "image/jpeg",
      entry: "entr-0001",
    }),
    put("photo", "phot-0002", {
      tank: "tank-0002",
      at: at(4, 9),
      sha256: "b".repeat(64),
      media_type: "image/jpeg",
      entry: "entr-0002",
    }),
    put("photo", "phot-0003", {
      tank: "tank-0002",
      at: at(4, 9),
      sha256: "c".repeat(64),
      media_type: "image/jpeg",
      entry: "entr-0002",
    }),
    put("task_done", "done-0001", { task: "task-0001", at: at(4, 10) }),
  ]);
  return room;
}
/**
 * Correct the event that a record belongs to.
 * @param {import("../../pwa/data/fish_room.js").FishRoom} room @param {string} id @param {object} set
 */
async function correct(room, id, set) {
  const event = there(timeline(room).find(({ records }) => records.some((one) => one.id === id)));
  await room.write(correction(room, event, { one: there(event.records.find((one) => one.id === id)), ...set }, new_id));
}
const names = (/** @type {ReturnType<typeof timeline>} */ events) =>
  events.map(({ records }) => records.map(({ id }) => id).join("+"));

test("what was written together is one event, newest first", async () => {
  const events = timeline(await kept());
  assert.deepEqual(names(events), [
    "done-0001",
    "phot-0002+phot-0003",
    "note-0001+phot-0001",
    "feed-0001",
    "dose-0002",
    "chng-0001+dose-0001",
    "read-0001+read-0002",
  ]);
  assert.deepEqual(
    events.map(({ group }) => group),
    ["tasks", "notes", "notes", "food", "water", "water", "tests"],
  );
});

test("the timeline of one tank, and of one group", async () => {
  const room = await kept();
  assert.deepEqual(names(timeline(room, { tank: "tank-0002" })), ["phot-0002+phot-0003"]);
  assert.deepEqual(names(timeline(room, { tank: "tank-0001", group: "water" })), ["dose-0002", "chng-0001+dose-0001"]);
  assert.deepEqual(names(timeline(room, { tank: "tank-0001", group: "tasks" })), ["done-0001"]);
});

test("every event kind is in a group, and what is corrected is a field of its kind", () => {
  const events = Object.entries(records())
    .filter(([, kind]) => kind?.event)
    .map(([kind]) => kind);
  const told = timeline(
    some({
      all: (/** @type {string} */ kind) => [{ id: "x", kind, at: at(1, 1) }],
      get: () => null,
      earlier: () => [],
    }),
  ).map(({ kind }) => kind);
  // A photo of the same entry stands with its note.
  for (const kind of events)
    assert.ok(/** @type {string[]} */ (told).includes(kind) || kind === "photo", `${kind} is not in the timeline`);
  for (const [kind, field] of Object.entries(CORRECTED))
    assert.ok(records()?.[kind]?.fields.some(({ name }) => name === field));
  assert.equal(GROUPS.length, new Set(GROUPS).size);
});

test("days are the keeper's own, newest first", async () => {
  const days = by_day(timeline(await kept()));
  assert.ok(days.every(({ day }, i) => i === 0 || day < days[i - 1].day));
  assert.equal(days.flatMap(({ events }) => events).length, 7);
  for (const { day, events } of days)
    for (const event of events) assert.equal(new Date(event.at).toDateString(), new Date(day).toDateString());
});

test("a corrected reading stays in its test, with its earlier value; removing the test brings none back", async () => {
  const room = await kept();
  await correct(room, "read-0002", { value: 0.2 });
  const [event] = timeline(room, { group: "tests" });
  assert.deepEqual(
    event.records.map(({ parameter, value }) => [parameter, value]),
    [
      ["total_ammonia", 0.5],
      ["nitrite", 0.2],
    ],
  );
  assert.deepEqual(
    event.earlier.map(({ value }) => value),
    [0.1],
  );
  await correct(room, event.records[1].id, { value: 0.4 });
  const [again] = timeline(room, { group: "tests" });
  assert.deepEqual(
    again.earlier.map(({ value }) => value),
    [0.2, 0.1],
  );
  await room.write(removal(again));
  assert.deepEqual(timeline(room, { group: "tests" }), []);
});

test("a rewritten note is words alone: its lines need not be those of its tiles", async () => {
  const room = await kept();
  const { id: _id, kind: _kind, meta: _meta, ...fields } = there(room.get("note", "note-0001"));
  await room.write([
    {
      type: "put",
      kind: "note",
      id: "note-0002",
      fields: { ...fields, text: "Plants pearling\nNew roots", quick: ["pearling"] },
    },
  ]);
  await correct(room, "note-0002", { value: "New roots" });
  const [note] = room.all("note").filter(({ supersedes }) => supersedes);
  assert.deepEqual([note.text, "quick" in note, note.entry], ["New roots", false, "entr-0001"]);
});

test("a corrected change takes its dose along and keeps its share of the water", async () => {
  const room = await kept();
  await correct(room, "chng-0001", { value: 30 });
  const event = timeline(room, { group: "water" }).find(({ kind }) => kind === "water_change");
  const [change, dose] = there(event).records;
  assert.deepEqual([change.litres, change.supersedes, dose.amount, dose.water_change], [30, "chng-0001", 2, change.id]);
  assert.ok(Math.abs(change.fraction - 0.3) < 1e-12);
  assert.equal(
    timeline(room, { group: "water" }).filter(({ kind }) => kind === "dose").length,
    1,
    "its dose is not told twice",
  );
});

test("a tank's first filling is an event of its own", async () => {
  const room = await kept();
  const filled = { ...TANK, water_l: 120, started_at: at(1, 9) };
  await room.write([{ type: "put", kind: "tank", id: "tank-0003", fields: filled }]);
  const events = timeline(room, { tank: "tank-0003" });
  assert.deepEqual(
    events.map(({ at: when, group, kind, records: [one] }) => [when, group, kind, one.id, one.water_l]),
    [[at(1, 9), "water", "tank", "tank-0003", 120]],
  );
  assert.deepEqual(timeline(room, { tank: "tank-0003", group: "notes" }), []);
});

test("the readings of a test stand in its order, whichever was keyed first and corrected since", async () => {
  const room = await kept();
  const read = { tank: "tank-0001", at: at(2, 6), test: "test-0001" };
  await room.write([
    { type: "put", kind: "reading", id: "read-0000", fields: { ...read, parameter: "kh", value: 4, unit: "dKH" } },
    { type: "put", kind: "reading", id: "read-000a", fields: { ...read, parameter: "temperature", value: 24 } },
    { type: "put", kind: "reading", id: "read-000b", fields: { ...read, parameter: "ph", value: 7 } },
  ]);
  await correct(room, "read-0001", { value: 0.25 });
  const [event] = timeline(room, { tank: "tank-0001", group: "tests" });
  assert.deepEqual(
    event.records.map(({ parameter }) => parameter),
    ["total_ammonia", "nitrite", "ph", "temperature", "kh"],
  );
});

test("a test moves to another day and tank as a whole, with the minutes between its readings", async () => {
  const room = await kept();
  await room.write([
    {
      type: "put",
      kind: "reading",
      id: "read-0003",
      fields: { tank: "tank-0001", at: "2026-05-02T06:07:00.000Z", parameter: "nitrate", value: 5, test: "test-0001" },
    },
  ]);
  await correct(room, "read-0002", { value: 0.2, at: at(1, 20), tank: "tank-0002" });
  const [event] = timeline(room, { tank: "tank-0002", group: "tests" });
  assert.deepEqual(
    event.records.map(({ parameter, value, at: when }) => [parameter, value, when]),
    [
      ["total_ammonia", 0.5, at(1, 20)],
      ["nitrite", 0.2, at(1, 20)],
      ["nitrate", 5, "2026-05-01T20:07:00.000Z"],
    ],
  );
  assert.deepEqual(
    event.earlier.map(({ tank, value }) => [tank, value]),
    [
      ["tank-0001", 0.5],
      ["tank-0001", 0.1],
      ["tank-0001", 5],
    ],
  );
  assert.deepEqual(timeline(room, { tank: "tank-0001", group: "tests" }), []);
  await room.write(removal(event));
  assert.deepEqual(timeline(room, { group: "tests" }), []);
});

test("a change moved to another tank is a share of its water, with the dose; no tank takes its own water", async () => {
  const room = await kept();
  await room.write([
    { type: "put", kind: "tank", id: "tank-0003", fields: { ...TANK, water_l: 40 } },
    {
      type: "put",
      kind: "water_change",
      id: "chng-0002",
      fields: { tank: "tank-0001", at: at(5, 8), litres: 10, fraction: 0.1, from_tank: "tank-0003" },
    },
  ]);
  await correct(room, "chng-0001", { tank: "tank-0003" });
  await correct(room, "chng-0002", { tank: "tank-0003" });
  const [second, first] = timeline(room, { tank: "tank-0003", group: "water" });
  const [change, dose] = first.records;
  assert.deepEqual([change.litres, change.fraction, dose.tank, dose.water_change], [20, 0.5, "tank-0003", change.id]);
  assert.deepEqual([second.records[0].fraction, "from_tank" in second.records[0]], [0.25, false]);
  assert.deepEqual(
    timeline(room, { tank: "tank-0001", group: "water" }).map(({ kind }) => kind),
    ["dose"],
  );
});

test("a dose that lost its change is corrected alone", async () => {
  const room = await kept();
  await room.write([{ type: "del", kind: "water_change", id: "chng-0001" }]);
  await correct(room, "dose-0001", { value: 3 });
  const [dose] = room.all("dose").filter(({ supersedes }) => supersedes);
  assert.deepEqual([dose.amount, dose.water_change], [3, "chng-0001"]);
});

test("a note goes with its photos; a photo gets its words, or none", async () => {
  const room = await kept();
  await correct(room, "note-0001", { tank: "tank-0002" });
  const [event] = timeline(room, { tank: "tank-0002", group: "notes" }).filter(({ kind }) => kind === "note");
  assert.deepEqual(
    event.records.map(({ kind, tank }) => [kind, tank]),
    [
      ["note", "tank-0002"],
      ["photo", "tank-0002"],
    ],
  );
  await correct(room, "phot-0002", { value: "Roots" });
  const worded = room.all("photo").find(({ caption }) => caption === "Roots");
  assert.equal(worded?.sha256, "b".repeat(64));
  await correct(room, worded?.id, { value: "" });
  assert.equal(
    room.all("photo").some(({ caption }) => caption !== undefined),
    false,
  );
});
