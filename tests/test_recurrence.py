"""Python and JavaScript give the same times for any rule; local times stay the same when clocks change."""

from datetime import datetime, timedelta

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from limnary import recurrence
from limnary.ids import ms_of, utc
from limnary.recurrence import WEEKDAYS, BadRule, occurrences, parse_rule
from recurrence_phone import RecurrencePhone

DAY_MS = 86_400_000
# Clock changes at different hours, half-hour zones, a half-hour change, no change, the southern hemisphere.
ZONES = (
    "Europe/Berlin", "America/New_York", "America/St_Johns", "Asia/Kolkata", "Australia/Lord_Howe",
    "America/Santiago", "Pacific/Auckland", "Africa/Nairobi", "UTC", None,
)  # fmt: skip


@pytest.fixture(scope="module")
def phone():
    made = RecurrencePhone()
    yield made
    made.close()


def _listed(values, most=3):
    return st.lists(values, min_size=1, max_size=most, unique=True).map(lambda found: ",".join(map(str, found)))


@st.composite
def rules(draw):
    """Rules of the supported kinds, and some that are not supported."""
    freq = draw(st.sampled_from(["DAILY", "WEEKLY", "MONTHLY", "YEARLY"]))
    parts = [f"FREQ={freq}"]
    if draw(st.booleans()):
        parts.append(f"INTERVAL={draw(st.integers(1, 14))}")
    plain = freq in ("DAILY", "WEEKLY") or draw(st.booleans())
    nth = st.just("") if plain else st.sampled_from(["1", "2", "-1", "5"])
    choices = {
        "BYDAY": _listed(st.builds("{}{}".format, nth, st.sampled_from(WEEKDAYS))),
        "BYMONTHDAY": _listed(st.integers(-31, 31).filter(bool)),
        "BYMONTH": _listed(st.integers(1, 12)),
        "BYSETPOS": _listed(st.sampled_from([1, 2, -1])),
        "BYHOUR": _listed(st.integers(0, 23), 2),
        "BYMINUTE": _listed(st.integers(0, 59), 2),
        "WKST": st.sampled_from(WEEKDAYS),
    }
    for name in draw(st.lists(st.sampled_from(sorted(choices)), max_size=3, unique=True)):
        parts.append(f"{name}={draw(choices[name])}")
    end = draw(st.sampled_from(["", "COUNT", "UNTIL"]))
    if end == "COUNT":
        parts.append(f"COUNT={draw(st.integers(1, 40))}")
    if end == "UNTIL":
        parts.append(f"UNTIL={draw(st.sampled_from(['20280229', '20271031T023000', '20270601T080000Z', '20270230']))}")
    return ";".join(draw(st.permutations(parts)))


@settings(max_examples=400, deadline=None, derandomize=True, database=None, suppress_health_check=list(HealthCheck))
@given(
    rule=st.one_of(st.none(), rules()),
    start_ms=st.integers(ms_of("2025-10-20T00:00:00Z"), ms_of("2026-11-10T00:00:00Z")),
    zone=st.sampled_from(ZONES),
    from_days=st.integers(-30, 500),
    days=st.integers(0, 700),
)
def test_twins_agree(phone, rule, start_ms, zone, from_days, days):
    from_ms = start_ms + from_days * DAY_MS
    asked = (rule, utc(start_ms), zone, from_ms, from_ms + days * DAY_MS, 200)
    try:
        here = occurrences(*asked)
    except BadRule:
        here = {"bad": True}
    assert phone.expand(*asked) == here


@pytest.mark.parametrize(
    ("rule", "starts_at", "zone", "days"),
    [  # The days without their year, all of them 2026.
        # A weekly task at 08:00 in Berlin, over both changes of clocks.
        ("FREQ=WEEKLY", "2026-03-21T07:00:00Z", "Europe/Berlin", ["03-21T07:00", "03-28T07:00", "04-04T06:00"]),
        ("FREQ=WEEKLY", "2026-10-17T06:00:00Z", "Europe/Berlin", ["10-17T06:00", "10-24T06:00", "10-31T07:00"]),
        # 02:30 is skipped on 29 March and read with the offset before; on 25 October it occurs twice, the first counts.
        ("FREQ=DAILY;COUNT=3", "2026-03-28T01:30:00Z", "Europe/Berlin", ["03-28T01:30", "03-29T01:30", "03-30T00:30"]),
        ("FREQ=DAILY;COUNT=3", "2026-10-24T00:30:00Z", "Europe/Berlin", ["10-24T00:30", "10-25T00:30", "10-26T01:30"]),
        # Midnight does not exist in Santiago when clocks change.
        ("FREQ=DAILY;COUNT=3", "2026-09-05T04:00:00Z", "America/Santiago",
         ["09-05T04:00", "09-06T04:00", "09-07T03:00"]),
    ],
)  # fmt: skip
def test_the_clock_on_the_wall_holds(phone, rule, starts_at, zone, days):
    asked = (rule, starts_at, zone, 0, 4_000_000_000_000, 3)
    assert [utc(ms)[5:16] for ms in occurrences(*asked)] == days
    assert phone.expand(*asked) == occurrences(*asked)


@pytest.mark.parametrize(
    "rule",
    [
        "", "WEEKLY", "FREQ=SECONDLY", "FREQ=DAILY;FREQ=DAILY", "FREQ=DAILY;INTERVAL=0", "FREQ=DAILY;INTERVAL=1001",
        "FREQ=DAILY;COUNT=2;UNTIL=20270101", "FREQ=WEEKLY;BYDAY=1MO", "FREQ=MONTHLY;BYDAY=MO,1TU",
        "FREQ=MONTHLY;BYDAY=6MO",
        "FREQ=YEARLY;BYMONTH=2;BYDAY=53MO", "FREQ=DAILY;BYDAY=XX",
        "FREQ=DAILY;BYMONTHDAY=0", "FREQ=DAILY;BYMONTHDAY=32", "FREQ=DAILY;BYHOUR=-1", "FREQ=DAILY;BYHOUR=24",
        "FREQ=DAILY;BYMONTH=2;BYMONTHDAY=30", "FREQ=DAILY;INTERVAL=7;BYDAY=MO", "FREQ=WEEKLY;BYMONTH=2",
        "FREQ=MONTHLY;BYSETPOS=1", "FREQ=DAILY;UNTIL=2027", "FREQ=DAILY;X-OWN=1", "FREQ=DAILY;COUNT=१",
    ],
)  # fmt: skip
def test_refused_alike(phone, rule):
    with pytest.raises(BadRule):
        parse_rule(rule)
    if rule:
        assert phone.expand(rule, "2026-05-04T07:30:00Z", None, 0, 4_000_000_000_000) == {"bad": True}


def test_an_unknown_zone_is_refused_alike(phone):
    with pytest.raises(BadRule):
        occurrences("FREQ=DAILY", "2026-05-04T07:30:00Z", "Mars/Olympus", 0, 4_000_000_000_000)
    assert phone.expand("FREQ=DAILY", "2026-05-04T07:30:00Z", "Mars/Olympus", 0, 4_000_000_000_000) == {"bad": True}


def test_without_a_rule_a_task_needs_no_zone(phone):
    """A newer phone may name a zone that this one lacks; the moment itself is known."""
    asked = (None, "2026-05-04T07:30:00Z", "Mars/Olympus", 0, 4_000_000_000_000)
    assert occurrences(*asked) == phone.expand(*asked) == [ms_of("2026-05-04T07:30:00Z")]


@pytest.mark.parametrize(
    "rule", ["FREQ=DAILY", "FREQ=WEEKLY", "FREQ=DAILY;INTERVAL=3", "FREQ=WEEKLY;INTERVAL=2;BYDAY=SU,MO"]
)
def test_a_start_long_ago_costs_nothing_and_changes_nothing(phone, rule, monkeypatch):
    """A rule is not counted up through a century, day by day."""
    from_ms = ms_of("2026-05-04T07:30:00Z")
    asked = (rule, "1900-01-03T07:30:00Z", "Europe/Berlin", from_ms, from_ms + 60 * DAY_MS, 200)
    near = occurrences(*asked)
    assert near == phone.expand(*asked)
    started = []
    monkeypatch.setattr(recurrence, "_nearer", lambda parts, start, after: started.append(start) or start)
    assert occurrences(*asked) == near
    monkeypatch.undo()
    parts = parse_rule(rule)
    later = recurrence._nearer(parts, started[0], datetime(2026, 5, 3))
    assert datetime(2026, 5, 3) - later < timedelta(days=60)
