"""Backup of all rooms and people into one file while the server runs; restore, which gives each room a new epoch.

A backup is a ZIP: `backup.json` (format, version, made_at, SHA-256 of each file), `people.sqlite` and
`rooms/ab/ROOM.sqlite`, each a whole SQLite file made by SQLite's own online backup.
"""

import contextlib
import hashlib
import json
import os
import shutil
import sqlite3
import zipfile
import zlib
from pathlib import Path

from limnary.errors import LimnaryError, is_damage, is_full
from limnary.ids import utc
from limnary.store.change_log import renew_epoch, top_of
from limnary.store.files import Files, connect, migrate
from limnary.store.migrations import PEOPLE, ROOM

FORMAT, VERSION = "limnary-backup", 1
LAST_BACKUP = "last-backup.json"
WORKSHOP, READY = ".restoring", "READY"


class BackupBroken(LimnaryError):
    """The backup cannot be used; the data are unchanged."""

    title = "This is not a whole backup: nothing was changed"


class NotBackedUp(LimnaryError):
    """No backup was written; an earlier one of the same name is still there."""

    title = "No backup was written"


def back_up(files: Files, target: Path, now_ms: int) -> int:
    """Write the backup; return how many rooms it holds. An existing file is replaced only at the very end.

    Before that the backup is restored into a folder of its own beside it, so that what is called a backup is one.
    NotBackedUp if a file of the data is damaged.
    """
    target.parent.mkdir(parents=True, exist_ok=True)
    part, copy, trial = (target.with_name(target.name + end) for end in (".part", ".copy", ".trial"))
    sums: dict[str, str] = {}
    try:
        with zipfile.ZipFile(part, "w", zipfile.ZIP_DEFLATED) as pack:
            # Rooms, people, then rooms made meanwhile: nobody in the backup is a member of a room that it lacks.
            for path in [*files.rooms(), files.people, *files.rooms()]:
                name = path.relative_to(files.folder).as_posix()
                if name not in sums:
                    sums[name] = _add(pack, path, copy, name)
            head = {"format": FORMAT, "version": VERSION, "made_at": utc(now_ms), "files": sums}
            pack.writestr("backup.json", json.dumps(head, indent=1))
        with part.open("rb") as whole:
            os.fsync(whole.fileno())
        verify(part, trial)
        part.chmod(0o600)
        part.replace(target)
    finally:
        part.unlink(missing_ok=True)
        copy.unlink(missing_ok=True)
    return len(sums) - 1


def note_last(folder: Path, target: Path) -> None:
    """Note in the data folder where the last backup went, for `limnary check`."""
    (folder / LAST_BACKUP).write_text(json.dumps({"file": str(target.resolve())}), encoding="utf-8")


def verify(backup: Path, trial: Path) -> tuple[str, int]:
    """Restore a backup into the folder `trial`, which is removed again; BackupBroken.

    Returns when it was made and how many rooms it holds.
    """
    shutil.rmtree(trial, ignore_errors=True)
    try:
        (trial / "rooms").mkdir(parents=True, mode=0o700)
        return _unpack(backup, trial)
    finally:
        shutil.rmtree(trial, ignore_errors=True)


def _add(pack: zipfile.ZipFile, path: Path, copy: Path, name: str) -> str:
    copy.unlink(missing_ok=True)
    target = sqlite3.connect(copy)
    try:
        with contextlib.closing(connect(path)) as source:
            source.backup(target)
        target.execute("PRAGMA journal_mode=DELETE")  # one file, without a WAL beside it
        if target.execute("PRAGMA integrity_check(1)").fetchone()[0] != "ok":
            raise NotBackedUp(_damaged(path))
    except sqlite3.DatabaseError as bad:
        if not is_damage(bad):
            raise
        raise NotBackedUp(_damaged(path)) from None
    finally:
        target.close()
    pack.write(copy, name)
    with copy.open("rb") as whole:
        return hashlib.file_digest(whole, "sha256").hexdigest()


def _damaged(path: Path) -> str:
    return (
        f"{path} is damaged: restore it from an earlier backup, or move it out of the data folder; "
        "an earlier backup of this name is untouched"
    )


def restore(files: Files, backup: Path, now_ms: int) -> tuple[int, Path | None]:
    """Replace the data by a backup; return (number of rooms, folder with the previous data).

    Each room gets a new epoch, so every phone pulls from the start and sends again what the backup lacks.
    Whatever was closed since the backup stays closed: revoked phones, used and withdrawn invitations,
    ended memberships, roles of now, phones put out of a room, revoked calendar links. No server may use the folder
    meanwhile.
    """
    workshop = files.folder / WORKSHOP
    shutil.rmtree(workshop, ignore_errors=True)
    (workshop / "rooms").mkdir(parents=True, mode=0o700)
    try:
        _, rooms = _unpack(backup, workshop)
        for room in Files(workshop).rooms():
            _renew(room, now_ms, files.folder / room.relative_to(workshop))
        if files.people.is_file():
            _keep_closed(workshop / "people.sqlite", files.people)
        _sync(workshop)
        (workshop / READY).write_text(utc(now_ms), encoding="utf-8")
        _sync(workshop)
    except BaseException:
        shutil.rmtree(workshop, ignore_errors=True)
        raise
    return rooms, finish(files)


def finish(files: Files) -> Path | None:
    """Finish a prepared restore, even an interrupted one; return the folder with the previous data."""
    workshop = files.folder / WORKSHOP
    if not (workshop / READY).is_file():
        return None
    stamp = (workshop / READY).read_text("utf-8").replace(":", "").replace(".", "")
    before = files.folder / f"before-restore-{stamp}"
    before.mkdir(exist_ok=True, mode=0o700)
    # Each step runs only while its restored file still waits, so a second run continues where the first stopped.
    for name in ("people.sqlite", "rooms"):
        restored, current = workshop / name, files.folder / name
        if restored.exists():
            for old in (f"{name}-wal", f"{name}-shm", name):
                if (files.folder / old).exists():
                    (files.folder / old).rename(before / old)
            restored.rename(current)
    shutil.rmtree(workshop)
    return before if any(before.iterdir()) else before.rmdir()


def _unpack(backup: Path, workshop: Path) -> tuple[str, int]:
    """Unpack and check a backup; return when it was made and how many rooms it holds."""
    try:
        with zipfile.ZipFile(backup) as pack:
            head = json.loads(pack.read("backup.json"))
            if head.get("format") != FORMAT or head.get("version") != VERSION:
                raise BackupBroken(f'backup.json must say "format": "{FORMAT}", "version": {VERSION}')
            for name, sha256 in head["files"].items():
                _place(pack, name, sha256, workshop)
    except (OSError, *_NO_BACKUP, sqlite3.DatabaseError) as bad:
        if is_full(bad):
            raise
        raise BackupBroken(f"{backup}: {bad}") from None
    if "people.sqlite" not in head["files"]:
        raise BackupBroken("It holds no people.sqlite")
    return str(head.get("made_at", "")), len(head["files"]) - 1


# What reading a ZIP and its head raises where they are none, or are damaged.
_NO_BACKUP = (zipfile.BadZipFile, zlib.error, EOFError, KeyError, ValueError, AttributeError, TypeError, RuntimeError)
PIECE_BYTES = 1_000_000


def _place(pack: zipfile.ZipFile, name: str, sha256: str, workshop: Path) -> None:
    target = (workshop / name).resolve()
    if not target.is_relative_to(workshop.resolve()) or target.suffix != ".sqlite":
        raise BackupBroken(f"It names a file that has no place here: {name}")
    target.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
    # In pieces: a running server does this each day, and a room with its pictures may be larger than its memory.
    made = hashlib.sha256()
    with pack.open(name) as source, target.open("wb") as out:
        while piece := source.read(PIECE_BYTES):
            made.update(piece)
            out.write(piece)
    if made.hexdigest() != sha256:
        raise BackupBroken(f"{name} was damaged since the backup was made")
    migrate(target, PEOPLE if name == "people.sqlite" else ROOM)
    with contextlib.closing(connect(target)) as connection:
        if connection.execute("PRAGMA integrity_check").fetchone()[0] != "ok":
            raise BackupBroken(f"{name} does not pass SQLite's integrity check")
        connection.execute("PRAGMA wal_checkpoint(TRUNCATE)")


def _renew(room: Path, now_ms: int, current: Path) -> None:
    """Give a restored room its new epoch; `current` is the file that it replaces."""
    with contextlib.closing(connect(room)) as connection:
        renew_epoch(connection, now_ms, _top_ms(current))
        connection.execute("PRAGMA wal_checkpoint(TRUNCATE)")


def _sync(folder: Path) -> None:
    """Put everything below a folder on the disk."""
    for path in [*folder.rglob("*"), folder]:
        handle = os.open(path, os.O_RDONLY)
        os.fsync(handle)
        os.close(handle)


def _top_ms(current: Path) -> int:
    """The latest stamp of the room that is replaced; 0 if it cannot be read."""
    if not current.is_file():
        return 0
    try:
        with contextlib.closing(connect(current)) as connection:
            return top_of(connection)
    except sqlite3.DatabaseError:
        return 0


_CLOSED = (
    "UPDATE devices SET (revoked_at, revoked_by) = (SELECT revoked_at, revoked_by FROM now.devices AS n"
    " WHERE n.id = devices.id) WHERE id IN (SELECT id FROM now.devices WHERE revoked_at IS NOT NULL)",
    "UPDATE invites SET withdrawn_at = (SELECT coalesce(withdrawn_at, used_at) FROM now.invites AS n"
    " WHERE n.id = invites.id) WHERE used_at IS NULL AND id IN"
    " (SELECT id FROM now.invites WHERE coalesce(withdrawn_at, used_at) IS NOT NULL)",
    "UPDATE memberships SET (ended_at, ended_by) = (SELECT ended_at, ended_by FROM now.memberships AS n"
    " WHERE n.room = memberships.room AND n.keeper = memberships.keeper) WHERE ended_at IS NULL AND"
    " (room, keeper) IN (SELECT room, keeper FROM now.memberships WHERE ended_at IS NOT NULL)",
    "UPDATE memberships SET role = (SELECT role FROM now.memberships AS n"
    " WHERE n.room = memberships.room AND n.keeper = memberships.keeper) WHERE ended_at IS NULL AND"
    " (room, keeper) IN (SELECT room, keeper FROM now.memberships WHERE ended_at IS NULL)",
)
_CLOSED_CALENDARS = (
    "UPDATE calendar_keys SET revoked_at = (SELECT revoked_at FROM now.calendar_keys AS n"
    " WHERE n.id = calendar_keys.id) WHERE id IN (SELECT id FROM now.calendar_keys WHERE revoked_at IS NOT NULL)"
)
_CLOSED_PHONES = (
    "INSERT INTO phones_out (device, room, since, by) SELECT device, room, since, by FROM now.phones_out AS n"
    " WHERE device IN (SELECT id FROM devices) AND room IN (SELECT id FROM rooms) ON CONFLICT DO NOTHING"
)


def _keep_closed(restored: Path, current: Path) -> None:
    connection = connect(restored)
    try:
        connection.execute("ATTACH ? AS now", [str(current)])
        connection.execute("BEGIN IMMEDIATE")
        for statement in _CLOSED:
            connection.execute(statement)
        # Data of an older version have no calendar keys and no phones that are out of single rooms.
        for table, statement in (("calendar_keys", _CLOSED_CALENDARS), ("phones_out", _CLOSED_PHONES)):
            if connection.execute("SELECT 1 FROM now.sqlite_master WHERE name = ?", [table]).fetchone():
                connection.execute(statement)
        connection.execute("COMMIT")
        connection.execute("DETACH now")
        connection.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    except sqlite3.DatabaseError:
        # The current data may be damaged or missing: that can be the reason for the restore.
        pass
    finally:
        connection.close()
