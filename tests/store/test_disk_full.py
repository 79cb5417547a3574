"""A full disk: a clear refusal, nothing acknowledged that is not stored, and normal work once there is space."""

import hashlib
import os
import subprocess

import pytest
from fish_rooms import FishRoom
from limnary.store import files


def push_until_full(room) -> tuple[set[str], object]:
    """Ids of the acknowledged records, and the answer that refused."""
    kept = set()
    for _ in range(400):
        ops = [room.owner.tank(note="n" * 1500) for _ in range(20)]
        answer = room.owner.push(*ops)
        if answer.status_code != 200:
            return kept, answer
        assert {result["status"] for result in answer.json["results"]} == {"ok"}
        kept |= {op["id"] for op in ops}
    raise AssertionError("the disk never filled up")


def is_refused_plainly(answer):
    assert (answer.status_code, answer.json["type"]) == (507, "/problems/storage-full")
    assert "nothing of this request was stored" in answer.json["title"]


def test_a_file_that_may_not_grow(fish_room, monkeypatch):
    """SQLite's own limit on pages replaces the full disk, so that this runs anywhere."""
    plain = files.connect

    def limited(path):
        connection = plain(path)
        connection.execute("PRAGMA max_page_count = 120")
        return connection

    fish_room.close()
    monkeypatch.setattr(files, "connect", limited)
    kept, answer = push_until_full(fish_room)
    is_refused_plainly(answer)
    assert kept and set(fish_room.owner.rows()) == kept
    photo = b"\x89PNG\r\n\x1a\n" + os.urandom(900_000)
    is_refused_plainly(
        fish_room.owner.call("PUT", f"/rooms/{{room}}/blobs/{hashlib.sha256(photo).hexdigest()}", data=photo)
    )
    monkeypatch.undo()
    fish_room.close()
    tank = fish_room.owner.tank()
    assert fish_room.owner.results(tank)[0]["status"] == "ok"
    assert set(fish_room.owner.rows()) == {*kept, tank["id"]}


@pytest.fixture
def small_disk(tmp_path):
    """A file system of 3 MB, if this machine lets us mount one."""
    disk = tmp_path / "disk"
    disk.mkdir()
    mounted = subprocess.run(["mount", "-t", "tmpfs", "-o", "size=3m", "tmpfs", disk], capture_output=True, check=False)
    if mounted.returncode:
        pytest.skip("mounting a small file system needs root; the limit on pages above stands for it")
    yield disk
    subprocess.run(["umount", disk], check=True)


def test_a_disk_that_is_really_full(small_disk):
    ballast = small_disk / "ballast"
    ballast.write_bytes(b"x" * 1_000_000)
    room = FishRoom(small_disk / "data")
    kept, answer = push_until_full(room)
    is_refused_plainly(answer)
    assert kept and set(room.owner.rows()) == kept, "a full disk still lets everyone read"
    ballast.unlink()
    tank = room.owner.tank()
    assert room.owner.results(tank)[0]["status"] == "ok"
    assert set(room.owner.rows()) == {*kept, tank["id"]}
    with room.store.files.reading(room.store.files.room(room.id)) as db:
        assert db.execute("PRAGMA integrity_check").fetchone()[0] == "ok"
    room.close()


def test_an_export_on_a_full_disk_is_refused_plainly(fish_room, monkeypatch):
    """The archive is written aside before it is sent; there a full disk shows too."""

    def full(*_, **where):
        assert where["dir"] == fish_room.store.files.folder, (
            "not in a folder for all, where a full disk reads otherwise"
        )
        return open("/dev/full", "wb")

    monkeypatch.setattr("limnary.api.archive.tempfile.TemporaryFile", full)
    fish_room.owner.results(*[fish_room.owner.tank(note="n" * 1500) for _ in range(50)])
    is_refused_plainly(fish_room.owner.call("GET", "/rooms/{room}/export"))
