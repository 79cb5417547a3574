"""Calendar keys: each reads one room's tasks and nothing else; one per keeper and room, stored as a hash."""

import sqlite3

from limnary.errors import NotFound
from limnary.ids import digest, new_key, utc, uuid7


def make(db: sqlite3.Connection, room: str, caller: dict, now_ms: int) -> dict:
    """A new key, answered once; the keeper's previous key for this room stops working."""
    revoke(db, room, caller["keeper"], now_ms)
    key, made_at = new_key(), utc(now_ms)
    db.execute(
        "INSERT INTO calendar_keys (id, room, keeper, key_hash, made_at, made_on) VALUES (?, ?, ?, ?, ?, ?)",
        [uuid7(now_ms), room, caller["keeper"], digest(key), made_at, caller["id"]],
    )
    return {"key": key, "made_at": made_at}


def held(db: sqlite3.Connection, room: str, keeper: str) -> str | None:
    """When the keeper's key for this room was made; None if there is none."""
    row = db.execute(
        "SELECT made_at FROM calendar_keys WHERE room = ? AND keeper = ? AND revoked_at IS NULL", [room, keeper]
    ).fetchone()
    return row["made_at"] if row else None


def revoke(db: sqlite3.Connection, room: str, keeper: str, now_ms: int) -> None:
    """Revoke the keeper's key for this room, if there is one."""
    db.execute(
        "UPDATE calendar_keys SET revoked_at = ? WHERE room = ? AND keeper = ? AND revoked_at IS NULL",
        [utc(now_ms), room, keeper],
    )


def room_of(db: sqlite3.Connection, key: str) -> str:
    """The room that a key reads; NotFound if it is unknown, revoked, or its keeper is no longer in the room."""
    row = db.execute(
        "SELECT calendar_keys.room FROM calendar_keys JOIN memberships"
        " ON memberships.room = calendar_keys.room AND memberships.keeper = calendar_keys.keeper"
        " WHERE key_hash = ? AND revoked_at IS NULL AND ended_at IS NULL",
        [digest(key)],
    ).fetchone()
    if not row:
        raise NotFound("There is no such calendar: make a new link on a phone that is in the room")
    return row["room"]
