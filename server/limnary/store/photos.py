"""Photos by the SHA-256 of their bytes, in the room's own file, so that a room stays one file."""

import hashlib
import sqlite3

from limnary.errors import BadRequest, NotAllowed, NotFound, WrongMedia
from limnary.ids import utc
from limnary.protocol.records import kinds

ENDINGS = {"image/jpeg": "jpg", "image/png": "png", "image/webp": "webp"}


def media_type(data: bytes) -> str | None:
    """The media type that the first bytes show (the WHATWG MIME sniffing standard, section 6.1), or None.

    >>> media_type(bytes.fromhex("89504e470d0a1a0a"))
    'image/png'
    """
    if data.startswith(b"\xff\xd8\xff"):
        return "image/jpeg"
    if data.startswith(b"\x89PNG\r\n\x1a\n"):
        return "image/png"
    if data[:4] == b"RIFF" and data[8:14] == b"WEBPVP":
        return "image/webp"
    return None


def may_write(role: str) -> None:
    """Raise NotAllowed for a role that may not write photo records."""
    if role not in kinds()["photo"]["written_by"]:
        raise NotAllowed()


def check(sha256: str, data: bytes) -> str:
    """The photo's media type. BadRequest if the hash is not that of the bytes, WrongMedia if they are no photo."""
    if hashlib.sha256(data).hexdigest() != sha256:
        raise BadRequest("The bytes do not have the SHA-256 that the address names: send them again")
    kind = media_type(data)
    if kind is None:
        raise WrongMedia("A photo must be a JPEG, a PNG or a WebP")
    return kind


def put(db: sqlite3.Connection, sha256: str, data: bytes, keeper: str, now_ms: int) -> bool:
    """Store the bytes; False if they were stored before. BadRequest and WrongMedia as `check` says."""
    kind = check(sha256, data)
    done = db.execute(
        "INSERT INTO photos (sha256, media_type, bytes, made_by, made_at) VALUES (?, ?, ?, ?, ?)"
        " ON CONFLICT (sha256) DO NOTHING",
        [sha256, kind, data, keeper, utc(now_ms)],
    )
    return done.rowcount == 1


def get(db: sqlite3.Connection, sha256: str) -> dict:
    """{media_type, bytes}; NotFound."""
    row = db.execute("SELECT media_type, bytes FROM photos WHERE sha256 = ?", [sha256]).fetchone()
    if not row:
        raise NotFound("There is no such photo in this room")
    return dict(row)
