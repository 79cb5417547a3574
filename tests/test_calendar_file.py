"""The calendar files of phone and server hold the same events; an RFC 5545 library reads both."""

import json
import subprocess
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from icalendar import Calendar
from limnary.calendar_file import calendar_file
from limnary.ids import ms_of

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
    what = {"room": "Cellar, left", "tasks": TASKS, "tanks": TANKS, "dones": DONES, "now": ms_of(NOW)}
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
    ours = Calendar.from_ical(calendar_file("Cellar, left", TASKS, TANKS, DONES))
    theirs = Calendar.from_ical(written)
    assert said(theirs) == said(ours)
    assert len(said(ours)) == 8
    assert str(theirs["x-wr-calname"]) == str(ours["x-wr-calname"]) == "Cellar\\, left", "escaped, as any text"
    weekly = said(ours)["task-0001@limnary"]
    assert weekly[0] == "Reed pool; east, by the door: Task 1"
    assert weekly[6] == [datetime(2026, 10, day, 8, tzinfo=ZoneInfo("Europe/Berlin")) for day in (24, 31)]


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
