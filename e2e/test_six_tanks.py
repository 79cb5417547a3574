"""The daily round of six tanks without signal: ammonia and nitrite in each, a change where one is asked, the task due.

Counted are all taps; nothing is typed on the phone's keyboard.
"""

import json

import pytest
from foretold import forecast_is_there, write
from playwright.sync_api import expect
from room_hands import join, share

pytestmark = pytest.mark.browser

MOST_TAPS = 60
NAMES = ("Moss bowl", "Reed pool", "Stone stream", "Fern corner", "Lily trough", "Nursery")
# The tile that the keeper taps in each tank; two tanks read high enough to need a change.
READ = {name: ("0", "0") for name in NAMES} | {"Stone stream": ("0.5", "0.25"), "Nursery": ("0.5", "0.25")}


def test_six_tanks_in_under_sixty_taps(served_room, new_phone):
    thumb = new_phone()
    join(thumb, served_room.link, "Aino", "Aino's phone")
    write(thumb, room())
    thumb.stored()
    thumb.turn_to("/")
    thumb.page.context.set_offline(True)
    thumb.page.evaluate("() => addEventListener('input', () => (window.typed = true), true)")

    begun = thumb.taps
    thumb.tap("link", NAMES[0])
    changes = 0
    for place, name in enumerate(NAMES):
        thumb.title(name)
        thumb.tap("link", "Test")
        for tile in READ[name]:
            thumb.tap("button", tile, exact=True)
        thumb.tap("button", "Save 2 readings")
        forecast_is_there(thumb)
        if READ[name] != ("0", "0"):
            thumb.tap("link", "Change")
            thumb.tap("button", "Log")
            thumb.sees("ml saved on this phone")
            thumb.title(name)
            changes += 1
        if name == "Fern corner":
            thumb.tap("button", "Done Wipe the glass")
        if place + 1 < len(NAMES):
            thumb.tap("link", f"Next: {NAMES[place + 1]}")
    expect(thumb.page.get_by_role("link", name="Next:")).to_have_count(0)
    taps = thumb.taps - begun
    print(f"six tanks: {taps} taps")
    assert taps < MOST_TAPS
    assert thumb.page.evaluate("() => window.typed") is None, "nothing was typed"

    thumb.page.context.set_offline(False)
    share(thumb)
    thumb.sees("Everything on this phone is shared.")
    kinds = [row["kind"] for row in served_room.rows("SELECT kind FROM records WHERE deleted IS NULL")]
    assert {kind: kinds.count(kind) for kind in ("reading", "water_change", "dose", "task_done")} == {
        "reading": 12, "water_change": changes, "dose": changes, "task_done": 1,
    }  # fmt: skip
    tanks = [
        json.loads(row["fields"])["tank"] for row in served_room.rows("SELECT fields FROM records WHERE kind='reading'")
    ]
    assert {tank: tanks.count(tank) for tank in tanks} == {f"tank-000{place}": 2 for place in range(6)}


def room():
    """Six tanks with their water, the bottle for it, and one task of every day."""
    tap = ["source_water", "water-01", {"name": "Kitchen tap", "disinfectant": "chlorine"}]
    bottle = {"name": "Tap safe", "use": "dechlorinator", "amount": 2, "unit": "ml", "per_l": 10, "basis": "new_water"}
    about = {"source_water": "water-01", "dechlorinator": "label-01", "planting": "medium", "filter": "sponge"}
    tanks = [
        ["tank", f"tank-000{place}", {"name": name, "water_l": 40 + 15 * place, "walk_order": place, **about}]
        for place, name in enumerate(NAMES)
    ]
    daily = {"title": "Wipe the glass", "starts_at": "2026-01-01T07:00:00.000Z", "rule": "FREQ=DAILY"}
    task = ["task", "task-0001", {**daily, "zone": "Europe/Berlin", "tank": "tank-0003"}]
    return [tap, ["label", "label-01", bottle], *tanks, task]
