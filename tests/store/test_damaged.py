"""Damaged and missing files: the server says which and serves the other rooms; without people.sqlite none."""

import shutil

import pytest
from fish_rooms import FishRoom
from limnary.app import create_app
from limnary.config import Config
from limnary.errors import Damaged
from limnary.store import Store, backup


def cut_in_half(path):
    data = path.read_bytes()
    path.write_bytes(data[: len(data) // 2 // 4096 * 4096 + 100])


def spoil_the_head(path):
    data = path.read_bytes()
    path.write_bytes(b"this is no database at all" + data[26:])


HARM = {
    "head": spoil_the_head,
    "half": cut_in_half,
    "empty": lambda path: path.write_bytes(b""),
    "junk": lambda path: path.write_bytes(b"junk" * 5000),
    "missing": lambda path: path.unlink(),
}


@pytest.fixture
def two_rooms(fish_room):
    """A second room of the same owner, with a tank in each."""
    phone = fish_room.owner
    fish_room.tank = phone.tank()
    phone.results(fish_room.tank)
    fish_room.second = phone.call("POST", "/rooms", {"name": "Second"}).json["id"]
    fish_room.store.close()
    return fish_room


@pytest.mark.parametrize("harm", HARM.values(), ids=HARM)
def test_a_damaged_room_is_named_and_the_others_are_served(two_rooms, harm):
    room = two_rooms
    path = room.store.files.room(room.second)
    harm(path)
    left = path.read_bytes() if path.exists() else None
    (said,) = Store(room.store.files.folder, lambda: room.at).prepare()
    assert "'Second'" in said and str(path) in said and "The phones keep what they hold" in said
    assert (path.read_bytes() if path.exists() else None) == left, "it stays as it is, for whoever can mend it"
    room.app = create_app(Config(data_dir=room.store.files.folder, clock=lambda: room.at))
    room.store = room.app.extensions["limnary_store"]
    room.owner.client = room.app.test_client()
    assert set(room.owner.rows()) == {room.tank["id"]}
    assert [one["id"] for one in room.owner.call("GET", "/me").json["rooms"]] == [room.id]
    epoch = {"epoch": "any", "ops": []}
    for answer in (
        room.owner.call("POST", f"/rooms/{room.second}/push", epoch),
        room.owner.call("GET", f"/rooms/{room.second}/pull?epoch=any"),
        room.owner.call("GET", f"/rooms/{room.second}/export"),
    ):
        # A phone takes any 5xx as the server's own trouble: it keeps everything and comes back.
        assert (answer.status_code, answer.json["type"]) == (500, "/problems/damaged")


def test_damage_that_shows_only_later_is_said_as_such(two_rooms):
    room = two_rooms
    for _ in range(40):
        room.owner.results(room.owner.tank(note="n" * 1500))
    room.store.close()
    path = room.store.files.room(room.id)
    data = bytearray(path.read_bytes())
    data[8 * 4096 :] = b"\xa5" * (len(data) - 8 * 4096)
    path.write_bytes(bytes(data))
    answer = room.owner.pull()
    assert (answer.status_code, answer.json["type"]) == (500, "/problems/damaged")


@pytest.mark.parametrize("name", ["zz.sqlite", "notes.txt", "x.sqlite-wal"])
def test_a_file_that_is_none_of_ours_does_no_harm(two_rooms, tmp_path, name):
    for folder in ("rooms/zz", "rooms"):
        stray = two_rooms.store.files.folder / folder / name
        stray.parent.mkdir(exist_ok=True)
        stray.write_bytes(b"junk" * 100)
    assert two_rooms.store.prepare() == []
    assert two_rooms.owner.pull().status_code == 200
    assert backup.back_up(two_rooms.store.files, tmp_path / "backup.zip", two_rooms.at) == 2


@pytest.mark.parametrize("harm", HARM.values(), ids=HARM)
def test_without_a_whole_people_file_nothing_starts(two_rooms, tmp_path, harm):
    files = two_rooms.store.files
    backed_up = shutil.copytree(files.folder, tmp_path / "aside")
    harm(files.people)
    for side in ("-wal", "-shm"):
        files.people.with_name(files.people.name + side).unlink(missing_ok=True)
    with pytest.raises(Damaged, match=r"people\.sqlite.*limnary restore FILE"):
        Store(files.folder, lambda: two_rooms.at).prepare()
    shutil.copy(backed_up / "people.sqlite", files.people)
    assert Store(files.folder, lambda: two_rooms.at).prepare() == []


def test_a_folder_without_anything_is_a_first_start(tmp_path):
    room = FishRoom(tmp_path / "new")
    assert room.owner.pull().status_code == 200
    room.close()


def test_a_room_that_another_process_holds_is_busy_not_broken(two_rooms, monkeypatch):
    import sqlite3

    from limnary.store import files

    monkeypatch.setattr(files, "WAIT_S", 0.01)
    other = sqlite3.connect(two_rooms.store.files.room(two_rooms.id), isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    answer = two_rooms.owner.push(two_rooms.owner.tank())
    assert (answer.status_code, answer.json["type"]) == (503, "/problems/busy")
    assert answer.headers["Retry-After"] == "5"
    other.execute("ROLLBACK")
    other.close()
    assert two_rooms.owner.push(two_rooms.owner.tank()).status_code == 200
