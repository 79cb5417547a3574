/** Tasks on a day: due, overdue, done, skipped, next; and the tiles of a task to a rule and back. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { day_of, instant_of, wall_of, zone_or_utc } from "../../pwa/advice/tasks/local_time.js";
import { occurrences } from "../../pwa/advice/tasks/recurrence.js";
import { LAST_DAY, fields_of, first_form, form_of } from "../../pwa/advice/tasks/task_form.js";
import { days_ahead, due_now, remembering, standing } from "../../pwa/advice/tasks/tasks.js";
import { there, view } from "./fixtures.js";

const BERLIN = "Europe/Berlin";
const ms = (/** @type {string} */ iso) => Date.parse(iso);
const WEEKLY = view("task", {
  id: "weekly",
  title: "Wipe the glass",
  starts_at: "2026-03-07T07:00:00.000Z",
  rule: "FREQ=WEEKLY;BYDAY=SA",
  zone: BERLIN,
});
const DAILY = view("task", {
  id: "daily",
  title: "Feed",
  starts_at: "2026-03-01T07:00:00.000Z",
  rule: "FREQ=DAILY",
  zone: BERLIN,
});
/** @typedef {import("./fixtures.js").View<"task">} Task */
/** @typedef {import("./fixtures.js").View<"task_done">} Done */
/** @param {Task} task @param {string} due_at @param {string} [at] @param {Partial<Done>} [more] */
const done = (task, due_at, at = due_at, more = {}) =>
  view("task_done", {
    id: `${task.id}-${due_at}`,
    task: task.id,
    at,
    due_at,
    ...more,
  });
/** @param {Task} task @param {Done[]} dones @param {string} now */
const stand = (task, dones, now) => standing(task, dones, ms(now), BERLIN, occurrences);
/** @param {(number | null)[]} moments in ms */
const said = (moments) => moments.map((at) => new Date(there(at)).toISOString().slice(5, 16));

test("a daily task is due on its day, closed by its own done, and open again the next day", () => {
  const fed = [done(DAILY, "2026-03-10T07:00:00.000Z")];
  assert.deepEqual(said(stand(DAILY, [], "2026-03-10T05:00:00Z").due), ["03-10T07:00"], "before its hour too");
  assert.deepEqual(stand(DAILY, fed, "2026-03-10T20:00:00Z").due, []);
  assert.deepEqual(said([stand(DAILY, fed, "2026-03-10T20:00:00Z").next]), ["03-11T07:00"]);
  assert.deepEqual(said(stand(DAILY, fed, "2026-03-11T06:00:00Z").due), ["03-11T07:00"]);
});

test("what is due now agrees with where each task stands, and asks no rule for what comes later", () => {
  const dones = [done(DAILY, "2026-03-10T07:00:00.000Z"), done(WEEKLY, "2026-03-07T07:00:00.000Z")];
  const later = view("task", { ...WEEKLY, id: "later", starts_at: "2027-03-06T07:00:00.000Z" });
  for (const now of ["2026-03-06T12:00:00Z", "2026-03-10T12:00:00Z", "2026-03-16T12:00:00Z"]) {
    for (const some of [[], dones]) {
      /** @type {number[]} */ const asked = [];
      /** @type {typeof occurrences} */ const watched = (task, from, to, most) => {
        asked.push(to);
        return occurrences(task, from, to, most);
      };
      const tasks = [DAILY, WEEKLY, later];
      const found = due_now(tasks, some, ms(now), BERLIN, watched).map(({ task, at, overdue }) => [
        task.id,
        at,
        overdue,
      ]);
      const each = tasks.flatMap((task) => {
        const { due, overdue } = stand(task, some, now);
        return due.map((at) => [task.id, at, overdue]);
      });
      assert.deepEqual(
        found,
        each.sort((a, b) => Number(a[1]) - Number(b[1])),
      );
      assert.ok(asked.length > 0 && asked.every((to) => to <= day_of(ms(now), BERLIN).to));
    }
  }
});

test("days missed are not asked for one by one", () => {
  const { due, overdue } = stand(DAILY, [done(DAILY, "2026-03-02T07:00:00.000Z")], "2026-03-10T12:00:00Z");
  assert.deepEqual([said(due), overdue], [["03-10T07:00"], false]);
});

test("a weekly task stays overdue until it is done, or until its next day comes", () => {
  const before = [done(WEEKLY, "2026-03-07T07:00:00.000Z")];
  const late = stand(WEEKLY, before, "2026-03-17T12:00:00Z");
  assert.deepEqual([said(late.due), late.overdue, said([late.next])], [["03-14T07:00"], true, ["03-21T07:00"]]);
  const after = [...before, done(WEEKLY, "2026-03-14T07:00:00.000Z", "2026-03-17T12:00:00.000Z")];
  assert.deepEqual(
    [stand(WEEKLY, after, "2026-03-17T13:00:00Z")].map(({ due, overdue }) => [due, overdue]),
    [[[], false]],
  );
  const saturday = stand(WEEKLY, before, "2026-03-21T09:00:00Z");
  assert.deepEqual([said(saturday.due), saturday.overdue], [["03-21T07:00"], false]);
});

test("eight in the morning stays eight when clocks change", () => {
  assert.deepEqual(said(stand(WEEKLY, [], "2026-04-04T05:00:00Z").due), ["04-04T06:00"]);
});

test("skipping closes like doing; taking it back opens again", () => {
  const skipped = [done(WEEKLY, "2026-03-14T07:00:00.000Z", "2026-03-14T08:00:00.000Z", { skipped: true })];
  const { due, last } = stand(WEEKLY, skipped, "2026-03-14T12:00:00Z");
  assert.deepEqual([due, last?.skipped], [[], true]);
  assert.deepEqual(said(stand(WEEKLY, [], "2026-03-14T12:00:00Z").due), ["03-14T07:00"]);
});

test("a task done ahead of its day closes that day, and the following one is next", () => {
  const early = [done(WEEKLY, "2026-03-14T07:00:00.000Z", "2026-03-12T08:00:00.000Z")];
  const { due, next } = stand(WEEKLY, early, "2026-03-12T12:00:00Z");
  assert.deepEqual([due, said([next])], [[], ["03-21T07:00"]]);
});

test("a done that names no occurrence closes what was due up to its day", () => {
  const plain = [view("task_done", { id: "x", task: WEEKLY.id, at: "2026-03-14T18:00:00.000Z" })];
  assert.deepEqual(stand(WEEKLY, plain, "2026-03-15T12:00:00Z").due, []);
});

test("a task of one day is overdue for good, until it is done", () => {
  const once = view("task", {
    id: "once",
    title: "Call the water company",
    starts_at: "2024-03-01T07:00:00.000Z",
    zone: BERLIN,
  });
  const { due, overdue, next } = stand(once, [], "2026-03-10T12:00:00Z");
  assert.deepEqual([due.length, overdue, next], [1, true, null]);
  assert.deepEqual(
    stand(once, [done(once, "2024-03-01T07:00:00.000Z", "2026-03-10T12:00:00.000Z")], "2026-03-10T13:00:00Z").due,
    [],
  );
});

test("an ended task asks for nothing; a rule that cannot be read is said, not guessed", () => {
  assert.deepEqual(stand({ ...WEEKLY, over: true }, [], "2026-03-14T12:00:00Z").due, []);
  const strange = stand({ ...WEEKLY, rule: "FREQ=HOURLY" }, [], "2026-03-14T12:00:00Z");
  assert.deepEqual([strange.due, strange.next, strange.unread], [[], null, true]);
  assert.equal(stand(WEEKLY, [], "2026-03-14T12:00:00Z").unread, false);
});

test("today's list and the days ahead", () => {
  const tasks = [WEEKLY, DAILY];
  const now = ms("2026-03-13T09:00:00Z");
  assert.deepEqual(
    due_now(tasks, [done(WEEKLY, "2026-03-07T07:00:00.000Z")], now, BERLIN, occurrences).map(({ task }) => task.id),
    ["daily"],
  );
  const ahead = days_ahead(tasks, [], now, BERLIN, 2, occurrences);
  assert.deepEqual(
    ahead.map(({ day, items }) => [said([day])[0], items.map(({ task }) => task.id)]),
    [
      ["03-13T23:00", ["weekly", "daily"]],
      ["03-14T23:00", ["daily"]],
    ],
  );
  const midnight = { ...DAILY, starts_at: "2026-03-01T23:00:00.000Z" };
  assert.deepEqual(
    days_ahead([midnight], [], now, BERLIN, 2, occurrences).map(({ items }) => said(items.map(({ at }) => at))),
    [["03-13T23:00"], ["03-14T23:00"]],
    "midnight begins a day, it ends none",
  );
});

test("a local day has 23 or 25 hours when clocks change", () => {
  const hours = (/** @type {string} */ iso) => {
    const { from, to } = day_of(ms(iso), BERLIN);
    return (to + 1 - from) / 3_600_000;
  };
  assert.deepEqual(["2026-03-29T12:00:00Z", "2026-10-25T12:00:00Z", "2026-06-01T12:00:00Z"].map(hours), [23, 25, 24]);
  assert.equal(wall_of(instant_of(Date.UTC(2026, 5, 1, 8), BERLIN), BERLIN), Date.UTC(2026, 5, 1, 8));
});

test("tiles to a rule and back", () => {
  const base = first_form(ms("2026-03-10T22:30:00Z"), BERLIN);
  assert.deepEqual([new Date(base.day).toISOString().slice(0, 10), base.weekdays], ["2026-03-10", ["TU"]]);
  /** @type {[import("../../pwa/advice/tasks/task_form.js").Form, string | null][]} */
  const forms = [
    [{ ...base, often: "once" }, null],
    [base, "FREQ=DAILY"],
    [{ ...base, often: "days", every: 3 }, "FREQ=DAILY;INTERVAL=3"],
    [{ ...base, often: "weekdays", weekdays: ["SA", "WE"] }, "FREQ=WEEKLY;BYDAY=WE,SA"],
    [{ ...base, often: "monthly", month_day: 5 }, "FREQ=MONTHLY;BYMONTHDAY=5"],
    [{ ...base, often: "monthly", month_day: LAST_DAY }, "FREQ=MONTHLY;BYMONTHDAY=-1"],
  ];
  for (const [form, rule] of forms) {
    const fields = fields_of(form, BERLIN);
    assert.equal(fields.rule, rule);
    assert.equal(fields.starts_at, "2026-03-10T07:00:00.000Z");
    const back = form_of({ ...fields, rule: fields.rule ?? undefined });
    assert.deepEqual(
      { ...back, weekdays: [...back.weekdays].sort() },
      { ...form, weekdays: [...form.weekdays].sort() },
    );
  }
});

test("a rule that tiles cannot say is left alone", () => {
  for (const rule of [
    "FREQ=WEEKLY;INTERVAL=2;BYDAY=MO",
    "FREQ=MONTHLY;BYDAY=1SU",
    "FREQ=DAILY;COUNT=3",
    "FREQ=HOURLY",
    "FREQ=MONTHLY;BYMONTHDAY=30",
  ]) {
    const form = form_of({ ...WEEKLY, rule });
    assert.equal(form.often, "own", rule);
    assert.equal("rule" in fields_of(form, BERLIN), false);
  }
  assert.deepEqual(
    [form_of({ ...WEEKLY, rule: "FREQ=MONTHLY" })].map(({ often, month_day }) => [often, month_day]),
    [["monthly", 7]],
    "on the day it starts",
  );
  assert.equal(form_of({ ...WEEKLY, starts_at: "2026-03-31T07:00:00.000Z", rule: "FREQ=WEEKLY" }).month_day, LAST_DAY);
});

test("what was worked out is not worked out again, until the task or the days change", () => {
  let asked = 0;
  const expand = remembering((...question) => {
    asked += 1;
    return occurrences(...question);
  });
  const week = (/** @type {Task} */ task, from = "2026-03-01T00:00:00Z") =>
    expand(task, ms(from), ms(from) + 7 * 86_400_000);
  assert.deepEqual(week(DAILY), occurrences(DAILY, ms("2026-03-01T00:00:00Z"), ms("2026-03-08T00:00:00Z")));
  week(DAILY);
  week({ ...DAILY, title: "Feed the snails" });
  assert.equal(asked, 1);
  week({ ...DAILY, rule: "FREQ=DAILY;INTERVAL=2" });
  week(DAILY, "2026-03-02T00:00:00Z");
  week({ ...DAILY, zone: "UTC" });
  assert.equal(asked, 4);
});

test("a task in a zone that this phone does not know is read by UTC, and can be set again", () => {
  for (const zone of ["No/Where", "__proto__", "//", "Factory"]) {
    assert.equal(zone_or_utc(zone), "UTC");
    const task = view("task", { ...DAILY, zone });
    const form = form_of(task);
    assert.deepEqual([form.minutes, form.often], [7 * 60, "daily"]);
    assert.equal(fields_of(form, zone_or_utc(zone)).starts_at, DAILY.starts_at);
    assert.equal(stand(task, [], "2026-03-10T12:00:00Z").unread, true);
    assert.deepEqual(days_ahead([task], [], ms("2026-03-10T12:00:00Z"), BERLIN, 7, occurrences), []);
    const once = view("task", { ...DAILY, rule: undefined, zone });
    assert.deepEqual(said(stand(once, [], "2026-03-01T05:00:00Z").due), ["03-01T07:00"]);
  }
  assert.equal(zone_or_utc(undefined), "UTC");
  assert.equal(zone_or_utc(BERLIN), BERLIN);
});
