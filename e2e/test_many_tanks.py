"""A round of sixty tanks of which six need something: seen at a glance, found in three taps, fed and dosed by group."""

import json
from datetime import UTC, datetime, timedelta

import pytest
from foretold import plain, write
from playwright.sync_api import expect
from room_hands import join, share
from test_touch_and_access import found_wrong

pytestmark = pytest.mark.browser

TANKS, SCREENS, SCREEN_PX = 60, 6, 740
PLACES = ("Left rack", "Right rack", "Window", "Cellar", "Hall")
# These read too much of one thing.
NEED = (3, 14, 25, 36, 47, 58)


def racks(tanks=TANKS):
    """Sixty tanks in five places, or the first of them; each tested today, six of the sixty over a limit."""
    now = datetime.now(UTC)
    at = {
        days: (now - timedelta(days=days)).isoformat(timespec="milliseconds")[:23] + "Z" for days in (0, 3, 6, 13, 90)
    }
    bottle = {"name": "Green drops", "use": "fertiliser", "amount": 1, "unit": "ml", "per_l": 20, "basis": "whole_tank"}
    records = [["label", "label-01", bottle]]
    for i in range(tanks):
        tank = f"tank-{i:04}"
        about = {"name": f"Pool {i + 1}", "place": PLACES[i // 12], "walk_order": i, "water_l": 40, "feed_g_day": 0.1}
        records.append(["tank", tank, {**about, "started_at": at[90], "planting": "dense", "filter": "sponge"}])
        for days in (13, 6, 3, 0):
            for name in ("total_ammonia", "nitrite"):
                value = 0.5 if i in NEED and days == 0 and name == "nitrite" else 0
                fields = {"tank": tank, "at": at[days], "parameter": name, "value": value, "basis": "n"}
                records.append(["reading", f"read-{i:04}-{days}-{name[:3]}", fields])
    return records


def test_sixty_tanks_at_a_glance(served_room, new_phone):
    thumb = new_phone()
    join(thumb, served_room.link, "Aino", "Aino's phone")
    write(thumb, racks())
    thumb.stored()
    thumb.page.context.set_offline(True)
    thumb.turn_to("/")
    expect(thumb.page.locator(".many-count[aria-busy=false]")).to_have_text(
        f"{len(NEED)} of {TANKS} tanks need something"
    )
    expect(thumb.page.locator(".entry .tank-name")).to_have_count(len(NEED))
    assert "Pool 4" in plain(thumb.page.locator(".entry .tank-name").first)
    for place in PLACES:
        thumb.tap("button", place)
    expect(thumb.page.locator(".many a")).to_have_count(TANKS - len(NEED))
    height = thumb.page.evaluate("() => document.documentElement.scrollHeight")
    assert height <= SCREENS * SCREEN_PX, f"{height} px, all groups unfolded"
    assert found_wrong(thumb.page) == []
    print(f"sixty tanks: {height} px of {SCREENS * SCREEN_PX}")

    begun = thumb.taps
    thumb.tap_on(thumb.page.get_by_label("Name or number"))
    thumb.type("Name or number", "42")
    thumb.tap("link", "Pool 42")
    thumb.title("Pool 42")
    assert thumb.taps - begun <= 3

    thumb.turn_to("/")
    expect(thumb.page.locator(".many a")).to_have_count(TANKS - len(NEED))
    thumb.tap("link", "Next: Pool 4")
    thumb.title("Pool 4")
    thumb.turn_to("/")
    thumb.tap("button", "In order")
    expect(thumb.page.locator(".entry .tank-name")).to_have_count(len(NEED))
    thumb.page.reload()
    expect(thumb.page.get_by_role("button", name="In order")).to_have_attribute("aria-pressed", "true")


def test_a_group_is_fed_and_dosed(served_room, new_phone):
    thumb = new_phone()
    join(thumb, served_room.link, "Aino", "Aino's phone")
    write(thumb, racks(36))
    thumb.turn_to("/")
    expect(thumb.page.locator(".many-count[aria-busy=false]")).to_be_visible()
    thumb.tap("button", "Window")
    thumb.tap("button", "Feed 11")
    thumb.sees("11 meals saved on this phone")
    thumb.tap("link", "Dose them")
    thumb.title("Dose a group")
    thumb.tap("button", "Pool 30")
    thumb.tap("button", "Log 11 doses")
    thumb.sees("11 doses of Green drops saved on this phone")
    share(thumb)
    thumb.sees("Everything on this phone is shared.")
    rows = served_room.rows("SELECT kind, fields FROM records WHERE kind IN ('feeding', 'dose') AND deleted IS NULL")
    tanks = {kind: {json.loads(f)["tank"] for k, f in rows if k == kind} for kind in ("feeding", "dose")}
    window = {f"tank-{i:04}" for i in range(24, 36)}
    # The tank that reads too much is not fed.
    assert tanks == {"feeding": window - {"tank-0025"}, "dose": window - {"tank-0029"}}
    assert {json.loads(f)["amount"] for k, f in rows if k == "dose"} == {2}
