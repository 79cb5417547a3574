"""`limnary check`: whether the data, the disk, the clock, the certificate and the last backup are well."""

import argparse
import contextlib
import json
import shutil
import sqlite3
import sys
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

from limnary.commands.data import data_dir
from limnary.config import Config
from limnary.errors import LimnaryError, NotFound
from limnary.ids import ms_of
from limnary.store import backup, daily, people
from limnary.store.change_log import top_of
from limnary.store.files import Files, connect

DAY_MS = 86_400_000
# Assumptions: a week of writing, a week to renew, a week between backups.
LEAST_FREE_BYTES = 500_000_000
LEAST_CERTIFICATE_DAYS = 7
OLDEST_BACKUP_DAYS = 7
MOST_AHEAD_MS = 120_000


def check(arguments: argparse.Namespace) -> int:
    """Print one line for each thing looked at; 0 if all is well, 1 if anything needs a person."""
    config = Config(data_dir=data_dir(arguments))
    files = Files(config.data_dir)
    if not config.data_dir.is_dir():
        raise NotFound(f"There is no Limnary data in {config.data_dir.resolve()}: name the folder with --data")
    now_ms = config.clock()
    timed = (_clock, _certificate, _daily, _backup)
    looks = (_whole(files), _space(files), *(look(files, now_ms) for look in timed))
    faults = 0
    for fault, sentence in (one for look in looks for one in look):
        faults += fault
        print(("WRONG: " if fault else "well:  ") + sentence, file=sys.stderr if fault else sys.stdout)
    return 1 if faults else 0


Look = Iterator[tuple[bool, str]]


def _whole(files: Files) -> Look:
    if not files.people.is_file():
        yield True, f"{files.people} is missing: put it back, or put a backup in place (limnary restore FILE)"
        return
    paths = [files.people, *files.rooms()]
    damaged = [path for path in paths if not _is_whole(path)]
    for path in damaged:
        yield True, f"{path} is damaged: put a whole one there, or put a backup in place (limnary restore FILE)"
    if files.people not in damaged:
        with files.reading(files.people) as db:
            listed = [room["id"] for room in people.all_rooms(db)]
        for room in listed:
            if not files.room(room).is_file():
                yield True, f"{files.room(room)} is missing: put it back, or put a backup in place"
        for path in paths[1:]:
            if path.stem not in listed:
                yield False, f"{path} belongs to no room: an import was cut off; it may be removed"
    if not damaged:
        yield False, f"{len(paths)} file(s) pass SQLite's integrity check"


def _is_whole(path: Path) -> bool:
    try:
        with contextlib.closing(connect(path)) as db:
            return path.stat().st_size > 0 and db.execute("PRAGMA integrity_check(1)").fetchone()[0] == "ok"
    except sqlite3.DatabaseError:
        return False


def _space(files: Files) -> Look:
    free = shutil.disk_usage(files.folder).free
    yield free < LEAST_FREE_BYTES, f"{free / 1e9:.1f} GB are free on the disk of {files.folder}"


def _clock(files: Files, now_ms: int) -> Look:
    ahead = 0
    for path in files.rooms():
        with contextlib.suppress(sqlite3.DatabaseError, TypeError), contextlib.closing(connect(path)) as db:
            ahead = max(ahead, top_of(db) - now_ms)
    if ahead > MOST_AHEAD_MS:
        yield True, f"the clock is {ahead // 60_000} minutes behind what was recorded already: set it"
    else:
        yield False, "the clock is not behind what was recorded"


def _certificate(files: Files, now_ms: int) -> Look:
    from limnary import lan

    found = lan.ends(files.folder)
    if not found:
        return
    now = datetime.fromtimestamp(now_ms / 1000, UTC)
    days, authority_days = (found.certificate - now).days, (found.authority - now).days
    fault = days < LEAST_CERTIFICATE_DAYS
    renew = ": a running server renews it, and each start does" if fault else ""
    yield fault, f"the certificate for the home network lasts {days} more day(s){renew}"
    if authority_days < lan.AUTHORITY_NOTICE_DAYS:
        yield (
            True,
            f"the authority for the home network lasts {authority_days} more day(s): then the server makes a new one, "
            "and each phone must trust that (limnary trust)",
        )


def _daily(files: Files, now_ms: int) -> Look:
    noted = daily.notes(files.folder)
    for fault in daily.faults(noted, now_ms):
        yield True, f"daily backups in {noted.folder}: {daily.FAULTS[fault]}"
    for name in noted.damaged:
        yield True, f"{Path(noted.folder) / name} is damaged: remove it"
    if noted.good_at is not None and not daily.faults(noted, now_ms):
        yield False, f"{len(noted.whole)} daily backup(s) in {noted.folder}"


def _backup(files: Files, now_ms: int) -> Look:
    note = files.folder / backup.LAST_BACKUP
    if not note.is_file():
        yield True, "no backup was made yet: limnary backup FILE"
        return
    path = Path(json.loads(note.read_text("utf-8"))["file"])
    if not path.is_file():
        yield True, f"the last backup, {path}, is not there (any more): limnary backup FILE"
        return
    try:
        made_at, rooms = backup.verify(path, path.with_name(path.name + ".trial"))
        days = (now_ms - ms_of(made_at)) // DAY_MS
    except (LimnaryError, ValueError) as bad:
        yield True, f"the last backup, {path}, cannot be restored ({bad}): limnary backup FILE"
        return
    yield (
        days > OLDEST_BACKUP_DAYS,
        f"the last backup, {path}, of {rooms} room(s), is {days} day(s) old and can be restored",
    )
