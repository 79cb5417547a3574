"""Stamps on the server: `MMMMMMMMMMMMM-CCCCC-DEVICE`, compared as text, never far in the future.

A stamp above the ceiling (server time + 60 s) is moved back to the ceiling, with a counter above every stamp that
the room has accepted there. So an edit still beats everything that its author had seen. store/README.md, "Theory of
operation", says why.
"""

import re

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
    return f"{_place(ms, counter)}-{device}"


class Clamp:
    """Knows the greatest place in time that a room has accepted, and moves the next stamp back if it must.

    A place is a stamp without its device. Places are compared as text, as stamps are.
    """

    def __init__(self, ms: int, counter: int, now_ms: int):
        self._top = _place(ms, counter)
        # Never below an accepted stamp, so that the order holds when the server's clock is set back.
        self._ceiling_ms = max(now_ms + AHEAD_MS, ms)
        self._last = _place(self._ceiling_ms, MOST_COUNTER)

    @property
    def ms(self) -> int:
        """Milliseconds of the greatest place."""
        return int(self._top[:13])

    @property
    def counter(self) -> int:
        """Counter of the greatest place."""
        return int(self._top[14:])

    def is_ahead(self, stamp: str) -> bool:
        """Whether `accept` would move this stamp back."""
        return stamp[:19] > self._last

    def accept(self, stamp: str) -> str:
        """The stamp that is stored for `stamp`: itself, or one at the ceiling."""
        place = stamp[:19]
        if self.is_ahead(stamp):
            place = self._after()
            stamp = place + stamp[19:]
        if place > self._top:
            self._top = place
        return stamp

    def _after(self) -> str:
        """The next free place at the ceiling; where all are taken, the ceiling rises by a millisecond."""
        ms, counter = self.ms, self.counter
        if self._ceiling_ms > ms:
            return _place(self._ceiling_ms, 0)
        if counter < MOST_COUNTER:
            return _place(ms, counter + 1)
        self._ceiling_ms = ms + 1
        self._last = _place(ms + 1, MOST_COUNTER)
        return _place(ms + 1, 0)


def _place(ms: int, counter: int) -> str:
    return f"{ms:013d}-{counter:05d}"
