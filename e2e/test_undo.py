"""Undo of every act that removes or records something: afterwards the phone holds what it held before.

Undo of what only the server can do (roles, invitations, phones, rooms' names, refused entries) stands in
test_people.py and test_rooms.py, that of an emptied form in test_bench.py.
"""

import json

import pytest
from foretold import write
from journal_hands import picture, take, write_note
from playwright.sync_api import TimeoutError, expect

pytestmark = pytest.mark.browser

TANK, FED = "tank-0001", "2026-05-04T07:30:00.000Z"
# A day later: a forecast over months would be worked out anew after every act.
NOW = "2026-05-05T08:00:00.000Z"
MEASURES = {"shape": "cuboid", "length_cm": 80, "width_cm": 35, "height_cm": 40}
RECORDS = [
    ("source_water", "source-01", {"name": "Tap", "disinfectant": "chlorine"}),
    (
        "label",
        "label-001",
        {"name": "Tap safe", "use": "dechlorinator", "amount": 2, "unit": "ml", "per_l": 10, "basis": "new_water"},
    ),
    ("test_kit", "kit-00001", {"name": "Drops", "parameter": "nitrite", "entry": "steps", "steps": [0, 0.2, 0.4, 0.8]}),
    (
        "tank",
        TANK,
        {
            "name": "Reed pool",
            "measures": MEASURES,
            "water_l": 90,
            "source_water": "source-01",
            "dechlorinator": "label-001",
        },
    ),
    ("tank", "tank-0002", {"name": "Moss bowl", "water_l": 12}),
    ("task", "task-0001", {"title": "Wipe the glass", "tank": TANK, "starts_at": FED, "rule": "FREQ=WEEKLY"}),
    ("task_done", "done-0001", {"task": "task-0001", "at": FED}),
    ("stock_change", "stock-001", {"tank": TANK, "at": FED, "change": "arrival", "species": "Danio rerio", "count": 6}),
    *(
        (
            "stock_change",
            f"stock-move-{tank}",
            {"tank": tank, "other_tank": other, "at": FED, "change": change, "species": "Danio rerio", "count": 2},
        )
        for tank, other, change in ((TANK, "tank-0002", "move_out"), ("tank-0002", TANK, "move_in"))
    ),
    ("planting", "plant-001", {"tank": TANK, "at": FED, "change": "plant", "species": "Vallisneria spiralis"}),
    ("shared_tool", "tool-0001", {"tank": TANK, "at": FED, "tool": "net", "other_tank": "tank-0002"}),
    ("feeding", "feeding-1", {"tank": TANK, "at": FED, "feed_g": 0.3, "food": "flakes"}),
    *(
        (
            "reading",
            f"reading-{place}",
            {
                "tank": TANK,
                "at": FED,
                "parameter": parameter,
                "value": 0.2,
                "test": "test-0001",
                "steps": [0, 0.2, 0.4],
            },
        )
        for place, parameter in enumerate(("total_ammonia", "nitrite"))
    ),
    ("water_change", "change-01", {"tank": TANK, "at": FED, "litres": 20, "fraction": 0.22}),
    (
        "dose",
        "dose-0001",
        {"tank": TANK, "at": FED, "what": "Tap safe", "amount": 4, "unit": "ml", "water_change": "change-01"},
    ),
]
# Each act: the page, the buttons tapped, what the app says. {photo} is the photo's page.
ACTS = {
    "a meal taken out": (f"/tank/{TANK}/history", ["Remove Feeding"], "Feeding removed"),
    "a test taken out": (f"/tank/{TANK}/history", ["Remove Test"], "Test removed"),
    "a change taken out with its dose": (f"/tank/{TANK}/history", ["Remove Change"], "Change removed"),
    "a note taken out with its photo": ("/timeline", ["Remove Note"], "Note removed"),
    "animals taken out": (f"/tank/{TANK}/history", ["Remove Animals"], "Animals removed"),
    "plants taken out": (f"/tank/{TANK}/history", ["Remove Plants"], "Plants removed"),
    "a shared net taken out": ("/tank/tank-0002/history", ["Remove Shared tool"], "Shared tool removed"),
    "a task done taken out": ("/timeline", ["Remove Task done"], "Task done removed"),
    "a task ended": ("/task/task-0001", ["End it"], "Wipe the glass is ended"),
    "a photo taken out": ("{photo}", ["Remove it"], "Photo removed"),
    "a reading corrected": ("/correct/reading/reading-0", ["0.4", "Save corrected"], "Test corrected"),
    "a change corrected": ("/correct/water_change/change-01", ["3", "0", "Save corrected"], "Change corrected"),
    "animals corrected": (
        f"/tank/{TANK}/stock/new?corrects=stock-001",
        ["1 more", "7 × zebra danio: arrived"],
        "7 × zebra danio arrived, saved",
    ),
    "a move corrected to a death": (
        f"/tank/{TANK}/stock/new?corrects=stock-move-{TANK}",
        ["died", "2 × zebra danio: died"],
        "2 × zebra danio died, saved",
    ),
    "plants corrected": (
        f"/tank/{TANK}/plants/new?corrects=plant-001",
        ["a handful", "Planted: straight"],
        "a handful, saved",
    ),
    "a tank put away": (f"/tank/{TANK}/edit", ["Put it away"], "Reed pool is put away"),
    "a label taken out": ("/room/label/label-001", ["Remove it"], "Tap safe removed"),
    "a kit taken out": ("/room/test_kit/kit-00001", ["Remove it"], "Drops removed"),
    "a water taken out": ("/room/source_water/source-01", ["Remove it"], "Tap removed"),
    "a meal logged": (f"/tank/{TANK}/feed", ["Log 0.3 g"], "0.3 g of food saved"),
    "a fast logged": (f"/tank/{TANK}/feed", ["Nothing today"], "nothing fed, saved"),
    "a dose logged": (f"/tank/{TANK}/dose", ["Tap safe", "Log 4 ml"], "4 ml of Tap safe saved"),
    "a change logged": (f"/tank/{TANK}/change", ["Log"], "saved on this phone"),
    "a test logged": (f"/tank/{TANK}/test", ["0.1", "0.2", "Save 2 readings"], "2 readings saved"),
    "a note logged": (f"/tank/{TANK}/note", ["Plants pearling", "Save note"], "note saved"),
}
# Makes held() of the page: all records that this phone shows, without who and when, as text.
HOLDS = """async () => {
  const { live: { room }, contracts: { records } } = await app();
  const plain = ({ meta, ...said }) => Object.fromEntries(Object.entries(said).sort());
  window.held = () => {
    const all = Object.keys(records()).flatMap((kind) => room.value.all(kind).map(plain));
    return JSON.stringify(all.sort((a, b) => (a.id < b.id ? -1 : 1)));
  };
  return window.held();
}"""


def test_whatever_is_done_can_be_taken_back(new_phone):
    thumb = new_phone()
    thumb.page.clock.set_fixed_time(NOW)
    thumb.open("/")
    write(thumb, RECORDS)
    thumb.turn_to(f"/tank/{TANK}")
    write_note(thumb, "New leaves")
    thumb.stored()
    thumb.page.context.set_offline(True)
    (photo,) = (one["id"] for one in records_held(thumb) if one["kind"] == "photo")
    for act, (where, taps, said) in ACTS.items():
        thumb.turn_to(where.format(photo=f"/photo/{photo}"))
        before = held(thumb)
        for name in taps:
            thumb.tap("button", name, exact=name[0].isdigit() or name == "Remove it")
        thumb.sees(said)
        assert held(thumb) != before, f"{act} does nothing"
        thumb.tap("button", "Undo")
        expect(thumb.page.get_by_role("button", name="Undo"), act).to_have_count(0)
        comes_to(thumb, before, act)
    left = {one["id"] for one in records_held(thumb)} - {record for _, record, _ in RECORDS}
    assert len(left) == 2, f"besides the note and its photo: {left}"


def test_a_photo_not_saved_yet_can_be_taken_out_put_back_and_outlives_a_reload(new_phone):
    thumb = new_phone()
    thumb.open("/")
    write(thumb, RECORDS)
    thumb.turn_to(f"/tank/{TANK}/note")
    take(thumb, picture("roots.png"), picture("leaf.png", grey=200))
    shown = thumb.page.locator(".pictures img")
    thumb.tap("button", "Remove Photo 1")
    expect(shown).to_have_count(1)
    thumb.tap("button", "Undo")
    expect(shown).to_have_count(2)
    thumb.page.reload()
    expect(shown).to_have_count(2)
    thumb.tap("button", "Save with 2 photos")
    thumb.sees("note saved on this phone")
    assert len([one for one in records_held(thumb) if one["kind"] == "photo"]) == 2


def held(thumb):
    """All records that this phone shows, without who and when, as text."""
    return thumb.page.evaluate(HOLDS)


def records_held(thumb):
    return json.loads(held(thumb))


def comes_to(thumb, records, act):
    """Wait until the phone holds these records again."""
    try:
        thumb.page.wait_for_function("(records) => window.held() === records", arg=records)
    except TimeoutError:
        assert records_held(thumb) == json.loads(records), f"{act} is not taken back"
