"""One parameter alone, from a tank's latest figures: a temperature in three taps, and no half test lost."""

import pytest
from foretold import write
from phones import SMALL
from playwright.sync_api import expect
from room_hands import join, share
from tank_hands import have_tank

pytestmark = pytest.mark.browser

MOST_TAPS = 3
TEMPERATURES = """() => app().then(({ live: { room } }) => room.value.all("reading")
  .filter(({ parameter }) => parameter === "temperature").map(({ value, unit }) => [value, unit]).sort())"""
# How far the keypad reaches below the foot's upper edge, where nothing can be tapped, with the page not scrolled.
UNDER_THE_FOOT = """() => scrollY + document.querySelector(".keypad").getBoundingClientRect().bottom
  - document.querySelector(".foot").getBoundingClientRect().top"""
READ = {"at": "2026-05-04T07:30:00.000Z", "parameter": "temperature", "unit": "°C"}


def read_before(thumb, celsius):
    """A tank with one temperature."""
    have_tank(thumb, "Reed pool")
    tank = thumb.page.url.split("/")[-1]
    write(thumb, [("reading", "reading-0001", {**READ, "tank": tank, "value": celsius})])
    thumb.sees("Latest figures")


def test_a_temperature_takes_three_taps_and_leaves_a_half_made_test_as_it_is(new_phone):
    thumb = new_phone(size=SMALL)
    thumb.open("/")
    read_before(thumb, 24.3)
    thumb.tap("link", "Test")
    thumb.tap("button", "0.1", exact=True)
    thumb.tap("link", "Back")
    thumb.title("Reed pool")

    before = thumb.taps
    thumb.tap("link", "Temperature")
    near = thumb.page.get_by_role("group", name="Near the last reading")
    expect(near.get_by_role("button")).to_have_text(["23.5", "24.0", "24.5", "25.0", "25.5"])
    assert thumb.page.evaluate(UNDER_THE_FOOT) <= 0
    thumb.tap("button", "25.0", exact=True)
    thumb.tap("button", "Save 1 reading")
    thumb.sees("1 reading saved on this phone")
    taps = thumb.taps - before
    print(f"a temperature alone: {taps} taps")
    assert taps <= MOST_TAPS
    assert thumb.page.evaluate(TEMPERATURES) == [[24.3, "°C"], [25, "°C"]]

    thumb.tap("link", "Test")
    thumb.sees("2 of 5")
    expect(thumb.page.get_by_role("button", name="Save 1 reading")).to_be_enabled()


def test_the_tiles_are_whole_degrees_fahrenheit_where_a_phone_shows_them(new_phone):
    thumb = new_phone(locale="en-US")
    thumb.open("/")
    read_before(thumb, 24.3)
    thumb.tap("link", "Temperature")
    near = thumb.page.get_by_role("group", name="Near the last reading")
    expect(near.get_by_role("button")).to_have_text(["74", "75", "76", "77", "78"])
    thumb.tap("button", "77", exact=True)
    thumb.sees("77.0 °F")
    thumb.tap("button", "Temperature")
    expect(thumb.page.get_by_role("button", name="77", exact=True)).to_have_attribute("aria-pressed", "true")
    thumb.tap("button", "Save 1 reading")
    thumb.sees("1 reading saved on this phone")
    assert thumb.page.evaluate(TEMPERATURES) == [[24.3, "°C"], [25, "°C"]]


def test_a_test_without_an_earlier_reading_keeps_the_keypad_in_sight(new_phone):
    thumb = new_phone(size=SMALL)
    thumb.open("/")
    have_tank(thumb, "Reed pool")
    for parameter in ("ph", "temperature", "kh"):
        thumb.turn_to(f"/tank/tank-reed-pool/test?of={parameter}")
        assert thumb.page.evaluate(UNDER_THE_FOOT) <= 0, parameter
    thumb.turn_to("/tank/tank-reed-pool/test")
    for _ in range(3):
        thumb.tap("button", "Skip")
    thumb.sees("4 of 5")
    assert thumb.page.evaluate(UNDER_THE_FOOT) <= 0


def test_who_may_only_look_finds_no_way_to_a_test(served_room, new_phone):
    thumb = new_phone()
    join(thumb, served_room.invite("owner"), "Aino", "Aino's phone")
    read_before(thumb, 24.3)
    expect(thumb.page.get_by_role("link", name="Temperature")).to_have_count(1)
    share(thumb)
    looker = new_phone()
    join(looker, served_room.invite("viewer"), "Bo", "Bo's phone")
    looker.tap("link", "Reed pool")
    looker.sees("Temperature")
    expect(looker.page.get_by_role("link", name="Temperature")).to_have_count(0)
