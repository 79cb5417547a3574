"""Daily backups: makes one a day, looks at those that are kept, drops what is too many, and says what is wrong.

Each is verified by a restore before it counts (`backup.back_up`). Its SHA-256 is noted, and every cycle compares all
that are kept with their notes, so that one that was damaged since is reported within a day.
"""

import contextlib
import dataclasses
import errno
import fcntl
import hashlib
import json
import logging
import os
import re
import secrets
import shutil
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from datetime import UTC, date, datetime
from pathlib import Path

from limnary.errors import is_full
from limnary.store import backup
from limnary.store.files import Files
from limnary.store.retention import kept, over_limit

log = logging.getLogger("limnary")
NOTES, LOCK = "backups.json", ".backups.lock"
RETRY_MS = 3_600_000
# One is made each day: two days without one are a fault.
LATE_MS = 2 * 86_400_000
# What can be wrong, in words for the terminal; phones have words of their own for each.
FAULTS = {
    "data-damaged": "a file of the data is damaged, so no backup was made: `limnary check` names it",
    "disk-full": "the disk of the backups is full, so no backup was made",
    "folder": "the folder of the backups cannot be written, so no backup was made",
    "not-whole": "the new backup could not be restored, so it was not kept",
    "failed": "no backup was made, and the log tells why",
    "backup-damaged": "a backup was damaged after it was made; the others are kept",
    "missing": "backups that were made are no longer in their folder",
    "too-large": "one backup alone is larger than all backups together may be, so no earlier one is kept",
    "late": "the last good backup is older than two days",
}


@dataclass
class Notes:
    """What is remembered between cycles. `mark` tells this data folder's backups from those of another.

    tried_at, good_at: milliseconds since 1970. sums: SHA-256 of each backup that is kept, by name.
    """

    mark: str = ""
    folder: str = ""
    tried_at: int | None = None
    good_at: int | None = None
    faults: list[str] = field(default_factory=list)
    damaged: list[str] = field(default_factory=list)
    sums: dict[str, str] = field(default_factory=dict)

    @property
    def whole(self) -> list[str]:
        """The names of the backups that are kept and not damaged."""
        return [name for name in self.sums if name not in self.damaged]


def notes(folder: Path) -> Notes:
    """What the server in the data folder `folder` noted; empty if it never made a daily backup."""
    try:
        found = json.loads((folder / NOTES).read_text("utf-8"))
        known = {one.name for one in dataclasses.fields(Notes)}
        return Notes(**{name: value for name, value in found.items() if name in known})
    except (OSError, ValueError, AttributeError):
        return Notes()


def faults(noted: Notes, now_ms: int) -> list[str]:
    """The names of FAULTS that hold now."""
    late = noted.good_at is not None and now_ms - noted.good_at > LATE_MS
    return [*noted.faults, *(["late"] if late else [])]


class DailyBackups:
    """The daily backups of one data folder, in `folder`. The default folder is made; a folder that was named is not,
    because a disk that is not there now must not be replaced by an empty folder."""

    def __init__(self, files: Files, folder: Path, limit_bytes: int, clock: Callable[[], int]):
        self.files, self.folder, self.limit_bytes, self.clock = files, folder, limit_bytes, clock
        self.notes = notes(files.folder)
        self.notes.mark = self.notes.mark or secrets.token_hex(3)

    def run_if_due(self) -> None:
        """One cycle, if today has no good backup yet and the last try is an hour ago."""
        now_ms = self.clock()
        if not self._is_due(now_ms):
            return
        with self._alone() as alone:
            if alone and self._is_due(now_ms):
                self._cycle(now_ms)

    def _is_due(self, now_ms: int) -> bool:
        made, tried = self.notes.good_at, self.notes.tried_at
        if made is not None and _day(made) == _day(now_ms):
            return False
        return tried is None or not 0 <= now_ms - tried < RETRY_MS

    @contextlib.contextmanager
    def _alone(self) -> Iterator[bool]:
        """Whether this process holds the lock: while one worker replaces another, two may run for a moment."""
        with (self.files.folder / LOCK).open("w") as lock:
            try:
                fcntl.flock(lock, fcntl.LOCK_EX | fcntl.LOCK_NB)
            except OSError:
                yield False
                return
            there = notes(self.files.folder)
            if (there.tried_at or 0) > (self.notes.tried_at or 0):
                self.notes = there
            yield True

    def _cycle(self, now_ms: int) -> None:
        noted, folder = self.notes, str(self.folder.resolve())
        if noted.folder != folder:
            noted.folder, noted.sums = folder, {}
        noted.tried_at = now_ms
        found: list[str] = []
        try:
            self._sweep()
            found += self._look()
            made = self._make(now_ms)
            noted.good_at = now_ms
            if self._drop() > self.limit_bytes:
                found.append("too-large")
            backup.note_last(self.files.folder, made)
        except Exception as wrong:
            log.exception("the daily backup failed")
            found.append(_fault_of(wrong))
        for fault in found:
            log.warning("daily backup: %s", FAULTS[fault])
        noted.faults = found
        self._write()

    def _look(self) -> list[str]:
        """Compare what is kept with the notes; the faults found. What is damaged stays, and counts for no period."""
        noted, here = self.notes, self._here()
        # One that was damaged may be removed by hand, as `limnary check` asks.
        missing = [name for name in noted.whole if name not in here]
        noted.damaged = [name for name, path in here.items() if not self._is_whole(path)]
        noted.sums = {name: its for name, its in noted.sums.items() if name in here}
        return [*(["missing"] if missing else []), *(["backup-damaged"] if noted.damaged else [])]

    def _is_whole(self, path: Path) -> bool:
        known = self.notes.sums.get(path.name)
        try:
            if known is None:
                backup.verify(path, path.with_name(path.name + ".trial"))
                self.notes.sums[path.name] = _sum(path)
                return True
            return _sum(path) == known
        except (backup.BackupBroken, OSError):
            return False

    def _sweep(self) -> None:
        """Remove what a power cut left of a backup that was being made."""
        if self.folder.parent == self.files.folder:
            self.folder.mkdir(exist_ok=True, mode=0o700)
        elif not self.folder.is_dir():
            raise FileNotFoundError(errno.ENOENT, "the folder is not there", str(self.folder))
        for path in self.folder.glob(f"limnary-{self.notes.mark}-*.zip.*"):
            shutil.rmtree(path) if path.is_dir() else path.unlink()

    def _make(self, now_ms: int) -> Path:
        target = self.folder / f"limnary-{self.notes.mark}-{_day(now_ms).isoformat()}.zip"
        backup.back_up(self.files, target, now_ms)
        self.notes.sums[target.name] = _sum(target)
        if target.name in self.notes.damaged:
            self.notes.damaged.remove(target.name)
        return target

    def _drop(self) -> int:
        """Delete the whole backups that no period keeps, then the oldest above the limit; the bytes that are left."""
        whole = {day: path for day, path in self._days().items() if path.name in self.notes.whole}
        stay = kept(whole)
        left = self._unlink(whole, [day for day in whole if day not in stay])
        sizes = [(day, path.stat().st_size) for day, path in left.items()]
        left = self._unlink(left, over_limit(sizes, self.limit_bytes))
        return sum(path.stat().st_size for path in left.values())

    def _unlink(self, paths: dict[date, Path], days: list[date]) -> dict[date, Path]:
        for day in days:
            paths[day].unlink(missing_ok=True)
            self.notes.sums.pop(paths[day].name, None)
        return {day: path for day, path in paths.items() if day not in days}

    def _here(self) -> dict[str, Path]:
        return {path.name: path for path in self._days().values()}

    def _days(self) -> dict[date, Path]:
        """This data folder's backups by day; other files in the folder are none of ours."""
        name = re.compile(rf"limnary-{self.notes.mark}-(\d{{4}}-\d\d-\d\d)\.zip", re.ASCII)
        found = {}
        for path in sorted(self.folder.glob("limnary-*.zip")):
            if hit := name.fullmatch(path.name):
                with contextlib.suppress(ValueError):
                    found[date.fromisoformat(hit[1])] = path
        return found

    def _write(self) -> None:
        path = self.files.folder / NOTES
        part = path.with_name(NOTES + ".part")
        # On a full disk the notes stay in memory, and the fault is shown all the same.
        with contextlib.suppress(OSError):
            part.write_text(json.dumps(dataclasses.asdict(self.notes), indent=1), encoding="utf-8")
            os.replace(part, path)


def _day(ms: int) -> date:
    return datetime.fromtimestamp(ms / 1000, UTC).date()


def _sum(path: Path) -> str:
    with path.open("rb") as whole:
        return hashlib.file_digest(whole, "sha256").hexdigest()


def _fault_of(wrong: Exception) -> str:
    if isinstance(wrong, backup.NotBackedUp):
        return "data-damaged"
    if isinstance(wrong, backup.BackupBroken):
        return "not-whole"
    if is_full(wrong):
        return "disk-full"
    return "folder" if isinstance(wrong, OSError) else "failed"
