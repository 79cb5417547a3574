/** When something happened: what is offered, what a field of day and time says, and what cannot be. */
import assert from "node:assert/strict";
import { test } from "node:test";
import {
  cannot_be,
  date_text,
  day_end,
  field_text,
  moment_in,
  moments_offered,
  shifted,
} from "../../pwa/advice/journal/moment.js";

const NOW = Date.parse("2026-05-04T07:30:20.000Z");

test("what is offered lies one hour to one day back, on the minute", () => {
  assert.deepEqual(moments_offered(NOW), [
    "2026-05-04T06:30:00.000Z",
    "2026-05-04T04:30:00.000Z",
    "2026-05-04T01:30:00.000Z",
    "2026-05-03T19:30:00.000Z",
    "2026-05-03T07:30:00.000Z",
  ]);
});

test("a field says by this phone's clock what the record holds in UTC, winter and summer", () => {
  for (const at of ["2026-01-09T05:08:00.000Z", "2026-07-31T22:59:00.000Z"]) {
    assert.equal(moment_in(field_text(at)), at);
    assert.match(field_text(at), /^2026-\d\d-\d\dT\d\d:\d\d$/);
    assert.equal(new Date(field_text(at)).getHours(), new Date(at).getHours());
  }
});

test("an empty or half typed field says nothing", () => {
  assert.equal(moment_in(""), undefined);
  assert.equal(moment_in("2026-05-"), undefined);
});

test("a future time and a year with a missing digit are refused; the current minute is allowed", () => {
  assert.equal(cannot_be(undefined, NOW), false);
  assert.equal(cannot_be("2026-05-04T07:31:00.000Z", NOW), false);
  assert.equal(cannot_be("2026-05-04T07:31:20.000Z", NOW), true);
  assert.equal(cannot_be("0202-05-04T07:00:00.000Z", NOW), true);
  assert.equal(cannot_be("2000-01-01T00:00:00.000Z", NOW), false);
  assert.equal(cannot_be("not a time", NOW), true);
});

test("readings of one test keep the minutes between them when the test is moved", () => {
  assert.equal(
    shifted("2026-05-04T07:34:00.000Z", "2026-05-04T07:30:00.000Z", "2026-05-02T18:00:00.000Z"),
    "2026-05-02T18:04:00.000Z",
  );
});

test("a day ends at the midnight after it here, and what is no day says so", () => {
  for (const text of ["2026-05-04", "2026-03-29", "2026-10-25", "2024-02-29", "2026-12-31"]) {
    const end = Number(day_end(text));
    assert.equal(date_text(end - 1), text);
    assert.notEqual(date_text(end), text);
    assert.equal(new Date(end).getHours(), 0);
  }
  for (const text of ["", "2026-02-29", "2026-13-01", "2026-04-31", "1999-12-31", "0202-05-04", "4 May", "2026-5-4"])
    assert.equal(day_end(text), null, text);
});
