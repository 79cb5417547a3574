"""Ids, keys and times of the server: UUID version 7 (RFC 9562, section 5.7), random secrets, UTC text."""

import hashlib
import re
import secrets
from datetime import UTC, datetime


def uuid7(ms: int) -> str:
    """48 bits of milliseconds, then 74 random bits; 36 characters, lower case."""
    value = (ms & (1 << 48) - 1) << 80 | 0x7 << 76 | secrets.randbits(12) << 64 | 0b10 << 62 | secrets.randbits(62)
    text = f"{value:032x}"
    return "-".join((text[:8], text[8:12], text[12:16], text[16:20], text[20:]))


def new_key() -> str:
    """A device key: 256 random bits as 43 characters."""
    return secrets.token_urlsafe(32)


def new_secret() -> str:
    """An invitation's secret: 192 random bits as 32 characters."""
    return secrets.token_urlsafe(24)


def new_epoch() -> str:
    """A new epoch, never the same twice, so that two restores of one backup differ."""
    return secrets.token_hex(8)


def new_room_id() -> str:
    """A room's id, random from the first character on: the room's folder is named by the first two."""
    return secrets.token_hex(16)


def digest(secret: str) -> str:
    """The SHA-256 that is stored instead of a key or a secret. Both are random, so no salt is needed."""
    return hashlib.sha256(secret.encode("utf-8", "surrogatepass")).hexdigest()


def utc(ms: int) -> str:
    """Milliseconds since 1970 as `YYYY-MM-DDTHH:MM:SS.mmmZ`.

    >>> utc(0)
    '1970-01-01T00:00:00.000Z'
    """
    moment = datetime.fromtimestamp(ms // 1000, UTC)
    return f"{moment:%Y-%m-%dT%H:%M:%S}.{ms % 1000:03d}Z"


TIME = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(\.[0-9]{1,6})?Z", re.ASCII)


def is_time(text: object) -> bool:
    """Whether `text` is a moment in UTC as `utc` writes it.

    >>> is_time("2026-05-04T07:30:00.000Z"), is_time("2026-13-45T07:30:00Z"), is_time("0")
    (True, False, False)
    """
    if not isinstance(text, str) or not TIME.fullmatch(text):
        return False
    try:
        datetime.fromisoformat(text)
    except ValueError:
        return False
    return True


def ms_of(text: str) -> int:
    """The reverse of `utc`.

    >>> ms_of("1970-01-01T00:00:01.250Z")
    1250
    """
    return round(datetime.fromisoformat(text).timestamp() * 1000)
