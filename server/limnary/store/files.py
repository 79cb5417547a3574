"""Opens the SQLite files, migrates them, and lets one writer at a time through."""

import re
import sqlite3
import threading
from collections import OrderedDict
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from sqlite_utils import Database, Migrations

from limnary.errors import Damaged, NewerData, is_damage
from limnary.store.migrations import PEOPLE, ROOM
from limnary.store.readers import Readers

# Keeping a writer open avoids a checkpoint at each close; more rooms than this are rarely in use at once.
WRITERS_KEPT = 32
WAIT_S = 10.0
ROOM_FILE = re.compile(r"[0-9a-f]{32}\.sqlite", re.ASCII)


class Files:
    """All SQLite files below one folder. Safe between threads; each process has its own."""

    def __init__(self, folder: Path):
        self.folder = Path(folder)
        self._lock = threading.RLock()
        self._writers: OrderedDict[Path, sqlite3.Connection] = OrderedDict()
        self._readers = Readers(connect)

    @property
    def people(self) -> Path:
        return self.folder / "people.sqlite"

    def room(self, room: str) -> Path:
        """The file of one room; its folder is the id's first two characters."""
        return self.folder / "rooms" / room[:2] / f"{room}.sqlite"

    def rooms(self) -> list[Path]:
        """Every room's file; other files in the folder are none of ours."""
        found = (self.folder / "rooms").glob("??/*.sqlite")
        return sorted(path for path in found if ROOM_FILE.fullmatch(path.name) and path.name[:2] == path.parent.name)

    def prepare(self) -> list[Path]:
        """Create and migrate everything; return the rooms' files that are damaged. Run once, before any worker
        starts: two processes that switch a new file to WAL at the same moment fail with "database is locked".

        A damaged room stays where it is, untouched; the other rooms are served. Without people.sqlite nobody could
        get in, and a new one would make strangers of everybody: Damaged.
        """
        self.folder.mkdir(parents=True, exist_ok=True, mode=0o700)
        rooms = self.rooms()
        if rooms and not (self.people.is_file() and self.people.stat().st_size):
            raise Damaged(
                f"people.sqlite is missing or empty in {self.folder.resolve()}, beside {len(rooms)} room(s). "
                "Put it back there, or put a backup in place: limnary restore FILE"
            )
        try:
            migrate(self.people, PEOPLE)
        except sqlite3.DatabaseError as bad:
            if not is_damage(bad):
                raise
            raise Damaged(
                f"{self.people.resolve()} is damaged ({bad}). Put a whole one there, or put a backup in place: "
                "limnary restore FILE"
            ) from None
        return [path for path in rooms if not _prepared(path)]

    def prepare_room(self, room: str) -> None:
        """Create the file of a new room."""
        path = self.room(room)
        path.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
        migrate(path, ROOM)

    def remove_room(self, room: str) -> None:
        """Remove the file of a room that was never listed."""
        path = self.room(room)
        with self._lock:
            if writer := self._writers.pop(path, None):
                writer.close()
        self._readers.close(path)
        for end in ("", "-wal", "-shm"):
            path.with_name(path.name + end).unlink(missing_ok=True)

    @property
    @contextmanager
    def alone(self) -> Iterator[None]:
        """The write lock, for work that spans several files."""
        with self._lock:
            yield

    @contextmanager
    def writing(self, path: Path) -> Iterator[sqlite3.Connection]:
        """One transaction on one file: committed at the end, rolled back on any error."""
        with self._lock:
            connection = self._writer(path)
            try:
                connection.execute("BEGIN IMMEDIATE")
                yield connection
                commit(connection)
            except BaseException:
                self._undo(path, connection)
                raise

    @contextmanager
    def reading(self, path: Path) -> Iterator[sqlite3.Connection]:
        """One consistent view of one file."""
        reader = self._readers.take(path)
        try:
            reader.connection.execute("BEGIN")
            yield reader.connection
            reader.connection.rollback()
        except BaseException:
            reader.connection.close()
            raise
        self._readers.give_back(reader)

    def close(self) -> None:
        """Close the connections that are kept open."""
        with self._lock:
            while self._writers:
                self._writers.popitem()[1].close()
        self._readers.close()

    def _writer(self, path: Path) -> sqlite3.Connection:
        if path in self._writers:
            self._writers.move_to_end(path)
            return self._writers[path]
        while len(self._writers) >= WRITERS_KEPT:
            self._writers.popitem(last=False)[1].close()
        self._writers[path] = connect(path)
        return self._writers[path]

    def _undo(self, path: Path, connection: sqlite3.Connection) -> None:
        try:
            if connection.in_transaction:
                connection.rollback()
        except sqlite3.Error:
            # On a full disk even the rollback can fail; a new connection recovers from the WAL.
            self._writers.pop(path, None)
            connection.close()


def _prepared(room: Path) -> bool:
    """Migrate a room's file and look into it; False if it is damaged."""
    try:
        if room.stat().st_size == 0:  # SQLite would make a new, empty room of it
            return False
        migrate(room, ROOM)
        connection = connect(room)
        try:
            return connection.execute("SELECT 1 FROM meta WHERE key = 'epoch'").fetchone() is not None
        finally:
            connection.close()
    except sqlite3.DatabaseError as bad:
        if not is_damage(bad):
            raise
        return False


def commit(connection: sqlite3.Connection) -> None:
    """The only place that commits."""
    connection.commit()


def connect(path: Path) -> sqlite3.Connection:
    """A connection to an existing file; transactions are begun and ended explicitly."""
    uri = f"{path.resolve().as_uri()}?mode=rw"
    connection = sqlite3.connect(uri, uri=True, timeout=WAIT_S, isolation_level=None, check_same_thread=False)
    connection.row_factory = sqlite3.Row
    connection.execute("PRAGMA foreign_keys=ON")
    connection.execute("PRAGMA synchronous=FULL")
    return connection


def migrate(path: Path, migrations: Migrations) -> None:
    """Migrate one file to the newest schema; each migration and its record share a transaction.

    NewerData if a newer version has migrated it: what that version keeps there, such as who is shut out, this one would
    not see.
    """
    raw = sqlite3.connect(path, timeout=WAIT_S)
    try:
        database = Database(raw)
        known = {one.name for one in migrations.pending(Database(memory=True))}
        if newer := {one.name for one in migrations.applied(database)} - known:
            raise NewerData(
                f"{path} was changed by a newer version ({', '.join(sorted(newer))}): install that one again, or put a "
                "backup from before the update in place in an empty folder (limnary restore FILE --data FOLDER)"
            )
        path.chmod(0o600)
        raw.execute("PRAGMA journal_mode=WAL")
        raw.execute("PRAGMA synchronous=FULL")
        migrations.apply(database)
        raw.commit()
    finally:
        raw.close()
