"""A new tank from the empty glass to the first fish, without signal, with the server's figures."""

import re

import pytest
from limnary.contracts import run
from playwright.sync_api import expect
from tank_hands import set_down_label

pytestmark = pytest.mark.browser

GLASS = {"shape": "cuboid", "measures": "outside", "length_cm": 90, "width_cm": 40, "height_cm": 45, "glass_mm": 8}
FILLED = {**GLASS, "fill_height_cm": 40}
INSIDE = {"length_cm": 88.4, "width_cm": 38.4}
CHLORAMINE = {"disinfectant": "chloramine", "disinfectant_mg_l": 1}
FISH = "Tanichthys albonubes"


def test_from_the_glass_to_the_first_fish(new_phone):
    thumb = new_phone()
    thumb.open("/")
    thumb.stored()
    thumb.page.context.set_offline(True)
    measures_the_glass(thumb)
    weighs_it(thumb)
    bed = lays_the_bed(thumb)
    water_l = adds_stone(thumb, bed)
    plans_warmth(thumb, water_l)
    chooses_plants(thumb)
    plans_animals(thumb)
    looks_at_what_to_buy(thumb, water_l)
    fills_it(thumb, water_l)
    thumb.title("First animals")
    thumb.sees("Add none now.")
    thumb.sees("Not tested in the last three days:")
    does_the_test(thumb)
    records_the_first_fish(thumb)
    expect(thumb.page.get_by_text(re.compile("Add none now|planned animals (fit|may come)")).first).to_be_visible()
    written(thumb, water_l)
    thumb.turn_to("/timeline")
    thumb.sees(f"First filled, {water_l:.1f} L")


def measures_the_glass(thumb):
    thumb.tap("link", "Set up the first tank")
    thumb.title("Set up a tank")
    thumb.tap("link", "Set up from the empty glass")
    thumb.title("The glass")
    thumb.pick("rectangular")
    for label, figure in (("Length", "90"), ("Width", "40"), ("Height", "45")):
        keyed(thumb, label, figure)
    thumb.sees("Still needed: Thickness of the glass")
    keyed(thumb, "Thickness of the glass", "8")
    # A reload stands for an empty battery: nothing typed is lost.
    thumb.page.reload()
    keyed(thumb, "Water stands this high", "40")
    answer(thumb, "Litres in the tank", run("volume", FILLED)["gross_l"], 1)
    thumb.tap("button", "Next", exact=True)


def weighs_it(thumb):
    thumb.title("Where it stands")
    keyed(thumb, "Stand or cupboard", "38")
    weight = {**{name: value for name, value in FILLED.items() if name != "shape"}, "stand_kg": 38}
    answer(thumb, "Weight when filled", run("filled_weight", weight)["total_kg"], 1)
    thumb.sees("ask a structural engineer")
    thumb.tap("button", "kg, next")


def lays_the_bed(thumb):
    thumb.title("Substrate")
    thumb.tap("button", "More: Depth at the back")
    keyed(thumb, "One bag in the shop holds", "5")
    thumb.page.reload()
    soil = {"role": "nutrient", "material": "garden_soil", "front_cm": 1.5, "back_cm": 3, "pack_l": 5}
    sand = {"role": "cap", "material": "sand", "front_cm": 3, "back_cm": 4}
    bed = run("substrate", {**INSIDE, "layers": [soil, sand]})
    answer(thumb, "Substrate: litres, kilograms, bags", bed["litres"], 1)
    thumb.sees(f"{bed['layers'][0]['packs']} bags")
    thumb.tap("button", "L, next")
    return bed


def adds_stone(thumb, bed):
    thumb.title("Stone and wood")
    for _ in range(4):
        thumb.page.get_by_role("button", name="More: Stone").tap()
    water = run("volume", {**FILLED, "substrate_l": bed["litres"], "hardscape_kg": 2, "hardscape_density_kg_l": 2.6})
    answer(thumb, "Litres in the tank", water["water_l"], 1)
    thumb.tap("button", "Next", exact=True)
    return water["water_l"]


def plans_warmth(thumb, water_l):
    thumb.title("Warmth, light, filter")
    for _ in range(4):
        thumb.page.get_by_role("button", name="Less: Water").tap()
    warm = {**INSIDE, "height_cm": 40, "glass_mm": 8, "temperature_c": 20, "room_c": 17, "open_fraction": 0.05}
    answer(thumb, "Heater power", run("heater_power", {**warm, "water_l": water_l})["heater_w"], 0)
    thumb.tap("button", "W, next")


def chooses_plants(thumb):
    thumb.title("Plants")
    thumb.sees("24 portions for this floor")
    thumb.tap("button", "hornwort")
    thumb.tap("button", "1 portion, next")


def plans_animals(thumb):
    thumb.title("Who will live in it")
    thumb.tap("button", "white cloud mountain minnow")
    thumb.tap("button", "Less: white cloud mountain minnow")
    thumb.tap("button", "More: white cloud mountain minnow")
    thumb.sees("All 8 planned animals fit, once the tank has matured.")
    thumb.sees("nothing known speaks against it")
    thumb.tap("button", "Next", exact=True)
    thumb.title("Fill it")


def looks_at_what_to_buy(thumb, water_l):
    thumb.tap("link", "Back")
    thumb.sees("Being set up")
    thumb.tap("link", "What to buy")
    thumb.sees(f"Dechlorinator for {water_l:.1f} L")
    thumb.page.get_by_label("Test: Nitrite").check()
    thumb.page.reload()
    expect(thumb.page.get_by_label("Test: Nitrite")).to_be_checked()
    thumb.tap("link", "Back")
    thumb.tap("link", "Fill it")


def fills_it(thumb, water_l):
    thumb.title("Fill it")
    thumb.tap("link", "New source water")
    thumb.type("Name", "Kitchen tap")
    thumb.pick("chloramine")
    thumb.type("How much of it", "1")
    thumb.tap("button", "Save", exact=True)
    set_down_label(thumb)
    dose = dose_of(water_l)
    answer(thumb, "Dechlorinator", dose["freed_ammonia_mg_n_l"], 3)
    thumb.sees("a drip loop in its cable")
    thumb.tap("button", "Filled with")
    thumb.sees("is filled with")


def dose_of(water_l):
    label = {"basis": "new_water", "label_ml": 2, "label_per_l": 10}
    return run("dechlorinator_dose", {"change_l": water_l, "tank_l": water_l, **label, **CHLORAMINE})


def does_the_test(thumb):
    thumb.tap("link", "Back")
    thumb.tap("link", "Test", exact=True)
    thumb.tap("button", "0.1", exact=True)
    thumb.tap("button", "0", exact=True)
    thumb.tap("button", "Save 2 readings")
    thumb.title("Tank 1")


def records_the_first_fish(thumb):
    thumb.tap("link", "To the first animals")
    thumb.title("First animals")
    thumb.tap("link", "None yet: to the tank")
    thumb.title("Tank 1")
    thumb.tap("link", "To the first animals")
    for _ in range(4):
        thumb.page.get_by_role("button", name="More: white cloud mountain minnow").tap()
    thumb.page.reload()
    thumb.tap("button", "Record 4 arrivals")
    thumb.sees("4 animals in Tank 1, saved on this phone")


def written(thumb, water_l):
    """What stands in the fish room: the tank, its dose, its plants, its fish; no water change."""
    script = """async () => {
      const { live: { live_room } } = await app();
      const kinds = ["tank", "dose", "planting", "stock_change", "water_change"];
      return Object.fromEntries(kinds.map((kind) => [kind, live_room.all(kind)]));
    }"""
    records = thumb.page.evaluate(script)
    tank, dose, planted, arrived = (records[kind][0] for kind in ("tank", "dose", "planting", "stock_change"))
    expected = dose_of(water_l)
    assert tank["water_l"] == pytest.approx(water_l)
    assert re.match(r"\d{4}-", tank["started_at"]) and tank["planting"] == "dense" and tank["temperature_c"] == 20
    assert tank["planned_stock"] == [{"species": FISH, "count": 8}]
    assert dose["amount"] == pytest.approx(expected["label_dose_ml"])
    assert dose["tan_mg_n_l"] == pytest.approx(expected["freed_ammonia_mg_n_l"])
    assert (planted["species"], planted["amount"]) == ("Ceratophyllum demersum", "1 portion")
    assert (arrived["species"], arrived["count"], arrived["length_cm"]) == (FISH, 4, 2)
    assert records["water_change"] == []


def keyed(thumb, label, figure):
    """A figure of a row, on the app's own keypad."""
    thumb.tap("button", label)
    thumb.key_in(figure)


def answer(thumb, title, figure, decimals):
    """The large figure of a calculation on the screen, as the server's calculation answers it."""
    shown = thumb.page.get_by_role("region", name=title, exact=True).locator(".answer-main .figure").first
    expect(shown).to_contain_text(f"{figure:,.{decimals}f}")
