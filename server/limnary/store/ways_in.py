"""Closes every way in that a member or a phone could still use: open links and calendar keys.

The law: whoever is out stays out. Ending a membership, giving another role and revoking a phone each close what was
made by or for that member (or on that phone), so that nothing made before opens a door afterwards.
"""

import sqlite3

from limnary.ids import utc

OPEN = "used_at IS NULL AND withdrawn_at IS NULL"


def close_for_member(people: sqlite3.Connection, room: str, keeper: str, now_ms: int) -> None:
    """Withdraw the room's open links made by or for the keeper, and revoke the keeper's calendar key for it."""
    people.execute(
        f"UPDATE invites SET withdrawn_at = ? WHERE room = ? AND (keeper = ? OR made_by = ?) AND {OPEN}",
        [utc(now_ms), room, keeper, keeper],
    )
    people.execute(
        "UPDATE calendar_keys SET revoked_at = ? WHERE room = ? AND keeper = ? AND revoked_at IS NULL",
        [utc(now_ms), room, keeper],
    )


def close_for_phone(people: sqlite3.Connection, device: str, rooms: list[str] | None, now_ms: int) -> None:
    """The same for what was made on one phone, in `rooms` or everywhere (None).

    What was made before the server noted the phone counts as made on each phone of its keeper.
    """
    keeper = people.execute("SELECT keeper FROM devices WHERE id = ?", [device]).fetchone()["keeper"]
    here, among = "", []
    if rooms is not None:
        here, among = f" AND room IN ({', '.join('?' * len(rooms))})", rooms
    made_here = "(made_on = ? OR made_on IS NULL)"
    people.execute(
        f"UPDATE invites SET withdrawn_at = ? WHERE made_by = ? AND {made_here} AND {OPEN}{here}",
        [utc(now_ms), keeper, device, *among],
    )
    people.execute(
        f"UPDATE calendar_keys SET revoked_at = ? WHERE keeper = ? AND {made_here} AND revoked_at IS NULL{here}",
        [utc(now_ms), keeper, device, *among],
    )
