"""Two keepers record notes, photos and corrections of one tank; each sees what the other did, and when."""

import hashlib
import json
import re
from datetime import UTC, datetime, timedelta

import pytest
from foretold import write
from journal_hands import write_note
from playwright.sync_api import expect
from room_hands import invite, join, read_ammonia, share
from tank_hands import have_tank

pytestmark = pytest.mark.browser

NOW = datetime(2026, 5, 20, 10, 20, tzinfo=UTC)


def test_a_photo_and_a_correction_reach_the_other_phone(served_room, new_phone):
    thumb = new_phone()
    join(thumb, served_room.link, "Aino", "Aino's phone")
    have_tank(thumb, "Reed pool")
    thumb.stored()
    thumb.page.context.set_offline(True)
    write_note(thumb, "Plants pearling", "Algae on the glass", pictures=2)
    read_ammonia(thumb, "Reed pool", "0.25")
    thumb.tap("link", "History")
    thumb.tap("link", "Correct Test")
    thumb.tap("button", "0.1", exact=True)
    thumb.tap("button", "Save corrected")
    thumb.sees("Corrected; before: Ammonia (total) 0.25 mg/L as NH₄")
    thumb.tap("button", "Notes, photos")
    expect(thumb.page.get_by_text("Ammonia (total)")).to_have_count(0)
    thumb.tap("link", "Photo 1")
    thumb.title("Photo")
    thumb.sees("Algae on the glass")

    thumb.page.context.set_offline(False)
    share(thumb)
    other = new_phone()
    join(other, invite(thumb), "Bo", "Bo's phone")
    other.turn_to("/timeline")
    other.sees("Corrected; before: Ammonia (total) 0.25 mg/L as NH₄")
    expect(other.page.get_by_text(re.compile("· Aino")).first).to_be_visible()
    other.tap("link", "Photo 2")
    large = other.page.locator("figure img")
    expect(large).to_be_visible()
    assert large.evaluate("(one) => one.decode().then(() => [one.naturalWidth, one.naturalHeight])") == [64, 48]
    other.sees("Plants pearling")

    readings = [
        json.loads(row["fields"]) for row in served_room.rows("SELECT fields FROM records WHERE kind = 'reading'")
    ]
    assert sorted((one["value"], "supersedes" in one) for one in readings) == [(0.1, True), (0.25, False)]
    photos = served_room.rows("SELECT sha256, bytes FROM photos")
    assert len(photos) == 2
    assert all(hashlib.sha256(row["bytes"]).hexdigest() == row["sha256"] for row in photos)


def test_a_change_written_down_late_and_in_the_wrong_tank(new_phone):
    thumb = new_phone()
    thumb.page.clock.set_fixed_time(NOW)
    thumb.open("/")
    have_tank(thumb, "Moss corner")
    have_tank(thumb, "Reed pool")
    thumb.tap("link", "Change")
    thumb.page.get_by_text("When: now").tap()
    thumb.type("Day and time", "2099-05-04T08:00")
    thumb.sees("That has not happened yet")
    expect(thumb.page.get_by_role("button", name="Log")).to_be_disabled()
    thumb.tap("button", "3 hours ago")
    thumb.tap("button", "Log")
    thumb.sees("saved on this phone")
    thumb.tap("link", "History")
    thumb.sees("Changed 26 L")
    (said,) = thumb.page.locator("time").evaluate_all("(all) => all.map((one) => one.dateTime)")
    assert datetime.fromisoformat(said) == NOW - timedelta(hours=3)

    thumb.tap("link", "Correct Change")
    thumb.page.get_by_text("Tank: Reed pool").tap()
    thumb.tap("button", "Moss corner")
    thumb.page.reload()
    thumb.tap("button", "Save corrected")
    thumb.sees("Nothing recorded yet.")
    thumb.turn_to("/tank/tank-moss-corner/history")
    thumb.sees("Corrected; before: Changed 26 L · Reed pool")
    thumb.tap("button", "Undo")
    thumb.sees("Nothing recorded yet.")


def test_the_history_from_a_chosen_day_back(new_phone):
    thumb = new_phone()
    thumb.page.clock.set_fixed_time(NOW)
    thumb.open("/")
    have_tank(thumb, "Reed pool")
    tank = {"tank": "tank-reed-pool"}
    notes = [("note", f"note-{day}", {**tank, "at": at(day), "text": f"Note of day {day}"}) for day in (3, 5, 7)]
    change = ("water_change", "change-6", {**tank, "at": at(6), "litres": 20, "fraction": 0.2})
    meals = [("feeding", f"meal-{n}", {**tank, "at": at(4, n), "feed_g": 0.1}) for n in range(45)]
    write(thumb, [*notes, change, *meals])
    thumb.tap("link", "History")
    thumb.sees("Note of day 7")
    thumb.page.get_by_text("Go to a day").tap()
    thumb.type("Day", "2026-05-05")
    thumb.sees("Tuesday 5 May and before")
    thumb.sees("Note of day 5")
    expect(thumb.page.get_by_text("Note of day 7")).to_have_count(0)
    expect(thumb.page.get_by_text("Note of day 3")).to_have_count(0)
    thumb.tap("button", "Show older")
    thumb.sees("Note of day 3")
    # With a part deleted the field holds no day: the page says so, and the list stays.
    thumb.page.get_by_role("textbox", name="Day").press("Backspace")
    thumb.sees("This is not a date.")
    thumb.sees("Tuesday 5 May and before")
    expect(thumb.page.get_by_text("Note of day 7")).to_have_count(0)

    thumb.tap("button", "Water")
    thumb.sees("Nothing on Tuesday 5 May or before.")
    thumb.type("Day", "2026-05-07")
    thumb.sees("Nothing on Thursday 7 May. This is from before.")
    thumb.sees("Changed 20 L")
    thumb.tap("button", "Notes, photos")
    thumb.type("Day", "2026-05-05")
    thumb.tap("link", "Correct Note")
    thumb.title("Correct")
    thumb.tap("link", "Back")
    thumb.sees("Tuesday 5 May and before")
    thumb.sees("Note of day 5")
    thumb.turn_to("/timeline")
    thumb.sees("Note of day 7")
    thumb.page.get_by_text("Go to a day").tap()
    thumb.type("Day", "2026-05-04")
    thumb.sees("Nothing on Monday 4 May. This is from before.")
    thumb.tap("button", "All", exact=True)
    thumb.sees("Monday 4 May and before")
    thumb.tap("button", "Back to the newest")
    thumb.sees("Note of day 7")


def at(day, minute=0):
    """A moment of May."""
    return datetime(2026, 5, day, 10, minute, tzinfo=UTC).strftime("%Y-%m-%dT%H:%M:%S.000Z")
