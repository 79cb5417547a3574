"""Keepers, their devices, and their roles in rooms."""

import sqlite3

from limnary.errors import KeyRefused, LastOwner, MembershipEnded, NotAllowed, NotFound
from limnary.ids import digest, utc, uuid7

ROLES = ("owner", "keeper", "helper", "viewer")
SEEN_EVERY_MS = 60_000
# Stands for the server's own terminal as the maker of links and the revoker of phones.
SERVER = "server"


def device_of_key(people: sqlite3.Connection, key: str) -> dict:
    """The device that holds `key`, with its keeper's name; KeyRefused if unknown or revoked."""
    row = people.execute(
        "SELECT devices.*, keepers.name AS keeper_name FROM devices JOIN keepers ON keepers.id = devices.keeper"
        " WHERE key_hash = ?",
        [digest(key)],
    ).fetchone()
    if not row:
        raise KeyRefused()
    if row["revoked_at"]:
        raise KeyRefused(revoked=True)
    return dict(row)


def saw(people: sqlite3.Connection, device: str, now_ms: int) -> None:
    """Set when a device was last seen."""
    people.execute("UPDATE devices SET last_seen = ? WHERE id = ?", [utc(now_ms), device])


def role_in(people: sqlite3.Connection, room: str, keeper: str) -> str:
    """The keeper's role; MembershipEnded if it has ended, NotFound if the keeper was never in the room."""
    row = people.execute("SELECT * FROM memberships WHERE room = ? AND keeper = ?", [room, keeper]).fetchone()
    if not row:
        raise NotFound("There is no such room, or you were never in it")
    if row["ended_at"]:
        raise MembershipEnded()
    return row["role"]


def owner_only(people: sqlite3.Connection, room: str, keeper: str) -> None:
    """NotAllowed unless the keeper is an owner of the room."""
    if role_in(people, room, keeper) != "owner":
        raise NotAllowed("Only an owner of the room may do that")


def rooms_of(people: sqlite3.Connection, keeper: str) -> list[dict]:
    """The rooms a keeper is in: id, name, role."""
    rows = people.execute(
        "SELECT rooms.id, rooms.name, memberships.role FROM memberships JOIN rooms ON rooms.id = memberships.room"
        " WHERE keeper = ? AND ended_at IS NULL ORDER BY rooms.name, rooms.id",
        [keeper],
    )
    return [dict(row) for row in rows]


def all_rooms(people: sqlite3.Connection) -> list[dict]:
    """Every room of this server, oldest first: id, name."""
    return [dict(row) for row in people.execute("SELECT id, name FROM rooms ORDER BY made_at, id")]


def room_name(people: sqlite3.Connection, room: str) -> str:
    """The name of a room; NotFound if there is none."""
    row = people.execute("SELECT name FROM rooms WHERE id = ?", [room]).fetchone()
    if not row:
        raise NotFound("There is no such room")
    return row["name"]


def add_room(people: sqlite3.Connection, room: str, name: str, now_ms: int) -> None:
    """Add a room that has no members yet."""
    people.execute("INSERT INTO rooms (id, name, made_at) VALUES (?, ?, ?)", [room, name, utc(now_ms)])


def rename_room(people: sqlite3.Connection, room: str, name: str) -> None:
    """Give a room another name."""
    people.execute("UPDATE rooms SET name = ? WHERE id = ?", [name, room])


def add_keeper(people: sqlite3.Connection, name: str, now_ms: int) -> str:
    """A new keeper's id."""
    keeper = uuid7(now_ms)
    people.execute("INSERT INTO keepers (id, name, made_at) VALUES (?, ?, ?)", [keeper, name, utc(now_ms)])
    return keeper


def add_device(people: sqlite3.Connection, keeper: str, name: str, key: str, now_ms: int) -> str:
    """A new device's id; only the hash of its key is kept."""
    device, now = uuid7(now_ms), utc(now_ms)
    people.execute(
        "INSERT INTO devices (id, keeper, name, key_hash, made_at, last_seen) VALUES (?, ?, ?, ?, ?, ?)",
        [device, keeper, name, digest(key), now, now],
    )
    return device


def add_member(people: sqlite3.Connection, room: str, keeper: str, role: str, now_ms: int) -> str:
    """Add a keeper to a room, for the first time or again; a member keeps the higher role. Returns the role."""
    row = people.execute("SELECT * FROM memberships WHERE room = ? AND keeper = ?", [room, keeper]).fetchone()
    if row and not row["ended_at"]:
        role = min(role, row["role"], key=ROLES.index)
    people.execute(
        "INSERT INTO memberships (room, keeper, role, since) VALUES (?, ?, ?, ?)"
        " ON CONFLICT (room, keeper) DO UPDATE SET role = excluded.role, ended_at = NULL, ended_by = NULL",
        [room, keeper, role, utc(now_ms)],
    )
    return role


def set_role(people: sqlite3.Connection, room: str, keeper: str, role: str) -> None:
    """Change a member's role; LastOwner if the room would have no owner left."""
    if role_in(people, room, keeper) == "owner" and role != "owner":
        _another_owner(people, room, keeper)
    people.execute("UPDATE memberships SET role = ? WHERE room = ? AND keeper = ?", [role, room, keeper])


def end_member(people: sqlite3.Connection, room: str, keeper: str, by: str, now_ms: int) -> None:
    """End a membership; its records stay. LastOwner if the room would have no owner left."""
    if role_in(people, room, keeper) == "owner":
        _another_owner(people, room, keeper)
    people.execute(
        "UPDATE memberships SET ended_at = ?, ended_by = ? WHERE room = ? AND keeper = ?",
        [utc(now_ms), by, room, keeper],
    )


def _another_owner(people: sqlite3.Connection, room: str, keeper: str) -> None:
    others = people.execute(
        "SELECT 1 FROM memberships WHERE room = ? AND keeper != ? AND role = 'owner' AND ended_at IS NULL",
        [room, keeper],
    ).fetchone()
    if not others:
        raise LastOwner()


def member(people: sqlite3.Connection, room: str, keeper: str) -> str:
    """The id of a keeper who is in the room now, else NotFound; for calls that act on someone else."""
    row = people.execute(
        "SELECT 1 FROM memberships WHERE room = ? AND keeper = ? AND ended_at IS NULL", [room, keeper]
    ).fetchone()
    if not row:
        raise NotFound("There is no such keeper in this room")
    return keeper


def people_in(people: sqlite3.Connection, room: str) -> list[dict]:
    """The members of a room, each with the phones that are not revoked."""
    members = people.execute(
        "SELECT keepers.id, keepers.name, memberships.role FROM memberships"
        " JOIN keepers ON keepers.id = memberships.keeper"
        " WHERE room = ? AND ended_at IS NULL ORDER BY keepers.name, keepers.id",
        [room],
    ).fetchall()
    return [{**dict(member), "devices": _devices(people, member["id"])} for member in members]


def _devices(people: sqlite3.Connection, keeper: str) -> list[dict]:
    rows = people.execute(
        "SELECT id, name, last_seen FROM devices WHERE keeper = ? AND revoked_at IS NULL ORDER BY made_at, id", [keeper]
    )
    return [dict(row) for row in rows]


def names_in(people: sqlite3.Connection, room: str) -> dict[str, str]:
    """The names of all who are or were in the room, by id."""
    rows = people.execute(
        "SELECT keepers.id, keepers.name FROM memberships JOIN keepers ON keepers.id = memberships.keeper"
        " WHERE room = ?",
        [room],
    )
    return {row["id"]: row["name"] for row in rows}


def device(people: sqlite3.Connection, device: str) -> dict:
    """A device by its id, revoked or not; NotFound."""
    row = people.execute("SELECT * FROM devices WHERE id = ?", [device]).fetchone()
    if not row:
        raise NotFound("There is no such phone")
    return dict(row)


def revoke_device(people: sqlite3.Connection, device: str, by: str, now_ms: int) -> None:
    """Revoke a device: one's own, or one of a keeper in a room that `by` owns."""
    row = people.execute("SELECT keeper FROM devices WHERE id = ?", [device]).fetchone()
    shared = (
        row
        and people.execute(
            "SELECT mine.role FROM memberships AS theirs JOIN memberships AS mine ON mine.room = theirs.room"
            " WHERE theirs.keeper = ? AND theirs.ended_at IS NULL AND mine.keeper = ? AND mine.ended_at IS NULL",
            [row["keeper"], by],
        ).fetchall()
    )
    if not row or not (shared or row["keeper"] == by):
        raise NotFound("There is no such phone in your rooms")
    if row["keeper"] != by and all(both["role"] != "owner" for both in shared):
        raise NotAllowed("Only an owner of the room may revoke another keeper's phone")
    force_revoke(people, device, by, now_ms)


def force_revoke(people: sqlite3.Connection, device: str, by: str, now_ms: int) -> None:
    """Revoke without checking who asks; repeating it changes nothing."""
    people.execute(
        "UPDATE devices SET revoked_at = ?, revoked_by = ? WHERE id = ? AND revoked_at IS NULL",
        [utc(now_ms), by, device],
    )
