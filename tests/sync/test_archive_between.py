"""A room's archive goes from phone to server and from server to phone, and shows the same at both ends."""

import json
import subprocess
from pathlib import Path

import pytest
from limnary.store import Store, archive

SCRIPT = Path(__file__).with_name("archive_file.js")
NOW = 1_778_000_000_000


@pytest.fixture
def server(tmp_path):
    store = Store(tmp_path / "data", lambda: NOW)
    store.prepare()
    room = store.new_room("Cellar")
    yield store, room
    store.close()


def phone(*arguments: object) -> str:
    done = subprocess.run(["node", str(SCRIPT), *map(str, arguments)], capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    return done.stdout


def taken_in(store, room, file):
    with file.open("rb") as source:
        return store.import_room(source, room["id"])[1]


def test_a_phones_archive_goes_into_the_server_once(server, tmp_path):
    store, room = server
    file = tmp_path / "room.zip"
    phone("export", file)
    done = taken_in(store, room, file)
    assert (done["rows"], done["ops"], done["refused"], done["photos"]) == (2, 4, 0, 1)
    with store.files.reading(store.files.room(room["id"])) as db:
        records = {row["id"]: row for row in (archive.as_row(row) for row in db.execute("SELECT * FROM records"))}
        before = [tuple(row) for row in db.execute("SELECT * FROM records ORDER BY id")]
    assert records["tank-0001"]["fields"] == {"name": "Moss corner", "water_l": 50, "place": "shelf"}
    assert records["note-0001"]["deleted"]
    assert sorted(row["fields"]["value"] for row in records.values() if row["kind"] == "reading") == [0.25, 0.5]
    taken_in(store, room, file)
    with store.files.reading(store.files.room(room["id"])) as db:
        assert [tuple(row) for row in db.execute("SELECT * FROM records ORDER BY id")] == before


def test_the_servers_archive_goes_into_a_phone(server, tmp_path):
    store, room = server
    first, second = tmp_path / "first.zip", tmp_path / "second.zip"
    phone("export", first)
    taken_in(store, room, first)
    with store.files.reading(store.files.room(room["id"])) as db, second.open("wb") as out:
        archive.write(db, out, {"id": room["id"], "name": room["name"]}, {}, NOW)
    told = json.loads(phone("import", second))
    (tank,) = told["shown"]["tank"]
    assert (tank["name"], tank["water_l"], tank["place"]) == ("Moss corner", 50, "shelf")
    assert [one["value"] for one in told["shown"]["reading"]] == [0.25]
    assert told["shown"]["note"] == []
    assert told["bytes"] == [0xFF, 0xD8, 0xFF, 1]
