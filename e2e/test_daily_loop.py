"""A whole day: set up a tank, lose the server, test, get advice, change water; a second phone receives it once."""

import json
import re

import pytest
from foretold import bucket, forecast_is_there, plain, plan_input, write
from limnary.contracts import run
from playwright.sync_api import expect
from room_hands import invite, join
from tank_hands import have_tank, set_down_water_and_label, set_up_tank

pytestmark = pytest.mark.browser


def test_a_day_without_signal_and_a_second_phone(own_server, served_room, new_phone):
    thumb = new_phone()
    join(thumb, served_room.link, "Aino", "Aino's phone")
    set_up_tank(thumb, "Reed pool")
    litres_in = water_litres(thumb)
    set_down_water_and_label(thumb)
    thumb.stored()

    own_server.stop()
    thumb.open("/")
    before = thumb.taps
    thumb.tap("link", "Test")
    thumb.tap("button", "0.5", exact=True)
    thumb.sees("2 of 5")
    thumb.tap("button", "0.5", exact=True)
    assert thumb.taps - before == 3, "a first ammonia and nitrite take one more tap to be saved"
    thumb.tap("button", "Skip")
    thumb.key_in("7.8")
    thumb.tap("button", "Next")
    thumb.key_in("25")
    # Hardness is tested less often, so it takes one more tap.
    thumb.tap("button", "Carbonate hardness")
    thumb.key_in("3")
    thumb.tap("button", "Save 5 readings")
    thumb.sees("5 readings saved on this phone")

    thumb.page.reload()
    forecast_is_there(thumb)
    litres, dose = said_change(thumb)
    assert (litres, dose) == calculated(thumb, litres_in)
    other_way = thumb.page.get_by_text("= 0.39 mg/L as N")
    expect(other_way).to_be_hidden()
    thumb.page.get_by_text("As other kits read it").tap()
    expect(other_way).to_be_visible()

    thumb.tap("link", "Change")
    thumb.tap("button", f"Log {litres:g} L and {dose:g} ml")
    thumb.sees(f"{litres:g} L and {dose:g} ml saved on this phone")
    thumb.page.reload()
    thumb.tap("link", "History")
    thumb.sees(f"Changed {litres:g} L")
    expect(thumb.page.get_by_text("saved on this phone").first).to_be_visible()

    own_server.start()
    thumb.turn_to("/room")
    thumb.tap("button", "Share now")
    thumb.sees("Everything on this phone is shared.")
    link = invite(thumb)
    expect(thumb.page.get_by_role("img", name="QR code")).to_be_visible()

    other = new_phone()
    join(other, link, "Bo", "Bo's phone")
    other.tap("link", "Reed pool")
    other.tap("link", "History")
    other.sees("Ammonia (total) 0.5 mg/L as NH₄")
    other.sees(f"Changed {litres:g} L")
    other.sees(f"{dose:g} ml Tap safe")
    expect(other.page.get_by_text(re.compile("Aino")).first).to_be_visible()

    kinds = [row["kind"] for row in served_room.rows("SELECT kind FROM records WHERE deleted IS NULL")]
    assert {kind: kinds.count(kind) for kind in set(kinds)} == {
        "tank": 1, "source_water": 1, "label": 1, "reading": 5, "water_change": 1, "dose": 1,
    }  # fmt: skip
    readings = [
        json.loads(row["fields"]) for row in served_room.rows("SELECT fields FROM records WHERE kind = 'reading'")
    ]
    assert {one["parameter"]: one["value"] for one in readings} == {
        "total_ammonia": 0.5, "nitrite": 0.5, "ph": 7.8, "temperature": 25, "kh": 3,
    }  # fmt: skip
    assert len({one["test"] for one in readings}) == 1
    (change,) = served_room.rows("SELECT fields FROM records WHERE kind = 'water_change'")
    assert json.loads(change["fields"])["litres"] == litres


def test_taking_back_a_change_takes_back_its_dose(new_phone):
    thumb = new_phone()
    thumb.open("/")
    have_tank(thumb, "Reed pool")
    set_down_water_and_label(thumb)
    thumb.tap("link", "Change")
    thumb.tap("button", "Log")
    thumb.sees("saved on this phone")
    thumb.tap("button", "Undo")
    thumb.tap("link", "History")
    thumb.sees("Nothing recorded yet.")


def test_a_change_whose_dose_was_forgotten_is_logged_as_it_was(new_phone):
    thumb = new_phone()
    thumb.open("/")
    have_tank(thumb, "Reed pool")
    set_down_water_and_label(thumb)
    danios = {
        "species": "Danio rerio",
        "change": "arrival",
        "count": 6,
        "length_cm": 3,
        "at": "2026-05-04T07:30:00.000Z",
    }
    write(thumb, [("stock_change", "stock-0001", {**danios, "tank": "tank-reed-pool"})])
    thumb.tap("link", "Change")
    thumb.tap("button", "It went in without dechlorinator")
    expect(thumb.page.get_by_role("button", name="Log 26 L", exact=True)).to_be_visible()
    thumb.tap("button", "Log 26 L")
    thumb.sees("Was the new water treated? If not, dose 20.44 ml of Tap safe for the whole tank now.")
    thumb.tap("link", "History")
    thumb.sees("Changed 26 L")
    expect(thumb.page.get_by_text("ml Tap safe")).to_have_count(0)


def test_a_double_tap_records_once(new_phone):
    thumb = new_phone()
    thumb.open("/")
    have_tank(thumb, "Reed pool")
    thumb.tap("link", "Test")
    thumb.settled()
    zero = thumb.page.get_by_role("button", name="0", exact=True)
    box = zero.bounding_box()
    twice(thumb, box)
    thumb.sees("2 of 5")
    thumb.sees("Nitrite")
    save = thumb.page.get_by_role("button", name="Save 1 reading").bounding_box()
    thumb.settled()
    twice(thumb, save)
    thumb.sees("1 reading saved on this phone")
    thumb.tap("link", "History")
    expect(thumb.page.get_by_role("button", name="Remove Test")).to_have_count(1)


def test_a_half_made_test_survives_the_reload(new_phone):
    thumb = new_phone()
    thumb.open("/")
    have_tank(thumb, "Reed pool")
    thumb.tap("link", "Test")
    thumb.tap("button", "0.1", exact=True)
    thumb.page.reload()
    thumb.sees("2 of 5")
    thumb.tap("button", "Save 1 reading")
    thumb.sees("1 reading saved on this phone")


def test_a_figure_that_no_water_has_is_asked_for_again(new_phone):
    thumb = new_phone()
    thumb.open("/")
    have_tank(thumb, "Reed pool")
    thumb.tap("link", "Test")
    for _ in range(3):
        thumb.tap("button", "Skip")
    thumb.key_in("72")
    thumb.sees("pH must be from 0 to 14")
    thumb.tap("button", "Next")
    thumb.key_in("25")
    expect(thumb.page.get_by_role("button", name="Save 2 readings")).to_be_disabled()
    thumb.tap("button", "Key in pH again")
    thumb.tap("button", "Erase")
    thumb.key_in(".2")
    thumb.tap("button", "Save 2 readings")
    thumb.sees("2 readings saved on this phone")
    thumb.sees("7.2")


def test_bad_measures_are_refused_in_the_calculations_words_and_stay_typed(new_phone):
    thumb = new_phone()
    thumb.open("/tanks/new")
    thumb.pick("rectangular")
    thumb.type("Length", "-80")
    thumb.type("Width", "abc")
    thumb.type("Height", "40,5")
    thumb.tap("button", "Save tank")
    thumb.sees("must be from 1 to 1000 cm")
    thumb.sees("must be a number")
    thumb.page.reload()
    for label, text in (("Length", "-80"), ("Width", "abc"), ("Height", "40,5")):
        expect(thumb.page.get_by_label(label).first).to_have_value(text)


def twice(thumb, box):
    with thumb.in_no_time():
        for _ in range(2):
            thumb.page.touchscreen.tap(box["x"] + 20, box["y"] + 20)


def water_litres(thumb):
    return float(plain(thumb.page.locator("header").get_by_text(re.compile(r"L$"))).removesuffix(" L"))


def said_change(thumb):
    """Litres and millilitres as the sentence says them."""
    said = plain(thumb.page.locator(".sentence").first)
    hit = re.fullmatch(r"Change ([\d.]+) L .*, with ([\d.]+) ml of Tap safe\.", said)
    assert hit, said
    return float(hit[1]), float(hit[2])


def calculated(thumb, tank_l):
    """The same from the server's calculations, asked what the phone asked."""
    plan = run("change_plan", plan_input(thumb, "Reed pool"))
    litres = bucket((plan["several"] or {"fraction_each": plan["fraction"]})["fraction_each"] * tank_l, tank_l)
    label = {"basis": "new_water", "label_ml": 2, "label_per_l": 10}
    dose = run("dechlorinator_dose", {"change_l": litres, "tank_l": tank_l, **label})
    return litres, dose["label_dose_ml"]
