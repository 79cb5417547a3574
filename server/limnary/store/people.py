"""Keepers, their devices, and their roles in rooms."""

import sqlite3

from limnary.errors import Conflict, KeyRefused, LastOwner, MembershipEnded, NotAllowed, NotFound
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


def role_of(people: sqlite3.Connection, room: str, caller: dict) -> str:
    """The role of the calling phone: its keeper's, unless an owner put this phone out of the room."""
    role = role_in(people, room, caller["keeper"])
    if is_out(people, room, caller["id"]):
        raise MembershipEnded("An owner of the room revoked this phone for it")
    return role


def owner_only(people: sqlite3.Connection, room: str, caller: dict) -> None:
    """NotAllowed unless the caller is an owner of the room."""
    if role_of(people, room, caller) != "owner":
        raise NotAllowed("Only an owner of the room may do that")


def rooms_of(people: sqlite3.Connection, caller: dict) -> list[dict]:
    """The rooms that the calling phone may open: id, name, role."""
    rows = people.execute(
        "SELECT rooms.id, rooms.name, memberships.role FROM memberships JOIN rooms ON rooms.id = memberships.room"
        " WHERE keeper = ? AND ended_at IS NULL"
        " AND NOT EXISTS (SELECT 1 FROM phones_out WHERE device = ? AND phones_out.room = rooms.id)"
        " ORDER BY rooms.name, rooms.id",
        [caller["keeper"], caller["id"]],
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


def free_key(people: sqlite3.Connection, key: str) -> None:
    """Refuse a key that a phone here already has: KeyRefused if that phone was revoked, else Conflict."""
    row = people.execute("SELECT revoked_at FROM devices WHERE key_hash = ?", [digest(key)]).fetchone()
    if row and row["revoked_at"]:
        raise KeyRefused(revoked=True)
    if row:
        raise Conflict("This phone has a key here already: send it as `Authorization: Bearer KEY`")


def add_device(people: sqlite3.Connection, keeper: str, name: str, key: str, now_ms: int) -> str:
    """A new device's id; only the hash of its key is kept."""
    device, now = uuid7(now_ms), utc(now_ms)
    people.execute(
        "INSERT INTO devices (id, keeper, name, key_hash, made_at, last_seen) VALUES (?, ?, ?, ?, ?, ?)",
        [device, keeper, name, digest(key), now, now],
    )
    return device


def membership(people: sqlite3.Connection, room: str, keeper: str) -> dict | None:
    """The keeper's membership of the room, ended or not; None if there never was one."""
    row = people.execute("SELECT * FROM memberships WHERE room = ? AND keeper = ?", [room, keeper]).fetchone()
    return dict(row) if row else None


def add_member(people: sqlite3.Connection, room: str, keeper: str, role: str, now_ms: int) -> str:
    """Add a keeper to a room, for the first time or again. Returns the role."""
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
    """End a membership; its records stay. LastOwner if the room would have no owner left.

    The caller closes the keeper's ways in: see ways_in.py.
    """
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
    return [{**dict(member), "devices": _devices(people, room, member["id"])} for member in members]


def _devices(people: sqlite3.Connection, room: str, keeper: str) -> list[dict]:
    rows = people.execute(
        "SELECT id, name, last_seen FROM devices WHERE keeper = ? AND revoked_at IS NULL"
        " AND NOT EXISTS (SELECT 1 FROM phones_out WHERE device = devices.id AND phones_out.room = ?)"
        " ORDER BY made_at, id",
        [keeper, room],
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


def revoke_device(people: sqlite3.Connection, device: str, caller: dict, now_ms: int) -> list[str] | None:
    """Revoke a phone. Return the rooms it is out of, or None if its key is dead everywhere.

    One's own phone is revoked everywhere. An owner revokes a member's phone everywhere if the member is in the
    owner's rooms only; else the phone is put out of the owner's rooms, and others decide about theirs.
    """
    row = people.execute("SELECT keeper FROM devices WHERE id = ?", [device]).fetchone()
    if not row:
        raise NotFound("There is no such phone in your rooms")
    if row["keeper"] == caller["keeper"]:
        force_revoke(people, device, caller["keeper"], now_ms)
        return None
    mine = {room["id"]: room["role"] for room in rooms_of(people, caller)}
    theirs = [room["room"] for room in _rooms_of_keeper(people, row["keeper"])]
    shared = [room for room in theirs if room in mine]
    if not shared:
        raise NotFound("There is no such phone in your rooms")
    owned = [room for room in shared if mine[room] == "owner"]
    if not owned:
        raise NotAllowed("Only an owner of the room may revoke another keeper's phone")
    if len(owned) == len(theirs):
        force_revoke(people, device, caller["keeper"], now_ms)
        return None
    for room in owned:
        people.execute(
            "INSERT INTO phones_out (device, room, since, by) VALUES (?, ?, ?, ?) ON CONFLICT DO NOTHING",
            [device, room, utc(now_ms), caller["keeper"]],
        )
    return owned


def is_out(people: sqlite3.Connection, room: str, device: str) -> bool:
    """Whether an owner put this phone out of the room."""
    return bool(people.execute("SELECT 1 FROM phones_out WHERE device = ? AND room = ?", [device, room]).fetchone())


def _rooms_of_keeper(people: sqlite3.Connection, keeper: str) -> list[sqlite3.Row]:
    return people.execute("SELECT room FROM memberships WHERE keeper = ? AND ended_at IS NULL", [keeper]).fetchall()


def force_revoke(people: sqlite3.Connection, device: str, by: str, now_ms: int) -> None:
    """Revoke without checking who asks; repeating it changes nothing."""
    people.execute(
        "UPDATE devices SET revoked_at = ?, revoked_by = ? WHERE id = ? AND revoked_at IS NULL",
        [utc(now_ms), by, device],
    )
