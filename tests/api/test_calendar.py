"""The calendar of a room's tasks: what a calendar program reads, who gets it, and that no log holds its key."""

import re
import urllib.request
from datetime import datetime
from zoneinfo import ZoneInfo, available_timezones

import pytest
from fish_rooms import Phone
from icalendar import Calendar
from limnary.api import calendars
from limnary.calendar_file import MOST_ZONES, calendar_file
from limnary.ids import utc
from limnary.store import Store, backup, people
from started_server import RealServer

BERLIN = ZoneInfo("Europe/Berlin")
DUE = "2026-10-24T06:00:00.000Z"


def weekly(phone, **more):
    fields = {"title": "Wipe the glass", "starts_at": "2026-10-15T06:00:00.000Z", "rule": "FREQ=WEEKLY;BYDAY=SA"}
    return phone.op("task", {**fields, "zone": "Europe/Berlin", **more})


def link(phone):
    made = phone.call("POST", "/rooms/{room}/calendar")
    assert made.status_code == 201, made.text
    return made.json["link"].removeprefix("http://localhost/api/v1")


def read(phone, path):
    answer = Phone(phone.room).call("GET", path)
    assert (answer.status_code, answer.mimetype) == (200, "text/calendar"), answer.text
    assert answer.headers["Cache-Control"] == "no-store"
    return Calendar.from_ical(answer.data)


def events(calendar):
    return {str(one["summary"]): one for one in calendar.walk("VEVENT")}


def test_what_a_calendar_program_reads(fish_room):
    owner = fish_room.owner
    tank, resting = owner.tank(name="Reed pool"), owner.tank(name="Away", resting=True)
    task = weekly(owner, tank=tank["id"], note="Not for the calendar")
    skipped = owner.op("task_done", {"task": task["id"], "at": DUE, "due_at": DUE, "skipped": True})
    until = weekly(owner, title="Until a day", rule="FREQ=DAILY;INTERVAL=2;UNTIL=20261101")
    gone = weekly(owner, title="Gone")
    ops = (
        tank, resting, task, skipped, until, gone, owner.op("task", {}, "del", gone["id"]),
        weekly(owner, title="Ended", over=True), weekly(owner, title="Resting", tank=resting["id"]),
        weekly(owner, title="Once, here", rule=None), weekly(owner, title="Strange", rule="FREQ=HOURLY"),
        weekly(owner, title="Comma, semi;colon, ümlaut and a long line that has to be folded after so many octets"),
    )  # fmt: skip
    assert {one["status"] for one in owner.results(*[{**op, "fields": _given(op["fields"])} for op in ops])} == {"ok"}
    calendar = read(owner, link(owner))
    found = events(calendar)
    long = "Comma, semi;colon, ümlaut and a long line that has to be folded after so many octets"
    assert set(found) == {"Reed pool: Wipe the glass", "Until a day", "Once, here", "Strange", long}
    wipe = found["Reed pool: Wipe the glass"]
    # The start is the first Saturday at 08:00 local time; the file itself holds the rule and the zone.
    assert wipe["dtstart"].dt == datetime(2026, 10, 17, 8, tzinfo=BERLIN)
    assert wipe["dtstart"].params["TZID"] == "Europe/Berlin"
    assert wipe["rrule"].to_ical() == b"FREQ=WEEKLY;BYDAY=SA"
    assert wipe["exdate"].dts[0].dt == datetime(2026, 10, 24, 8, tzinfo=BERLIN)
    assert found["Until a day"]["rrule"].to_ical() == b"FREQ=DAILY;UNTIL=20261101T225959Z;INTERVAL=2"
    assert "rrule" not in found["Once, here"] and "rrule" not in found["Strange"]
    (clock,) = calendar.walk("VTIMEZONE")
    assert clock["tzid"] == "Europe/Berlin"
    assert "Not for the calendar" not in str(calendar.to_ical()), "titles and times only"


def _given(fields):
    return {name: value for name, value in fields.items() if value is not None}


def test_a_link_reads_its_room_and_nothing_else(fish_room):
    owner, viewer = fish_room.owner, fish_room.phone("viewer", "Vic")
    owner.results(weekly(owner))
    path = link(viewer)
    assert set(events(read(viewer, path))) == {"Wipe the glass"}
    key = path.partition("key=")[2]
    stranger = Phone(fish_room)
    stranger.key = key
    assert stranger.call("GET", "/me").status_code == 401, "it is no phone's key"
    assert events(read(fish_room.stranger(), path)), "it needs no phone's key"
    assert stranger.call("GET", f"/calendar.ics?key={owner.key}").status_code == 404


def test_a_link_ends_when_revoked_replaced_or_its_keeper_is_out(fish_room):
    owner, kim = fish_room.owner, fish_room.phone("keeper", "Kim")
    assert kim.call("GET", "/rooms/{room}/calendar").json == {"made_at": None}
    first, other = link(kim), link(owner)
    assert kim.call("GET", "/rooms/{room}/calendar").json == {"made_at": utc(fish_room.at)}
    second = link(kim)
    assert Phone(fish_room).call("GET", first).status_code == 404
    read(kim, second)
    assert kim.call("DELETE", "/rooms/{room}/calendar").status_code == 204
    assert Phone(fish_room).call("GET", second).status_code == 404
    third = link(kim)
    owner.call("DELETE", f"/rooms/{{room}}/people/{kim.keeper}")
    assert Phone(fish_room).call("GET", third).status_code == 404
    read(owner, other)


def test_its_key_is_stored_hashed_and_stays_closed_after_a_restore(fish_room, tmp_path):
    kim = fish_room.phone("keeper", "Kim")
    path = link(kim)
    files = fish_room.store.files
    backup.back_up(files, tmp_path / "copy.zip", fish_room.at)
    kim.call("DELETE", "/rooms/{room}/calendar")
    fish_room.store.close()
    key = path.partition("key=")[2].encode()
    assert all(key not in one.read_bytes() for one in files.folder.rglob("*") if one.is_file())
    backup.restore(files, tmp_path / "copy.zip", fish_room.at)
    fish_room.store.prepare()
    assert Phone(fish_room).call("GET", path).status_code == 404


@pytest.mark.parametrize("status", [200, 404])
def test_the_access_log_holds_no_key(tmp_path, status):
    server = RealServer(tmp_path / "data", "--access-log").start()
    store = Store(tmp_path / "data", lambda: 1_780_000_000_000)
    with store.files.writing(store.files.people) as db:
        (room,) = people.all_rooms(db)
        keeper = people.add_keeper(db, "Kim", 0)
        people.add_member(db, room["id"], keeper, "viewer", 0)
    key = (
        store.make_calendar_key(room["id"], {"keeper": keeper, "id": "desk"})["key"]
        if status == 200
        else "not-a-key-but-secret-all-the-same"
    )
    store.close()
    try:
        with urllib.request.urlopen(f"{server.url}/api/v1/calendar.ics?key={key}") as answer:
            assert answer.status == status
    except urllib.error.HTTPError as no:
        assert no.code == status
        no.close()
    server.stop()
    assert re.search(rf"GET /api/v1/calendar\.ics {status} ", server.out)
    assert key not in server.out


def test_the_file_is_made_once_until_the_room_changes(fish_room, monkeypatch):
    """Whoever holds a link may ask as often as they like, and a file of many zones takes a while."""
    made = []
    monkeypatch.setattr(calendars, "calendar_file", lambda *given: made.append(given) or calendar_file(*given))
    owner = fish_room.owner
    owner.results(weekly(owner))
    path = link(owner)
    for _ in range(3):
        assert set(events(read(owner, path))) == {"Wipe the glass"}
    assert len(made) == 1
    owner.results(weekly(owner, title="Feed"))
    assert set(events(read(owner, path))) == {"Wipe the glass", "Feed"}
    owner.call("PATCH", "/rooms/{room}", {"name": "Renamed"})
    assert read(owner, path)["x-wr-calname"] == "Renamed"
    fish_room.at += 86_400_000
    read(owner, path)
    assert len(made) == 4


def test_of_hundreds_of_zones_few_are_described(fish_room):
    zones = sorted(available_timezones() - {"UTC", "localtime", "Factory", "posixrules"})[:400]
    owner = fish_room.owner
    assert {one["status"] for one in owner.results(*(weekly(owner, zone=zone) for zone in zones))} == {"ok"}
    calendar = read(owner, link(owner))
    assert len(calendar.walk("VTIMEZONE")) == MOST_ZONES
    assert len(calendar.walk("VEVENT")) == len(zones)


def test_the_calendars_of_many_rooms_are_not_all_held(fish_room, monkeypatch):
    monkeypatch.setattr(calendars, "MOST_HELD", 2)
    stranger = [fish_room.stranger() for _ in range(4)]
    for phone in stranger:
        room = phone.call("GET", "/me").json["rooms"][0]["id"]
        made = phone.call("POST", f"/rooms/{room}/calendar").json["link"].removeprefix("http://localhost/api/v1")
        read(phone, made)
    assert len(fish_room.app.extensions["limnary_calendars"]._held) == 2
