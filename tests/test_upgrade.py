"""Data of the version before under this one, and the other way: what is migrated, what is refused in words."""

import shutil
import sqlite3
import subprocess
import sys
from contextlib import closing

import pytest
from former_version import former_version
from limnary.cli import main
from limnary.errors import NewerData
from limnary.ids import uuid7
from limnary.store.files import Files
from started_server import LINK, RealServer, call, join

AT_MS = 1_780_000_000_000


@pytest.fixture(scope="module")
def former(tmp_path_factory):
    return former_version(tmp_path_factory.mktemp("former"))


class Keeper:
    """A phone that goes on while its server changes."""

    def __init__(self, server: RealServer):
        _, joined = join(server, LINK.findall(server.out)[-1][1])
        self.key, self.device, self.count = joined["key"], joined["device"], 0
        self.room, self.epoch = joined["room"]["id"], joined["epoch"]

    def op(self, name: str) -> dict:
        """An op that records a tank."""
        self.count += 1
        op = {"op": uuid7(AT_MS + self.count), "kind": "tank", "id": uuid7(AT_MS + self.count), "type": "put"}
        op |= {"fields": {"name": name, "water_l": 87.5}, "schema": 1}
        return op | {"stamp": f"{AT_MS + self.count:013d}-00000-{self.device}"}

    def push(self, server: RealServer, op: dict) -> tuple[int, list[dict] | None]:
        """Push one op; the status and the results."""
        body = {"epoch": self.epoch, "ops": [op]}
        status, answer = call(server, "POST", f"/api/v1/rooms/{self.room}/push", body, self.key)
        return status, answer.get("results")

    def tank(self, server: RealServer, name: str) -> str:
        """Record a tank; the result's status."""
        status, results = self.push(server, self.op(name))
        assert status == 200, results
        return results[0]["status"]

    def names(self, server: RealServer) -> set[str]:
        status, page = call(server, "GET", f"/api/v1/rooms/{self.room}/pull?epoch={self.epoch}", key=self.key)
        assert status == 200, page
        return {row["fields"]["name"] for row in page["rows"]}


def migrations_of(folder) -> set[str]:
    with closing(sqlite3.connect(folder / "people.sqlite")) as db:
        return {name for (name,) in db.execute("SELECT name FROM _sqlite_migrations")}


def test_data_of_the_version_before_are_migrated_and_that_version_can_no_longer_touch_them(former, tmp_path):
    data = tmp_path / "data"
    server = RealServer(data, code=former).start()
    keeper = Keeper(server)
    first = keeper.op("Made before")
    assert keeper.push(server, first)[1][0]["status"] == "ok"
    assert server.stop() == 0
    before = migrations_of(data)

    server = RealServer(data, "--backup-to", "off").start()
    assert migrations_of(data) > before, "the data are migrated at the start"
    assert keeper.names(server) == {"Made before"}
    assert keeper.push(server, first) == (200, [{"op": first["op"], "status": "ok", "stamp": first["stamp"], "seq": 1}])
    assert keeper.tank(server, "Made after") == "ok"
    assert server.stop() == 0

    # It did not ask yet whether the data are of a newer version. It fails, and changes nothing.
    server = RealServer(data, code=former).start()
    assert keeper.push(server, keeper.op("Made back there"))[0] == 500
    assert server.stop() == 0

    server = RealServer(data, "--backup-to", "off").start()
    assert keeper.names(server) == {"Made before", "Made after"}
    assert server.stop() == 0


def limnary(code, *arguments: str) -> subprocess.CompletedProcess:
    """A command of that version."""
    run = [sys.executable, "-m", "limnary.cli", *arguments]
    return subprocess.run(run, env={"PYTHONPATH": str(code / "server")}, capture_output=True, text=True, timeout=120)


def test_a_backup_of_the_version_before_is_restored_by_this_one(former, tmp_path):
    data, saved = tmp_path / "data", tmp_path / "before.zip"
    server = RealServer(data, code=former).start()
    keeper = Keeper(server)
    assert keeper.tank(server, "Made before") == "ok"
    assert server.stop() == 0
    assert limnary(former, "backup", "--data", str(data), str(saved)).returncode == 0
    assert main(["restore", "--data", str(tmp_path / "new"), str(saved)]) == 0
    server = RealServer(tmp_path / "new", "--backup-to", "off").start()
    status, told = call(server, "GET", f"/api/v1/rooms/{keeper.room}/pull?epoch={keeper.epoch}", key=keeper.key)
    assert (status, told["type"]) == (409, "/problems/epoch-changed")
    keeper.epoch = told["epoch"]
    assert keeper.names(server) == {"Made before"}
    assert server.stop() == 0


@pytest.mark.parametrize("of_room", [False, True], ids=["people", "room"])
def test_data_of_a_newer_version_are_refused_in_words_and_left_as_they_are(fish_room, tmp_path, capsys, of_room):
    fish_room.store.close()
    files = fish_room.store.files
    path, name = (files.room(fish_room.id), "room") if of_room else (files.people, "people")
    with closing(sqlite3.connect(path)) as db:
        row = (name, "who_may_feed", "2027-01-01")
        db.execute("INSERT INTO _sqlite_migrations (migration_set, name, applied_at) VALUES (?, ?, ?)", row)
        db.commit()
    saved = tmp_path / "copy"
    shutil.copy(path, saved)
    assert main(["people", "--data", str(files.folder)]) == 1
    said = capsys.readouterr().err
    assert "belong to a newer version of Limnary" in said
    assert "who_may_feed" in said and str(path) in said and "install that one again" in said
    assert path.read_bytes() == saved.read_bytes()
    with pytest.raises(NewerData):
        Files(files.folder).prepare()
