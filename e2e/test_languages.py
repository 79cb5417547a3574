"""Other words and units: a German phone speaks German, a US phone shows gallons, and records still hold litres."""

import json
import re

import pytest
from playwright.sync_api import expect
from room_hands import join, share
from setup_hands import OF_PLAN, plan_tank

pytestmark = pytest.mark.browser


def test_language_and_units_change_at_once_and_keep_what_is_typed(new_phone):
    thumb = new_phone()
    thumb.open("/tanks/new")
    thumb.pick("rectangular")
    thumb.type("Length", "61.5")
    thumb.turn_to("/room")
    thumb.tap("link", "Words and units")
    thumb.sees("Change 22.5 L at 24.5 °C.")
    thumb.pick("US gallons")
    thumb.sees("Change 5.9 US gal at 76.1 °F.")
    thumb.pick("Deutsch")
    expect(thumb.page.locator("html")).to_have_attribute("lang", "de")
    thumb.page.reload()
    thumb.page.locator("legend").first.wait_for()
    expect(thumb.page.locator("html")).to_have_attribute("lang", "de")
    thumb.page.locator("label").filter(has_text="English").tap()
    expect(thumb.page.locator("html")).to_have_attribute("lang", "en-GB")
    thumb.turn_to("/tanks/new")
    expect(thumb.page.get_by_label("Length").first).to_have_value("24.2")


def test_a_phone_in_gallons_says_gallons_and_records_litres(served_room, new_phone):
    thumb = new_phone(locale="en-US")
    join(thumb, served_room.link, "Ada", "Ada's phone")
    thumb.turn_to("/tanks/new")
    thumb.pick("rectangular")
    for label, figure in (("Length", "30"), ("Width", "12.5"), ("Height", "16")):
        thumb.type(label, figure)
    expect(thumb.page.get_by_label("Water in it").first).to_have_text("26.0 US gal")
    thumb.type("Name", "Reed pool")
    thumb.tap("button", "Save tank")
    thumb.title("Reed pool")
    thumb.tap("link", "Test")
    for place in range(2, 6):
        thumb.tap("button", "Skip")
        thumb.sees(f"{place} of 5")
    thumb.key_in("77")
    thumb.tap("button", "Save 1 reading")
    thumb.sees("77.0")
    thumb.tap("link", "Change")
    thumb.tap("button", "6.5 US gal, type another figure")
    thumb.key_in("7.5")
    thumb.tap("button", "Log 7.5 US gal")
    thumb.sees("7.5 US gal saved on this phone")
    share(thumb)
    held = {row["kind"]: json.loads(row["fields"]) for row in served_room.rows("SELECT kind, fields FROM records")}
    assert held["tank"]["water_l"] == pytest.approx(30 * 12.5 * 16 * 16.387064 / 1000)
    assert held["reading"]["value"] == 25 and held["reading"]["unit"] == "°C"
    assert held["water_change"]["litres"] == pytest.approx(7.5 * 3.785411784)


# A figure with a unit that a US phone does not show. Grams, millilitres and what a kit or a lamp prints stay.
METRIC = re.compile(r"\d[\d,.]*\s(?:L|cm|mm|m|kg|°C|°C/hour|kPa|kN/m²|cm²|m²)(?![\w/²])[^\n]*")


def test_a_us_phone_sets_a_tank_up_in_one_system(new_phone):
    thumb = new_phone(locale="en-US")
    thumb.open("/")
    path = plan_tank(thumb)
    for rest in (*OF_PLAN, "/setup/place", "/setup/hardscape", "/setup/warmth", "/setup/first_fish"):
        thumb.turn_to(f"{path}{rest}")
        assert METRIC.findall(thumb.page.inner_text("main")) == [], rest
    thumb.turn_to(f"{path}/setup/glass")
    thumb.sees("42.8")
    thumb.sees("35.4")
