"""The calendar files of phone and server hold the same events; an RFC 5545 library reads both."""

import json
import re
import subprocess
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo, available_timezones

import pytest
from icalendar import Calendar
from limnary.calendar_file import DATES, MOST_ZONES, calendar_file
from limnary.ids import ms_of, utc
from limnary.recurrence import DAY_MS, occurrences

LINES = Path(__file__).parent / "js" / "calendar_lines.js"
NOW = "2026-11-25T12:00:00.000Z"
TANKS = {"tank-0001": "Reed pool; east, by the door", "tank-0002": "Moor"}


def task(number: int, **fields) -> dict:
    about = {"id": f"task-{number:04d}", "title": f"Task {number}", "starts_at": "2026-10-15T06:00:00.000Z"}
    return {**about, "changed_at": NOW, "meta": {"changed_at": NOW}, **fields}


TASKS = [
    task(1, rule="FREQ=WEEKLY;BYDAY=SA", zone="Europe/Berlin", tank="tank-0001"),
    task(2, rule="FREQ=MONTHLY;BYDAY=-1SU,1MO;INTERVAL=2", zone="America/St_Johns",
         title="Länger als eine Zeile: " + "Ü" * 60),
    task(3, rule="FREQ=DAILY;UNTIL=20261101", zone="Australia/Lord_Howe"),
    task(4, rule="FREQ=YEARLY;COUNT=3;BYMONTH=3;BYMONTHDAY=-1;BYHOUR=8,18", zone="Pacific/Auckland"),
    task(5, title="Back\\slash, comma; and\nline"),
    task(6, rule="FREQ=SECONDLY", zone="Europe/Berlin"),
    task(7, rule="FREQ=DAILY", zone="Nowhere/Here"),
    task(8, rule="FREQ=DAILY", over=True),
    task(9, rule="FREQ=DAILY", tank="tank-gone"),
    task(10, rule="FREQ=DAILY;INTERVAL=3", zone="Africa/Nairobi", tank="tank-0002"),
]  # fmt: skip
SKIPPED = ("2026-10-24T06:00:00.000Z", "2026-10-31T07:00:00.000Z")
DONES = [
    *({"task": "task-0001", "at": at, "due_at": at, "skipped": True} for at in SKIPPED),
    {"task": "task-0001", "at": "2026-10-17T07:00:00.000Z", "due_at": "2026-10-17T06:00:00.000Z"},
]


@pytest.fixture(scope="module")
def written() -> str:
    """The phone's file."""
    return by_phone(TASKS, DONES)


def by_phone(tasks: list[dict], dones: list[dict]) -> str:
    what = {"room": "Cellar, left", "tasks": tasks, "tanks": TANKS, "dones": dones, "now": ms_of(NOW)}
    told = subprocess.run(
        ["node", str(LINES)],
        input=json.dumps(what) + "\n",
        capture_output=True,
        text=True,
        check=True,
        encoding="utf-8",
    )
    return json.loads(told.stdout)


def said(calendar: Calendar) -> dict[str, tuple]:
    """The content of each event, by its id."""
    return {
        str(one["uid"]): (
            str(one["summary"]),
            one["dtstart"].dt,
            one["dtstart"].params.get("TZID"),
            one["dtstamp"].dt,
            one["duration"].dt,
            sorted(one["rrule"].to_ical().split(b";")) if "rrule" in one else None,
            [at.dt for many in _each(one.get("exdate", [])) for at in many.dts],
        )
        for one in calendar.walk("VEVENT")
    }


def _each(found):
    return found if isinstance(found, list) else [found]


def test_phone_and_server_write_the_same_events(written):
    ours = Calendar.from_ical(calendar_file("Cellar, left", TASKS, TANKS, DONES, ms_of(NOW)))
    theirs = Calendar.from_ical(written)
    assert said(theirs) == said(ours)
    assert len(said(ours)) == 8
    assert str(theirs["x-wr-calname"]) == str(ours["x-wr-calname"]) == "Cellar\\, left", "escaped, as any text"
    weekly = said(ours)["task-0001@limnary"]
    assert weekly[0] == "Reed pool; east, by the door: Task 1"
    assert weekly[6] == [datetime(2026, 10, day, 8, tzinfo=ZoneInfo("Europe/Berlin")) for day in (24, 31)]


# A room never names so many zones; a hostile record may.
ZONES = sorted(zone for zone in available_timezones() if zone.startswith(("Asia/", "America/")))[:40]
OF_MANY_ZONES = [
    *(task(number, rule="FREQ=DAILY", zone="Europe/Berlin") for number in (1, 2)),
    *(task(100 + at, rule="FREQ=WEEKLY;BYDAY=SA", zone=zone) for at, zone in enumerate(ZONES)),
]


def test_of_very_many_zones_the_rest_has_its_next_dates_in_utc():
    left_out = ms_of("2026-11-28T00:00:00Z")
    (at,) = occurrences(
        "FREQ=WEEKLY;BYDAY=SA", "2026-10-15T06:00:00.000Z", ZONES[-1], left_out, left_out + 5 * DAY_MS, 1
    )
    dones = [{"task": f"task-{99 + len(ZONES):04d}", "at": NOW, "due_at": utc(at), "skipped": True}]
    ours = Calendar.from_ical(calendar_file("Cellar, left", OF_MANY_ZONES, TANKS, dones, ms_of(NOW)))
    theirs = Calendar.from_ical(by_phone(OF_MANY_ZONES, dones))
    assert said(theirs) == said(ours)
    assert rdates(theirs) == rdates(ours)
    for one in (ours, theirs):
        assert len(one.walk("VTIMEZONE")) == MOST_ZONES
        described = {str(clock["tzid"]) for clock in one.walk("VTIMEZONE")}
        assert "Europe/Berlin" in described, "the zone of most tasks is among them"
        assert {zone for _, _, zone, *_ in said(one).values() if zone} == described
    (first,) = {dates[0] for dates in rdates(ours).values() if len(dates) == DATES - 2}
    assert first > datetime(2026, 11, 28, tzinfo=UTC), "the date left out is not among them"


def rdates(calendar: Calendar) -> dict[str, list[datetime]]:
    return {
        str(one["uid"]): [at.dt for many in _each(one["rdate"]) for at in many.dts]
        for one in calendar.walk("VEVENT")
        if "rdate" in one
    }


def test_no_control_character_of_a_title_is_written():
    tasks = [task(1, title="Feed\x00\x07 the\x1b frogs\x7f\tand\nrest")]
    for file in (calendar_file("Cellar\x01", tasks, TANKS, [], ms_of(NOW)), by_phone(tasks, []).encode()):
        assert not re.search(rb"[\x00-\x08\x0b\x0c\x0e-\x1f\x7f]", file)
        (event,) = Calendar.from_ical(file).walk("VEVENT")
        assert event["summary"] == "Feed the frogs\tand\nrest"


def test_no_line_is_longer_than_75_octets(written):
    lines = written.encode().split(b"\r\n")
    assert lines[-1] == b""
    assert max(map(len, lines)) <= 75
    assert any(line.startswith(b" ") for line in lines), "something was folded"


def test_the_clocks_of_the_file_are_those_of_the_time_zone_database(written):
    clocks = {str(one["tzid"]): one for one in Calendar.from_ical(written).walk("VTIMEZONE")}
    assert set(clocks) == {
        "Africa/Nairobi", "America/St_Johns", "Australia/Lord_Howe", "Europe/Berlin", "Pacific/Auckland",
    }  # fmt: skip
    for name, clock in clocks.items():
        changes = sorted(
            (one["dtstart"].dt.replace(tzinfo=None) - one["tzoffsetfrom"].td, one["tzoffsetto"].td)
            for one in clock.subcomponents
        )
        moment = datetime(2025, 1, 1)
        while moment < datetime(2037, 1, 1):
            told = [to for since, to in changes if since <= moment][-1]
            assert told == moment.replace(tzinfo=UTC).astimezone(ZoneInfo(name)).utcoffset(), (name, moment)
            moment += timedelta(hours=7)
