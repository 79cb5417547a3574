"""At a desk: a test of six figures by keyboard, in a grid; charts side by side."""

import json

import pytest
from foretold import write
from playwright.sync_api import expect
from room_hands import join, share
from test_many_tanks import NEED, PLACES, TANKS, racks
from test_touch_and_access import found_wrong

pytestmark = pytest.mark.browser

DESK = {"width": 1280, "height": 800}
FIGURES = {"total_ammonia": "0", "nitrite": "0", "nitrate": "5", "ph": "7", "temperature": "24", "kh": "4"}
MOST_KEYS = 15


def test_six_figures_in_fewer_than_fifteen_keys(served_room, new_phone):
    desk = new_phone(size=DESK)
    join(desk, served_room.link, "Aino", "Aino's desk")
    write(desk, [["tank", f"tank-000{i}", {"name": f"Pool {i}", "water_l": 80, "walk_order": i}] for i in (1, 2)])
    desk.turn_to("/tanks")
    desk.tap("link", "Tests by keyboard")
    first, second = (desk.page.get_by_role("region", name=f"Pool {i}").get_by_role("textbox") for i in (1, 2))
    expect(first).to_have_count(len(FIGURES))
    tops = {round(first.nth(place).bounding_box()["y"]) for place in range(len(FIGURES))}
    assert len(tops) == 1, "one row at a desk"
    first.nth(0).focus()
    keys = 0
    for place, figure in enumerate(FIGURES.values()):
        for key in [*figure, *(["Tab"] if place < len(FIGURES) - 1 else ["Enter"])]:
            desk.page.keyboard.press(key)
            keys += 1
    desk.sees("6 readings saved on this phone")
    assert keys < MOST_KEYS
    expect(second.nth(0)).to_be_focused()
    for _ in range(4):
        desk.page.keyboard.press("ArrowRight")
    expect(second.nth(4)).to_be_focused()
    desk.page.keyboard.press("ArrowUp")
    expect(first.nth(4)).to_be_focused()
    desk.page.keyboard.type("900")
    desk.page.keyboard.press("Enter")
    desk.sees("Allowed: a number from")
    expect(first.nth(4)).to_have_value("900")
    share(desk)
    desk.sees("Everything on this phone is shared.")
    rows = served_room.rows("SELECT fields FROM records WHERE kind = 'reading'")
    read = [json.loads(row["fields"]) for row in rows]
    assert {one["parameter"]: one["value"] for one in read} == {name: int(text) for name, text in FIGURES.items()}
    assert {one["tank"] for one in read} == {"tank-0001"}
    assert len({one["test"] for one in read}) == 1


def test_the_list_stands_beside_a_tank(served_room, new_phone):
    desk = new_phone(size=DESK)
    join(desk, served_room.link, "Aino", "Aino's desk")
    write(desk, racks())
    desk.turn_to("/tank/tank-0029")
    listed = desk.page.get_by_role("navigation", name="Tanks", exact=True)
    present = listed.locator("[aria-current]")
    expect(present).to_contain_text("30 Pool 30")
    expect(listed.get_by_role("button", name=PLACES[2])).to_have_attribute("aria-expanded", "true")
    # Those that need something come first; of the others, the place of the present tank is unfolded.
    expect(listed.get_by_role("link")).to_have_count(len(NEED) + TANKS // len(PLACES) - 1)
    page = desk.page.locator(".desk > .page")
    assert listed.bounding_box()["x"] + listed.bounding_box()["width"] <= page.bounding_box()["x"]
    assert found_wrong(desk.page) == []
    listed.get_by_label("Name or number").fill("42")
    desk.page.keyboard.press("Tab")
    desk.page.keyboard.press("Enter")
    desk.title("Pool 42")
    expect(present).to_contain_text("42 Pool 42")
    desk.page.set_viewport_size({"width": 880, "height": 800})
    expect(listed).to_have_count(0)


def test_a_month_is_printed_from_the_history(served_room, new_phone):
    desk = new_phone(size=DESK)
    join(desk, served_room.link, "Aino", "Aino's desk")
    at = desk.page.evaluate("() => new Date(Date.now() - 60_000).toISOString()")
    write(
        desk,
        [
            ["tank", "tank-0001", {"name": "Pool 1", "water_l": 80}],
            ["reading", "read-0001", {"tank": "tank-0001", "at": at, "parameter": "nitrite", "value": 0.25}],
            ["water_change", "chng-0001", {"tank": "tank-0001", "at": at, "litres": 20, "fraction": 0.25}],
        ],
    )
    desk.turn_to("/tank/tank-0001/history")
    desk.tap("link", "A month to print")
    readings = desk.page.get_by_role("region", name="Readings")
    expect(readings.get_by_role("cell", name="0.25")).to_be_visible()
    desk.sees("1 test · 1 change, 20 L")
    expect(desk.page.get_by_role("button", name="Print")).to_be_visible()
    desk.page.emulate_media(media="print")
    expect(desk.page.get_by_role("button", name="Print")).to_be_hidden()
    expect(desk.page.get_by_role("navigation", name="Another month")).to_be_hidden()
    expect(readings.get_by_role("cell", name="0.25")).to_be_visible()
    ground = "() => getComputedStyle(document.documentElement).getPropertyValue('--ground').trim()"
    assert desk.page.evaluate(ground) == "#fff", "on white paper"
    desk.page.emulate_media(media="screen")
    desk.tap_on(desk.page.get_by_role("navigation", name="Another month").get_by_role("link").first)
    desk.sees("Nothing is recorded for this month.")
