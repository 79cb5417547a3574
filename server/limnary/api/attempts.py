"""Counts by address within a time window: wrong invitation secrets, and calls that need no key."""

import threading
from collections import deque

from limnary.errors import TooManyAttempts


class Attempts:
    """At most `most` of something from one address within `window_s`; a restart forgets the counts."""

    def __init__(self, most: int, window_s: int):
        self.most, self.window_ms = most, window_s * 1000
        self._lock, self._counted = threading.Lock(), {}

    def check(self, address: str, now_ms: int) -> None:
        """Raise TooManyAttempts, with Retry-After, when the window is full."""
        with self._lock:
            counted = self._recent(address, now_ms)
            if len(counted) >= self.most:
                wait_s = max(1, (counted[0] + self.window_ms - now_ms + 999) // 1000)
                raise TooManyAttempts(f"Try again in {wait_s} seconds", headers={"Retry-After": str(wait_s)})

    def take(self, address: str, now_ms: int) -> None:
        """Check, then count one more."""
        self.check(address, now_ms)
        self.count(address, now_ms)

    def count(self, address: str, now_ms: int) -> None:
        """Count one more."""
        with self._lock:
            self._counted.setdefault(address, deque()).append(now_ms)
            for other in list(self._counted):
                if not self._recent(other, now_ms):
                    del self._counted[other]

    def _recent(self, address: str, now_ms: int) -> deque:
        counted = self._counted.get(address, deque())
        while counted and counted[0] <= now_ms - self.window_ms:
            counted.popleft()
        return counted
