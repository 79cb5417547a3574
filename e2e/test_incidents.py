"""When it goes wrong, without signal: untreated water, a power cut and a leak, each step recorded by a tap."""

import json
from datetime import UTC, datetime, timedelta

import pytest
from foretold import write
from playwright.sync_api import expect
from room_hands import join, share
from tank_hands import MEASURES

pytestmark = pytest.mark.browser

TANK = "tank-0001"


def keep_fish(thumb):
    """A tank of 100 L at 25 °C with ten danios, its tap water and its bottle, and a sheet that says whom to call."""
    long_ago = (datetime.now(UTC) - timedelta(days=90)).isoformat(timespec="milliseconds")[:23] + "Z"
    bottle = {"name": "Tap safe", "use": "dechlorinator", "amount": 2, "unit": "ml", "per_l": 10, "basis": "new_water"}
    tank = {"name": "Reed pool", "measures": MEASURES, "water_l": 100, "temperature_c": 25, "started_at": long_ago}
    danios = {"tank": TANK, "at": long_ago, "species": "Danio rerio", "change": "arrival", "count": 10}
    days = {"from_at": long_ago, "to_at": "2099-01-01T12:00:00.000Z", "feed_every_days": 2, "tanks": [TANK]}
    write(
        thumb,
        [
            ["source_water", "water-01", {"name": "Kitchen tap", "disinfectant": "chlorine"}],
            ["label", "label-01", bottle],
            ["tank", TANK, {**tank, "source_water": "water-01", "dechlorinator": "label-01"}],
            ["stock_change", "stock-01", {**danios, "length_cm": 3.5}],
            ["away_sheet", "away-0001", {**days, "calls": [{"who": "Bo next door", "phone": "+49 30 5550 0142"}]}],
        ],
    )


def offline_at(thumb, what):
    """From the tank's page: one tap to the list, one to what happened."""
    thumb.stored()
    thumb.page.context.set_offline(True)
    thumb.turn_to(f"/tank/{TANK}")
    thumb.tap("link", "When it goes wrong")
    thumb.tap("link", what)
    thumb.title(what)


def steps(thumb):
    return thumb.page.locator(".step b")


def test_untreated_water_is_dosed_for_the_whole_tank(served_room, new_phone):
    thumb = new_phone()
    join(thumb, served_room.link, "Aino", "Aino's phone")
    keep_fish(thumb)
    offline_at(thumb, "Untreated tap water went in")
    expect(steps(thumb).first).to_have_text("Dose 20 ml of Tap safe now: it is for all 100 L.")
    expect(thumb.page.get_by_role("link", name="+49 30 5550 0142")).to_have_attribute("href", "tel:+493055500142")
    thumb.sees("Medicines are a vet’s matter.")
    thumb.tap("button", "Done: Dose 20")
    thumb.sees("Recorded today")
    thumb.tap("button", "Done: Move the surface now")
    expect(thumb.page.get_by_text("Done today")).to_have_count(2)
    thumb.tap("link", "History")
    thumb.title("History")
    incident = thumb.page.locator(".happened").filter(has_text="Untreated tap water went in")
    expect(incident).to_have_count(1)
    expect(incident).to_contain_text("Dose 20")
    expect(incident.get_by_role("link", name="Who else was exposed")).to_be_visible()
    thumb.page.context.set_offline(False)
    share(thumb)
    thumb.sees("Everything on this phone is shared.")
    (dose,) = served_room.rows("SELECT fields FROM records WHERE kind = 'dose'")
    kept = json.loads(dose["fields"])
    assert (kept["amount"], kept["unit"], kept["for_litres"], kept["label"]) == (20, "ml", 100, "label-01")
    notes = [json.loads(row["fields"]) for row in served_room.rows("SELECT fields FROM records WHERE kind = 'note'")]
    assert sorted((note["incident"], note.get("step", "")) for note in notes) == [
        ("chlorine", ""),
        ("chlorine", "air"),
        ("chlorine", "dose_whole"),
    ]
    assert len({note["entry"] for note in notes}) == 1


def test_a_power_cut_says_the_hours_of_air_and_the_cooling(served_room, new_phone):
    thumb = new_phone()
    join(thumb, served_room.link, "Aino", "Aino's phone")
    keep_fish(thumb)
    offline_at(thumb, "Power cut")
    said = thumb.page.evaluate("""async (tank) => {
      const { contracts: { run } } = await app();
      const animals = [{ species: "Danio rerio", count: 10, length_cm: 3.5 }];
      return Math.floor(run("closed_water", { water_l: 100, temperature_c: 25, animals }).hours_still);
    }""")
    hours = "more than 48 hours" if said > 48 else f"about {said} hours"
    thumb.sees(f"At 25 °C still water holds air for these fish for {hours}.".replace("25 °C", "25\u00a0°C"))
    expect(steps(thumb).first).to_contain_text("Pull the plugs")
    expect(thumb.page.get_by_text("an hour at first, in a room of 17")).to_be_visible()
    thumb.tap("button", "Record that it happened")
    thumb.sees("Recorded today")
    thumb.tap("button", "Undo")
    expect(thumb.page.get_by_text("Recorded today")).to_have_count(0)


def test_a_leak_begins_with_the_power(served_room, new_phone):
    thumb = new_phone()
    join(thumb, served_room.link, "Aino", "Aino's phone")
    keep_fish(thumb)
    offline_at(thumb, "The tank leaks")
    expect(steps(thumb).first).to_have_text("Switch the power off; at the fuse box if the floor is wet.")
    expect(steps(thumb).nth(1)).to_contain_text("Fish into a clean bucket with 10 L of tank water.")
    thumb.sees("fill 10 buckets of 10 litres")
    thumb.sees("a licensed electrician")
    thumb.tap("button", "Done: Switch the power off")
    thumb.sees("Done today")
    expect(steps(thumb).nth(6)).to_have_count(0)
