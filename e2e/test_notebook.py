"""A notebook brought along: three files as keepers have them, shown before they are written, taken back as a whole."""

import json
import zipfile

import pytest
from foretold import write
from playwright.sync_api import expect
from room_hands import join, share

pytestmark = pytest.mark.browser

GERMAN = """Datum;Uhrzeit;Becken;NH4;NO2;pH;Temperatur;Wechsel (Liter);Bemerkung
03.04.2026;08:15;Schilfbecken;0,25;0,05;7,2;24,5;;frisch eingefahren
14.04.2026;07:50;Schilfbecken;0,1;0;7,1;24,8;25;
15.04.2026;;Moosglas;0;0;;;;
"""
AMERICAN = """Date\tTime\tTemp (°F)\tNitrate\tGallons changed\tFed (g)
4/5/2026\t7:30 pm\t77\t20\t5\t0.2
4/6/2026\t7:45 pm\t77.9\t20\t\t0.2
"""
BROKEN = "date,tank,nitrite,ph\n2026-04-01,Reed pool,0.1,7\n" + "".join(
    f"{row}\n"
    for row in (
        *("2026-02-30,Reed pool,0.1,7", "yesterday,Reed pool,0.1,7", ",Reed pool,0.1,7", "2026-13-01,Reed pool,0,7"),
        *("2026-04-02,Reed pool,none,7", "2026-04-02,Reed pool,0.1.2,7", "2026-04-02,Reed pool,>0.1,7"),
        *("2026-04-02,Reed pool,999999,7", "2026-04-02,Reed pool,0.1,-99", "2099-01-01,Reed pool,0.1,7"),
        *("2026-04-02,Reed pool,,", "2026-04-03,Reed pool,0.1,seven") * 5,
    )
)


def records(served_room):
    rows = served_room.rows("SELECT kind, fields FROM records WHERE deleted IS NULL OR restored > deleted")
    return [(kind, json.loads(fields)) for kind, fields in rows]


def bring(thumb, text):
    thumb.turn_to("/room")
    thumb.tap("link", "Bring your notebook")
    thumb.type("Or paste cells here", text)


def test_comma_decimals_and_day_first_dates(served_room, new_phone):
    thumb = new_phone()
    join(thumb, served_room.link, "Aino", "Aino's phone")
    write(thumb, [["tank", "tank-0001", {"name": "Schilfbecken", "water_l": 100}]])
    bring(thumb, GERMAN)
    thumb.sees("The litres of each new tank.")
    thumb.type("Litres in “Moosglas”", "20")
    thumb.sees("Readings: 10. Changes of water: 1. Meals: 0.")
    assert records(served_room) == [] or all(kind == "tank" for kind, _ in records(served_room))
    thumb.tap("button", "Bring in 11 entries")
    thumb.sees("11 entries saved on this phone")
    bring(thumb, GERMAN)
    thumb.sees("11 entries are here already.")
    expect(thumb.page.get_by_role("button", name="Bring in 0 entries")).to_be_disabled()
    share(thumb)
    thumb.sees("Everything on this phone is shared.")
    all_of = records(served_room)
    (change,) = (fields for kind, fields in all_of if kind == "water_change")
    assert (change["litres"], change["fraction"], change["at"]) == (25, 0.25, "2026-04-14T05:50:00.000Z")
    first = next(fields for _, fields in all_of if fields.get("value") == 0.25)
    assert (first["parameter"], first["basis"], first["note"]) == ("total_ammonia", "ion", "frisch eingefahren")
    bring(thumb, "")
    thumb.tap("button", "Take the last import back (12 entries)")
    thumb.sees("12 entries taken back")
    bring(thumb, GERMAN)
    thumb.type("Litres in “Moosglas”", "20")
    thumb.tap("button", "Bring in 11 entries")
    thumb.sees("11 entries saved on this phone")
    share(thumb)
    assert sorted(kind for kind, _ in records(served_room)) == sorted(kind for kind, _ in all_of)


def test_us_dates_and_gallons_without_signal(served_room, new_phone):
    thumb = new_phone()
    join(thumb, served_room.link, "Aino", "Aino's phone")
    write(thumb, [["tank", "tank-0001", {"name": "Reed pool", "water_l": 100}]])
    thumb.stored()
    thumb.page.context.set_offline(True)
    bring(thumb, AMERICAN)
    thumb.sees("Day or month first: the dates allow both.")
    thumb.sees("As the ion or as nitrogen: look at your kit.")
    thumb.page.get_by_label("Which date is 4/5/2026?").select_option("month first")
    thumb.page.get_by_label("Nitrate is read").select_option("as the ion (NH₄, NO₂, NO₃)")
    thumb.sees("Readings: 4. Changes of water: 1. Meals: 2.")
    thumb.tap("button", "Bring in 7 entries")
    thumb.sees("7 entries saved on this phone")
    thumb.page.context.set_offline(False)
    share(thumb)
    thumb.sees("Everything on this phone is shared.")
    all_of = records(served_room)
    (change,) = (fields for kind, fields in all_of if kind == "water_change")
    assert (change["litres"], change["at"]) == (18.9271, "2026-04-05T17:30:00.000Z")
    warm = sorted(fields["value"] for _, fields in all_of if fields.get("parameter") == "temperature")
    assert warm == [25, 25.5]


def test_twenty_broken_rows_are_named_and_stay_out(served_room, new_phone):
    thumb = new_phone()
    join(thumb, served_room.link, "Aino", "Aino's phone")
    write(thumb, [["tank", "tank-0001", {"name": "Reed pool", "water_l": 100}]])
    bring(thumb, BROKEN)
    thumb.page.get_by_label("Nitrite is read").select_option("as nitrogen (N)")
    thumb.sees("20 things are wrong.")
    expect(thumb.page.locator(".wrong-rows li")).to_have_count(20)
    thumb.sees("Row 3: Date “2026-02-30”. There is no such date or time.")
    thumb.sees("Row 9: Nitrite “>0.1”. This is not a figure.")
    thumb.tap("button", "Bring in 2 entries")
    thumb.sees("2 entries saved on this phone")
    share(thumb)
    thumb.sees("Everything on this phone is shared.")
    assert sorted(kind for kind, _ in records(served_room)) == ["reading", "reading", "tank"]


def test_tables_without_signal_and_our_own_readings_back(served_room, new_phone, tmp_path):
    thumb = new_phone()
    join(thumb, served_room.link, "Aino", "Aino's phone")
    at = "2026-04-01T08:00:00.000Z"
    read = {"tank": "tank-0001", "at": at, "parameter": "nitrite", "value": 0.25, "steps": [0, 0.25], "note": "=1+1"}
    write(
        thumb,
        [
            ["tank", "tank-0001", {"name": "Schilfbecken", "water_l": 100}],
            ["reading", "read-0001", read],
            ["feeding", "feed-0001", {"tank": "tank-0001", "at": at, "feed_g": 0.3}],
        ],
    )
    thumb.stored()
    thumb.turn_to("/room/copy")
    thumb.page.context.set_offline(True)
    with thumb.page.expect_download() as kept:
        thumb.tap("button", "Keep everything as tables")
    kept.value.save_as(tmp_path / "tables.zip")
    with zipfile.ZipFile(tmp_path / "tables.zip") as pack:
        assert sorted(pack.namelist()) == ["columns.csv", "feeding.csv", "reading.csv", "tank.csv"]
        table = pack.read("reading.csv").decode()
    assert "'=1+1" in table
    thumb.page.context.set_offline(False)
    bring(thumb, table)
    thumb.sees("This table was written by Limnary.")
    thumb.sees("1 entry is here already.")
    expect(thumb.page.get_by_role("button", name="Bring in 0 entries")).to_be_disabled()
    thumb.type("Or paste cells here", table.replace("read-0001", "read-0002"))
    thumb.tap("button", "Bring in 1 entry")
    thumb.sees("1 entry saved on this phone")
    share(thumb)
    thumb.sees("Everything on this phone is shared.")
    found = [fields for kind, fields in records(served_room) if kind == "reading"]
    assert found == [read, read]
