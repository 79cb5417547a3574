"""Several rooms on one phone, their names, and copies of a room taken out and in."""

import csv
import zipfile

import pytest
from playwright.sync_api import expect
from room_hands import join, read_ammonia, share
from tank_hands import have_tank

pytestmark = pytest.mark.browser


def test_two_rooms_are_kept_apart_and_both_are_shared(served_room, new_phone):
    thumb = new_phone()
    join(thumb, served_room.link, "Aino", "Aino's phone")
    have_tank(thumb, "Reed pool")
    thumb.turn_to("/room/rooms")
    thumb.type("Name of this room", "Cellar")
    thumb.tap("button", "Save", exact=True)
    thumb.sees("The room is called Cellar now")
    thumb.tap("button", "Undo")
    expect(thumb.page.get_by_label("Name of this room")).not_to_have_value("Cellar")
    thumb.type("Name of this room", "Cellar")
    thumb.tap("button", "Save", exact=True)
    thumb.sees("The room is called Cellar now")
    thumb.stored()
    thumb.page.context.set_offline(True)
    read_ammonia(thumb, "Reed pool")
    thumb.page.context.set_offline(False)

    thumb.turn_to("/room/rooms")
    thumb.page.get_by_label("Name of the room").fill("Attic")
    thumb.tap("button", "Make the room")
    thumb.title("Attic")
    thumb.sees("Attic is made, and you are its owner")
    thumb.turn_to("/")
    expect(thumb.page.get_by_text("Reed pool")).to_have_count(0)
    have_tank(thumb, "Jar on the sill")
    share(thumb)
    thumb.tap("link", "Rooms")
    shared = thumb.page.get_by_role("button", name="Cellar")
    expect(shared).to_contain_text("owner, shared")
    thumb.tap("button", "Cellar")
    thumb.title("Cellar")
    thumb.turn_to("/")
    thumb.sees("Reed pool")
    expect(thumb.page.get_by_text("Jar on the sill")).to_have_count(0)


def test_a_copy_of_one_phone_is_taken_in_by_another(new_phone, tmp_path):
    first, second = new_phone(), new_phone()
    first.open("/")
    have_tank(first, "Reed pool")
    read_ammonia(first, "Reed pool")
    first.turn_to("/room")
    first.tap("link", "Keep a copy")
    kept = download(first, "Keep the whole room", tmp_path / "kept.zip")
    assert set(zipfile.ZipFile(kept).namelist()) == {"room.jsonl", "readings.csv"}
    table = download(first, "Keep the readings as a table", tmp_path / "readings.csv")
    with table.open(newline="") as lines:
        (row,) = csv.DictReader(lines)
    assert (row["tank"], row["parameter"], row["value"]) == ("Reed pool", "total_ammonia", "0.1")

    second.open("/room/copy")
    second.page.get_by_label("Take a copy in").set_input_files(kept)
    second.sees("2 records taken in")
    second.page.get_by_label("Take a copy in").set_input_files(kept)
    second.sees("Nothing in it was new here")
    second.page.evaluate("""() => localStorage.setItem("limnary.draft.taking_in", '"kept.zip"')""")
    second.open("/room/copy")
    second.sees("Taking kept.zip in was interrupted. Choose it once more")
    second.page.get_by_label("Take a copy in").set_input_files(kept)
    second.sees("Nothing in it was new here")
    expect(second.page.get_by_text("was interrupted")).to_have_count(0)
    second.turn_to("/")
    second.sees("Reed pool")
    broken = tmp_path / "broken.zip"
    broken.write_bytes(b"no archive")
    second.turn_to("/room/copy")
    second.page.get_by_label("Take a copy in").set_input_files(broken)
    expect(second.page.get_by_role("alert")).to_contain_text("nothing of it was taken in")


def download(thumb, button, path):
    with thumb.page.expect_download() as held:
        thumb.tap("button", button)
    held.value.save_as(path)
    return path
