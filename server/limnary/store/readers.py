"""Connections that read, kept open between requests: to open one costs more than most reads."""

import sqlite3
import threading
from collections import deque
from collections.abc import Callable
from pathlib import Path
from typing import NamedTuple

# More than these are rarely idle at once; each holds a few pages in memory.
KEPT = 64


class Reader(NamedTuple):
    """A connection that reads one file; `which` tells this file from another one put in its place."""

    path: Path
    which: tuple[int, int] | None
    connection: sqlite3.Connection


class Readers:
    """The idle readers of one process. Safe between threads: a reader that is taken belongs to its taker."""

    def __init__(self, connect: Callable[[Path], sqlite3.Connection]):
        self._connect = connect
        self._lock = threading.Lock()
        self._idle: deque[Reader] = deque()

    def take(self, path: Path) -> Reader:
        """A reader of this file: an idle one, or a new one."""
        which = _which(path)
        while reader := self._take_idle(path):
            if which and reader.which == which:
                return reader
            reader.connection.close()
        return Reader(path, which, self._connect(path))

    def give_back(self, reader: Reader) -> None:
        """Keep a reader that is in no transaction; the one idle for longest goes if there are too many."""
        with self._lock:
            self._idle.append(reader)
            spare = self._idle.popleft() if len(self._idle) > KEPT else None
        if spare:
            spare.connection.close()

    def close(self, path: Path | None = None) -> None:
        """Close the idle readers of one file, or all."""
        with self._lock:
            going = [reader for reader in self._idle if path in (None, reader.path)]
            for reader in going:
                self._idle.remove(reader)
        for reader in going:
            reader.connection.close()

    def _take_idle(self, path: Path) -> Reader | None:
        with self._lock:
            reader = next((each for each in reversed(self._idle) if each.path == path), None)
            if reader:
                self._idle.remove(reader)
            return reader


def _which(path: Path) -> tuple[int, int] | None:
    try:
        found = path.stat()
    except OSError:
        return None
    return found.st_dev, found.st_ino
