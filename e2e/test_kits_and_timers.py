"""A keeper's own kit: its steps become tiles, its waits become timers that survive a reload; drops are counted."""

from datetime import UTC, datetime, timedelta

import pytest
from playwright.sync_api import expect
from tank_hands import have_tank

pytestmark = pytest.mark.browser

NOW = datetime(2026, 5, 20, 10, 20, tzinfo=UTC)


def test_own_kit_gives_its_tiles_and_timers(new_phone):
    thumb = new_phone()
    thumb.page.clock.set_fixed_time(NOW)
    thumb.open("/")
    have_tank(thumb, "Reed pool")
    thumb.tap("link", "Test")
    thumb.tap("link", "Set up my kit")
    thumb.type("Name", "Drop test")
    thumb.pick("as nitrogen")
    for place, step in enumerate(("0", "0,2", "0.4", "0.8"), 1):
        thumb.page.get_by_role("group", name="Its steps").get_by_role("button", name="Add one").tap()
        thumb.type(f"Its steps, in order {place}", step)
    timed = thumb.page.get_by_role("group", name="Its timed steps")
    for place, (what, seconds) in enumerate((("Shake", "20"), ("Wait", "300"))):
        timed.get_by_role("button", name="Add one").tap()
        timed.get_by_label("What to do").nth(place).fill(what)
        timed.get_by_label("For s").nth(place).fill(seconds)
    thumb.tap("button", "Save", exact=True)
    thumb.title("Reed pool")

    thumb.tap("button", "0:20")
    thumb.tap("button", "5:00")
    strip = thumb.page.locator(".timers")
    expect(strip.get_by_role("link")).to_have_count(2)
    thumb.page.clock.set_fixed_time(NOW + timedelta(seconds=5))
    thumb.page.reload()
    expect(strip.get_by_text("Shake 0:15")).to_be_visible()
    thumb.page.clock.set_fixed_time(NOW + timedelta(seconds=25))
    expect(strip.get_by_role("button", name="Read now: Ammonia: Shake")).to_be_visible()
    expect(strip.get_by_text("Wait 4:35")).to_be_visible()
    thumb.tap("button", "Read now")
    expect(strip.get_by_text("Shake")).to_have_count(0)

    thumb.tap("button", "0.4", exact=True)
    thumb.tap("button", "Save 1 reading")
    thumb.page.get_by_text("As other kits read it").tap()
    thumb.sees("= 0.52 mg/L as NH₄")
    thumb.tap("link", "Test")
    thumb.tap("button", "Carbonate hardness")
    thumb.tap("link", "Set up my kit")
    thumb.type("Name", "Hardness drops")
    thumb.type("One drop stands for", "0,5")
    thumb.tap("button", "Save", exact=True)
    thumb.key_in("7")
    thumb.sees("= 3.5 °dKH")
    thumb.tap("button", "Next")
    thumb.sees("General hardness")
    thumb.tap("button", "Skip")
    thumb.sees("Read so far")
    thumb.tap("button", "Save 1 reading")
    thumb.sees("Carbonate hardness")
    thumb.tap("link", "Trends")
    expect(thumb.page.get_by_role("heading", name="Carbonate hardness °dKH")).to_be_visible()
    thumb.sees("3.5")
    thumb.turn_to("/room")
    thumb.sees("Drop test")
    thumb.sees("Hardness drops")
