"""What a running server does by itself, about once a minute: daily backups, and its certificate for the home network.

Each job knows when it is due. A job that fails is logged, stops no other, and gets its turn again.
"""

import logging
import threading
from collections.abc import Callable

log = logging.getLogger("limnary")
EVERY_S = 60.0


class Upkeep:
    """Runs jobs in a thread of its own, so that no request waits for them."""

    def __init__(self, jobs: list[Callable[[], None]]):
        self.jobs = jobs
        self._ended = threading.Event()

    def tick(self) -> None:
        """Give every job its turn."""
        for job in self.jobs:
            try:
                job()
            except Exception:
                log.exception("upkeep failed")

    def start(self) -> None:
        """Tick until the process ends; the first time after one interval, so that a start stays quick."""
        threading.Thread(target=self._run, name="limnary-upkeep", daemon=True).start()

    def end(self) -> None:
        """Let the thread end."""
        self._ended.set()

    def _run(self) -> None:
        while not self._ended.wait(EVERY_S):
            self.tick()
