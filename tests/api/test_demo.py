"""The invented fish room: passes its own contracts, is consistent, ends today, and is made once."""

import functools
import json
import struct

import pytest
from fish_rooms import START_MS, FishRoom, Phone
from limnary.contracts import run
from limnary.demo import fill
from limnary.demo.diary import diary
from limnary.demo.scenario import KEEPERS, KITS
from limnary.ids import ms_of
from limnary.schema_files import read_folder
from limnary.store import photos

DAY_MS = 86_400_000


@functools.cache
def entries() -> list:
    """Made once, where a test asks for them."""
    return diary(START_MS)


def fields(kind: str) -> list[dict]:
    return [{"id": entry.id, **entry.fields} for entry in entries() if entry.kind == kind]


def test_the_same_moment_gives_the_same_diary_and_another_another():
    assert diary(START_MS) == entries()
    assert [e.at_ms for e in diary(START_MS + DAY_MS)] != [e.at_ms for e in entries()]


def test_three_tanks_two_keepers_six_weeks_up_to_today():
    assert len([tank for tank in fields("tank") if "started_at" in tank]) == 3
    assert {entry.by for entry in entries()} == set(KEEPERS)
    times = [entry.at_ms for entry in entries()]
    assert times == sorted(times)
    assert 40 < (times[-1] - times[0]) / DAY_MS < 43
    assert START_MS - 2 * DAY_MS < times[-1] <= START_MS


def test_litres_and_doses_are_those_of_the_calculations():
    for tank in fields("tank"):
        assert tank["water_l"] == run("volume", tank["measures"])["water_l"]
        assert 60 not in (tank["measures"].get("length_cm"), tank["measures"].get("width_cm"))
    labels = {label["id"]: label for label in fields("label")}
    changes = {change["id"]: change for change in fields("water_change")}
    doses = [dose for dose in fields("dose") if "water_change" in dose]
    assert len(doses) == len(changes) > 10
    for dose in doses:
        label, litres = labels[dose["label"]], changes[dose["water_change"]]["litres"]
        assert dose["amount"] == pytest.approx(litres * label["amount"] / label["per_l"])


def test_one_tank_is_still_a_plan():
    (plan,) = [tank for tank in fields("tank") if "started_at" not in tank]
    assert plan["setup_substrate"]["state"] == "done"
    assert all(plan["id"] not in (entry.fields.get("tank"), entry.fields.get("other_tank")) for entry in entries())
    known = read_folder("tables")
    assert {one["species"] for one in plan["planned_stock"]} <= set(known["species"]["rows"])
    assert {one["species"] for one in plan["setup_plants"]["said"]["list"]} <= set(known["plants"]["rows"])


def test_readings_are_steps_of_their_kit():
    kits = {kit["id"]: kit for kit in fields("test_kit")}
    readings = fields("reading")
    assert len(readings) > 100
    for reading in readings:
        kit = kits[reading["kit"]]
        assert reading["parameter"] == kit["parameter"]
        if kit["entry"] == "steps":
            assert reading["value"] in kit["steps"] == KITS[reading["parameter"]]["steps"]
        assert reading["tank"] in {tank["id"] for tank in fields("tank")}


def test_the_young_tank_goes_through_ammonia_then_nitrite():
    (young,) = [tank for tank in fields("tank") if tank.get("seeded")]
    peaks = {}
    for parameter in ("total_ammonia", "nitrite"):
        read = [r for r in fields("reading") if r["tank"] == young["id"] and r["parameter"] == parameter]
        peaks[parameter] = ms_of(max(read, key=lambda r: r["value"])["at"])
    assert peaks["total_ammonia"] < peaks["nitrite"]


def test_animals_and_plants_are_known_to_the_tables():
    for kind, table in (("stock_change", "species"), ("planting", "plants")):
        known = read_folder("tables")[table]["rows"]
        assert {record["species"] for record in fields(kind)} <= set(known)


def test_the_picture_is_there_and_is_what_its_record_says(tmp_path):
    house = FishRoom(tmp_path / "data")
    filled = fill(house.store)
    (photo,) = fields("photo")
    (note,) = [one for one in fields("note") if one.get("entry") == photo["entry"]]
    assert note["at"] == photo["at"]
    with house.store.files.reading(house.store.files.room(filled.room)) as db:
        kept = photos.get(db, photo["sha256"])
    width, height = struct.unpack(">II", kept["bytes"][16:24])
    assert (kept["media_type"], len(kept["bytes"])) == (photo["media_type"], photo["bytes"])
    assert (width, height) == (photo["width"], photo["height"])
    house.close()


def test_a_move_is_two_records_of_one_moment_and_tanks_share_only_what_exists():
    tanks = {tank["id"] for tank in fields("tank")}
    (out,) = [one for one in fields("planting") if one["change"] == "move_out"]
    (come,) = [one for one in fields("planting") if one["change"] == "move_in"]
    assert (out["at"], out["tank"], out["other_tank"]) == (come["at"], come["other_tank"], come["tank"])
    assert [one["cause_code"] for one in fields("stock_change") if one["change"] == "death"] == ["age"]
    shared = fields("shared_tool")
    assert len(shared) == 2
    assert {one["tank"] for one in shared} | {one["other_tank"] for one in shared} <= tanks


def test_filled_once_and_open_to_both_keepers(tmp_path):
    house = FishRoom(tmp_path / "data")
    first, second = fill(house.store), fill(house.store)
    assert first == second
    assert set(first.keepers.values()) == set(KEEPERS)
    house.id, house.epoch = first.room, house.store.epoch(first.room)
    for keeper, name in first.keepers.items():
        phone = Phone(house)
        joined = phone.join(house.secret("viewer", keeper), "ignored")
        assert (joined["keeper"]["name"], joined["role"]) == (name, KEEPERS[name])
        rows = phone.rows()
        assert len(rows) == len(entries())
        assert json.dumps(rows).count('"deleted": null') == len(rows)
    house.close()
