"""Short codes to type where a link cannot be opened: each stands for an open link's secret for a short time.

A code has about 36 bits, too few to be stored as a hash, so the codes live in memory only: a restart ends them all. The
secret behind a code keeps its own rules: it opens once, and not after it was withdrawn.
"""

import secrets
import threading
from dataclasses import dataclass

from limnary.api.attempts import Attempts
from limnary.errors import Conflict, NotFound

# No two of these look alike: 0 O 1 I L 2 Z 5 S 8 B U V are left out.
LETTERS = "34679ACDEFGHJKMNPQRTWXY"
LENGTH = 8
MOST_OPEN = 1000


@dataclass(frozen=True)
class _Open:
    invite: str
    secret: str
    ends_ms: int


class JoinCodes:
    """The codes that are open now, and the counts of wrong ones: by address, and of all addresses together."""

    def __init__(self, by_address: Attempts, in_all: Attempts, minutes: int):
        self._by_address, self._in_all, self._ms = by_address, in_all, minutes * 60_000
        self._lock, self._codes = threading.Lock(), {}

    def make(self, invite: str, secret: str, now_ms: int) -> tuple[str, int]:
        """A code for an invitation, in place of an earlier one, and when it ends (ms). Conflict: too many are open."""
        with self._lock:
            self._codes = {
                code: one for code, one in self._codes.items() if one.ends_ms > now_ms and one.invite != invite
            }
            if len(self._codes) >= MOST_OPEN:
                raise Conflict("Too many codes are open: wait ten minutes, or send the link")
            code = next(made for made in iter(_drawn, None) if made not in self._codes)
            self._codes[code] = _Open(invite, secret, now_ms + self._ms)
            return f"{code[:4]}-{code[4:]}", now_ms + self._ms

    def secret(self, typed: str, address: str, now_ms: int) -> str:
        """The secret that a code stands for. NotFound if it stands for none; TooManyAttempts even for a right one."""
        with self._lock:
            self._by_address.check(address, now_ms)
            self._in_all.check("", now_ms)
            found = self._codes.get(plain(typed))
            if found is None or found.ends_ms <= now_ms:
                self._by_address.count(address, now_ms)
                self._in_all.count("", now_ms)
                raise NotFound("There is no such code, or it is too old: ask for a new one")
            return found.secret

    def end(self, typed: str) -> None:
        """End a code."""
        with self._lock:
            self._codes.pop(plain(typed), None)


def plain(typed: str) -> str:
    """A code as it is kept, from what was typed.

    >>> plain(" k7qm-9txr ")
    'K7QM9TXR'
    """
    return "".join(typed.split()).replace("-", "").upper()


def _drawn() -> str:
    return "".join(secrets.choice(LETTERS) for _ in range(LENGTH))
