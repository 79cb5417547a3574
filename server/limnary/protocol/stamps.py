"""Stamps on the server: `MMMMMMMMMMMMM-CCCCC-DEVICE`, compared as text, never far in the future.

A stamp above the ceiling (server time + 60 s) is moved back to the ceiling, with a counter above every stamp that
the room has accepted there. So an edit still beats everything that its author had seen. store/README.md, "Theory of
operation", says why.
"""

import re
from dataclasses import dataclass

AHEAD_MS = 60_000
MOST_COUNTER = 99_999
STAMP = re.compile(r"[0-9]{13}-[0-9]{5}-[A-Za-z0-9_-]{1,64}", re.ASCII)


def is_stamp(text: object) -> bool:
    """Whether `text` has the form of a stamp."""
    return isinstance(text, str) and STAMP.fullmatch(text) is not None


def parts(stamp: str) -> tuple[int, int, str]:
    """Milliseconds, counter and device of a stamp."""
    return int(stamp[:13]), int(stamp[14:19]), stamp[20:]


def stamp_of(ms: int, counter: int, device: str) -> str:
    """The text of a stamp.

    >>> stamp_of(1234567890123, 7, "phone")
    '1234567890123-00007-phone'
    """
    return f"{ms:013d}-{counter:05d}-{device}"


@dataclass
class Clamp:
    """Knows the greatest (ms, counter) that a room has accepted, and moves the next stamp back if it must."""

    ms: int
    counter: int
    now_ms: int

    @property
    def ceiling_ms(self) -> int:
        # Never below an accepted stamp, so that the order holds when the server's clock is set back.
        return max(self.now_ms + AHEAD_MS, self.ms)

    def accept(self, stamp: str) -> str:
        """The stamp that is stored for `stamp`: itself, or one at the ceiling."""
        ms, counter, device = parts(stamp)
        if ms > self.ceiling_ms:
            ms, counter = self._after()
            stamp = stamp_of(ms, counter, device)
        if (ms, counter) > (self.ms, self.counter):
            self.ms, self.counter = ms, counter
        return stamp

    def _after(self) -> tuple[int, int]:
        if self.ceiling_ms > self.ms:
            return self.ceiling_ms, 0
        if self.counter < MOST_COUNTER:
            return self.ms, self.counter + 1
        return self.ms + 1, 0
