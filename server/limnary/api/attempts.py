"""Limits guessing of invitation secrets: counts wrong ones by address within a time window."""

import threading
from collections import deque

from limnary.errors import TooManyAttempts


class Attempts:
    """Counts wrong secrets by address within a time window; a restart forgets the counts."""

    def __init__(self, most: int, window_s: int):
        self.most, self.window_ms = most, window_s * 1000
        self._lock, self._wrong = threading.Lock(), {}

    def check(self, address: str, now_ms: int) -> None:
        """Raise TooManyAttempts, with Retry-After, when the window is full."""
        with self._lock:
            wrong = self._recent(address, now_ms)
            if len(wrong) >= self.most:
                wait_s = max(1, (wrong[0] + self.window_ms - now_ms + 999) // 1000)
                raise TooManyAttempts(f"Try again in {wait_s} seconds", headers={"Retry-After": str(wait_s)})

    def wrong(self, address: str, now_ms: int) -> None:
        """Count one more wrong secret."""
        with self._lock:
            self._wrong.setdefault(address, deque()).append(now_ms)
            for other in list(self._wrong):
                if not self._recent(other, now_ms):
                    del self._wrong[other]

    def _recent(self, address: str, now_ms: int) -> deque:
        wrong = self._wrong.get(address, deque())
        while wrong and wrong[0] <= now_ms - self.window_ms:
            wrong.popleft()
        return wrong
