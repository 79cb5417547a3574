"""The files: safe settings, migrations whole or not at all, many rooms, many threads."""

import sqlite3
import threading

import pytest
from limnary.protocol.records import kinds
from limnary.store import files as files_module
from limnary.store.files import WRITERS_KEPT, Files, connect, migrate
from sqlite_utils import Migrations


def test_settings_that_keep_what_was_acknowledged(fish_room):
    db = connect(fish_room.store.files.room(fish_room.id))
    assert db.execute("PRAGMA journal_mode").fetchone()[0] == "wal"
    assert db.execute("PRAGMA synchronous").fetchone()[0] == 2, "FULL"
    assert db.execute("PRAGMA foreign_keys").fetchone()[0] == 1
    db.close()
    assert fish_room.store.files.people.stat().st_mode & 0o077 == 0, "for the server's user only"


def test_preparing_again_changes_nothing(fish_room):
    fish_room.owner.results(fish_room.owner.tank())
    rows = fish_room.owner.rows()
    fish_room.store.prepare()
    assert fish_room.owner.rows() == rows


def test_a_migration_that_fails_leaves_nothing_behind(tmp_path):
    steps = Migrations("test")
    broken = True

    @steps()
    def one(db):
        db["kept"].create({"id": int}, pk="id")

    @steps()
    def two(db):
        db["half"].create({"id": int}, pk="id")
        if broken:
            raise RuntimeError("power cut")

    path = tmp_path / "x.sqlite"
    with pytest.raises(RuntimeError):
        migrate(path, steps)
    assert tables(path) >= {"kept"} and "half" not in tables(path)
    broken = False
    migrate(path, steps)
    assert tables(path) >= {"kept", "half"}


def tables(path):
    db = sqlite3.connect(path)
    found = {name for (name,) in db.execute("SELECT name FROM sqlite_master WHERE type = 'table'")}
    db.close()
    return found


def test_more_rooms_than_writers_kept(tmp_path):
    files = Files(tmp_path)
    files.prepare()
    rooms = [f"{n:032x}"[::-1] for n in range(WRITERS_KEPT + 5)]
    for room in rooms:
        files.prepare_room(room)
    for _ in range(2):
        for room in rooms:
            with files.writing(files.room(room)) as db:
                db.execute("INSERT INTO authors (id, name) VALUES (hex(randomblob(8)), 'x')")
    for room in rooms:
        with files.reading(files.room(room)) as db:
            assert db.execute("SELECT count(*) FROM authors").fetchone()[0] == 2
    files.close()


def test_an_error_inside_a_transaction_undoes_it_and_the_next_goes_on(fish_room):
    path = fish_room.store.files.people
    with pytest.raises(ZeroDivisionError), fish_room.store.files.writing(path) as db:
        db.execute("DELETE FROM memberships")
        raise ZeroDivisionError
    assert fish_room.owner.pull().status_code == 200


def test_a_crash_at_the_commit_acknowledges_nothing(fish_room, monkeypatch):
    tank = fish_room.owner.tank()

    def crash(_):
        raise KeyboardInterrupt

    monkeypatch.setattr(files_module, "commit", crash)
    with pytest.raises(KeyboardInterrupt):
        fish_room.owner.push(tank)
    monkeypatch.undo()
    assert fish_room.owner.rows() == {}
    assert fish_room.owner.results(tank)[0]["status"] == "ok"


def test_phones_at_the_same_moment(fish_room):
    phones = [fish_room.phone("keeper", f"K{n}") for n in range(6)]
    tanks = {phone: [phone.tank() for _ in range(30)] for phone in phones}
    results = []

    def push(phone):
        for at in range(0, 30, 5):
            results.extend(phone.results(*tanks[phone][at : at + 5]))

    threads = [threading.Thread(target=push, args=[phone]) for phone in phones]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert sorted(result["seq"] for result in results) == list(range(1, 181))
    assert set(fish_room.owner.rows()) == {tank["id"] for mine in tanks.values() for tank in mine}


def test_invitations_at_the_same_moment(fish_room):
    statuses = []

    def invite():
        for _ in range(15):
            statuses.append(fish_room.owner.call("POST", "/rooms/{room}/invites", {}).status_code)

    threads = [threading.Thread(target=invite) for _ in range(6)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert statuses == [201] * 90
    assert len(fish_room.owner.call("GET", "/rooms/{room}/invites").json["invites"]) == 90


def test_ops_of_an_older_schema_are_taken(fish_room, monkeypatch):
    """A kind has gained an optional field since: ops that an old phone has not sent yet are still accepted."""
    tank = kinds()["tank"]
    newer = {**tank, "schema": 2, "fields": [*tank["fields"], {**tank["fields"][1], "name": "shelf"}]}
    monkeypatch.setattr("limnary.protocol.records.kinds", lambda: {**kinds(), "tank": newer})
    phone = fish_room.owner
    assert phone.results(phone.tank())[0]["status"] == "ok"
    ahead = phone.push({**phone.tank(), "schema": 3})
    assert (ahead.status_code, ahead.json["newest"]) == (426, 2)
    monkeypatch.setattr("limnary.protocol.records.kinds", lambda: {"tank": {**newer, "oldest_schema": 2}})
    behind = phone.push(phone.tank())
    assert (behind.status_code, behind.json["oldest"]) == (426, 2)
