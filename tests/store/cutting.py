"""Cuts import, backup, restore and migration short at random moments, and checks what is left.

`python tests/store/cutting.py 200 [KIND ...]` cuts each kind 200 times; the suite cuts a few. The work runs in a
process of its own that the kernel ends at once, as a power cut ends a server: by a timer, or before one of its renames,
so that the swap of a restore is hit too. After each cut every file passes SQLite's integrity check, nothing that was
there is lost, the server's own preparation succeeds, and the same work goes through when it is repeated.
"""

import contextlib
import json
import os
import random
import shutil
import signal
import sqlite3
import sys
import tempfile
import time
import traceback
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

sys.path[:0] = [str(Path(__file__).parents[1]), str(Path(__file__).parents[2] / "server")]

from fish_rooms import START_MS, FishRoom  # noqa: E402
from limnary.store import Store, backup, people  # noqa: E402
from sqlite_utils import Database  # noqa: E402

Work = Callable[[], object]
ROOMS, TANKS = 3, 120


def cut(work: Work, *, after_s: float = 0, at_rename: int | None = None) -> bool:
    """Run `work` in a process that ends after that time, or before that rename; whether it was cut short."""
    child = os.fork()
    if child == 0:
        try:
            if at_rename is None:
                signal.signal(signal.SIGALRM, signal.SIG_DFL)
                signal.setitimer(signal.ITIMER_REAL, max(after_s, 1e-6))
            else:
                _die_at(at_rename)
            work()
            os._exit(0)
        except BaseException:
            traceback.print_exc()
            os._exit(1)
    _, status = os.waitpid(child, 0)
    assert os.WIFSIGNALED(status) or os.waitstatus_to_exitcode(status) == 0, "the work itself failed"
    return os.WIFSIGNALED(status)


def _die_at(rename: int) -> None:
    """Replace this process's `Path.rename` by one that ends it before the rename of that number."""
    really, left = Path.rename, [rename]

    def dying(self, target):
        if not left[0]:
            os.kill(os.getpid(), signal.SIGKILL)
        left[0] -= 1
        return really(self, target)

    Path.rename = dying


@dataclass
class Found:
    """What a folder holds: ids of the records by room, and the names of the members of all rooms."""

    records: dict[str, set[str]]
    members: set[str]


@contextlib.contextmanager
def opened(folder: Path) -> Iterator[Store]:
    """The store as a server opens it: prepared, with no room damaged or missing."""
    store = Store(folder, lambda: START_MS + 3_600_000)
    try:
        lost = store.prepare()
        assert lost == [], lost
        yield store
    finally:
        store.close()


def found(folder: Path) -> Found:
    """What is in the folder once a server has prepared it; AssertionError if a file is not whole."""
    with opened(folder) as store:
        for path in [store.files.people, *store.files.rooms()]:
            with contextlib.closing(sqlite3.connect(path)) as db:
                assert db.execute("PRAGMA integrity_check").fetchone()[0] == "ok", path
        with store.files.reading(store.files.people) as db:
            listed = [room["id"] for room in people.all_rooms(db)]
            members = {one["name"] for room in listed for one in people.people_in(db, room)}
        records = {}
        for room in listed:
            with store.files.reading(store.files.room(room)) as db:
                records[room] = {row["id"] for row in db.execute("SELECT id FROM records")}
                ops = db.execute("SELECT count(*) FROM ops").fetchone()[0]
                assert ops >= len(records[room]), f"{room}: a record without its op"
        return Found(records, members)


class World:
    """A data folder with a backup of before and records of after, an archive to take in, and a fresh copy each time."""

    def __init__(self, folder: Path):
        self.pristine, self.data = folder / "pristine", folder / "data"
        self.saved, self.archive = folder / "before.zip", folder / "archive.zip"
        room = FishRoom(self.pristine)
        self.room = room.id
        others = [room.store.new_room(f"Room {n}", room.owner.keeper)["id"] for n in range(1, ROOMS)]
        for each in [room.id, *others]:
            self._fill(room, each)
        backup.back_up(room.store.files, self.saved, room.at)
        with self.archive.open("wb") as out:
            room.store.export_room(others[0], out)
        room.phone("keeper", "Late")
        self._fill(room, room.id)
        room.close()
        self.now = found(self.pristine)
        with tempfile.TemporaryDirectory() as other:
            with opened(Path(other)) as store:
                backup.restore(store.files, self.saved, START_MS)
            self.before = found(Path(other))

    def _fill(self, room: FishRoom, each: str) -> None:
        epoch, ops = room.store.epoch(each), [room.owner.tank() for _ in range(TANKS)]
        answer = room.owner.call("POST", f"/rooms/{each}/push", {"epoch": epoch, "ops": ops})
        assert {one["status"] for one in answer.json["results"]} == {"ok"}

    def fresh(self) -> None:
        """A new copy of the data to work on."""
        shutil.rmtree(self.data, ignore_errors=True)
        shutil.copytree(self.pristine, self.data)

    def store(self) -> Store:
        """A store that is not opened yet: each process opens its own files."""
        return Store(self.data, lambda: START_MS + 3_600_000)


class Import:
    """An archive as a new room, or merged into one."""

    def __init__(self, world: World, into: str | None):
        self.world, self.into = world, into
        self.archived = set.union(*(world.now.records[room] for room in world.now.records if room != world.room))

    def work(self) -> None:
        with self.world.archive.open("rb") as source:
            self.world.store().import_room(source, self.into)

    def look(self) -> None:
        """All that was there is there; a new room is listed only with all that its archive holds."""
        now, then = found(self.world.data).records, self.world.now.records
        for room, its in then.items():
            assert its <= now[room], "an import lost a record"
        for room in now.keys() - then.keys():
            assert now[room] and now[room] <= self.archived, "a new room is listed half"
            assert len(now[room]) == TANKS, "a new room is listed half"

    def again(self) -> None:
        self.work()
        self.look()
        into = [found(self.world.data).records[self.into]] if self.into else found(self.world.data).records.values()
        assert any(len(its & self.archived) == TANKS for its in into)


class Backup:
    """A backup over an earlier one of the same name."""

    def __init__(self, world: World):
        self.world, self.target = world, world.data.with_name("backups") / "rooms.zip"
        self.target.parent.mkdir()

    def work(self) -> None:
        backup.back_up(self.world.store().files, self.target, START_MS)

    def look(self) -> None:
        """The data are as they were, and what is called a backup is one."""
        assert found(self.world.data) == self.world.now
        if self.target.exists():
            assert backup.verify(self.target, self.target.with_name("look"))[1] == ROOMS

    def again(self) -> None:
        self.work()
        self.look()
        assert [path.name for path in self.target.parent.iterdir()] == [self.target.name], "something was left behind"


class Restore:
    """A backup in the place of newer data."""

    def __init__(self, world: World):
        self.world = world

    def work(self, at_ms: int = START_MS) -> None:
        backup.restore(self.world.store().files, self.world.saved, at_ms)

    def look(self) -> None:
        """All is as it was, or all is as in the backup and the former data are put aside."""
        now = found(self.world.data)
        assert now in (self.world.now, self.world.before), "half of a restore"
        if now == self.world.before:
            (aside,) = self.world.data.glob("before-restore-*")
            assert found(aside) == self.world.now, "the former data are not whole"

    def again(self) -> None:
        self.work(START_MS + 1)
        assert found(self.world.data) == self.world.before


class Migration:
    """The start of a server on the data of an older one."""

    def __init__(self, world: World):
        self.world = world

    def fresh(self) -> None:
        """Take from each file what its last migration added."""
        for path in [self.world.data / "people.sqlite", *self.world.data.glob("rooms/*/*.sqlite")]:
            with contextlib.closing(sqlite3.connect(path)) as raw:
                self._undo(Database(raw), path)
                raw.commit()

    def _undo(self, db: Database, path: Path) -> None:
        if path.name == "people.sqlite":
            db["phones_out"].drop()
            taken, last = (("invites", "made_on"), ("calendar_keys", "made_on")), "ways_in_by_phone"
        else:
            added = ("moved", "brought_by", "brought_at")
            taken, last = tuple(("records", name) for name in added), "rows_brought_back"
        for table, column in taken:
            db.execute(f"ALTER TABLE {table} DROP COLUMN {column}")
        assert db.execute("DELETE FROM _sqlite_migrations WHERE name = ?", [last]).rowcount == 1

    def work(self) -> None:
        self.world.store().prepare()

    def look(self) -> None:
        """The next start finishes it, and everything is there."""
        assert found(self.world.data) == self.world.now
        with contextlib.closing(sqlite3.connect(self.world.data / "people.sqlite")) as db:
            assert db.execute("SELECT count(*) FROM phones_out").fetchone() == (0,)

    def again(self) -> None:
        self.work()
        self.look()


KINDS = {
    "import": lambda world: Import(world, None),
    "merge": lambda world: Import(world, world.room),
    "backup": Backup,
    "restore": Restore,
    "migration": Migration,
}


def cut_often(folder: Path, kind: str, times: int, seed: int) -> dict[str, int]:
    """Cut one kind of work that often, and on until it was cut once; how often it was cut, and how often in a rename.

    AssertionError on any loss.
    """
    dice, world = random.Random(seed), World(folder)
    its = KINDS[kind](world)
    ready(world, its)
    began = time.perf_counter()
    assert not cut(its.work, after_s=600)
    took = time.perf_counter() - began
    its.look()
    counts = {"times": 0, "cut": 0, "in a rename": 0}
    while counts["times"] < times or not counts["cut"]:
        turn = counts["times"]
        counts["times"] += 1
        ready(world, its)
        if kind == "restore" and turn % 2:
            short = cut(its.work, at_rename=turn // 2 % 4)
            counts["in a rename"] += short
        else:
            short = cut(its.work, after_s=dice.uniform(0, took))
            # The first time is often the slowest: what was through too soon is cut earlier from now on.
            took = took if short else took * 0.8
        counts["cut"] += short
        its.look()
        its.again()
    return counts


def ready(world: World, its: object) -> None:
    """Fresh data for the next turn."""
    world.fresh()
    if isinstance(its, Migration):
        its.fresh()


if __name__ == "__main__":
    times, kinds = int(sys.argv[1]), sys.argv[2:] or list(KINDS)
    for one in kinds:
        with tempfile.TemporaryDirectory() as where:
            print(json.dumps({"kind": one, **cut_often(Path(where), one, times, seed=times)}), flush=True)
