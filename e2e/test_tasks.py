"""A task, as one story: made from tiles, due in the round, done by one tap, undone, skipped, ended."""

import json
import urllib.error
import urllib.request

import pytest
from foretold import write
from icalendar import Calendar
from playwright.sync_api import expect
from room_hands import join, share

pytestmark = pytest.mark.browser


def test_a_task_from_its_tiles_to_its_end(served_room, new_phone):
    thumb = new_phone()
    join(thumb, served_room.link, "Aino", "Aino's phone")
    write(thumb, [["tank", "tank-0001", {"name": "Reed pool", "water_l": 80, "walk_order": 1}]])
    thumb.stored()
    thumb.turn_to("/")
    thumb.page.context.set_offline(True)
    thumb.tap("link", "Tasks")
    thumb.sees("No task yet.")
    thumb.tap("link", "New task")
    thumb.tap("button", "Save task")
    expect(thumb.page.get_by_role("alert")).to_contain_text("Say what to do")
    thumb.tap("button", "Wipe the glass")
    thumb.pick("Reed pool")
    thumb.pick("every few days")
    thumb.tap("button", "Days from one to the next: more")
    thumb.sees("Every 3 days at 08:00, from")
    thumb.page.reload()
    thumb.sees("Every 3 days at 08:00, from")
    thumb.pick("18:00")
    thumb.tap("button", "Save task")
    thumb.sees("Wipe the glass saved on this phone")

    thumb.turn_to("/")
    thumb.tap("button", "Done Wipe the glass")
    thumb.sees("Wipe the glass: done, saved on this phone")
    expect(thumb.page.get_by_role("button", name="Done Wipe the glass")).to_have_count(0)
    thumb.tap("button", "Undo")
    expect(thumb.page.get_by_role("button", name="Done Wipe the glass")).to_have_count(1)
    thumb.tap("link", "Wipe the glass")
    thumb.tap("button", "Skip once")
    thumb.sees("skipped once, saved on this phone")
    thumb.sees("Next:")
    thumb.tap("button", "Done already")
    thumb.sees("Wipe the glass: done, saved on this phone")
    thumb.tap("button", "End it")
    thumb.sees("Wipe the glass is ended")
    expect(thumb.page.get_by_role("button", name="Done already")).to_have_count(0)

    thumb.page.context.set_offline(False)
    share(thumb)
    thumb.sees("Everything on this phone is shared.")
    thumb.turn_to("/calendar")
    with thumb.page.expect_download() as held:
        thumb.tap("button", "Keep the file")
    assert Calendar.from_ical(held.value.path().read_bytes())["version"] == "2.0"
    thumb.tap("button", "Make my link")
    expect(thumb.page.get_by_role("img", name="QR code of the calendar link")).to_be_visible()
    link = thumb.page.get_by_label("The calendar link", exact=True).inner_text()
    with urllib.request.urlopen(link) as answer:
        assert Calendar.from_ical(answer.read()).walk("VEVENT") == [], "its only task has ended"
    thumb.tap("button", "Close my link")
    thumb.sees("The calendar link opens nothing any more")
    with pytest.raises(urllib.error.HTTPError) as gone:
        urllib.request.urlopen(link)
    gone.value.close()
    assert gone.value.code == 404

    (task,) = kept(served_room, "task")
    assert (task["title"], task["rule"], task["zone"], task["over"]) == (
        "Wipe the glass", "FREQ=DAILY;INTERVAL=3", "Europe/Berlin", True,
    )  # fmt: skip
    dones = kept(served_room, "task_done")
    assert sorted(one.get("skipped", False) for one in dones) == [False, True]
    assert len({one["due_at"] for one in dones}) == 2

    # A German phone shows the tile's title in German; changing the time there leaves the stored title as it was.
    thumb.turn_to("/room/display")
    thumb.pick("Deutsch")
    expect(thumb.page.locator("html")).to_have_attribute("lang", "de")
    thumb.turn_to("/tasks")
    thumb.tap("link", "Scheiben putzen")
    thumb.tap("link", "Diese Aufgabe ändern")
    thumb.pick("12:00")
    thumb.tap("button", "Aufgabe speichern")
    thumb.title("Scheiben putzen")
    thumb.turn_to("/room")
    thumb.tap("button", "Jetzt teilen")
    thumb.sees("Alles auf diesem Handy ist geteilt.")
    (later,) = kept(served_room, "task")
    assert later["starts_at"] != task["starts_at"]
    assert (later["title"], later["from_tile"]) == ("Wipe the glass", {"code": "glass", "words": "Wipe the glass"})


def kept(served_room, kind):
    """The fields of a kind's records that stand on the server."""
    rows = served_room.rows("SELECT fields FROM records WHERE kind = ? AND deleted IS NULL", kind)
    return [json.loads(row["fields"]) for row in rows]


DONES = """() => app().then(({ live: { room } }) =>
  room.value.all("task_done").map(({ at, due_at }) => [at, due_at]))"""


def test_a_task_that_was_done_earlier(new_phone):
    thumb = new_phone()
    thumb.page.clock.set_fixed_time("2026-05-20T10:20:00Z")
    thumb.open("/")
    daily = {"title": "Wipe the glass", "starts_at": "2026-05-04T07:00:00.000Z", "rule": "FREQ=DAILY", "zone": "UTC"}
    write(thumb, [["task", "task-0001", daily]])
    thumb.turn_to("/task/task-0001")
    thumb.page.get_by_text("When: now").tap()
    thumb.type("Day and time", "2099-05-04T08:00")
    thumb.sees("That has not happened yet")
    for name in ("Done", "Skip once"):
        expect(thumb.page.get_by_role("button", name=name, exact=True)).to_be_disabled()
    thumb.tap("button", "3 hours ago")
    thumb.tap("button", "Done", exact=True)
    thumb.sees("Wipe the glass: done, saved on this phone")
    # The next one follows the occurrence, and the form stands at now again.
    thumb.sees("Next: tomorrow 09:00")
    thumb.sees("When: now")
    assert thumb.page.evaluate(DONES) == [["2026-05-20T07:20:00.000Z", "2026-05-20T07:00:00.000Z"]]
    thumb.page.get_by_text("When: now").tap()
    thumb.tap("button", "1 hour ago")
    thumb.tap("button", "Skip once")
    thumb.sees("skipped once, saved on this phone")
    assert ["2026-05-20T09:20:00.000Z", "2026-05-21T07:00:00.000Z"] in thumb.page.evaluate(DONES)
