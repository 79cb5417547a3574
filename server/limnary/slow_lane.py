"""Slow calculations in a process of their own, a few at a time, so that sharing never waits for them.

One process works on one question; a few more wait for it; beyond that a caller is told to come back. A calculation
that takes longer than its budget is stopped with its process, and the next question starts another one.
"""

import logging
import multiprocessing
import threading
from multiprocessing.connection import Connection

from limnary.contracts import InvalidInput, run
from limnary.errors import Busy

log = logging.getLogger("limnary")
# Longer than any calculation took on inputs as large as the API takes (assumption: then it never ends by itself).
BUDGET_S = 15.0
WAITING = 2
PATIENCE_S = 8.0
RETRY_AFTER_S = 5


class SlowLane:
    """Answers `run(name, payload)` away from this process; Busy when too many ask, InvalidInput as `run` does."""

    def __init__(self, budget_s: float = BUDGET_S, waiting: int = WAITING, patience_s: float = PATIENCE_S):
        self.budget_s, self.patience_s = budget_s, patience_s
        self._places = threading.BoundedSemaphore(1 + waiting)
        self._turn = threading.Lock()
        self._process: multiprocessing.process.BaseProcess | None = None
        self._pipe: Connection | None = None

    def enter(self) -> "SlowLane":
        """Take a place before the request's body is read; Busy if there is none. `leave` gives it back."""
        if not self._places.acquire(blocking=False):
            raise _busy("Other calculations are under way")
        return self

    def leave(self) -> None:
        """Give the place back."""
        self._places.release()

    def answer(self, name: str, payload: object) -> dict:
        """The calculation's answer. Call it between `enter` and `leave`."""
        if not self._turn.acquire(timeout=self.patience_s):
            raise _busy("Other calculations are under way")
        try:
            kind, found = self._ask(name, payload)
        finally:
            self._turn.release()
        if kind == "invalid":
            raise InvalidInput(found)
        if kind == "failed":
            raise RuntimeError(f"{name}: {found}")
        return found

    def close(self) -> None:
        """End the process, if one was started."""
        if self._process:
            self._process.kill()
            self._process.join()
        self._process = None

    def _ask(self, name: str, payload: object) -> tuple[str, object]:
        if not (self._process and self._process.is_alive()):
            self._start()
        try:
            self._pipe.send((name, payload))
            if self._pipe.poll(self.budget_s):
                return self._pipe.recv()
        except (EOFError, OSError):
            log.exception("the process of the slow calculations ended")
        self.close()
        raise _busy(f"This calculation did not end within {self.budget_s:g} seconds: send fewer records")

    def _start(self) -> None:
        # A fresh interpreter: a fork would copy the locks of this process's threads.
        spawn = multiprocessing.get_context("spawn")
        self._pipe, theirs = spawn.Pipe()
        self._process = spawn.Process(target=_work, args=(theirs,), name="limnary-slow-lane", daemon=True)
        self._process.start()
        theirs.close()


def _work(pipe: Connection) -> None:
    """Answer questions until the other side is gone."""
    while True:
        try:
            name, payload = pipe.recv()
        except (EOFError, KeyboardInterrupt):
            return
        try:
            found = ("ok", run(name, payload))
        except InvalidInput as refused:
            found = ("invalid", refused.errors)
        except Exception as fault:
            found = ("failed", repr(fault))
        pipe.send(found)


def _busy(detail: str) -> Busy:
    return Busy(detail, headers={"Retry-After": str(RETRY_AFTER_S)})
